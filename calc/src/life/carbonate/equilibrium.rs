//! How much calcite a water takes until it is satisfied, and what it is then.

use std::cell::Cell;

use super::analysis::{CarbonateWater, per_kilogram};
use super::mass;
use super::species::{Chemistry, Closure, Speciation, Totals};
use crate::order::Between as _;
use crate::quantity::root::crossing;
use crate::quantity::{Caution, Concentration, Fault, Figure, Formula, Problem, Term};

/// Where a pH is looked for.
const PH: (f64, f64) = (1.0, 13.5);
/// Where it begins when no water like it is known, and its first step.
const PH_START: f64 = 7.0;
const FIRST_STEP: f64 = 0.1;
/// To what share of a pH, or of a dissolved amount, it is found.
const FOUND: f64 = 1e-13;

impl Chemistry {
    /// The water of this alkalinity: the pH at which what is dissolved makes it up. The alkalinity rises with the pH, so
    /// the place is fenced in from a water like it.
    pub(super) fn at_alkalinity(
        &self,
        totals: &Totals,
        closure: Closure,
        equivalents: f64,
        like: Option<&Speciation>,
    ) -> Option<Speciation> {
        let last = Cell::new(like.copied());
        let miss = |ph: f64| {
            let found = self.speciation(ph, totals, closure, last.get().as_ref());
            if found.is_some() {
                last.set(found);
            }
            found.map_or(f64::NAN, |found| found.alkalinity - equivalents)
        };
        let start = like.map_or(PH_START, Speciation::ph).between(PH.0, PH.1);
        let here = miss(start);
        let mut step = if here < 0.0 { FIRST_STEP } else { -FIRST_STEP };
        let (mut near, mut far) = (start, start);
        loop {
            far = (far + step).between(PH.0, PH.1);
            let there = miss(far);
            if there.is_nan() || here.is_nan() {
                return None;
            }
            if (there < 0.0) != (here < 0.0) {
                break;
            }
            if far <= PH.0 || far >= PH.1 {
                return None;
            }
            near = far;
            step *= 3.0;
        }
        miss(crossing(miss, near, far, FOUND));
        last.get()
    }
}

impl CarbonateWater {
    /// The water after so much calcite and magnesia went into solution, with no gas let in or out.
    ///
    /// Every mole of CaCO₃ brings one of calcium, one of carbonate and two equivalents of alkalinity; every mole of MgO one
    /// of magnesium and two equivalents. A negative amount was laid down.
    ///
    /// # Errors
    /// [`Term::CalciteDissolved`] or [`Term::MagnesiaDissolved`] when more is taken away than there is, or so much is put
    /// in that no pH up to 13.5 holds it.
    ///
    /// # Sources
    /// Stoichiometry; constants as [`CarbonateWater::of`].
    ///
    /// # Example
    /// See [`CarbonateWater::dissolved_to_saturation`].
    pub fn with(&self, calcite: Concentration, magnesia: Concentration) -> Result<CarbonateWater, Problem> {
        let kelvin = self.chemistry.kelvin;
        let calcite_moles = per_kilogram(calcite, mass::CALCIUM_CARBONATE, kelvin);
        let magnesia_moles = per_kilogram(magnesia, mass::MAGNESIUM_OXIDE, kelvin);
        self.with_moles(calcite_moles, magnesia_moles).ok_or_else(|| {
            let (term, value) = if magnesia_moles == 0.0 {
                (Term::CalciteDissolved, calcite)
            } else {
                (Term::MagnesiaDissolved, magnesia)
            };
            let nothing = Concentration::milligrams_per_litre(0.0);
            let most = Concentration::milligrams_per_litre(MOST_MG_L);
            Problem::new(term, Fault::OutOfRange { value: value.into(), low: nothing.into(), high: most.into() })
        })
    }

    pub(super) fn with_moles(&self, calcite: f64, magnesia: f64) -> Option<CarbonateWater> {
        let (totals, speciation) = self.after(calcite, magnesia)?;
        Some(CarbonateWater {
            chemistry: self.chemistry.clone(),
            totals,
            speciation,
            inputs: self.inputs.clone(),
            cautions: self.cautions.clone(),
        })
    }

