//! A job goes from one device to another: by a file, a message, a link, codes held up to a camera; and comes back.

use std::path::Path;
use std::process::Command;
use std::time::Instant;

use bedwright_job::Job;
use bedwright_job::edit::{Edit, apply};
use bedwright_job::envelope::{Found, Frame, found};
use bedwright_job::id::Id;
use bedwright_job::prices::{PriceKind, PriceRow, amount};
use bedwright_job::saved::job_text;
use serde_json::json;
use std::sync::Arc;

use crate::browser::{Screen, Session, visit, visit_in};
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::site::Site;
use crate::stored;

/// A cost that stands nowhere else.
const COST: &str = "91.17";

/// The sample on a device; the address of its screens.
async fn sample(page: &Page) -> String {
    page.started().await;
    page.press("Sample job").await;
    page.until("the job opens", "window.location.hash.startsWith('#/jobs/')").await;
    page.fragment().await
}

/// What the link on the screen is.
async fn link(page: &Page) -> String {
    page.settled().await;
    page.entered("The link").await
}

async fn pasted(page: &Page, text: &str) {
    page.open("#/open").await;
    let put = format!(
        "const field = document.getElementById('pasted'); field.value = {}; field.dispatchEvent(new Event('input'));",
        json!(text)
    );
    page.script(&put).await;
    page.press("Look at it").await;
}

fn job_in(text: &str) -> Job {
    match found(text).unwrap() {
        Found::Job(came) => came.job,
        Found::Frames(frames) => panic!("{} frames", frames.len()),
    }
}

/// Saved here, dropped there: nothing is kept before a tap, then all is there, and it opens where the sender points.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_file_goes_from_a_phone_to_a_desk() {
    let site = Site::serve();
    let folder = Folder::new("sent");
    let mut file = (String::new(), String::new());
    visit(Screen::Phone, &site.address(), async |page: Page| {
        let job = sample(&page).await;
        page.follow("Send this job").await;
        page.find(Role::Heading, "Send this job").await;
        page.click(Role::Radio, "Who loads").await;
        page.enter("Your name", "R. Moss").await;
        page.says("Costs and margins stay here.").await;
        page.fits_its_width().await;
        folder.takes_downloads(&page).await;
        page.press("Save the file").await;
        file = folder.downloaded().await;
        assert!(page.fragment().await.starts_with(&job));
        page.no_complaints().await;
    })
    .await;
    let (name, text) = file;
    assert_eq!(name, "Quillmoss-Laundry--sample-.bedwright.txt");
    assert!(text.starts_with("Quillmoss Laundry (sample)\nSent by R. Moss.\nHolds: Vessels as surveyed;"), "{text}");
    visit(Screen::Desk, &format!("{}#/open", site.address()), async |page: Page| {
        page.started().await;
        let dropped = format!(
            "const carried = new DataTransfer(); carried.items.add(new File([{}], 'job.txt', {{ type: 'text/plain' }})); \
             document.querySelector('main').dispatchEvent(new DragEvent('drop', {{ dataTransfer: carried, bubbles: true, cancelable: true }}));",
            json!(text)
        );
        page.script(&dropped).await;
        page.find(Role::Heading, "Quillmoss Laundry (sample)").await;
        page.says("R. Moss, on ").await;
        page.says("This job isn't on this device yet.").await;
        assert_eq!(page.script("return Object.keys(localStorage).filter((key) => key.includes('/job/')).length;").await, json!(0));
        page.press("Keep it on this device").await;
        page.until("it opens at the loading", "window.location.hash.endsWith('/loading')").await;
        page.says("CF-1").await;
        page.reload().await;
        page.says("CF-1").await;
        page.no_complaints().await;
    })
    .await;
}

