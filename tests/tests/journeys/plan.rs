//! A vessel planned from nothing: figures, bill, pick list.

use crate::browser::{Screen, visit};
use crate::filter::{self, TAPES};
use crate::page::{Page, Role};
use crate::site::Site;

async fn from_nothing_to_the_pick_list(page: Page) {
    page.started().await;
    filter::new_job(&page, "Plan from nothing").await;
    let job = page.fragment().await;
    filter::survey(&page).await;
    filter::layers(&page).await;
    page.says(TAPES[1]).await;
    let cards = filter::cards(&page).await;
    assert_eq!(cards.len(), 2, "{cards:?}");
    // Quantities by the volumes on the packs: 2 ft³ in bags of 1 ft³, 1/6 ft³ in bags of 1/2 ft³.
    assert!(cards[0].contains("2 bags") && cards[0].contains(TAPES[1]), "{cards:?}");
    assert!(cards[1].contains("1 bag ") && cards[1].contains(TAPES[0]), "{cards:?}");
    // After the first of two bags: 31.25 in, by hand as the others.
    assert!(cards[0].contains("31 1/4 in"), "{cards:?}");
    page.no_complaints().await;

    page.follow("Bill of materials").await;
    page.find(Role::Heading, "Pooled over the job").await;
    let pooled = page.find(Role::Table, "Pooled over the job").await.text().await.unwrap().replace('\n', " ");
    let line = |item: &str, quantity: &str| {
        let at = pooled.find(item).unwrap_or_else(|| panic!("no {item} in {pooled}"));
        assert!(pooled[at..].contains(quantity), "{item}: no {quantity} in {pooled}");
    };
    line("Coconut carbon 12×40", " 2 bags");
    line("Gravel 1/8 × 1/4 in", " 1 bag");

    page.follow("Pick list").await;
    page.find(Role::Heading, "Pick list").await;
    let ticks = page.names(Role::Checkbox).await;
    let picked = |start: &str| {
        assert!(ticks.iter().any(|tick| tick.starts_with(start)), "no “{start}” in {ticks:?}");
    };
    picked("Picked: 2 bags Coconut carbon 12×40");
    picked("Picked: 1 bag Gravel 1/8 × 1/4 in");

    page.open(&job).await;
    page.says("2 bags Coconut carbon 12×40").await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_vessel_is_planned_from_nothing_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), from_nothing_to_the_pick_list).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_vessel_is_planned_from_nothing_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), from_nothing_to_the_pick_list).await;
}
