//! How a job is written down, and read again.
//!
//! A job file is JSON, format and version first, then its sections, each with a version of its own. The shape of each
//! version is a module here that never changes once shipped: old files open for ever. What this version doesn't know
//! is kept to the letter; a section of a later version stays closed and is written back as it came.

pub(crate) mod exact;
pub(crate) mod fields;
mod head_1;
mod issued_1;
mod kit_1;
mod list_1;
pub(crate) mod loading_1;
mod picking_1;
mod plan_1;
mod prices_1;
mod quote_1;
mod search_1;
mod site_1;
mod supply_1;
mod survey_1;

use std::cmp::Ordering;

use serde_json::{Map, Value};

use crate::care::visit::VISIT;
use crate::id::Id;
use crate::job::{Job, Locked, LockedSection, Record};
use crate::quote::QuoteCopy;
use crate::sections::{Section, SectionName};
use fields::{Taken, Written};
pub use list_1::{list_part, list_parts, list_text, read_list_part};

/// The name of the format.
pub const FORMAT: &str = "bedwright-job";
/// The version of the file that holds the sections.
pub const VERSION: u64 = 1;
/// The most letters a job file may have.
pub const LONGEST: usize = 8 * 1024 * 1024;

/// Why a text is no job.
#[derive(Clone, Debug, PartialEq)]
pub enum Unreadable {
    /// It is longer than any job.
    TooLong {
        /// How many letters it has.
        letters: usize,
    },
    /// It isn't JSON, or was cut.
    NotJson {
        /// The line it stops making sense in.
        line: usize,
        /// The column.
        column: usize,
    },
    /// It is JSON, but of something else.
    OtherFormat,
    /// It is a job of a later version.
    TooNew {
        /// The version it has.
        version: u64,
    },
    /// It lacks what every job has.
    Lacks {
        /// What it lacks.
        what: &'static str,
    },
}

/// The current version of a section.
#[must_use]
pub const fn version_of(name: SectionName) -> u64 {
    match name {
        SectionName::Head
        | SectionName::Survey
        | SectionName::Plan
        | SectionName::Picking
        | SectionName::Site
        | SectionName::Loading
        | SectionName::Supply
        | SectionName::Prices
        | SectionName::Search
        | SectionName::Kit
        | SectionName::Quote => 1,
    }
}

/// The whole job as a file.
#[must_use]
pub fn job_text(job: &Job) -> String {
    job_value(job).to_string()
}

/// The whole job as a part of a larger file.
#[must_use]
pub fn job_value(job: &Job) -> Value {
    let mut file = Map::new();
    file.insert("format".to_owned(), FORMAT.into());
    file.insert("version".to_owned(), VERSION.into());
    file.insert("id".to_owned(), job.id.as_str().into());
    let mut sections = Map::new();
    for &name in SectionName::ALL {
        // A section that says nothing yet and that files of before didn't have stays out of them.
        if says_nothing_new(job, name) {
            continue;
        }
        sections.insert(name.id().to_owned(), section_value(job, name));
    }
    for (name, locked) in &job.locked {
        sections.insert(name.clone(), locked.value.clone());
    }
    file.insert("sections".to_owned(), Value::Object(sections));
    file.insert("records".to_owned(), records_value(job));
    for (key, value) in &job.unknown {
        file.insert(key.clone(), value.clone());
    }
    Value::Object(file)
}

/// Whether a section that came after the first files says nothing.
fn says_nothing_new(job: &Job, name: SectionName) -> bool {
    let first = matches!(name, SectionName::Head | SectionName::Survey | SectionName::Plan | SectionName::Picking);
    !first && says_nothing(job, name)
}

/// Whether a section is as it is in an empty job.
#[must_use]
pub fn says_nothing(job: &Job, name: SectionName) -> bool {
    let nothing = match name {
        SectionName::Head => job.head == Section::default(),
        SectionName::Survey => job.survey == Section::default(),
        SectionName::Plan => job.plan == Section::default(),
        SectionName::Picking => job.picking == Section::default(),
        SectionName::Site => job.site == Section::default(),
        SectionName::Loading => job.loading == Section::default(),
        SectionName::Supply => job.supply == Section::default(),
        SectionName::Prices => job.prices == Section::default(),
        SectionName::Kit => job.kit == Section::default(),
        SectionName::Quote => job.quote == Section::default(),
        SectionName::Search => job.search == Section::default(),
    };
    nothing && !job.is_locked(name)
}

