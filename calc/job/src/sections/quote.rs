//! What is offered and for how much: ways of pricing, lines, taxes, labour, terms.

use std::sync::Arc;

use bedwright_calc::supply::quote::LineStanding;
use bedwright_calc::supply::{Halves, JobKind};

use super::Unknown;
use super::by_field::ByField;
use super::survey::ids;
use crate::entry::Entry;
use crate::field::{LineField, QuoteField};
use crate::id::Id;

/// Keys of lines that somebody wrote themselves start like this; then comes an id.
pub const OWN: &str = "own:";
/// Keys of lines of work start like this; then comes the vessel's id.
pub const LABOUR: &str = "labour:";
/// The tax class of what is not taxed.
pub const UNTAXED: &str = "none";

/// The quote of a job, as it is being made. Issued ones are records.
#[derive(Clone, Debug, PartialEq)]
pub struct Quote {
    /// How a price is found.
    pub way: PriceBy,
    /// What becomes of halves of the smallest unit.
    pub halves: Halves,
    /// Decimal places of the currency, where they aren't those its code says.
    pub places: Option<u32>,
    /// Whether freight is charged by the kilogram instead of the pound.
    pub freight_by_kilogram: bool,
    /// What was typed of the whole.
    pub entries: Fields<QuoteField>,
    /// Its texts, in the order of [`QuoteText`]; an empty one isn't kept.
    pub texts: ByField<QuoteText, String>,
    /// The tax classes; the first is the usual one.
    pub taxes: Vec<TaxClass>,
    /// How long work takes.
    pub labour: Vec<LabourLine>,
    /// What was said of lines, by their keys: of those of the bill and of labour wherever they stand, and the person's own
    /// in the order they stand in.
    pub lines: Vec<(String, Arc<QuoteLine>)>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

impl Default for Quote {
    fn default() -> Quote {
        Quote {
            way: PriceBy::List,
            halves: Halves::Up,
            places: None,
            freight_by_kilogram: false,
            entries: Fields::default(),
            texts: ByField::default(),
            taxes: Vec::new(),
            labour: Vec::new(),
            lines: Vec::new(),
            unknown: Unknown::new(),
        }
    }
}

impl Quote {
    /// One of its texts.
    #[must_use]
    pub fn text(&self, field: QuoteText) -> &str {
        self.texts.get(field).map_or("", String::as_str)
    }

    /// Changes a text, and says what stood there before.
    pub(crate) fn set_text(&mut self, field: QuoteText, text: String) -> String {
        self.texts.set(field, Some(text).filter(|text| !text.is_empty())).unwrap_or_default()
    }

    /// What was said of a line.
    #[must_use]
    pub fn line(&self, key: &str) -> Option<&Arc<QuoteLine>> {
        self.lines.iter().find(|(there, _)| there == key).map(|(_, line)| line)
    }

    /// Puts what is said of a line into its place, at a place of its own or at the end, or takes it away. Gives back where
    /// it stood and what stood there. A line of the bill of which nothing is said isn't kept.
    pub(crate) fn put_line(
        &mut self,
        key: &str,
        at: Option<usize>,
        line: Option<Arc<QuoteLine>>,
    ) -> (Option<usize>, Option<Arc<QuoteLine>>) {
        let place = self.lines.iter().position(|(there, _)| there == key);
        let line = line.filter(|line| key.starts_with(OWN) || **line != QuoteLine::default());
        match (place, line) {
            (Some(place), Some(line)) => {
                let before = self.lines.get_mut(place).map(|(_, there)| std::mem::replace(there, line));
                (None, before)
            }
            (Some(place), None) => (Some(place), Some(self.lines.remove(place).1)),
            (None, Some(line)) => {
                let end = self.lines.len();
                self.lines.insert(at.unwrap_or(end).min(end), (key.to_owned(), line));
                (None, None)
            }
            (None, None) => (None, None),
        }
    }

