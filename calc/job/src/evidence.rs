//! What somebody saw of a bed, as records: drain checks, points read off a paper, clear-tube tests, clean pressure drops.
//! Only ever added to; one that was wrong is withdrawn by another.

use bedwright_calc::hydraulics::{CleanDrop, DrainCheck, PaperPoint};
use bedwright_calc::quantity::{
    Basis, Known, Source, cubic_metres_per_second, kelvins, metres_per_second, pascals, seconds,
};
use litemap::LiteMap;
use serde_json::{Map, Value};

use crate::care::visit::{VISIT, Visit};
use crate::entry::{Dimension, Entry, Understood, Unit};
use crate::id::Id;
use crate::job::{Job, Record};

/// What kind of evidence.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum EvidenceKind {
    /// A backwash somebody watched at the drain.
    DrainCheck,
    /// A point read off the paper that came with the medium.
    PaperPoint,
    /// A test in a clear tube, or through a sight glass.
    TubeTest,
    /// Pressure lost over the clean bed, read in service.
    CleanDrop,
}

impl EvidenceKind {
    /// All of them.
    pub const ALL: &'static [EvidenceKind] =
        &[EvidenceKind::DrainCheck, EvidenceKind::PaperPoint, EvidenceKind::TubeTest, EvidenceKind::CleanDrop];

    /// The permanent id.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            EvidenceKind::DrainCheck => "drain_check",
            EvidenceKind::PaperPoint => "paper_point",
            EvidenceKind::TubeTest => "tube_test",
            EvidenceKind::CleanDrop => "clean_drop",
        }
    }

    /// Whether it is of one layer: a point or a test.
    #[must_use]
    pub const fn is_of_layer(self) -> bool {
        matches!(self, EvidenceKind::PaperPoint | EvidenceKind::TubeTest)
    }
}

/// One piece of evidence, as it was written down.
#[derive(Clone, Debug, PartialEq)]
pub struct Evidence {
    /// The record's id.
    pub id: Id,
    /// What kind.
    pub kind: EvidenceKind,
    /// The day, as `2026-11-24`.
    pub day: String,
    /// The vessel.
    pub vessel: Id,
    /// The layer, for a point or a test.
    pub layer: Option<Id>,
    /// The flow, or the flow per area.
    pub flow: Entry,
    /// The water's temperature.
    pub temperature: Entry,
    /// How long a drain check ran.
    pub minutes: Option<Entry>,
    /// Whether grains came.
    pub grains: bool,
    /// The expansion that was read.
    pub expansion: Option<Entry>,
    /// The pressure lost over the bed that was read.
    pub drop: Option<Entry>,
    /// Whether it is what a visit says of the drain; then it goes with the visit.
    pub of_visit: bool,
}

/// The key under which a record says what it is.
const KIND: &str = "kind";
/// What records of evidence, and those that take one back, say they are.
pub(crate) const RECORDS: &[&str] = &["drain_check", "paper_point", "tube_test", "clean_drop", WITHDRAWN];

/// A record that takes another back.
const WITHDRAWN: &str = "withdrawn";

impl Evidence {
    /// It as a record of a job.
    #[must_use]
    pub fn record(&self) -> Record {
        let mut map = Map::new();
        let mut text = |key: &str, value: &str| {
            map.insert(key.to_owned(), value.into());
        };
        text("id", self.id.as_str());
        text(KIND, self.kind.id());
        text("day", &self.day);
        text("vessel", self.vessel.as_str());
        if let Some(layer) = &self.layer {
            text("layer", layer.as_str());
        }
        map.insert("flow".to_owned(), of_entry(&self.flow));
        map.insert("temperature".to_owned(), of_entry(&self.temperature));
        if let Some(minutes) = &self.minutes {
            map.insert("minutes".to_owned(), of_entry(minutes));
        }
        map.insert("grains".to_owned(), self.grains.into());
        if let Some(expansion) = &self.expansion {
            map.insert("expansion".to_owned(), of_entry(expansion));
        }
        if let Some(drop) = &self.drop {
            map.insert("drop".to_owned(), of_entry(drop));
        }
        Record { id: self.id.clone(), value: Value::Object(map) }
    }
}

/// A record that takes a piece of evidence back.
#[must_use]
pub fn withdrawal(id: Id, of: &Id, day: &str) -> Record {
    let mut map = Map::new();
    for (key, value) in [("id", id.as_str()), (KIND, WITHDRAWN), ("of", of.as_str()), ("day", day)] {
        map.insert(key.to_owned(), value.into());
    }
    Record { id, value: Value::Object(map) }
}

/// The records that other records took back, by their ids.
#[must_use]
pub fn withdrawn(job: &Job) -> LiteMap<String, ()> {
    let mut gone = LiteMap::new();
    for record in &job.records {
        if record.value.get(KIND).and_then(Value::as_str) == Some(WITHDRAWN)
            && let Some(of) = record.value.get("of").and_then(Value::as_str)
        {
            gone.insert(of.to_owned(), ());
        }
    }
    gone
}

