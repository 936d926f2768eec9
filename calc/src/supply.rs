//! What a job takes from the shelf: packs and parts, per vessel and pooled.

pub mod bill;
pub mod kit;
pub mod money;

pub use bill::{Bill, BillLine, BillPart, CountUnit, Item, JobKind, VesselBill, bill};
pub use kit::{Fitting, Spent};
pub use money::Money;
