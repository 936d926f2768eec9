//! The page opens.

use crate::axe;
use crate::browser::{Screen, visit};
use crate::page::{Page, Role};
use crate::paper::{self, Paper};
use crate::site::Site;

async fn opens(page: Page) {
    page.started().await;
    // A page without a heading has not opened, whatever else is there.
    page.until("a heading", "document.querySelector('h1') && document.querySelector('h1').innerText.trim() !== ''")
        .await;
    assert!(!page.names(Role::Heading).await.is_empty(), "no heading that a screen reader is told of");
    assert!(!page.has(Role::Heading, "Something went wrong").await);
    page.fits_its_width().await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_page_opens_on_a_phone_without_a_complaint() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), opens).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_page_opens_on_a_desk_without_a_complaint() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), opens).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_first_screen_has_no_barrier_that_a_program_can_find() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        axe::no_barriers(&page).await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_is_on_screen_can_be_printed_and_read_back() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        let heading = page.names(Role::Heading).await.remove(0);
        for size in [Paper::A4, Paper::Letter] {
            let sheets = paper::sheets(&page, size).await;
            assert!(sheets.iter().any(|sheet| sheet.contains(&heading)), "{size:?}: no “{heading}” in {sheets:?}");
        }
    })
    .await;
}

/// The content security policy holds: a script from another origin is refused, and the test would see a refusal.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn nothing_is_fetched_from_elsewhere_even_if_asked() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        page.no_complaints().await;
        page.script("window.refused = ''; document.addEventListener('securitypolicyviolation', (e) => { window.refused = e.violatedDirective; }); \
             const script = document.createElement('script'); script.src = 'http://127.0.0.1:9/x.js'; document.body.append(script);")
            .await;
        page.until("a refusal", "window.refused.startsWith('script-src')").await;
        assert!(!page.complaints().await.is_empty(), "a refusal is a complaint");
    })
    .await;
}
