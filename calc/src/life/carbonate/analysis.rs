//! A water's analysis, as a laboratory or a test kit gives it, and the water that it makes.

use super::mass;
use super::species::{Chemistry, Closure, Speciation, Totals};
use crate::quantity::problem::between;
use crate::quantity::{
    Amount, Caution, Concentration, Fault, Figure, Formula, Input, Known, Problem, Temperature, Term, kelvins,
};
use crate::water::{CELSIUS_ZERO_K, fluid_at};

/// What is known of the carbonate: two of pH, alkalinity and carbon dioxide.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Carbonate {
    /// The usual analysis.
    PhAndAlkalinity {
        /// pH.
        ph: Known<f64>,
        /// Alkalinity, as calcium carbonate.
        alkalinity: Known<Concentration>,
    },
    /// pH, and dissolved carbon dioxide from a titration.
    PhAndDioxide {
        /// pH.
        ph: Known<f64>,
        /// Free carbon dioxide.
        dioxide: Known<Concentration>,
    },
    /// Alkalinity and dissolved carbon dioxide, where the pH is not trusted.
    AlkalinityAndDioxide {
        /// Alkalinity, as calcium carbonate.
        alkalinity: Known<Concentration>,
        /// Free carbon dioxide.
        dioxide: Known<Concentration>,
    },
}

/// The analysis of a water.
#[derive(Clone, Debug, PartialEq)]
pub struct Analysis {
    /// The water's temperature.
    pub temperature: Known<Temperature>,
    /// What is known of the carbonate.
    pub carbonate: Carbonate,
    /// Calcium hardness, as calcium carbonate.
    pub calcium: Known<Concentration>,
    /// Magnesium hardness, as calcium carbonate.
    pub magnesium: Option<Known<Concentration>>,
    /// Sodium.
    pub sodium: Option<Known<Concentration>>,
    /// Sulfate.
    pub sulfate: Option<Known<Concentration>>,
    /// Chloride.
    pub chloride: Option<Known<Concentration>>,
    /// Everything dissolved.
    pub dissolved_solids: Option<Known<Concentration>>,
}

/// What a treated or treatable water may hold, mg/L; beyond, the activity model is not made for it.
const HARDNESS: (f64, f64) = (0.0, 5000.0);
const ALKALINITY: (f64, f64) = (0.0, 5000.0);
const DIOXIDE: (f64, f64) = (0.0, 2000.0);
const SALT: (f64, f64) = (0.0, 10_000.0);
const PH: (f64, f64) = (3.0, 11.0);
const TEMPERATURE_K: (f64, f64) = (CELSIUS_ZERO_K, CELSIUS_ZERO_K + 60.0);

/// From here on a whole analysis doesn't balance well enough to be trusted, and from here on not at all.
const BALANCE_CAUTION: f64 = 0.05;
const BALANCE_MOST: f64 = 0.25;

/// A water of which everything dissolved is known.
pub struct CarbonateWater {
    pub(super) chemistry: Chemistry,
    pub(super) totals: Totals,
    pub(super) speciation: Speciation,
    pub(super) inputs: Vec<Input>,
    pub(super) cautions: Vec<Caution>,
}

