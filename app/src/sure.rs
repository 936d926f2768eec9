//! How sure the figures are: sources, comparisons, and what is from memory.

mod page;

pub use page::sure_page;
