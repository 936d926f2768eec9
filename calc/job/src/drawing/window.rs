//! The backwash window as a chart: which flows lift the bed enough and keep it in, over the water's temperature.
//!
//! What works is paper white between two hatched banks. Where only the likely line rules a flow out the hatching is
//! open, where every line does it is close; a broken line inside the window says where the cautious line would end it.

// Its parts stay functions of their own: compiled into one they stopped WebKitGTK 2.50.6 at 6 of 60 loadings of a vessel
// (DEVELOPERS.md, "Functions with many loops stay apart").

mod axes;
mod bank;
mod caption;
mod key;
mod plot;
mod table;

use bedwright_calc::hydraulics::{FlowControl, WindowRow};
use bedwright_calc::order::Between as _;
use bedwright_calc::quantity::{Mark, Temperature, VolumeRate};

pub use table::WindowTable;

use super::shape::{Anchor, Class, Extent, crisp, pen, text_width};
use super::sketch::Sketch;
use super::{Drawing, Form, view_box};
use crate::words::{Label, Manner};
use axes::{Axes, bracket, controls};
use bank::{Region, hatch};
use caption::{Caption, Obstacle, places};
use plot::{Lines, Plot};

/// What a backwash window is drawn from.
#[derive(Clone, Copy, Debug)]
pub struct WindowChart<'a> {
    /// The window at each temperature, coldest first.
    pub rows: &'a [WindowRow],
    /// The flow there is.
    pub available: Option<VolumeRate>,
    /// Sizes of drain line flow controls.
    pub sizes: &'a [FlowControl],
    /// The flow that is set, and how good it is.
    pub chosen: Option<(VolumeRate, Mark)>,
    /// The coldest and the warmest water of the site.
    pub site: Option<(Temperature, Temperature)>,
}

/// A backwash window: the picture, and the same figures as a table.
#[derive(Clone, Debug, PartialEq)]
pub struct WindowPicture {
    /// The picture.
    pub drawing: Drawing,
    /// Its figures.
    pub table: WindowTable,
}

/// Sizes of letters and the height a chart of some width should have.
pub(super) struct Sizes {
    strong: f64,
    plain: f64,
}

const SCREEN: Sizes = Sizes { strong: 13.0, plain: 12.0 };
/// 2.6 mm and 2.4 mm.
const PAPER: Sizes = Sizes { strong: 10.0, plain: 9.0 };

/// Half the width of a single value, in pixels.
pub(super) const LONE: f64 = 8.0;

/// The backwash window as a picture and as a table.
#[must_use]
pub fn backwash_window(chart: &WindowChart, manner: &Manner, form: Form) -> WindowPicture {
    let (width, most) = form.room();
    let sizes = if matches!(form, Form::Paper { .. }) { &PAPER } else { &SCREEN };
    let height = most.min((0.55 * width + 180.0).floor());
    let shapes = drawn(chart, manner, width, height, sizes);
    let drawing = Drawing {
        width,
        height,
        view_box: view_box(width, height),
        shapes,
        title: manner.label(Label::BackwashWindow).to_owned(),
        description: manner.window_description(chart),
    };
    WindowPicture { drawing, table: table::table(chart.rows, manner) }
}

/// A flow that can be drawn.
pub(super) fn drawable(flow: Option<VolumeRate>) -> Option<f64> {
    flow.map(|flow| flow.value).filter(|flow| *flow > 0.0 && *flow < 1e6)
}

fn set_flow(chart: &WindowChart) -> Option<(f64, Mark)> {
    chart.chosen.and_then(|(flow, mark)| Some((drawable(Some(flow))?, mark)))
}

fn has_line(row: &WindowRow) -> bool {
    drawable(row.lifts_from[1]).or(drawable(row.stays_to[1])).is_some()
}

/// Where the lines of single flows run across, where they are on the scale.
struct Across {
    available: Option<f64>,
    set: Option<f64>,
    /// No flow above this can be had.
    cap: f64,
}

impl Across {
    fn new(chart: &WindowChart, plot: &Plot) -> Across {
        let level = |flow: f64| plot.shows(flow).then(|| crisp(plot.y(flow)));
        let available = drawable(chart.available).and_then(level);
        // Beside the flow available, where both are the same.
        let set = set_flow(chart).and_then(|(flow, _)| level(flow)).map(|y| match available {
            Some(limit) if (limit - y).abs() < 3.0 => limit + 3.0,
            _ => y,
        });
        Across { available, set, cap: available.unwrap_or(plot.room.top) }
    }
}

