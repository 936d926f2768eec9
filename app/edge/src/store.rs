//! The keeper: every text in local storage and in the journal, and neither ever lost to the other.
//!
//! - A text goes to the journal at once and to local storage within [`DELAY_MS`], at once when the page is hidden.
//! - A text that a place refused stays in memory and is tried again; its refusal stays in the [`Status`] until *that*
//!   text is kept, whatever else is kept meanwhile.
//! - A kept text that this page has neither read nor made is never overwritten: [`Fault::Changed`].
//! - A kept text that could not be read, or that could not be put in order against its other copy, is copied under
//!   `bedwright/aside/<n>/<key>` before anything replaces it.

mod aside;
mod load;
mod owed;
mod saving;

use std::{
    cell::{Cell, RefCell},
    rc::Rc,
};

pub use self::load::{Entry, Loaded};
use litemap::LiteMap;

use self::owed::{Keys, Owed};
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
    copying: RefCell<Keys>,
    /// Nothing more is written: a later page has been here.
    stopped: Cell<bool>,
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
            stopped: Cell::new(false),
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
        let of = |place, refused: &LiteMap<String, Fault>| {
            refused.iter().map(|(key, fault)| (key.clone(), place, fault.clone())).collect::<Vec<_>>()
        };
        let mut all = of(Place::Local, &owed.local.refused);
        all.extend(of(Place::Journal, &owed.journal.refused));
        all
    }

    /// Writes nothing from now on, nor takes anything away: what a later page keeps here is not this one's to change.
    pub fn stop(&self) {
        self.inner.stopped.set(true);
        self.inner.retry.replace(None);
        self.inner.delay.replace(None);
    }

    /// Takes a text to be kept under a key; a text of the same key that is still waiting is replaced.
    pub fn schedule(&self, key: &str, text: &str) {
        let inner = &self.inner;
        if inner.stopped.get() {
            return;
        }
        inner.owed.borrow_mut().latest.insert(key.to_owned(), text.to_owned());
        if inner.owed.borrow().guarded.contains_key(key) {
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
        if inner.stopped.get() {
            return Err(Fault::Changed);
        }
        if inner.owed.borrow().guarded.contains_key(key) {
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
        owed.guarded.insert(key.to_owned(), ());
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
        if inner.stopped.get() {
            return Err(Fault::Changed);
        }
        if inner.owed.borrow().guarded.contains_key(key) {
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
