//! The way back from a change as values of sections: kept where an edit can't be, so that what was done before a reload can
//! still be taken back.
//!
//! [`between`] finds it from the two states, whatever the edit was; [`restored`] goes it.

use serde_json::{Map, Value};

use crate::job::Job;
use crate::saved;
use crate::sections::SectionName;

/// A place inside a section: names of fields and numbers of rows, inwards.
type Place = Vec<Value>;

/// One value to put back.
#[derive(Clone, Debug, PartialEq)]
pub struct Back {
    section: SectionName,
    place: Place,
    was: Was,
}

#[derive(Clone, Debug, PartialEq)]
enum Was {
    /// It was this.
    This(Value),
    /// It wasn't there.
    Absent,
    /// These rows stood in the place of so many others.
    Rows { at: usize, instead_of: usize, rows: Vec<Value> },
}

/// The sections that are in another state.
#[must_use]
pub fn touched(before: &Job, after: &Job) -> Vec<SectionName> {
    SectionName::ALL.iter().copied().filter(|&name| before.revision(name) != after.revision(name)).collect()
}

/// The sections that values are put back in.
#[must_use]
pub fn sections(backs: &[Back]) -> Vec<SectionName> {
    SectionName::ALL.iter().copied().filter(|name| backs.iter().any(|back| back.section == *name)).collect()
}

/// What has to be put back to come from one state to the one before.
#[must_use]
pub fn between(before: &Job, after: &Job) -> Vec<Back> {
    let mut found = Vec::new();
    for section in touched(before, after) {
        let (was, is) = (body(before, section), body(after, section));
        differ(section, &mut Vec::new(), &was, &is, &mut found);
    }
    found
}

fn body(job: &Job, name: SectionName) -> Value {
    let mut section = saved::section_value(job, name);
    section.get_mut("body").map(Value::take).unwrap_or_default()
}

fn differ(section: SectionName, place: &mut Place, was: &Value, is: &Value, found: &mut Vec<Back>) {
    let mut note = |place: &Place, was: Was| found.push(Back { section, place: place.clone(), was });
    match (was, is) {
        _ if was == is => {}
        (Value::Object(before), Value::Object(after)) => {
            for key in after.keys().filter(|key| !before.contains_key(*key)) {
                place.push(key.as_str().into());
                note(place, Was::Absent);
                place.pop();
            }
            for (key, was) in before {
                place.push(key.as_str().into());
                match after.get(key) {
                    None => found.push(Back { section, place: place.clone(), was: Was::This(was.clone()) }),
                    Some(is) => differ(section, place, was, is, found),
                }
                place.pop();
            }
        }
        (Value::Array(before), Value::Array(after)) if before.len() == after.len() => {
            for (at, (was, is)) in before.iter().zip(after).enumerate() {
                place.push(at.into());
                differ(section, place, was, is, found);
                place.pop();
            }
        }
        (Value::Array(before), Value::Array(after)) => {
            let same = before.iter().zip(after).take_while(|(was, is)| was == is).count();
            let end = before.iter().rev().zip(after.iter().rev()).take_while(|(was, is)| was == is).count();
            let end = end.min(before.len().min(after.len()).saturating_sub(same));
            let rows = before.get(same..before.len() - end).unwrap_or_default().to_vec();
            note(place, Was::Rows { at: same, instead_of: after.len() - end - same, rows });
        }
        _ => note(place, Was::This(was.clone())),
    }
}

/// Two ways back made one: first the later, then the earlier. What the earlier puts back whole, the later needn't.
#[must_use]
pub fn joined(earlier: Vec<Back>, later: Vec<Back>) -> Vec<Back> {
    let whole = |one: &Back, other: &Back| {
        one.section == other.section && !matches!(one.was, Was::Rows { .. }) && other.place.starts_with(&one.place)
    };
    let mut all: Vec<Back> = later.into_iter().filter(|back| !earlier.iter().any(|early| whole(early, back))).collect();
    all.extend(earlier);
    all
}

/// The job with the values put back; none where they don't fit it, or it wouldn't read then.
#[must_use]
pub fn restored(job: &Job, backs: &[Back]) -> Option<Job> {
    let mut restored = job.clone();
    for &name in SectionName::ALL {
        let mut of_section = backs.iter().filter(|back| back.section == name).peekable();
        if of_section.peek().is_none() {
            continue;
        }
        if job.is_locked(name) {
            return None;
        }
        let mut section = saved::section_value(job, name);
        let body = section.get_mut("body")?;
        for back in of_section {
            put(body, &back.place, &back.was)?;
        }
        saved::read_section(&mut restored, name.id(), &section.to_string()).ok()?;
        if restored.is_locked(name) {
            return None;
        }
    }
    Some(restored)
}

fn put(value: &mut Value, place: &[Value], was: &Was) -> Option<()> {
    let Some((key, rest)) = place.split_first() else {
        match was {
            Was::This(was) => *value = was.clone(),
            Was::Absent => return None,
            Was::Rows { at, instead_of, rows } => {
                let there = value.as_array_mut()?;
                let end = at.checked_add(*instead_of).filter(|end| *end <= there.len())?;
                there.splice(*at..end, rows.iter().cloned());
            }
        }
        return Some(());
    };
    match (key, value) {
        (Value::String(key), Value::Object(map)) if rest.is_empty() => {
            match was {
                Was::Absent => drop(map.shift_remove(key)),
                Was::This(was) => drop(map.insert(key.clone(), was.clone())),
                Was::Rows { .. } => put(map.get_mut(key)?, rest, was)?,
            }
            Some(())
        }
        (Value::String(key), Value::Object(map)) => put(map.get_mut(key)?, rest, was),
        (Value::Number(at), Value::Array(rows)) => put(rows.get_mut(usize::try_from(at.as_u64()?).ok()?)?, rest, was),
        _ => None,
    }
}

/// A way back as it is kept.
#[must_use]
pub fn written(backs: &[Back]) -> Value {
    let one = |back: &Back| {
        let mut map = Map::new();
        map.insert("section".to_owned(), back.section.id().into());
        map.insert("place".to_owned(), Value::Array(back.place.clone()));
        match &back.was {
            Was::This(was) => drop(map.insert("was".to_owned(), was.clone())),
            Was::Absent => {}
            Was::Rows { at, instead_of, rows } => {
                map.insert("at".to_owned(), (*at).into());
                map.insert("instead_of".to_owned(), (*instead_of).into());
                map.insert("rows".to_owned(), Value::Array(rows.clone()));
            }
        }
        Value::Object(map)
    };
    Value::Array(backs.iter().map(one).collect())
}

/// A way back from what was kept; none where it can't be read.
#[must_use]
pub fn read(value: &Value) -> Option<Vec<Back>> {
    let one = |value: &Value| -> Option<Back> {
        let count = |key: &str| usize::try_from(value.get(key)?.as_u64()?).ok();
        let was = match (value.get("was"), value.get("rows")) {
            (Some(was), _) => Was::This(was.clone()),
            (None, Some(rows)) => {
                Was::Rows { at: count("at")?, instead_of: count("instead_of")?, rows: rows.as_array()?.clone() }
            }
            (None, None) => Was::Absent,
        };
        let section = SectionName::of(value.get("section")?.as_str()?)?;
        Some(Back { section, place: value.get("place")?.as_array()?.clone(), was })
    };
    value.as_array()?.iter().map(one).collect()
}
