//! What is dissolved in a water of a given pH: every ion, molecule and pair of ions.

use super::activity::{DebyeHuckel, Size};
use super::constants::{self as k, Constant};
use crate::order::Between as _;

/// What the others are made of, beside H⁺ and water: calcium, magnesium, sodium, carbonate, sulfate.
const MASTERS: usize = 5;
/// Those that somebody asks for, by their place.
const CALCIUM: usize = 0;
const MAGNESIUM: usize = 1;
const CARBONATE: usize = 3;

/// What a species is called where one is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Name {
    Dioxide,
    /// Pairs with nothing here, so its amount is given.
    Chloride,
    Other,
}

/// One species: how it is put together, its charge, what it adds to the alkalinity, and its size.
struct Species {
    name: Name,
    constant: Constant,
    /// A constant that is multiplied in: that of a species this one is built upon.
    upon: Constant,
    hydrogen: i8,
    water: i8,
    parts: [u8; MASTERS],
    charge: i8,
    alkalinity: i8,
    size: Size,
}

const fn species(constant: Constant, hydrogen: i8, parts: [u8; MASTERS], charge: i8, alkalinity: i8) -> Species {
    Species {
        name: Name::Other,
        constant,
        upon: Constant::Unit,
        hydrogen,
        water: 0,
        parts,
        charge,
        alkalinity,
        size: if charge == 0 { Size::Molecule } else { Size::Ion },
    }
}

impl Species {
    const fn called(mut self, name: Name) -> Species {
        self.name = name;
        self
    }

    const fn sized(mut self, size: Size) -> Species {
        self.size = size;
        self
    }

    const fn with_water(mut self, water: i8) -> Species {
        self.water = water;
        self
    }

    const fn upon(mut self, constant: Constant) -> Species {
        self.upon = constant;
        self
    }
}

const COUNT: usize = 24;

/// Every species, as `phreeqc.dat` has it; parts are calcium, magnesium, sodium, carbonate, sulfate. Left out is what
/// that database itself gives no weight (NaOH, of 10⁻¹⁰).
static SPECIES: [Species; COUNT] = [
    species(Constant::Unit, 1, [0, 0, 0, 0, 0], 1, -1).sized(Size::Hydrogen),
    species(k::HYDROXIDE, -1, [0, 0, 0, 0, 0], -1, 1).sized(Size::Hydroxide).with_water(1),
    species(Constant::Unit, 0, [1, 0, 0, 0, 0], 2, 0).sized(Size::Calcium),
    species(Constant::Unit, 0, [0, 1, 0, 0, 0], 2, 0).sized(Size::Magnesium),
    species(Constant::Unit, 0, [0, 0, 1, 0, 0], 1, 0).sized(Size::Sodium),
    species(Constant::Unit, 0, [0, 0, 0, 1, 0], -2, 2).sized(Size::Carbonate),
    species(Constant::Unit, 0, [0, 0, 0, 0, 1], -2, 0).sized(Size::Sulfate),
    species(k::BICARBONATE, 1, [0, 0, 0, 1, 0], -1, 1).sized(Size::Bicarbonate),
    species(k::DIOXIDE, 2, [0, 0, 0, 1, 0], 0, 0).called(Name::Dioxide).with_water(-1),
    species(k::DIOXIDE_PAIR, 4, [0, 0, 0, 2, 0], 0, 0).with_water(-2),
    species(k::BISULFATE, 1, [0, 0, 0, 0, 1], -1, -1),
    species(k::CALCIUM_HYDROXIDE, -1, [1, 0, 0, 0, 0], 1, 1).with_water(1),
    species(k::CALCIUM_CARBONATE, 0, [1, 0, 0, 1, 0], 0, 2),
    species(k::CALCIUM_BICARBONATE, 1, [1, 0, 0, 1, 0], 1, 1).sized(Size::CalciumBicarbonate),
    species(k::CALCIUM_SULFATE, 0, [1, 0, 0, 0, 1], 0, 0),
    species(k::CALCIUM_BISULFATE, 1, [1, 0, 0, 0, 1], 1, -1),
    species(k::MAGNESIUM_HYDROXIDE, -1, [0, 1, 0, 0, 0], 1, 1).sized(Size::MagnesiumHydroxide).with_water(1),
    species(k::MAGNESIUM_CARBONATE, 0, [0, 1, 0, 1, 0], 0, 2),
    species(k::MAGNESIUM_BICARBONATE, 1, [0, 1, 0, 1, 0], 1, 1).sized(Size::MagnesiumBicarbonate),
    species(k::MAGNESIUM_SULFATE, 0, [0, 1, 0, 0, 1], 0, 0),
    species(k::SODIUM_CARBONATE, 0, [0, 0, 1, 1, 0], -1, 2),
    species(k::SODIUM_BICARBONATE, 1, [0, 0, 1, 1, 0], 0, 1).upon(k::BICARBONATE),
    species(k::SODIUM_SULFATE, 0, [0, 0, 1, 0, 1], -1, 0).sized(Size::Bicarbonate),
    species(Constant::Unit, 0, [0, 0, 0, 0, 0], -1, 0).called(Name::Chloride).sized(Size::Chloride),
];

