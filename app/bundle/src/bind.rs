//! Wasm and its script, bound and optimised, kept by content.
use crate::compile::Compiled;
use crate::optimise::{self, Optimiser};
use crate::{Outcome, at, names};
use std::fs;
use std::path::{Path, PathBuf};
use std::time::SystemTime;
use wasm_bindgen_cli_support::Bindgen;

/// The version of the binding; the one that the page links.
const BINDGEN: &str = "0.2.130";
/// How many bound pages are kept.
const KEEP: usize = 10;

/// The page's wasm and the script that starts it.
pub struct Bound {
    /// The wasm, final.
    pub wasm: Vec<u8>,
    /// The script, an ES module; it still names the wasm [`WASM_NAME`].
    pub script: String,
    /// Script files that crates brought with them: path below the page, bytes.
    pub snippets: Vec<(String, Vec<u8>)>,
}

/// The name by which the script asks for the wasm before both get their final names.
pub const WASM_NAME: &str = "app_bg.wasm";

/// Binds and optimises the page; a wasm that was bound before is taken from where it is kept.
pub fn page(compiled: &Compiled) -> Outcome<Bound> {
    bound(&compiled.wasm, compiled)
}

/// The same for the reader of codes, where there is one.
pub fn reader(compiled: &Compiled) -> Outcome<Option<Bound>> {
    if compiled.reader.is_none() {
        println!("no reader of codes lies beside the wasm: the page is made without one");
    }
    compiled.reader.as_ref().map(|wasm| bound(wasm, compiled)).transpose()
}

fn bound(wasm: &Path, compiled: &Compiled) -> Outcome<Bound> {
    let input = fs::read(wasm).map_err(at("read", wasm))?;
    let hash = names::sha256(&input);
    let shelf = compiled.kept.join("bound");
    let small = shelf.join(format!("{hash}-{BINDGEN}-{}", optimise::RECIPE));
    if small.is_dir() {
        return read(&small);
    }
    let plain = shelf.join(format!("{hash}-{BINDGEN}"));
    if !plain.is_dir() {
        bind(wasm, &plain)?;
    }
    let made = match Optimiser::find(&compiled.kept) {
        Ok(optimiser) => shrunk(&optimiser, &plain, &small),
        Err(why) => Err(why),
    };
    let bound = match made {
        Ok(()) => read(&small),
        Err(why) => {
            println!("the wasm is left as the compiler made it, about a tenth larger: {why}");
            read(&plain)
        }
    };
    tidy(&shelf);
    bound
}

/// Runs the binding into a folder of its own, which gets its name only when it is complete.
fn bind(wasm: &Path, folder: &Path) -> Outcome<()> {
    let stage = stage(folder)?;
    Bindgen::new()
        .input_path(wasm)
        .web(true)
        .and_then(|bindgen| {
            bindgen
                .typescript(false)
                .omit_default_module_path(false)
                .remove_name_section(true)
                .remove_producers_section(true)
                .out_name("app")
                .generate(&stage)
        })
        .map_err(|error| format!("cannot bind {}: {error:#}", wasm.display()))?;
    settle(&stage, folder)
}

/// A copy of the bound page with its wasm made smaller.
fn shrunk(optimiser: &Optimiser, plain: &Path, small: &Path) -> Outcome<()> {
    let stage = stage(small)?;
    for (name, bytes) in files(plain)? {
        let path = stage.join(&name);
        if let Some(folder) = path.parent() {
            fs::create_dir_all(folder).map_err(at("make", folder))?;
        }
        fs::write(&path, bytes).map_err(at("write", &path))?;
    }
    optimiser.shrink(&stage.join(WASM_NAME))?;
    settle(&stage, small)
}

/// An empty folder beside `folder`, for this process alone.
fn stage(folder: &Path) -> Outcome<PathBuf> {
    let stage = folder.with_extension(format!("stage-{}", std::process::id()));
    if stage.exists() {
        fs::remove_dir_all(&stage).map_err(at("clear", &stage))?;
    }
    fs::create_dir_all(&stage).map_err(at("make", &stage))?;
    Ok(stage)
}

/// Gives a complete folder its name; another build may have been first, with the same content.
fn settle(stage: &Path, folder: &Path) -> Outcome<()> {
    if let Err(error) = fs::rename(stage, folder) {
        let _ = fs::remove_dir_all(stage);
        if !folder.is_dir() {
            return Err(at("make", folder)(error));
        }
    }
    Ok(())
}

/// Reads a bound page.
fn read(folder: &Path) -> Outcome<Bound> {
    let mut bound = Bound { wasm: Vec::new(), script: String::new(), snippets: Vec::new() };
    for (name, bytes) in files(folder)? {
        match name.as_str() {
            WASM_NAME => bound.wasm = bytes,
            "app.js" => {
                bound.script = String::from_utf8(bytes).map_err(at("read", &folder.join("app.js")))?;
            }
            _ => bound.snippets.push((name, bytes)),
        }
    }
    if bound.wasm.is_empty() || bound.script.is_empty() {
        return Err(format!("{} is incomplete; delete it and try again", folder.display()));
    }
    Ok(bound)
}

/// Every file below a folder: path with `/`, bytes; by path.
pub fn files(folder: &Path) -> Outcome<Vec<(String, Vec<u8>)>> {
    let mut found = Vec::new();
    let mut open = vec![PathBuf::new()];
    while let Some(below) = open.pop() {
        let here = folder.join(&below);
        for entry in fs::read_dir(&here).map_err(at("read", &here))? {
            let entry = entry.map_err(at("read", &here))?;
            let path = below.join(entry.file_name());
            let whole = entry.path();
            if whole.is_dir() {
                open.push(path);
            } else {
                let name: Vec<_> = path.iter().map(|part| part.to_string_lossy()).collect();
                found.push((name.join("/"), fs::read(&whole).map_err(at("read", &whole))?));
            }
        }
    }
    found.sort();
    Ok(found)
}

/// Drops the oldest bound pages. What cannot be dropped now is dropped another time.
fn tidy(shelf: &Path) {
    let Ok(entries) = fs::read_dir(shelf) else {
        return;
    };
    let mut kept: Vec<(SystemTime, PathBuf)> = entries
        .filter_map(Result::ok)
        .filter_map(|entry| Some((entry.metadata().ok()?.modified().ok()?, entry.path())))
        .collect();
    kept.sort();
    let surplus = kept.len().saturating_sub(KEEP);
    for (_, folder) in kept.into_iter().take(surplus) {
        let _ = fs::remove_dir_all(folder);
    }
}
