//! Sending a job: whom it is for, what goes along and what stays, and the ways it can go.

mod codes;
mod page;
mod ways;

pub use page::send_page;
