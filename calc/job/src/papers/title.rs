//! The title block.

use super::PaperKind;
use crate::job::Job;
use crate::picked::{Step, steps_of};
use crate::words::{CardLabel, CareLabel, DrawingLabel, Label, LoadingLabel, Manner, SupplyLabel, apart, side_by_side};

/// One field of a title block.
#[derive(Clone, Debug, PartialEq)]
pub struct Field {
    /// What it is, small.
    pub label: String,
    /// What it says; empty where a pen is to fill it.
    pub value: String,
}

/// The title block: the data fields of ISO 7200:2004 that a job has, and a place to sign.
#[derive(Clone, Debug, PartialEq)]
pub struct TitleBlock {
    /// Legal owner.
    pub owner: Field,
    /// Who signs, and when.
    pub signed: Field,
    /// Title.
    pub title: Field,
    /// Identification number.
    pub document: Field,
    /// Date.
    pub date: Field,
    /// Revision: changes of all that stands on the paper, counted.
    pub revision: Field,
    /// The job's number.
    pub job: Field,
    /// What the sheet's number is called.
    pub sheet: String,
    /// Between the number of the sheet and how many there are.
    pub of: String,
}

impl TitleBlock {
    /// What the field of a sheet's number says: "2 of 3".
    #[must_use]
    pub fn sheet_number(&self, number: usize, of: usize) -> String {
        format!("{number} {} {of}", self.of)
    }
}

/// What a job is called, on paper.
pub(super) fn job_title(job: &Job, manner: Manner) -> String {
    let title = job.head.body.title.trim();
    if title.is_empty() { manner.label(Label::Untitled).to_owned() } else { title.to_owned() }
}

/// The line under the title: whom and where it is for, and what the visit is for.
pub(super) fn subtitle(job: &Job, manner: Manner) -> String {
    let head = &job.head.body;
    let kind = manner.label(crate::words::choices::kind(head.kind));
    let title = job_title(job, manner);
    let mut parts = vec![title.as_str(), head.customer.trim(), head.site.trim(), kind];
    parts.retain(|part| !part.is_empty());
    parts.dedup();
    side_by_side(&parts)
}

/// The lines beside the title block.
pub(super) fn notes(job: &Job, manner: Manner, lifting: bool) -> Vec<String> {
    let mut labels = Vec::new();
    if job.head.body.sample {
        labels.push(Label::SampleMark);
    }
    if lifting {
        labels.push(Label::LiftCaution);
    }
    labels.push(Label::PlanningAid);
    labels.into_iter().map(|label| manner.label(label).to_owned()).collect()
}

pub(super) fn title_block(job: &Job, kind: PaperKind, place: Option<usize>, manner: Manner, today: &str) -> TitleBlock {
    let of =
        |title: Label, prefix: Label, signed: Label| (manner.label(title), manner.label(prefix), manner.label(signed));
    let (title, prefix, signed) = match kind {
        PaperKind::PickList => of(Label::PickList, Label::PickListLetters, Label::PickedBy),
        PaperKind::Staging => (
            manner.label(SupplyLabel::StagingList),
            manner.label(SupplyLabel::StagingLetters),
            manner.label(SupplyLabel::StagedBy),
        ),
        PaperKind::Survey => of(Label::SurveySheet, Label::SurveyLetters, Label::SurveyedBy),
        PaperKind::BillOfMaterials => of(Label::BillOfMaterials, Label::BillLetters, Label::CheckedBy),
        // A quote's block is that of its copy.
        PaperKind::Calculation | PaperKind::Quote | PaperKind::InternalQuote => {
            of(Label::CalculationSheet, Label::CalculationLetters, Label::CheckedBy)
        }
        PaperKind::Section => (
            manner.label(DrawingLabel::Sheet),
            manner.label(DrawingLabel::SheetLetters),
            manner.label(Label::CheckedBy),
        ),
        PaperKind::Removal => (
            manner.label(LoadingLabel::RemovalSheet),
            manner.label(LoadingLabel::RemovalLetters),
            manner.label(LoadingLabel::DoneBy),
        ),
        PaperKind::Loading => (
            manner.label(LoadingLabel::LoadingSheet),
            manner.label(LoadingLabel::LoadingLetters),
            manner.label(LoadingLabel::LoadedBy),
        ),
        PaperKind::StartUp => (
            manner.label(LoadingLabel::StartUpReport),
            manner.label(LoadingLabel::StartUpLetters),
            manner.label(LoadingLabel::LoadedBy),
        ),
        PaperKind::ServiceCard => (
            manner.label(CareLabel::ServiceCard),
            manner.label(CardLabel::CardLetters),
            manner.label(CardLabel::VisitedBy),
        ),
        PaperKind::DueList => {
            (manner.label(CareLabel::DueList), manner.label(CardLabel::DueLetters), manner.label(CardLabel::CheckedOn))
        }
    };
    let named = |label: &str, value: &str| Field { label: label.to_owned(), value: value.trim().to_owned() };
    let field = |label: Label, value: &str| named(manner.label(label), value);
    let number = job.head.body.number.trim();
    // Without a number of the person's own, the first letters of the job's name tell papers of two jobs apart.
    let short: String = job.id.as_str().chars().filter(|c| *c != '-').take(6).collect();
    let number = if number.is_empty() { short.as_str() } else { number };
    let document = match place {
        Some(place) => format!("{prefix}-{number}-{place}"),
        None => format!("{prefix}-{number}"),
    };
    TitleBlock {
        owner: field(Label::SheetOwner, &job.head.body.owner),
        signed: named(signed, &signed_by(job, kind)),
        title: field(Label::SheetTitle, &format!("{title}, {}", apart(&job_title(job, manner)))),
        document: field(Label::Document, &document),
        date: field(Label::Created, today),
        revision: field(Label::Revision, &revision(job, kind).to_string()),
        job: field(Label::SheetJob, &job.head.body.number),
        sheet: manner.label(Label::Sheet).to_owned(),
        of: manner.label(Label::Of).to_owned(),
    }
}

