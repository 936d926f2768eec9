//! What the lines and the hatchings of a window mean.

use super::bank::{Region, hatch};
use crate::drawing::shape::{Anchor, Class, Extent, text_width};
use crate::drawing::sketch::Sketch;
use crate::words::{Label, Manner};

const SWATCH: f64 = 26.0;
const GAP: f64 = 6.0;
const BETWEEN: f64 = 16.0;

/// A sample and its text, with its place from the key's upper left corner.
struct Entry {
    label: Label,
    text: &'static str,
    at: (f64, f64),
}

/// The key under a window.
pub(super) struct Key {
    entries: Vec<Entry>,
    size: f64,
    /// How much room it takes.
    pub height: f64,
}

impl Key {
    /// In as many columns as go beside each other.
    pub fn new(manner: &Manner, width: f64, size: f64) -> Key {
        let labels = [Label::WindowLikely, Label::WindowCautious, Label::WindowLikelyFails, Label::WindowFails];
        let wide = labels.map(|label| SWATCH + GAP + text_width(manner.label(label), Class::Small, size));
        let [a, b, c, d] = wide;
        // All beside each other, two and two, or one under the other.
        let columns = if a + b + c + d + 3.0 * BETWEEN + 2.0 <= width {
            4
        } else if a.max(c) + BETWEEN + b.max(d) + 2.0 <= width {
            2
        } else {
            1
        };
        let row = size * 1.5;
        let (mut entries, mut x): (Vec<Entry>, f64) = (Vec::with_capacity(4), 1.0);
        for (index, (label, wide)) in labels.into_iter().zip(wide).enumerate() {
            if index % columns == 0 {
                x = 1.0;
            }
            entries.push(Entry { label, text: manner.label(label), at: (x, row * (index / columns) as f64) });
            x += BETWEEN + if columns == 2 { a.max(c) } else { wide };
        }
        Key { entries, size, height: row * (4 / columns) as f64 + 2.0 }
    }

    /// Draws it.
    pub fn draw(&self, sketch: &mut Sketch, top: f64) {
        for entry in &self.entries {
            let (left, top) = (entry.at.0 + 0.5, (top + entry.at.1).floor() + 0.5);
            let swatch = Extent { left, top, right: left + SWATCH, bottom: top + (1.15 * self.size).floor() };
            let middle = f64::midpoint(swatch.top, swatch.bottom).floor() + 0.5;
            match entry.label {
                Label::WindowLikely => {
                    sketch.line(Class::ChartLikely, None, (left, middle), (swatch.right, middle));
                }
                Label::WindowCautious => {
                    sketch.line(Class::ChartCautious, None, (left, middle), (swatch.right, middle));
                }
                label => {
                    let edge = [swatch.top; SWATCH as usize + 1];
                    let region = Region::below(&edge, swatch.top, swatch.bottom);
                    let mut d = String::new();
                    hatch(&region, &swatch, -1.0, 0.0, &[], &mut d);
                    if label == Label::WindowFails {
                        hatch(&region, &swatch, -1.0, 0.5, &[], &mut d);
                    }
                    sketch.path(Class::ChartHatch, None, d);
                    sketch.rect(Class::ChartSample, None, &swatch, 0.0);
                }
            }
            let at = (swatch.right + GAP, middle + 0.36 * self.size);
            sketch.text(Class::Small, None, at, Anchor::Start, self.size, entry.text);
        }
    }
}