    /// How it is priced, without what is said of single lines: what another job may take over.
    #[must_use]
    pub fn ways(&self) -> Quote {
        let mut ways = self.clone();
        ways.lines.clear();
        for field in [QuoteText::ValidUntil, QuoteText::Notes, QuoteText::CustomerWords] {
            ways.texts.set(field, None);
        }
        let once =
            [QuoteField::FreightWeight, QuoteField::SaltPerYear, QuoteField::WashTime, QuoteField::WashesPerYear];
        for field in once {
            ways.entries.set(field, None);
        }
        ways
    }
}

/// How the price of a line is found where none is typed on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum PriceBy {
    /// As the price list has it.
    List,
    /// The cost and a share of it.
    Markup,
    /// So that a share of the price is kept.
    Margin,
}

ids!(PriceBy { List = "list", Markup = "markup", Margin = "margin" });

/// A text of a quote.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum QuoteText {
    /// The code of the currency: USD.
    Currency,
    /// The last day it holds.
    ValidUntil,
    /// What isn't part of it.
    Exclusions,
    /// What is to be said besides.
    Notes,
    /// The customer's own words.
    CustomerWords,
}

ids!(QuoteText {
    Currency = "currency",
    ValidUntil = "valid_until",
    Exclusions = "exclusions",
    Notes = "notes",
    CustomerWords = "customer_words",
});

/// A tax class.
#[derive(Clone, Debug, PartialEq)]
pub struct TaxClass {
    /// Its name for ever.
    pub id: Id,
    /// What it is called.
    pub name: String,
    /// Its rate.
    pub rate: Option<Entry>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// How long one vessel takes, up to a size.
#[derive(Clone, Debug, PartialEq)]
pub struct LabourLine {
    /// Its name for ever.
    pub id: Id,
    /// The kind of job it is for; none for any.
    pub kind: Option<JobKind>,
    /// The largest inside diameter it is for; none for any.
    pub up_to: Option<Entry>,
    /// Hours for one vessel.
    pub hours: Option<Entry>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// What is said of a line.
#[derive(Clone, Debug, PartialEq)]
pub struct QuoteLine {
    /// Whether it counts.
    pub standing: LineStanding,
    /// Whether its price is given on request: no gap then.
    pub on_request: bool,
    /// Why it was taken out; none while it stands.
    pub removed: Option<String>,
    /// Its tax class by id, [`UNTAXED`], or empty for the usual.
    pub tax: String,
    /// The key of the line it stands in for, as an alternate.
    pub instead_of: String,
    /// Its texts, in the order of [`LineText`]; an empty one isn't kept.
    pub texts: ByField<LineText, String>,
    /// What was typed of it.
    pub entries: Fields<LineField>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

impl Default for QuoteLine {
    fn default() -> QuoteLine {
        QuoteLine {
            standing: LineStanding::Firm,
            on_request: false,
            removed: None,
            tax: String::new(),
            instead_of: String::new(),
            texts: ByField::default(),
            entries: Fields::default(),
            unknown: Unknown::new(),
        }
    }
}

impl QuoteLine {
    /// One of its texts.
    #[must_use]
    pub fn text(&self, field: LineText) -> &str {
        self.texts.get(field).map_or("", String::as_str)
    }

    /// Changes a text.
    pub fn set_text(&mut self, field: LineText, text: String) {
        self.texts.set(field, Some(text).filter(|text| !text.is_empty()));
    }
}

/// A text of a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LineText {
    /// What it is called: of one's own lines.
    Name,
    /// Its part number: of one's own lines.
    PartNumber,
    /// What it is counted by: of one's own lines.
    Unit,
    /// What is to be said of it.
    Note,
}

ids!(LineText { Name = "name", PartNumber = "part_number", Unit = "unit", Note = "note" });

/// The permanent id of a standing.
#[must_use]
pub const fn standing_id(standing: LineStanding) -> &'static str {
    match standing {
        LineStanding::Firm => "firm",
        LineStanding::Optional => "optional",
        LineStanding::Alternate => "alternate",
    }
}

/// Every standing.
pub const STANDINGS: &[LineStanding] = &[LineStanding::Firm, LineStanding::Optional, LineStanding::Alternate];

/// The permanent id of what becomes of halves.
#[must_use]
pub const fn halves_id(halves: Halves) -> &'static str {
    match halves {
        Halves::Up => "up",
        Halves::Even => "even",
    }
}

/// Every way with halves.
pub const HALVES: &[Halves] = &[Halves::Up, Halves::Even];

/// What was typed, by field.
pub type Fields<F> = ByField<F, Entry>;
