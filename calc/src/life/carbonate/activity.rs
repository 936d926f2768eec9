//! How much less than their number dissolved ions act.

use crate::water::fluid_at;

/// Whose activity coefficient a species has: its own, or that of its like.
#[derive(Clone, Copy, Debug)]
pub(super) enum Size {
    /// A molecule: a tenth of the ionic strength.
    Molecule,
    /// A single charge of which no size is known: Davies.
    Ion,
    Hydrogen,
    Hydroxide,
    Calcium,
    Magnesium,
    Sodium,
    Chloride,
    Carbonate,
    Sulfate,
    /// Bicarbonate, and sodium with sulfate.
    Bicarbonate,
    CalciumBicarbonate,
    MagnesiumHydroxide,
    MagnesiumBicarbonate,
}

const SIZES: usize = 14;

/// Charge, diameter in ångström and slope of the extended Debye–Hückel form of Truesdell and Jones, in the order of
/// [`Size`]; no diameter where none is known. As `phreeqc.dat` has them.
static SIZED: [(f64, f64, f64); SIZES] = [
    (0.0, 0.0, 0.1),
    (1.0, 0.0, 0.0),
    (1.0, 9.0, 0.0),
    (1.0, 3.5, 0.0),
    (2.0, 5.0, 0.1650),
    (2.0, 5.5, 0.20),
    (1.0, 4.08, 0.082),
    (1.0, 3.63, 0.017),
    (2.0, 5.4, 0.0),
    (2.0, 5.0, -0.04),
    (1.0, 5.4, 0.0),
    (1.0, 6.0, 0.0),
    (1.0, 6.5, 0.0),
    (1.0, 4.0, 0.0),
];

/// The two parameters of Debye and Hückel at a temperature.
#[derive(Clone, Copy, Debug)]
pub(super) struct DebyeHuckel {
    a: f64,
    b: f64,
}

impl DebyeHuckel {
    /// From the permittivity of water (D. J. Bradley and K. S. Pitzer 1979, J. Phys. Chem. 83(12), 1599–1603) at one
    /// atmosphere and its density, as PHREEQC 3 has them; the density is ours, and differs by 4 parts in a million.
    pub(super) fn at(kelvin: f64) -> DebyeHuckel {
        const ATMOSPHERE_BAR: f64 = 1.013_25;
        /// Square of the elementary charge over Boltzmann's constant, in electrostatic units.
        const CHARGE: f64 = 1.671_008e-3;
        const AVOGADRO: f64 = 6.022_52e23;
        let thousand = 3.4279e2 * libm::exp(kelvin * (-5.0866e-3 + kelvin * 9.469e-7));
        let c = -2.0525 + 3.1159e3 / (-1.8289e2 + kelvin);
        let b = -8.0325e3 + 4.2142e6 / kelvin + 2.1417 * kelvin;
        let permittivity = thousand + c * libm::log((b + ATMOSPHERE_BAR) / (b + 1000.0));
        let charge = CHARGE / (permittivity * kelvin);
        let density = fluid_at(kelvin).density / 1000.0;
        let per_centimetre = (8.0 * std::f64::consts::PI * AVOGADRO * charge * density / 1000.0).sqrt();
        DebyeHuckel { a: per_centimetre * charge / (2.0 * std::f64::consts::LN_10), b: per_centimetre * 1e-8 }
    }

    /// The activity coefficient of every size in water of this ionic strength.
    pub(super) fn coefficients(self, strength: f64) -> [f64; SIZES] {
        let root = strength.sqrt();
        let mut found = [1.0; SIZES];
        for (value, &(charge, diameter, slope)) in found.iter_mut().zip(&SIZED) {
            let square = charge * charge;
            let log = if charge > 0.0 && diameter == 0.0 {
                -self.a * square * (root / (1.0 + root) - 0.3 * strength)
            } else {
                -self.a * square * root / (1.0 + self.b * diameter * root) + slope * strength
            };
            *value = libm::exp(log * std::f64::consts::LN_10);
        }
        found
    }
}
