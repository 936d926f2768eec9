//! What nobody should do and somebody does: far too much pasted into a field, Back in the middle of everything, a phone that
//! turns, a print while typing, five hundred vessels in a job. Nothing breaks, and nothing that was typed is lost.
//!
//! `tests/run finish` pastes into every field of every screen; elsewhere into one of a few (`BEDWRIGHT_FIELDS=all`).

use std::time::{Duration, Instant};

use serde_json::{Value, json};

use crate::browser::{Screen, turn, visit};
use crate::filter;
use crate::page::{Page, Role};
use crate::paper::{self, Paper};
use crate::site::Site;
use crate::stored;

/// As many characters as are pasted.
const MANY: usize = 100_000;
/// One field of so many is pasted into, where not all are asked for.
const ONE_OF: usize = 7;

/// The fields that a text can be pasted into, in `window.fields`, with all that is folded away shown; what they hold.
const FIELDS: &str = "
    document.querySelectorAll('main details').forEach((each) => { each.open = true; });
    const shown = (field) => field.getClientRects().length > 0 && !field.readOnly && !field.disabled;
    window.fields = () => [...document.querySelectorAll('main input[type=text], main input[type=search], main textarea')].filter(shown);
    return window.fields().map((field) => field.value);";

/// Focuses the field at a place and selects what it holds.
const SELECT: &str = "const field = window.fields()[arguments[0]]; field.focus(); field.select(); return field.value;";

async fn fields(page: &Page) -> Vec<String> {
    // What folds out is drawn when it is open.
    page.script(FIELDS).await;
    page.settled().await;
    let held = page.script(FIELDS).await;
    held.as_array().unwrap().iter().map(|text| text.as_str().unwrap().to_owned()).collect()
}

/// Puts a text in place of what is selected, as one pasting does.
async fn paste(page: &Page, text: &str) {
    if text.is_empty() {
        page.script("document.execCommand('delete');").await;
    } else {
        page.session().cdp().send_raw("Input.insertText", json!({ "text": text })).await.unwrap();
    }
    page.settled().await;
}

/// The page stands, and is no wider than its screen.
async fn stands(page: &Page, what: &str) {
    let crashed = page.script("return Boolean(window.bedwrightCrashed || !document.querySelector('main'));").await;
    assert_eq!(crashed, json!(false), "{what}: {}", page.text().await);
    page.fits_its_width().await;
}