impl CarbonateWater {
    /// Everything dissolved in a water, from its analysis.
    ///
    /// Charges must balance: what cations lack is taken for sodium, what anions lack for chloride, after dissolved
    /// solids beyond the ions named were taken for sodium chloride. A litre is taken to hold as much water as a litre of
    /// pure water does at that temperature.
    ///
    /// # Errors
    /// [`Term::WaterTemperature`] outside 0 to 60 °C; [`Term::Ph`] outside 3 to 11; a concentration outside what fresh
    /// and slightly salted waters hold; [`Term::Alkalinity`] when it is less than what the pH alone makes of it;
    /// [`Term::ChargeBalance`] when sodium and chloride are both given and the charges miss by more than a quarter.
    ///
    /// # Sources
    /// Constants and activity model: L. N. Plummer and E. Busenberg (1982), Geochim. Cosmochim. Acta 46, 1011–1040, and
    /// ion pairs as in the file phreeqc.dat of PHREEQC 3 (D. L. Parkhurst and C. A. J. Appelo, USGS Techniques and
    /// Methods 6-A43, 2013), read in the package phreeqpython 1.6.2.
    ///
    /// # Example
    /// ```
    /// use bedwright_calc::life::carbonate::{Analysis, Carbonate, CarbonateWater};
    /// use bedwright_calc::quantity::{Concentration, Known, kelvins};
    /// let mg = |x: f64| Known::typed(Concentration::milligrams_per_litre(x));
    /// let mut analysis = Analysis::new(
    ///     Known::typed(kelvins(288.15)),
    ///     Carbonate::PhAndDioxide { ph: Known::typed(6.5), dioxide: mg(20.0) },
    ///     mg(20.0),
    /// );
    /// let water = CarbonateWater::of(&analysis).unwrap();
    /// // Stumm and Morgan's rule of thumb pH = pK₁ + log([HCO₃⁻]/[CO₂]): 6.5 = 6.42 + log(x/0.455), x = 0.55 mmol/L, 27 mg/L.
    /// assert!((water.alkalinity().value.to_milligrams_per_litre() - 27.0).abs() < 2.0);
    /// analysis.carbonate = Carbonate::PhAndAlkalinity { ph: Known::typed(9.5), alkalinity: mg(0.0) };
    /// assert!(CarbonateWater::of(&analysis).is_err());
    /// ```
    pub fn of(analysis: &Analysis) -> Result<CarbonateWater, Problem> {
        analysis.check()?;
        let kelvin = analysis.temperature.value.value;
        let chemistry = Chemistry::at(kelvin);
        let moles = |known: Option<Known<Concentration>>, molar_mass: f64| {
            known.map_or(0.0, |known| per_kilogram(known.value, molar_mass, kelvin))
        };
        let given = Totals {
            calcium: moles(Some(analysis.calcium), mass::CALCIUM_CARBONATE),
            magnesium: moles(analysis.magnesium, mass::CALCIUM_CARBONATE),
            sodium: moles(analysis.sodium, mass::SODIUM),
            sulfate: moles(analysis.sulfate, mass::SULFATE),
            chloride: moles(analysis.chloride, mass::CHLORIDE),
        };
        // Where the alkalinity is not given it depends a little on the ions that balance it.
        let mut totals = given;
        let mut speciation = chemistry.of_analysis(analysis, &totals)?;
        let mut miss = 0.0;
        for _ in 0..BALANCINGS {
            (totals, miss) = balanced(&given, speciation.alkalinity, analysis.dissolved_solids, kelvin);
            speciation = chemistry.of_analysis(analysis, &totals)?;
            if !matches!(analysis.carbonate, Carbonate::PhAndDioxide { .. }) {
                break;
            }
        }
        let mut cautions = Vec::new();
        if analysis.sodium.is_some() && analysis.chloride.is_some() && analysis.dissolved_solids.is_none() {
            if miss.abs() > BALANCE_MOST {
                return Err(Problem::new(
                    Term::ChargeBalance,
                    Fault::OutOfRange {
                        value: Amount::Ratio(miss),
                        low: Amount::Ratio(-BALANCE_MOST),
                        high: Amount::Ratio(BALANCE_MOST),
                    },
                ));
            }
            if miss.abs() > BALANCE_CAUTION {
                cautions.push(Caution::ChargesMiss { share: Amount::Ratio(miss) });
            }
        }
        Ok(CarbonateWater { chemistry, totals, speciation, inputs: analysis.inputs(), cautions })
    }

    /// Its pH.
    #[must_use]
    pub fn ph(&self) -> Figure<f64> {
        self.figure(self.speciation.ph(), Formula::CarbonatePh)
    }

    /// Its alkalinity, as calcium carbonate.
    #[must_use]
    pub fn alkalinity(&self) -> Figure<Concentration> {
        self.figure(
            self.mass_of(self.speciation.alkalinity / 2.0, mass::CALCIUM_CARBONATE),
            Formula::CarbonateAlkalinity,
        )
    }

    /// Calcium and magnesium, as calcium carbonate.
    #[must_use]
    pub fn hardness(&self) -> Figure<Concentration> {
        let moles = self.totals.calcium + self.totals.magnesium;
        self.figure(self.mass_of(moles, mass::CALCIUM_CARBONATE), Formula::TotalHardness)
    }

