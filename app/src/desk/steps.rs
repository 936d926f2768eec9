//! Changing the open job, taking changes back, and keeping what can be taken back across a reload.
//!
//! The steps lie in a database of their own, a text a job: they may be many, and nothing waits for them. What the database has
//! not yet taken when the page is left waits in the tab for the next page.

use std::sync::Arc;

use bedwright_edge::journal::Journal;
use bedwright_edge::listen::Listener;
use bedwright_edge::session;
use bedwright_job::Job;
use bedwright_job::back::{self, Back};
use bedwright_job::edit::Edit;
use bedwright_job::history::History;
use bedwright_job::id::Id;

use super::Desk;

const DATABASE: &str = "bedwright-undo";

/// Where a tab leaves the steps of a job for its next page.
fn left_under(id: &Id) -> String {
    [DATABASE, "/", id.as_str()].concat()
}

impl Desk {
    /// Changes the open job.
    pub fn edit(self, edit: Edit) {
        let before = self.open_now();
        if let Some(inverse) = self.change(edit.clone()) {
            let back = self.way_back(before);
            self.history.update(|history| history.push(&edit, inverse, back));
        }
    }

    /// Ends a run of typing, so that what follows is undone on its own.
    pub fn pause(self) {
        self.history.update_untracked(History::pause);
    }

    /// Takes the last change back.
    pub fn undo(self) {
        let before = self.open_now();
        if let Some(edit) = self.history.update(History::undo).flatten()
            && let Some(redo) = self.change(edit)
        {
            let back = self.way_back(before);
            self.history.update(|history| history.undone(redo, back));
            self.turned.update(|n| *n = n.wrapping_add(1));
        }
    }

    /// Does the last undone change again.
    pub fn redo(self) {
        let before = self.open_now();
        if let Some(edit) = self.history.update(History::redo).flatten()
            && let Some(inverse) = self.change(edit)
        {
            let back = self.way_back(before);
            self.history.update(|history| history.redone(inverse, back));
            self.turned.update(|n| *n = n.wrapping_add(1));
        }
    }

    /// Whether there is anything to take back.
    pub fn can_undo(self) -> bool {
        self.history.with(History::can_undo)
    }

    /// Whether there is anything to do again.
    pub fn can_redo(self) -> bool {
        self.history.with(History::can_redo)
    }

    fn way_back(self, before: Option<Arc<Job>>) -> Vec<Back> {
        let both = before.zip(self.open_now());
        both.map(|(before, after)| back::between(&before, &after)).unwrap_or_default()
    }

    async fn steps_database(self) -> Option<Journal> {
        let open = self.steps.borrow().clone();
        if open.is_some() {
            return open;
        }
        // Without it everything works, and a reload ends what can be taken back.
        let opened = Journal::open_named(DATABASE).await.ok()?;
        self.steps.replace(Some(opened.clone()));
        Some(opened)
    }

    /// Keeps what can be taken back of the open job, once what goes on now is done.
    pub(super) fn keep_steps(self) {
        if self.steps_due.replace(true) {
            return;
        }
        self.steps_owed.set(self.steps_owed.get().wrapping_add(1));
        wasm_bindgen_futures::spawn_local(async move {
            self.steps_due.set(false);
            if let Some((id, text)) = self.steps_now()
                && let Some(steps) = self.steps_database().await
            {
                // The next change keeps them all again.
                let _ = steps.put(id.as_str(), &text).await;
            }
            self.steps_owed.set(self.steps_owed.get().wrapping_sub(1));
        });
    }

    fn steps_now(self) -> Option<(Id, String)> {
        let job = self.open_now()?;
        Some((job.id.clone(), self.history.with_untracked(|history| history.text(&job))))
    }

    /// Leaves what the database has not yet taken for the page that comes next in this tab.
    pub(super) fn listen_for_leaving(self) {
        let left = Listener::on_window("pagehide", move |_| {
            if self.steps_owed.get() > 0
                && let Some((id, text)) = self.steps_now()
            {
                session::leave(&left_under(&id), &text);
            }
        });
        if let Some(listener) = left {
            listener.forget();
        }
    }

    /// Brings back what could be taken back of the open job before the page was loaded.
    pub(super) fn read_steps(self, id: &Id) {
        let id = id.clone();
        wasm_bindgen_futures::spawn_local(async move {
            if let Some(text) = session::take(&left_under(&id))
                && self.take_steps(&id, &text)
            {
                return self.keep_steps();
            }
            let Some(steps) = self.steps_database().await else { return };
            if let Ok(Some(text)) = steps.get(id.as_str()).await {
                self.take_steps(&id, &text);
            }
        });
    }

    /// Takes what was kept, where it fits the open job and nothing was changed meanwhile; whether there is anything to take
    /// back, or to do again, now.
    fn take_steps(self, id: &Id, text: &str) -> bool {
        let Some(job) = self.open_now().filter(|job| job.id == *id) else { return false };
        let fresh = self.history.with_untracked(|history| !history.can_undo() && !history.can_redo());
        if fresh {
            self.history.set(History::read(text, &job));
        }
        self.history.with_untracked(|history| history.can_undo() || history.can_redo())
    }

    /// Takes away what could be taken back of a job that is erased.
    pub(super) fn forget_steps(self, id: &Id) {
        let id = id.clone();
        wasm_bindgen_futures::spawn_local(async move {
            if let Some(steps) = self.steps_database().await {
                // What stays fits no job any more.
                let _ = steps.remove(id.as_str()).await;
            }
        });
    }
}
