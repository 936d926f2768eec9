//! The service card and the due list: a year of visits on a phone, the first trace, the job that replaces the bed, the due
//! list as a calendar, all with no connection. What is printed: `card`.
//!
//! Dates are typed, so that a year passes in a minute; the figures are invented. That a carbon bed is changed at the first
//! outlet that isn't nought is common practice, no source.

use serde_json::json;

use crate::browser::{Screen, visit};
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::site::Site;

const CARD: &str = "Service card CF-1";

async fn card(page: &Page) {
    page.started().await;
    page.press("Sample job").await;
    page.follow(CARD).await;
    page.find(Role::Heading, "CF-1 · Service card").await;
}

async fn fold(page: &Page) {
    page.script("document.querySelectorAll('details').forEach((each) => { each.open = true; });").await;
    page.settled().await;
}

/// Days before today, as the page writes them.
async fn before(page: &Page, days: u32) -> String {
    let day = page
        .script(&format!(
            "const day = new Date(); day.setDate(day.getDate() - {days}); const two = (n) => String(n).padStart(2, '0'); \
             return `${{day.getFullYear()}}-${{two(day.getMonth() + 1)}}-${{two(day.getDate())}}`;"
        ))
        .await;
    day.as_str().unwrap().to_owned()
}

async fn logged(page: &Page, days: u32, meter: &str, outlet: &str) {
    page.click(Role::Radio, "other").await;
    page.enter("Outlet test", outlet).await;
    page.enter("Inlet test", "2").await;
    page.click(Role::Radio, "Clear, no grains").await;
    page.enter("Meter", meter).await;
    let day = before(page, days).await;
    page.enter("Day", &day).await;
    page.press("Save visit").await;
    page.says("Visit kept.").await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_year_of_visits_on_a_phone_with_no_connection() {
    let mut site = Site::serve();
    let address = site.address();
    visit(Screen::Phone, &address, async |page: Page| {
        page.started().await;
        page.ready_offline().await;
        card(&page).await;
        page.says("The outlet of this bed was never tested.").await;
        site.stop();

        // Three taps: the strip, the drain, save.
        page.click(Role::Radio, "0").await;
        page.click(Role::Radio, "Clear, no grains").await;
        page.press("Save visit").await;
        page.says("Visit kept.").await;
        page.says("All that was read is as it should be.").await;
        page.press("Withdraw").await;
        page.says("No visit of this bed yet.").await;

        fold(&page).await;
        let year = [
            (330, "0"),
            (300, "0"),
            (270, "0"),
            (240, "<0.1"),
            (210, "0"),
            (180, "0.04"),
            (150, "0.1"),
            (120, "0.3"),
            (90, "0.7"),
            (60, "1.2"),
            (30, "1.6"),
            (1, "1.8"),
        ];
        for (days, outlet) in year {
            logged(&page, days, &(36_000 - days * 100).to_string(), outlet).await;
        }
        page.says("Order now").await;
        page.says("The bed is being spent.").await;
        page.says("a test reads the limit (nine of ten)").await;
        fold(&page).await;
        page.fits_its_width().await;
        let drawn =
            page.script("return document.querySelectorAll('[aria-labelledby=spent] .chart-point').length;").await;
        assert_eq!(drawn, json!(year.len()));
        let rows = page.script("return document.querySelectorAll('[aria-labelledby=spent] tbody tr').length;").await;
        assert_eq!(rows, json!(year.len()), "the chart's table");

        // Kept through a reload, still with no connection.
        page.reload().await;
        page.says("Order now").await;

        // The job that replaces the bed, in one tap; it says what it follows.
        page.press("Make the replacement job").await;
        page.find(Role::Heading, "Vessels").await;
        page.follow(CARD).await;
        page.follow("The bed this job replaces").await;
        page.says("Order now").await;

        // A new bed ends the old one's life.
        page.press("New bed put in today").await;
        page.says("End this bed's life and begin the next?").await;
        page.press("New bed put in today").await;
        page.says("No visit of this bed yet.").await;
        page.says("Earlier beds here").await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_contradicts_is_asked_before_it_is_kept_and_kept_if_wanted() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        card(&page).await;
        fold(&page).await;
        page.click(Role::Radio, "1").await;
        page.enter("Inlet test", "0.2").await;
        page.press("Save visit").await;
        page.says("Were the two tests swapped?").await;
        page.press("Go back to it").await;
        assert_eq!(page.entered("Inlet test").await, "0.2");
        page.press("Save visit").await;
        page.press("Keep it as it is").await;
        page.says("Visit kept.").await;
        page.says("Were the two tests swapped?").await;
        // What is no number is said under its field and keeps the visit from being kept.
        page.enter("Meter", "about 1000").await;
        page.press("Save visit").await;
        page.says("Not kept yet: one of the numbers makes no sense.").await;
        assert!(!page.described("Meter").await.is_empty());
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_due_list_is_taken_along_as_a_calendar() {
    let site = Site::serve();
    let folder = Folder::new("calendar");
    visit(Screen::Desk, &site.address(), async |page: Page| {
        folder.takes_downloads(&page).await;
        card(&page).await;
        page.click(Role::Radio, "0.1").await;
        page.press("Save visit").await;
        page.says("Order now").await;
        page.open("#/due").await;
        page.find(Role::Heading, "Due list").await;
        page.says("CF-1: new bed").await;
        page.press("Save as calendar").await;
        let (name, text) = folder.downloaded().await;
        assert_eq!(name, "bedwright-due.ics");
        assert!(text.starts_with("BEGIN:VCALENDAR\r\n") && text.ends_with("END:VCALENDAR\r\n"), "{text}");
        assert_eq!(text.matches("BEGIN:VEVENT").count(), 1);
        // The layer of the outside reads it with another program.
        if let Ok(kept) = std::env::var("BEDWRIGHT_CALENDAR") {
            std::fs::write(kept, &text).unwrap();
        }
        page.fits_its_width().await;
        page.no_complaints().await;
    })
    .await;
}

/// How long a card of two thousand readings takes to open and to add to, and how much is written for one more; nothing is
/// asked of it but that it works. Run by name with `--ignored --nocapture`.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "measures"]
async fn two_thousand_readings_open_and_add() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        card(&page).await;
        let seed = "const [job, vessel] = [location.hash.split('/')[2], location.hash.split('/')[4]]; const years = {}; \
            const start = new Date(Date.now() - 2000 * 2 * 864e5); \
            for (let n = 0; n < 2000; n++) { \
              const day = new Date(start.getTime() + n * 2 * 864e5).toISOString().slice(0, 10); \
              (years[day.slice(0, 4)] ||= []).push({ id: `v${n}`, kind: 'visit', day, at: `${day}T09:00:00.000Z`, vessel, tag: 'CF-1', \
                test_unit: 'mg_L', meter: { text: String(1000 + n * 600), unit: 'gal_us' }, inlet: { text: '2', unit: 'ratio' }, \
                outlet: { text: (2 / (1 + Math.exp(0.004 * (1600 - n))) + 0.02 * Math.sin(n * 7)).toFixed(2).replace('-', ''), unit: 'ratio' }, drain: 'clear', grains: false }); } \
            for (const [year, visits] of Object.entries(years)) localStorage.setItem(`bedwright/job/${job}/records-${year}`, JSON.stringify(visits)); \
            return Object.values(years).map((visits) => visits.length);";
        let years = page.script(seed).await;
        page.reload().await;
        page.find(Role::Heading, "CF-1 · Service card").await;
        let fragment = page.fragment().await;
        page.open("#/jobs").await;
        let opened = page
            .session()
            .execute_async(
                "const done = arguments[arguments.length - 1]; const begun = performance.now(); location.hash = arguments[0]; \
                 const look = () => document.querySelector('.front-mark') ? done(performance.now() - begun) : setTimeout(look, 1); look();",
                vec![json!(fragment)],
            )
            .await
            .unwrap();
        let added = page
            .session()
            .execute_async(
                "const done = arguments[arguments.length - 1]; \
                 const radio = [...document.querySelectorAll('label.pick-option')].find((each) => each.innerText.trim() === '0.5'); radio.click(); \
                 const begun = performance.now(); document.querySelector('.visit-save').click(); \
                 const look = () => document.querySelector('.visit-told').innerText || document.querySelector('.visit-asked') ? done(performance.now() - begun) : setTimeout(look, 1); look();",
                vec![],
            )
            .await
            .unwrap();
        tokio::time::sleep(std::time::Duration::from_secs(1)).await;
        let bytes = page
            .script("const job = location.hash.split('/')[2]; const year = new Date().getFullYear(); return [`records-${year}`, 'records'].map((part) => (localStorage.getItem(`bedwright/job/${job}/${part}`) || '').length);")
            .await;
        println!(
            "2000 readings by year {years}: open {} ms, add {} ms, letters written for one more {bytes}",
            opened.json(),
            added.json()
        );
    })
    .await;
}

/// 2 psi a day after the wash, 4 after two, 6 after three: 10 psi after five days, by hand.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_filter_says_how_long_it_runs_by_the_pressures_of_its_visits() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        card(&page).await;
        let card = page.fragment().await;
        for (days, after) in [("1", "48"), ("2", "46"), ("3", "44")] {
            fold(&page).await;
            page.enter("Pressure before", "50").await;
            page.enter("Pressure after", after).await;
            page.enter("Since the last wash", days).await;
            page.press("Save visit").await;
            page.says("Visit kept.").await;
        }
        page.says("at which loss of pressure it is washed").await;
        let vessel = card.split("/card/").next().unwrap().to_owned();
        page.open(&vessel).await;
        page.find(Role::Heading, "Media life").await;
        fold(&page).await;
        page.pick("Purpose", "Hold sediment back").await;
        fold(&page).await;
        page.enter("Washed at a loss of", "10").await;
        page.enter("Where these figures come from", "our own readings (invented)").await;
        page.says("Between two washes, by your readings").await;
        page.reload().await;
        page.find(Role::Heading, "Media life").await;
        fold(&page).await;
        assert_eq!(page.entered("Where these figures come from").await, "our own readings (invented)");
        page.fits_its_width().await;
        page.open(&card).await;
        page.says("Between two washes, by its pressures").await;
        page.says(" days, by a straight line through 3 readings of the same flow.").await;
        page.fits_its_width().await;
        page.no_complaints().await;
    })
    .await;
}
