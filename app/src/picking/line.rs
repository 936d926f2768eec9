//! One line of the pick list: tick, quantity, where it lies, what was taken.

use bedwright_job::Edit;
use bedwright_job::papers::{PickRow, PickState};
use bedwright_job::sections::picking::PickField;
use bedwright_job::words::Label;
use leptos::prelude::*;

use crate::desk::Desk;
use crate::parts::live::{El, el, ticked};
use crate::parts::signal::{Kept, Worked};
use crate::parts::typing::typing;

/// One line among all of them.
#[derive(Clone, Copy)]
pub struct Line {
    /// The desk.
    pub desk: Desk,
    /// The item's key.
    pub key: Kept<String>,
    /// Every line, this one among them.
    pub rows: Worked<Vec<PickRow>>,
}

impl Line {
    fn read<T>(self, read: impl FnOnce(&PickRow) -> Option<T>) -> Option<T> {
        self.row().and_then(|row| read(&row))
    }

    #[inline(never)]
    fn row(self) -> Option<PickRow> {
        self.key.with(|key| self.rows.with(|rows| rows.iter().find(|row| row.key == *key).cloned()))
    }

    fn says(self, place: El, read: fn(&PickRow) -> String) -> El {
        place.says(move || self.read(|row| Some(read(row))).unwrap_or_default())
    }

    fn weight(self) -> Option<String> {
        let manner = self.desk.manner();
        self.read(|row| {
            let mark = if row.heavy { "▲ " } else { "" };
            Some(format!("{mark}{} {}", manner.mass(row.each?), manner.label(Label::Each)))
        })
    }

    /// The line on the page.
    pub fn show(self) -> El {
        let desk = self.desk;
        let picked = move || self.read(|row| Some(row.state == PickState::Picked)).unwrap_or(false);
        let changed = move || {
            let picked = self.read(|row| match row.state {
                PickState::Changed { picked } => Some(picked),
                PickState::Open | PickState::Picked => None,
            });
            picked.map(|picked| format!("▲ {} {picked}", desk.label(Label::PickedThenChanged))).unwrap_or_default()
        };
        let name = move || {
            let label = desk.label(Label::Picked);
            self.read(|row| Some(format!("{label}: {} {} {}", row.quantity, row.unit, row.item)))
        };
        let tick = el("input", "").set("type", "checkbox").tells("aria-label", name).holds("checked", picked).on(
            "change",
            move |event| {
                let quantity = untrack(|| self.read(|row| Some(row.quantity)));
                let picked = if ticked(&event) { quantity } else { None };
                desk.edit(Edit::Pick { key: self.key.get(), picked });
            },
        );
        let about = self.says(el("span", ""), |row| row.split.join(" · "));
        let about = el("p", "pick-about")
            .kid(about)
            .when(
                move || self.weight().is_some(),
                move || vec![el("span", "").says(move || self.weight().unwrap_or_default())],
            )
            .when(
                move || self.read(|row| Some(row.returns)).unwrap_or(false),
                move || vec![el("span", "").text(desk.label(Label::ComesBack))],
            );
        let quantity = el("p", "pick-quantity")
            .kid(self.says(el("span", "pick-count figure"), |row| row.quantity.to_string()))
            .text(" ")
            .kid(self.says(el("span", ""), |row| row.unit.to_owned()));
        let what = el("div", "pick-what")
            .kid(self.says(el("p", "pick-item"), |row| row.item.clone()))
            .kid(about)
            .kid(el("p", "pick-changed").set("role", "status").says(changed));
        let texts = el("div", "pick-texts")
            .kid(self.text("pick-text pick-bin", PickField::Bin, Label::BinPlace))
            .kid(self.text("pick-text pick-part", PickField::PartNumber, Label::PartNumber))
            .kid(self.text("pick-text", PickField::Lot, Label::LotAndDate))
            .kid(self.text("pick-text", PickField::Note, Label::Note));
        el("li", "pick-line")
            .marks("pick-done", picked)
            .kid(el("label", "pick-tick").kid(tick))
            .kid(quantity)
            .kid(what)
            .kid(texts)
    }

    /// A text typed on the line.
    fn text(self, class: &str, field: PickField, label: Label) -> El {
        let desk = self.desk;
        let label = desk.label(label);
        let input = typing(
            desk.turned,
            move || self.read(|row| Some(row.line.text(field).to_owned())).unwrap_or_default(),
            move |text| desk.edit(Edit::PickText { key: self.key.get(), field, text }),
            move || desk.pause(),
        )
        .set("autocapitalize", "characters")
        .set("spellcheck", "false")
        .tells("aria-label", move || self.read(|row| Some(format!("{label}: {}", row.item))));
        el("label", class).kid(el("span", "pick-text-label").text(label)).kid(input)
    }
}
