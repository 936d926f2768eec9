//! The quote's screen.

use bedwright_calc::supply::Money;
use bedwright_job::quote::LineGroup;
use bedwright_job::words::QuoteLabel;

use super::facts::facts;
use super::issue::{Shown, issuing, papers};
use super::line::Line;
use super::own;
use super::pricing::pricing;
use super::table::labour;
use super::terms::terms;
use crate::desk::{Desk, with_quote};
use crate::parts::live::{El, button, el};
use crate::parts::signal::Kept;

const GROUPS: [(LineGroup, QuoteLabel); 3] = [
    (LineGroup::Bill, QuoteLabel::Materials),
    (LineGroup::Labour, QuoteLabel::Work),
    (LineGroup::Own, QuoteLabel::Further),
];

/// The quote.
pub fn quote_page(desk: Desk) -> El {
    let say = move |label: QuoteLabel| desk.label(label);
    let shown = Shown::new(desk);
    let outdated = move || with_quote(desk, |quoted| quoted.map_or(0, |quoted| quoted.outdated));
    let notice = move || {
        let text =
            el("span", "notice-text").says(move || [&outdated().to_string(), " ", say(QuoteLabel::Outdated)].concat());
        let take = button("", say(QuoteLabel::TakePrices), move || desk.carry_prices());
        vec![el("div", "notice").set("role", "status").kid(text).kid(take)]
    };
    el("main", "page quote")
        .kid(el("h1", "page-title").text(say(QuoteLabel::Quote)))
        .when(move || outdated() > 0, notice)
        .kid(lines(desk))
        .kid(pricing(desk))
        .kid(labour(desk))
        .kid(facts(desk))
        .kid(terms(desk))
        .kid(issuing(shown))
        .kid(papers(shown))
        .kid(sum(desk))
}

fn keys(desk: Desk, group: LineGroup) -> Vec<String> {
    with_quote(desk, |quoted| {
        let lines = quoted.map(|quoted| quoted.answers.lines.as_slice()).unwrap_or_default();
        lines.iter().filter(|line| line.group == group).map(|line| line.key.clone()).collect()
    })
}

/// Every line, by what it belongs to.
fn lines(desk: Desk) -> El {
    let say = move |label: QuoteLabel| desk.label(label);
    let empty = move || GROUPS.iter().all(|(group, _)| keys(desk, *group).is_empty());
    let gaps = move || with_quote(desk, |quoted| quoted.map_or(0, |quoted| quoted.answers.gaps().count()));
    let mut all = el("section", "quote-part")
        .set("aria-labelledby", "quote-lines")
        .kid(el("h2", "rule").set("id", "quote-lines").text(say(QuoteLabel::LinesTitle)))
        .when(move || gaps() > 0, move || vec![el("p", "quote-gaps").text("▲ ").text(say(QuoteLabel::GapsTitle))])
        .when(empty, move || vec![el("p", "").text(say(QuoteLabel::NoLines))]);
    for (group, label) in GROUPS {
        all = all.when(
            move || !keys(desk, group).is_empty(),
            move || {
                let line = move |key: &str| Line { desk, key: Kept::new(key.to_owned()) }.show();
                vec![
                    el("h3", "quote-head").text(say(label)),
                    el("ul", "quote-lines").set("aria-label", say(label)).each(move || keys(desk, group), line),
                ]
            },
        );
    }
    all.kid(button("", say(QuoteLabel::AddLine), move || own::add(desk)))
}

/// What it comes to, in sight at the foot of the screen while somebody types.
fn sum(desk: Desk) -> El {
    let manner = desk.manner();
    let say = move |label: QuoteLabel| desk.label(label);
    let total = move || {
        with_quote(desk, |quoted| {
            let Some(quoted) = quoted else { return String::new() };
            match &quoted.answers.totals {
                Ok(_) if quoted.draft.is_unpriced() => String::new(),
                Ok(totals) => {
                    let total = manner.money(totals.total, quoted.answers.rounding.places);
                    [say(quoted.draft.total_label()), " ", &total, " ", &quoted.answers.currency].concat()
                }
                Err(problem) => ["▲ ", &manner.problem(problem)].concat(),
            }
        })
    };
    let besides = move || {
        with_quote(desk, |quoted| {
            let Some(quoted) = quoted else { return String::new() };
            let mut parts = Vec::new();
            let gaps = quoted.answers.gaps().count();
            if gaps > 0 {
                parts.push(["▲ ", &gaps.to_string(), " ", say(QuoteLabel::LinesWithoutPrice)].concat());
            }
            if let Ok(totals) = &quoted.answers.totals {
                match (totals.margin, totals.margin_share) {
                    (Some(margin), Some(share)) if totals.lines != Money::default() => {
                        let money = manner.money(margin, quoted.answers.rounding.places);
                        let share = manner.exact_percent(share);
                        parts.push([say(QuoteLabel::Margin), " ", &money, ", ", &share].concat());
                    }
                    _ if totals.uncosted > 0 => {
                        let count = totals.uncosted.to_string();
                        parts.push([&count, " ", say(QuoteLabel::LinesWithoutCost)].concat());
                    }
                    _ => {}
                }
            }
            parts.join(" · ")
        })
    };
    el("div", "quote-sum")
        .set("role", "status")
        .kid(el("strong", "quote-total figure").says(total))
        .kid(el("span", "quote-besides").says(besides))
}
