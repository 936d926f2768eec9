//! Names that never change: of jobs, vessels, layers, devices.

use std::fmt;

use serde::{Deserialize, Serialize};

/// A name made once from random bytes, and never reused.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(from = "String", into = "String")]
pub struct Id(String);

impl Id {
    /// The id of these letters; letters other than `a–z`, `0–9` and `-` are left out, and 64 are the most.
    #[must_use]
    pub fn new(text: &str) -> Id {
        Id(text
            .chars()
            .map(|c| c.to_ascii_lowercase())
            .filter(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || *c == '-')
            .take(64)
            .collect())
    }

    /// Its letters.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl From<String> for Id {
    fn from(text: String) -> Id {
        Id::new(&text)
    }
}

impl From<Id> for String {
    fn from(id: Id) -> String {
        id.0
    }
}

impl fmt::Display for Id {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// Which device changed something, and how often it had: tells two states apart without any clock.
#[derive(Clone, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Revision {
    /// The device that made it.
    pub device: Id,
    /// Counted up at every change.
    pub counter: u64,
}
