//! Head, version 1. Frozen.

use bedwright_calc::supply::JobKind;
use serde::{Deserialize, Serialize};

use crate::sections::Unknown;
use crate::sections::head::Head;

/// As saved.
#[derive(Serialize, Deserialize)]
pub struct Body {
    title: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    customer: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    site: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    owner: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    number: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
    kind: String,
    created: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    binned: Option<String>,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    sample: bool,
    #[serde(flatten)]
    unknown: Unknown,
}

const KINDS: [(&str, JobKind); 4] = [
    ("new", JobKind::New),
    ("changeout", JobKind::Changeout),
    ("partial", JobKind::Partial),
    ("top_up", JobKind::TopUp),
];

impl From<&Head> for Body {
    fn from(head: &Head) -> Body {
        let kind = KINDS.iter().find(|(_, kind)| *kind == head.kind).map_or("new", |(id, _)| id);
        Body {
            title: head.title.clone(),
            customer: head.customer.clone(),
            site: head.site.clone(),
            owner: head.owner.clone(),
            number: head.number.clone(),
            notes: head.notes.clone(),
            kind: kind.to_owned(),
            created: head.created.clone(),
            binned: head.binned.clone(),
            sample: head.sample,
            unknown: head.unknown.clone(),
        }
    }
}

impl TryFrom<Body> for Head {
    type Error = String;

    fn try_from(body: Body) -> Result<Head, String> {
        let kind =
            super::id_of(|id| KINDS.iter().find(|(known, _)| *known == id).map(|(_, kind)| *kind), &body.kind, "kind")?;
        Ok(Head {
            title: body.title,
            customer: body.customer,
            site: body.site,
            owner: body.owner,
            number: body.number,
            notes: body.notes,
            kind,
            created: body.created,
            binned: body.binned,
            sample: body.sample,
            unknown: body.unknown,
        })
    }
}
