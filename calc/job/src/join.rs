//! Two states of one job made one, by comparing each section with what both came from. Nobody's last word wins: what only
//! one side changed is shown and taken unless it is declined; what both changed differently is asked about.
//!
//! [`compare`] says what differs, [`join`] makes the job that a person's answers ask for. Records are never asked about:
//! they are only ever added to, so both sides' stand.

mod order;
mod tree;

use litemap::LiteMap;
use serde_json::{Map, Value};

use crate::envelope::costs;
use crate::job::{Job, Record};
use crate::saved;
use crate::sections::SectionName;

/// What a change is about: names of fields and ids, from the section inwards.
pub type Place = Vec<String>;

/// Who changed something since both had the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Changed {
    /// Only the job here.
    Here,
    /// Only the job that arrived.
    There,
    /// Both, to something else; or nobody knows what it was before.
    Both,
}

/// Something that is not the same on both sides.
#[derive(Clone, Debug, PartialEq)]
pub struct Difference {
    /// The section.
    pub section: String,
    /// Where in it.
    pub place: Place,
    /// Who changed it.
    pub changed: Changed,
    /// What it was when both had the same, where that is known.
    pub before: Option<Value>,
    /// What it is here; nothing where it was taken away.
    pub here: Option<Value>,
    /// What it is in the job that arrived.
    pub there: Option<Value>,
}

/// Which side of a difference to keep.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Take {
    /// What stands here.
    Here,
    /// What arrived.
    There,
    /// Both texts, one under the other; where they aren't plain texts, what stands here.
    Both,
}

/// Why two jobs can't be joined.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unjoined {
    /// They are different jobs.
    OtherJob,
    /// The answers would make a section that doesn't read: it is named.
    Section(String),
}

/// What is usual until a person says otherwise: what only one side changed is taken, and where both did, what stands here
/// stays.
#[must_use]
pub const fn usual(changed: Changed) -> Take {
    match changed {
        Changed::There => Take::There,
        Changed::Here | Changed::Both => Take::Here,
    }
}

/// Everything that differs, section by section. A section that wasn't sent says nothing.
///
/// # Errors
/// [`Unjoined::OtherJob`].
pub fn compare(here: &Job, there: &Job) -> Result<Vec<Difference>, Unjoined> {
    let mut found = Vec::new();
    over_sections(here, there, &mut |difference| {
        let take = usual(difference.changed);
        found.push(difference);
        take
    })?;
    Ok(found)
}

/// The job that comes of both, each difference settled as asked.
///
/// # Errors
/// [`Unjoined`]; neither job is changed.
pub fn join(here: &Job, there: &Job, mut settle: impl FnMut(&Difference) -> Take) -> Result<Job, Unjoined> {
    let bodies = over_sections(here, there, &mut |difference| settle(&difference))?;
    let mut joined = here.clone();
    for (name, section) in bodies {
        let locked = joined.locked.contains_key(&name);
        if saved::read_section(&mut joined, &name, &section.to_string()).is_err()
            || (!locked && joined.locked.contains_key(&name) && SectionName::of(&name).is_some())
        {
            return Err(Unjoined::Section(name));
        }
    }
    unite(&mut joined.records, &there.records);
    for (key, value) in &there.unknown {
        if !joined.unknown.contains_key(key) {
            joined.unknown.insert(key.clone(), value.clone());
        }
    }
    Ok(joined)
}

type Sections = LiteMap<String, Value>;

/// Every section of a job as it is written.
fn sections_of(job: &Job) -> Sections {
    let mut sections = Sections::new();
    let file = saved::exact::value(&saved::job_text(job)).unwrap_or(Value::Null);
    if let Some(Value::Object(map)) = file.get("sections") {
        for (name, section) in map {
            sections.insert(name.clone(), section.clone());
        }
    }
    sections
}

