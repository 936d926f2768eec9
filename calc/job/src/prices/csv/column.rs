//! The columns of the file: permanent names, and what stands in them.

use std::sync::Arc;

use super::{guarded, unguarded};
use crate::decimal::plain;
use crate::entry::Entry;
use crate::prices::{PriceField, PriceRow, amount_text};

/// A column.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Column {
    /// The row's name for ever.
    Key,
    /// What it prices.
    Kind,
    /// One of its texts.
    Text(PriceField),
    /// What one costs.
    Cost,
    /// What one sells for.
    Price,
    /// The length it is stocked in, or what a pack holds.
    Size,
    /// How it is stored and what can hurt: permanent ids with spaces between.
    Care,
    /// `yes` where it is no longer offered.
    Retired,
    /// Where it comes from; for whoever reads the file.
    Origin,
}

/// Every column in the order it is written, by its permanent name.
pub const NAMES: [(&str, Column); 14] = [
    ("key", Column::Key),
    ("kind", Column::Kind),
    ("part_number", Column::Text(PriceField::PartNumber)),
    ("name", Column::Text(PriceField::Name)),
    ("bin", Column::Text(PriceField::Bin)),
    ("unit", Column::Text(PriceField::Unit)),
    ("cost", Column::Cost),
    ("price", Column::Price),
    ("tax_class", Column::Text(PriceField::TaxClass)),
    ("size", Column::Size),
    ("superseded_by", Column::Text(PriceField::SupersededBy)),
    ("care", Column::Care),
    ("retired", Column::Retired),
    ("origin", Column::Origin),
];

impl Column {
    /// The column of a name; capitals, and spaces or hyphens for underlines, don't matter.
    pub(super) fn of(name: &str) -> Option<Column> {
        let name: String =
            name.trim().chars().map(|c| if matches!(c, ' ' | '-') { '_' } else { c.to_ascii_lowercase() }).collect();
        NAMES.iter().find(|(known, _)| *known == name).map(|(_, column)| *column)
    }

    /// Its permanent name.
    #[must_use]
    pub fn name(self) -> &'static str {
        NAMES.iter().find(|(_, column)| *column == self).map_or("", |(name, _)| name)
    }

    /// What stands in it, as it is shown to a person.
    #[must_use]
    pub fn shown(self, row: &Arc<PriceRow>, decimal: char) -> String {
        unguarded(&self.cell(row, decimal)).to_owned()
    }

    /// What stands in it, with this decimal mark.
    pub(super) fn cell(self, row: &Arc<PriceRow>, decimal: char) -> String {
        match self {
            Column::Key => guarded(&row.key),
            Column::Kind => row.kind.id().to_owned(),
            Column::Text(field) => guarded(row.text(field)),
            Column::Cost => row.cost.map(|money| amount_text(money, decimal)).unwrap_or_default(),
            Column::Price => row.price.map(|money| amount_text(money, decimal)).unwrap_or_default(),
            Column::Size => row.size.as_ref().map(|size| guarded(&size_text(size, decimal))).unwrap_or_default(),
            Column::Care => row.care.iter().map(|care| care.id()).collect::<Vec<_>>().join(" "),
            Column::Retired => if row.retired { "yes" } else { "" }.to_owned(),
            Column::Origin => row.origin.id().to_owned(),
        }
    }
}

/// A size with its unit and the file's own decimal mark, whatever it was typed as.
fn size_text(size: &Entry, decimal: char) -> String {
    match size.understood() {
        Ok(understood) => {
            let number = plain(understood.value).replace('.', decimal.encode_utf8(&mut [0; 4]));
            [&number, " ", understood.written.symbol()].concat()
        }
        Err(_) => size.text.clone(),
    }
}
