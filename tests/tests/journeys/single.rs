//! The page as one file, opened from disk: it does the main job, asks nobody for anything, keeps jobs through a reload, and
//! says where they stand. `tests/run engines` does the same in Firefox and WebKit.

use std::path::PathBuf;

use serde_json::json;

use crate::browser::{Screen, patiently, visit, visit_by};
use crate::driver::Engine;
use crate::engines::{places_that_hold, planned_from_nothing, to_the_vessel};
use crate::filter;
use crate::folder::Folder;
use crate::page::{Page, Role};

/// A copy of the file in a folder of its own, and its address: nobody opened it before.
fn copied(folder: &Folder) -> String {
    let built = std::env::var_os("BEDWRIGHT_SINGLE").map(PathBuf::from).unwrap_or_else(|| {
        panic!("BEDWRIGHT_SINGLE does not say where the single file is: run `tests/run page journeys`")
    });
    let file = folder.path().join("bedwright.html");
    std::fs::copy(&built, &file).unwrap_or_else(|error| panic!("{}: {error}", built.display()));
    format!("file://{}", file.display())
}

/// Every address the page asked for, but those of the browser's own memory.
async fn asked_for(page: &Page) -> serde_json::Value {
    page.script(
        "return performance.getEntriesByType('resource').map((entry) => entry.name) \
           .filter((name) => !name.startsWith('blob:') && !name.startsWith('data:'));",
    )
    .await
}

/// The main job in one engine.
async fn main_job(engine: Engine) {
    let folder = Folder::new("single");
    visit_by(engine, &copied(&folder), async |page: Page| {
        planned_from_nothing(&page).await;
        to_the_vessel(&page).await;
        filter::holds(&page).await;
        page.enter("Inside depth", "51.5").await;
        tokio::time::sleep(std::time::Duration::from_secs(1)).await;
        page.reload().await;
        page.find(Role::Heading, "Layers").await;
        assert_eq!(page.entered("Inside depth").await, "51.5");
        page.follow("Pick list").await;
        page.find(Role::Heading, "Pick list").await;
        page.session().back().await.unwrap();
        page.find(Role::Heading, "Layers").await;
        // Another language stands in the file too.
        page.open("#/settings").await;
        page.click(Role::Radio, "Français").await;
        page.says("Toute la page est dans ce fichier").await;
        page.says("Conservé par ce navigateur").await;
        page.fits_its_width().await;
        assert_eq!(asked_for(&page).await, json!([]));
        let kept = places_that_hold(&page, "51.5").await;
        println!("{engine:?}, from disk: local storage and journal hold what was typed: {kept}");
        assert_eq!(kept, json!([true, true]));
    })
    .await;
}

