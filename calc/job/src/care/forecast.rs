//! When the outlet reaches its limit, from the tests of one bed.

use bedwright_calc::life::{Breakthrough, Span, Spent, breakthrough};
use bedwright_calc::quantity::{Assumption, Problem};

use super::bed_life::{BedLife, Lives};
use super::happened::Expected;
use super::visit::{Test, TestUnit, VisitField, read_test};
use crate::day::Day;
use crate::id::Id;

/// What is counted along a bed's life.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Axis {
    /// Days, where no meter says more.
    Days,
    /// Water through the bed.
    Water,
}

/// A test of a bed, with where in its life it was made.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tested {
    /// The day.
    pub day: Day,
    /// Days, or cubic metres, since the bed's beginning.
    pub at: f64,
    /// What the outlet showed, in milligrams per litre or in the unit of the card.
    pub outlet: Test,
    /// The inlet it is measured by: its own, or the nearest that was tested.
    pub inlet: Option<f64>,
    /// Whether the inlet is of the same visit.
    pub own_inlet: bool,
    /// Outlet over inlet.
    pub share: Option<f64>,
}

/// When the limit is reached.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reached {
    /// The curve.
    pub curve: Breakthrough,
    /// The limit, as a share of the inlet.
    pub share: f64,
    /// Whether somebody typed it; else a usual share of the inlet is taken.
    pub typed: bool,
    /// Days, or cubic metres as of the mean inlet, since the bed's beginning.
    pub at: Span,
    /// The days these come to at the rate of late.
    pub low: Option<Day>,
    /// The likely day.
    pub likely: Option<Day>,
    /// The last day.
    pub high: Option<Day>,
}

/// Why there is no forecast yet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NotYet {
    /// Nothing was found at the outlet so far: an honest answer needs the front.
    NothingFound {
        /// How many tests.
        tests: usize,
    },
    /// No inlet was tested to measure the outlet by.
    NoInlet,
    /// The limit is nothing at all, or more than the inlet.
    Limit,
    /// Fewer traces than a curve needs, or no curve goes through them.
    Problem(Problem),
}

/// What tests say of when a bed is spent.
#[derive(Clone, Debug, PartialEq)]
pub struct Forecast {
    /// What is counted.
    pub axis: Axis,
    /// Every test of the outlet, in the order of their days.
    pub tests: Vec<Tested>,
    /// Whether places are weighed by a varying inlet: what counts is what came in.
    pub weighed: bool,
    /// When the limit is reached, or why that can't be told.
    pub reached: Result<Reached, NotYet>,
    /// Visits whose unit is another kind of unit than the latest's.
    pub other_units: Vec<Id>,
}

/// An inlet that differs from their mean by more than this share is one that varies.
const STEADY: f64 = 0.1;

/// What the tests of a bed say.
#[must_use]
pub fn forecast(lives: &Lives, bed: &BedLife, expected: &Expected) -> Forecast {
    let unit = bed.visits.iter().rev().find(|visit| visit.entry(VisitField::Outlet).is_some());
    let unit = unit.map_or(expected.unit, |visit| visit.unit);
    let start = bed.begun.or_else(|| bed.visits.first().and_then(super::visit::Visit::date));
    let water_known = bed
        .visits
        .iter()
        .filter(|visit| visit.test(VisitField::Outlet).is_some())
        .all(|visit| visit.date().is_some_and(|day| lives.water_through(bed, day).is_some()));
    let axis = if water_known { Axis::Water } else { Axis::Days };
    let mut found = Forecast {
        axis,
        tests: Vec::new(),
        weighed: false,
        reached: Err(NotYet::NothingFound { tests: 0 }),
        other_units: Vec::new(),
    };
    let mut inlets: Vec<(Day, f64)> = Vec::new();
    for visit in &bed.visits {
        let (Some(day), Some(start)) = (visit.date(), start) else { continue };
        let Some(factor) = into(visit.unit, unit) else {
            if visit.entry(VisitField::Outlet).is_some() || visit.entry(VisitField::Inlet).is_some() {
                found.other_units.push(visit.id.clone());
            }
            continue;
        };
        let inlet = visit.test(VisitField::Inlet).filter(|test| test.found()).map(|test| test.value * factor);
        if let Some(inlet) = inlet {
            inlets.push((day, inlet));
        }
        if let Some(outlet) = visit.test(VisitField::Outlet) {
            let at = match axis {
                Axis::Water => lives.water_through(bed, day).unwrap_or_default(),
                Axis::Days => day.since(start) as f64,
            };
            let outlet = Test { value: outlet.value * factor, ..outlet };
            found.tests.push(Tested { day, at, outlet, inlet, own_inlet: inlet.is_some(), share: None });
        }
    }
    let mut last = 0;
    for test in &mut found.tests {
        while inlets.get(last + 1).is_some_and(|(day, _)| *day <= test.day) {
            last += 1;
        }
        test.inlet = test.inlet.or_else(|| inlets.get(last).map(|(_, inlet)| *inlet));
        test.share = test.inlet.map(|inlet| test.outlet.counted() / inlet);
    }
    found.reached = found.when(lives, bed, expected, unit, &inlets);
    found
}

