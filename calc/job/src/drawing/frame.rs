//! Where the vessel stands on the drawing, and its outline.

use bedwright_calc::order;
use bedwright_calc::order::Between as _;
use bedwright_calc::quantity::metres;
use bedwright_calc::vessel::Cavity;

use super::shape::{Extent, crisp, number};

/// From heights and radii in metres to places in pixels.
#[derive(Clone, Debug)]
pub(super) struct Frame {
    /// The axis.
    pub axis: f64,
    /// The datum.
    pub datum: f64,
    /// Pixels per metre.
    pub scale: f64,
    /// Height of the datum above the lowest inside point, in metres.
    pub rim: f64,
    /// Half the inside diameter in pixels.
    pub half: f64,
    neck_half: f64,
    top_tangent: f64,
    /// Inside half width, one entry for each half pixel from the datum down.
    halves: Vec<f64>,
}

const ROWS_PER_PIXEL: f64 = 2.0;

impl Frame {
    /// A vessel with its axis at `axis`, its datum at `datum`, not wider than `half` nor deeper than `depth` pixels.
    pub fn new(cavity: &Cavity, neck_bore: f64, axis: f64, datum: f64, half: f64, depth: f64) -> Frame {
        let rim = cavity.rim().value.max(1e-6);
        let radius = cavity.radius_at(middle(cavity)).value.max(1e-6);
        // The wall on whole pixels, the scale after it.
        let half = (((depth / rim).min(half / radius) * radius) - 0.5).floor().max(3.0) + 0.5;
        let scale = half / radius;
        let mut frame = Frame {
            axis: crisp(axis),
            datum: crisp(datum),
            scale,
            rim,
            half,
            neck_half: (neck_bore / 2.0 * scale).min(half).max(1.5),
            top_tangent: cavity.top_tangent().value,
            halves: Vec::new(),
        };
        let rows = (rim * scale * ROWS_PER_PIXEL).ceil().between(0.0, 20_000.0) as usize + 1;
        frame.halves = (0..=rows)
            .map(|row| {
                let height = rim - row as f64 / ROWS_PER_PIXEL / scale;
                if height < 0.0 { 0.0 } else { frame.half_of(cavity, height) }
            })
            .collect();
        frame
    }

    /// A plain upright room, for a sample of hatching.
    pub fn plain(room: &Extent) -> Frame {
        let half = (room.right - room.left) / 2.0;
        let rows = ((room.bottom - room.top) * ROWS_PER_PIXEL).between(0.0, 2000.0) as usize + 2;
        Frame {
            axis: f64::midpoint(room.left, room.right),
            datum: room.top,
            scale: 1.0,
            rim: room.bottom - room.top,
            half,
            neck_half: half,
            top_tangent: 0.0,
            halves: vec![half; rows],
        }
    }

    fn half_of(&self, cavity: &Cavity, height: f64) -> f64 {
        let half = cavity.radius_at(metres(height)).value * self.scale;
        if height > self.top_tangent { half.max(self.neck_half) } else { half }
    }

    /// Place of a height.
    pub fn y(&self, height: f64) -> f64 {
        self.datum + (self.rim - height) * self.scale
    }

    /// Place of a level line at a height: in the middle of a pixel.
    pub fn level(&self, height: f64) -> f64 {
        crisp(self.y(height))
    }

    /// Place of the lowest inside point.
    pub fn floor(&self) -> f64 {
        self.y(0.0)
    }

    /// Half the bore of the neck.
    pub fn neck_half(&self) -> f64 {
        self.neck_half
    }

    /// Inside half width at a place; nought outside.
    pub fn half_at(&self, y: f64) -> f64 {
        let row = (y - self.datum) * ROWS_PER_PIXEL;
        if row < 0.0 { 0.0 } else { self.halves.get(row.round() as usize).copied().unwrap_or(0.0) }
    }

    /// The least inside half width between two places; the vessel is widest in its middle.
    pub fn half_between(&self, top: f64, bottom: f64) -> f64 {
        self.half_at(top).min(self.half_at(bottom))
    }

    /// Half widths with their heights, lowest first, from one height to another.
    fn profile(&self, cavity: &Cavity, from: f64, to: f64) -> Vec<(f64, f64)> {
        let (bottom, top, crown) = (cavity.bottom_tangent().value, cavity.top_tangent().value, cavity.crown().value);
        let steps = (self.half / 2.0).ceil().between(16.0, 64.0) as u32;
        // 1 − cos of an angle by the tangent of its half: an ellipse's points lie evenly, a knuckle gets its share.
        let rise = |k: u32| {
            let t = f64::from(k) / f64::from(steps);
            2.0 * t * t / (1.0 + t * t)
        };
        let mut heights = vec![from, to];
        heights.extend((0..=steps).map(|k| bottom * rise(k)));
        heights.extend((0..=steps).map(|k| crown - (crown - top) * rise(k)));
        heights.retain(|h| (from..=to).contains(h));
        let mut heights = order::sorted(heights, f64::total_cmp);
        heights.dedup_by(|a, b| (*a - *b).abs() * self.scale < 1e-4);
        let mut points: Vec<(f64, f64)> = Vec::with_capacity(heights.len() + 4);
        for height in heights {
            points.push((self.half_of(cavity, height), height));
            // The neck stands on the crown; where a flat top meets it the wall turns inward at once.
            if height >= crown - 1e-12 && height < to && crown < self.rim {
                points.push((self.neck_half, height));
            }
        }
        if to >= self.rim && crown >= self.rim - 1e-12 {
            points.push((self.neck_half, self.rim));
        }
        points
    }

    /// The whole inside, open at the rim: down the left, up the right.
    pub fn outline(&self, cavity: &Cavity) -> String {
        let points = self.profile(cavity, 0.0, self.rim);
        let mut path = String::new();
        let mut pen = 'M';
        for (half, height) in points.iter().rev() {
            path.push_str(&format!("{pen}{} {}", number(self.axis - half), number(self.y(*height))));
            pen = 'L';
        }
        for (half, height) in &points {
            path.push_str(&format!("L{} {}", number(self.axis + half), number(self.y(*height))));
        }
        path
    }

    /// The room between two heights, closed.
    pub fn slice(&self, cavity: &Cavity, from: f64, to: f64) -> String {
        let points = self.profile(cavity, from.max(0.0), to.min(self.rim));
        let mut path = String::new();
        let mut pen = 'M';
        let left = points.iter().rev().map(|(half, height)| (self.axis - half, self.y(*height)));
        let right = points.iter().map(|(half, height)| (self.axis + half, self.y(*height)));
        for (x, y) in left.chain(right) {
            path.push_str(&format!("{pen}{} {}", number(x), number(y)));
            pen = 'L';
        }
        path.push('Z');
        path
    }
}

fn middle(cavity: &Cavity) -> bedwright_calc::quantity::Length {
    metres(f64::midpoint(cavity.bottom_tangent().value, cavity.top_tangent().value))
}
