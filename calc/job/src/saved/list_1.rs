//! A device's price list, version 1: a head, and its rows in parts, so that a change of one row writes few. Frozen.

use std::sync::Arc;

use serde_json::Value;

use super::fields::{Taken, Written};
use super::prices_1::{put_rows, take_rows};
use super::{Unreadable, json};
use crate::prices::{Origin, PriceList, PriceRow};

/// The name of the format.
const FORMAT: &str = "bedwright-prices";
/// The version of a part.
const VERSION: u64 = 1;
/// How many parts rows are kept in.
const PARTS: u32 = 64;
/// The part with title, currency and state.
const HEAD: &str = "head";

/// The part a row is kept in, by its key.
#[must_use]
pub fn list_part(key: &str) -> String {
    // The hash of Fowler, Noll and Vo, 32 bits, variant 1a.
    let hash = key.bytes().fold(0x811c_9dc5_u32, |hash, byte| (hash ^ u32::from(byte)).wrapping_mul(0x0100_0193));
    format!("{:02}", hash % PARTS)
}

/// Every part a list has: the head, then those that hold rows.
#[must_use]
pub fn list_parts() -> Vec<String> {
    std::iter::once(HEAD.to_owned()).chain((0..PARTS).map(|part| format!("{part:02}"))).collect()
}

/// A part of a list as it is kept in storage. Rows as they ship are not written: the page has them.
#[must_use]
pub fn list_text(list: &PriceList, part: &str) -> String {
    let mut fields = Written::default();
    fields.text("format", FORMAT);
    fields.put("version", VERSION.into());
    fields.revision("revision", list.catalogue.revision.as_ref());
    if part == HEAD {
        fields.text_unless_empty("title", &list.catalogue.title);
        fields.text_unless_empty("currency", &list.catalogue.currency);
    } else {
        let rows: Vec<Arc<PriceRow>> = list
            .rows()
            .iter()
            .filter(|row| row.origin != Origin::Shipped && list_part(&row.key) == part)
            .cloned()
            .collect();
        put_rows(&mut fields, &rows);
    }
    if let Some((_, unknown)) = list.unknown.iter().find(|(there, _)| there == part) {
        fields.unknown(unknown);
    }
    fields.whole().to_string()
}

/// Takes a part from storage into a list: its rows in the place of those of their keys.
///
/// # Errors
/// Why it can't be taken in; the list is then as it was, and the caller sets the text aside.
pub fn read_list_part(list: &mut PriceList, part: &str, text: &str) -> Result<(), Unreadable> {
    let mut fields = Taken::of(json(text)?);
    if fields.maybe_text("format").as_deref() != Some(FORMAT) {
        return Err(Unreadable::OtherFormat);
    }
    let version = fields.maybe("version").as_ref().and_then(Value::as_u64);
    match version {
        Some(VERSION) => {}
        Some(version) if version > VERSION => return Err(Unreadable::TooNew { version }),
        _ => return Err(Unreadable::Lacks { what: "version" }),
    }
    let wrong = |_| Unreadable::Lacks { what: "rows" };
    let revision = fields.revision("revision");
    let head = (part == HEAD).then(|| (fields.text_or_empty("title"), fields.text_or_empty("currency")));
    let rows = if part == HEAD { Vec::new() } else { take_rows(&mut fields).map_err(wrong)? };
    let unknown = fields.rest().map_err(wrong)?;
    let gone: Vec<String> = list
        .rows()
        .iter()
        .filter(|row| row.origin != Origin::Shipped && list_part(&row.key) == part)
        .map(|row| row.key.clone())
        .collect();
    list.forget(&gone);
    for row in rows {
        list.put(Arc::new(row));
    }
    if let Some((title, currency)) = head {
        list.catalogue.title = title;
        list.catalogue.currency = currency;
    }
    let counter = |revision: &Option<crate::id::Revision>| revision.as_ref().map_or(0, |revision| revision.counter);
    if counter(&revision) > counter(&list.catalogue.revision) {
        list.catalogue.revision = revision;
    }
    list.unknown.retain(|(there, _)| there != part);
    if !unknown.is_empty() {
        list.unknown.push((part.to_owned(), unknown));
    }
    Ok(())
}
