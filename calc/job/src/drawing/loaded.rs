//! Surfaces as they were read: a line across the layer with a level mark at either wall, beside the planned surface.

use super::frame::Frame;
use super::shape::{Class, Extent, number};
use super::sketch::Sketch;

/// A surface that was read, with its place.
pub(super) struct LoadedLine {
    /// Its layer.
    pub layer: usize,
    /// Its place.
    pub y: f64,
}

/// Half the width of a level mark, and its height.
const HALF: f64 = 3.5;
const TALL: f64 = 5.5;

/// From the wall to the point of a mark.
const INSET: f64 = 7.0;

impl LoadedLine {
    /// What hatching keeps off.
    pub fn rooms(&self, frame: &Frame) -> Vec<Extent> {
        let half = frame.half_at(self.y);
        let mut rooms =
            vec![Extent { left: frame.axis - half, top: self.y - 1.5, right: frame.axis + half, bottom: self.y + 1.5 }];
        for side in [-1.0, 1.0] {
            let x = frame.axis + side * (half - INSET);
            rooms.push(Extent { left: x - HALF, top: self.y - TALL - 1.0, right: x + HALF, bottom: self.y });
        }
        rooms
    }

    /// The line and its marks; fittings come over them.
    pub fn draw(&self, sketch: &mut Sketch, frame: &Frame) {
        let half = frame.half_at(self.y);
        let (left, right) = ((frame.axis - half, self.y), (frame.axis + half, self.y));
        sketch.line(Class::Loaded, Some(self.layer), left, right);
        for side in [-1.0, 1.0] {
            level_mark(sketch, Some(self.layer), (frame.axis + side * (half - INSET), self.y));
        }
    }
}

/// A triangle that stands on its point.
pub(super) fn level_mark(sketch: &mut Sketch, layer: Option<usize>, (x, y): (f64, f64)) {
    let d = format!("M{} {}l-{HALF}-{TALL}h{}Z", number(x), number(y), number(2.0 * HALF));
    sketch.path(Class::Solid, layer, d);
}
