//! The price list's screen.

mod field;
mod file;
mod page;
mod row;
mod search;

pub use page::prices_page;
