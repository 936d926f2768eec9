//! What a job takes from the shelf: packs and parts, per vessel and pooled.

pub mod bill;

pub use bill::{Bill, BillLine, BillPart, CountUnit, Fitting, Item, JobKind, VesselBill, bill};