fn over_sections(
    here: &Job,
    there: &Job,
    settle: &mut dyn FnMut(Difference) -> Take,
) -> Result<Vec<(String, Value)>, Unjoined> {
    if here.id != there.id {
        return Err(Unjoined::OtherJob);
    }
    let (ours, theirs) = (sections_of(here), sections_of(there));
    let mut changed = Vec::new();
    for (name, arrived) in theirs.iter() {
        // Nothing was ever changed in it: it was not sent, or stands as it always did.
        if arrived.get("revision").is_none() {
            continue;
        }
        let Some(own) = ours.get(name) else {
            // Here it says nothing.
            if settle(whole(name, Changed::There, None, arrived)) == Take::There {
                changed.push((name.clone(), arrived.clone()));
            }
            continue;
        };
        let full = with_costs_of(own, arrived);
        let arrived = full.as_ref().unwrap_or(arrived);
        if own.get("body") == arrived.get("body") {
            continue;
        }
        // One of a later version can't be looked into: it is whole or not at all.
        let body = if here.locked.contains_key(name) || there.locked.contains_key(name) {
            let difference = whole(name, Changed::Both, Some(own), arrived);
            if settle(difference) == Take::There { arrived.get("body").cloned() } else { own.get("body").cloned() }
        } else {
            let base = ancestor(own, arrived);
            let mut found = |place: &[String], changed, [before, here, there]: [Option<&Value>; 3]| {
                settle(Difference {
                    section: name.clone(),
                    place: place.to_vec(),
                    changed,
                    before: before.cloned(),
                    here: here.cloned(),
                    there: there.cloned(),
                })
            };
            tree::merged(base.as_ref(), own.get("body"), arrived.get("body"), &mut found)
        };
        changed.push((name.clone(), with_body(own, arrived, body)));
    }
    Ok(changed)
}

fn whole(name: &str, changed: Changed, own: Option<&Value>, arrived: &Value) -> Difference {
    Difference {
        section: name.to_owned(),
        place: Vec::new(),
        changed,
        before: None,
        here: own.and_then(|own| own.get("body")).cloned(),
        there: arrived.get("body").cloned(),
    }
}

/// A section that travelled without its costs, with those that never left: their absence is no change.
fn with_costs_of(own: &Value, arrived: &Value) -> Option<Value> {
    let costs = own.get("body").filter(|_| costs::are_kept_back(arrived))?;
    let mut section = arrived.as_object()?.clone();
    if let Some(body) = section.get_mut("body") {
        costs::put_back(body, costs);
    }
    if let Some(mut base) = section.get("base").and_then(Value::as_str).and_then(|base| saved::exact::value(base).ok())
    {
        costs::put_back(&mut base, costs);
        section.insert("base".to_owned(), base.to_string().into());
    }
    Some(Value::Object(section))
}

/// What both came from, where it can be known. A section notes the state it arrived in: its text as `base`, its revision as
/// `parent`.
fn ancestor(own: &Value, arrived: &Value) -> Option<Value> {
    let same = |one: Option<&Value>, other: Option<&Value>| one.is_some() && one == other;
    let device = |section: &Value, key: &str| section.get(key).and_then(|revision| revision.get("device")).cloned();
    let base = |section: &Value| -> Option<Value> {
        match section.get("base") {
            Some(base) => saved::exact::value(base.as_str()?).ok(),
            // It travelled without, since it stands as it was handed over.
            None => section.get("parent").and_then(|_| section.get("body")).cloned(),
        }
    };
    if same(arrived.get("parent"), own.get("revision")) {
        // It was made from exactly what stands here.
        own.get("body").cloned()
    } else if same(own.get("parent"), arrived.get("revision")) {
        // What stands here was made from exactly what arrived.
        arrived.get("body").cloned()
    } else if same(own.get("parent"), arrived.get("parent")) {
        // Both were made from one state.
        base(arrived).or_else(|| base(own))
    } else if same(device(own, "parent").as_ref(), device(arrived, "revision").as_ref()) {
        // An earlier state of theirs was taken over here.
        base(own)
    } else {
        // A section that stands as it was handed over says nothing of what the other was made from, where that knows it.
        let made_from = |section: &Value, other: &Value| {
            let unchanged = same(section.get("parent"), section.get("revision"));
            if unchanged && other.get("parent").is_some() { None } else { base(section) }
        };
        made_from(arrived, own).or_else(|| made_from(own, arrived))
    }
}

