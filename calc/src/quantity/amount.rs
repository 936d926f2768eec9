//! A value of any quantity.

use super::{
    Area, Concentration, DynamicViscosity, Frequency, Length, Mass, MassDensity, Pressure, Temperature, Time, Velocity,
    Volume, VolumeRate,
};

/// A value together with the kind of quantity it is; what problems, inputs and verdicts carry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Amount {
    /// A length.
    Length(Length),
    /// An area.
    Area(Area),
    /// A volume.
    Volume(Volume),
    /// A mass.
    Mass(Mass),
    /// A mass per volume.
    Density(MassDensity),
    /// A gauge pressure.
    Pressure(Pressure),
    /// A speed, or a flow per area.
    Speed(Velocity),
    /// A flow.
    Flow(VolumeRate),
    /// A temperature.
    Temperature(Temperature),
    /// A viscosity.
    Viscosity(DynamicViscosity),
    /// A length of time.
    Time(Time),
    /// So many times in a time: bed volumes an hour.
    Rate(Frequency),
    /// A mass in a volume of water.
    Concentration(Concentration),
    /// A plain ratio (0.1 is ten per cent).
    Ratio(f64),
    /// A number of things.
    Count(u32),
}

impl Amount {
    /// The bare number in the SI unit of its kind (m, m², m³, kg, kg/m³, Pa, m/s, m³/s, K, Pa·s, s, 1/s, 1).
    #[must_use]
    pub fn si(self) -> f64 {
        match self {
            Amount::Length(x) => x.value,
            Amount::Area(x) => x.value,
            Amount::Volume(x) => x.value,
            Amount::Mass(x) => x.value,
            Amount::Density(x) => x.value,
            Amount::Pressure(x) => x.value,
            Amount::Speed(x) => x.value,
            Amount::Flow(x) => x.value,
            Amount::Temperature(x) => x.value,
            Amount::Viscosity(x) => x.value,
            Amount::Time(x) => x.value,
            Amount::Rate(x) => x.value,
            Amount::Concentration(x) => x.to_kilograms_per_cubic_metre(),
            Amount::Ratio(x) => x,
            Amount::Count(n) => f64::from(n),
        }
    }
}

macro_rules! from_quantity {
    ($($kind:ident($quantity:ty)),*) => {$(
        impl From<$quantity> for Amount {
            fn from(value: $quantity) -> Amount {
                Amount::$kind(value)
            }
        }
    )*};
}
from_quantity!(
    Length(Length),
    Area(Area),
    Volume(Volume),
    Mass(Mass),
    Density(MassDensity),
    Pressure(Pressure),
    Speed(Velocity),
    Flow(VolumeRate),
    Temperature(Temperature),
    Viscosity(DynamicViscosity),
    Time(Time),
    Rate(Frequency),
    Ratio(f64),
    Count(u32)
);
