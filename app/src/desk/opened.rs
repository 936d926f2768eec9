//! What this device keeps, read at the start.

use std::cmp::Ordering;
use std::sync::Arc;

use bedwright_edge::store::Keeper;
use bedwright_edge::trace;
use bedwright_job::Job;
use bedwright_job::backup::Ledger;
use bedwright_job::id::Id;
use bedwright_job::prices::PriceList;
use bedwright_job::saved::{self, Unreadable};
use bedwright_job::words::Language;
use litemap::LiteMap;

use super::{ERASED, JOBS, PREFIX, backing, new_id, prices, tabs};
use crate::person::{self, Person};

/// What was found at the start.
#[derive(Clone)]
pub struct Opened {
    pub(super) keeper: Keeper,
    pub(super) person: Person,
    pub(super) jobs: LiteMap<Id, Arc<Job>>,
    pub(super) list: PriceList,
    pub(super) ledger: Ledger,
    pub(super) asked: bool,
    pub(super) later: bool,
    pub(super) gone: bool,
    pub(super) unread: Vec<String>,
}

impl Opened {
    /// The language of the person at this device.
    pub fn language(&self) -> Language {
        self.person.language
    }

    /// Reads everything that is kept on this device. Starts whatever it finds: what can't be read is set aside.
    pub async fn load() -> Opened {
        let keeper = Keeper::open().await;
        let later = tabs::is_later(&keeper).await;
        if later {
            keeper.stop();
        }
        let loaded = keeper.load_all(PREFIX, newer).await;
        let mut jobs: LiteMap<Id, Arc<Job>> = LiteMap::new();
        let mut person = None;
        let mut list = PriceList::shipped();
        let mut ledger = Ledger::default();
        let mut asked = false;
        let mut marked = false;
        let mut unread = Vec::new();
        let erased: Vec<Id> =
            loaded.entries.iter().filter_map(|entry| entry.key.strip_prefix(ERASED)).map(Id::new).collect();
        for id in &erased {
            // A page that was closed while it erased goes on with it.
            let prefix = format!("{JOBS}{id}/");
            let keys =
                loaded.entries.iter().map(|entry| entry.key.clone()).filter(|key| key.starts_with(&prefix)).collect();
            wasm_bindgen_futures::spawn_local(erase_keys(keeper.clone(), id.clone(), keys));
        }
        for entry in loaded.entries {
            if erased.iter().any(|id| entry.key.starts_with(&format!("{JOBS}{id}/"))) {
                continue;
            }
            if entry.key == person::KEY {
                person = Person::read(&entry.text);
                continue;
            }
            if entry.key == backing::LEDGER {
                ledger = Ledger::read(&entry.text);
                continue;
            }
            if entry.key == tabs::FORMAT {
                marked = entry.text == tabs::version_text();
                continue;
            }
            if entry.key == backing::ASKED {
                asked = true;
                continue;
            }
            if entry.key.starts_with(prices::PRICES) {
                if !prices::take_part(&mut list, &entry.key, &entry.text, entry.other.as_deref(), &keeper) {
                    unread.push(entry.key);
                }
                continue;
            }
            let Some((id, section)) = entry.key.strip_prefix(JOBS).and_then(|rest| rest.split_once('/')) else {
                continue;
            };
            let id = Id::new(id);
            let job = Arc::make_mut(jobs.entry(id.clone()).or_insert_with(|| Arc::new(Job::new(id, ""))));
            let taken = take_text(job, section, &entry.text);
            // Where one place holds a damaged text the other may hold it whole; the damaged one is kept aside all the same.
            let mended =
                taken.is_err() && entry.other.as_deref().is_some_and(|other| take_text(job, section, other).is_ok());
            if taken.is_err() {
                keeper.protect(&entry.key);
            }
            if taken.is_err() && !mended {
                unread.push(entry.key);
            }
        }
        // The person's ways are kept at every start: where they are missing, it is the first one, or all is gone.
        let gone = person.is_none() && jobs.is_empty() && !keeper.memory_only() && trace::there().await;
        let person = person.unwrap_or_else(|| Person::new(new_id()));
        keeper.schedule(person::KEY, &person.text());
        if !marked {
            tabs::keep_version(&keeper);
        }
        Opened { keeper, person, jobs, list, ledger, asked, later, gone, unread }
    }
}

/// Takes what is kept of a job under a name into it.
pub(super) fn take_text(job: &mut Job, name: &str, text: &str) -> Result<(), Unreadable> {
    if saved::is_records(name) { saved::read_records(job, text) } else { saved::read_section(job, name, text) }
}

/// Which of two texts of one key is the newer. The person's ways count no changes: the journal, which a kill leaves whole, has
/// the later ones.
pub(super) fn newer(local: &str, journal: &str) -> Ordering {
    let ways = |text: &str| text.starts_with("1 ");
    if ways(local) && ways(journal) { Ordering::Less } else { saved::newer(local, journal) }
}

/// Takes a job's keys away, and its mark when all are gone; what can't be taken away now is at the next start.
pub(super) async fn erase_keys(keeper: Keeper, id: Id, keys: Vec<String>) {
    let mut gone = true;
    for key in keys {
        gone &= keeper.remove(&key).await.is_ok();
    }
    if gone && keeper.remove(&format!("{ERASED}{id}")).await.is_err() {
        web_sys::console::warn_1(&wasm_bindgen::JsValue::from_str("an erased job's mark stays"));
    }
}
