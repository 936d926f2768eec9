//! What was asked for on the command line.
use crate::Outcome;
use std::net::{IpAddr, Ipv4Addr, SocketAddr};
use std::path::PathBuf;

/// Printed by `--help`.
pub const HELP: &str = "\
Builds the page and serves it. Nothing but Rust is needed; with node and npm the wasm gets smaller.

  cargo run                          build, then serve on this machine
  cargo run -- build --out DIR       write the page to DIR, for any static host and any sub-path
  cargo run -- build --single-file   write the page as one HTML file that opens from disk; with
                                     --out FILE that file, else beside cargo's own output
  cargo run -- serve --dir DIR       serve a folder that is already built

  --host ADDRESS    where to listen (127.0.0.1); other devices need https for the
                    service worker, the camera and locks
  --port NUMBER     where to listen (8080); 0 takes a free one
  --label NAME      goes into the build's id: letters, digits, . _ -
  --wasm FILE       bundle this wasm, built before, instead of running cargo
  --page CRATE      bundle this crate of the workspace instead of the page: tests compare it
                    with the smallest one there is
  --help            this text
";

/// One thing to do.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Task {
    /// Say how it is used.
    Help,
    /// Write the page.
    Build(Build),
    /// Serve a folder as it stands.
    Serve {
        /// The folder.
        dir: PathBuf,
        /// Where to listen.
        listen: SocketAddr,
    },
    /// Write the page and serve it.
    BuildAndServe {
        /// How to build.
        build: Build,
        /// Where to listen.
        listen: SocketAddr,
    },
}

/// How to build.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Build {
    /// Where to; beside cargo's own output when absent.
    pub out: Option<PathBuf>,
    /// Part of the build's id.
    pub label: Option<String>,
    /// A wasm that was built before.
    pub wasm: Option<PathBuf>,
    /// Another crate of the workspace than the page's.
    pub page: Option<String>,
    /// Whether the page is to be one file.
    pub single: bool,
}

/// Reads the arguments after the program's name.
pub fn read(arguments: impl IntoIterator<Item = String>) -> Outcome<Task> {
    let mut arguments = arguments.into_iter().peekable();
    let command = match arguments.peek().map(String::as_str) {
        Some("build" | "serve") => arguments.next(),
        _ => None,
    };
    let mut build = Build::default();
    let mut dir = None;
    let mut host = IpAddr::V4(Ipv4Addr::LOCALHOST);
    let mut port = 8080;
    let mut listens = false;
    while let Some(argument) = arguments.next() {
        let (name, attached) = match argument.split_once('=') {
            Some((name, value)) => (name.to_owned(), Some(value.to_owned())),
            None => (argument, None),
        };
        if name == "--help" || name == "-h" {
            return Ok(Task::Help);
        }
        if name == "--single-file" && attached.is_none() {
            build.single = true;
            continue;
        }
        let known = ["--out", "--label", "--wasm", "--page", "--dir", "--host", "--port"];
        if !known.contains(&name.as_str()) {
            return Err(format!("{name} is not known; --help lists what is"));
        }
        let value = attached
            .or_else(|| arguments.next())
            .filter(|value| !value.is_empty())
            .ok_or_else(|| format!("{name} needs a value"))?;
        match name.as_str() {
            "--out" => build.out = Some(value.into()),
            "--label" => build.label = Some(label(value)?),
            "--page" => build.page = Some(value),
            "--wasm" => build.wasm = Some(value.into()),
            "--dir" => dir = Some(PathBuf::from(value)),
            "--host" => {
                host = address(&value)?;
                listens = true;
            }
            _ => {
                port = value.parse().map_err(|_| format!("--port {value}: a port is a number from 0 to 65535"))?;
                listens = true;
            }
        }
    }
    let listen = SocketAddr::new(host, port);
    match (command.as_deref(), dir) {
        (Some("serve"), Some(dir)) if build == Build::default() => Ok(Task::Serve { dir, listen }),
        (Some("serve"), Some(_)) => Err("serve takes --dir, --host and --port only".into()),
        (Some("serve"), None) => Err("serve needs --dir DIR, a folder that is built".into()),
        (_, Some(_)) => Err("--dir belongs to serve; where to build to is --out DIR".into()),
        (Some(_), None) if listens => Err("build does not serve: leave out --host and --port".into()),
        (None, None) if build.single => Err("--single-file belongs to build: one file is not served".into()),
        (Some(_), None) if build.out.is_none() && !build.single => Err("build needs --out DIR".into()),
        (Some(_), None) => Ok(Task::Build(build)),
        (None, None) => Ok(Task::BuildAndServe { build, listen }),
    }
}

