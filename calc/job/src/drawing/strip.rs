//! The section as a narrow strip: everything that is read stands on the vessel.

use bedwright_calc::order::Between as _;
use bedwright_calc::quantity::Length;
use bedwright_calc::vessel::Opening;

use super::compose::{Subject, body, stands_above};
use super::dimension::upright;
use super::fittings::Fittings;
use super::frame::Frame;
use super::full::{open_badges, over_bed};
use super::label::{Filling, badge_place, filled, pack_levels, pack_rooms};
use super::lifted::LiftedLines;
use super::shape::{Anchor, Class, Extent, crisp, number, text_width};
use super::sketch::{Drawn, Sketch};
use super::spread::{Wish, spread};

/// From the edge of the strip to the shell.
const EDGE: f64 = 3.0;

/// A reading that is to stand on the vessel.
pub(super) struct Level {
    /// Its layer.
    pub layer: usize,
    /// Its height, in metres.
    pub height: f64,
    /// What the tape says there.
    pub tape: Length,
    /// Whether it was read; else it is to be expected.
    pub read: bool,
}

/// A reading in its frame.
struct Tag {
    layer: usize,
    read: bool,
    surface: f64,
    text: String,
    width: f64,
    badge: bool,
    room: Extent,
}

/// The strip with the reading of each layer.
pub(super) fn strip(subject: &Subject, room: (f64, f64)) -> Drawn {
    let read = subject.besides.surfaces(subject.answers);
    let rim = subject.vessel.cavity.rim().value;
    let levels: Vec<Level> = filled(subject.answers)
        .iter()
        .map(|layer| {
            // What was read counts more than what was to be expected; the layer itself is drawn as planned.
            match read.iter().find(|surface| surface.layer == layer.index) {
                Some(surface) => Level {
                    layer: layer.index,
                    height: (rim - surface.tape.value).max(0.0).min(rim),
                    tape: surface.tape,
                    read: true,
                },
                None => Level {
                    layer: layer.index,
                    height: layer.fill.top.value.value,
                    tape: layer.fill.tape.reading.value,
                    read: false,
                },
            }
        })
        .collect();
    strip_of(subject, room, &levels)
}

