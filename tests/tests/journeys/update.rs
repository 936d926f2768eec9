//! A new build: it asks, waits, never mixes its files with the old one's, and loses nothing.

use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::{Duration, Instant};

use serde_json::json;

use crate::browser::{Screen, visit};
use crate::filter;
use crate::folder::{self, Folder};
use crate::pace::{Connection, Pace};
use crate::page::{Page, Role};
use crate::site::{self, Site};

const ASKS: &str = "A new version is ready.";

/// The wasm that the page was made from, where cargo left it.
fn wasm() -> PathBuf {
    let here = std::env::current_exe().unwrap();
    let wasm = here.ancestors().nth(3).unwrap().join("wasm32-unknown-unknown/page/bedwright-app.wasm");
    assert!(wasm.is_file(), "{} is not built: run `tests/run page journeys`", wasm.display());
    wasm
}

/// Bundles the page's wasm again under another label, with other names for all its files.
fn bundled_again(label: &str, to: &Path, turned: fn(&str) -> String) {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
    let done = Command::new(site::bundle())
        .current_dir(root)
        // The program may be of another clone that shares what is compiled: it works on this one.
        .env("CARGO_MANIFEST_DIR", root.join("app/bundle"))
        .env("CARGO_TARGET_DIR", std::env::current_exe().unwrap().ancestors().nth(3).unwrap())
        .args(["build", "--label", label, "--wasm"])
        .arg(wasm())
        .arg("--out")
        .arg(to)
        .output()
        .unwrap();
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    rename_hashed(to, turned);
}

/// A hash from its end.
fn backwards(hash: &str) -> String {
    hash.chars().rev().collect()
}

/// A hash from its middle.
fn from_the_middle(hash: &str) -> String {
    let (start, end) = hash.split_at(hash.len() / 2);
    [end, start].concat()
}

/// The same wasm gives files of the same names. Another version has others: each hash is turned, everywhere.
fn rename_hashed(folder: &Path, turn: fn(&str) -> String) {
    let names: Vec<String> =
        std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    let hashes: Vec<&str> = names
        .iter()
        .filter_map(|name| name.split_once('.')?.0.rsplit_once('-'))
        .map(|(_, hash)| hash)
        .filter(|hash| hash.len() == 16 && hash.bytes().all(|byte| byte.is_ascii_hexdigit()))
        .collect();
    assert!(hashes.len() >= 5, "{names:?}");
    let turned = |text: &str| hashes.iter().fold(text.to_owned(), |text, hash| text.replace(hash, &turn(hash)));
    for name in &names {
        let path = folder.join(name);
        if path.is_file() && !name.ends_with(".wasm") {
            let text = std::fs::read_to_string(&path).unwrap();
            std::fs::write(&path, turned(&text)).unwrap();
        }
        std::fs::rename(&path, folder.join(turned(name))).unwrap();
    }
}

/// The build a page says it is of.
async fn build(page: &Page) -> String {
    let build = page.script("return document.querySelector('meta[name=bedwright-build]').content;").await;
    build.as_str().unwrap().to_owned()
}

