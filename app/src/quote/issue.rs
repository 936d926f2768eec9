//! Issuing, what was issued, what changed between two of them, and the ways out: sheets, a file, a text.

use bedwright_edge::{clipboard, files};
use bedwright_job::papers::{internal_quote_sheet, quote_sheet};
use bedwright_job::quote::{Change, LineChange, QuoteCopy, Side, compared, erp_csv, summary};
use bedwright_job::words::language::is_here;
use bedwright_job::words::{Manner, QuoteLabel};
use leptos::prelude::*;

use crate::desk::{Desk, with_quote};
use crate::language::bring;
use crate::parts::choice::{choice, pick};
use crate::parts::live::{El, button, el, follow};
use crate::parts::sheet::printing;
use crate::parts::signal::Held;

/// What of the quote is looked at: by the number of the revision, nought for the draft.
#[derive(Clone, Copy)]
pub struct Shown {
    desk: Desk,
    number: Held<u32>,
    against: Held<Option<u32>>,
    internal: Held<bool>,
    copied: Held<Option<bool>>,
}

impl Shown {
    /// The draft, for the customer.
    pub fn new(desk: Desk) -> Shown {
        Shown {
            desk,
            number: Held::new(0),
            against: Held::new(None),
            internal: Held::new(false),
            copied: Held::new(None),
        }
    }

    /// A copy by its number.
    fn copy_of(self, number: u32) -> Option<QuoteCopy> {
        with_quote(self.desk, |quoted| {
            let quoted = quoted?;
            let issued = quoted.issued.iter().find(|copy| copy.number == number);
            Some(issued.filter(|_| number > 0).unwrap_or(&quoted.draft).clone())
        })
    }

    fn copy(self) -> Option<QuoteCopy> {
        self.copy_of(self.number.get())
    }

    /// The draft, then what was issued, the latest first: number and name.
    fn all(self) -> Vec<(u32, String)> {
        let desk = self.desk;
        let draft = (0, desk.label(QuoteLabel::ShowDraft).to_owned());
        let issued = with_quote(desk, |quoted| {
            let issued = quoted.map(|quoted| quoted.issued.as_slice()).unwrap_or_default();
            issued.iter().rev().map(|copy| (copy.number, name_of(desk, copy))).collect::<Vec<_>>()
        });
        std::iter::once(draft).chain(issued).collect()
    }
}

fn name_of(desk: Desk, copy: &QuoteCopy) -> String {
    let total = desk.manner().money(copy.totals.total, copy.places);
    let word = desk.label(QuoteLabel::RevisionWord);
    [word, " ", &copy.number.to_string(), " · ", &copy.day, " · ", &total, " ", &copy.currency].concat()
}

/// Issuing, and the list of what was.
pub fn issuing(shown: Shown) -> El {
    let desk = shown.desk;
    let say = move |label: QuoteLabel| desk.label(label);
    let may = move || with_quote(desk, |quoted| quoted.map(|quoted| quoted.may));
    let next = move || {
        let number = match may() {
            Some(Ok(number)) => number,
            _ => with_quote(desk, |quoted| quoted.map_or(1, |quoted| quoted.issued.len() as u32 + 1)),
        };
        [say(QuoteLabel::Issue), " ", &number.to_string()].concat()
    };
    let issue = move || {
        if untrack(may).is_some_and(|may| may.is_ok()) && desk.issue_quote().is_some() {
            let last = || with_quote(desk, |quoted| quoted.and_then(|quoted| Some(quoted.issued.last()?.number)));
            let number = untrack(last);
            shown.number.set(number.unwrap_or(0));
        }
    };
    let why = move || match may() {
        Some(Err(refusal)) => ["▲ ", &desk.manner().refusal(refusal)].concat(),
        _ => String::new(),
    };
    let same = move || {
        with_quote(desk, |quoted| {
            let quoted = quoted?;
            let last = quoted.issued.last()?;
            let same = compared(last, &quoted.draft).iter().all(|line| line.change == Change::Same);
            (same && last.totals == quoted.draft.totals)
                .then(|| [say(QuoteLabel::SameAsIssued), " ", &last.number.to_string(), "."].concat())
        })
        .unwrap_or_default()
    };
    let numbers = move || {
        with_quote(desk, |quoted| {
            let issued = quoted.map(|quoted| quoted.issued.as_slice()).unwrap_or_default();
            issued.iter().rev().map(|copy| copy.number.to_string()).collect::<Vec<_>>()
        })
    };
    let none = move || numbers().is_empty();
    el("section", "quote-part")
        .set("aria-labelledby", "quote-issue")
        .kid(el("h2", "rule").set("id", "quote-issue").text(say(QuoteLabel::IssueTitle)))
        .kid(el("p", "survey-missing").text(say(QuoteLabel::IssueHint)))
        .kid(
            el("button", "primary")
                .set("type", "button")
                .says(next)
                .holds("disabled", move || may().is_none_or(|may| may.is_err()))
                .on("click", move |_| issue()),
        )
        .kid(el("p", "quote-why").set("role", "status").says(move || [why(), same()].concat()))
        .kid(el("h3", "quote-head").text(say(QuoteLabel::Issued)))
        .when(none, move || vec![el("p", "").text(say(QuoteLabel::NoneIssued))])
        .kid(el("ul", "quote-issued").each(numbers, move |number| {
            let number: u32 = digits(number);
            let name = untrack(|| shown.copy_of(number)).map(|copy| name_of(desk, &copy)).unwrap_or_default();
            el("li", "").kid(
                el("button", "")
                    .set("type", "button")
                    .tells("aria-pressed", move || Some((shown.number.get() == number).to_string()))
                    .text(&name)
                    .on("click", move |_| shown.number.set(number)),
            )
        }))
}

