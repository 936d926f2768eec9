//! Reading both places, and which of two texts is the newer.

use std::cmp::Ordering;

use litemap::LiteMap;

use super::{ASIDE, Keeper, Place};
use crate::fault::Fault;

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

impl Keeper {
    /// Every text that is kept under a prefix, by key, as it stands in the first place that has it. Nothing is mended.
    pub async fn texts(&self, prefix: &str) -> Vec<(String, String)> {
        let inner = &self.inner;
        let journal = match &inner.journal {
            Ok(journal) => journal.all(prefix).await.unwrap_or_default(),
            Err(_) => Vec::new(),
        };
        let mut texts = LiteMap::<String, String>::new();
        for (key, text) in journal.into_iter().chain(inner.read_local(prefix).unwrap_or_default()) {
            texts.insert(key, text);
        }
        texts.into_iter().collect()
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
        let mut pairs = LiteMap::<String, (Option<String>, Option<String>)>::new();
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
                                owed.guarded.insert(key.clone(), ());
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
}
