//! The backup of this device: made, noted, brought in.

use std::sync::Arc;

use bedwright_edge::fault::Fault;
use bedwright_edge::files::{self, Shared};
use bedwright_edge::{photo, storage};
use bedwright_job::Job;
use bedwright_job::backup::{
    Against, Backup, Owing, RowsAgainst, against, backup_text, list_of, list_texts, newer_taken, rows_against,
};
use bedwright_job::day::Day;
use bedwright_job::edit::{Edit, apply};
use bedwright_job::history::History;
use bedwright_job::id::Id;
use bedwright_job::prices::ListEdit;
use bedwright_job::sections::head::TextField;
use bedwright_job::words::KeepingLabel;

use super::{Desk, ERASED, new_id, today};
use crate::person::Person;

/// The key that notes the last backup.
pub(super) const LEDGER: &str = "bedwright/backup";
/// The key that notes that the browser was asked to keep what is kept.
pub(super) const ASKED: &str = "bedwright/asked";
/// Keys of texts that were set aside start like this.
const ASIDE: &str = bedwright_edge::store::ASIDE;
const MIME: &str = "application/json";

/// A backup that is ready to be handed over.
#[derive(Clone)]
pub struct Ready {
    /// The name of its file.
    pub name: String,
    text: Arc<String>,
    jobs: Arc<Vec<Arc<Job>>>,
    /// Whether the photos are in it.
    pub photos: Result<(), Fault>,
}

/// What became of handing a backup over.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Handed {
    /// The browser took it as a download; whether it arrives isn't told.
    Downloaded,
    /// It was shared.
    Shared,
    /// The tap was too long ago.
    TapAgain,
    /// The person closed the sheet.
    Cancelled,
    /// The browser refused.
    Failed,
}

/// What a backup would do here.
#[derive(Clone)]
pub struct Dry {
    /// The backup.
    pub backup: Arc<Backup>,
    /// How each of its jobs stands against the one here.
    pub jobs: Vec<Against>,
    /// What its price list would change; none where it can't be read.
    pub rows: Option<RowsAgainst>,
    /// Whether its ways are others than the person's.
    pub person: bool,
    /// The places in it of photos that aren't here.
    pub photos: Vec<usize>,
    /// The places in it of texts set aside that aren't here.
    pub aside: Vec<usize>,
}

impl Dry {
    /// How many jobs stand like this.
    pub fn count(&self, wanted: Against) -> usize {
        self.jobs.iter().filter(|against| **against == wanted).count()
    }

    /// Whether there is anything that isn't here already.
    pub fn brings(&self) -> bool {
        let rows = self.rows.as_ref().is_some_and(|rows| !rows.new.is_empty() || !rows.differing.is_empty());
        let jobs = self.jobs.iter().any(|against| !matches!(against, Against::Same | Against::Older));
        jobs || rows || self.person || !self.photos.is_empty() || !self.aside.is_empty()
    }
}

impl Desk {
    /// What a backup would hold that the last one doesn't. Follows jobs, price list and ledger.
    pub fn owing(self) -> Option<Owing> {
        self.shelf.with(|shelf| {
            self.prices
                .list
                .with(|list| self.ledger.with(|ledger| ledger.owing(shelf.values().map(|job| &**job), list)))
        })
    }

    /// Whether there is a job that a backup would hold.
    pub fn anything_to_back_up(self) -> bool {
        self.shelf.with(|shelf| shelf.values().any(|job| !job.head.body.sample))
            || self.prices.list.with(|list| list.catalogue.revision.is_some())
    }

    /// What is owing, where it is time to say so.
    pub fn reminds(self) -> Option<Owing> {
        let today = Day::of(&today())?;
        let due =
            self.shelf.with(|shelf| self.ledger.with(|ledger| ledger.reminds(today, shelf.values().map(|job| &**job))));
        if due { self.owing() } else { None }
    }

    /// Puts the reminder off.
    pub fn put_backup_off(self) {
        if let Some(today) = Day::of(&today()) {
            self.ledger.update(|ledger| ledger.put_off(today));
            self.keep_ledger();
        }
    }

    pub(super) fn keep_ledger(self) {
        let text = self.ledger.with_untracked(bedwright_job::backup::Ledger::text);
        self.keeper.schedule(LEDGER, &text);
    }

    /// Asks the browser once, when the first job is kept, not to erase anything by itself. What it answered is looked up
    /// whenever it is shown: it may change its mind.
    pub(super) fn ask_once_to_keep(self) {
        if self.asked.replace(true) {
            return;
        }
        self.keeper.schedule(ASKED, &["1 ", &today()].concat());
        wasm_bindgen_futures::spawn_local(async {
            bedwright_edge::persist::persist().await;
            bedwright_edge::trace::leave().await;
        });
    }

