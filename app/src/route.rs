//! The address of every screen, after the `#`.

use bedwright_job::id::Id;
use bedwright_job::sections::loading::WorkSheet;

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
    /// The service card of one tag of a vessel; an empty tag where it has none.
    Card(Id, Id, String),
    /// What is due, over all jobs.
    Due,
    /// Where each vessel of a job stands in being emptied and loaded.
    Loadings(Id),
    /// A sheet of a vessel, told by its tag.
    Sheet(WorkSheet, Id, Id, String),
    /// Sending a job.
    Send(Id),
    /// Taking a job in; with the code of a link, where one was followed.
    Receive(String),
    /// The price list of this device.
    Prices,
    /// How sure the figures are; with the id of a formula, of that one.
    Sure(String),
    /// The person's ways.
    Settings,
    /// Backup and storage of this device.
    Backup,
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
            ["jobs", job, "vessels", vessel, "card", tag] => Route::Card(Id::new(job), Id::new(vessel), decode(tag)),
            ["due"] => Route::Due,
            ["jobs", job, "bill"] => Route::Bill(Id::new(job)),
            ["jobs", job, "quote"] => Route::Quote(Id::new(job)),
            ["jobs", job, "picking"] => Route::Picking(Id::new(job)),
            ["jobs", job, "packs"] => Route::Packs(Id::new(job)),
            ["jobs", job, "labels"] => Route::Labels(Id::new(job)),
            ["jobs", job, "survey-sheet"] => Route::SurveySheet(Id::new(job)),
            ["jobs", job, "calculation"] => Route::Calculation(Id::new(job)),
            ["jobs", job, "send"] => Route::Send(Id::new(job)),
            ["jobs", job, "loading"] => Route::Loadings(Id::new(job)),
            ["jobs", job, sheet, vessel] => Route::sheet(job, sheet, vessel, ""),
            ["jobs", job, sheet, vessel, tag] => Route::sheet(job, sheet, vessel, tag),
            ["open"] => Route::Receive(String::new()),
            ["open", code] => Route::Receive(decode(code)),
            ["sure"] => Route::Sure(String::new()),
            ["sure", formula] => Route::Sure(decode(formula)),
            ["prices"] => Route::Prices,
            ["settings"] => Route::Settings,
            ["backup"] => Route::Backup,
            _ => Route::Jobs,
        }
    }

    fn sheet(job: &str, sheet: &str, vessel: &str, tag: &str) -> Route {
        match WorkSheet::of(sheet) {
            Some(sheet) => Route::Sheet(sheet, Id::new(job), Id::new(vessel), decode(tag)),
            None => Route::Jobs,
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
            Route::Card(job, vessel, tag) => format!("#/jobs/{job}/vessels/{vessel}/card/{}", encode(tag)),
            Route::Due => "#/due".to_owned(),
            Route::Bill(job) => format!("#/jobs/{job}/bill"),
            Route::Quote(job) => format!("#/jobs/{job}/quote"),
            Route::Picking(job) => format!("#/jobs/{job}/picking"),
            Route::Packs(job) => format!("#/jobs/{job}/packs"),
            Route::Labels(job) => format!("#/jobs/{job}/labels"),
            Route::SurveySheet(job) => format!("#/jobs/{job}/survey-sheet"),
            Route::Calculation(job) => format!("#/jobs/{job}/calculation"),
            Route::Loadings(job) => format!("#/jobs/{job}/loading"),
            Route::Sheet(sheet, job, vessel, tag) => {
                let tag = encode(tag);
                let end = if tag.is_empty() { String::new() } else { format!("/{tag}") };
                format!("#/jobs/{job}/{}/{vessel}{end}", sheet.id())
            }
            Route::Send(job) => format!("#/jobs/{job}/send"),
            Route::Receive(code) if code.is_empty() => "#/open".to_owned(),
            Route::Receive(code) => format!("#/open/{code}"),
            Route::Sure(formula) if formula.is_empty() => "#/sure".to_owned(),
            Route::Sure(formula) => format!("#/sure/{}", encode(formula)),
            Route::Prices => "#/prices".to_owned(),
            Route::Settings => "#/settings".to_owned(),
            Route::Backup => "#/backup".to_owned(),
        }
    }

    /// A screen of a job, by the last part of its address; the job itself for one that isn't known.
    pub fn landing(job: &Id, lands_on: &str) -> Route {
        let route = Route::of(&format!("#/jobs/{job}/{lands_on}"));
        if route.job() == Some(job) { route } else { Route::Job(job.clone()) }
    }

    /// The job it is about.
    pub fn job(&self) -> Option<&Id> {
        match self {
            Route::Job(job)
            | Route::Vessel(job, _)
            | Route::Search(job)
            | Route::Card(job, ..)
            | Route::Bill(job)
            | Route::Quote(job)
            | Route::Picking(job)
            | Route::Packs(job)
            | Route::Labels(job)
            | Route::SurveySheet(job)
            | Route::Calculation(job)
            | Route::Loadings(job)
            | Route::Send(job)
            | Route::Sheet(_, job, _, _) => Some(job),
            Route::Jobs
            | Route::Due
            | Route::Receive(_)
            | Route::Prices
            | Route::Settings
            | Route::Sure(_)
            | Route::Backup => None,
        }
    }
}

/// A tag as part of an address: what an address uses for itself is percent-encoded (RFC 3986, 2.1).
fn encode(tag: &str) -> String {
    js_sys::encode_uri_component(tag).into()
}

/// A tag from an address; as it stands where it makes no sense.
fn decode(part: &str) -> String {
    js_sys::decode_uri_component(part).map_or_else(|_| part.to_owned(), Into::into)
}
