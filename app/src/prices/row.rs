//! A row of the price list: a line, and its fields while it is changed.

use std::sync::Arc;

use bedwright_job::prices::{Care, ListEdit, Origin, PriceField, PriceKind, PriceList, PriceRow};
use bedwright_job::words::PriceLabel;
use leptos::prelude::*;

use super::field::Field;
use super::search::Search;
use crate::desk::Desk;
use crate::parts::choice::choice;
use crate::parts::live::{El, button, el, ticked};
use crate::parts::signal::{Kept, Worked};

/// A row on the page.
#[derive(Clone, Copy)]
struct Line {
    desk: Desk,
    search: Search,
    key: Kept<String>,
    row: Worked<Option<Arc<PriceRow>>>,
}

/// The row of a key.
pub fn line(desk: Desk, search: Search, key: &str) -> El {
    let wanted = key.to_owned();
    let row = Worked::new(move || desk.prices.list.with(|list| list.row(&wanted).cloned()));
    Line { desk, search, key: Kept::new(key.to_owned()), row }.show()
}

impl Line {
    fn of<T: Default>(self, read: impl FnOnce(&PriceRow) -> T) -> T {
        self.row.with(|row| row.as_ref().map(|row| read(row)).unwrap_or_default())
    }

    fn is_open(self) -> bool {
        self.search.open.with(|open| self.key.with(|key| open.as_ref() == Some(key)))
    }

    fn show(self) -> El {
        let desk = self.desk;
        let manner = desk.manner();
        let say = move |label: PriceLabel| desk.label(label);
        let name = move || {
            let name = self.of(|row| manner.price_name(row));
            if name.is_empty() { say(PriceLabel::NoName).to_owned() } else { name }
        };
        let about = move || self.of(|row| about(desk, row));
        let price = move || {
            self.of(|row| match row.price {
                Some(price) => manner.price_amount(price),
                None => say(PriceLabel::NoPrice).to_owned(),
            })
        };
        let per = move || {
            self.of(|row| {
                let unit = manner.price_unit(row);
                let cost = match row.cost {
                    Some(cost) => format!("{} {}", say(PriceLabel::CostIs), manner.price_amount(cost)),
                    None => say(PriceLabel::NoCost).to_owned(),
                };
                if unit.is_empty() || row.price.is_none() { cost } else { format!("/ {unit} · {cost}") }
            })
        };
        let number = move || self.of(|row| row.part_number.clone());
        let amounts = el("span", "price-amounts")
            .kid(
                el("span", "price-amount figure")
                    .marks("price-gap", move || self.of(|row| row.price.is_none()))
                    .says(price),
            )
            .kid(el("span", "price-per").says(per));
        let head = el("button", "price-head")
            .set("type", "button")
            .tells("aria-expanded", move || Some(self.is_open().to_string()))
            .kid(
                el("span", "price-what")
                    .kid(el("span", "price-number figure").says(number))
                    .kid(el("span", "price-name").says(name))
                    .kid(el("span", "price-about").says(about)),
            )
            .kid(amounts)
            .on("click", move |_| {
                let open = untrack(|| self.is_open());
                self.search.open.set((!open).then(|| self.key.get()));
            });
        el("li", "price-line")
            .marks("price-retired", move || self.of(|row| row.retired))
            .kid(head)
            .when(move || self.is_open(), move || vec![self.form()])
    }

    fn change(self, place: &str, change: impl FnOnce(&mut PriceRow)) {
        let Some(row) = self.row.with_untracked(Option::clone) else { return };
        let mut row = (*row).clone();
        change(&mut row);
        self.desk.edit_list(place, ListEdit::own(row));
    }

    fn form(self) -> El {
        let desk = self.desk;
        let say = move |label: PriceLabel| desk.label(label);
        let key = self.key.get();
        let fields = [
            Field::Price,
            Field::Cost,
            Field::Text(PriceField::PartNumber),
            Field::Text(PriceField::Bin),
            Field::Text(PriceField::Name),
            Field::Text(PriceField::Unit),
            Field::Text(PriceField::TaxClass),
            Field::Size,
            Field::Text(PriceField::SupersededBy),
        ];
        let kinds = choice(
            say(PriceLabel::KindsTitle),
            move || PriceKind::ALL.iter().map(|kind| desk.manner().price_kind(*kind).to_owned()).collect(),
            move || {
                self.row
                    .with(|row| row.as_ref().and_then(|row| PriceKind::ALL.iter().position(|kind| *kind == row.kind)))
            },
            move |at| {
                if let Some(kind) = PriceKind::ALL.get(at) {
                    self.change("", |row| row.kind = *kind);
                }
            },
        );
        let shipped = PriceList::shipped().row(&key).cloned();
        let own_kind = if shipped.is_some() { Vec::new() } else { vec![kinds] };
        let done = button("primary", say(PriceLabel::Done), move || self.search.open.set(None));
        let retire = el("button", "")
            .set("type", "button")
            .says(move || {
                say(if self.of(|row| row.retired) { PriceLabel::Offer } else { PriceLabel::Retire }).to_owned()
            })
            .on("click", move |_| self.change("", |row| row.retired = !row.retired));
        let again = move || match &shipped {
            Some(row) if self.of(|row| row.origin != Origin::Shipped) => {
                let row = row.clone();
                vec![button("quiet", say(PriceLabel::ShippedAgain), move || {
                    desk.edit_list("", ListEdit::Rows(vec![(row.key.clone(), Some(row.clone()))]));
                    desk.turn_list();
                })]
            }
            _ => Vec::new(),
        };
        el("div", "price-form")
            .kid(
                el("div", "price-fields")
                    .kids(fields.iter().map(|field| field.show(desk, &key)).collect())
                    .kids(own_kind),
            )
            .kid(self.cares(say(PriceLabel::Storage), false))
            .kid(self.cares(say(PriceLabel::Hazards), true))
            .kid(el("div", "actions").kid(done).kid(retire).live(again))
    }

    fn cares(self, title: &str, hazard: bool) -> El {
        let manner = self.desk.manner();
        let tick = move |care: Care| {
            let box_ = el("input", "")
                .set("type", "checkbox")
                .holds("checked", move || self.of(|row| row.care.contains(&care)))
                .on("change", move |event| self.change("", |row| row.set_care(care, ticked(&event))));
            el("label", "tick").kid(box_).kid(el("span", "").text(manner.care(care)))
        };
        let ticks = Care::ALL.iter().copied().filter(|care| care.is_hazard() == hazard).map(tick).collect();
        el("fieldset", "price-cares").kid(el("legend", "").text(title)).kids(ticks)
    }
}

/// Kind, bin, state and cautions, in a line.
fn about(desk: Desk, row: &PriceRow) -> String {
    let manner = desk.manner();
    let mut parts = vec![manner.price_kind(row.kind).to_owned()];
    if !row.bin.trim().is_empty() {
        parts.push(format!("{} {}", desk.label(PriceLabel::Bin), row.bin.trim()));
    }
    if row.retired {
        parts.push(desk.label(PriceLabel::Retired).to_owned());
    }
    match row.origin {
        Origin::Shipped => parts.push(desk.label(PriceLabel::Shipped).to_owned()),
        Origin::Invented => parts.push(desk.label(PriceLabel::Invented).to_owned()),
        Origin::Own => {}
    }
    parts.extend(row.care.iter().map(|care| manner.care(*care).to_owned()));
    parts.join(" · ")
}
