//! House rules: what the layout and the layers promise, held by tests.

mod checks;
mod crates;
mod docs;
mod files;
mod sentences;
mod views;

use std::path::{Path, PathBuf};

/// The repository.
fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap().to_path_buf()
}

/// Every file of the repository that belongs to it: nothing built, nothing of git's.
fn files() -> Vec<PathBuf> {
    let mut found = Vec::new();
    walk(&root(), &mut found);
    found.sort();
    assert!(found.len() > 60, "only {} files: is this the repository?", found.len());
    found
}

fn walk(folder: &Path, found: &mut Vec<PathBuf>) {
    const NOT_OURS: &[&str] = &[".git", "target", "dist", "node_modules", "__pycache__", ".venv"];
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        if NOT_OURS.contains(&name.as_str()) {
            continue;
        }
        if path.is_dir() {
            walk(&path, found);
        } else {
            found.push(path);
        }
    }
}

/// The same under one folder, with one ending.
fn files_in(folder: &str, ending: &str) -> Vec<PathBuf> {
    let folder = root().join(folder);
    let found: Vec<PathBuf> = files()
        .into_iter()
        .filter(|path| path.starts_with(&folder) && path.to_string_lossy().ends_with(ending))
        .collect();
    assert!(!found.is_empty(), "no {ending} in {}", folder.display());
    found
}

/// A path as it is said.
fn said(path: &Path) -> String {
    path.strip_prefix(root()).unwrap_or(path).display().to_string()
}

/// Text of a file; nothing for what is not text.
fn text(path: &Path) -> String {
    std::fs::read(path).ok().and_then(|bytes| String::from_utf8(bytes).ok()).unwrap_or_default()
}

/// Fails with every breach of a rule.
#[track_caller]
fn none(rule: &str, breaches: &[String]) {
    assert!(breaches.is_empty(), "{rule}:\n{}", breaches.join("\n"));
}
