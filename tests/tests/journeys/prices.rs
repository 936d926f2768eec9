//! The price list: rows typed and searched, a file tried and taken, back to the shipped list; and what a job takes of it.

use std::path::PathBuf;
use std::time::Instant;

use serde_json::json;
use thirtyfour::prelude::*;

use crate::browser::{Screen, visit};
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::site::Site;

/// How many rows the list shows.
async fn shown(page: &Page) -> usize {
    let count = page.script("return document.querySelectorAll('.price-line').length;").await;
    usize::try_from(count.as_u64().unwrap()).unwrap()
}

async fn search(page: &Page, words: &str) {
    let field = page.find(Role::Searchbox, "Search the list").await;
    field.scroll_into_view().await.unwrap();
    field.send_keys(Key::Control + "a").await.unwrap();
    field.send_keys(Key::Delete + "").await.unwrap();
    field.send_keys(words).await.unwrap();
}

/// The rows that are shown, as they can be read.
async fn rows(page: &Page) -> Vec<String> {
    // A row that came just now has no text to read before the frame that finds it in sight (`content-visibility`).
    page.settled().await;
    let rows = page
        .script("return [...document.querySelectorAll('.price-head')].map((e) => e.innerText.replace(/\\s+/g, ' '));")
        .await;
    rows.as_array().unwrap().iter().map(|row| row.as_str().unwrap().to_owned()).collect()
}

/// Opens or closes the first row that is shown.
async fn turn_first(page: &Page) {
    let head = page.session().find(By::Css(".price-head")).await.unwrap();
    head.scroll_into_view().await.unwrap();
    head.click().await.unwrap();
}

fn write(folder: &Folder, name: &str, text: &str) -> PathBuf {
    let path = folder.path().join(name);
    std::fs::write(&path, text).unwrap();
    path
}

async fn a_row_is_typed_and_kept(page: Page) {
    page.started().await;
    page.follow("Price list").await;
    page.find(Role::Heading, "Price list").await;
    page.says("no price").await;
    page.fits_its_width().await;
    page.press("New row").await;
    page.enter("Name", "Union 1 in, brass").await;
    page.enter("Part number", "00123").await;
    page.enter("Bin", "B-07").await;
    page.enter("Unit", "each").await;
    page.enter("Price", "a lot").await;
    assert!(page.described("Price").await.contains("isn't an amount"));
    page.enter("Price", "12,50").await;
    assert!(page.described("Price").await.contains("decimal mark"));
    // What can't be taken stays in its field, and the row keeps what it said.
    assert_eq!(page.entered("Price").await, "12,50");
    assert!(rows(&page).await[0].contains("no price"));
    page.enter("Price", "12.50").await;
    assert_eq!(page.described("Price").await, "");
    page.enter("Cost", "7.125").await;
    page.enter("Stock length or pack size", "0 ft").await;
    assert!(page.described("Stock length or pack size").await.contains("more than nought"));
    page.enter("Stock length or pack size", "10 ft").await;
    page.click(Role::Checkbox, "keep dry").await;
    page.fits_its_width().await;
    page.press("Done").await;
    page.reload().await;
    search(&page, "union 00123").await;
    page.until("one row", "document.querySelectorAll('.price-line').length === 1").await;
    let row = &rows(&page).await[0];
    for text in ["00123", "Union 1 in, brass", "B-07", "12.50", "cost 7.125", "keep dry"] {
        assert!(row.contains(text), "{text}: {row}");
    }
    // No longer offered: out of sight, not gone.
    turn_first(&page).await;
    page.press("No longer offered").await;
    page.press("Done").await;
    page.says("No row matches.").await;
    page.click(Role::Checkbox, "No longer offered as well").await;
    page.until("one row", "document.querySelectorAll('.price-line').length === 1").await;
    page.press("Undo").await;
    page.until("offered", "!document.querySelector('.price-retired')").await;
    // Back to the shipped list: asked, and undone.
    page.press("Back to the shipped list").await;
    page.press("Yes, back to the shipped list").await;
    page.says("No row matches.").await;
    page.press("Undo").await;
    page.until("one row", "document.querySelectorAll('.price-line').length === 1").await;
    page.reload().await;
    search(&page, "union").await;
    page.until("one row after a reload", "document.querySelectorAll('.price-line').length === 1").await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_row_of_the_price_list_is_typed_and_kept_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), a_row_is_typed_and_kept).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_row_of_the_price_list_is_typed_and_kept_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), a_row_is_typed_and_kept).await;
}

