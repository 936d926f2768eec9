//! The built page, served by the server that ships with it.

use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};

/// A running server; it ends with this value.
pub struct Site {
    server: Option<Child>,
    folder: PathBuf,
    port: u16,
}

impl Site {
    /// Serves the page that `tests/run` built.
    pub fn serve() -> Site {
        Site::serve_folder(&built())
    }

    /// Serves a folder.
    pub fn serve_folder(folder: &Path) -> Site {
        let mut site = Site { server: None, folder: folder.to_path_buf(), port: 0 };
        site.start();
        site
    }

    /// The page's address.
    pub fn address(&self) -> String {
        format!("http://127.0.0.1:{}/", self.port)
    }

    /// Takes the connection away.
    pub fn stop(&mut self) {
        if let Some(mut server) = self.server.take() {
            server.kill().unwrap();
            server.wait().unwrap();
        }
    }

    /// Brings the connection back, at the same address.
    pub fn start(&mut self) {
        assert!(self.server.is_none(), "it runs");
        let mut server = Command::new(bundle())
            .args(["serve", "--port", &self.port.to_string(), "--dir"])
            .arg(&self.folder)
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .spawn()
            .unwrap_or_else(|error| panic!("cannot start {}: {error}", bundle().display()));
        let output = BufReader::new(server.stdout.take().unwrap());
        self.server = Some(server);
        // "Bedwright is at http://127.0.0.1:PORT/"
        let port = output
            .lines()
            .map_while(Result::ok)
            .find_map(|line| line.rsplit_once("http://127.0.0.1:")?.1.trim_end_matches('/').parse().ok());
        self.port = port.unwrap_or_else(|| panic!("the server did not say where it is"));
    }
}

impl Drop for Site {
    fn drop(&mut self) {
        self.stop();
    }
}

/// The folder of the built page.
pub fn built() -> PathBuf {
    let folder = std::env::var_os("BEDWRIGHT_PAGE").map(PathBuf::from);
    let folder = folder.unwrap_or_else(|| {
        panic!("BEDWRIGHT_PAGE does not say where the built page is: run `tests/run page journeys`")
    });
    assert!(folder.join("index.html").is_file(), "there is no page in {}", folder.display());
    folder
}

/// The program that builds and serves: it stands beside this one's folder, where cargo puts programs.
pub fn bundle() -> PathBuf {
    let here = std::env::current_exe().unwrap();
    let program = here.ancestors().nth(2).unwrap().join("bedwright-bundle");
    assert!(program.is_file(), "{} is not built: run `tests/run page journeys`", program.display());
    program
}
