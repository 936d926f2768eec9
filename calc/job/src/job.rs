//! One site's work.

use std::sync::Arc;

use litemap::LiteMap;
use serde_json::Value;

use crate::id::{Id, Revision};
use crate::prices::JobPrices;
use crate::sections::head::Head;
use crate::sections::kit::Kit;
use crate::sections::loading::Loading;
use crate::sections::picking::Picking;
use crate::sections::plan::{FillPlan, VesselPlan};
use crate::sections::quote::Quote;
use crate::sections::search::VesselSearch;
use crate::sections::site::SiteConditions;
use crate::sections::supply::Supply;
use crate::sections::survey::{Survey, VesselSurvey};
use crate::sections::{Section, SectionName, Unknown};

/// A job.
#[derive(Clone, Debug, PartialEq)]
pub struct Job {
    /// Its name for ever.
    pub id: Id,
    /// Title, site, kind.
    pub head: Section<Head>,
    /// Its vessels.
    pub survey: Section<Survey>,
    /// Their layers.
    pub plan: Section<FillPlan>,
    /// The pick list's ticks.
    pub picking: Section<Picking>,
    /// What the site gives, and what each vessel is asked to do.
    pub site: Section<SiteConditions>,
    /// What is offered and for how much.
    pub quote: Section<Quote>,
    /// What was done and read when beds were taken out and loaded.
    pub loading: Section<Loading>,
    /// How its material is bought, cut, lifted and stacked.
    pub supply: Section<Supply>,
    /// The rows of the price list it carries.
    pub prices: Section<JobPrices>,
    /// What its parts are counted by, and which lines are left out.
    pub kit: Section<Kit>,
    /// What vessels are looked for.
    pub search: Section<VesselSearch>,
    /// Sections that could not be taken in: of a kind or version this one doesn't know. Kept to the letter.
    pub locked: LiteMap<String, LockedSection>,
    /// Records: only ever added to.
    pub records: Vec<Record>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// A section kept as it came because this version can't read it.
#[derive(Clone, Debug, PartialEq)]
pub struct LockedSection {
    /// Its text as a value.
    pub value: Value,
    /// Why.
    pub why: Locked,
}

/// Why a section is kept closed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Locked {
    /// No section of this name is known: most likely of a later version.
    UnknownName,
    /// Its version is later than this one knows.
    TooNew {
        /// The version it has.
        version: u64,
    },
    /// It says it is of a version that is known, but doesn't read as such.
    Unreadable {
        /// What the reader said.
        detail: String,
    },
}

/// Something that happened and stays: an issue, a sign-off, a reading.
#[derive(Clone, Debug, PartialEq)]
pub struct Record {
    /// Its name for ever.
    pub id: Id,
    /// What it holds, as it was written.
    pub value: Value,
}

impl Job {
    /// An empty job.
    #[must_use]
    pub fn new(id: Id, created: &str) -> Job {
        let mut head = Section::<Head>::default();
        created.clone_into(&mut head.body.created);
        Job {
            id,
            head,
            survey: Section::default(),
            plan: Section::default(),
            picking: Section::default(),
            site: Section::default(),
            quote: Section::default(),
            loading: Section::default(),
            supply: Section::default(),
            prices: Section::default(),
            kit: Section::default(),
            search: Section::default(),
            locked: LiteMap::new(),
            records: Vec::new(),
            unknown: Unknown::new(),
        }
    }

    /// The vessel of this id.
    #[must_use]
    pub fn vessel(&self, id: &Id) -> Option<&Arc<VesselSurvey>> {
        self.survey.body.vessels.iter().find(|vessel| vessel.id == *id)
    }

    /// The plan of the vessel of this id; an empty one where none was made.
    #[must_use]
    pub fn plan_of(&self, id: &Id) -> Arc<VesselPlan> {
        self.plan.body.vessels.get(id).cloned().unwrap_or_default()
    }

    /// The state a section is in.
    #[must_use]
    pub fn revision(&self, name: SectionName) -> Option<&Revision> {
        match name {
            SectionName::Head => self.head.revision.as_ref(),
            SectionName::Survey => self.survey.revision.as_ref(),
            SectionName::Plan => self.plan.revision.as_ref(),
            SectionName::Picking => self.picking.revision.as_ref(),
            SectionName::Site => self.site.revision.as_ref(),
            SectionName::Quote => self.quote.revision.as_ref(),
            SectionName::Loading => self.loading.revision.as_ref(),
            SectionName::Supply => self.supply.revision.as_ref(),
            SectionName::Prices => self.prices.revision.as_ref(),
            SectionName::Kit => self.kit.revision.as_ref(),
            SectionName::Search => self.search.revision.as_ref(),
        }
    }

    /// Whether a section can't be changed because it could not be read.
    #[must_use]
    pub fn is_locked(&self, name: SectionName) -> bool {
        self.locked.contains_key(name.id())
    }
}
