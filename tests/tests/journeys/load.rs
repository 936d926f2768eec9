//! Loading a vessel on a phone with no connection: cautions, steps, one reading off, killed mid-way and opened again where it
//! was, signed, corrected; and the sheets on paper, every step once.

use serde_json::json;

use crate::axe;
use crate::browser::{Screen, Session, visit, visit_in};
use crate::folder::Folder;
use crate::kill;
use crate::page::{Page, Role};
use crate::paper::{self, Paper};
use crate::site::Site;

const PERSON: &str = "Ida Larch (invented)";

/// The sheet of a tag of the sample's carbon filter, whose cautions were not read yet.
async fn sheet_of(page: &Page, sheet: &str, tag: &str) -> String {
    page.started().await;
    page.press("Sample job").await;
    page.find(Role::Button, "Add a vessel").await;
    let job = page.fragment().await;
    page.open(&format!("{job}/loading")).await;
    page.follow(&format!("{sheet}: {tag}")).await;
    page.find(Role::Heading, &format!("{sheet} · {tag}")).await;
    job
}

async fn read_the_cautions(page: &Page) {
    page.enter("Your name", PERSON).await;
    page.press("I have read them").await;
    page.until("the steps", "document.querySelector('.load-step-next') !== null").await;
}

/// Ticks step after step until one asks for a reading: how many were ticked.
async fn tick_on(page: &Page) -> usize {
    let mut ticked = 0;
    loop {
        let next = "const next = document.querySelector('.load-step-next > .load-step-tick input'); \
                    return next ? next.closest('li').querySelector('.load-step-title').innerText : '';";
        let title = page.script(next).await.as_str().unwrap_or_default().to_owned();
        if title.is_empty() {
            return ticked;
        }
        page.click(Role::Checkbox, &title).await;
        let done = json!(title);
        page.until(
            &format!("{title} is ticked"),
            &format!(
                "[...document.querySelectorAll('.load-step-done .load-step-title')].some((step) => step.innerText === {done})"
            ),
        )
        .await;
        ticked += 1;
    }
}

/// The loading sheet of a tag of the sample, its cautions read.
pub async fn begun(page: &Page, tag: &str) {
    sheet_of(page, "Loading sheet", tag).await;
    read_the_cautions(page).await;
}

/// Ticks and reads everything that is left, each reading as it is expected.
pub async fn to_the_end(page: &Page) {
    tick_on(page).await;
    page.enter(AFTER_GRAVEL, "47 1/4").await;
    tick_on(page).await;
    page.enter(AFTER_CARBON, "15 1/8").await;
    tick_on(page).await;
}

const AFTER_GRAVEL: &str = "Tape: After the last of Gravel 1/8 × 1/4 in";
const AFTER_CARBON: &str = "Tape: After the last of Coconut carbon 12×40";

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_sample_is_loaded_on_a_phone_without_a_connection_killed_half_way_and_signed() {
    let mut site = Site::serve();
    let address = site.address();
    let profile = Folder::new("profile");
    let mut sheet = String::new();
    let mut taps = 0;
    let killed = Session { profile: Some(profile.path()), killed: true, ..Session::on(Screen::Phone) };
    visit_in(killed, &address, async |page: Page| {
        page.started().await;
        page.ready_offline().await;
        site.stop();
        sheet_of(&page, "Loading sheet", "CF-1").await;
        read_the_cautions(&page).await;
        axe::no_barriers(&page).await;
        page.fits_its_width().await;
        taps += 1 + PERSON.len();
        taps += tick_on(&page).await;
        // 47 1/4 in ± 1/2 in are expected: within the spread nothing is remarked.
        page.says("47 1/4 in ± 1/2 in").await;
        page.enter(AFTER_GRAVEL, "47 1/2").await;
        page.says("as expected").await;
        assert!(!page.text().await.contains("than counted"));
        taps += "47 1/2".len() + 1;
        taps += tick_on(&page).await;
        sheet = page.fragment().await;
        let ids = kill::browser_of(profile.path());
        // What is typed is in the journal within moments; a person takes longer to drop a phone.
        tokio::time::sleep(std::time::Duration::from_millis(500)).await;
        kill::kill(&ids);
    })
    .await;
    kill::gone(profile.path()).await;
    let again = Session { profile: Some(profile.path()), ..Session::on(Screen::Phone) };
    visit_in(again, &format!("{address}{sheet}"), async |page: Page| {
        page.started().await;
        // It opens where it was: the reading after the carbon is next, and on the screen.
        page.find(Role::Heading, "Loading sheet · CF-1").await;
        page.until("the next step is in sight", "(() => { const next = document.querySelector('.load-step-next'); if (!next) return false; const at = next.getBoundingClientRect(); return at.top < innerHeight && at.bottom > 0; })()").await;
        assert_eq!(page.entered(AFTER_GRAVEL).await, "47 1/2");
        // From the gravel as it was read: 47.5 − 32.13 = 15.37 in.
        page.says("15 3/8 in ±").await;
        page.enter(AFTER_CARBON, "18 1/2").await;
        page.says("lower than expected").await;
        page.says("less than counted").await;
        page.says("Likely:").await;
        page.says("the inside diameter is").await;
        taps += "18 1/2".len() + 1;
        // The other bag was found: the reading is right now.
        page.enter(AFTER_CARBON, "15 1/4").await;
        page.until("quiet", "!document.body.innerText.includes('less than counted')").await;
        taps += "15 1/4".len();
        taps += tick_on(&page).await;
        page.until("every step", "document.querySelectorAll('.load-steps > .load-step').length === document.querySelectorAll('.load-steps > .load-step-done').length").await;
        // The removal sheet was left out on purpose: what was not ticked is said, and does not hold it up.
        page.says("Not ticked; the record will say so:").await;
        page.press("Sign").await;
        taps += 1;
        page.says(&format!("Signed by {PERSON}")).await;
        page.says("Signed, so nothing here is changed any more.").await;
        println!("taps and keys to load one vessel: {taps}");
        // Signed is written through: a page loaded again at once has it.
        page.reload().await;
        page.says(&format!("Signed by {PERSON}")).await;
        assert!(!page.has(Role::Button, "Sign").await);
        // A correction is added; what was signed stays.
        page.script("document.querySelectorAll('details').forEach((each) => { each.open = true; });").await;
        page.enter("What was wrong, and what is right", "Read from the wrong side of the rim.").await;
        page.pick("Of which reading", "After the last of Coconut carbon 12×40").await;
        // What lacks is said, and what was typed stays.
        page.press("Sign the correction").await;
        page.says("Type the tape reading as it should be.").await;
        page.enter("Tape, as it should be", "15 3/8").await;
        page.pick("Of which layer's lot", "Coconut carbon 12×40").await;
        page.enter("Lot and date, as they should be", "L-2211, 2026-08 (invented)").await;
        page.press("Sign the correction").await;
        page.says("Read from the wrong side of the rim. · L-2211, 2026-08 (invented)").await;
        page.says("15 3/8 in").await;
        page.says("Coconut carbon 12×40 · L-2211, 2026-08 (invented)").await;
        assert_eq!(page.entered("What was wrong, and what is right").await, "");
        // It is written through as a signature is: a page loaded again at once has it.
        page.reload().await;
        page.says("Read from the wrong side of the rim. · L-2211, 2026-08 (invented)").await;
        // The other tag's sheet is its own, and asks for no second reading of the cautions.
        let other = sheet.replace("/CF-1", "/CF-2");
        page.open(&other).await;
        page.find(Role::Heading, "Loading sheet · CF-2").await;
        page.says("0 of 25 steps done").await;
        page.until("its steps", "document.querySelector('.load-step-next') !== null").await;
    })
    .await;
}

