//! What the warehouse ticked and wrote on the pick list.

use super::Unknown;
use litemap::LiteMap;

/// Every line that was touched, by its item's key.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Picking {
    /// By key.
    pub lines: LiteMap<String, PickLine>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// What stands on a line besides what the bill says.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PickLine {
    /// Where it lies.
    pub bin: String,
    /// Its part number.
    pub part_number: String,
    /// Lot and date.
    pub lot: String,
    /// A note, a short, a substitute.
    pub note: String,
    /// How many had been picked when it was ticked; none while it isn't. When the bill changes after, it shows.
    pub picked: Option<u32>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

impl PickLine {
    /// Whether nothing stands on it.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        *self == PickLine::default()
    }
}

/// A text on a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PickField {
    /// Where it lies.
    Bin,
    /// Its part number.
    PartNumber,
    /// Lot and date.
    Lot,
    /// A note.
    Note,
}

impl PickLine {
    /// One of its texts.
    #[must_use]
    pub fn text(&self, field: PickField) -> &str {
        match field {
            PickField::Bin => &self.bin,
            PickField::PartNumber => &self.part_number,
            PickField::Lot => &self.lot,
            PickField::Note => &self.note,
        }
    }

    pub(crate) fn text_mut(&mut self, field: PickField) -> &mut String {
        match field {
            PickField::Bin => &mut self.bin,
            PickField::PartNumber => &mut self.part_number,
            PickField::Lot => &mut self.lot,
            PickField::Note => &mut self.note,
        }
    }
}
