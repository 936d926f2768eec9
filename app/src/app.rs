//! The frame around every screen: top bar, notices, the screen itself, foot.

use bedwright_job::words::{Label, PriceLabel};
use leptos::prelude::*;

use crate::bill::bill_page;
use crate::calculation::calculation_page;
use crate::desk::{Desk, Opened};
use crate::job::job_page;
use crate::jobs::jobs_page;
use crate::labels::labels_page;
use crate::notices::notices;
use crate::packs::packs_page;
use crate::parts::live::{El, button, el, follow, page};
use crate::parts::signal::Worked;
use crate::person::Theme;
use crate::picking::picking_page;
use crate::prices::prices_page;
use crate::route::Route;
use crate::search::search_page;
use crate::settings::settings_page;
use crate::survey_sheet::survey_sheet_page;
use crate::vessel::vessel_page;

/// The whole page.
pub fn app(opened: Opened) {
    let desk = Desk::lay(opened);
    desk.empty_bin();
    // The theme is a mark on the root that the style sheet follows.
    follow(move || {
        let theme = desk.person.with(|person| match person.theme {
            Theme::System => "system",
            Theme::Light => "light",
            Theme::Dark => "dark",
        });
        mark_root("data-theme", theme);
    });
    // The screen changes with the address and with which job is open, not with every edit. Its texts, and the units and
    // marks they are in, are those of the moment it is drawn: only the settings change them.
    let which = Worked::new(move || (desk.route.get(), desk.job.with(Option::is_some)));
    page()
        .kid(top_bar(desk))
        .kid(notices(desk))
        .live(move || {
            let (route, found) = which.get();
            vec![screen(desk, &route, found)]
        })
        .kid(foot(desk));
}

/// A mark on the page's root; a page that can't carry it works all the same.
pub fn mark_root(name: &str, value: &str) {
    if let Some(root) = window().document().and_then(|document| document.document_element()) {
        let _ = root.set_attribute(name, value);
    }
}

fn screen(desk: Desk, route: &Route, found: bool) -> El {
    untrack(|| match route {
        Route::Jobs => jobs_page(desk),
        Route::Prices => prices_page(desk),
        Route::Settings => settings_page(desk),
        _ if !found => el("main", "page").kid(el("p", "").text(desk.label(Label::JobNotFound))).kid(
            el("p", "").kid(el("a", "action").set("href", &Route::Jobs.address()).text(desk.label(Label::BackToJobs))),
        ),
        Route::Job(_) => job_page(desk),
        Route::Vessel(_, vessel) => vessel_page(desk, vessel),
        Route::Search(_) => search_page(desk),
        Route::Bill(_) => bill_page(desk),
        Route::Picking(_) => picking_page(desk),
        Route::Packs(_) => packs_page(desk),
        Route::Labels(_) => labels_page(desk),
        Route::SurveySheet(_) => survey_sheet_page(desk),
        Route::Calculation(_) => calculation_page(desk),
    })
}

fn top_bar(desk: Desk) -> El {
    let to = move |route: Route, text: &str| {
        el("a", "")
            .set("href", &route.address())
            .tells("aria-current", move || (desk.route.get() == route).then(|| "page".to_owned()))
            .text(text)
    };
    let link = move |route: Route, label: Label| to(route, desk.label(label));
    let jobs = el("nav", "top-jobs").set("aria-label", desk.label(Label::Jobs)).kid(link(Route::Jobs, Label::Jobs));
    let tools = el("span", "top-tools")
        .when(
            move || desk.route.with(|route| route.job().is_some()),
            move || {
                let undo = button("quiet", desk.label(Label::Undo), move || desk.undo());
                let redo = button("quiet", desk.label(Label::Redo), move || desk.redo());
                vec![undo.holds("disabled", move || !desk.can_undo()), redo.holds("disabled", move || !desk.can_redo())]
            },
        )
        .when(
            move || desk.route.with(|route| *route == Route::Prices),
            move || {
                let undo = button("quiet", desk.label(Label::Undo), move || desk.undo_list());
                let redo = button("quiet", desk.label(Label::Redo), move || desk.redo_list());
                vec![
                    undo.holds("disabled", move || !desk.can_undo_list()),
                    redo.holds("disabled", move || !desk.can_redo_list()),
                ]
            },
        )
        .kid(to(Route::Prices, desk.label(PriceLabel::Title)))
        .kid(link(Route::Settings, Label::Settings));
    // The job the address is about, once it is open.
    let open = move || {
        let job = desk.route.with(|route| route.job().cloned()).filter(|_| desk.job.with(Option::is_some));
        job.map(|job| job.to_string()).into_iter().collect()
    };
    let title = move || {
        let title = desk.of_job(|job| job.head.body.title.clone());
        if title.is_empty() { desk.label(Label::Untitled).to_owned() } else { title }
    };
    let of_job = move |id: &str| {
        let id = bedwright_job::id::Id::new(id);
        vec![
            el("a", "top-title").set("href", &Route::Job(id.clone()).address()).says(title),
            el("nav", "top-papers")
                .set("aria-label", desk.label(Label::Paper))
                .kid(link(Route::Bill(id.clone()), Label::BillOfMaterials))
                .kid(link(Route::Picking(id.clone()), Label::PickList))
                .kid(link(Route::SurveySheet(id.clone()), Label::SurveySheet))
                .kid(link(Route::Calculation(id), Label::CalculationSheet)),
        ]
    };
    let which = Worked::new(move || -> Vec<String> { open() });
    el("header", "top")
        .kid(jobs)
        .live(move || which.with(|open| open.first().map(|id| of_job(id))).unwrap_or_default())
        .kid(tools)
}

fn foot(desk: Desk) -> El {
    let build = window()
        .document()
        .and_then(|document| document.query_selector("meta[name=bedwright-build]").ok().flatten())
        .and_then(|meta| meta.get_attribute("content"))
        .unwrap_or_default();
    let offline =
        move || desk.label(if desk.offline.get() { Label::ReadyOffline } else { Label::NotReadyOffline }).to_owned();
    el("footer", "foot")
        .kid(el("span", "foot-offline").says(offline))
        .kid(el("span", "").text(desk.label(Label::KeptHere)))
        .kid(el("span", "").text(desk.label(Label::PlanningAid)))
        .kid(el("span", "foot-build").text(desk.label(Label::Build)).text(" ").text(&build))
}