    /// Its free carbon dioxide.
    #[must_use]
    pub fn carbon_dioxide(&self) -> Figure<Concentration> {
        self.figure(self.mass_of(self.speciation.dioxide, mass::CARBON_DIOXIDE), Formula::CarbonDioxide)
    }

    /// How far it is from saturation with calcite: below nought it dissolves calcite, above it lays some down.
    ///
    /// A water without calcium dissolves without end on this scale; its figure is as low as the scale of doubles goes.
    #[must_use]
    pub fn saturation_index(&self) -> Figure<f64> {
        self.figure(self.chemistry.calcite_index(&self.speciation), Formula::SaturationIndex)
    }

    /// Half the sum of each ion's molality times the square of its charge.
    #[must_use]
    pub fn ionic_strength(&self) -> f64 {
        self.speciation.strength
    }

    pub(super) fn mass_of(&self, moles_per_kilogram: f64, molar_mass: f64) -> Concentration {
        concentration_of(moles_per_kilogram, molar_mass, self.chemistry.kelvin)
    }

    pub(super) fn figure<Q>(&self, value: Q, formula: Formula) -> Figure<Q> {
        let mut figure = Figure::new(value, formula, self.inputs.clone());
        figure.cautions.clone_from(&self.cautions);
        figure
    }
}

/// Rounds in which charges and alkalinity settle on each other; each leaves a thousandth of the miss before.
const BALANCINGS: usize = 6;

impl Chemistry {
    fn of_analysis(&self, analysis: &Analysis, totals: &Totals) -> Result<Speciation, Problem> {
        let per_kilogram = |known: &Known<Concentration>, molar: f64| per_kilogram(known.value, molar, self.kelvin);
        match &analysis.carbonate {
            Carbonate::PhAndAlkalinity { ph, alkalinity } => {
                let equivalents = 2.0 * per_kilogram(alkalinity, mass::CALCIUM_CARBONATE);
                self.speciation(ph.value, totals, Closure::Alkalinity(equivalents), None).ok_or(Problem::new(
                    Term::Alkalinity,
                    Fault::NotAbove { value: alkalinity.value.into(), other: Term::Ph, limit: ph.value.into() },
                ))
            }
            Carbonate::PhAndDioxide { ph, dioxide } => {
                let moles = per_kilogram(dioxide, mass::CARBON_DIOXIDE);
                self.speciation(ph.value, totals, Closure::Dioxide(moles), None)
                    .ok_or(Problem::new(Term::CarbonDioxide, Fault::NoSolution))
            }
            Carbonate::AlkalinityAndDioxide { alkalinity, dioxide } => {
                let equivalents = 2.0 * per_kilogram(alkalinity, mass::CALCIUM_CARBONATE);
                let moles = per_kilogram(dioxide, mass::CARBON_DIOXIDE);
                self.at_alkalinity(totals, Closure::Dioxide(moles), equivalents, None)
                    .ok_or(Problem::new(Term::Alkalinity, Fault::NoSolution))
            }
        }
    }
}

/// The totals with charges balanced, and by what share of all charge the given ones missed: cations too many are above
/// nought.
fn balanced(given: &Totals, alkalinity: f64, solids: Option<Known<Concentration>>, kelvin: f64) -> (Totals, f64) {
    let mut totals = *given;
    let cations = 2.0 * given.calcium + 2.0 * given.magnesium + given.sodium;
    let anions = 2.0 * given.sulfate + given.chloride + alkalinity;
    let missing = cations - anions;
    if missing > 0.0 {
        totals.chloride += missing;
    } else {
        totals.sodium -= missing;
    }
    if let Some(solids) = solids {
        let named = totals.calcium * mass::CALCIUM
            + totals.magnesium * mass::MAGNESIUM
            + totals.sodium * mass::SODIUM
            + totals.sulfate * mass::SULFATE
            + totals.chloride * mass::CHLORIDE
            + alkalinity.max(0.0) * mass::DRIED_ALKALINITY;
        let salt = per_kilogram(solids.value, 1.0, kelvin) - named;
        if salt > 0.0 {
            totals.sodium += salt / (mass::SODIUM + mass::CHLORIDE);
            totals.chloride += salt / (mass::SODIUM + mass::CHLORIDE);
        }
    }
    let all = cations.abs() + anions.abs();
    (totals, if all > 0.0 { missing / all } else { 0.0 })
}

