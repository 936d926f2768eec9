//! Picking, version 1. Frozen.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::sections::Unknown;
use crate::sections::picking::{PickLine, Picking};

/// As saved.
#[derive(Serialize, Deserialize)]
pub struct Body {
    lines: BTreeMap<String, Line>,
    #[serde(flatten)]
    unknown: Unknown,
}

#[derive(Serialize, Deserialize)]
struct Line {
    #[serde(default, skip_serializing_if = "String::is_empty")]
    bin: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    part_number: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    lot: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    note: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    picked: Option<u32>,
    #[serde(flatten)]
    unknown: Unknown,
}

impl From<&Picking> for Body {
    fn from(picking: &Picking) -> Body {
        let line = |line: &PickLine| Line {
            bin: line.bin.clone(),
            part_number: line.part_number.clone(),
            lot: line.lot.clone(),
            note: line.note.clone(),
            picked: line.picked,
            unknown: line.unknown.clone(),
        };
        Body {
            lines: picking.lines.iter().map(|(key, there)| (key.clone(), line(there))).collect(),
            unknown: picking.unknown.clone(),
        }
    }
}

impl TryFrom<Body> for Picking {
    type Error = String;

    fn try_from(body: Body) -> Result<Picking, String> {
        let line = |line: Line| PickLine {
            bin: line.bin,
            part_number: line.part_number,
            lot: line.lot,
            note: line.note,
            picked: line.picked,
            unknown: line.unknown,
        };
        Ok(Picking {
            lines: body.lines.into_iter().map(|(key, there)| (key, line(there))).collect(),
            unknown: body.unknown,
        })
    }
}
