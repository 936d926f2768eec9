//! One job: what it is, and its vessels.

mod page;

pub use page::job_page;
