//! The keeper: every text in local storage and in the journal, and neither ever lost to the other.
//!
//! - A text goes to the journal at once and to local storage within [`DELAY_MS`], at once when the page is hidden.
//! - A text that a place refused stays in memory and is tried again; its refusal stays in the [`Status`] until *that*
//!   text is kept, whatever else is kept meanwhile.
//! - A kept text that this page has neither read nor made is never overwritten: [`Fault::Changed`].
//! - A kept text that could not be read, or that could not be put in order against its other copy, is copied under
//!   `bedwright/aside/<n>/<key>` before anything replaces it.

mod owed;

use std::{
    cell::{Cell, RefCell},
    cmp::Ordering,
    collections::{BTreeMap, BTreeSet},
    rc::{Rc, Weak},
};

use wasm_bindgen_futures::spawn_local;
use web_sys::VisibilityState;

use self::owed::Owed;
use crate::{
    fault::Fault,
    journal::Journal,
    listen::Listener,
    storage::{self, Available},
    timer::Timer,
};

/// The longest a text waits before it goes to local storage.
pub const DELAY_MS: i32 = 200;

/// Where copies of texts go that could not be read.
pub const ASIDE: &str = "bedwright/aside/";

const RETRY_MS: i32 = 10_000;

/// How saving stands. Texts set aside are not part of it: see [`Keeper::on_aside`].
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Status {
    /// Local storage: kept, or why not.
    pub local: Result<(), Fault>,
    /// The journal: kept, or why not.
    pub journal: Result<(), Fault>,
    /// Something is on its way.
    pub pending: bool,
}

/// One of the two places.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Place {
    /// Local storage.
    Local,
    /// The journal in IndexedDB.
    Journal,
}

/// A text that was kept under a key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    /// The key.
    pub key: String,
    /// The newer text; local storage's where `other` is told.
    pub text: String,
    /// The journal's text where the two differ and could not be put in order. Neither was touched; both are set aside
    /// before anything is written under this key.
    pub other: Option<String>,
}

/// All that was kept under a prefix.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Loaded {
    /// Every key once, in order.
    pub entries: Vec<Entry>,
    /// Where an older or missing text is being replaced by the newer one.
    pub repaired: Vec<(String, Place)>,
    /// Whether local storage could be read.
    pub local: Result<(), Fault>,
    /// Whether the journal could be read.
    pub journal: Result<(), Fault>,
}

/// A text that was copied out of the way.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Aside {
    /// The key it was kept under.
    pub key: String,
    /// The keys of the copies: one, or two where the places held different texts.
    pub copies: Vec<String>,
}

/// Keeps texts in both places. Clones are the same keeper; it stops listening when the last is dropped.
#[derive(Clone)]
pub struct Keeper {
    inner: Rc<Inner>,
}

type Call<T> = Rc<dyn Fn(T)>;

struct Inner {
    local: Available,
    journal: Result<Journal, Fault>,
    owed: RefCell<Owed>,
    delay: RefCell<Option<Timer>>,
    retry: RefCell<Option<Timer>>,
    journal_busy: Cell<bool>,
    copying: RefCell<BTreeSet<String>>,
    asides: RefCell<Vec<Aside>>,
    told: RefCell<Option<Status>>,
    status_call: RefCell<Option<Call<Status>>>,
    aside_call: RefCell<Option<Call<Aside>>>,
    listeners: RefCell<Vec<Listener>>,
}

impl Keeper {
    /// Tries both places. Where both are blocked the keeper works in memory only and its [`Status`] says so.
    pub async fn open() -> Self {
        Self::with(storage::probe(), Journal::open().await)
    }

    /// A keeper on places that were tried already.
    #[must_use]
    pub fn with(local: Available, journal: Result<Journal, Fault>) -> Self {
        let inner = Rc::new(Inner {
            local,
            journal,
            owed: RefCell::default(),
            delay: RefCell::default(),
            retry: RefCell::default(),
            journal_busy: Cell::new(false),
            copying: RefCell::default(),
            asides: RefCell::default(),
            told: RefCell::default(),
            status_call: RefCell::default(),
            aside_call: RefCell::default(),
            listeners: RefCell::default(),
        });
        inner.listen();
        Self { inner }
    }

    /// Whether nothing is kept beyond this page: closing it loses all.
    #[must_use]
    pub fn memory_only(&self) -> bool {
        self.inner.memory_only()
    }

    /// How saving stands.
    #[must_use]
    pub fn status(&self) -> Status {
        self.inner.status()
    }

