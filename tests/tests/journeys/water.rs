//! Whether the bed works, asked on the page: a 12×52 with two bags of carbon on a steady well and on mains, a drain check,
//! the window's figures, the calculation sheet. What is expected is common practice, no source; the figures behind it are
//! those of `tests/native/hydraulics.rs`.

use crate::browser::{Screen, visit};
use crate::filter;
use crate::page::{Page, Role};
use crate::site::Site;

async fn open_every_fold(page: &Page) {
    page.script("document.querySelectorAll('details').forEach((each) => { each.open = true; });").await;
    page.settled().await;
}

/// What the table of flow controls says of a size.
async fn setting(page: &Page, flow: &str) -> String {
    let row = format!(
        "const row = [...document.querySelectorAll('tr.setting')].find((row) => row.innerText.trim().startsWith('{flow}')); \
         return row ? row.innerText : '';"
    );
    page.script(&row).await.as_str().unwrap_or_default().replace(['\n', '\t'], " ")
}

async fn a_bed_is_judged(page: Page) {
    page.started().await;
    filter::planned(&page, "Does it wash").await;
    page.pick("Inside diameter by", "Measured inside").await;
    page.enter("Inside diameter", "11.75").await;
    let gravel = page.find_at(Role::Textbox, "How much", 1).await;
    page.enter_into(&gravel, "0.15").await;
    open_every_fold(&page).await;
    // The top layer's grains stand second: the underbed's come first.
    for (name, text) in [("Uniformity coefficient", "1.7"), ("Settled voidage", "0.5")] {
        let field = page.find_at(Role::Textbox, name, 1).await;
        page.enter_into(&field, text).await;
    }
    page.click(Role::Radio, "A well").await;
    page.enter("Coldest water", "10 C").await;
    page.enter("Warmest water", "14 C").await;
    page.enter("Flow there is for backwash", "8").await;
    page.enter("Least expansion", "20").await;
    page.says("set on site").await;
    page.settled().await;
    for flow in ["7 gpm", "8 gpm"] {
        let said = setting(&page, flow).await;
        assert!(said.contains("set on site"), "{flow}: {said}");
    }
    assert!(!setting(&page, "6 gpm").await.contains("set on site"));
    // A tap fits a size.
    page.press("Fit 8 gpm").await;
    page.says("Backwash at 8 gpm: set on site").await;

    // Somebody watched the drain.
    page.enter("Flow", "8").await;
    page.enter("Water temperature", "6 C").await;
    page.enter("How long", "10").await;
    page.press("Add it").await;
    page.says("Set by what was seen: 1").await;
    page.says("No grains in the drain").await;
    page.settled().await;
    page.reload().await;
    page.find(Role::Heading, "Backwash").await;
    open_every_fold(&page).await;
    page.says("Set by what was seen: 1").await;
    assert_eq!(page.entered("Coldest water").await, "10 C");
    let headings = page.script("return document.querySelectorAll('.window-table th[scope=col]').length;").await;
    assert_eq!(headings, 8);
    page.find(Role::Table, "Backwash window").await;
    page.press("Withdraw").await;
    page.says("Nothing seen yet").await;

    // Mains with 5 gpm: summer doesn't lift it, a narrower vessel would.
    page.click(Role::Radio, "A water main").await;
    page.enter("Coldest water", "5 C").await;
    page.enter("Warmest water", "25 C").await;
    page.enter("Flow there is for backwash", "5").await;
    page.enter("Least expansion", "15").await;
    page.enter("Drain line flow control fitted", "").await;
    page.says("Backwash at 5 gpm: stop").await;
    page.says("Take a vessel of at most").await;
    // Out of what water can be: a sentence under the field, and nothing else lost.
    page.enter("Warmest water", "75 C").await;
    page.settled().await;
    let said = page.described("Warmest water").await;
    assert!(said.contains("must be from"), "{said}");
    assert_eq!(page.entered("Coldest water").await, "5 C");
    page.enter("Warmest water", "25 C").await;
    page.says("Backwash at 5 gpm: stop").await;
    page.no_complaints().await;

    page.follow("Calculation sheet").await;
    page.find(Role::Heading, "Calculation sheet").await;
    page.says("What went in").await;
    // 5 gpm = 3.15451e-4 m³/s through π/4·(0.29845 m)² = 0.0699573 m²: 4.50919e-3 m/s.
    page.says("4.50919·10").await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_bed_is_judged_on_a_well_and_on_mains_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), a_bed_is_judged).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_bed_is_judged_on_a_well_and_on_mains_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), a_bed_is_judged).await;
}
