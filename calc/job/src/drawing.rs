//! Pictures as plain geometry: the section of a filled vessel, to scale, and the backwash window. Pure: what is drawn
//! is decided here, how a page shows it is not.
//!
//! Lengths are CSS pixels (96 to the inch), on a screen as on paper, so that a line is as thin on both. Texts that
//! would meet are spread apart and led back to what they belong to; no two of them overlap.

mod besides;
mod block;
pub mod code_128;
mod compose;
mod cut;
mod dimension;
mod fittings;
mod frame;
mod full;
mod hatch;
mod key;
mod label;
mod ladder;
mod left;
mod lifted;
mod loaded;
pub mod qr;
mod shape;
mod sketch;
mod spread;
mod strip;
mod svg;
mod window;

#[cfg(test)]
mod tests;

pub use besides::{Besides, Lifted};
pub use code_128::code_128;
pub use cut::cut_drawing;
pub use ladder::ladder;
pub use qr::{MOST_ON_LABEL, MOST_ON_SCREEN, QrPicture, qr_of_frame, qr_of_link};
pub use shape::{Anchor, Class, Extent, Geometry, Shape};
pub use svg::svg_text;
pub use window::{WindowChart, WindowPicture, WindowTable, backwash_window};

use crate::answers::VesselAnswers;
use crate::words::Manner;
use bedwright_calc::order::Between as _;

use compose::Subject;

/// Where a drawing is shown, and how much room there is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Form {
    /// A narrow upright strip, the readings on the vessel. In CSS pixels.
    Strip {
        /// Width.
        width: f64,
        /// The most height.
        height: f64,
    },
    /// With dimension lines beside it. In CSS pixels.
    Full {
        /// Width.
        width: f64,
        /// The most height.
        height: f64,
    },
    /// With dimension lines, on a printed sheet.
    Paper {
        /// Width in millimetres.
        width_mm: f64,
        /// The most height in millimetres.
        height_mm: f64,
    },
}

/// A finished drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawing {
    /// Width in CSS pixels.
    pub width: f64,
    /// Height in CSS pixels; never more than was allowed.
    pub height: f64,
    /// The same as a view box.
    pub view_box: String,
    /// What it is drawn from, back to front.
    pub shapes: Vec<Shape>,
    /// What it is.
    pub title: String,
    /// What it shows, for somebody who can't see it.
    pub description: String,
}

/// CSS pixels in a millimetre.
const PIXELS_PER_MM: f64 = 96.0 / 25.4;

impl Form {
    /// The room there is, in CSS pixels; what can't be a size becomes the smallest that can.
    fn room(self) -> (f64, f64) {
        let (width, height) = match self {
            Form::Strip { width, height } | Form::Full { width, height } => (width, height),
            Form::Paper { width_mm, height_mm } => (width_mm * PIXELS_PER_MM, height_mm * PIXELS_PER_MM),
        };
        let held = |x: f64, low: f64| if x.is_finite() { x.between(low, 4000.0) } else { low };
        (held(width, 56.0), held(height, 96.0))
    }
}

fn view_box(width: f64, height: f64) -> String {
    format!("0 0 {} {}", shape::number(width), shape::number(height))
}

/// The section of a vessel as far as it is known: filled, empty, or only hinted at.
#[must_use]
pub fn section(answers: &VesselAnswers, manner: &Manner, form: Form) -> Drawing {
    section_with(answers, manner, form, &Besides::default())
}

/// With dimension lines beside it a vessel needs this much width, in CSS pixels; else everything stands on it.
const LEAST_FULL: f64 = 270.0;

/// The same with what is known besides the plan.
#[must_use]
pub fn section_with(answers: &VesselAnswers, manner: &Manner, form: Form, besides: &Besides) -> Drawing {
    let (width, height) = form.room();
    let room = (width, height);
    let drawn = match (&answers.vessel, form) {
        (None, _) => compose::ghost(answers, width, height),
        (Some(vessel), form) => {
            let subject = Subject { answers, vessel, manner, besides };
            match form {
                Form::Full { .. } if width >= LEAST_FULL => full::full(&subject, room, &full::SCREEN),
                Form::Paper { .. } if width >= LEAST_FULL * 0.75 => full::full(&subject, room, &full::PAPER),
                _ => strip::strip(&subject, room),
            }
        }
    };
    let height = drawn.height.ceil().min(height);
    Drawing {
        width,
        height,
        view_box: view_box(width, height),
        shapes: drawn.shapes,
        title: manner.section_title().to_owned(),
        description: manner.section_description(answers, besides),
    }
}