/// The number of a key.
fn digits(key: &str) -> u32 {
    key.bytes().fold(0, |number: u32, digit| number.wrapping_mul(10).wrapping_add(u32::from(digit.wrapping_sub(b'0'))))
}

/// The chosen copy on sheets, as a file and as a text; what changed against another one.
pub fn papers(shown: Shown) -> El {
    let desk = shown.desk;
    let say = move |label: QuoteLabel| desk.label(label);
    // A copy that was issued in a language nobody reads here yet: its sheet waits in English for the texts.
    follow(move || {
        let Some(language) = shown.copy().map(|copy| copy.language).filter(|language| !is_here(*language)) else {
            return;
        };
        wasm_bindgen_futures::spawn_local(async move {
            if bring(language).await {
                shown.number.update(|_| ());
            }
        });
    });
    let which = choice(
        say(QuoteLabel::WhichShown),
        move || shown.all().into_iter().map(|(_, name)| name).collect(),
        move || shown.all().iter().position(|(number, _)| *number == shown.number.get()),
        move |at| {
            if let Some((number, _)) = untrack(|| shown.all()).get(at) {
                shown.number.set(*number);
            }
        },
    );
    let sheet = pick(
        say(QuoteLabel::WhichSheet),
        "quote-sheet",
        &[say(QuoteLabel::CustomerSheet), say(QuoteLabel::InternalChoice)],
        move || Some(usize::from(shown.internal.get())),
        move |at| shown.internal.set(at == 1),
    );
    let file = move || {
        let Some(copy) = untrack(|| shown.copy()) else { return };
        let name =
            [say(QuoteLabel::Letters), "-", &safe(&copy.document), "-", &copy.number.to_string(), ".csv"].concat();
        let text = erp_csv(&copy);
        wasm_bindgen_futures::spawn_local(async move {
            if files::should_share() && files::can_share_file(&name, "text/csv") {
                files::share_file(&name, "text/csv", text.as_bytes()).await;
            } else {
                // A browser that refuses says so itself.
                let _ = files::download(&name, "text/csv", text.as_bytes());
            }
        });
    };
    let text = move || shown.copy().map(|copy| summary(&copy, desk.paper_manner())).unwrap_or_default();
    let copy = move || {
        let text = untrack(text);
        wasm_bindgen_futures::spawn_local(async move {
            let done = clipboard::copy_text(&text).await;
            shown.copied.set(Some(done));
        });
    };
    let share = move || {
        let text = untrack(text);
        wasm_bindgen_futures::spawn_local(async move { clipboard::share_text(say(QuoteLabel::Quote), &text).await });
    };
    let mut ways = el("div", "actions").kid(button("", say(QuoteLabel::TakeCsv), file)).kid(button(
        "",
        say(QuoteLabel::CopyText),
        copy,
    ));
    if clipboard::can_share_text() {
        ways = ways.kid(button("", say(QuoteLabel::ShareText), share));
    }
    let told = move || match shown.copied.get() {
        None => String::new(),
        Some(true) => say(QuoteLabel::Copied).to_owned(),
        Some(false) => say(QuoteLabel::NotCopied).to_owned(),
    };
    el("section", "quote-part")
        .kid(compare(shown))
        .kid(el("div", "entries").kid(which).kid(sheet))
        .kid(ways)
        .kid(el("p", "").set("role", "status").says(told))
        .when(
            move || shown.copied.get() == Some(false),
            move || vec![el("pre", "quote-text").set("tabindex", "0").says(text)],
        )
        .kid(printing(desk, move || {
            let Some(copy) = shown.copy() else { return Vec::new() };
            let internal = shown.internal.get();
            let manner = desk.paper_manner();
            vec![if internal { internal_quote_sheet(&copy, manner) } else { quote_sheet(&copy, manner) }]
        }))
}

/// Letters and digits of a name, for a file.
fn safe(name: &str) -> String {
    name.chars().map(|c| if c.is_alphanumeric() { c } else { '-' }).take(40).collect()
}

