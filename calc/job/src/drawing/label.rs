//! What is read off a section, before it has a place.

use bedwright_calc::fill::LayerFill;
use bedwright_calc::material::{Container, Material};
use bedwright_calc::quantity::Length;

use super::frame::Frame;
use super::lifted::LiftedLines;
use super::loaded::LoadedLine;
use super::shape::Extent;
use crate::answers::VesselAnswers;

/// A layer that could be worked out.
pub(super) struct Filled<'a> {
    /// Its place from the bottom, at 0.
    pub index: usize,
    /// What it is made of.
    pub material: Option<&'a Material>,
    /// What it is packed in.
    pub container: Container,
    /// What came of it.
    pub fill: &'a LayerFill,
}

/// The layers that could be worked out, bottom first.
pub(super) fn filled(answers: &VesselAnswers) -> Vec<Filled<'_>> {
    let layers = answers.layers.iter().enumerate();
    layers
        .filter_map(|(index, layer)| {
            let planned = answers.planned.get(index);
            Some(Filled {
                index,
                material: planned.map(|planned| &planned.material),
                container: planned.map_or(Container::Bag, |planned| planned.pack.container),
                fill: layer.fill()?,
            })
        })
        .collect()
}

/// The surface after a whole pack that is neither the layer's own nor too near one.
pub(super) struct PackLevel {
    /// Its layer.
    pub layer: usize,
    /// Which pack, from 1.
    pub number: usize,
    /// What it is packed in.
    pub container: Container,
    /// Its tape reading.
    pub reading: Length,
    /// Its place.
    pub y: f64,
}

/// What a vessel is filled with, as it is drawn.
pub(super) struct Filling<'a> {
    /// The layers, bottom first.
    pub layers: &'a [Filled<'a>],
    /// Surfaces after packs.
    pub packs: &'a [PackLevel],
    /// The bed in backwash.
    pub lifted: &'a LiftedLines,
    /// Surfaces that were read.
    pub loaded: &'a [LoadedLine],
}

/// How long the mark of a surface after a pack is, from either wall inward.
const TICK: f64 = 9.0;

/// The marks of a surface after a pack: a short line at either wall, as on a measuring vessel, from one `x` to another.
pub(super) fn pack_ticks(level: &PackLevel, frame: &Frame) -> [(f64, f64); 2] {
    let half = frame.half_at(level.y);
    let long = TICK.min(half * 0.3);
    [(frame.axis - half, frame.axis - half + long), (frame.axis + half - long, frame.axis + half)]
}

/// What hatching and numbers keep off for them.
pub(super) fn pack_rooms(levels: &[PackLevel], frame: &Frame) -> Vec<Extent> {
    let of = |level: &PackLevel| {
        pack_ticks(level, frame).map(|(left, right)| Extent { left, top: level.y - 1.0, right, bottom: level.y + 1.0 })
    };
    levels.iter().flat_map(of).collect()
}

/// The surfaces after packs that can be told apart on this drawing; none of a layer whose packs lie too close.
pub(super) fn pack_levels(layers: &[Filled], frame: &Frame, least: f64) -> Vec<PackLevel> {
    let mut levels = Vec::new();
    for layer in layers {
        let all = &layer.fill.after_packs;
        let thick = (layer.fill.top.value.value - layer.fill.bottom.value.value) * frame.scale;
        let each = thick / all.len().max(1) as f64;
        if all.len() < 2 || each < least {
            continue;
        }
        for (k, tape) in all.iter().enumerate().take(all.len() - 1) {
            let reading = tape.reading.value;
            levels.push(PackLevel {
                layer: layer.index,
                number: k + 1,
                container: layer.container,
                reading,
                y: frame.level(frame.rim - reading.value),
            });
        }
    }
    levels
}

/// A place for a layer's number inside the layer, clear of everything; sides are tried in the order given.
pub(super) fn badge_place(
    frame: &Frame,
    top: f64,
    bottom: f64,
    r: f64,
    taken: &[Extent],
    sides: &[f64],
) -> Option<(f64, f64)> {
    const AIR: f64 = 1.5;
    let room = bottom - top - 2.0 * (r + AIR);
    if room < 0.0 {
        return None;
    }
    for step in [0.5, 0.35, 0.65, 0.2, 0.8, 0.0, 1.0] {
        let y = (top + r + AIR + room * step).round();
        let half = frame.half_between(y - r, y + r) - 2.5;
        for side in sides {
            for share in [0.5, 0.62, 0.75, 0.4] {
                let x = (frame.axis + side * half * share).round();
                let at = Extent { left: x - r, top: y - r, right: x + r, bottom: y + r };
                if (x - frame.axis).abs() + r <= half && !taken.iter().any(|other| other.meets(&at.grown(1.0))) {
                    return Some((x, y));
                }
            }
        }
    }
    None
}
