//! The service card beyond a visit: kept in six taps and keys, charts with the tables behind them, sheets of paper, beds that
//! change places. Every reading is invented.

use serde_json::{Value, json};
use thirtyfour::prelude::*;

use crate::axe;
use crate::browser::{Screen, visit};
use crate::page::{Page, Role};
use crate::paper::{self, Paper};
use crate::site::Site;

async fn card(page: &Page, tag: &str) {
    page.started().await;
    page.press("Sample job").await;
    page.follow(&format!("Service card {tag}")).await;
    page.find(Role::Heading, &format!("{tag} · Service card")).await;
}

/// The visits that are kept, in the order they were written.
async fn visits(page: &Page) -> Vec<Value> {
    let read = "const found = []; for (const key of Object.keys(localStorage).sort()) if (/\\/records-\\d/.test(key)) \
                found.push(...JSON.parse(localStorage.getItem(key))); return found.filter((record) => record.kind === 'visit');";
    // What is kept is written a moment after.
    for _ in 0..50 {
        let found = page.script(read).await;
        if found.as_array().is_some_and(|found| !found.is_empty()) {
            return found.as_array().cloned().unwrap();
        }
        tokio::time::sleep(std::time::Duration::from_millis(40)).await;
    }
    Vec::new()
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_visit_with_a_meter_of_three_digits_takes_six_taps_and_keys() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        card(&page, "CF-1").await;
        // One tap says what is found on most visits. It stands there to be looked at: nothing is kept by it.
        page.press("Outlet 0 mg/L, drain clear, no grains").await;
        for chosen in ["0", "Clear, no grains"] {
            let radio = page.find(Role::Radio, chosen).await;
            assert_eq!(radio.prop("checked").await.unwrap().as_deref(), Some("true"), "{chosen}");
        }
        page.says("No visit of this bed yet.").await;
        let meter = page.find(Role::Textbox, "Meter").await;
        meter.click().await.unwrap();
        let keys = ["4", "7", "1"];
        for key in keys {
            meter.send_keys(key).await.unwrap();
        }
        meter.send_keys(Key::Enter + "").await.unwrap();
        page.says("Visit kept.").await;
        let taps_and_keys = 1 + 1 + keys.len() + 1;
        assert!(taps_and_keys <= 6);
        println!("taps and keys to keep a visit with a meter of three digits: {taps_and_keys}");
        let kept = visits(&page).await;
        assert_eq!(kept.len(), 1);
        assert_eq!(kept[0]["meter"]["text"], "471");
        assert_eq!(kept[0]["outlet"]["text"], "0");
        assert_eq!((&kept[0]["drain"], &kept[0]["grains"]), (&json!("clear"), &json!(false)));
        // Once the outlet has shown something that answer isn't offered any more.
        page.click(Role::Radio, "0.2").await;
        page.press("Save visit").await;
        page.says("Order now").await;
        page.says("Visit kept.").await;
        assert!(!page.has(Role::Button, "Outlet 0 mg/L, drain clear, no grains").await);
        page.no_complaints().await;
    })
    .await;
}

/// Visits of half a year, put where the page keeps them: the pressure lost grows from 2 to 9 psi.
async fn half_a_year(page: &Page) {
    let put = "const [job, vessel] = [location.hash.split('/')[2], location.hash.split('/')[4]]; const years = {}; \
        for (let n = 0; n < 8; n++) { const day = new Date(Date.now() - (210 - n * 30) * 864e5).toISOString().slice(0, 10); \
          (years[day.slice(0, 4)] ||= []).push({ id: `v${n}`, kind: 'visit', day, at: `${day}T09:00:00.000Z`, vessel, tag: 'CF-1', by: 'A. Elm (invented)', \
            test_unit: 'mg_L', meter: { text: String(1000 + n * 3000), unit: 'gal_us' }, inlet: { text: '2', unit: 'ratio' }, outlet: { text: '0', unit: 'ratio' }, \
            pressure_in: { text: '60', unit: 'psi' }, pressure_out: { text: String(58 - n), unit: 'psi' }, drain: 'clear', grains: false }); } \
        for (const [year, visits] of Object.entries(years)) localStorage.setItem(`bedwright/job/${job}/records-${year}`, JSON.stringify(visits));";
    page.script(put).await;
    page.reload().await;
    page.find(Role::Heading, "CF-1 · Service card").await;
}

