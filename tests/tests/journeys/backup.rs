//! A backup: out of one browser, tried and taken into another, refused where it is damaged, reminded of in its time.

use std::path::PathBuf;

use bedwright_job::backup::{Backup, backup_text, read_backup};
use bedwright_job::saved::read_job;
use serde_json::json;
use thirtyfour::prelude::*;

use crate::browser::{Screen, Session, visit, visit_in};
use crate::filter;
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::site::Site;

fn write(folder: &Folder, name: &str, text: &str) -> PathBuf {
    let path = folder.path().join(name);
    std::fs::write(&path, text).unwrap();
    path
}

/// The counts of a trial: new, newer, on both sides, older, the same.
async fn counts(page: &Page) -> Vec<u64> {
    page.find(Role::Heading, "What the backup would do").await;
    let found = page
        .script("return [...document.querySelectorAll('.backup-counts .big')].map((e) => Number(e.innerText));")
        .await;
    found.as_array().unwrap().iter().map(|count| count.as_u64().unwrap()).collect()
}

/// Every text local storage keeps of jobs and prices.
async fn kept(page: &Page) -> serde_json::Value {
    page.script(
        "return Object.fromEntries(Object.entries({ ...localStorage }).filter(([key]) => key.startsWith('bedwright/job/') || key.startsWith('bedwright/prices/')).sort());",
    )
    .await
}

async fn new_jobs(page: &Page, titles: &[&str]) -> Vec<String> {
    let mut addresses = Vec::new();
    for title in titles {
        page.open("#/jobs").await;
        filter::new_job(page, title).await;
        addresses.push(page.fragment().await);
    }
    addresses
}

