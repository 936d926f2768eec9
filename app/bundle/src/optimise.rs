//! wasm-opt, where it can be had.
//!
//! The npm package `binaryen` carries it as a script for node, so no compiler is needed. It is installed once into
//! a folder inside cargo's output. Older builds that a system may carry are never used: they give a module that
//! ends without an error and never starts. Features are left to be detected from the wasm's own
//! `target_features` section; asking for all of them gives a module that browsers refuse.
use crate::{Outcome, at};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// The release that was proved with this page.
const BINARYEN: &str = "132.0.0";

/// What an optimised wasm was made with; part of the name under which it is kept.
pub const RECIPE: &str = "binaryen-132.0.0-Oz";

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

    /// Makes the wasm smaller in place; it stays as it was when that fails.
    pub fn shrink(&self, wasm: &Path) -> Outcome<()> {
        let smaller = wasm.with_extension("smaller");
        let done = Command::new("node")
            .arg(&self.script)
            .arg("-Oz")
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
        fs::rename(&smaller, wasm).map_err(at("replace", wasm))
    }
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
