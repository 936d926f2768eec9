//! The picture of the page that the README shows, taken of the sample job on a desk.
//!
//! `tests/run picture` puts it where the README looks for it; any other run takes it all the same, and lets it go.

use crate::browser::{Screen, visit};
use crate::folder::Folder;
use crate::page::Page;
use crate::site::Site;

async fn a_picture_is_taken(page: Page, to: std::path::PathBuf) {
    page.started().await;
    page.press("Sample job").await;
    page.settled().await;
    page.script("document.querySelector('.job-list a').click();").await;
    page.settled().await;
    page.until("the vessel's screen", "document.querySelector('.section-drawing') !== null").await;
    page.script("window.scrollTo(0, 0);").await;
    page.settled().await;
    let picture = page.session().screenshot_as_png().await.unwrap();
    // The signature of a PNG (PNG specification, 5.2), and more in it than one colour could take.
    assert!(picture.starts_with(&[0x89, b'P', b'N', b'G']) && picture.len() > 20_000, "{} bytes", picture.len());
    std::fs::write(&to, picture).unwrap();
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_picture_of_the_readme_can_be_taken() {
    let site = Site::serve();
    let spare = Folder::new("picture");
    let to = std::env::var_os("BEDWRIGHT_PICTURE").map_or_else(|| spare.path().join("vessel.png"), Into::into);
    visit(Screen::Desk, &site.address(), async |page: Page| a_picture_is_taken(page, to.clone()).await).await;
}
