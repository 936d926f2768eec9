//! Title, site, kind of job, vessels.

use std::sync::Arc;

use bedwright_calc::supply::JobKind;
use bedwright_job::Edit;
use bedwright_job::id::Id;
use bedwright_job::sections::head::TextField;
use bedwright_job::sections::plan::VesselPlan;
use bedwright_job::words::Label;
use bedwright_job::words::label::SearchLabel;

use crate::desk::{Desk, with_answers};
use crate::parts::choice::pick;
use crate::parts::live::{El, button, el};
use crate::parts::typing::{text_line, typing};
use crate::route::Route;
use crate::top::papers;

const KINDS: [(JobKind, Label); 4] = [
    (JobKind::New, Label::KindNew),
    (JobKind::Changeout, Label::KindChangeout),
    (JobKind::Partial, Label::KindPartial),
    (JobKind::TopUp, Label::KindTopUp),
];

/// The job.
pub fn job_page(desk: Desk) -> El {
    let say = move |label: Label| desk.label(label);
    let vessels = move || {
        desk.of_job(|job| job.survey.body.vessels.iter().map(|vessel| vessel.id.to_string()).collect::<Vec<_>>())
    };
    let kind = move || desk.of_job(|job| KINDS.iter().position(|(kind, _)| *kind == job.head.body.kind));
    let take_kind = move |at: usize| {
        if let Some((kind, _)) = KINDS.get(at) {
            desk.edit(Edit::Kind(*kind));
        }
    };
    let add = move || {
        let Some(job) = desk.open_now() else { return };
        let vessel = desk.next_vessel(&job);
        let (at, id) = (job.survey.body.vessels.len(), vessel.id.clone());
        desk.edit(Edit::InsertVessel { at, vessel: Arc::new(vessel), plan: Arc::new(VesselPlan::default()) });
        desk.go(&Route::Vessel(job.id.clone(), id));
    };
    let head = el("section", "job-head")
        .kid(line(desk, TextField::Title, Label::Title))
        .kid(line(desk, TextField::Customer, Label::Customer))
        .kid(line(desk, TextField::Site, Label::Site))
        .kid(line(desk, TextField::Number, Label::JobNumber))
        .kid(line(desk, TextField::Owner, Label::Owner))
        .kid(pick(say(Label::KindOfJob), "kind", &KINDS.map(|(_, label)| say(label)), kind, take_kind))
        .kid(line(desk, TextField::Notes, Label::Notes));
    let search = desk.open_now().map(|job| Route::Search(job.id.clone()).address()).unwrap_or_default();
    let actions = el("div", "actions")
        .kid(button("primary", say(Label::AddVessel), add))
        .kid(el("a", "action").set("href", &search).text(desk.label(SearchLabel::Find)))
        .kid(button("", say(Label::SaveFile), move || desk.save_file()));
    let title = move || {
        let title = desk.of_job(|job| job.head.body.title.clone());
        if title.is_empty() { say(Label::Untitled).to_owned() } else { title }
    };
    el("main", "page job")
        .kid(el("h1", "page-title").says(title))
        .when(
            move || desk.of_job(|job| job.head.body.sample),
            move || vec![el("p", "sample-mark").text(say(Label::SampleMark))],
        )
        .kid(head)
        .kid(
            el("section", "")
                .set("aria-labelledby", "vessels")
                .kid(el("h2", "rule").set("id", "vessels").text(say(Label::Vessels)))
                .when(move || vessels().is_empty(), move || vec![el("p", "").text(say(Label::NoVessels))])
                .kid(el("ul", "job-list").each(vessels, move |id| vessel_line(desk, Id::new(id))))
                .kid(actions),
        )
        .kids(desk.job_here().map(|job| papers(desk, &job)).into_iter().collect())
}

fn line(desk: Desk, field: TextField, label: Label) -> El {
    let field = typing(
        desk.turned,
        move || desk.of_job(|job| job.head.body.text(field).to_owned()),
        move |text| desk.edit(Edit::Text { field, text }),
        move || desk.pause(),
    );
    text_line(desk.label(label), field)
}

fn vessel_line(desk: Desk, vessel: Id) -> El {
    let answers = desk.answers(&vessel);
    let job = desk.open_now().map(|job| job.id.clone());
    let address = job.map(|job| Route::Vessel(job, vessel.clone()).address()).unwrap_or_default();
    let manner = desk.manner();
    let summary = move || {
        with_answers(answers, |answers| {
            let Some(answers) = answers else { return String::new() };
            let layers: Vec<String> = answers
                .layers
                .iter()
                .zip(answers.planned.iter())
                .filter_map(|(answer, layer)| {
                    let fill = answer.fill()?;
                    let packs = manner.container(layer.pack.container, fill.packs_to_buy);
                    Some(format!("{} {packs} {}", fill.packs_to_buy, manner.material(&layer.material.id)))
                })
                .collect();
            layers.join(" · ")
        })
    };
    let cards = crate::service::card_links(desk, &vessel);
    el("li", "job-line")
        .kid(
            el("a", "job-link")
                .set("href", &address)
                .kid(el("span", "job-title").says(move || crate::vessel::name_of(desk, &vessel)))
                .kid(el("span", "job-about").says(summary)),
        )
        .kid(cards)
}
