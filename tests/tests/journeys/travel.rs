//! A job goes from one device to another: by a file, a message, a link; and comes back.

use bedwright_job::Job;
use bedwright_job::edit::{Edit, apply};
use bedwright_job::envelope::{Found, found};
use bedwright_job::id::Id;
use bedwright_job::prices::{PriceKind, PriceRow, amount};
use bedwright_job::saved::job_text;
use serde_json::json;
use std::sync::Arc;

use crate::browser::{Screen, visit};
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::site::Site;
use crate::stored;

/// A cost that stands nowhere else.
const COST: &str = "91.17";

/// The sample on a device; the address of its screens.
pub async fn sample(page: &Page) -> String {
    page.started().await;
    page.press("Sample job").await;
    page.until("the job opens", "window.location.hash.startsWith('#/jobs/')").await;
    page.fragment().await
}

/// What the link on the screen is.
pub async fn link(page: &Page) -> String {
    page.settled().await;
    page.entered("The link").await
}

/// Pastes a text where one is looked for.
pub async fn pasted(page: &Page, text: &str) {
    page.open("#/open").await;
    let put = format!(
        "const field = document.getElementById('pasted'); field.value = {}; field.dispatchEvent(new Event('input'));",
        json!(text)
    );
    page.script(&put).await;
    page.press("Look at it").await;
}

/// The job in a text that travels.
pub fn job_in(text: &str) -> Job {
    match found(text).unwrap() {
        Found::Job(came) => came.job,
        Found::Frames(frames) => panic!("{} frames", frames.len()),
    }
}

/// Saved here, dropped there: nothing is kept before a tap, then all is there, and it opens where the sender points.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_file_goes_from_a_phone_to_a_desk() {
    let site = Site::serve();
    let folder = Folder::new("sent");
    let mut file = (String::new(), String::new());
    visit(Screen::Phone, &site.address(), async |page: Page| {
        let job = sample(&page).await;
        page.follow("Send this job").await;
        page.find(Role::Heading, "Send this job").await;
        page.click(Role::Radio, "Who loads").await;
        page.enter("Your name", "R. Moss").await;
        page.says("Costs and margins stay here.").await;
        page.fits_its_width().await;
        folder.takes_downloads(&page).await;
        page.press("Save the file").await;
        file = folder.downloaded().await;
        assert!(page.fragment().await.starts_with(&job));
        page.no_complaints().await;
    })
    .await;
    let (name, text) = file;
    assert_eq!(name, "Quillmoss-Laundry--sample-.bedwright.txt");
    assert!(text.starts_with("Quillmoss Laundry (sample)\nSent by R. Moss.\nHolds: Vessels as surveyed;"), "{text}");
    visit(Screen::Desk, &format!("{}#/open", site.address()), async |page: Page| {
        page.started().await;
        let dropped = format!(
            "const carried = new DataTransfer(); carried.items.add(new File([{}], 'job.txt', {{ type: 'text/plain' }})); \
             document.querySelector('main').dispatchEvent(new DragEvent('drop', {{ dataTransfer: carried, bubbles: true, cancelable: true }}));",
            json!(text)
        );
        page.script(&dropped).await;
        page.find(Role::Heading, "Quillmoss Laundry (sample)").await;
        page.says("R. Moss, on ").await;
        page.says("This job isn't on this device yet.").await;
        assert_eq!(page.script("return Object.keys(localStorage).filter((key) => key.includes('/job/')).length;").await, json!(0));
        page.press("Keep it on this device").await;
        page.until("it opens at the loading", "window.location.hash.endsWith('/loading')").await;
        page.says("CF-1").await;
        page.reload().await;
        page.says("CF-1").await;
        page.no_complaints().await;
    })
    .await;
}

