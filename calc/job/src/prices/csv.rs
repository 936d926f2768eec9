//! The price list as a file of comma-separated values, out and in again.
//!
//! The names of the columns ([`Column`]) are permanent; files are written as RFC 4180 says, lines ending in CR LF. A text
//! that a spreadsheet would take for a formula gets an apostrophe in front, which is taken off when it is read.

mod column;
mod dry_run;
mod record;
mod row;
mod write;

pub use column::{Column, NAMES};
pub use dry_run::{Changed, DryRun, FileFault, Refusal, RowFault, dry_run};
pub use record::{Record, Separator, Stray, records};
pub use write::{FileForm, cells_csv, list_csv};

/// The most bytes of a file that is read.
pub const MOST_BYTES: usize = 8 * 1024 * 1024;
/// The most letters of a cell that is read: a quotation mark that is never closed ends there.
pub const LONGEST_CELL: usize = 2_000;

/// What a spreadsheet takes for the beginning of a formula, and the apostrophe that guards against it.
const GUARDED: [char; 7] = ['=', '+', '-', '@', '\t', '\r', '\''];
/// Minus and its kin, which some programs take for a minus as well.
const GUARDED_TOO: [char; 4] = ['−', '＝', '＋', '＠'];

fn is_guarded(first: char) -> bool {
    GUARDED.contains(&first) || GUARDED_TOO.contains(&first)
}

/// A text such that no spreadsheet takes it for a formula.
fn guarded(text: &str) -> String {
    if text.starts_with(is_guarded) { ["'", text].concat() } else { text.to_owned() }
}

/// The text that was guarded.
fn unguarded(text: &str) -> &str {
    text.strip_prefix('\'').filter(|rest| rest.starts_with(is_guarded)).unwrap_or(text)
}
