//! Every job on this device.

mod page;

pub use page::jobs_page;