#[inline(never)]
fn drawn(chart: &WindowChart, manner: &Manner, width: f64, height: f64, sizes: &Sizes) -> Vec<super::Shape> {
    let small = sizes.plain;
    let mut front = Sketch::default();
    let key = chart.rows.iter().any(has_line).then(|| key::Key::new(manner, width, small));
    let key_height = key.as_ref().map_or(0.0, |key| key.height);
    let site = plot::site(chart.site);
    let mut plot = Plot::new(chart, manner, site);

    // What stands round the plot decides how much is left for it.
    let flows = plot.flow_ticks();
    let figures: Vec<(f64, String)> = flows.iter().map(|&flow| (flow, manner.flow_bare(plot.si(flow)))).collect();
    let left = figures.iter().map(|(_, text)| text_width(text, Class::Small, small)).fold(12.0, f64::max) + 9.0;
    let controls = controls(chart, manner, &plot);
    let right = controls.iter().map(|control| control.width(small)).fold(12.0, f64::max) + 10.0;
    let top = small * 1.2 + 8.0;
    let below = 12.0 + 2.6 * small + 8.0;
    plot.set(Extent {
        left: crisp(left),
        top: crisp(top),
        right: crisp((width - right).max(left + 20.0)),
        bottom: crisp((height - below - key_height).max(top + 20.0)),
    });
    let room = plot.room;
    let (lines, across) = (Lines::new(&plot, chart.rows), Across::new(chart, &plot));

    let axes = Axes { plot: &plot, manner, width, size: small };
    axes.flows(&mut front, &figures);
    axes.temperatures(&mut front, chart.site.filter(|_| site.is_some()));
    axes.controls(&mut front, &controls, across.set);

    let taken = write(&mut front, chart, manner, &plot, &lines, &across, sizes);

    // From the back: paper, banks, lines, texts.
    let mut sketch = Sketch::default();
    sketch.rect(Class::ChartGround, None, &room, 0.0);
    banks(&mut sketch, &lines, across.cap, &room, &taken);
    if across.available.is_some() {
        sketch.path(Class::ChartCross, None, crosses(&room, across.cap, &lines, &taken));
    }
    if let Some((low, high)) = site {
        for kelvin in [low, high] {
            let x = crisp(plot.x(kelvin));
            if x > room.left + 1.0 && x < room.right - 1.0 {
                sketch.line(Class::ChartGuide, None, (x, room.top), (x, room.bottom));
            }
        }
    }
    let inside = |y: f64, column: usize| lines.in_window(column, y) && y > across.cap;
    for line in [&lines.lifts[0], &lines.stays[2]] {
        sketch.path(Class::ChartCautious, None, plot.trace(line, &inside));
    }
    sketch.path(Class::ChartFinest, None, plot.trace(&lines.carries, &|_, _| true));
    for line in [&lines.lifts[1], &lines.stays[1]] {
        sketch.path(Class::ChartLikely, None, plot.trace(line, &|_, _| true));
    }
    let mut frame = String::new();
    for (letter, x, y) in [
        ('M', room.left, room.top),
        ('L', room.left, room.bottom),
        ('L', room.right, room.bottom),
        ('L', room.right, room.top),
    ] {
        pen(&mut frame, letter, x, y);
    }
    sketch.path(Class::ChartAxis, None, frame);
    if let Some(y) = across.available {
        sketch.line(Class::ChartAvailable, None, (room.left, y), (room.right, y));
    }
    if let Some(y) = across.set {
        sketch.line(Class::ChartChosen, None, (room.left, y), (room.right + 4.0, y));
    }
    if let Some((low, high)) = site {
        bracket(&mut sketch, plot.x(low), plot.x(high), room.bottom);
    }
    if let Some(key) = key {
        key.draw(&mut front, height - key_height);
    }
    sketch.shapes.append(&mut front.shapes);
    sketch.shapes
}

