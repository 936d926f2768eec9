//! The job document.
pub mod entry;
