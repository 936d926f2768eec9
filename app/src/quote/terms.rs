//! Terms: how long it holds, what isn't included, notes, the customer's own words.

use bedwright_job::edit::quote::QuoteEdit;
use bedwright_job::sections::quote::QuoteText;
use bedwright_job::words::QuoteLabel;

use super::pricing::text;
use crate::desk::Desk;
use crate::parts::live::{El, el};
use crate::parts::typing::{paragraph, text_line};

/// The terms.
pub fn terms(desk: Desk) -> El {
    let long = move |field: QuoteText, label: QuoteLabel| {
        let field = paragraph(
            desk.turned,
            move || desk.of_job(|job| job.quote.body.text(field).to_owned()),
            move |text| desk.edit_quote(QuoteEdit::Text { field, text }),
            move || desk.pause(),
        );
        text_line(desk.label(label), field)
    };
    el("section", "quote-part")
        .set("aria-labelledby", "quote-terms")
        .kid(el("h2", "rule").set("id", "quote-terms").text(desk.label(QuoteLabel::TermsTitle)))
        .kid(el("div", "entries").kid(text(desk, QuoteText::ValidUntil, QuoteLabel::ValidUntil)))
        .kid(long(QuoteText::CustomerWords, QuoteLabel::CustomerWords))
        .kid(long(QuoteText::Exclusions, QuoteLabel::Exclusions))
        .kid(long(QuoteText::Notes, QuoteLabel::Notes))
}
