//! How pipe is cut, what may be lifted, what a pallet bears.

use std::rc::Rc;
use std::sync::Arc;

use bedwright_calc::supply::lifting::Grip;
use bedwright_job::Edit;
use bedwright_job::answers::JobBill;
use bedwright_job::answers::supply::{assumed, riser_cuts};
use bedwright_job::drawing::Form;
use bedwright_job::entry::Unit;
use bedwright_job::field::SupplyField;
use bedwright_job::papers::{cut_text, lifting_texts, on_pallets, pictures, staged};
use bedwright_job::sections::supply::SupplyEdit;
use bedwright_job::words::{SupplyLabel, supply};

use crate::desk::{Desk, with_bill};
use crate::parts::choice::choice;
use crate::parts::drawing::still_drawing;
use crate::parts::live::{El, el};
use crate::parts::signal::Worked;
use crate::vessel::NumberLine;

/// An entry of supply.
pub fn entry_line(desk: Desk, field: SupplyField, hint: &'static str) -> El {
    let entry = move || desk.of_job(|job| job.supply.body.entries.get(&field).cloned());
    NumberLine {
        id: field.id().to_owned(),
        label: desk.manner().supply_field(field),
        hint,
        units: Unit::of(field.dimension()),
        usual: field.usual_unit(desk.manner().metric),
        entry: Rc::new(entry),
        misread: Rc::new(move || entry().and_then(|entry| entry.understood().err())),
        problem: Rc::new(|| None),
        put: Rc::new(move |entry| desk.edit(Edit::Supply(SupplyEdit::Entry { field, entry }))),
        assumed: Rc::new(move || assumed(field).map(|known| known.value)),
        standing: None,
    }
    .show(desk)
}

fn section(desk: Desk, id: &str, title: SupplyLabel) -> El {
    el("section", "packs-handling")
        .set("aria-labelledby", id)
        .kid(el("h2", "rule").set("id", id).text(desk.label(title)))
}

/// Pipe cut from stock: from what, how many, and drawn.
pub(super) fn cutting(desk: Desk, bill: Worked<Arc<JobBill>>) -> El {
    let manner = desk.manner();
    let form = Form::Full { width: 720.0, height: 4000.0 };
    let cuts = move || desk.of_job(|job| with_bill(bill, |bill| riser_cuts(job, bill)));
    let drawn = move || {
        let mut all = Vec::new();
        for cut in cuts() {
            all.push(el("p", "packs-decided").text(&cut_text(&cut, manner)));
            let drawn = desk.of_job(|job| with_bill(bill, |bill| pictures(job, bill, &cut, manner, form)));
            all.extend(drawn.iter().map(|drawing| el("div", "packs-picture").kid(still_drawing(drawing))));
        }
        all
    };
    section(desk, "cutting", SupplyLabel::CutFromStock)
        .kid(
            el("div", "entries")
                .kid(entry_line(desk, SupplyField::StockLength, desk.label(SupplyLabel::StockHint)))
                .kid(entry_line(desk, SupplyField::Kerf, "")),
        )
        .kid(el("div", "").live(drawn))
        .when(move || cuts().is_empty(), move || vec![el("p", "").text(desk.label(SupplyLabel::NoRisers))])
}

/// What one person may lift, and which packs are more.
pub(super) fn lifting(desk: Desk, bill: Worked<Arc<JobBill>>) -> El {
    let grips = move || Grip::ALL.iter().map(|grip| desk.label(supply::grip(*grip)).to_owned()).collect();
    let grip = choice(
        desk.label(SupplyLabel::GripLabel),
        grips,
        move || desk.of_job(|job| Grip::ALL.iter().position(|grip| *grip == job.supply.body.grip)),
        move |at| {
            if let Some(grip) = Grip::ALL.get(at) {
                desk.edit(Edit::Supply(SupplyEdit::Grip(*grip)));
            }
        },
    );
    let fields = [SupplyField::LiftReach, SupplyField::LiftHeight, SupplyField::LiftTravel, SupplyField::LiftTwist];
    let texts = move || desk.of_job(|job| with_bill(bill, |bill| lifting_texts(job, bill, desk.manner())));
    section(desk, "lifting", SupplyLabel::Lifting)
        .kid(el("div", "entries").kids(fields.map(|field| entry_line(desk, field, "")).to_vec()).kid(grip))
        .kid(el("ul", "packs-texts").live(move || texts().iter().map(|text| el("li", "").text(text)).collect()))
}

/// What a pallet bears, and how many that makes.
pub(super) fn pallets(desk: Desk, bill: Worked<Arc<JobBill>>) -> El {
    let manner = desk.manner();
    let said = move || {
        desk.of_job(|job| {
            with_bill(bill, |bill| match on_pallets(job, &staged(job, bill, manner)) {
                Ok(pallets) => {
                    let masses: Vec<String> = pallets.iter().map(|pallet| manner.mass(pallet.mass_known)).collect();
                    format!("{}: {} · {}", desk.label(SupplyLabel::OnPallets), pallets.len(), masses.join(", "))
                }
                Err(problem) => manner.problem(&problem),
            })
        })
    };
    section(desk, "pallets", SupplyLabel::Pallets)
        .kid(
            el("div", "entries")
                .kid(entry_line(desk, SupplyField::PalletMass, desk.label(SupplyLabel::PalletsHint)))
                .kid(entry_line(desk, SupplyField::PalletPacks, "")),
        )
        .kid(el("p", "packs-decided").set("role", "status").says(said))
}