/// Both change what the other doesn't, and one text both: everything is shown, taken as chosen, and undone.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_comes_back_is_joined_line_by_line() {
    let site = Site::serve();
    let mut back = String::new();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        let job = sample(&page).await;
        page.open(&format!("{job}/send")).await;
        page.click(Role::Radio, "Who loads").await;
        let sent = link(&page).await;
        page.press("Copy the link").await;
        visit(Screen::Desk, &sent, async |page: Page| {
            page.started().await;
            page.find(Role::Heading, "This page was opened by a link").await;
            page.find(Role::Button, "Copy the code").await;
            page.press("Keep it on this device").await;
            page.until("it is kept", "window.location.hash.endsWith('/loading')").await;
            page.open(&job).await;
            page.enter("Notes", "Gate code at the office").await;
            page.enter("Customer", "Quillmoss and Daughters").await;
            page.open(&format!("{job}/send")).await;
            back = link(&page).await;
            page.no_complaints().await;
        })
        .await;
        page.open(&job).await;
        page.enter("Notes", "Call first").await;
        page.enter("Site", "Plant room, 9 Tarn Row").await;
        pasted(&page, &format!("Here it is back:\n{back}\nRegards, R.")).await;
        page.says("This job is on this device already.").await;
        // What only this side changed stays and needs no answer; it is shown all the same.
        for (what, chosen) in [("Customer", "Take what came"), ("Notes", "Keep mine"), ("Site", "Keep mine")] {
            let script = format!(
                "const set = [...document.querySelectorAll('.difference fieldset')].find((set) => set.querySelector('legend').innerText === '{what}'); \
                 return set ? set.querySelector('input:checked').parentElement.innerText.trim() : null;"
            );
            assert_eq!(page.script(&script).await, json!(chosen), "{what}");
        }
        page.fits_its_width().await;
        let both = "[...document.querySelectorAll('.difference fieldset')].find((set) => set.querySelector('legend').innerText === 'Notes') \
                    .querySelectorAll('input')[2].click();";
        page.script(both).await;
        assert_eq!(page.script("return document.querySelectorAll('.difference').length;").await, json!(3));
        page.press("Join the two").await;
        page.says("Joined.").await;
        page.open(&job).await;
        page.find(Role::Button, "Add a vessel").await;
        assert_eq!(page.entered("Customer").await, "Quillmoss and Daughters");
        assert_eq!(page.entered("Site").await, "Plant room, 9 Tarn Row");
        let notes = page.entered("Notes").await;
        assert!(notes.contains("Call first") && notes.contains("Gate code at the office"), "{notes}");
        page.press("Undo").await;
        page.settled().await;
        assert_eq!(page.entered("Notes").await, "Call first");
        assert_eq!(page.entered("Customer").await, "Quillmoss Laundry (invented)");
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn costs_stay_unless_they_are_ticked() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        let mut job = stored::ten_to_pick();
        let row = PriceRow {
            key: "part:tape".to_owned(),
            kind: PriceKind::Part,
            part_number: "TP-1".to_owned(),
            cost: amount(COST, '.').unwrap(),
            ..PriceRow::default()
        };
        apply(&mut job, Edit::Price { key: row.key.clone(), row: Some(Arc::new(row)) }, &Id::new("stored")).unwrap();
        stored::put(&page, &stored::texts(&job)).await;
        page.open(&format!("#/jobs/{}/send", job.id)).await;
        for receiver in ["The warehouse", "Who loads", "Who services", "The customer"] {
            page.click(Role::Radio, receiver).await;
            page.click(Role::Checkbox, "Quotes that were issued").await;
            let text = job_text(&job_in(&link(&page).await));
            assert!(!text.contains(COST), "{receiver}");
            assert_eq!(text.contains("TP-1"), receiver == "The warehouse", "{receiver}");
        }
        page.click(Role::Radio, "The warehouse").await;
        page.click(Role::Checkbox, "Costs and margins").await;
        page.says("▲ Costs and margins go along. Whoever gets this can read them.").await;
        assert!(job_text(&job_in(&link(&page).await)).contains(COST));
        page.fits_its_width().await;
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn damage_is_refused_with_its_reason_and_nothing_else_is_shown() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        let job = sample(&page).await;
        page.open(&format!("{job}/send")).await;
        let whole = link(&page).await;
        let cut = &whole[..whole.len() - 12];
        page.go(&format!("#/open/{}", cut.split_once("#/open/").unwrap().1)).await;
        page.says("Its end is missing: most likely a messenger cut a long link off.").await;
        let middle = whole.len() - 40;
        let other = if &whole[middle..=middle] == "A" { "B" } else { "A" };
        let changed = [&whole[..middle], other, &whole[middle + 1..]].concat();
        for (text, reason) in [
            (changed.as_str(), "Something in it was changed on the way"),
            ("Good morning", "There is no job in it."),
            ("{\"format\":\"bedwright-job\",\"version\":9}", "It was made by a later version of Bedwright."),
            ("{\"format\":", "The file makes no sense from line 1"),
        ] {
            pasted(&page, text).await;
            page.says(reason).await;
            assert!(page.has(Role::Heading, "▲ Nothing was taken in.").await);
            assert!(!page.has(Role::Button, "Keep it on this device").await);
        }
        page.open("#/jobs").await;
        assert_eq!(page.script("return document.querySelectorAll('.job-line').length;").await, json!(1));
        page.no_complaints().await;
    })
    .await;
}

