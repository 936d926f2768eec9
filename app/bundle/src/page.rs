//! Everything put together: the page as a list of files.
use crate::bind::{self, Bound};
use crate::{Outcome, at, css, lean, names, worker};
use bedwright_job::words::Language;
use bedwright_job::words::language::packed;
use std::fs;
use std::path::Path;

/// Files of `public/` that do not go out under their own name.
const WORKED_IN: [&str; 8] =
    ["boot.js", "crash.js", "sentences.js", "sw.js", "codes.js", "inside.js", "single.html", "notice.css"];

/// Pictures that only a browser's offer to install shows: no phone keeps them.
const SHOWN_BY_STORES: &str = "screens/";

/// The page, ready to be written.
pub struct Page {
    /// The build's id.
    pub build: String,
    /// Path below the page, bytes; `index.html` and `sw.js` last.
    pub files: Vec<(String, Vec<u8>)>,
}

/// Puts the page together from the repository at `root`, the bound wasm, and the reader of codes where there is one.
pub fn assemble(root: &Path, bound: Bound, reader: Option<Bound>, label: Option<&str>) -> Outcome<Page> {
    let public = root.join("public");
    let mut files = Vec::new();
    let mut add = |stem: &str, ending: &str, bytes: Vec<u8>| {
        let name = names::hashed(stem, ending, &bytes);
        files.push((name.clone(), bytes));
        name
    };

    // The script names the wasm, so its own name follows from the wasm's.
    let named = |script: &str, wasm: &str| {
        let names_it = script.contains(bind::WASM_NAME);
        names_it
            .then(|| lean::script(&script.replace(bind::WASM_NAME, wasm)))
            .ok_or_else(|| format!("the bound script does not name {}", bind::WASM_NAME))
    };
    let wasm = add("app", "wasm", bound.wasm);
    let script = add("app", "js", named(&bound.script, &wasm)?.into_bytes());
    let mut codes = String::new();
    if let Some(reader) = reader {
        let wasm = add("reader", "wasm", reader.wasm);
        let script = add("reader", "js", named(&reader.script, &wasm)?.into_bytes());
        let worker = text_of(&public.join("codes.js"))?;
        let worker = filled(&worker, &[("{{reader_script}}", &script)])?;
        codes = ["./", &add("codes", "js", lean::script(&worker).into_bytes())].concat();
    }
    let style = css::joined(&public.join("notice.css"), &root.join("app/src"))?;
    let style = add("app", "css", lean::style(&style).into_bytes());
    let sentences = add("sentences", "js", lean::script(&text_of(&public.join("sentences.js"))?).into_bytes());
    let boot = add("boot", "js", lean::script(&text_of(&public.join("boot.js"))?).into_bytes());
    let crash = add("crash", "js", lean::script(&text_of(&public.join("crash.js"))?).into_bytes());
    // English is in the wasm.
    let spanish = add("texts-es", "txt", packed(Language::Spanish).into_bytes());
    let french = add("texts-fr", "txt", packed(Language::French).into_bytes());

    files.extend(bound.snippets);
    files.extend(bind::files(&public)?.into_iter().filter(|(name, _)| !WORKED_IN.contains(&name.as_str())));

    let index = text_of(&root.join("index.html"))?;
    let sw = lean::script(&text_of(&public.join("sw.js"))?);
    let build = names::build_id(
        label,
        files
            .iter()
            .map(|(name, bytes)| (name.as_str(), bytes.as_slice()))
            .chain([("index.html", index.as_bytes()), ("sw.js", sw.as_bytes())]),
    );
    let index = filled(
        &index,
        &[
            ("{{build}}", &build),
            ("{{codes}}", &codes),
            ("{{style}}", &style),
            ("{{sentences}}", &sentences),
            ("{{crash}}", &crash),
            ("{{boot}}", &boot),
            ("{{script}}", &script),
            ("{{wasm}}", &wasm),
            ("{{texts-es}}", &spanish),
            ("{{texts-fr}}", &french),
        ],
    )?;
    let listed: Vec<String> =
        files.iter().map(|(name, _)| name.clone()).filter(|name| !name.starts_with(SHOWN_BY_STORES)).collect();
    let sw = worker::filled(&sw, &build, &listed)?;
    files.push(("index.html".into(), index.into_bytes()));
    files.push(("sw.js".into(), sw.into_bytes()));
    Ok(Page { build, files })
}

/// Fills the marks of a page or script; each must be there and none may be left. What is filled in may hold anything.
pub fn filled(template: &str, values: &[(&str, &str)]) -> Outcome<String> {
    if let Some((mark, _)) = values.iter().find(|(mark, _)| !template.contains(mark)) {
        return Err(format!("a page or script lacks {mark}"));
    }
    let mut text = String::new();
    let mut rest = template;
    while let Some(start) = rest.find("{{") {
        let (before, marked) = rest.split_at(start);
        let Some((mark, value)) = values.iter().find(|(mark, _)| marked.starts_with(mark)) else {
            return Err("a page or script has a mark that nothing fills".into());
        };
        text.push_str(before);
        text.push_str(value);
        rest = marked.get(mark.len()..).unwrap_or_default();
    }
    text.push_str(rest);
    Ok(text)
}

