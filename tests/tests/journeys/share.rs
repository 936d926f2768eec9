//! The device's share sheet: exactly what is handed to it, and what is said of what becomes of it.

use serde_json::{Value, json};

use crate::browser::{Screen, Session, visit_in};
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::site::Site;
use crate::travel::{job_in, link, sample};

/// Stands in for the browser's own: keeps what it is handed, and ends as `window.ends` says.
const SHEET: &str = "
  window.handed = []; window.asked = 0; window.ends = '';
  const told = async (data) => ({
    keys: Object.keys(data).sort(), title: data.title ?? null, text: data.text ?? null, url: data.url ?? null,
    files: await Promise.all([...(data.files || [])].map(async (file) => ({ name: file.name, type: file.type, text: await file.text() }))),
  });
  navigator.canShare = (data) => { window.asked += 1; return (data.files || []).every((file) => file.type === 'text/plain'); };
  navigator.share = async (data) => {
    if (!navigator.userActivation.isActive) throw new DOMException('too late', 'NotAllowedError');
    window.handed.push(await told(data));
    if (window.ends) throw new DOMException('so it ends', window.ends);
  };";

async fn handed(page: &Page) -> Vec<Value> {
    page.script("return window.handed;").await.as_array().cloned().unwrap()
}

/// Whether what went out is noted in what is kept: that it was handed over, to be compared with what comes back.
async fn noted(page: &Page) -> bool {
    tokio::time::sleep(std::time::Duration::from_millis(500)).await;
    let read = "return Object.entries({ ...localStorage }).some(([key, text]) => /\\/job\\/.*\\/survey$/.test(key) && JSON.parse(text).base !== undefined);";
    page.script(read).await == json!(true)
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_share_sheet_gets_the_file_or_the_link_and_nothing_else() {
    let site = Site::serve();
    let downloads = Folder::new("downloads");
    let kind = Session { before: Some(SHEET), ..Session::on(Screen::Phone) };
    visit_in(kind, &site.address(), async |page: Page| {
        downloads.takes_downloads(&page).await;
        let job = sample(&page).await;
        page.open(&format!("{job}/send")).await;
        page.click(Role::Radio, "Who loads").await;
        page.enter("Your name", "R. Moss").await;
        let whole = link(&page).await;
        assert_eq!(handed(&page).await, Vec::<Value>::new(), "nothing before a tap");
        // Closed without sharing: nothing is said, and nothing counts as handed over.
        for (ends, says) in [
            ("AbortError", ""),
            ("NotAllowedError", "The browser asks for another tap."),
            ("DataError", "This browser didn't share the file. Save it instead."),
        ] {
            page.script(&format!("window.ends = '{ends}';")).await;
            page.press("Share the file").await;
            page.until(ends, &format!("document.querySelector('.travel-said').innerText.trim() === {}", json!(says)))
                .await;
            assert!(!noted(&page).await, "{ends}");
        }
        page.script("window.ends = ''; window.handed = [];").await;
        page.press("Share the file").await;
        page.says("Handed over.").await;
        let all = handed(&page).await;
        assert_eq!(all.len(), 1);
        // No title, text or address beside it: some programs would take those and drop the file.
        assert_eq!(all[0]["keys"], json!(["files"]));
        let file = &all[0]["files"][0];
        assert_eq!(all[0]["files"].as_array().unwrap().len(), 1);
        assert_eq!(
            (&file["name"], &file["type"]),
            (&json!("Quillmoss-Laundry--sample-.bedwright.txt"), &json!("text/plain"))
        );
        let text = file["text"].as_str().unwrap();
        assert!(text.starts_with("Quillmoss Laundry (sample)\nSent by R. Moss.\n"), "{text}");
        assert!(text.contains(&whole), "{text}");
        assert_eq!(job_in(text), job_in(&whole));
        assert!(noted(&page).await, "what comes back is compared with this");
        // A file that is saved is the same, but for what is noted now of what was handed over.
        page.press("Save the file").await;
        let (name, saved) = downloads.downloaded().await;
        assert_eq!(name, "Quillmoss-Laundry--sample-.bedwright.txt");
        let words = |text: &str| text.split("#/open/").next().map(str::to_owned);
        assert_eq!(words(&saved), words(text));
        assert_eq!(job_in(&saved).survey.body, job_in(text).survey.body);
        let whole = link(&page).await;
        page.script("window.handed = [];").await;
        page.press("Share the link").await;
        page.until("it is handed over", "window.handed.length === 1").await;
        let all = handed(&page).await;
        assert_eq!(all[0]["keys"], json!(["text", "title"]));
        assert_eq!((&all[0]["title"], &all[0]["text"]), (&json!("Quillmoss Laundry (sample)"), &json!(whole)));
        page.fits_its_width().await;
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn where_no_file_can_be_shared_saving_is_offered_alone() {
    let site = Site::serve();
    let refuses = [SHEET, "navigator.canShare = () => false;"].concat();
    for (before, shares_texts) in
        [(refuses.as_str(), true), ("delete Navigator.prototype.share; delete Navigator.prototype.canShare;", false)]
    {
        let kind = Session { before: Some(before), ..Session::on(Screen::Phone) };
        visit_in(kind, &site.address(), async |page: Page| {
            let job = sample(&page).await;
            page.open(&format!("{job}/send")).await;
            page.find(Role::Button, "Save the file").await;
            assert!(!page.has(Role::Button, "Share the file").await);
            assert_eq!(page.has(Role::Button, "Share the link").await, shares_texts);
            page.no_complaints().await;
        })
        .await;
    }
}
