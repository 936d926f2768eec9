//! Pictures of the page, taken of the sample job: the one that the README shows, and those that a browser shows where it
//! offers to install the page.
//!
//! `tests/run picture` puts them where they belong; any other run takes them all the same, and lets them go.

use std::path::PathBuf;

use crate::browser::{Screen, turn_to, visit};
use crate::folder::Folder;
use crate::page::Page;
use crate::site::Site;

/// Opens the sample's first vessel.
async fn vessel(page: &Page) {
    page.started().await;
    page.press("Sample job").await;
    page.settled().await;
    page.script("document.querySelector('.job-list a').click();").await;
    page.settled().await;
    page.until("the vessel's screen", "document.querySelector('.section-drawing') !== null").await;
    page.script("window.scrollTo(0, 0);").await;
    page.settled().await;
}

/// Takes a picture of what is in the window; its width and height.
async fn taken(page: &Page, to: &PathBuf) -> [u32; 2] {
    let picture = page.session().screenshot_as_png().await.unwrap();
    // The signature of a PNG (PNG specification, 5.2), and more in it than one colour could take.
    assert!(picture.starts_with(&[0x89, b'P', b'N', b'G']) && picture.len() > 20_000, "{} bytes", picture.len());
    std::fs::write(to, &picture).unwrap();
    // Width and height stand at bytes 16 to 23 (11.2.1 IHDR).
    [16, 20].map(|at| u32::from_be_bytes(picture[at..at + 4].try_into().unwrap()))
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_pictures_of_the_readme_and_of_the_manifest_can_be_taken() {
    let site = Site::serve();
    let spare = Folder::new("picture");
    let place = |asked: &str, name: &str| {
        std::env::var_os(asked).map_or_else(|| spare.path().join(name), |folder| PathBuf::from(folder).join(name))
    };
    visit(Screen::Desk, &site.address(), async |page: Page| {
        vessel(&page).await;
        taken(&page, &place("BEDWRIGHT_PICTURES", "vessel.png")).await;
        assert_eq!(taken(&page, &place("BEDWRIGHT_SCREENS", "desk.png")).await, [1280, 900]);
        page.no_complaints().await;
    })
    .await;
    visit(Screen::Phone, &site.address(), async |page: Page| {
        vessel(&page).await;
        turn_to(&page, 390, 844, 2).await;
        page.settled().await;
        assert_eq!(taken(&page, &place("BEDWRIGHT_SCREENS", "phone.png")).await, [780, 1688]);
        page.no_complaints().await;
    })
    .await;
}
