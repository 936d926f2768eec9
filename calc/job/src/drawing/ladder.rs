//! The ladder of tape readings: the vessel as a strip, with every reading to expect on the way and every one that was taken.

use bedwright_calc::fill::{LayerFill, Rung};
use bedwright_calc::quantity::metres;

use super::besides::Besides;
use super::compose::{Subject, ghost};
use super::strip::{Level, strip_of};
use super::{Drawing, view_box};
use crate::answers::{LayerAnswer, LayerOutcome, VesselAnswers};
use crate::loading::LoadAnswers;
use crate::words::{LoadingLabel, Manner};

/// The ladder of one tag, in a room of CSS pixels. Layers are drawn up to where they were read, or are to be expected.
#[must_use]
pub fn ladder(answers: &VesselAnswers, of: &LoadAnswers, manner: &Manner, room: (f64, f64)) -> Drawing {
    let rungs: &[Rung] = of.rungs.as_deref().unwrap_or_default();
    let surfaces: Vec<(&Rung, f64, bool)> = rungs.iter().filter_map(|rung| surface(answers, rung)).collect();
    let moved = moved(answers, &surfaces);
    let levels: Vec<Level> = surfaces
        .iter()
        .map(|(rung, height, read)| Level {
            layer: rung.layer,
            height: *height,
            tape: metres(depth(answers) - height),
            read: *read,
        })
        .collect();
    let drawn = match &moved.vessel {
        Some(vessel) => {
            let subject = Subject { answers: &moved, vessel, manner, besides: &Besides::default() };
            strip_of(&subject, room, &levels)
        }
        None => ghost(&moved, room.0, room.1),
    };
    let height = drawn.height.ceil().min(room.1);
    let told = levels.iter().map(|level| {
        let how = manner.label(if level.read { LoadingLabel::Read } else { LoadingLabel::Expected });
        [how, " ", &manner.tape(level.tape)].concat()
    });
    Drawing {
        width: room.0,
        height,
        view_box: view_box(room.0, height),
        shapes: drawn.shapes,
        title: manner.label(LoadingLabel::Ladder).to_owned(),
        description: told.collect::<Vec<_>>().join(", "),
    }
}

fn depth(answers: &VesselAnswers) -> f64 {
    answers.vessel.as_ref().map_or(0.0, |vessel| vessel.measures.inside_depth.value.value)
}

/// The height of a rung's surface, and whether it was read.
fn surface<'a>(answers: &VesselAnswers, rung: &'a Rung) -> Option<(&'a Rung, f64, bool)> {
    if let Some(Ok(found)) = &rung.outcome {
        return Some((rung, depth(answers) - found.read.value.value, true));
    }
    let expected = rung.expected.as_ref().ok()?;
    Some((rung, depth(answers) - expected.reading.value.value, false))
}

/// The vessel with its layers where they were read or are to be expected. For the eye only: no figure is taken from it.
fn moved(answers: &VesselAnswers, surfaces: &[(&Rung, f64, bool)]) -> VesselAnswers {
    let mut moved = answers.clone();
    let mut bottom: Option<f64> = None;
    for (at, layer) in moved.layers.iter_mut().enumerate() {
        let top = surfaces.iter().rev().find(|(rung, ..)| rung.layer == at && rung.last).map(|(_, height, _)| *height);
        let LayerAnswer { outcome: LayerOutcome::Filled(fill), .. } = layer else { continue };
        // What is left under a reading that can't be isn't drawn.
        let end = top.unwrap_or(fill.top.value.value);
        if bottom.is_some_and(|bottom| end <= bottom) {
            layer.outcome = LayerOutcome::Waits;
            continue;
        }
        let fill: &mut LayerFill = fill;
        if let Some(bottom) = bottom {
            fill.bottom.value = metres(bottom);
        }
        if let Some(top) = top.filter(|top| *top > fill.bottom.value.value) {
            fill.top.value = metres(top);
            let between = surfaces.iter().filter(|(rung, ..)| rung.layer == at);
            let heights: Vec<f64> = between.map(|(_, height, _)| *height).collect();
            if heights.len() == fill.after_packs.len() {
                for (tape, height) in fill.after_packs.iter_mut().zip(heights) {
                    tape.reading.value = metres(depth(answers) - height);
                }
            }
        }
        bottom = Some(fill.top.value.value);
    }
    moved
}
