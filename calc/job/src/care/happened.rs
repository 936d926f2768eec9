//! What happened to the beds of a job, besides visits: changed, rotated, a meter replaced; and what is expected of a bed.
//! Records, all of them.

use serde_json::Value;

use super::visit::TestUnit;
use crate::entry::Entry;
use crate::id::Id;
use crate::job::{Job, Record};
use crate::saved::fields::{Taken, Written};

/// Where a bed stands: one tag of a vessel.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Place {
    /// The vessel.
    pub vessel: Id,
    /// Its tag; empty where it has none.
    pub tag: String,
}

/// Something that happened.
#[derive(Clone, Debug, PartialEq)]
pub struct Happened {
    /// The record's id.
    pub id: Id,
    /// The day, as `2026-11-24`.
    pub day: String,
    /// When it was written down, in UTC as ISO 8601 writes it.
    pub at: String,
    /// Who did it; empty where nobody said.
    pub by: String,
    /// What.
    pub what: What,
}

/// What happened.
#[derive(Clone, Debug, PartialEq)]
pub enum What {
    /// The old bed was taken out and a new one put in: one life ends and the next begins.
    Changeout {
        /// Where.
        place: Place,
    },
    /// The beds of these places moved on by one: the second's stands in the first now, and the first's in the last.
    Rotation {
        /// The places, the first water comes to first.
        places: Vec<Place>,
    },
    /// A meter was replaced.
    MeterReplaced {
        /// Where.
        place: Place,
        /// What the old one showed at its end, where somebody read it.
        end: Option<Entry>,
        /// What the new one showed at its start.
        start: Entry,
    },
    /// What is expected of a vessel's beds, from now on.
    Expected(Expected),
    /// This job was made to replace a bed of another one.
    Follows {
        /// The other job.
        job: Id,
        /// The bed's place there.
        place: Place,
        /// The record of how it was loaded, where there is one.
        as_loaded: Option<Id>,
    },
}

/// What is expected of a vessel's beds: the latest that was written down holds.
#[derive(Clone, Debug, PartialEq)]
pub struct Expected {
    /// The vessel.
    pub vessel: Id,
    /// The unit its tests read in.
    pub unit: TestUnit,
    /// The most its outlet may show, in that unit.
    pub limit: Option<Entry>,
    /// How many months a bed is used at the most.
    pub months: Option<Entry>,
    /// How much water goes through a bed at the most.
    pub water: Option<Entry>,
    /// How many months lie between visits.
    pub visits: Option<Entry>,
    /// Share of its depth that a bed settles by between two openings.
    pub settling: Option<Entry>,
}

impl Expected {
    /// Nothing yet.
    #[must_use]
    pub const fn nothing(vessel: Id) -> Expected {
        Expected {
            vessel,
            unit: TestUnit::MilligramPerLitre,
            limit: None,
            months: None,
            water: None,
            visits: None,
            settling: None,
        }
    }
}

/// The kinds of records, by what they say they are.
const CHANGEOUT: &str = "changeout";
const ROTATION: &str = "rotation";
const METER_REPLACED: &str = "meter_replaced";
const EXPECTED: &str = "expected";
const FOLLOWS: &str = "follows";
/// What visits, and what happened between them, say they are.
pub(crate) const RECORDS: &[&str] = &[super::visit::VISIT, CHANGEOUT, ROTATION, METER_REPLACED, EXPECTED, FOLLOWS];

