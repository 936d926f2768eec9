//! The plot's scales, and its lines by pixels.

use bedwright_calc::hydraulics::WindowRow;
use bedwright_calc::order::Between as _;
use bedwright_calc::quantity::{Temperature, VolumeRate, cubic_metres_per_second};

use super::{LONE, WindowChart, drawable};
use crate::drawing::shape::{Class, Extent, pen, text_width};
use crate::entry::Unit;
use crate::words::Manner;

/// Shown where there is nothing to go by, in gallons a minute.
const WITHOUT_ANY: f64 = 10.0;
/// No flow is drawn further above the lines than this, as a multiple.
const FAR: f64 = 2.2;
/// Half of what is shown of the temperatures where there is only one, in kelvins.
const ABOUT: f64 = 5.0;

/// Where temperatures and flows are.
pub(super) struct Plot {
    /// The ground of the lines.
    pub room: Extent,
    flow_unit: Unit,
    temperature_unit: Unit,
    cold: f64,
    warm: f64,
    /// The highest flow, in the person's unit.
    most: f64,
    flow_step: f64,
}

/// A flow in SI units.
pub(super) fn flow(value: f64) -> VolumeRate {
    cubic_metres_per_second(value)
}

/// The site's temperatures where both are some.
pub(super) fn site(site: Option<(Temperature, Temperature)>) -> Option<(f64, f64)> {
    let (low, high) = site?;
    let known = |t: f64| (200.0..500.0).contains(&t);
    (known(low.value) && known(high.value)).then(|| (low.value.min(high.value), high.value.max(low.value)))
}

impl Plot {
    /// The scales; the place comes later.
    #[inline(never)]
    pub fn new(chart: &WindowChart, manner: &Manner, site: Option<(f64, f64)>) -> Plot {
        let flow_unit = manner.flow_unit();
        let mut ends = site;
        for kelvin in chart.rows.iter().map(|row| row.temperature.value).filter(|kelvin| kelvin.is_finite()) {
            let (low, high) = ends.unwrap_or((kelvin, kelvin));
            ends = Some((low.min(kelvin), high.max(kelvin)));
        }
        let (low, high) = ends.unwrap_or((Unit::Celsius.to_si(10.0), Unit::Celsius.to_si(10.0)));
        let (cold, warm) = if high - low < 0.5 { (low - ABOUT, high + ABOUT) } else { (low, high) };

        let largest = |line: fn(&WindowRow) -> Option<VolumeRate>| {
            chart.rows.iter().filter_map(|row| drawable(line(row))).fold(0.0, f64::max)
        };
        let (lifts, stays) = (largest(|row| row.lifts_from[1]), largest(|row| row.stays_to[1]));
        let far = if lifts.max(stays) > 0.0 { FAR * lifts.max(stays) } else { f64::INFINITY };
        let near = |flow: Option<VolumeRate>| drawable(flow).filter(|flow| *flow <= far).unwrap_or(0.0);
        let needed = (1.12 * lifts).max(1.22 * near(chart.available)).max(1.15 * near(chart.chosen.map(|(x, _)| x)));
        let most = if needed > 0.0 { needed.max((1.12 * stays).min(1.6 * needed)) } else { 1.12 * stays };
        let most = if most > 0.0 { most } else { Unit::UsGallonPerMinute.to_si(WITHOUT_ANY) };
        let most = flow_unit.from_si(most);
        let flow_step = nice(most / 7.0);
        // Up to the next half step.
        let most = (2.0 * most / flow_step).ceil() * flow_step / 2.0;
        Plot {
            room: Extent { left: 0.0, top: 0.0, right: 1.0, bottom: 1.0 },
            temperature_unit: manner.temperature_unit(),
            flow_unit,
            cold,
            warm,
            most,
            flow_step,
        }
    }

    pub fn set(&mut self, room: Extent) {
        self.room = room;
    }

    /// A flow from the person's unit.
    pub fn si(&self, flow: f64) -> f64 {
        self.flow_unit.to_si(flow)
    }

    /// Where a temperature is.
    pub fn x(&self, kelvin: f64) -> f64 {
        let share = (kelvin - self.cold) / (self.warm - self.cold);
        self.room.left + share * (self.room.right - self.room.left)
    }

    /// Where a flow is.
    pub fn y(&self, flow: f64) -> f64 {
        self.room.bottom - self.flow_unit.from_si(flow) / self.most * (self.room.bottom - self.room.top)
    }

    /// Whether a flow is on the scale.
    pub fn shows(&self, flow: f64) -> bool {
        self.flow_unit.from_si(flow) <= self.most * (1.0 + 1e-9)
    }

    /// Flows on the axis, in the person's unit.
    pub fn flow_ticks(&self) -> Vec<f64> {
        let count = (self.most / self.flow_step + 1e-9).floor().between(0.0, 40.0) as u32;
        (0..=count).map(|k| f64::from(k) * self.flow_step).collect()
    }