/// Texts that try to be markup, a script's link, a formula: they arrive as the letters they are.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_arrives_is_never_markup() {
    let site = Site::serve();
    let trick = "<img src=x onerror=\"document.title='taken'\"> javascript:alert(1) =1+1";
    visit(Screen::Phone, &site.address(), async |page: Page| {
        let job = sample(&page).await;
        page.open(&job).await;
        for field in ["Job", "Customer", "Site", "Notes"] {
            page.enter(field, trick).await;
        }
        page.open(&format!("{job}/send")).await;
        page.enter("Your name", trick).await;
        let sent = link(&page).await;
        visit(Screen::Desk, &sent, async |page: Page| {
            page.started().await;
            page.says(trick).await;
            page.press("Keep it on this device").await;
            page.until("it is kept", "window.location.hash.endsWith('/picking')").await;
            page.open("#/jobs").await;
            page.says(trick).await;
            page.open(&job).await;
            assert_eq!(
                page.script("return document.querySelectorAll('main img, a[href^=\"javascript\"]').length;").await,
                json!(0)
            );
            assert_ne!(page.script("return document.title;").await, json!("taken"));
            page.no_complaints().await;
        })
        .await;
    })
    .await;
}

/// The codes of a screen as pictures: across, and which modules are dark.
struct Shown {
    across: usize,
    dark: Vec<bool>,
}

/// Every code that is shown in turn, in any order, each once.
async fn shown(page: &Page) -> Vec<Shown> {
    let mut all: Vec<(String, Shown)> = Vec::new();
    let begun = Instant::now();
    loop {
        let now = page
            .script("const code = document.querySelector('svg.qr'); return [code.getAttribute('viewBox'), code.querySelector('path').getAttribute('d'), (document.querySelector('.codes-number') || {}).innerText || '1 of 1'];")
            .await;
        let text = |at: usize| now[at].as_str().unwrap().to_owned();
        let count: usize = text(2).rsplit(' ').next().unwrap().parse().unwrap();
        if !all.iter().any(|(path, _)| *path == text(1)) {
            let across: usize = text(0).rsplit(' ').next().unwrap().parse().unwrap();
            all.push((text(1), Shown { across, dark: dark(&text(1), across) }));
        }
        if all.len() == count {
            return all.into_iter().map(|(_, shown)| shown).collect();
        }
        assert!(begun.elapsed().as_secs() < 60, "{} of {count} were shown", all.len());
        tokio::time::sleep(std::time::Duration::from_millis(60)).await;
    }
}

/// Rows of dark modules: `M4 4h7v1h-7z`.
fn dark(path: &str, across: usize) -> Vec<bool> {
    let mut dark = vec![false; across * across];
    for run in path.split('M').filter(|run| !run.is_empty()) {
        let (x, rest) = run.split_once(' ').unwrap();
        let (y, rest) = rest.split_once('h').unwrap();
        let (long, _) = rest.split_once('v').unwrap();
        let [x, y, long] = [x, y, long].map(|number| number.parse::<usize>().unwrap());
        dark[y * across + x..y * across + x + long].fill(true);
    }
    dark
}

