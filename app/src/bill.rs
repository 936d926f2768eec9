//! The bill of materials.

mod page;

pub use page::bill_page;
