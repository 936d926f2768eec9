//! What is due, over all jobs on this device.

mod page;

pub use page::due_page;
