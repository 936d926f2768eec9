//! The parts of a job that are kept, sent and joined on their own.

pub mod by_field;
pub mod head;
pub mod kit;
pub mod loading;
pub mod picking;
pub mod plan;
pub mod quote;
pub mod search;
pub mod site;
pub mod supply;
pub mod survey;

use serde_json::{Map, Value};

use crate::id::Revision;

/// Fields this version doesn't know, kept as they came.
pub type Unknown = Map<String, Value>;

/// A section: its content with where it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Section<T> {
    /// What it holds.
    pub body: T,
    /// The state it is in; none before its first change.
    pub revision: Option<Revision>,
    /// The state it was in when it was handed over.
    pub parent: Option<Revision>,
    /// Its text as it was handed over, to compare three ways when it comes back.
    pub base: Option<String>,
    /// What this version doesn't know of it.
    pub unknown: Unknown,
}

impl<T: Default> Default for Section<T> {
    fn default() -> Section<T> {
        Section { body: T::default(), revision: None, parent: None, base: None, unknown: Unknown::new() }
    }
}

/// Which section.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SectionName {
    /// Title, site, kind of job, whether it lies in the bin.
    Head,
    /// The vessels as surveyed.
    Survey,
    /// The layers.
    Plan,
    /// Ticks, bins and part numbers of the pick list.
    Picking,
    /// What the site gives, and what each vessel is asked to do.
    Site,
    /// What is offered and for how much.
    Quote,
    /// What was done and read when beds were taken out and loaded.
    Loading,
    /// How material is bought, cut, lifted and stacked, and what the shelf gave.
    Supply,
    /// The rows of the price list that the job carries.
    Prices,
    /// What parts are counted by, and which lines are left out.
    Kit,
    /// What vessels are looked for.
    Search,
}

impl SectionName {
    /// All this version knows.
    pub const ALL: &'static [SectionName] = &[
        SectionName::Head,
        SectionName::Survey,
        SectionName::Plan,
        SectionName::Picking,
        SectionName::Site,
        SectionName::Quote,
        SectionName::Loading,
        SectionName::Supply,
        SectionName::Prices,
        SectionName::Kit,
        SectionName::Search,
    ];

    /// The permanent id.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            SectionName::Head => "head",
            SectionName::Survey => "survey",
            SectionName::Plan => "plan",
            SectionName::Picking => "picking",
            SectionName::Site => "site",
            SectionName::Quote => "quote",
            SectionName::Loading => "loading",
            SectionName::Supply => "supply",
            SectionName::Prices => "prices",
            SectionName::Kit => "kit",
            SectionName::Search => "search",
        }
    }

    /// The one with this id.
    #[must_use]
    pub fn of(id: &str) -> Option<SectionName> {
        SectionName::ALL.iter().copied().find(|name| name.id() == id)
    }
}
