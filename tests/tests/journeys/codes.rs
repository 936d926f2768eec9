//! A job goes by codes: held up to a camera, photographed, printed on a label; read by the page's own reader, by the browser's,
//! and by a general decoder.

use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Instant;

use bedwright_job::envelope::Frame;
use bedwright_job::saved::job_text;
use serde_json::json;

use crate::browser::{Screen, Session, visit, visit_in};
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::paper::{self, Paper};
use crate::site::Site;
use crate::stored;
use crate::travel::{job_in, link, sample};

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

/// A job on a phone, small or large, as the codes it is shown in; its link says the same.
async fn codes_of(page: &Page, several: bool) -> (String, Vec<Shown>) {
    let job = if several {
        page.started().await;
        let job = stored::every_pack();
        stored::put(page, &stored::texts(&job)).await;
        format!("#/jobs/{}", job.id)
    } else {
        sample(page).await
    };
    page.open(&format!("{job}/send")).await;
    page.click(Role::Radio, "The warehouse").await;
    page.press("Show codes").await;
    page.until("a code is shown", "document.querySelector('svg.qr')").await;
    (link(page).await, shown(page).await)
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
        let codes;
        (whole, codes) = codes_of(&page, several).await;
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

/// A photo of a code as a hand takes it: twelve hundred pixels high, turned by some degrees, lit from one side, with the grain of
/// a small lens. A bitmap, which every browser reads.
fn photo(code: &Shown, to: &Path) {
    let (wide, high) = (1600_usize, 1200_usize);
    let (turned, each) = (7_f64.to_radians(), 700.0 / code.across as f64);
    let mut grain = 1_u32;
    let mut rows = Vec::with_capacity(wide * high * 3);
    // From the bottom row up, as bitmaps are written.
    for y in (0..high).rev() {
        for x in 0..wide {
            let (right, down) = (x as f64 - 850.0, y as f64 - 560.0);
            let across = (right * turned.cos() + down * turned.sin()) / each + code.across as f64 / 2.0;
            let along = (down * turned.cos() - right * turned.sin()) / each + code.across as f64 / 2.0;
            let inside = |at: f64| (0.0..code.across as f64).contains(&at);
            let paper = inside(across) && inside(along);
            let dark = paper && code.dark[along as usize * code.across + across as usize];
            grain = grain.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            let light = (x * 60 / wide) as i32 + (grain >> 28) as i32 - 8;
            let grey = (if dark {
                35
            } else if paper {
                175
            } else {
                110
            }) + light;
            rows.extend([grey.clamp(0, 255) as u8; 3]);
        }
    }
    let mut file = b"BM".to_vec();
    let four = |number: usize| u32::try_from(number).unwrap().to_le_bytes();
    for number in [54 + rows.len(), 0, 54, 40, wide, high] {
        file.extend(four(number));
    }
    file.extend([1, 0, 24, 0]);
    file.extend([0; 24]);
    file.extend(rows);
    std::fs::write(to, file).unwrap();
}

/// The codes a phone shows for its job, photographed; the link that says the same.
async fn photographed(site: &Site, folder: &Folder, several: bool) -> (Vec<PathBuf>, String) {
    let (mut photos, mut whole) = (Vec::new(), String::new());
    visit(Screen::Phone, &site.address(), async |page: Page| {
        let codes;
        (whole, codes) = codes_of(&page, several).await;
        for (at, code) in codes.iter().enumerate() {
            let file = folder.path().join(format!("{at}.bmp"));
            photo(code, &file);
            photos.push(file);
        }
    })
    .await;
    (photos, whole)
}

/// Without a camera: the picture somebody took, or was sent.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_photo_of_a_code_opens_a_job() {
    let (site, folder) = (Site::serve(), Folder::new("photos"));
    let (photos, whole) = photographed(&site, &folder, false).await;
    let nothing = folder.path().join("nothing.bmp");
    photo(&Shown { across: 21, dark: vec![false; 21 * 21] }, &nothing);
    let other = folder.path().join("other.bmp");
    std::fs::write(&other, "no picture").unwrap();
    visit(Screen::Phone, &format!("{}#/open", site.address()), async |page: Page| {
        page.started().await;
        for none in [&nothing, &other] {
            page.pick_file("A photo of a code", none).await;
            page.says("No code could be read in this photo.").await;
            assert!(!page.has(Role::Button, "Keep it on this device").await);
        }
        page.pick_file("A photo of a code", &photos[0]).await;
        page.says("This job isn't on this device yet.").await;
        assert!(!page.text().await.contains("No code could be read"));
        page.press("Keep it on this device").await;
        page.until("it is kept", "window.location.hash.endsWith('/picking')").await;
        let job = job_in(&whole);
        page.open(&format!("#/jobs/{}", job.id)).await;
        assert_eq!(page.entered("Job").await, job.head.body.title);
        page.no_complaints().await;
    })
    .await;
}

/// One photo of each, in the other order: it says which are missing, and takes the same one twice.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn photos_of_several_codes_are_put_together() {
    let (site, folder) = (Site::serve(), Folder::new("photos"));
    let (photos, whole) = photographed(&site, &folder, true).await;
    assert!(photos.len() > 1);
    visit(Screen::Phone, &format!("{}#/open", site.address()), async |page: Page| {
        page.started().await;
        for (read, file) in photos.iter().rev().enumerate() {
            page.pick_file("A photo of a code", file).await;
            let missing = photos.len() - read - 1;
            if missing > 0 {
                let script = "((document.querySelector('.frames-missing') || {}).innerText || '').match(/\\d+/g)";
                // "1 of 5 read. Still missing: 1, 2, 3, 4."
                page.until("one more is there", &format!("({script} || []).length === {}", missing + 2)).await;
            }
        }
        page.says("This job isn't on this device yet.").await;
        page.press("Keep it on this device").await;
        page.until("it is kept", "window.location.hash.endsWith('/picking')").await;
        page.open(&format!("#/jobs/{}", job_in(&whole).id)).await;
        page.find(Role::Button, "Add a vessel").await;
        page.no_complaints().await;
    })
    .await;
}

