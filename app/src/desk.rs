//! What every screen works with: the jobs on this device, the one that is open, the way to change it, the answers it
//! gives. Screens read signals and send edits; nothing else writes.

mod backing;
mod drafts;
mod files;
mod opened;
mod prices;
mod quoting;
mod shelf;
mod steps;
mod tabs;
mod travel;

use std::any::Any;
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use std::sync::Arc;

use bedwright_edge::store::{Keeper, Status};
use bedwright_edge::{clock, intl, random, update};
use bedwright_job::Job;
use bedwright_job::answers::water::{WaterAnswers, WaterAsked, water_answers};
use bedwright_job::answers::{JobBill, VesselAnswers, job_bill, vessel_answers};
use bedwright_job::backup::Ledger;
use bedwright_job::edit::{Edit, Refused, apply};
use bedwright_job::history::History;
use bedwright_job::id::Id;
use bedwright_job::job::Record;
use bedwright_job::saved;
use bedwright_job::words::{Fixed, Language, Manner};
use leptos::prelude::*;
use litemap::LiteMap;

use crate::notices::{self, Notice};
use crate::parts::signal::{Held, Worked};
use crate::person::{self, Person};
use crate::route::Route;

pub use backing::{Dry, Handed, Ready, Room};
pub use opened::Opened;
use prices::ListOnDesk;
pub use quoting::{Quoted, with_quote};
pub use tabs::Follows;
pub use travel::Tray;

/// Keys of everything this page keeps start like this.
const PREFIX: &str = "bedwright/";
/// Keys of jobs: then the job's id, then the section.
const JOBS: &str = "bedwright/job/";
/// Keys of jobs that are being erased: a job with such a mark is gone, whatever of it is still found.
const ERASED: &str = "bedwright/erased/";
/// Jobs stay in the bin for this many days.
pub const BIN_DAYS: i64 = 30;

/// A new id, from the browser's random numbers; from the clock where it has none.
pub fn new_id() -> Id {
    Id::new(&random::id().unwrap_or_else(|_| clock::now_iso()))
}

/// Today, as `2026-11-24`.
pub fn today() -> String {
    let (year, month, day) = clock::today();
    format!("{year:04}-{month:02}-{day:02}")
}

/// Days between two civil dates written as `2026-11-24`.
pub fn days_between(from: &str, to: &str) -> Option<i64> {
    let days = |text: &str| -> Option<i64> {
        let mut parts = text.splitn(3, '-').map(|part| part.parse::<i64>().ok());
        let (year, month, day) = (parts.next()??, parts.next()??, parts.next()??);
        // Days of the civil calendar, counted from March so that the leap day ends the year.
        let (y, m) = if month <= 2 { (year - 1, month + 9) } else { (year, month - 3) };
        Some(365 * y + y.div_euclid(4) - y.div_euclid(100) + y.div_euclid(400) + (153 * m + 2) / 5 + day - 1)
    };
    Some(days(to)? - days(from)?)
}

/// What a vessel says, kept up to date.
pub type Answers = Worked<Option<Arc<VesselAnswers>>>;

/// What the water side of a vessel says, kept up to date while it is looked at.
pub type Water = Worked<Option<Arc<WaterAnswers>>>;

