//! The service card of a tag: the front answer, a visit, and everything behind them.

mod actions;
mod expected;
mod front;
mod links;
mod more;
mod over_time;
mod page;
mod readings;
mod spent;
mod visit;

pub use links::card_links;
pub use page::card_page;