/// What is known of the carbonate.
#[derive(Clone, Copy, Debug)]
pub(super) enum Closure {
    /// All of it, mol/kg.
    Total(f64),
    /// The alkalinity, equivalents per kg.
    Alkalinity(f64),
    /// The dissolved carbon dioxide, mol/kg.
    Dioxide(f64),
    /// All of it and the alkalinity: the pH follows, and the one that is handed in is only where the search begins.
    TotalAndAlkalinity(f64, f64),
}

/// What a kilogram of water holds, mol; the carbonate apart.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Totals {
    pub(super) calcium: f64,
    pub(super) magnesium: f64,
    pub(super) sodium: f64,
    pub(super) sulfate: f64,
    pub(super) chloride: f64,
}

/// Everything that doesn't change with what is dissolved: constants at one temperature.
#[derive(Clone)]
pub(super) struct Chemistry {
    pub(super) kelvin: f64,
    debye_huckel: DebyeHuckel,
    constants: [f64; COUNT],
    calcite_log: f64,
    brucite_log: f64,
}

/// A water of known pH, worked out.
#[derive(Clone, Copy, Debug)]
pub(super) struct Speciation {
    /// Activity of H⁺.
    pub(super) hydrogen: f64,
    /// Activity of water.
    pub(super) water: f64,
    /// Half the sum of molality times square of charge.
    pub(super) strength: f64,
    /// All carbonate, mol/kg.
    pub(super) carbonate: f64,
    /// Equivalents per kg.
    pub(super) alkalinity: f64,
    /// Activities of the masters.
    active: [f64; MASTERS],
    /// Dissolved carbon dioxide, mol/kg, and its activity.
    pub(super) dioxide: f64,
    pub(super) dioxide_active: f64,
}

impl Speciation {
    pub(super) fn ph(&self) -> f64 {
        -libm::log10(self.hydrogen)
    }
}

/// Saturation indices: the product of what a mineral is made of over what it may be, as a logarithm.
impl Chemistry {
    pub(super) fn calcite_index(&self, found: &Speciation) -> f64 {
        let product = found.active[CALCIUM] * found.active[CARBONATE];
        libm::log10(product.max(f64::MIN_POSITIVE)) - self.calcite_log
    }

    pub(super) fn brucite_index(&self, found: &Speciation) -> f64 {
        let magnesium = found.active[MAGNESIUM].max(f64::MIN_POSITIVE);
        libm::log10(magnesium * found.water * found.water) + 2.0 * found.ph() - self.brucite_log
    }
}

/// Rounds of the search for the free ions; each at least halves the miss in any water a person would treat.
const ROUNDS: usize = 400;
/// Where it is settled: the last digits of a double.
const SETTLED: f64 = 5e-14;

impl Chemistry {
    pub(super) fn at(kelvin: f64) -> Chemistry {
        let mut constants = [1.0; COUNT];
        for (value, species) in constants.iter_mut().zip(&SPECIES) {
            *value = species.constant.at(kelvin) * species.upon.at(kelvin);
        }
        Chemistry {
            kelvin,
            debye_huckel: DebyeHuckel::at(kelvin),
            constants,
            calcite_log: k::CALCITE.log_at(kelvin),
            brucite_log: k::BRUCITE.log_at(kelvin),
        }
    }

    /// Everything dissolved at a pH.
    ///
    /// Each round reckons activity coefficients from the ionic strength, all species from the free masters, and scales
    /// every master by what there should be of it over what there came out. A water like it shortens the search. `None`
    /// where no carbonate is left to be: the alkalinity is less than what the pH alone makes of it.
    pub(super) fn speciation(
        &self,
        ph: f64,
        totals: &Totals,
        closure: Closure,
        like: Option<&Speciation>,
    ) -> Option<Speciation> {
        let mut hydrogen = libm::exp10(-ph);
        let wanted = [totals.calcium, totals.magnesium, totals.sodium, 0.0, totals.sulfate];
        let mut active = wanted;
        let (mut strength, mut water) = (1e-4, 1.0);
        if let Some(like) = like {
            (strength, water) = (like.strength, like.water);
            for (value, known) in active.iter_mut().zip(&like.active) {
                if *known > 0.0 && *value > 0.0 {
                    *value = *known;
                }
            }
        }
        // So little that pairs don't show: the first round scales it up to what there should be.
        active[CARBONATE] = 1e-30;
        let mut found = None;
        for _ in 0..ROUNDS {
            let sums = self.sums(hydrogen, water, strength, &active, totals.chloride);
            let mut worst = 0.0_f64;
            for ((value, sum), wanted) in active.iter_mut().zip(&sums.masters).zip(&wanted) {
                if *wanted > 0.0 {
                    let scale = wanted / sum;
                    *value *= scale;
                    worst = worst.max((scale - 1.0).abs());
                }
            }
            let scale = match closure {
                Closure::Total(total) | Closure::TotalAndAlkalinity(total, _) if total > 0.0 => {
                    total / sums.masters[CARBONATE]
                }
                Closure::Total(_) | Closure::TotalAndAlkalinity(..) => 0.0,
                Closure::Alkalinity(wanted) => (wanted - sums.alkalinity_other) / sums.alkalinity_carbonate,
                Closure::Dioxide(wanted) => wanted / sums.dioxide,
            };
            if scale.is_nan() || scale < 0.0 {
                return None;
            }
            active[CARBONATE] *= scale;
            if active[CARBONATE] > 0.0 {
                worst = worst.max((scale - 1.0).abs());
            }
            if let Closure::TotalAndAlkalinity(_, wanted) = closure {
                let (step, follows) = sums.towards(wanted, scale);
                hydrogen *= libm::exp(step);
                active[CARBONATE] *= libm::exp(follows);
                worst = worst.max(step.abs());
            }
            worst = worst.max((sums.strength / strength - 1.0).abs());
            strength = sums.strength;
            water = 1.0 - 0.017 * sums.molality;
            found = Some((sums, worst));
            if worst <= SETTLED {
                break;
            }
        }
        let (sums, worst) = found?;
        // A few bits may go on changing for ever; more than that is no answer.
        (worst < 1e-9).then_some(Speciation {
            hydrogen,
            water,
            strength,
            carbonate: sums.masters[CARBONATE],
            alkalinity: sums.alkalinity_other + sums.alkalinity_carbonate,
            active,
            dioxide: sums.dioxide,
            dioxide_active: sums.dioxide_active,
        })
    }

