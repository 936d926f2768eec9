//! The bill's screen: pooled over the job, each vessel on its own, what is left out and why.

use std::sync::Arc;

use bedwright_calc::supply::BillLine;
use bedwright_job::answers::JobBill;
use bedwright_job::papers::{LeftOut, Paper, bill_of_materials, left_out, vessel_name};
use bedwright_job::words::{Label, Manner};
use leptos::prelude::*;

use crate::desk::{Desk, today};
use crate::parts::sheet::{Printing, page_size, paper_size};
use crate::route::Route;

/// A line in words.
#[derive(Clone, Debug, PartialEq)]
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

/// The bill of materials.
#[component]
pub fn BillPage() -> impl IntoView {
    let desk = Desk::of();
    let say = move |label: Label| move || desk.label(label);
    let bill: Memo<Arc<JobBill>> = desk.bill();
    let all = Memo::new(move |_| bill.with(|bill| pooled(bill, desk.manner.get())));
    let each = Memo::new(move |_| {
        let manner = desk.manner.get();
        desk.job.with(|job| {
            let Some(job) = job else { return Vec::new() };
            bill.with(|bill| {
                let own = bill.vessels.iter().zip(&bill.bill.vessels);
                own.map(|(id, own)| {
                    let rows: Vec<Row> = own.lines.iter().map(|line| row(line, 0, manner)).collect();
                    (vessel_name(job, id, manner), rows)
                })
                .filter(|(_, rows)| !rows.is_empty())
                .collect::<Vec<_>>()
            })
        })
    });
    let out: Memo<Vec<LeftOut>> = Memo::new(move |_| {
        let manner = desk.manner.get();
        desk.job.with(|job| job.as_ref().map(|job| bill.with(|bill| left_out(job, bill, manner))).unwrap_or_default())
    });
    let papers = Signal::derive(move || {
        let manner = desk.manner.get();
        desk.job
            .with(|job| job.as_ref().map(|job| bill.with(|bill| bill_of_materials(job, bill, manner, &today()))))
            .into_iter()
            .collect::<Vec<Paper>>()
    });
    let size = Signal::derive(move || desk.person.with(|person| page_size(person.paper)));
    let link = move |out: &LeftOut| {
        desk.job
            .with_untracked(|job| job.as_ref().map(|job| Route::Vessel(job.id.clone(), out.vessel.clone()).address()))
    };
    view! {
        <main class="page bill">
            <h1 class="page-title">{say(Label::BillOfMaterials)}</h1>
            <Show when=move || out.with(|out| !out.is_empty())>
                <section class="bill-out">
                    <p class="bill-out-title">"▲ "{say(Label::LeftOut)}</p>
                    <ul>
                        {move || out.get().iter().map(|out| view! {
                            <li>
                                <a href=link(out)>{out.name.clone()}</a>
                                {out.reasons.iter().map(|reason| view! { <span class="bill-reason">{reason.clone()}</span> }).collect_view()}
                            </li>
                        }).collect_view()}
                    </ul>
                </section>
            </Show>
            <Show when=move || all.with(Vec::is_empty)>
                <p>{say(Label::EmptyBill)}</p>
            </Show>
            <Show when=move || all.with(|all| !all.is_empty())>
                <h2 class="rule">{say(Label::Pooled)}</h2>
                {move || table(desk, desk.label(Label::Pooled), &all.get(), true)}
                <h2 class="rule">{say(Label::PerVessel)}</h2>
                {move || each.get().iter().map(|(name, rows)| view! {
                    <h3 class="bill-vessel">{name.clone()}</h3>
                    {table(desk, name, rows, false)}
                }).collect_view()}
            </Show>
            <Printing papers size manner=desk.manner
                on_size=Callback::new(move |size| desk.prefer(|person| person.paper = paper_size(size))) />
        </main>
    }
}

fn table(desk: Desk, caption: &str, rows: &[Row], pooled: bool) -> AnyView {
    let say = move |label: Label| desk.label(label);
    let body: Vec<AnyView> = rows
        .iter()
        .map(|row| {
            let saved = (row.saved > 0).then(|| format!("{} {}", say(Label::Saved), row.saved));
            let returns = row.returns.then(|| say(Label::ComesBack));
            view! {
                <tr data-key=row.key.clone()>
                    <th scope="row" class="bill-item">
                        {row.item.clone()}
                        {saved.filter(|_| pooled).map(|saved| view! { <span class="bill-remark">{saved}</span> })}
                        {returns.map(|returns| view! { <span class="bill-remark">{returns}</span> })}
                    </th>
                    <td class="figure bill-quantity">{row.quantity}</td>
                    <td class="bill-unit">{row.unit}</td>
                    <td class="figure bill-number">{row.used.clone()}</td>
                    <td class="figure bill-number">{row.weight.clone()}</td>
                </tr>
            }
            .into_any()
        })
        .collect();
    view! {
        <table class="bill-table" aria-label=caption.to_owned()>
            <thead>
                <tr>
                    <th scope="col">{say(Label::Item)}</th>
                    <th scope="col" class="bill-number" colspan="2">{say(Label::Quantity)}</th>
                    <th scope="col" class="bill-number">{say(Label::PacksUsed)}</th>
                    <th scope="col" class="bill-number">{say(Label::WeightTogether)}</th>
                </tr>
            </thead>
            <tbody>{body}</tbody>
        </table>
    }
    .into_any()
}
