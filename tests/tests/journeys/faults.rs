//! A browser that fails at one call: the page works on, and what was typed is there afterwards, or the page said at once that
//! it isn't kept.
//!
//! Some turns in the usual run; all of them, 1 to 30, where `BEDWRIGHT_TURNS` is `all`.

use serde_json::json;

use crate::browser::{Screen, Session, visit_in};
use crate::filter;
use crate::page::{Page, Role};
use crate::site::Site;

/// Reads from the window's name which call fails at which turn: it outlives a reload.
const BREAKS: &str = "(() => { const [where, exception, turn] = window.name.split(' '); if (!turn) return; \
    const [kind, method] = where.split('.'); const p = window[kind].prototype, real = p[method]; let calls = 0; \
    p[method] = function (...a) { calls += 1; if (calls === Number(turn)) throw new DOMException('made to fail', exception); \
      return real.apply(this, a); }; })();";

const CALLS: &[&str] = &[
    "Storage.setItem QuotaExceededError",
    "Storage.setItem UnknownError",
    "Storage.getItem UnknownError",
    "IDBFactory.open UnknownError",
    "IDBDatabase.transaction UnknownError",
    "IDBTransaction.objectStore UnknownError",
    "IDBObjectStore.put QuotaExceededError",
    "IDBObjectStore.get UnknownError",
    "IDBObjectStore.getAll UnknownError",
    "IDBObjectStore.getAllKeys UnknownError",
];

fn turns() -> Vec<u32> {
    if std::env::var("BEDWRIGHT_TURNS").is_ok_and(|all| all == "all") {
        (1..=30).collect()
    } else {
        vec![1, 2, 3, 5, 8, 21]
    }
}

async fn failing(calls: &[&str]) {
    let site = Site::serve();
    let kind = Session { before: Some(BREAKS), ..Session::on(Screen::Desk) };
    visit_in(kind, &site.address(), async |page: Page| {
        page.started().await;
        filter::new_job(&page, "Faults").await;
        let (mut count, mut said) = (0, 0);
        for call in calls {
            for turn in turns() {
                let text = format!("{call} at turn {turn}");
                page.script(&format!("window.name = {};", json!(format!("{call} {turn}")))).await;
                page.reload().await;
                // A place that couldn't be read at the start may hold back the job: then that is said, and nothing typed.
                let there = page.has(Role::Textbox, "Notes").await;
                if there {
                    page.enter("Notes", &text).await;
                    tokio::time::sleep(std::time::Duration::from_millis(260)).await;
                }
                let words = page.text().await;
                let warned = words.contains("Not kept") || words.contains("is full") || words.contains("set aside");
                page.script("window.name = '';").await;
                page.reload().await;
                let found = page.entered("Notes").await;
                assert!(found == text || warned || !there, "{text}: found {found:?}; the page said:\n{words}");
                assert_eq!(page.entered("Job").await, "Faults", "{text}");
                count += 1;
                said += u32::from(found != text);
            }
        }
        println!("{count} faults; after {said} the text was not kept, and the page had said so");
        // It complained of what it was made to, and of nothing else.
        let complaints = page.complaints().await;
        assert!(complaints.iter().all(|said| !said.contains("panicked")), "{complaints:?}");
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn local_storage_may_fail_at_any_call() {
    failing(&CALLS[..3]).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_journal_may_fail_at_any_call() {
    failing(&CALLS[3..]).await;
}
