//! What the quote rests on: measured and assumed, packs, a year's wash water and salt.

use bedwright_job::field::QuoteField;
use bedwright_job::quote::QuoteCopy;
use bedwright_job::words::QuoteLabel;

use super::pricing::entry;
use crate::desk::{Desk, with_quote};
use crate::parts::live::{El, el};

/// What it rests on.
pub fn facts(desk: Desk) -> El {
    let say = move |label: QuoteLabel| desk.label(label);
    let list = move |read: fn(&QuoteCopy) -> Vec<String>| {
        el("ul", "quote-facts").live(move || {
            let said = with_quote(desk, |quoted| quoted.map(|quoted| read(&quoted.draft)).unwrap_or_default());
            said.iter().map(|text| el("li", "").text(text)).collect()
        })
    };
    let none = move || with_quote(desk, |quoted| quoted.is_none_or(|quoted| quoted.draft.assumptions.is_empty()));
    el("section", "quote-part")
        .set("aria-labelledby", "quote-facts")
        .kid(el("h2", "rule").set("id", "quote-facts").text(say(QuoteLabel::RestsOn)))
        .when(none, move || vec![el("p", "").text(say(QuoteLabel::NothingRests))])
        .kid(list(|copy| copy.assumptions.clone()))
        .kid(list(|copy| copy.left_out.clone()))
        .kid(el("h3", "quote-head").text(say(QuoteLabel::PacksTitle)))
        .kid(list(|copy| copy.packs.clone()))
        .kid(el("h3", "quote-head").text(say(QuoteLabel::YearTitle)))
        .kid(el("p", "survey-missing").text(say(QuoteLabel::YearHint)))
        .kid(
            el("div", "entries")
                .kid(entry(desk, QuoteField::WashTime))
                .kid(entry(desk, QuoteField::WashesPerYear))
                .kid(entry(desk, QuoteField::SaltPerYear)),
        )
        .kid(list(|copy| copy.yearly.clone()))
}
