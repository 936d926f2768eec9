//! How far picking is: draft, picked, staged, handed over, each with its day and who did it.

use std::sync::Arc;

use bedwright_job::Edit;
use bedwright_job::answers::JobBill;
use bedwright_job::evidence::withdrawal;
use bedwright_job::papers::{changed_since, picked_lines};
use bedwright_job::picked::{Step, Taken, steps_of};
use bedwright_job::words::{SupplyLabel, supply};
use leptos::prelude::*;

use crate::desk::{Desk, new_id, today, with_bill};
use crate::parts::live::{El, button, el};
use crate::parts::signal::{Held, Worked};
use crate::parts::typing::{text_line, typing};

/// The steps, a button for the next one, and what changed since.
pub(super) fn steps(desk: Desk, bill: Worked<Arc<JobBill>>) -> El {
    let say = move |label: SupplyLabel| desk.label(label);
    let manner = desk.manner();
    let name = desk.draft_text("by");
    let told = Held::new(None::<SupplyLabel>);
    let taken = move || desk.of_job(steps_of);
    let next = move || match taken().last() {
        Some(last) => last.step.next(),
        None => Some(Step::Picked),
    };
    let list = move || {
        let taken = taken();
        let mut items = vec![item(taken.is_empty(), say(SupplyLabel::StepDraft), String::new())];
        for &step in Step::ALL {
            let there = taken.iter().find(|taken| taken.step == step);
            let about = there.map(|taken| [&taken.day, " · ", &taken.name].concat()).unwrap_or_default();
            let last = taken.last().is_some_and(|last| last.step == step);
            items.push(item(last, say(supply::step(step)), about));
        }
        items
    };
    let take = move || {
        let Some(step) = untrack(next) else { return };
        let by = name.get_untracked().trim().to_owned();
        if by.is_empty() {
            return told.set(Some(SupplyLabel::StepName));
        }
        let lines = match step {
            Step::Picked => untrack(|| desk.of_job(|job| with_bill(bill, |bill| picked_lines(job, bill, manner)))),
            Step::Staged | Step::HandedOver => Some(Vec::new()),
        };
        let Some(lines) = lines else { return told.set(Some(SupplyLabel::StepOpenLines)) };
        told.set(None);
        let taken = Taken { id: new_id(), step, day: today(), name: by, lines };
        desk.edit(Edit::AddRecord(taken.record()));
        desk.turned.update(|n| *n = n.wrapping_add(1));
    };
    let back = move || {
        if let Some(last) = untrack(taken).last() {
            desk.edit(Edit::AddRecord(withdrawal(new_id(), &last.id, &today())));
            desk.turned.update(|n| *n = n.wrapping_add(1));
        }
    };
    let by = typing(desk.turned, move || name.get_untracked(), move |text| name.set(text), || ());
    let form = move || {
        let step = untrack(next).map(|step| say(supply::step(step))).unwrap_or_default();
        vec![button("primary", step, take)]
    };
    let changed = move || desk.of_job(|job| with_bill(bill, |bill| changed_since(job, bill, manner)));
    el("section", "picking-steps")
        .set("aria-label", say(SupplyLabel::Steps))
        .kid(el("ol", "steps").live(list))
        .kid(
            el("div", "steps-form")
                .when(move || next().is_some(), move || vec![text_line(say(SupplyLabel::StepBy), by.clone())])
                .kid(el("div", "steps-next").live(move || if next().is_some() { form() } else { Vec::new() }))
                .when(move || !taken().is_empty(), move || vec![button("quiet", say(SupplyLabel::StepBack), back)]),
        )
        .kid(
            el("p", "entry-message")
                .set("role", "alert")
                .says(move || told.get().map(|label| say(label).to_owned()).unwrap_or_default()),
        )
        .when(move || !taken().is_empty(), move || vec![el("p", "steps-frozen").text(say(SupplyLabel::Frozen))])
        .when(
            move || !changed().is_empty(),
            move || {
                vec![
                    el("div", "steps-changed")
                        .set("role", "status")
                        .kid(el("p", "").text("▲ ").text(say(SupplyLabel::ChangedSince)))
                        .kid(el("ul", "").each(changed, |text| el("li", "").text(text))),
                ]
            },
        )
}

fn item(here: bool, name: &str, about: String) -> El {
    let item = el("li", if here { "step step-here" } else { "step" })
        .kid(el("span", "step-name").text(name))
        .kid(el("span", "step-about").text(&about));
    if here { item.set("aria-current", "step") } else { item }
}
