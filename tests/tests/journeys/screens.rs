//! Every screen: on the narrowest width, for a screen reader, in light and dark, without a complaint of the browser.

use crate::axe;
use crate::browser::{Screen, visit};
use crate::filter;
use crate::page::{Page, Role};
use crate::site::Site;

async fn every_screen_fits(page: Page) {
    page.started().await;
    page.fits_its_width().await;
    for screen in filter::screens(&page).await {
        page.open(&screen).await;
        page.fits_its_width().await;
    }
    // With what is widest opened: an empty vessel, every figure's grounds, a mistake under a field.
    page.open("#/jobs").await;
    filter::planned(&page, "As narrow as it gets, with a title that is rather longer than the screen is wide").await;
    page.script("document.querySelectorAll('details').forEach((each) => { each.open = true; });").await;
    page.enter("Wall", "abc").await;
    page.settled().await;
    page.fits_its_width().await;
    page.enter("Inside depth", "1,234").await;
    page.settled().await;
    page.fits_its_width().await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn no_screen_is_wider_than_320_pixels() {
    let site = Site::serve();
    visit(Screen::Narrow, &site.address(), every_screen_fits).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn no_screen_is_wider_than_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), every_screen_fits).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn no_screen_is_wider_than_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), every_screen_fits).await;
}

async fn no_screen_has_a_barrier(page: Page) {
    page.started().await;
    let screens = filter::screens(&page).await;
    let mut found = Vec::new();
    for theme in ["Light", "Dark"] {
        page.open("#/settings").await;
        page.click(Role::Radio, theme).await;
        page.until(theme, &format!("document.documentElement.dataset.theme === '{}'", theme.to_lowercase())).await;
        for screen in &screens {
            page.open(screen).await;
            found.extend(axe::barriers(&page).await.into_iter().map(|barrier| format!("{theme} {screen}: {barrier}")));
        }
    }
    page.open(&screens[2]).await;
    page.enter("Wall", "abc").await;
    page.script("document.querySelectorAll('details').forEach((each) => { each.open = true; });").await;
    page.settled().await;
    found.extend(axe::barriers(&page).await.into_iter().map(|barrier| format!("opened: {barrier}")));
    assert!(found.is_empty(), "axe:\n{}", found.join("\n"));
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn no_screen_has_a_barrier_in_light_and_dark_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), no_screen_has_a_barrier).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn no_screen_has_a_barrier_in_light_and_dark_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), no_screen_has_a_barrier).await;
}
