//! Everything there is to go to: the papers of the open job in the order of the work, then what belongs to the device.

use bedwright_job::id::Id;
use bedwright_job::words::{
    CareLabel, KeepingLabel, Label, LoadingLabel, PriceLabel, QuoteLabel, SupplyLabel, SureLabel, TopLabel, TravelLabel,
};
use wasm_bindgen::JsCast;

use super::here;
use crate::desk::Desk;
use crate::parts::live::{El, button, el, follow};
use crate::parts::signal::Held;
use crate::route::Route;

/// A place to go to: its address, its name, what it is for.
struct Goal {
    route: Route,
    name: &'static str,
    about: &'static str,
}

/// The papers of a job, in the order of the work.
fn papers_of(desk: Desk, job: &Id) -> Vec<Goal> {
    let goal = |route: fn(Id) -> Route, name: &'static str, about: TopLabel| Goal {
        route: route(job.clone()),
        name,
        about: desk.label(about),
    };
    vec![
        goal(Route::SurveySheet, desk.label(Label::SurveySheet), TopLabel::SurveySheetAbout),
        goal(Route::Calculation, desk.label(Label::CalculationSheet), TopLabel::CalculationAbout),
        goal(Route::Bill, desk.label(Label::BillOfMaterials), TopLabel::BillAbout),
        goal(Route::Quote, desk.label(QuoteLabel::Quote), TopLabel::QuoteAbout),
        goal(Route::Packs, desk.label(SupplyLabel::Packs), TopLabel::PacksAbout),
        goal(Route::Picking, desk.label(Label::PickList), TopLabel::PickListAbout),
        goal(Route::Labels, desk.label(SupplyLabel::Labels), TopLabel::LabelsAbout),
        goal(Route::Loadings, desk.label(LoadingLabel::Loading), TopLabel::LoadingAbout),
        Goal {
            route: Route::Send(job.clone()),
            name: desk.label(TravelLabel::Send),
            about: desk.label(TravelLabel::SendAbout),
        },
    ]
}

/// What belongs to the device.
fn places(desk: Desk) -> Vec<Goal> {
    let place = |route: Route, name: &'static str| Goal { route, name, about: "" };
    vec![
        place(Route::Receive(String::new()), desk.label(TravelLabel::Receive)),
        place(Route::Due, desk.label(CareLabel::DueList)),
        place(Route::Prices, desk.label(PriceLabel::Title)),
        place(Route::Backup, desk.label(KeepingLabel::Title)),
        place(Route::Sure(String::new()), desk.label(SureLabel::Title)),
        place(Route::Settings, desk.label(Label::Settings)),
    ]
}

/// The papers of a job as a list, for the job's own screen.
pub fn papers(desk: Desk, job: &Id) -> El {
    let line = |goal: Goal| {
        el("li", "job-line").kid(
            el("a", "job-link")
                .set("href", &goal.route.address())
                .kid(el("span", "job-title").text(goal.name))
                .kid(el("span", "job-about").text(goal.about)),
        )
    };
    el("section", "")
        .set("aria-labelledby", "papers")
        .kid(el("h2", "rule").set("id", "papers").text(desk.label(TopLabel::Papers)))
        .kid(el("ul", "job-list").kids(papers_of(desk, job).into_iter().map(line).collect()))
}

/// The button, and what it opens. Going somewhere, Escape and a tap elsewhere close it.
pub fn menu(desk: Desk) -> El {
    let open = Held::new(false);
    follow(move || {
        desk.route.track();
        open.set(false);
    });
    let group = move |name: &'static str, goals: Vec<Goal>| {
        let links = goals.into_iter().map(|goal| {
            let link = el("a", "").set("href", &goal.route.address()).text(goal.name);
            link.tells("aria-current", here(desk, goal.route))
        });
        el("nav", "menu-group").set("aria-label", name).kid(el("p", "menu-name").text(name)).kids(links.collect())
    };
    let inside = move || {
        let mut groups = Vec::new();
        if let Some(job) = desk.job_here() {
            groups.push(group(desk.label(TopLabel::Papers), papers_of(desk, &job)));
        }
        groups.push(group(desk.label(TopLabel::ThisDevice), places(desk)));
        let shade = el("div", "menu-shade").on("click", move |_| open.set(false));
        vec![shade, el("div", "menu-panel").set("id", "menu").kids(groups)]
    };
    let toggle = button("quiet", desk.label(TopLabel::Menu), move || open.set(!open.get_untracked()))
        .set("aria-controls", "menu")
        .tells("aria-expanded", move || Some(open.get().to_string()));
    el("span", "menu")
        .on("keydown", move |event| {
            if event.dyn_ref::<web_sys::KeyboardEvent>().is_some_and(|event| event.key() == "Escape") {
                open.set(false);
            }
        })
        .kid(toggle)
        .when(move || open.get(), inside)
}
