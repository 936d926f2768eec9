//! Names in every script: pictures, letters from right to left, letters put together, marks that turn the direction. They go
//! through job, vessel, tag, paper and file, and come out letter for letter; and never turn the words around them.

use serde_json::json;

use crate::browser::{Screen, visit};
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::paper::{self, Paper};
use crate::site::Site;

/// A face made of three signs, Arabic with its own digits, Hebrew, a letter and its accent apart, and a mark that turns what
/// follows it and is never closed (Unicode Standard Annex 9, explicit directional overrides).
const TITLE: &str = "🧑‍🔧🚰 مرشح الماء ١٢ · מסנן · e\u{301} · \u{202e}abc";
const CUSTOMER: &str = "شركة المياه 💧";
const TAG: &str = "מסנן-1 🧯";

/// Where the first of some words of ours stand left of the second, on one line.
async fn stands_left_of(page: &Page, first: &str, second: &str) -> bool {
    let read = "const at = (words) => { \
          const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT); \
          while (walker.nextNode()) { const from = walker.currentNode.data.indexOf(words); if (from < 0) continue; \
            const range = document.createRange(); range.setStart(walker.currentNode, from); range.setEnd(walker.currentNode, from + words.length); \
            const box = range.getBoundingClientRect(); if (box.width > 0) return box; } return null; }; \
        const [a, b] = [at(arguments[0]), at(arguments[1])]; return Boolean(a && b && a.left < b.left);";
    page.session().execute(read, vec![json!(first), json!(second)]).await.unwrap().json() == &json!(true)
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn names_in_every_script_go_through_job_vessel_paper_and_file_letter_for_letter() {
    let site = Site::serve();
    let folder = Folder::new("scripts");
    let mut file = (String::new(), String::new());
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        page.press("New job").await;
        // A key for each sign is more than a keyboard has: put in as a keypad of signs does.
        let put = async |field: &str, text: &str| {
            page.find(Role::Textbox, field).await.focus().await.unwrap();
            page.script("document.activeElement.select();").await;
            page.session().cdp().send_raw("Input.insertText", json!({ "text": text })).await.unwrap();
            page.settled().await;
        };
        put("Job", TITLE).await;
        put("Customer", CUSTOMER).await;
        let job = page.fragment().await;
        page.press("Add a vessel").await;
        page.find(Role::Heading, "Layers").await;
        put("Tags", TAG).await;
        page.enter("Nominal size", "12x52").await;
        page.fits_its_width().await;
        page.reload().await;
        assert_eq!(page.entered("Tags").await, TAG);
        page.open(&job).await;
        assert_eq!(
            (page.entered("Job").await, page.entered("Customer").await),
            (TITLE.to_owned(), CUSTOMER.to_owned())
        );
        // Every paper says them, and prints.
        for screen in ["survey-sheet", "calculation", "bill", "quote", "picking", "labels", "loading"] {
            page.open(&format!("{job}/{screen}")).await;
            page.settled().await;
            page.fits_its_width().await;
            let text = page.text().await;
            assert!(!text.contains("Bedwright has stopped"), "{screen}");
            if ["survey-sheet", "calculation"].contains(&screen) {
                let said = page.script("return document.querySelector('.sheets-shown').textContent;").await;
                let said = said.as_str().unwrap();
                for name in [TITLE, CUSTOMER, TAG] {
                    assert!(said.contains(name), "{screen} lacks “{name}”");
                }
            }
            assert!(!paper::sheets(&page, Paper::Letter).await.is_empty());
        }
        // A name that turns the direction turns nothing but itself.
        page.open(&job).await;
        page.open("#/jobs").await;
        page.says("abc").await;
        assert!(stands_left_of(&page, "Duplicate", "Delete").await);
        let date = page.script("return document.querySelector('.job-about').textContent;").await;
        assert!(date.as_str().unwrap().starts_with(&format!("\u{2068}{CUSTOMER}\u{2069} · ")), "{date}");
        page.open(&format!("{job}/send")).await;
        folder.takes_downloads(&page).await;
        page.press("Save the file").await;
        file = folder.downloaded().await;
        page.no_complaints().await;
    })
    .await;
    let path = folder.path().join(&file.0);
    std::fs::write(&path, &file.1).unwrap();
    visit(Screen::Desk, &format!("{}#/open", site.address()), async |page: Page| {
        page.started().await;
        page.pick_file("Choose a file", &path).await;
        page.press("Keep it on this device").await;
        page.until("it opens", "window.location.hash.startsWith('#/jobs/')").await;
        let job = page.fragment().await;
        let job = job.split('/').take(3).collect::<Vec<_>>().join("/");
        page.open(&job).await;
        assert_eq!(page.entered("Job").await, TITLE);
        assert_eq!(page.entered("Customer").await, CUSTOMER);
        page.says(TAG).await;
        page.no_complaints().await;
    })
    .await;
}
