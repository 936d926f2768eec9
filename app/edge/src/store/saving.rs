//! The way of a text to both places: waiting, sent, refused, tried again.

use std::rc::{Rc, Weak};

use wasm_bindgen_futures::spawn_local;
use web_sys::VisibilityState;

use super::{DELAY_MS, Inner, Status};
use crate::{
    fault::Fault,
    listen::Listener,
    storage::{self, Available},
    timer::Timer,
};

const RETRY_MS: i32 = 10_000;

impl Inner {
    pub(super) fn memory_only(&self) -> bool {
        self.local == Available::Blocked && self.journal.is_err()
    }

    pub(super) fn status(&self) -> Status {
        let owed = self.owed.borrow();
        Status {
            local: if self.local == Available::Yes { owed.local.outcome() } else { Err(Fault::Blocked) },
            journal: match &self.journal {
                Ok(_) => owed.journal.outcome(),
                Err(fault) => Err(fault.clone()),
            },
            pending: !owed.local.waiting.is_empty()
                || !owed.journal.waiting.is_empty()
                || !self.copying.borrow().is_empty(),
        }
    }

    /// Calls back where the status has become another. Nothing is borrowed meanwhile: the callback may call anything.
    pub(super) fn tell(&self) {
        let status = self.status();
        if self.told.borrow().as_ref() == Some(&status) {
            return;
        }
        let call = self.status_call.borrow().clone();
        if let Some(call) = call {
            self.told.replace(Some(status.clone()));
            call(status);
        }
    }

    /// Writes what waits as soon as the page is hidden: on a phone that may be the last that is heard of it.
    pub(super) fn listen(self: &Rc<Self>) {
        let hidden = Rc::downgrade(self);
        let leaving = Rc::downgrade(self);
        let document = web_sys::window().and_then(|window| window.document());
        let mut listeners = self.listeners.borrow_mut();
        listeners.extend(document.map(|document| {
            let seen = document.clone();
            Listener::on(&document, "visibilitychange", move |_| {
                if seen.visibility_state() == VisibilityState::Hidden {
                    flush_of(&hidden);
                }
            })
        }));
        listeners.extend(Listener::on_window("pagehide", move |_| flush_of(&leaving)));
    }

    pub(super) fn read_local(&self, prefix: &str) -> Result<Vec<(String, String)>, Fault> {
        if self.local == Available::Blocked {
            return Err(Fault::Blocked);
        }
        let mut all = Vec::new();
        for key in storage::keys(prefix)? {
            if let Some(text) = storage::read(&key)? {
                all.push((key, text));
            }
        }
        Ok(all)
    }

    pub(super) fn local_text(&self, key: &str) -> Option<String> {
        if self.local == Available::Yes { storage::read(key).ok().flatten() } else { None }
    }

    /// Whether local storage holds something else than this page has read or made, and than it wants to write.
    pub(super) fn overwrites_unseen(&self, key: &str) -> bool {
        let Some(kept) = self.local_text(key) else {
            return false;
        };
        let mut owed = self.owed.borrow_mut();
        owed.latest.get(key) != Some(&kept) && !owed.has_seen(key, &kept)
    }

    pub(super) fn refuse_changed(&self, key: &str) {
        let mut owed = self.owed.borrow_mut();
        owed.local.refuse(key, Fault::Changed);
        if self.journal.is_ok() {
            owed.journal.refuse(key, Fault::Changed);
        }
    }

    /// Sets the newest text of a key on its way to both places.
    pub(super) fn keep(self: &Rc<Self>, key: &str) {
        if self.overwrites_unseen(key) {
            self.refuse_changed(key);
            return;
        }
        {
            let mut owed = self.owed.borrow_mut();
            if let Some(text) = owed.latest.get(key).cloned() {
                owed.see(key, &text);
            }
            if self.local == Available::Yes {
                owed.local.ask(key);
            }
            if self.journal.is_ok() {
                owed.journal.ask(key);
            }
        }
        if self.local == Available::Yes && self.delay.borrow().is_none() {
            let inner = Rc::downgrade(self);
            self.delay.replace(Some(Timer::after(DELAY_MS, move || flush_of(&inner))));
        }
        self.send();
    }

