//! The page that shows when something broke: what was typed can be taken away.

use serde_json::Value;

use crate::axe;
use crate::browser::{Screen, Session, visit, visit_in};
use crate::engines::STOPS;
use crate::filter;
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::site::Site;

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn after_a_crash_the_jobs_can_be_downloaded_and_are_there_again_after_a_reload() {
    let site = Site::serve();
    let folder = Folder::new("downloads");
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        folder.takes_downloads(&page).await;
        filter::new_job(&page, "Before the crash").await;
        page.enter("Notes", "typed a moment before").await;
        page.settled().await;
        page.script("window.bedwrightCrash('a bug, made for a test');").await;
        page.find(Role::Heading, "Bedwright has stopped").await;
        page.says("Nothing was deleted.").await;
        axe::no_barriers(&page).await;
        page.fits_its_width().await;
        // It reads the journal before it can give it.
        tokio::time::sleep(std::time::Duration::from_millis(500)).await;
        page.press("Download my jobs").await;
        let (name, text) = folder.downloaded().await;
        assert!(name.starts_with("bedwright-rescue-"), "{name}");
        let rescue: Value = serde_json::from_str(&text).unwrap();
        assert_eq!(rescue["format"], "bedwright-rescue");
        let journal = rescue["journal"].to_string();
        assert!(journal.contains("typed a moment before") && journal.contains("Before the crash"), "{text}");
        page.press("Reload").await;
        page.started().await;
        page.find(Role::Button, "Add a vessel").await;
        assert_eq!(page.entered("Notes").await, "typed a moment before");
        page.no_complaints().await;
    })
    .await;
}

/// The browser takes a field away that still has the focus, and tells it that it was left.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn going_back_out_of_a_field_is_no_crash_and_keeps_what_was_typed() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        filter::new_job(&page, "Back out of a field").await;
        page.press("Add a vessel").await;
        let depth = page.find(Role::Textbox, "Inside depth").await;
        depth.send_keys("51").await.unwrap();
        page.session().back().await.unwrap();
        page.find(Role::Button, "Add a vessel").await;
        // The same out of a text about the job.
        page.find(Role::Textbox, "Notes").await.send_keys("half a word").await.unwrap();
        page.session().forward().await.unwrap();
        page.find(Role::Heading, "Layers").await;
        assert_eq!(page.entered("Inside depth").await, "51");
        page.session().back().await.unwrap();
        page.find(Role::Button, "Add a vessel").await;
        assert_eq!(page.entered("Notes").await, "half a word");
        page.no_complaints().await;
    })
    .await;
}

/// What stands outside the wasm speaks the language that was chosen; before anything was chosen, the browser's.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_page_stops_and_refuses_in_the_persons_language() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        page.open("#/settings").await;
        page.click(Role::Radio, "Español").await;
        page.find(Role::Heading, "Ajustes").await;
        tokio::time::sleep(std::time::Duration::from_millis(500)).await;
        for round in ["where it was chosen", "after a reload"] {
            page.script("window.bedwrightCrash('a bug, made for a test');").await;
            page.find(Role::Heading, "Bedwright se ha detenido").await;
            page.find(Role::Button, "Descargar mis trabajos").await;
            page.says("No se borró nada.").await;
            let language = page.script("return document.documentElement.lang;").await;
            assert_eq!(language, "es", "{round}");
            axe::no_barriers(&page).await;
            page.fits_its_width().await;
            page.press("Volver a cargar").await;
            page.started().await;
        }
    })
    .await;
    let old = "delete window.WebAssembly; Object.defineProperty(navigator, 'languages', { get: () => ['de', 'fr-CA', 'en'] });";
    let kind = Session { before: Some(old), ..Session::on(Screen::Phone) };
    visit_in(kind, &site.address(), async |page: Page| {
        page.find(Role::Heading, "Bedwright ne peut pas démarrer dans ce navigateur").await;
        page.says("cherchez «\u{202f}Ouvrir dans le navigateur\u{202f}»").await;
        assert_eq!(page.script("return document.documentElement.lang;").await, "fr");
        axe::no_barriers(&page).await;
        page.fits_its_width().await;
    })
    .await;
}

/// An engine that stops in right code while nobody has touched the page costs a loading, not the page; a second time it is told.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_stops_before_a_touch_is_loaded_again_once() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        page.script("window.wentBefore = true;").await;
        page.script(STOPS).await;
        page.until("the page is another", "!window.wentBefore").await;
        page.started().await;
        page.find(Role::Button, "New job").await;
        page.script(STOPS).await;
        page.find(Role::Heading, "Bedwright has stopped").await;
        page.press("Reload").await;
        page.started().await;
        page.press("New job").await;
        page.find(Role::Button, "Add a vessel").await;
        // Somebody works on it: it is told at once.
        page.script("sessionStorage.clear();").await;
        page.script(STOPS).await;
        page.find(Role::Heading, "Bedwright has stopped").await;
        page.complaints().await;
    })
    .await;
}
