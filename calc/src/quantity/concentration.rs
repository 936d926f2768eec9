//! How much of something a volume of water holds.

use super::Amount;

/// A mass dissolved or carried in a volume of water.
///
/// What the mass is of is said by the quantity's noun ([`super::Term`]): hardness and alkalinity count as calcium
/// carbonate, everything else as the thing itself.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Concentration {
    kilograms_per_cubic_metre: f64,
}

impl Concentration {
    /// From kilograms per cubic metre, which are grams per litre.
    #[must_use]
    pub const fn kilograms_per_cubic_metre(value: f64) -> Concentration {
        Concentration { kilograms_per_cubic_metre: value }
    }

    /// From milligrams per litre, which are grams per cubic metre.
    #[must_use]
    pub const fn milligrams_per_litre(value: f64) -> Concentration {
        Concentration { kilograms_per_cubic_metre: value / 1000.0 }
    }

    /// In kilograms per cubic metre.
    #[must_use]
    pub const fn to_kilograms_per_cubic_metre(self) -> f64 {
        self.kilograms_per_cubic_metre
    }

    /// In milligrams per litre.
    #[must_use]
    pub const fn to_milligrams_per_litre(self) -> f64 {
        self.kilograms_per_cubic_metre * 1000.0
    }
}

impl From<Concentration> for Amount {
    fn from(value: Concentration) -> Amount {
        Amount::Concentration(value)
    }
}
