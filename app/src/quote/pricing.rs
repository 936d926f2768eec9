//! How prices are made: currency, way, discount, freight, hours, tax classes.

use std::rc::Rc;

use bedwright_job::edit::quote::QuoteEdit;
use bedwright_job::entry::{Dimension, Entry, Unit};
use bedwright_job::field::QuoteField;
use bedwright_job::id::Id;
use bedwright_job::quote::FieldFault;
use bedwright_job::sections::quote::{HALVES, PriceBy, QuoteText, TaxClass};
use bedwright_job::words::QuoteLabel;
use leptos::prelude::*;

use crate::desk::{Desk, new_id, with_quote};
use crate::parts::choice::{choice, pick};
use crate::parts::live::{El, Shared, button, el};
use crate::parts::typing::{text_line, typing};
use crate::vessel::number_line::NumberLine;

/// An entry of the whole quote.
pub fn entry(desk: Desk, field: QuoteField) -> El {
    let manner = desk.manner();
    let fault = move || {
        with_quote(desk, |quoted| {
            quoted?.answers.faults.iter().find(|(there, _)| *there == field).map(|(_, fault)| fault.clone())
        })
    };
    let units: &'static [Unit] = match field.dimension() {
        // Money and plain numbers have no unit.
        Dimension::Ratio if field.usual_unit(false) == Unit::One => &[Unit::One],
        dimension => Unit::of(dimension),
    };
    let way = untrack(|| desk.of_job(|job| Some(job.quote.body.way))).unwrap_or(PriceBy::List);
    NumberLine {
        id: ["quote-", field.id()].concat(),
        label: manner.quote_field(field, way),
        hint: manner.quote_hint(field),
        units,
        usual: field.usual_unit(manner.metric),
        entry: Rc::new(move || desk.of_job(|job| job.quote.body.entries.get(field).cloned())),
        misread: Rc::new(move || match fault() {
            Some(FieldFault::Misread(misread, _)) => Some(misread),
            _ => None,
        }),
        problem: Rc::new(move || match fault() {
            Some(FieldFault::Problem(problem)) => Some(manner.problem(&problem)),
            _ => None,
        }),
        put: Rc::new(move |entry| desk.edit_quote(QuoteEdit::Entry { field, entry })),
        assumed: Rc::new(|| None),
        standing: None,
    }
    .show(desk)
}

/// A text of the whole quote, one line of it.
pub fn text(desk: Desk, field: QuoteText, label: QuoteLabel) -> El {
    let input = typing(
        desk.turned,
        move || desk.of_job(|job| job.quote.body.text(field).to_owned()),
        move |text| desk.edit_quote(QuoteEdit::Text { field, text }),
        move || desk.pause(),
    );
    text_line(desk.label(label), input)
}

/// A number in a row of a table that the quote holds.
pub struct Cell {
    pub id: String,
    pub label: &'static str,
    pub units: &'static [Unit],
    pub usual: Unit,
    pub entry: Shared<Option<Entry>>,
    pub fault: Shared<Option<FieldFault>>,
    pub put: Rc<dyn Fn(Option<Entry>)>,
}

impl Cell {
    /// The cell on the page.
    pub fn show(self, desk: Desk) -> El {
        let manner = desk.manner();
        let Cell { id, label, units, usual, entry, fault, put } = self;
        let misread = fault.clone();
        NumberLine {
            id,
            label,
            hint: "",
            units,
            usual,
            entry,
            misread: Rc::new(move || match misread() {
                Some(FieldFault::Misread(misread, _)) => Some(misread),
                _ => None,
            }),
            problem: Rc::new(move || match fault() {
                Some(FieldFault::Problem(problem)) => Some(manner.problem(&problem)),
                _ => None,
            }),
            put,
            assumed: Rc::new(|| None),
            standing: None,
        }
        .show(desk)
    }
}

const WAYS: [(PriceBy, QuoteLabel); 3] = [
    (PriceBy::List, QuoteLabel::WayList),
    (PriceBy::Markup, QuoteLabel::WayMarkup),
    (PriceBy::Margin, QuoteLabel::WayMargin),
];

