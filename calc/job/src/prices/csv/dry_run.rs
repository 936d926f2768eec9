//! A file tried against the list: what it would add and change, and which rows it can't, with the reasons. The list stays
//! as it is until the edit this gives is applied.

use std::sync::Arc;

use super::record::{Record, Separator, Stray, records};
use super::row::Reader;
use super::{Column, MOST_BYTES};
use crate::prices::index::Index;
use crate::prices::{AmountFault, ListEdit, MOST_ROWS, PriceList, PriceRow, amount};

/// What a file would do.
#[derive(Clone, Debug, PartialEq)]
pub struct DryRun {
    /// What stands between its cells.
    pub separator: Separator,
    /// Its decimal mark, where an amount shows one or a person said it.
    pub decimal: Option<char>,
    /// Columns of names that aren't known; nothing of them is taken.
    pub ignored: Vec<String>,
    /// Rows that are new.
    pub added: Vec<Arc<PriceRow>>,
    /// Rows that become others.
    pub changed: Vec<Changed>,
    /// How many rows are as they are in the list.
    pub unchanged: usize,
    /// Rows that aren't taken.
    pub refused: Vec<Refusal>,
}

/// A row that becomes another.
#[derive(Clone, Debug, PartialEq)]
pub struct Changed {
    /// As it is.
    pub before: Arc<PriceRow>,
    /// As it would be.
    pub after: Arc<PriceRow>,
    /// The columns in which they differ.
    pub columns: Vec<Column>,
}

/// A row that isn't taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// The line it starts in, from one.
    pub line: usize,
    /// Its part number or key, where it could be read.
    pub name: String,
    /// Why.
    pub why: RowFault,
}

/// Why a row isn't taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RowFault {
    /// It can't be taken apart.
    Stray(Stray),
    /// It has fewer or more cells than the header.
    Cells {
        /// How many it has.
        found: usize,
        /// How many the header has.
        wanted: usize,
    },
    /// It has neither key nor part number.
    NoName,
    /// A text is longer than it may be.
    TooLong {
        /// Which.
        column: Column,
        /// How many letters it has.
        letters: usize,
        /// How many it may have.
        most: usize,
    },
    /// An amount is none.
    Amount {
        /// Which.
        column: Column,
        /// What stands there.
        text: String,
        /// Why it is none.
        fault: AmountFault,
    },
    /// An amount has another decimal mark than one further up.
    MixedMarks {
        /// What stands there.
        text: String,
        /// The decimal mark that was found first.
        decimal: char,
        /// The line it was found in.
        line: usize,
    },
    /// An amount's mark could be either, and no other amount tells.
    WhichMark {
        /// What stands there.
        text: String,
    },
    /// A cell holds something that isn't one of what it may be.
    NotOneOf {
        /// Which column.
        column: Column,
        /// What stands there.
        text: String,
    },
    /// A size is no length, volume or mass with its unit.
    Size {
        /// What stands there.
        text: String,
    },
    /// A size is nought or less.
    NoSize {
        /// What stands there.
        text: String,
    },
    /// A row further up has the same key.
    SameKey {
        /// Its line.
        line: usize,
    },
    /// A row further up has the same part number.
    SamePartNumber {
        /// Its line.
        line: usize,
    },
    /// Another row of the list has this part number.
    PartNumberTaken {
        /// Its key.
        key: String,
    },
    /// Several rows of the list have this part number, so it doesn't tell which is meant.
    WhichRow {
        /// How many.
        rows: usize,
    },
}

/// Why a file isn't tried at all.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FileFault {
    /// It has more than [`MOST_BYTES`] bytes.
    TooLong {
        /// How many it has.
        bytes: usize,
    },
    /// It isn't UTF-8.
    NotUtf8,
    /// There is no row below its header.
    Empty,
    /// Its first row has neither `key` nor `part_number`.
    NoHeader,
    /// A column stands twice.
    SameColumn(Column),
    /// The list would have more than [`MOST_ROWS`] rows.
    TooMany {
        /// How many rows the file has.
        rows: usize,
    },
}

impl DryRun {
    /// The change that does what the file would do.
    #[must_use]
    pub fn edit(&self) -> ListEdit {
        let after = self.changed.iter().map(|changed| &changed.after);
        ListEdit::Rows(self.added.iter().chain(after).map(|row| (row.key.clone(), Some(row.clone()))).collect())
    }
}