async fn a_file_is_tried_before_it_is_taken(page: Page) {
    page.started().await;
    page.open("#/prices").await;
    let folder = Folder::new("prices");
    let file = write(
        &folder,
        "list.csv",
        "key;part_number;name;price;bin\n\
         part:riser_cap;C-1;;4,50;A-1\n\
         ;00123;Union;12,00;B-7\n\
         ;00123;Union again;13,00;\n\
         ;X-1;Mixed marks;1.50;\n\
         ;X-2;Dear;1e30;\n\
         ;X-3;Below nought;-1;\n\
         ;X-4;Blank;;\n\
         ;\"X-5;never closed;1\n",
    );
    page.pick_file("Try a file", &file).await;
    page.find(Role::Heading, "What the file would do").await;
    let counts =
        page.script("return document.querySelector('.price-counts').innerText.replace(/\\s+/g, ' ').trim();").await;
    assert_eq!(counts, json!("2 new 1 changed 0 unchanged 5 refused"));
    for text in [
        "Line 3 has the same part number.",
        "“1.50” has another decimal mark than line 2, where it is a comma.",
        "This isn't an amount.",
        "never below nought",
        "A quotation mark is never closed.",
        "price: 4.50 (was blank)",
        "bin: A-1 (was blank)",
    ] {
        page.says(text).await;
    }
    page.fits_its_width().await;
    // Nothing has changed yet.
    search(&page, "00123").await;
    page.says("No row matches.").await;
    page.press("Take it into the list").await;
    page.until("one row", "document.querySelectorAll('.price-line').length === 1").await;
    assert!(rows(&page).await[0].contains("12.00"));
    search(&page, "riser cap").await;
    page.until("its price", "document.querySelector('.price-list').innerText.includes('4.50')").await;
    page.reload().await;
    search(&page, "c-1").await;
    page.until("its price", "document.querySelector('.price-list').innerText.includes('4.50')").await;
    // A file that is none.
    page.pick_file("Try a file", &write(&folder, "other.csv", "what,ever\n1,2\n")).await;
    page.says("Its first row doesn't name the columns.").await;
    page.press("Leave the list as it is").await;
    // A job takes along what it uses, and says when the list has changed since.
    page.open("#/jobs").await;
    page.press("Sample job").await;
    page.find(Role::Button, "Add a vessel").await;
    let job = page.fragment().await;
    page.open(&format!("{job}/bill")).await;
    let id = job.rsplit('/').next().unwrap().to_owned();
    let kept = format!("(localStorage.getItem('bedwright/job/{id}/prices') || '').includes('4.50')");
    page.until("the job carries the row", &kept).await;
    page.open("#/prices").await;
    search(&page, "c-1").await;
    page.until("its price", "document.querySelector('.price-list').innerText.includes('4.50')").await;
    turn_first(&page).await;
    page.enter("Price", "5").await;
    page.open(&format!("{job}/bill")).await;
    page.says("1 price of this job is another in the list now.").await;
    page.press("Take the list's prices over").await;
    page.until("taken over", "!document.body.innerText.includes('is another in the list now')").await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_file_is_tried_before_it_is_taken_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), a_file_is_tried_before_it_is_taken).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_file_is_tried_before_it_is_taken_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), a_file_is_tried_before_it_is_taken).await;
}

