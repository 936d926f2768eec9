//! An issued quote, version 1: a record. Frozen.

use bedwright_calc::supply::quote::LineStanding;
use bedwright_calc::supply::{Halves, Money};
use rust_decimal::Decimal;
use serde_json::Value;

use super::fields::{Taken, Written};
use crate::quote::{CopyFreight, CopyLine, CopyTax, CopyTotals, LineGroup, QuoteCopy, decimal_text, read_decimal};
use crate::sections::quote::{HALVES, STANDINGS, halves_id, standing_id};
use crate::words::Language;

/// What the record says it is.
pub(super) const KIND: &str = "quote_issued";

/// As saved.
pub(super) fn write(copy: &QuoteCopy) -> Value {
    let mut fields = Written::default();
    fields.text("id", copy.id.as_str());
    fields.text("kind", KIND);
    fields.put("version", 1.into());
    fields.put("number", copy.number.into());
    fields.text("day", &copy.day);
    for (key, text) in [
        ("valid_until", &copy.valid_until),
        ("catalogue", &copy.catalogue),
        ("document", &copy.document),
        ("title", &copy.title),
        ("customer", &copy.customer),
        ("site", &copy.site),
        ("owner", &copy.owner),
        ("job_kind", &copy.kind),
        ("exclusions", &copy.exclusions),
        ("notes", &copy.notes),
        ("customer_words", &copy.customer_words),
    ] {
        fields.text_unless_empty(key, text);
    }
    // Said since papers are printed in several languages; English where it isn't.
    if copy.language != Language::English {
        fields.text("language", copy.language.tag());
    }
    fields.flag_unless_no("sample", copy.sample);
    fields.text("currency", &copy.currency);
    fields.put("places", copy.places.into());
    fields.text("halves", halves_id(copy.halves));
    fields.put("lines", Value::Array(copy.lines.iter().map(write_line).collect()));
    let removed = copy.removed.iter().map(|(name, reason)| {
        let mut one = Written::default();
        one.text("name", name);
        one.text("reason", reason);
        one.whole()
    });
    fields.put("removed", Value::Array(removed.collect()));
    if let Some(freight) = &copy.freight {
        let mut one = Written::default();
        put_decimal(&mut one, "weight", freight.weight);
        one.flag_unless_no("kilogram", freight.kilogram);
        put_money(&mut one, "rate", freight.rate);
        put_money(&mut one, "amount", Some(freight.amount));
        fields.put("freight", one.whole());
    }
    let taxes = copy.taxes.iter().map(|tax| {
        let mut one = Written::default();
        one.text("name", &tax.name);
        put_decimal(&mut one, "rate", Some(tax.rate));
        put_money(&mut one, "base", Some(tax.base));
        put_money(&mut one, "amount", Some(tax.amount));
        one.whole()
    });
    fields.put("taxes", Value::Array(taxes.collect()));
    fields.put("totals", write_totals(&copy.totals));
    for (key, texts) in [
        ("assumptions", &copy.assumptions),
        ("packs", &copy.packs),
        ("yearly", &copy.yearly),
        ("left_out", &copy.left_out),
    ] {
        fields.put(key, Value::Array(texts.iter().map(|text| text.as_str().into()).collect()));
    }
    fields.whole()
}

fn put_decimal(into: &mut Written, key: &str, value: Option<Decimal>) {
    if let Some(value) = value {
        into.text(key, &decimal_text(value, 0));
    }
}

fn put_money(into: &mut Written, key: &str, value: Option<Money>) {
    put_decimal(into, key, value.map(Money::value));
}

fn write_line(line: &CopyLine) -> Value {
    let mut fields = Written::default();
    fields.text("key", &line.key);
    fields.text("group", line.group.id());
    fields.text("name", &line.name);
    fields.text_unless_empty("part_number", &line.part_number);
    fields.text_unless_empty("note", &line.note);
    put_decimal(&mut fields, "quantity", line.quantity);
    fields.text("unit", &line.unit);
    put_money(&mut fields, "price", line.price);
    put_money(&mut fields, "cost", line.cost);
    put_decimal(&mut fields, "discount", Some(line.discount).filter(|share| !share.is_zero()));
    put_money(&mut fields, "net", line.net);
    put_money(&mut fields, "cost_together", line.cost_together);
    fields.text_unless_empty("tax", &line.tax);
    fields.text("standing", standing_id(line.standing));
    fields.text_unless_empty("instead_of", &line.instead_of);
    fields.flag_unless_no("on_request", line.on_request);
    fields.whole()
}

fn write_totals(totals: &CopyTotals) -> Value {
    let mut fields = Written::default();
    put_money(&mut fields, "lines", Some(totals.lines));
    put_decimal(&mut fields, "discount_share", Some(totals.discount_share));
    put_money(&mut fields, "discount", Some(totals.discount));
    put_money(&mut fields, "net", Some(totals.net));
    put_money(&mut fields, "total", Some(totals.total));
    put_money(&mut fields, "cost", Some(totals.cost));
    put_money(&mut fields, "margin", totals.margin);
    put_decimal(&mut fields, "margin_share", totals.margin_share);
    fields.put("unpriced", totals.unpriced.into());
    fields.put("uncosted", totals.uncosted.into());
    fields.whole()
}

