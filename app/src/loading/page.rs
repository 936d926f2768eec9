//! A sheet of a vessel: cautions first, then step by step, the ladder beside, what is signed at the end.

use std::sync::Arc;

use bedwright_job::drawing::ladder;
use bedwright_job::id::Id;
use bedwright_job::loading::{LoadAnswers, tags_of};
use bedwright_job::papers::{Paper, SheetOf, start_up_report, work_sheet};
use bedwright_job::sections::loading::{LoadingText, TagChange, WorkSheet};
use bedwright_job::words::loading::sheet as sheet_label;
use bedwright_job::words::{Label, LoadingLabel};
use leptos::prelude::*;

use super::frozen::frozen;
use super::gate::gate;
use super::photo::photo;
use super::sign::sign;
use super::step::step;
use super::tag::TagSheet;
use crate::desk::{Desk, today};
use crate::parts::drawing::section_drawing;
use crate::parts::drawing_file::drawing_file;
use crate::parts::live::{El, el};
use crate::parts::sheet::printing;
use crate::parts::signal::{Held, Worked};
use crate::route::Route;
use crate::vessel::picture::{filed, section_paper};

/// A sheet of a vessel, told by its tag.
pub fn sheet_page(desk: Desk, sheet: WorkSheet, vessel: &Id, tag: &str) -> El {
    let there = {
        let (vessel, tag) = (vessel.clone(), tag.to_owned());
        move || {
            desk.of_job(|job| {
                let signed = bedwright_job::as_loaded::is_signed(job, &vessel, &tag);
                job.vessel(&vessel).is_some() && (signed || tags_of(job, &vessel).contains(&tag))
            })
        }
    };
    let gone = there.clone();
    let (vessel, tag) = (vessel.clone(), tag.to_owned());
    el("main", "page loading")
        .when(there, move || screen(TagSheet::new(desk, sheet, &vessel, &tag)))
        .when(move || !gone(), move || vec![el("p", "").text(desk.label(Label::JobNotFound))])
}

fn screen(of: TagSheet) -> Vec<El> {
    let desk = of.desk;
    let acknowledged = Worked::new(move || {
        let (person, day) = (of.person(), today());
        !person.is_empty() && desk.of_job(|job| job.loading.body.has_acknowledged(of.sheet, &person, &day))
    });
    let signed = Worked::new(move || of.is_signed());
    let working = Worked::new(move || acknowledged.get() && !signed.get());
    let nothing = move || of.sheet == WorkSheet::Removal && of.steps().is_empty();
    let title = [desk.label(sheet_label(of.sheet)), " · ", &name(of)].concat();
    let progress = move || {
        let (done, all) = LoadAnswers::progress(&of.steps());
        [&done.to_string(), " ", desk.label(Label::Of), " ", &all.to_string(), " ", of.say(LoadingLabel::StepsDone)]
            .concat()
    };
    let waits = move || of.sheet == WorkSheet::Loading && of.read(|of, _| of.rungs.is_err() && of.from_empty());
    let mut parts = vec![
        el("h1", "page-title").text(&title),
        el("p", "quietly").says(move || crate::vessel::name_of(desk, &of.vessel.get())),
        el("p", "loading-progress").set("role", "status").says(progress),
        other_sheet(of),
        gate(of, acknowledged, signed),
    ];
    let slot = el("div", "loading-slot")
        .when(move || signed.get(), move || vec![frozen(of)])
        .when(nothing, move || vec![el("p", "").text(of.say(LoadingLabel::NothingToTakeOut))])
        .when(waits, move || vec![el("p", "").text(of.say(LoadingLabel::WaitsForPlan))])
        .when(move || working.get(), move || work(of));
    parts.push(slot);
    if of.sheet == WorkSheet::Loading {
        let drawing = filed(desk, &of.vessel.get(), Some(&of.tag.get()));
        parts.push(el("div", "drawing-files").kid(drawing_file(desk, "", drawing)));
    }
    parts.push(printing(desk, move || papers(of)));
    // Interrupted anywhere, it opens there.
    if untrack(|| working.get()) {
        of.show_next();
    }
    parts
}

/// What the vessel is called on its sheets.
fn name(of: TagSheet) -> String {
    let tag = of.tag.get();
    if tag.trim().is_empty() { of.desk.label(Label::Untagged).to_owned() } else { tag }
}

/// The way to the other sheet of the same vessel.
fn other_sheet(of: TagSheet) -> El {
    let (other, label) = match of.sheet {
        WorkSheet::Removal => (WorkSheet::Loading, LoadingLabel::ToLoading),
        WorkSheet::Loading => (WorkSheet::Removal, LoadingLabel::ToRemoval),
    };
    let Some(job) = of.desk.open_now() else { return el("p", "") };
    let address = Route::Sheet(other, job.id.clone(), of.vessel.get(), of.tag.get()).address();
    let all = Route::Loadings(job.id.clone()).address();
    el("p", "actions")
        .kid(el("a", "action").set("href", &address).text(of.say(label)))
        .kid(el("a", "action").set("href", &all).text(of.desk.label(Label::AllVessels)))
}

/// The steps with the ladder beside them, and what ends them.
fn work(of: TagSheet) -> Vec<El> {
    let desk = of.desk;
    let manner = desk.manner();
    let ids = move || of.steps().into_iter().map(|step| step.id).collect::<Vec<_>>();
    let steps = el("ol", "load-steps").each(ids, move |id| step(of, id));
    let mut grid = el("div", "loading-grid");
    if of.sheet == WorkSheet::Loading {
        let drawing = Worked::new(move || {
            of.both().map(|(of, answers)| Arc::new(ladder(&answers, &of, &manner, (104.0, 470.0))))
        });
        let selected = Held::new(None);
        grid = grid.kid(el("aside", "loading-ladder").set("aria-label", of.say(LoadingLabel::Ladder)).when(
            move || drawing.with(Option::is_some),
            move || vec![section_drawing(move || drawing.get(), selected)],
        ));
    }
    let mut parts = vec![grid.kid(steps)];
    if of.sheet == WorkSheet::Loading {
        let deviations = of.text(
            LoadingLabel::Deviations,
            |of| of.done.text(LoadingText::Deviations).to_owned(),
            |text| TagChange::Text(LoadingText::Deviations, text),
        );
        parts.extend([deviations, photo(of), sign(of)]);
    }
    parts
}

/// The papers of this sheet as they stand.
fn papers(of: TagSheet) -> Vec<Paper> {
    let desk = of.desk;
    let (Some(job), Some((load, answers))) = (desk.open(), of.both()) else { return Vec::new() };
    let today = today();
    let sheet = SheetOf {
        job: &job,
        answers: &answers,
        of: &load,
        wash: of.wash(),
        manner: desk.paper_manner(),
        today: &today,
    };
    let mut papers = match (&load.signed, of.sheet) {
        (Some(loaded), WorkSheet::Loading) => vec![start_up_report(&sheet, loaded), work_sheet(&sheet, of.sheet)],
        _ => vec![work_sheet(&sheet, of.sheet)],
    };
    if of.sheet == WorkSheet::Loading {
        papers.extend(section_paper(desk, &of.vessel.get(), Some(&of.tag.get())));
    }
    papers
}
