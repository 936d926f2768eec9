//! Cargo: the page's crate to wasm.
use crate::{Outcome, at};
use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// The target that browsers run.
const TARGET: &str = "wasm32-unknown-unknown";
/// The crate of the page, and its binary.
const PAGE: &str = "bedwright-app";
/// The crate that reads codes, and its binary.
const READER: &str = "bedwright-reader";

/// A wasm as cargo leaves it.
pub struct Compiled {
    /// The wasm.
    pub wasm: PathBuf,
    /// The reader of codes; none where only the page's own wasm was given, and none lies beside it.
    pub reader: Option<PathBuf>,
    /// A folder inside cargo's output where work is kept from one build to the next.
    pub kept: PathBuf,
}

impl Compiled {
    /// A wasm that was built before.
    pub fn given(wasm: &Path, root: &Path) -> Outcome<Self> {
        if !wasm.is_file() {
            return Err(format!("there is no file {}", wasm.display()));
        }
        let target = std::env::var_os("CARGO_TARGET_DIR").map_or_else(|| root.join("target"), |dir| root.join(dir));
        let reader = Some(wasm.with_file_name(READER).with_extension("wasm")).filter(|reader| reader.is_file());
        Ok(Self { wasm: wasm.to_path_buf(), reader, kept: target.join("bundle") })
    }
}

/// The cargo that runs us, else the one in the path.
fn cargo() -> OsString {
    std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into())
}

/// Builds the page's wasm and the reader's with the profile they are shipped in; of another crate than the page's, that alone.
pub fn page(root: &Path, other: Option<&str>) -> Outcome<Compiled> {
    need_target(root)?;
    let wasm = built(root, other.unwrap_or(PAGE))?;
    let reader = if other.is_none() { Some(built(root, READER)?) } else { None };
    // <target folder>/<target>/<profile>/<file>
    let kept =
        wasm.ancestors().nth(3).ok_or_else(|| format!("{} is not in a target folder", wasm.display()))?.join("bundle");
    Ok(Compiled { wasm, reader, kept })
}

/// Builds one of the two, and says where it is.
fn built(root: &Path, name: &str) -> Outcome<PathBuf> {
    println!("building {name} for {TARGET}");
    let output = Command::new(cargo())
        .current_dir(root)
        .args(["rustc", "--locked", "--profile", "page"])
        .args(["--target", TARGET, "--package", name, "--bin", name])
        .arg("--config")
        .arg(format!("target.{TARGET}.rustflags=[{}]", flags(root)))
        .arg("--message-format=json-render-diagnostics")
        .arg("--")
        // Older compilers end with an error where they are asked for this.
        .args(ASKED.iter().map(|option| format!("-Cllvm-args=--{option}")).filter(|flag| takes(flag)))
        .stderr(Stdio::inherit())
        .output()
        .map_err(|error| format!("cannot start cargo: {error}"))?;
    if !output.status.success() {
        return Err(format!("cargo could not build {name}; it says why above"));
    }
    let messages = String::from_utf8_lossy(&output.stdout);
    artifact(&messages, name).ok_or_else(|| format!("cargo did not say where it put {name}.wasm"))
}

/// What the code generator is asked for. What is moved from one place to another, a text of 12 bytes or a screen's closure,
/// is moved by wasm's own instruction and not word by word (measured: 17 kB of 625 in brotli); a loop counts once, not once
/// an array (7 kB); nothing is kept aside or written twice so that a loop or a branch is quicker (3 kB). Said to the last
/// crate alone, which all others are linked into before any of it becomes wasm.
const ASKED: [&str; 9] = [
    "max-store-memcpy=1",
    "max-store-memmove=1",
    "max-store-memset=1",
    "disable-lsr",
    "disable-machine-licm",
    "enable-pre=false",
    "enable-load-pre=false",
    "disable-early-taildup",
    "disable-tail-duplicate",
];

/// The compiler that cargo runs.
fn rustc() -> OsString {
    std::env::var_os("RUSTC").unwrap_or_else(|| "rustc".into())
}

