//! The visits of a bed, the latest first.

use bedwright_job::Edit;
use bedwright_job::care::visit::Visit;
use bedwright_job::evidence::withdrawal;
use bedwright_job::id::Id;
use bedwright_job::words::CareLabel;
use leptos::prelude::*;

use super::page::Look;
use crate::desk::{Desk, new_id, today};
use crate::parts::live::{El, button, el};
use crate::parts::signal::Held;

/// So many are shown at first.
const FIRST: usize = 10;

/// The visits.
pub(super) fn visits(look: Look) -> El {
    let desk = look.desk;
    let all = Held::new(false);
    let ids = move || {
        let most = if all.get() { usize::MAX } else { FIRST };
        look.with(|card| {
            let waiting = card.waiting.iter().rev();
            waiting.chain(card.bed.visits.iter().rev()).take(most).map(|visit| visit.id.to_string()).collect::<Vec<_>>()
        })
    };
    let count = move || look.with(|card| card.bed.visits.len() + card.waiting.len());
    let one = move |id: &str| {
        let id = Id::new(id);
        let text = untrack(|| {
            look.with(|card| {
                let mut visits = card.waiting.iter().chain(&card.bed.visits);
                visits.find(|visit| visit.id == id).map(|visit| sentence(desk, visit)).unwrap_or_default()
            })
        });
        let withdraw = move || desk.edit(Edit::AddRecord(withdrawal(new_id(), &id, &today())));
        el("li", "").kid(el("span", "").text(&text)).kid(button("quiet", look.say(CareLabel::Withdraw), withdraw))
    };
    el("section", "card-part")
        .set("aria-labelledby", "visits")
        .kid(el("h2", "rule").set("id", "visits").text(look.say(CareLabel::Visits)))
        .when(move || count() == 0, move || vec![el("p", "").text(look.say(CareLabel::NoVisits))])
        .kid(el("ul", "visit-list").each(ids, one))
        .when(
            move || !all.get() && count() > FIRST,
            move || vec![button("quiet", look.say(CareLabel::ShowAll), move || all.set(true))],
        )
}

/// A visit in a line.
fn sentence(desk: Desk, visit: &Visit) -> String {
    let manner = desk.manner();
    let mut parts = vec![visit.day.clone()];
    let mut part = |label: &str, value: String| parts.push([label, " ", &value].concat());
    for (field, _) in &visit.entries {
        part(manner.visit_field(*field), manner.visit_number(visit, *field));
    }
    if let Some(drain) = manner.drain_seen(visit) {
        part(desk.label(CareLabel::DrainSeen), drain.to_owned());
    }
    parts.extend(visit.leak.map(|leak| manner.leak_seen(leak)));
    for text in [&visit.settings, &visit.notes, &visit.by] {
        if !text.trim().is_empty() {
            parts.push(text.trim().to_owned());
        }
    }
    parts.join(" · ")
}
