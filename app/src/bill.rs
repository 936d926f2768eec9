//! The bill of materials.

mod page;

pub use page::BillPage;