    /// Temperatures on the axis in kelvins, and their figures.
    pub fn temperature_ticks(&self, manner: &Manner, size: f64) -> Vec<(f64, String)> {
        let unit = self.temperature_unit;
        let (cold, warm) = (unit.from_si(self.cold), unit.from_si(self.warm));
        let wide = text_width("100", Class::Small, size) + 14.0;
        // Half degrees only where there are few whole ones.
        let least = if warm - cold > 3.0 { 1.0 } else { 0.0 };
        let step = nice(((warm - cold) * wide / (self.room.right - self.room.left)).max(least));
        let first = (cold / step - 1e-6).ceil() as i32;
        let last = (warm / step + 1e-6).floor() as i32;
        (first..=last.min(first.saturating_add(60)))
            .map(|k| (unit.to_si(f64::from(k) * step), manner.decimal(f64::from(k) * step, 2)))
            .collect()
    }

    /// A line as far as it is on the plot and `shown` at a height and a column.
    #[inline(never)]
    pub fn trace(&self, line: &[f64], shown: &dyn Fn(f64, usize) -> bool) -> String {
        const EVERY: usize = 6;
        let mut d = String::new();
        let mut drawn: Option<usize> = None;
        let push = |d: &mut String, letter: char, column: usize, y: f64| {
            pen(d, letter, self.room.left + column as f64, y);
        };
        let mut before = 0.0;
        for (column, &y) in line.iter().enumerate() {
            if y >= self.room.top && y <= self.room.bottom && shown(y, column) {
                match drawn {
                    None => push(&mut d, 'M', column, y),
                    Some(last) if column - last >= EVERY || column + 1 == line.len() => push(&mut d, 'L', column, y),
                    Some(_) => {
                        before = y;
                        continue;
                    }
                }
                drawn = Some(column);
            } else if let Some(last) = drawn.take()
                && column - last > 1
            {
                push(&mut d, 'L', column - 1, before);
            }
            before = y;
        }
        d
    }
}

/// The next larger of 1, 2, 5, 10, 20, 50 and so on.
fn nice(least: f64) -> f64 {
    let mut decade = 1e-3;
    while decade < 1e9 {
        for times in [1.0, 2.0, 5.0] {
            if decade * times >= least {
                return decade * times;
            }
        }
        decade *= 10.0;
    }
    decade
}

/// Every line's height at each pixel's column; infinite where it has none.
pub(super) struct Lines {
    /// How many columns.
    pub columns: usize,
    /// Where the bed lifts enough: low, likely, high line.
    pub lifts: [Vec<f64>; 3],
    /// Where it stays in.
    pub stays: [Vec<f64>; 3],
    /// Where the finest grains leave.
    pub carries: Vec<f64>,
}

impl Lines {
    /// The lines of a window on a plot.
    #[inline(never)]
    pub fn new(plot: &Plot, rows: &[WindowRow]) -> Lines {
        let columns = (plot.room.right - plot.room.left).floor().between(1.0, 4000.0) as usize + 1;
        let line = |of: &dyn Fn(&WindowRow) -> Option<VolumeRate>| {
            let points = rows.iter().map(|row| (row.temperature.value, drawable(of(row))));
            let points: Vec<(f64, Option<f64>)> = points
                .filter(|(kelvin, _)| kelvin.is_finite())
                .map(|(kelvin, flow)| (plot.x(kelvin) - plot.room.left, flow.map(|flow| plot.y(flow))))
                .collect();
            by_columns(&points, columns)
        };
        Lines {
            columns,
            lifts: [0, 1, 2].map(|k| line(&|row| row.lifts_from.get(k).copied().flatten())),
            stays: [0, 1, 2].map(|k| line(&|row| row.stays_to.get(k).copied().flatten())),
            carries: line(&|row| row.carries_from),
        }
    }

    /// Whether a line runs through a place.
    pub fn meet(&self, at: &Extent, room: &Extent) -> bool {
        let from = (at.left - room.left).max(0.0) as usize;
        let wide = (at.right - at.left).ceil() as usize;
        let runs = |line: &Vec<f64>| line.iter().skip(from).take(wide).any(|y| *y > at.top && *y < at.bottom);
        runs(&self.lifts[1]) || runs(&self.stays[1]) || runs(&self.carries)
    }

    /// Whether a height lies between the likely lines.
    pub fn in_window(&self, column: usize, y: f64) -> bool {
        let at = |line: &[f64]| line.get(column).copied().filter(|y| y.is_finite());
        at(&self.lifts[1]).is_none_or(|lifts| y < lifts - 0.5) && at(&self.stays[1]).is_none_or(|stays| y > stays + 0.5)
    }
}

/// Heights between points; a point with no neighbour stands as a short bar.
fn by_columns(points: &[(f64, Option<f64>)], columns: usize) -> Vec<f64> {
    let mut heights = vec![f64::INFINITY; columns];
    let mut fill = |from: f64, to: f64, at: &dyn Fn(f64) -> f64| {
        for (column, height) in heights.iter_mut().enumerate() {
            let x = column as f64;
            if x >= from - 1e-6 && x <= to + 1e-6 {
                *height = at(x);
            }
        }
    };
    let some = |index: usize| points.get(index).is_some_and(|(_, y)| y.is_some());
    for (index, &(x, y)) in points.iter().enumerate() {
        let Some(y) = y else { continue };
        if let Some(&(next_x, Some(next_y))) = points.get(index + 1) {
            if next_x > x {
                fill(x, next_x, &|at| y + (next_y - y) * (at - x) / (next_x - x));
            }
        } else if index.checked_sub(1).is_none_or(|before| !some(before)) {
            fill(x - LONE, x + LONE, &|_| y);
        }
    }
    heights
}