/// A label may go into a header, a file and the name of a cache as it is.
fn label(value: String) -> Outcome<String> {
    let plain = |c: char| c.is_ascii_alphanumeric() || matches!(c, '.' | '_' | '-');
    if value.len() <= 40 && value.chars().all(plain) {
        Ok(value)
    } else {
        Err(format!("--label {value}: up to 40 letters, digits, '.', '_' and '-'"))
    }
}

/// An address to listen on.
fn address(value: &str) -> Outcome<IpAddr> {
    if value == "localhost" {
        return Ok(IpAddr::V4(Ipv4Addr::LOCALHOST));
    }
    value
        .trim_start_matches('[')
        .trim_end_matches(']')
        .parse()
        .map_err(|_| format!("--host {value}: an address of this machine, such as 127.0.0.1 or 0.0.0.0"))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::panic)]
    use super::*;

    fn task(line: &str) -> Outcome<Task> {
        read(line.split_whitespace().map(str::to_owned))
    }

    #[test]
    fn nothing_said_builds_and_serves_on_this_machine_only() {
        let Task::BuildAndServe { build, listen } = task("").unwrap() else {
            panic!("another task");
        };
        assert_eq!(build, Build::default());
        assert!(listen.ip().is_loopback());
        assert_eq!(listen.port(), 8080);
    }

    #[test]
    fn build_takes_a_folder_and_a_label() {
        let Task::Build(build) = task("build --out /tmp/a --label=B-2").unwrap() else {
            panic!("another task");
        };
        assert_eq!(build.out, Some(PathBuf::from("/tmp/a")));
        assert_eq!(build.label.as_deref(), Some("B-2"));
    }

    #[test]
    fn build_makes_one_file_where_it_is_asked_to() {
        for (line, out) in
            [("build --single-file", None), ("build --out a.html --single-file", Some(PathBuf::from("a.html")))]
        {
            let Task::Build(build) = task(line).unwrap() else {
                panic!("another task");
            };
            assert!(build.single);
            assert_eq!(build.out, out);
        }
    }

    #[test]
    fn serve_takes_a_folder_and_an_address() {
        let Task::Serve { dir, listen } = task("serve --dir dist --host 0.0.0.0 --port 0").unwrap() else {
            panic!("another task");
        };
        assert_eq!(dir, PathBuf::from("dist"));
        assert_eq!(listen.to_string(), "0.0.0.0:0");
        assert!(task("--host [::1]").is_ok());
        assert!(task("--host localhost").is_ok());
    }

    #[test]
    fn help_wins_over_the_rest() {
        assert_eq!(task("build --help"), Ok(Task::Help));
        assert_eq!(task("--port 1 -h"), Ok(Task::Help));
    }

    #[test]
    fn what_cannot_be_meant_is_refused_by_name() {
        for (line, names) in [
            ("--colour", "--colour"),
            ("prepare", "prepare"),
            ("--port", "--port"),
            ("--port 65536", "--port"),
            ("--port eighty", "--port"),
            ("--host nowhere", "--host"),
            ("build", "--out"),
            ("build --out a --port 1", "--port"),
            ("serve", "--dir"),
            ("serve --dir a --label b", "serve"),
            ("--dir a", "--dir"),
            ("--single-file", "--single-file"),
            ("build --single-file=yes", "--single-file"),
            ("serve --dir a --single-file", "serve"),
            ("--label a/b", "--label"),
            ("--label=", "--label"),
        ] {
            let said = task(line).unwrap_err();
            assert!(said.contains(names), "{line}: {said}");
        }
    }
}