    /// Calls back now, and each time the status becomes another. One callback: a later one replaces it.
    pub fn on_status(&self, call: impl Fn(Status) + 'static) {
        self.inner.status_call.replace(Some(Rc::new(call)));
        self.inner.told.replace(None);
        self.inner.tell();
    }

    /// Calls back each time a text was set aside. One callback: a later one replaces it.
    pub fn on_aside(&self, call: impl Fn(Aside) + 'static) {
        self.inner.aside_call.replace(Some(Rc::new(call)));
    }

    /// What this page has set aside so far; saving never shortens it.
    #[must_use]
    pub fn asides(&self) -> Vec<Aside> {
        self.inner.asides.borrow().clone()
    }

    /// Each text that a place refused so far, and why.
    #[must_use]
    pub fn refused(&self) -> Vec<(String, Place, Fault)> {
        let owed = self.inner.owed.borrow();
        let of = |place, refused: &BTreeMap<String, Fault>| {
            refused.iter().map(|(key, fault)| (key.clone(), place, fault.clone())).collect::<Vec<_>>()
        };
        let mut all = of(Place::Local, &owed.local.refused);
        all.extend(of(Place::Journal, &owed.journal.refused));
        all
    }

    /// Reads both places, and mends the one that is behind.
    ///
    /// `newer(local, journal)` says which of two different texts of one key is the newer. It must answer
    /// [`Ordering::Equal`] when that cannot be told: either is unreadable, or both were changed from a common one. Then
    /// neither is touched, and both are given. A text that is missing in one place is copied there. What this page
    /// scheduled itself and could not keep yet counts as the newest.
    ///
    /// Copies set aside are not among the entries unless the prefix asks for them.
    pub async fn load_all(&self, prefix: &str, newer: impl Fn(&str, &str) -> Ordering) -> Loaded {
        let inner = &self.inner;
        let journal = match &inner.journal {
            Ok(journal) => journal.all(prefix).await,
            Err(fault) => Err(fault.clone()),
        };
        let local = inner.read_local(prefix);
        let mut pairs = BTreeMap::<String, (Option<String>, Option<String>)>::new();
        for (key, text) in local.iter().flatten() {
            pairs.entry(key.clone()).or_default().0 = Some(text.clone());
        }
        for (key, text) in journal.iter().flatten() {
            pairs.entry(key.clone()).or_default().1 = Some(text.clone());
        }
        let (mut entries, mut repaired) = (Vec::new(), Vec::new());
        {
            let mut owed = inner.owed.borrow_mut();
            let owed = &mut *owed;
            let held: Vec<_> = owed.latest.iter().filter(|(key, _)| key.starts_with(prefix)).collect();
            for (key, _) in held {
                pairs.entry(key.clone()).or_default();
            }
            for (key, found) in pairs {
                if key.starts_with(ASIDE) && !prefix.starts_with(ASIDE) {
                    continue;
                }
                // A text of this page that is on its way is the newest, and what is kept is behind it by rights.
                if let Some(text) = owed.latest.get(&key) {
                    entries.push(Entry { text: text.clone(), key, other: None });
                    continue;
                }
                let (text, behind) = match found {
                    (Some(local_text), Some(journal_text)) if local_text != journal_text => {
                        match newer(&local_text, &journal_text) {
                            Ordering::Greater => (local_text, Some(Place::Journal)),
                            Ordering::Less => {
                                // It has been read here: replacing it overwrites nobody's unseen change.
                                owed.see(&key, &local_text);
                                (journal_text, Some(Place::Local))
                            }
                            Ordering::Equal => {
                                owed.see(&key, &local_text);
                                owed.guarded.insert(key.clone());
                                entries.push(Entry { key, text: local_text, other: Some(journal_text) });
                                continue;
                            }
                        }
                    }
                    (Some(text), None) => (text, journal.is_ok().then_some(Place::Journal)),
                    (None, Some(text)) => (text, local.is_ok().then_some(Place::Local)),
                    (Some(text), Some(_)) => (text, None),
                    (None, None) => continue,
                };
                owed.see(&key, &text);
                if let Some(place) = behind {
                    owed.latest.insert(key.clone(), text.clone());
                    match place {
                        Place::Local => owed.local.ask(&key),
                        Place::Journal => owed.journal.ask(&key),
                    }
                    repaired.push((key.clone(), place));
                }
                entries.push(Entry { key, text, other: None });
            }
        }
        if !repaired.is_empty() {
            self.flush();
        }
        Loaded { entries, repaired, local: local.map(drop), journal: journal.map(drop) }
    }

