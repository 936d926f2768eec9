//! Jobs as files: saved from here, opened here.

use bedwright_edge::fault::Fault;
use bedwright_edge::files;
use bedwright_job::saved::{self, Unreadable};
use bedwright_job::words::Label;

use super::{Desk, new_id};
use crate::notices::{self, Notice};
use crate::route::Route;

impl Desk {
    /// Saves the open job as a file: shared where the device does it that way, else downloaded.
    pub fn save_file(self) {
        let Some(job) = self.open_now() else { return };
        let title: String =
            job.head.body.title.chars().map(|c| if c.is_alphanumeric() { c } else { '-' }).take(40).collect();
        let name = format!("{}.bedwright.json", if title.is_empty() { job.id.to_string() } else { title });
        let text = saved::job_text(&job);
        wasm_bindgen_futures::spawn_local(async move {
            if files::should_share() && files::can_share_file(&name, "application/json") {
                files::share_file(&name, "application/json", text.as_bytes()).await;
            } else {
                // A browser that refuses says so itself.
                let _ = files::download(&name, "application/json", text.as_bytes());
            }
        });
    }

    /// Opens a job file a person picks: always as a job of its own.
    pub fn open_file(self) {
        wasm_bindgen_futures::spawn_local(async move {
            match files::pick_file(".json,application/json", saved::LONGEST as u64).await {
                Ok(None) => {}
                Ok(Some((_, bytes))) => self.take_file(&bytes),
                Err(Fault::TooLarge { .. }) => notices::put(self.notices, Notice::FileNotRead(Label::FileNotAJob)),
                Err(_) => notices::put(self.notices, Notice::FileNotRead(Label::FileDamaged)),
            }
        });
    }

    fn take_file(self, bytes: &[u8]) {
        let read = std::str::from_utf8(bytes).map_err(|_| Label::FileNotAJob).and_then(|text| {
            saved::read_job(text).map_err(|why| match why {
                Unreadable::TooNew { .. } => Label::FileTooNew,
                Unreadable::NotJson { .. } | Unreadable::Lacks { .. } => Label::FileDamaged,
                Unreadable::OtherFormat | Unreadable::TooLong { .. } => Label::FileNotAJob,
            })
        });
        match read {
            Err(why) => notices::put(self.notices, Notice::FileNotRead(why)),
            Ok(mut job) => {
                if self.shelf.with_untracked(|shelf| shelf.contains_key(&job.id)) {
                    job.id = new_id();
                }
                let id = self.shelve(job);
                self.go(&Route::Job(id));
            }
        }
    }

    /// Saves texts that were set aside as a file.
    pub fn download_aside(self, keys: &[String]) {
        let texts: Vec<String> = keys
            .iter()
            .filter_map(|key| bedwright_edge::storage::read(key).ok().flatten().map(|text| format!("{key}\n{text}\n")))
            .collect();
        // A browser that refuses says so itself.
        let _ = files::download("bedwright-set-aside.txt", "text/plain", texts.join("\n").as_bytes());
    }
}
