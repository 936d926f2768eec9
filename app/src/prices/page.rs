//! The list: what is asked for, the rows that are found, the file, the way back to the shipped list.

use bedwright_job::prices::{ListEdit, PriceKind, PriceRow};
use bedwright_job::words::PriceLabel;

use super::file::file_part;
use super::row::line;
use super::search::{SHOWN, Search};
use crate::desk::{Desk, new_id};
use crate::parts::choice::choice;
use crate::parts::live::{El, button, el, ticked, value_of};
use crate::parts::signal::Held;
use crate::parts::typing::{text_line, typing};

/// The price list.
pub fn prices_page(desk: Desk) -> El {
    let say = move |label: PriceLabel| desk.label(label);
    let search = Search::new();
    let found = search.found(desk);
    let count = move || {
        let (count, of) = found.with(|found| (found.count, found.of));
        let found = say(if count == 1 { PriceLabel::FoundOne } else { PriceLabel::Found });
        format!("{count} {} {of} {found}", say(PriceLabel::OfRows))
    };
    let more = move || found.with(|found| found.count > found.keys.len());
    let new_row = button("", say(PriceLabel::NewRow), move || {
        let key = format!("own:row-{}", new_id());
        if desk.edit_list("", ListEdit::row(PriceRow::new(&key, PriceKind::Part))) {
            search.fresh.set(Some(key.clone()));
            search.open.set(Some(key));
        }
    });
    el("main", "page prices")
        .kid(el("h1", "page-title").text(say(PriceLabel::Title)))
        .kid(el("p", "").text(say(PriceLabel::About)))
        .kid(asked(desk, search))
        .kid(el("div", "price-state").kid(el("p", "price-count").set("role", "status").says(count)).kid(new_row))
        .kid(
            el("ul", "price-list")
                .each(move || found.with(|found| found.keys.clone()), move |key| line(desk, search, key)),
        )
        .when(
            move || found.with(|found| found.count == 0),
            move || vec![el("p", "").text(say(PriceLabel::NothingFound))],
        )
        .when(more, move || {
            vec![el("p", "").kid(button("", say(PriceLabel::More), move || {
                search.shown.update(|shown| *shown = shown.saturating_add(SHOWN));
            }))]
        })
        .kid(about_list(desk))
        .kid(file_part(desk))
        .kid(start_over(desk))
}

fn about_list(desk: Desk) -> El {
    let say = move |label: PriceLabel| desk.label(label);
    let catalogue = move |read: fn(&bedwright_job::prices::Catalogue) -> String| {
        move || desk.prices.list.with(|list| read(&list.catalogue))
    };
    let title = typing(
        desk.prices.turned,
        catalogue(|catalogue| catalogue.title.clone()),
        move |text| {
            desk.edit_list("title", ListEdit::Title(text));
        },
        move || desk.pause_list(),
    );
    let currency = typing(
        desk.prices.turned,
        catalogue(|catalogue| catalogue.currency.clone()),
        move |text| {
            desk.edit_list("currency", ListEdit::Currency(text.trim().to_ascii_uppercase()));
        },
        move || desk.pause_list(),
    )
    .set("autocapitalize", "characters")
    .set("placeholder", say(PriceLabel::CurrencyHint));
    let version = move || desk.prices.list.with(|list| desk.manner().list_version(&list.catalogue));
    let fields = el("div", "price-about-list")
        .kid(text_line(say(PriceLabel::ListTitle), title))
        .kid(text_line(say(PriceLabel::Currency), currency))
        .kid(
            el("p", "quietly")
                .text(say(PriceLabel::Version))
                .text(" ")
                .kid(el("span", "price-version figure").says(version)),
        );
    el("section", "price-part").kid(el("h2", "rule").text(say(PriceLabel::AboutList))).kid(fields)
}

fn asked(desk: Desk, search: Search) -> El {
    let say = move |label: PriceLabel| desk.label(label);
    let again = move || search.shown.set(SHOWN);
    let kinds = choice(
        say(PriceLabel::KindsTitle),
        move || {
            let kinds = PriceKind::ALL.iter().map(|kind| desk.manner().price_kind(*kind).to_owned());
            std::iter::once(say(PriceLabel::AllKinds).to_owned()).chain(kinds).collect()
        },
        move || {
            let kind = search.kind.get();
            Some(PriceKind::ALL.iter().position(|there| Some(*there) == kind).map_or(0, |at| at + 1))
        },
        move |at| {
            search.kind.set(at.checked_sub(1).and_then(|at| PriceKind::ALL.get(at)).copied());
            again();
        },
    );
    let tick = move |label: PriceLabel, held: Held<bool>| {
        let box_ = el("input", "").set("type", "checkbox").on("change", move |event| {
            held.set(ticked(&event));
            again();
        });
        el("label", "tick").kid(box_).kid(el("span", "").text(say(label)))
    };
    el("div", "price-asked")
        .kid(
            el("input", "search")
                .set("type", "search")
                .set("aria-label", say(PriceLabel::Search))
                .set("placeholder", say(PriceLabel::Search))
                .on("input", move |event| {
                    search.words.set(value_of(&event));
                    search.fresh.set(None);
                    again();
                }),
        )
        .kid(kinds)
        .kid(tick(PriceLabel::GapsOnly, search.gaps))
        .kid(tick(PriceLabel::RetiredToo, search.retired))
}

/// Back to the shipped list, once it is said twice.
fn start_over(desk: Desk) -> El {
    let say = move |label: PriceLabel| desk.label(label);
    let asks = Held::new(false);
    let nothing =
        move || desk.prices.list.with(|list| matches!(ListEdit::reset(list), ListEdit::Rows(rows) if rows.is_empty()));
    el("section", "price-part")
        .kid(el("h2", "rule").text(say(PriceLabel::ResetTitle)))
        .when(
            move || !asks.get(),
            move || {
                vec![
                    el("p", "")
                        .kid(button("", say(PriceLabel::Reset), move || asks.set(true)).holds("disabled", nothing)),
                ]
            },
        )
        .when(
            move || asks.get(),
            move || {
                let yes = button("primary", say(PriceLabel::ResetYes), move || {
                    let reset = desk.prices.list.with_untracked(|list| ListEdit::reset(list));
                    desk.edit_list("", reset);
                    desk.turn_list();
                    asks.set(false);
                });
                let no = button("", say(PriceLabel::ResetNo), move || asks.set(false));
                vec![
                    el("p", "").set("role", "alert").text(say(PriceLabel::ResetAsk)),
                    el("div", "actions").kid(yes).kid(no),
                ]
            },
        )
}