/// Writes beside the lines what they are; returns the rooms that takes.
#[inline(never)]
fn write(
    front: &mut Sketch,
    chart: &WindowChart,
    manner: &Manner,
    plot: &Plot,
    lines: &Lines,
    across: &Across,
    sizes: &Sizes,
) -> Vec<Extent> {
    let (room, small) = (plot.room, sizes.plain);
    let level = |y: f64| vec![y; lines.columns];
    let (limit_line, across_line) = (across.available.map(level), across.set.map(level));
    let mut captions = Vec::new();
    let mut outside = Vec::new();
    let strong = sizes.strong;
    if let Some((flow, mark)) = set_flow(chart) {
        let text = manner.window_chosen(plot::flow(flow), mark);
        match across.set.zip(across_line.as_ref()) {
            Some((y, line)) => captions.push(Caption {
                text,
                class: Class::ChartSet,
                size: strong,
                line,
                below: across.available.is_some_and(|limit| y > limit && y - limit < 2.0 * strong),
                wrong: 16.0,
                near: 0.0,
            }),
            None => outside.push((Class::ChartSet, text)),
        }
    }
    if let Some(flow) = drawable(chart.available) {
        let text = manner.window_available(plot::flow(flow));
        match &limit_line {
            Some(line) => captions.push(Caption {
                text,
                class: Class::ChartStrong,
                size: strong,
                line,
                below: false,
                wrong: 60.0,
                near: 1.0,
            }),
            None => outside.push((Class::ChartStrong, text)),
        }
    }
    for (line, label, below, near) in [
        (&lines.lifts[1], Label::WindowLifts, false, 0.25),
        (&lines.stays[1], Label::WindowStays, true, 0.5),
        (&lines.carries, Label::WindowFinest, true, 0.75),
    ] {
        captions.push(Caption {
            text: manner.label(label).to_owned(),
            class: Class::ChartLabel,
            size: small,
            line,
            below,
            wrong: 24.0,
            near,
        });
    }

    let mut taken: Vec<Extent> = Vec::new();
    let mut y = room.top + 1.1 * strong + 2.0;
    for (class, text) in outside {
        let text = [&text, manner.label(Label::WindowOffScale)].concat();
        let wide = text_width(&text, class, strong);
        let size = strong * ((room.right - room.left - 12.0) / wide).between(0.1, 1.0);
        let (right, left) = (room.right - 6.0, room.right - 6.0 - wide * size / strong);
        front.text(class, None, (right, y), Anchor::End, size, &text);
        taken.push(Extent { left, top: y - strong, right, bottom: y + 0.3 * strong });
        y += 1.4 * strong;
    }
    if !chart.rows.iter().any(has_line) {
        let text = manner.label(Label::WindowNoLines);
        let (x, y) = (f64::midpoint(room.left, room.right), f64::midpoint(across.cap, room.bottom));
        let half = text_width(text, Class::Small, small) / 2.0;
        front.text(Class::Small, None, (x, y), Anchor::Middle, small, text);
        taken.push(Extent { left: x - half, top: y - small, right: x + half, bottom: y + 0.4 * small });
    }
    let mut obstacles: Vec<Obstacle> = Vec::new();
    for line in [&lines.lifts[1], &lines.stays[1], &lines.carries] {
        obstacles.push(Obstacle { line, weight: 3.0 });
    }
    for line in [&lines.lifts[0], &lines.stays[2]] {
        obstacles.push(Obstacle { line, weight: 0.4 });
    }
    for line in [&limit_line, &across_line].into_iter().flatten() {
        obstacles.push(Obstacle { line, weight: 4.0 });
    }
    for (caption, at) in captions.iter().zip(places(&captions, &room, &obstacles, &taken)) {
        if let Some(at) = at {
            let (middle, base) = (f64::midpoint(at.left, at.right), at.bottom - 0.27 * caption.size);
            front.text(caption.class, None, (middle, base), Anchor::Middle, caption.size, &caption.text);
            taken.push(at);
        }
    }
    taken
}

/// Below the lifts and above what stays in, hatched against each other; closely where every line rules the flow out.
#[inline(never)]
fn banks(sketch: &mut Sketch, lines: &Lines, cap: f64, room: &Extent, keep_off: &[Extent]) {
    let mut d = String::new();
    for (line, shift) in [(&lines.lifts[1], 0.0), (&lines.lifts[2], 0.5)] {
        hatch(&Region::below(line, cap, room.bottom), room, -1.0, shift, keep_off, &mut d);
    }
    for (line, shift) in [(&lines.stays[1], 0.0), (&lines.stays[0], 0.5)] {
        hatch(&Region::above(line, cap, room.bottom), room, 1.0, shift, keep_off, &mut d);
    }
    sketch.path(Class::ChartHatch, None, d);
}

/// More flow than there is, crossed out.
#[inline(never)]
fn crosses(room: &Extent, cap: f64, lines: &Lines, keep_off: &[Extent]) -> String {
    const STEP: f64 = 16.0;
    const HALF: f64 = 2.75;
    let mut d = String::new();
    let mut row = 0;
    let mut y = cap - 9.0;
    while y - HALF > room.top {
        let mut x = room.left + if row % 2 == 0 { 9.0 } else { 9.0 + STEP / 2.0 };
        while x + HALF < room.right {
            let at = Extent { left: x - HALF, top: y - HALF, right: x + HALF, bottom: y + HALF };
            if !keep_off.iter().any(|other| other.meets(&at)) && !lines.meet(&at.grown(2.0), room) {
                for (from, step) in [(-HALF, "l5.5 5.5"), (HALF, "l5.5-5.5")] {
                    pen(&mut d, 'M', x - HALF, y + from);
                    d.push_str(step);
                }
            }
            x += STEP;
        }
        y -= 12.0;
        row += 1;
    }
    d
}
