//! Jobs as plain files: saved from here.

use bedwright_edge::files;
use bedwright_job::saved;

use super::Desk;

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