async fn every_step_once(page: &Page, title: &str, steps: usize) {
    for size in [Paper::Letter, Paper::A4] {
        let all = paper::chosen(page, size).await;
        // What is loaded comes with its picture, on a sheet of its own.
        let (pictures, sheets): (Vec<String>, Vec<String>) =
            all.into_iter().partition(|sheet| sheet.contains("Section to scale"));
        assert_eq!(pictures.len(), usize::from(title == "Loading sheet"), "{size:?}");
        let all = sheets.join("\n");
        assert!(all.contains(title), "{size:?}: no “{title}” in\n{all}");
        // Each step begins with its number; every number stands once.
        for number in 1..=steps {
            let begins = |line: &&str| {
                let mut words = line.split_whitespace();
                words.next() == Some(number.to_string().as_str())
                    && words.next().is_some_and(|word| {
                        word.chars().next().is_some_and(|letter| letter.is_uppercase() || letter.is_ascii_digit())
                    })
            };
            let found: Vec<&str> = all.lines().filter(begins).collect();
            assert_eq!(found.len(), 1, "{size:?}: step {number}: {found:?} in\n{all}");
        }
        for (at, sheet) in sheets.iter().enumerate() {
            let number = format!("{} of {}", at + 1, sheets.len());
            assert!(sheet.contains(&number) && sheet.contains("Planning aid."), "{size:?}: sheet {}:\n{sheet}", at + 1);
        }
        println!("{title}, {size:?}: {steps} steps on {} sheets", sheets.len());
    }
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn both_sheets_print_every_step_once_to_be_filled_by_hand() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        let job = sheet_of(&page, "Loading sheet", "CF-1").await;
        every_step_once(&page, "Loading sheet", 25).await;
        page.open(&format!("{job}/loading")).await;
        page.follow("Removal sheet: CF-1").await;
        page.find(Role::Heading, "Removal sheet · CF-1").await;
        every_step_once(&page, "Removal sheet", 15).await;
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_removal_says_what_to_expect_and_keeps_drums_and_who_decides_their_class() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        sheet_of(&page, "Removal sheet", "CF-2").await;
        page.says("its owner says what class of waste it is").await;
        read_the_cautions(&page).await;
        page.says("once the water has run off").await;
        page.enter("Tape: Surface as found", "16 1/2").await;
        page.pick("How it is taken out", "Wet vacuum").await;
        page.press("Add a drum").await;
        assert_eq!(page.entered("On its label").await, "CF-2");
        page.enter("What is in it", "spent carbon, drained").await;
        page.enter("Weight", "118").await;
        page.enter("Who decides the waste class", "A. Elm (invented)").await;
        page.reload().await;
        assert_eq!(page.entered("What is in it").await, "spent carbon, drained");
        assert_eq!(page.entered("Who decides the waste class").await, "A. Elm (invented)");
        assert_eq!(page.entered("Tape: Surface as found").await, "16 1/2");
        axe::no_barriers(&page).await;
        page.fits_its_width().await;
        page.no_complaints().await;
    })
    .await;
}
