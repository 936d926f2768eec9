//! What would come out of the printer, read back with poppler.
#![allow(dead_code)] // Sheets are read by the journeys that print.

use std::io::Write;
use std::process::{Command, Stdio};

use base64::Engine;
use serde_json::json;

use crate::folder::Folder;
use crate::page::{Page, Role};

/// A size of paper.
#[derive(Clone, Copy, Debug)]
pub enum Paper {
    /// ISO 216: 210 × 297 mm.
    A4,
    /// ANSI Y14.1 A: 8½ × 11 in.
    Letter,
}

impl Paper {
    /// Width and height in inches.
    fn inches(self) -> (f64, f64) {
        match self {
            Paper::A4 => (210.0 / 25.4, 297.0 / 25.4),
            Paper::Letter => (8.5, 11.0),
        }
    }
}

/// What a screen with sheets prints once this paper was chosen on it, sheet by sheet.
pub async fn chosen(page: &Page, paper: Paper) -> Vec<String> {
    let choice = match paper {
        Paper::Letter => "US Letter",
        Paper::A4 => "A4",
    };
    page.click(Role::Radio, choice).await;
    page.settled().await;
    page.settled().await;
    sheets(page, paper).await
}

/// What the page prints, sheet by sheet, laid out as on paper.
pub async fn sheets(page: &Page, paper: Paper) -> Vec<String> {
    read(&printed(page, paper).await)
}

/// What the page prints, as a PDF.
pub async fn printed(page: &Page, paper: Paper) -> Vec<u8> {
    stays_in_its_frame(page).await;
    let (width, height) = paper.inches();
    // The page says the size where it has one of its own.
    let wanted =
        json!({ "paperWidth": width, "paperHeight": height, "preferCSSPageSize": true, "printBackground": true });
    let printed = page.session().cdp().send_raw("Page.printToPDF", wanted).await.unwrap();
    let pdf = base64::engine::general_purpose::STANDARD.decode(printed["data"].as_str().unwrap()).unwrap();
    assert!(pdf.starts_with(b"%PDF-"), "no PDF came");
    pdf
}

/// Nothing on a sheet runs over the edge of its frame, where a printer would cut it off.
async fn stays_in_its_frame(page: &Page) {
    let over = page
        .script(
            "const over = []; \
             for (const frame of document.querySelectorAll('.sheets-shown .sheet-frame')) { \
               const edge = frame.getBoundingClientRect(); \
               for (const part of frame.querySelectorAll('*')) { \
                 const there = part.getBoundingClientRect(); \
                 if (there.width && (there.right > edge.right + 1 || there.left < edge.left - 1 || there.bottom > edge.bottom + 1)) \
                   over.push(`${part.tagName}.${part.getAttribute('class')}: ${part.textContent.slice(0, 60)}`); } } \
             return over.slice(0, 5);",
        )
        .await;
    assert_eq!(over, json!([]), "over the edge of a sheet");
}

/// Every Code 128 of a PDF, as a general decoder reads them off the sheets.
pub fn codes(pdf: &[u8]) -> Vec<String> {
    let python = std::env::var("BEDWRIGHT_PYTHON").expect("BEDWRIGHT_PYTHON: `tests/run journeys` says where it is");
    let folder = Folder::new("codes");
    let file = folder.path().join("printed.pdf");
    std::fs::write(&file, pdf).unwrap();
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/reference/read_codes.py");
    let output = Command::new(python).arg(script).arg(&file).output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap().lines().map(str::to_owned).collect()
}

/// What a program of poppler says of a PDF that it is handed.
pub fn piped(program: &str, arguments: &[&str], pdf: &[u8]) -> Vec<u8> {
    let mut reader = Command::new(program)
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .expect("pdftotext is in the path (Debian: poppler-utils)");
    let mut to_reader = reader.stdin.take().unwrap();
    let pdf = pdf.to_vec();
    let writer = std::thread::spawn(move || to_reader.write_all(&pdf));
    let output = reader.wait_with_output().unwrap();
    writer.join().unwrap().unwrap();
    assert!(output.status.success(), "{program}: {}", output.status);
    output.stdout
}

/// The text of a PDF, sheet by sheet: pdftotext ends each with a form feed.
pub fn read(pdf: &[u8]) -> Vec<String> {
    let text = String::from_utf8(piped("pdftotext", &["-layout", "-", "-"], pdf)).unwrap();
    let mut sheets: Vec<String> = text.split('\u{c}').map(str::to_owned).collect();
    if sheets.last().is_some_and(|last| last.trim().is_empty()) {
        sheets.pop();
    }
    sheets
}
