//! The section with its dimensions beside it: depth and freeboard at the left, at the right the tape let down from the
//! rim with a reading at every surface (running dimensions from one origin, as ISO 129-1 has them).

use super::block::Block;
use super::compose::{Subject, body, stands_above};
use super::dimension::running;
use super::fittings::Fittings;
use super::frame::Frame;
use super::key::Key;
use super::label::{Filled, Filling, badge_place, filled, pack_levels, pack_rooms};
use super::left::LeftSide;
use super::lifted::LiftedLines;
use super::shape::{Anchor, Class, Extent, crisp, number, text_width};
use super::sketch::{Drawn, Sketch};
use super::spread::{Wish, spread};
use crate::answers::{LayerOutcome, VesselAnswers};

/// Sizes of letters and marks.
pub(super) struct Sizes {
    /// Figures people work with.
    pub reading: f64,
    /// What explains them.
    pub small: f64,
    /// Radius of a number's circle.
    pub badge: f64,
    /// Of hatching: 1 on a screen at reading distance.
    pub boldness: f64,
    /// From the picture's edge to anything.
    pub edge: f64,
    /// Whether its key names the layers; a page has them beside it.
    pub names_layers: bool,
}

/// On a screen.
pub(super) const SCREEN: Sizes =
    Sizes { reading: 14.0, small: 10.5, badge: 8.0, boldness: 1.0, edge: 4.0, names_layers: false };

/// On paper: 2.9 mm and 2.2 mm.
pub(super) const PAPER: Sizes =
    Sizes { reading: 11.0, small: 8.5, badge: 6.5, boldness: 0.85, edge: 2.0, names_layers: true };

/// From the shell out to the freeboard's line, and to the tape.
pub(super) const OUT: f64 = 17.0;

/// One entry of the tape's column.
struct Reading {
    layer: usize,
    y: f64,
    block: Block,
}

/// Each layer's reading to expect, what was read there, and the spread; from the rim down.
fn readings(subject: &Subject, layers: &[Filled], sizes: &Sizes) -> Vec<Reading> {
    let manner = subject.manner;
    let read = subject.besides.surfaces(subject.answers);
    layers
        .iter()
        .rev()
        .map(|layer| {
            let tape = &layer.fill.tape;
            let mut lines = vec![(Class::Reading, sizes.reading, manner.tape_bare(tape.reading.value))];
            if let Some(surface) = read.iter().find(|surface| surface.layer == layer.index) {
                lines.push((Class::Small, sizes.small, manner.section_loaded_tape(surface.tape)));
            }
            lines.push((Class::Small, sizes.small, manner.spread(tape.spread)));
            Reading { layer: layer.index, y: tape.reading.value.value, block: Block { lines } }
        })
        .collect()
}

