//! What a page keeps is erased by somebody else: under the open page, in one place, in both, between two visits.

use serde_json::json;

use crate::browser::{Screen, visit};
use crate::filter;
use crate::page::{Page, Role};
use crate::site::Site;

const EMPTIED: &str = "What this browser kept was erased while the page was open.";
const ALL_GONE: &str = "There were jobs in this browser, and they are gone";

/// Deletes the journal, as a browser does: every connection is told to let go first.
async fn wipe_journal(page: &Page) {
    let delete = "const done = arguments[arguments.length - 1]; const r = indexedDB.deleteDatabase('bedwright'); \
                  r.onsuccess = () => done('gone'); r.onerror = () => done('error'); r.onblocked = () => done('blocked');";
    let done = page.session().execute_async(delete, vec![]).await.unwrap();
    assert_eq!(done.json(), &json!("gone"));
}

/// Goes to a file of the same origin where no page runs, and asks nothing of what the browser says of that.
async fn leave(page: &Page, site: &Site) {
    page.no_complaints().await;
    page.session().goto(&format!("{}job.schema.json", site.address())).await.unwrap();
    page.script("localStorage.clear();").await;
    // It looks for an icon there.
    tokio::time::sleep(std::time::Duration::from_millis(300)).await;
    page.complaints().await;
}

async fn two_jobs(page: &Page) -> [String; 2] {
    filter::new_job(page, "Left alone").await;
    page.enter("Notes", "typed before").await;
    let first = page.fragment().await;
    page.open("#/jobs").await;
    filter::new_job(page, "Worked on").await;
    page.reload().await;
    [first, page.fragment().await]
}

async fn both_are_there(page: &Page, jobs: &[String; 2], notes: &str) {
    page.open(&jobs[0]).await;
    page.find(Role::Button, "Add a vessel").await;
    assert_eq!(page.entered("Notes").await, "typed before");
    page.open(&jobs[1]).await;
    page.until("the other job", "document.querySelector('h1, main').innerText !== ''").await;
    assert_eq!(page.entered("Notes").await, notes);
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn local_storage_wiped_under_an_open_page_is_filled_again_and_said() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        let jobs = two_jobs(&page).await;
        page.enter("Notes", "a change").await;
        // A text that was on its way comes in after the wipe.
        page.script(
            "const ways = localStorage.getItem('bedwright/person'); localStorage.clear(); \
             localStorage.setItem('bedwright/person', ways);",
        )
        .await;
        page.enter("Notes", "after the wipe").await;
        page.says(EMPTIED).await;
        tokio::time::sleep(std::time::Duration::from_millis(500)).await;
        // The journal alone would bring it back as well: it is taken away, so that the first place must have it.
        wipe_journal(&page).await;
        page.reload().await;
        both_are_there(&page, &jobs, "after the wipe").await;
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_journal_wiped_under_an_open_page_loses_nothing() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        let jobs = two_jobs(&page).await;
        wipe_journal(&page).await;
        page.enter("Notes", "after the wipe").await;
        page.reload().await;
        both_are_there(&page, &jobs, "after the wipe").await;
        // By now the journal was filled again: it alone brings everything back.
        leave(&page, &site).await;
        page.session().goto(&site.address()).await.unwrap();
        page.started().await;
        both_are_there(&page, &jobs, "after the wipe").await;
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn both_wiped_between_two_visits_is_said_and_the_page_starts() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        assert!(!page.text().await.contains(ALL_GONE), "nobody was here before");
        two_jobs(&page).await;
        leave(&page, &site).await;
        wipe_journal(&page).await;
        page.session().goto(&site.address()).await.unwrap();
        page.started().await;
        page.says(ALL_GONE).await;
        page.says("No job on this device yet.").await;
        page.fits_its_width().await;
        page.press("Dismiss").await;
        filter::new_job(&page, "Begun anew").await;
        page.reload().await;
        assert_eq!(page.entered("Job").await, "Begun anew");
        assert!(!page.text().await.contains(ALL_GONE));
        page.no_complaints().await;
    })
    .await;
}
