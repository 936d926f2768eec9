//! The pick list: big lines to tick beside the shelf, and the same on paper.

mod line;
mod page;
mod steps;

pub use page::picking_page;
