//! What a tape reading says that isn't the one to expect: by how much, in packs, and what is likely.

use super::Layer;
use super::ladder::{Base, Packed, height_of};
use super::tape::Tape;
use crate::order;
use crate::quantity::{
    Assumption, Basis, Fault, Figure, Formula, Input, Known, Length, MassDensity, Problem, Term, cubic_metres,
    kilograms_per_cubic_metre, metres,
};
use crate::vessel::{DiameterBy, Vessel, diameter::inside_diameter};

/// A tape reading against the one to expect.
#[derive(Clone, Debug, PartialEq)]
pub struct Deviation {
    /// What was read.
    pub read: Known<Length>,
    /// How much higher the surface stands than expected; less than nought where it stands lower.
    pub higher: Figure<Length>,
    /// The same in packs of the layer.
    pub packs: Figure<f64>,
    /// Whether it lies within the spread: nothing to remark.
    pub within: bool,
    /// What would explain it, the least surprising first; none where there is nothing to explain.
    pub explanations: Vec<Explanation>,
}

/// What would make a reading the one to expect.
#[derive(Clone, Debug, PartialEq)]
pub enum Explanation {
    /// One pack held this share of what is printed on it; more than 1 where it held more.
    PartFull(Figure<f64>),
    /// So many whole packs fewer were poured than counted; less than nought where more were.
    Miscount(Figure<f64>),
    /// The inside diameter is this.
    Diameter(Figure<Length>),
    /// The inside depth is this, where it is only assumed.
    Depth(Figure<Length>),
    /// The lot's bulk density is this, of packs sold by weight.
    BulkDensity(Figure<MassDensity>),
}

/// Compares a reading with the one to expect.
///
/// # Errors
/// [`Term::TapeReading`] outside the vessel, or not above the surface it was poured on.
pub(super) fn deviation(
    vessel: &Vessel,
    layer: &Layer,
    packed: &Packed,
    base: &Base,
    expected: &Tape,
    read: &Known<Length>,
    inputs: &[Input],
) -> Result<Deviation, Problem> {
    let height = height_of(vessel, read)?;
    if height <= base.height {
        let below = base.read.unwrap_or(vessel.measures.inside_depth).value;
        let fault = Fault::NotBelow { value: read.value.into(), other: Term::TapeBefore, limit: below.into() };
        return Err(Problem::new(Term::TapeReading, fault));
    }
    let actual = vessel.cavity.free_below(height) - base.volume;
    let more = (actual - base.poured) / packed.volume;
    let mut with_reading = inputs.to_vec();
    with_reading.extend(base.read.map(|before| before.input(Term::TapeBefore)));
    with_reading.push(read.input(Term::TapeReading));
    let length = expected.reading.value.value - read.value.value;
    // A hair beyond the spread, by rounding alone, is within it.
    let within = length.abs() <= expected.spread.value * (1.0 + 1e-9);
    let mut found = Deviation {
        read: *read,
        higher: Figure::new(metres(length), Formula::TapeDeviation, with_reading.clone()),
        packs: Figure::new(more, Formula::PacksDeviation, with_reading.clone()),
        within,
        explanations: Vec::new(),
    };
    if !within {
        let asked = Asked { vessel, layer, packed, base, expected, read, actual, more, inputs: &with_reading };
        found.explanations = asked.explanations();
    }
    Ok(found)
}

struct Asked<'a> {
    vessel: &'a Vessel,
    layer: &'a Layer,
    packed: &'a Packed,
    base: &'a Base,
    expected: &'a Tape,
    read: &'a Known<Length>,
    /// The volume between the surface below and the one that was read.
    actual: f64,
    /// Packs more than counted.
    more: f64,
    inputs: &'a [Input],
}

