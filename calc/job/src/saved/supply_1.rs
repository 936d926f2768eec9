//! Supply, version 1. Frozen.

use bedwright_calc::supply::lifting::Grip;
use litemap::LiteMap;
use serde_json::Value;

use super::fields::{Taken, Written};
use crate::field::SupplyField;
use crate::sections::supply::{MaterialSupply, PackSupply, Supply, TakenLine};

/// As saved.
pub(super) fn write(supply: &Supply) -> Value {
    let mut body = Written::default();
    let mut materials = Written::default();
    for (id, material) in &supply.materials {
        let mut fields = Written::default();
        fields.flag_unless_no("per_vessel", material.per_vessel);
        fields.entry("opened", material.opened.as_ref());
        let mut packs = Written::default();
        for (id, pack) in &material.packs {
            let mut of_pack = Written::default();
            if let Some(offered) = pack.offered {
                of_pack.put("offered", offered.into());
            }
            put_count(&mut of_pack, "locked", pack.locked);
            of_pack.unknown(&pack.unknown);
            packs.put(id, of_pack.whole());
        }
        fields.put("packs", packs.whole());
        fields.unknown(&material.unknown);
        materials.put(id, fields.whole());
    }
    body.put("materials", materials.whole());
    let mut entries = Written::default();
    for (field, entry) in &supply.entries {
        entries.put(field.id(), Written::of_entry(entry).whole());
    }
    body.put("entries", entries.whole());
    body.text("grip", supply.grip.id());
    let mut lines = Written::default();
    for (key, line) in &supply.lines {
        let mut fields = Written::default();
        put_count(&mut fields, "asked", line.asked);
        fields.text_unless_empty("instead", &line.instead);
        fields.text_unless_empty("date", &line.date);
        fields.unknown(&line.unknown);
        lines.put(key, fields.whole());
    }
    body.put("lines", lines.whole());
    body.unknown(&supply.unknown);
    body.whole()
}

fn put_count(into: &mut Written, key: &str, count: Option<u32>) {
    if let Some(count) = count {
        into.put(key, count.into());
    }
}

/// From what was saved, or the field that is wrong.
pub(super) fn read(body: Value) -> Result<Supply, String> {
    let mut body = Taken::of(body);
    let mut materials = LiteMap::new();
    for (id, material) in body.map("materials") {
        materials.insert(id, read_material(material)?);
    }
    let mut entries = LiteMap::new();
    for (id, value) in body.map("entries") {
        // An entry that isn't known would be lost at the next change, so it closes the section instead.
        let Some(field) = SupplyField::of(&id) else {
            body.refuse(["entry: ", &id].concat());
            continue;
        };
        match Taken::of(value).into_entry() {
            Ok(entry) => {
                entries.insert(field, entry);
            }
            Err(what) => body.refuse([&id, ": ", &what].concat()),
        }
    }
    let grip = body.chosen("grip", Grip::Poor, Grip::of);
    let mut lines = LiteMap::new();
    for (key, line) in body.map("lines") {
        let mut line = Taken::of(line);
        let (asked, instead) = (take_count(&mut line, "asked"), line.text_or_empty("instead"));
        let date = line.text_or_empty("date");
        lines.insert(key, TakenLine { asked, instead, date, unknown: line.rest()? });
    }
    Ok(Supply { materials, entries, grip, lines, unknown: body.rest()? })
}

fn read_material(material: Value) -> Result<MaterialSupply, String> {
    let mut material = Taken::of(material);
    let (per_vessel, opened) = (material.flag_or_no("per_vessel"), material.entry("opened"));
    let mut packs = LiteMap::new();
    for (id, pack) in material.map("packs") {
        let mut pack = Taken::of(pack);
        let offered = match pack.maybe("offered") {
            None => None,
            Some(Value::Bool(offered)) => Some(offered),
            Some(_) => {
                pack.refuse("offered".to_owned());
                None
            }
        };
        let locked = take_count(&mut pack, "locked");
        packs.insert(id, PackSupply { offered, locked, unknown: pack.rest()? });
    }
    Ok(MaterialSupply { per_vessel, packs, opened, unknown: material.rest()? })
}

fn take_count(from: &mut Taken, key: &str) -> Option<u32> {
    let value = from.maybe(key)?;
    let count = value.as_u64().and_then(|count| u32::try_from(count).ok());
    if count.is_none() {
        from.refuse(key.to_owned());
    }
    count
}