/// Fails if the page has loaded a file that its own build does not list.
async fn is_of_one_build(page: &Page, folder: &Path) {
    let loaded = page
        .script("return performance.getEntriesByType('resource').map((each) => new URL(each.name)).filter((url) => url.origin === location.origin).map((url) => url.pathname.slice(1));")
        .await;
    let loaded: Vec<&str> = loaded.as_array().unwrap().iter().map(|name| name.as_str().unwrap()).collect();
    assert!(loaded.iter().any(|name| name.ends_with(".wasm")), "{loaded:?}");
    for name in loaded {
        assert!(folder.join(name).exists(), "{name} is of another build");
    }
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_new_build_asks_waits_and_takes_over_whole() {
    let (old, new, live) = (Folder::new("old"), Folder::new("new"), Folder::new("live"));
    folder::copy(&site::built(), old.path());
    bundled_again("next", new.path(), backwards);
    folder::copy(old.path(), live.path());
    let site = Site::serve_folder(live.path());
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        page.ready_offline().await;
        let first = build(&page).await;
        filter::new_job(&page, "Older than the build").await;
        assert!(!page.text().await.contains(ASKS));
        // The host changes, as a static host does: all files at once, the old ones gone.
        std::fs::remove_dir_all(live.path()).unwrap();
        folder::copy(new.path(), live.path());
        page.enter("Notes", "typed while the new build came").await;
        page.reload().await;
        page.says(ASKS).await;
        assert_eq!(page.entered("Notes").await, "typed while the new build came");
        assert_eq!(build(&page).await, first);
        is_of_one_build(&page, old.path()).await;
        page.press("Later").await;
        page.until("the question is gone", &format!("!document.body.innerText.includes({})", json!(ASKS))).await;
        page.enter("Customer", "still the old build").await;
        assert_eq!(build(&page).await, first);
        // It asks again at the next start, and is still the old one.
        page.reload().await;
        page.says(ASKS).await;
        assert_eq!(build(&page).await, first);
        is_of_one_build(&page, old.path()).await;
        page.enter("Site", "typed just before").await;
        page.press("Use it now").await;
        page.until("the new build", &format!("document.documentElement.dataset.page === 'started' && document.querySelector('meta[name=bedwright-build]').content !== {}", json!(first))).await;
        assert!(build(&page).await.contains("next"));
        is_of_one_build(&page, new.path()).await;
        page.find(Role::Button, "Add a vessel").await;
        for (name, text) in [
            ("Job", "Older than the build"),
            ("Notes", "typed while the new build came"),
            ("Customer", "still the old build"),
            ("Site", "typed just before"),
        ] {
            assert_eq!(page.entered(name).await, text, "{name}");
        }
        page.ready_offline().await;
        assert!(!page.text().await.contains(ASKS));
        page.no_complaints().await;
    })
    .await;
}

/// Puts a build where it is served, all but one file.
fn publish(build: &Path, live: &Path, without: Option<&str>) {
    std::fs::remove_dir_all(live).unwrap();
    folder::copy(build, live);
    if let Some(name) = without {
        std::fs::remove_file(live.join(name)).unwrap();
    }
}

/// Every file of a build that its worker lists, and the worker itself.
fn listed(build: &Path) -> Vec<String> {
    let worker = std::fs::read_to_string(build.join("sw.js")).unwrap();
    let list = worker.split("const FILES = [").nth(1).unwrap().split("];").next().unwrap();
    let mut names: Vec<String> = list
        .split(',')
        .map(|name| name.trim().trim_matches('"').trim_start_matches("./").to_owned())
        .filter(|name| !name.is_empty())
        .collect();
    names.extend(["index.html".to_owned(), "sw.js".to_owned()]);
    assert!(names.len() >= 8, "{names:?}");
    names
}

/// One wasm in three builds, and the folder that is served: the first.
fn three_builds() -> [Folder; 4] {
    let folders = ["a", "b", "c", "live"].map(Folder::new);
    let [first, second, third, live] = &folders;
    folder::copy(&site::built(), first.path());
    bundled_again("second", second.path(), backwards);
    bundled_again("third", third.path(), from_the_middle);
    folder::copy(first.path(), live.path());
    folders
}

/// Takes the build that asks, and finds it to be the third and whole.
async fn lands_on_the_third(page: &Page, third: &Path) {
    page.press("Use it now").await;
    page.until("the third build", "document.documentElement.dataset.page === 'started' && document.querySelector('meta[name=bedwright-build]').content.includes('third')").await;
    page.find(Role::Button, "Add a vessel").await;
    is_of_one_build(page, third).await;
    page.ready_offline().await;
}

/// One wasm in three builds. The second is published with each of its files missing in turn, then comes late, file by file; the
/// third is whole. A visitor of the first never sees a mixture, and goes from the first to the third.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_visitor_who_skips_a_build_lands_on_one_whole_build_whatever_is_missing() {
    let folders = three_builds();
    let [first, second, third, live] = &folders;
    let site = Site::serve_folder(live.path());
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        page.ready_offline().await;
        let label = build(&page).await;
        filter::new_job(&page, "Through three builds").await;
        let mut missing = 0;
        for name in listed(second.path()) {
            publish(second.path(), live.path(), Some(&name));
            page.reload().await;
            // Time for the worker of the second build to try.
            tokio::time::sleep(std::time::Duration::from_millis(600)).await;
            assert_eq!(build(&page).await, label, "without {name}");
            assert!(!page.text().await.contains(ASKS), "without {name}");
            is_of_one_build(&page, first.path()).await;
            page.enter("Notes", &format!("while {name} was missing")).await;
            missing += 1;
        }
        // It comes late: file by file, the worker first of all.
        for name in ["sw.js", "index.html"] {
            publish(first.path(), live.path(), None);
            std::fs::copy(second.path().join(name), live.path().join(name)).unwrap();
            page.reload().await;
            tokio::time::sleep(std::time::Duration::from_millis(600)).await;
            assert_eq!(build(&page).await, label, "{name} came first");
            assert!(!page.text().await.contains(ASKS), "{name} came first");
            is_of_one_build(&page, first.path()).await;
        }
        publish(third.path(), live.path(), None);
        page.reload().await;
        page.says(ASKS).await;
        is_of_one_build(&page, first.path()).await;
        lands_on_the_third(&page, third.path()).await;
        assert_eq!(page.entered("Job").await, "Through three builds");
        assert_eq!(page.entered("Notes").await, "while sw.js was missing");
        println!("{missing} files missing in turn, 2 come late: always one build");
        // Files were missing, and the browser said so.
        let complaints = page.complaints().await;
        assert!(complaints.iter().all(|said| said.contains("404") || said.contains("sw.js")), "{complaints:?}");
    })
    .await;
}

