//! One job in several tabs: one works, the others follow, and none overwrites what another typed.

use bedwright_job::backup::{backup_text, read_backup};
use bedwright_job::sections::head::TextField;
use bedwright_job::{Edit, apply};
use serde_json::{Value, json};
use thirtyfour::prelude::*;

use crate::browser::{Screen, visit};
use crate::filter;
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::site::Site;

const FOLLOWS: &str = "This job is open in another tab.";
const TAKEN: &str = "Another tab took this job over. What was typed here is kept.";
const LATER: &str = "A later version of Bedwright has written here.";

/// Opens an address in a tab of its own and goes there; the tab.
async fn another(page: &Page, address: &str) -> WindowHandle {
    let tab = page.session().new_tab().await.unwrap();
    go(page, &tab).await;
    page.session().goto(address).await.unwrap();
    page.started().await;
    tab
}

async fn go(page: &Page, tab: &WindowHandle) {
    page.session().switch_to_window(tab.clone()).await.unwrap();
}

async fn quiet(page: &Page, words: &str) {
    page.until("it is no longer said", &format!("!document.body.innerText.includes({})", json!(words))).await;
}

/// What is kept of the open job's head.
async fn head(page: &Page) -> Value {
    let key = format!("{}/head", page.fragment().await.replace("#/jobs/", "bedwright/job/"));
    let text = page.script(&format!("return localStorage.getItem({});", json!(key))).await;
    serde_json::from_str(text.as_str().unwrap()).unwrap()
}

/// Waits until a field holds a text.
async fn holds(page: &Page, field: &str, text: &str) {
    for _ in 0..100 {
        if page.entered(field).await == text {
            return;
        }
        tokio::time::sleep(std::time::Duration::from_millis(50)).await;
    }
    assert_eq!(page.entered(field).await, text);
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_second_tab_is_told_follows_and_takes_over_by_a_tap() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        filter::new_job(&page, "In two tabs").await;
        page.enter("Notes", "first").await;
        page.reload().await;
        assert!(!page.text().await.contains(FOLLOWS), "a page loaded anew is no other tab");
        let (first, address) = (page.session().window().await.unwrap(), page.session().current_url().await.unwrap());
        let second = another(&page, address.as_str()).await;
        page.says(FOLLOWS).await;
        // Nothing typed here takes the place of what is typed there.
        page.enter("Notes", "second, refused").await;
        holds(&page, "Notes", "first").await;
        go(&page, &first).await;
        assert!(!page.text().await.contains(FOLLOWS));
        page.enter("Notes", "first, and more").await;
        page.enter("Customer", "Seen live").await;
        // The second shows it without being touched.
        go(&page, &second).await;
        holds(&page, "Customer", "Seen live").await;
        assert_eq!(page.entered("Notes").await, "first, and more");
        // Typed in the first tab at the very moment the second takes over: it is there.
        go(&page, &first).await;
        page.find(Role::Textbox, "Site").await.send_keys("typed last").await.unwrap();
        go(&page, &second).await;
        page.press("Work here instead").await;
        quiet(&page, FOLLOWS).await;
        assert_eq!(page.entered("Site").await, "typed last");
        page.enter("Notes", "second now").await;
        go(&page, &first).await;
        page.says(TAKEN).await;
        holds(&page, "Notes", "second now").await;
        page.enter("Notes", "refused in the first").await;
        holds(&page, "Notes", "second now").await;
        // The other tab is closed: the next try finds the job free.
        go(&page, &second).await;
        page.session().close_window().await.unwrap();
        go(&page, &first).await;
        page.enter("Notes", "maybe refused").await;
        quiet(&page, FOLLOWS).await;
        page.enter("Notes", "first again").await;
        page.reload().await;
        for (field, text) in [("Notes", "first again"), ("Site", "typed last"), ("Customer", "Seen live")] {
            assert_eq!(page.entered(field).await, text);
        }
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn another_job_is_free_and_an_erased_one_is_gone_in_every_tab() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        filter::new_job(&page, "First").await;
        let (first, address) = (page.session().window().await.unwrap(), page.session().current_url().await.unwrap());
        let root = address.as_str().split('#').next().unwrap().to_owned();
        another(&page, &root).await;
        filter::new_job(&page, "Second").await;
        page.enter("Notes", "another job").await;
        assert!(!page.text().await.contains(FOLLOWS));
        // The list of jobs follows too.
        page.open("#/jobs").await;
        let titles = page.script("return [...document.querySelectorAll('.job-title')].map((e) => e.innerText);").await;
        let at = titles.as_array().unwrap().iter().position(|title| title == "First").unwrap();
        page.find_at(Role::Button, "Delete", at).await.click().await.unwrap();
        page.press("Erase for good").await;
        page.until("one job", "document.querySelectorAll('.job-line').length === 1").await;
        go(&page, &first).await;
        page.until("it is gone", "!document.querySelector('main input')").await;
        page.reload().await;
        page.open("#/jobs").await;
        page.until("one job", "document.querySelectorAll('.job-line').length === 1").await;
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_tab_that_meets_a_later_format_stops_writing_and_says_so() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        filter::new_job(&page, "Of the older page").await;
        page.enter("Notes", "before").await;
        page.reload().await;
        let (first, address) = (page.session().window().await.unwrap(), page.session().current_url().await.unwrap());
        let root = address.as_str().split('#').next().unwrap().to_owned();
        // A later page stands in for itself: it writes the number of its format.
        another(&page, &root).await;
        page.script("localStorage.setItem('bedwright/format', JSON.stringify({ revision: { counter: 99 } }));").await;
        go(&page, &first).await;
        page.says(LATER).await;
        let before = head(&page).await;
        page.enter("Notes", "after").await;
        holds(&page, "Notes", "before").await;
        tokio::time::sleep(std::time::Duration::from_millis(500)).await;
        assert_eq!(head(&page).await, before);
        // The same page loaded anew is still the older one.
        page.reload().await;
        page.says(LATER).await;
        assert_eq!(page.entered("Notes").await, "before");
        page.enter("Notes", "after").await;
        tokio::time::sleep(std::time::Duration::from_millis(500)).await;
        assert_eq!(head(&page).await, before);
        let format = page.script("return localStorage.getItem('bedwright/format');").await;
        assert!(format.as_str().unwrap().contains("99"), "{format}");
        page.no_complaints().await;
    })
    .await;
}

