//! What a search finds, and the one change that makes a vessel of it.

use std::sync::Arc;

use bedwright_calc::fill::{Role, Target};
use bedwright_calc::hydraulics::{Arrangement, Candidate, Found, search};
use bedwright_calc::quantity::{Basis, Problem, Term, VolumeRate};

use crate::edit::{DutyChoice, Edit, WaterOf};
use crate::entry::{Entry, Unit};
use crate::field::{SurveyField, WaterField};
use crate::id::Id;
use crate::job::Job;
use crate::reading::search::{SearchReading, read_search};
use crate::reading::site::water_field_of;
use crate::sections::plan::{LayerPlan, TargetKind, VesselPlan};
use crate::sections::search::VesselSearch;
use crate::sections::site::SiteConditions;
use crate::sections::survey::{Standing, SurveyEntry, VesselSurvey};
use crate::words::Manner;
use crate::words::label::SearchLabel;

/// What a search is worked out from. Compared by value.
#[derive(Clone, Debug, PartialEq)]
pub struct SearchAsked {
    /// What the site gives, without what its vessels are asked to do.
    pub conditions: SiteConditions,
    /// What is looked for.
    pub search: VesselSearch,
}

impl SearchAsked {
    /// That of a job.
    #[must_use]
    pub fn of(job: &Job) -> SearchAsked {
        let site = &job.site.body;
        SearchAsked {
            conditions: SiteConditions {
                source: site.source,
                entries: site.entries.clone(),
                ..SiteConditions::default()
            },
            search: job.search.body.clone(),
        }
    }
}

/// What a search says.
#[derive(Clone, Debug, PartialEq)]
pub struct SearchAnswers {
    /// Its entries, read.
    pub reading: SearchReading,
    /// What was found, or why nothing could be; nothing while an entry makes no sense.
    pub found: Option<Result<Found, Problem>>,
}

impl SearchAnswers {
    /// The problem that an entry caused.
    #[must_use]
    pub fn problem_of(&self, of: &WaterOf, field: WaterField) -> Option<&Problem> {
        let problem = self.found.as_ref()?.as_ref().err()?;
        (search_field_of(problem.term)? == (of.clone(), field)).then_some(problem)
    }

    /// The problem that no entry caused.
    #[must_use]
    pub fn problem(&self) -> Option<&Problem> {
        let problem = self.found.as_ref()?.as_ref().err()?;
        search_field_of(problem.term).is_none().then_some(problem)
    }
}

/// The entry that a quantity of a search comes from.
fn search_field_of(term: Term) -> Option<(WaterOf, WaterField)> {
    if term == Term::CeilingClearance {
        return Some((WaterOf::Search, WaterField::CeilingClearance));
    }
    match water_field_of(term, &Id::new(""), None)? {
        (WaterOf::Vessel(_), field) => Some((WaterOf::Search, field)),
        other => Some(other),
    }
}

/// Looks for vessels.
#[must_use]
pub fn search_answers(asked: &SearchAsked) -> SearchAnswers {
    let reading = read_search(&asked.conditions, &asked.search);
    let found = match &reading.wanted {
        _ if !reading.misread.is_empty() => None,
        Err(problem) => Some(Err(*problem)),
        Ok(wanted) => Some(search(wanted)),
    };
    SearchAnswers { reading, found }
}

/// A drain line flow control as an entry: sizes are stamped in US gallons a minute wherever they are sold.
#[must_use]
pub fn flow_control_entry(flow: VolumeRate) -> Entry {
    plain(Unit::UsGallonPerMinute, flow.value, 3)
}

/// A number in the words of a file: a point, and no marks between thousands.
fn plain(unit: Unit, si: f64, places: usize) -> Entry {
    Entry { text: Manner::default().decimal(unit.from_si(si), places), unit, meaning: None }
}

/// The change that makes a vessel of a candidate, at the end of a job's vessels: survey, plan and duty, done and undone
/// together. `ids` are those of the vessel and of its layers, bottom first; `manner` says which units its depths are in.
#[must_use]
pub fn made(job: &Job, candidate: &Candidate, ids: [Id; 3], manner: Manner) -> Edit {
    let [vessel, first, second] = ids;
    let search = &job.search.body;
    let mut survey = VesselSurvey::new(vessel.clone());
    survey.tags = new_tags(job, candidate.vessels, manner);
    let inches = |si: f64| Manner::default().decimal(Unit::Inch.from_si(si), 2);
    let (diameter, height) = (candidate.nominal.diameter.value, candidate.nominal.usual_height.value);
    let size = Entry { text: [&inches(diameter), "x", &inches(height)].concat(), unit: Unit::Inch, meaning: None };
    survey.entries.insert(SurveyField::NominalSize, SurveyEntry { entry: size, standing: Standing::Assumed });
    let layers = candidate.layers.iter().zip([first, second]).map(|(layer, id)| {
        let mut plan = LayerPlan::new(id, &layer.material.id, layer.role);
        plan.minimum = layer.role == Role::Media;
        (plan.target, plan.amount) = match &layer.target {
            Target::Packs(packs) => (TargetKind::Packs, Some(plain(Unit::Each, packs.value, 0))),
            Target::Depth(depth) => {
                (TargetKind::Depth, Some(plain(TargetKind::Depth.usual_unit(manner.metric), depth.value.value, 2)))
            }
            // A search asks for nothing else.
            _ => (plan.target, None),
        };
        plan
    });
    let plan = VesselPlan { layers: layers.collect(), ..VesselPlan::default() };
    let duty = |choice: DutyChoice| Edit::Duty { vessel: vessel.clone(), choice };
    // One vessel shares with nobody.
    let arrangement = if candidate.vessels == 1 { Arrangement::Single } else { search.arrangement };
    let mut edits = vec![
        Edit::InsertVessel { at: job.survey.body.vessels.len(), vessel: Arc::new(survey), plan: Arc::new(plan) },
        duty(DutyChoice::Purpose(Some(search.purpose))),
        duty(DutyChoice::Arrangement(arrangement)),
    ];
    let mut entries: Vec<(WaterField, SurveyEntry)> =
        [WaterField::ServiceFlow, WaterField::PeakFlow, WaterField::MinimumExpansion]
            .into_iter()
            .filter_map(|field| Some((field, search.entries.get(field)?.clone())))
            .collect();
    let typed = search.entries.get(WaterField::FlowControl);
    entries.extend(candidate.flow_control.as_ref().map(|setting| {
        let entry = match typed {
            Some(typed) if setting.flow.basis <= Basis::Typed => typed.entry.clone(),
            _ => flow_control_entry(setting.flow.value),
        };
        (WaterField::FlowControl, SurveyEntry { entry, standing: Standing::Assumed })
    }));
    edits.extend(entries.into_iter().map(|(field, entry)| Edit::Water {
        of: WaterOf::Vessel(vessel.clone()),
        field,
        entry: Some(entry),
    }));
    Edit::All(edits)
}

/// So many tags that no vessel of the job has.
fn new_tags(job: &Job, count: u32, manner: Manner) -> Vec<String> {
    let mut tags: Vec<String> = Vec::new();
    let mut number = 1_u32;
    while u32::try_from(tags.len()).is_ok_and(|there| there < count) {
        let tag = [manner.label(SearchLabel::TagStart), &number.to_string()].concat();
        if !job.survey.body.vessels.iter().any(|vessel| vessel.tags.contains(&tag)) {
            tags.push(tag);
        }
        number += 1;
    }
    tags
}
