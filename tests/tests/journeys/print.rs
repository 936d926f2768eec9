//! The pick list on paper: Letter and A4, every row once, sheets numbered, a title block on each.

use serde_json::{Value, json};

use crate::browser::{Screen, visit};
use crate::filter;
use crate::page::{Page, Role};
use crate::paper::{self, Paper};
use crate::site::Site;
use crate::stored;

/// A line of the pick list on screen: how many, of what packs, the item.
struct Line {
    quantity: String,
    unit: String,
    item: String,
}

async fn lines(page: &Page) -> Vec<Line> {
    let read = "return [...document.querySelectorAll('.pick-line')].map((line) => \
        [...line.querySelectorAll('.pick-quantity span'), line.querySelector('.pick-item')].map((part) => part.innerText));";
    let lines = page.script(read).await;
    let part = |line: &Value, at: usize| line[at].as_str().unwrap().to_owned();
    let lines: Vec<Line> = lines
        .as_array()
        .unwrap()
        .iter()
        .map(|line| Line { quantity: part(line, 0), unit: part(line, 1), item: part(line, 2) })
        .collect();
    // The same as a screen reader is told.
    let ticks = page.names(Role::Checkbox).await;
    let told: Vec<String> =
        lines.iter().map(|line| format!("Picked: {} {} {}", line.quantity, line.unit, line.item)).collect();
    assert_eq!(ticks, told);
    lines
}

/// Whose paper it is, and the job's number, as `stored` gives them.
const OWNER: &str = "Tarn Water";
const NUMBER: &str = "S-060";

/// The words of a text, so that a line that is broken on paper reads as one that isn't.
fn words(text: &str) -> Vec<&str> {
    text.split_whitespace().collect()
}

async fn printed(page: &Page, title: &str, at_least: usize) {
    let lines = lines(page).await;
    assert!(lines.len() >= at_least, "{} lines\n{}", lines.len(), page.text().await);
    for size in [Paper::Letter, Paper::A4] {
        let sheets = paper::chosen(page, size).await;
        for (at, sheet) in sheets.iter().enumerate() {
            let number = format!("{} of {}", at + 1, sheets.len());
            assert!(sheet.contains(&number), "{size:?}: sheet {} lacks “{number}”:\n{sheet}", at + 1);
            // The title block: whose, what, when, which (fields of ISO 7200:2004).
            for part in ["Pick list", OWNER, NUMBER, "Planning aid."] {
                assert!(sheet.contains(part), "{size:?}: sheet {} lacks “{part}”:\n{sheet}", at + 1);
            }
        }
        assert!(sheets[0].contains(title), "{size:?}: no “{title}” in\n{}", sheets[0]);
        let count = page
            .script("return [...document.querySelectorAll('.sheets-shown tbody .sheet-row')].filter((row) => row.querySelector('.cell-check .cell-tick')).length;")
            .await;
        assert_eq!(count, json!(lines.len()), "{size:?}: rows on the sheets");
        // Each item once, and no other.
        let items = page
            .script("return [...document.querySelectorAll('.sheets-shown tbody .sheet-row .cell-item')].map((cell) => cell.innerText.replace(/\\s+/g, ' ').trim()).sort();")
            .await;
        let mut wanted: Vec<&str> = lines.iter().map(|line| line.item.as_str()).collect();
        wanted.sort_unstable();
        assert_eq!(items, json!(wanted), "{size:?}: items on the sheets");
        // Every line's number stands once among all sheets: the first words of a row are its quantity and unit.
        let all = sheets.join("\n");
        let rows: usize = all.lines().filter(|line| begins_a_row(line, &lines)).count();
        assert_eq!(rows, lines.len(), "{size:?}: rows that came out of the printer:\n{all}");
        println!("{size:?}: {} lines on {} sheets", lines.len(), sheets.len());
    }
}

/// Whether a printed line holds the beginning of a row: how many of what, and the item's first word.
fn begins_a_row(line: &str, rows: &[Line]) -> bool {
    let printed = words(line).join(" ") + " ";
    rows.iter().any(|row| {
        let first = words(&row.item)[0];
        printed.starts_with(first) && printed.contains(&format!(" {} {} ", row.quantity, row.unit))
    })
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_short_pick_list_prints_on_letter_and_a4() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        let job = filter::planned(&page, "On paper").await;
        page.open(&job).await;
        page.enter("Your company", OWNER).await;
        page.enter("Job number", NUMBER).await;
        page.open(&format!("{job}/picking")).await;
        page.find(Role::Heading, "Pick list").await;
        printed(&page, "On paper", 2).await;
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_pick_list_of_more_than_sixty_lines_prints_every_line_once() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        stored::put(&page, &stored::texts(&stored::every_pack())).await;
        page.open("#/jobs/every-pack/picking").await;
        page.find(Role::Heading, "Pick list").await;
        printed(&page, "Every pack (invented)", 60).await;
        page.no_complaints().await;
    })
    .await;
}
