//! The page as an app: the browser finds nothing that stands in the way, shortcuts land where they say, what is shared or
//! opened with it arrives on the screen that takes jobs in, and how to install it is said only where that is news.

use serde_json::{Value, json};

use crate::browser::{Screen, Session, visit, visit_in};
use crate::page::{Page, Role};
use crate::site::Site;

async fn manifest(page: &Page) -> Value {
    let read = "const done = arguments[arguments.length - 1]; \
        fetch('./manifest.webmanifest').then((answer) => answer.json()).then(done);";
    page.session().execute_async(read, vec![]).await.unwrap().json().clone()
}

/// What a person called "Send this job" hands over: a text with a line that holds the job.
async fn sent(page: &Page) -> String {
    page.press("Sample job").await;
    page.find(Role::Button, "Add a vessel").await;
    let job = page.fragment().await;
    page.open(&format!("{job}/send")).await;
    page.settled().await;
    let link = page.entered("The link").await;
    format!("Quillmoss Laundry\nPaste the line below.\n\n{link}\n")
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_browser_itself_finds_nothing_that_keeps_the_page_from_being_installed() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        page.ready_offline().await;
        let cdp = page.session().cdp();
        let found = cdp.send_raw("Page.getAppManifest", json!({})).await.unwrap();
        assert_eq!(found["errors"], json!([]), "{found}");
        let found = cdp.send_raw("Page.getInstallabilityErrors", json!({})).await.unwrap();
        // A session that nobody sees is a private window, where nothing is installed.
        let errors: Vec<&Value> = found["installabilityErrors"].as_array().unwrap().iter().collect();
        let others: Vec<_> = errors.iter().filter(|error| error["errorId"] != json!("in-incognito")).collect();
        assert!(others.is_empty(), "{others:?}");
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn every_shortcut_lands_on_its_screen() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        let shortcuts = manifest(&page).await["shortcuts"].as_array().unwrap().clone();
        assert_eq!(shortcuts.len(), 3);
        for shortcut in shortcuts {
            let address = shortcut["url"].as_str().unwrap();
            page.session().goto("about:blank").await.unwrap();
            page.session().goto(format!("{}{address}", site.address())).await.unwrap();
            page.started().await;
            let (role, there) = match shortcut["name"].as_str().unwrap() {
                "New job" => (Role::Button, "Add a vessel"),
                "Due list" => (Role::Heading, "Due list"),
                "Receive a job" => (Role::Heading, "Receive a job"),
                other => panic!("nobody knows where “{other}” leads"),
            };
            page.find(role, there).await;
        }
        // A new job is made once: loading the page again makes no other.
        page.open("#/jobs").await;
        assert_eq!(page.script("return document.querySelectorAll('.job-line').length;").await, json!(1));
        page.no_complaints().await;
    })
    .await;
}

/// What another program shares comes as a form with a file or a text in it; the worker takes it, not the host.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_is_shared_with_the_page_is_looked_at_before_it_is_kept() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        page.ready_offline().await;
        let text = sent(&page).await;
        let target = manifest(&page).await["share_target"].clone();
        let file = target["params"]["files"][0]["name"].as_str().unwrap().to_owned();
        let plain = target["params"]["text"].as_str().unwrap().to_owned();
        let job = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../public/job.example.json")).unwrap();
        for (name, is_file, text, says) in [
            (&file, true, text.as_str(), "Quillmoss Laundry (sample)"),
            (&plain, false, text.as_str(), "Quillmoss Laundry (sample)"),
            (&file, true, job.as_str(), "Keep it on this device"),
            (&plain, false, "nothing of ours", "There is no job in it."),
        ] {
            // From a document that no policy binds, as the system sends it.
            page.session().cdp().send_raw("Page.setBypassCSP", json!({ "enabled": true })).await.unwrap();
            page.session().goto(format!("{}job.schema.json", site.address())).await.unwrap();
            let send = "const [to, name, isFile, text] = arguments; const form = document.createElement('form'); \
                form.method = 'post'; form.enctype = 'multipart/form-data'; form.action = to; \
                const input = document.createElement('input'); input.name = name; \
                if (isFile) { input.type = 'file'; const carried = new DataTransfer(); \
                  carried.items.add(new File([text], 'job.txt', { type: 'text/plain' })); input.files = carried.files; } \
                else { input.value = text; } \
                form.append(input); document.body.append(form); form.submit();";
            let action = format!("{}{}", site.address(), target["action"].as_str().unwrap().trim_start_matches("./"));
            page.session().execute(send, vec![json!(action), json!(name), json!(is_file), json!(text)]).await.unwrap();
            page.started().await;
            page.find(Role::Heading, "Receive a job").await;
            page.says(says).await;
        }
    })
    .await;
}

/// A file that is opened with the installed page: the browser hands it over by its own queue, played here.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_file_that_is_opened_with_the_page_arrives() {
    let site = Site::serve();
    let before = "Object.defineProperty(window, 'launchQueue', { value: { setConsumer: (take) => { window.handOver = take; } } });";
    let kind = Session { before: Some(before), ..Session::on(Screen::Desk) };
    visit_in(kind, &site.address(), async |page: Page| {
        page.started().await;
        assert!(manifest(&page).await["file_handlers"][0]["accept"].is_object());
        let text = sent(&page).await;
        let open = format!(
            "window.handOver({{ files: [{{ getFile: () => Promise.resolve(new File([{}], 'job.bedwright')) }}] }});",
            json!(text)
        );
        page.script(&open).await;
        page.find(Role::Heading, "Receive a job").await;
        page.says("Quillmoss Laundry (sample)").await;
        page.no_complaints().await;
    })
    .await;
}

const INSTALL: &str = "Install on this device";

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_button_installs_it_where_the_browser_offers_that_and_goes_when_it_is_done() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        // Chromium may offer it by itself as well.
        let offer = "window.asked = 0; const offer = new Event('beforeinstallprompt', { cancelable: true }); \
            offer.prompt = () => { window.asked += 1; return Promise.resolve(); }; window.dispatchEvent(offer); return offer.defaultPrevented;";
        assert_eq!(page.script(offer).await, json!(true));
        page.press(INSTALL).await;
        page.until("the browser asks", "window.asked === 1").await;
        page.settled().await;
        // An offer is good for one asking.
        assert!(!page.has(Role::Button, INSTALL).await);
        page.script(offer).await;
        page.find(Role::Button, INSTALL).await;
        page.script("window.dispatchEvent(new Event('appinstalled'));").await;
        page.settled().await;
        assert!(!page.has(Role::Button, INSTALL).await);
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn on_an_iphone_one_sentence_says_how_and_the_installed_page_says_nothing() {
    let site = Site::serve();
    for (standalone, says) in [("false", true), ("true", false)] {
        let before =
            format!("Object.defineProperty(Navigator.prototype, 'standalone', {{ get: () => {standalone} }});");
        let kind = Session { before: Some(&before), ..Session::on(Screen::Phone) };
        visit_in(kind, &site.address(), async |page: Page| {
            page.started().await;
            page.settled().await;
            assert_eq!(page.text().await.contains("Add to Home Screen"), says, "standalone {standalone}");
            assert!(!page.has(Role::Button, INSTALL).await);
            page.fits_its_width().await;
            page.no_complaints().await;
        })
        .await;
    }
}