/// Tries a file against a list. `decimal` is the decimal mark of its amounts, where a person said it; else the first
/// amount that shows one decides.
///
/// # Errors
/// Why nothing of the file can be taken.
///
/// # Example
/// ```
/// use bedwright_job::prices::{PriceList, csv::dry_run};
/// let file = "part_number,name,price\nU-100,Union,\"1,234.50\"\nU-200,Cap,-12\nU-300,Plug,0.75\n";
/// let tried = dry_run(&PriceList::shipped(), file.as_bytes(), None).unwrap();
/// assert_eq!((tried.added.len(), tried.refused.len()), (2, 1));
/// assert_eq!(tried.refused[0].line, 3);
/// ```
pub fn dry_run(list: &PriceList, bytes: &[u8], decimal: Option<char>) -> Result<DryRun, FileFault> {
    if bytes.len() > MOST_BYTES {
        return Err(FileFault::TooLong { bytes: bytes.len() });
    }
    let text = std::str::from_utf8(bytes).map_err(|_| FileFault::NotUtf8)?;
    let (separator, names) = header(text)?;
    let columns: Vec<Option<Column>> = names.iter().map(|name| Column::of(name)).collect();
    for (place, column) in columns.iter().enumerate() {
        if let Some(column) = column
            && columns.iter().take(place).any(|there| there.as_ref() == Some(column))
        {
            return Err(FileFault::SameColumn(*column));
        }
    }
    let rows: Vec<Record> = records(text, separator).skip(1).collect();
    if rows.is_empty() {
        return Err(FileFault::Empty);
    }
    if rows.len() > MOST_ROWS {
        return Err(FileFault::TooMany { rows: rows.len() });
    }
    let decided = decimal.map(|decimal| (decimal, 0)).or_else(|| first_mark(&rows, &columns));
    let ignored = names.iter().zip(&columns).filter(|(name, column)| column.is_none() && !name.trim().is_empty());
    let mut tried = Trial {
        list,
        reader: Reader { columns: &columns, decided },
        part_numbers: Index::new(),
        taken: Vec::new(),
        by_key: Index::new(),
        by_part_number: Index::new(),
        result: DryRun {
            separator,
            decimal: decided.map(|(decimal, _)| decimal),
            ignored: ignored.map(|(name, _)| name.trim().to_owned()).collect(),
            added: Vec::new(),
            changed: Vec::new(),
            unchanged: 0,
            refused: Vec::new(),
        },
    };
    for (place, row) in list.rows().iter().enumerate().filter(|(_, row)| !row.part_number.trim().is_empty()) {
        tried.part_numbers.put(&row.part_number, place);
    }
    for row in &rows {
        tried.take(row);
    }
    let result = tried.result;
    if list.rows().len().saturating_add(result.added.len()) > MOST_ROWS {
        return Err(FileFault::TooMany { rows: rows.len() });
    }
    Ok(result)
}

/// The separator by which the first row is a header, and its names.
fn header(text: &str) -> Result<(Separator, Vec<String>), FileFault> {
    let named = |separator| {
        let names = records(text, separator).next()?.cells.ok()?;
        let known = names.iter().filter_map(|name| Column::of(name));
        let says_which = known.clone().any(|column| matches!(column, Column::Key | Column::PART_NUMBER));
        says_which.then_some((known.count(), separator, names))
    };
    let found = Separator::ALL.into_iter().filter_map(named).max_by_key(|(count, ..)| *count);
    found.map(|(_, separator, names)| (separator, names)).ok_or(if text.trim_matches('\u{feff}').trim().is_empty() {
        FileFault::Empty
    } else {
        FileFault::NoHeader
    })
}

/// The decimal mark of the first amount that shows one, and its line.
fn first_mark(rows: &[Record], columns: &[Option<Column>]) -> Option<(char, usize)> {
    rows.iter().find_map(|row| {
        let cells = row.cells.as_ref().ok().filter(|cells| cells.len() == columns.len())?;
        let amounts =
            cells.iter().zip(columns).filter(|(_, column)| matches!(column, Some(Column::Cost | Column::Price)));
        amounts.filter_map(|(cell, _)| sure_mark(cell)).next().map(|mark| (mark, row.line))
    })
}

/// The decimal mark an amount must have been written with; none where it has none, or where it could be either.
fn sure_mark(text: &str) -> Option<char> {
    let sure = |mark: char| amount(text, mark).is_ok_and(|money| money.is_some());
    match (sure('.'), sure(',')) {
        (true, false) if !could_be_thousands(text, '.') => Some('.'),
        (false, true) if !could_be_thousands(text, ',') => Some(','),
        _ => None,
    }
}

/// Whether the only mark of an amount may group thousands: three digits behind it, one to three before, not nought.
pub(super) fn could_be_thousands(text: &str, mark: char) -> bool {
    let Some((before, behind)) = text.trim().split_once(mark) else { return false };
    let digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    behind.len() == 3 && digits(behind) && (1..=3).contains(&before.len()) && digits(before) && !before.starts_with('0')
}

/// A row that was taken from the file.
struct TakenRow {
    line: usize,
    key: String,
    part_number: String,
}

