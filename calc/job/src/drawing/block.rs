//! Lines of text one under the other.

use super::shape::{Anchor, Class, text_width};
use super::sketch::Sketch;

/// Lines of text one under the other.
pub(super) struct Block {
    /// How each looks, its size, its text.
    pub lines: Vec<(Class, f64, String)>,
}

impl Block {
    pub fn width(&self) -> f64 {
        self.lines.iter().map(|(class, size, text)| text_width(text, *class, *size)).fold(0.0, f64::max)
    }

    pub fn height(&self) -> f64 {
        self.lines.iter().map(|(_, size, _)| size * 1.15).sum::<f64>() + 4.0
    }

    pub fn draw(&self, sketch: &mut Sketch, layer: Option<usize>, x: f64, middle: f64, anchor: Anchor) {
        let mut y = middle - self.height() / 2.0 + 2.0;
        for (class, size, text) in &self.lines {
            sketch.text(*class, layer, (x, y + 0.88 * size), anchor, *size, text);
            y += size * 1.15;
        }
    }
}
