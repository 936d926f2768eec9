//! Builds the page into a folder and serves it.
//!
//! `cargo run` builds and serves on this machine; `cargo run -- build --out DIR` writes the folder that any static
//! host can serve, from any sub-path. One module, one job:
//!
//! | module | job |
//! |---|---|
//! | [`options`] | what was asked for on the command line |
//! | [`compile`] | cargo: the page's crate to wasm |
//! | [`bind`] | wasm and its script, bound and optimised, kept by content |
//! | [`optimise`] | wasm-opt, where it can be had |
//! | [`css`] | the screens' style sheets joined into one |
//! | [`lean`] | scripts and sheets without comments and indentation |
//! | [`names`] | content hashes: file names and the build's id |
//! | [`worker`] | the service worker with its list of files |
//! | [`page`] | everything put together |
//! | [`single`] | everything put together in one file |
//! | [`folder`] | the page written to disk, the previous build's files kept beside it |
//! | [`weight`] | what the page weighs on the wire |
//! | [`serve`], [`request`], [`mime`] | the static server |
mod bind;
mod compile;
mod css;
mod folder;
mod lean;
mod mime;
mod names;
mod optimise;
mod options;
mod page;
mod request;
mod serve;
mod single;
mod weight;
mod worker;

use options::{Build, Task};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

/// Either what was wanted, or one sentence that says what failed and why.
type Outcome<T> = Result<T, String>;

/// Turns an error about a path into a sentence: what was tried, where, why it failed.
fn at<E: std::fmt::Display>(what: &str, path: &Path) -> impl FnOnce(E) -> String {
    move |error| format!("cannot {what} {}: {error}", path.display())
}

/// The workspace: from cargo when it runs us (the folder may have been moved), else where this program was built.
/// Cargo tells every program that it starts its own crate's folder, so another crate's is not believed.
fn workspace() -> PathBuf {
    let crate_folder = std::env::var_os("CARGO_MANIFEST_DIR")
        .map(PathBuf::from)
        .filter(|folder| folder.ends_with("app/bundle"))
        .unwrap_or_else(|| PathBuf::from(env!("CARGO_MANIFEST_DIR")));
    crate_folder.ancestors().nth(2).map_or_else(|| PathBuf::from("."), Path::to_path_buf)
}

fn main() -> ExitCode {
    match options::read(std::env::args().skip(1)).and_then(carry_out) {
        Ok(()) => ExitCode::SUCCESS,
        Err(trouble) => {
            eprintln!("bundle: {trouble}");
            ExitCode::FAILURE
        }
    }
}

/// Does what was asked.
fn carry_out(task: Task) -> Outcome<()> {
    match task {
        Task::Help => {
            print!("{}", options::HELP);
            Ok(())
        }
        Task::Build(build) => build_into(&build, true).map(|_| ()),
        Task::Serve { dir, listen } => serve::forever(&dir, listen),
        Task::BuildAndServe { build, listen } => {
            // Taken before the build, so that a port in use is told at once.
            let listener = serve::listen(listen)?;
            let dir = build_into(&build, false)?;
            serve::answer(&listener, &dir, listen)
        }
    }
}

/// Builds the page; the folder it was written to. With `weighed` it is weighed in every encoding.
fn build_into(build: &Build, weighed: bool) -> Outcome<PathBuf> {
    let root = workspace();
    let wasm = match &build.wasm {
        Some(file) => compile::Compiled::given(file, &root)?,
        None => compile::page(&root, build.page.as_deref())?,
    };
    let bound = bind::page(&wasm)?;
    let reader = bind::reader(&wasm)?;
    if build.single {
        let single = single::assemble(&root, &bound, reader.as_ref(), build.label.as_deref())?;
        let out = build.out.clone().unwrap_or_else(|| wasm.kept.clone());
        let file = single::write(&single, &out)?;
        println!("build {} is in {}, {} bytes", single.build, file.display(), single.html.len());
        return Ok(file);
    }
    let page = page::assemble(&root, bound, reader, build.label.as_deref())?;
    let out = build.out.clone().unwrap_or_else(|| wasm.kept.join("site"));
    folder::write(&page, &out)?;
    weight::report(&page, &wasm.kept.join("weights"), weighed);
    println!("build {} is in {}", page.build, out.display());
    Ok(out)
}