/// Moles in a kilogram of water, of a mass in its volume.
pub(super) fn per_kilogram(concentration: Concentration, molar_mass: f64, kelvin: f64) -> f64 {
    concentration.to_kilograms_per_cubic_metre() / molar_mass / fluid_at(kelvin).density
}

/// The mass in a volume, of moles in a kilogram of water.
pub(super) fn concentration_of(moles_per_kilogram: f64, molar_mass: f64, kelvin: f64) -> Concentration {
    Concentration::kilograms_per_cubic_metre(moles_per_kilogram * molar_mass * fluid_at(kelvin).density)
}

impl Analysis {
    /// An analysis of what a neutralising filter needs to know at least.
    #[must_use]
    pub const fn new(temperature: Known<Temperature>, carbonate: Carbonate, calcium: Known<Concentration>) -> Analysis {
        Analysis {
            temperature,
            carbonate,
            calcium,
            magnesium: None,
            sodium: None,
            sulfate: None,
            chloride: None,
            dissolved_solids: None,
        }
    }

    fn check(&self) -> Result<(), Problem> {
        between(Term::WaterTemperature, self.temperature.value.value, TEMPERATURE_K, |x| kelvins(x).into())?;
        let milligrams = |term: Term, known: &Known<Concentration>, range: (f64, f64)| {
            between(term, known.value.to_milligrams_per_litre(), range, |x| {
                Concentration::milligrams_per_litre(x).into()
            })
        };
        match &self.carbonate {
            Carbonate::PhAndAlkalinity { ph, alkalinity } => {
                between(Term::Ph, ph.value, PH, Amount::Ratio)?;
                milligrams(Term::Alkalinity, alkalinity, ALKALINITY)?;
            }
            Carbonate::PhAndDioxide { ph, dioxide } => {
                between(Term::Ph, ph.value, PH, Amount::Ratio)?;
                milligrams(Term::CarbonDioxide, dioxide, DIOXIDE)?;
            }
            Carbonate::AlkalinityAndDioxide { alkalinity, dioxide } => {
                milligrams(Term::Alkalinity, alkalinity, ALKALINITY)?;
                milligrams(Term::CarbonDioxide, dioxide, DIOXIDE)?;
            }
        }
        milligrams(Term::CalciumHardness, &self.calcium, HARDNESS)?;
        for (term, known, range) in [
            (Term::MagnesiumHardness, &self.magnesium, HARDNESS),
            (Term::Sodium, &self.sodium, SALT),
            (Term::Sulfate, &self.sulfate, SALT),
            (Term::Chloride, &self.chloride, SALT),
            (Term::DissolvedSolids, &self.dissolved_solids, SALT),
        ] {
            if let Some(known) = known {
                milligrams(term, known, range)?;
            }
        }
        Ok(())
    }

    fn inputs(&self) -> Vec<Input> {
        let mut inputs = vec![self.temperature.input(Term::WaterTemperature)];
        match &self.carbonate {
            Carbonate::PhAndAlkalinity { ph, alkalinity } => {
                inputs.push(ph.input(Term::Ph));
                inputs.push(alkalinity.input(Term::Alkalinity));
            }
            Carbonate::PhAndDioxide { ph, dioxide } => {
                inputs.push(ph.input(Term::Ph));
                inputs.push(dioxide.input(Term::CarbonDioxide));
            }
            Carbonate::AlkalinityAndDioxide { alkalinity, dioxide } => {
                inputs.push(alkalinity.input(Term::Alkalinity));
                inputs.push(dioxide.input(Term::CarbonDioxide));
            }
        }
        inputs.push(self.calcium.input(Term::CalciumHardness));
        for (term, known) in [
            (Term::MagnesiumHardness, &self.magnesium),
            (Term::Sodium, &self.sodium),
            (Term::Sulfate, &self.sulfate),
            (Term::Chloride, &self.chloride),
            (Term::DissolvedSolids, &self.dissolved_solids),
        ] {
            inputs.extend(known.as_ref().map(|known| known.input(term)));
        }
        inputs
    }
}
