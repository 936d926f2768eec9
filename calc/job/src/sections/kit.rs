//! What the parts of a job are counted by, and which lines of its bill are left out, with the reason.

use litemap::LiteMap;

use super::Unknown;
use crate::entry::Entry;
use crate::field::KitField;

/// The kit of a job.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Kit {
    /// What was typed, by field.
    pub entries: LiteMap<KitField, Entry>,
    /// Lines that are left out of the bill: the reason, by the key of the row that prices them. A pipe is left out
    /// whatever it is cut to.
    pub left_out: LiteMap<String, String>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}
