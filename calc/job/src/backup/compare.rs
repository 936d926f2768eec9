//! What a backup would do to a device, job by job.

use std::cmp::Ordering;
use std::sync::Arc;

use serde_json::Value;

use crate::job::Job;
use crate::prices::{Origin, PriceList, PriceRow};
use crate::saved;
use crate::sections::SectionName;

/// How a job of a backup stands against the one of its id on this device.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Against {
    /// There is none here.
    New,
    /// They say the same.
    Same,
    /// The backup's is a later state of the one here.
    Newer,
    /// The backup's is an earlier state of the one here.
    Older,
    /// Both were changed, or nobody can tell which came first.
    Conflicting,
}

/// How a job of a backup stands against the one here.
#[must_use]
pub fn against(here: Option<&Job>, there: &Job) -> Against {
    let Some(here) = here else { return Against::New };
    let mut seen = Seen::default();
    for name in names(here, there) {
        seen.section(&section(here, &name), &section(there, &name));
    }
    seen.records(here, there);
    // What only one of them knows besides: nobody can tell when it came.
    if here.unknown != there.unknown {
        seen.newer = true;
        seen.older = true;
    }
    match (seen.newer, seen.older) {
        (false, false) => Against::Same,
        (true, false) => Against::Newer,
        (false, true) => Against::Older,
        (true, true) => Against::Conflicting,
    }
}

/// The names of all sections of either.
fn names(here: &Job, there: &Job) -> Vec<String> {
    let mut names: Vec<String> = SectionName::ALL.iter().map(|name| name.id().to_owned()).collect();
    for name in here.locked.keys().chain(there.locked.keys()) {
        if !names.contains(name) {
            names.push(name.clone());
        }
    }
    names
}

/// A section as it is written; nothing where there is none of the name.
fn section(job: &Job, name: &str) -> Value {
    saved::section_value_of(job, name).unwrap_or(Value::Null)
}

#[derive(Default)]
struct Seen {
    newer: bool,
    older: bool,
}

impl Seen {
    fn section(&mut self, here: &Value, there: &Value) {
        // How it came about makes no difference; what it says does, what later versions added to it as well.
        let says = |section: &Value| {
            let mut says = section.clone();
            if let Value::Object(map) = &mut says {
                for key in ["revision", "parent", "base"] {
                    map.remove(key);
                }
            }
            says
        };
        if says(here) == says(there) {
            return;
        }
        match order(here, there) {
            Some(Ordering::Less) => self.newer = true,
            Some(Ordering::Greater) => self.older = true,
            _ => {
                self.newer = true;
                self.older = true;
            }
        }
    }

    fn records(&mut self, here: &Job, there: &Job) {
        self.newer |= there.records.iter().any(|record| !here.records.contains(record));
        self.older |= here.records.iter().any(|record| !there.records.contains(record));
    }
}

/// Which of two different states of a section came first, where that is known.
fn order(here: &Value, there: &Value) -> Option<Ordering> {
    let (ours, theirs) = (here.get("revision"), there.get("revision"));
    if ours.is_none() && theirs.is_some() {
        return Some(Ordering::Less);
    }
    if theirs.is_none() && ours.is_some() {
        return Some(Ordering::Greater);
    }
    let (ours, theirs) = (ours?, theirs?);
    if ours.get("device") == theirs.get("device") {
        let count = |revision: &Value| revision.get("counter").and_then(Value::as_u64);
        return Some(count(ours)?.cmp(&count(theirs)?));
    }
    // Made from the other's very state, when it was handed over.
    if there.get("parent") == Some(ours) {
        return Some(Ordering::Less);
    }
    (here.get("parent") == Some(theirs)).then_some(Ordering::Greater)
}

/// The job here brought to the later state of a backup. Records of both stay.
#[must_use]
pub fn newer_taken(here: &Job, there: &Job) -> Job {
    let mut job = here.clone();
    for name in names(here, there) {
        let (ours, theirs) = (section(here, &name), section(there, &name));
        if ours != theirs && order(&ours, &theirs) == Some(Ordering::Less) {
            // It was read from the same text, so it reads.
            let _ = saved::read_section(&mut job, &name, &theirs.to_string());
        }
    }
    for record in &there.records {
        if !job.records.contains(record) {
            job.records.push(record.clone());
        }
    }
    job
}

/// What the price list of a backup would do to the one here.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct RowsAgainst {
    /// Rows that aren't here, or are here as they ship.
    pub new: Vec<Arc<PriceRow>>,
    /// Rows that say something else here.
    pub differing: Vec<Arc<PriceRow>>,
    /// How many say the same.
    pub same: usize,
}

/// Compares two price lists row by row. Rows as they ship don't count.
#[must_use]
pub fn rows_against(here: &PriceList, there: &PriceList) -> RowsAgainst {
    let mut found = RowsAgainst::default();
    for row in there.rows().iter().filter(|row| row.origin != Origin::Shipped) {
        match here.row(&row.key) {
            Some(own) if own == row => found.same += 1,
            Some(own) if own.origin != Origin::Shipped => found.differing.push(row.clone()),
            _ => found.new.push(row.clone()),
        }
    }
    found
}