/// A text file of the repository.
pub fn text_of(path: &Path) -> Outcome<String> {
    fs::read_to_string(path).map_err(at("read", path))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)]
    use super::*;

    fn bound(wasm: &[u8]) -> Bound {
        Bound { wasm: wasm.to_vec(), script: format!("fetch('{}')", bind::WASM_NAME), snippets: Vec::new() }
    }

    fn text(page: &Page, wanted: &str) -> String {
        let (_, bytes) = page.files.iter().find(|(name, _)| name == wanted).unwrap();
        String::from_utf8(bytes.clone()).unwrap()
    }

    #[test]
    fn every_name_that_the_page_uses_is_written_and_listed() {
        let root = crate::workspace();
        let page = assemble(&root, bound(b"\0asm"), Some(bound(b"\0asm r")), Some("A")).unwrap();
        let (index, sw) = (text(&page, "index.html"), text(&page, "sw.js"));
        assert!(index.contains(&format!("content=\"{}\"", page.build)));
        for (name, _) in &page.files {
            if name != "index.html" && name != "sw.js" && !name.starts_with(SHOWN_BY_STORES) {
                assert!(sw.contains(&format!("\"{name}\"")), "{name} is not listed");
            }
        }
        // Every address in the page is relative and is a file that is written.
        for part in index.split(['"']).filter(|part| part.starts_with("./")) {
            let name = part.trim_start_matches("./");
            assert!(page.files.iter().any(|(file, _)| file == name), "{name} is not written");
        }
        for address in ["src=\"/", "href=\"/", "http:", "https:"] {
            assert!(!index.contains(address), "{address}");
        }
    }

    #[test]
    fn nothing_runs_or_styles_from_inside_the_page() {
        let page = assemble(&crate::workspace(), bound(b"\0asm"), None, None).unwrap();
        let index = text(&page, "index.html");
        assert!(index.contains("Content-Security-Policy"));
        assert!(index.contains("script-src 'self' 'wasm-unsafe-eval'"));
        for inline in ["<style", " style=", " onload=", "<script>", "'unsafe-inline'", "'unsafe-eval'"] {
            assert!(!index.contains(inline), "{inline}");
        }
        for script in index.split("<script").skip(1) {
            assert!(script.contains(" src=\"./"));
        }
    }

    #[test]
    fn a_label_gives_a_new_build_of_the_same_files() {
        let root = crate::workspace();
        let a = assemble(&root, bound(b"\0asm"), Some(bound(b"\0asm r")), Some("A")).unwrap();
        let b = assemble(&root, bound(b"\0asm"), Some(bound(b"\0asm r")), Some("B")).unwrap();
        assert_ne!(a.build, b.build);
        assert_ne!(text(&a, "sw.js"), text(&b, "sw.js"));
        let names = |page: &Page| page.files.iter().map(|(name, _)| name.clone()).collect::<Vec<_>>();
        assert_eq!(names(&a), names(&b));
        let other = assemble(&root, bound(b"\0asm1"), None, Some("A")).unwrap();
        assert_ne!(names(&a), names(&other));
    }

    #[test]
    fn an_installed_page_finds_its_icons() {
        let page = assemble(&crate::workspace(), bound(b"\0asm"), None, None).unwrap();
        let manifest: serde_json::Value = serde_json::from_str(&text(&page, "manifest.webmanifest")).unwrap();
        assert_eq!(manifest["start_url"], ".");
        assert_eq!(manifest["scope"], ".");
        assert_eq!(manifest["display"], "standalone");
        assert_eq!(manifest["id"], "./");
        let all = |part: &str| manifest[part].as_array().unwrap().iter();
        for purpose in ["any", "maskable"] {
            assert!(all("icons").any(|icon| icon["purpose"] == purpose && icon["sizes"] == "512x512"), "{purpose}");
        }
        for form in ["narrow", "wide"] {
            assert!(all("screenshots").any(|picture| picture["form_factor"] == form), "{form}");
        }
        for shortcut in all("shortcuts") {
            assert!(shortcut["url"].as_str().unwrap().starts_with("./#/"), "{shortcut}");
        }
        // The worker answers what is sent there.
        assert!(text(&page, "sw.js").contains("new URL(\"share\", SCOPE)"));
        assert_eq!(manifest["share_target"]["action"], "./share");
        for icon in all("icons").chain(all("screenshots")) {
            let name = icon["src"].as_str().unwrap();
            let (_, bytes) = page.files.iter().find(|(file, _)| file == name).unwrap();
            if name.ends_with(".png") {
                // Width and height stand at bytes 16 to 23 of a PNG (W3C PNG, 11.2.1 IHDR).
                let size = |from: usize| u32::from_be_bytes(bytes[from..from + 4].try_into().unwrap()).to_string();
                let said = icon["sizes"].as_str().unwrap();
                assert_eq!(said, format!("{}x{}", size(16), size(20)), "{name}");
            }
        }
    }
}
