//! A text typed on a row of the price list. One that can't be taken stays in its field with the reason, and the row keeps
//! what it said.

use std::sync::Arc;

use bedwright_job::prices::{ListEdit, PriceField, PriceRow, amount, size};
use bedwright_job::words::{Manner, PriceLabel};
use leptos::prelude::*;

use crate::desk::Desk;
use crate::parts::live::{El, el};
use crate::parts::signal::Held;
use crate::parts::typing::typing;

/// Which text.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Field {
    /// A plain text.
    Text(PriceField),
    /// What one costs.
    Cost,
    /// What one sells for.
    Price,
    /// The length it is stocked in, or what a pack holds.
    Size,
}

impl Field {
    fn id(self) -> &'static str {
        match self {
            Field::Text(field) => field.id(),
            Field::Cost => "cost",
            Field::Price => "price",
            Field::Size => "size",
        }
    }

    fn label(self) -> PriceLabel {
        match self {
            Field::Text(PriceField::PartNumber) => PriceLabel::PartNumber,
            Field::Text(PriceField::Name) => PriceLabel::Name,
            Field::Text(PriceField::Bin) => PriceLabel::Bin,
            Field::Text(PriceField::Unit) => PriceLabel::Unit,
            Field::Text(PriceField::TaxClass) => PriceLabel::TaxClass,
            Field::Text(PriceField::SupersededBy) => PriceLabel::SupersededBy,
            Field::Cost => PriceLabel::Cost,
            Field::Price => PriceLabel::Price,
            Field::Size => PriceLabel::Size,
        }
    }

    /// What stands in the field.
    fn text(self, row: &PriceRow, manner: Manner) -> String {
        match self {
            Field::Text(field) => row.text(field).to_owned(),
            Field::Cost => row.cost.map(|money| manner.price_amount(money)).unwrap_or_default(),
            Field::Price => row.price.map(|money| manner.price_amount(money)).unwrap_or_default(),
            Field::Size => row.size.as_ref().map(|size| manner.size_entry(size)).unwrap_or_default(),
        }
    }

    /// What stands in the empty field.
    fn usual(self, row: &PriceRow, manner: Manner) -> String {
        match self {
            Field::Text(PriceField::Name) => manner.price_name(row),
            Field::Text(PriceField::Unit) => manner.price_unit(row),
            Field::Size => manner.label(PriceLabel::SizeHint).to_owned(),
            _ => String::new(),
        }
    }

    /// The row with what was typed, or why it can't be taken.
    fn put(self, row: &PriceRow, text: &str, manner: Manner) -> Result<PriceRow, String> {
        let mut row = row.clone();
        let money = || amount(text, manner.decimal).map_err(|fault| manner.amount_fault(fault));
        match self {
            Field::Text(field) => {
                let letters = text.chars().count();
                if letters > field.longest() {
                    return Err(manner.too_long(letters, field.longest()));
                }
                text.clone_into(row.text_mut(field));
            }
            Field::Cost => row.cost = money()?,
            Field::Price => row.price = money()?,
            Field::Size => {
                row.size = size(text, manner.marks()).map_err(|fault| manner.size_fault(fault).to_owned())?
            }
        }
        Ok(row)
    }

    /// The row with this text as another row has it.
    fn as_in(self, other: &PriceRow, row: &PriceRow) -> PriceRow {
        let mut row = row.clone();
        match self {
            Field::Text(field) => other.text(field).clone_into(row.text_mut(field)),
            Field::Cost => row.cost = other.cost,
            Field::Price => row.price = other.price,
            Field::Size => row.size.clone_from(&other.size),
        }
        row
    }

    /// The field on the page, of the row of a key.
    pub fn show(self, desk: Desk, key: &str) -> El {
        let manner = desk.manner();
        let place = format!("{key}\n{}", self.id());
        let id = format!("price-{}", self.id());
        let row = {
            let key = key.to_owned();
            move || desk.prices.list.with(|list| list.row(&key).cloned())
        };
        let now = row.clone();
        let (draft, drafted) = (place.clone(), place.clone());
        let text = move || {
            let kept = desk.prices.drafts.with_untracked(|drafts| drafts.get(&draft).cloned());
            kept.or_else(|| untrack(&now).map(|row| self.text(&row, manner))).unwrap_or_default()
        };
        // The row as it was when the field was gone to.
        let found = Held::new(None::<Arc<PriceRow>>);
        let (now, gone_to) = (row.clone(), row.clone());
        let write = move |text: String| {
            let Some(row) = untrack(&now) else { return };
            let before = found.get_untracked();
            let taken = self.put(&row, &text, manner);
            let is_draft = taken.is_err();
            desk.prices.drafts.update(|drafts| {
                drafts.remove(&place);
                if is_draft {
                    drafts.insert(place.clone(), text);
                }
            });
            // What can't be taken leaves the row as it was before the typing: half an amount isn't one.
            let changed = taken.unwrap_or_else(|_| self.as_in(before.as_deref().unwrap_or(&row), &row));
            // Noughts behind the mark stay as they are typed.
            if changed != *row || self.text(&changed, manner) != self.text(&row, manner) {
                desk.edit_list(&place, ListEdit::own(changed));
            }
        };
        let now = row.clone();
        let wrong = std::rc::Rc::new(move || {
            let text = desk.prices.drafts.with(|drafts| drafts.get(&drafted).cloned())?;
            self.put(&*now()?, &text, manner).err()
        });
        let (invalid, message) = (wrong.clone(), wrong);
        let label = desk.label(self.label());
        let wrong_id = format!("{id}-wrong");
        let mode = if matches!(self, Field::Cost | Field::Price) { "decimal" } else { "text" };
        let input = typing(desk.prices.turned, text, write, move || desk.pause_list())
            .on("focus", move |_| found.set(untrack(&gone_to)))
            .set("id", &id)
            .set("inputmode", mode)
            .set("spellcheck", "false")
            .set("aria-describedby", &wrong_id)
            .tells("aria-invalid", move || invalid().map(|_| "true".to_owned()))
            .tells("placeholder", move || row().map(|row| self.usual(&row, manner)));
        el("div", "price-field")
            .kid(el("label", "").set("for", &id).text(label))
            .kid(input)
            .kid(el("p", "entry-message").set("id", &wrong_id).says(move || message().unwrap_or_default()))
    }
}