    /// What is dissolved after so many moles a kilogram of calcite and of magnesia.
    pub(super) fn after(&self, calcite: f64, magnesia: f64) -> Option<(Totals, Speciation)> {
        let (totals, carbonate, equivalents) = self.totals_after(calcite, magnesia)?;
        // Newton's way is quick and mostly arrives; where it doesn't, the pH is fenced in.
        let newton = Closure::TotalAndAlkalinity(carbonate, equivalents);
        let found = self
            .chemistry
            .speciation(self.speciation.ph(), &totals, newton, Some(&self.speciation))
            .filter(|found| (PH.0..=PH.1).contains(&found.ph()))
            .or_else(|| {
                self.chemistry.at_alkalinity(&totals, Closure::Total(carbonate), equivalents, Some(&self.speciation))
            })?;
        Some((totals, found))
    }

    fn totals_after(&self, calcite: f64, magnesia: f64) -> Option<(Totals, f64, f64)> {
        let totals = Totals {
            calcium: self.totals.calcium + calcite,
            magnesium: self.totals.magnesium + magnesia,
            ..self.totals
        };
        let carbonate = self.speciation.carbonate + calcite;
        let equivalents = self.speciation.alkalinity + 2.0 * (calcite + magnesia);
        if totals.calcium < 0.0 || carbonate < 0.0 {
            return None;
        }
        Some((totals, carbonate, equivalents))
    }

    /// How much calcite the water takes up until it is saturated, with no gas let in or out; negative where it lays
    /// some down.
    ///
    /// # Errors
    /// [`Term::CalciteDissolved`] where no amount up to what a bed could give saturates it.
    ///
    /// # Sources
    /// As [`CarbonateWater::of`]; checked on 300 waters against PHREEQC 3.7.3.
    ///
    /// # Example
    /// ```
    /// use bedwright_calc::life::carbonate::{Analysis, Carbonate, CarbonateWater};
    /// use bedwright_calc::quantity::{Concentration, Known, kelvins};
    /// let mg = |x: f64| Known::typed(Concentration::milligrams_per_litre(x));
    /// // Pure water with 20 mg/L of carbonate counted as carbon dioxide at 15 °C: PHREEQC dissolves 46.5 mg/L and ends at
    /// // pH 8.48. Of the 20 some 0.58 are bicarbonate from the start.
    /// let analysis = Analysis::new(
    ///     Known::typed(kelvins(288.15)),
    ///     Carbonate::AlkalinityAndDioxide { alkalinity: mg(0.0), dioxide: mg(19.42) },
    ///     mg(0.0),
    /// );
    /// let water = CarbonateWater::of(&analysis).unwrap();
    /// let dissolved = water.dissolved_to_saturation().unwrap();
    /// assert!((dissolved.value.to_milligrams_per_litre() - 46.5).abs() < 0.06);
    /// let after = water.with(dissolved.value, Concentration::default()).unwrap();
    /// assert!((after.ph().value - 8.48).abs() < 0.006);
    /// ```
    pub fn dissolved_to_saturation(&self) -> Result<Figure<Concentration>, Problem> {
        let moles = self.saturating_moles().ok_or(Problem::new(Term::CalciteDissolved, Fault::NoSolution))?;
        let mut figure = self.figure(self.mass_of(moles, mass::CALCIUM_CARBONATE), Formula::CalciteToSaturation);
        if moles < 0.0 {
            figure =
                figure.with(Caution::Supersaturated { index: self.chemistry.calcite_index(&self.speciation).into() });
        }
        Ok(figure)
    }

    /// Moles a kilogram.
    pub(super) fn saturating_moles(&self) -> Option<f64> {
        let index =
            |moles: f64| self.after(moles, 0.0).map_or(f64::NAN, |(_, found)| self.chemistry.calcite_index(&found));
        if self.chemistry.calcite_index(&self.speciation) > 0.0 {
            // Laid down until it is satisfied; there is less calcium or carbonate left than either holds.
            let least = self.totals.calcium.min(self.speciation.carbonate);
            let low = -least * (1.0 - 1e-9);
            return (index(low) < 0.0).then(|| crossing(index, low, 0.0, FOUND));
        }
        // All the carbon dioxide, the strong acid that is left, and what pure water takes; doubled until it is too much.
        let mut high = self.speciation.dioxide + self.speciation.alkalinity.abs() + 2e-4;
        for _ in 0..DOUBLINGS {
            let found = index(high);
            if found.is_nan() {
                return None;
            }
            if found > 0.0 {
                return Some(crossing(index, 0.0, high, FOUND));
            }
            high *= 2.0;
        }
        None
    }
}

