//! The card of one vessel as a code on its label holds it: what is asked in three years, and nothing that could be told
//! without it.

use std::sync::Arc;

use super::{Contents, seal};
use crate::id::{Id, Revision};
use crate::job::{Job, Record};
use crate::sections::SectionName;
use crate::sections::survey::VesselSurvey;

/// Who made a card's sections: it isn't the job, and no device counts on from it.
const MAKER: &str = "card";

/// An envelope with one vessel of a job and one of its tags; none where the vessel isn't there. `full` says whether the
/// survey's every measure goes along, or only what the vessel is and holds.
#[must_use]
pub fn card(job: &Job, vessel: &Id, tag: &str, full: bool) -> Option<Vec<u8>> {
    let survey = job.vessel(vessel)?;
    let mut one = Job::new(job.id.clone(), "");
    let made = Some(Revision { device: Id::new(MAKER), counter: 1 });
    one.head.body.title.clone_from(&job.head.body.title);
    one.head.body.site.clone_from(&job.head.body.site);
    one.head.body.kind = job.head.body.kind;
    one.head.body.sample = job.head.body.sample;
    let mut lone = VesselSurvey { tags: vec![tag.to_owned()], notes: String::new(), ..(**survey).clone() };
    if !full {
        let size = crate::field::SurveyField::NominalSize;
        let kept = lone.entries.get(&size).cloned();
        lone.entries.clear();
        if let Some(kept) = kept {
            lone.entries.insert(size, kept);
        }
    }
    one.survey.body.vessels = vec![Arc::new(lone)];
    one.plan.body.vessels.insert(vessel.clone(), job.plan_of(vessel));
    one.head.revision.clone_from(&made);
    one.survey.revision.clone_from(&made);
    one.plan.revision = made;
    one.records = latest_changeout(job, vessel, tag).into_iter().collect();
    let contents = Contents {
        sections: vec![SectionName::Survey, SectionName::Plan],
        records: None,
        costs: false,
        excerpt: Some(vessel.clone()),
        lands_on: tag.to_owned(),
        ..Contents::whole()
    };
    Some(seal(&one, &contents))
}

/// When the bed that stands there was put in, where somebody wrote it down.
fn latest_changeout(job: &Job, vessel: &Id, tag: &str) -> Option<Record> {
    let text = |record: &Record, key: &str| record.value.get(key).and_then(|value| value.as_str()).map(str::to_owned);
    let of_it = |record: &&Record| {
        let kind = text(record, "kind").unwrap_or_default();
        kind == "changeout"
            && text(record, "vessel").as_deref() == Some(vessel.as_str())
            && text(record, "tag").unwrap_or_default() == tag
    };
    job.records.iter().filter(of_it).max_by_key(|record| text(record, "day")).cloned()
}
