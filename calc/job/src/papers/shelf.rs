//! Where an item lies and what it is ordered by.

use bedwright_calc::supply::Item;

use crate::job::Job;
use crate::prices::{PriceField, price_keys};
use crate::sections::picking::PickField;

/// Where an item lies, and its part number.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Shelf {
    /// Where it lies; empty where nobody said.
    pub bin: String,
    /// Its part number; empty where nobody said.
    pub part_number: String,
}

/// As typed on the item's line of the pick list; else as the price list says whose rows the job carries.
#[must_use]
pub fn shelf_of(job: &Job, item: &Item) -> Shelf {
    let line = job.picking.body.lines.get(&item.key());
    let keys = price_keys(item);
    let found = |typed: PickField, listed: PriceField| {
        let rows = keys.iter().filter_map(|key| job.prices.body.row(key)).map(|row| row.text(listed).trim());
        let mut texts = line.map(|line| line.text(typed).trim()).into_iter().chain(rows);
        texts.find(|text| !text.is_empty()).unwrap_or_default().to_owned()
    };
    Shelf {
        bin: found(PickField::Bin, PriceField::Bin),
        part_number: found(PickField::PartNumber, PriceField::PartNumber),
    }
}
