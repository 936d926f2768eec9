//! The job that replaces a bed: the vessel as it was loaded, or as it was planned, to be emptied and filled again.

use std::sync::Arc;

use bedwright_calc::supply::JobKind;

use super::bed_life::Lives;
use super::happened::{Happened, Place, What};
use crate::day::Day;
use crate::id::Id;
use crate::job::Job;
use crate::sections::survey::VesselSurvey;

/// A changeout of one tag of a job, as a job of its own; nothing where the vessel isn't there.
///
/// Customer, site, survey, plan and water come along; prices don't, so that those of today are taken. What goes in is what
/// was loaded: materials and packs of the loading's record stand in for the plan's where they differ.
#[must_use]
pub fn replacement_job(old: &Job, place: &Place, id: Id, record: Id, today: Day) -> Option<Job> {
    let vessel = old.vessel(&place.vessel)?;
    let mut job = Job::new(id, &today.text());
    let head = &old.head.body;
    job.head.body.title.clone_from(&head.title);
    job.head.body.customer.clone_from(&head.customer);
    job.head.body.site.clone_from(&head.site);
    job.head.body.owner.clone_from(&head.owner);
    job.head.body.sample = head.sample;
    job.head.body.kind = JobKind::Changeout;
    let tags = if place.tag.is_empty() { Vec::new() } else { vec![place.tag.clone()] };
    job.survey.body.vessels.push(Arc::new(VesselSurvey { tags, ..(**vessel).clone() }));
    let mut plan = (*old.plan_of(&place.vessel)).clone();
    let loaded = Lives::of(old, today).now_at(place).and_then(|bed| bed.as_loaded.clone());
    if let Some(loaded) = &loaded {
        for layer in &loaded.layers {
            if let Some(there) = plan.layers.iter_mut().find(|there| there.id == layer.layer) {
                there.material.clone_from(&layer.material);
                there.pack.clone_from(&layer.pack);
            }
        }
    }
    job.plan.body.vessels.insert(place.vessel.clone(), Arc::new(plan));
    let site = &old.site.body;
    job.site.body.source = site.source;
    job.site.body.entries = site.entries.clone();
    let duty = site.duty_of(&place.vessel);
    if let Some(there) = job.site.body.duty_mut(&place.vessel) {
        *there = (*duty).clone();
    }
    job.site.body.tidy();
    let follows =
        What::Follows { job: old.id.clone(), place: place.clone(), as_loaded: loaded.map(|loaded| loaded.id.clone()) };
    let happened = Happened { id: record, day: today.text(), at: String::new(), by: String::new(), what: follows };
    job.records.push(happened.record());
    Some(job)
}
