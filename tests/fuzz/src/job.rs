//! A job file: what opens is the same when it was saved and opened again.

use std::sync::OnceLock;

use bedwright_job::Job;
use bedwright_job::saved::{job_text, parts_from, read_job, read_records, read_section, records_text, section_text};
use bedwright_job::sections::SectionName;
use serde_json::Value;

use crate::before::{first, first_two};

/// Files of every kind, made by the version that shipped them.
const SAVED: [&str; 9] = [
    include_str!("../../saved/v1-every-choice.json"),
    include_str!("../../saved/v1-kit.json"),
    include_str!("../../saved/v1-later-section.json"),
    include_str!("../../saved/v1-loading.json"),
    include_str!("../../saved/v1-prices.json"),
    include_str!("../../saved/v1-quote.json"),
    include_str!("../../saved/v1-search.json"),
    include_str!("../../saved/v1-site.json"),
    include_str!("../../saved/v1-supply.json"),
];

/// A text; or, after a byte that no text begins with, a saved file with another value somewhere.
///
/// # Panics
/// A job that opened isn't the same when it is saved and opened again.
pub fn holds(bytes: &[u8]) {
    let Some(text) = text_of(bytes) else { return };
    let Ok(job) = read_job(&text) else { return };
    let saved = job_text(&job);
    let again = read_job(&saved).expect("what was saved opens");
    assert_eq!(job_text(&again), saved, "saves to the same text");
    assert_eq!(again, job, "is equal");
    in_parts(&job);
}

/// The text that some bytes stand for.
pub fn text_of(bytes: &[u8]) -> Option<String> {
    match bytes.first() {
        Some(kind) if *kind < 0x09 => changed(bytes),
        _ => std::str::from_utf8(bytes).ok().map(str::to_owned),
    }
}

/// A saved file in which one value, or several, are others.
fn changed(bytes: &[u8]) -> Option<String> {
    static READ: OnceLock<Vec<Value>> = OnceLock::new();
    let files = READ.get_or_init(|| SAVED.iter().map(|text| serde_json::from_str(text).expect("JSON")).collect());
    let (which, bytes) = first(bytes);
    let mut file = files.get(usize::from(which))?.clone();
    let text = std::str::from_utf8(bytes.get(2..)?).ok()?;
    let (mut place, _) = first_two(bytes);
    for part in text.split('\u{1e}').take(4) {
        place = place.wrapping_mul(31).wrapping_add(part.len() / 64);
        let value = serde_json::from_str(part).unwrap_or_else(|_| Value::from(part));
        let count = count(&file);
        *node(&mut file, &mut (place % count)).expect("counted") = value;
    }
    Some(file.to_string())
}

fn count(value: &Value) -> usize {
    1 + match value {
        Value::Array(all) => all.iter().map(count).sum(),
        Value::Object(all) => all.values().map(count).sum(),
        _ => 0,
    }
}

/// The value at a place, counted as [`count`] counts.
fn node<'a>(value: &'a mut Value, place: &mut usize) -> Option<&'a mut Value> {
    if *place == 0 {
        return Some(value);
    }
    *place -= 1;
    match value {
        Value::Array(all) => all.iter_mut().find_map(|one| node(one, place)),
        Value::Object(all) => all.values_mut().find_map(|one| node(one, place)),
        _ => None,
    }
}

/// The way it lies in storage: a text a section, a text a part of the records.
fn in_parts(job: &Job) {
    let mut again = Job::new(job.id.clone(), "");
    for &name in SectionName::ALL {
        read_section(&mut again, name.id(), &section_text(job, name)).expect("a section opens");
    }
    for (name, locked) in &job.locked {
        read_section(&mut again, name, &locked.value.to_string()).expect("a closed section stays closed");
    }
    for part in parts_from(job, 0) {
        read_records(&mut again, &records_text(job, &part)).expect("records open");
    }
    for &name in SectionName::ALL {
        assert_eq!(section_text(&again, name), section_text(job, name));
    }
    assert_eq!(again.records.len(), job.records.len(), "no record is lost");
    for part in parts_from(job, 0) {
        assert_eq!(records_text(&again, &part), records_text(job, &part));
    }
}
