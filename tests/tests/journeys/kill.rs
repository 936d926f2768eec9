//! A browser that is killed while somebody types loses at most the last moments.
//!
//! Every character is typed by the browser's own input and noted with the time at which the page had it. After the
//! kill the same profile is opened again: what is there must be what was typed, cut at most 400 ms before the kill.
//! `BEDWRIGHT_KILLS` says how many kills of each kind; 20 without it.

use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant, SystemTime, UNIX_EPOCH};

use serde_json::json;

use crate::browser::{PROFILE, Screen, Session, visit_in};
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::site::Site;

const AT_MOST_LOST: Duration = Duration::from_millis(400);
const LETTERS: &[u8] = b"abcdefghijklmnopqrstuvwxyz0123456789";

#[derive(Clone, Copy, Debug)]
enum Victim {
    Browser,
    Renderer,
}

fn kills() -> usize {
    std::env::var("BEDWRIGHT_KILLS").ok().and_then(|text| text.parse().ok()).unwrap_or(20)
}

/// A running process: its number, its parent's, how it was started.
struct Process {
    id: u32,
    parent: u32,
    command: String,
}

fn processes() -> Vec<Process> {
    let read = |entry: std::fs::DirEntry| {
        let id: u32 = entry.file_name().to_str()?.parse().ok()?;
        let command = String::from_utf8_lossy(&std::fs::read(entry.path().join("cmdline")).ok()?).replace('\0', " ");
        let status = std::fs::read_to_string(entry.path().join("status")).ok()?;
        let parent = status.lines().find_map(|line| line.strip_prefix("PPid:")?.trim().parse().ok())?;
        Some(Process { id, parent, command })
    };
    std::fs::read_dir("/proc").unwrap().filter_map(|entry| read(entry.ok()?)).collect()
}

/// The browser that was started for this profile, and the renderers below it.
fn victims(profile: &Path, victim: Victim) -> Vec<u32> {
    let all = processes();
    let ours = format!("{PROFILE}{}", profile.display());
    let browser = all
        .iter()
        .find(|process| process.command.contains(&ours) && !process.command.contains("--type="))
        .unwrap_or_else(|| panic!("no browser with {ours}"));
    match victim {
        Victim::Browser => vec![browser.id],
        Victim::Renderer => {
            let mut below = vec![browser.id];
            let mut at = 0;
            while let Some(&parent) = below.get(at) {
                below.extend(all.iter().filter(|process| process.parent == parent).map(|process| process.id));
                at += 1;
            }
            let renderer =
                |process: &&Process| below.contains(&process.id) && process.command.contains("--type=renderer");
            all.iter().filter(renderer).map(|process| process.id).collect()
        }
    }
}

/// The browser that was started for this profile.
pub fn browser_of(profile: &Path) -> Vec<u32> {
    victims(profile, Victim::Browser)
}

/// Ends processes with no time to take leave.
pub fn kill(ids: &[u32]) {
    let ids: Vec<String> = ids.iter().map(u32::to_string).collect();
    assert!(!ids.is_empty(), "nobody to kill");
    assert!(Command::new("kill").arg("-KILL").args(&ids).status().unwrap().success());
}

/// Waits until nothing of this profile runs any more.
pub async fn gone(profile: &Path) {
    let ours = format!("{PROFILE}{}", profile.display());
    let begun = Instant::now();
    while processes().iter().any(|process| process.command.contains(&ours)) {
        assert!(begun.elapsed() < Duration::from_secs(20), "the browser does not end");
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
}

/// Types letter after letter until the time is over; each with when the page had it.
async fn type_for(page: &Page, held: &str, span: Duration) -> Vec<(char, Instant)> {
    let begun = Instant::now();
    let mut typed = Vec::new();
    while begun.elapsed() < span {
        let letter = char::from(LETTERS[(held.len() + typed.len()) % LETTERS.len()]);
        page.session().cdp().send_raw("Input.insertText", json!({ "text": letter.to_string() })).await.unwrap();
        typed.push((letter, Instant::now()));
        tokio::time::sleep(Duration::from_millis(25)).await;
    }
    typed
}

/// What was typed before a kill, and when.
struct Typed {
    /// What the field held before.
    held: String,
    /// Every letter since, with when the page had it.
    letters: Vec<(char, Instant)>,
    /// When the kill was sent.
    killed_at: Instant,
}

impl Typed {
    /// What is found must be the beginning of what was typed, and hold all of it but the last moments.
    /// How long before the kill the oldest lost letter was typed.
    fn check(&self, found: &str) -> Duration {
        let all: String = self.held.chars().chain(self.letters.iter().map(|(letter, _)| *letter)).collect();
        assert!(all.starts_with(found), "typed {all:?}, found {found:?}");
        assert!(
            found.starts_with(&self.held),
            "lost what an earlier start had found: {:?} became {found:?}",
            self.held
        );
        let kept = found.len() - self.held.len();
        let lost = self.letters.get(kept).map_or(Duration::ZERO, |(_, at)| self.killed_at.duration_since(*at));
        assert!(lost <= AT_MOST_LOST, "lost what was typed {lost:?} before the kill: {all:?} became {found:?}");
        lost
    }
}

async fn typing_survives(victim: Victim) {
    let site = Site::serve();
    let profile = Folder::new("profile");
    let mut job = String::new();
    let mut last: Option<Typed> = None;
    let mut lost = Vec::new();
    for round in 0..=kills() {
        let mut next = None;
        let kind = Session { profile: Some(profile.path()), killed: true, ..Session::on(Screen::Phone) };
        let address = format!("{}{job}", site.address());
        visit_in(kind, &address, async |page: Page| {
            page.started().await;
            if job.is_empty() {
                page.press("New job").await;
                page.find(Role::Button, "Add a vessel").await;
                job = page.fragment().await;
            }
            let held = page.entered("Notes").await;
            if let Some(last) = &last {
                lost.push(last.check(&held));
            }
            if round == kills() {
                page.no_complaints().await;
                return;
            }
            page.find(Role::Textbox, "Notes").await.focus().await.unwrap();
            page.script("const f = document.activeElement; f.setSelectionRange(f.value.length, f.value.length);").await;
            let chance = SystemTime::now().duration_since(UNIX_EPOCH).unwrap().subsec_nanos() % 2_000;
            let ids = victims(profile.path(), victim);
            let letters = type_for(&page, &held, Duration::from_millis(500 + u64::from(chance))).await;
            let killed_at = Instant::now();
            kill(&ids);
            next = Some(Typed { held, letters, killed_at });
        })
        .await;
        if next.is_some() {
            gone(profile.path()).await;
        }
        last = next;
    }
    println!("{victim:?} killed {} times; the oldest lost letter was typed {lost:?} before", kills());
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_killed_browser_loses_at_most_the_last_moments() {
    typing_survives(Victim::Browser).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_killed_renderer_loses_at_most_the_last_moments() {
    typing_survives(Victim::Renderer).await;
}