    /// Puts a backup together.
    pub async fn backup_ready(self) -> Ready {
        self.keeper.flush();
        let (photos, read) = match photo::all().await {
            Ok(photos) => (photos, Ok(())),
            Err(fault) => (Vec::new(), Err(fault)),
        };
        let jobs: Vec<Arc<Job>> = self.shelf.with_untracked(|shelf| shelf.values().cloned().collect());
        let backup = Backup {
            day: today(),
            jobs: jobs.iter().map(|job| (**job).clone()).collect(),
            prices: self.prices.list.with_untracked(|list| list_texts(list)),
            person: self.person.with_untracked(Person::text),
            aside: self.asides().await,
            photos,
        };
        Ready {
            name: format!("bedwright-backup-{}.json", backup.day),
            text: Arc::new(backup_text(&backup)),
            jobs: Arc::new(jobs),
            photos: read,
        }
    }

    async fn asides(self) -> Vec<(String, String)> {
        self.keeper.texts(ASIDE).await
    }

    /// Hands a backup over, and notes it where that went well.
    pub async fn hand_over(self, ready: &Ready) -> Handed {
        let handed = if files::should_share() && files::can_share_file(&ready.name, MIME) {
            match files::share_file(&ready.name, MIME, ready.text.as_bytes()).await {
                Shared::Done => Handed::Shared,
                Shared::Cancelled => Handed::Cancelled,
                Shared::TapAgain => Handed::TapAgain,
                Shared::Unsupported | Shared::Failed(_) => Handed::Failed,
            }
        } else {
            match files::download(&ready.name, MIME, ready.text.as_bytes()) {
                Ok(()) => Handed::Downloaded,
                Err(_) => Handed::Failed,
            }
        };
        if matches!(handed, Handed::Downloaded | Handed::Shared)
            && let Some(today) = Day::of(&today())
        {
            self.ledger.update(|ledger| {
                self.prices.list.with_untracked(|list| ledger.note(today, ready.jobs.iter().map(|job| &**job), list));
            });
            self.keep_ledger();
        }
        handed
    }

    /// What a backup would do here. Nothing is changed.
    pub async fn backup_tried(self, backup: Backup) -> Dry {
        let photos = photo::all().await.unwrap_or_default();
        let aside = self.asides().await;
        let jobs = self.shelf.with_untracked(|shelf| {
            backup.jobs.iter().map(|job| against(shelf.get(&job.id).map(|here| &**here), job)).collect()
        });
        let list = list_of(&backup);
        let rows = list.map(|there| self.prices.list.with_untracked(|here| rows_against(here, &there)));
        let absent = |texts: &[(String, String)], here: &[(String, String)]| {
            let there = |key: &str| here.iter().any(|(known, _)| known == key);
            (0..texts.len()).filter(|at| texts.get(*at).is_some_and(|(key, _)| !there(key))).collect::<Vec<usize>>()
        };
        let person = Person::read(&backup.person).is_some_and(|ways| {
            self.person.with_untracked(|here| Person { device: here.device.clone(), ..ways } != *here)
        });
        Dry {
            jobs,
            rows,
            person,
            photos: absent(&backup.photos, &photos),
            aside: absent(&backup.aside, &aside),
            backup: Arc::new(backup),
        }
    }

