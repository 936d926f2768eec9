//! A quote: its gaps are seen, it is issued, later prices leave it alone, revisions are compared, both sheets are printed
//! and add up as they are read back.

use bedwright_job::Job;
use bedwright_job::edit::quote::QuoteEdit;
use bedwright_job::edit::{Edit, apply};
use bedwright_job::entry::{Entry, Unit};
use bedwright_job::field::LineField;
use bedwright_job::id::Id;
use bedwright_job::sections::head::TextField;
use bedwright_job::sections::quote::{LineText, QuoteLine, QuoteText};
use serde_json::json;
use std::sync::Arc;

use crate::browser::{Screen, visit};
use crate::filter;
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::paper::{self, Paper};
use crate::site::Site;
use crate::stored;

/// Cents of an amount as it is printed: "1,234.50".
fn cents(text: &str) -> Option<i64> {
    let text = text.trim().replace(',', "");
    let (sign, digits) = match text.strip_prefix('−') {
        Some(rest) => (-1, rest.to_owned()),
        None => (1, text),
    };
    let (whole, places) = digits.split_once('.')?;
    let all_digits = |part: &str| !part.is_empty() && part.bytes().all(|byte| byte.is_ascii_digit());
    (all_digits(whole) && all_digits(places) && places.len() == 2)
        .then(|| sign * (whole.parse::<i64>().unwrap() * 100 + places.parse::<i64>().unwrap()))
}

/// The last amount on a printed line.
fn amount_of(line: &str) -> Option<i64> {
    line.split_whitespace().rev().find_map(cents)
}

/// What stands between the head of the lines and their sum, and the sums, as they came out of the printer.
fn printed_sums(sheets: &[String]) -> (i64, i64, i64) {
    let all = sheets.join("\n");
    let mut lines = 0;
    let mut together = 0;
    let mut total = 0;
    let mut over = false;
    for line in all.lines() {
        let words: Vec<&str> = line.split_whitespace().collect();
        let Some(first) = words.first() else { continue };
        if line.contains("Lines together") {
            together = amount_of(line).unwrap_or_else(|| panic!("no amount in {line}"));
            over = true;
        } else if *first == "Total" && total == 0 {
            total = amount_of(line).unwrap_or_else(|| panic!("no amount in {line}"));
        } else if !over && first.bytes().all(|byte| byte.is_ascii_digit()) {
            // A line begins with its number.
            lines += amount_of(line).unwrap_or(0);
        }
    }
    (lines, together, total)
}

/// Opens the quote of a job whose vessel is planned, and types a price for every line: 10.10, 20.20, …
async fn priced(page: &Page, title: &str) -> String {
    let job = filter::planned(page, title).await;
    page.open(&format!("{job}/quote")).await;
    page.find(Role::Heading, "Lines").await;
    page.says("Prices are missing.").await;
    assert!(page.text().await.contains("price missing"));
    assert!(!page.text().await.contains(" 0.00 USD"), "a missing price is no nought");
    let refused = page.find(Role::Button, "Issue revision 1").await;
    assert!(!refused.is_enabled().await.unwrap(), "a quote with gaps can't be issued");
    let count = gaps(page).await;
    assert!(count >= 5, "{count} lines");
    for at in 0..count {
        let field = page.find_at(Role::Textbox, "Price of one", at).await;
        page.enter_into(&field, &format!("{}.{}0", (at + 1) * 10, (at + 1) % 10)).await;
    }
    page.says("Type the currency first.").await;
    page.enter("Currency", "USD").await;
    page.until("nothing is missing", "!document.body.innerText.includes('price missing')").await;
    job
}

async fn gaps(page: &Page) -> usize {
    let count = page.script("return document.querySelectorAll('.quote-line').length;").await;
    usize::try_from(count.as_u64().unwrap()).unwrap()
}

/// The total at the foot of the screen.
async fn total(page: &Page) -> i64 {
    let text = page.script("return document.querySelector('.quote-total').innerText;").await;
    let text = text.as_str().unwrap().to_owned();
    amount_of(&text).unwrap_or_else(|| panic!("no total: {text}"))
}

async fn prints(page: &Page, size: Paper, revision: &str) -> Vec<String> {
    page.click(Role::Radio, if matches!(size, Paper::A4) { "A4" } else { "US Letter" }).await;
    page.settled().await;
    page.settled().await;
    let sheets = paper::sheets(page, size).await;
    for (at, sheet) in sheets.iter().enumerate() {
        let number = format!("{} of {}", at + 1, sheets.len());
        assert!(sheet.contains(&number), "{size:?}: sheet {} lacks “{number}”:\n{sheet}", at + 1);
        assert!(sheet.contains("Planning aid."), "{size:?}: {sheet}");
    }
    assert!(sheets.join("\n").contains(revision), "{size:?}: no {revision}");
    sheets
}

