//! What somebody saw or read that narrows where the likely line stands.

use super::bed::Bed;
use super::expansion::Weights;
use crate::order::Between as _;
use crate::quantity::problem::{between, positive};
use crate::quantity::{
    Assumption, Basis, Fault, Figure, Formula, Input, Known, Problem, Source, Temperature, Term, Time, Velocity,
    VolumeRate, seconds,
};
use crate::water::Water;

/// A backwash somebody watched at the drain.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrainCheck {
    /// The flow.
    pub flow: Known<VolumeRate>,
    /// The water's temperature.
    pub temperature: Known<Temperature>,
    /// How long.
    pub minutes: Known<Time>,
    /// Whether grains came.
    pub grains: bool,
}

/// An expansion read off the paper that came with the medium, or off a clear tube.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PaperPoint {
    /// Which layer of the plan, from the bottom and from zero.
    pub layer: usize,
    /// Flow per area.
    pub flow_per_area: Known<Velocity>,
    /// The water's temperature.
    pub temperature: Known<Temperature>,
    /// Expansion, as a share of the settled bed.
    pub expansion: Known<f64>,
}

/// Where the lines stand between the low model (0) and the high one (1), and what put them there.
#[derive(Clone, Debug, PartialEq)]
pub struct Lines {
    /// The lowest line that can still be.
    pub low: Figure<f64>,
    /// The likely line.
    pub likely: Figure<f64>,
    /// The highest line that can still be.
    pub high: Figure<f64>,
    /// Pieces of evidence that narrowed them.
    pub used: usize,
    /// Pieces that say nothing: too short, a point outside both models, or one that contradicts another.
    pub set_aside: usize,
}

impl Lines {
    /// The lines before anything is known.
    #[must_use]
    pub fn unknown() -> Lines {
        let weight = |value: f64| {
            let known = Known { value, basis: Basis::Assumed, source: Source::OwnRule };
            Figure::new(value, Formula::Given, vec![known.input(Term::LineWeight)])
        };
        Lines {
            low: weight(0.0),
            likely: weight(Assumption::LineWeight.ratio()),
            high: weight(Assumption::LineWeightHigh.ratio()),
            used: 0,
            set_aside: 0,
        }
    }

    pub(crate) fn weights(&self) -> Weights {
        Weights { low: self.low.value, likely: self.likely.value, high: self.high.value }
    }
}

/// How far a point read off a paper may be out: it is drawn for another lot.
const POINT_SPREAD: f64 = 0.15;

/// Nobody watches a drain for longer than a year.
const LONGEST_S: f64 = 366.0 * 86_400.0;

/// Where the lines stand after what was seen.
///
/// A drain check is a bound on one side: no grains at a flow and temperature means that the bed stayed under the
/// ceiling there, so lines above `w = (E_room − E_low)/(E_high − E_low)` are out; grains mean lines below are out. One
/// that ran less than ten minutes counts only when grains came. Points from a paper or a clear tube put the likely
/// line where they lie on average, and leave ±0.15 about it; a point outside both models is set aside. The likely line
/// stands in the middle of what is left where no point says more.
///
/// # Errors
/// [`Term::WaterTemperature`] outside 0 to 60 °C; [`Term::BackwashFlow`] or [`Term::FlowPerArea`] not above zero;
/// [`Term::Minutes`] below zero; [`Term::Expansion`] below zero; [`Term::LayerVolume`] for a layer that is none of the bed's media.
///
/// # Sources
/// Our own rule.
///
/// # Example
/// See [`super::backwash`].
pub fn lines(bed: &Bed, checks: &[DrainCheck], points: &[PaperPoint]) -> Result<Lines, Problem> {
    let mut lines = Lines::unknown();
    let (mut low, mut high) = (lines.low.value, lines.high.value);
    let mut evidence: Vec<Input> = Vec::new();
    let mut weights = Vec::new();
    for point in points {
        let water = Water::at(&point.temperature)?;
        positive(Term::FlowPerArea, point.flow_per_area.value.value, point.flow_per_area.value.into())?;
        if point.expansion.value.is_nan() || point.expansion.value < 0.0 {
            return Err(Problem::new(Term::Expansion, Fault::NotPositive { value: point.expansion.value.into() }));
        }
        let media: Vec<usize> = bed.media_layers().map(|layer| layer.index).collect();
        let layer = media
            .iter()
            .position(|index| *index == point.layer)
            .and_then(|at| bed.lifted.get(at))
            .ok_or(Problem::new(Term::LayerVolume, Fault::Missing))?;
        let (a, b) = layer.expansion(water.fluid(), point.flow_per_area.value.value);
        let (a, b) = (a.min(b), a.max(b));
        let weight = (point.expansion.value - a) / (b - a);
        if (0.0..=1.0).contains(&weight) {
            weights.push(weight);
            evidence.push(point.flow_per_area.input(Term::FlowPerArea));
            evidence.push(point.temperature.input(Term::WaterTemperature));
            evidence.push(point.expansion.input(Term::Expansion));
            lines.used += 1;
        } else {
            lines.set_aside += 1;
        }
    }
    let mean = (!weights.is_empty()).then(|| weights.iter().sum::<f64>() / weights.len() as f64);
    if let Some(mean) = mean {
        low = (mean - POINT_SPREAD).max(low);
        high = (mean + POINT_SPREAD).min(high);
    }
    for check in checks {
        let water = Water::at(&check.temperature)?;
        positive(Term::BackwashFlow, check.flow.value.value, check.flow.value.into())?;
        between(Term::Minutes, check.minutes.value.value, (0.0, LONGEST_S), |x| seconds(x).into())?;
        let long_enough = check.minutes.value.value >= Assumption::DrainCheckMinutes.time().value.value;
        let (a, b) = bed.lines(water.fluid(), check.flow.value.value / bed.area.value.value);
        let bound = (bed.room.value - a) / (b - a);
        // Where the models agree, or leave together, a drain check tells them apart no more.
        let tells = bound.is_finite() && (check.grains || long_enough);
        let next = if check.grains { (bound.max(low), high) } else { (low, bound.min(high)) };
        if tells && next.0 <= next.1 && next != (low, high) {
            (low, high) = next;
            evidence.push(check.flow.input(Term::BackwashFlow));
            evidence.push(check.temperature.input(Term::WaterTemperature));
            evidence.push(check.minutes.input(Term::Minutes));
            lines.used += 1;
        } else {
            lines.set_aside += 1;
        }
    }
    if lines.used == 0 {
        return Ok(lines);
    }
    let formula = if mean.is_some() { Formula::LineWeightPoint } else { Formula::LineWeightBound };
    let likely = mean.unwrap_or(f64::midpoint(low, high)).between(low, high);
    let figure = |value: f64| Figure::new(value, formula, evidence.clone());
    Ok(Lines { low: figure(low), likely: figure(likely), high: figure(high), ..lines })
}
