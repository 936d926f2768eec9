//! What can't be read is said under its field; nothing else changes, and the right text brings the answers back.

use crate::browser::{Screen, visit};
use crate::filter;
use crate::page::{Page, Role};
use crate::site::Site;

const NONSENSE: &str = "abc";
const HUGE: &str = "1e308";
const OTHER_UNIT: &str = "5 gal";

/// A field, what it holds, what it must refuse, and whether the tape readings rest on it.
struct Asked {
    name: &'static str,
    right: &'static str,
    refused: &'static [&'static str],
    needed: bool,
}

const fn asked(name: &'static str, right: &'static str, refused: &'static [&'static str], needed: bool) -> Asked {
    Asked { name, right, refused, needed }
}

/// A height of 0 is the lowest point; an allowance below 0 ends under the rim; a tape, a wall and a depth are more
/// than 0. Empty is refused where nothing can be assumed.
const ASKED: &[Asked] = &[
    asked("Nominal size", "12x52", &[NONSENSE, "-5", "0", HUGE, OTHER_UNIT], false),
    asked("Round the bare shell", "37.9", &[NONSENSE, "-5", "0", HUGE, OTHER_UNIT, ""], true),
    asked("Wall", "0.16", &[NONSENSE, "-5", HUGE, OTHER_UNIT, ""], true),
    asked("Inside depth", "51", &[NONSENSE, "-5", "0", HUGE, OTHER_UNIT], true),
    asked("Neck height", "1", &[NONSENSE, "-5", HUGE, OTHER_UNIT], true),
    asked("Clear bore", "2 1/2", &[NONSENSE, "-5", "0", HUGE, OTHER_UNIT], false),
    asked("Riser outside diameter", "1.05", &[NONSENSE, "-5", "0", HUGE, OTHER_UNIT], true),
    asked("Riser stands at height", "0", &[NONSENSE, "-5", HUGE, OTHER_UNIT], true),
    asked("Valve wants it above the rim by", "0", &[NONSENSE, HUGE, OTHER_UNIT], false),
];

/// Every entry with what it holds, by the id of its field.
async fn all_entries(page: &Page) -> Vec<(String, String)> {
    let held = page
        .script(
            "return [...document.querySelectorAll('main input[type=text]')].map((field) => [field.id, field.value]);",
        )
        .await;
    let text = |value: &serde_json::Value| value.as_str().unwrap().to_owned();
    held.as_array().unwrap().iter().map(|pair| (text(&pair[0]), text(&pair[1]))).collect()
}

