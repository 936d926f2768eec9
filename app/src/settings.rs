//! The person's ways.

mod page;

pub use page::settings_page;
