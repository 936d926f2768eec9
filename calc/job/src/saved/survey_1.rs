//! Survey, version 1. Frozen.

use std::sync::Arc;

use bedwright_calc::vessel::Opening;
use litemap::LiteMap;
use serde_json::Value;

use super::fields::{Taken, Written};
use crate::field::SurveyField;
use crate::sections::Unknown;
use crate::sections::survey::{
    CollectorKind, DiameterWay, HeadShape, Path, Standing, Survey, SurveyEntry, VesselSurvey,
};

/// Where entries of unknown fields are kept between reading and writing.
const UNKNOWN_ENTRIES: &str = "entries_unknown";

/// As saved.
pub(super) fn write(survey: &Survey) -> Value {
    let mut body = Written::default();
    body.put("vessels", Value::Array(survey.vessels.iter().map(|vessel| write_vessel(vessel)).collect()));
    body.unknown(&survey.unknown);
    body.whole()
}

fn write_vessel(vessel: &VesselSurvey) -> Value {
    let mut unknown = vessel.unknown.clone();
    // By the letters of the field's id.
    let mut entries: Vec<(String, Value)> = Vec::new();
    let mut put = |key: String, value: Value| {
        let at = entries.partition_point(|(there, _)| *there < key);
        entries.insert(at, (key, value));
    };
    match unknown.shift_remove(UNKNOWN_ENTRIES) {
        Some(Value::Object(kept)) => kept.into_iter().for_each(|(key, value)| put(key, value)),
        Some(other) => {
            unknown.insert(UNKNOWN_ENTRIES.to_owned(), other);
        }
        None => {}
    }
    for (field, typed) in &vessel.entries {
        let mut fields = Written::of_entry(&typed.entry);
        fields.text("standing", typed.standing.id());
        put(field.id().to_owned(), fields.whole());
    }
    let mut by_field = Written::default();
    entries.into_iter().for_each(|(key, value)| by_field.put(&key, value));
    let mut fields = Written::default();
    fields.text("id", vessel.id.as_str());
    fields.put("tags", Value::Array(vessel.tags.iter().map(|tag| tag.as_str().into()).collect()));
    fields.text("path", vessel.path.id());
    fields.text("diameter_by", vessel.diameter_way.id());
    fields.text("bottom_head", vessel.bottom_head.id());
    fields.text("top_head", vessel.top_head.id());
    fields.text("opening", vessel.opening.id());
    fields.put("riser", vessel.riser.into());
    fields.text("bottom_collector", vessel.collector.id());
    fields.put("upper_collector", vessel.upper_collector.into());
    fields.put("entries", by_field.whole());
    fields.text_unless_empty("notes", &vessel.notes);
    fields.unknown(&unknown);
    fields.whole()
}

/// From what was saved, or the field that is wrong.
pub(super) fn read(body: Value) -> Result<Survey, String> {
    let mut body = Taken::of(body);
    let mut vessels: Vec<Arc<VesselSurvey>> = Vec::new();
    for vessel in body.list("vessels") {
        let vessel = read_vessel(vessel)?;
        if vessels.iter().any(|there| there.id == vessel.id) {
            return Err(format!("vessel twice: {}", vessel.id));
        }
        vessels.push(Arc::new(vessel));
    }
    Ok(Survey { vessels, unknown: body.rest()? })
}

fn read_vessel(vessel: Value) -> Result<VesselSurvey, String> {
    let mut saved = Taken::of(vessel);
    let mut entries = LiteMap::new();
    let mut kept = Unknown::new();
    for (id, value) in saved.map("entries") {
        match SurveyField::of(&id) {
            None => {
                kept.insert(id, value);
            }
            Some(field) => {
                let mut typed = Taken::of(value);
                let standing = typed.chosen("standing", Standing::Measured, Standing::of);
                match typed.into_entry() {
                    Ok(entry) => {
                        entries.insert(field, SurveyEntry { entry, standing });
                    }
                    Err(what) => saved.refuse(format!("{id}: {what}")),
                }
            }
        }
    }
    let tags = match saved.maybe("tags") {
        None => Vec::new(),
        Some(Value::Array(list)) => {
            let mut tags = Vec::with_capacity(list.len());
            for tag in list {
                match tag {
                    Value::String(text) => tags.push(text),
                    _ => saved.refuse("tags".to_owned()),
                }
            }
            tags
        }
        Some(_) => {
            saved.refuse("tags".to_owned());
            Vec::new()
        }
    };
    let top_head = saved.chosen("top_head", HeadShape::Ellipsoidal, HeadShape::of);
    if top_head == HeadShape::Conical {
        saved.refuse("top_head: conical".to_owned());
    }
    Ok(VesselSurvey {
        id: saved.id("id"),
        tags,
        path: saved.chosen("path", Path::OpenAndEmpty, Path::of),
        diameter_way: saved.chosen("diameter_by", DiameterWay::Nominal, DiameterWay::of),
        bottom_head: saved.chosen("bottom_head", HeadShape::Ellipsoidal, HeadShape::of),
        top_head,
        opening: saved
            .chosen("opening", Opening::TopOnly, |id| Opening::ALL.iter().copied().find(|opening| opening.id() == id)),
        riser: saved.flag("riser"),
        collector: saved.chosen("bottom_collector", CollectorKind::None, CollectorKind::of),
        upper_collector: saved.flag("upper_collector"),
        entries,
        notes: saved.text_or_empty("notes"),
        unknown: unknown_of(saved, kept)?,
    })
}

/// What isn't known of a vessel, its unknown entries among it.
fn unknown_of(saved: Taken, kept: Unknown) -> Result<Unknown, String> {
    let mut unknown = saved.rest()?;
    if unknown.contains_key(UNKNOWN_ENTRIES) {
        return Err(UNKNOWN_ENTRIES.to_owned());
    }
    if !kept.is_empty() {
        unknown.insert(UNKNOWN_ENTRIES.to_owned(), Value::Object(kept));
    }
    Ok(unknown)
}
