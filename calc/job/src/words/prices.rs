//! What is said of the price list: names of rows, kinds and cautions, and why a text or a file isn't taken.

mod fault;

use bedwright_calc::material::{Container, Pack};
use bedwright_calc::quantity::metres;
use bedwright_calc::supply::{Fitting, Item, Money};

use super::label::price_file::ChargeName;
use super::{Manner, PriceLabel};
use crate::entry::Entry;
use crate::prices::{Care, Catalogue, PriceKind, PriceRow, amount_text};

impl Manner {
    /// What a row is called: as typed, else as the page calls the item of its key; empty for neither.
    #[must_use]
    pub fn price_name(&self, row: &PriceRow) -> String {
        if !row.name.trim().is_empty() {
            return row.name.clone();
        }
        self.key_name(&row.key).unwrap_or_default()
    }

    /// What the page calls the item of a row's key; the key itself where it knows none.
    #[must_use]
    pub fn price_key_name(&self, key: &str) -> String {
        self.key_name(key).unwrap_or_else(|| key.to_owned())
    }

    fn key_name(&self, key: &str) -> Option<String> {
        charge(key)
            .map(|(name, _)| self.label(name).to_owned())
            .or_else(|| item_of(key).map(|item| self.item(&item)))
            .or_else(|| key.strip_prefix("material:").map(|material| self.material(material)))
    }

    /// What one of a row is: as typed, else as the page counts the item of its key.
    #[must_use]
    pub fn price_unit(&self, row: &PriceRow) -> String {
        if !row.unit.trim().is_empty() {
            return row.unit.clone();
        }
        match (charge(&row.key), item_of(&row.key)) {
            (Some((_, unit)), _) => unit.map(|unit| self.label(unit).to_owned()).unwrap_or_default(),
            (None, Some(Item::Pack { pack, .. })) => {
                self.container(Pack::of(&pack).map_or(Container::Bag, |pack| pack.container), 1).to_owned()
            }
            _ => String::new(),
        }
    }

    /// The state a list is in: how often it changed, and the first letters of the device it changed on.
    #[must_use]
    pub fn list_version(&self, catalogue: &Catalogue) -> String {
        match &catalogue.revision {
            None => self.label(PriceLabel::Shipped).to_owned(),
            Some(revision) => {
                let device: String = revision.device.as_str().chars().take(6).collect();
                format!("{} · {device}", revision.counter)
            }
        }
    }

    /// What a row prices.
    #[must_use]
    pub fn price_kind(&self, kind: PriceKind) -> &'static str {
        self.label(kind)
    }

    /// How a thing is stored, or what can hurt about it.
    #[must_use]
    pub fn care(&self, care: Care) -> &'static str {
        self.label(care)
    }

    /// An amount of money, every place of it.
    #[must_use]
    pub fn price_amount(&self, money: Money) -> String {
        amount_text(money, self.decimal)
    }

    /// A size as it was typed, with its unit.
    #[must_use]
    pub fn size_entry(&self, size: &Entry) -> String {
        match size.understood() {
            Ok(understood) if !understood.names_unit => [&size.text, " ", self.unit(size.unit)].concat(),
            _ => size.text.clone(),
        }
    }
}

/// The name of a charge that ships with the page, and what it is counted in.
fn charge(key: &str) -> Option<(ChargeName, Option<ChargeName>)> {
    Some(match key {
        "labour:on_site" => (ChargeName::OnSite, Some(ChargeName::Hour)),
        "labour:travel" => (ChargeName::Travel, Some(ChargeName::Hour)),
        "disposal:drum" => (ChargeName::Drum, Some(ChargeName::DrumUnit)),
        "disposal:spent_media" => (ChargeName::SpentMedia, Some(ChargeName::DrumUnit)),
        "disposal:determination" => (ChargeName::Determination, Some(ChargeName::EachUnit)),
        "freight:weight" => (ChargeName::FreightWeight, None),
        "freight:delivery" => (ChargeName::Delivery, Some(ChargeName::EachUnit)),
        _ => return None,
    })
}

/// The item a row of this key prices.
fn item_of(key: &str) -> Option<Item> {
    let mut parts = key.split(':');
    match (parts.next()?, parts.next()?, parts.next(), parts.next()) {
        ("pack", material, Some(pack), None) => {
            Some(Item::Pack { material: material.to_owned().into(), pack: pack.to_owned().into() })
        }
        ("part", fitting, size, None) => {
            let fitting = Fitting::ALL.iter().copied().find(|there| there.id() == fitting)?;
            let size = match size {
                None => None,
                Some(text) => Some(metres(f64::from(text.parse::<u32>().ok()?) / 1e6)),
            };
            Some(Item::Part { fitting, size, cut: None, on_site: false })
        }
        _ => None,
    }
}
