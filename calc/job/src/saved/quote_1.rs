//! Quote, version 1. Frozen.

use std::sync::Arc;

use bedwright_calc::supply::Halves;
use bedwright_calc::supply::quote::LineStanding;
use serde_json::Value;

use super::fields::{Taken, Written};
use super::head_1::KINDS;
use crate::entry::Entry;
use crate::field::{LineField, QuoteField};
use crate::sections::by_field::ByField;
use crate::sections::quote::{
    Fields, HALVES, LabourLine, LineText, PriceBy, Quote, QuoteLine, QuoteText, STANDINGS, TaxClass, halves_id,
    standing_id,
};

/// As saved.
pub(super) fn write(quote: &Quote) -> Value {
    let mut body = Written::default();
    body.text("price_by", quote.way.id());
    body.text("halves", halves_id(quote.halves));
    if let Some(places) = quote.places {
        body.put("places", places.into());
    }
    body.flag_unless_no("freight_by_kilogram", quote.freight_by_kilogram);
    put_entries(&mut body, &quote.entries, QuoteField::id);
    put_texts(&mut body, &quote.texts, QuoteText::id);
    body.put("taxes", Value::Array(quote.taxes.iter().map(write_tax).collect()));
    body.put("labour", Value::Array(quote.labour.iter().map(write_labour).collect()));
    let lines = quote.lines.iter().map(|(key, line)| write_line(key, line)).collect();
    body.put("lines", Value::Array(lines));
    body.unknown(&quote.unknown);
    body.whole()
}

fn write_tax(tax: &TaxClass) -> Value {
    let mut fields = Written::default();
    fields.text("id", tax.id.as_str());
    fields.text("name", &tax.name);
    fields.entry("rate", tax.rate.as_ref());
    fields.unknown(&tax.unknown);
    fields.whole()
}

fn write_labour(row: &LabourLine) -> Value {
    let mut fields = Written::default();
    fields.text("id", row.id.as_str());
    if let Some((id, _)) = KINDS.iter().find(|(_, kind)| Some(*kind) == row.kind) {
        fields.text("kind", id);
    }
    fields.entry("up_to", row.up_to.as_ref());
    fields.entry("hours", row.hours.as_ref());
    fields.unknown(&row.unknown);
    fields.whole()
}

fn write_line(key: &str, line: &QuoteLine) -> Value {
    let mut fields = Written::default();
    fields.text("key", key);
    if line.standing != LineStanding::Firm {
        fields.text("standing", standing_id(line.standing));
    }
    fields.flag_unless_no("on_request", line.on_request);
    if let Some(reason) = &line.removed {
        fields.text("removed", reason);
    }
    fields.text_unless_empty("tax", &line.tax);
    fields.text_unless_empty("instead_of", &line.instead_of);
    put_texts(&mut fields, &line.texts, LineText::id);
    put_entries(&mut fields, &line.entries, LineField::id);
    fields.unknown(&line.unknown);
    fields.whole()
}

fn put_texts<F: Copy + Ord>(into: &mut Written, texts: &ByField<F, String>, id: fn(F) -> &'static str) {
    let mut all = Written::default();
    for (field, text) in texts.iter() {
        all.text(id(*field), text);
    }
    into.put("texts", all.whole());
}

fn put_entries<F: Copy + Ord>(into: &mut Written, entries: &Fields<F>, id: fn(F) -> &'static str) {
    let mut all = Written::default();
    for (field, entry) in entries.iter() {
        all.entry(id(*field), Some(entry));
    }
    into.put("entries", all.whole());
}

