//! Changes of the quote.

use std::sync::Arc;

use bedwright_calc::supply::Halves;

use crate::entry::Entry;
use crate::field::QuoteField;
use crate::sections::quote::{LabourLine, PriceBy, Quote, QuoteLine, QuoteText, TaxClass};

/// One change of the quote.
#[derive(Clone, Debug, PartialEq)]
pub enum QuoteEdit {
    /// A text.
    Text {
        /// Which.
        field: QuoteText,
        /// What it says now.
        text: String,
    },
    /// A typed value; none when it was cleared.
    Entry {
        /// Which.
        field: QuoteField,
        /// What it is now.
        entry: Option<Entry>,
    },
    /// How a price is found.
    Way(PriceBy),
    /// What becomes of halves.
    Halves(Halves),
    /// Decimal places of the currency, where they aren't those its code says.
    Places(Option<u32>),
    /// Whether freight is charged by the kilogram.
    FreightByKilogram(bool),
    /// All tax classes.
    Taxes(Vec<TaxClass>),
    /// The whole table of labour.
    Labour(Vec<LabourLine>),
    /// What is said of a line, put in or taken away.
    Line {
        /// Its key.
        key: String,
        /// Where it is put among the lines, where it is new; at the end where none is said.
        at: Option<usize>,
        /// What is said; none when it is taken away.
        line: Option<Arc<QuoteLine>>,
    },
    /// The whole quote: taken over from another job.
    Whole(Arc<Quote>),
}

impl QuoteEdit {
    /// Whether both are of the same typed field.
    pub(crate) fn same_place(&self, other: &QuoteEdit) -> bool {
        match (self, other) {
            (QuoteEdit::Text { field: a, .. }, QuoteEdit::Text { field: b, .. }) => a == b,
            (QuoteEdit::Entry { field: a, .. }, QuoteEdit::Entry { field: b, .. }) => a == b,
            (QuoteEdit::Line { key: a, .. }, QuoteEdit::Line { key: b, .. }) => a == b,
            // Of as many rows: a cell was typed on. With more or fewer a row came or went.
            (QuoteEdit::Taxes(a), QuoteEdit::Taxes(b)) => a.len() == b.len(),
            (QuoteEdit::Labour(a), QuoteEdit::Labour(b)) => a.len() == b.len(),
            _ => false,
        }
    }
}

/// Changes the quote, and says how to take it back.
pub(super) fn change(quote: &mut Quote, edit: QuoteEdit) -> QuoteEdit {
    use std::mem::replace;
    match edit {
        QuoteEdit::Text { field, text } => QuoteEdit::Text { field, text: quote.set_text(field, text) },
        QuoteEdit::Entry { field, entry } => QuoteEdit::Entry { field, entry: quote.entries.set(field, entry) },
        QuoteEdit::Way(way) => QuoteEdit::Way(replace(&mut quote.way, way)),
        QuoteEdit::Halves(halves) => QuoteEdit::Halves(replace(&mut quote.halves, halves)),
        QuoteEdit::Places(places) => QuoteEdit::Places(replace(&mut quote.places, places)),
        QuoteEdit::FreightByKilogram(yes) => QuoteEdit::FreightByKilogram(replace(&mut quote.freight_by_kilogram, yes)),
        QuoteEdit::Taxes(taxes) => QuoteEdit::Taxes(replace(&mut quote.taxes, taxes)),
        QuoteEdit::Labour(labour) => QuoteEdit::Labour(replace(&mut quote.labour, labour)),
        QuoteEdit::Line { key, at, line } => {
            let (at, line) = quote.put_line(&key, at, line);
            QuoteEdit::Line { key, at, line }
        }
        QuoteEdit::Whole(whole) => QuoteEdit::Whole(Arc::new(replace(quote, Arc::unwrap_or_clone(whole)))),
    }
}
