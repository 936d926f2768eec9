//! What is due, over all jobs.

use std::sync::Arc;

use bedwright_calc::fill::Role;
use bedwright_calc::hydraulics::Purpose;

use super::bed_life::Lives;
use super::card::{Card, CareMark, card};
use super::happened::Place;
use crate::answers::water::bed_expected;
use crate::answers::{VesselAnswers, vessel_answers};
use crate::day::Day;
use crate::id::Id;
use crate::job::Job;

/// A tag that is looked after.
#[derive(Clone, Debug, PartialEq)]
pub struct DueRow {
    /// The job.
    pub job: Id,
    /// What it is called, and where it is.
    pub title: String,
    /// The site.
    pub site: String,
    /// When something is due.
    pub day: Day,
    /// Whether that is a new bed; else it is a visit.
    pub new_bed: bool,
    /// Its card.
    pub card: Card,
}

/// What a vessel's bed is there for: what was chosen, or what is usual for the medium on top.
#[must_use]
pub fn purpose_of(job: &Job, vessel: &Id) -> Purpose {
    let plan = job.plan_of(vessel);
    let top = plan.layers.iter().rev().find(|layer| layer.role == Role::Media);
    let usual = || top.map_or(Purpose::Other, |layer| Purpose::usual_of(&layer.material));
    job.site.body.duty_of(vessel).purpose.unwrap_or_else(usual)
}

/// The card of a place of a job, with everything that goes into it worked out.
#[must_use]
pub fn card_of(job: &Job, place: &Place, today: Day) -> Card {
    let lives = Lives::of(job, today);
    let answers = answers_of(job, &place.vessel);
    let worked = answers.as_ref().and_then(|answers| bed_expected(job, answers));
    card(job, &lives, place, today, answers.as_ref(), worked.as_ref(), purpose_of(job, &place.vessel))
}

fn answers_of(job: &Job, vessel: &Id) -> Option<VesselAnswers> {
    job.vessel(vessel).map(|survey| vessel_answers(survey, &job.plan_of(vessel)))
}

/// Every tag of these jobs that something was written down of, what is due first standing first; what is to be ordered
/// before all.
#[must_use]
pub fn due_list<'a>(jobs: impl Iterator<Item = &'a Arc<Job>>, today: Day) -> Vec<DueRow> {
    let mut rows: Vec<DueRow> = Vec::new();
    for job in jobs.filter(|job| job.head.body.binned.is_none()) {
        let lives = Lives::of(job, today);
        for place in lives.places().filter(|place| job.vessel(&place.vessel).is_some()) {
            let answers = answers_of(job, &place.vessel);
            let worked = answers.as_ref().and_then(|answers| bed_expected(job, answers));
            let purpose = purpose_of(job, &place.vessel);
            let card = card(job, &lives, place, today, answers.as_ref(), worked.as_ref(), purpose);
            let day = card.due(today);
            let new_bed = card.is_new_bed_next();
            let row = DueRow {
                job: job.id.clone(),
                title: job.head.body.title.clone(),
                site: job.head.body.site.clone(),
                day,
                new_bed,
                card,
            };
            let key = |row: &DueRow| (row.card.mark != CareMark::OrderNow, row.day);
            let at = rows.partition_point(|there| key(there) <= key(&row));
            rows.insert(at, row);
        }
    }
    rows
}
