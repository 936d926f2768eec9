//! From what was ticked and read to the record that is signed.

use super::{LoadAnswers, StepRow, StepWork};
use crate::answers::VesselAnswers;
use crate::as_loaded::{AsLoaded, LoadedLayer, LoadedReading};
use crate::entry::Misread;
use crate::id::Id;
use crate::sections::loading::{ReadingPlace, Stamp};

/// What keeps a loading from being signed.
#[derive(Clone, Debug, PartialEq)]
pub enum Lack {
    /// The layers can't be worked out.
    Plan,
    /// A reading that must be there is missing.
    Reading(ReadingPlace),
    /// What was typed makes no sense.
    Misread(ReadingPlace, Misread),
    /// A reading contradicts the vessel, or what was read below it.
    Contradicts(ReadingPlace),
    /// A number of packs makes no sense.
    Packs(Id),
}

/// What keeps a loading from being signed, from the bottom up. Steps that were not ticked don't: the record says so.
#[must_use]
pub fn lacking(of: &LoadAnswers) -> Vec<Lack> {
    let Ok(rungs) = &of.rungs else {
        let start = of.start().filter(|place| of.tape_at(place).is_none());
        return vec![start.map_or(Lack::Plan, Lack::Reading)];
    };
    let mut lacks: Vec<Lack> = of.packs_misread.iter().map(|(layer, _)| Lack::Packs(layer.clone())).collect();
    lacks.extend(of.misread.iter().map(|(place, misread)| Lack::Misread(place.clone(), misread.clone())));
    for rung in rungs {
        let Some(place) = of.place_of(rung) else { continue };
        if matches!(rung.outcome, Some(Err(_))) {
            lacks.push(Lack::Contradicts(place));
        } else if rung.last && of.done.reading(&place).is_none() {
            lacks.push(Lack::Reading(place));
        }
    }
    lacks
}

/// The record of a loading, as it would be signed now.
///
/// # Errors
/// What keeps it from being signed.
pub fn to_sign(
    of: &LoadAnswers,
    answers: &VesselAnswers,
    id: Id,
    day: &str,
    signed: Stamp,
) -> Result<AsLoaded, Vec<Lack>> {
    let lacks = lacking(of);
    if !lacks.is_empty() {
        return Err(lacks);
    }
    let (Ok(rungs), Some(vessel)) = (&of.rungs, &answers.vessel) else { return Err(vec![Lack::Plan]) };
    let layers = answers.planned.iter().zip(&answers.layers).enumerate().map(|(at, (layer, answer))| {
        let packs = of.pour_of(at).map_or(0.0, |pour| pour.packs.value);
        let planned = answer.fill().map_or(0.0, |fill| fill.packs.value);
        let volume = answer.fill().map_or(0.0, |fill| fill.volume.value.value);
        LoadedLayer {
            layer: answer.id.clone(),
            material: layer.material.id.to_string(),
            role: layer.role,
            pack: layer.pack.id.to_string(),
            packs,
            volume_l: if planned > 0.0 { volume * packs / planned * 1000.0 } else { 0.0 },
            lot: of.done.lot(&answer.id).trim().to_owned(),
        }
    });
    // From the bottom up; what was found comes first.
    let mut readings = Vec::new();
    let mut read = |place: &ReadingPlace| {
        let Some(taken) = of.done.reading(place) else { return };
        let rung = of.rung(place);
        let expected = rung.and_then(|rung| rung.expected.as_ref().ok());
        let outcome = rung.and_then(|rung| rung.outcome.as_ref()?.as_ref().ok());
        readings.push(LoadedReading {
            place: place.clone(),
            entry: taken.entry.clone(),
            state: taken.state,
            stamp: taken.stamp.clone(),
            expected_mm: expected.map(|tape| tape.reading.value.value * 1000.0),
            spread_mm: expected.map(|tape| tape.spread.value * 1000.0),
            packs_more: outcome.map(|outcome| outcome.packs.value),
        });
    };
    read(&ReadingPlace::Found);
    read(&ReadingPlace::Left);
    rungs.iter().filter_map(|rung| of.place_of(rung)).for_each(|place| read(&place));
    let ticks = || of.removal.iter().chain(&of.loading).filter(|row| row.work == StepWork::Tick);
    let done = |row: &StepRow| row.stamp.clone().map(|stamp| (row.id.clone(), stamp));
    Ok(AsLoaded {
        id,
        day: day.to_owned(),
        signed,
        vessel: answers.id.clone(),
        tag: of.done.tag.clone(),
        inside_diameter_mm: Some(vessel.inside_diameter.value.value * 1000.0),
        inside_depth_mm: Some(vessel.measures.inside_depth.value.value * 1000.0),
        layers: layers.collect(),
        readings,
        done: ticks().filter_map(done).collect(),
        not_done: ticks().filter(|row| !row.is_done()).map(|row| row.id.clone()).collect(),
        texts: of.done.texts.clone(),
        method: of.done.method,
        drums: of.done.drums.clone(),
        photo: of.done.photo.clone(),
        corrections: Vec::new(),
    })
}