/// The title block of a list over all jobs: the owner that all of them have, else one that a pen fills in. It has no number
/// and no revision but the day it was made.
pub(super) fn list_block<'a>(jobs: impl Iterator<Item = &'a Job>, manner: Manner, today: &str) -> TitleBlock {
    let named = |label: &str, value: &str| Field { label: label.to_owned(), value: value.to_owned() };
    let field = |label: Label, value: &str| named(manner.label(label), value);
    let mut owners: Vec<&str> = jobs.map(|job| job.head.body.owner.trim()).filter(|owner| !owner.is_empty()).collect();
    owners.dedup();
    let owner = match owners.as_slice() {
        [owner] => *owner,
        _ => "",
    };
    TitleBlock {
        owner: field(Label::SheetOwner, owner),
        signed: named(manner.label(CardLabel::CheckedOn), ""),
        title: field(Label::SheetTitle, manner.label(CareLabel::DueList)),
        document: field(Label::Document, &[manner.label(CardLabel::DueLetters), "-", today].concat()),
        date: field(Label::Created, today),
        revision: field(Label::Revision, "–"),
        job: field(Label::SheetJob, manner.label(CardLabel::AllJobs)),
        sheet: manner.label(Label::Sheet).to_owned(),
        of: manner.label(Label::Of).to_owned(),
    }
}

/// Who took the step that the paper is about, and when; empty while a pen is to fill it.
fn signed_by(job: &Job, kind: PaperKind) -> String {
    let step = match kind {
        PaperKind::PickList => Step::Picked,
        PaperKind::Staging => Step::Staged,
        PaperKind::Survey
        | PaperKind::BillOfMaterials
        | PaperKind::Section
        | PaperKind::Calculation
        | PaperKind::Removal
        | PaperKind::Loading
        | PaperKind::StartUp
        | PaperKind::ServiceCard
        | PaperKind::DueList
        | PaperKind::Quote
        | PaperKind::InternalQuote => return String::new(),
    };
    let taken = steps_of(job).into_iter().find(|taken| taken.step == step);
    taken.map(|taken| format!("{}, {}", taken.name, taken.day)).unwrap_or_default()
}

/// How often anything that stands on the paper was changed: two prints of one state say the same.
fn revision(job: &Job, kind: PaperKind) -> u64 {
    let count = |revision: &Option<crate::id::Revision>| revision.as_ref().map_or(0, |r| r.counter);
    let surveyed = count(&job.head.revision).saturating_add(count(&job.survey.revision));
    let planned = surveyed.saturating_add(count(&job.plan.revision));
    match kind {
        PaperKind::Survey => surveyed,
        PaperKind::Removal | PaperKind::Loading | PaperKind::StartUp | PaperKind::ServiceCard | PaperKind::DueList => {
            planned.saturating_add(count(&job.loading.revision)).saturating_add(job.records.len() as u64)
        }
        // What was read when it was loaded stands on it too.
        PaperKind::Section => {
            planned.saturating_add(count(&job.site.revision)).saturating_add(job.records.len() as u64)
        }
        PaperKind::Calculation | PaperKind::Quote | PaperKind::InternalQuote => {
            planned.saturating_add(count(&job.site.revision))
        }
        PaperKind::BillOfMaterials | PaperKind::PickList | PaperKind::Staging => planned
            .saturating_add(count(&job.picking.revision))
            .saturating_add(count(&job.supply.revision))
            .saturating_add(u64::try_from(steps_of(job).len()).unwrap_or(0)),
    }
}
