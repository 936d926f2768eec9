//! The screen of packs.

use bedwright_job::words::{Label, SupplyLabel};

use super::handling::{cutting, lifting, pallets};
use super::material::Material;
use crate::desk::{Desk, with_bill};
use crate::parts::live::{El, el};
use crate::parts::signal::Kept;

/// Packs, pipe, lifting, pallets.
pub fn packs_page(desk: Desk) -> El {
    let bill = desk.bill();
    let materials = move || {
        with_bill(bill, |bill| bill.bought.iter().map(|bought| bought.material.to_string()).collect::<Vec<_>>())
    };
    el("main", "page packs")
        .kid(el("h1", "page-title").text(desk.label(SupplyLabel::Packs)))
        .kid(el("p", "packs-hint").text(desk.label(SupplyLabel::PacksHint)))
        .when(move || materials().is_empty(), move || vec![el("p", "").text(desk.label(Label::EmptyBill))])
        .kid(el("div", "").each(materials, move |id| Material { desk, bill, id: Kept::new(id.to_owned()) }.show()))
        .kid(cutting(desk, bill))
        .kid(lifting(desk, bill))
        .kid(pallets(desk, bill))
}