/// Reads a whole job.
///
/// # Errors
/// Why it is none. A section that can't be taken in is no error: it stays closed in [`Job::locked`].
pub fn read_job(text: &str) -> Result<Job, Unreadable> {
    read_job_value(json(text)?)
}

/// Reads a job that is a part of a larger file.
///
/// # Errors
/// As [`read_job`].
pub fn read_job_value(value: Value) -> Result<Job, Unreadable> {
    let Value::Object(mut file) = value else { return Err(Unreadable::OtherFormat) };
    // What stays keeps its order, so that a job saves to the same text each time.
    if file.shift_remove("format").as_ref().and_then(Value::as_str) != Some(FORMAT) {
        return Err(Unreadable::OtherFormat);
    }
    let version =
        file.shift_remove("version").as_ref().and_then(Value::as_u64).ok_or(Unreadable::Lacks { what: "version" })?;
    if version > VERSION {
        return Err(Unreadable::TooNew { version });
    }
    let id = file.shift_remove("id").as_ref().and_then(Value::as_str).map(Id::new).filter(|id| !id.as_str().is_empty());
    let mut job = Job::new(id.ok_or(Unreadable::Lacks { what: "id" })?, "");
    let Some(Value::Object(sections)) = file.shift_remove("sections") else {
        return Err(Unreadable::Lacks { what: "sections" });
    };
    for (name, value) in sections {
        take_section(&mut job, &name, value);
    }
    let records = file.shift_remove("records");
    job.unknown = file;
    if let Some(records) = records {
        take_records(&mut job, records);
    }
    Ok(job)
}

/// One section as it is kept in storage under a key of its own.
#[must_use]
pub fn section_text(job: &Job, name: SectionName) -> String {
    section_value(job, name).to_string()
}

/// A section of any name as it is written; none where the job has none of it.
#[must_use]
pub fn section_value_of(job: &Job, name: &str) -> Option<Value> {
    match SectionName::of(name) {
        Some(name) => (!says_nothing_new(job, name)).then(|| section_value(job, name)),
        None => job.locked.get(name).map(|locked| locked.value.clone()),
    }
}

/// Takes a section's text from storage into a job; one that can't be read stays closed.
///
/// # Errors
/// The text isn't JSON at all: there is nothing to keep but the text, which the caller sets aside.
pub fn read_section(job: &mut Job, name: &str, text: &str) -> Result<(), Unreadable> {
    let value = json(text)?;
    take_section(job, name, value);
    Ok(())
}

/// An issued quote as the record it is.
#[must_use]
pub fn issued_value(copy: &QuoteCopy) -> Value {
    issued_1::write(copy)
}

/// The issued quote that a record holds; none for a record of another kind, or of a later version.
#[must_use]
pub fn read_issued(record: &Value) -> Option<QuoteCopy> {
    if record.get("kind").and_then(Value::as_str) != Some(issued_1::KIND) {
        return None;
    }
    issued_1::read(record.clone()).ok()
}

/// What the record of an issued quote says it is.
pub(crate) const ISSUED: &str = issued_1::KIND;

/// The names of the parts that a job's records are kept in begin like this.
pub const RECORDS: &str = "records";

/// The part of the records that one is kept in: visits, of which there are many, by their year; everything else together.
#[must_use]
pub fn part_of(record: &Record) -> String {
    let text = |key: &str| record.value.get(key).and_then(Value::as_str);
    let year = text("day").filter(|_| text("kind") == Some(VISIT)).and_then(|day| day.get(..4));
    match year.filter(|year| year.bytes().all(|letter| letter.is_ascii_digit())) {
        Some(year) => [RECORDS, "-", year].concat(),
        None => RECORDS.to_owned(),
    }
}

