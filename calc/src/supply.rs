//! What a job takes from the shelf: packs and parts, per vessel and pooled.

pub mod bill;
mod exact;
pub mod money;
pub mod quote;

pub use bill::{Bill, BillLine, BillPart, CountUnit, Fitting, Item, JobKind, VesselBill, bill};
pub use exact::{Halves, Rounding, currency_places};
pub use money::Money;
