//! Why an envelope can't be opened.

use crate::saved::Unreadable;

/// Why an envelope can't be opened.
#[derive(Clone, Debug, PartialEq)]
pub enum Damage {
    /// The end is missing: most likely a messenger cut a long link.
    Cut,
    /// Something in it was changed on the way.
    Changed,
    /// It holds letters that no envelope has.
    Letter {
        /// Which.
        letter: char,
        /// Where, counted from 1.
        at: usize,
    },
    /// It is something else.
    OtherThing,
    /// It was made by a later version.
    TooNew {
        /// The version it has.
        version: u64,
    },
    /// Unpacked it would be longer than any job.
    TooLong {
        /// How many bytes it says it has.
        bytes: usize,
    },
    /// Its lists stand in each other deeper than in any job.
    TooDeep,
    /// It holds more things than any job.
    TooMany,
    /// What it holds is no job.
    NoJob(Unreadable),
}
