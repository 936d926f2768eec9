//! The bill of materials.

mod kit;
mod page;

pub use page::bill_page;