/// The desk. A handle: there is one desk for the life of the page, and copying this copies nothing.
#[derive(Clone, Copy)]
pub struct Desk(&'static Parts);

impl std::ops::Deref for Desk {
    type Target = Parts;

    fn deref(&self) -> &Parts {
        self.0
    }
}

/// What lies on the desk.
pub struct Parts {
    keeper: Keeper,
    owner: Owner,
    /// Where the person is.
    pub route: Held<Route>,
    /// Every job on this device.
    pub shelf: Held<LiteMap<Id, Arc<Job>>>,
    /// The open job.
    pub job: Held<Option<Arc<Job>>>,
    history: Held<History>,
    /// The person's ways.
    pub person: Held<Person>,
    /// What must be seen.
    pub notices: Held<Vec<Notice>>,
    /// Whether what is typed is kept.
    pub status: Held<Status>,
    /// Whether the page works with no connection.
    pub offline: Held<bool>,
    /// Counted up when entries change by something else than typing: undo, another tab.
    pub turned: Held<u32>,
    /// The language papers are printed in, where it isn't the person's own.
    pub paper_language: Held<Option<Language>>,
    /// What came from somebody else and isn't taken in yet.
    pub tray: Held<Option<Tray>>,
    /// The price list of this device.
    pub prices: ListOnDesk,
    /// What went into the last backup.
    pub ledger: Held<Ledger>,
    /// What is being written and belongs to no job yet.
    drafts: RefCell<LiteMap<String, Rc<dyn Any>>>,
    answers: RefCell<LiteMap<Id, Answers>>,
    waters: RefCell<LiteMap<Id, Water>>,
    bill: Cell<Option<Worked<Arc<JobBill>>>>,
    quoted: Cell<Option<Worked<Option<Arc<Quoted>>>>>,
    counts: Cell<Counts>,
    /// Whether the browser was asked to keep what this page keeps.
    asked: Cell<bool>,
    /// Why the open job is another tab's to change; none where it is this one's.
    pub follows: Held<Option<Follows>>,
    /// Whether a later page keeps its texts here, so that this one writes nothing.
    pub outdated: Held<bool>,
    /// Where what can be taken back is kept; none until it is asked for.
    steps: RefCell<Option<bedwright_edge::journal::Journal>>,
    /// Whether that is about to be kept.
    steps_due: Cell<bool>,
    /// How many times that was begun and is not yet done.
    steps_owed: Cell<u32>,
    /// The job that is this tab's to change.
    hold: RefCell<Option<(Id, bedwright_edge::tabs::Hold)>>,
    /// Whether local storage was seen to hold what this page keeps.
    kept_once: Cell<bool>,
}

/// How often something was worked out since the last edit; shown on the page's root for tests.
#[derive(Clone, Copy, Default)]
struct Counts {
    vessels: u32,
    bills: u32,
    waters: u32,
}

impl Desk {
    /// Lays the desk out, once.
    pub fn lay(opened: Opened) -> Desk {
        let Opened { keeper, person, jobs, list, ledger, asked, later, gone, unread } = opened;
        let person = Held::new(person);
        let status = Held::new(keeper.status());
        let found = Held::new(Vec::new());
        let desk = Desk(Box::leak(Box::new(Parts {
            keeper: keeper.clone(),
            owner: Owner::current().unwrap_or_default(),
            route: Held::new(Route::of(&bedwright_edge::address::hash())),
            shelf: Held::new(jobs),
            job: Held::new(None),
            history: Held::new(History::default()),
            person,
            notices: found,
            status,
            offline: Held::new(update::offline() == update::Offline::Ready),
            turned: Held::new(0),
            paper_language: Held::new(None),
            tray: Held::new(None),
            prices: ListOnDesk::new(list),
            ledger: Held::new(ledger),
            drafts: RefCell::default(),
            answers: RefCell::default(),
            waters: RefCell::default(),
            bill: Cell::default(),
            quoted: Cell::default(),
            counts: Cell::default(),
            asked: Cell::new(asked),
            follows: Held::new(None),
            outdated: Held::new(later),
            steps: RefCell::default(),
            steps_due: Cell::new(false),
            steps_owed: Cell::new(0),
            hold: RefCell::default(),
            kept_once: Cell::new(false),
        })));
        if !unread.is_empty() {
            notices::put(found, Notice::SetAside(unread));
        }
        if gone {
            notices::put(found, Notice::AllGone);
        }
        keeper.on_status(move |now| {
            if status.with_untracked(|there| *there != now) {
                status.set(now);
            }
        });
        keeper.on_aside(move |aside| notices::put(found, Notice::SetAside(aside.copies)));
        desk.listen();
        desk.follow(&desk.route.get_untracked());
        desk.follow_shortcut(&bedwright_edge::address::hash());
        desk.carry_on_papers();
        if !gone {
            desk.mark_that_there_are_jobs();
        }
        desk
    }

    fn listen(self) {
        let moved = bedwright_edge::address::on_change(move |hash| {
            let route = Route::of(&hash);
            self.follow(&route);
            self.route.set(route);
            self.follow_shortcut(&hash);
            self.carry_on_papers();
        });
        let waiting = update::on_waiting(move || notices::put(self.notices, Notice::UpdateWaiting));
        if update::waiting() {
            notices::put(self.notices, Notice::UpdateWaiting);
        }
        let elsewhere = bedwright_edge::listen::Listener::on_window("bedwright-update-elsewhere", move |_| {
            notices::put(self.notices, Notice::UpdateElsewhere);
        });
        let ready = update::on_offline_ready(move || self.offline.set(true));
        self.listen_to_tabs();
        self.listen_for_leaving();
        for listener in [moved, waiting, elsewhere, ready].into_iter().flatten() {
            listener.forget();
        }
    }

    /// The one address that does something: a job is made, and Back leads to the jobs.
    fn follow_shortcut(self, hash: &str) {
        if hash == "/new" {
            bedwright_edge::address::replace("/jobs");
            self.new_job();
        }
    }

    /// Opens the job an address is about.
    fn follow(self, route: &Route) {
        self.hold_job(route.job());
        let Some(id) = route.job() else { return };
        if self.job.with_untracked(|job| job.as_ref().is_some_and(|job| job.id == *id)) {
            return;
        }
        let job = self.shelf.with_untracked(|shelf| shelf.get(id).cloned());
        let locked = job.as_ref().is_some_and(|job| !job.locked.is_empty());
        self.history.set(History::default());
        self.answers.borrow_mut().clear();
        self.waters.borrow_mut().clear();
        self.job.set(job);
        self.read_steps(id);
        notices::take(self.notices, &Notice::Locked);
        if locked {
            notices::put(self.notices, Notice::Locked);
        }
    }

    /// Takes over what another tab wrote, where it is newer than what this one has.
    fn changed_elsewhere(self, key: &str) {
        if key.starts_with(prices::PRICES) {
            return self.list_changed_elsewhere(key);
        }
        let Some((id, section)) = key.strip_prefix(JOBS).and_then(|rest| rest.split_once('/')) else { return };
        let id = Id::new(id);
        let Ok(Some(text)) = self.keeper.see(key) else { return };
        let mut job = self
            .shelf
            .with_untracked(|shelf| shelf.get(&id).map_or_else(|| Job::new(id.clone(), ""), |job| (**job).clone()));
        if opened::take_text(&mut job, section, &text).is_err() {
            notices::put(self.notices, Notice::SetAside(vec![key.to_owned()]));
            return;
        }
        let job = Arc::new(job);
        self.shelf.update(|shelf| {
            shelf.insert(id.clone(), job.clone());
        });
        if self.job.with_untracked(|open| open.as_ref().is_some_and(|open| open.id == id)) {
            self.job.set(Some(job));
            self.turned.update(|n| *n = n.wrapping_add(1));
            // A tab that follows says so all the time.
            if self.follows.with_untracked(Option::is_none) {
                notices::put(self.notices, Notice::ChangedElsewhere);
            }
        }
    }

    /// Goes to a screen.
    pub fn go(self, route: &Route) {
        bedwright_edge::address::go(route.address().trim_start_matches('#'));
    }

    /// How the person reads. Only the settings change it, and every other screen is drawn after them.
    pub fn manner(self) -> Manner {
        self.person.with_untracked(Person::manner)
    }

    /// How a paper is written: as the person reads, or in the language chosen for it, with that language's decimal mark.
    /// Followed: a paper changes with it.
    pub fn paper_manner(self) -> Manner {
        let manner = self.person.with(Person::manner);
        match self.paper_language.get() {
            Some(language) if language != manner.language => {
                let comma = intl::number_marks_of(language.tag()).is_some_and(|marks| marks.decimal == ",");
                Manner { language, decimal: if comma { ',' } else { '.' }, ..manner }
            }
            _ => manner,
        }
    }

    /// A fixed text, in the person's language.
    pub fn label(self, label: impl Fixed) -> &'static str {
        self.manner().label(label)
    }

    /// Reads something of the open job; its usual value where none is open.
    pub fn of_job<T: Default>(self, read: impl FnOnce(&Job) -> T) -> T {
        self.open().map(|job| read(&job)).unwrap_or_default()
    }

    /// The open job. One compiled copy for all who read it.
    #[inline(never)]
    pub fn open(self) -> Option<Arc<Job>> {
        self.job.get()
    }

    /// The job that the address is about, once it is open; followed.
    pub fn job_here(self) -> Option<Id> {
        self.route.with(|route| route.job().cloned()).filter(|_| self.job.with(Option::is_some))
    }

    /// The open job as it is now, whatever becomes of it.
    #[inline(never)]
    pub fn open_now(self) -> Option<Arc<Job>> {
        self.job.get_untracked()
    }

    fn change(self, edit: Edit) -> Option<Edit> {
        let before = self.open_now()?;
        if !self.may_change() {
            return None;
        }
        self.look_for_emptying();
        let mut job = (*before).clone();
        let device = self.person.with_untracked(|person| person.device.clone());
        match apply(&mut job, edit, &device) {
            Ok(inverse) => {
                self.counts.set(Counts::default());
                self.keep(&job, Some(&before));
                let job = Arc::new(job);
                self.shelf.update(|shelf| {
                    shelf.insert(job.id.clone(), job.clone());
                });
                self.job.set(Some(job));
                self.keep_steps();
                inverse
            }
            Err(refused) => {
                let notice = match refused {
                    Refused::Signed => Notice::Frozen,
                    Refused::NotSo => Notice::ChangedElsewhere,
                    _ => Notice::Locked,
                };
                notices::put(self.notices, notice);
                None
            }
        }
    }

    /// Adds a record to the open job once the browser reports it written through to the disk; tells whether it was. Where
    /// it wasn't, nothing is added.
    pub fn sign(self, record: Record, told: impl FnOnce(bool) + 'static) {
        let Some(before) = self.open_now().filter(|_| self.may_change()) else { return told(false) };
        let mut job = (*before).clone();
        let device = self.person.with_untracked(|person| person.device.clone());
        let part = saved::part_of(&record);
        let edit = Edit::AddRecord(record);
        if apply(&mut job, edit.clone(), &device).is_err() {
            return told(false);
        }
        let key = format!("{JOBS}{}/{part}", job.id);
        let keeper = self.keeper.clone();
        // What was ticked until now goes with it.
        keeper.flush();
        wasm_bindgen_futures::spawn_local(async move {
            let outcome = keeper.commit(&key, &saved::records_text(&job, &part)).await;
            // The person may have gone to another job meanwhile: then it is found signed when this one is opened.
            let here = self.job.with_untracked(|open| open.as_ref().is_some_and(|open| open.id == job.id));
            match outcome {
                Ok(()) if here => self.edit(edit),
                Ok(()) => {
                    self.shelf.update(|shelf| drop(shelf.insert(job.id.clone(), Arc::new(job)))).unwrap_or_default()
                }
                // One of the two places may have taken it: what isn't signed must not look signed later.
                Err(_) => keeper.schedule(&key, &saved::records_text(&before, &part)),
            }
            told(outcome.is_ok());
        });
    }

    /// Changes the person's ways and keeps them.
    pub fn prefer(self, change: impl FnOnce(&mut Person)) {
        self.person.update(change);
        self.keep_person();
        self.turned.update(|n| *n = n.wrapping_add(1));
    }

    fn keep_person(self) {
        let text = self.person.with_untracked(Person::text);
        self.keeper.schedule(person::KEY, &text);
    }

    /// Writes everything now, then takes the new version.
    pub fn take_update(self) {
        self.keeper.flush();
        update::accept();
    }

    /// Writes everything now, then reloads.
    pub fn reload(self) {
        self.keeper.flush();
        // Refused only while the page is already being left.
        let _ = window().location().reload();
    }

    /// What a vessel of the open job says; worked out again only when that vessel changes.
    pub fn answers(self, vessel: &Id) -> Answers {
        if let Some(memo) = self.answers.borrow().get(vessel).copied() {
            return memo;
        }
        let id = vessel.clone();
        // Owned by the page, not by the screen that asks first.
        let memo = {
            self.owner.with(|| {
                let inputs = Worked::new(move || {
                    self.job.with(|job| {
                        let job = job.as_ref()?;
                        Some((Same(job.vessel(&id)?.clone()), Same(job.plan_of(&id))))
                    })
                });
                Worked::new(move || {
                    inputs.with(|inputs| {
                        let (survey, plan) = inputs.as_ref()?;
                        self.count(|counts| counts.vessels += 1);
                        Some(Arc::new(vessel_answers(&survey.0, &plan.0)))
                    })
                })
            })
        };
        self.answers.borrow_mut().insert(vessel.clone(), memo);
        memo
    }

    /// What the water side of a vessel says; worked out only while somebody looks at it, and again only when that vessel,
    /// the site, or what was seen of the bed changes.
    pub fn water(self, vessel: &Id) -> Water {
        if let Some(memo) = self.waters.borrow().get(vessel).copied() {
            return memo;
        }
        let id = vessel.clone();
        let answers = self.answers(vessel);
        let memo = self.owner.with(|| {
            let asked = Worked::new(move || {
                self.job.with(|job| {
                    let job = job.as_ref()?;
                    job.vessel(&id)?;
                    Some(Same(Arc::new(WaterAsked::of(job, &id))))
                })
            });
            Worked::new(move || {
                let answers = answers.get()?;
                asked.with(|asked| {
                    let asked = asked.as_ref()?;
                    self.count(|counts| counts.waters += 1);
                    Some(Arc::new(water_answers(&answers, &asked.0)))
                })
            })
        });
        self.waters.borrow_mut().insert(vessel.clone(), memo);
        memo
    }

    /// The bill of the open job.
    pub fn bill(self) -> Worked<Arc<JobBill>> {
        if let Some(memo) = self.bill.get() {
            return memo;
        }
        let memo = {
            self.owner.with(|| {
                let asked = Worked::new(move || {
                    self.job.with(|job| {
                        job.as_ref().map(|job| {
                            let vessels = job.survey.body.vessels.iter().map(|vessel| {
                                let duty = job.site.body.duty_of(&vessel.id);
                                (vessel.id.clone(), duty.purpose, duty.regime)
                            });
                            let vessels: Vec<_> = vessels.collect();
                            let of_job =
                                [&job.supply.revision, &job.prices.revision, &job.kit.revision].map(Clone::clone);
                            (job.id.clone(), job.head.body.kind, of_job, vessels)
                        })
                    })
                });
                Worked::new(move || {
                    let answers: Vec<Arc<VesselAnswers>> = asked.with(|asked| {
                        let vessels = asked.as_ref().map(|(.., vessels)| vessels.clone()).unwrap_or_default();
                        vessels.iter().filter_map(|(id, ..)| self.answers(id).get()).collect()
                    });
                    self.count(|counts| counts.bills += 1);
                    let job = self.open_now();
                    Arc::new(match job {
                        Some(job) => job_bill(&job, &answers),
                        None => job_bill(&Job::new(Id::new("none"), ""), &[]),
                    })
                })
            })
        };
        self.bill.set(Some(memo));
        memo
    }

    fn count(self, add: impl FnOnce(&mut Counts)) {
        let mut counts = self.counts.get();
        add(&mut counts);
        self.counts.set(counts);
        // For tests only.
        crate::app::mark_root("data-calculated", &format!("vessels {} bills {}", counts.vessels, counts.bills));
        crate::app::mark_root("data-calculated-water", &counts.waters.to_string());
    }
}

