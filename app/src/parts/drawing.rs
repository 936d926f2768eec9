//! A section of a vessel, shown; touching a layer selects it.

use std::rc::Rc;
use std::sync::Arc;
use std::sync::atomic::{AtomicU32, Ordering};

use bedwright_job::decimal::{plain, to_places};
use bedwright_job::drawing::{Drawing, Geometry, Shape};

use super::live::{El, svg};
use super::signal::Held;

/// Tells several drawings on a page apart, for the ids their descriptions need.
static DRAWINGS: AtomicU32 = AtomicU32::new(0);

/// A section of a vessel; `selected` is the layer that is selected, from the bottom at 0.
///
/// A pointer can select a layer here; the keyboard does it in the list of layers beside it.
pub fn section_drawing(drawing: impl Fn() -> Option<Arc<Drawing>> + 'static, selected: Held<Option<usize>>) -> El {
    let number = DRAWINGS.fetch_add(1, Ordering::Relaxed);
    let (title, description) = (format!("section-title-{number}"), format!("section-text-{number}"));
    let drawing = Rc::new(drawing);
    let of = |read: fn(&Drawing) -> String| {
        let drawing = drawing.clone();
        move || drawing().map(|drawing| read(&drawing))
    };
    let told = |read: fn(&Drawing) -> String| {
        let read = of(read);
        move || read().unwrap_or_default()
    };
    let shapes = drawing.clone();
    svg("svg", "section-drawing")
        .set("role", "img")
        .set("aria-labelledby", &format!("{title} {description}"))
        .tells("width", of(|drawing| plain(drawing.width)))
        .tells("height", of(|drawing| plain(drawing.height)))
        .tells("viewBox", of(|drawing| drawing.view_box.clone()))
        .kid(svg("title", "").set("id", &title).says(told(|drawing| drawing.title.clone())))
        .kid(svg("desc", "").set("id", &description).says(told(|drawing| drawing.description.clone())))
        .live(move || match shapes() {
            Some(drawing) => drawing.shapes.iter().map(|shape| mark(shape, selected)).collect(),
            None => Vec::new(),
        })
}

/// A picture that stays as it is.
pub fn still_drawing(drawing: &Drawing) -> El {
    let none = Held::new(None);
    svg("svg", "section-drawing")
        .set("role", "img")
        .set("aria-label", &[&drawing.title, ": ", &drawing.description].concat())
        .set("width", &plain(drawing.width))
        .set("height", &plain(drawing.height))
        .set("viewBox", &drawing.view_box)
        .kids(drawing.shapes.iter().map(|shape| mark(shape, none)).collect())
}

/// One mark; a layer's can be touched.
fn mark(shape: &Shape, selected: Held<Option<usize>>) -> El {
    let name = shape.class.name();
    let drawn = match &shape.geometry {
        Geometry::Path { d } => svg("path", name).set("d", d),
        Geometry::Line { x1, y1, x2, y2 } => {
            at(svg("line", name), &[("x1", *x1), ("y1", *y1), ("x2", *x2), ("y2", *y2)])
        }
        Geometry::Circle { cx, cy, r } => at(svg("circle", name), &[("cx", *cx), ("cy", *cy), ("r", *r)]),
        Geometry::Rect { x, y, width, height, round } => {
            at(svg("rect", name), &[("x", *x), ("y", *y), ("width", *width), ("height", *height), ("rx", *round)])
        }
        Geometry::Text { x, y, anchor, text, size } => {
            at(svg("text", name).set("text-anchor", anchor.word()), &[("x", *x), ("y", *y), ("font-size", *size)])
                .text(text)
        }
    };
    let Some(layer) = shape.layer else { return drawn };
    drawn
        .set("class", &format!("{name} section-touch"))
        .marks("section-selected", move || selected.get() == Some(layer))
        .on("click", move |_| selected.set(Some(layer)))
}

/// Coordinates as attributes.
fn at(drawn: El, places: &[(&str, f64)]) -> El {
    places.iter().fold(drawn, |drawn, (name, value)| drawn.set(name, &to_places(*value, 2)))
}
