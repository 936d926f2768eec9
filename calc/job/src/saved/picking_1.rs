//! Picking, version 1. Frozen.

use litemap::LiteMap;
use serde_json::Value;

use super::fields::{Taken, Written};
use crate::sections::picking::{PickLine, Picking};

/// As saved.
pub(super) fn write(picking: &Picking) -> Value {
    let mut lines = Written::default();
    for (key, line) in &picking.lines {
        let mut fields = Written::default();
        fields.text_unless_empty("bin", &line.bin);
        fields.text_unless_empty("part_number", &line.part_number);
        fields.text_unless_empty("lot", &line.lot);
        fields.text_unless_empty("note", &line.note);
        if let Some(picked) = line.picked {
            fields.put("picked", picked.into());
        }
        fields.unknown(&line.unknown);
        lines.put(key, fields.whole());
    }
    let mut body = Written::default();
    body.put("lines", lines.whole());
    body.unknown(&picking.unknown);
    body.whole()
}

/// From what was saved, or the field that is wrong.
pub(super) fn read(body: Value) -> Result<Picking, String> {
    let mut body = Taken::of(body);
    let mut lines = LiteMap::new();
    for (key, line) in body.map("lines") {
        lines.insert(key, read_line(line)?);
    }
    Ok(Picking { lines, unknown: body.rest()? })
}

fn read_line(line: Value) -> Result<PickLine, String> {
    let mut line = Taken::of(line);
    let picked = match line.maybe("picked") {
        None | Some(Value::Null) => None,
        Some(count) => {
            let count = count.as_u64().and_then(|count| u32::try_from(count).ok());
            if count.is_none() {
                line.refuse("picked".to_owned());
            }
            count
        }
    };
    Ok(PickLine {
        bin: line.text_or_empty("bin"),
        part_number: line.text_or_empty("part_number"),
        lot: line.text_or_empty("lot"),
        note: line.text_or_empty("note"),
        picked,
        unknown: line.rest()?,
    })
}
