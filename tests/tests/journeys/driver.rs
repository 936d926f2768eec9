//! An engine, and the program that drives it over WebDriver.

use std::io::{BufRead, BufReader};
use std::net::{TcpListener, TcpStream};
use std::os::unix::process::CommandExt;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use serde_json::json;
use thirtyfour::prelude::*;
use thirtyfour::{ChromeCapabilities, ChromiumLikeCapabilities};

/// An engine that shows the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Engine {
    /// Chromium by chromedriver: what most journeys go through.
    Chromium,
    /// Firefox by geckodriver.
    Firefox,
    /// WebKit by its own driver, in the window of a display that nobody sees.
    WebKit,
}

/// Chromium as root without a display; nothing is asked of any host but the one under test.
const ARGUMENTS: &[&str] = &[
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-dev-shm-usage",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-default-apps",
    "--no-default-browser-check",
];

/// What a session of Chromium is asked for.
pub fn chromium() -> ChromeCapabilities {
    let mut wanted = DesiredCapabilities::chrome();
    for argument in ARGUMENTS {
        wanted.add_arg(argument).unwrap();
    }
    wanted
}

/// How long a driver may take to start, and to end.
const PATIENCE: Duration = Duration::from_secs(30);
/// How often it is looked at.
const AGAIN: Duration = Duration::from_millis(20);
/// What stands for a driver that is no more: the pipe alone doesn't tell, since the shell holds it too.
const ENDED: &str = "ended";

/// Where Debian puts the smallest browser around WebKit.
const MINI_BROWSER: &str = "/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser";

impl Engine {
    /// Starts the driver, waits for the end of its own input, then ends its process group: the driver and the browsers it
    /// started. The input ends with the test's process, however that ends.
    fn command(self, port: u16) -> String {
        let driver = match self {
            Engine::Chromium => format!("{{ chromedriver --port=0 2>/dev/null; echo {ENDED}; }}"),
            Engine::Firefox => {
                let geckodriver = std::env::var("BEDWRIGHT_GECKODRIVER").unwrap_or_else(|_| "geckodriver".to_owned());
                format!("MOZ_HEADLESS=1 '{geckodriver}' --port {port} >/dev/null 2>&1")
            }
            Engine::WebKit => format!(
                "WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS=1 xvfb-run -a -s '-screen 0 1280x1000x24' \
                 dbus-run-session -- WebKitWebDriver --port={port} >/dev/null 2>&1"
            ),
        };
        format!("{driver} & read -r; kill -TERM -- -$$")
    }

    /// What a session of it is asked for.
    pub fn wanted(self) -> Capabilities {
        match self {
            Engine::Chromium => chromium().into(),
            Engine::Firefox => DesiredCapabilities::firefox().into(),
            Engine::WebKit => {
                let mut wanted = Capabilities::new();
                let options = json!({ "binary": MINI_BROWSER, "args": ["--automation"] });
                wanted.set("webkitgtk:browserOptions", options).unwrap();
                wanted
            }
        }
    }
}

/// A driver of our own, in a process group of its own, which ends with this value.
pub struct Driver {
    process: Child,
    port: u16,
}

impl Driver {
    /// Starts the driver of an engine. One that says nothing, or ends at once, is started anew: it is not what is tested.
    pub fn start(engine: Engine) -> Driver {
        let mut tries = 3;
        loop {
            match Driver::tried(engine) {
                Ok(driver) => return driver,
                Err(why) if tries > 1 => println!("{why}; once more"),
                Err(why) => panic!("{why}: tests/run engines"),
            }
            tries -= 1;
        }
    }

    fn tried(engine: Engine) -> Result<Driver, String> {
        // Chromedriver takes a free one by itself and says which; the others are told one that was free just now.
        let free = || TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap().port();
        let port = if engine == Engine::Chromium { 0 } else { free() };
        let mut process = Command::new("bash")
            .args(["-c", &engine.command(port)])
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .process_group(0)
            .spawn()
            .unwrap();
        let lines = BufReader::new(process.stdout.take().unwrap()).lines().map_while(Result::ok);
        let mut driver = Driver { process, port };
        if engine == Engine::Chromium {
            driver.port = said(lines)?;
            return Ok(driver);
        }
        let begun = Instant::now();
        while TcpStream::connect(("127.0.0.1", port)).is_err() {
            if begun.elapsed() > PATIENCE {
                return Err(format!("no driver for {engine:?} answers"));
            }
            std::thread::sleep(AGAIN);
        }
        Ok(driver)
    }

    /// How long the driver and the browsers it started have kept a processor busy, by the kernel's count (proc(5): `stat`).
    pub fn spent(&self) -> Duration {
        let ticks = |entry: std::fs::DirEntry| {
            let stat = std::fs::read_to_string(entry.path().join("stat")).ok()?;
            // What follows the name in brackets, from field 3 on: the group is field 5, the times 14 and 15.
            let fields: Vec<&str> = stat.rsplit_once(") ")?.1.split(' ').collect();
            let number = |field: usize| fields.get(field - 3)?.parse::<u64>().ok();
            (number(5)? == u64::from(self.process.id())).then(|| Some(number(14)? + number(15)?))?
        };
        let all: u64 = std::fs::read_dir("/proc").unwrap().filter_map(|entry| ticks(entry.ok()?)).sum();
        // A tick is a hundredth of a second on every Linux.
        Duration::from_millis(all * 10)
    }

    /// Where it listens.
    pub fn address(&self) -> String {
        format!("http://127.0.0.1:{}", self.port)
    }
}

/// The port that chromedriver tells. It blocks when nobody reads what else it says, so a thread reads on.
fn said(mut lines: impl Iterator<Item = String> + Send + 'static) -> Result<u16, String> {
    let (tell, told) = std::sync::mpsc::channel();
    std::thread::spawn(move || {
        // "ChromeDriver was started successfully on port PORT."
        let mut other = Vec::new();
        for line in lines.by_ref() {
            let port =
                line.rsplit_once("successfully on port ").and_then(|(_, port)| port.trim_end_matches('.').parse().ok());
            if let Some(port) = port {
                let _ = tell.send(Ok(port));
                return lines.for_each(drop);
            }
            if line == ENDED {
                break;
            }
            other.push(line);
        }
        let _ = tell.send(Err(format!("chromedriver (Debian: chromium-driver) ended: {other:?}")));
    });
    told.recv_timeout(PATIENCE).unwrap_or_else(|_| Err("chromedriver does not say its port".to_owned()))
}

impl Drop for Driver {
    fn drop(&mut self) {
        drop(self.process.stdin.take());
        let begun = Instant::now();
        while begun.elapsed() < PATIENCE {
            if !matches!(self.process.try_wait(), Ok(None)) {
                return;
            }
            std::thread::sleep(AGAIN);
        }
        println!("the driver did not end within {PATIENCE:?}");
        let group = format!("-{}", self.process.id());
        let _ = Command::new("kill").args(["-KILL", "--", &group]).status();
        let _ = self.process.wait();
    }
}
