//! A backup in: tried first, taken in on a tap.

use std::sync::Arc;

use bedwright_edge::fault::Fault;
use bedwright_edge::files;
use bedwright_job::backup::{Against, LONGEST, NoBackup, read_backup};
use bedwright_job::words::{KeepingLabel, Label};

use super::page::part;
use crate::desk::{Desk, Dry};
use crate::parts::live::{El, button, el, ticked};
use crate::parts::signal::Held;

/// How many jobs are named.
const SHOWN: usize = 100;

#[derive(Clone, Copy)]
struct Restore {
    desk: Desk,
    trial: Held<Option<(String, Arc<Dry>)>>,
    said: Held<Option<String>>,
    differing: Held<bool>,
    ways: Held<bool>,
}

/// The part of the screen that brings a backup in.
pub fn restore_part(desk: Desk) -> El {
    let restore = Restore {
        desk,
        trial: Held::new(None),
        said: Held::new(None),
        differing: Held::new(false),
        ways: Held::new(false),
    };
    part(desk, KeepingLabel::RestoreTitle, KeepingLabel::RestoreAbout)
        .kid(el("div", "actions").kid(button("", desk.label(KeepingLabel::TryBackup), move || restore.choose())))
        .kid(el("p", "backup-said").set("role", "status").says(move || restore.said.get().unwrap_or_default()))
        .live(move || {
            restore
                .trial
                .with(|trial| trial.as_ref().map(|(name, dry)| vec![restore.tried(name, dry)]).unwrap_or_default())
        })
}

impl Restore {
    fn say(self, label: KeepingLabel) -> &'static str {
        self.desk.label(label)
    }

    fn choose(self) {
        wasm_bindgen_futures::spawn_local(async move {
            let (name, bytes) = match files::pick_file(".json,application/json", LONGEST as u64).await {
                Ok(None) => return,
                Ok(Some(found)) => found,
                Err(Fault::TooLarge { .. }) => return self.refuse(self.desk.manner().no_backup(&NoBackup::TooLong)),
                Err(_) => return self.refuse(self.say(KeepingLabel::WhyNotRead)),
            };
            self.said.set(None);
            let read = std::str::from_utf8(&bytes).map_err(|_| NoBackup::OtherThing).and_then(read_backup);
            match read {
                Err(why) => self.refuse(self.desk.manner().no_backup(&why)),
                Ok(backup) => {
                    let dry = self.desk.backup_tried(backup).await;
                    self.differing.set(false);
                    // On a device that holds nothing yet the person's ways are most likely wanted.
                    self.ways.set(dry.person && !self.desk.anything_to_back_up());
                    self.trial.set(Some((name, Arc::new(dry))));
                }
            }
        });
    }

    fn refuse(self, why: &str) {
        self.trial.set(None);
        self.said.set(Some([why, " ", self.say(KeepingLabel::NotTaken)].concat()));
    }

    fn take(self, dry: Arc<Dry>) {
        let (differing, ways) = (self.differing.get_untracked(), self.ways.get_untracked());
        // At once, so that it can't be taken twice.
        self.trial.set(None);
        wasm_bindgen_futures::spawn_local(async move {
            let count = self.desk.take_backup(&dry, differing, ways).await;
            let said = self.desk.manner().sentence(KeepingLabel::TakenIn, &[("count", &count.to_string())]);
            self.said.set(Some(said));
        });
    }

    /// What the backup would do.
    fn tried(self, name: &str, dry: &Arc<Dry>) -> El {
        let manner = self.desk.manner();
        let mut file = name.to_owned();
        if !dry.backup.day.is_empty() {
            file = [&file, " · ", &manner.sentence(KeepingLabel::MadeOn, &[("day", &dry.backup.day)])].concat();
        }
        let all = [Against::New, Against::Newer, Against::Conflicting, Against::Older, Against::Same];
        let count = |against: Against| {
            el("li", "")
                .kid(el("span", "big figure").text(&dry.count(against).to_string()))
                .text(" ")
                .text(manner.against(against))
        };
        let counts = el("ul", "backup-counts").set("role", "status").kids(all.into_iter().map(count).collect());
        let mut trial = el("section", "backup-trial")
            .kid(el("h3", "").text(self.say(KeepingLabel::Trial)))
            .kid(el("p", "backup-file").text(&file))
            .kid(counts)
            .kid(self.jobs(dry));
        let counted = |label: KeepingLabel, count: usize| manner.sentence(label, &[("count", &count.to_string())]);
        match &dry.rows {
            None => trial = trial.kid(el("p", "").set("role", "alert").text(self.say(KeepingLabel::PricesUnread))),
            Some(rows) if rows.new.len() + rows.differing.len() + rows.same > 0 => {
                let [fresh, differing, same] =
                    [rows.new.len(), rows.differing.len(), rows.same].map(|count| count.to_string());
                let places = [("fresh", fresh.as_str()), ("differing", &differing), ("same", &same)];
                trial = trial.kid(el("p", "").text(&manner.sentence(KeepingLabel::PriceRows, &places)));
                if !rows.differing.is_empty() {
                    trial = trial.kid(self.tick(KeepingLabel::TakeRows, self.differing));
                }
            }
            Some(_) => {}
        }
        if !dry.photos.is_empty() {
            trial = trial.kid(el("p", "").text(&counted(KeepingLabel::PhotosIn, dry.photos.len())));
        }
        if !dry.aside.is_empty() {
            trial = trial.kid(el("p", "").text(&counted(KeepingLabel::AsideIn, dry.aside.len())));
        }
        if dry.person {
            trial = trial.kid(self.tick(KeepingLabel::TakePerson, self.ways));
        }
        if !dry.brings() {
            return trial.kid(el("p", "").text(self.say(KeepingLabel::NothingNew))).kid(self.leave());
        }
        let taken = dry.clone();
        let take = button("primary", self.say(KeepingLabel::TakeIn), move || self.take(taken.clone()));
        trial.kid(el("div", "actions").kid(take).kid(self.leave()))
    }

    fn leave(self) -> El {
        button("", self.say(KeepingLabel::LeaveAll), move || {
            self.trial.set(None);
            self.said.set(Some(self.say(KeepingLabel::NotTaken).to_owned()));
        })
    }

    fn tick(self, label: KeepingLabel, held: Held<bool>) -> El {
        let tick = el("input", "")
            .set("type", "checkbox")
            .holds("checked", move || held.get())
            .on("change", move |event| held.set(ticked(&event)));
        el("label", "tick").kid(tick).kid(el("span", "").text(self.say(label)))
    }

    /// The jobs that would come or change, by name; those that stay as they are aren't told one by one.
    fn jobs(self, dry: &Dry) -> El {
        let manner = self.desk.manner();
        let mut lines = Vec::new();
        let mut more = 0_usize;
        for (job, against) in dry.backup.jobs.iter().zip(&dry.jobs) {
            if *against == Against::Same {
                continue;
            }
            if lines.len() >= SHOWN {
                more += 1;
                continue;
            }
            let title = job.head.body.title.as_str();
            let title = if title.is_empty() { self.desk.label(Label::Untitled) } else { title };
            lines.push(
                el("li", "").kid(el("strong", "").text(title)).kid(el("span", "quietly").text(manner.will(*against))),
            );
        }
        if more > 0 {
            let text = manner.sentence(KeepingLabel::AndMore, &[("count", &more.to_string())]);
            lines.push(el("li", "").text(&text));
        }
        el("ul", "backup-jobs").kids(lines)
    }
}