    pub(super) fn flush(self: &Rc<Self>) {
        if self.stopped.get() {
            return;
        }
        self.delay.replace(None);
        self.owed.borrow_mut().ask_again();
        if self.local == Available::Yes {
            let ready = {
                let owed = self.owed.borrow();
                owed.ready(&owed.local)
            };
            for (key, _) in ready {
                if self.overwrites_unseen(&key) {
                    self.owed.borrow_mut().local.refuse(&key, Fault::Changed);
                } else {
                    self.write_local(&key);
                }
            }
        }
        let held_back = self.owed.borrow().held_back();
        for key in held_back {
            self.copy_then_keep(&key);
        }
        self.send();
        self.retry_later();
        self.tell();
    }

    pub(super) fn write_local(&self, key: &str) {
        let text = self.owed.borrow().latest.get(key).cloned();
        let outcome = text.map_or(Ok(()), |text| storage::write(key, &text));
        let mut owed = self.owed.borrow_mut();
        match outcome {
            Ok(()) => owed.local.settle(key),
            Err(fault) => owed.local.refuse(key, fault),
        }
        owed.release(key);
    }

    /// Sends to the journal all that waits for it, one transaction after the other.
    pub(super) fn send(self: &Rc<Self>) {
        if self.stopped.get()
            || self.journal.is_err()
            || self.owed.borrow().journal.waiting.is_empty()
            || self.journal_busy.replace(true)
        {
            return;
        }
        let inner = Rc::clone(self);
        spawn_local(async move {
            inner.drain().await;
            inner.journal_busy.set(false);
            inner.retry_later();
            inner.tell();
        });
    }

    async fn drain(&self) {
        let Ok(journal) = &self.journal else { return };
        loop {
            let batch: Vec<(String, String)> = {
                let owed = self.owed.borrow();
                owed.ready(&owed.journal)
            };
            if batch.is_empty() {
                return;
            }
            let entries: Vec<_> = batch.iter().map(|(key, text)| (key.as_str(), text.as_str())).collect();
            let outcome = journal.put_all(&entries).await;
            if outcome.is_ok() || entries.len() == 1 {
                for (key, text) in entries {
                    self.journal_took(key, text, &outcome);
                }
            } else {
                // One of them spoilt it for all: each by itself.
                for (key, text) in entries {
                    if self.owed.borrow().latest.contains_key(key) {
                        let outcome = journal.put(key, text).await;
                        self.journal_took(key, text, &outcome);
                    }
                }
            }
            self.tell();
        }
    }

    /// Notes that the journal took, or refused, this text; a newer text of the key stays owed.
    pub(super) fn journal_took(&self, key: &str, text: &str, outcome: &Result<(), Fault>) {
        let mut owed = self.owed.borrow_mut();
        match outcome {
            Ok(()) if owed.latest.get(key).is_none_or(|latest| latest == text) => owed.journal.settle(key),
            // A newer text was refused meanwhile because somebody else changed this one: that stays said.
            Ok(()) if owed.journal.refused.get(key) == Some(&Fault::Changed) => {}
            // It was taken away meanwhile, or a newer one waits.
            Ok(()) => {
                owed.journal.refused.remove(key);
            }
            Err(_) if !owed.latest.contains_key(key) => owed.journal.settle(key),
            Err(fault) => owed.journal.refuse(key, fault.clone()),
        }
        owed.release(key);
    }

    /// Tries again in a while what was refused.
    pub(super) fn retry_later(self: &Rc<Self>) {
        let wanted = {
            let owed = self.owed.borrow();
            owed.local.can_mend() || owed.journal.can_mend()
        };
        if !wanted || self.stopped.get() {
            self.retry.replace(None);
        } else if self.retry.borrow().is_none() {
            let inner = Rc::downgrade(self);
            self.retry.replace(Some(Timer::after(RETRY_MS, move || {
                if let Some(inner) = inner.upgrade() {
                    inner.retry.replace(None);
                    inner.flush();
                }
            })));
        }
    }
}

fn flush_of(inner: &Weak<Inner>) {
    if let Some(inner) = inner.upgrade() {
        inner.flush();
    }
}