/// The evidence of a vessel that still stands, in the order it was added. Records of other kinds are passed over.
#[must_use]
pub fn evidence_of(job: &Job, vessel: &Id) -> Vec<Evidence> {
    let text = |value: &Value, key: &str| value.get(key).and_then(Value::as_str).unwrap_or_default().to_owned();
    let taken_back = withdrawn(job);
    let mut found: Vec<Evidence> = Vec::new();
    for record in &job.records {
        let value = &record.value;
        let kind = text(value, KIND);
        if taken_back.get(record.id.as_str()).is_some() {
            continue;
        }
        if kind == VISIT {
            let check = Visit::of(record).filter(|visit| visit.vessel == *vessel).and_then(|visit| visit.drain_check());
            found.extend(check);
            continue;
        }
        let Some(kind) = EvidenceKind::ALL.iter().copied().find(|known| known.id() == kind) else { continue };
        if text(value, "vessel") != vessel.as_str() {
            continue;
        }
        let (Some(flow), Some(temperature)) = (entry(value, "flow"), entry(value, "temperature")) else { continue };
        let layer = text(value, "layer");
        found.push(Evidence {
            id: record.id.clone(),
            kind,
            day: text(value, "day"),
            vessel: vessel.clone(),
            layer: (!layer.is_empty()).then(|| Id::new(&layer)),
            flow,
            temperature,
            minutes: entry(value, "minutes"),
            grains: value.get("grains").and_then(Value::as_bool).unwrap_or(false),
            expansion: entry(value, "expansion"),
            drop: entry(value, "drop"),
            of_visit: false,
        });
    }
    found
}

/// Evidence in figures.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct EvidenceRead {
    /// Backwashes watched at the drain.
    pub checks: Vec<DrainCheck>,
    /// Points off papers and clear tubes.
    pub points: Vec<PaperPoint>,
    /// Clean pressure drops, each with its record's id.
    pub drops: Vec<(Id, CleanDrop)>,
}

/// What the evidence says in figures; `layers` are the ids of the plan's layers, bottom first. What makes no sense, or
/// is of a layer that is gone, is left out.
#[must_use]
pub fn read_evidence(evidence: &[Evidence], layers: &[Id]) -> EvidenceRead {
    let mut read = EvidenceRead::default();
    for piece in evidence {
        let Some(temperature) = measured(&piece.temperature, Dimension::Temperature) else { continue };
        let temperature = known(kelvins(temperature));
        match piece.kind {
            EvidenceKind::DrainCheck => {
                let minutes = piece.minutes.as_ref().and_then(|entry| measured(entry, Dimension::Time));
                if let (Some(flow), Some(minutes)) = (measured(&piece.flow, Dimension::VolumeFlow), minutes) {
                    read.checks.push(DrainCheck {
                        flow: known(cubic_metres_per_second(flow)),
                        temperature,
                        minutes: known(seconds(minutes)),
                        grains: piece.grains,
                    });
                }
            }
            EvidenceKind::PaperPoint | EvidenceKind::TubeTest => {
                let expansion = piece.expansion.as_ref().and_then(|entry| measured(entry, Dimension::Ratio));
                let layer = piece.layer.as_ref().and_then(|id| layers.iter().position(|there| there == id));
                if let (Some(flow), Some(expansion), Some(layer)) =
                    (measured(&piece.flow, Dimension::FlowPerArea), expansion, layer)
                {
                    read.points.push(PaperPoint {
                        layer,
                        flow_per_area: known(metres_per_second(flow)),
                        temperature,
                        expansion: known(expansion),
                    });
                }
            }
            EvidenceKind::CleanDrop => {
                let drop = piece.drop.as_ref().and_then(|entry| measured(entry, Dimension::Pressure));
                if let (Some(flow), Some(drop)) = (measured(&piece.flow, Dimension::VolumeFlow), drop) {
                    let reading = CleanDrop {
                        flow: known(cubic_metres_per_second(flow)),
                        temperature,
                        drop: known(pascals(drop)),
                    };
                    read.drops.push((piece.id.clone(), reading));
                }
            }
        }
    }
    read
}

fn known<Q>(value: Q) -> Known<Q> {
    Known { value, basis: Basis::Measured, source: Source::Typed }
}

fn measured(entry: &Entry, wanted: Dimension) -> Option<f64> {
    let understood: Understood = entry.understood().ok()?;
    (understood.dimension == wanted).then_some(understood.si)
}

fn of_entry(entry: &Entry) -> Value {
    let mut map = Map::new();
    map.insert("text".to_owned(), entry.text.as_str().into());
    map.insert("unit".to_owned(), entry.unit.id().into());
    if let Some(meaning) = entry.meaning {
        let meaning = match meaning {
            crate::entry::Meaning::DecimalPoint => "DecimalPoint",
            crate::entry::Meaning::Thousands => "Thousands",
        };
        map.insert("meaning".to_owned(), meaning.into());
    }
    Value::Object(map)
}

fn entry(value: &Value, key: &str) -> Option<Entry> {
    let value = value.get(key)?;
    let unit = value.get("unit")?.as_str()?;
    let meaning = match value.get("meaning").and_then(Value::as_str) {
        None => None,
        Some("DecimalPoint") => Some(crate::entry::Meaning::DecimalPoint),
        Some("Thousands") => Some(crate::entry::Meaning::Thousands),
        Some(_) => return None,
    };
    Some(Entry {
        text: value.get("text")?.as_str()?.to_owned(),
        unit: Unit::ALL.iter().copied().find(|there| there.id() == unit)?,
        meaning,
    })
}