/// The section here with another body: a state that neither side had, so it counts on from both, and notes what arrived.
fn with_body(own: &Value, arrived: &Value, body: Option<Value>) -> Value {
    let revision = |section: &Value, key: &str| section.get("revision").and_then(|revision| revision.get(key)).cloned();
    let counter = |section: &Value| revision(section, "counter").as_ref().and_then(Value::as_u64).unwrap_or(0);
    let mut section = match own {
        Value::Object(map) => map.clone(),
        _ => Map::new(),
    };
    note_arrival(&mut section, arrived);
    if !costs::are_kept_back(arrived) {
        costs::are_there_again(&mut section);
    }
    section.insert("body".to_owned(), body.unwrap_or(Value::Null));
    if let Some(device) = revision(own, "device").or_else(|| revision(arrived, "device")) {
        let mut revision = Map::new();
        revision.insert("device".to_owned(), device);
        revision.insert("counter".to_owned(), counter(own).max(counter(arrived)).saturating_add(1).into());
        section.insert("revision".to_owned(), Value::Object(revision));
    }
    Value::Object(section)
}

/// Notes in a section the state that another arrived in.
fn note_arrival(section: &mut Map<String, Value>, arrived: &Value) {
    let Some(revision) = arrived.get("revision") else { return };
    section.insert("parent".to_owned(), revision.clone());
    let body = arrived.get("body").map(Value::to_string).unwrap_or_default();
    section.insert("base".to_owned(), body.into());
}

/// A job that arrived and is kept as it came: each section notes the state it arrived in, so that it can be compared three
/// ways when it meets its like again.
#[must_use]
pub fn taken_over(arrived: &Job) -> Job {
    let mut job = arrived.clone();
    for (name, section) in sections_of(arrived).iter() {
        if arrived.locked.contains_key(name) {
            continue;
        }
        let mut noted = section.as_object().cloned().unwrap_or_default();
        note_arrival(&mut noted, section);
        // It was read from the same text, so it reads.
        let _ = saved::read_section(&mut job, name, &Value::Object(noted).to_string());
    }
    job
}

/// A job whose sections note the state they are handed over in, so that what comes back can be compared three ways. Where a
/// section notes already what came from another device, that stays: what goes out carries it along.
#[must_use]
pub fn handed_over(job: &Job, sections: &[SectionName]) -> Job {
    let mut noted = job.clone();
    for (name, section) in sections_of(job).iter() {
        let goes = SectionName::of(name).is_some_and(|name| sections.contains(&name) && !job.is_locked(name));
        let device = |key: &str| section.get(key).and_then(|revision| revision.get("device"));
        let from_elsewhere = device("parent").is_some() && device("parent") != device("revision");
        if !goes || from_elsewhere {
            continue;
        }
        let mut map = section.as_object().cloned().unwrap_or_default();
        note_arrival(&mut map, section);
        // It was read from the same text, so it reads.
        let _ = saved::read_section(&mut noted, name, &Value::Object(map).to_string());
    }
    noted
}

/// Adds the records that aren't there yet. Two that bear one id but say different things both stay: the second under an id
/// made from what it says, so that every device makes the same.
pub(crate) fn unite(records: &mut Vec<Record>, arrived: &[Record]) {
    for record in arrived {
        if records.iter().any(|there| there.value == record.value && there.id == record.id) {
            continue;
        }
        if !records.iter().any(|there| there.id == record.id) {
            records.push(record.clone());
            continue;
        }
        if let Some(there) = records.iter_mut().find(|there| costs::is_same_issue(&there.value, &record.value)) {
            // What its customer sees and the whole of it are one; the whole stands.
            if costs::are_kept_back(&there.value) {
                there.value = record.value.clone();
            }
            continue;
        }
        let text = record.value.to_string();
        let id = crate::id::Id::new(&format!("{}-{:08x}", record.id, crate::envelope::crc32(text.as_bytes())));
        if !records.iter().any(|there| there.id == id) {
            let mut value = record.value.clone();
            if let Value::Object(map) = &mut value {
                map.insert("id".to_owned(), id.as_str().into());
            }
            records.push(Record { id, value });
        }
    }
}
