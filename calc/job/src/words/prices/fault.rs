//! Why a text of the price list, a row or a file isn't taken.

use crate::prices::csv::{Column, FileFault, LONGEST_CELL, MOST_BYTES, RowFault, Stray};
use crate::prices::{AmountFault, Care, MOST_PLACES, MOST_ROWS, PriceField, PriceKind, SizeFault};
use crate::words::Manner;
use crate::words::label::price_file::{ColumnName, PriceFault as Text};
use crate::words::problem::capital;

const fn column(column: Column) -> ColumnName {
    match column {
        Column::Key => ColumnName::Key,
        Column::Kind => ColumnName::Kind,
        Column::Text(PriceField::PartNumber) => ColumnName::PartNumber,
        Column::Text(PriceField::Name) => ColumnName::Name,
        Column::Text(PriceField::Bin) => ColumnName::Bin,
        Column::Text(PriceField::Unit) => ColumnName::Unit,
        Column::Text(PriceField::TaxClass) => ColumnName::TaxClass,
        Column::Text(PriceField::SupersededBy) => ColumnName::SupersededBy,
        Column::Cost => ColumnName::Cost,
        Column::Price => ColumnName::Price,
        Column::Size => ColumnName::Size,
        Column::Care => ColumnName::Care,
        Column::Retired => ColumnName::Retired,
        Column::Origin => ColumnName::Origin,
    }
}

impl Manner {
    /// A column of the price list's file.
    #[must_use]
    pub fn price_column(&self, of: Column) -> &'static str {
        self.label(column(of))
    }

    /// That a text has more letters than fit.
    #[must_use]
    pub fn too_long(&self, letters: usize, most: usize) -> String {
        self.sentence(Text::TooLong, &[("letters", &letters.to_string()), ("most", &most.to_string())])
    }

    fn mark_name(&self, mark: char) -> &'static str {
        self.label(if mark == ',' { Text::Comma } else { Text::Point })
    }

    /// Why a text isn't an amount.
    #[must_use]
    pub fn amount_fault(&self, fault: AmountFault) -> String {
        let text = match fault {
            AmountFault::NotAnAmount => Text::NotAnAmount,
            AmountFault::Negative => Text::Negative,
            AmountFault::TooLarge => Text::TooLarge,
            AmountFault::TooFine => return self.sentence(Text::TooFine, &[("most", &MOST_PLACES.to_string())]),
            AmountFault::Mark { found, decimal } => {
                let text = if found == decimal { Text::MarkTwice } else { Text::OtherMark };
                let places = [("found", &*capital(self.mark_name(found))), ("mark", self.mark_name(decimal))];
                return self.sentence(text, &places);
            }
        };
        self.label(text).to_owned()
    }

    /// Why a text is no size.
    #[must_use]
    pub fn size_fault(&self, fault: SizeFault) -> &'static str {
        self.label(fault)
    }

    /// Why a row of a file isn't taken.
    #[must_use]
    pub fn row_fault(&self, fault: &RowFault) -> String {
        let text_and_why = |text: Text, found: &str, why: &str| self.sentence(text, &[("text", found), ("why", why)]);
        let text = match fault {
            RowFault::Stray(Stray::Inside) => Text::QuoteInside,
            RowFault::Stray(Stray::After) => Text::QuoteAfter,
            RowFault::Stray(Stray::NeverClosed) => Text::QuoteOpen,
            RowFault::NoName => Text::NoName,
            RowFault::Stray(Stray::TooLong) => {
                return self.sentence(Text::CellTooLong, &[("most", &LONGEST_CELL.to_string())]);
            }
            RowFault::Cells { found, wanted } => {
                return self.sentence(Text::Cells, &[("found", &found.to_string()), ("wanted", &wanted.to_string())]);
            }
            RowFault::TooLong { column, letters, most } => {
                let (letters, most) = (letters.to_string(), most.to_string());
                let places = [("column", self.price_column(*column)), ("letters", &*letters), ("most", &most)];
                return self.sentence(Text::ColumnTooLong, &places);
            }
            RowFault::Amount { column, text, fault } => {
                let why = self.amount_fault(*fault);
                let places = [("column", self.price_column(*column)), ("text", text), ("why", &why)];
                return self.sentence(Text::Amount, &places);
            }
            RowFault::MixedMarks { text, decimal, line } => {
                let places = [("text", text.as_str()), ("line", &line.to_string()), ("mark", self.mark_name(*decimal))];
                return self.sentence(Text::MixedMarks, &places);
            }
            RowFault::WhichMark { text } => return text_and_why(Text::WhichMark, text, ""),
            RowFault::NotOneOf { column, text } => {
                // Ids, as the file has them.
                let may_be = match column {
                    Column::Kind => PriceKind::ALL.iter().map(|kind| kind.id()).collect::<Vec<_>>().join(", "),
                    Column::Care => Care::ALL.iter().map(|care| care.id()).collect::<Vec<_>>().join(", "),
                    _ => "yes, no".to_owned(),
                };
                let places = [("column", self.price_column(*column)), ("text", text), ("may_be", &may_be)];
                return self.sentence(Text::NotOneOf, &places);
            }
            RowFault::Size { text } => return text_and_why(Text::Size, text, self.size_fault(SizeFault::NotASize)),
            RowFault::NoSize { text } => return text_and_why(Text::Size, text, self.size_fault(SizeFault::NoSize)),
            RowFault::SameKey { line } => return self.sentence(Text::SameKey, &[("line", &line.to_string())]),
            RowFault::SamePartNumber { line } => {
                return self.sentence(Text::SamePartNumber, &[("line", &line.to_string())]);
            }
            RowFault::PartNumberTaken { key } => return self.sentence(Text::PartNumberTaken, &[("key", key)]),
            RowFault::WhichRow { rows } => return self.sentence(Text::WhichRow, &[("rows", &rows.to_string())]),
        };
        self.label(text).to_owned()
    }

    /// Why a file isn't tried.
    #[must_use]
    pub fn file_fault(&self, fault: &FileFault) -> String {
        const MIB: usize = 1024 * 1024;
        let text = match fault {
            FileFault::NotUtf8 => Text::NotUtf8,
            FileFault::Empty => Text::NoRows,
            FileFault::NoHeader => Text::NoHeader,
            FileFault::TooLong { bytes } => {
                let (found, most) = (bytes.div_ceil(MIB).to_string(), (MOST_BYTES / MIB).to_string());
                return self.sentence(Text::FileTooLong, &[("found", &found), ("most", &most)]);
            }
            FileFault::SameColumn(of) => return self.sentence(Text::SameColumn, &[("column", of.name())]),
            FileFault::TooMany { rows } => {
                let (rows, most) = (rows.to_string(), MOST_ROWS.to_string());
                return self.sentence(Text::TooMany, &[("rows", &rows), ("most", &most)]);
            }
        };
        self.label(text).to_owned()
    }
}
