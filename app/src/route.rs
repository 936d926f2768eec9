//! The address of every screen, after the `#`.

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
    /// A job's quote.
    Quote(Id),
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
            ["jobs", job, "bill"] => Route::Bill(Id::new(job)),
            ["jobs", job, "quote"] => Route::Quote(Id::new(job)),
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
            Route::Bill(job) => format!("#/jobs/{job}/bill"),
            Route::Quote(job) => format!("#/jobs/{job}/quote"),
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
            | Route::Bill(job)
            | Route::Quote(job)
            | Route::Picking(job)
            | Route::Packs(job)
            | Route::Labels(job)
            | Route::SurveySheet(job)
            | Route::Calculation(job) => Some(job),
            Route::Jobs | Route::Settings => None,
        }
    }
}
