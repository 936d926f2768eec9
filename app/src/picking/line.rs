//! One line of the pick list: tick, quantity, where it lies, what was taken.

use bedwright_job::Edit;
use bedwright_job::papers::{PickRow, PickState};
use bedwright_job::picked::steps_of;
use bedwright_job::sections::picking::PickField;
use bedwright_job::sections::supply::{SupplyEdit, TakenField};
use bedwright_job::words::{Fixed, Label, SupplyLabel};
use leptos::prelude::*;

use crate::desk::Desk;
use crate::parts::live::{El, el, ticked};
use crate::parts::signal::{Held, Kept, Worked};
use crate::parts::typing::{judged, typing};

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
            let index = row.lifting.filter(|index| *index > 1.0);
            let times = index.map(|index| {
                let (by, words) = (manner.decimal(index, 1), manner.label(SupplyLabel::TimesLiftable));
                [", ", &by, " ", words].concat()
            });
            let each = manner.label(Label::Each);
            Some(format!("{mark}{} {each}{}", manner.mass(row.each?), times.unwrap_or_default()))
        })
    }

    /// The line on the page.
    pub fn show(self) -> El {
        let desk = self.desk;
        let picked = move || {
            self.read(|row| Some(matches!(row.state, PickState::Picked | PickState::Short { .. }))).unwrap_or(false)
        };
        let changed = move || {
            let picked = self.read(|row| match row.state {
                PickState::Changed { picked } => Some(picked),
                _ => None,
            });
            let changed = picked.map(|picked| format!("▲ {} {picked}", desk.label(Label::PickedThenChanged)));
            let short = self.read(|row| match row.state {
                PickState::Short { picked } => Some(row.quantity.saturating_sub(picked)),
                _ => None,
            });
            let short = short.map(|short| format!("▲ {} {short}", desk.label(SupplyLabel::ShortBy)));
            changed.or(short).unwrap_or_default()
        };
        let name = move || {
            let label = desk.label(Label::Picked);
            self.read(|row| Some(format!("{label}: {} {} {}", row.quantity, row.unit, row.item)))
        };
        let tick = el("input", "")
            .set("type", "checkbox")
            .tells("aria-label", name)
            .holds("disabled", move || self.frozen())
            .holds("checked", picked)
            .on("change", move |event| {
                let quantity = untrack(|| self.read(|row| Some(row.quantity)));
                let picked = if ticked(&event) { quantity } else { None };
                self.pick(picked, quantity.filter(|_| picked.is_some()));
            });
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
            .kid(self.says(el("span", ""), |row| row.unit.clone()));
        let what = el("div", "pick-what")
            .kid(self.says(el("p", "pick-item"), |row| row.item.clone()))
            .kid(about)
            .kid(el("p", "pick-changed").set("role", "status").says(changed));
        let texts = el("div", "pick-texts")
            .kid(self.text("pick-text pick-bin", PickField::Bin, Label::BinPlace))
            .kid(self.text("pick-text pick-part", PickField::PartNumber, Label::PartNumber))
            .kid(self.text("pick-text", PickField::Lot, SupplyLabel::Lot))
            .kid(self.taken(TakenField::Date, SupplyLabel::Date))
            .kid(self.text("pick-text pick-note", PickField::Note, Label::Note));
        el("li", "pick-line")
            .marks("pick-done", picked)
            .kid(el("label", "pick-tick").kid(tick))
            .kid(quantity)
            .kid(what)
            .kid(texts)
            .kid(self.short())
    }

    /// Whether it was picked and stands as it was.
    fn frozen(self) -> bool {
        self.desk.of_job(|job| !steps_of(job).is_empty())
    }

    fn pick(self, picked: Option<u32>, asked: Option<u32>) {
        let key = self.key.get();
        let asked = Edit::Supply(SupplyEdit::Asked { key: key.clone(), asked });
        self.desk.edit(Edit::All(vec![Edit::Pick { key, picked }, asked]));
    }

    /// Fewer than asked, or something else: folded away until it is needed.
    fn short(self) -> El {
        let desk = self.desk;
        let said = desk.label(SupplyLabel::PickedCount);
        let wrong = Held::new(false);
        let count = typing(
            desk.turned,
            move || self.read(|row| row.line.picked).map(|picked| picked.to_string()).unwrap_or_default(),
            move |text| {
                let (text, quantity) = (text.trim(), untrack(|| self.read(|row| Some(row.quantity))));
                let picked = text.parse::<u32>().ok();
                wrong.set(picked.is_none() && !text.is_empty() || picked > quantity);
                if !wrong.get_untracked() {
                    self.pick(picked, quantity.filter(|_| picked.is_some()));
                }
            },
            move || desk.pause(),
        )
        .set("inputmode", "numeric")
        .holds("disabled", move || self.frozen())
        .tells("aria-label", move || self.read(|row| Some([said, ": ", &row.item].concat())));
        let told = move || if wrong.get() { desk.label(SupplyLabel::CountWrong).to_owned() } else { String::new() };
        let [count, told] = judged(count, told);
        let count = el("label", "pick-text").kid(el("span", "pick-text-label").text(said)).kid(count);
        el("details", "pick-short")
            .kid(el("summary", "").text(desk.label(SupplyLabel::ShortOrInstead)))
            .kid(el("div", "pick-short-texts").kid(count).kid(self.taken(TakenField::Instead, SupplyLabel::Instead)))
            .kid(told)
    }

    /// A text of what the shelf gave.
    fn taken(self, field: TakenField, label: SupplyLabel) -> El {
        let read = move || self.read(|row| Some(row.taken.text(field).to_owned())).unwrap_or_default();
        let edit = move |key, text| Edit::Supply(SupplyEdit::Line { key, field, text });
        self.written("pick-text", self.desk.label(label), read, || None, edit)
    }

    /// A text typed on the line.
    fn text(self, class: &str, field: PickField, label: impl Fixed) -> El {
        let read = move || self.read(|row| Some(row.line.text(field).to_owned())).unwrap_or_default();
        // What the price list says stands in an empty field.
        let listed = move || {
            self.read(|row| match field {
                PickField::Bin => Some(row.shelf.bin.clone()),
                PickField::PartNumber => Some(row.shelf.part_number.clone()),
                _ => None,
            })
        };
        let edit = move |key, text| Edit::PickText { key, field, text };
        self.written(class, self.desk.label(label), read, listed, edit)
    }

    /// A field of text with its name; the item is part of what a screen reader is told.
    fn written(
        self,
        class: &str,
        label: &'static str,
        read: impl Fn() -> String + 'static,
        listed: impl Fn() -> Option<String> + 'static,
        edit: impl Fn(String, String) -> Edit + 'static,
    ) -> El {
        let desk = self.desk;
        let input = typing(desk.turned, read, move |text| desk.edit(edit(self.key.get(), text)), move || desk.pause())
            .set("autocapitalize", "characters")
            .set("spellcheck", "false")
            .holds("disabled", move || self.frozen())
            .tells("placeholder", listed)
            .tells("aria-label", move || self.read(|row| Some([label, ": ", &row.item].concat())));
        el("label", class).kid(el("span", "pick-text-label").text(label)).kid(input)
    }
}
