//! The table of work: hours for a vessel by kind of job and size.

use std::rc::Rc;

use bedwright_calc::supply::JobKind;
use bedwright_job::edit::quote::QuoteEdit;
use bedwright_job::entry::{Dimension, Unit};
use bedwright_job::field::QuoteField;
use bedwright_job::id::Id;
use bedwright_job::sections::quote::LabourLine;
use bedwright_job::words::{QuoteLabel, choices};
use leptos::prelude::*;

use super::pricing::{Cell, entry};
use crate::desk::{Desk, new_id, with_quote};
use crate::parts::choice::choice;
use crate::parts::live::{El, button, el};
use crate::parts::signal::Kept;

const KINDS: [JobKind; 4] = [JobKind::New, JobKind::Changeout, JobKind::Partial, JobKind::TopUp];

/// The table of work with its rates.
pub fn labour(desk: Desk) -> El {
    let say = move |label: QuoteLabel| desk.label(label);
    let rows = move || desk.of_job(|job| job.quote.body.labour.clone());
    let ids = move || rows().iter().map(|row| row.id.to_string()).collect::<Vec<_>>();
    let add = move || {
        let mut all = untrack(rows);
        let unknown = Default::default();
        all.push(LabourLine { id: new_id(), kind: None, up_to: None, hours: None, unknown });
        desk.edit_quote(QuoteEdit::Labour(all));
    };
    el("section", "quote-part")
        .set("aria-labelledby", "quote-labour")
        .kid(el("h2", "rule").set("id", "quote-labour").text(say(QuoteLabel::LabourTitle)))
        .kid(el("p", "survey-missing").text(say(QuoteLabel::LabourHint)))
        .kid(el("ul", "quote-rows").each(ids, move |id| row(desk, Id::new(id))))
        .kid(button("", say(QuoteLabel::LabourAdd), add))
        .kid(el("div", "entries").kid(entry(desk, QuoteField::LabourPrice)).kid(entry(desk, QuoteField::LabourCost)))
}

fn row(desk: Desk, id: Id) -> El {
    let id = Kept::new(id);
    let read = move || id.with(|id| desk.of_job(|job| job.quote.body.labour.iter().find(|row| row.id == *id).cloned()));
    let place = move || id.with(|id| desk.of_job(|job| job.quote.body.labour.iter().position(|row| row.id == *id)));
    let change = move |change: &dyn Fn(&mut LabourLine)| {
        let mut all = untrack(|| desk.of_job(|job| job.quote.body.labour.clone()));
        if let Some(row) = id.with(|id| all.iter_mut().find(|row| row.id == *id)) {
            change(row);
        }
        desk.edit_quote(QuoteEdit::Labour(all));
    };
    let fault = move |hours: bool| {
        let at = place()?;
        with_quote(desk, |quoted| {
            let faults = &quoted?.answers.labour_faults;
            faults.iter().find(|(row, of, _)| *row == at && *of == hours).map(|(_, _, fault)| fault.clone())
        })
    };
    let kind = choice(
        desk.label(QuoteLabel::LabourKind),
        move || {
            let any = desk.label(QuoteLabel::LabourAny).to_owned();
            std::iter::once(any).chain(KINDS.iter().map(|kind| desk.label(choices::kind(*kind)).to_owned())).collect()
        },
        move || {
            Some(read()?.kind.and_then(|kind| KINDS.iter().position(|there| *there == kind)).map_or(0, |at| at + 1))
        },
        move |at| change(&|row| row.kind = at.checked_sub(1).and_then(|at| KINDS.get(at)).copied()),
    );
    let metric = desk.manner().metric;
    let up_to = Cell {
        id: ["labour-size-", id.get().as_str()].concat(),
        label: desk.label(QuoteLabel::LabourUpTo),
        units: Unit::of(Dimension::Length),
        usual: if metric { Unit::Millimetre } else { Unit::Inch },
        entry: Rc::new(move || read().and_then(|row| row.up_to)),
        fault: Rc::new(move || fault(false)),
        put: Rc::new(move |entry| change(&|row| row.up_to.clone_from(&entry))),
    };
    let hours = Cell {
        id: ["labour-hours-", id.get().as_str()].concat(),
        label: desk.label(QuoteLabel::LabourHours),
        units: &[Unit::One],
        usual: Unit::One,
        entry: Rc::new(move || read().and_then(|row| row.hours)),
        fault: Rc::new(move || fault(true)),
        put: Rc::new(move |entry| change(&|row| row.hours.clone_from(&entry))),
    };
    let remove = move || {
        let mut all = untrack(|| desk.of_job(|job| job.quote.body.labour.clone()));
        id.with(|id| all.retain(|row| row.id != *id));
        desk.edit_quote(QuoteEdit::Labour(all));
    };
    el("li", "quote-row").kid(kind).kid(up_to.show(desk)).kid(hours.show(desk)).kid(button(
        "quiet",
        desk.label(QuoteLabel::LabourRemove),
        remove,
    ))
}
