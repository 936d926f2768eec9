//! Under a section: what its layers are made of, what its lines stand for, and whose it is.

use bedwright_calc::material::Material;
use bedwright_calc::order::Between as _;

use super::compose::Subject;
use super::frame::Frame;
use super::full::Sizes;
use super::hatch::{Ground, hatching};
use super::label::Filled;
use super::lifted::CLASSES;
use super::loaded::level_mark;
use super::shape::{Anchor, Class, Extent, crisp, text_width};
use super::sketch::Sketch;

const SWATCH: f64 = 30.0;
const GAP: f64 = 6.0;
/// The key takes at most this share of a picture's height.
const MOST: f64 = 0.4;

/// What a line of the key shows.
enum Sample<'a> {
    /// A layer: its number and its hatching.
    Layer(usize, Option<&'a Material>),
    /// A line.
    Line(Class),
    /// A line with a level mark.
    Marked,
}

/// The key of a section.
pub(super) struct Key<'a> {
    entries: Vec<(Sample<'a>, String)>,
    caption: &'a str,
    columns: usize,
    column: f64,
    row: f64,
    /// How much room it takes.
    pub height: f64,
}

impl<'a> Key<'a> {
    /// In as many columns as go beside each other, down each column.
    pub fn new(
        subject: &Subject<'a>,
        layers: &[Filled<'a>],
        drawn: &[Class],
        (width, height): (f64, f64),
        sizes: &Sizes,
    ) -> Key<'a> {
        let (manner, besides) = (subject.manner, subject.besides);
        let mut lines = Vec::new();
        for (lifted, class) in besides.lifted(subject.answers).iter().zip(CLASSES) {
            let class = if besides.cold.is_none() { Class::ExpandedWarm } else { class };
            if drawn.contains(&class) {
                lines.push((Sample::Line(class), manner.section_lifted(lifted.water)));
            }
        }
        if let Some(loaded) = besides.loaded.as_ref().filter(|_| drawn.contains(&Class::Loaded)) {
            lines.push((Sample::Marked, manner.section_as_loaded(&loaded.day, &loaded.tag)));
        }
        let mut entries = Vec::new();
        if sizes.names_layers {
            // As they lie: the uppermost first.
            entries.extend(layers.iter().rev().map(|layer| {
                let name = layer.material.map(|material| manner.material(&material.id)).unwrap_or_default();
                let packs = manner.section_packs(layer.fill.packs.value, layer.container);
                (Sample::Layer(layer.index, layer.material), [&name, " · ", &packs].concat())
            }));
        }
        entries.extend(lines);
        let mut key = Key { entries, caption: &besides.caption, columns: 1, column: 0.0, row: 0.0, height: 0.0 };
        key.row = sizes.small * if sizes.names_layers { 1.95 } else { 1.7 };
        key.lay_out(width, sizes);
        if key.height > MOST * height {
            // Rather no names than a vessel that can't be seen.
            key.entries.retain(|(sample, _)| !matches!(sample, Sample::Layer(..)));
            key.lay_out(width, sizes);
        }
        if key.height > MOST * height {
            key.entries.clear();
            key.lay_out(width, sizes);
        }
        key
    }

    fn lay_out(&mut self, width: f64, sizes: &Sizes) {
        let lead = SWATCH + GAP + 2.0 * sizes.badge + 4.0;
        let widest = self
            .entries
            .iter()
            .map(|(_, text)| lead + text_width(text, Class::Small, sizes.small) + 12.0)
            .fold(80.0, f64::max);
        let room = width - 2.0 * sizes.edge;
        self.columns = (room / widest).floor().between(1.0, 4.0) as usize;
        self.column = room / self.columns as f64;
        let rows = self.entries.len().div_ceil(self.columns.max(1));
        let caption = if self.caption.is_empty() { 0.0 } else { self.row };
        self.height = if self.entries.is_empty() { caption + 2.0 } else { 10.0 + rows as f64 * self.row + caption };
    }

    /// Draws it from a place down.
    pub fn draw(&self, sketch: &mut Sketch, top: f64, sizes: &Sizes) {
        let rows = self.entries.len().div_ceil(self.columns.max(1)).max(1);
        let top = if self.entries.is_empty() { top } else { top + 8.0 };
        let mut last = top;
        let numbered = self.entries.iter().any(|(sample, _)| matches!(sample, Sample::Layer(..)));
        for (at, (sample, text)) in self.entries.iter().enumerate() {
            let left = crisp(sizes.edge + self.column * (at / rows) as f64);
            let middle = crisp(top + self.row * ((at % rows) as f64 + 0.5));
            last = last.max(middle + self.row / 2.0);
            let half = (self.row * 0.42).floor();
            let room = Extent { left, top: middle - half, right: left + SWATCH, bottom: middle + half };
            let mut x = room.right + GAP;
            let layer = match sample {
                Sample::Layer(index, material) => {
                    swatch(sketch, *index, *material, &room, sizes.boldness);
                    sketch.badge(*index, (x + sizes.badge, middle), sizes.badge.min(half), false);
                    Some(*index)
                }
                Sample::Line(class) => {
                    sketch.line(*class, None, (left, middle), (room.right, middle));
                    None
                }
                Sample::Marked => {
                    sketch.line(Class::Loaded, None, (left, middle), (room.right, middle));
                    level_mark(sketch, None, (f64::midpoint(left, room.right), middle));
                    None
                }
            };
            if numbered {
                x += 2.0 * sizes.badge + 4.0;
            }
            let right = sizes.edge + self.column * ((at / rows) as f64 + 1.0);
            let text = shortened(text, Class::Small, sizes.small, right - x);
            sketch.text(Class::Small, layer, (x, middle + 0.36 * sizes.small), Anchor::Start, sizes.small, &text);
        }
        if !self.caption.is_empty() {
            let text = shortened(self.caption, Class::Small, sizes.small, self.column * self.columns as f64);
            let y = last + self.row * 0.5 + 0.36 * sizes.small;
            sketch.text(Class::Small, None, (sizes.edge, y), Anchor::Start, sizes.small, &text);
        }
    }
}

/// A sample of a layer's hatching in its frame.
fn swatch(sketch: &mut Sketch, layer: usize, material: Option<&Material>, room: &Extent, boldness: f64) {
    sketch.rect(Class::Area, Some(layer), room, 0.0);
    if let Some(material) = material {
        let frame = Frame::plain(room);
        let ground = Ground { frame: &frame, top: room.top, bottom: room.bottom, keep_off: &[] };
        let (class, d) = hatching(material, &ground, 0.8 * boldness);
        sketch.path(class, Some(layer), d);
    }
    sketch.rect(Class::Sample, Some(layer), room, 0.0);
}

/// A text as far as it goes into a width; what is cut off is shown by dots.
pub(super) fn shortened(text: &str, class: Class, size: f64, room: f64) -> String {
    if text_width(text, class, size) <= room {
        return text.to_owned();
    }
    let mut short = String::new();
    for letter in text.chars() {
        short.push(letter);
        if text_width(&short, class, size) + text_width("…", class, size) > room {
            short.pop();
            break;
        }
    }
    short.truncate(short.trim_end().len());
    short.push('…');
    short
}
