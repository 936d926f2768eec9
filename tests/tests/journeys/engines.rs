//! The main job in three engines, by what every WebDriver can do: planned from nothing, kept through a reload, opened with no
//! connection, taken back and brought again, saved as it was typed. `tests/run engines`.

use crate::browser::{patiently, visit_by};
use crate::driver::Engine;
use crate::filter::{self, TAPES};
use crate::page::{Page, Role};
use crate::site::Site;

/// Planned from nothing, with bill and pick list.
pub async fn planned_from_nothing(page: &Page) {
    page.started().await;
    // Units as the figures here are written, whatever the engine's own language.
    page.open("#/settings").await;
    page.click(Role::Radio, "Inches, cubic feet, pounds").await;
    page.open("#/jobs").await;
    let job = filter::planned(page, "Three engines").await;
    let cards = filter::cards(page).await;
    assert!(cards[0].contains("2 bags") && cards[0].contains(TAPES[1]), "{cards:?}");
    assert!(cards[1].contains("1 bag ") && cards[1].contains(TAPES[0]), "{cards:?}");
    page.follow("Bill of materials").await;
    page.find(Role::Heading, "Pooled over the job").await;
    page.follow("Pick list").await;
    page.find(Role::Heading, "Pick list").await;
    let ticks = page.names(Role::Checkbox).await;
    assert!(ticks.iter().any(|tick| tick.starts_with("Picked: 2 bags Coconut carbon 12×40")), "{ticks:?}");
    page.open(&job).await;
    page.says("2 bags Coconut carbon 12×40").await;
}

pub async fn to_the_vessel(page: &Page) {
    let to = page
        .script("return [...document.querySelectorAll('main a')].map((a) => a.getAttribute('href')).find((to) => to.includes('/vessels/'));")
        .await;
    page.open(to.as_str().unwrap()).await;
    page.find(Role::Heading, "Layers").await;
}

/// Whether both places hold a text a moment after it was typed: what is kept on the device, and the journal beside it.
pub async fn places_that_hold(page: &Page, text: &str) -> serde_json::Value {
    let kept = "const done = arguments[arguments.length - 1], text = arguments[0]; \
        const there = Object.keys(localStorage).some((key) => (localStorage.getItem(key) || '').includes(text)); \
        const open = indexedDB.open('bedwright'); \
        open.onerror = () => done([there, 'no journal']); \
        open.onsuccess = () => { \
          const all = open.result.transaction('journal').objectStore('journal').getAll(); \
          all.onsuccess = () => done([there, JSON.stringify(all.result).includes(text)]); };";
    tokio::time::sleep(std::time::Duration::from_secs(1)).await;
    page.session().execute_async(kept, vec![serde_json::json!(text)]).await.unwrap().json().clone()
}

/// The main job in one engine, the last part with the server gone.
async fn main_job(engine: Engine) {
    let mut site = Site::serve();
    let address = site.address();
    visit_by(engine, &address, async |page: Page| {
        planned_from_nothing(&page).await;
        to_the_vessel(&page).await;
        filter::holds(&page).await;
        // A mistake is said under its field and takes nothing away.
        page.enter("Inside depth", "abc").await;
        page.settled().await;
        assert!(page.described("Inside depth").await.trim_end().ends_with(['.', '?']));
        page.press("Undo").await;
        page.says(TAPES[1]).await;
        page.reload().await;
        page.find(Role::Heading, "Layers").await;
        filter::holds(&page).await;
        page.fits_its_width().await;
        page.ready_offline().await;
        site.stop();
        page.reload().await;
        page.find(Role::Heading, "Layers").await;
        filter::holds(&page).await;
        page.enter("Inside depth", "51.5").await;
        page.follow("Pick list").await;
        page.find(Role::Heading, "Pick list").await;
        page.reload().await;
        page.find(Role::Heading, "Pick list").await;
        page.session().back().await.unwrap();
        page.find(Role::Heading, "Layers").await;
        assert_eq!(page.entered("Inside depth").await, "51.5");
        assert_eq!(places_that_hold(&page, "51.5").await, serde_json::json!([true, true]));
    })
    .await;
}

/// Every screen of the sample job stands, without a word of a crash, and none is wider than the window.
async fn every_screen(engine: Engine) {
    let site = Site::serve();
    visit_by(engine, &site.address(), async |page: Page| {
        page.started().await;
        for screen in filter::screens(&page).await {
            page.open(&screen).await;
            page.until("a heading", "document.querySelector('main h1')").await;
            assert!(!page.has(Role::Heading, "Bedwright has stopped").await, "{screen}");
            page.fits_its_width().await;
        }
        // What a test's script throws in Firefox isn't of the page.
        if engine == Engine::WebKit {
            stops_by_itself(&page).await;
        }
    })
    .await;
}

/// Wasm that stops: (module (func (export "f") unreachable)), by the binary format of the WebAssembly Core Specification 5.5.
pub const STOPS: &str = "const bytes = [0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 3, 2, 1, 0, 7, 5, 1, 1, 102, 0, 0, 10, 5, 1, 3, 0, 0, 11]; \
        const made = new WebAssembly.Instance(new WebAssembly.Module(new Uint8Array(bytes))); \
        setTimeout(() => made.exports.f(), 0);";

/// Where the wasm stops without a word of its own, the page says what stopped it; not every engine puts that in the stack.
async fn stops_by_itself(page: &Page) {
    page.script(STOPS).await;
    page.find(Role::Heading, "Bedwright has stopped").await;
    let told = page.script("return document.querySelector('main textarea').value;").await;
    assert!(told.as_str().unwrap().contains("RuntimeError: "), "{told}");
}

/// An engine that changes to better code in the middle of a loop does it elsewhere at each loading: a window that was one
/// function with all its loops stopped WebKitGTK 2.50.6 at one loading in ten.
async fn stands_at_every_loading(engine: Engine) {
    let site = Site::serve();
    visit_by(engine, &site.address(), async |page: Page| {
        page.started().await;
        page.press("Sample job").await;
        page.find(Role::Button, "Add a vessel").await;
        to_the_vessel(&page).await;
        for loading in 0..40 {
            page.reload().await;
            page.find(Role::Heading, "Backwash").await;
            assert!(!page.has(Role::Heading, "Bedwright has stopped").await, "loading {loading}");
        }
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "needs Firefox: tests/run engines"]
async fn the_main_job_is_done_in_firefox() {
    patiently(Engine::Firefox, main_job).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "needs Firefox: tests/run engines"]
async fn every_screen_stands_in_firefox() {
    patiently(Engine::Firefox, every_screen).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "needs WebKit: tests/run engines"]
async fn the_main_job_is_done_in_webkit() {
    patiently(Engine::WebKit, main_job).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "needs WebKit: tests/run engines"]
async fn every_screen_stands_in_webkit() {
    patiently(Engine::WebKit, every_screen).await;
}

/// The same by plain WebDriver where most journeys go by Chromium's own protocol.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "part of tests/run engines"]
async fn the_main_job_is_done_in_chromium() {
    patiently(Engine::Chromium, main_job).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "needs WebKit: tests/run engines"]
async fn a_vessel_stands_at_every_loading_in_webkit() {
    patiently(Engine::WebKit, stands_at_every_loading).await;
}
