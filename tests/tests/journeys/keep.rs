//! What is typed stays: through a reload, undo and redo, copies, the bin.

use crate::browser::{Screen, visit};
use crate::filter::{self, TAPES};
use crate::page::{Page, Role};
use crate::site::Site;

async fn reload_keeps_everything(page: Page) {
    page.started().await;
    filter::planned(&page, "Kept").await;
    page.enter("Tags", "CF-1, CF-2").await;
    // At once: before anything could have been saved in its own time.
    page.reload().await;
    page.find(Role::Heading, "CF-1, CF-2 · 12×52").await;
    filter::holds(&page).await;
    page.follow("Kept").await;
    page.find(Role::Button, "Add a vessel").await;
    assert_eq!(page.entered("Job").await, "Kept");
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_reload_keeps_everything_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), reload_keeps_everything).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_reload_keeps_everything_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), reload_keeps_everything).await;
}

async fn undo_takes_back_and_redo_brings_back(page: Page) {
    page.started().await;
    filter::planned(&page, "Undone").await;
    page.enter("Inside depth", "60").await;
    page.until("another answer", "!document.body.innerText.includes('15 1/8 in')").await;
    page.press("Undo").await;
    page.says(TAPES[1]).await;
    filter::holds(&page).await;
    page.press("Redo").await;
    page.until("another answer again", "!document.body.innerText.includes('15 1/8 in')").await;
    assert_eq!(page.entered("Inside depth").await, "60");
    page.press("Undo").await;
    page.says(TAPES[1]).await;
    // A whole layer comes back with what was typed in it.
    let remove = page.find_at(Role::Button, "Remove layer", 0).await;
    remove.scroll_into_view().await.unwrap();
    remove.click().await.unwrap();
    page.until("one layer", "document.querySelectorAll('li.layer').length === 1").await;
    page.press("Undo").await;
    page.says(TAPES[1]).await;
    filter::holds(&page).await;
    // Back to the empty job, step by step, and forth again.
    for _ in 0..80 {
        let undo = page.find(Role::Button, "Undo").await;
        if !undo.is_enabled().await.unwrap() {
            break;
        }
        undo.click().await.unwrap();
    }
    assert!(!page.find(Role::Button, "Undo").await.is_enabled().await.unwrap(), "it never ends");
    assert!(!page.has(Role::Heading, "Layers").await);
    for _ in 0..80 {
        let redo = page.find(Role::Button, "Redo").await;
        if !redo.is_enabled().await.unwrap() {
            break;
        }
        redo.click().await.unwrap();
    }
    // The last of all that was undone was the removal of a layer.
    page.until("one layer", "document.querySelectorAll('li.layer').length === 1").await;
    page.press("Undo").await;
    page.says(TAPES[1]).await;
    filter::holds(&page).await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn undo_takes_every_change_back_and_redo_brings_it_back_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), undo_takes_back_and_redo_brings_back).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn undo_takes_every_change_back_and_redo_brings_it_back_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), undo_takes_back_and_redo_brings_back).await;
}

async fn copies_and_the_bin(page: Page) {
    page.started().await;
    let first = filter::planned(&page, "Larch Street").await;
    page.open("#/jobs").await;
    page.press("Duplicate").await;
    page.find(Role::Button, "Add a vessel").await;
    assert_eq!(page.entered("Job").await, "Copy of Larch Street");
    assert_ne!(page.fragment().await, first);
    // The copy is a job of its own.
    page.enter("Job", "Alder Street").await;
    page.says("2 bags Coconut carbon 12×40").await;
    page.open("#/jobs").await;
    page.says("Larch Street").await;
    page.says("Alder Street").await;
    // Searching leaves what matches.
    let search = page.find(Role::Searchbox, "Search jobs").await;
    search.send_keys("alder").await.unwrap();
    page.until("one job", "document.querySelectorAll('.job-line').length === 1").await;
    assert!(!page.text().await.contains("Larch Street"));
    // Delete the one that was found, and bring it back after a reload.
    page.press("Delete").await;
    page.find(Role::Heading, "Bin").await;
    page.reload().await;
    page.find(Role::Heading, "Bin").await;
    page.press("Restore").await;
    page.until("no bin", "![...document.querySelectorAll('h2')].some((h) => h.innerText.toLowerCase() === 'bin')")
        .await;
    page.reload().await;
    page.until("two jobs", "document.querySelectorAll('.job-line').length === 2").await;
    page.open(&first).await;
    assert_eq!(page.entered("Job").await, "Larch Street");
    page.says("2 bags Coconut carbon 12×40").await;
    // Erased for good is gone, and the other stays.
    page.open("#/jobs").await;
    let delete = page.find_at(Role::Button, "Delete", 0).await;
    delete.click().await.unwrap();
    page.press("Erase for good").await;
    page.until("one job", "document.querySelectorAll('.job-line').length === 1").await;
    page.reload().await;
    page.until("still one job", "document.querySelectorAll('.job-line').length === 1").await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn jobs_are_copied_found_deleted_and_brought_back_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), copies_and_the_bin).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn jobs_are_copied_found_deleted_and_brought_back_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), copies_and_the_bin).await;
}