/// Pastes into fields of a screen and puts back what they held; how many, and the longest a pasting took.
async fn pasted_over(page: &Page, screen: &str, one_of: usize) -> (usize, Duration) {
    page.open(screen).await;
    let held = fields(page).await;
    let (mut count, mut longest) = (0, Duration::ZERO);
    for at in (0..held.len()).filter(|at| at % one_of == 0) {
        // Digits are a number, however many; a word is none, and can't be broken at a space.
        let text = ["7", "W", "fi × "][count % 3].repeat(MANY);
        let text: String = text.chars().take(MANY).collect();
        let before = page.session().execute(SELECT, vec![json!(at)]).await.unwrap();
        let before = before.json().as_str().unwrap_or_default().to_owned();
        let begun = Instant::now();
        paste(page, &text).await;
        let took = begun.elapsed();
        page.script("document.activeElement.blur();").await;
        page.settled().await;
        stands(page, &format!("{screen}, field {at}")).await;
        longest = longest.max(took);
        // It stands there as it was pasted: nothing is cut off without a word.
        let now = page.session().execute(SELECT, vec![json!(at)]).await.unwrap();
        let now = now.json().as_str().unwrap_or_default().chars().count();
        assert_eq!(now, MANY, "{screen}, field {at} holds another text");
        paste(page, &before).await;
        page.script("document.activeElement.blur();").await;
        count += 1;
    }
    page.settled().await;
    assert_eq!(fields(page).await, held, "{screen}: what the fields held before");
    page.no_complaints().await;
    (count, longest)
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_hundred_thousand_characters_in_a_field_break_nothing_and_are_all_there() {
    let one_of = if std::env::var("BEDWRIGHT_FIELDS").as_deref() == Ok("all") { 1 } else { ONE_OF };
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        let (mut all, mut longest) = (0, Duration::ZERO);
        let mut screens = filter::screens(&page).await;
        screens.extend(["#/open".to_owned(), format!("{}/send", screens[1])]);
        for screen in &screens {
            let (count, took) = pasted_over(&page, screen, one_of).await;
            if took > Duration::from_secs(1) {
                println!("{screen}: {count} fields, the longest pasting took {:.2} s", took.as_secs_f64());
            }
            all += count;
            longest = longest.max(took);
        }
        println!(
            "{MANY} characters pasted into {all} fields of {} screens; the longest took {:.2} s",
            screens.len(),
            longest.as_secs_f64()
        );
        assert!(all >= screens.len() / 2, "{all} fields");

        // A title like that is on every paper of the job, and still there after a reload.
        page.open(&screens[1]).await;
        page.find(Role::Textbox, "Job").await.focus().await.unwrap();
        page.script("document.activeElement.select();").await;
        let title = "W".repeat(MANY);
        paste(&page, &title).await;
        for screen in screens.iter().filter(|screen| screen.starts_with(&screens[1])) {
            page.open(screen).await;
            stands(&page, screen).await;
        }
        page.open(&format!("{}/bill", screens[1])).await;
        assert!(!paper::sheets(&page, Paper::A4).await.is_empty());
        page.reload().await;
        page.open(&screens[1]).await;
        assert_eq!(page.entered("Job").await, title);
        page.press("Undo").await;
        page.find(Role::Heading, "Quillmoss Laundry (sample)").await;
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn five_hundred_vessels_open_take_one_more_and_are_billed_and_quoted() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        let job = stored::five_hundred_vessels();
        let texts = stored::texts(&job);
        let letters: usize = texts.iter().map(|(_, text)| text.len()).sum();
        stored::put(&page, &texts).await;
        let address = format!("#/jobs/{}", job.id);
        let patience = Duration::from_secs(60);
        let told = |what: &str, begun: Instant| println!("500 vessels, {letters} letters: {what} in {:.2} s", begun.elapsed().as_secs_f64());

        let begun = Instant::now();
        page.go(&address).await;
        page.until_within(patience, "the job", "document.querySelectorAll('main a[href*=\"/vessels/\"]').length >= 500").await;
        told("the job opens", begun);
        let begun = Instant::now();
        page.press("Add a vessel").await;
        page.until_within(patience, "the vessel", "window.location.hash.includes('/vessels/')").await;
        page.find(Role::Heading, "Layers").await;
        told("one more is added", begun);
        let begun = Instant::now();
        page.enter("Nominal size", "12x52").await;
        page.settled().await;
        told("an entry of it is typed", begun);
        for (paper, there) in [("bill", "Pooled over the job"), ("quote", "Quote"), ("picking", "Pick list")] {
            let begun = Instant::now();
            page.go(&format!("{address}/{paper}")).await;
            page.until_within(patience, paper, &format!("[...document.querySelectorAll('main h1, main h2')].some((each) => each.innerText.toLowerCase().includes({}))", json!(there.to_lowercase()))).await;
            page.settled().await;
            told(paper, begun);
        }
        let begun = Instant::now();
        page.session().refresh().await.unwrap();
        page.until_within(patience, "the page starts", "document.documentElement.dataset.page === 'started' && document.querySelector('main')").await;
        told("it starts again", begun);
        page.go(&address).await;
        page.until_within(patience, "the job", "document.querySelectorAll('main a[href*=\"/vessels/\"]').length >= 501").await;
        page.no_complaints().await;
    })
    .await;
}

