//! Which rows of the list a person looks at.

use std::cell::RefCell;
use std::sync::Arc;

use bedwright_job::prices::{PriceKind, PriceRow};
use bedwright_job::words::Manner;

use crate::desk::Desk;
use crate::parts::live::small_letters;
use crate::parts::signal::{Held, Worked};

/// How many rows are shown at first, and more at each tap.
pub const SHOWN: usize = 60;

/// What is asked for.
#[derive(Clone, Copy)]
pub struct Search {
    /// Words that must all stand in a row.
    pub words: Held<String>,
    /// Only rows of this kind.
    pub kind: Held<Option<PriceKind>>,
    /// Only rows without a price.
    pub gaps: Held<bool>,
    /// Rows no longer offered as well.
    pub retired: Held<bool>,
    /// How many rows are shown at most.
    pub shown: Held<usize>,
    /// The row that is being changed: it stays, whatever becomes of it.
    pub open: Held<Option<String>>,
    /// The row that was just made: it stands first.
    pub fresh: Held<Option<String>>,
}

/// What was found.
#[derive(Clone, PartialEq, Default)]
pub struct Found {
    /// The keys of the rows that are shown.
    pub keys: Vec<String>,
    /// How many there are.
    pub count: usize,
    /// How many rows the list has.
    pub of: usize,
}

/// A row with all that is searched of it, in small letters.
type Letters = (Arc<PriceRow>, String);

impl Search {
    pub fn new() -> Search {
        Search {
            words: Held::new(String::new()),
            kind: Held::new(None),
            gaps: Held::new(false),
            retired: Held::new(false),
            shown: Held::new(SHOWN),
            open: Held::new(None),
            fresh: Held::new(None),
        }
    }

    /// What is found, kept up to date.
    pub fn found(self, desk: Desk) -> Worked<Found> {
        let manner = desk.manner();
        let letters: RefCell<Vec<Letters>> = RefCell::default();
        Worked::new(move || {
            let words = small_letters(&self.words.get());
            let words: Vec<&str> = words.split_whitespace().collect();
            let open = self.open.get();
            let fresh = self.fresh.get();
            let (kind, gaps, retired) = (self.kind.get(), self.gaps.get(), self.retired.get());
            let mut letters = letters.borrow_mut();
            desk.prices.list.with(|list| follow_rows(&mut letters, list.rows(), manner));
            let asked = |(row, letters): &&Letters| {
                let here = open.as_ref() == Some(&row.key);
                let wanted = kind.is_none_or(|kind| row.kind == kind)
                    && (retired || !row.retired)
                    && (!gaps || row.price.is_none())
                    && words.iter().all(|word| holds(letters, word));
                here || wanted
            };
            let mut found = Found { of: letters.len(), ..Found::default() };
            let most = self.shown.get();
            let first = |row: &PriceRow| fresh.as_ref() == Some(&row.key);
            found.keys.extend(letters.iter().filter(|(row, _)| first(row)).map(|(row, _)| row.key.clone()));
            for (row, _) in letters.iter().filter(asked) {
                found.count += 1;
                if found.keys.len() < most && !first(row) {
                    found.keys.push(row.key.clone());
                }
            }
            found
        })
    }
}

/// Byte by byte: std's search is made for long texts, and is longer itself.
fn holds(text: &str, word: &str) -> bool {
    text.as_bytes().windows(word.len()).any(|part| part == word.as_bytes())
}

/// Brings what is searched up to date: rows that are the very same keep their letters.
fn follow_rows(letters: &mut Vec<Letters>, rows: &[Arc<PriceRow>], manner: Manner) {
    let mut before = std::mem::take(letters).into_iter().peekable();
    for row in rows {
        while before.next_if(|(there, _)| there.key < row.key).is_some() {}
        let same = before.next_if(|(there, _)| there.key == row.key).filter(|(there, _)| Arc::ptr_eq(there, row));
        letters.push(same.unwrap_or_else(|| (row.clone(), letters_of(row, manner))));
    }
}

fn letters_of(row: &PriceRow, manner: Manner) -> String {
    let text = [
        &row.part_number,
        "\n",
        &manner.price_name(row),
        "\n",
        &row.bin,
        "\n",
        &row.tax_class,
        "\n",
        &row.superseded_by,
        "\n",
        &row.key,
    ]
    .concat();
    if text.is_ascii() { text.to_ascii_lowercase() } else { small_letters(&text) }
}
