//! Several tabs of one browser: which of them works on a job, which follow, and which is too old to write anything.

use std::sync::Arc;

use bedwright_edge::listen::Listener;
use bedwright_edge::store::Keeper;
use bedwright_edge::tabs::{self, Change, Held as Lock};
use bedwright_edge::timer::pause;
use bedwright_edge::{storage, trace};
use bedwright_job::Job;
use bedwright_job::history::History;
use bedwright_job::id::Id;
use bedwright_job::saved::{list_parts, list_text};

use super::opened::{newer, take_text};
use super::{Desk, ERASED, JOBS, PREFIX, prices};
use crate::notices::{self, Notice};

/// The key of the form in which this device's texts are kept.
pub(super) const FORMAT: &str = "bedwright/format";
/// Its number. It is raised when a page of before would misread, or overwrite, what is kept; such a page writes nothing.
const VERSION: u64 = 1;
/// How long the tab that lost a job may take to write what it still has.
const FLUSHED_MS: i32 = 250;
/// How often, and how far apart, a name is asked for that a page which is just being left may still have.
const PATIENCE: (u32, i32) = (4, 120);

/// Why this tab only follows a job.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Follows {
    /// Another tab has it open.
    OpenElsewhere,
    /// Another tab took it over.
    TakenOver,
}

/// Whether a later page keeps its texts here.
pub(super) async fn is_later(keeper: &Keeper) -> bool {
    keeper.texts(FORMAT).await.iter().any(|(_, text)| version(text) > VERSION)
}

pub(super) fn keep_version(keeper: &Keeper) {
    keeper.schedule(FORMAT, &version_text());
}

/// With a counter, as sections have one: of two copies the later is known.
pub(super) fn version_text() -> String {
    format!("{{\"revision\":{{\"counter\":{VERSION}}}}}")
}

fn version(text: &str) -> u64 {
    // The only number in it.
    let digits: String = text.chars().filter(char::is_ascii_digit).take(18).collect();
    digits.parse().unwrap_or(0)
}

fn name(id: &Id) -> String {
    [JOBS, id.as_str()].concat()
}

impl Desk {
    /// Hears what other tabs do, and when this one comes back into sight.
    pub(super) fn listen_to_tabs(self) {
        let changed = tabs::on_change(PREFIX, move |change| self.heard(change));
        let shown = Listener::on_window("focus", move |_| self.look_again());
        // A page that is left gives its job back at once: the one that comes may ask for it.
        let left = Listener::on_window("pagehide", move |_| drop(self.hold.take()));
        let back = Listener::on_window("pageshow", move |_| self.look_again());
        for listener in [changed, shown, left, back].into_iter().flatten() {
            listener.forget();
        }
    }

    fn heard(self, change: Change) {
        let Some(key) = change.key else { return self.emptied() };
        if key == FORMAT {
            if change.text.as_deref().is_some_and(|text| version(text) > VERSION) {
                self.write_nothing_more();
            }
        } else if let Some(id) = key.strip_prefix(ERASED) {
            if change.text.is_some() {
                self.gone_elsewhere(&Id::new(id));
            }
        } else {
            self.changed_elsewhere(&key);
        }
    }

    /// From here on this tab shows and writes nothing.
    pub(super) fn write_nothing_more(self) {
        self.keeper.stop();
        self.outdated.set(true);
    }

    /// A job that another tab erases is gone here as well.
    fn gone_elsewhere(self, id: &Id) {
        self.shelf.update(|shelf| drop(shelf.remove(id)));
        if self.job.with_untracked(|open| open.as_ref().is_some_and(|open| open.id == *id)) {
            self.job.set(None);
        }
    }

    /// Lets the job of an address be this tab's to change, and gives back the one before.
    pub(super) fn hold_job(self, job: Option<&Id>) {
        if self.hold.borrow().as_ref().map(|(id, _)| id) == job && job.is_some() {
            return;
        }
        drop(self.hold.take());
        self.follows.set(None);
        let Some(id) = job.cloned() else { return };
        wasm_bindgen_futures::spawn_local(async move {
            let (times, apart) = PATIENCE;
            for _ in 0..times {
                match tabs::hold_until(&name(&id), self.when_lost(&id)).await {
                    Lock::Yes(hold) => {
                        // Gone on meanwhile: the name is given back.
                        if self.is_at(&id) {
                            self.hold.replace(Some((id, hold)));
                        }
                        return;
                    }
                    Lock::Unsupported => return,
                    Lock::No => pause(apart).await,
                }
            }
            if self.is_at(&id) && self.hold.borrow().is_none() {
                self.follows.set(Some(Follows::OpenElsewhere));
            }
        });
    }

    fn is_at(self, id: &Id) -> bool {
        self.route.with_untracked(|route| route.job() == Some(id))
    }

