//! What iron and manganese ask of an oxidant.

use crate::quantity::problem::between;
use crate::quantity::{Concentration, Figure, Formula, Known, Problem, Term};

/// What oxidises iron and manganese.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Oxidant {
    /// Oxygen of the air.
    Oxygen,
    /// Chlorine, counted as Cl₂.
    Chlorine,
    /// Potassium permanganate.
    Permanganate,
}

/// Standard atomic weights, abridged (IUPAC 2021), g/mol.
const IRON: f64 = 55.845;
const MANGANESE: f64 = 54.938;

impl Oxidant {
    /// Its molar mass, g/mol, and how many electrons it takes.
    const fn row(self) -> (f64, f64) {
        match self {
            Oxidant::Oxygen => (31.998, 4.0),
            Oxidant::Chlorine => (70.90, 2.0),
            Oxidant::Permanganate => (158.032, 3.0),
        }
    }

    /// Milligrams of it for a milligram of iron, which gives one electron.
    #[must_use]
    pub fn per_iron(self) -> f64 {
        let (mass, electrons) = self.row();
        mass / electrons / IRON
    }

    /// Milligrams of it for a milligram of manganese, which gives two.
    #[must_use]
    pub fn per_manganese(self) -> f64 {
        let (mass, electrons) = self.row();
        2.0 * mass / electrons / MANGANESE
    }
}

/// The least of an oxidant that turns all dissolved iron and manganese.
///
/// Fe²⁺ → Fe³⁺ gives one electron, Mn²⁺ → MnO₂ two; O₂ takes four, Cl₂ two, MnO₄⁻ → MnO₂ three.
///
/// # Validity
/// Iron and manganese alone; sulfide, ammonia and organic matter take their own share.
///
/// # Errors
/// [`Term::Iron`] or [`Term::Manganese`] below zero or above 1000 mg/L.
///
/// # Sources
/// Stoichiometry with the standard atomic weights of 2021.
///
/// # Example
/// ```
/// use bedwright_calc::life::oxidant::{Oxidant, oxidant_demand};
/// use bedwright_calc::quantity::{Concentration, Known};
/// let mg = |x: f64| Known::typed(Concentration::milligrams_per_litre(x));
/// // Handbooks round to 0.94 mg of permanganate for iron and 1.92 for manganese.
/// let found = oxidant_demand(Oxidant::Permanganate, &mg(1.0), &mg(1.0)).unwrap();
/// assert!((found.value.to_milligrams_per_litre() - (0.94 + 1.92)).abs() < 0.01);
/// ```
pub fn oxidant_demand(
    oxidant: Oxidant,
    iron: &Known<Concentration>,
    manganese: &Known<Concentration>,
) -> Result<Figure<Concentration>, Problem> {
    let amount = |x: f64| Concentration::kilograms_per_cubic_metre(x).into();
    let (fe, mn) = (iron.value.to_kilograms_per_cubic_metre(), manganese.value.to_kilograms_per_cubic_metre());
    between(Term::Iron, fe, (0.0, 1.0), amount)?;
    between(Term::Manganese, mn, (0.0, 1.0), amount)?;
    Ok(Figure::new(
        Concentration::kilograms_per_cubic_metre(fe * oxidant.per_iron() + mn * oxidant.per_manganese()),
        Formula::OxidantDemand,
        vec![iron.input(Term::Iron), manganese.input(Term::Manganese)],
    ))
}
