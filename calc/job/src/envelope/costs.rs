//! Costs and margins: what of a job stays with who made the offer, unless it is asked for by name.
//!
//! A quote that is being made is kept back as a whole, since its ways of pricing are the margin. Of the rows of the price
//! list and of issued quotes everything but costs and margins goes along.

use serde_json::{Map, Value};

use crate::saved::{self, ISSUED};

/// The field of a section that says what was kept back of it, and what it says.
const MARK: &str = "kept_back";
const COSTS: &str = "costs";
/// All that a row of the price list says when it travels without its cost. What isn't known might be one.
const OF_ROWS: [&str; 12] = [
    "kind",
    "part_number",
    "name",
    "bin",
    "unit",
    "price",
    "tax_class",
    "size",
    "superseded_by",
    "care",
    "retired",
    "origin",
];

/// Whether a section came, or was taken over, without its costs.
pub(crate) fn are_kept_back(section: &Value) -> bool {
    section.get(MARK).and_then(Value::as_str) == Some(COSTS)
}

/// Takes the mark of a section away: its costs are there again.
pub(crate) fn are_there_again(section: &mut Map<String, Value>) {
    section.shift_remove(MARK);
}

/// A section of prices without its costs, marked so.
pub(super) fn without(section: &mut Value) {
    let Some(map) = section.as_object_mut() else { return };
    if let Some(body) = map.get_mut("body") {
        without_in(body);
    }
    if let Some(base) = map.get("base").and_then(Value::as_str) {
        // What doesn't read as what it should be might hold anything.
        match saved::exact::value(base) {
            Ok(mut base) => {
                without_in(&mut base);
                map.insert("base".to_owned(), base.to_string().into());
            }
            Err(_) => drop(map.shift_remove("base")),
        }
    }
    map.insert(MARK.to_owned(), COSTS.into());
}

fn without_in(body: &mut Value) {
    for (_, row) in rows_of(body) {
        if let Value::Object(row) = row {
            row.retain(|key, _| OF_ROWS.contains(&key.as_str()));
        }
    }
}

fn rows_of(body: &mut Value) -> impl Iterator<Item = (&String, &mut Value)> {
    body.get_mut("rows").and_then(Value::as_object_mut).into_iter().flat_map(Map::iter_mut)
}

/// Gives a body that came without its costs those that stand here, so that they don't seem to have been taken away.
pub(crate) fn put_back(came: &mut Value, here: &Value) {
    for (key, row) in rows_of(came) {
        let Some(own) = here.get("rows").and_then(|rows| rows.get(key)).and_then(Value::as_object) else { continue };
        let Value::Object(row) = row else { continue };
        for (field, value) in own.iter().filter(|(field, _)| !OF_ROWS.contains(&field.as_str())) {
            if !row.contains_key(field) {
                row.insert(field.clone(), value.clone());
            }
        }
    }
}

/// An issued quote as its customer sees it: without what its lines cost and what is kept of it. Nothing for one of a later
/// version, in which costs may stand anywhere.
pub(super) fn issued_without(record: &Value) -> Option<Value> {
    let mut record = record.as_object()?.clone();
    if record.get("version").and_then(Value::as_u64) != Some(1) {
        return None;
    }
    let mut lines = 0_u64;
    for line in record.get_mut("lines").and_then(Value::as_array_mut).into_iter().flatten() {
        lines += 1;
        if let Value::Object(line) = line {
            line.shift_remove("cost");
            line.shift_remove("cost_together");
        }
    }
    if let Some(Value::Object(totals)) = record.get_mut("totals") {
        totals.shift_remove("margin");
        totals.shift_remove("margin_share");
        // So it says of itself that nobody knows what its lines cost.
        totals.insert("cost".to_owned(), "0".into());
        totals.insert("uncosted".to_owned(), lines.into());
    }
    record.insert(MARK.to_owned(), COSTS.into());
    Some(Value::Object(record))
}

/// Whether one of two records of one id is the other as its customer sees it.
pub(crate) fn is_same_issue(one: &Value, other: &Value) -> bool {
    let kind = |value: &Value| value.get("kind").and_then(Value::as_str) == Some(ISSUED);
    let seen = |full: &Value, without: &Value| {
        are_kept_back(without) && !are_kept_back(full) && issued_without(full).as_ref() == Some(without)
    };
    kind(one) && kind(other) && (seen(one, other) || seen(other, one))
}
