//! The frame around every screen: top bar, notices, the screen itself, foot.

use bedwright_edge::address;
use bedwright_edge::update::{self, Offline};
use bedwright_job::words::{DeviceLabel, Label};
use leptos::prelude::*;

use crate::backup::backup_page;
use crate::bill::bill_page;
use crate::calculation::calculation_page;
use crate::desk::{Desk, Opened};
use crate::due::due_page;
use crate::job::job_page;
use crate::jobs::jobs_page;
use crate::labels::labels_page;
use crate::loading::{loadings_page, sheet_page};
use crate::notices::notices;
use crate::packs::packs_page;
use crate::parts::live::{El, el, follow, page};
use crate::parts::signal::Worked;
use crate::person::Theme;
use crate::picking::picking_page;
use crate::prices::prices_page;
use crate::quote::quote_page;
use crate::receive::receive_page;
use crate::route::Route;
use crate::search::search_page;
use crate::send::send_page;
use crate::service::card_page;
use crate::settings::settings_page;
use crate::sure::sure_page;
use crate::survey_sheet::survey_sheet_page;
use crate::top::top_bar;
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
    let language = Worked::new(move || desk.person.with(|person| person.manner().language));
    follow(move || mark_root("lang", language.get().tag()));
    // The screen changes with the address and with which job is open, not with every edit. Its texts, and the units and
    // marks they are in, are those of the moment it is drawn: only the settings change them.
    let which = Worked::new(move || (desk.route.get(), desk.job.with(Option::is_some), language.get()));
    page()
        .live(move || {
            language.track();
            untrack(|| vec![top_bar(desk), notices(desk)])
        })
        .live(move || {
            let (route, found, _) = which.get();
            vec![screen(desk, &route, found)]
        })
        .live(move || {
            language.track();
            untrack(|| vec![foot(desk)])
        });
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
        Route::Backup => backup_page(desk),
        Route::Due => due_page(desk),
        Route::Sure(formula) => sure_page(desk, formula),
        Route::Receive(code) => receive_page(desk, code),
        _ if !found => el("main", "page").kid(el("p", "").text(desk.label(Label::JobNotFound))).kid(
            el("p", "").kid(el("a", "action").set("href", &Route::Jobs.address()).text(desk.label(Label::BackToJobs))),
        ),
        Route::Job(_) => job_page(desk),
        Route::Vessel(_, vessel) => vessel_page(desk, vessel),
        Route::Search(_) => search_page(desk),
        Route::Send(_) => send_page(desk),
        Route::Card(_, vessel, tag) => card_page(desk, vessel, tag),
        Route::Bill(_) => bill_page(desk),
        Route::Picking(_) => picking_page(desk),
        Route::Quote(_) => quote_page(desk),
        Route::Packs(_) => packs_page(desk),
        Route::Labels(_) => labels_page(desk),
        Route::SurveySheet(_) => survey_sheet_page(desk),
        Route::Calculation(_) => calculation_page(desk),
        Route::Loadings(_) => loadings_page(desk),
        Route::Sheet(sheet, _, vessel, tag) => sheet_page(desk, *sheet, vessel, tag),
    })
}

fn foot(desk: Desk) -> El {
    let build = window()
        .document()
        .and_then(|document| document.query_selector("meta[name=bedwright-build]").ok().flatten())
        .and_then(|meta| meta.get_attribute("content"))
        .unwrap_or_default();
    let offline = move || {
        let text = match (update::offline(), desk.offline.get()) {
            (Offline::Inside, _) => desk.label(DeviceLabel::Inside),
            (_, true) => desk.label(Label::ReadyOffline),
            (_, false) => desk.label(Label::NotReadyOffline),
        };
        text.to_owned()
    };
    let kept = if address::from_disk() { desk.label(DeviceLabel::KeptByBrowser) } else { desk.label(Label::KeptHere) };
    el("footer", "foot")
        .kid(el("span", "foot-offline").says(offline))
        .kid(el("span", "").text(kept))
        .kid(el("span", "").text(desk.label(Label::PlanningAid)))
        .kid(el("span", "foot-build").text(desk.label(Label::Build)).text(" ").text(&build))
}
