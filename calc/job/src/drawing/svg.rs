//! A drawing as an SVG file that stands alone: every mark carries its own looks, so that it opens the same in programs that
//! know no style sheets; nothing in it comes from elsewhere.

use super::Drawing;
use super::shape::{Geometry, Shape, number};

/// How every class looks. The page's own sheet says the same.
const STYLE: [&str; 2] = [include_str!("section.css"), include_str!("window.css")];

/// Colours for a file that stands alone: ink on white, as it would be printed.
const COLOURS: [(&str, &str); 4] =
    [("var(--ink)", "#14171a"), ("var(--paper)", "#fff"), ("var(--accent)", "#0b4f7d"), ("var(--quiet)", "#5c6166")];

/// What every mark but a text has unless its class says otherwise.
const PLAIN: [(&str, &str); 2] = [("fill", "none"), ("stroke", "none")];

/// What stands in one rule of the sheet, as attributes of a mark.
type Looks<'a> = Vec<(&'a str, &'a str)>;

/// A stand-alone SVG file.
#[must_use]
pub fn svg_text(drawing: &Drawing) -> String {
    let (width, height) = (number(drawing.width), number(drawing.height));
    let mut text = String::with_capacity(64 * 1024);
    for part in [
        "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"",
        &width,
        "\" height=\"",
        &height,
        "\" viewBox=\"",
        &drawing.view_box,
        "\" font-family=\"system-ui, 'Segoe UI', Roboto, Helvetica, Arial, sans-serif\"><title>",
        &escaped(&drawing.title),
        "</title><desc>",
        &escaped(&drawing.description),
        "</desc><rect width=\"",
        &width,
        "\" height=\"",
        &height,
        "\" fill=\"#fff\"/>",
    ] {
        text.push_str(part);
    }
    for shape in &drawing.shapes {
        element(shape, &mut text);
    }
    text.push_str("</svg>");
    text
}

/// How a class looks: every rule that names it, in the order of the sheet.
fn looks(class: &str) -> Looks<'static> {
    let mut looks = Looks::new();
    for line in STYLE.into_iter().flat_map(str::lines) {
        let Some((selectors, rest)) = line.split_once('{') else { continue };
        let named = |selector: &str| selector.trim().strip_prefix(".section-drawing .") == Some(class);
        if !selectors.split(',').any(named) {
            continue;
        }
        let said = rest.trim_end_matches([' ', '}']).split(';');
        for (name, value) in said.filter_map(|said| said.split_once(':')) {
            let (name, value) = (name.trim(), value.trim());
            let value = COLOURS.iter().find(|(there, _)| *there == value).map_or(value, |(_, colour)| colour);
            looks.retain(|(there, _)| *there != name);
            looks.push((name, value));
        }
    }
    looks
}

fn element(shape: &Shape, text: &mut String) {
    let n = number;
    let mut looks = looks(shape.class.name());
    let is_text = matches!(shape.geometry, Geometry::Text { .. });
    if !is_text {
        for (name, value) in PLAIN {
            if !looks.iter().any(|(there, _)| *there == name) {
                looks.push((name, value));
            }
        }
    }
    let (name, places): (&str, Vec<(&str, String)>) = match &shape.geometry {
        Geometry::Path { d } => ("path", vec![("d", d.clone())]),
        Geometry::Line { x1, y1, x2, y2 } => {
            ("line", vec![("x1", n(*x1)), ("y1", n(*y1)), ("x2", n(*x2)), ("y2", n(*y2))])
        }
        Geometry::Circle { cx, cy, r } => ("circle", vec![("cx", n(*cx)), ("cy", n(*cy)), ("r", n(*r))]),
        Geometry::Rect { x, y, width, height, round } => {
            let mut places = vec![("x", n(*x)), ("y", n(*y)), ("width", n(*width)), ("height", n(*height))];
            if *round > 0.0 {
                places.push(("rx", n(*round)));
            }
            ("rect", places)
        }
        Geometry::Text { x, y, anchor, size, .. } => {
            let anchor = anchor.word().to_owned();
            ("text", vec![("x", n(*x)), ("y", n(*y)), ("text-anchor", anchor), ("font-size", n(*size))])
        }
    };
    text.push('<');
    text.push_str(name);
    let mut attribute = |name: &str, value: &str| {
        for part in [" ", name, "=\"", value, "\""] {
            text.push_str(part);
        }
    };
    for (name, value) in &places {
        attribute(name, value);
    }
    for (name, value) in &looks {
        attribute(name, value);
    }
    match &shape.geometry {
        Geometry::Text { text: said, .. } => {
            text.push('>');
            text.push_str(&escaped(said));
            text.push_str("</text>");
        }
        _ => text.push_str("/>"),
    }
}

/// A text as XML has it; what XML has no letter for is left out.
fn escaped(text: &str) -> String {
    let allowed = |c: &char| matches!(c, '\t' | '\n' | '\r' | ' '..='\u{FFFD}' | '\u{10000}'..);
    let text: String = text.chars().filter(allowed).collect();
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}
