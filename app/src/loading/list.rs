//! Where each vessel of the job stands in being emptied and loaded.

use bedwright_job::id::Id;
use bedwright_job::loading::{LoadAnswers, load_answers, tags_of};
use bedwright_job::sections::loading::WorkSheet;
use bedwright_job::words::{Label, LoadingLabel};
use leptos::prelude::*;

use crate::desk::Desk;
use crate::parts::live::{El, el};
use crate::route::Route;

/// Every vessel and tag with how far it is, and the way to its sheets.
pub fn loadings_page(desk: Desk) -> El {
    let say = move |label: LoadingLabel| desk.label(label);
    let vessels = move || {
        desk.of_job(|job| job.survey.body.vessels.iter().map(|vessel| vessel.id.to_string()).collect::<Vec<_>>())
    };
    el("main", "page loading")
        .kid(el("h1", "page-title").text(say(LoadingLabel::Loading)))
        .kid(el("p", "quietly").text(say(LoadingLabel::ChooseVessel)))
        .when(move || vessels().is_empty(), move || vec![el("p", "").text(desk.label(Label::NoVessels))])
        .kid(el("ul", "loading-list").each(vessels, move |id| of_vessel(desk, Id::new(id))))
}

fn of_vessel(desk: Desk, vessel: Id) -> El {
    let name = {
        let vessel = vessel.clone();
        move || crate::vessel::name_of(desk, &vessel)
    };
    let tags = {
        let vessel = vessel.clone();
        move || desk.of_job(|job| tags_of(job, &vessel))
    };
    el("li", "loading-vessel")
        .kid(el("h2", "rule").says(name))
        .kid(el("ul", "").each(tags, move |tag| of_tag(desk, &vessel, tag)))
}

fn of_tag(desk: Desk, vessel: &Id, tag: &str) -> El {
    let answers = desk.answers(vessel);
    let (named, tag) =
        (if tag.is_empty() { desk.label(Label::Untagged).to_owned() } else { tag.to_owned() }, tag.to_owned());
    let state = {
        let tag = tag.clone();
        move || {
            let (Some(job), Some(answers)) = (desk.open(), answers.get()) else { return String::new() };
            state(desk, &load_answers(&job, &tag, &answers))
        }
    };
    let job = untrack(|| desk.open_now()).map(|job| job.id.clone()).unwrap_or_else(|| Id::new(""));
    let link = |sheet: WorkSheet, label: LoadingLabel| {
        let address = Route::Sheet(sheet, job.clone(), vessel.clone(), tag.clone()).address();
        el("a", "action")
            .set("href", &address)
            .set("aria-label", &[desk.label(label), ": ", &named].concat())
            .text(desk.label(label))
    };
    el("li", "loading-tag")
        .kid(el("p", "").kid(el("strong", "").text(&named)).text(" · ").kid(el("span", "").says(state)))
        .kid(
            el("p", "actions")
                .kid(link(WorkSheet::Removal, LoadingLabel::RemovalSheet))
                .kid(link(WorkSheet::Loading, LoadingLabel::LoadingSheet)),
        )
}

fn state(desk: Desk, of: &LoadAnswers) -> String {
    if let Some(loaded) = &of.signed {
        return [desk.label(LoadingLabel::SignedBy), " ", &loaded.signed.by, ", ", &loaded.day].concat();
    }
    let (removed, removal) = LoadAnswers::progress(&of.removal);
    let (loaded, loading) = LoadAnswers::progress(&of.loading);
    let (done, all) = (removed + loaded, removal + loading);
    if done == 0 {
        return desk.label(LoadingLabel::NotBegun).to_owned();
    }
    [&done.to_string(), " ", desk.label(Label::Of), " ", &all.to_string(), " ", desk.label(LoadingLabel::StepsDone)]
        .concat()
}
