//! A new build: it asks, waits, never mixes its files with the old one's, and loses nothing.

use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::json;

use crate::browser::{Screen, visit};
use crate::filter;
use crate::folder::{self, Folder};
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
fn bundled_again(label: &str, to: &Path) {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
    let done = Command::new(site::bundle())
        .current_dir(root)
        .env("CARGO_TARGET_DIR", std::env::current_exe().unwrap().ancestors().nth(3).unwrap())
        .args(["build", "--label", label, "--wasm"])
        .arg(wasm())
        .arg("--out")
        .arg(to)
        .output()
        .unwrap();
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    rename_hashed(to);
}

/// The same wasm gives files of the same names. Another version has others: each hash is turned round, everywhere.
fn rename_hashed(folder: &Path) {
    let names: Vec<String> =
        std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    let hashes: Vec<&str> = names
        .iter()
        .filter_map(|name| name.split_once('.')?.0.rsplit_once('-'))
        .map(|(_, hash)| hash)
        .filter(|hash| hash.len() == 16 && hash.bytes().all(|byte| byte.is_ascii_hexdigit()))
        .collect();
    assert!(hashes.len() >= 5, "{names:?}");
    let turned = |text: &str| {
        hashes.iter().fold(text.to_owned(), |text, hash| text.replace(hash, &hash.chars().rev().collect::<String>()))
    };
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
    bundled_again("next", new.path());
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
