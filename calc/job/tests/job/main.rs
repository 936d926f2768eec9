//! The job document from outside: its one door, its files, its answers and what it says, each from one side.
//!
//! | module | holds |
//! |---|---|
//! | `jobs` | jobs that the others take apart |
//! | `edits` | every change can be taken back, and a refused one changes nothing |
//! | `evidence` | what was seen of a bed is used, refused with a reason, taken back |
//! | `saved` | files of every version open and come back as they were; damage never panics |
//! | `schema` | the published schema takes what we write and refuses what is wrong |
//! | `schema_records` | every kind of record in that schema |
//! | `records` | records of every kind are described, and one that is wrong is refused |
//! | `as_loaded` | what was signed stays, and is set right by another record |
//! | `loading` | the sheets a vessel is emptied and loaded by |
//! | `answers` | whatever is typed, answers stay numbers and mistakes stay where they were made |
//! | `life` | how long a bed lasts, and what a mistake in the water's analysis does |
//! | `kit` | parts by rule, and what a person leaves out |
//! | `prices` | the list of a device changes through one door and is kept in parts; a job carries what it uses |
//! | `csv` | the price list as a file: out and in, tried before anything changes, read by others |
//! | `care` | what the card of a tag says, from records as somebody would add them |
//! | `care_papers` | what a card shows from visit to visit; card, due list and labels on paper |
//! | `envelope` | what travels comes whole or is refused with the reason |
//! | `travel` | parts and costs that stay, messages, frames, and the way back |
//! | `backup` | everything in one file comes back whole or is refused, and says beforehand what it would do |
//! | `join` | two states of one job become one, and nothing typed on either side is lost unasked |
//! | `plan` | what the command-line example prints |
//! | `search` | a search is kept, says what it misses, and one change makes the vessel |
//! | `sentences` | every sentence a person can meet |
//!
//! `BEDWRIGHT_CASES` says how many random cases each property takes.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)]

mod answers;
mod as_loaded;
mod backup;
mod care;
mod care_papers;
mod csv;
mod edits;
mod envelope;
mod evidence;
mod jobs;
mod join;
mod kit;
mod life;
mod loading;
mod plan;
mod prices;
mod records;
mod saved;
mod schema;
mod schema_records;
mod search;
mod sentences;
mod travel;

use std::path::{Path, PathBuf};

use proptest::prelude::ProptestConfig;

/// A file of the repository.
fn repository(path: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").join(path)
}

/// Ten thousand cases, or as many as `BEDWRIGHT_CASES` says.
fn cases() -> ProptestConfig {
    let cases =
        std::env::var("BEDWRIGHT_CASES").ok().map_or(10_000, |text| text.parse().expect("BEDWRIGHT_CASES is a number"));
    ProptestConfig { cases, failure_persistence: None, ..ProptestConfig::default() }
}