/// Doublings of the first guess: a thousand times it.
const DOUBLINGS: usize = 10;
/// As much as a bed ever gives a litre.
const MOST_MG_L: f64 = 5000.0;

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::indexing_slicing)] // A test says what is wrong by panicking.
mod tests {
    use super::*;
    use crate::life::carbonate::{Analysis, Carbonate};
    use crate::quantity::{Known, kelvins};

    fn milligrams(value: f64) -> Known<Concentration> {
        Known::typed(Concentration::milligrams_per_litre(value))
    }

    fn water(celsius: f64, ph: f64, alkalinity: f64, calcium: f64, magnesium: f64) -> CarbonateWater {
        let carbonate = Carbonate::PhAndAlkalinity { ph: Known::typed(ph), alkalinity: milligrams(alkalinity) };
        let mut analysis = Analysis::new(Known::typed(kelvins(celsius + 273.15)), carbonate, milligrams(calcium));
        analysis.magnesium = Some(milligrams(magnesium));
        CarbonateWater::of(&analysis).unwrap()
    }

    /// Two ways to one pH: Newton's steps, and fencing it in.
    #[test]
    fn both_ways_to_a_ph_meet() {
        for step in 0..40 {
            let step = f64::from(step);
            let water = water(1.0 + step * 0.9, 5.2 + 0.1 * step, 5.0 + 7.0 * step, 3.0 * step, 200.0 - 5.0 * step);
            for calcite in [0.0, 1e-4, 1e-3] {
                let (_, quick) = water.after(calcite, 0.0).unwrap();
                let (totals, carbonate, equivalents) = water.totals_after(calcite, 0.0).unwrap();
                let fenced =
                    water.chemistry.at_alkalinity(&totals, Closure::Total(carbonate), equivalents, None).unwrap();
                assert!((quick.ph() - fenced.ph()).abs() < 1e-10, "{} {}", quick.ph(), fenced.ph());
                assert!((quick.strength / fenced.strength - 1.0).abs() < 1e-10);
            }
        }
    }

    #[test]
    fn nothing_dissolved_changes_nothing() {
        let before = water(12.0, 6.8, 40.0, 25.0, 10.0);
        let after = before.with(Concentration::default(), Concentration::default()).unwrap();
        assert!((after.ph().value - before.ph().value).abs() < 1e-12);
        assert!((after.saturation_index().value - before.saturation_index().value).abs() < 1e-12);
    }

    #[test]
    fn a_milligram_of_calcite_brings_a_milligram_of_hardness_and_of_alkalinity() {
        let before = water(12.0, 6.4, 20.0, 15.0, 5.0);
        let after = before.with(Concentration::milligrams_per_litre(30.0), Concentration::default()).unwrap();
        let rise = |found: f64, was: f64| (found - was - 0.030).abs() < 1e-9;
        assert!(rise(
            after.hardness().value.to_kilograms_per_cubic_metre(),
            before.hardness().value.to_kilograms_per_cubic_metre()
        ));
        assert!(rise(
            after.alkalinity().value.to_kilograms_per_cubic_metre(),
            before.alkalinity().value.to_kilograms_per_cubic_metre()
        ));
    }

    #[test]
    fn more_is_not_taken_away_than_there_is() {
        let water = water(12.0, 8.4, 200.0, 100.0, 0.0);
        let problem = water.with(Concentration::milligrams_per_litre(-101.0), Concentration::default()).err().unwrap();
        assert_eq!(problem.term, Term::CalciteDissolved);
    }

    #[test]
    fn a_supersaturated_water_says_so() {
        let found = water(25.0, 8.8, 200.0, 200.0, 0.0).dissolved_to_saturation().unwrap();
        assert!(found.value.to_milligrams_per_litre() < 0.0);
        assert!(matches!(found.cautions.as_slice(), [Caution::Supersaturated { .. }]));
    }
}
