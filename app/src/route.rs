//! The address of every screen, after the `#`.

use bedwright_job::care::address::{tag_address, tag_of};
use bedwright_job::id::Id;

/// A screen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Route {
    /// Every job on this device.
    Jobs,
    /// One job.
    Job(Id),
    /// One vessel of a job.
    Vessel(Id, Id),
    /// Vessels for a flow of a job.
    Search(Id),
    /// A job's bill of materials.
    Bill(Id),
    /// A job's pick list.
    Picking(Id),
    /// Which packs a job's material comes in, and how it is handled.
    Packs(Id),
    /// A job's labels.
    Labels(Id),
    /// A job's survey sheet.
    SurveySheet(Id),
    /// A job's calculation sheets.
    Calculation(Id),
    /// The service card of one tag of a vessel; an empty tag where it has none.
    Card(Id, Id, String),
    /// What is due, over all jobs.
    Due,
    /// The person's ways.
    Settings,
}

impl Route {
    /// The screen of an address; the jobs for one that isn't known.
    pub fn of(hash: &str) -> Route {
        let parts: Vec<&str> = hash.trim_start_matches('#').split('/').filter(|part| !part.is_empty()).collect();
        match parts.as_slice() {
            ["jobs", job] => Route::Job(Id::new(job)),
            ["jobs", job, "vessels", vessel] => Route::Vessel(Id::new(job), Id::new(vessel)),
            ["jobs", job, "search"] => Route::Search(Id::new(job)),
            ["jobs", job, "vessels", vessel, "card"] => Route::Card(Id::new(job), Id::new(vessel), String::new()),
            ["jobs", job, "vessels", vessel, "card", tag] => {
                tag_of(tag).map_or(Route::Jobs, |tag| Route::Card(Id::new(job), Id::new(vessel), tag))
            }
            ["due"] => Route::Due,
            ["jobs", job, "bill"] => Route::Bill(Id::new(job)),
            ["jobs", job, "picking"] => Route::Picking(Id::new(job)),
            ["jobs", job, "packs"] => Route::Packs(Id::new(job)),
            ["jobs", job, "labels"] => Route::Labels(Id::new(job)),
            ["jobs", job, "survey-sheet"] => Route::SurveySheet(Id::new(job)),
            ["jobs", job, "calculation"] => Route::Calculation(Id::new(job)),
            ["settings"] => Route::Settings,
            _ => Route::Jobs,
        }
    }

    /// The address of a screen, with its `#`.
    pub fn address(&self) -> String {
        match self {
            Route::Jobs => "#/jobs".to_owned(),
            Route::Job(job) => format!("#/jobs/{job}"),
            Route::Vessel(job, vessel) => format!("#/jobs/{job}/vessels/{vessel}"),
            Route::Search(job) => format!("#/jobs/{job}/search"),
            Route::Card(job, vessel, tag) if tag.is_empty() => format!("#/jobs/{job}/vessels/{vessel}/card"),
            Route::Card(job, vessel, tag) => format!("#/jobs/{job}/vessels/{vessel}/card/{}", tag_address(tag)),
            Route::Due => "#/due".to_owned(),
            Route::Bill(job) => format!("#/jobs/{job}/bill"),
            Route::Picking(job) => format!("#/jobs/{job}/picking"),
            Route::Packs(job) => format!("#/jobs/{job}/packs"),
            Route::Labels(job) => format!("#/jobs/{job}/labels"),
            Route::SurveySheet(job) => format!("#/jobs/{job}/survey-sheet"),
            Route::Calculation(job) => format!("#/jobs/{job}/calculation"),
            Route::Settings => "#/settings".to_owned(),
        }
    }

    /// The job it is about.
    pub fn job(&self) -> Option<&Id> {
        match self {
            Route::Job(job)
            | Route::Vessel(job, _)
            | Route::Search(job)
            | Route::Card(job, ..)
            | Route::Bill(job)
            | Route::Picking(job)
            | Route::Packs(job)
            | Route::Labels(job)
            | Route::SurveySheet(job)
            | Route::Calculation(job) => Some(job),
            Route::Jobs | Route::Due | Route::Settings => None,
        }
    }
}
