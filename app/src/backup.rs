//! Backup and storage of this device.

mod page;
mod restore;
mod storage;

pub use page::{backup_page, reminder};