/// All that folds out or opens on a screen is opened, and one character more is typed into its last field: the field's id or
/// place, and what it held then.
const IN_THE_MIDDLE: &str = "
    document.querySelectorAll('main details').forEach((each) => { each.open = true; });
    document.querySelectorAll('main [aria-expanded=false]').forEach((each) => each.click());
    const shown = (field) => field.getClientRects().length > 0 && !field.readOnly && !field.disabled && field.type !== 'search';
    const fields = [...document.querySelectorAll('main input[type=text], main textarea')].filter(shown);
    const field = fields[fields.length - 1];
    if (!field) return null;
    field.focus();
    field.setSelectionRange(field.value.length, field.value.length);
    return [field.id, fields.length - 1];";

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn back_in_the_middle_of_everything_loses_nothing() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        let screens = filter::screens(&page).await;
        let mut typed = 0;
        for screen in &screens {
            page.open("#/sure").await;
            page.open(screen).await;
            let field = page.script(IN_THE_MIDDLE).await;
            page.session().cdp().send_raw("Input.insertText", json!({ "text": "7" })).await.unwrap();
            let held = page.script("return document.activeElement.value;").await;
            // The menu on top of it all.
            page.press("Menu").await;
            page.session().back().await.unwrap();
            page.until("Back leads to the screen before", "window.location.hash === '#/sure'").await;
            page.settled().await;
            stands(&page, &format!("Back from {screen}")).await;
            assert!(!page.has(Role::Link, "Settings").await, "{screen}: the menu is still open");
            page.session().forward().await.unwrap();
            page.until("Forward leads there again", &format!("window.location.hash === {}", json!(screen))).await;
            page.settled().await;
            stands(&page, &format!("Forward to {screen}")).await;
            if field == Value::Null {
                continue;
            }
            page.script(IN_THE_MIDDLE).await;
            let now = page.script("return document.activeElement.value;").await;
            assert_eq!(now, held, "{screen}: what was typed in {field}");
            typed += 1;
        }
        println!("Back in the middle of {} screens, {typed} of them while typing", screens.len());
        assert!(typed >= 8, "{typed}");
        page.no_complaints().await;
    })
    .await;
}

/// Where the focused field stands in the window: its top and its bottom, the bottom of the bar above it, the window's height.
const FOCUSED: &str = "const box = document.activeElement.getBoundingClientRect(); \
    const bar = document.querySelector('header').getBoundingClientRect(); \
    return [document.activeElement.tagName, Math.round(box.top), Math.round(box.bottom), Math.round(Math.max(0, bar.bottom)), window.innerHeight];";

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_phone_that_is_turned_keeps_the_field_its_focus_and_its_text() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        filter::planned(&page, "Turned").await;
        for name in ["Inside depth", "Riser outside diameter"] {
            let field = page.find(Role::Textbox, name).await;
            field.scroll_into_view().await.unwrap();
            field.focus().await.unwrap();
            page.script("document.activeElement.select();").await;
            let mut typed = String::new();
            for (width, height, digit) in [(844, 390, "5"), (390, 844, "1"), (844, 390, "."), (390, 844, "5")] {
                turn(&page, width, height).await;
                page.settled().await;
                page.session().cdp().send_raw("Input.insertText", json!({ "text": digit })).await.unwrap();
                page.settled().await;
                typed.push_str(digit);
                let held = page.script("return document.activeElement.value;").await;
                assert_eq!(held, json!(typed), "{name} at {width} × {height}");
                stands(&page, &format!("{name} at {width} × {height}")).await;
                let at = page.script(FOCUSED).await;
                let place: Vec<i64> = (1..5).map(|part| at[part].as_i64().unwrap()).collect();
                assert!(place[0] >= place[2] && place[1] <= place[3], "{name} at {width} × {height} is hidden: {at}");
            }
        }
        page.reload().await;
        assert_eq!(page.entered("Inside depth").await, "51.5");
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn printing_while_typing_prints_what_is_typed_and_typing_goes_on() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        let job = filter::planned(&page, "Printed").await;
        let vessel = page.fragment().await;
        for (screen, name) in [(&vessel, "Inside depth"), (&job, "Customer")] {
            page.open(screen).await;
            page.find(Role::Textbox, name).await.focus().await.unwrap();
            page.script("document.activeElement.select();").await;
            let mut typed = String::new();
            for letter in ["4", "9"] {
                page.session().cdp().send_raw("Input.insertText", json!({ "text": letter })).await.unwrap();
                typed.push_str(letter);
                let sheets = paper::sheets(&page, Paper::A4).await;
                assert!(sheets.iter().any(|sheet| sheet.contains(&typed)), "{name}: {sheets:?}");
                let now = page
                    .script("return [document.activeElement.value, Boolean(document.activeElement.closest('main'))];")
                    .await;
                assert_eq!(now, json!([typed, true]), "{name}");
            }
            page.reload().await;
            assert_eq!(page.entered(name).await, typed);
        }
        page.no_complaints().await;
    })
    .await;
}