pub(super) fn full(subject: &Subject, (width, whole): (f64, f64), sizes: &Sizes) -> Drawn {
    let Subject { answers, vessel, manner, .. } = *subject;
    let layers = filled(answers);
    let measures = &vessel.measures;
    let rim = vessel.cavity.rim().value;

    // What is read, and the room beside the vessel it needs.
    let depth = Block {
        lines: vec![
            (Class::Reading, sizes.reading, manner.tape(measures.inside_depth.value)),
            (Class::Small, sizes.small, manner.section_depth().to_owned()),
        ],
    };
    let freeboard = answers.plan.as_ref().and_then(|plan| plan.freeboard.as_ref().ok()).map(|freeboard| {
        let mut lines = vec![
            (Class::Reading, sizes.reading, manner.tape_bare(freeboard.length.value)),
            (Class::Small, sizes.small, manner.section_freeboard().to_owned()),
        ];
        if let Some(ratio) = &freeboard.ratio {
            lines.push((Class::Small, sizes.small, manner.percent(ratio.value)));
        }
        (freeboard, Block { lines })
    });
    let mut tapes = readings(subject, &layers, sizes);
    let datum_text = text_width(manner.section_datum(), Class::Small, sizes.small) + 12.0;
    let tape_text = text_width(manner.section_tape(), Class::Small, sizes.small);
    let column = depth.width().max(freeboard.as_ref().map_or(0.0, |(_, block)| block.width()));
    let left = sizes.edge + (column + 17.0 + OUT).max(datum_text + 4.0);
    let number_room = 2.0 * sizes.badge + 4.0;
    let widest = tapes.iter().map(|tape| tape.block.width()).fold(0.0, f64::max);
    let right = sizes.edge
        + if tapes.is_empty() {
            8.0
        } else {
            OUT + (14.0 + number_room + widest)
                .max(tape_text / 2.0 + 4.0)
                .max(text_width("999 9/9 bag 99", Class::Small, sizes.small) + 14.0)
        };
    // Too narrow for both sides: the depth goes without a side of its own.
    let both = width - left - right >= 0.24 * width;
    let left = if both { left } else { sizes.edge + 6.0 };

    // The key, as far as it says what is drawn.
    let drawn = lines_drawn(subject, &layers, rim);
    let key = Key::new(subject, &layers, &drawn, (width, whole), sizes);
    let height = whole - key.height;

    // The vessel; above it what its riser is cut to.
    let cut = answers.riser_cut.as_ref().map(|cut| manner.section_cut(cut.value));
    let cut = cut.filter(|text| text_width(text, Class::Small, sizes.small) / 2.0 < width / 2.0 - 4.0);
    let above = stands_above(vessel);
    let head = sizes.small * if cut.is_some() { 2.5 } else { 1.2 } + 18.0;
    let room = (width - left - right - 4.0).max(12.0);
    let per_metre = (height - head - 16.0).max(20.0) / (rim + above).max(1e-6);
    let half = (room / 2.0).min(240.0);
    let radius_share = vessel.inside_diameter.value.value / 2.0;
    let scale = per_metre.min(half / radius_share.max(1e-6));
    let datum = head + above * scale;
    let drawn_half = (scale * radius_share).min(half);
    let slack = (width - left - right - 2.0 * drawn_half).max(0.0) / 2.0;
    let axis = slack + left + drawn_half;
    let frame = Frame::new(&vessel.cavity, measures.clear_bore.value.value, axis, datum, drawn_half, rim * scale);
    let fittings = Fittings::new(vessel, &frame);
    let floor = crisp(frame.floor());

    // Readings at the right, spread; without their spread of error, then fewer, where there are too many.
    for tape in &mut tapes {
        tape.y = frame.level(rim - tape.y);
    }
    let (low, high) = (frame.datum + 5.0, height - 3.0);
    let total = |tapes: &[Reading]| tapes.iter().map(|tape| tape.block.height()).sum::<f64>();
    if total(&tapes) > high - low {
        for tape in &mut tapes {
            tape.block.lines.truncate(1);
        }
        while total(&tapes) > high - low && !tapes.is_empty() {
            tapes.pop();
        }
    }
    // The figure itself stands level with its surface.
    let first_line = 2.0 + sizes.reading * 0.58;
    let wishes: Vec<Wish> = tapes
        .iter()
        .map(|tape| Wish { at: tape.y + tape.block.height() / 2.0 - first_line, size: tape.block.height() })
        .collect();
    let middles = spread(&wishes, low, high);
    let line = crisp(frame.axis + frame.half + OUT);
    let text_x = line + 14.0 + number_room;
    let mut placed: Vec<Extent> = tapes
        .iter()
        .zip(&middles)
        .map(|(tape, middle)| {
            let half = tape.block.height() / 2.0;
            Extent { left: line + 6.0, top: middle - half, right: text_x + tape.block.width(), bottom: middle + half }
        })
        .collect();
    let lowest = placed.iter().map(|room| room.bottom).fold(0.0, f64::max);

    // Packs, where their reading finds room as it is.
    let levels = pack_levels(&layers, &frame, 9.0);
    let mut pack_texts = Vec::new();
    for level in &levels {
        let text = manner.section_pack(level.reading, level.container, level.number);
        let half = sizes.small * 0.6;
        let room = Extent {
            left: line + 6.0,
            top: level.y - half,
            right: line + 8.0 + text_width(&text, Class::Small, sizes.small),
            bottom: level.y + half,
        };
        let leaders_clear = tapes.iter().zip(&middles).all(|(tape, middle)| {
            let first = middle - tape.block.height() / 2.0 + first_line;
            level.y < tape.y.min(first) - half - 1.0 || level.y > tape.y.max(first) + half + 1.0
        });
        if leaders_clear
            && room.right <= width
            && room.bottom < high
            && !placed.iter().any(|other| other.meets(&room.grown(1.5)))
        {
            placed.push(room);
            pack_texts.push((level.layer, level.y, text));
        }
    }

    // Numbers inside their layers.
    let mut taken = fittings.rooms();
    taken.extend(pack_rooms(&levels, &frame));
    let loaded = subject.loaded(&frame, &layers);
    taken.extend(loaded.iter().flat_map(|line| line.rooms(&frame)));
    let lifted = LiftedLines::new(subject, &frame, sizes.small, &over_bed(&taken, &layers, &frame));
    taken.extend(lifted.rooms());
    let mut badges = Vec::new();
    for layer in &layers {
        let (top, bottom) = (frame.y(layer.fill.top.value.value), frame.y(layer.fill.bottom.value.value));
        if let Some(at) = badge_place(&frame, top, bottom, sizes.badge, &taken, &[-1.0, 1.0]) {
            let room = Extent {
                left: at.0 - sizes.badge,
                top: at.1 - sizes.badge,
                right: at.0 + sizes.badge,
                bottom: at.1 + sizes.badge,
            };
            taken.push(room);
            badges.push((layer.index, at, room));
        }
    }
    let texts: Vec<Extent> = badges.iter().map(|(_, _, room)| *room).collect();

    let mut sketch = Sketch::default();
    // Extension lines lie under everything.
    let shell = frame.half + 3.0;
    for tape in &tapes {
        sketch.line(
            Class::Extension,
            Some(tape.layer),
            (frame.axis + frame.half_at(tape.y) + 3.0, tape.y),
            (line + 4.0, tape.y),
        );
    }
    for (layer, y, _) in &pack_texts {
        sketch.line(Class::Extension, Some(*layer), (frame.axis + shell, *y), (line + 5.0, *y));
    }
    let filling = Filling { layers: &layers, packs: &levels, lifted: &lifted, loaded: &loaded };
    body(&mut sketch, subject, &frame, &fittings, &filling, &texts, sizes.boldness);
    open_badges(&mut sketch, answers, &frame, &layers, &taken, sizes.badge);
    for (index, at, _) in &badges {
        sketch.badge(*index, *at, sizes.badge, false);
    }

    // The tape.
    if !tapes.is_empty() {
        let rim_edge = frame.axis + frame.neck_half() + 10.0;
        sketch.line(Class::Extension, None, (rim_edge, frame.datum), (line + 4.0, frame.datum));
        let ys: Vec<f64> = tapes.iter().map(|tape| tape.y).collect();
        running(&mut sketch, line, frame.datum, &ys);
        let text = manner.section_tape();
        sketch.text(Class::Small, None, (line, frame.datum - 7.0), Anchor::Middle, sizes.small, text);
    }
    for (tape, middle) in tapes.iter().zip(&middles) {
        // The circle sits beside the first line of its block.
        let first = middle - tape.block.height() / 2.0 + first_line;
        let badge = (line + 13.0 + sizes.badge, first);
        let from = (line + 4.0, tape.y);
        let d =
            format!("M{} {}L{} {}", number(from.0), number(from.1), number(badge.0 - sizes.badge - 1.0), number(first));
        sketch.path(Class::Leader, Some(tape.layer), d);
        sketch.badge(tape.layer, badge, sizes.badge, false);
        tape.block.draw(&mut sketch, Some(tape.layer), text_x, *middle, Anchor::Start);
    }
    for (layer, y, text) in &pack_texts {
        sketch.text(Class::Small, Some(*layer), (line + 8.0, y + 0.36 * sizes.small), Anchor::Start, sizes.small, text);
    }

    if both {
        let side = LeftSide { edge: slack + sizes.edge, depth, freeboard };
        side.draw(&mut sketch, &frame, vessel, manner, sizes);
    }
    if let Some(text) = &cut {
        // Over the cap, and over what stands at both sides of it.
        let y = (fittings.top().unwrap_or(datum) - 12.0).min(datum - 1.2 * sizes.small - 8.0);
        let half = text_width(text, Class::Small, sizes.small) / 2.0;
        let x = frame.axis.max(half + 2.0).min(width - half - 2.0);
        sketch.text(Class::Small, None, (x, y), Anchor::Middle, sizes.small, text);
    }
    let below = floor.max(lowest).max(frame.floor() + 9.0) + 5.0;
    key.draw(&mut sketch, below, sizes);
    Drawn { shapes: sketch.shapes, height: below + key.height }
}

