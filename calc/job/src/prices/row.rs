//! A row of the price list.

use bedwright_calc::supply::Money;

use super::{amount, amount_text};
use crate::entry::Entry;
use crate::sections::Unknown;
use crate::sections::survey::ids;

/// What a row prices.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum PriceKind {
    /// A material, whatever it is packed in.
    Material,
    /// A pack of a material.
    Pack,
    /// A part.
    #[default]
    Part,
    /// Work.
    Labour,
    /// Getting rid of what came out.
    Disposal,
    /// Bringing things there.
    Freight,
}

ids!(PriceKind {
    Material = "material",
    Pack = "pack",
    Part = "part",
    Labour = "labour",
    Disposal = "disposal",
    Freight = "freight",
});

/// How a thing is stored, or what can hurt about it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Care {
    /// Kept dry.
    KeepDry,
    /// Kept where it doesn't freeze.
    KeepFromFrost,
    /// Kept cool.
    KeepCool,
    /// Kept out of the sun.
    KeepOutOfSun,
    /// Kept closed: it dries out, or takes up what is in the air.
    KeepClosed,
    /// Kept upright.
    KeepUpright,
    /// It gives off dust.
    Dust,
    /// Its dust holds crystalline silica.
    SilicaDust,
    /// Wet, it takes the oxygen out of the air of a closed space.
    TakesOxygen,
    /// It makes a floor slippery.
    Slippery,
    /// It irritates skin or eyes.
    Irritant,
    /// It eats skin or metal.
    Corrosive,
    /// It feeds a fire.
    Oxidising,
    /// It burns.
    Flammable,
    /// It is poisonous.
    Toxic,
}

ids!(Care {
    KeepDry = "keep_dry",
    KeepFromFrost = "keep_from_frost",
    KeepCool = "keep_cool",
    KeepOutOfSun = "keep_out_of_sun",
    KeepClosed = "keep_closed",
    KeepUpright = "keep_upright",
    Dust = "dust",
    SilicaDust = "silica_dust",
    TakesOxygen = "takes_oxygen",
    Slippery = "slippery",
    Irritant = "irritant",
    Corrosive = "corrosive",
    Oxidising = "oxidising",
    Flammable = "flammable",
    Toxic = "toxic",
});

impl Care {
    /// Whether it says what can hurt, not how the thing is stored.
    #[must_use]
    pub fn is_hazard(self) -> bool {
        self >= Care::Dust
    }
}

/// Where a row comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum Origin {
    /// With the page; its prices are blank.
    Shipped,
    /// Made up, to show how the page works.
    Invented,
    /// Typed or brought in by a person.
    #[default]
    Own,
}

ids!(Origin { Shipped = "shipped", Invented = "invented", Own = "own" });

/// A row of the price list.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PriceRow {
    /// Its name for ever: the key of the bill's item where it prices one ([`super::price_key`]), else one of its own.
    pub key: String,
    /// What it prices.
    pub kind: PriceKind,
    /// Its part number.
    pub part_number: String,
    /// What it is called; empty where the page has a name for the item of this key.
    pub name: String,
    /// Where it lies.
    pub bin: String,
    /// What one is, as in "bag", "each", "hour".
    pub unit: String,
    /// What one costs, in the list's currency; none while it isn't known.
    pub cost: Option<Money>,
    /// What one sells for, in the list's currency; none while it isn't known.
    pub price: Option<Money>,
    /// How it is taxed, in the words of whoever taxes.
    pub tax_class: String,
    /// The length it is stocked in, or what a pack holds.
    pub size: Option<Entry>,
    /// The part number of what takes its place.
    pub superseded_by: String,
    /// How it is stored and what can hurt, in the order of [`Care`], each once.
    pub care: Vec<Care>,
    /// Whether it is no longer offered. A row is never deleted: a job may hold it.
    pub retired: bool,
    /// Where it comes from.
    pub origin: Origin,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// A text of a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PriceField {
    /// Its part number.
    PartNumber,
    /// What it is called.
    Name,
    /// Where it lies.
    Bin,
    /// What one is.
    Unit,
    /// How it is taxed.
    TaxClass,
    /// What takes its place.
    SupersededBy,
}

ids!(PriceField {
    PartNumber = "part_number",
    Name = "name",
    Bin = "bin",
    Unit = "unit",
    TaxClass = "tax_class",
    SupersededBy = "superseded_by",
});

impl PriceField {
    /// The most letters it may have.
    #[must_use]
    pub const fn longest(self) -> usize {
        match self {
            PriceField::Name => 120,
            _ => 60,
        }
    }
}

impl PriceRow {
    /// An empty row of this key.
    #[must_use]
    pub fn new(key: &str, kind: PriceKind) -> PriceRow {
        PriceRow { key: key.to_owned(), kind, ..PriceRow::default() }
    }

    /// Whether it can be kept: it has a key, and its amounts are such as can be typed.
    #[must_use]
    pub fn is_sound(&self) -> bool {
        let kept =
            |money: Option<Money>| money.is_none_or(|money| amount(&amount_text(money, '.'), '.') == Ok(Some(money)));
        !self.key.is_empty() && kept(self.cost) && kept(self.price)
    }

    /// One of its texts.
    #[must_use]
    pub fn text(&self, field: PriceField) -> &str {
        match field {
            PriceField::PartNumber => &self.part_number,
            PriceField::Name => &self.name,
            PriceField::Bin => &self.bin,
            PriceField::Unit => &self.unit,
            PriceField::TaxClass => &self.tax_class,
            PriceField::SupersededBy => &self.superseded_by,
        }
    }

    /// The same, to change it.
    pub fn text_mut(&mut self, field: PriceField) -> &mut String {
        match field {
            PriceField::PartNumber => &mut self.part_number,
            PriceField::Name => &mut self.name,
            PriceField::Bin => &mut self.bin,
            PriceField::Unit => &mut self.unit,
            PriceField::TaxClass => &mut self.tax_class,
            PriceField::SupersededBy => &mut self.superseded_by,
        }
    }

    /// Adds a way of care, or takes it off.
    pub fn set_care(&mut self, care: Care, on: bool) {
        let at = self.care.partition_point(|there| *there < care);
        match (self.care.get(at) == Some(&care), on) {
            (false, true) => self.care.insert(at, care),
            (true, false) => drop(self.care.remove(at)),
            _ => {}
        }
    }
}
