//! Lines that the person writes.

use std::sync::Arc;

use bedwright_job::edit::quote::QuoteEdit;
use bedwright_job::sections::quote::{LineText, OWN, QuoteLine};
use bedwright_job::words::QuoteLabel;

use super::line::Line;
use crate::desk::{Desk, new_id};
use crate::parts::live::{El, el};

/// Adds an empty line at the end.
pub fn add(desk: Desk) {
    let key = [OWN, new_id().as_str()].concat();
    desk.edit_quote(QuoteEdit::Line { key, at: None, line: Some(Arc::new(QuoteLine::default())) });
}

/// Takes a line away; it can be undone.
pub fn erase(desk: Desk, key: &str) {
    desk.edit_quote(QuoteEdit::Line { key: key.to_owned(), at: None, line: None });
}

/// What an own line is called, its part number and its unit.
pub fn own_texts(line: Line) -> El {
    el("div", "quote-own")
        .kid(line.text(LineText::Name, QuoteLabel::Name))
        .kid(line.text(LineText::PartNumber, QuoteLabel::PartNumber))
        .kid(line.text(LineText::Unit, QuoteLabel::UnitWord))
}
