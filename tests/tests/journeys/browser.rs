//! chromedriver, and one session of headless Chromium.

use std::io::{BufRead, BufReader};
use std::os::unix::process::CommandExt;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use serde_json::json;
use thirtyfour::prelude::*;
use thirtyfour::{ChromiumLikeCapabilities, LoggingPrefsLogLevel};

use crate::page::Page;

/// A screen that the page must suit.
#[derive(Clone, Copy, Debug)]
pub enum Screen {
    /// A phone of today, upright, touched.
    Phone,
    /// A desk.
    Desk,
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

/// A chromedriver of our own, in a process group of its own, which ends with this value.
struct Driver {
    process: Child,
    port: u16,
}

impl Driver {
    fn start() -> Driver {
        let mut process = Command::new("chromedriver")
            .arg("--port=0")
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .process_group(0)
            .spawn()
            .expect("chromedriver is in the path (Debian: chromium-driver)");
        let mut lines = BufReader::new(process.stdout.take().unwrap()).lines().map_while(Result::ok);
        // "ChromeDriver was started successfully on port PORT."
        let port = lines
            .find_map(|line| line.rsplit_once("on port ")?.1.trim_end_matches('.').parse().ok())
            .expect("chromedriver says its port");
        // It blocks when nobody reads what else it says.
        std::thread::spawn(move || lines.for_each(drop));
        Driver { process, port }
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        // The group that was started here, by its id: browsers left behind by a failed session are in it.
        let group = format!("-{}", self.process.id());
        let _ = Command::new("kill").args(["-TERM", "--", &group]).status();
        let _ = self.process.wait();
    }
}

/// Opens the address on a screen, takes the steps, ends the session whatever came of them.
pub async fn visit(screen: Screen, address: &str, steps: impl AsyncFnOnce(Page)) {
    // Before the session, so that it ends after it.
    let driver = Driver::start();
    let mut wanted = DesiredCapabilities::chrome();
    for argument in ARGUMENTS {
        wanted.add_arg(argument).unwrap();
    }
    wanted.set_browser_log_level(LoggingPrefsLogLevel::All).unwrap();
    let session = WebDriver::new(format!("http://127.0.0.1:{}", driver.port), wanted).await.unwrap();
    session
        .run_and_quit(|session| async move {
            session.set_script_timeout(Duration::from_secs(30)).await?;
            show_on(&session, screen).await?;
            session.goto(address).await?;
            steps(Page::new(session)).await;
            Ok::<(), WebDriverError>(())
        })
        .await
        .unwrap();
}

/// Gives the page a screen: its size, its density, whether it is touched.
async fn show_on(session: &WebDriver, screen: Screen) -> WebDriverResult<()> {
    let (width, height, density, touched) = match screen {
        Screen::Phone => (390, 844, 3, true),
        Screen::Desk => (1280, 900, 1, false),
    };
    let metrics = json!({ "width": width, "height": height, "deviceScaleFactor": density, "mobile": touched });
    session.cdp().send_raw("Emulation.setDeviceMetricsOverride", metrics).await?;
    session.cdp().send_raw("Emulation.setTouchEmulationEnabled", json!({ "enabled": touched, "maxTouchPoints": 5 })).await?;
    Ok(())
}