async fn a_quote_is_issued_and_stays(page: Page) {
    page.started().await;
    let job = priced(&page, "To be quoted").await;
    let first = total(&page).await;
    page.press("Issue revision 1").await;
    page.says("Nothing has changed since revision 1.").await;
    // Shown at once, and printed on both papers: the rows add up to what stands below them.
    for size in [Paper::Letter, Paper::A4] {
        let sheets = prints(&page, size, "Lines together").await;
        let (lines, together, sum) = printed_sums(&sheets);
        assert_eq!((lines, together, sum), (first, first, first), "{size:?}:\n{}", sheets.join("\n"));
        assert!(!sheets.join("\n").contains("margin"), "the customer's sheet says nothing of it");
    }
    // A price changes: what was issued doesn't.
    let field = page.find_at(Role::Textbox, "Price of one", 0).await;
    page.enter_into(&field, "99.99").await;
    page.find(Role::Button, "Issue revision 2").await;
    let second = total(&page).await;
    assert_ne!(first, second);
    let sheets = prints(&page, Paper::Letter, "Lines together").await;
    assert_eq!(printed_sums(&sheets).2, first, "revision 1 as it was");
    page.press("Issue revision 2").await;
    page.says("Nothing has changed since revision 2.").await;
    assert_eq!(printed_sums(&prints(&page, Paper::Letter, "Lines together").await).2, second);
    // Both are kept, and compared line by line.
    page.reload().await;
    page.open(&format!("{job}/quote")).await;
    page.find(Role::Heading, "Compare").await;
    let named = page.names(Role::Button).await;
    let issued: Vec<&String> = named.iter().filter(|name| name.starts_with("Revision ")).collect();
    assert_eq!(issued.len(), 2, "{named:?}");
    let (latest, earlier) = (issued[0].clone(), issued[1].clone());
    page.press(&latest).await;
    page.pick("Compare with", &earlier).await;
    page.find(Role::Table, "Compare").await;
    let table = page.script("return document.querySelector('.quote-changes').innerText;").await;
    let table = table.as_str().unwrap().to_owned();
    assert!(table.contains("10.10") && table.contains("99.99") && table.contains("changed"), "{table}");
    assert_eq!(table.matches("changed").count(), 1, "{table}");
    page.press(&earlier).await;
    assert_eq!(printed_sums(&prints(&page, Paper::A4, "Lines together").await).2, first, "revision 1 after a reload");
    // The internal sheet has what the other hasn't.
    page.click(Role::Radio, "Internal, with cost").await;
    let sheets = prints(&page, Paper::Letter, "Internal: cost and margin.").await.join("\n");
    assert!(sheets.contains("Margin") && sheets.contains("without a cost"), "{sheets}");
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_quote_is_issued_and_stays_as_it_was_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), a_quote_is_issued_and_stays).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_quote_is_issued_and_stays_as_it_was_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), a_quote_is_issued_and_stays).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn an_empty_quote_says_what_is_missing_and_mistakes_say_so_under_their_field() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        filter::new_job(&page, "Nothing yet").await;
        let job = page.fragment().await;
        page.open(&format!("{job}/quote")).await;
        page.says("No line yet.").await;
        page.says("There is no line to quote.").await;
        let issue = page.find(Role::Button, "Issue revision 1").await;
        assert!(!issue.is_enabled().await.unwrap());
        assert_eq!(paper::sheets(&page, Paper::Letter).await.len(), 1);
        page.press("Add a line").await;
        page.enter("Description", "Start-up").await;
        for (text, says) in [
            ("ten", "isn't part of a number"),
            ("1e30", "larger than anything"),
            ("-3", "must be from 0"),
            ("2000000000", "must be from 0"),
            ("0.12345678", "decimal places"),
            ("12 %", "no unit known here"),
        ] {
            page.enter("Price of one", text).await;
            page.settled().await;
            let said = page.described("Price of one").await;
            assert!(said.contains(says), "“{text}”: {said}");
            assert_eq!(page.entered("Price of one").await, text, "what was typed stays");
            page.says("Something typed makes no sense yet").await;
        }
        page.enter("Price of one", "12.50").await;
        page.enter("Quantity", "3").await;
        page.enter("Currency", "JPY").await;
        // The yen has no smaller unit: half of one goes up.
        page.until("37.5 yen are 38", "document.querySelector('.quote-total').innerText === 'Total 38 JPY'").await;
        page.press("Undo").await;
        page.no_complaints().await;
    })
    .await;
}

/// A job of three hundred own lines with names of sixty letters, made as the page makes them.
fn three_hundred() -> Job {
    let mut job = Job::new(Id::new("three-hundred"), "2026-11-24");
    let device = Id::new("stored");
    let mut edit = |edit: Edit| assert!(apply(&mut job, edit, &device).is_ok());
    edit(Edit::Text { field: TextField::Title, text: "Three hundred (invented)".to_owned() });
    edit(Edit::Quote(QuoteEdit::Text { field: QuoteText::Currency, text: "USD".to_owned() }));
    edit(Edit::Quote(QuoteEdit::Text { field: QuoteText::Exclusions, text: "Not this. ".repeat(300) }));
    for at in 0..300 {
        let mut line = QuoteLine::default();
        line.set_text(LineText::Name, name(at));
        let price = Entry { text: format!("{}.{:02}", at + 1, at % 100), unit: Unit::One, meaning: None };
        line.entries.set(LineField::Price, Some(price));
        edit(Edit::Quote(QuoteEdit::Line { key: format!("own:{at}"), at: None, line: Some(Arc::new(line)) }));
    }
    job
}