/// From what was saved, or the field that is wrong.
pub(super) fn read(body: Value) -> Result<Quote, String> {
    let mut body = Taken::of(body);
    let mut quote = Quote {
        way: body.chosen("price_by", PriceBy::List, PriceBy::of),
        halves: body.chosen("halves", Halves::Up, |id| HALVES.iter().copied().find(|one| halves_id(*one) == id)),
        places: take_places(&mut body),
        freight_by_kilogram: body.flag_or_no("freight_by_kilogram"),
        entries: take_entries(&mut body, QuoteField::of),
        texts: take_texts(&mut body, QuoteText::of),
        ..Quote::default()
    };
    for tax in body.list("taxes") {
        let mut tax = Taken::of(tax);
        let taken =
            TaxClass { id: tax.id("id"), name: tax.text("name"), rate: tax.entry("rate"), unknown: tax.rest()? };
        quote.taxes.push(taken);
    }
    for row in body.list("labour") {
        let mut row = Taken::of(row);
        let kind = row.maybe_text("kind").map(|id| {
            let known = KINDS.iter().find(|(there, _)| *there == id);
            if known.is_none() {
                row.refuse(["kind: ", &id].concat());
            }
            known.map(|(_, kind)| *kind)
        });
        quote.labour.push(LabourLine {
            id: row.id("id"),
            kind: kind.flatten(),
            up_to: row.entry("up_to"),
            hours: row.entry("hours"),
            unknown: row.rest()?,
        });
    }
    for line in body.list("lines") {
        let (key, line) = read_line(line)?;
        if key.is_empty() || quote.line(&key).is_some() {
            body.refuse(["lines: ", &key].concat());
            continue;
        }
        quote.lines.push((key, Arc::new(line)));
    }
    Ok(Quote { unknown: body.rest()?, ..quote })
}

fn read_line(line: Value) -> Result<(String, QuoteLine), String> {
    let mut line = Taken::of(line);
    let key = line.text("key");
    let standing = line.maybe_text("standing").map(|id| {
        let known = STANDINGS.iter().copied().find(|one| standing_id(*one) == id);
        if known.is_none() {
            line.refuse(["standing: ", &id].concat());
        }
        known.unwrap_or(LineStanding::Firm)
    });
    let taken = QuoteLine {
        standing: standing.unwrap_or(LineStanding::Firm),
        on_request: line.flag_or_no("on_request"),
        removed: line.maybe_text("removed"),
        tax: line.text_or_empty("tax"),
        instead_of: line.text_or_empty("instead_of"),
        texts: take_texts(&mut line, LineText::of),
        entries: take_entries(&mut line, LineField::of),
        unknown: line.rest()?,
    };
    Ok((key, taken))
}

fn take_places(body: &mut Taken) -> Option<u32> {
    match body.maybe("places") {
        None | Some(Value::Null) => None,
        Some(places) => {
            let places = places.as_u64().and_then(|places| u32::try_from(places).ok()).filter(|places| *places <= 4);
            if places.is_none() {
                body.refuse("places".to_owned());
            }
            places
        }
    }
}

/// Texts in the order of their fields. One that isn't known would be lost at the next change, so it closes the section.
fn take_texts<F: Copy + Ord>(from: &mut Taken, of: fn(&str) -> Option<F>) -> ByField<F, String> {
    let mut texts = ByField::default();
    for (id, value) in from.map("texts") {
        match (of(&id), value) {
            (Some(field), Value::String(text)) => {
                texts.set(field, Some(text).filter(|text| !text.is_empty()));
            }
            _ => from.refuse(["texts: ", &id].concat()),
        }
    }
    texts
}

fn take_entries<F: Copy + Ord>(from: &mut Taken, of: fn(&str) -> Option<F>) -> Fields<F> {
    let mut entries = Fields::default();
    let mut map = Taken::of(from.any("entries"));
    for id in map.keys() {
        let entry: Option<Entry> = map.entry(&id);
        match of(&id) {
            Some(field) => drop(entries.set(field, entry)),
            None => map.refuse(["entries: ", &id].concat()),
        }
    }
    if let Err(wrong) = map.rest() {
        from.refuse(wrong);
    }
    entries
}
