//! Typed quantities, and what every answer is made of: a [`Figure`], a [`Problem`] or a [`Verdict`].

pub mod amount;
pub mod assumption;
pub mod figure;
pub mod problem;
pub mod source;
pub mod verdict;

pub use amount::{Amount, Term};
pub use assumption::Assumption;
pub use figure::{Basis, Figure, Formula, Input, Known};
pub use problem::{Caution, Fault, Problem};
pub use source::{Source, Standing};
pub use uom::si::f64::{Area, Length, Mass, MassDensity, Pressure, Volume};
pub use verdict::{Mark, Reason, Remedy, Subject, Verdict};

/// A length from metres.
#[must_use]
pub fn metres(value: f64) -> Length {
    Length::new::<uom::si::length::meter>(value)
}

/// A volume from cubic metres.
#[must_use]
pub fn cubic_metres(value: f64) -> Volume {
    Volume::new::<uom::si::volume::cubic_meter>(value)
}

/// A mass from kilograms.
#[must_use]
pub fn kilograms(value: f64) -> Mass {
    Mass::new::<uom::si::mass::kilogram>(value)
}

/// A density from kilograms per cubic metre.
#[must_use]
pub fn kilograms_per_cubic_metre(value: f64) -> MassDensity {
    MassDensity::new::<uom::si::mass_density::kilogram_per_cubic_meter>(value)
}

/// An area from square metres.
#[must_use]
pub fn square_metres(value: f64) -> Area {
    Area::new::<uom::si::area::square_meter>(value)
}
