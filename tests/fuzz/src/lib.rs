//! What must hold of anything that comes from outside, whatever bytes it is: a module for each way in.
//!
//! `tests/run fuzz` lets libFuzzer make bytes up for them. What it finds is mended and becomes a test in `calc/job`.

mod before;
pub mod envelope;
pub mod job;
pub mod price_csv;
pub mod quantity;
