//! Emptying and loading a vessel: what is done step by step, read, signed.

mod drums;
mod extras;
mod frozen;
mod gate;
mod list;
mod page;
mod photo;
mod reading;
mod sign;
mod step;
mod tag;

pub use list::loadings_page;
pub use page::sheet_page;
