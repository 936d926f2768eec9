//! What stands round a window: figures of flows and temperatures, the site's range, sizes of flow controls.

use bedwright_calc::order::Between as _;
use bedwright_calc::quantity::{Mark, Temperature};

use super::plot::{Plot, site};
use super::{WindowChart, drawable, set_flow};
use crate::drawing::shape::{Anchor, Class, Extent, crisp, pen, text_width};
use crate::drawing::sketch::Sketch;
use crate::words::{Label, Manner};

/// The axes of a plot.
pub(super) struct Axes<'a> {
    /// The plot.
    pub plot: &'a Plot,
    /// How it is said.
    pub manner: &'a Manner,
    /// The drawing's width.
    pub width: f64,
    /// Size of the letters.
    pub size: f64,
}

impl Axes<'_> {
    /// Flows at the left.
    #[inline(never)]
    pub fn flows(&self, sketch: &mut Sketch, figures: &[(f64, String)]) {
        let (room, size) = (&self.plot.room, self.size);
        sketch.text(Class::Small, None, (1.0, size), Anchor::Start, size, &self.manner.window_flow());
        for (flow, text) in figures {
            let y = crisp(self.plot.y(self.plot.si(*flow)));
            sketch.line(Class::ChartTick, None, (room.left, y), (room.left + 5.0, y));
            let base = (y + 0.36 * size).between(room.top + 0.5 * size, room.bottom + 0.2 * size);
            sketch.text(Class::Small, None, (room.left - 5.0, base), Anchor::End, size, text);
        }
    }

    /// Temperatures below, and what they are.
    #[inline(never)]
    pub fn temperatures(&self, sketch: &mut Sketch, range: Option<(Temperature, Temperature)>) {
        let (room, size) = (&self.plot.room, self.size);
        let base = room.bottom + 11.0 + 0.8 * size;
        let mut free = 0.0;
        for (kelvin, text) in self.plot.temperature_ticks(self.manner, size) {
            let x = crisp(self.plot.x(kelvin));
            sketch.line(Class::ChartTick, None, (x, room.bottom), (x, room.bottom - 5.0));
            let half = text_width(&text, Class::Small, size) / 2.0;
            let middle = x.min(self.width - half - 1.0);
            if middle - half >= free {
                sketch.text(Class::Small, None, (middle, base), Anchor::Middle, size, &text);
                free = middle + half + 4.0;
            }
        }
        let title = self.manner.window_temperature(range);
        let half = text_width(&title, Class::Small, size) / 2.0;
        let middle = match site(range) {
            Some((low, high)) => self.plot.x(f64::midpoint(low, high)),
            None => f64::midpoint(room.left, room.right),
        };
        let middle = middle.min(self.width - half - 1.0).max(half + 1.0);
        sketch.text(Class::Small, None, (middle, base + 1.35 * size), Anchor::Middle, size, &title);
    }

    /// Sizes at the right, with figures where there is room: the one that is set first, then what the site can feed.
    #[inline(never)]
    pub fn controls(&self, sketch: &mut Sketch, controls: &[Control], across: Option<f64>) {
        let (plot, size) = (self.plot, self.size);
        let edge = plot.room.right;
        let heading = self.manner.label(Label::WindowSizes);
        sketch.text(Class::Small, None, (self.width - 1.0, size), Anchor::End, size, heading);
        let mut taken: Vec<f64> = Vec::with_capacity(controls.len());
        for control in controls {
            let y = crisp(plot.y(control.flow));
            sketch.line(Class::ChartTick, None, (edge, y), (edge + 4.0, y));
        }
        let set = controls.iter().filter(|control| control.set.is_some());
        let fed = controls.iter().rev().filter(|control| control.set.is_none() && control.fed);
        let rest = controls.iter().filter(|control| control.set.is_none() && !control.fed);
        for control in set.chain(fed).chain(rest) {
            let y = match (control.set, across) {
                (Some(_), Some(y)) => y,
                _ => crisp(plot.y(control.flow)),
            };
            if taken.iter().any(|other| (other - y).abs() < size) {
                continue;
            }
            taken.push(y);
            let class = control.class();
            sketch.text(class, None, (edge + 7.0, y + 0.36 * size), Anchor::Start, size, &control.text);
            if let Some(mark) = control.set {
                let x = edge + 7.0 + text_width(&control.text, class, size) + 3.0 + size / 2.0;
                sign(sketch, mark, (x, y), size / 2.0 - 0.5);
            }
        }
    }
}

/// The site's range of temperature, under the axis.
#[inline(never)]
pub(super) fn bracket(sketch: &mut Sketch, low: f64, high: f64, axis: f64) {
    let (low, high, y) = (crisp(low), crisp(high), axis + 6.0);
    sketch.line(Class::ChartRange, None, (low, y), (high, y));
    for x in [low, high] {
        sketch.line(Class::ChartRange, None, (x, axis + 2.0), (x, axis + 10.0));
    }
}

/// A size of flow control, or the flow that is set.
pub(super) struct Control {
    flow: f64,
    text: String,
    set: Option<Mark>,
    /// Whether the site can feed it.
    fed: bool,
}

impl Control {
    fn class(&self) -> Class {
        if self.set.is_some() { Class::ChartSet } else { Class::Small }
    }

    /// The room it takes beside its tick.
    pub fn width(&self, size: f64) -> f64 {
        text_width(&self.text, self.class(), size) + if self.set.is_some() { size + 5.0 } else { 0.0 }
    }
}

/// What stands at the right edge, smallest first.
pub(super) fn controls(chart: &WindowChart, manner: &Manner, plot: &Plot) -> Vec<Control> {
    let available = drawable(chart.available).unwrap_or(f64::INFINITY) * (1.0 + 1e-9);
    let set = set_flow(chart);
    let mut controls: Vec<Control> = Vec::with_capacity(chart.sizes.len() + 1);
    let flows = chart.sizes.iter().filter_map(|size| drawable(Some(size.flow)));
    for (flow, set) in set.into_iter().map(|(flow, mark)| (flow, Some(mark))).chain(flows.map(|flow| (flow, None))) {
        if !plot.shows(flow) || controls.iter().any(|other| (other.flow - flow).abs() < 1e-3 * flow) {
            continue;
        }
        let at = controls.partition_point(|other| other.flow < flow);
        controls.insert(at, Control { flow, text: manner.flow_bare(flow), set, fed: flow <= available });
    }
    controls
}

/// The mark of a verdict: a filled circle, half of one, a triangle, a square.
fn sign(sketch: &mut Sketch, mark: Mark, (x, y): (f64, f64), r: f64) {
    let mut d = String::new();
    match mark {
        Mark::Fine => sketch.circle(Class::ChartSign, None, (x, y), r),
        Mark::SetOnSite => {
            let r = r - 0.5;
            sketch.circle(Class::ChartRing, None, (x, y), r);
            pen(&mut d, 'M', x, y - r);
            pen(&mut d, 'A', r, r);
            d.push_str(" 0 0 1");
            pen(&mut d, ' ', x, y + r);
        }
        Mark::Caution => {
            for (letter, x, y) in [('M', x, y - r), ('L', x + 1.1 * r, y + r), ('L', x - 1.1 * r, y + r)] {
                pen(&mut d, letter, x, y);
            }
        }
        Mark::Stop => {
            let room = Extent { left: x - r, top: y - r, right: x + r, bottom: y + r };
            sketch.rect(Class::ChartSign, None, &room, 0.0);
        }
    }
    sketch.path(Class::ChartSign, None, d);
}