/// Stands in for a browser's own detector: it knows these kinds of code, and what it reads is on `window`.
fn detector(kinds: &str, detect: &str) -> String {
    format!(
        "window.asked = 0; window.BarcodeDetector = class {{ \
           constructor(wanted) {{ window.wanted = wanted; }} \
           static async getSupportedFormats() {{ return {kinds}; }} \
           async detect(picture) {{ window.asked += 1; window.was = picture instanceof ImageData; {detect} }} }};"
    )
}

/// Whether the worker of the page's own reader was started.
const OWN_READER: &str =
    "return performance.getEntriesByType('resource').some((each) => /\\/codes-[^/]*\\.js$/.test(each.name));";

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_browser_s_own_detector_is_asked_first_and_ours_when_it_reads_nothing() {
    let (site, folder) = (Site::serve(), Folder::new("photos"));
    let (photos, whole) = photographed(&site, &folder, false).await;
    let reads =
        detector("['ean_13', 'qr_code']", &format!("return [{{ rawValue: '' }}, {{ rawValue: {} }}];", json!(whole)));
    let knows_others = detector("['ean_13']", "throw new Error('not to be asked');");
    let reads_nothing = detector("['qr_code']", "return [];");
    let fails = detector("['qr_code']", "throw new DOMException('out of order', 'InvalidStateError');");
    let answers_nonsense = detector("['qr_code']", "return { rawValue: 7 };");
    let fails_at_once = "window.BarcodeDetector = class { constructor() { throw new TypeError('no'); } \
                         static getSupportedFormats() { return ['qr_code']; } };"
        .to_owned();
    let refuses =
        "window.BarcodeDetector = class { static getSupportedFormats() { throw new Error('no'); } };".to_owned();
    for (before, asked, own) in [
        (&reads, true, false),
        (&knows_others, false, true),
        (&reads_nothing, true, true),
        (&fails, true, true),
        (&answers_nonsense, true, true),
        (&fails_at_once, false, true),
        (&refuses, false, true),
    ] {
        let kind = Session { before: Some(before), ..Session::on(Screen::Phone) };
        visit_in(kind, &format!("{}#/open", site.address()), async |page: Page| {
            page.started().await;
            page.pick_file("A photo of a code", &photos[0]).await;
            page.says("This job isn't on this device yet.").await;
            assert_eq!(page.script("return window.asked > 0;").await, json!(asked), "{before}");
            assert_eq!(page.script(OWN_READER).await, json!(own), "{before}");
            if asked {
                assert_eq!(
                    page.script("return [window.wanted, window.was];").await,
                    json!([{ "formats": ["qr_code"] }, true])
                );
            }
            page.no_complaints().await;
        })
        .await;
    }
}

/// The QR codes of a PDF, as a general decoder reads them off its sheets.
fn printed_codes(pdf: &[u8], folder: &Folder) -> Vec<String> {
    let python = std::env::var("BEDWRIGHT_PYTHON").expect("BEDWRIGHT_PYTHON: `tests/run journeys` says where it is");
    let file = folder.path().join("labels.pdf");
    std::fs::write(&file, pdf).unwrap();
    let drawn =
        Command::new("pdftoppm").args(["-gray", "-r", "300"]).arg(&file).arg(folder.path().join("sheet")).status();
    assert!(drawn.expect("pdftoppm is in the path (Debian: poppler-utils)").success());
    let mut sheets: Vec<PathBuf> = std::fs::read_dir(folder.path())
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "pgm"))
        .collect();
    sheets.sort();
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/reference/read_qr.py");
    let output = Command::new(python).arg(script).args(&sheets).output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap().lines().filter(|line| !line.is_empty()).map(str::to_owned).collect()
}

/// Printed in an office, scanned in a plant room by a phone that has never seen the job.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_code_on_a_label_lands_on_the_service_card_of_its_tag() {
    let (site, folder) = (Site::serve(), Folder::new("labels"));
    let mut codes = Vec::new();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        let job = sample(&page).await;
        page.open(&format!("{job}/labels")).await;
        page.find(Role::Heading, "Labels").await;
        page.click(Role::Radio, "A4").await;
        page.settled().await;
        page.settled().await;
        codes = printed_codes(&paper::printed(&page, Paper::A4).await, &folder);
        page.no_complaints().await;
    })
    .await;
    let mut tags = Vec::new();
    for code in &codes {
        assert!(code.starts_with(&format!("{}#/open/", site.address())), "{code}");
        visit(Screen::Phone, code, async |page: Page| {
            page.started().await;
            page.find(Role::Heading, "This page was opened by a link").await;
            page.press("Keep it on this device").await;
            page.until("a card opens", "/\\/card\\/[^/]+$/.test(window.location.hash)").await;
            let tag = page.fragment().await.rsplit('/').next().unwrap().to_owned();
            page.find(Role::Heading, &format!("{tag} · Service card")).await;
            page.fits_its_width().await;
            page.no_complaints().await;
            tags.push(tag);
        })
        .await;
    }
    tags.sort();
    assert_eq!(tags, ["CF-1", "CF-2", "SO-1"]);
}
