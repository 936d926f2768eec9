//! The person's ways.

mod letterhead;
mod page;

pub use page::settings_page;
