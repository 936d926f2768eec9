//! Typed quantities, and what every answer is made of: a [`Figure`], a [`Problem`] or a [`Verdict`].

pub mod amount;
pub mod assumption;
pub mod check;
pub mod concentration;
pub mod figure;
pub mod problem;
pub mod root;
pub mod source;
pub mod step;
pub mod term;
pub mod verdict;

pub use amount::Amount;
pub use assumption::Assumption;
pub use check::{Check, CheckWay, Counted};
pub use concentration::Concentration;
pub use figure::{Basis, Figure, Formula, Input, Known};
pub use problem::{Caution, Fault, Problem};
pub use source::{Source, Standing};
pub use step::Step;
pub use term::Term;
pub use uom::si::f64::{
    Area, DynamicViscosity, Frequency, Length, Mass, MassDensity, Pressure, ThermodynamicTemperature as Temperature,
    Time, Velocity, Volume, VolumeRate,
};
pub use verdict::{Mark, Reason, Remedy, Subject, Verdict};

/// Standard gravity, m/s²: exact by definition (3rd CGPM, 1901).
pub const GRAVITY_M_S2: f64 = 9.806_65;
pub(crate) const GRAVITY: f64 = GRAVITY_M_S2;

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

/// A speed from metres per second; also a flow per area.
#[must_use]
pub fn metres_per_second(value: f64) -> Velocity {
    Velocity::new::<uom::si::velocity::meter_per_second>(value)
}

/// A flow from cubic metres per second.
#[must_use]
pub fn cubic_metres_per_second(value: f64) -> VolumeRate {
    VolumeRate::new::<uom::si::volume_rate::cubic_meter_per_second>(value)
}

/// A temperature from kelvins.
#[must_use]
pub fn kelvins(value: f64) -> Temperature {
    Temperature::new::<uom::si::thermodynamic_temperature::kelvin>(value)
}

/// A viscosity from pascal seconds.
#[must_use]
pub fn pascal_seconds(value: f64) -> DynamicViscosity {
    DynamicViscosity::new::<uom::si::dynamic_viscosity::pascal_second>(value)
}

/// A pressure from pascals.
#[must_use]
pub fn pascals(value: f64) -> Pressure {
    Pressure::new::<uom::si::pressure::pascal>(value)
}

/// A time from seconds.
#[must_use]
pub fn seconds(value: f64) -> Time {
    Time::new::<uom::si::time::second>(value)
}

/// A rate from so many a second.
#[must_use]
pub fn per_second(value: f64) -> Frequency {
    Frequency::new::<uom::si::frequency::hertz>(value)
}