/// Reads what a vessel says. One compiled copy of the reading for all who ask.
pub fn with_answers<T>(answers: Answers, read: impl FnOnce(Option<&VesselAnswers>) -> T) -> T {
    #[inline(never)]
    fn now(answers: Answers) -> Option<Arc<VesselAnswers>> {
        answers.get()
    }
    read(now(answers).as_deref())
}

/// Reads what the water side of a vessel says. One compiled copy of the reading for all who ask.
pub fn with_water<T>(water: Water, read: impl FnOnce(Option<&WaterAnswers>) -> T) -> T {
    #[inline(never)]
    fn now(water: Water) -> Option<Arc<WaterAnswers>> {
        water.get()
    }
    read(now(water).as_deref())
}

/// Reads the bill. One compiled copy of the reading for all who ask.
pub fn with_bill<T>(bill: Worked<Arc<JobBill>>, read: impl FnOnce(&JobBill) -> T) -> T {
    #[inline(never)]
    fn now(bill: Worked<Arc<JobBill>>) -> Arc<JobBill> {
        bill.get()
    }
    read(&now(bill))
}

/// Shared content, compared by place first and by value only where places differ.
#[derive(Clone)]
struct Same<T>(Arc<T>);

impl<T: PartialEq> PartialEq for Same<T> {
    fn eq(&self, other: &Same<T>) -> bool {
        Arc::ptr_eq(&self.0, &other.0) || self.0 == other.0
    }
}
