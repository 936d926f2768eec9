//! Survey, version 1. Frozen.

use std::collections::BTreeMap;
use std::sync::Arc;

use bedwright_calc::vessel::Opening;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use super::{entry_of, id_of, is_empty_map};
use crate::entry::Entry;
use crate::field::SurveyField;
use crate::id::Id;
use crate::sections::Unknown;
use crate::sections::survey::{
    CollectorKind, DiameterWay, HeadShape, Path, Standing, Survey, SurveyEntry, VesselSurvey,
};

/// As saved.
#[derive(Serialize, Deserialize)]
pub struct Body {
    vessels: Vec<Vessel>,
    #[serde(flatten, skip_serializing_if = "is_empty_map")]
    unknown: Unknown,
}

#[derive(Serialize, Deserialize)]
struct Vessel {
    id: Id,
    #[serde(default)]
    tags: Vec<String>,
    path: String,
    diameter_by: String,
    bottom_head: String,
    top_head: String,
    opening: String,
    riser: bool,
    bottom_collector: String,
    upper_collector: bool,
    /// By field; what isn't known is kept.
    entries: BTreeMap<String, Value>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
    #[serde(flatten)]
    unknown: Unknown,
}

#[derive(Serialize)]
struct Typed {
    #[serde(flatten)]
    entry: Entry,
    standing: String,
}

/// Where entries of unknown fields are kept between reading and writing.
const UNKNOWN_ENTRIES: &str = "entries_unknown";

impl From<&Survey> for Body {
    fn from(survey: &Survey) -> Body {
        Body {
            vessels: survey.vessels.iter().map(|vessel| Vessel::from(&**vessel)).collect(),
            unknown: survey.unknown.clone(),
        }
    }
}

impl From<&VesselSurvey> for Vessel {
    fn from(vessel: &VesselSurvey) -> Vessel {
        let mut unknown = vessel.unknown.clone();
        let mut entries: BTreeMap<String, Value> = BTreeMap::new();
        match unknown.remove(UNKNOWN_ENTRIES) {
            Some(Value::Object(kept)) => entries.extend(kept),
            Some(other) => {
                unknown.insert(UNKNOWN_ENTRIES.to_owned(), other);
            }
            None => {}
        }
        for (field, typed) in &vessel.entries {
            let saved = Typed { entry: typed.entry.clone(), standing: typed.standing.id().to_owned() };
            if let Ok(value) = serde_json::to_value(saved) {
                entries.insert(field.id().to_owned(), value);
            }
        }
        Vessel {
            id: vessel.id.clone(),
            tags: vessel.tags.clone(),
            path: vessel.path.id().to_owned(),
            diameter_by: vessel.diameter_way.id().to_owned(),
            bottom_head: vessel.bottom_head.id().to_owned(),
            top_head: vessel.top_head.id().to_owned(),
            opening: vessel.opening.id().to_owned(),
            riser: vessel.riser,
            bottom_collector: vessel.collector.id().to_owned(),
            upper_collector: vessel.upper_collector,
            entries,
            notes: vessel.notes.clone(),
            unknown,
        }
    }
}

impl TryFrom<Body> for Survey {
    type Error = String;

    fn try_from(body: Body) -> Result<Survey, String> {
        let mut vessels: Vec<Arc<VesselSurvey>> = Vec::with_capacity(body.vessels.len());
        for vessel in body.vessels {
            let vessel = VesselSurvey::try_from(vessel)?;
            if vessels.iter().any(|there| there.id == vessel.id) {
                return Err(format!("vessel twice: {}", vessel.id));
            }
            vessels.push(Arc::new(vessel));
        }
        Ok(Survey { vessels, unknown: body.unknown })
    }
}

impl TryFrom<Vessel> for VesselSurvey {
    type Error = String;

    fn try_from(saved: Vessel) -> Result<VesselSurvey, String> {
        let mut entries = BTreeMap::new();
        let mut kept = Unknown::new();
        for (id, value) in saved.entries {
            match SurveyField::of(&id) {
                None => {
                    kept.insert(id, value);
                }
                Some(field) => {
                    let standing = value.get("standing").and_then(Value::as_str).unwrap_or_default();
                    let standing = id_of(Standing::of, standing, "standing")?;
                    let entry = entry_of(value, &["standing"]).map_err(|e| format!("{id}: {e}"))?;
                    entries.insert(field, SurveyEntry { entry, standing });
                }
            }
        }
        let mut unknown = saved.unknown;
        if unknown.contains_key(UNKNOWN_ENTRIES) {
            return Err(UNKNOWN_ENTRIES.to_owned());
        }
        if !kept.is_empty() {
            unknown.insert(UNKNOWN_ENTRIES.to_owned(), Value::Object(kept));
        }
        let top_head = id_of(HeadShape::of, &saved.top_head, "top_head")?;
        if top_head == HeadShape::Conical {
            return Err("top_head: conical".to_owned());
        }
        Ok(VesselSurvey {
            id: saved.id,
            tags: saved.tags,
            path: id_of(Path::of, &saved.path, "path")?,
            diameter_way: id_of(DiameterWay::of, &saved.diameter_by, "diameter_by")?,
            bottom_head: id_of(HeadShape::of, &saved.bottom_head, "bottom_head")?,
            top_head,
            opening: id_of(
                |id| Opening::ALL.iter().copied().find(|opening| opening.id() == id),
                &saved.opening,
                "opening",
            )?,
            riser: saved.riser,
            collector: id_of(CollectorKind::of, &saved.bottom_collector, "bottom_collector")?,
            upper_collector: saved.upper_collector,
            entries,
            notes: saved.notes,
            unknown,
        })
    }
}
