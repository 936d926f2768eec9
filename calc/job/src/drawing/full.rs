//! The section with its dimensions beside it: depth and freeboard at the left, at the right the tape let down from the
//! rim with a reading at every surface (running dimensions from one origin, as ISO 129-1 has them).

use bedwright_calc::fill::Freeboard;
use bedwright_calc::vessel::Vessel;

use super::compose::{body, expanded, stands_above};
use super::dimension::{running, upright};
use super::fittings::Fittings;
use super::frame::Frame;
use super::label::{Filled, Filling, badge_place, filled, pack_levels, pack_rooms};
use super::shape::{Anchor, Class, Extent, crisp, number, text_width};
use super::sketch::{Drawn, Sketch};
use super::spread::{Wish, spread};
use crate::answers::{LayerOutcome, VesselAnswers};
use crate::words::Manner;

/// Sizes of letters and marks.
pub(super) struct Sizes {
    reading: f64,
    small: f64,
    badge: f64,
    boldness: f64,
    edge: f64,
}

/// On a screen.
pub(super) const SCREEN: Sizes = Sizes { reading: 14.0, small: 10.5, badge: 8.0, boldness: 1.0, edge: 4.0 };

/// On paper: 2.9 mm and 2.2 mm.
pub(super) const PAPER: Sizes = Sizes { reading: 11.0, small: 8.5, badge: 6.5, boldness: 0.85, edge: 2.0 };

/// From the shell out to the freeboard's line, and to the tape.
const OUT: f64 = 17.0;

/// Lines of text one under the other.
struct Block {
    lines: Vec<(Class, f64, String)>,
}

impl Block {
    fn width(&self) -> f64 {
        self.lines.iter().map(|(class, size, text)| text_width(text, *class, *size)).fold(0.0, f64::max)
    }

    fn height(&self) -> f64 {
        self.lines.iter().map(|(_, size, _)| size * 1.15).sum::<f64>() + 4.0
    }

    fn draw(&self, sketch: &mut Sketch, layer: Option<usize>, x: f64, middle: f64, anchor: Anchor) {
        let mut y = middle - self.height() / 2.0 + 2.0;
        for (class, size, text) in &self.lines {
            sketch.text(*class, layer, (x, y + 0.88 * size), anchor, *size, text);
            y += size * 1.15;
        }
    }
}

/// One entry of the tape's column.
struct Reading {
    layer: usize,
    y: f64,
    block: Block,
}

fn readings(layers: &[Filled], manner: &Manner, sizes: &Sizes, spreads: bool) -> Vec<Reading> {
    // From the rim down.
    layers
        .iter()
        .rev()
        .map(|layer| {
            let tape = &layer.fill.tape;
            let mut lines = vec![(Class::Reading, sizes.reading, manner.tape_bare(tape.reading.value))];
            if spreads {
                lines.push((Class::Small, sizes.small, manner.spread(tape.spread)));
            }
            Reading { layer: layer.index, y: tape.reading.value.value, block: Block { lines } }
        })
        .collect()
}

pub(super) fn full(
    answers: &VesselAnswers,
    vessel: &Vessel,
    manner: &Manner,
    (width, height): (f64, f64),
    sizes: &Sizes,
    lifted: Option<f64>,
) -> Drawn {
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
    let mut tapes = readings(&layers, manner, sizes, true);
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

    // The vessel.
    let above = stands_above(vessel);
    let head = sizes.small * 1.2 + 18.0;
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
    let filling = Filling { layers: &layers, packs: &levels };
    body(&mut sketch, vessel, &frame, &fittings, &filling, &texts, sizes.boldness);
    expanded(&mut sketch, &frame, lifted);
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
    let height = floor.max(lowest).max(frame.floor() + 9.0) + 5.0;
    Drawn { shapes: sketch.shapes, height }
}

/// Inside depth and freeboard; their texts share the column between the two lines.
struct LeftSide<'a> {
    edge: f64,
    depth: Block,
    freeboard: Option<(&'a Freeboard, Block)>,
}

impl LeftSide<'_> {
    fn draw(&self, sketch: &mut Sketch, frame: &Frame, vessel: &Vessel, manner: &Manner, sizes: &Sizes) {
        let outer = crisp(self.edge + 3.0);
        let floor = crisp(frame.floor());
        let datum = frame.datum;
        sketch.line(Class::Extension, None, (outer - 4.0, datum), (frame.axis - frame.neck_half() - 10.0, datum));
        sketch.line(Class::Extension, None, (outer - 4.0, floor), (frame.axis - 5.0, floor));
        upright(sketch, outer, datum, floor);
        // The level mark stands on the datum.
        let mark = outer + 6.0;
        let d = format!("M{} {}l-3.5-6h7Z", number(mark), number(datum));
        sketch.path(Class::Solid, None, d);
        sketch.text(Class::Small, None, (mark + 6.0, datum - 4.0), Anchor::Start, sizes.small, manner.section_datum());

        let (low, high) = (datum + 3.0, floor - 2.0);
        let mut middle = f64::midpoint(datum, floor);
        if let Some((figures, block)) = &self.freeboard {
            let inner = crisp(frame.axis - frame.half - OUT);
            let (ceiling, surface) =
                (frame.level(vessel.ceiling().value), frame.level(frame.rim - figures.tape.value.value));
            let total = block.height() + self.depth.height();
            if total <= high - low && ceiling >= datum {
                for y in [ceiling, surface] {
                    sketch.line(
                        Class::Extension,
                        None,
                        (inner - 4.0, y),
                        (frame.axis - frame.half_at(y).max(4.0) - 3.0, y),
                    );
                }
                upright(sketch, inner, ceiling, surface);
                let at = f64::midpoint(ceiling, surface);
                let depth_at =
                    if at + block.height() < middle { middle } else { f64::midpoint(surface.max(at), floor) };
                let wishes = [Wish { at, size: block.height() }, Wish { at: depth_at, size: self.depth.height() }];
                let places = spread(&wishes, low, high);
                if let [first, second] = places.as_slice() {
                    block.draw(sketch, None, inner - 7.0, *first, Anchor::End);
                    middle = *second;
                }
            }
        }
        if self.depth.height() <= high - low {
            self.depth.draw(sketch, None, outer + 6.0, middle, Anchor::Start);
        }
    }
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