    /// Takes a backup in, as its trial said. How many jobs came or were changed.
    pub async fn take_backup(self, dry: &Dry, differing_rows: bool, ways: bool) -> usize {
        let here = |id: &Id| self.shelf.with_untracked(|shelf| shelf.get(id).cloned());
        let changing = dry.backup.jobs.iter().filter(|there| {
            here(&there.id).is_some_and(|here| !matches!(against(Some(&here), there), Against::Same | Against::Older))
        });
        let changing: Vec<Id> = changing.map(|there| there.id.clone()).collect();
        // Until all is written nobody works on them in another tab.
        let holds = self.held_for_now(&changing).await;
        let day = Day::of(&dry.backup.day);
        // What was counted here after the backup was made may be counted again: from here on this is another device.
        self.person.update(|person| person.device = new_id());
        let device = self.person.with_untracked(|person| person.device.clone());
        let mut count = 0;
        for there in &dry.backup.jobs {
            let here = here(&there.id);
            // Once more: another tab may have changed it since the trial.
            let job = match against(here.as_deref(), there) {
                Against::Same | Against::Older => continue,
                Against::New => {
                    let (keeper, mark) = (self.keeper.clone(), format!("{ERASED}{}", there.id));
                    wasm_bindgen_futures::spawn_local(async move {
                        // One that stays is looked at again at the next start.
                        let _ = keeper.remove(&mark).await;
                    });
                    there.clone()
                }
                Against::Newer => here.map_or_else(|| there.clone(), |here| newer_taken(&here, there)),
                Against::Conflicting => {
                    let mut own = there.clone();
                    own.id = new_id();
                    let places = [("title", there.head.body.title.as_str()), ("day", dry.backup.day.as_str())];
                    let text = self.manner().sentence(KeepingLabel::FromBackup, &places);
                    // A head of a later version keeps its title.
                    let _ = apply(&mut own, Edit::Text { field: TextField::Title, text }, &device);
                    own
                }
            };
            count += 1;
            self.ledger.update(|ledger| ledger.know(&job, day));
            self.keep(&job, None);
            self.put_on_shelf(job);
        }
        self.take_rows(dry, differing_rows);
        if ways && let Some(there) = Person::read(&dry.backup.person) {
            self.person.update(|person| *person = Person { device: person.device.clone(), ..there });
        }
        self.keep_person();
        self.keep_ledger();
        for (key, text) in dry.aside.iter().filter_map(|at| dry.backup.aside.get(*at)) {
            if key.starts_with(ASIDE) {
                self.keeper.schedule(key, text);
            }
        }
        self.keeper.flush();
        drop(holds);
        let backup = dry.backup.clone();
        let photos = dry.photos.clone();
        wasm_bindgen_futures::spawn_local(async move {
            for (name, address) in photos.iter().filter_map(|at| backup.photos.get(*at)) {
                if address.starts_with("data:image/") {
                    // One that has no room is asked for again when the backup is tried once more.
                    let _ = photo::keep(name, address).await;
                }
            }
        });
        count
    }

    fn take_rows(self, dry: &Dry, differing: bool) {
        let Some(rows) = &dry.rows else { return };
        let own = self.prices.list.with_untracked(|list| list.catalogue.revision.is_some());
        let mut taken: Vec<_> = rows.new.iter().map(|row| (row.key.clone(), Some(row.clone()))).collect();
        if differing {
            taken.extend(rows.differing.iter().map(|row| (row.key.clone(), Some(row.clone()))));
        }
        if !taken.is_empty() && self.edit_list("", ListEdit::Rows(taken)) {
            self.turn_list();
        }
        let Some(there) = list_of(&dry.backup) else { return };
        let nameless = self
            .prices
            .list
            .with_untracked(|list| (list.catalogue.title.is_empty(), list.catalogue.currency.is_empty()));
        if nameless.0 && !there.catalogue.title.is_empty() {
            self.edit_list("", ListEdit::Title(there.catalogue.title));
        }
        if nameless.1 && !there.catalogue.currency.is_empty() {
            self.edit_list("", ListEdit::Currency(there.catalogue.currency));
        }
        // Nothing but what came is in it.
        if !own {
            self.ledger.update(|ledger| self.prices.list.with_untracked(|list| ledger.know_list(list)));
        }
    }

    /// Puts a job on the shelf in the place of the one of its id, open or not.
    fn put_on_shelf(self, job: Job) {
        let job = Arc::new(job);
        self.shelf.update(|shelf| drop(shelf.insert(job.id.clone(), job.clone())));
        if self.job.with_untracked(|open| open.as_ref().is_some_and(|open| open.id == job.id)) {
            self.history.set(History::default());
            self.job.set(Some(job));
            self.turned.update(|n| *n = n.wrapping_add(1));
        }
    }
}

/// How much of the first place is in use, by what: letters.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Room {
    /// Sections and records of jobs.
    pub jobs: u64,
    /// The price list.
    pub prices: u64,
    /// Texts set aside.
    pub aside: u64,
    /// The page's other texts.
    pub rest: u64,
    /// Texts of other pages of the same origin.
    pub others: u64,
}

impl Room {
    /// Looks at local storage; none where it is blocked.
    pub fn now() -> Option<Room> {
        let mut room = Room::default();
        for key in storage::keys("").ok()? {
            let text = storage::read(&key).ok()?.unwrap_or_default();
            let letters = u64::try_from(storage::entry_bytes(&key, &text) / 2).unwrap_or(u64::MAX);
            let place = if key.starts_with(super::JOBS) {
                &mut room.jobs
            } else if key.starts_with(super::prices::PRICES) {
                &mut room.prices
            } else if key.starts_with(ASIDE) {
                &mut room.aside
            } else if key.starts_with(super::PREFIX) {
                &mut room.rest
            } else {
                &mut room.others
            };
            *place = place.saturating_add(letters);
        }
        Some(room)
    }

    /// All of it.
    pub fn used(&self) -> u64 {
        [self.jobs, self.prices, self.aside, self.rest, self.others].iter().sum()
    }
}