    /// Takes a text to be kept under a key; a text of the same key that is still waiting is replaced.
    pub fn schedule(&self, key: &str, text: &str) {
        let inner = &self.inner;
        inner.owed.borrow_mut().latest.insert(key.to_owned(), text.to_owned());
        if inner.owed.borrow().guarded.contains(key) {
            inner.copy_then_keep(key);
        } else {
            inner.keep(key);
        }
        inner.tell();
    }

    /// Keeps a text and resolves when the browser reports it written through to the disk: for a sign-off.
    ///
    /// # Errors
    /// Why the journal did not keep it; local storage may have it all the same, see [`Keeper::status`].
    pub async fn commit(&self, key: &str, text: &str) -> Result<(), Fault> {
        let inner = &self.inner;
        if inner.owed.borrow().guarded.contains(key) {
            self.set_aside(key).await?;
        }
        inner.owed.borrow_mut().latest.insert(key.to_owned(), text.to_owned());
        if inner.overwrites_unseen(key) {
            inner.refuse_changed(key);
            inner.tell();
            return Err(Fault::Changed);
        }
        inner.owed.borrow_mut().see(key, text);
        if inner.local == Available::Yes {
            inner.write_local(key);
        }
        let journal = match &inner.journal {
            Ok(journal) => journal,
            Err(fault) => {
                inner.tell();
                return Err(fault.clone());
            }
        };
        let was_busy = inner.journal_busy.get();
        let outcome = journal.put_strict(key, text).await;
        inner.journal_took(key, text, &outcome);
        // An older text that was on its way may have come later, where the database had to be opened again.
        if was_busy && outcome.is_ok() && inner.owed.borrow().latest.get(key).is_none_or(|latest| latest == text) {
            let mut owed = inner.owed.borrow_mut();
            owed.latest.insert(key.to_owned(), text.to_owned());
            owed.journal.ask(key);
            drop(owed);
            inner.send();
        }
        inner.retry_later();
        inner.tell();
        outcome
    }

    /// Writes to local storage now all that waits for it, and tries again what was refused.
    pub fn flush(&self) {
        self.inner.flush();
    }

    /// Marks what is kept under a key as not to be replaced before it was set aside: for a text that cannot be read.
    pub fn protect(&self, key: &str) {
        let mut owed = self.inner.owed.borrow_mut();
        owed.guarded.insert(key.to_owned());
        if let Some(text) = self.inner.local_text(key) {
            owed.see(key, &text);
        }
    }

    /// Copies what is kept under a key to a free key now; two copies where the places hold different texts. None where
    /// nothing is kept.
    ///
    /// # Errors
    /// Why neither place took a copy. The key stays protected then, and nothing is written under it.
    pub async fn set_aside(&self, key: &str) -> Result<Vec<String>, Fault> {
        self.inner.set_aside(key).await
    }

    /// What local storage holds under a key now, after [`Fault::Changed`]. From here on it counts as seen: the next
    /// text scheduled, made from both, replaces it.
    ///
    /// # Errors
    /// [`Fault::Blocked`] where there is no local storage.
    pub fn see(&self, key: &str) -> Result<Option<String>, Fault> {
        if self.inner.local == Available::Blocked {
            return Err(Fault::Blocked);
        }
        let text = storage::read(key)?;
        if let Some(text) = &text {
            self.inner.owed.borrow_mut().see(key, text);
        }
        Ok(text)
    }

    /// Takes a key away from both places; a protected text is set aside first.
    ///
    /// A browser killed within seconds may bring the text back from one of the places.
    ///
    /// # Errors
    /// Why it could not be taken away.
    pub async fn remove(&self, key: &str) -> Result<(), Fault> {
        let inner = &self.inner;
        if inner.owed.borrow().guarded.contains(key) {
            self.set_aside(key).await?;
        }
        inner.owed.borrow_mut().drop_key(key);
        let local = if inner.local == Available::Yes { storage::remove(key) } else { Ok(()) };
        let journal = match &inner.journal {
            Ok(journal) => journal.remove(key).await,
            Err(_) => Ok(()),
        };
        inner.tell();
        local.and(journal)
    }
}

impl Inner {
    fn memory_only(&self) -> bool {
        self.local == Available::Blocked && self.journal.is_err()
    }