/// The parts that the records from a place on are kept in, each once.
#[must_use]
pub fn parts_from(job: &Job, first: usize) -> Vec<String> {
    let mut parts: Vec<String> = Vec::new();
    for part in job.records.iter().skip(first).map(part_of) {
        if !parts.contains(&part) {
            parts.push(part);
        }
    }
    parts
}

/// Whether a job keeps records under this name.
#[must_use]
pub fn is_records(name: &str) -> bool {
    name.strip_prefix(RECORDS).is_some_and(|rest| rest.is_empty() || rest.starts_with('-'))
}

/// The records of a part as they are kept in storage.
#[must_use]
pub fn records_text(job: &Job, part: &str) -> String {
    let records = job.records.iter().filter(|record| part_of(record) == part);
    Value::Array(records.map(|record| record.value.clone()).collect()).to_string()
}

/// Takes records from storage into a job.
///
/// # Errors
/// The text isn't JSON at all.
pub fn read_records(job: &mut Job, text: &str) -> Result<(), Unreadable> {
    let value = json(text)?;
    take_records(job, value);
    Ok(())
}

/// Which of two texts of one section is the newer: the one whose counter is higher, or the longer list of records.
///
/// Equal where it can't be told: a text that can't be read, or two devices that counted to the same number.
#[must_use]
pub fn newer(a: &str, b: &str) -> Ordering {
    let count = |text: &str| -> Option<u64> {
        let value: Value = serde_json::from_str(text).ok()?;
        if let Value::Array(records) = &value {
            return u64::try_from(records.len()).ok();
        }
        Some(value.get("revision").and_then(|revision| revision.get("counter")).and_then(Value::as_u64).unwrap_or(0))
    };
    match (count(a), count(b)) {
        (Some(a), Some(b)) => a.cmp(&b),
        _ => Ordering::Equal,
    }
}

fn json(text: &str) -> Result<Value, Unreadable> {
    if text.len() > LONGEST {
        return Err(Unreadable::TooLong { letters: text.len() });
    }
    exact::value(text).map_err(|e| Unreadable::NotJson { line: e.line(), column: e.column() })
}

pub(crate) fn section_value(job: &Job, name: SectionName) -> Value {
    if let Some(locked) = job.locked.get(name.id()) {
        return locked.value.clone();
    }
    match name {
        SectionName::Head => written(name, &job.head, head_1::write),
        SectionName::Survey => written(name, &job.survey, survey_1::write),
        SectionName::Plan => written(name, &job.plan, plan_1::write),
        SectionName::Picking => written(name, &job.picking, picking_1::write),
        SectionName::Site => written(name, &job.site, site_1::write),
        SectionName::Quote => written(name, &job.quote, quote_1::write),
        SectionName::Loading => written(name, &job.loading, loading_1::write),
        SectionName::Supply => written(name, &job.supply, supply_1::write),
        SectionName::Prices => written(name, &job.prices, prices_1::write),
        SectionName::Kit => written(name, &job.kit, kit_1::write),
        SectionName::Search => written(name, &job.search, search_1::write),
    }
}

fn written<T>(name: SectionName, section: &Section<T>, body: fn(&T) -> Value) -> Value {
    let mut fields = Written::default();
    fields.put("version", version_of(name).into());
    fields.revision("revision", section.revision.as_ref());
    fields.revision("parent", section.parent.as_ref());
    if let Some(base) = &section.base {
        fields.text("base", base);
    }
    fields.put("body", body(&section.body));
    fields.unknown(&section.unknown);
    fields.whole()
}