/// Opened a second time in the same browser, and as a copy elsewhere: what each shows is told, since engines differ.
async fn opened_elsewhere(engine: Engine) {
    let (folder, other) = (Folder::new("single-here"), Folder::new("single-there"));
    let (here, there) = (copied(&folder), copied(&other));
    visit_by(engine, &here, async |page: Page| {
        page.started().await;
        page.press("Sample job").await;
        page.find(Role::Button, "Add a vessel").await;
        tokio::time::sleep(std::time::Duration::from_secs(1)).await;
        let mut jobs = Vec::new();
        for address in ["about:blank", &here, "about:blank", &there] {
            page.session().goto(address).await.unwrap();
            if address != "about:blank" {
                page.started().await;
                jobs.push(page.script("return document.querySelectorAll('.job-list a').length;").await);
            }
        }
        println!("{engine:?}, from disk: jobs of the file {}, of a copy elsewhere {}", jobs[0], jobs[1]);
        assert_ne!(jobs[0], json!(0), "what was kept is gone when the file is opened again");
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_single_file_does_the_main_job_and_asks_nobody_for_anything() {
    let folder = Folder::new("single");
    visit(Screen::Phone, &copied(&folder), async |page: Page| {
        planned_from_nothing(&page).await;
        page.says("The whole page is in this file").await;
        to_the_vessel(&page).await;
        page.reload().await;
        filter::holds(&page).await;
        assert_eq!(asked_for(&page).await, json!([]));
        page.no_complaints().await;

        // The policy lets nothing in that isn't the file's own, and nothing out.
        let policy = page.script("return document.querySelector('meta[http-equiv]').content;").await;
        let policy = policy.as_str().unwrap();
        assert!(policy.contains("default-src 'none'") && policy.contains("script-src 'sha256-"), "{policy}");
        for open in ["unsafe-inline", "'unsafe-eval'", "'self'", "http", "*"] {
            assert!(!policy.contains(open), "{open}: {policy}");
        }
        let attempts = "const done = arguments[arguments.length - 1]; window.ran = []; const refused = []; \
            document.addEventListener('securitypolicyviolation', (e) => refused.push(e.effectiveDirective)); \
            const add = (tag, set) => { const e = document.createElement(tag); set(e); document.body.append(e); }; \
            add('script', (e) => { e.textContent = 'window.ran.push(\"inline\")'; }); \
            add('script', (e) => { e.src = 'http://127.0.0.1:9/x.js'; }); \
            add('img', (e) => { e.src = 'http://127.0.0.1:9/x.png'; }); \
            fetch('http://127.0.0.1:9/').then(() => window.ran.push('fetch'), () => setTimeout(() => done([window.ran, refused]), 300));";
        let found = page.session().execute_async(attempts, vec![]).await.unwrap().json().clone();
        assert_eq!(found[0], json!([]), "{found}");
        for what in ["script-src-elem", "img-src", "connect-src"] {
            assert!(found[1].as_array().unwrap().contains(&json!(what)), "{what}: {found}");
        }
        page.complaints().await;
    })
    .await;
}

/// What the page says of itself where it has no address.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_single_file_says_where_its_data_stands_and_sends_no_link_that_leads_nowhere() {
    let folder = Folder::new("single");
    visit(Screen::Desk, &copied(&folder), async |page: Page| {
        page.started().await;
        page.press("Sample job").await;
        page.find(Role::Button, "Add a vessel").await;
        let job = page.fragment().await;
        page.says("not in the file that was opened").await;
        page.open("#/backup").await;
        page.find(Role::Heading, "Opened from disk").await;
        page.open(&format!("{job}/send")).await;
        page.find(Role::Heading, "As a text").await;
        assert!(!page.has(Role::Heading, "As a link").await);
        let text = page.script("return document.querySelector('.send-way textarea').value;").await;
        let text = text.as_str().unwrap().to_owned();
        assert!(text.starts_with("#/open/") && !text.contains("file:"), "{}", &text[..40]);

        // The text leads somebody else there by pasting it.
        page.open("#/open").await;
        page.enter("Paste what you were sent", &text).await;
        page.press("Look at it").await;
        page.says("Sample").await;
        // The reader of codes stands in the file as well, and starts.
        let reads = "const done = arguments[arguments.length - 1]; \
            const worker = new Worker(document.querySelector('meta[name=bedwright-codes]').content); \
            worker.onmessage = (event) => done(event.data); worker.onerror = (event) => done(String(event.message)); \
            worker.postMessage({ pixels: new Uint8ClampedArray(64 * 64 * 4).fill(255).buffer, wide: 64, high: 64 });";
        let read = page.session().execute_async(reads, vec![]).await.unwrap().json().clone();
        assert_eq!(read, json!({ "texts": [] }));
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "part of tests/run engines"]
async fn the_single_file_does_the_main_job_in_chromium() {
    patiently(Engine::Chromium, main_job).await;
    patiently(Engine::Chromium, opened_elsewhere).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "needs Firefox: tests/run engines"]
async fn the_single_file_does_the_main_job_in_firefox() {
    patiently(Engine::Firefox, main_job).await;
    patiently(Engine::Firefox, opened_elsewhere).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "needs WebKit: tests/run engines"]
async fn the_single_file_does_the_main_job_in_webkit() {
    patiently(Engine::WebKit, main_job).await;
    patiently(Engine::WebKit, opened_elsewhere).await;
}