    fn status(&self) -> Status {
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
    fn tell(&self) {
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
    fn listen(self: &Rc<Self>) {
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

    fn read_local(&self, prefix: &str) -> Result<Vec<(String, String)>, Fault> {
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

    fn local_text(&self, key: &str) -> Option<String> {
        if self.local == Available::Yes { storage::read(key).ok().flatten() } else { None }
    }

    /// Whether local storage holds something else than this page has read or made, and than it wants to write.
    fn overwrites_unseen(&self, key: &str) -> bool {
        let Some(kept) = self.local_text(key) else { return false };
        let owed = self.owed.borrow();
        owed.latest.get(key) != Some(&kept) && !owed.has_seen(key, &kept)
    }

    fn refuse_changed(&self, key: &str) {
        let mut owed = self.owed.borrow_mut();
        owed.local.refuse(key, Fault::Changed);
        if self.journal.is_ok() {
            owed.journal.refuse(key, Fault::Changed);
        }
    }

    /// Sets the newest text of a key on its way to both places.
    fn keep(self: &Rc<Self>, key: &str) {
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

    fn flush(self: &Rc<Self>) {
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

    fn write_local(&self, key: &str) {
        let text = self.owed.borrow().latest.get(key).cloned();
        let outcome = text.map_or(Ok(()), |text| storage::write(key, &text));
        let mut owed = self.owed.borrow_mut();
        match outcome {
            Ok(()) => owed.local.settle(key),
            Err(fault) => owed.local.refuse(key, fault),
        }
        owed.release(key, self.memory_only());
    }

    /// Sends to the journal all that waits for it, one transaction after the other.
    fn send(self: &Rc<Self>) {
        if self.journal.is_err() || self.owed.borrow().journal.waiting.is_empty() || self.journal_busy.replace(true) {
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
    fn journal_took(&self, key: &str, text: &str, outcome: &Result<(), Fault>) {
        let mut owed = self.owed.borrow_mut();
        match outcome {
            Ok(()) if owed.latest.get(key).is_none_or(|latest| latest == text) => owed.journal.settle(key),
            // It was taken away meanwhile, or a newer one waits.
            Ok(()) => {
                owed.journal.refused.remove(key);
            }
            Err(_) if !owed.latest.contains_key(key) => owed.journal.settle(key),
            Err(fault) => owed.journal.refuse(key, fault.clone()),
        }
        owed.release(key, self.memory_only());
    }

    /// Tries again in a while what was refused.
    fn retry_later(self: &Rc<Self>) {
        let wanted = {
            let owed = self.owed.borrow();
            owed.local.can_mend() || owed.journal.can_mend()
        };
        if !wanted {
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

    fn copy_then_keep(self: &Rc<Self>, key: &str) {
        if !self.copying.borrow_mut().insert(key.to_owned()) {
            return;
        }
        let (inner, key) = (Rc::clone(self), key.to_owned());
        spawn_local(async move {
            let outcome = inner.set_aside(&key).await;
            inner.copying.borrow_mut().remove(&key);
            match outcome {
                Ok(_) => inner.keep(&key),
                Err(fault) => {
                    let mut owed = inner.owed.borrow_mut();
                    if inner.local == Available::Yes {
                        owed.local.refuse(&key, fault.clone());
                    }
                    if inner.journal.is_ok() {
                        owed.journal.refuse(&key, fault);
                    }
                }
            }
            inner.retry_later();
            inner.tell();
        });
    }

    async fn set_aside(&self, key: &str) -> Result<Vec<String>, Fault> {
        let mut texts = Vec::new();
        if self.local == Available::Yes {
            texts.extend(storage::read(key)?);
        }
        if let Ok(journal) = &self.journal
            && let Some(text) = journal.get(key).await?
            && !texts.contains(&text)
        {
            texts.push(text);
        }
        let mut copies = Vec::new();
        for text in texts {
            copies.push(self.copy(key, &text).await?);
        }
        self.owed.borrow_mut().guarded.remove(key);
        if !copies.is_empty() {
            let aside = Aside { key: key.to_owned(), copies: copies.clone() };
            self.asides.borrow_mut().push(aside.clone());
            let call = self.aside_call.borrow().clone();
            if let Some(call) = call {
                call(aside);
            }
        }
        Ok(copies)
    }

    /// Copies a text under the first key that is free in both places.
    async fn copy(&self, key: &str, text: &str) -> Result<String, Fault> {
        let mut number = 1_u32;
        loop {
            let name = format!("{ASIDE}{number}/{key}");
            number = number.saturating_add(1);
            if self.local_text(&name).is_some() {
                continue;
            }
            let journal = match &self.journal {
                Ok(journal) => match journal.put_new(&name, text).await {
                    Ok(false) => continue,
                    Ok(true) => Ok(()),
                    Err(fault) => Err(fault),
                },
                Err(fault) => Err(fault.clone()),
            };
            let local = if self.local == Available::Yes { storage::write(&name, text) } else { Err(Fault::Blocked) };
            return journal.or(local).map(|()| name);
        }
    }
}

fn flush_of(inner: &Weak<Inner>) {
    if let Some(inner) = inner.upgrade() {
        inner.flush();
    }
}