/// Both change what the other doesn't, and one text both: everything is shown, taken as chosen, and undone.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_comes_back_is_joined_line_by_line() {
    let site = Site::serve();
    let mut back = String::new();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        let job = sample(&page).await;
        page.open(&format!("{job}/send")).await;
        page.click(Role::Radio, "Who loads").await;
        let sent = link(&page).await;
        page.press("Copy the link").await;
        visit(Screen::Desk, &sent, async |page: Page| {
            page.started().await;
            page.find(Role::Heading, "This page was opened by a link").await;
            page.find(Role::Button, "Copy the code").await;
            page.press("Keep it on this device").await;
            page.until("it is kept", "window.location.hash.endsWith('/loading')").await;
            page.open(&job).await;
            page.enter("Notes", "Gate code at the office").await;
            page.enter("Customer", "Quillmoss and Daughters").await;
            page.open(&format!("{job}/send")).await;
            back = link(&page).await;
            page.no_complaints().await;
        })
        .await;
        page.open(&job).await;
        page.enter("Notes", "Call first").await;
        page.enter("Site", "Plant room, 9 Tarn Row").await;
        pasted(&page, &format!("Here it is back:\n{back}\nRegards, R.")).await;
        page.says("This job is on this device already.").await;
        // What only this side changed stays and needs no answer; it is shown all the same.
        for (what, chosen) in [("Customer", "Take what came"), ("Notes", "Keep mine"), ("Site", "Keep mine")] {
            let script = format!(
                "const set = [...document.querySelectorAll('.difference fieldset')].find((set) => set.querySelector('legend').innerText === '{what}'); \
                 return set ? set.querySelector('input:checked').parentElement.innerText.trim() : null;"
            );
            assert_eq!(page.script(&script).await, json!(chosen), "{what}");
        }
        page.fits_its_width().await;
        let both = "[...document.querySelectorAll('.difference fieldset')].find((set) => set.querySelector('legend').innerText === 'Notes') \
                    .querySelectorAll('input')[2].click();";
        page.script(both).await;
        assert_eq!(page.script("return document.querySelectorAll('.difference').length;").await, json!(3));
        page.press("Join the two").await;
        page.says("Joined.").await;
        page.open(&job).await;
        page.find(Role::Button, "Add a vessel").await;
        assert_eq!(page.entered("Customer").await, "Quillmoss and Daughters");
        assert_eq!(page.entered("Site").await, "Plant room, 9 Tarn Row");
        let notes = page.entered("Notes").await;
        assert!(notes.contains("Call first") && notes.contains("Gate code at the office"), "{notes}");
        page.press("Undo").await;
        page.settled().await;
        assert_eq!(page.entered("Notes").await, "Call first");
        assert_eq!(page.entered("Customer").await, "Quillmoss Laundry (invented)");
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn costs_stay_unless_they_are_ticked() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        let mut job = stored::ten_to_pick();
        let row = PriceRow {
            key: "part:tape".to_owned(),
            kind: PriceKind::Part,
            part_number: "TP-1".to_owned(),
            cost: amount(COST, '.').unwrap(),
            ..PriceRow::default()
        };
        apply(&mut job, Edit::Price { key: row.key.clone(), row: Some(Arc::new(row)) }, &Id::new("stored")).unwrap();
        stored::put(&page, &stored::texts(&job)).await;
        page.open(&format!("#/jobs/{}/send", job.id)).await;
        for receiver in ["The warehouse", "Who loads", "Who services", "The customer"] {
            page.click(Role::Radio, receiver).await;
            page.click(Role::Checkbox, "Quotes that were issued").await;
            let text = job_text(&job_in(&link(&page).await));
            assert!(!text.contains(COST), "{receiver}");
            assert_eq!(text.contains("TP-1"), receiver == "The warehouse", "{receiver}");
        }
        page.click(Role::Radio, "The warehouse").await;
        page.click(Role::Checkbox, "Costs and margins").await;
        page.says("▲ Costs and margins go along. Whoever gets this can read them.").await;
        assert!(job_text(&job_in(&link(&page).await)).contains(COST));
        page.fits_its_width().await;
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn damage_is_refused_with_its_reason_and_nothing_else_is_shown() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        let job = sample(&page).await;
        page.open(&format!("{job}/send")).await;
        let whole = link(&page).await;
        let cut = &whole[..whole.len() - 12];
        page.go(&format!("#/open/{}", cut.split_once("#/open/").unwrap().1)).await;
        page.says("Its end is missing: most likely a messenger cut a long link off.").await;
        let middle = whole.len() - 40;
        let other = if &whole[middle..=middle] == "A" { "B" } else { "A" };
        let changed = [&whole[..middle], other, &whole[middle + 1..]].concat();
        for (text, reason) in [
            (changed.as_str(), "Something in it was changed on the way"),
            ("Good morning", "There is no job in it."),
            ("{\"format\":\"bedwright-job\",\"version\":9}", "It was made by a later version of Bedwright."),
            ("{\"format\":", "The file makes no sense from line 1"),
        ] {
            pasted(&page, text).await;
            page.says(reason).await;
            assert!(page.has(Role::Heading, "▲ Nothing was taken in.").await);
            assert!(!page.has(Role::Button, "Keep it on this device").await);
        }
        page.open("#/jobs").await;
        assert_eq!(page.script("return document.querySelectorAll('.job-line').length;").await, json!(1));
        page.no_complaints().await;
    })
    .await;
}

/// Texts that try to be markup, a script's link, a formula: they arrive as the letters they are.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_arrives_is_never_markup() {
    let site = Site::serve();
    let trick = "<img src=x onerror=\"document.title='taken'\"> javascript:alert(1) =1+1";
    visit(Screen::Phone, &site.address(), async |page: Page| {
        let job = sample(&page).await;
        page.open(&job).await;
        for field in ["Job", "Customer", "Site", "Notes"] {
            page.enter(field, trick).await;
        }
        page.open(&format!("{job}/send")).await;
        page.enter("Your name", trick).await;
        let sent = link(&page).await;
        visit(Screen::Desk, &sent, async |page: Page| {
            page.started().await;
            page.says(trick).await;
            page.press("Keep it on this device").await;
            page.until("it is kept", "window.location.hash.endsWith('/picking')").await;
            page.open("#/jobs").await;
            page.says(trick).await;
            page.open(&job).await;
            assert_eq!(
                page.script("return document.querySelectorAll('main img, a[href^=\"javascript\"]').length;").await,
                json!(0)
            );
            assert_ne!(page.script("return document.title;").await, json!("taken"));
            page.no_complaints().await;
        })
        .await;
    })
    .await;
}
