//! The quote: lines with their gaps, ways of pricing, terms, what it rests on, what was issued.

mod facts;
mod issue;
mod line;
mod own;
pub mod page;
mod pricing;
mod table;
mod terms;

pub use page::quote_page;
