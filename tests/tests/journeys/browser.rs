//! One session of a browser that nobody sees.

use std::any::Any;
use std::panic::{AssertUnwindSafe, resume_unwind};
use std::path::Path;
use std::time::Duration;

use futures_util::FutureExt;
use serde_json::json;
use thirtyfour::prelude::*;
use thirtyfour::{ChromiumLikeCapabilities, LoggingPrefsLogLevel, WebDriverRunError};

use crate::driver::{Driver, Engine, chromium};
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

/// Where Chromium keeps its state; its processes are told apart by it.
pub const PROFILE: &str = "--user-data-dir=";

/// How a session is begun.
#[derive(Clone, Copy, Debug)]
pub struct Session<'a> {
    /// The screen.
    pub screen: Screen,
    /// The folder Chromium keeps its state in; a fresh one that nobody sees when none is given.
    pub profile: Option<&'a Path>,
    /// A script that runs before the page's own, in every document.
    pub before: Option<&'a str>,
    /// A film that the camera sees, for ever; no camera where none is given.
    pub film: Option<&'a str>,
    /// Whether the steps end the browser themselves.
    pub killed: bool,
}

impl Session<'_> {
    pub const fn on(screen: Screen) -> Session<'static> {
        Session { screen, profile: None, before: None, film: None, killed: false }
    }
}

/// Opens the address on a screen, takes the steps, ends the session whatever came of them.
pub async fn visit(screen: Screen, address: &str, steps: impl AsyncFnOnce(Page)) {
    visit_in(Session::on(screen), address, steps).await;
}

/// Opens the address in a session of a certain kind, takes the steps, ends the session whatever came of them.
pub async fn visit_in(kind: Session<'_>, address: &str, steps: impl AsyncFnOnce(Page)) {
    // Before the session, so that it ends after it.
    let driver = Driver::start(Engine::Chromium);
    let mut wanted = chromium();
    if let Some(profile) = kind.profile {
        wanted.add_arg(&format!("{PROFILE}{}", profile.display())).unwrap();
    }
    if let Some(film) = kind.film {
        let file = format!("--use-file-for-fake-video-capture={film}");
        for argument in ["--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream", &file] {
            wanted.add_arg(argument).unwrap();
        }
    }
    wanted.set_browser_log_level(LoggingPrefsLogLevel::All).unwrap();
    let session = WebDriver::new(driver.address(), wanted).await.unwrap();
    let done = session
        .run_and_quit(|session| async move {
            session.set_script_timeout(Duration::from_secs(60)).await?;
            show_on(&session, kind.screen).await?;
            if let Some(before) = kind.before {
                let script = json!({ "source": before });
                session.cdp().send_raw("Page.addScriptToEvaluateOnNewDocument", script).await?;
            }
            session.goto(address).await?;
            within_its_time(steps(Page::new(session, Engine::Chromium))).await;
            Ok::<(), WebDriverError>(())
        })
        .await;
    match done {
        // There is no browser left to take leave of.
        Err(WebDriverRunError::Cleanup(_)) if kind.killed => {}
        done => done.unwrap(),
    }
}

/// Opens the address in another engine, by what every WebDriver can do: no screen is played, no log is read.
pub async fn visit_by(engine: Engine, address: &str, steps: impl AsyncFnOnce(Page)) {
    // A browser that doesn't come up at once on a busy machine is started anew: it is not what is tested.
    let mut tries = 3;
    let (driver, session) = loop {
        let driver = Driver::start(engine);
        match WebDriver::new(driver.address(), engine.wanted()).await {
            Ok(session) => break (driver, session),
            Err(error) if tries > 1 => println!("{engine:?} did not come up: {error}"),
            Err(error) => panic!("{engine:?} did not come up: {error}"),
        }
        tries -= 1;
    };
    let driver = &driver;
    let done = session
        .run_and_quit(|session| async move {
            session.set_script_timeout(Duration::from_secs(60)).await?;
            // As narrow as its window will go: about a phone's width.
            session.set_window_rect(0, 0, 400, 860).await?;
            session.goto(address).await?;
            let steps = within_its_time(steps(Page::new(session, engine)));
            if let Err(why) = AssertUnwindSafe(steps).catch_unwind().await {
                told_apart(engine, driver, why).await;
            }
            Ok::<(), WebDriverError>(())
        })
        .await;
    done.unwrap();
}

/// What a journey says whose driver fell silent.
const SILENT: &str = "the driver fell silent";

/// Fails as the steps did; where the driver gave no answer while its browser rested, with that.
async fn told_apart(engine: Engine, driver: &Driver, why: Box<dyn Any + Send>) {
    let text = why.downcast_ref::<String>().cloned().unwrap_or_default();
    if !text.contains("error sending request") {
        resume_unwind(why);
    }
    let (before, span) = (driver.spent(), Duration::from_secs(3));
    tokio::time::sleep(span).await;
    let spent = driver.spent().saturating_sub(before);
    // A page that runs in a circle keeps a processor busy.
    assert!(spent > span / 3, "{SILENT}: {engine:?} used {spent:?} of {span:?}: {text}");
    panic!("{engine:?} is busy, {spent:?} of {span:?}: {text}");
}

/// A journey in an engine; once more where its driver fell silent, which is not what is tested.
pub async fn patiently(engine: Engine, journey: impl AsyncFn(Engine)) {
    let Err(why) = AssertUnwindSafe(journey(engine)).catch_unwind().await else { return };
    let silent = why.downcast_ref::<String>().is_some_and(|why| why.starts_with(SILENT));
    if !silent {
        resume_unwind(why);
    }
    println!("{engine:?}: once more");
    journey(engine).await;
}

/// No step waits for ever, and no session holds up its layer.
async fn within_its_time(steps: impl Future<Output = ()>) {
    const LIMIT: Duration = Duration::from_secs(900);
    assert!(tokio::time::timeout(LIMIT, steps).await.is_ok(), "the steps were not done within {LIMIT:?}");
}

/// Gives the page a screen: its size, its density, whether it is touched.
async fn show_on(session: &WebDriver, screen: Screen) -> WebDriverResult<()> {
    let (width, height, density, touched) = match screen {
        Screen::Phone => (390, 844, 3, true),
        Screen::Desk => (1280, 900, 1, false),
        Screen::Narrow => (320, 640, 2, true),
    };
    sized(session, width, height, density, touched).await?;
    session
        .cdp()
        .send_raw("Emulation.setTouchEmulationEnabled", json!({ "enabled": touched, "maxTouchPoints": 5 }))
        .await?;
    Ok(())
}

/// Gives a phone that is turned its other size.
pub async fn turn(page: &Page, width: u32, height: u32) {
    turn_to(page, width, height, 3).await;
}

/// Gives a phone another size and density.
pub async fn turn_to(page: &Page, width: u32, height: u32, density: u32) {
    sized(page.session(), width, height, density, true).await.unwrap();
}

async fn sized(session: &WebDriver, width: u32, height: u32, density: u32, touched: bool) -> WebDriverResult<()> {
    let metrics = json!({ "width": width, "height": height, "deviceScaleFactor": density, "mobile": touched });
    session.cdp().send_raw("Emulation.setDeviceMetricsOverride", metrics).await?;
    Ok(())
}
