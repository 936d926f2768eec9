//! Magnesia: how far it takes a water in passing, and how far in standing.

use super::analysis::CarbonateWater;
use super::mass;
use super::species::Speciation;
use crate::quantity::root::crossing;
use crate::quantity::{Concentration, Figure, Formula, Problem, Term};

/// Up to where magnesia is taken up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Until {
    /// The water is saturated with calcite: what there is to neutralise is neutralised. Where calcium or carbonate are too
    /// scarce for that it ends with brucite.
    Calcite,
    /// The water is saturated with brucite, what magnesia turns to: as far as it goes in standing water.
    Brucite,
}

/// Doublings of the first guess.
const DOUBLINGS: usize = 14;
const FIRST_MOLES: f64 = 1e-4;
const FOUND: f64 = 1e-13;

impl CarbonateWater {
    /// Magnesia that the water takes up until it is saturated, with no gas let in or out and nothing laid down; none
    /// where it is saturated already.
    ///
    /// # Errors
    /// [`Term::MagnesiaDissolved`] where no amount saturates it.
    ///
    /// # Sources
    /// Stoichiometry; constants as [`CarbonateWater::of`]; brucite as in the file wateq4f_PWN.dat of phreeqpython 1.6.2.
    ///
    /// # Example
    /// ```
    /// use bedwright_calc::life::carbonate::{Analysis, Carbonate, CarbonateWater, Until};
    /// use bedwright_calc::quantity::{Concentration, Known, kelvins};
    /// let mg = |x: f64| Known::typed(Concentration::milligrams_per_litre(x));
    /// let carbonate = Carbonate::AlkalinityAndDioxide { alkalinity: mg(40.0), dioxide: mg(20.0) };
    /// let water = CarbonateWater::of(&Analysis::new(Known::typed(kelvins(283.15)), carbonate, mg(40.0))).unwrap();
    /// let passing = water.magnesia_taken(Until::Calcite).unwrap().value;
    /// // Two of carbon dioxide want one of magnesia, 0.458 of its weight: 9.2 mg/L at most before carbonate forms.
    /// assert!(passing.to_milligrams_per_litre() > 8.0 && passing.to_milligrams_per_litre() < 11.0);
    /// let standing = water.magnesia_taken(Until::Brucite).unwrap().value;
    /// assert!(standing > passing);
    /// assert!(water.with(Concentration::default(), standing).unwrap().ph().value > 9.5);
    /// ```
    pub fn magnesia_taken(&self, until: Until) -> Result<Figure<Concentration>, Problem> {
        let chemistry = &self.chemistry;
        let index_of = |found: &Speciation| match until {
            Until::Calcite => chemistry.calcite_index(found).max(chemistry.brucite_index(found)),
            Until::Brucite => chemistry.brucite_index(found),
        };
        let index = |moles: f64| self.after(0.0, moles).map_or(f64::NAN, |(_, found)| index_of(&found));
        let mut moles = Some(0.0);
        if index_of(&self.speciation) < 0.0 {
            moles = None;
            let mut high = FIRST_MOLES;
            for _ in 0..DOUBLINGS {
                let found = index(high);
                if found.is_nan() {
                    break;
                }
                if found > 0.0 {
                    moles = Some(crossing(index, 0.0, high, FOUND));
                    break;
                }
                high *= 2.0;
            }
        }
        let moles = moles.ok_or(Problem::new(Term::MagnesiaDissolved, crate::quantity::Fault::NoSolution))?;
        let formula = match until {
            Until::Calcite => Formula::MagnesiaToCalcite,
            Until::Brucite => Formula::MagnesiaToBrucite,
        };
        Ok(self.figure(self.mass_of(moles, mass::MAGNESIUM_OXIDE), formula))
    }
}
