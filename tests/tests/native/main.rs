//! Everything that is checked without a browser: one binary, a module per capability.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)] // Tests say so by panicking.

mod acceptance;
mod chemistry;
mod extremes;
mod feed;
mod house;
mod hydraulics;
mod hydraulics_extremes;
mod hydraulics_properties;
mod ladder;
mod life;
mod packing;
mod practice;
mod properties;
mod reference;
mod search;
mod sheets;
mod supply_packs;
mod textbook;
