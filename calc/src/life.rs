//! How long a bed lasts: what the water takes from it, what it takes from the water, and when it is spent.

pub mod capacity;
pub mod carbon;
pub mod carbonate;
pub mod limits;
pub mod neutralising;
pub mod oxidant;
pub mod sensitivity;
pub mod softening;

/// A year of 365 days and a quarter, s.
pub(crate) const YEAR_S: f64 = 365.25 * 86_400.0;
/// Months in it.
pub(crate) const MONTHS_IN_YEAR: f64 = 12.0;