/// Sixty letters, the line's number first.
fn name(at: usize) -> String {
    format!("L{at:03} {}", "Widegroundgravel ".repeat(4)).chars().take(60).collect()
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn three_hundred_lines_print_once_each_and_add_up_as_read_back() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        stored::put(&page, &stored::texts(&three_hundred())).await;
        page.open("#/jobs/three-hundred/quote").await;
        page.find(Role::Heading, "Lines").await;
        let wanted: i64 = (0..300).map(|at| (at + 1) * 100 + at % 100).sum();
        assert_eq!(total(&page).await, wanted);
        for internal in [false, true] {
            let sheet = if internal { "Internal, with cost" } else { "For the customer" };
            page.click(Role::Radio, sheet).await;
            for size in [Paper::Letter, Paper::A4] {
                let sheets = prints(&page, size, "Lines together").await;
                let all = sheets.join("\n");
                for at in 0..300 {
                    assert_eq!(all.matches(&format!("L{at:03} ")).count(), 1, "{size:?}: line {at}");
                }
                let bare: String = all.split_whitespace().collect();
                assert_eq!(bare.matches("Notthis.").count(), 300, "{size:?}: exclusions are whole");
                if !internal {
                    let (lines, together, sum) = printed_sums(&sheets);
                    assert_eq!((lines, together, sum), (wanted, wanted, wanted), "{size:?}");
                }
                println!("{sheet}, {size:?}: 300 lines on {} sheets", sheets.len());
            }
        }
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn lines_are_taken_out_with_a_reason_offered_besides_and_written_to_a_file() {
    let site = Site::serve();
    let folder = Folder::new("quote");
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        folder.takes_downloads(&page).await;
        let job = priced(&page, "=Out and besides").await;
        page.open(&job).await;
        page.enter("Job number", "S-7").await;
        page.open(&format!("{job}/quote")).await;
        page.find(Role::Heading, "Lines").await;
        let before = total(&page).await;
        page.script("document.querySelector('.quote-more summary').click();").await;
        page.pick("This line is", "optional").await;
        page.until("it isn't counted", &format!("!document.querySelector('.quote-total').innerText.includes('{before}')")).await;
        assert_eq!(total(&page).await, before - 1010 * first_quantity(&page).await);
        page.press("Take this line out").await;
        page.enter("Why", "the customer has it").await;
        page.says("Taken out: the customer has it").await;
        page.press("Put it back").await;
        page.press("File for the books (CSV)").await;
        let (name, text) = folder.downloaded().await;
        assert_eq!(name, "QT-S-7-0.csv");
        let mut rows = text.split("\r\n");
        assert!(rows.next().unwrap().starts_with("document,revision,date,"), "{text}");
        assert!(text.contains(",optional,") && text.contains(",total,"), "{text}");
        // The places of currencies by the browser's own tables, which hold ISO 4217: those that differ from two.
        let read = "const of = (code) => new Intl.NumberFormat('en', { style: 'currency', currency: code }).resolvedOptions().maximumFractionDigits; \
                    return arguments[0].map((code) => [code, of(code)]);";
        let codes: Vec<&str> = CURRENCIES.iter().map(|(code, _)| *code).collect();
        let found = page.session().execute(read, vec![json!(codes)]).await.unwrap();
        let wanted: Vec<_> = CURRENCIES.iter().map(|(code, places)| json!([code, places])).collect();
        assert_eq!(found.json(), &json!(wanted));
        page.no_complaints().await;
    })
    .await;
}

async fn first_quantity(page: &Page) -> i64 {
    let about = page.script("return document.querySelector('.quote-about').innerText;").await;
    about.as_str().unwrap().split_whitespace().next().unwrap().parse().unwrap()
}

/// `calc/data/currencies.csv` and a few that have two places.
const CURRENCIES: &[(&str, u32)] = &[
    ("BHD", 3),
    ("BIF", 0),
    ("CLP", 0),
    ("DJF", 0),
    ("GNF", 0),
    ("ISK", 0),
    ("JOD", 3),
    ("JPY", 0),
    ("KMF", 0),
    ("KRW", 0),
    ("KWD", 3),
    ("LYD", 3),
    ("OMR", 3),
    ("PYG", 0),
    ("RWF", 0),
    ("TND", 3),
    ("UGX", 0),
    ("VND", 0),
    ("VUV", 0),
    ("XAF", 0),
    ("XOF", 0),
    ("XPF", 0),
    ("USD", 2),
    ("EUR", 2),
    ("GBP", 2),
    ("MXN", 2),
];
