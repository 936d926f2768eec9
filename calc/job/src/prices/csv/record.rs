//! Cells out of a text: commas, semicolons or tabs, quotation marks as RFC 4180 says.

use super::LONGEST_CELL;

/// What stands between cells.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Separator {
    /// `,`
    Comma,
    /// `;`
    Semicolon,
    /// A tab.
    Tab,
}

impl Separator {
    /// All of them.
    pub const ALL: [Separator; 3] = [Separator::Comma, Separator::Semicolon, Separator::Tab];

    /// The character.
    #[must_use]
    pub const fn mark(self) -> char {
        match self {
            Separator::Comma => ',',
            Separator::Semicolon => ';',
            Separator::Tab => '\t',
        }
    }
}

/// A row of cells, or why it is none.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Record {
    /// The line it starts in, from one.
    pub line: usize,
    /// Its cells.
    pub cells: Result<Vec<String>, Stray>,
}

/// Why a row can't be taken apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Stray {
    /// A quotation mark stands inside a cell that doesn't start with one.
    Inside,
    /// Something follows the quotation mark that closes a cell.
    After,
    /// A quotation mark is never closed, or only after more than [`LONGEST_CELL`] letters.
    NeverClosed,
    /// A cell has more than [`LONGEST_CELL`] letters.
    TooLong,
}

/// Every row of a text that isn't blank. After one that can't be taken apart the next line is tried on its own, so that
/// one stray mark doesn't swallow what follows.
pub fn records(text: &str, separator: Separator) -> impl Iterator<Item = Record> + '_ {
    let mut rest = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut line = 1;
    std::iter::from_fn(move || {
        loop {
            if rest.is_empty() {
                return None;
            }
            let start = line;
            let (cells, used) = match record(rest, separator.mark()) {
                Ok((cells, used)) => (Ok(cells), used),
                Err(stray) => (Err(stray), line_end(rest)),
            };
            let (taken, after) = rest.split_at(used);
            line += line_ends(taken);
            rest = after;
            let blank = cells.as_ref().is_ok_and(|cells| cells.iter().all(|cell| cell.trim().is_empty()));
            if !blank {
                return Some(Record { line: start, cells });
            }
        }
    })
}

/// How many bytes the first line has, its end included.
fn line_end(text: &str) -> usize {
    let Some(at) = text.find(['\r', '\n']) else { return text.len() };
    at + if text.get(at..).is_some_and(|end| end.starts_with("\r\n")) { 2 } else { 1 }
}

fn line_ends(text: &str) -> usize {
    let pairs = text.as_bytes().windows(2).filter(|pair| *pair == b"\r\n").count();
    text.bytes().filter(|byte| matches!(byte, b'\r' | b'\n')).count() - pairs
}

/// The cells of the first row, and how many bytes it has.
fn record(text: &str, separator: char) -> Result<(Vec<String>, usize), Stray> {
    let mut cells = Vec::new();
    let mut at = 0;
    loop {
        let rest = text.get(at..).unwrap_or_default();
        let (cell, used) = if rest.starts_with('"') { quoted(rest)? } else { plain(rest, separator)? };
        cells.push(cell);
        at += used;
        let rest = text.get(at..).unwrap_or_default();
        match rest.chars().next() {
            None => return Ok((cells, at)),
            Some(c) if c == separator => at += c.len_utf8(),
            Some('\r' | '\n') => return Ok((cells, at + line_end(rest))),
            Some(_) => return Err(Stray::After),
        }
    }
}

fn plain(text: &str, separator: char) -> Result<(String, usize), Stray> {
    let end = text.find([separator, '\r', '\n', '"']).unwrap_or(text.len());
    let cell = text.get(..end).unwrap_or_default();
    if text.get(end..).is_some_and(|rest| rest.starts_with('"')) {
        return Err(Stray::Inside);
    }
    if cell.chars().count() > LONGEST_CELL {
        return Err(Stray::TooLong);
    }
    Ok((cell.to_owned(), end))
}

fn quoted(text: &str) -> Result<(String, usize), Stray> {
    let mut cell = String::new();
    let mut letters = text.char_indices().skip(1).peekable();
    let mut count = 0;
    while let Some((at, c)) = letters.next() {
        if c == '"' {
            if letters.peek().is_none_or(|(_, next)| *next != '"') {
                return Ok((cell, at + 1));
            }
            letters.next();
        }
        count += 1;
        if count > LONGEST_CELL {
            return Err(Stray::NeverClosed);
        }
        cell.push(c);
    }
    Err(Stray::NeverClosed)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::{Separator, Stray, records};
    use crate::prices::csv::LONGEST_CELL;

    fn cells(text: &str) -> Vec<(usize, Result<Vec<String>, Stray>)> {
        records(text, Separator::Comma).map(|record| (record.line, record.cells)).collect()
    }

    fn row(line: usize, cells: &[&str]) -> (usize, Result<Vec<String>, Stray>) {
        (line, Ok(cells.iter().map(|&cell| cell.to_owned()).collect()))
    }

    #[test]
    fn rows_end_where_lines_end_outside_of_quotation_marks() {
        assert_eq!(cells("a,b\r\nc,\nd\re"), [row(1, &["a", "b"]), row(2, &["c", ""]), row(3, &["d"]), row(4, &["e"])]);
        assert_eq!(
            cells("\u{feff}a\n\n , \n\"b\r\n\"\"c\"\"\",d\nx"),
            [row(1, &["a"]), row(4, &["b\r\n\"c\"", "d"]), row(6, &["x"])]
        );
        assert_eq!(cells(""), []);
        assert_eq!(cells(",\"\""), []);
    }

    #[test]
    fn one_stray_mark_costs_one_row() {
        let text = "a,2\" pipe\nb,\"x\"y\nc,d\n\"e,f\ng,h\n";
        assert_eq!(
            cells(text),
            [
                (1, Err(Stray::Inside)),
                (2, Err(Stray::After)),
                row(3, &["c", "d"]),
                (4, Err(Stray::NeverClosed)),
                row(5, &["g", "h"]),
            ]
        );
    }

    #[test]
    fn a_cell_has_an_end() {
        let long = "x".repeat(LONGEST_CELL + 1);
        assert_eq!(cells(&format!("{long}\na")), [(1, Err(Stray::TooLong)), row(2, &["a"])]);
        assert_eq!(cells(&format!("\"{long}\"\na")), [(1, Err(Stray::NeverClosed)), row(2, &["a"])]);
    }

    /// Marks that are never closed, line after line: time stays in proportion.
    #[test]
    fn many_stray_marks_are_read_in_time() {
        let text = "\"x\n".repeat(200_000);
        assert_eq!(records(&text, Separator::Comma).count(), 200_000);
        let text = "\"\"\"\n".repeat(200_001);
        assert!(records(&text, Separator::Comma).count() > 0);
    }

    proptest! {
        #[test]
        fn no_text_panics_and_every_line_is_counted(text in "[a-z\",;\r\n]{0,60}") {
            let lines = text.bytes().filter(|byte| matches!(byte, b'\r' | b'\n')).count();
            for separator in Separator::ALL {
                for record in records(&text, separator) {
                    prop_assert!(record.line <= lines + 1);
                }
            }
        }
    }
}