fn take_section(job: &mut Job, name: &str, value: Value) {
    let lock = |job: &mut Job, value: Value, why: Locked| {
        job.locked.insert(name.to_owned(), LockedSection { value, why });
    };
    let Some(known) = SectionName::of(name) else { return lock(job, value, Locked::UnknownName) };
    let version = value.get("version").and_then(Value::as_u64).unwrap_or(0);
    if version > version_of(known) {
        return lock(job, value, Locked::TooNew { version });
    }
    if version == 0 {
        return lock(job, value, Locked::Unreadable { detail: "version".to_owned() });
    }
    let kept = value.clone();
    let taken = match known {
        SectionName::Head => read(value, head_1::read).map(|section| job.head = section),
        SectionName::Survey => read(value, survey_1::read).map(|section| job.survey = section),
        SectionName::Plan => read(value, plan_1::read).map(|section| job.plan = section),
        SectionName::Picking => read(value, picking_1::read).map(|section| job.picking = section),
        SectionName::Site => read(value, site_1::read).map(|section| job.site = section),
        SectionName::Quote => read(value, quote_1::read).map(|section| job.quote = section),
        SectionName::Loading => read(value, loading_1::read).map(|section| job.loading = section),
        SectionName::Supply => read(value, supply_1::read).map(|section| job.supply = section),
        SectionName::Prices => read(value, prices_1::read).map(|section| job.prices = section),
        SectionName::Kit => read(value, kit_1::read).map(|section| job.kit = section),
        SectionName::Search => read(value, search_1::read).map(|section| job.search = section),
    };
    match taken {
        // A later text of the section that can be read takes the place of one that couldn't.
        Ok(()) => {
            job.locked.remove(name);
        }
        Err(detail) => lock(job, kept, Locked::Unreadable { detail }),
    }
}

fn read<T>(value: Value, body: fn(Value) -> Result<T, String>) -> Result<Section<T>, String> {
    let Section { body: value, revision, parent, base, unknown } = read_around(value)?;
    Ok(Section { body: body(value)?, revision, parent, base, unknown })
}

/// A section whose body isn't read yet.
fn read_around(value: Value) -> Result<Section<Value>, String> {
    let mut fields = Taken::of(value);
    // It was looked at before.
    let _ = fields.maybe("version");
    Ok(Section {
        revision: fields.revision("revision"),
        parent: fields.revision("parent"),
        base: fields.maybe_text("base"),
        body: fields.any("body"),
        unknown: fields.rest()?,
    })
}

fn records_value(job: &Job) -> Value {
    Value::Array(job.records.iter().map(|record| record.value.clone()).collect())
}

/// Where records that can't be taken in are kept among the job's unknown fields.
const UNREAD_RECORDS: &str = "records_unread";

/// Adds the records that aren't there yet; one without an id, or with the id of another one, is kept with the job's
/// unknown fields.
fn take_records(job: &mut Job, records: Value) {
    let Value::Array(records) = records else {
        return keep_unread(job, vec![records]);
    };
    let mut places: Map<String, Value> =
        job.records.iter().enumerate().map(|(place, record)| (record.id.to_string(), place.into())).collect();
    let mut unread: Vec<Value> = Vec::new();
    for value in records {
        let id = value.get("id").and_then(Value::as_str).map(Id::new).filter(|id| !id.as_str().is_empty());
        let Some(id) = id else {
            unread.push(value);
            continue;
        };
        let place = places.get(id.as_str()).and_then(Value::as_u64).and_then(|place| usize::try_from(place).ok());
        match place.and_then(|place| job.records.get(place)) {
            Some(there) if there.value == value => {}
            Some(_) => unread.push(value),
            None => {
                places.insert(id.to_string(), job.records.len().into());
                job.records.push(Record { id, value });
            }
        }
    }
    keep_unread(job, unread);
}

fn keep_unread(job: &mut Job, unread: Vec<Value>) {
    if unread.is_empty() {
        return;
    }
    let mut kept = match job.unknown.remove(UNREAD_RECORDS) {
        Some(Value::Array(kept)) => kept,
        Some(other) => vec![other],
        None => Vec::new(),
    };
    // Only its keys are used.
    let mut there: Map<String, Value> = kept.iter().map(|value| (value.to_string(), Value::Null)).collect();
    kept.extend(unread.into_iter().filter(|value| there.insert(value.to_string(), Value::Null).is_none()));
    job.unknown.insert(UNREAD_RECORDS.to_owned(), Value::Array(kept));
}
