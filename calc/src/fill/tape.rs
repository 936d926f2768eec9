//! Tape readings and how far the real one may be off.

use crate::quantity::{Assumption, Basis, Figure, Formula, Length, Term, metres};
use crate::vessel::{Cavity, Vessel};

/// A tape reading to expect.
#[derive(Clone, Debug, PartialEq)]
pub struct Tape {
    /// From the datum down to the surface.
    pub reading: Figure<Length>,
    /// Nine of ten readings fall within this much of it, both ways.
    pub spread: Length,
    /// One standard deviation each of what moves it: diameter, packs, tape, assumed depth.
    pub moved_by: [Length; 4],
}

/// The reading after `volume` has been poured, whose own variance is `variance` (m³ squared).
///
/// The spread joins independent things: the inside diameter, the inside depth while it is assumed, what was in the packs,
/// and reading the tape.
pub(crate) fn tape_after(
    vessel: &Vessel,
    volume: f64,
    variance: f64,
    height: f64,
    inputs: &[crate::quantity::Input],
) -> Tape {
    let depth = vessel.measures.inside_depth;
    let mut inputs = inputs.to_vec();
    inputs.push(depth.input(Term::InsideDepth));
    let reading = Figure::new(metres(depth.value.value - height), Formula::TapeReading, inputs);
    let by_diameter = moved_by_diameter(vessel, height, &|cavity| cavity.height_of(volume));
    let area = vessel.cavity.free_area(height);
    let by_packs = if area > 0.0 { variance / (area * area) } else { 0.0 };
    let tape = Assumption::SpreadTape.ratio();
    // A depth that nobody measured moves every reading with it.
    let by_depth = if depth.basis == Basis::Assumed { Assumption::SpreadDepthAssumed.ratio() } else { 0.0 };
    let variance = by_diameter * by_diameter + by_packs + tape * tape + by_depth * by_depth;
    let spread = Assumption::Spread595.ratio() * variance.sqrt();
    let moved_by = [by_diameter.abs(), by_packs.sqrt(), tape, by_depth].map(metres);
    Tape { reading, spread: metres(spread), moved_by }
}

/// How far one standard deviation of the inside diameter moves a surface that stands at `height`; `again` says where it
/// stands in a vessel of another diameter, if it fits.
pub(super) fn moved_by_diameter(vessel: &Vessel, height: f64, again: &dyn Fn(&Cavity) -> Option<f64>) -> f64 {
    let sigma = vessel.diameter_tolerance();
    let at = |scale: f64| vessel.cavity_scaled(scale).and_then(|cavity| again(&cavity));
    match (at(1.0 - sigma), at(1.0 + sigma)) {
        (Some(narrow), Some(wide)) => (narrow - wide) / 2.0,
        (None, Some(wide)) => height - wide,
        (Some(narrow), None) => narrow - height,
        (None, None) => 0.0,
    }
}
