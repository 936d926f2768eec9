//! Everything a device keeps, in one file: written, opened whole or not at all, and compared with what is here before
//! anything changes.
//!
//! ```text
//! {"format": "bedwright-backup", "version": 1, "letters": …, "check": "…", "contents":
//!     {"day": …, "jobs": [job files], "prices": {part: …}, "person": …, "aside": {key: text}, "photos": {name: address}}}
//! ```
//!
//! `letters` counts the bytes of the contents as they are written, `check` is their CRC-32: a file that was cut or changed on
//! its way is refused. The invented sample is no part of it.

mod compare;
mod ledger;

pub use compare::{Against, RowsAgainst, against, newer_taken, rows_against};
pub use ledger::{Ledger, Owing, QUIET_DAYS, print_of};

use serde_json::{Map, Value};

use crate::envelope::crc32;
use crate::job::Job;
use crate::prices::PriceList;
use crate::saved::{self, Unreadable};

/// The name of the format.
pub const FORMAT: &str = "bedwright-backup";
/// Its version.
pub const VERSION: u64 = 1;
/// The most bytes a backup may have.
pub const LONGEST: usize = 256 * 1024 * 1024;

/// Texts by their keys.
pub type Texts = Vec<(String, String)>;

/// What a device keeps.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Backup {
    /// The day it was made, as `2026-11-24`.
    pub day: String,
    /// Every job but the sample, those in the bin too.
    pub jobs: Vec<Job>,
    /// The parts of the price list that say something, by their names.
    pub prices: Texts,
    /// The person's ways, as they are kept.
    pub person: String,
    /// Texts that could not be read and were set aside, by their keys.
    pub aside: Texts,
    /// Photos as data addresses, by their names.
    pub photos: Texts,
}

/// Why a file is no backup that can be taken in. Nothing is changed then.
#[derive(Clone, Debug, PartialEq)]
pub enum NoBackup {
    /// It is longer than any backup.
    TooLong,
    /// It is something else.
    OtherThing,
    /// It is one job, not a backup.
    OneJob,
    /// Its end is missing.
    Cut,
    /// It was changed since it was written.
    Changed,
    /// It is of a later version, or holds a job that is.
    TooNew,
    /// It is whole, but a job in it doesn't read.
    Job(Unreadable),
}

/// A backup as a file.
#[must_use]
pub fn backup_text(backup: &Backup) -> String {
    let mut contents = Map::new();
    contents.insert("day".to_owned(), backup.day.as_str().into());
    let jobs = backup.jobs.iter().filter(|job| !job.head.body.sample);
    contents.insert("jobs".to_owned(), Value::Array(jobs.map(saved::job_value).collect()));
    let texts = |texts: &Texts| {
        let mut map = Map::new();
        for (key, text) in texts {
            map.insert(key.clone(), text.as_str().into());
        }
        Value::Object(map)
    };
    contents.insert("prices".to_owned(), texts(&backup.prices));
    contents.insert("person".to_owned(), backup.person.as_str().into());
    contents.insert("aside".to_owned(), texts(&backup.aside));
    contents.insert("photos".to_owned(), texts(&backup.photos));
    let contents = Value::Object(contents).to_string();
    let (letters, check) = (contents.len(), crc32(contents.as_bytes()));
    [
        "{\"format\":\"",
        FORMAT,
        "\",\"version\":",
        &VERSION.to_string(),
        ",\"letters\":",
        &letters.to_string(),
        ",\"check\":\"",
        &format!("{check:08x}"),
        "\",\"contents\":",
        &contents,
        "}\n",
    ]
    .concat()
}

/// Opens a backup.
///
/// # Errors
/// [`NoBackup`]: why it can't be taken in, not even a part of it.
pub fn read_backup(text: &str) -> Result<Backup, NoBackup> {
    if text.len() > LONGEST {
        return Err(NoBackup::TooLong);
    }
    // Programs that save texts may put a mark before the first letter.
    let text = text.trim_start_matches('\u{feff}').trim();
    let begun = text.get(..64).unwrap_or(text).contains(FORMAT);
    let value = saved::exact::value(text).map_err(|wrong| match (begun, wrong.is_eof()) {
        (true, true) => NoBackup::Cut,
        (true, false) => NoBackup::Changed,
        (false, _) => NoBackup::OtherThing,
    })?;
    let Value::Object(mut file) = value else { return Err(NoBackup::OtherThing) };
    match file.get("format").and_then(Value::as_str) {
        Some(FORMAT) => {}
        Some(saved::FORMAT) => return Err(NoBackup::OneJob),
        _ => return Err(if begun { NoBackup::Changed } else { NoBackup::OtherThing }),
    }
    let version = file.get("version").and_then(Value::as_u64).ok_or(NoBackup::Changed)?;
    if version > VERSION {
        return Err(NoBackup::TooNew);
    }
    let contents = file.remove("contents").ok_or(NoBackup::Changed)?;
    // Written anew, so that another layout of the same file does no harm.
    let written = contents.to_string();
    let letters = file.get("letters").and_then(Value::as_u64).and_then(|letters| usize::try_from(letters).ok());
    let check = format!("{:08x}", crc32(written.as_bytes()));
    if letters != Some(written.len()) || file.get("check").and_then(Value::as_str) != Some(check.as_str()) {
        return Err(NoBackup::Changed);
    }
    drop(written);
    let Value::Object(mut contents) = contents else { return Err(NoBackup::Changed) };
    let Some(Value::Array(files)) = contents.remove("jobs") else { return Err(NoBackup::Changed) };
    let mut jobs = Vec::with_capacity(files.len());
    for file in files {
        jobs.push(saved::read_job_value(file).map_err(|why| match why {
            Unreadable::TooNew { .. } => NoBackup::TooNew,
            why => NoBackup::Job(why),
        })?);
    }
    let text = |contents: &mut Map<String, Value>, key: &str| match contents.remove(key) {
        Some(Value::String(text)) => text,
        _ => String::new(),
    };
    Ok(Backup {
        day: text(&mut contents, "day"),
        jobs,
        prices: texts_of(contents.remove("prices")),
        person: text(&mut contents, "person"),
        aside: texts_of(contents.remove("aside")),
        photos: texts_of(contents.remove("photos")),
    })
}

fn texts_of(value: Option<Value>) -> Texts {
    let Some(Value::Object(map)) = value else { return Texts::new() };
    map.into_iter()
        .filter_map(|(key, value)| match value {
            Value::String(text) => Some((key, text)),
            _ => None,
        })
        .collect()
}

/// The parts of a device's price list that say something.
#[must_use]
pub fn list_texts(list: &PriceList) -> Texts {
    let blank = PriceList::shipped();
    let says = |part: &String| saved::list_text(list, part) != saved::list_text(&blank, part);
    // Every part holds the state of the list; only those with something of their own go along.
    if list.catalogue.revision.is_none() {
        return Texts::new();
    }
    saved::list_parts().into_iter().filter(says).map(|part| (part.clone(), saved::list_text(list, &part))).collect()
}

/// The price list of a backup; none where a part of it doesn't read.
#[must_use]
pub fn list_of(backup: &Backup) -> Option<PriceList> {
    let mut list = PriceList::shipped();
    for (part, text) in &backup.prices {
        saved::read_list_part(&mut list, part, text).ok()?;
    }
    Some(list)
}