/// How prices are made.
pub fn pricing(desk: Desk) -> El {
    let say = move |label: QuoteLabel| desk.label(label);
    let way = move || desk.of_job(|job| Some(job.quote.body.way)).unwrap_or(PriceBy::List);
    let ways = pick(
        say(QuoteLabel::WayTitle),
        "quote-way",
        &WAYS.map(|(_, label)| say(label)),
        move || WAYS.iter().position(|(there, _)| *there == way()),
        move |at| {
            if let Some((way, _)) = WAYS.get(at) {
                desk.edit_quote(QuoteEdit::Way(*way));
            }
        },
    );
    let halves = pick(
        say(QuoteLabel::HalvesTitle),
        "quote-halves",
        &[say(QuoteLabel::HalvesUp), say(QuoteLabel::HalvesEven)],
        move || desk.of_job(|job| HALVES.iter().position(|there| *there == job.quote.body.halves)),
        move |at| {
            if let Some(halves) = HALVES.get(at) {
                desk.edit_quote(QuoteEdit::Halves(*halves));
            }
        },
    );
    let places = choice(
        say(QuoteLabel::Places),
        move || {
            let by_code = say(QuoteLabel::PlacesByCode).to_owned();
            std::iter::once(by_code).chain((0..=4).map(|places: u32| places.to_string())).collect()
        },
        move || desk.of_job(|job| Some(job.quote.body.places.map_or(0, |places| places as usize + 1))),
        move |at| desk.edit_quote(QuoteEdit::Places(at.checked_sub(1).and_then(|places| u32::try_from(places).ok()))),
    );
    let by = choice(
        say(QuoteLabel::FreightBy),
        move || vec![say(QuoteLabel::ByPound).to_owned(), say(QuoteLabel::ByKilogram).to_owned()],
        move || desk.of_job(|job| Some(usize::from(job.quote.body.freight_by_kilogram))),
        move |at| desk.edit_quote(QuoteEdit::FreightByKilogram(at == 1)),
    );
    let take = move || {
        if let Some(ways) = desk.latest_ways() {
            desk.edit_quote(QuoteEdit::Whole(std::sync::Arc::new(ways)));
            desk.turned.update(|n| *n = n.wrapping_add(1));
        }
    };
    let untouched = move || desk.of_job(|job| job.quote.body == Default::default());
    let offered = untrack(|| desk.latest_ways()).is_some();
    el("section", "quote-part")
        .set("aria-labelledby", "quote-pricing")
        .kid(el("h2", "rule").set("id", "quote-pricing").text(say(QuoteLabel::PricingTitle)))
        .when(move || offered && untouched(), move || vec![button("", say(QuoteLabel::TakeOver), take)])
        .kid(el("div", "entries").kid(text(desk, QuoteText::Currency, QuoteLabel::Currency)).kid(places).kid(halves))
        .kid(ways)
        .kid(
            el("div", "entries")
                // Its name hangs on the way, so it is drawn anew with it.
                .each(
                    move || if way() == PriceBy::List { Vec::new() } else { vec![way().id().to_owned()] },
                    move |_| entry(desk, QuoteField::Share),
                )
                .kid(entry(desk, QuoteField::Discount)),
        )
        .kid(
            el("div", "entries")
                .kid(entry(desk, QuoteField::FreightRate))
                .kid(by)
                .kid(entry(desk, QuoteField::FreightLeast))
                .kid(entry(desk, QuoteField::FreightWeight)),
        )
        .kid(taxes(desk))
}

/// The tax classes.
fn taxes(desk: Desk) -> El {
    let say = move |label: QuoteLabel| desk.label(label);
    let classes = move || desk.of_job(|job| job.quote.body.taxes.clone());
    let ids = move || classes().iter().map(|tax| tax.id.to_string()).collect::<Vec<_>>();
    let add = move || {
        let mut all = untrack(classes);
        all.push(TaxClass { id: new_id(), name: String::new(), rate: None, unknown: Default::default() });
        desk.edit_quote(QuoteEdit::Taxes(all));
    };
    el("div", "quote-table")
        .kid(el("h3", "quote-head").text(say(QuoteLabel::TaxTitle)))
        .kid(el("p", "survey-missing").text(say(QuoteLabel::TaxHint)))
        .kid(el("ul", "quote-rows").each(ids, move |id| tax_row(desk, Id::new(id))))
        .kid(button("", say(QuoteLabel::TaxAdd), add))
}

fn tax_row(desk: Desk, id: Id) -> El {
    let id = crate::parts::signal::Kept::new(id);
    let place = move || id.with(|id| desk.of_job(|job| job.quote.body.taxes.iter().position(|tax| tax.id == *id)));
    let read = move || id.with(|id| desk.of_job(|job| job.quote.body.taxes.iter().find(|tax| tax.id == *id).cloned()));
    let change = move |change: &dyn Fn(&mut TaxClass)| {
        let mut all = untrack(|| desk.of_job(|job| job.quote.body.taxes.clone()));
        if let Some(tax) = id.with(|id| all.iter_mut().find(|tax| tax.id == *id)) {
            change(tax);
        }
        desk.edit_quote(QuoteEdit::Taxes(all));
    };
    let name = typing(
        desk.turned,
        move || read().map(|tax| tax.name).unwrap_or_default(),
        move |text| change(&|tax| tax.name.clone_from(&text)),
        move || desk.pause(),
    );
    let rate = Cell {
        id: ["tax-", id.get().as_str()].concat(),
        label: desk.label(QuoteLabel::TaxRate),
        units: Unit::of(Dimension::Ratio),
        usual: Unit::Percent,
        entry: Rc::new(move || read().and_then(|tax| tax.rate)),
        fault: Rc::new(move || {
            let at = place()?;
            with_quote(desk, |quoted| {
                quoted?.answers.tax_faults.iter().find(|(there, _)| *there == at).map(|(_, fault)| fault.clone())
            })
        }),
        put: Rc::new(move |entry| change(&|tax| tax.rate.clone_from(&entry))),
    };
    let remove = move || {
        let mut all = untrack(|| desk.of_job(|job| job.quote.body.taxes.clone()));
        id.with(|id| all.retain(|tax| tax.id != *id));
        desk.edit_quote(QuoteEdit::Taxes(all));
    };
    el("li", "quote-row").kid(text_line(desk.label(QuoteLabel::TaxName), name)).kid(rate.show(desk)).kid(button(
        "quiet",
        desk.label(QuoteLabel::TaxRemove),
        remove,
    ))
}