async fn saved(page: &Page, folder: &Folder) -> (String, String) {
    page.open("#/backup").await;
    page.press("Save a backup").await;
    folder.downloaded().await
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_backup_of_one_browser_brings_everything_into_another() {
    let site = Site::serve();
    let (downloads, files) = (Folder::new("downloads"), Folder::new("files"));
    let mut text = String::new();
    let mut before = json!(null);
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        downloads.takes_downloads(&page).await;
        page.open("#/backup").await;
        page.says("There is nothing to back up yet.").await;
        page.fits_its_width().await;
        page.open("#/jobs").await;
        page.press("Sample job").await;
        page.find(Role::Button, "Add a vessel").await;
        page.open("#/backup").await;
        page.says("There is nothing to back up yet.").await;
        page.open("#/jobs").await;
        filter::planned(&page, "Mill").await;
        new_jobs(&page, &["River works"]).await;
        // One in the bin is no less kept.
        page.open("#/jobs").await;
        filter::new_job(&page, "In the bin").await;
        page.open("#/jobs").await;
        let lines =
            page.script("return [...document.querySelectorAll('.job-line .job-title')].map((e) => e.innerText);").await;
        let at = lines.as_array().unwrap().iter().position(|title| title == "In the bin").unwrap();
        page.find_at(Role::Button, "Delete", at).await.click().await.unwrap();
        page.find(Role::Heading, "Bin").await;
        page.follow("Price list").await;
        page.press("New row").await;
        page.enter("Name", "Union 1 in").await;
        page.enter("Price", "12.50").await;
        page.open("#/backup").await;
        page.says("There is no backup yet. Jobs in no backup: 3. The price list was changed.").await;
        let (name, made) = saved(&page, &downloads).await;
        assert!(name.starts_with("bedwright-backup-") && name.ends_with(".json"), "{name}");
        page.says(&format!("The file {name} was handed to the browser. See that it arrived")).await;
        page.says("Nothing was changed since.").await;
        page.reload().await;
        before = kept(&page).await;
        text = made;
        page.no_complaints().await;
    })
    .await;
    let backup = read_backup(&text).unwrap();
    let mut titles: Vec<&str> = backup.jobs.iter().map(|job| job.head.body.title.as_str()).collect();
    titles.sort_unstable();
    assert_eq!(titles, ["In the bin", "Mill", "River works"], "the sample doesn't count");
    let file = write(&files, "backup.json", &text);
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        page.open("#/backup").await;
        page.pick_file("Try a backup", &file).await;
        assert_eq!(counts(&page).await, [3, 0, 0, 0, 0]);
        page.says("Price list: 1 rows new, 0 different, 0 the same.").await;
        // Nothing changes before a tap.
        assert_eq!(kept(&page).await, json!({}));
        page.press("Leave everything as it is").await;
        page.says("Nothing was changed.").await;
        assert_eq!(kept(&page).await, json!({}));
        page.pick_file("Try a backup", &file).await;
        page.press("Take it in").await;
        page.says("Taken in. Jobs that came or changed: 3.").await;
        page.says("Nothing was changed since.").await;
        page.reload().await;
        // To the letter what was kept in the other browser, the sample left out, the list counted on by this one.
        let after = kept(&page).await;
        let (before, after) = (before.as_object().unwrap(), after.as_object().unwrap());
        for (key, text) in after.iter().filter(|(key, _)| key.starts_with("bedwright/job/")) {
            assert_eq!(Some(text), before.get(key), "{key}");
        }
        let jobs = |texts: &serde_json::Map<String, serde_json::Value>| {
            texts.keys().filter(|key| key.starts_with("bedwright/job/") && key.ends_with("/head")).count()
        };
        assert_eq!((jobs(before), jobs(after)), (4, 3));
        page.open("#/prices").await;
        page.find(Role::Searchbox, "Search the list").await.send_keys("union").await.unwrap();
        page.says("Union 1 in").await;
        page.open("#/jobs").await;
        page.find(Role::Heading, "Bin").await;
        page.session().query(By::PartialLinkText("Mill")).first().await.unwrap().click().await.unwrap();
        page.find(Role::Button, "Add a vessel").await;
        page.says("2 bags Coconut carbon 12×40").await;
        // Once more: it is all here.
        page.open("#/backup").await;
        page.pick_file("Try a backup", &file).await;
        assert_eq!(counts(&page).await, [0, 0, 0, 0, 3]);
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn newer_older_and_conflicting_jobs_are_told_apart_and_both_are_kept() {
    let site = Site::serve();
    let (downloads, files) = (Folder::new("downloads"), Folder::new("files"));
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        downloads.takes_downloads(&page).await;
        let jobs = new_jobs(&page, &["Older", "Both", "Newer", "Same"]).await;
        let (_, text) = saved(&page, &downloads).await;
        let mut backup = read_backup(&text).unwrap();
        // In the backup: one goes on, on the same device; one on another device.
        for job in &mut backup.jobs {
            let device = job.head.revision.as_ref().unwrap().device.clone();
            let change = |text: &str| bedwright_job::Edit::Text {
                field: bedwright_job::sections::head::TextField::Notes,
                text: text.to_owned(),
            };
            if job.head.body.title == "Newer" {
                bedwright_job::apply(job, change("went on"), &device).unwrap();
            } else if job.head.body.title == "Both" {
                bedwright_job::apply(job, change("elsewhere"), &bedwright_job::id::Id::new("tablet")).unwrap();
            }
        }
        // Here: the older and the conflicting one go on.
        for address in &jobs[..2] {
            page.open(address).await;
            page.enter("Notes", "here").await;
        }
        let file = write(&files, "backup.json", &backup_text(&backup));
        page.open("#/backup").await;
        page.pick_file("Try a backup", &file).await;
        assert_eq!(counts(&page).await, [0, 1, 1, 1, 1]);
        page.says("changed on both sides: both are kept").await;
        page.press("Take it in").await;
        page.says("Jobs that came or changed: 2.").await;
        page.reload().await;
        for (address, notes) in jobs.iter().zip(["here", "here", "went on", ""]) {
            page.open(address).await;
            page.find(Role::Button, "Add a vessel").await;
            assert_eq!(page.entered("Notes").await, notes, "{address}");
        }
        page.open("#/jobs").await;
        page.session().query(By::PartialLinkText("Both (backup of")).first().await.unwrap().click().await.unwrap();
        page.find(Role::Button, "Add a vessel").await;
        assert_eq!(page.entered("Notes").await, "elsewhere");
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_is_damaged_cut_later_or_none_is_refused_and_nothing_changes() {
    let site = Site::serve();
    let files = Folder::new("files");
    let job = std::fs::read_to_string(site_example()).unwrap();
    let own = read_job(&job).unwrap();
    let whole = {
        let mut own = own;
        own.head.body.sample = false;
        backup_text(&Backup { day: "2026-11-26".to_owned(), jobs: vec![own], ..Backup::default() })
    };
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        new_jobs(&page, &["Here"]).await;
        page.reload().await;
        page.open("#/backup").await;
        let before = kept(&page).await;
        let half = whole[..whole.len() / 2].to_owned();
        let changed = whole.replacen("Invented", "Invented!", 1).replacen("2026-11-26", "2026-11-27", 1);
        let later = whole.replacen("\"version\":1", "\"version\":2", 1);
        for (name, text, why) in [
            ("cut.json", half.as_str(), "The end of the file is missing"),
            ("changed.json", &changed, "damaged or changed since it was written"),
            ("later.json", &later, "from a later version of Bedwright"),
            ("job.json", &job, "This file is one job."),
            ("else.json", "{\"hello\": 1}", "This file is no backup."),
            ("empty.json", "", "This file is no backup."),
        ] {
            let file = write(&files, name, text);
            page.pick_file("Try a backup", &file).await;
            page.says(why).await;
            page.says("Nothing was changed.").await;
            assert!(!page.has(Role::Heading, "What the backup would do").await, "{name}");
            assert_eq!(kept(&page).await, before, "{name}");
        }
        page.no_complaints().await;
    })
    .await;
}

