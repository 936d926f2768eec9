//! Prices, version 1: the rows a job carries, and those of a device's list. Frozen.

use std::sync::Arc;

use bedwright_calc::supply::Money;
use serde_json::Value;

use super::fields::{Taken, Written};
use crate::prices::{Care, Catalogue, JobPrices, Origin, PriceKind, PriceRow, amount, amount_text};

/// As saved: the list's title, currency and state, and rows by their keys.
pub(super) fn write(prices: &JobPrices) -> Value {
    let mut body = Written::default();
    put_catalogue(&mut body, &prices.catalogue);
    put_rows(&mut body, prices.rows());
    body.unknown(&prices.unknown);
    body.whole()
}

/// From what was saved, or the field that is wrong.
pub(super) fn read(body: Value) -> Result<JobPrices, String> {
    let mut body = Taken::of(body);
    let mut prices = JobPrices::default();
    prices.catalogue = take_catalogue(&mut body);
    for row in take_rows(&mut body)? {
        let key = row.key.clone();
        prices.set(&key, Some(Arc::new(row)));
    }
    prices.unknown = body.rest()?;
    Ok(prices)
}

/// The list's title, currency and state.
pub(super) fn put_catalogue(into: &mut Written, catalogue: &Catalogue) {
    into.text_unless_empty("title", &catalogue.title);
    into.text_unless_empty("currency", &catalogue.currency);
    into.revision("list", catalogue.revision.as_ref());
}

/// The same, read.
pub(super) fn take_catalogue(from: &mut Taken) -> Catalogue {
    Catalogue {
        title: from.text_or_empty("title"),
        currency: from.text_or_empty("currency"),
        revision: from.revision("list"),
    }
}

/// Rows by their keys.
pub(super) fn put_rows(into: &mut Written, rows: &[Arc<PriceRow>]) {
    let mut all = Written::default();
    for row in rows {
        let mut fields = Written::default();
        fields.text("kind", row.kind.id());
        fields.text_unless_empty("part_number", &row.part_number);
        fields.text_unless_empty("name", &row.name);
        fields.text_unless_empty("bin", &row.bin);
        fields.text_unless_empty("unit", &row.unit);
        put_amount(&mut fields, "cost", row.cost);
        put_amount(&mut fields, "price", row.price);
        fields.text_unless_empty("tax_class", &row.tax_class);
        fields.entry("size", row.size.as_ref());
        fields.text_unless_empty("superseded_by", &row.superseded_by);
        if !row.care.is_empty() {
            fields.put("care", Value::Array(row.care.iter().map(|care| care.id().into()).collect()));
        }
        fields.flag_unless_no("retired", row.retired);
        if row.origin != Origin::Own {
            fields.text("origin", row.origin.id());
        }
        fields.unknown(&row.unknown);
        all.put(&row.key, fields.whole());
    }
    into.put("rows", all.whole());
}

/// The same, read.
pub(super) fn take_rows(from: &mut Taken) -> Result<Vec<PriceRow>, String> {
    let mut rows = Vec::new();
    for (key, row) in from.map("rows") {
        rows.push(read_row(key, row)?);
    }
    Ok(rows)
}

fn read_row(key: String, row: Value) -> Result<PriceRow, String> {
    let mut row = Taken::of(row);
    if key.is_empty() {
        row.refuse("key".to_owned());
    }
    Ok(PriceRow {
        key,
        kind: row.chosen("kind", PriceKind::Part, PriceKind::of),
        part_number: row.text_or_empty("part_number"),
        name: row.text_or_empty("name"),
        bin: row.text_or_empty("bin"),
        unit: row.text_or_empty("unit"),
        cost: take_amount(&mut row, "cost"),
        price: take_amount(&mut row, "price"),
        tax_class: row.text_or_empty("tax_class"),
        size: row.entry("size"),
        superseded_by: row.text_or_empty("superseded_by"),
        care: take_care(&mut row),
        retired: row.flag_or_no("retired"),
        origin: match row.maybe_text("origin") {
            None => Origin::Own,
            Some(id) => Origin::of(&id).unwrap_or_else(|| {
                row.refuse(["origin: ", &id].concat());
                Origin::Own
            }),
        },
        unknown: row.rest()?,
    })
}

/// An amount, in digits with a point; absent where it isn't known.
fn put_amount(into: &mut Written, key: &str, money: Option<Money>) {
    if let Some(money) = money {
        into.text(key, &amount_text(money, '.'));
    }
}

fn take_amount(from: &mut Taken, key: &str) -> Option<Money> {
    let text = from.maybe_text(key)?;
    match amount(&text, '.') {
        Ok(Some(money)) => Some(money),
        _ => {
            from.refuse([key, ": ", &text].concat());
            None
        }
    }
}

fn take_care(from: &mut Taken) -> Vec<Care> {
    let mut row = PriceRow::default();
    if let Some(all) = from.maybe("care") {
        match all {
            Value::Array(all) => {
                for id in all {
                    // A caution that isn't known would be lost at the next change, so it closes the section instead.
                    match id.as_str().and_then(Care::of) {
                        Some(care) => row.set_care(care, true),
                        None => from.refuse(["care: ", &id.to_string()].concat()),
                    }
                }
            }
            _ => from.refuse("care".to_owned()),
        }
    }
    row.care
}
