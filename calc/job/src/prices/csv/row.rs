//! One row of the file, read over the row of the list it is about.

use std::sync::Arc;

use super::dry_run::could_be_thousands;
use super::{Column, NAMES, RowFault, unguarded};
use crate::entry::{Entry, Marks};
use crate::prices::{AmountFault, Care, Origin, PriceField, PriceKind, PriceRow, SizeFault, amount, size};

/// The most letters of a key.
const LONGEST_KEY: usize = 120;

impl Column {
    /// The one by which a row is found where it has no key.
    pub(super) const PART_NUMBER: Column = Column::Text(PriceField::PartNumber);
}

/// Reads rows of a file whose header is known.
pub(super) struct Reader<'a> {
    /// The columns in the order of the file; none where the name isn't known.
    pub(super) columns: &'a [Option<Column>],
    /// The decimal mark, and the line that showed it: nought where a person said it.
    pub(super) decided: Option<(char, usize)>,
}

impl Reader<'_> {
    /// That a row has as many cells as the header; blank ones at the end are nothing.
    pub(super) fn fits(&self, cells: &[String]) -> Result<(), RowFault> {
        let wanted = self.columns.len();
        let more = cells.iter().skip(wanted).any(|cell| !cell.trim().is_empty());
        if cells.len() < wanted || more {
            return Err(RowFault::Cells { found: cells.len(), wanted });
        }
        Ok(())
    }

    /// The text of a column, if the file has it.
    pub(super) fn text(&self, cells: &[String], column: Column) -> Option<String> {
        let place = self.columns.iter().position(|there| *there == Some(column))?;
        cells.get(place).map(|cell| unguarded(cell).trim().to_owned())
    }

    /// What the row of the list would become. A column the file lacks leaves what is there; a blank cell takes it away.
    pub(super) fn row(
        &self,
        cells: &[String],
        before: Option<&Arc<PriceRow>>,
        key: &str,
        free_key: impl FnOnce() -> String,
    ) -> Result<PriceRow, RowFault> {
        let mut row = match before {
            Some(before) => (**before).clone(),
            None if key.is_empty() => PriceRow::new(&free_key(), PriceKind::Part),
            None => PriceRow::new(key, kind_of_key(key)),
        };
        let letters = row.key.chars().count();
        if letters > LONGEST_KEY {
            return Err(RowFault::TooLong { column: Column::Key, letters, most: LONGEST_KEY });
        }
        let decimal = self.decided.map_or('.', |(decimal, _)| decimal);
        for (cell, column) in cells.iter().zip(self.columns) {
            let Some(column) = *column else { continue };
            // What is written as it stands in the list stays to the letter, however it was typed there.
            if before.is_some_and(|before| column.cell(before, decimal) == *cell) {
                continue;
            }
            self.put(&mut row, column, cell)?;
        }
        if before.is_none_or(|before| !differing(before, &row).is_empty()) && row.origin == Origin::Shipped {
            row.origin = Origin::Own;
        }
        Ok(row)
    }

    fn put(&self, row: &mut PriceRow, column: Column, cell: &str) -> Result<(), RowFault> {
        let text = unguarded(cell);
        let word = text.trim().to_ascii_lowercase();
        let not_one = || RowFault::NotOneOf { column, text: text.to_owned() };
        match column {
            Column::Key => {}
            Column::Origin => {
                if word == Origin::Invented.id() {
                    row.origin = Origin::Invented;
                }
            }
            Column::Kind if word.is_empty() => {}
            Column::Kind => row.kind = PriceKind::of(&word).ok_or_else(not_one)?,
            Column::Text(field) => {
                let letters = text.chars().count();
                if letters > field.longest() {
                    return Err(RowFault::TooLong { column, letters, most: field.longest() });
                }
                text.clone_into(row.text_mut(field));
            }
            Column::Cost => row.cost = self.amount(column, text)?,
            Column::Price => row.price = self.amount(column, text)?,
            Column::Size => {
                let size = self.size(text)?;
                // The same said otherwise stays as it was typed.
                let meant = |size: &Option<Entry>| size.as_ref().and_then(|size| size.understood().ok());
                if size.is_none()
                    || meant(&size).map(|size| (size.si, size.dimension))
                        != meant(&row.size).map(|size| (size.si, size.dimension))
                {
                    row.size = size;
                }
            }
            Column::Care => {
                row.care.clear();
                for id in word.split([' ', ',', ';']).filter(|id| !id.is_empty()) {
                    row.set_care(Care::of(id).ok_or_else(not_one)?, true);
                }
            }
            Column::Retired => {
                row.retired = match word.as_str() {
                    "yes" | "true" | "1" | "x" => true,
                    "" | "no" | "false" | "0" => false,
                    _ => return Err(not_one()),
                }
            }
        }
        Ok(())
    }

    fn amount(&self, column: Column, text: &str) -> Result<Option<bedwright_calc::supply::Money>, RowFault> {
        let owned = || text.trim().to_owned();
        let Some((decimal, line)) = self.decided else {
            if ['.', ','].into_iter().any(|mark| could_be_thousands(text, mark)) {
                return Err(RowFault::WhichMark { text: owned() });
            }
            return amount(text, '.').map_err(|fault| RowFault::Amount { column, text: owned(), fault });
        };
        amount(text, decimal).map_err(|fault| match fault {
            AmountFault::Mark { found, .. } if found != decimal && line > 0 => {
                RowFault::MixedMarks { text: owned(), decimal, line }
            }
            fault => RowFault::Amount { column, text: owned(), fault },
        })
    }

    fn size(&self, text: &str) -> Result<Option<Entry>, RowFault> {
        let marks = Marks { decimal: self.decided.map_or('.', |(decimal, _)| decimal) };
        size(text, marks).map_err(|fault| match fault {
            SizeFault::NotASize => RowFault::Size { text: text.to_owned() },
            SizeFault::NoSize => RowFault::NoSize { text: text.to_owned() },
        })
    }
}

/// What a row of this key most likely prices.
fn kind_of_key(key: &str) -> PriceKind {
    key.split(':').next().and_then(PriceKind::of).unwrap_or_default()
}

/// The columns in which two rows differ.
pub(super) fn differing(before: &PriceRow, after: &PriceRow) -> Vec<Column> {
    let differs = |column: Column| match column {
        Column::Key => before.key != after.key,
        Column::Kind => before.kind != after.kind,
        Column::Text(field) => before.text(field) != after.text(field),
        Column::Cost => before.cost != after.cost,
        Column::Price => before.price != after.price,
        Column::Size => before.size != after.size,
        Column::Care => before.care != after.care,
        Column::Retired => before.retired != after.retired,
        // It follows from the others.
        Column::Origin => false,
    };
    NAMES.iter().map(|(_, column)| *column).filter(|column| differs(*column)).collect()
}