/// What changed between the chosen copy and another.
fn compare(shown: Shown) -> El {
    let desk = shown.desk;
    let say = move |label: QuoteLabel| desk.label(label);
    let others = move || -> Vec<(Option<u32>, String)> {
        let nothing = (None, "–".to_owned());
        let here = shown.number.get();
        let all = shown.all().into_iter().filter(move |(number, _)| *number != here);
        std::iter::once(nothing).chain(all.map(|(number, name)| (Some(number), name))).collect()
    };
    let with = choice(
        say(QuoteLabel::CompareWith),
        move || others().into_iter().map(|(_, name)| name).collect(),
        move || others().iter().position(|(number, _)| *number == shown.against.get()),
        move |at| {
            if let Some((number, _)) = untrack(others).get(at) {
                shown.against.set(*number);
            }
        },
    );
    let rows = move || -> Vec<El> {
        let (Some(other), Some(here)) = (shown.against.get().and_then(|number| shown.copy_of(number)), shown.copy())
        else {
            return Vec::new();
        };
        // The draft is later than all that was issued.
        let later = |copy: &QuoteCopy| if copy.number == 0 { u32::MAX } else { copy.number };
        let (before, after) = if later(&other) > later(&here) { (here, other) } else { (other, here) };
        vec![table(desk, &before, &after)]
    };
    el("div", "quote-compare")
        .kid(el("h2", "rule").text(say(QuoteLabel::CompareTitle)))
        .kid(el("div", "entries").kid(with))
        .live(rows)
}

fn table(desk: Desk, before: &QuoteCopy, after: &QuoteCopy) -> El {
    let manner = desk.manner();
    let say = |label: QuoteLabel| desk.label(label);
    let changes: Vec<LineChange> =
        compared(before, after).into_iter().filter(|line| line.change != Change::Same).collect();
    let heading =
        |copy: &QuoteCopy| if copy.number == 0 { say(QuoteLabel::ShowDraft).to_owned() } else { name_of(desk, copy) };
    let head = |class: &str, text: &str| el("th", class).set("scope", "col").text(text);
    let heads = el("tr", "")
        .kid(head("", say(QuoteLabel::HeadItem)))
        .kid(head("", ""))
        .kid(head("bill-number", &heading(before)))
        .kid(head("bill-number", &heading(after)));
    let mut rows: Vec<El> =
        changes.iter().map(|line| change_row(desk, line, before.places.max(after.places))).collect();
    let money = |copy: &QuoteCopy| manner.money(copy.totals.total, copy.places);
    if rows.is_empty() && before.totals == after.totals {
        return el("p", "").set("role", "status").text(say(QuoteLabel::CompareNone));
    }
    rows.push(
        el("tr", "quote-total-row")
            .kid(el("th", "").set("scope", "row").text(say(QuoteLabel::Total)))
            .kid(el("td", ""))
            .kid(el("td", "figure bill-number").text(&money(before)))
            .kid(el("td", "figure bill-number").text(&money(after))),
    );
    el("div", "quote-scroll")
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", say(QuoteLabel::CompareTitle))
        .kid(
            el("table", "bill-table quote-changes")
                .set("aria-label", say(QuoteLabel::CompareTitle))
                .kid(el("thead", "").kid(heads))
                .kid(el("tbody", "").kids(rows)),
        )
}

fn change_row(desk: Desk, line: &LineChange, places: u32) -> El {
    let manner = desk.manner();
    let mark = desk.label(match line.change {
        Change::Added => QuoteLabel::ChangeAdded,
        Change::Gone => QuoteLabel::ChangeGone,
        Change::Changed | Change::Same => QuoteLabel::ChangeChanged,
    });
    let sides = (line.before.as_ref(), line.after.as_ref());
    let name = sides.1.or(sides.0).map(|side| side.name.clone()).unwrap_or_default();
    let cell = |side: Option<&Side>| {
        let said = side.map(|side| said(desk, manner, side, places)).unwrap_or_default();
        el("td", "bill-number").kids(said.iter().map(|part| el("span", "quote-side").text(part)).collect())
    };
    el("tr", "")
        .kid(el("th", "").set("scope", "row").text(&name))
        .kid(el("td", "quote-mark").text(mark))
        .kid(cell(sides.0))
        .kid(cell(sides.1))
}

/// A side of a changed line: how many at what price, what may be said besides, what it comes to.
fn said(desk: Desk, manner: Manner, side: &Side, places: u32) -> Vec<String> {
    let say = |label: QuoteLabel| desk.label(label);
    let quantity = side.quantity.map(|quantity| manner.exact(quantity)).unwrap_or_default();
    let price = match (side.price, side.on_request) {
        (Some(price), _) => manner.money(price, places),
        (None, true) => say(QuoteLabel::OnRequest).to_owned(),
        (None, false) => say(QuoteLabel::Gap).to_owned(),
    };
    let mut parts = vec![[&quantity, " ", &side.unit, " × ", &price].concat()];
    if !side.discount.is_zero() {
        parts.push([say(QuoteLabel::Discount), " ", &manner.exact_percent(side.discount)].concat());
    }
    if side.standing != bedwright_calc::supply::quote::LineStanding::Firm {
        parts.push(manner.standing(side.standing).to_owned());
    }
    if !side.tax.is_empty() {
        parts.push(side.tax.clone());
    }
    if !side.note.is_empty() {
        parts.push(side.note.clone());
    }
    parts.extend(side.net.map(|net| manner.money(net, places)));
    parts
}