/// From what was saved, or the field that is wrong. What isn't known stays in the record and is passed over.
pub(super) fn read(value: Value) -> Result<QuoteCopy, String> {
    let mut fields = Taken::of(value);
    if fields.text("kind") != KIND || fields.any("version").as_u64() != Some(1) {
        fields.refuse("kind".to_owned());
    }
    let mut text = |key: &str| fields.text_or_empty(key);
    let (valid_until, catalogue, document) = (text("valid_until"), text("catalogue"), text("document"));
    let (title, customer, site) = (text("title"), text("customer"), text("site"));
    let (owner, kind, exclusions) = (text("owner"), text("job_kind"), text("exclusions"));
    let (notes, customer_words) = (text("notes"), text("customer_words"));
    let language = Language::of_tag(&text("language")).unwrap_or_default();
    let mut lines = Vec::new();
    for line in fields.list("lines") {
        lines.push(read_line(line)?);
    }
    let mut removed = Vec::new();
    for one in fields.list("removed") {
        let mut one = Taken::of(one);
        removed.push((one.text("name"), one.text("reason")));
        one.rest()?;
    }
    let freight = match fields.maybe("freight") {
        None | Some(Value::Null) => None,
        Some(value) => {
            let mut one = Taken::of(value);
            let freight = CopyFreight {
                weight: decimal(&mut one, "weight"),
                kilogram: one.flag_or_no("kilogram"),
                rate: decimal(&mut one, "rate").map(Money::new),
                amount: money(&mut one, "amount"),
            };
            one.rest()?;
            Some(freight)
        }
    };
    let mut taxes = Vec::new();
    for one in fields.list("taxes") {
        let mut one = Taken::of(one);
        taxes.push(CopyTax {
            name: one.text("name"),
            rate: money(&mut one, "rate").value(),
            base: money(&mut one, "base"),
            amount: money(&mut one, "amount"),
        });
        one.rest()?;
    }
    let totals = read_totals(fields.any("totals"))?;
    let [assumptions, packs, yearly, left_out] =
        ["assumptions", "packs", "yearly", "left_out"].map(|key| texts(&mut fields, key));
    let number = whole(&mut fields, "number");
    let places = whole(&mut fields, "places");
    let copy = QuoteCopy {
        id: fields.id("id"),
        number,
        day: fields.text("day"),
        valid_until,
        catalogue,
        language,
        document,
        title,
        customer,
        site,
        owner,
        kind,
        sample: fields.flag_or_no("sample"),
        currency: fields.text("currency"),
        places,
        halves: fields.chosen("halves", Halves::Up, |id| HALVES.iter().copied().find(|one| halves_id(*one) == id)),
        lines,
        removed,
        freight,
        taxes,
        totals,
        assumptions,
        packs,
        yearly,
        left_out,
        exclusions,
        notes,
        customer_words,
    };
    fields.rest().map(|_| copy)
}

fn read_line(value: Value) -> Result<CopyLine, String> {
    let mut line = Taken::of(value);
    let taken = CopyLine {
        key: line.text("key"),
        group: line.chosen("group", LineGroup::Own, LineGroup::of),
        name: line.text("name"),
        part_number: line.text_or_empty("part_number"),
        note: line.text_or_empty("note"),
        quantity: decimal(&mut line, "quantity"),
        unit: line.text("unit"),
        price: decimal(&mut line, "price").map(Money::new),
        cost: decimal(&mut line, "cost").map(Money::new),
        discount: decimal(&mut line, "discount").unwrap_or_default(),
        net: decimal(&mut line, "net").map(Money::new),
        cost_together: decimal(&mut line, "cost_together").map(Money::new),
        tax: line.text_or_empty("tax"),
        standing: line
            .chosen("standing", LineStanding::Firm, |id| STANDINGS.iter().copied().find(|one| standing_id(*one) == id)),
        instead_of: line.text_or_empty("instead_of"),
        on_request: line.flag_or_no("on_request"),
    };
    line.rest().map(|_| taken)
}

fn read_totals(value: Value) -> Result<CopyTotals, String> {
    let mut totals = Taken::of(value);
    let taken = CopyTotals {
        lines: money(&mut totals, "lines"),
        discount_share: money(&mut totals, "discount_share").value(),
        discount: money(&mut totals, "discount"),
        net: money(&mut totals, "net"),
        total: money(&mut totals, "total"),
        cost: money(&mut totals, "cost"),
        margin: decimal(&mut totals, "margin").map(Money::new),
        margin_share: decimal(&mut totals, "margin_share"),
        unpriced: whole(&mut totals, "unpriced"),
        uncosted: whole(&mut totals, "uncosted"),
    };
    totals.rest().map(|_| taken)
}

/// A decimal, where it is there.
fn decimal(from: &mut Taken, key: &str) -> Option<Decimal> {
    let text = from.maybe_text(key)?;
    let value = read_decimal(&text);
    if value.is_none() {
        from.refuse([key, ": ", &text].concat());
    }
    value
}

/// An amount that must be there.
fn money(from: &mut Taken, key: &str) -> Money {
    let value = decimal(from, key);
    if value.is_none() {
        from.refuse(key.to_owned());
    }
    Money::new(value.unwrap_or_default())
}

fn whole(from: &mut Taken, key: &str) -> u32 {
    let value = from.any(key).as_u64().and_then(|value| u32::try_from(value).ok());
    if value.is_none() {
        from.refuse(key.to_owned());
    }
    value.unwrap_or(0)
}

fn texts(from: &mut Taken, key: &str) -> Vec<String> {
    let mut texts = Vec::new();
    for value in from.list(key) {
        match value {
            Value::String(text) => texts.push(text),
            _ => from.refuse(key.to_owned()),
        }
    }
    texts
}
