//! What this page holds that a place does not have yet. Pure: nothing here touches the browser.

use std::{
    collections::VecDeque,
    hash::{DefaultHasher, Hash as _, Hasher as _},
};

use litemap::LiteMap;

use crate::fault::Fault;

/// How many texts per key are remembered as seen; one tab can be a few keystrokes behind another.
const REMEMBERED: usize = 32;

/// A set of keys, in order.
pub(super) type Keys = LiteMap<String, ()>;

/// What one place still has to take.
#[derive(Default)]
pub(super) struct Queue {
    /// To be tried now.
    pub waiting: Keys,
    /// Tried, refused, and to be tried again.
    pub refused: LiteMap<String, Fault>,
}

impl Queue {
    pub fn ask(&mut self, key: &str) {
        self.waiting.insert(key.to_owned(), ());
    }

    pub fn refuse(&mut self, key: &str, fault: Fault) {
        self.waiting.remove(key);
        self.refused.insert(key.to_owned(), fault);
    }

    pub fn settle(&mut self, key: &str) {
        self.waiting.remove(key);
        self.refused.remove(key);
    }

    pub fn owes(&self, key: &str) -> bool {
        self.waiting.contains_key(key) || self.refused.contains_key(key)
    }

    /// Asks again for everything refused that another attempt can mend: not what somebody else changed, and not what
    /// is guarded, which comes back by way of its copy.
    fn ask_again(&mut self, guarded: &Keys) {
        for (key, fault) in &self.refused {
            if *fault != Fault::Changed && !guarded.contains_key(key) {
                self.waiting.insert(key.clone(), ());
            }
        }
    }

    /// Whether another attempt could mend something.
    pub fn can_mend(&self) -> bool {
        self.refused.values().any(|fault| *fault != Fault::Changed)
    }

    /// All refusals as one: where several lack room, the room they lack together.
    pub fn outcome(&self) -> Result<(), Fault> {
        let lacking = self.refused.values().fold(0_usize, |sum, fault| match fault {
            Fault::Full { needed_bytes } => sum.saturating_add(*needed_bytes),
            _ => sum,
        });
        if lacking > 0 {
            return Err(Fault::Full { needed_bytes: lacking });
        }
        self.refused.values().next().map_or(Ok(()), |fault| Err(fault.clone()))
    }
}

/// All that is not everywhere yet, and what is known of the rest.
#[derive(Default)]
pub(super) struct Owed {
    /// The newest text of each key that some place does not have.
    pub latest: LiteMap<String, String>,
    pub local: Queue,
    pub journal: Queue,
    /// Keys whose kept text is not to be replaced before it was copied.
    pub guarded: Keys,
    seen: LiteMap<String, VecDeque<u64>>,
}

impl Owed {
    /// Asks both places again for what they refused.
    pub fn ask_again(&mut self) {
        self.local.ask_again(&self.guarded);
        self.journal.ask_again(&self.guarded);
    }

    /// The keys that one place may be given now.
    pub fn ready(&self, queue: &Queue) -> Vec<(String, String)> {
        queue
            .waiting
            .keys()
            .filter(|key| !self.guarded.contains_key(*key))
            .filter_map(|key| self.latest.get(key).map(|text| (key.clone(), text.clone())))
            .collect()
    }

    /// The keys whose text waits for a copy of the old one.
    pub fn held_back(&self) -> Vec<String> {
        self.latest.keys().filter(|key| self.guarded.contains_key(*key)).cloned().collect()
    }

    /// Forgets the text of a key once no place owes it. Asked only after a place took or refused it: where both are
    /// blocked every text stays.
    pub fn release(&mut self, key: &str) {
        if !self.guarded.contains_key(key) && !self.local.owes(key) && !self.journal.owes(key) {
            self.latest.remove(key);
        }
    }

    /// Remembers that this page has read or made this text.
    pub fn see(&mut self, key: &str, text: &str) {
        let print = fingerprint(text);
        let seen = self.seen.entry(key.to_owned()).or_default();
        if !seen.contains(&print) {
            if seen.len() >= REMEMBERED {
                seen.pop_front();
            }
            seen.push_back(print);
        }
    }

    /// Whether this page has read or made this text, which is then the last of its key to be forgotten: what local
    /// storage holds stays known however much is typed before it is replaced.
    pub fn has_seen(&mut self, key: &str, text: &str) -> bool {
        let print = fingerprint(text);
        let Some(seen) = self.seen.get_mut(key) else { return false };
        let Some(place) = seen.iter().position(|there| *there == print) else { return false };
        seen.remove(place);
        seen.push_back(print);
        true
    }

    /// Drops all that is owed for a key that is taken away.
    pub fn drop_key(&mut self, key: &str) {
        self.latest.remove(key);
        self.local.settle(key);
        self.journal.settle(key);
        self.guarded.remove(key);
        self.seen.remove(key);
    }
}

fn fingerprint(text: &str) -> u64 {
    let mut hasher = DefaultHasher::new();
    text.hash(&mut hasher);
    hasher.finish()
}
