//! How long the bed lasts, asked on the page: a bed of calcite on soft sour water, with a hardness typed so that it could
//! mean two things, and the same on paper.

use crate::browser::{Screen, visit};
use crate::filter;
use crate::page::{Page, Role};
use crate::site::Site;

async fn open_every_fold(page: &Page) {
    page.script("document.querySelectorAll('details').forEach((each) => { each.open = true; });").await;
    page.settled().await;
}

async fn calcite_says_how_long_it_lasts(page: Page) {
    page.started().await;
    let job = filter::planned(&page, "Sour well").await;
    let material = page.find_at(Role::Combobox, "Material", 0).await;
    page.pick_from(&material, "Material", "Calcite 16×40").await;
    page.enter("Service flow of the site", "2").await;
    page.find(Role::Heading, "Media life").await;
    page.says("To say how long it lasts, type:").await;
    open_every_fold(&page).await;
    for (name, text) in
        [("Water used a day", "300"), ("pH", "6.2"), ("Alkalinity", "30"), ("Calcium, or all hardness", "25 mg/L")]
    {
        page.enter(name, text).await;
    }
    // Of calcium, or of calcium carbonate? Asked, not guessed; the backwash stays as it was.
    let asked = page.described("Calcium, or all hardness").await;
    assert!(asked.contains("as calcium carbonate, or as the ion?"), "{asked}");
    page.says("Waits for an entry that makes no sense yet").await;
    page.enter("Calcium, or all hardness", "25 mg/L CaCO3").await;
    page.says("25 mg/L CaCO₃ = 1.5 gr/gal = 1.4 °dH = 2.5 °fH").await;
    page.says("so much has dissolved that it is filled up").await;
    page.says("a pH higher by 0.1 makes it").await;
    page.says("bags or sacks").await;
    page.says("Outlet pH").await;
    page.fits_its_width().await;
    // It is kept, and stands on the calculation sheet.
    page.settled().await;
    page.reload().await;
    page.find(Role::Heading, "Media life").await;
    open_every_fold(&page).await;
    assert_eq!(page.entered("Calcium, or all hardness").await, "25 mg/L CaCO3");
    page.open(&format!("{job}/calculation")).await;
    page.says("Calcite it takes up in this bed").await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn calcite_says_how_long_it_lasts_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), calcite_says_how_long_it_lasts).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn calcite_says_how_long_it_lasts_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), calcite_says_how_long_it_lasts).await;
}
