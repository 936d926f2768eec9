//! The pick list's screen.

use bedwright_job::answers::JobBill;
use bedwright_job::id::Id;
use bedwright_job::papers::{PickRow, PickState, pick_list, pick_rows, put_back, staging_list};
use bedwright_job::words::{Label, SupplyLabel};
use leptos::prelude::*;

use super::line::Line;
use super::steps::steps;
use crate::desk::{Desk, today, with_bill};
use crate::parts::choice::pick;
use crate::parts::live::{El, button, el, follow};
use crate::parts::sheet::printing;
use crate::parts::signal::{Held, Kept, Worked};
use crate::route::Route;

/// The pick list.
pub fn picking_page(desk: Desk) -> El {
    let say = move |label: Label| desk.label(label);
    let manner = desk.manner();
    let bill = desk.bill();
    let staging = Held::new(false);
    let rows: Worked<Vec<PickRow>> =
        Worked::new(move || desk.of_job(|job| with_bill(bill, |bill| pick_rows(job, bill, manner))));
    let back = move || {
        let back = desk.of_job(|job| with_bill(bill, |bill| put_back(job, bill, manner)));
        back.iter().map(|back| format!("{} × {}", back.picked, back.item)).collect::<Vec<_>>()
    };
    let sorted = move || rows.with(|rows| rows.iter().map(|row| row.key.clone()).collect::<Vec<_>>());
    // Lines stay where they are while bins are typed; a line never moves away under a thumb.
    let order = Held::new(untrack(sorted));
    follow(move || {
        let now = sorted();
        let mut order_now = order.get_untracked();
        order_now.retain(|key| now.contains(key));
        for key in now {
            if !order_now.contains(&key) {
                order_now.push(key);
            }
        }
        if order.with_untracked(|there| *there != order_now) {
            order.set(order_now);
        }
    });
    let unsorted = move || order.with(|order| *order != sorted());
    let progress = move || {
        let (picked, all) = rows.with(|rows| {
            (
                rows.iter().filter(|row| matches!(row.state, PickState::Picked | PickState::Short { .. })).count(),
                rows.len(),
            )
        });
        format!("{} {picked} {} {all}", say(Label::Picked), say(Label::Of))
    };
    let empty = move || rows.with(Vec::is_empty);
    let line = move |key: &str| Line { desk, key: Kept::new(key.to_owned()), rows }.show();
    let lines = move || {
        let state = el("div", "picking-state")
            .kid(el("p", "picking-progress").set("role", "status").says(progress))
            .when(unsorted, move || vec![button("", say(Label::SortByBin), move || order.set(untrack(sorted)))]);
        vec![state, el("ul", "picking-lines").each(move || order.get(), line)]
    };
    el("main", "page picking")
        .kid(el("h1", "page-title").text(say(Label::PickList)))
        .kid(links(desk))
        .kid(steps(desk, bill))
        .when(move || !empty(), lines)
        .when(empty, move || vec![el("p", "").text(say(Label::EmptyBill))])
        .when(
            move || !back().is_empty(),
            move || {
                vec![
                    el("section", "picking-back")
                        .kid(el("h2", "rule").text(say(Label::PutBack)))
                        .kid(el("ul", "").each(back, |text| el("li", "").text(text))),
                ]
            },
        )
        .kid(pick(
            desk.label(SupplyLabel::WhichPaper),
            "which-paper",
            &[say(Label::PickList), desk.label(SupplyLabel::StagingList)],
            move || Some(usize::from(staging.get())),
            move |at| staging.set(at == 1),
        ))
        .kid(printing(desk, move || {
            desk.of_job(|job| {
                let paper = |bill: &JobBill| {
                    if staging.get() {
                        staging_list(job, bill, desk.paper_manner(), &today())
                    } else {
                        pick_list(job, bill, desk.paper_manner(), &today())
                    }
                };
                vec![with_bill(bill, paper)]
            })
        }))
}

/// The screens beside it.
fn links(desk: Desk) -> El {
    let job = desk.open_now().map(|job| job.id.clone());
    let link = |route: fn(Id) -> Route, label: SupplyLabel| {
        let address = job.clone().map(|job| route(job).address()).unwrap_or_default();
        el("a", "action").set("href", &address).text(desk.label(label))
    };
    el("p", "picking-links").kid(link(Route::Packs, SupplyLabel::Packs)).kid(link(Route::Labels, SupplyLabel::Labels))
}
