//! The bar above every screen: jobs, the open job, undo and redo, and a menu of everything there is to go to.

mod menu;

use menu::menu;
pub use menu::papers;

use bedwright_job::id::Id;
use bedwright_job::words::Label;

use crate::desk::Desk;
use crate::parts::live::{El, button, el};
use crate::parts::signal::Worked;
use crate::route::Route;

/// The bar.
pub fn top_bar(desk: Desk) -> El {
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
        .kid(menu(desk));
    // The job the address is about, once it is open.
    let open = Worked::new(move || desk.job_here().map(|job| job.to_string()));
    let title = move || {
        let title = desk.of_job(|job| job.head.body.title.clone());
        if title.is_empty() { desk.label(Label::Untitled).to_owned() } else { title }
    };
    let of_job = move |id: &str| {
        let address = Route::Job(Id::new(id)).address();
        el("a", "top-title")
            .set("href", &address)
            .tells("aria-current", here(desk, Route::Job(Id::new(id))))
            .says(title)
    };
    let jobs = el("nav", "top-jobs").set("aria-label", desk.label(Label::Jobs)).kid(
        el("a", "")
            .set("href", &Route::Jobs.address())
            .tells("aria-current", here(desk, Route::Jobs))
            .text(desk.label(Label::Jobs)),
    );
    el("header", "top")
        .kid(jobs)
        .live(move || open.with(|open| open.as_deref().map(of_job)).into_iter().collect())
        .kid(tools)
}

/// Tells that an address is the one shown.
fn here(desk: Desk, route: Route) -> impl Fn() -> Option<String> {
    move || (desk.route.get() == route).then(|| "page".to_owned())
}