impl Asked<'_> {
    /// Each with how many standard deviations of its own it would take.
    fn explanations(&self) -> Vec<Explanation> {
        let all = [self.pack(), self.miscount(), self.diameter(), self.depth(), self.density()];
        let sorted = order::sorted(all.into_iter().flatten().collect(), |a: &(f64, _), b| a.0.total_cmp(&b.0));
        sorted.into_iter().map(|(_, explanation)| explanation).collect()
    }

    fn figure<Q>(&self, value: Q, formula: Formula) -> Figure<Q> {
        Figure::new(value, formula, self.inputs.to_vec())
    }

    /// A pack can be short by all but nothing of itself; nobody's holds more than a quarter too much.
    fn pack(&self) -> Option<(f64, Explanation)> {
        let held = 1.0 + self.more;
        let spread = self.base.packs.sqrt() / self.packed.volume;
        (held > 0.0 && held <= 1.25)
            .then(|| (self.more.abs() / spread, Explanation::PartFull(self.figure(held, Formula::PackHeld))))
    }

    /// Whole packs, where the reading is one with another count.
    fn miscount(&self) -> Option<(f64, Explanation)> {
        let fewer = -self.more.round();
        let in_packs = self.expected.spread.value / self.higher_by_pack()?;
        let near = (self.more + fewer).abs() <= in_packs;
        (fewer != 0.0 && near).then(|| (MISCOUNT, Explanation::Miscount(self.figure(fewer, Formula::PacksDeviation))))
    }

    /// What a pack of the layer raises the surface by where it is expected.
    fn higher_by_pack(&self) -> Option<f64> {
        let depth = self.vessel.measures.inside_depth.value.value;
        let area = self.vessel.cavity.free_area(depth - self.expected.reading.value.value);
        (area > 0.0).then(|| self.packed.volume / area)
    }

    fn diameter(&self) -> Option<(f64, Explanation)> {
        let measures = &self.vessel.measures;
        let depth = measures.inside_depth;
        let by = DiameterBy::RiseOfBag {
            volume: Known { value: cubic_metres(self.base.poured), basis: Basis::Measured, source: self.read.source },
            before: self.base.read.unwrap_or(depth),
            after: *self.read,
        };
        let found = inside_diameter(&by, &measures.inside(metres(0.0)), measures.nominal_diameter.as_ref()).ok()?;
        let off = (found.value.value / self.vessel.inside_diameter.value.value - 1.0).abs();
        // So wrong nobody measures, nor is any vessel sold under such a name.
        if off > MOST_OFF {
            return None;
        }
        Some((off / self.vessel.diameter_tolerance(), Explanation::Diameter(found)))
    }

    /// Only the first reading shows a wrong depth, and only an assumed one is doubted.
    fn depth(&self) -> Option<(f64, Explanation)> {
        let depth = self.vessel.measures.inside_depth;
        if self.base.read.is_some() || depth.basis != Basis::Assumed {
            return None;
        }
        let off = self.read.value.value - self.expected.reading.value.value;
        let figure = self.figure(metres(depth.value.value + off), Formula::DepthByReading);
        Some((off.abs() / Assumption::SpreadDepthAssumed.ratio(), Explanation::Depth(figure)))
    }

    fn density(&self) -> Option<(f64, Explanation)> {
        if self.layer.pack.volume.is_some() || self.actual <= 0.0 {
            return None;
        }
        let density = self.layer.density().value.value;
        let lot = density * self.base.poured / self.actual;
        let range = &self.layer.material.bulk_density;
        let (low, high) = (range.low.value.min(density), range.high.value.max(density));
        // Half the range stands for nine lots of ten, as in the plan.
        let sigma = ((high - low) / 2.0 / Assumption::Spread595.ratio()).max(density * Assumption::SpreadPack.ratio());
        let figure = self.figure(kilograms_per_cubic_metre(lot), Formula::BulkDensityByRise);
        Some(((lot - density).abs() / sigma, Explanation::BulkDensity(figure)))
    }
}

/// More than this no inside diameter is off, as a share of it.
const MOST_OFF: f64 = 0.15;

/// How surprising it is that somebody counted wrong, beside standard deviations: about one in a hundred.
const MISCOUNT: f64 = 2.5;
