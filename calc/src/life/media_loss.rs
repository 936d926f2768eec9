//! Media lost, from tape readings of one vessel in one state.

use crate::material::Pack;
use crate::quantity::problem::between;
use crate::quantity::{
    Assumption, Figure, Formula, Known, Length, Mass, MassDensity, Problem, Term, Volume, cubic_metres, kilograms,
    metres,
};
use crate::vessel::Vessel;

/// What two tape readings say of the surface between them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Surface {
    /// It lies as it lay, within the spread of reading a tape and of settling: no top-up.
    AsBefore,
    /// It lies lower than settling explains: media is lost.
    Lower,
    /// It lies higher than before: more was filled in, or it lies more loosely, or a reading is of another state.
    Higher,
}

/// Media lost between two tape readings.
#[derive(Clone, Debug, PartialEq)]
pub struct MediaLoss {
    /// What became of the surface.
    pub surface: Surface,
    /// How much lower it lies than settling explains; negative where it rose.
    pub length: Figure<Length>,
    /// Nine of ten lengths fall within this much of the true one.
    pub spread: Length,
    /// The volume that is lost.
    pub volume: Figure<Volume>,
    /// Its weight.
    pub mass: Figure<Mass>,
    /// Packs of it, where a pack is told.
    pub packs: Option<Figure<f64>>,
}

/// Media lost between two tape readings of one vessel, taken in the same state from the same datum.
///
/// ```text
/// ΔV = V(h₁ − s·(h₁ − h₀)) − V(h₂); m = ρ_bulk·ΔV
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | h₁, h₂ | inside depth less `before`, less `after`: heights of the surface on the axis | m |
/// | h₀ | `floor`: height of the surface the media lie on | m |
/// | s | `settling`: share of its depth that a bed settles by between the two | – |
/// | ρ_bulk | `density`, as poured | kg/m³ |
///
/// A lower surface never says less is lost. The spread joins reading the tape twice and the settling, which may be out by
/// half of itself; the diameter and the inside depth are the same both times.
///
/// # Errors
/// [`Term::TapeBefore`], [`Term::TapeAfter`] outside the vessel or below the floor the media lie on; [`Term::Settling`]
/// outside 0 to 0.3; as [`crate::vessel::cavity::Cavity::volume_below`].
///
/// # Sources
/// Arithmetic.
///
/// # Example
/// By hand, in a straight side: 0.60 m across, 40 mm lower, sand of 1600 kg/m³: π/4·0.36·0.040 = 0.01131 m³, 18.1 kg.
/// ```
/// use bedwright_calc::life::media_lost;
/// use bedwright_calc::quantity::{Known, kilograms_per_cubic_metre, metres};
/// use bedwright_calc::vessel::{BottomCollector, DiameterBy, Head, Measures, Opening, Vessel};
/// let length = |x: f64| Known::measured(metres(x));
/// let vessel = Vessel::new(Measures {
///     nominal_diameter: None, diameter_by: DiameterBy::Measured { inside: length(0.6) }, inside_depth: length(1.8),
///     bottom_head: Head::Flat, top_head: Head::Flat, neck_height: length(0.0), clear_bore: length(0.1),
///     opening: Opening::TopOnly, riser: None, bottom_collector: BottomCollector::None, upper_collector: None,
/// }).unwrap();
/// let density = Known::measured(kilograms_per_cubic_metre(1600.0));
/// let lost = media_lost(&vessel, metres(0.0), &length(0.9), &length(0.94), &Known::measured(0.0), &density, None).unwrap();
/// assert!((lost.volume.value.value - 0.01131).abs() < 5e-6);
/// assert!((lost.mass.value.value - 18.1).abs() < 0.05);
/// ```
pub fn media_lost(
    vessel: &Vessel,
    floor: Length,
    before: &Known<Length>,
    after: &Known<Length>,
    settling: &Known<f64>,
    density: &Known<MassDensity>,
    pack: Option<&Pack>,
) -> Result<MediaLoss, Problem> {
    let depth = vessel.measures.inside_depth.value.value;
    for (term, tape) in [(Term::TapeBefore, before), (Term::TapeAfter, after)] {
        between(term, tape.value.value, (0.0, depth - floor.value), |x| metres(x).into())?;
    }
    between(Term::Settling, settling.value, (0.0, 0.3), Into::into)?;
    crate::quantity::problem::positive(Term::BulkDensity, density.value.value, density.value.into())?;
    let (was, is) = (depth - before.value.value, depth - after.value.value);
    let settled = settling.value * (was - floor.value);
    let below = |height: f64| vessel.cavity.volume_below(metres(height));
    let lost = below(was - settled)?.value - below(is)?.value;
    let tape = Assumption::SpreadTape.ratio();
    let unsure = settled / 2.0;
    let spread = Assumption::Spread595.ratio() * (2.0 * tape * tape + unsure * unsure).sqrt();
    let length = was - settled - is;
    let surface = if length > spread {
        Surface::Lower
    } else if length < -spread {
        Surface::Higher
    } else {
        Surface::AsBefore
    };
    let of_length = vec![before.input(Term::TapeBefore), after.input(Term::TapeAfter), settling.input(Term::Settling)];
    let mut of_volume = of_length.clone();
    of_volume.push(vessel.inside_diameter.input(Term::InsideDiameter));
    of_volume.push(vessel.measures.inside_depth.input(Term::InsideDepth));
    let volume = Figure::new(cubic_metres(lost), Formula::MediaLost, of_volume);
    let mass = Figure::new(
        kilograms(lost * density.value.value),
        Formula::LayerMass,
        vec![volume.input(Term::LayerVolume), density.input(Term::BulkDensity)],
    );
    let packs = pack.and_then(|pack| match (&pack.volume, &pack.mass) {
        (Some(of), _) => Some(Figure::new(
            lost / of.value.value,
            Formula::PacksNeeded,
            vec![volume.input(Term::LayerVolume), of.input(Term::PackVolume)],
        )),
        (None, Some(of)) => Some(Figure::new(
            mass.value.value / of.value.value,
            Formula::PacksNeeded,
            vec![mass.input(Term::LayerMass), of.input(Term::PackMass)],
        )),
        (None, None) => None,
    });
    Ok(MediaLoss {
        surface,
        length: Figure::new(metres(length), Formula::SurfaceLower, of_length),
        spread: metres(spread),
        volume,
        mass,
        packs,
    })
}
