//! A folder that ends with its value: for a browser's state, for what it downloads, for a build.

use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::{Duration, Instant};

use serde_json::json;

use crate::page::Page;

static MADE: AtomicU32 = AtomicU32::new(0);

/// An empty folder of our own.
pub struct Folder(PathBuf);

impl Folder {
    pub fn new(what: &str) -> Folder {
        let number = MADE.fetch_add(1, Ordering::Relaxed);
        let path = std::env::temp_dir().join(format!("bedwright-{}-{number}-{what}", std::process::id()));
        std::fs::create_dir_all(&path).unwrap();
        Folder(path)
    }

    pub fn path(&self) -> &Path {
        &self.0
    }

    /// From now on what the page gives to the person lands here.
    pub async fn takes_downloads(&self, page: &Page) {
        let how = json!({ "behavior": "allow", "downloadPath": self.0 });
        page.session().cdp().send_raw("Browser.setDownloadBehavior", how).await.unwrap();
    }

    /// Waits for the one file that is downloaded, and reads it: its name and its text.
    pub async fn downloaded(&self) -> (String, String) {
        let (name, bytes) = self.taken().await;
        (name, String::from_utf8(bytes).unwrap())
    }

    /// The same of a file that is no text.
    pub async fn taken(&self) -> (String, Vec<u8>) {
        let begun = Instant::now();
        loop {
            let names: Vec<String> = std::fs::read_dir(&self.0)
                .unwrap()
                .map(|entry| entry.unwrap().file_name().into_string().unwrap())
                .filter(|name| !name.ends_with(".crdownload") && !name.starts_with('.'))
                .collect();
            if let [name] = names.as_slice() {
                let bytes = std::fs::read(self.0.join(name)).unwrap();
                if !bytes.is_empty() {
                    std::fs::remove_file(self.0.join(name)).unwrap();
                    return (name.clone(), bytes);
                }
            }
            assert!(begun.elapsed() < Duration::from_secs(10), "no file came: {names:?}");
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        // A browser that is still ending may write once more.
        for _ in 0..20 {
            if std::fs::remove_dir_all(&self.0).is_ok() {
                return;
            }
            std::thread::sleep(Duration::from_millis(50));
        }
    }
}

/// Copies a folder's files, one folder deep and deeper.
pub fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).unwrap();
    for entry in std::fs::read_dir(from).unwrap() {
        let entry = entry.unwrap();
        let there = to.join(entry.file_name());
        if entry.file_type().unwrap().is_dir() {
            copy(&entry.path(), &there);
        } else {
            std::fs::copy(entry.path(), there).unwrap();
        }
    }
}