impl Forecast {
    fn when(
        &mut self,
        lives: &Lives,
        bed: &BedLife,
        expected: &Expected,
        unit: TestUnit,
        inlets: &[(Day, f64)],
    ) -> Result<Reached, NotYet> {
        if !self.tests.iter().any(|test| test.outlet.found()) {
            return Err(NotYet::NothingFound { tests: self.tests.len() });
        }
        let mean = inlets.iter().map(|(_, inlet)| inlet).sum::<f64>() / inlets.len() as f64;
        if inlets.is_empty() || !mean.is_finite() {
            return Err(NotYet::NoInlet);
        }
        self.weighed = inlets.iter().any(|(_, inlet)| (inlet / mean - 1.0).abs() > STEADY);
        let places =
            if self.weighed { self.weighed_places(mean) } else { self.tests.iter().map(|test| test.at).collect() };
        let readings: Vec<Spent> = self
            .tests
            .iter()
            .zip(&places)
            .filter_map(|(test, at)| Some(Spent { at: *at, share: test.share? }))
            .collect();
        let limit = expected.limit.as_ref().and_then(|entry| read_test(entry).ok()).zip(into(expected.unit, unit));
        let share = limit.map_or(Assumption::OutletLimitShare.ratio(), |(limit, factor)| limit.value * factor / mean);
        if !(share > 0.0 && share < 1.0) {
            return Err(NotYet::Limit);
        }
        let curve = breakthrough(&readings).map_err(NotYet::Problem)?;
        let at = curve.reached(share, true, Assumption::IntervalConfidence.ratio()).map_err(NotYet::Problem)?;
        let last = self.tests.last().zip(places.last());
        let rate = match self.axis {
            Axis::Days => Some(1.0),
            Axis::Water => bed
                .stays
                .last()
                .and_then(|stay| lives.water_at(&stay.place))
                .and_then(|water| water.rate_over(Assumption::RecentDays.ratio()))
                .filter(|rate| *rate > 0.0),
        };
        let day = |place: f64| {
            let ((test, at), rate) = last.zip(rate)?;
            Day::numbered(test.day.number() + (place - at) / rate)
        };
        Ok(Reached {
            curve,
            share,
            typed: limit.is_some(),
            at,
            low: day(at.low),
            likely: day(at.likely),
            high: day(at.high),
        })
    }

    /// Places counted as of the mean inlet: where more came in than usual, more of the bed is used.
    fn weighed_places(&self, mean: f64) -> Vec<f64> {
        let mut places = Vec::with_capacity(self.tests.len());
        let (mut before, mut inlet, mut sum) = (0.0, None, 0.0);
        for test in &self.tests {
            let now = test.inlet.unwrap_or(mean);
            sum += (test.at - before) * f64::midpoint(inlet.unwrap_or(now), now) / mean;
            (before, inlet) = (test.at, Some(now));
            places.push(sum);
        }
        places
    }
}

/// How many of one unit another one is; nothing where they count different things.
fn into(from: TestUnit, to: TestUnit) -> Option<f64> {
    if from == to {
        return Some(1.0);
    }
    Some(from.milligrams_per_litre()? / to.milligrams_per_litre()?)
}