    fn when_lost(self, id: &Id) -> impl FnOnce() + 'static {
        let id = id.clone();
        move || {
            let had = self.hold.borrow().as_ref().is_some_and(|(held, _)| *held == id);
            if had {
                self.hold.replace(None);
                // What was typed here must be there when the other tab looks.
                self.keeper.flush();
                self.follows.set(Some(Follows::TakenOver));
            }
        }
    }

    /// Takes the job over from the tab that has it.
    pub fn work_here(self) {
        let Some(id) = self.route.with_untracked(|route| route.job().cloned()) else { return };
        wasm_bindgen_futures::spawn_local(async move {
            if let Lock::Yes(hold) = tabs::take(&name(&id), self.when_lost(&id)).await {
                pause(FLUSHED_MS).await;
                self.own_now(id, hold).await;
            }
        });
    }

    /// Takes jobs for as long as what this gives lives. A tab that works on one of them writes what it still has, as when a
    /// person works here instead, and the job is read anew.
    pub(super) async fn held_for_now(self, jobs: &[Id]) -> Vec<tabs::Hold> {
        let (mut holds, mut others) = (Vec::new(), Vec::new());
        for id in jobs {
            match tabs::hold_until(&name(id), || {}).await {
                Lock::Yes(hold) => holds.push(hold),
                Lock::No => others.push(id),
                Lock::Unsupported => {}
            }
        }
        for id in &others {
            if let Lock::Yes(hold) = tabs::take(&name(id), || {}).await {
                holds.push(hold);
            }
        }
        if !others.is_empty() {
            pause(FLUSHED_MS).await;
        }
        for id in others {
            self.read_again(id).await;
        }
        holds
    }

    /// Where the other tab is gone, the job is this one's.
    fn look_again(self) {
        let Some(id) = self.route.with_untracked(|route| route.job().cloned()) else { return };
        if self.follows.with_untracked(Option::is_none) {
            return self.hold_job(Some(&id));
        }
        wasm_bindgen_futures::spawn_local(async move {
            if let Lock::Yes(hold) = tabs::hold_until(&name(&id), self.when_lost(&id)).await {
                self.own_now(id, hold).await;
            }
        });
    }

    async fn own_now(self, id: Id, hold: tabs::Hold) {
        if !self.is_at(&id) {
            return;
        }
        self.read_again(&id).await;
        self.hold.replace(Some((id, hold)));
        self.follows.set(None);
    }

    /// Reads a job anew from both places.
    async fn read_again(self, id: &Id) {
        let prefix = format!("{JOBS}{id}/");
        let loaded = self.keeper.load_all(&prefix, newer).await;
        if loaded.entries.is_empty() {
            return;
        }
        let mut job = Job::new(id.clone(), "");
        for entry in loaded.entries {
            let section = entry.key.strip_prefix(&prefix).unwrap_or_default();
            if take_text(&mut job, section, &entry.text).is_err() {
                self.keeper.protect(&entry.key);
                notices::put(self.notices, Notice::SetAside(vec![entry.key]));
            }
        }
        let job = Arc::new(job);
        self.shelf.update(|shelf| drop(shelf.insert(id.clone(), job.clone())));
        // One that isn't open opens only where the person is: another screen isn't drawn anew for it.
        if self.job.with_untracked(|open| open.as_ref().map_or(self.is_at(id), |open| open.id == *id)) {
            self.history.set(History::default());
            self.job.set(Some(job));
            self.turned.update(|n| *n = n.wrapping_add(1));
            self.read_steps(id);
        }
    }

    /// Whether the open job may be changed in this tab. Where it may not, what was typed is put back to what is so, and it is
    /// tried whether the other tab is gone.
    pub(super) fn may_change(self) -> bool {
        if !self.outdated.with_untracked(|outdated| *outdated) && self.follows.with_untracked(Option::is_none) {
            return true;
        }
        wasm_bindgen_futures::spawn_local(async move {
            self.turned.update(|n| *n = n.wrapping_add(1));
        });
        self.look_again();
        false
    }

    /// Notices that local storage was emptied under the page by somebody who told nobody.
    pub(super) fn look_for_emptying(self) {
        // By a text that is written once and never again: any other may just have been written anew.
        match storage::read(FORMAT) {
            Ok(Some(_)) => self.kept_once.set(true),
            Ok(None) if self.kept_once.get() => self.emptied(),
            _ => {}
        }
    }

    /// Keeps everything anew that this page still has.
    fn emptied(self) {
        self.kept_once.set(false);
        let jobs: Vec<Arc<Job>> = self.shelf.with_untracked(|shelf| shelf.values().cloned().collect());
        for job in &jobs {
            self.keep(job, None);
        }
        self.prices.list.with_untracked(|list| {
            if list.catalogue.revision.is_some() {
                for part in list_parts() {
                    self.keeper.schedule(&format!("{}{part}", prices::PRICES), &list_text(list, &part));
                }
            }
        });
        self.keep_person();
        self.keep_ledger();
        keep_version(&self.keeper);
        self.keeper.flush();
        notices::put(self.notices, Notice::Emptied);
    }

    /// Leaves the mark that there are jobs of a person's own, or takes it away.
    pub(super) fn mark_that_there_are_jobs(self) {
        let any = self.shelf.with_untracked(|shelf| shelf.values().any(|job| !job.head.body.sample));
        wasm_bindgen_futures::spawn_local(
            async move { if any { trace::leave().await } else { trace::forget().await } },
        );
    }
}
