//! How pieces are cut from stock lengths: a bar for each length, to scale, what is left hatched.

use std::ops::Range;

use bedwright_calc::order::Between as _;

use super::shape::{Anchor, Class, Extent, number};
use super::sketch::Sketch;
use super::{Drawing, Form, view_box};
use crate::answers::supply::RiserCuts;
use crate::words::Manner;

/// Height of a bar, and from one to the next, CSS pixels.
const BAR: f64 = 22.0;
const STEP: f64 = 44.0;

/// Letters of this size stand in a bar.
const LETTERS: f64 = 12.0;

/// The cut plan of some of its stock lengths; `names` are whom each piece is for, in the order of the pieces. None where there is no plan.
#[must_use]
pub fn cut_drawing(
    cuts: &RiserCuts,
    lengths: Range<usize>,
    names: &[String],
    manner: &Manner,
    form: Form,
) -> Option<Drawing> {
    let plan = cuts.plan.as_ref().ok()?;
    let (width, _) = form.room();
    let stock = cuts.stock.length.value;
    let scale = (width - 2.0) / stock.max(1e-6);
    let kerf = (cuts.stock.kerf.value * scale).max(0.5);
    let mut sketch = Sketch::default();
    let mut top = 16.0;
    let mut told = Vec::new();
    for (at, length) in plan.lengths.iter().enumerate().skip(lengths.start).take(lengths.len()) {
        let bar = |left: f64, right: f64| Extent { left, top, right, bottom: top + BAR };
        sketch.rect(Class::Hollow, None, &bar(1.0, width - 1.0), 0.0);
        let mut from = 1.0;
        let mut pieces = Vec::new();
        for piece in &length.pieces {
            let Some((_, long)) = cuts.pieces.get(*piece) else { continue };
            let to = (from + long.value * scale).between(from, width - 1.0);
            sketch.rect(Class::Box, None, &bar(from, to), 0.0);
            let name = names.get(*piece).map_or("", String::as_str);
            let text = manner.tape(*long);
            let middle = f64::midpoint(from, to);
            let wide = text.chars().count() as f64 * LETTERS * 0.56;
            if wide < to - from {
                sketch.text(Class::Reading, None, (middle, top + BAR - 6.5), Anchor::Middle, LETTERS, &text);
            }
            // A name only where it doesn't run into the next.
            let short: String = name.chars().take(((to - from) / (LETTERS * 0.5)) as usize).collect();
            sketch.text(Class::Small, None, (middle, top + BAR + 13.0), Anchor::Middle, 10.5, &short);
            pieces.push(format!("{name} {text}"));
            from = (to + kerf).min(width - 1.0);
        }
        // What is left: slanted strokes.
        let mut d = String::new();
        let mut x = from + 3.0;
        while x < width - 3.0 {
            d.push_str(&format!(
                "M{} {}L{} {}",
                number(x),
                number(top + BAR),
                number((x + 8.0).min(width - 1.0)),
                number(top)
            ));
            x += 9.0;
        }
        sketch.path(Class::Hatch, None, d);
        let number_of = (at + 1).to_string();
        sketch.text(
            Class::Small,
            None,
            (1.0, top - 3.0),
            Anchor::Start,
            10.5,
            &format!("{number_of} · {}", manner.cut_rest(length.rest)),
        );
        told.push(format!("{number_of}: {}", pieces.join(", ")));
        top += STEP + 6.0;
    }
    let height = (top - 8.0).max(24.0);
    Some(Drawing {
        width,
        height,
        view_box: view_box(width, height),
        shapes: sketch.shapes,
        title: manner.cut_title().to_owned(),
        description: told.join("; "),
    })
}
