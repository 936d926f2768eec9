//! The frame around every screen: top bar, notices, the screen itself, foot.

use bedwright_job::words::Label;
use leptos::prelude::*;

use crate::bill::BillPage;
use crate::desk::{Desk, Opened};
use crate::job::JobPage;
use crate::jobs::JobsPage;
use crate::notices::Notices;
use crate::person::Theme;
use crate::picking::PickingPage;
use crate::route::Route;
use crate::settings::SettingsPage;
use crate::survey_sheet::SurveySheetPage;
use crate::vessel::VesselPage;

/// The whole page.
#[component]
pub fn App(opened: Opened) -> impl IntoView {
    let desk = Desk::lay(opened);
    provide_context(desk);
    desk.empty_bin();
    // The theme is a mark on the root that the style sheet follows.
    Effect::new(move |_| {
        let theme = desk.person.with(|person| match person.theme {
            Theme::System => "system",
            Theme::Light => "light",
            Theme::Dark => "dark",
        });
        let root =
            web_sys::window().and_then(|window| window.document()).and_then(|document| document.document_element());
        if let Some(root) = root
            && root.set_attribute("data-theme", theme).is_err()
        {
            leptos::logging::warn!("theme not set");
        }
    });
    let found = move || desk.job.with(Option::is_some);
    let screen = move || match desk.route.get() {
        Route::Jobs => view! { <JobsPage /> }.into_any(),
        Route::Settings => view! { <SettingsPage /> }.into_any(),
        _ if !found() => view! {
            <main class="page">
                <p>{desk.label(Label::JobNotFound)}</p>
                <p><a class="action" href=Route::Jobs.address()>{desk.label(Label::BackToJobs)}</a></p>
            </main>
        }
        .into_any(),
        Route::Job(_) => view! { <JobPage /> }.into_any(),
        Route::Vessel(_, vessel) => view! { <VesselPage id=vessel /> }.into_any(),
        Route::Bill(_) => view! { <BillPage /> }.into_any(),
        Route::Picking(_) => view! { <PickingPage /> }.into_any(),
        Route::SurveySheet(_) => view! { <SurveySheetPage /> }.into_any(),
    };
    // The screen changes with the address and with which job is open, not with every edit.
    let which = Memo::new(move |_| (desk.route.get(), found()));
    view! {
        <TopBar />
        <Notices />
        {move || {
            which.get();
            untrack(screen)
        }}
        <Foot />
    }
}

#[component]
fn TopBar() -> impl IntoView {
    let desk = Desk::of();
    let title = move || {
        desk.job.with(|job| {
            job.as_ref().map(|job| {
                let title = job.head.body.title.clone();
                if title.is_empty() { desk.label(Label::Untitled).to_owned() } else { title }
            })
        })
    };
    let in_job = move || desk.route.with(|route| route.job().cloned());
    let link = move |route: Route, label: Label| {
        let address = route.address();
        let here = move || desk.route.get() == route;
        view! { <a href=address aria-current=move || here().then_some("page")>{desk.label(label)}</a> }
    };
    view! {
        <header class="top">
            <nav class="top-jobs" aria-label=move || desk.label(Label::Jobs)>
                {link(Route::Jobs, Label::Jobs)}
            </nav>
            {move || in_job().zip(title()).map(|(id, title)| view! {
                <a class="top-title" href=Route::Job(id.clone()).address()>{title}</a>
                <nav class="top-papers" aria-label=move || desk.label(Label::Paper)>
                    {link(Route::Bill(id.clone()), Label::BillOfMaterials)}
                    {link(Route::Picking(id.clone()), Label::PickList)}
                    {link(Route::SurveySheet(id), Label::SurveySheet)}
                </nav>
            })}
            <span class="top-tools">
                <Show when=move || in_job().is_some()>
                    <button type="button" class="quiet" disabled=move || !desk.can_undo() on:click=move |_| desk.undo()>
                        {move || desk.label(Label::Undo)}
                    </button>
                    <button type="button" class="quiet" disabled=move || !desk.can_redo() on:click=move |_| desk.redo()>
                        {move || desk.label(Label::Redo)}
                    </button>
                </Show>
                {link(Route::Settings, Label::Settings)}
            </span>
        </header>
    }
}

#[component]
fn Foot() -> impl IntoView {
    let desk = Desk::of();
    let build = web_sys::window()
        .and_then(|window| window.document())
        .and_then(|document| document.query_selector("meta[name=bedwright-build]").ok().flatten())
        .and_then(|meta| meta.get_attribute("content"))
        .unwrap_or_default();
    view! {
        <footer class="foot">
            <span class="foot-offline">
                {move || desk.label(if desk.offline.get() { Label::ReadyOffline } else { Label::NotReadyOffline })}
            </span>
            <span>{move || desk.label(Label::KeptHere)}</span>
            <span>{move || desk.label(Label::PlanningAid)}</span>
            <span class="foot-build">{move || desk.label(Label::Build)}" "{build.clone()}</span>
        </footer>
    }
}