    fn sums(&self, hydrogen: f64, water: f64, strength: f64, active: &[f64; MASTERS], chloride: f64) -> Sums {
        let mut sums = Sums::default();
        let mut twice_strength = 0.0;
        let coefficients = self.debye_huckel.coefficients(strength);
        for (species, constant) in SPECIES.iter().zip(&self.constants) {
            let mut activity = *constant * power(hydrogen, species.hydrogen) * power(water, species.water);
            for (value, part) in active.iter().zip(&species.parts) {
                for _ in 0..*part {
                    activity *= *value;
                }
            }
            let mut molality = activity / coefficients.get(species.size as usize).copied().unwrap_or(1.0);
            if species.name == Name::Chloride {
                molality = chloride;
            }
            for (sum, part) in sums.masters.iter_mut().zip(&species.parts) {
                *sum += molality * f64::from(*part);
            }
            let alkalinity = molality * f64::from(species.alkalinity);
            if species.parts[CARBONATE] > 0 {
                sums.alkalinity_carbonate += alkalinity;
            } else {
                sums.alkalinity_other += alkalinity;
            }
            let (protons, parts) = (f64::from(species.hydrogen), f64::from(species.parts[CARBONATE]));
            sums.alkalinity_by_hydrogen += alkalinity * protons;
            sums.alkalinity_by_carbonate += alkalinity * parts;
            sums.carbonate_by_hydrogen += molality * parts * protons;
            sums.carbonate_by_carbonate += molality * parts * parts;
            if species.name == Name::Dioxide {
                (sums.dioxide, sums.dioxide_active) = (molality, activity);
            }
            twice_strength += molality * f64::from(species.charge) * f64::from(species.charge);
            sums.molality += molality;
        }
        sums.strength = twice_strength / 2.0;
        sums
    }
}

/// What a round adds up.
#[derive(Clone, Copy, Debug, Default)]
struct Sums {
    masters: [f64; MASTERS],
    alkalinity_carbonate: f64,
    alkalinity_other: f64,
    dioxide: f64,
    dioxide_active: f64,
    strength: f64,
    molality: f64,
    /// How alkalinity and all carbonate change with the logarithms of the activities of H⁺ and of free carbonate.
    alkalinity_by_hydrogen: f64,
    alkalinity_by_carbonate: f64,
    carbonate_by_hydrogen: f64,
    carbonate_by_carbonate: f64,
}

/// No step of the search for a pH is longer than this, in logarithms of the activity of H⁺: a little over one pH.
const LONGEST_STEP: f64 = 2.5;

impl Sums {
    /// Newton's step towards an alkalinity after carbonate is scaled: of the logarithm of H⁺, and how free carbonate
    /// follows it when all carbonate stays.
    fn towards(&self, alkalinity: f64, scale: f64) -> (f64, f64) {
        let follows = if self.carbonate_by_carbonate > 0.0 {
            -self.carbonate_by_hydrogen / self.carbonate_by_carbonate
        } else {
            0.0
        };
        let rises = self.alkalinity_by_hydrogen + self.alkalinity_by_carbonate * follows;
        let miss = self.alkalinity_other + self.alkalinity_carbonate * scale - alkalinity;
        let step = (-miss / rises).between(-LONGEST_STEP, LONGEST_STEP);
        (step, step * follows)
    }
}

/// A small whole power by products, the same everywhere.
fn power(base: f64, exponent: i8) -> f64 {
    let mut value = 1.0;
    for _ in 0..exponent.unsigned_abs() {
        value *= base;
    }
    if exponent < 0 { 1.0 / value } else { value }
}
