//! Head, version 1. Frozen.

use bedwright_calc::supply::JobKind;
use serde_json::Value;

use super::fields::{Taken, Written};
use crate::sections::head::Head;

pub(super) const KINDS: [(&str, JobKind); 4] = [
    ("new", JobKind::New),
    ("changeout", JobKind::Changeout),
    ("partial", JobKind::Partial),
    ("top_up", JobKind::TopUp),
];

/// As saved.
pub(super) fn write(head: &Head) -> Value {
    let mut body = Written::default();
    body.text("title", &head.title);
    body.text_unless_empty("customer", &head.customer);
    body.text_unless_empty("site", &head.site);
    body.text_unless_empty("owner", &head.owner);
    body.text_unless_empty("number", &head.number);
    body.text_unless_empty("notes", &head.notes);
    body.text("kind", KINDS.iter().find(|(_, kind)| *kind == head.kind).map_or("new", |(id, _)| id));
    body.text("created", &head.created);
    if let Some(binned) = &head.binned {
        body.text("binned", binned);
    }
    body.flag_unless_no("sample", head.sample);
    body.unknown(&head.unknown);
    body.whole()
}

/// From what was saved, or the field that is wrong.
pub(super) fn read(body: Value) -> Result<Head, String> {
    let mut body = Taken::of(body);
    Ok(Head {
        title: body.text("title"),
        customer: body.text_or_empty("customer"),
        site: body.text_or_empty("site"),
        owner: body.text_or_empty("owner"),
        number: body.text_or_empty("number"),
        notes: body.text_or_empty("notes"),
        kind: body
            .chosen("kind", JobKind::New, |id| KINDS.iter().find(|(known, _)| *known == id).map(|(_, kind)| *kind)),
        created: body.text("created"),
        binned: body.maybe_text("binned"),
        sample: body.flag_or_no("sample"),
        unknown: body.rest()?,
    })
}
