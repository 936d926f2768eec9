//! The page with no connection: the server is really gone, since a switch in the browser would not reach the worker.

use crate::browser::{Screen, visit};
use crate::filter::{self, TAPES};
use crate::page::{Page, Role};
use crate::site::Site;

const READY: &str = "Ready offline";

/// It may complain that the worker's own script could not be asked for, and of nothing else.
async fn complains_of_the_worker_alone(page: &Page) {
    let complaints = page.complaints().await;
    assert!(complaints.iter().all(|complaint| complaint.contains("/sw.js")), "{complaints:?}");
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_page_opens_again_without_a_connection_and_keeps_what_is_typed() {
    let mut site = Site::serve();
    let address = site.address();
    visit(Screen::Phone, &address, async |page: Page| {
        page.started().await;
        page.ready_offline().await;
        page.says(READY).await;
        filter::planned(&page, "No signal").await;
        page.no_complaints().await;
        site.stop();
        // Nothing answers there any more.
        assert!(std::net::TcpStream::connect(address.trim_start_matches("http://").trim_end_matches('/')).is_err());
        page.reload().await;
        page.ready_offline().await;
        page.says(READY).await;
        page.says(TAPES[1]).await;
        // Every screen opens, and what is typed now is kept as well.
        page.enter("Inside depth", "51.5").await;
        page.follow("Pick list").await;
        page.find(Role::Heading, "Pick list").await;
        page.reload().await;
        page.find(Role::Heading, "Pick list").await;
        page.session().back().await.unwrap();
        page.find(Role::Heading, "Layers").await;
        assert_eq!(page.entered("Inside depth").await, "51.5");
        complains_of_the_worker_alone(&page).await;
    })
    .await;
}

/// The mark is not shown while any file is missing, and a file that goes missing takes it away at the next start.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_page_says_ready_offline_only_when_every_file_is_kept() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        page.ready_offline().await;
        page.says(READY).await;
        let missing = "const done = arguments[arguments.length - 1]; \
            (async () => { const name = (await caches.keys()).find((name) => name.startsWith('bedwright-')); \
              const cache = await caches.open(name); const kept = await cache.keys(); \
              const wasm = kept.find((request) => request.url.endsWith('.wasm')); \
              await cache.delete(wasm); return kept.length; })().then(done);";
        let kept = page.session().execute_async(missing, vec![]).await.unwrap().json().as_u64().unwrap();
        assert!(kept >= 5, "{kept} files");
        page.reload().await;
        page.until("not ready", "document.documentElement.dataset.offline === 'not-ready'").await;
        page.says("Not ready offline yet").await;
        assert!(!page.text().await.contains(READY));
        page.no_complaints().await;
    })
    .await;
}
