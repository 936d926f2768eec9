//! A drawing as an SVG of its own.

use super::Drawing;
use super::shape::{Geometry, Shape, number};

/// How every class looks. The page's own sheet says the same.
const STYLE: &[&str] = &[include_str!("section.css"), include_str!("window.css")];

/// Colours for a file that stands alone: ink on white, as it would be printed.
const ALONE: &str = "svg{--ink:#14171a;--paper:#fff;--accent:#0b4f7d;--quiet:#5c6166;background:#fff;\
font-family:system-ui,sans-serif;font-variant-numeric:tabular-nums}";

/// A stand-alone SVG file.
#[must_use]
pub fn svg_text(drawing: &Drawing) -> String {
    let mut text = svg_opening(drawing, "<style>", &[ALONE, &STYLE.concat(), "</style>"].concat());
    for shape in &drawing.shapes {
        element(shape, &mut text);
    }
    text.push_str("</svg>");
    text
}

/// The same without a style of its own, to stand in a page that has one.
#[must_use]
pub fn svg_fragment(drawing: &Drawing) -> String {
    let mut text = svg_opening(drawing, "", "");
    for shape in &drawing.shapes {
        element(shape, &mut text);
    }
    text.push_str("</svg>");
    text
}

fn svg_opening(drawing: &Drawing, open: &str, style: &str) -> String {
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"section-drawing\" role=\"img\" width=\"{}\" height=\"{}\" viewBox=\"{}\">\
         <title>{}</title><desc>{}</desc>{open}{style}",
        number(drawing.width),
        number(drawing.height),
        drawing.view_box,
        escaped(&drawing.title),
        escaped(&drawing.description)
    )
}

fn element(shape: &Shape, text: &mut String) {
    let class = shape.class.name();
    let n = number;
    text.push_str(&match &shape.geometry {
        Geometry::Path { d } => format!("<path class=\"{class}\" d=\"{d}\"/>"),
        Geometry::Line { x1, y1, x2, y2 } => {
            format!("<line class=\"{class}\" x1=\"{}\" y1=\"{}\" x2=\"{}\" y2=\"{}\"/>", n(*x1), n(*y1), n(*x2), n(*y2))
        }
        Geometry::Circle { cx, cy, r } => {
            format!("<circle class=\"{class}\" cx=\"{}\" cy=\"{}\" r=\"{}\"/>", n(*cx), n(*cy), n(*r))
        }
        Geometry::Rect { x, y, width, height, round } => format!(
            "<rect class=\"{class}\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" rx=\"{}\"/>",
            n(*x),
            n(*y),
            n(*width),
            n(*height),
            n(*round)
        ),
        Geometry::Text { x, y, anchor, text, size } => format!(
            "<text class=\"{class}\" x=\"{}\" y=\"{}\" text-anchor=\"{}\" font-size=\"{}\">{}</text>",
            n(*x),
            n(*y),
            anchor.word(),
            n(*size),
            escaped(text)
        ),
    });
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}
