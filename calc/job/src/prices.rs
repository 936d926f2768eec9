//! The price list: what packs, parts, labour, disposal and freight cost and sell for, where they lie, what to heed.
//!
//! One list stands on each device ([`PriceList`]): the rows that ship with the page, every price of them blank, and over
//! them what the person typed or brought in. A job carries the rows it uses ([`JobPrices`]) and reads those first, so
//! that it says the same where nobody has that list: [`Prices`]. A price that isn't known is absent, never nought.

mod amount;
pub mod csv;
mod index;
mod list;
mod row;
mod shipped;
mod size;
mod used;

pub use amount::{AmountFault, MOST_PLACES, amount, amount_text};
pub use list::{Catalogue, ListEdit, ListRefused, MOST_ROWS, PriceList, apply};
pub use row::{Care, Origin, PriceField, PriceKind, PriceRow};
pub use shipped::shipped_rows;
pub use size::{SizeFault, size};
pub use used::{JobPrices, Prices, carries, differing, lacks, price_key, price_keys};
