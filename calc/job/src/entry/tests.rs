//! What people type, row by row; units against each other; and whatever nobody would type.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing, clippy::float_cmp)]

mod accepted;
mod marks;
mod parts;
mod properties;
mod refused;
mod saved;
mod shown;
mod sizes;
mod units;
