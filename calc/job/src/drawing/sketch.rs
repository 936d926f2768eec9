//! A drawing in the making.

use super::shape::{Anchor, Class, Extent, Geometry, Shape, number, text_width};

/// Marks, back to front.
#[derive(Debug, Default)]
pub(super) struct Sketch {
    /// The marks so far.
    pub shapes: Vec<Shape>,
}

/// A finished sketch and how deep it turned out.
pub(super) struct Drawn {
    /// Its marks.
    pub shapes: Vec<Shape>,
    /// Its height.
    pub height: f64,
}

impl Sketch {
    fn push(&mut self, geometry: Geometry, class: Class, layer: Option<usize>) {
        self.shapes.push(Shape { geometry, class, layer });
    }

    pub fn path(&mut self, class: Class, layer: Option<usize>, d: String) {
        if !d.is_empty() {
            self.push(Geometry::Path { d }, class, layer);
        }
    }

    pub fn line(&mut self, class: Class, layer: Option<usize>, from: (f64, f64), to: (f64, f64)) {
        self.push(Geometry::Line { x1: from.0, y1: from.1, x2: to.0, y2: to.1 }, class, layer);
    }

    pub fn circle(&mut self, class: Class, layer: Option<usize>, at: (f64, f64), r: f64) {
        self.push(Geometry::Circle { cx: at.0, cy: at.1, r }, class, layer);
    }

    pub fn rect(&mut self, class: Class, layer: Option<usize>, room: &Extent, round: f64) {
        let (width, height) = ((room.right - room.left).max(0.0), (room.bottom - room.top).max(0.0));
        self.push(Geometry::Rect { x: room.left, y: room.top, width, height, round }, class, layer);
    }

    pub fn text(&mut self, class: Class, layer: Option<usize>, at: (f64, f64), anchor: Anchor, size: f64, text: &str) {
        self.push(Geometry::Text { x: at.0, y: at.1, anchor, text: text.to_owned(), size }, class, layer);
    }

    /// A layer's number in its circle.
    pub fn badge(&mut self, layer: usize, at: (f64, f64), r: f64, open: bool) {
        let class = if open { Class::OpenBadge } else { Class::Badge };
        self.circle(class, Some(layer), at, r);
        let text = (layer + 1).to_string();
        // As large as the circle takes.
        let size = (1.3 * r).min(1.7 * r / text_width(&text, Class::Number, 1.0));
        self.text(Class::Number, Some(layer), (at.0, at.1 + 0.36 * size), Anchor::Middle, size, &text);
    }

    /// An arrowhead with its point at `tip`, pointing the way `(dx, dy)`.
    pub fn arrow(&mut self, tip: (f64, f64), (dx, dy): (f64, f64)) {
        const LENGTH: f64 = 7.5;
        const HALF: f64 = 1.7;
        let (bx, by) = (tip.0 - dx * LENGTH, tip.1 - dy * LENGTH);
        let d = format!(
            "M{} {}L{} {}L{} {}Z",
            number(tip.0),
            number(tip.1),
            number(bx - dy * HALF),
            number(by + dx * HALF),
            number(bx + dy * HALF),
            number(by - dx * HALF)
        );
        self.path(Class::Solid, None, d);
    }
}
