//! The page written to disk, the previous build's files kept beside it.
//!
//! A phone that still shows the previous page may ask for one of its files after the new page was put up, so the
//! files of one build before stay. `build.txt` says which are which; nothing that it does not name is ever deleted.
use crate::page::Page;
use crate::{Outcome, at};
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

/// The record of what was written.
const RECORD: &str = "build.txt";

/// What a folder holds.
#[derive(Debug, Default, PartialEq, Eq)]
struct Record {
    build: String,
    now: BTreeSet<String>,
    before: BTreeSet<String>,
}

impl Record {
    /// Reads what [`Record::text`] wrote.
    fn read(text: &str) -> Self {
        let mut record = Self::default();
        for line in text.lines() {
            match line.split_once(' ') {
                Some(("build", id)) => record.build = id.to_owned(),
                Some(("now", name)) => drop(record.now.insert(name.to_owned())),
                Some(("before", name)) => drop(record.before.insert(name.to_owned())),
                _ => {}
            }
        }
        record
    }

    fn text(&self) -> String {
        let mut text = format!("build {}\n", self.build);
        for (word, names) in [("now", &self.now), ("before", &self.before)] {
            for name in names {
                text.push_str(&format!("{word} {name}\n"));
            }
        }
        text
    }
}

/// Writes the page; `index.html` and `sw.js` last, so that neither names a file that is not there yet.
pub fn write(page: &Page, out: &Path) -> Outcome<()> {
    fs::create_dir_all(out).map_err(at("make", out))?;
    let record = out.join(RECORD);
    let old = match fs::read_to_string(&record) {
        Ok(text) => Record::read(&text),
        Err(_) if is_empty(out)? => Record::default(),
        Err(_) => {
            return Err(format!(
                "{} holds files that are not a page built here; choose an empty folder",
                out.display()
            ));
        }
    };
    for (name, bytes) in &page.files {
        let path = out.join(name);
        if let Some(folder) = path.parent() {
            fs::create_dir_all(folder).map_err(at("make", folder))?;
        }
        if fs::read(&path).is_ok_and(|there| there == *bytes) {
            continue;
        }
        // Whole or not at all: a file may be served while it is written.
        let part = path.with_extension("part");
        fs::write(&part, bytes).map_err(at("write", &part))?;
        fs::rename(&part, &path).map_err(at("write", &path))?;
    }
    let now: BTreeSet<String> = page.files.iter().map(|(name, _)| name.clone()).collect();
    let before = if old.build == page.build { old.before.clone() } else { old.now.clone() };
    let new = Record { build: page.build.clone(), now, before };
    for name in old.before.difference(&new.before).filter(|name| !new.now.contains(*name)) {
        if inside(name) {
            let path = out.join(name);
            if path.is_file() {
                fs::remove_file(&path).map_err(at("remove", &path))?;
            }
        }
    }
    fs::write(&record, new.text()).map_err(at("write", &record))
}

/// A record is only believed about files below its own folder.
fn inside(name: &str) -> bool {
    Path::new(name).components().all(|part| matches!(part, std::path::Component::Normal(_)))
}

fn is_empty(folder: &Path) -> Outcome<bool> {
    Ok(fs::read_dir(folder).map_err(at("read", folder))?.next().is_none())
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    fn page(build: &str, wasm: &str) -> Page {
        Page {
            build: build.into(),
            files: vec![
                (wasm.into(), b"w".to_vec()),
                ("icons/icon.svg".into(), b"i".to_vec()),
                ("index.html".into(), build.as_bytes().to_vec()),
            ],
        }
    }

    #[test]
    fn one_build_before_stays_and_older_ones_go() {
        let out = std::env::temp_dir().join(format!("bedwright-folder-{}", std::process::id()));
        write(&page("A", "a.wasm"), &out).unwrap();
        fs::write(out.join("CNAME"), "the host's own").unwrap();
        write(&page("B", "b.wasm"), &out).unwrap();
        write(&page("B", "b.wasm"), &out).unwrap();
        assert!(out.join("a.wasm").is_file() && out.join("b.wasm").is_file());
        write(&page("C", "c.wasm"), &out).unwrap();
        assert!(!out.join("a.wasm").exists());
        assert!(out.join("b.wasm").is_file() && out.join("c.wasm").is_file());
        assert!(out.join("icons/icon.svg").is_file() && out.join("CNAME").is_file());
        assert_eq!(fs::read_to_string(out.join("index.html")).unwrap(), "C");
        fs::remove_dir_all(out).unwrap();
    }

    #[test]
    fn a_folder_of_something_else_is_left_alone() {
        let out = std::env::temp_dir().join(format!("bedwright-other-{}", std::process::id()));
        fs::create_dir_all(&out).unwrap();
        fs::write(out.join("notes.txt"), "mine").unwrap();
        assert!(write(&page("A", "a.wasm"), &out).is_err());
        assert_eq!(fs::read_dir(&out).unwrap().count(), 1);
        fs::remove_dir_all(out).unwrap();
    }

    #[test]
    fn a_record_cannot_point_outside_its_folder() {
        assert!(inside("icons/icon.svg"));
        assert!(!inside("../x") && !inside("/etc/x") && !inside("a/../../x"));
    }
}