/// The second build comes over a connection that breaks in the middle of one file or another, then the host changes to the third
/// while the second is on its way, then all comes slowly: until the last byte is there the page is the first build's, asks
/// nothing and keeps what is typed.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn files_that_come_slowly_or_in_part_change_nothing_until_all_are_there() {
    let folders = three_builds();
    let [first, second, third, live] = &folders;
    let site = Site::serve_folder(live.path());
    let connection = Connection::to(&site.address());
    visit(Screen::Phone, &connection.address(), async |page: Page| {
        page.started().await;
        page.ready_offline().await;
        let label = build(&page).await;
        filter::new_job(&page, "Over a slow connection").await;
        let mut typed = 0;
        let mut still_the_first = async |what: &str| {
            assert_eq!(build(&page).await, label, "{what}");
            assert!(!page.text().await.contains(ASKS), "{what}");
            is_of_one_build(&page, first.path()).await;
            typed += 1;
            page.enter("Notes", &format!("{typed}: {what}")).await;
        };
        publish(second.path(), live.path(), None);
        let names = listed(second.path());
        let ending = |ending: &str| names.iter().find(|name| name.ends_with(ending)).cloned().unwrap();
        for name in [ending(".wasm"), ending(".css"), "index.html".to_owned(), ending(".js"), "sw.js".to_owned()] {
            // The page itself is asked for by its folder.
            let of = if name == "index.html" { "/" } else { name.as_str() };
            connection.takes(vec![Pace { breaks: true, ..Pace::new(of) }]);
            page.reload().await;
            tokio::time::sleep(Duration::from_millis(800)).await;
            still_the_first(&format!("{name} broke off")).await;
        }
        // The host has the third build before the second's page was asked for.
        connection.takes(vec![Pace { before: Duration::from_secs(2), ..Pace::new("/") }]);
        page.reload().await;
        tokio::time::sleep(Duration::from_millis(800)).await;
        publish(third.path(), live.path(), None);
        tokio::time::sleep(Duration::from_millis(2500)).await;
        still_the_first("the host changed meanwhile").await;
        // Every file of it takes a while, the program longest.
        let slow = |of: &str, seconds: u64| Pace { over: Duration::from_secs(seconds), ..Pace::new(of) };
        connection.takes(vec![slow(".wasm", 6), slow("", 2)]);
        let begun = Instant::now();
        page.reload().await;
        for _ in 0..3 {
            tokio::time::sleep(Duration::from_millis(700)).await;
            if begun.elapsed() < Duration::from_secs(5) {
                still_the_first("on its way").await;
            }
        }
        page.until_within(
            Duration::from_secs(30),
            "it asks",
            &format!("document.body.innerText.includes({})", json!(ASKS)),
        )
        .await;
        assert!(begun.elapsed() > Duration::from_secs(6), "it came slowly");
        let notes = page.entered("Notes").await;
        assert!(notes.ends_with("on its way"), "{notes}");
        lands_on_the_third(&page, third.path()).await;
        assert_eq!(page.entered("Job").await, "Over a slow connection");
        assert_eq!(page.entered("Notes").await, notes);
        let complaints = page.complaints().await;
        let expected = |said: &String| {
            ["404", "sw.js", "ERR_CONTENT_LENGTH_MISMATCH", "ERR_INCOMPLETE"].iter().any(|part| said.contains(part))
        };
        assert!(complaints.iter().all(expected), "{complaints:?}");
    })
    .await;
}
