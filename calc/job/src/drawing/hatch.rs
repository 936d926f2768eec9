//! Hatching that tells materials apart without colour: whole marks only, none cut off, none under a text.

use bedwright_calc::material::{Hatch, Material};
use bedwright_calc::order::Between as _;

use super::frame::Frame;
use super::shape::{Class, Extent, number};

/// Where a layer's marks may stand.
pub(super) struct Ground<'a> {
    /// The vessel.
    pub frame: &'a Frame,
    /// The layer's surface.
    pub top: f64,
    /// Its lower face.
    pub bottom: f64,
    /// What must stay free: fittings and texts.
    pub keep_off: &'a [Extent],
}

impl Ground<'_> {
    fn admits(&self, x: f64, y: f64, across: f64, up: f64) -> bool {
        const AIR: f64 = 1.1;
        const WALL: f64 = 2.0;
        let (top, bottom) = (y - up, y + up);
        if top < self.top + AIR || bottom > self.bottom - AIR {
            return false;
        }
        if (x - self.frame.axis).abs() + across > self.frame.half_between(top, bottom) - WALL {
            return false;
        }
        let mark = Extent { left: x - across, top, right: x + across, bottom };
        !self.keep_off.iter().any(|room| room.meets(&mark))
    }
}

/// How the marks of a hatch are set: distance across and down, how far each may stray, room of one.
struct Setting {
    across: f64,
    down: f64,
    stray: f64,
}

const MOST_MARKS: f64 = 3200.0;

/// The marks of a layer and how they are drawn; `boldness` is 1 on a screen at reading distance.
pub(super) fn hatching(material: &Material, ground: &Ground, boldness: f64) -> (Class, String) {
    let millimetres = (material.grain_high.value.value * 1000.0).between(0.1, 60.0);
    let layer = (ground.bottom - ground.top).max(0.0);
    // Coarser grains, larger marks, but only a little.
    let grain = millimetres.sqrt().sqrt().between(0.8, 1.3) * boldness;
    let pebble = (1.25 * (millimetres / 3.175).sqrt().max(0.9) * boldness).min((layer - 3.0) / 2.1).between(0.9, 6.0);
    let setting = match material.hatch {
        Hatch::Circles => Setting { across: 2.0 * pebble + 1.5, down: 1.8 * pebble + 1.35, stray: 1.0 },
        Hatch::Dots => Setting { across: 5.4 * grain, down: 4.6 * grain, stray: 1.3 },
        Hatch::Stipple => Setting { across: 4.0 * grain, down: 3.6 * grain, stray: 2.2 },
        Hatch::Slashes => Setting { across: 6.2 * grain, down: 5.6 * grain, stray: 0.5 },
        Hatch::Dashes => Setting { across: 8.2 * grain, down: 4.1 * grain, stray: 0.9 },
        Hatch::Crosses => Setting { across: 7.4 * grain, down: 6.4 * grain, stray: 0.4 },
        Hatch::Rings => Setting { across: 5.4 * grain, down: 4.7 * grain, stray: 0.0 },
        Hatch::Ticks => Setting { across: 4.8 * grain, down: 6.4 * grain, stray: 0.5 },
        Hatch::Waves => Setting { across: 10.4 * grain, down: 5.0 * grain, stray: 0.0 },
    };
    let expected = layer * 2.0 * ground.frame.half / (setting.across * setting.down);
    let wider = (expected / MOST_MARKS).max(1.0).sqrt();
    let (across, down) = (setting.across * wider, setting.down * wider);
    let stray = setting.stray * boldness;

    let mut path = String::new();
    // Counted from datum and axis, so that a mark stays where it is while a surface moves.
    let first = ((ground.top - ground.frame.datum) / down).floor() as i64;
    let last = ((ground.bottom - ground.frame.datum) / down).ceil() as i64;
    let columns = (ground.frame.half / across).ceil() as i64 + 1;
    for row in first..=last {
        let shift = if row.rem_euclid(2) == 0 { 0.0 } else { 0.5 };
        for column in -columns..=columns {
            let (a, b, c) = (noise(row, column, 1), noise(row, column, 2), noise(row, column, 3));
            let x = ground.frame.axis + (column as f64 + shift) * across + (a - 0.5) * stray;
            let y = ground.frame.datum + (row as f64 + 0.5) * down + (b - 0.5) * stray;
            mark(material, ground, &mut path, (x, y), c, grain, pebble);
        }
    }
    let class = match material.hatch {
        Hatch::Dots => Class::Dots,
        Hatch::Stipple => Class::Stipple,
        _ => Class::Hatch,
    };
    (class, path)
}

/// One mark, where there is room for it.
fn mark(
    material: &Material,
    ground: &Ground,
    path: &mut String,
    (x, y): (f64, f64),
    chance: f64,
    grain: f64,
    pebble: f64,
) {
    let (across, up) = match material.hatch {
        Hatch::Circles => {
            let spread = (material.grain_low.value.value / material.grain_high.value.value).between(0.5, 1.0);
            let r = pebble * (spread + (1.0 - spread) * chance);
            (r, r)
        }
        Hatch::Dots => (1.15 * grain, 1.15 * grain),
        Hatch::Stipple => (0.6, 0.6),
        Hatch::Slashes => (1.7 * grain, 2.3 * grain),
        Hatch::Dashes => ((2.2 + 0.8 * chance) * grain, 0.7),
        Hatch::Crosses => (1.7 * grain, 1.7 * grain),
        Hatch::Rings => (1.7 * grain, 1.7 * grain),
        Hatch::Ticks => (0.5, 2.1 * grain),
        Hatch::Waves => (4.0 * grain, 1.2 * grain),
    };
    if !ground.admits(x, y, across, up) {
        return;
    }
    let n = number;
    path.push_str(&match material.hatch {
        Hatch::Circles | Hatch::Dots | Hatch::Rings => {
            let r = n(across);
            let d = n(2.0 * across);
            format!("M{} {}a{r} {r} 0 1 0 {d} 0a{r} {r} 0 1 0-{d} 0", n(x - across), n(y))
        }
        Hatch::Stipple => format!("M{} {}h0", n(x), n(y)),
        Hatch::Slashes => format!("M{} {}l{} {}", n(x - across), n(y + up), n(2.0 * across), n(-2.0 * up)),
        Hatch::Dashes => {
            let tilt = (chance - 0.5) * 1.2;
            format!("M{} {}l{} {}", n(x - across), n(y - tilt / 2.0), n(2.0 * across), n(tilt))
        }
        Hatch::Crosses => {
            format!("M{} {}h{}M{} {}v{}", n(x - across), n(y), n(2.0 * across), n(x), n(y - up), n(2.0 * up))
        }
        Hatch::Ticks => format!("M{} {}v{}", n(x), n(y - up), n(2.0 * up)),
        Hatch::Waves => {
            let half = across / 2.0;
            format!("M{} {}q{} {} {} 0t{} 0", n(x - across), n(y), n(half), n(-2.0 * up), n(across), n(across))
        }
    });
}

/// A number from 0 to 1 that looks like chance and is always the same.
fn noise(row: i64, column: i64, salt: i64) -> f64 {
    let mut h =
        (row.wrapping_mul(0x9E37_79B1) ^ column.wrapping_mul(0x85EB_CA77) ^ salt.wrapping_mul(0xC2B2_AE3D)) as u32;
    h ^= h >> 15;
    h = h.wrapping_mul(0x2C1B_3C6D);
    h ^= h >> 12;
    h = h.wrapping_mul(0x297A_2D39);
    h ^= h >> 15;
    f64::from(h) / f64::from(u32::MAX)
}
