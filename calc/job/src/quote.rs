//! What the quote of a job says: every line with its price or its gap, what it comes to, what it rests on; and the copies
//! that were issued.
//!
//! A draft is worked out at every change ([`quote_answers`]) and stored nowhere. Issuing freezes it: [`draft`] puts all
//! that would be printed into a [`QuoteCopy`], and that copy is a record which no later price alters. Papers, files and
//! comparisons are made of copies only, so that an issued quote prints as a draft does, for ever.

mod compare;
mod copy;
mod exact;
mod export;
mod facts;
mod lines;
mod record;
#[cfg(test)]
mod tests;
mod work;

pub use compare::{Change, LineChange, Side, compared};
pub use copy::{CopyFreight, CopyLine, CopyTax, CopyTotals, LineGroup, QuoteCopy, Refusal, draft, issuing};
pub use exact::{FieldFault, decimal_text, exact, nearly, read_decimal};
pub use export::{CSV_HEADER, erp_csv, summary};
pub use lines::{LineAnswer, PriceFrom};
pub use record::{issued, record};
pub use work::{FreightAnswer, QuoteAnswers, QuoteSources, quote_answers};

use bedwright_calc::supply::{Item, Money};

/// What a price list says of a thing.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Priced {
    /// One sells for.
    pub price: Option<Money>,
    /// One costs.
    pub cost: Option<Money>,
    /// Its part number.
    pub part_number: String,
    /// What it is called; empty where the page has a name for it.
    pub name: String,
    /// What it is counted by.
    pub unit: String,
    /// How it is taxed, in the words of the list.
    pub tax_class: String,
}

/// What a price list is asked for.
#[derive(Clone, Copy, Debug)]
pub enum Ask<'a> {
    /// The price of an item of the bill.
    Item(&'a Item),
    /// The row of a key.
    Key(&'a str),
    /// The row of a part number.
    PartNumber(&'a str),
}
