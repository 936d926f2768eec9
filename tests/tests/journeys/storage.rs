//! Storage that is blocked, full, damaged, or written by a later version.

use bedwright_job::saved::{read_job, section_text};
use bedwright_job::sections::SectionName;
use serde_json::{Value, json};

use crate::browser::{Screen, Session, visit, visit_in};
use crate::filter;
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::site::Site;
use crate::stored;

/// As a browser does that forbids a page to keep anything (HTML Living Standard, 12.2.3: the getter throws).
const BLOCKED: &str = "Object.defineProperty(window, 'localStorage', { configurable: true, get() { throw new DOMException('denied', 'SecurityError'); } }); \
                       Object.defineProperty(window, 'indexedDB', { configurable: true, value: undefined });";

const SET_ASIDE: &str = "Something could not be read. It was set aside, not overwritten.";

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn with_storage_blocked_the_page_starts_says_so_and_gives_a_file() {
    let site = Site::serve();
    let folder = Folder::new("downloads");
    let kind = Session { before: Some(BLOCKED), ..Session::on(Screen::Phone) };
    visit_in(kind, &site.address(), async |page: Page| {
        page.started().await;
        folder.takes_downloads(&page).await;
        page.says("Not kept. What you type is lost when this page closes. Save a file now.").await;
        filter::planned(&page, "Nothing is kept").await;
        // It stays said on every screen.
        page.says("Not kept. What you type is lost when this page closes.").await;
        page.press("Save a file").await;
        let (name, text) = folder.downloaded().await;
        assert!(name.ends_with(".json"), "{name}");
        let job = read_job(&text).unwrap();
        assert_eq!(job.head.body.title, "Nothing is kept");
        assert_eq!(job.survey.body.vessels.len(), 1);
        assert_eq!(job.plan_of(&job.survey.body.vessels[0].id).layers.len(), 2);
        page.no_complaints().await;
    })
    .await;
}

/// The database has room for a few letters more than it is given, so what is typed is kept there.
const FIRST_FULL: &str = "The browser's first place is full. What you type is kept in the second place alone.";
const NO_ROOM: &str = "no room for this";
const MORE: &str = ", nor for any of the sixty letters that are typed after it, one by one";

/// Fills local storage to the last letter and leaves the origin no room in the database.
async fn fill(page: &Page, site: &Site) {
    page.script(
        "let size = 1 << 20, n = 0; while (size >= 1) { try { localStorage.setItem('filler/' + n, 'x'.repeat(size)); n += 1; } catch (error) { size = size >> 1; } }",
    )
    .await;
    let origin = site.address();
    let origin = origin.trim_end_matches('/');
    let quota = json!({ "origin": origin, "quotaSize": 1 });
    page.session().cdp().send_raw("Storage.overrideQuotaForOrigin", quota).await.unwrap();
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn with_storage_full_the_page_says_so_and_what_was_kept_stays_whole() {
    let site = Site::serve();
    let folder = Folder::new("downloads");
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        folder.takes_downloads(&page).await;
        let job = filter::planned(&page, "Kept before").await;
        page.open(&job).await;
        page.reload().await;
        fill(&page, &site).await;
        let kept = page
            .script("return Object.entries({ ...localStorage }).filter(([key]) => key.startsWith('bedwright/job/'));")
            .await;
        page.enter("Notes", NO_ROOM).await;
        page.says(FIRST_FULL).await;
        // It stays said through all that is typed on, letter by letter.
        page.find(Role::Textbox, "Notes").await.focus().await.unwrap();
        page.script("const f = document.activeElement; f.setSelectionRange(f.value.length, f.value.length);").await;
        for letter in MORE.chars() {
            page.session().cdp().send_raw("Input.insertText", json!({ "text": letter.to_string() })).await.unwrap();
        }
        tokio::time::sleep(std::time::Duration::from_millis(500)).await;
        page.says(FIRST_FULL).await;
        // Nothing that was kept is cut or gone.
        let there = page
            .script("return Object.entries({ ...localStorage }).filter(([key]) => key.startsWith('bedwright/job/'));")
            .await;
        for section in kept.as_array().unwrap() {
            let (key, was) = (section[0].as_str().unwrap(), section[1].as_str().unwrap());
            let is = there.as_array().unwrap().iter().find(|section| section[0] == key).map(|section| &section[1]);
            let is = is.and_then(Value::as_str).unwrap_or_else(|| panic!("{key} is gone"));
            assert!(serde_json::from_str::<Value>(is).is_ok(), "{key} is damaged: {is}");
            assert!(key.ends_with("/head") || is == was, "{key} changed: {is}");
        }
        // The way out: a file that holds the last change too.
        let save = page.find_at(Role::Button, "Save a file", 0).await;
        // The bar stays in sight above everything: out from under it.
        save.scroll_into_view().await.unwrap();
        save.click().await.unwrap();
        let (_, text) = folder.downloaded().await;
        assert!(read_job(&text).unwrap().head.body.notes.starts_with(NO_ROOM));
        // Room again: it is kept after all, and the notice goes by itself.
        page.script(
            "for (const key of Object.keys(localStorage)) if (key.startsWith('filler/')) localStorage.removeItem(key);",
        )
        .await;
        page.session()
            .cdp()
            .send_raw("Storage.overrideQuotaForOrigin", json!({ "origin": site.address().trim_end_matches('/') }))
            .await
            .unwrap();
        page.enter("Customer", "Room again").await;
        page.until_within(
            std::time::Duration::from_secs(20),
            "the notice goes",
            "!document.body.innerText.includes('place is full')",
        )
        .await;
        page.reload().await;
        assert_eq!(page.entered("Notes").await, format!("{NO_ROOM}{MORE}"));
        assert_eq!(page.entered("Customer").await, "Room again");
        assert_eq!(page.entered("Job").await, "Kept before");
        page.no_complaints().await;
    })
    .await;
}

