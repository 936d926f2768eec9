//! The calculation sheet as an engineer checks it: printed to PDF, every line worked out again by a program that has
//! nothing but the printed text (`tests/reference/printed_sheet.py`), and every figure of the page found on it once.

use std::io::Write;
use std::process::{Command, Stdio};

use crate::browser::{Screen, visit};
use crate::page::{Page, Role};
use crate::paper::{self, Paper};
use crate::site::Site;
use crate::stored;
use crate::unlike;

/// What the program says of a printed job.
struct Checked {
    /// One line for every sheet: its lines by kind, and how far rounding reaches at most.
    said: Vec<String>,
    /// What each line of each sheet is called.
    names: Vec<Vec<String>>,
}

/// Hands the words of a PDF with their places to the program that works every line out again.
/// Once is enough: on the other size of paper they are only read.
fn worked_out_again(pdf: &[u8], only_read: bool) -> Checked {
    let words = paper::piped("pdftotext", &["-bbox", "-", "-"], pdf);
    let program = concat!(env!("CARGO_MANIFEST_DIR"), "/reference/printed_sheet.py");
    let mut python = Command::new("python3")
        .arg(program)
        .args(only_read.then_some("read"))
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("python3 is in the path");
    python.stdin.take().unwrap().write_all(&words).unwrap();
    let output = python.wait_with_output().unwrap();
    let text = String::from_utf8(output.stdout).unwrap();
    assert!(output.status.success(), "{text}\n{}", String::from_utf8_lossy(&output.stderr));
    let mut checked = Checked { said: Vec::new(), names: Vec::new() };
    for line in text.lines() {
        if let Some(name) = line.strip_prefix("name ") {
            checked.names.last_mut().unwrap().push(name.to_owned());
        } else {
            checked.said.push(line.to_owned());
            checked.names.push(Vec::new());
        }
    }
    checked
}

/// What the vessel's page calls its figures.
async fn figures(page: &Page) -> Vec<String> {
    let read = "return [...document.querySelectorAll('details.how > summary')] \
        .filter((head) => head.querySelector('.how-value')) \
        .map((head) => head.querySelector('.how-name').textContent.trim());";
    let names = page.script(read).await;
    names.as_array().unwrap().iter().map(|name| name.as_str().unwrap().to_owned()).collect()
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn every_line_of_the_calculation_sheets_comes_out_again_from_the_printed_text() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        for job in [unlike::sample(), unlike::vessels()] {
            stored::put(&page, &stored::texts(&job)).await;
            let mut wanted = Vec::new();
            for vessel in &job.survey.body.vessels {
                page.open(&format!("#/jobs/{}/vessels/{}", job.id, vessel.id)).await;
                page.find(Role::Heading, "Backwash").await;
                page.settled().await;
                wanted.push(figures(&page).await);
            }
            page.open(&format!("#/jobs/{}/calculation", job.id)).await;
            page.find(Role::Heading, "Calculation sheet").await;
            for (choice, size) in [("US Letter", Paper::Letter), ("A4", Paper::A4)] {
                page.click(Role::Radio, choice).await;
                page.settled().await;
                page.settled().await;
                let pdf = paper::printed(&page, size).await;
                if let Ok(folder) = std::env::var("BEDWRIGHT_SHEETS") {
                    std::fs::write(format!("{folder}/{}-{size:?}.pdf", job.id), &pdf).unwrap();
                }
                let checked = worked_out_again(&pdf, matches!(size, Paper::A4));
                assert_eq!(checked.said.len(), wanted.len(), "{size:?}: one sheet a vessel: {:?}", checked.said);
                for ((figures, names), said) in wanted.iter().zip(&checked.names).zip(&checked.said) {
                    println!("{}, {size:?}: {said}; {} figures of the page", job.id, figures.len());
                    assert!(figures.len() >= 6, "{figures:?}");
                    for figure in figures {
                        let times = names.iter().filter(|name| *name == figure).count();
                        assert_eq!(times, 1, "“{figure}” stands {times} times among {names:?}");
                    }
                }
            }
        }
        page.no_complaints().await;
    })
    .await;
}