/// A code in the middle of a grey picture, as a camera has it.
fn grey(code: &Shown, wide: usize, high: usize) -> Vec<u8> {
    let each = (high - 20) / code.across;
    let (left, top) = ((wide - each * code.across) / 2, (high - each * code.across) / 2);
    let mut picture = vec![150_u8; wide * high];
    for y in 0..each * code.across {
        for x in 0..each * code.across {
            let dark = code.dark[y / each * code.across + x / each];
            picture[(top + y) * wide + left + x] = if dark { 40 } else { 225 };
        }
    }
    picture
}

/// A film of the codes in turn, ten pictures a second, each code four of them, as Chromium's camera of a file takes it
/// (YUV4MPEG2).
fn film(codes: &[Shown], to: &Path) {
    let (wide, high) = (640, 480);
    let mut film = format!("YUV4MPEG2 W{wide} H{high} F10:1 Ip A1:1 C420mpeg2\n").into_bytes();
    for code in codes {
        let picture = grey(code, wide, high);
        for _ in 0..4 {
            film.extend(b"FRAME\n");
            film.extend(&picture);
            film.extend(vec![128; wide * high / 2]);
        }
    }
    std::fs::write(to, film).unwrap();
}

/// What a general decoder reads off the same codes.
fn read_outside(codes: &[Shown], folder: &Folder) -> Vec<String> {
    let python = std::env::var("BEDWRIGHT_PYTHON").expect("BEDWRIGHT_PYTHON: `tests/run journeys` says where it is");
    let mut command = Command::new(python);
    command.arg(concat!(env!("CARGO_MANIFEST_DIR"), "/reference/read_qr.py"));
    for (at, code) in codes.iter().enumerate() {
        let file = folder.path().join(format!("{at}.pgm"));
        let picture = [b"P5\n640 480\n255\n".to_vec(), grey(code, 640, 480)].concat();
        std::fs::write(&file, picture).unwrap();
        command.arg(file);
    }
    let output = command.output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap().lines().map(str::to_owned).collect()
}

/// Shown on a phone, read by zxing-cpp and by the page's own reader off Chromium's camera: the same job.
async fn by_codes(several: bool) {
    let site = Site::serve();
    let folder = Folder::new("codes");
    let film_file = folder.path().join("codes.y4m");
    let mut texts = Vec::new();
    let mut whole = String::new();
    let mut count = 0;
    visit(Screen::Phone, &site.address(), async |page: Page| {
        let job = if several {
            page.started().await;
            let job = stored::every_pack();
            stored::put(&page, &stored::texts(&job)).await;
            format!("#/jobs/{}", job.id)
        } else {
            sample(&page).await
        };
        page.open(&format!("{job}/send")).await;
        page.click(Role::Radio, "The warehouse").await;
        page.press("Show codes").await;
        page.until("a code is shown", "document.querySelector('svg.qr')").await;
        whole = link(&page).await;
        let codes = shown(&page).await;
        count = codes.len();
        texts = read_outside(&codes, &folder);
        film(&codes, &film_file);
        page.fits_its_width().await;
        page.no_complaints().await;
    })
    .await;
    assert_eq!(texts.len(), count, "zxing-cpp reads every code");
    assert_eq!(several, count > 1, "{count} codes");
    if several {
        assert!(texts.iter().all(|text| Frame::read(text).is_ok()), "{texts:?}");
    } else {
        assert_eq!(job_in(&texts[0]), job_in(&whole));
    }
    let film_name = film_file.display().to_string();
    let kind = Session { film: Some(&film_name), ..Session::on(Screen::Phone) };
    visit_in(kind, &format!("{}#/open", site.address()), async |page: Page| {
        page.started().await;
        let begun = Instant::now();
        page.press("Read codes").await;
        page.says("This job isn't on this device yet.").await;
        println!(
            "{count} codes by the camera: {:.1} s; link {} letters, {} as JSON",
            begun.elapsed().as_secs_f64(),
            whole.len(),
            job_text(&job_in(&whole)).len()
        );
        page.press("Keep it on this device").await;
        page.until("it is kept", "window.location.hash.endsWith('/picking')").await;
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn one_code_carries_a_small_job_to_a_camera() {
    by_codes(false).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn several_codes_carry_a_large_job_to_a_camera() {
    by_codes(true).await;
}