/// Typed and loaded anew within the same moment, over and over: the last letter is there.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_reload_in_the_middle_of_typing_loses_no_letter() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        filter::new_job(&page, "Typed and reloaded").await;
        for round in 0..12 {
            let text = format!("typed in round {round} and loaded anew at once");
            let field = page.find(Role::Textbox, "Notes").await;
            field.clear().await.unwrap();
            // The last letter is still in the field when the page goes.
            field.send_keys(text.as_str()).await.unwrap();
            page.reload().await;
            assert_eq!(page.entered("Notes").await, text, "round {round}");
        }
        page.no_complaints().await;
    })
    .await;
}

/// What was taken back before a reload can be done again after it, and what is typed then ends that.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_was_taken_back_can_be_done_again_across_reloads() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        filter::planned(&page, "Taken back and done again").await;
        page.enter("Inside depth", "60").await;
        let remove = page.find_at(Role::Button, "Remove layer", 0).await;
        remove.scroll_into_view().await.unwrap();
        remove.click().await.unwrap();
        page.until("one layer", "document.querySelectorAll('li.layer').length === 1").await;
        let enabled = |name: &str| {
            format!("[...document.querySelectorAll('button')].some((b) => b.innerText === '{name}' && !b.disabled)")
        };
        page.press("Undo").await;
        page.press("Undo").await;
        page.says(TAPES[1]).await;
        page.reload().await;
        page.says(TAPES[1]).await;
        page.until("it can be done again", &enabled("Redo")).await;
        page.press("Redo").await;
        page.until("another answer", "!document.body.innerText.includes('15 1/8 in')").await;
        assert_eq!(page.entered("Inside depth").await, "60");
        // Once more in between: one is left.
        page.reload().await;
        page.until("it can be done again", &enabled("Redo")).await;
        page.press("Redo").await;
        page.until("one layer", "document.querySelectorAll('li.layer').length === 1").await;
        page.until("that was all", &format!("!{}", enabled("Redo"))).await;
        page.press("Undo").await;
        page.press("Undo").await;
        page.says(TAPES[1]).await;
        filter::holds(&page).await;
        page.reload().await;
        page.until("it can be done again", &enabled("Redo")).await;
        page.enter("Inside depth", "51.5").await;
        page.until("what is new ends it", &format!("!{}", enabled("Redo"))).await;
        page.reload().await;
        page.until("undo is there", &enabled("Undo")).await;
        assert!(!page.find(Role::Button, "Redo").await.is_enabled().await.unwrap());
        assert_eq!(page.entered("Inside depth").await, "51.5");
        page.no_complaints().await;
    })
    .await;
}

/// Sixty changes, a reload in the middle of taking them back: fifty can be, and what is there is what was before each.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn fifty_changes_can_be_taken_back_across_reloads() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        filter::new_job(&page, "Sixty changes").await;
        for change in 1..=60 {
            page.enter("Notes", &format!("change {change}")).await;
        }
        page.reload().await;
        let undo = async |times: usize| {
            for _ in 0..times {
                let undo = page.find(Role::Button, "Undo").await;
                assert!(undo.is_enabled().await.unwrap());
                undo.click().await.unwrap();
            }
        };
        page.until(
            "undo is there",
            "[...document.querySelectorAll('button')].some((b) => b.innerText === 'Undo' && !b.disabled)",
        )
        .await;
        undo(20).await;
        assert_eq!(page.entered("Notes").await, "change 40");
        page.reload().await;
        page.until(
            "undo is there",
            "[...document.querySelectorAll('button')].some((b) => b.innerText === 'Undo' && !b.disabled)",
        )
        .await;
        undo(29).await;
        assert_eq!(page.entered("Notes").await, "change 11");
        undo(1).await;
        assert_eq!(page.entered("Notes").await, "change 10");
        assert!(!page.find(Role::Button, "Undo").await.is_enabled().await.unwrap(), "fifty are kept");
        page.press("Redo").await;
        assert_eq!(page.entered("Notes").await, "change 11");
        page.no_complaints().await;
    })
    .await;
}

/// A page may be left before the browser has written what can be taken back.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_change_can_be_taken_back_after_a_reload_that_came_at_once() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        filter::new_job(&page, "Left at once").await;
        page.enter("Notes", "before").await;
        // From here on the database of steps never answers; the journal does.
        page.script(
            "const put = IDBObjectStore.prototype.put; \
             IDBObjectStore.prototype.put = function (...all) { \
               if (this.transaction.db.name !== 'bedwright-undo') return put.apply(this, all); \
               Object.defineProperty(this.transaction, 'oncomplete', { set() {} }); \
               return this.get(all[1]); };",
        )
        .await;
        page.enter("Notes", "after").await;
        page.reload().await;
        assert_eq!(page.entered("Notes").await, "after");
        page.until(
            "undo is there",
            "[...document.querySelectorAll('button')].some((b) => b.innerText === 'Undo' && !b.disabled)",
        )
        .await;
        page.press("Undo").await;
        assert_eq!(page.entered("Notes").await, "before");
        // It is kept as usual again.
        page.reload().await;
        page.press("Undo").await;
        assert_eq!(page.entered("Notes").await, "");
        page.no_complaints().await;
    })
    .await;
}
