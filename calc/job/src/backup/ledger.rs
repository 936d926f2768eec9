//! What went into the last backup, so that it can be told whether anything changed since.

use litemap::LiteMap;
use serde_json::{Map, Value};

use crate::day::Day;
use crate::envelope::crc32;
use crate::id::Id;
use crate::job::Job;
use crate::prices::PriceList;
use crate::sections::SectionName;

/// Nobody is reminded sooner than so many days after the last backup, or after putting it off.
pub const QUIET_DAYS: i64 = 7;

/// The last backup, and when to be quiet. Kept on the device as a text.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ledger {
    /// Counted up at every change.
    changes: u64,
    /// The day of the last backup; none before the first.
    pub day: Option<Day>,
    /// The day the reminder was last put off.
    put_off: Option<Day>,
    /// The state each job was in, by its id.
    jobs: LiteMap<Id, u32>,
    /// The state the price list was in.
    prices: u32,
}

/// That a backup is due.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Owing {
    /// How many jobs were changed or came since the last one.
    pub jobs: usize,
    /// Whether the price list was changed.
    pub prices: bool,
    /// The day of the last one; none where there never was one.
    pub since: Option<Day>,
}

/// A short print of the state a job is in: another state, another print.
#[must_use]
pub fn print_of(job: &Job) -> u32 {
    let mut text = String::new();
    for &name in SectionName::ALL {
        if let Some(revision) = job.revision(name) {
            text.push_str(
                &[name.id(), " ", revision.device.as_str(), " ", &revision.counter.to_string(), "\n"].concat(),
            );
        }
    }
    for record in &job.records {
        text.push_str(record.id.as_str());
        text.push('\n');
    }
    crc32(text.as_bytes())
}

fn print_of_list(list: &PriceList) -> u32 {
    if list.catalogue.revision.is_none() { 0 } else { crc32(list.catalogue.version().as_bytes()) }
}

impl Ledger {
    /// Notes a backup of these jobs and this list.
    pub fn note<'a>(&mut self, day: Day, jobs: impl Iterator<Item = &'a Job>, list: &PriceList) {
        self.changes = self.changes.saturating_add(1);
        self.day = Some(day);
        self.put_off = None;
        self.jobs = LiteMap::new();
        for job in jobs.filter(|job| !job.head.body.sample) {
            self.jobs.insert(job.id.clone(), print_of(job));
        }
        self.prices = print_of_list(list);
    }

    /// What changed since the last backup; none where nothing did. The sample doesn't count, nor does a job nobody made yet.
    #[must_use]
    pub fn owing<'a>(&self, jobs: impl Iterator<Item = &'a Job>, list: &PriceList) -> Option<Owing> {
        let changed = |job: &&Job| !job.head.body.sample && self.jobs.get(&job.id) != Some(&print_of(job));
        let jobs = jobs.filter(changed).count();
        let prices = self.prices != print_of_list(list);
        (jobs > 0 || prices).then_some(Owing { jobs, prices, since: self.day })
    }

    /// Whether to remind of what is owing: it has been a week, and nobody put it off within the last. Where there never was a
    /// backup, a week after the oldest job was made.
    #[must_use]
    pub fn reminds<'a>(&self, today: Day, jobs: impl Iterator<Item = &'a Job>) -> bool {
        let oldest = jobs.filter(|job| !job.head.body.sample).filter_map(|job| Day::of(&job.head.body.created)).min();
        let long_ago = |day: Day| today.since(day) >= QUIET_DAYS;
        self.day.or(oldest).is_some_and(long_ago) && self.put_off.is_none_or(long_ago)
    }

    /// Notes that a job here says what a backup of a day says, which is kept somewhere.
    pub fn know(&mut self, job: &Job, day: Option<Day>) {
        self.changes = self.changes.saturating_add(1);
        self.day = self.day.max(day);
        self.jobs.insert(job.id.clone(), print_of(job));
    }

    /// Notes that the price list here says what a backup says.
    pub fn know_list(&mut self, list: &PriceList) {
        self.changes = self.changes.saturating_add(1);
        self.prices = print_of_list(list);
    }

    /// Puts the reminder off.
    pub fn put_off(&mut self, day: Day) {
        self.changes = self.changes.saturating_add(1);
        self.put_off = Some(day);
    }

    /// As it is kept: with a counter, so that of two copies the later is known.
    #[must_use]
    pub fn text(&self) -> String {
        let mut map = Map::new();
        let mut revision = Map::new();
        revision.insert("counter".to_owned(), self.changes.into());
        map.insert("revision".to_owned(), Value::Object(revision));
        for (key, day) in [("day", self.day), ("put_off", self.put_off)] {
            if let Some(day) = day {
                map.insert(key.to_owned(), day.text().into());
            }
        }
        map.insert("prices".to_owned(), self.prices.into());
        let mut jobs = Map::new();
        for (id, print) in self.jobs.iter() {
            jobs.insert(id.to_string(), (*print).into());
        }
        map.insert("jobs".to_owned(), Value::Object(jobs));
        Value::Object(map).to_string()
    }

    /// From what was kept. What can't be read counts as never backed up: the reminder comes, nothing is lost.
    #[must_use]
    pub fn read(text: &str) -> Ledger {
        let value: Value = serde_json::from_str(text).unwrap_or(Value::Null);
        let day = |key: &str| value.get(key).and_then(Value::as_str).and_then(Day::of);
        let print = |value: &Value| value.as_u64().and_then(|print| u32::try_from(print).ok());
        let mut ledger = Ledger {
            changes: value.pointer("/revision/counter").and_then(Value::as_u64).unwrap_or(0),
            day: day("day"),
            put_off: day("put_off"),
            jobs: LiteMap::new(),
            prices: value.get("prices").and_then(print).unwrap_or(0),
        };
        if let Some(Value::Object(jobs)) = value.get("jobs") {
            for (id, value) in jobs {
                if let Some(print) = print(value) {
                    ledger.jobs.insert(Id::new(id), print);
                }
            }
        }
        ledger
    }
}
