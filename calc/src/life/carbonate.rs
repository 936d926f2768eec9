//! Carbonate in water: what is dissolved, whether it takes up calcite, how much, and how fast.
//!
//! Everything is closed to the air, as water in a pressure vessel is. Constants, ion pairs and activity model are those of
//! `phreeqc.dat` (PHREEQC 3), so that PHREEQC can check every figure.

mod activity;
mod analysis;
mod constants;
mod equilibrium;
mod magnesia;
pub(crate) mod mass;
mod rate;
mod species;

pub use analysis::{Analysis, Carbonate, CarbonateWater};
pub use magnesia::Until;
pub use rate::grain_surface;