impl Happened {
    /// It as a record of a job.
    #[must_use]
    pub fn record(&self) -> Record {
        let mut fields = Written::default();
        fields.text("id", self.id.as_str());
        let kind = match &self.what {
            What::Changeout { .. } => CHANGEOUT,
            What::Rotation { .. } => ROTATION,
            What::MeterReplaced { .. } => METER_REPLACED,
            What::Expected(_) => EXPECTED,
            What::Follows { .. } => FOLLOWS,
        };
        fields.text("kind", kind);
        fields.text("day", &self.day);
        fields.text_unless_empty("at", &self.at);
        fields.text_unless_empty("by", &self.by);
        match &self.what {
            What::Changeout { place } => put_place(&mut fields, place),
            What::Rotation { places } => {
                let places = places.iter().map(|place| {
                    let mut fields = Written::default();
                    put_place(&mut fields, place);
                    fields.whole()
                });
                fields.put("places", Value::Array(places.collect()));
            }
            What::MeterReplaced { place, end, start } => {
                put_place(&mut fields, place);
                fields.entry("end", end.as_ref());
                fields.entry("start", Some(start));
            }
            What::Expected(expected) => {
                fields.text("vessel", expected.vessel.as_str());
                fields.text("test_unit", expected.unit.id());
                fields.entry("limit", expected.limit.as_ref());
                fields.entry("months", expected.months.as_ref());
                fields.entry("water", expected.water.as_ref());
                fields.entry("visits", expected.visits.as_ref());
                fields.entry("settling", expected.settling.as_ref());
            }
            What::Follows { job, place, as_loaded } => {
                fields.text("job", job.as_str());
                put_place(&mut fields, place);
                if let Some(record) = as_loaded {
                    fields.text("as_loaded", record.as_str());
                }
            }
        }
        Record { id: self.id.clone(), value: fields.whole() }
    }

    /// What a record tells; nothing where it is of another kind, or of a shape this version doesn't know.
    #[must_use]
    pub fn of(record: &Record) -> Option<Happened> {
        let kind = record.value.get("kind").and_then(Value::as_str)?;
        if ![CHANGEOUT, ROTATION, METER_REPLACED, EXPECTED, FOLLOWS].contains(&kind) {
            return None;
        }
        let mut fields = Taken::of(record.value.clone());
        let day = fields.text("day");
        let (at, by) = (fields.text_or_empty("at"), fields.text_or_empty("by"));
        let what = match kind {
            CHANGEOUT => What::Changeout { place: take_place(&mut fields) },
            ROTATION => {
                let places = fields.list("places").into_iter().map(|place| {
                    let mut fields = Taken::of(place);
                    let place = take_place(&mut fields);
                    fields.rest().ok().map(|_| place)
                });
                What::Rotation { places: places.collect::<Option<Vec<Place>>>()? }
            }
            METER_REPLACED => What::MeterReplaced {
                place: take_place(&mut fields),
                end: fields.entry("end"),
                start: fields.entry("start")?,
            },
            EXPECTED => {
                let mut expected = Expected::nothing(fields.id("vessel"));
                expected.unit = TestUnit::of(&fields.text("test_unit"))?;
                expected.limit = fields.entry("limit");
                expected.months = fields.entry("months");
                expected.water = fields.entry("water");
                expected.visits = fields.entry("visits");
                expected.settling = fields.entry("settling");
                What::Expected(expected)
            }
            _ => {
                let as_loaded = fields.maybe_text("as_loaded").map(|id| Id::new(&id));
                What::Follows { job: fields.id("job"), place: take_place(&mut fields), as_loaded }
            }
        };
        fields.rest().ok().map(|_| Happened { id: record.id.clone(), day, at, by, what })
    }
}

fn put_place(fields: &mut Written, place: &Place) {
    fields.text("vessel", place.vessel.as_str());
    fields.text_unless_empty("tag", &place.tag);
}

fn take_place(fields: &mut Taken) -> Place {
    Place { vessel: fields.id("vessel"), tag: fields.text_or_empty("tag") }
}

/// What is expected of a vessel's beds: the latest that still stands, or nothing.
#[must_use]
pub fn expected_of(job: &Job, vessel: &Id) -> Expected {
    let withdrawn = crate::evidence::withdrawn(job);
    job.records
        .iter()
        .rev()
        .filter(|record| withdrawn.get(record.id.as_str()).is_none())
        .filter_map(Happened::of)
        .find_map(|happened| match happened.what {
            What::Expected(expected) if expected.vessel == *vessel => Some(expected),
            _ => None,
        })
        .unwrap_or_else(|| Expected::nothing(vessel.clone()))
}

/// The bed of another job that this job was made to replace.
#[must_use]
pub fn follows(job: &Job) -> Option<(Id, Place)> {
    job.records.iter().filter_map(Happened::of).find_map(|happened| match happened.what {
        What::Follows { job, place, .. } => Some((job, place)),
        _ => None,
    })
}
