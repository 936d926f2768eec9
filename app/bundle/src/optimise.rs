//! wasm-opt, where it can be had.
//!
//! The npm package `binaryen` carries it as a script for node, so no compiler is needed. It is installed once into
//! a folder inside cargo's output. Older builds that a system may carry are never used: they give a module that
//! ends without an error and never starts. Features are left to be detected from the wasm's own
//! `target_features` section; asking for all of them gives a module that browsers refuse.
//!
//! Measured, in brotli: one round 630.3 kB, a second one 1 kB less and a third nothing more; 5.5 kB less where it may count on
//! the first 1024 bytes of memory being unused (the very end of the stack lies there, which grows towards 0 and would
//! stop the page a moment later), so that a field's place is part of the instruction that reads it; 2.2 kB less where what
//! has one caller isn't put into it; 4 kB less, 2 of them in the script, where the two call each other's parts by short names.
use crate::{Outcome, at};
use std::collections::HashMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// The release that was proved with this page.
const BINARYEN: &str = "132.0.0";

/// What an optimised wasm was made with; part of the name under which it is kept.
pub const RECIPE: &str = "binaryen-132.0.0-Oz-Oz-low-similar-apart-names";

/// How it is asked for that.
const ASKED: [&str; 7] = [
    "-Oz",
    "-Oz",
    "--low-memory-unused",
    "--merge-similar-functions",
    "--one-caller-inline-max-function-size",
    "0",
    "--minify-imports-and-exports-and-modules",
];

/// wasm-opt, ready to run.
pub struct Optimiser {
    script: PathBuf,
}

impl Optimiser {
    /// The optimiser kept in `folder`, fetched first if need be; or one line that says why there is none.
    pub fn find(folder: &Path) -> Outcome<Self> {
        let home = folder.join(format!("binaryen-{BINARYEN}"));
        let script = home.join("node_modules/binaryen/bin/wasm-opt");
        runs("node")?;
        if !script.is_file() {
            runs("npm")?;
            fs::create_dir_all(&home).map_err(at("make", &home))?;
            println!("fetching binaryen {BINARYEN} with npm, once");
            let done = Command::new("npm")
                .args(["install", "--no-save", "--no-audit", "--no-fund", "--ignore-scripts"])
                .args(["--no-package-lock", "--loglevel", "error", "--prefix"])
                .arg(&home)
                .arg(format!("binaryen@{BINARYEN}"))
                .current_dir(&home)
                .stdin(Stdio::null())
                .stdout(Stdio::null())
                .output()
                .map_err(|error| format!("npm cannot be started: {error}"))?;
            if !done.status.success() || !script.is_file() {
                let said = String::from_utf8_lossy(&done.stderr);
                let first = said.lines().next().unwrap_or("no reason given");
                return Err(format!("npm could not install binaryen {BINARYEN} ({first})"));
            }
        }
        Ok(Self { script })
    }

    /// Makes the wasm smaller in place, and gives what it asks its script for in the names it has now; both stay as they
    /// were when that fails.
    pub fn shrink(&self, wasm: &Path, script: &Path) -> Outcome<()> {
        let text = fs::read_to_string(script).map_err(at("read", script))?;
        let smaller = wasm.with_extension("smaller");
        let done = Command::new("node")
            .arg(&self.script)
            .args(ASKED)
            .arg(wasm)
            .arg("-o")
            .arg(&smaller)
            .stdin(Stdio::null())
            .output()
            .map_err(|error| format!("node cannot be started: {error}"))?;
        let made = fs::read(&smaller).unwrap_or_default();
        if !done.status.success() || !made.starts_with(b"\0asm") {
            let said = String::from_utf8_lossy(&done.stderr);
            let first = said.lines().next().unwrap_or("no reason given");
            let _ = fs::remove_file(&smaller);
            return Err(format!("wasm-opt failed ({first})"));
        }
        let text = renamed(&text, &names(&String::from_utf8_lossy(&done.stdout))?);
        fs::write(script, text).map_err(at("write", script))?;
        fs::rename(&smaller, wasm).map_err(at("replace", wasm))
    }
}

/// What a wasm and its script call each other's parts: the name before, the name now.
struct Names {
    /// What the script hands in.
    imports: HashMap<String, String>,
    /// What the wasm hands out.
    exports: HashMap<String, String>,
    /// What the script hands in stands under one of these.
    modules: Vec<String>,
}

/// As wasm-opt tells it in JSON: `{"imports": [[module, before, now], …], "exports": [[before, now], …]}`.
fn names(told: &str) -> Outcome<Names> {
    let told: serde_json::Value =
        serde_json::from_str(told).map_err(|error| format!("wasm-opt told no names ({error})"))?;
    let rows = |key: &str| -> Option<Vec<Vec<String>>> {
        let text = |value: &serde_json::Value| value.as_str().map(str::to_owned);
        told.get(key)?.as_array()?.iter().map(|row| row.as_array()?.iter().map(text).collect()).collect()
    };
    let read = || {
        let mut names = Names { imports: HashMap::new(), exports: HashMap::new(), modules: Vec::new() };
        for row in rows("imports")? {
            let [module, before, now] = row.try_into().ok()?;
            names.imports.insert(before, now);
            names.modules.push(module);
        }
        for row in rows("exports")? {
            let [before, now] = row.try_into().ok()?;
            names.exports.insert(before, now);
        }
        Some(names)
    };
    read().ok_or_else(|| "wasm-opt told names in a way of its own".to_owned())
}

/// The one module that all is imported from afterwards.
const MODULE: &str = "a";

/// A script with other names: whole words only, and of what the wasm hands out those that stand behind `wasm.`.
fn renamed(script: &str, names: &Names) -> String {
    let part_of_name = |letter: char| letter.is_ascii_alphanumeric() || letter == '_' || letter == '$';
    let mut text = String::new();
    let mut rest = script;
    while let Some(start) = rest.find(part_of_name) {
        let (before, name) = rest.split_at(start);
        let (name, after) = name.split_at(name.find(|letter| !part_of_name(letter)).unwrap_or(name.len()));
        text.push_str(before);
        let known = if text.ends_with("wasm.") { names.exports.get(name) } else { names.imports.get(name) };
        text.push_str(known.map_or(name, String::as_str));
        rest = after;
    }
    text.push_str(rest);
    for module in &names.modules {
        text = text.replace(&format!("{module:?}: "), &format!("{MODULE}: "));
    }
    text
}

/// Whether a program answers to `--version`.
fn runs(program: &str) -> Outcome<()> {
    Command::new(program)
        .arg("--version")
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status()
        .ok()
        .filter(std::process::ExitStatus::success)
        .map(|_| ())
        .ok_or_else(|| format!("{program} is not installed"))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn a_script_takes_the_names_over_that_wasm_opt_tells() {
        let told = r#"{ "imports": [["./a_bg.js", "__wbg_get_1a", "$a"], ["./a_bg.js", "__wbg_get_1ab", "b"]],
            "exports": [["memory", "ed"], ["start", "fd"]] }"#;
        let script =
            "import0 = { __wbg_get_1a: function(memory) {}, __wbg_get_1ab: f(__wbg_get_1a) }; // __wbg_get_1abc
            return { \"./a_bg.js\": import0 }; wasm.memory.buffer; wasm.start(); start";
        let expected = "import0 = { $a: function(memory) {}, b: f($a) }; // __wbg_get_1abc
            return { a: import0 }; wasm.ed.buffer; wasm.fd(); start";
        assert_eq!(renamed(script, &names(told).unwrap()), expected);
        assert!(names("").is_err());
        assert!(names("{}").is_err());
    }
}
