//! chromedriver, and one session of headless Chromium.

use std::io::{BufRead, BufReader};
use std::os::unix::process::CommandExt;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use serde_json::json;
use thirtyfour::prelude::*;
use thirtyfour::{ChromiumLikeCapabilities, LoggingPrefsLogLevel, WebDriverRunError};

use crate::page::Page;

/// A screen that the page must suit.
#[derive(Clone, Copy, Debug)]
pub enum Screen {
    /// A phone of today, upright, touched.
    Phone,
    /// A desk.
    Desk,
    /// The narrowest screen that is to be read without pushing it sideways (WCAG 2.2, 1.4.10).
    Narrow,
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

/// Where Chromium keeps its state; its processes are told apart by it.
pub const PROFILE: &str = "--user-data-dir=";

/// Starts chromedriver, waits for the end of its own input, then ends its process group: chromedriver and the browsers
/// it started. The input ends with the test's process, however that ends.
const UNTIL_INPUT_ENDS: &str = "chromedriver --port=0 2>/dev/null & read -r; kill -TERM -- -$$";

/// A chromedriver of our own, in a process group of its own, which ends with this value.
struct Driver {
    process: Child,
    port: u16,
}

impl Driver {
    fn start() -> Driver {
        let mut process = Command::new("bash")
            .args(["-c", UNTIL_INPUT_ENDS])
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .process_group(0)
            .spawn()
            .unwrap();
        let mut lines = BufReader::new(process.stdout.take().unwrap()).lines().map_while(Result::ok);
        // "ChromeDriver was started successfully on port PORT."
        let port = lines
            .find_map(|line| line.rsplit_once("successfully on port ")?.1.trim_end_matches('.').parse().ok())
            .expect("chromedriver is in the path and says its port (Debian: chromium-driver)");
        // It blocks when nobody reads what else it says.
        std::thread::spawn(move || lines.for_each(drop));
        Driver { process, port }
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        drop(self.process.stdin.take());
        let _ = self.process.wait();
    }
}

/// How a session is begun.
#[derive(Clone, Copy, Debug)]
pub struct Session<'a> {
    /// The screen.
    pub screen: Screen,
    /// The folder Chromium keeps its state in; a fresh one that nobody sees when none is given.
    pub profile: Option<&'a Path>,
    /// A script that runs before the page's own, in every document.
    pub before: Option<&'a str>,
    /// Whether the steps end the browser themselves.
    pub killed: bool,
}

impl Session<'_> {
    pub const fn on(screen: Screen) -> Session<'static> {
        Session { screen, profile: None, before: None, killed: false }
    }
}

/// Opens the address on a screen, takes the steps, ends the session whatever came of them.
pub async fn visit(screen: Screen, address: &str, steps: impl AsyncFnOnce(Page)) {
    visit_in(Session::on(screen), address, steps).await;
}

/// Opens the address in a session of a certain kind, takes the steps, ends the session whatever came of them.
pub async fn visit_in(kind: Session<'_>, address: &str, steps: impl AsyncFnOnce(Page)) {
    // Before the session, so that it ends after it.
    let driver = Driver::start();
    let mut wanted = DesiredCapabilities::chrome();
    for argument in ARGUMENTS {
        wanted.add_arg(argument).unwrap();
    }
    if let Some(profile) = kind.profile {
        wanted.add_arg(&format!("{PROFILE}{}", profile.display())).unwrap();
    }
    wanted.set_browser_log_level(LoggingPrefsLogLevel::All).unwrap();
    let session = WebDriver::new(format!("http://127.0.0.1:{}", driver.port), wanted).await.unwrap();
    let done = session
        .run_and_quit(|session| async move {
            session.set_script_timeout(Duration::from_secs(30)).await?;
            show_on(&session, kind.screen).await?;
            if let Some(before) = kind.before {
                let script = json!({ "source": before });
                session.cdp().send_raw("Page.addScriptToEvaluateOnNewDocument", script).await?;
            }
            session.goto(address).await?;
            steps(Page::new(session)).await;
            Ok::<(), WebDriverError>(())
        })
        .await;
    match done {
        // There is no browser left to take leave of.
        Err(WebDriverRunError::Cleanup(_)) if kind.killed => {}
        done => done.unwrap(),
    }
}

/// Gives the page a screen: its size, its density, whether it is touched.
async fn show_on(session: &WebDriver, screen: Screen) -> WebDriverResult<()> {
    let (width, height, density, touched) = match screen {
        Screen::Phone => (390, 844, 3, true),
        Screen::Desk => (1280, 900, 1, false),
        Screen::Narrow => (320, 640, 2, true),
    };
    let metrics = json!({ "width": width, "height": height, "deviceScaleFactor": density, "mobile": touched });
    session.cdp().send_raw("Emulation.setDeviceMetricsOverride", metrics).await?;
    session
        .cdp()
        .send_raw("Emulation.setTouchEmulationEnabled", json!({ "enabled": touched, "maxTouchPoints": 5 }))
        .await?;
    Ok(())
}