/// The kinds of lines that will stand on the drawing.
fn lines_drawn(subject: &Subject, layers: &[Filled], rim: f64) -> Vec<Class> {
    let inside = |height: f64| (0.0..=rim).contains(&height);
    let mut drawn = Vec::new();
    for (class, lifted) in [(Class::Expanded, subject.besides.cold), (Class::ExpandedWarm, subject.besides.warm)] {
        if lifted.is_some_and(|lifted| inside(lifted.height.value)) {
            drawn.push(class);
        }
    }
    let read = subject.besides.surfaces(subject.answers);
    let there = |layer: usize| layers.iter().any(|filled| filled.index == layer);
    if read.iter().any(|surface| there(surface.layer) && inside(rim - surface.tape.value)) {
        drawn.push(Class::Loaded);
    }
    drawn
}

/// What a text over the bed keeps off: what is taken, and the surface of all.
pub(super) fn over_bed(taken: &[Extent], layers: &[Filled], frame: &Frame) -> Vec<Extent> {
    let mut all = taken.to_vec();
    if let Some(last) = layers.last() {
        let y = frame.level(last.fill.top.value.value);
        all.push(Extent {
            left: frame.axis - frame.half,
            top: y,
            right: frame.axis + frame.half,
            bottom: frame.floor(),
        });
    }
    all
}

/// Layers without an answer: their numbers in broken circles over the last surface, as far as there is room.
pub(super) fn open_badges(
    sketch: &mut Sketch,
    answers: &VesselAnswers,
    frame: &Frame,
    layers: &[Filled],
    taken: &[Extent],
    r: f64,
) {
    let surface = layers.last().map_or(0.0, |layer| layer.fill.top.value.value);
    let mut bottom = frame.y(surface);
    let top = frame.datum + 2.0;
    for (index, layer) in answers.layers.iter().enumerate() {
        if matches!(layer.outcome, LayerOutcome::Filled(_)) {
            continue;
        }
        let slot = (bottom - 2.0 * r - 6.0).max(top);
        let Some(at) = badge_place(frame, slot, bottom, r, taken, &[-1.0, 1.0]) else { return };
        sketch.badge(index, at, r, true);
        bottom = at.1 - r;
    }
}
