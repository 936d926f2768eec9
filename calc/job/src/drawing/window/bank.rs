//! Slanted hatching of what lies beside a line.

use crate::drawing::shape::{Extent, pen};

/// From line to line of open hatching, straight down.
const STEP: f64 = 11.0;

/// A ground with an upper and a lower edge at every pixel's column; empty where the upper one is the lower.
pub(super) struct Region {
    edges: Vec<(f64, f64)>,
}

impl Region {
    /// All below a line, as far as `bottom`; nothing where there is no line.
    pub fn below(line: &[f64], top: f64, bottom: f64) -> Region {
        let edges = line.iter().map(|&y| if y.is_finite() { (y.max(top), bottom) } else { (bottom, bottom) });
        Region { edges: edges.collect() }
    }

    /// All above a line, as far as `top`; nothing where there is no line.
    pub fn above(line: &[f64], top: f64, bottom: f64) -> Region {
        let edges = line.iter().map(|&y| if y.is_finite() { (top, y.min(bottom)) } else { (top, top) });
        Region { edges: edges.collect() }
    }
}

/// Adds hatching that rises to the right (−1) or falls (1), moved by a share of its step; none under `keep_off`.
#[inline(never)]
pub(super) fn hatch(region: &Region, room: &Extent, slope: f64, shift: f64, keep_off: &[Extent], d: &mut String) {
    let wide = room.right - room.left;
    let (low, high) = if slope < 0.0 { (room.top, room.bottom + wide) } else { (room.top - wide, room.bottom) };
    // Counted from the lower left corner, so that hatching stays where it is while a line moves.
    let mut start = room.bottom + ((low - room.bottom) / STEP).ceil() * STEP + shift * STEP;
    while start <= high {
        let mut from: Option<(f64, f64)> = None;
        let mut last = (room.left, start, f64::NEG_INFINITY);
        for (column, &(upper, lower)) in region.edges.iter().enumerate() {
            let x = room.left + column as f64;
            let y = start + slope * column as f64;
            // How far inside.
            let inside = if covered(keep_off, x, y) { f64::NEG_INFINITY } else { (y - upper).min(lower - y) };
            let cut = || {
                let share = if last.2.is_finite() && inside.is_finite() { last.2 / (last.2 - inside) } else { 0.0 };
                let share = if inside > 0.0 && !last.2.is_finite() { 1.0 } else { share };
                (last.0 + share * (x - last.0), last.1 + share * (y - last.1))
            };
            if inside > 0.0 && from.is_none() {
                from = Some(cut());
            } else if inside <= 0.0
                && let Some(begin) = from.take()
            {
                stroke(begin, cut(), d);
            }
            last = (x, y, inside);
        }
        if let Some(begin) = from {
            stroke(begin, (last.0, last.1), d);
        }
        start += STEP;
    }
}

/// Whether a place is one to keep off.
#[inline(never)]
fn covered(keep_off: &[Extent], x: f64, y: f64) -> bool {
    keep_off.iter().any(|at| x > at.left && x < at.right && y > at.top && y < at.bottom)
}

fn stroke(from: (f64, f64), to: (f64, f64), d: &mut String) {
    // A crumb in a corner is dirt.
    if to.0 - from.0 < 1.0 {
        return;
    }
    pen(d, 'M', from.0, from.1);
    pen(d, 'L', to.0, to.1);
}