/// A backup is taken in by one tab while another one works on one of its jobs, typing at the very moment of the tap: both states
/// are there afterwards, and what was typed stays where it was typed.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_restore_loses_nothing_of_what_another_tab_types_meanwhile() {
    let site = Site::serve();
    let (downloads, files) = (Folder::new("downloads"), Folder::new("files"));
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        downloads.takes_downloads(&page).await;
        let mut addresses = Vec::new();
        for title in ["Worked on", "Left alone"] {
            page.open("#/jobs").await;
            filter::new_job(&page, title).await;
            addresses.push(page.fragment().await);
        }
        page.open("#/backup").await;
        page.press("Save a backup").await;
        let (_, text) = downloads.downloaded().await;
        let mut backup = read_backup(&text).unwrap();
        for job in &mut backup.jobs {
            let device = job.head.revision.as_ref().unwrap().device.clone();
            apply(job, Edit::Text { field: TextField::Notes, text: "went on".to_owned() }, &device).unwrap();
        }
        let file = files.path().join("backup.json");
        std::fs::write(&file, backup_text(&backup)).unwrap();
        page.open(&addresses[0]).await;
        page.find(Role::Button, "Add a vessel").await;
        // At the moment of the tap in the other tab: so shortly before that nothing of it is in storage yet.
        let types = format!(
            "new BroadcastChannel('tap').onmessage = () => {{ const field = [...document.querySelectorAll('label')] \
               .find((label) => label.innerText.startsWith('Customer')).control; field.value = {}; \
               field.dispatchEvent(new Event('input', {{ bubbles: true }})); }};",
            json!("typed at the tap")
        );
        page.script(&types).await;
        let (first, address) = (page.session().window().await.unwrap(), page.session().current_url().await.unwrap());
        let root = address.as_str().split('#').next().unwrap().to_owned();
        let second = another(&page, &format!("{root}#/backup")).await;
        page.pick_file("Try a backup", &file).await;
        page.find(Role::Heading, "What the backup would do").await;
        let tells = "document.addEventListener('pointerdown', () => { const until = performance.now() + 40; \
                     new BroadcastChannel('tap').postMessage(1); while (performance.now() < until); }, true);";
        page.script(tells).await;
        page.press("Take it in").await;
        page.says("Taken in. Jobs that came or changed: 2.").await;
        go(&page, &first).await;
        holds(&page, "Customer", "typed at the tap").await;
        // It can be worked on as before.
        page.enter("Site", "typed after").await;
        holds(&page, "Site", "typed after").await;
        page.reload().await;
        page.find(Role::Button, "Add a vessel").await;
        assert_eq!(page.entered("Customer").await, "typed at the tap");
        assert_eq!(page.entered("Site").await, "typed after");
        go(&page, &second).await;
        page.reload().await;
        page.open(&addresses[1]).await;
        page.find(Role::Button, "Add a vessel").await;
        assert_eq!(page.entered("Notes").await, "went on");
        // Wherever the other state of the first is, it is somewhere: joined into it, or beside it.
        page.open("#/jobs").await;
        page.until("three jobs", "document.querySelectorAll('.job-line').length === 3").await;
        page.session().query(By::PartialLinkText("Worked on (backup of")).first().await.unwrap().click().await.unwrap();
        page.find(Role::Button, "Add a vessel").await;
        assert_eq!(page.entered("Notes").await, "went on");
        page.no_complaints().await;
    })
    .await;
}
