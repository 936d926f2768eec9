//! The sizes vessels are sold by: a start until something is measured.

use std::marker::PhantomData;

use super::Head;
use crate::quantity::{
    Assumption, Caution, Figure, Formula, Known, Length, Problem, Source, Term, metres, problem::positive,
};

/// A nominal diameter of the trade.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NominalDiameter {
    /// The diameter it is sold by; neither inside nor outside by any public standard.
    pub diameter: Length,
    /// The nominal height it is most often sold in.
    pub usual_height: Length,
    /// The head it usually has.
    pub usual_head: Head,
    /// The clear bore of its usual top opening.
    pub usual_bore: Length,
    /// Where it comes from.
    pub source: Source,
}

include!(concat!(env!("OUT_DIR"), "/vessels.rs"));

impl NominalDiameter {
    /// All that are sold, smallest first.
    #[must_use]
    pub fn all() -> &'static [NominalDiameter] {
        NOMINAL_DIAMETERS
    }

    /// The one of exactly this diameter (to a hundredth of an inch).
    #[must_use]
    pub fn of(diameter: Length) -> Option<&'static NominalDiameter> {
        NOMINAL_DIAMETERS.iter().find(|row| (row.diameter.value - diameter.value).abs() < 0.000_254)
    }
}

/// The inside depth to start from: one inch under the nominal height.
///
/// # Errors
/// [`Term::NominalHeight`] that leaves nothing.
///
/// # Sources
/// From memory; measure it.
///
/// # Example
/// ```
/// use bedwright_calc::quantity::{Known, metres};
/// let depth = bedwright_calc::vessel::nominal::inside_depth_nominal(&Known::typed(metres(52.0 * 0.0254))).unwrap();
/// assert!((depth.value.value / 0.0254 - 51.0).abs() < 1e-9);
/// ```
pub fn inside_depth_nominal(nominal_height: &Known<Length>) -> Result<Figure<Length>, Problem> {
    let under = Assumption::DepthUnderNominal.length();
    let depth = nominal_height.value.value - under.value.value;
    positive(Term::NominalHeight, depth, nominal_height.value.into())?;
    let inputs = vec![nominal_height.input(Term::NominalHeight), under.input(Term::DepthUnderNominal)];
    Ok(Figure::new(metres(depth), Formula::InsideDepthNominal, inputs).with(Caution::MeasureDepth))
}