/// A section cut in the middle is named and kept to the letter, whatever is done to the rest of its job.
async fn damaged(page: Page, damage: impl Fn(&str) -> String) {
    page.started().await;
    let folder = Folder::new("downloads");
    folder.takes_downloads(&page).await;
    let job = stored::fifty_vessels();
    let (plan, head) = (stored::key(&job, SectionName::Plan), stored::key(&job, SectionName::Head));
    let cut = damage(&section_text(&job, SectionName::Plan));
    let mut texts = stored::texts(&job);
    for (key, text) in &mut texts {
        if *key == plan {
            text.clone_from(&cut);
        }
    }
    stored::put(&page, &texts).await;
    page.says(SET_ASIDE).await;
    page.says(&plan).await;
    page.press("Download it").await;
    let (_, text) = folder.downloaded().await;
    assert!(text.contains(&cut), "the file lacks the text: {text:.200}");
    // The rest of the job is there and works.
    page.open("#/jobs/fifty-vessels").await;
    assert_eq!(page.entered("Job").await, "Fifty vessels (invented)");
    page.enter("Job", "Fifty vessels, renamed").await;
    page.open("#/jobs/fifty-vessels/vessels/v-0").await;
    assert_eq!(page.entered("Inside diameter").await, "47");
    // A new plan is begun; the old text stays on this device under another key.
    page.press("Add media").await;
    page.pick("Material", "Coconut carbon 12×40").await;
    page.enter("How much", "3").await;
    page.until(
        "the old text is kept aside",
        &format!("Object.entries({{ ...localStorage }}).some(([key, text]) => key.startsWith('bedwright/aside/') && text === {})", json!(cut)),
    )
    .await;
    page.reload().await;
    page.find(Role::Heading, "Layers").await;
    page.says("3 bags").await;
    let now: Value = serde_json::from_str(&stored::text(&page, &head).await.unwrap()).unwrap();
    assert_eq!(now["body"]["title"], "Fifty vessels, renamed");
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_half_written_section_is_set_aside_named_and_can_be_downloaded() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        damaged(page, |text| text.chars().take(text.chars().count() / 2).collect()).await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_section_that_is_no_text_of_ours_is_set_aside_named_and_can_be_downloaded() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        damaged(page, |_| "\u{0}\u{7f}not ours{{".to_owned()).await
    })
    .await;
}

/// One copy is damaged, the other whole: the whole one is shown, and nothing is lost.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_section_damaged_in_local_storage_alone_comes_back_from_the_journal() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        filter::planned(&page, "Whole in the journal").await;
        let vessel = page.fragment().await;
        page.reload().await;
        let plan = page.script("return Object.keys(localStorage).find((key) => key.endsWith('/plan'));").await;
        let plan = plan.as_str().unwrap().to_owned();
        let text = stored::text(&page, &plan).await.unwrap();
        let cut: String = text.chars().take(text.chars().count() / 2).collect();
        stored::put(&page, &[(plan, cut)]).await;
        page.open(&vessel).await;
        page.says(filter::TAPES[1]).await;
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_section_of_a_later_version_is_locked_alone_and_written_back_as_it_came() {
    let site = Site::serve();
    let folder = Folder::new("downloads");
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        folder.takes_downloads(&page).await;
        let job = stored::fifty_vessels();
        let plan = stored::key(&job, SectionName::Plan);
        let mut later: Value = serde_json::from_str(&section_text(&job, SectionName::Plan)).unwrap();
        later["version"] = json!(99);
        later["body"]["from_later"] = json!({ "kept": [1, 2, 3] });
        let mut texts = stored::texts(&job);
        for (key, text) in &mut texts {
            if *key == plan {
                *text = later.to_string();
            }
        }
        stored::put(&page, &texts).await;
        page.open("#/jobs/fifty-vessels/vessels/v-0").await;
        page.says("A part of this job is from a later version.").await;
        // The survey works.
        page.enter("Inside diameter", "46").await;
        page.says("46 in").await;
        // The plan does not change, and says why.
        page.press("Dismiss").await;
        page.press("Add media").await;
        page.says("A part of this job is from a later version.").await;
        assert!(filter::cards(&page).await.is_empty());
        page.open("#/jobs/fifty-vessels").await;
        page.enter("Job", "Renamed").await;
        page.press("Save a file").await;
        let (_, text) = folder.downloaded().await;
        let file: Value = serde_json::from_str(&text).unwrap();
        assert_eq!(file["sections"]["plan"], later);
        page.reload().await;
        assert_eq!(page.entered("Job").await, "Renamed");
        let kept: Value = serde_json::from_str(&stored::text(&page, &plan).await.unwrap()).unwrap();
        assert_eq!(kept, later);
        page.no_complaints().await;
    })
    .await;
}