fn site_example() -> PathBuf {
    std::path::Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap().join("public/job.example.json")
}

/// The page's clock set by so many days: `Date` as the page asks it.
fn days_later(days: u32) -> String {
    format!(
        "(() => {{ const Real = Date; const shift = {days} * 86400000; \
           window.Date = class extends Real {{ constructor(...a) {{ if (a.length) super(...a); else super(Real.now() + shift); }} \
             static now() {{ return Real.now() + shift; }} }}; }})();"
    )
}

/// What somebody does, or sees, some days later.
#[derive(Clone, Copy, PartialEq)]
enum Step {
    MakesAJob,
    SeesNothing,
    PutsItOff,
    SavesABackup,
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_reminder_is_quiet_comes_in_its_time_and_can_be_put_off() {
    const REMINDS: &str = "It is time for a backup.";
    let site = Site::serve();
    let profile = Folder::new("profile");
    let days = [
        (0, Step::MakesAJob),
        (6, Step::SeesNothing),
        (7, Step::PutsItOff),
        (13, Step::SeesNothing),
        (14, Step::SavesABackup),
        // Nothing was changed since: never again.
        (60, Step::SeesNothing),
    ];
    for (days, step) in days {
        let before = days_later(days);
        let kind = Session { profile: Some(profile.path()), before: Some(&before), ..Session::on(Screen::Phone) };
        visit_in(kind, &site.address(), async |page: Page| {
            page.started().await;
            if step == Step::MakesAJob {
                page.press("Sample job").await;
                page.find(Role::Button, "Add a vessel").await;
                new_jobs(&page, &["Mill"]).await;
            }
            page.open("#/jobs").await;
            if matches!(step, Step::PutsItOff | Step::SavesABackup) {
                page.says(REMINDS).await;
                page.says("There is no backup yet. Jobs in no backup: 1.").await;
                page.fits_its_width().await;
            }
            if step == Step::PutsItOff {
                page.press("Not this week").await;
            } else if step == Step::SavesABackup {
                page.follow("Save a backup").await;
                page.press("Save a backup").await;
                page.says("was handed to the browser").await;
                page.open("#/jobs").await;
            }
            page.until("it is quiet", &format!("!document.body.innerText.includes({})", json!(REMINDS))).await;
            page.no_complaints().await;
            // The browser writes before it ends.
            tokio::time::sleep(std::time::Duration::from_millis(400)).await;
        })
        .await;
    }
}
