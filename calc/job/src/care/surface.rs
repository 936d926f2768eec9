//! Media lost, from the tape readings of one bed in one state.

use bedwright_calc::fill::{Role, SurfaceState};
use bedwright_calc::life::{MediaLoss, media_lost};
use bedwright_calc::quantity::{Assumption, Known, Length, Problem, metres};

use super::bed_life::BedLife;
use super::happened::Expected;
use super::visit::VisitField;
use crate::answers::VesselAnswers;
use crate::day::Day;
use crate::entry::Dimension;
use crate::id::Id;

/// A tape reading of a bed.
#[derive(Clone, Debug, PartialEq)]
pub struct Taped {
    /// The day.
    pub day: Day,
    /// From the datum down.
    pub tape: Length,
    /// The state of the surface.
    pub state: SurfaceState,
    /// The visit it is of; none where it is of the loading.
    pub visit: Option<Id>,
}

/// What became of a bed's surface.
#[derive(Clone, Debug, PartialEq)]
pub struct SurfaceAnswer {
    /// Every reading, in the order of their days.
    pub tapes: Vec<Taped>,
    /// The first of the state of the latest, and the latest, compared; nothing where there are no two of one state, or the
    /// vessel isn't known.
    pub compared: Option<Compared>,
}

/// Two readings of one state, compared.
#[derive(Clone, Debug, PartialEq)]
pub struct Compared {
    /// The first.
    pub first: Taped,
    /// The latest.
    pub latest: Taped,
    /// What they say.
    pub loss: Result<MediaLoss, Problem>,
    /// The material that is lost, and the pack it is bought in, by their ids.
    pub of: (String, String),
}

/// What the tape readings of a bed say.
#[must_use]
pub fn surface(bed: &BedLife, vessel: Option<&VesselAnswers>, expected: &Expected) -> SurfaceAnswer {
    let mut tapes = Vec::new();
    if let Some(loaded) = &bed.as_loaded
        && let (Some(reading), Some(day)) = (loaded.surface(), bed.begun)
        && let Some(tape) = reading.tape()
    {
        tapes.push(Taped { day, tape, state: reading.state, visit: None });
    }
    tapes.extend(bed.visits.iter().filter_map(|visit| {
        let tape = metres(visit.number(VisitField::Tape)?);
        Some(Taped { day: visit.date()?, tape, state: visit.state, visit: Some(visit.id.clone()) })
    }));
    let compared = tapes.last().and_then(|latest| {
        let first = tapes.iter().find(|there| there.state == latest.state)?;
        (first != latest).then(|| compare(first, latest, vessel?, expected)).flatten()
    });
    SurfaceAnswer { tapes, compared }
}

fn compare(first: &Taped, latest: &Taped, answers: &VesselAnswers, expected: &Expected) -> Option<Compared> {
    let vessel = answers.vessel.as_ref()?;
    let mut media = answers.planned.iter().zip(&answers.layers).filter(|(layer, _)| layer.role == Role::Media);
    let floor = media.clone().find_map(|(_, answer)| answer.fill()).map(|fill| fill.bottom.value)?;
    let (layer, _) = media.next_back()?;
    let typed = expected.settling.as_ref().and_then(|entry| entry.understood().ok());
    let settling = match typed.filter(|read| read.dimension == Dimension::Ratio) {
        Some(read) => Known::typed(read.si),
        None => Assumption::SettlingAllowance.number(),
    };
    let (before, after) = (Known::measured(first.tape), Known::measured(latest.tape));
    let loss = media_lost(vessel, floor, &before, &after, &settling, &layer.density(), Some(&layer.pack));
    Some(Compared {
        first: first.clone(),
        latest: latest.clone(),
        loss,
        of: (layer.material.id.to_string(), layer.pack.id.to_string()),
    })
}
