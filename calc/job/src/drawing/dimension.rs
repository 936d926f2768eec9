//! Dimension lines as drawing offices draw them.

use super::shape::Class;
use super::sketch::Sketch;

/// An upright dimension line between two levels, arrows inside, or outside where they are too near.
pub(super) fn upright(sketch: &mut Sketch, x: f64, a: f64, b: f64) {
    let (top, bottom) = (a.min(b), a.max(b));
    if bottom - top >= 18.0 {
        sketch.line(Class::Dimension, None, (x, top), (x, bottom));
        sketch.arrow((x, top), (0.0, -1.0));
        sketch.arrow((x, bottom), (0.0, 1.0));
    } else {
        sketch.line(Class::Dimension, None, (x, top - 12.0), (x, bottom + 12.0));
        sketch.arrow((x, top), (0.0, 1.0));
        sketch.arrow((x, bottom), (0.0, -1.0));
    }
}

/// Running dimensions from one origin: the tape let down from the rim, an arrow at each level, deepest last.
pub(super) fn running(sketch: &mut Sketch, x: f64, origin: f64, levels: &[f64]) {
    let Some(last) = levels.iter().copied().reduce(f64::max) else { return };
    sketch.line(Class::Dimension, None, (x, origin), (x, last));
    let mut above = origin;
    for &level in levels {
        // Two arrows that would run into each other: the lower one is left to its extension line.
        if level - above >= 9.0 {
            sketch.arrow((x, level), (0.0, 1.0));
        }
        above = level;
    }
    sketch.circle(Class::Origin, None, (x, origin), 2.5);
}
