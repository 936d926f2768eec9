//! One keystroke works out one vessel, however many the job has. The page counts on its root, from edit to edit.

use serde_json::json;

use crate::browser::{Screen, visit};
use crate::page::{Page, Role};
use crate::site::Site;
use crate::stored;

/// Types one character at the end of a field; what was worked out for it, nothing where nothing was.
async fn worked_out_for_a_keystroke(page: &Page, field: &str) -> Option<String> {
    page.find(Role::Textbox, field).await.focus().await.unwrap();
    page.script("const f = document.activeElement; f.setSelectionRange(f.value.length, f.value.length); delete document.documentElement.dataset.calculated;").await;
    page.session().cdp().send_raw("Input.insertText", json!({ "text": "1" })).await.unwrap();
    page.settled().await;
    page.script("return document.documentElement.dataset.calculated || null;").await.as_str().map(str::to_owned)
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn one_keystroke_among_fifty_vessels_works_out_one_vessel_and_no_bill() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        stored::put(&page, &stored::texts(&stored::fifty_vessels())).await;
        page.open("#/jobs/fifty-vessels/vessels/v-7").await;
        page.find(Role::Heading, "V-8 · 48×72").await;
        let first = worked_out_for_a_keystroke(&page, "Inside depth").await;
        assert_eq!(first.as_deref(), Some("vessels 1 bills 0"));
        // The bill works out the rest, each once.
        page.script("delete document.documentElement.dataset.calculated;").await;
        page.open("#/jobs/fifty-vessels/bill").await;
        page.find(Role::Heading, "Pooled over the job").await;
        let bill = page.script("return document.documentElement.dataset.calculated;").await;
        println!("opening the bill of fifty vessels after one was worked out: {bill}");
        assert_eq!(bill, json!("vessels 50 bills 1"));
        // Left again, it costs nothing.
        page.open("#/jobs/fifty-vessels/vessels/v-7").await;
        page.find(Role::Heading, "V-8 · 48×72").await;
        let after = worked_out_for_a_keystroke(&page, "Inside depth").await;
        assert_eq!(after.as_deref(), Some("vessels 1 bills 0"));
        // A text about the job is no figure.
        page.open("#/jobs/fifty-vessels").await;
        page.find(Role::Button, "Add a vessel").await;
        assert_eq!(worked_out_for_a_keystroke(&page, "Job").await, None);
        page.no_complaints().await;
    })
    .await;
}
