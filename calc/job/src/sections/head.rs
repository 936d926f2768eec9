//! What a job is called, where it is, what it is for.

use bedwright_calc::supply::JobKind;

use super::Unknown;

/// A line of plain text about the job.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum TextField {
    /// What it is called.
    Title,
    /// Whom it is for.
    Customer,
    /// Where it is.
    Site,
    /// Whose sheets these are: the owner in the title block.
    Owner,
    /// Number of the job in the person's own books.
    Number,
    /// Anything else.
    Notes,
}

impl TextField {
    /// All of them.
    pub const ALL: &'static [TextField] = &[
        TextField::Title,
        TextField::Customer,
        TextField::Site,
        TextField::Owner,
        TextField::Number,
        TextField::Notes,
    ];
}

/// Title, customer, site, kind of job, bin.
#[derive(Clone, Debug, PartialEq)]
pub struct Head {
    /// What it is called.
    pub title: String,
    /// Whom it is for.
    pub customer: String,
    /// Where it is.
    pub site: String,
    /// Whose sheets these are.
    pub owner: String,
    /// Number in the person's own books.
    pub number: String,
    /// Anything else.
    pub notes: String,
    /// What the visit is for.
    pub kind: JobKind,
    /// The day it was made, as `2026-11-24`.
    pub created: String,
    /// The day it was put into the bin; none while it isn't there.
    pub binned: Option<String>,
    /// Whether it is the invented sample.
    pub sample: bool,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

impl Default for Head {
    fn default() -> Head {
        Head {
            title: String::new(),
            customer: String::new(),
            site: String::new(),
            owner: String::new(),
            number: String::new(),
            notes: String::new(),
            kind: JobKind::New,
            created: String::new(),
            binned: None,
            sample: false,
            unknown: Unknown::new(),
        }
    }
}

impl Head {
    /// One of its texts.
    #[must_use]
    pub fn text(&self, field: TextField) -> &str {
        match field {
            TextField::Title => &self.title,
            TextField::Customer => &self.customer,
            TextField::Site => &self.site,
            TextField::Owner => &self.owner,
            TextField::Number => &self.number,
            TextField::Notes => &self.notes,
        }
    }

    pub(crate) fn text_mut(&mut self, field: TextField) -> &mut String {
        match field {
            TextField::Title => &mut self.title,
            TextField::Customer => &mut self.customer,
            TextField::Site => &mut self.site,
            TextField::Owner => &mut self.owner,
            TextField::Number => &mut self.number,
            TextField::Notes => &mut self.notes,
        }
    }
}
