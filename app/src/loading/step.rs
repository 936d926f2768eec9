//! One step: a tick as wide as the screen, how it is done, when it was and by whom.

use bedwright_job::loading::{StepRow, StepWork};
use bedwright_job::sections::loading::TagChange;
use bedwright_job::words::LoadingLabel;
use bedwright_job::words::loading::StepWords;
use leptos::prelude::*;

use super::extras::{after, before};
use super::reading::reading;
use super::tag::TagSheet;
use crate::parts::live::{El, el, ticked};
use crate::parts::signal::{Kept, Worked};

/// A step of this id.
pub fn step(of: TagSheet, id: &str) -> El {
    let id = Kept::new(id.to_owned());
    let row = Worked::new(move || of.step(&id.get()));
    let Some(first) = untrack(|| row.get()) else { return el("li", "") };
    let words = Worked::new(move || {
        let wash = of.wash();
        row.get().and_then(|row| of.read(|load, answers| Some(of.desk.manner().step(&row, load, answers, wash))))
    });
    let title = move || words.with(|words| words.as_ref().map(|words| words.title.clone()).unwrap_or_default());
    let lines = move || {
        words.with(|words: &Option<StepWords>| words.as_ref().map(|words| words.lines.join(" ")).unwrap_or_default())
    };
    let done = move || row.with(|row| row.as_ref().is_some_and(StepRow::is_done));
    let next =
        move || of.steps().iter().find(|step| must(step) && !step.is_done()).is_some_and(|step| step.id == id.get());
    let when = move || {
        row.with(|row| {
            let Some(stamp) = row.as_ref().and_then(|row| row.stamp.as_ref()) else { return String::new() };
            [&of.desk.manner().instant(&stamp.at), " · ", &stamp.by].concat()
        })
    };
    let line = el("li", "load-step").marks("load-step-done", done).marks("load-step-next", next);
    let line = match &first.work {
        StepWork::Tick => {
            let box_of = el("input", "").set("type", "checkbox").holds("checked", done).on("change", move |event| {
                let stamp = ticked(&event).then(|| of.stamp());
                let on = stamp.is_some();
                of.change(TagChange::Tick(id.get(), stamp));
                if on {
                    of.show_next();
                }
            });
            line.kids(before(of, &first))
                .kid(el("label", "load-step-tick").kid(box_of).kid(el("span", "load-step-title").says(title)))
        }
        StepWork::Read(place) | StepWork::MayRead(place) => {
            let needed = matches!(first.work, StepWork::Read(_));
            let optional = if needed { "" } else { of.say(LoadingLabel::Optional) };
            line.kid(
                el("p", "load-step-title load-step-heading")
                    .says(title)
                    .kid(el("span", "quietly").text(" ").text(optional)),
            )
            .kid(reading(of, place, needed))
        }
    };
    line.kid(el("p", "load-step-how").says(lines)).kid(el("p", "load-step-when").says(when)).kids(after(of, &first))
}

/// Whether a step has to be done; a reading that may be taken needn't.
fn must(step: &StepRow) -> bool {
    !matches!(step.work, StepWork::MayRead(_))
}
