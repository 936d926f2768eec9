//! What every section has: layers, fittings, shell, axis. And the outline of a vessel that isn't known.

use bedwright_calc::order::Between as _;
use bedwright_calc::quantity::metres;
use bedwright_calc::vessel::cavity::Inside;
use bedwright_calc::vessel::{BottomCollector, Cavity, Head, Vessel};

use super::besides::Besides;
use super::fittings::{Fittings, rim};
use super::frame::Frame;
use super::hatch::{Ground, hatching};
use super::label::{Filled, Filling, pack_rooms, pack_ticks};
use super::loaded::LoadedLine;
use super::shape::{Anchor, Class, Extent};
use super::sketch::{Drawn, Sketch};
use crate::answers::VesselAnswers;
use crate::words::Manner;

/// What is drawn.
#[derive(Clone, Copy)]
pub(super) struct Subject<'a> {
    /// What the vessel says.
    pub answers: &'a VesselAnswers,
    /// Its inside.
    pub vessel: &'a Vessel,
    /// How the reader reads.
    pub manner: &'a Manner,
    /// What is known besides the plan.
    pub besides: &'a Besides,
}

impl Subject<'_> {
    /// The surfaces that were read, where they lie on the drawing.
    pub fn loaded(&self, frame: &Frame, layers: &[Filled]) -> Vec<LoadedLine> {
        let surfaces = self.besides.surfaces(self.answers).into_iter();
        surfaces
            .filter(|surface| layers.iter().any(|layer| layer.index == surface.layer))
            .map(|surface| (surface.layer, frame.rim - surface.tape.value))
            .filter(|(_, height)| (0.0..=frame.rim).contains(height))
            .map(|(layer, height)| LoadedLine { layer, y: frame.level(height) })
            .collect()
    }
}

/// Layers, lines, fittings and shell; hatching keeps off `texts`.
pub(super) fn body(
    sketch: &mut Sketch,
    subject: &Subject,
    frame: &Frame,
    fittings: &Fittings,
    filling: &Filling,
    texts: &[Extent],
    boldness: f64,
) {
    let vessel = subject.vessel;
    let Filling { layers, packs, lifted, loaded } = *filling;
    let mut keep_off = fittings.rooms();
    keep_off.extend(texts.iter().map(|text| text.grown(1.5)));
    keep_off.extend(pack_rooms(packs, frame));
    keep_off.extend(lifted.rooms().map(|text| text.grown(1.5)));
    keep_off.extend(loaded.iter().flat_map(|line| line.rooms(frame)));
    for layer in layers {
        let (bottom, top) = (layer.fill.bottom.value.value, layer.fill.top.value.value);
        sketch.path(Class::Area, Some(layer.index), frame.slice(&vessel.cavity, bottom, top));
        if let Some(material) = layer.material {
            let ground = Ground { frame, top: frame.level(top), bottom: frame.level(bottom), keep_off: &keep_off };
            let (class, d) = hatching(material, &ground, boldness);
            sketch.path(class, Some(layer.index), d);
        }
    }
    for pack in packs {
        for (from, to) in pack_ticks(pack, frame) {
            sketch.line(Class::PackSurface, Some(pack.layer), (from, pack.y), (to, pack.y));
        }
    }
    let last = layers.len().saturating_sub(1);
    for (place, layer) in layers.iter().enumerate() {
        let y = frame.level(layer.fill.top.value.value);
        let half = frame.half_at(y);
        let class = if place == last { Class::TopSurface } else { Class::Surface };
        sketch.line(class, Some(layer.index), (frame.axis - half, y), (frame.axis + half, y));
    }
    for line in loaded {
        line.draw(sketch, frame);
    }
    lifted.draw(sketch, frame);
    fittings.draw(sketch);
    sketch.path(Class::Shell, None, frame.outline(&vessel.cavity));
    rim(sketch, vessel, frame);
    let above = fittings.top().map_or(frame.datum, |top| top.min(frame.datum)) - 8.0;
    sketch.line(Class::Axis, None, (frame.axis, above.max(1.0)), (frame.axis, frame.floor() + 8.0));
    lifted.write(sketch);
}

/// A broken outline and a question mark, in the proportions of the nominal size where one was typed.
pub(super) fn ghost(answers: &VesselAnswers, width: f64, height: f64) -> Drawn {
    let mut sketch = Sketch::default();
    let (diameter, tall) = answers.survey.nominal.unwrap_or((12.0, 50.0));
    let ratio = if diameter > 0.0 { (tall / diameter).between(0.8, 8.0) } else { 4.0 };
    let collector = BottomCollector::None;
    let inside = Inside {
        diameter: metres(1.0),
        depth: metres(ratio),
        bottom_head: Head::Ellipsoidal,
        top_head: Head::Ellipsoidal,
        neck_height: metres(0.08),
        neck_bore: metres(0.21),
        riser: None,
        collector: &collector,
    };
    let Ok(cavity) = Cavity::new(&inside) else { return Drawn { shapes: sketch.shapes, height } };
    let half = (width / 2.0 - 4.0).min(120.0);
    let frame = Frame::new(&cavity, 0.21, width / 2.0, 12.0, half, height - 24.0);
    sketch.path(Class::Ghost, None, frame.outline(&cavity));
    let size = (frame.half * 0.9).between(18.0, 64.0).min(width * 0.6);
    let middle = f64::midpoint(frame.datum, frame.floor());
    sketch.text(Class::Query, None, (frame.axis, middle + 0.36 * size), Anchor::Middle, size, "?");
    Drawn { height: frame.floor() + 12.0, shapes: sketch.shapes }
}

/// How far the riser stands above the datum, in metres.
pub(super) fn stands_above(vessel: &Vessel) -> f64 {
    let rim = vessel.cavity.rim().value;
    vessel.measures.riser.map_or(0.0, |riser| riser.allowance.value.value.min(rim).max(0.0))
}
