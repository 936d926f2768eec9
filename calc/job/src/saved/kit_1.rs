//! Kit, version 1. Frozen.

use litemap::LiteMap;
use serde_json::Value;

use super::fields::{Taken, Written};
use crate::field::KitField;
use crate::sections::kit::Kit;

/// As saved: what was typed, and the lines left out.
pub(super) fn write(kit: &Kit) -> Value {
    let mut entries = Written::default();
    for (field, entry) in &kit.entries {
        entries.entry(field.id(), Some(entry));
    }
    let mut left_out = Written::default();
    for (key, reason) in &kit.left_out {
        left_out.text(key, reason);
    }
    let mut body = Written::default();
    body.put("entries", entries.whole());
    body.put("left_out", left_out.whole());
    body.unknown(&kit.unknown);
    body.whole()
}

/// From what was saved, or the field that is wrong.
pub(super) fn read(body: Value) -> Result<Kit, String> {
    let mut body = Taken::of(body);
    let mut entries = LiteMap::new();
    for (id, value) in body.map("entries") {
        // An entry that isn't known would be lost at the next change, so it closes the section instead.
        match KitField::of(&id).map(|field| (field, Taken::of(value).into_entry())) {
            Some((field, Ok(entry))) => {
                entries.insert(field, entry);
            }
            Some((_, Err(what))) => body.refuse([&id, ": ", &what].concat()),
            None => body.refuse(["entry: ", &id].concat()),
        }
    }
    let mut left_out = LiteMap::new();
    for (key, reason) in body.map("left_out") {
        match reason {
            Value::String(reason) => {
                left_out.insert(key, reason);
            }
            _ => body.refuse(["left_out: ", &key].concat()),
        }
    }
    Ok(Kit { entries, left_out, unknown: body.rest()? })
}