async fn every_mistake_of_the_survey(page: Page) {
    page.started().await;
    filter::planned(&page, "Mistakes").await;
    page.enter("Clear bore", "2 1/2").await;
    page.enter("Valve wants it above the rim by", "0").await;
    page.settled().await;
    let good = filter::cards(&page).await;
    let before = all_entries(&page).await;
    let mut wrong = Vec::new();
    for field in ASKED {
        for text in field.refused {
            page.enter(field.name, text).await;
            page.settled().await;
            let said = page.described(field.name).await;
            if !said.trim_end().ends_with(['.', '?']) {
                wrong.push(format!("{} “{text}”: no sentence under it, “{said}”", field.name));
            }
            let now = filter::cards(&page).await;
            if field.needed && now.iter().any(|card| !card.contains("– ") || !card.contains("tape reads –")) {
                wrong.push(format!("{} “{text}”: still an answer, {now:?}", field.name));
            }
            // The same is asked as before, and nothing else has changed.
            let others = all_entries(&page).await;
            let ids = |entries: &[(String, String)]| entries.iter().map(|(id, _)| id.clone()).collect::<Vec<_>>();
            if ids(&before) != ids(&others) {
                wrong.push(format!("{} “{text}”: asked {:?}", field.name, ids(&others)));
            }
            let changed = before.iter().zip(&others).filter(|(was, is)| was.1 != is.1).count();
            if changed != 1 {
                wrong.push(format!("{} “{text}”: {changed} entries changed", field.name));
            }
        }
        page.enter(field.name, field.right).await;
        page.settled().await;
        let said = page.described(field.name).await;
        if !said.is_empty() {
            wrong.push(format!("{} put right: “{said}”", field.name));
        }
        let back = filter::cards(&page).await;
        if back != good {
            wrong.push(format!("{} put right: {back:?}", field.name));
        }
        let held = all_entries(&page).await;
        if held != before {
            wrong.push(format!("{} put right: {held:?} where there was {before:?}", field.name));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_mistake_in_the_survey_is_said_under_its_field_and_mended_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), every_mistake_of_the_survey).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_mistake_in_the_survey_is_said_under_its_field_and_mended_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), every_mistake_of_the_survey).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_mistake_in_a_layer_is_said_in_its_card_and_leaves_the_layer_below_alone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        filter::planned(&page, "Mistakes in a layer").await;
        page.settled().await;
        let good = filter::cards(&page).await;
        let mut wrong = Vec::new();
        // The top layer is asked for in packs, so a volume is another unit; the underbed by volume, so a length is.
        for (place, right, other) in [(0, "2", "5 gal"), (1, "1/6", "5 in")] {
            for text in [NONSENSE, "-5", "0", HUGE, "", other] {
                let field = page.find_at(Role::Textbox, "How much", place).await;
                page.enter_into(&field, text).await;
                page.settled().await;
                let now = filter::cards(&page).await;
                let was = good[place].matches('.').count();
                if !now[place].contains("tape reads –") {
                    wrong.push(format!("layer {place} “{text}”: still an answer, {}", now[place]));
                }
                if now[place].matches('.').count() <= was.saturating_sub(4) && !now[place].contains('.') {
                    wrong.push(format!("layer {place} “{text}”: no sentence, {}", now[place]));
                }
                if place == 0 && now[1] != good[1] {
                    wrong.push(format!("layer {place} “{text}”: the layer below changed, {}", now[1]));
                }
            }
            let field = page.find_at(Role::Textbox, "How much", place).await;
            page.enter_into(&field, right).await;
            page.settled().await;
            let back = filter::cards(&page).await;
            if back != good {
                wrong.push(format!("layer {place} put right: {back:?}"));
            }
        }
        for text in [NONSENSE, "-5", "0", HUGE, "5 in"] {
            page.enter("Bucket for part bags", text).await;
            page.settled().await;
            let said = page.described("Bucket for part bags").await;
            if !said.ends_with('.') {
                wrong.push(format!("bucket “{text}”: no sentence under it, “{said}”"));
            }
        }
        assert!(wrong.is_empty(), "{}", wrong.join("\n"));
        page.no_complaints().await;
    })
    .await;
}

/// "1,234" is one and a bit where the comma is a decimal mark, and more than a thousand where it groups.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_number_that_can_be_taken_two_ways_is_asked_about_once_and_the_answer_is_kept() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        filter::new_job(&page, "Two ways").await;
        page.press("Add a vessel").await;
        page.enter("Inside depth", "1,234 mm").await;
        page.says("This could be 1.234 mm or 1234 mm. Say which.").await;
        page.find(Role::Button, "1.234 mm").await;
        page.press("1234 mm").await;
        page.until("the question is answered", "!document.body.innerText.includes('Say which')").await;
        assert!(!page.has(Role::Button, "1.234 mm").await && !page.has(Role::Button, "1234 mm").await);
        // What was typed stays as typed; what it was taken for stands beside it.
        assert_eq!(page.entered("Inside depth").await, "1,234 mm");
        page.says("1234 mm").await;
        page.reload().await;
        page.find(Role::Heading, "Layers").await;
        assert_eq!(page.entered("Inside depth").await, "1,234 mm");
        page.says("1234 mm").await;
        assert_eq!(page.described("Inside depth").await, "");
        assert!(!page.has(Role::Button, "1.234 mm").await);
        page.no_complaints().await;
    })
    .await;
}
