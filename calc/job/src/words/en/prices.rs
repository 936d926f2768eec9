//! What is said of the price list, in English.

use crate::prices::csv::{Column, FileFault, LONGEST_CELL, MOST_BYTES, RowFault, Stray};
use crate::prices::{AmountFault, Care, MOST_PLACES, MOST_ROWS, PriceField, PriceKind, SizeFault};

pub(in crate::words) fn kind(kind: PriceKind) -> &'static str {
    match kind {
        PriceKind::Material => "Material",
        PriceKind::Pack => "Pack",
        PriceKind::Part => "Part",
        PriceKind::Labour => "Labour",
        PriceKind::Disposal => "Disposal",
        PriceKind::Freight => "Freight",
    }
}

pub(in crate::words) fn care(care: Care) -> &'static str {
    match care {
        Care::KeepDry => "keep dry",
        Care::KeepFromFrost => "keep from frost",
        Care::KeepCool => "keep cool",
        Care::KeepOutOfSun => "keep out of the sun",
        Care::KeepClosed => "keep closed",
        Care::KeepUpright => "keep upright",
        Care::Dust => "dust",
        Care::SilicaDust => "silica dust",
        Care::TakesOxygen => "takes oxygen from the air when wet",
        Care::Slippery => "slippery when spilt",
        Care::Irritant => "irritates skin and eyes",
        Care::Corrosive => "corrosive",
        Care::Oxidising => "feeds a fire",
        Care::Flammable => "flammable",
        Care::Toxic => "toxic",
    }
}

/// The name and the unit of a shipped charge.
pub(in crate::words) fn charge(key: &str) -> Option<(&'static str, &'static str)> {
    Some(match key {
        "labour:on_site" => ("Work on site", "hour"),
        "labour:travel" => ("Travel", "hour"),
        "disposal:drum" => ("Drum for spent media", "drum"),
        "disposal:spent_media" => ("Disposal of spent media", "drum"),
        "disposal:determination" => ("Waste determination", "each"),
        "freight:weight" => ("Freight by weight", ""),
        "freight:delivery" => ("Delivery", "each"),
        _ => return None,
    })
}

pub(in crate::words) fn column(column: Column) -> &'static str {
    match column {
        Column::Key => "key",
        Column::Kind => "kind",
        Column::Text(PriceField::PartNumber) => "part number",
        Column::Text(PriceField::Name) => "name",
        Column::Text(PriceField::Bin) => "bin",
        Column::Text(PriceField::Unit) => "unit",
        Column::Text(PriceField::TaxClass) => "tax class",
        Column::Text(PriceField::SupersededBy) => "superseded by",
        Column::Cost => "cost",
        Column::Price => "price",
        Column::Size => "size",
        Column::Care => "care",
        Column::Retired => "retired",
        Column::Origin => "origin",
    }
}

pub(in crate::words) fn too_long(letters: usize, most: usize) -> String {
    format!("This has {letters} letters; at most {most} fit. Shorten it.")
}

fn mark(mark: char) -> &'static str {
    if mark == ',' { "a comma" } else { "a point" }
}

pub(in crate::words) fn amount_fault(fault: AmountFault) -> String {
    match fault {
        AmountFault::NotAnAmount => "This isn't an amount. Type digits only, without the currency: 1234.50.".to_owned(),
        AmountFault::Negative => "An amount is never below nought here. A reduction belongs to the quote.".to_owned(),
        AmountFault::TooLarge => "This is more than 999 999 999 999. Check the digits.".to_owned(),
        AmountFault::TooFine => format!("This has more than {MOST_PLACES} digits behind the mark. Round it."),
        AmountFault::Mark { found, decimal } if found == decimal => {
            format!("The decimal mark, {}, stands here more than once.", mark(decimal))
        }
        AmountFault::Mark { found, decimal } => {
            format!("{} could be meant either way: the decimal mark here is {}.", capital(mark(found)), mark(decimal))
        }
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_ascii_uppercase()).into_iter().chain(letters).collect()
}

pub(in crate::words) fn size_fault(fault: SizeFault) -> &'static str {
    match fault {
        SizeFault::NotASize => "This is no length, volume or weight with its unit. Type it as in 10 ft or 25 kg.",
        SizeFault::NoSize => "A size is more than nought.",
    }
}

pub(in crate::words) fn row_fault(fault: &RowFault) -> String {
    match fault {
        RowFault::Stray(Stray::Inside) => {
            "A quotation mark stands inside a cell. Put the whole cell between quotation marks and double the inner one.".to_owned()
        }
        RowFault::Stray(Stray::After) => "Something stands behind the quotation mark that closes a cell.".to_owned(),
        RowFault::Stray(Stray::NeverClosed) => "A quotation mark is never closed.".to_owned(),
        RowFault::Stray(Stray::TooLong) => format!("A cell has more than {LONGEST_CELL} letters."),
        RowFault::Cells { found, wanted } => format!("It has {found} cells; the first row names {wanted} columns."),
        RowFault::NoName => "It has neither a key nor a part number.".to_owned(),
        RowFault::TooLong { column: of, letters, most } => {
            format!("Its {} has {letters} letters; at most {most} fit.", column(*of))
        }
        RowFault::Amount { column: of, text, fault } => {
            format!("Its {}, “{text}”: {}", column(*of), amount_fault(*fault))
        }
        RowFault::MixedMarks { text, decimal, line } => {
            format!("“{text}” has another decimal mark than line {line}, where it is {}.", mark(*decimal))
        }
        RowFault::WhichMark { text } => {
            format!("The mark in “{text}” could be meant either way, and no other amount tells. Choose the decimal mark above.")
        }
        RowFault::NotOneOf { column: of, text } => {
            let may_be = match of {
                Column::Kind => PriceKind::ALL.iter().map(|kind| kind.id()).collect::<Vec<_>>().join(", "),
                Column::Care => Care::ALL.iter().map(|care| care.id()).collect::<Vec<_>>().join(", "),
                _ => "yes, no".to_owned(),
            };
            format!("Its {}, “{text}”, is none of: {may_be}.", column(*of))
        }
        RowFault::Size { text } => format!("Its size, “{text}”: {}", size_fault(SizeFault::NotASize)),
        RowFault::NoSize { text } => format!("Its size, “{text}”: {}", size_fault(SizeFault::NoSize)),
        RowFault::SameKey { line } => format!("Line {line} has the same key."),
        RowFault::SamePartNumber { line } => format!("Line {line} has the same part number."),
        RowFault::PartNumberTaken { key } => format!("Another row of the list has this part number: its key is {key}."),
        RowFault::WhichRow { rows } => {
            format!("{rows} rows of the list have this part number. Say which by its key.")
        }
    }
}

pub(in crate::words) fn file_fault(fault: &FileFault) -> String {
    match fault {
        FileFault::TooLong { bytes } => format!(
            "It has {} MiB; at most {} MiB are read. Split it.",
            bytes.div_ceil(1024 * 1024),
            MOST_BYTES / (1024 * 1024)
        ),
        FileFault::NotUtf8 => "It isn't text in UTF-8. Save it as comma-separated values in UTF-8.".to_owned(),
        FileFault::Empty => "There is no row in it below the names of the columns.".to_owned(),
        FileFault::NoHeader => {
            "Its first row doesn't name the columns. It must name part_number or key; save the list as a file to see them all.".to_owned()
        }
        FileFault::SameColumn(of) => format!("The column “{}” stands in it twice.", of.name()),
        FileFault::TooMany { rows } => {
            format!("It has {rows} rows; a list holds at most {MOST_ROWS}, those that are there included. Nothing was taken.")
        }
    }
}
