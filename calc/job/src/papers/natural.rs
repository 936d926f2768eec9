//! The order people put bins in: runs of digits by what they count.

use std::cmp::Ordering;

/// Compares two places of a shelf: `B-2-9` stands before `B-2-10`, and capitals make no difference. Texts that are
/// alike in that are told apart letter by letter, so that the order is the same every time.
#[must_use]
pub fn natural_order(a: &str, b: &str) -> Ordering {
    let (mut left, mut right) = (Parts(a.trim()), Parts(b.trim()));
    loop {
        match (left.next(), right.next()) {
            (None, None) => return a.cmp(b),
            (None, Some(_)) => return Ordering::Less,
            (Some(_), None) => return Ordering::Greater,
            (Some(x), Some(y)) => match x.cmp(&y) {
                Ordering::Equal => {}
                other => return other,
            },
        }
    }
}

/// A run of digits, or one other letter.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
enum Part {
    /// How many digits it has without leading noughts, and which: numbers of any length compare so.
    Number(usize, String),
    Letter(String),
}

struct Parts<'a>(&'a str);

impl Iterator for Parts<'_> {
    type Item = Part;

    fn next(&mut self) -> Option<Part> {
        let first = self.0.chars().next()?;
        let digits = self.0.find(|c: char| !c.is_ascii_digit()).unwrap_or(self.0.len());
        if digits > 0 {
            let run = self.0.get(..digits)?.trim_start_matches('0');
            self.0 = self.0.get(digits..)?;
            return Some(Part::Number(run.len(), run.to_owned()));
        }
        self.0 = self.0.get(first.len_utf8()..)?;
        Some(Part::Letter(first.to_ascii_lowercase().to_string()))
    }
}