/// The strip with other readings, bottom first.
pub(super) fn strip_of(subject: &Subject, (width, height): (f64, f64), levels: &[Level]) -> Drawn {
    let Subject { answers, vessel, manner, .. } = *subject;
    let layers = filled(answers);
    let rim = vessel.cavity.rim().value;
    let size = if width >= 96.0 { 11.0 } else { 9.5 };
    let r = if width >= 96.0 { 8.0 } else { 6.0 };
    let tall = size + 6.0;

    let above = stands_above(vessel);
    let edge = if vessel.measures.opening == Opening::SidePorts { EDGE + 7.0 } else { EDGE };
    let half = width / 2.0 - edge;
    let radius = (vessel.inside_diameter.value.value / 2.0).max(1e-6);
    let scale = (half / radius).min((height - 14.0 - 12.0).max(20.0) / (rim + above).max(1e-6));
    let datum = 14.0 + above * scale;
    let frame = Frame::new(
        &vessel.cavity,
        vessel.measures.clear_bore.value.value,
        width / 2.0,
        datum,
        scale * radius,
        rim * scale,
    );
    let fittings = Fittings::new(vessel, &frame);

    // Readings from the rim down; the deepest give way where there are too many.
    let mut tags: Vec<Tag> = levels
        .iter()
        .rev()
        .map(|level| {
            let text = manner.tape_bare(level.tape);
            let width = text_width(&text, Class::Reading, size) + 6.0;
            let surface = frame.level(level.height);
            let room = Extent { left: 0.0, top: 0.0, right: 0.0, bottom: 0.0 };
            Tag { layer: level.layer, read: level.read, surface, text, width, badge: false, room }
        })
        .collect();
    let (low, high) = (frame.datum + 5.0, height - 2.0);
    tags.truncate(((high - low) / (tall + 2.0)).floor().max(0.0) as usize);
    let hidden = fittings.collector();
    let mut under = false;
    let mut wishes: Vec<Wish> = Vec::with_capacity(tags.len());
    for tag in &tags {
        // A box that would hide the collector stands under the vessel, and those below it too.
        let there = box_at(tag, tag.surface, tall, &frame, width);
        under = under || hidden.iter().any(|room| room.meets(&there.grown(1.0)));
        let at = if under { frame.floor() + 6.0 + tall / 2.0 } else { tag.surface };
        wishes.push(Wish { at, size: tall + 2.0 });
    }
    for (tag, middle) in tags.iter_mut().zip(spread(&wishes, low, high)) {
        tag.room = box_at(tag, middle, tall, &frame, width);
    }

    // Numbers in their layers; where a layer is too thin, beside its reading.
    let boxes: Vec<Extent> = tags.iter().map(|tag| tag.room).collect();
    let mut taken = fittings.rooms();
    taken.extend(&boxes);
    let levels = pack_levels(&layers, &frame, 12.0);
    taken.extend(pack_rooms(&levels, &frame));
    let loaded = subject.loaded(&frame, &layers);
    taken.extend(loaded.iter().flat_map(|line| line.rooms(&frame)));
    let mut badges: Vec<(usize, (f64, f64))> = Vec::new();
    let circle = |at: (f64, f64), r: f64| Extent { left: at.0 - r, top: at.1 - r, right: at.0 + r, bottom: at.1 + r };
    for layer in &layers {
        let (top, bottom) = (frame.y(layer.fill.top.value.value), frame.y(layer.fill.bottom.value.value));
        if let Some(at) = badge_place(&frame, top, bottom, r, &taken, &[1.0, -1.0]) {
            taken.push(circle(at, r));
            badges.push((layer.index, at));
        }
    }
    let small = (tall / 2.0 - 1.5).min(r);
    for tag in &mut tags {
        if badges.iter().any(|(layer, _)| *layer == tag.layer) {
            continue;
        }
        let y = f64::midpoint(tag.room.top, tag.room.bottom);
        for x in [tag.room.right + small + 2.0, tag.room.left - small - 2.0] {
            let at = (x, y);
            let room = circle(at, small);
            if room.left >= 0.5
                && room.right <= width - 0.5
                && !badges.iter().any(|(_, other)| circle(*other, r).meets(&room))
                && !boxes.iter().any(|other| other.meets(&room))
            {
                badges.push((tag.layer, at));
                taken.push(room);
                tag.badge = true;
                break;
            }
        }
    }

    // Temperatures come after the numbers: what they say is read out as well.
    let letters = if width >= 96.0 { 9.5 } else { 8.0 };
    let lifted = LiftedLines::new(subject, &frame, letters, &over_bed(&taken, &layers, &frame));
    taken.extend(lifted.rooms());

    let mut texts = boxes.clone();
    texts.extend(badges.iter().map(|(_, at)| circle(*at, r)));
    let mut sketch = Sketch::default();
    let filling = Filling { layers: &layers, packs: &levels, lifted: &lifted, loaded: &loaded };
    body(&mut sketch, subject, &frame, &fittings, &filling, &texts, 0.9);
    // With nothing in it yet, its depth is what there is to read.
    if layers.is_empty() {
        let text = manner.tape(vessel.measures.inside_depth.value);
        // A long reading is written smaller rather than over the edge.
        let size = size * ((width - 8.0) / text_width(&text, Class::Reading, size)).min(1.0);
        let wide = text_width(&text, Class::Reading, size) + 6.0;
        let middle = crisp(f64::midpoint(frame.datum, frame.floor()));
        // Beside riser and axis, where the vessel is wide enough.
        let beside = crisp(frame.axis + frame.half / 2.0);
        let left = crisp((beside - wide / 2.0).min(width - wide - 1.0).max(0.0));
        let room = Extent { left, top: middle - tall / 2.0, right: left + wide, bottom: middle + tall / 2.0 };
        let line = beside.max(left + 2.0).min(left + wide - 2.0);
        upright(&mut sketch, line, frame.datum, crisp(frame.floor()));
        sketch.rect(Class::Box, None, &room, 2.0);
        let at = (f64::midpoint(room.left, room.right), middle + 0.36 * size);
        sketch.text(Class::Reading, None, at, Anchor::Middle, size, &text);
        taken.push(room);
    }
    open_badges(&mut sketch, answers, &frame, &layers, &taken, r);

    for tag in &tags {
        let middle = f64::midpoint(tag.room.top, tag.room.bottom);
        if (tag.room.top..=tag.room.bottom).contains(&tag.surface) {
            continue;
        }
        // Led from the box's far end down or up to its own surface.
        let beside = if tag.badge { 2.0 * small + 3.0 } else { 0.0 };
        let from = tag.room.right + beside;
        let reach = frame.half_at(tag.surface) - 5.0;
        let to = (from + 10.0).min(frame.axis + reach).max(frame.axis);
        let d = format!("M{} {}L{} {}", number(from.min(width - 3.0)), number(middle), number(to), number(tag.surface));
        sketch.path(Class::Halo, None, d.clone());
        sketch.path(Class::Leader, Some(tag.layer), d);
        sketch.path(Class::Solid, Some(tag.layer), dot(to, tag.surface));
    }
    for tag in &tags {
        let (frame, figure) = if tag.read { (Class::ReadBox, Class::ReadFigure) } else { (Class::Box, Class::Reading) };
        sketch.rect(frame, Some(tag.layer), &tag.room, 2.0);
        let at =
            (f64::midpoint(tag.room.left, tag.room.right), f64::midpoint(tag.room.top, tag.room.bottom) + 0.36 * size);
        sketch.text(figure, Some(tag.layer), at, Anchor::Middle, size, &tag.text);
    }
    for (layer, at) in &badges {
        let r = if tags.iter().any(|tag| tag.badge && tag.layer == *layer) { small } else { r };
        sketch.badge(*layer, *at, r, false);
    }
    let lowest = boxes.iter().map(|room| room.bottom).fold(frame.floor() + 10.0, f64::max);
    Drawn { shapes: sketch.shapes, height: lowest + 2.0 }
}

/// Where a tag's box stands at a level: inside the wall where the vessel is wide enough there, else centred.
fn box_at(tag: &Tag, middle: f64, tall: f64, frame: &Frame, width: f64) -> Extent {
    let top = (middle - tall / 2.0).round() + 0.5;
    let bottom = top + tall - 1.0;
    let inside = frame.half_between(top, bottom) - 4.0;
    let left = if 2.0 * inside >= tag.width { frame.axis - inside } else { frame.axis - tag.width / 2.0 };
    let left = crisp(left.between(0.5, (width - tag.width - 1.0).max(0.5)));
    Extent { left, top, right: left + tag.width, bottom }
}

fn dot(x: f64, y: f64) -> String {
    format!("M{} {}a1.75 1.75 0 1 0 3.5 0a1.75 1.75 0 1 0-3.5 0", number(x - 1.75), number(y))
}
