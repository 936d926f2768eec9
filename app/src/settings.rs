//! The person's ways.

mod page;

pub use page::SettingsPage;
