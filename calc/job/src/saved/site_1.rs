//! Site, version 1. Frozen.

use std::sync::Arc;

use bedwright_calc::hydraulics::{Arrangement, Purpose, Regime};
use serde_json::Value;

use super::fields::{Taken, Written};
use crate::field::WaterField;
use crate::id::Id;
use crate::sections::site::{
    ARRANGEMENTS, Entries, REGIMES, SiteConditions, VesselDuty, WaterSource, arrangement_id, regime_id,
};
use crate::sections::survey::{Standing, SurveyEntry};

/// As saved: the site's entries, and of every vessel its duty.
pub(super) fn write(site: &SiteConditions) -> Value {
    let mut body = Written::default();
    body.text("source", site.source.id());
    put_entries(&mut body, &site.entries);
    let mut vessels = Written::default();
    for (id, duty) in &site.vessels {
        let mut fields = Written::default();
        if let Some(purpose) = duty.purpose {
            fields.text("purpose", purpose.id());
        }
        fields.text("regime", regime_id(duty.regime));
        fields.text("arrangement", arrangement_id(duty.arrangement));
        put_entries(&mut fields, &duty.entries);
        fields.text_unless_empty("grounds", &duty.grounds);
        let mut grains = Written::default();
        for (layer, entries) in &duty.grains {
            let mut of_layer = Written::default();
            put_entries(&mut of_layer, entries);
            grains.put(layer.as_str(), of_layer.whole());
        }
        fields.put("grains", grains.whole());
        fields.unknown(&duty.unknown);
        vessels.put(id.as_str(), fields.whole());
    }
    body.put("vessels", vessels.whole());
    body.unknown(&site.unknown);
    body.whole()
}

pub(super) fn put_entries(into: &mut Written, entries: &Entries) {
    let mut all = Written::default();
    for (field, typed) in entries.iter() {
        let mut entry = Written::of_entry(&typed.entry);
        entry.text("standing", typed.standing.id());
        all.put(field.id(), entry.whole());
    }
    into.put("entries", all.whole());
}

/// From what was saved, or the field that is wrong.
pub(super) fn read(body: Value) -> Result<SiteConditions, String> {
    let mut body = Taken::of(body);
    let source = body.chosen("source", WaterSource::Mains, WaterSource::of);
    let entries = take_entries(&mut body);
    let mut vessels: Vec<(Id, Arc<VesselDuty>)> = Vec::new();
    for (id, duty) in body.map("vessels") {
        let id = Id::new(&id);
        let at = vessels.partition_point(|(there, _)| *there < id);
        vessels.insert(at, (id, Arc::new(read_duty(duty)?)));
    }
    Ok(SiteConditions { source, entries, vessels, unknown: body.rest()? })
}

fn read_duty(duty: Value) -> Result<VesselDuty, String> {
    let mut duty = Taken::of(duty);
    let purpose = duty.maybe_text("purpose").map(|id| {
        let known = Purpose::of(&id);
        if known.is_none() {
            duty.refuse(["purpose: ", &id].concat());
        }
        known.unwrap_or(Purpose::Other)
    });
    let regime =
        duty.chosen("regime", Regime::Backwashed, |id| REGIMES.iter().copied().find(|there| regime_id(*there) == id));
    let arrangement = duty.chosen("arrangement", Arrangement::Single, |id| {
        ARRANGEMENTS.iter().copied().find(|there| arrangement_id(*there) == id)
    });
    let entries = take_entries(&mut duty);
    let grounds = duty.text_or_empty("grounds");
    let mut grains: Vec<(Id, Entries)> = Vec::new();
    for (layer, of_layer) in duty.map("grains") {
        let mut of_layer = Taken::of(of_layer);
        let id = Id::new(&layer);
        let at = grains.partition_point(|(there, _)| *there < id);
        grains.insert(at, (id, take_entries(&mut of_layer)));
        if let Some(unknown) = of_layer.rest()?.keys().next() {
            duty.refuse(["grains: ", unknown].concat());
        }
    }
    Ok(VesselDuty { purpose, regime, arrangement, entries, grounds, grains, unknown: duty.rest()? })
}

pub(super) fn take_entries(from: &mut Taken) -> Entries {
    let mut entries = Entries::default();
    for (id, value) in from.map("entries") {
        // An entry that isn't known would be lost at the next change, so it closes the section instead.
        let Some(field) = WaterField::of(&id) else {
            from.refuse(["entry: ", &id].concat());
            continue;
        };
        let mut value = Taken::of(value);
        let standing = value.chosen("standing", Standing::Measured, Standing::of);
        match value.into_entry() {
            Ok(entry) => {
                entries.set(field, Some(SurveyEntry { entry, standing }));
            }
            Err(what) => from.refuse([&id, ": ", &what].concat()),
        }
    }
    entries
}
