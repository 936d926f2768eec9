//! Vessels for a flow.

mod found;
mod page;

pub use page::search_page;
