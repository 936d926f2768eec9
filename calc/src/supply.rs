//! What a job takes from the shelf: packs and parts, per vessel and pooled.

pub mod bill;
pub mod buying;
pub mod cutting;
mod exact;
pub mod kit;
pub mod lifting;
pub mod money;
pub mod packs;
pub mod pallets;
pub mod quote;

pub use bill::{Bill, BillLine, BillPart, CountUnit, Item, JobKind, VesselBill, bill};
pub use exact::{Halves, Rounding, currency_places};
pub use kit::{Fitting, Spent};
pub use money::Money;
