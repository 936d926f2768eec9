//! The bill's screen: pooled over the job, each vessel on its own, what is left out and why.

use bedwright_calc::supply::BillLine;
use bedwright_job::Job;
use bedwright_job::answers::JobBill;
use bedwright_job::papers::{LeftOut, bill_of_materials, left_out, vessel_name};
use bedwright_job::words::{Label, Manner, SupplyLabel};

use super::kit::{lines_left, prices_differ, spent};
use crate::desk::{Desk, today, with_bill};
use crate::parts::live::{El, el};
use crate::parts::sheet::printing;
use crate::route::Route;

/// A line in words.
#[derive(Clone, PartialEq)]
struct Row {
    key: String,
    item: String,
    quantity: u32,
    unit: &'static str,
    used: Option<String>,
    weight: Option<String>,
    saved: u32,
    returns: bool,
}

fn row(line: &BillLine, saved: u32, manner: Manner) -> Row {
    Row {
        key: line.item.key(),
        item: manner.item(&line.item),
        quantity: line.quantity,
        unit: manner.unit_of(line),
        used: line.needed.as_ref().map(|needed| manner.decimal(needed.value, 2)),
        weight: line.mass.as_ref().map(|mass| manner.mass(mass.value)),
        saved,
        returns: line.returns,
    }
}

fn pooled(bill: &JobBill, manner: Manner) -> Vec<Row> {
    bill.bill.pooled.iter().map(|line| row(line, bill.bill.saved(line), manner)).collect()
}

/// Each vessel's own lines, with its name.
fn each(job: &Job, bill: &JobBill, manner: Manner) -> Vec<(String, Vec<Row>)> {
    bill.vessels
        .iter()
        .zip(&bill.bill.vessels)
        .map(|(id, own)| (vessel_name(job, id, manner), own.lines.iter().map(|line| row(line, 0, manner)).collect()))
        .filter(|(_, rows): &(String, Vec<Row>)| !rows.is_empty())
        .collect()
}

/// The bill of materials.
pub fn bill_page(desk: Desk) -> El {
    let say = move |label: Label| desk.label(label);
    let manner = desk.manner();
    let bill = desk.bill();
    let out = move || desk.of_job(|job| with_bill(bill, |bill| left_out(job, bill, manner)));
    let empty = move || with_bill(bill, |bill| bill.bill.pooled.is_empty());
    let tables = move || {
        let mut all = vec![
            el("h2", "rule").text(say(Label::Pooled)),
            with_bill(bill, |bill| table(desk, say(Label::Pooled), &pooled(bill, manner), true)),
            el("h2", "rule").text(say(Label::PerVessel)),
        ];
        for (name, rows) in desk.of_job(|job| with_bill(bill, |bill| each(job, bill, manner))) {
            all.push(el("h3", "bill-vessel").text(&name));
            all.push(table(desk, &name, &rows, false));
        }
        all
    };
    el("main", "page bill")
        .kid(el("h1", "page-title").text(say(Label::BillOfMaterials)))
        .kid(el("p", "").kid(to_packs(desk)))
        .when(
            move || !out().is_empty(),
            move || {
                vec![
                    el("section", "bill-out")
                        .kid(el("p", "bill-out-title").text("▲ ").text(say(Label::LeftOut)))
                        .kid(el("ul", "").live(move || out().iter().map(|out| left_line(desk, out)).collect())),
                ]
            },
        )
        .when(empty, move || vec![el("p", "").text(say(Label::EmptyBill))])
        .live(move || if empty() { Vec::new() } else { tables() })
        .kid(prices_differ(desk))
        .kid(spent(desk))
        .kid(lines_left(desk))
        .kid(printing(desk, move || {
            desk.of_job(|job| vec![with_bill(bill, |bill| bill_of_materials(job, bill, desk.paper_manner(), &today()))])
        }))
}

/// The way to the packs.
fn to_packs(desk: Desk) -> El {
    let address = desk.open_now().map(|job| Route::Packs(job.id.clone()).address()).unwrap_or_default();
    el("a", "action").set("href", &address).text(desk.label(SupplyLabel::Packs))
}

/// A vessel that is left out, and why.
fn left_line(desk: Desk, out: &LeftOut) -> El {
    let job = desk.open_now().map(|job| job.id.clone());
    let address = job.map(|job| Route::Vessel(job, out.vessel.clone()).address()).unwrap_or_default();
    el("li", "")
        .kid(el("a", "").set("href", &address).text(&out.name))
        .kids(out.reasons.iter().map(|reason| el("span", "bill-reason").text(reason)).collect())
}

fn table(desk: Desk, caption: &str, rows: &[Row], pooled: bool) -> El {
    let say = move |label: Label| desk.label(label);
    let remark = |text: &str| el("span", "bill-remark").text(text);
    let line = |row: &Row| {
        let mut item = el("th", "bill-item").set("scope", "row").text(&row.item);
        if pooled && row.saved > 0 {
            item = item.kid(remark(&format!("{} {}", say(Label::Saved), row.saved)));
        }
        if row.returns {
            item = item.kid(remark(say(Label::ComesBack)));
        }
        let number = |text: &Option<String>| el("td", "figure bill-number").text(text.as_deref().unwrap_or_default());
        el("tr", "")
            .set("data-key", &row.key)
            .kid(item)
            .kid(el("td", "figure bill-quantity").text(&row.quantity.to_string()))
            .kid(el("td", "bill-unit").text(row.unit))
            .kid(number(&row.used))
            .kid(number(&row.weight))
    };
    let head = |class: &str, label: Label| el("th", class).set("scope", "col").text(say(label));
    let heads = el("tr", "")
        .kid(head("", Label::Item))
        .kid(head("bill-number", Label::Quantity).set("colspan", "2"))
        .kid(head("bill-number", Label::PacksUsed))
        .kid(head("bill-number", Label::WeightTogether));
    el("table", "bill-table")
        .set("aria-label", caption)
        .kid(el("thead", "").kid(heads))
        .kid(el("tbody", "").kids(rows.iter().map(line).collect()))
}