async fn lines_are_left_out(page: Page) {
    page.started().await;
    page.press("Sample job").await;
    page.find(Role::Button, "Add a vessel").await;
    let job = page.fragment().await;
    page.open(&format!("{job}/bill")).await;
    page.find(Role::Heading, "Leave a line out").await;
    page.pick("Line", "Temporary water connection").await;
    page.press("Leave it out").await;
    page.says("Say why, in a few words.").await;
    page.enter("Reason", "the plant stands still").await;
    page.press("Leave it out").await;
    page.find(Role::Heading, "Left out by choice").await;
    page.says("the plant stands still").await;
    let tables =
        "[...document.querySelectorAll('.bill-table')].some((table) => table.innerText.includes('Temporary water'))";
    page.until("off the bill", &format!("!{tables}")).await;
    page.fits_its_width().await;
    page.reload().await;
    page.says("the plant stands still").await;
    page.press("Take in again: Temporary water connection").await;
    page.until("on the bill", tables).await;
    page.press("Undo").await;
    page.says("the plant stands still").await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_line_of_the_bill_is_left_out_with_its_reason_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), lines_are_left_out).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_line_of_the_bill_is_left_out_with_its_reason_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), lines_are_left_out).await;
}

/// Invented: ten thousand rows.
async fn ten_thousand_rows(page: Page) {
    page.started().await;
    page.open("#/prices").await;
    let folder = Folder::new("prices");
    let text: String = std::iter::once("part_number,name,bin,unit,cost,price,tax_class\n".to_owned())
        .chain((0..10_000).map(|n| {
            format!(
                "P-{n:05},\"Invented part {n}, brass\",A-{}-{},each,{}.{:02},{}.{:02},standard\n",
                n / 100,
                n % 100,
                n % 90,
                n % 100,
                n % 90 + 5,
                n % 100
            )
        }))
        .collect();
    let file = write(&folder, "ten-thousand.csv", &text);
    let begun = Instant::now();
    page.pick_file("Try a file", &file).await;
    page.until("tried", "document.querySelector('.price-counts')?.innerText.includes('10000')").await;
    let tried = begun.elapsed();
    // From the tap until the frame after it is drawn.
    let tap = "const done = arguments[arguments.length - 1]; const begun = performance.now(); \
               [...document.querySelectorAll('button')].find((b) => b.innerText === 'Take it into the list').click(); \
               requestAnimationFrame(() => setTimeout(() => done(performance.now() - begun)));";
    let took = page.session().execute_async(tap, vec![]).await.unwrap().json().as_f64().unwrap();
    page.until("there", "document.querySelector('.price-count').innerText.startsWith('10')").await;
    let mut slowest = 0.0_f64;
    for words in ["p", "p-", "p-0", "p-09", "p-099", "p-0999", "brass 4242", "a-99-1", "nothing at all", ""] {
        let type_it = "const done = arguments[arguments.length - 1]; const field = document.querySelector('.prices .search'); \
                       const begun = performance.now(); field.value = arguments[0]; field.dispatchEvent(new Event('input')); \
                       requestAnimationFrame(() => setTimeout(() => done(performance.now() - begun)));";
        let spent = page.session().execute_async(type_it, vec![json!(words)]).await.unwrap().json().as_f64().unwrap();
        slowest = slowest.max(spent);
    }
    println!(
        "10 000 rows: tried in {tried:?} with the choosing of the file, taken in {took:.0} ms, searched in at most {slowest:.0} ms a letter"
    );
    assert!(slowest < 1000.0, "{slowest} ms");
    search(&page, "p-09999").await;
    page.until("one row", "document.querySelectorAll('.price-line').length === 1").await;
    assert_eq!(shown(&page).await, 1);
    // One letter of one row: nothing else is written.
    turn_first(&page).await;
    page.enter("Price", "123.45").await;
    page.until(
        "kept",
        "Object.keys(localStorage).some((key) => key.startsWith('bedwright/prices/') && localStorage.getItem(key).includes('123.45'))",
    )
    .await;
    let bytes = page.script("return Object.keys(localStorage).filter((key) => key.startsWith('bedwright/prices/')).reduce((sum, key) => sum + localStorage.getItem(key).length, 0);").await;
    println!("10 000 rows take {bytes} letters on the device");
    let begun = Instant::now();
    page.reload().await;
    println!("a start with 10 000 rows: {:?}", begun.elapsed());
    search(&page, "123 p-09999").await;
    search(&page, "p-09999").await;
    page.until("its price", "document.querySelector('.price-list').innerText.includes('123.45')").await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn ten_thousand_rows_are_brought_in_and_searched_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), ten_thousand_rows).await;
}