async fn water_and_pressure_are_drawn(page: Page) {
    card(&page, "CF-1").await;
    assert!(!page.has(Role::Heading, "From visit to visit").await, "nothing was read yet");
    half_a_year(&page).await;
    page.find(Role::Heading, "From visit to visit").await;
    // Who can't see the charts is told what they say.
    let names = page
        .script("return [...document.querySelectorAll('.card-charts svg[role=img]')].map((chart) => chart.getAttribute('aria-label'));")
        .await;
    let names: Vec<String> = serde_json::from_value(names).unwrap();
    assert!(names[0].starts_with("Water through the bed. 21000 gal"), "{names:?}");
    assert!(names[1].starts_with("Pressure lost across the vessel. First 2 psi on"), "{names:?}");
    assert!(names[1].contains("last 9 psi on") && names[1].contains("it loses"), "{names:?}");
    let points = page.script("return [...document.querySelectorAll('.card-charts svg')].map((chart) => chart.querySelectorAll('.chart-point').length);").await;
    assert_eq!(points, json!([8, 8]));
    // What the clean bed loses is marked on the second.
    let marked = page.script("return [...document.querySelectorAll('.card-charts svg')].map((chart) => chart.querySelectorAll('.chart-limit').length);").await;
    assert_eq!(marked, json!([0, 1]));
    let summary = page.session().query(By::XPath("//summary[contains(., 'Readings behind the charts')]"));
    let summary = summary.first().await.unwrap();
    summary.scroll_into_view().await.unwrap();
    summary.click().await.unwrap();
    page.until("its rows", "document.querySelectorAll('[aria-labelledby=over-time] tbody tr').length === 8").await;
    let last = page.script("return [...document.querySelectorAll('[aria-labelledby=over-time] tbody tr:last-child > *')].slice(1).map((cell) => cell.innerText);").await;
    assert_eq!(last, json!(["22000 gal", "21000 gal", "60 psi", "51 psi", "9 psi"]));
    axe::no_barriers(&page).await;
    page.fits_its_width().await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn water_and_pressure_are_drawn_with_the_clean_bed_marked_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), water_and_pressure_are_drawn).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn water_and_pressure_are_drawn_with_the_clean_bed_marked_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), water_and_pressure_are_drawn).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_card_and_the_due_list_print_as_sheets_with_a_title_block() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        card(&page, "CF-1").await;
        half_a_year(&page).await;
        let days: Vec<String> = serde_json::from_value(
            page.script("return Array.from({ length: 8 }, (_, n) => new Date(Date.now() - (210 - n * 30) * 864e5).toISOString().slice(0, 10));").await,
        )
        .unwrap();
        for size in [Paper::Letter, Paper::A4] {
            let sheets = paper::chosen(&page, size).await;
            let all = sheets.join("\n");
            for (at, sheet) in sheets.iter().enumerate() {
                let number = format!("{} of {}", at + 1, sheets.len());
                for part in [number.as_str(), "Service card", "Example Water Service", "-CF-1", "Planning aid."] {
                    assert!(sheet.contains(part), "{size:?}: sheet {} lacks “{part}”:\n{sheet}", at + 1);
                }
            }
            assert!(sheets[0].contains("Next visit due"), "{}", sheets[0]);
            // Every visit once: its day begins a line.
            for day in &days {
                assert_eq!(all.lines().filter(|line| line.trim_start().starts_with(day)).count(), 1, "{day}:\n{all}");
            }
            // Of the page around nothing is printed.
            assert!(!all.contains("Save visit"), "{all}");
            println!("card, {size:?}: {} sheets", sheets.len());
        }
        page.open("#/due").await;
        page.find(Role::Heading, "Due list").await;
        for size in [Paper::Letter, Paper::A4] {
            let sheets = paper::chosen(&page, size).await;
            assert_eq!(sheets.len(), 1);
            for part in ["1 of 1", "Due list", "Example Water Service", "DL-", "CF-1: ", "all jobs", "Planning aid."] {
                assert!(sheets[0].contains(part), "{size:?}: no “{part}” in\n{}", sheets[0]);
            }
            assert!(!sheets[0].contains("Save as calendar"), "{}", sheets[0]);
        }
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn beds_one_after_the_other_change_places_and_their_lives_go_with_the_media() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        card(&page, "CF-1").await;
        // A pair that shares the flow has nothing to rotate.
        assert!(!page.has(Role::Button, "Lag becomes lead").await);
        let lead = page.fragment().await;
        page.open(lead.split("/card").next().unwrap()).await;
        // How the flow is shared stands in a fold of the vessel's screen.
        page.script("document.querySelectorAll('details').forEach((each) => { each.open = true; });").await;
        page.settled().await;
        page.pick("Arrangement", "One after the other").await;
        page.open(&lead).await;
        page.find(Role::Heading, "CF-1 · Service card").await;
        page.click(Role::Radio, "0.2").await;
        page.press("Save visit").await;
        page.says("Order now").await;
        let lag = lead.replace("CF-1", "CF-2");
        page.open(&lag).await;
        page.find(Role::Heading, "CF-2 · Service card").await;
        page.click(Role::Radio, "0").await;
        page.press("Save visit").await;
        page.says("All that was read is as it should be.").await;
        page.press("Lag becomes lead").await;
        // What was the lead's bed, with its reading, stands here now.
        page.says("Order now").await;
        page.says("Outlet test 0.2 mg/L").await;
        page.open(&lead).await;
        page.find(Role::Heading, "CF-1 · Service card").await;
        page.says("All that was read is as it should be.").await;
        page.says("Outlet test 0 mg/L").await;
        // It is kept, and stays through a reload.
        page.settled().await;
        tokio::time::sleep(std::time::Duration::from_millis(500)).await;
        page.reload().await;
        page.says("All that was read is as it should be.").await;
        page.no_complaints().await;
    })
    .await;
}