/// Whether the compiler knows a flag.
fn takes(flag: &str) -> bool {
    let mut asked = Command::new(rustc());
    asked.args([flag, "--print", "sysroot"]).stdout(Stdio::null()).stderr(Stdio::null());
    asked.status().is_ok_and(|status| status.success())
}

/// What the page's code is compiled with besides its profile.
///
/// `erase_components` makes leptos compile one piece of code for all closures of a kind (measured: 8 % smaller). The
/// prefixes keep the names of this machine's folders out of what is shipped.
fn flags(root: &Path) -> String {
    let mut flags = vec!["--cfg=erase_components".to_owned(), format!("--remap-path-prefix={}=", root.display())];
    if let Some(home) = std::env::var_os("CARGO_HOME")
        .or_else(|| std::env::var_os("HOME").map(|h| Path::new(&h).join(".cargo").into_os_string()))
    {
        let sources = Path::new(&home).join("registry").join("src");
        for folder in std::fs::read_dir(sources).into_iter().flatten().flatten() {
            flags.push(format!("--remap-path-prefix={}/=", folder.path().display()));
        }
    }
    // JSON strings are TOML strings.
    flags.iter().map(|flag| format!("{flag:?}")).collect::<Vec<_>>().join(",")
}

/// The wasm that cargo names in its messages (one JSON object a line, reason `compiler-artifact`; The Cargo Book,
/// "External tools").
fn artifact(messages: &str, of: &str) -> Option<PathBuf> {
    messages
        .lines()
        .filter_map(|line| serde_json::from_str::<serde_json::Value>(line).ok())
        .filter(|message| {
            message.pointer("/reason").and_then(|reason| reason.as_str()) == Some("compiler-artifact")
                && message.pointer("/target/name").and_then(|name| name.as_str()) == Some(of)
        })
        .filter_map(|message| {
            let names = message.pointer("/filenames")?.as_array()?;
            names
                .iter()
                .filter_map(|name| name.as_str())
                .map(PathBuf::from)
                .find(|name| name.extension().is_some_and(|kind| kind == "wasm"))
        })
        .next_back()
}

/// Fetches the standard library for wasm if this toolchain lacks it.
fn need_target(root: &Path) -> Outcome<()> {
    let output = Command::new(rustc())
        .current_dir(root)
        .args(["--print", "sysroot"])
        .output()
        .map_err(|error| format!("cannot start rustc: {error}"))?;
    let sysroot = PathBuf::from(String::from_utf8_lossy(&output.stdout).trim());
    let library = sysroot.join("lib/rustlib").join(TARGET).join("lib");
    if library.is_dir() {
        return Ok(());
    }
    println!("this toolchain lacks {TARGET}: rustup fetches it once");
    let help = format!("install it with `rustup target add {TARGET}` and try again");
    let done = Command::new("rustup")
        .current_dir(root)
        .args(["target", "add", TARGET])
        .status()
        .map_err(|error| format!("cannot start rustup ({error}); {help}"))?;
    if !done.success() {
        return Err(format!("rustup could not add {TARGET}; {help}"));
    }
    library.is_dir().then_some(()).ok_or_else(|| at("find", &library)(help))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_flag_is_given_only_to_a_compiler_that_knows_it() {
        assert!(takes("-Copt-level=z"));
        assert!(!takes("-Cllvm-args=--there-is-no-such-flag"));
    }

    #[test]
    fn the_wasm_is_the_one_that_cargo_names() {
        let messages = concat!(
            r#"{"reason":"compiler-artifact","target":{"name":"leptos"},"filenames":["/t/libleptos.rlib"]}"#,
            "\n",
            r#"{"reason":"compiler-artifact","target":{"name":"bedwright-app"},"filenames":["/t/x.d","/t/w/page/bedwright-app.wasm"]}"#,
            "\nnot json\n",
            r#"{"reason":"build-finished","success":true}"#,
        );
        assert_eq!(artifact(messages, PAGE), Some(PathBuf::from("/t/w/page/bedwright-app.wasm")));
        assert_eq!(artifact(messages, READER), None);
        assert_eq!(artifact(r#"{"reason":"build-finished"}"#, PAGE), None);
    }
}
