//! The jobs on this device: kept, made, copied, put into the bin, erased.

use std::sync::Arc;

use bedwright_job::Job;
use bedwright_job::edit::{Edit, apply};
use bedwright_job::id::Id;
use bedwright_job::loading::photos_of;
use bedwright_job::sample;
use bedwright_job::saved;
use bedwright_job::sections::SectionName;
use bedwright_job::sections::survey::VesselSurvey;
use bedwright_job::words::Label;

use super::opened::erase_keys;
use super::{BIN_DAYS, Desk, ERASED, JOBS, days_between, new_id, today};
use crate::notices::{self, Notice};
use crate::route::Route;

impl Desk {
    /// Writes the sections of a job that differ from before.
    pub(super) fn keep(self, job: &Job, before: Option<&Job>) {
        {
            let keeper = &self.keeper;
            for &name in SectionName::ALL {
                let now = job.revision(name);
                let says = match before {
                    Some(before) => now.is_some() && before.revision(name) != now,
                    // A file made by hand may have sections that count no changes.
                    None => !saved::says_nothing(job, name),
                };
                if says {
                    keeper.schedule(&format!("{JOBS}{}/{}", job.id, name.id()), &saved::section_text(job, name));
                }
            }
            if before.is_none() {
                for (name, locked) in &job.locked {
                    keeper.schedule(&format!("{JOBS}{}/{name}", job.id), &locked.value.to_string());
                }
            }
            for part in saved::parts_from(job, before.map_or(0, |before| before.records.len())) {
                keeper.schedule(&format!("{JOBS}{}/{part}", job.id), &saved::records_text(job, &part));
            }
        }
    }

    /// Puts a job that is new to this device on the shelf and keeps it.
    pub fn shelve(self, mut job: Job) -> Id {
        let device = self.person.with_untracked(|person| person.device.clone());
        // Every section gets a revision of this device, so that each is written under its key.
        let touch = Edit::Kind(job.head.body.kind);
        if apply(&mut job, touch, &device).is_err() {
            notices::put(self.notices, Notice::Locked);
        }
        self.keep(&job, None);
        if !job.head.body.sample {
            self.ask_once_to_keep();
        }
        self.look_for_emptying();
        let id = job.id.clone();
        self.shelf.update(|shelf| {
            shelf.insert(id.clone(), Arc::new(job));
        });
        id
    }

    /// Makes an empty job and goes to it. The company is this person's, else taken over from the latest job.
    pub fn new_job(self) {
        let mut job = Job::new(new_id(), &today());
        let owner = self.shelf.with_untracked(|shelf| {
            shelf
                .values()
                .filter(|job| !job.head.body.sample)
                .max_by_key(|job| job.head.body.created.clone())
                .map(|job| job.head.body.owner.clone())
        });
        let own = self.person.with_untracked(|person| person.company.trim().to_owned());
        job.head.body.owner = if own.is_empty() { owner.unwrap_or_default() } else { own };
        let id = self.shelve(job);
        self.go(&Route::Job(id));
    }

    /// A vessel to survey next: of the same make as the last one, of this job or else of the newest.
    pub fn next_vessel(self, job: &Job) -> VesselSurvey {
        let last_of = |job: &Job| job.survey.body.vessels.last().cloned();
        let before = last_of(job).or_else(|| {
            self.shelf.with_untracked(|shelf| {
                let own = shelf.values().filter(|job| !job.head.body.sample && job.head.body.binned.is_none());
                let filled = own.filter(|job| !job.survey.body.vessels.is_empty());
                filled.max_by_key(|job| job.head.body.created.clone()).and_then(|job| last_of(job))
            })
        });
        match before {
            Some(before) => VesselSurvey::like(new_id(), &before),
            None => VesselSurvey::new(new_id()),
        }
    }

    /// Puts the invented sample on the shelf and goes to it.
    pub fn new_sample(self) {
        let id = self.shelve(sample::sample_job(new_id(), [new_id(), new_id()], &today()));
        self.go(&Route::Job(id));
    }

    /// Makes a copy of a job: a new id, no ticks, no records.
    pub fn duplicate(self, id: &Id) {
        let Some(from) = self.shelf.with_untracked(|shelf| shelf.get(id).cloned()) else { return };
        let mut job = (*from).clone();
        job.id = new_id();
        let copy_of = self.label(Label::CopyOf);
        job.head.body.title = format!("{copy_of} {}", job.head.body.title).trim().to_owned();
        job.head.body.created = today();
        job.head.body.binned = None;
        job.picking = Default::default();
        job.loading = Default::default();
        job.records.clear();
        let id = self.shelve(job);
        self.go(&Route::Job(id));
    }

    /// Puts a job into the bin, or takes it out.
    pub fn bin(self, id: &Id, into: bool) {
        let Some(before) = self.shelf.with_untracked(|shelf| shelf.get(id).cloned()) else { return };
        let mut job = (*before).clone();
        let device = self.person.with_untracked(|person| person.device.clone());
        if apply(&mut job, Edit::Bin(into.then(today)), &device).is_ok() {
            self.keep(&job, Some(&before));
            let job = Arc::new(job);
            self.shelf.update(|shelf| {
                shelf.insert(job.id.clone(), job.clone());
            });
            if self.job.with_untracked(|open| open.as_ref().is_some_and(|open| open.id == job.id)) {
                self.job.set(Some(job));
            }
        }
    }

    /// Erases a job that is in the bin, for good.
    pub fn erase(self, id: &Id) {
        let names = self.shelf.with_untracked(|shelf| {
            shelf.get(id).map(|job| {
                let known = SectionName::ALL.iter().map(|name| name.id().to_owned());
                let records = [saved::RECORDS.to_owned()].into_iter().chain(saved::parts_from(job, 0));
                known.chain(job.locked.keys().cloned()).chain(records).collect::<Vec<_>>()
            })
        });
        let photos = self.shelf.with_untracked(|shelf| shelf.get(id).map(|job| photos_of(job)).unwrap_or_default());
        wasm_bindgen_futures::spawn_local(async move {
            for photo in photos {
                // One that can't be taken away now is no part of any job.
                let _ = bedwright_edge::photo::remove(photo.as_str()).await;
            }
        });
        self.forget_steps(id);
        let keeper = self.keeper.clone();
        // Marked before anything is taken away: a page that is closed half way doesn't bring half a job back.
        keeper.schedule(&format!("{ERASED}{id}"), "1");
        keeper.flush();
        self.shelf.update(|shelf| {
            shelf.remove(id);
        });
        let keys = names.unwrap_or_default().iter().map(|name| format!("{JOBS}{id}/{name}")).collect();
        wasm_bindgen_futures::spawn_local(erase_keys(keeper, id.clone(), keys));
    }

    /// Erases what has been in the bin longer than it is kept there.
    pub fn empty_bin(self) {
        let today = today();
        let old: Vec<Id> = self.shelf.with_untracked(|shelf| {
            shelf
                .values()
                .filter(|job| {
                    let since = job.head.body.binned.as_deref().and_then(|day| days_between(day, &today));
                    since.is_some_and(|days| days > BIN_DAYS)
                })
                .map(|job| job.id.clone())
                .collect()
        });
        for id in old {
            self.erase(&id);
        }
    }
}
