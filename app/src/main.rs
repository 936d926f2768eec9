//! The page: what is shown and tapped. Engineering, documents and words come from elsewhere.

mod app;
mod backup;
mod bill;
mod calculation;
mod desk;
mod due;
mod job;
mod jobs;
mod labels;
mod language;
mod loading;
mod notices;
mod packs;
mod parts;
mod person;
mod picking;
mod prices;
mod quote;
mod receive;
mod route;
mod search;
mod send;
mod service;
mod settings;
mod sure;
mod survey_sheet;
mod top;
mod vessel;

fn main() {
    bedwright_edge::crash::install();
    // Leptos has no executor before the first mount.
    wasm_bindgen_futures::spawn_local(async {
        let opened = desk::Opened::load().await;
        // Without them the page speaks English until they can be had.
        language::bring(opened.language()).await;
        leptos::mount::mount_to_body(move || app::app(opened));
    });
}
