//! Labels for vessels and pallets.

mod page;

pub use page::labels_page;
