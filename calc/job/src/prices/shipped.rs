//! The rows that ship with the page: one for every pack, part and usual charge. No price of them is known.

use bedwright_calc::material::{Material, Pack};
use bedwright_calc::supply::Fitting;

use super::{Origin, PriceKind, PriceRow};

/// Usual charges besides packs and parts: permanent id and kind.
const CHARGES: [(&str, PriceKind); 7] = [
    ("labour:on_site", PriceKind::Labour),
    ("labour:travel", PriceKind::Labour),
    ("disposal:drum", PriceKind::Disposal),
    ("disposal:spent_media", PriceKind::Disposal),
    ("disposal:determination", PriceKind::Disposal),
    ("freight:weight", PriceKind::Freight),
    ("freight:delivery", PriceKind::Freight),
];

/// Every shipped row.
#[must_use]
pub fn shipped_rows() -> Vec<PriceRow> {
    let mut rows = Vec::new();
    let mut add = |key: &str, kind| {
        let mut row = PriceRow::new(key, kind);
        row.origin = Origin::Shipped;
        rows.push(row);
    };
    for material in Material::all() {
        add(&format!("material:{}", material.id), PriceKind::Material);
        for pack in Pack::of_material(&material.id) {
            add(&format!("pack:{}:{}", material.id, pack.id), PriceKind::Pack);
        }
    }
    for fitting in Fitting::ALL {
        add(&format!("part:{}", fitting.id()), PriceKind::Part);
    }
    for (key, kind) in CHARGES {
        add(key, kind);
    }
    rows
}