struct Trial<'a> {
    list: &'a PriceList,
    reader: Reader<'a>,
    part_numbers: Index,
    taken: Vec<TakenRow>,
    by_key: Index,
    by_part_number: Index,
    result: DryRun,
}

impl Trial<'_> {
    fn take(&mut self, record: &Record) {
        let (name, outcome) = match &record.cells {
            Err(stray) => (String::new(), Err(RowFault::Stray(*stray))),
            Ok(cells) => {
                let name = [Column::PART_NUMBER, Column::Key].into_iter().map(|column| self.reader.text(cells, column));
                (name.flatten().find(|text| !text.is_empty()).unwrap_or_default(), self.row(cells))
            }
        };
        let kept = outcome.and_then(|(before, after)| self.is_alone(&after).map(|()| (before, after)));
        match kept {
            Err(why) => self.result.refused.push(Refusal { line: record.line, name, why }),
            Ok((before, after)) => {
                self.by_key.put(&after.key, self.taken.len());
                self.by_part_number.put(&after.part_number, self.taken.len());
                self.taken.push(TakenRow {
                    line: record.line,
                    key: after.key.clone(),
                    part_number: after.part_number.clone(),
                });
                self.sort_in(before, after);
            }
        }
    }

    /// The row of the list that is meant, and what it would become.
    fn row(&self, cells: &[String]) -> Result<(Option<Arc<PriceRow>>, PriceRow), RowFault> {
        self.reader.fits(cells)?;
        let key = self.reader.text(cells, Column::Key).unwrap_or_default();
        let part_number = self.reader.text(cells, Column::PART_NUMBER).unwrap_or_default();
        let before = if !key.is_empty() {
            self.list.row(&key).cloned()
        } else if part_number.is_empty() {
            return Err(RowFault::NoName);
        } else {
            let all = self.listed(&part_number);
            let offered: Vec<&Arc<PriceRow>> = all.iter().copied().filter(|row| !row.retired).collect();
            match (offered.as_slice(), all.as_slice()) {
                ([only], _) | ([], [only]) => Some((*only).clone()),
                ([], []) => None,
                _ => return Err(RowFault::WhichRow { rows: all.len() }),
            }
        };
        let after = self.reader.row(cells, before.as_ref(), &key, || self.free_key(&part_number))?;
        Ok((before, after))
    }

    /// The rows of the list with a part number.
    fn listed(&self, part_number: &str) -> Vec<&Arc<PriceRow>> {
        let places = self.part_numbers.of(part_number).iter();
        places
            .filter_map(|place| self.list.rows().get(*place))
            .filter(|row| row.part_number.trim().eq_ignore_ascii_case(part_number.trim()))
            .collect()
    }

    /// A key that neither the list nor the file has.
    fn free_key(&self, part_number: &str) -> String {
        let first = self.list.free_key(part_number);
        let mut key = first.clone();
        let mut number = 2_u32;
        while self.list.row(&key).is_some() || self.same_key(&key).is_some() {
            key = format!("{first}:{number}");
            number = number.saturating_add(1);
        }
        key
    }

    fn same_key(&self, key: &str) -> Option<&TakenRow> {
        self.by_key.of(key).iter().filter_map(|place| self.taken.get(*place)).find(|row| row.key == key)
    }

    /// That no row further up, and no other row of the list, is this one or has its part number.
    fn is_alone(&self, row: &PriceRow) -> Result<(), RowFault> {
        if let Some(there) = self.same_key(&row.key) {
            return Err(RowFault::SameKey { line: there.line });
        }
        let part_number = row.part_number.trim();
        if part_number.is_empty() || row.retired {
            return Ok(());
        }
        let same = |there: &str| there.trim().eq_ignore_ascii_case(part_number);
        let places = self.by_part_number.of(part_number).iter();
        if let Some(there) = places.filter_map(|place| self.taken.get(*place)).find(|there| same(&there.part_number)) {
            return Err(RowFault::SamePartNumber { line: there.line });
        }
        // What was so in the list already is left as it is.
        let was = self.list.row(&row.key).is_some_and(|there| same(&there.part_number) && !there.retired);
        match self.listed(part_number).iter().find(|there| there.key != row.key && !there.retired) {
            Some(there) if !was => Err(RowFault::PartNumberTaken { key: there.key.clone() }),
            _ => Ok(()),
        }
    }

    fn sort_in(&mut self, before: Option<Arc<PriceRow>>, after: PriceRow) {
        let Some(before) = before else {
            self.result.added.push(Arc::new(after));
            return;
        };
        let columns = super::row::differing(&before, &after);
        if columns.is_empty() {
            self.result.unchanged += 1;
        } else {
            self.result.changed.push(Changed { before, after: Arc::new(after), columns });
        }
    }
}
