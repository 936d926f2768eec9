//! Jobs on their way: what came and waits to be taken in, and what goes out.

use std::rc::Rc;
use std::sync::Arc;

use bedwright_edge::drop::Dropped;
use bedwright_edge::fault::Fault;
use bedwright_edge::files;
use bedwright_job::Job;
use bedwright_job::edit::Edit;
use bedwright_job::envelope::{Contents, Damage, Found, Received, found, found_in_file, open};
use bedwright_job::id::Id;
use bedwright_job::join::{Take, Unjoined, handed_over, join, taken_over};
use bedwright_job::saved;
use bedwright_job::sections::SectionName;
use bedwright_job::words::Label;

use super::{Desk, JOBS, new_id};
use crate::notices::{self, Notice};
use crate::route::Route;

/// What came, before it is taken in.
#[derive(Clone)]
pub enum Tray {
    /// A job, or some of its sections.
    Came(Rc<Received>),
    /// Nothing that could be taken, and why.
    Refused(String),
}

impl Desk {
    /// Lets a person choose a file and looks at it.
    pub fn choose_file(self) {
        wasm_bindgen_futures::spawn_local(async move {
            match files::pick_file(".txt,.json,.bedwright,text/plain,application/json", saved::LONGEST as u64).await {
                Ok(None) => {}
                Ok(Some((_, bytes))) => self.look_into_file(&bytes),
                Err(fault) => self.look_at_fault(&fault),
            }
        });
    }

    /// Looks at what was dropped.
    pub fn look_at_dropped(self, dropped: Result<Dropped, Fault>) {
        match dropped {
            Ok(Dropped::File(bytes)) => self.look_into_file(&bytes),
            Ok(Dropped::Text(text)) => self.look_at_text(&text),
            Err(fault) => self.look_at_fault(&fault),
        }
    }

    /// Looks at a text somebody pasted, or the code of a link.
    pub fn look_at_text(self, text: &str) {
        self.look_at(found(text));
    }

    /// Looks at an envelope that came by codes.
    pub fn look_at_sealed(self, sealed: &[u8]) {
        self.look_at(open(sealed).map(|came| Found::Job(Box::new(came))));
    }

    fn look_into_file(self, bytes: &[u8]) {
        self.look_at(found_in_file(bytes));
    }

    fn look_at_fault(self, fault: &Fault) {
        self.look_at(Err(match fault {
            Fault::TooLarge { bytes, .. } => Damage::TooLong { bytes: usize::try_from(*bytes).unwrap_or(usize::MAX) },
            _ => Damage::OtherThing,
        }));
    }

    fn look_at(self, found: Result<Found, Damage>) {
        let refused = |damage: &Damage| Tray::Refused(self.manner().damage(damage));
        self.tray.set(Some(match found {
            Ok(Found::Job(came)) => Tray::Came(Rc::from(came)),
            Ok(Found::Frames(frames)) => match crate::receive::gathered(frames) {
                Ok(sealed) => return self.look_at_sealed(&sealed),
                Err(why) => Tray::Refused(why(self.manner())),
            },
            Err(damage) => refused(&damage),
        }));
    }

    /// The job here that something came of; none where it isn't on this device.
    pub fn here_of(self, came: &Received) -> Option<Arc<Job>> {
        self.shelf.with_untracked(|shelf| shelf.get(&came.job.id).cloned())
    }

    /// Keeps a job that isn't on this device yet, and goes where the sender points.
    pub fn keep_received(self, came: &Received) {
        let job = taken_over(&came.job);
        let id = self.shelve(job);
        self.arrive(&id, came);
    }

    /// Keeps a job beside the one that is here: as a job of its own.
    pub fn keep_beside(self, came: &Received) {
        let mut job = taken_over(&came.job);
        job.id = new_id();
        let copy_of = self.label(Label::CopyOf);
        job.head.body.title = format!("{copy_of} {}", job.head.body.title).trim().to_owned();
        job.head.body.binned = None;
        let id = self.shelve(job);
        self.arrive(&id, came);
    }

    /// Joins what came with the job that is here, each difference as it was answered, in the order they were told in.
    pub fn join_received(self, came: &Received, answers: &[Take]) -> Result<(), Unjoined> {
        let Some(here) = self.here_of(came) else { return Err(Unjoined::OtherJob) };
        let mut answers = answers.iter();
        let joined = join(&here, &came.job, |_| answers.next().copied().unwrap_or(Take::Here))?;
        self.go(&Route::landing(&here.id, &came.lands_on));
        // The screen opens it when the browser tells of the new address; it is opened now, so that it can be changed.
        self.follow(&Route::Job(here.id.clone()));
        self.edit(Edit::Joined(Arc::new(joined)));
        if let Some(job) = self.open_now() {
            // One may have become whole without being new.
            for part in saved::parts_from(&job, 0) {
                self.keeper.schedule(&format!("{JOBS}{}/{part}", job.id), &saved::records_text(&job, &part));
            }
        }
        self.turned.update(|n| *n = n.wrapping_add(1));
        self.tray.set(None);
        notices::put(self.notices, Notice::Joined);
        Ok(())
    }

    /// Goes where what came is looked at.
    pub fn arrive(self, id: &Id, came: &Received) {
        self.tray.set(None);
        let card = came.excerpt.as_ref().map(|vessel| Route::Card(id.clone(), vessel.clone(), tag_of(came, vessel)));
        self.go(&card.unwrap_or_else(|| Route::landing(id, &came.lands_on)));
    }

    /// Notes in the sections that go out how they stand now: what comes back is compared with that.
    pub fn note_handed_over(self, contents: &Contents) {
        let Some(before) = self.open_now() else { return };
        let noted = handed_over(&before, &contents.sections);
        if noted == *before {
            return;
        }
        for &name in SectionName::ALL {
            if saved::section_text(&noted, name) != saved::section_text(&before, name) {
                self.keeper.schedule(&format!("{JOBS}{}/{}", noted.id, name.id()), &saved::section_text(&noted, name));
            }
        }
        let noted = Arc::new(noted);
        self.shelf.update(|shelf| drop(shelf.insert(noted.id.clone(), noted.clone())));
        self.job.set(Some(noted));
    }
}

/// The tag a card is of: what it lands on names it.
fn tag_of(came: &Received, vessel: &Id) -> String {
    if !came.lands_on.is_empty() {
        return came.lands_on.clone();
    }
    let tags = came.job.vessel(vessel).map(|vessel| vessel.tags.clone()).unwrap_or_default();
    tags.into_iter().next().unwrap_or_default().trim().to_owned()
}
