//! The calculation sheet.

mod page;

pub use page::calculation_page;
