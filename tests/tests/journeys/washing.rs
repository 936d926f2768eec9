//! Whether the bed works, by keyboard alone: carbon on a steady well and on mains, resin under an upper collector, the
//! backwash window's figures as a screen reader is told them, a clean pressure drop. What is expected is common practice, no
//! source; the figures behind it are those of `tests/native/hydraulics.rs`.

use crate::browser::{Screen, visit};
use crate::page::{Page, Role};
use crate::site::Site;

/// Starts a job with one vessel of this size and inside diameter.
async fn vessel(page: &Page, size: &str, inside: &str, depth: &str) {
    page.started().await;
    page.enter_on(Role::Button, "New job").await;
    page.find(Role::Heading, "Vessels").await;
    page.enter_on(Role::Button, "Add a vessel").await;
    page.find(Role::Heading, "Layers").await;
    page.choose("Inside diameter by", "Measured inside").await;
    for (name, text) in [("Nominal size", size), ("Inside diameter", inside), ("Inside depth", depth)] {
        page.type_into(name, text).await;
    }
    for (name, text) in [("Neck height", "1"), ("Riser outside diameter", "1.05")] {
        page.type_into(name, text).await;
    }
}

/// Types the grains of the layer at a place among those that are unfolded.
async fn grains(page: &Page, place: usize, grains: &[(&str, &str)]) {
    page.unfold("Grains").await;
    for (name, text) in grains {
        page.type_into_at(name, place, text).await;
    }
}

/// A 12×52 of 11.75 in with 0.15 cu ft of gravel and two bags of carbon 12×40.
async fn carbon(page: &Page) {
    vessel(page, "12x52", "11.75", "51").await;
    page.enter_on(Role::Button, "Add underbed").await;
    page.choose("Material", "Gravel 1/8 × 1/4 in").await;
    page.type_into("How much", "0.15").await;
    page.enter_on(Role::Button, "Add media").await;
    // The list shows the top layer first.
    page.choose_at("Material", 0, "Coconut carbon 12×40").await;
    page.type_into_at("How much", 0, "2").await;
    // The underbed's grains stand first.
    let known = [
        ("Effective size", "0.65"),
        ("Uniformity coefficient", "1.7"),
        ("Particle density, wetted", "1400"),
        ("Settled voidage", "0.5"),
        ("Sphericity", "0.75"),
    ];
    grains(page, 1, &known).await;
}

/// Types the site's water and what the vessel must do.
async fn water(page: &Page, from: &str, [cold, warm, available, least]: [&str; 4]) {
    page.take(from).await;
    page.type_into("Coldest water", cold).await;
    page.type_into("Warmest water", warm).await;
    page.type_into("Flow there is for backwash", available).await;
    page.type_into("Least expansion", least).await;
}

/// The rows of a table as a screen reader is told them: the names of each row's cells.
async fn told(page: &Page, table: &str) -> Vec<Vec<String>> {
    page.find(Role::Table, table).await;
    let tree = page.session().cdp().send_raw("Accessibility.getFullAXTree", serde_json::json!({})).await.unwrap();
    let nodes = tree["nodes"].as_array().unwrap();
    let of = |id: &serde_json::Value| nodes.iter().find(|node| node["nodeId"] == *id);
    let role = |node: &serde_json::Value| node["role"]["value"].as_str().unwrap_or_default().to_owned();
    let name = |node: &serde_json::Value| node["name"]["value"].as_str().unwrap_or_default().to_owned();
    let is_it = |node: &&serde_json::Value| role(node) == "table" && name(node) == table;
    let mut waiting = vec![nodes.iter().find(is_it).unwrap()];
    let mut rows = Vec::new();
    while let Some(node) = waiting.pop() {
        let children: Vec<_> = node["childIds"].as_array().into_iter().flatten().filter_map(of).collect();
        if role(node) == "row" {
            let cells = ["cell", "gridcell", "rowheader", "columnheader"];
            rows.push(
                children.iter().filter(|cell| cells.contains(&role(cell).as_str())).map(|cell| name(cell)).collect(),
            );
        } else {
            waiting.extend(children.into_iter().rev());
        }
    }
    rows
}

async fn carbon_is_judged(page: Page) {
    carbon(&page).await;
    water(&page, "A well", ["10 C", "14 C", "8", "20"]).await;
    page.says("set on site").await;
    // 7 or 8 gpm do, 6 doesn't: fitted one after the other, as somebody would who has them in the van.
    for (size, mark) in [("7", "set on site"), ("8", "set on site"), ("6", "caution")] {
        page.type_into("Drain line flow control fitted", size).await;
        page.says(&format!("Backwash at {size} gpm: {mark}")).await;
    }
    page.type_into("Drain line flow control fitted", "").await;

    // The window's figures: a header, and 13 temperatures of which every line rises with the warmth.
    page.unfold("The window in figures").await;
    let rows = told(&page, "Backwash window").await;
    assert_eq!(rows.len(), 14, "{rows:?}");
    assert!(rows.iter().all(|row| row.len() == 8 && row.iter().all(|cell| !cell.is_empty())), "{rows:?}");
    let column = |at: usize| -> Vec<f64> { rows[1..].iter().map(|row| row[at].parse().unwrap()).collect() };
    for at in [0, 2, 5] {
        assert!(column(at).windows(2).all(|pair| pair[0] <= pair[1]), "{:?}", column(at));
    }

    // Mains with 5 gpm: summer doesn't lift it; a narrower vessel is the remedy.
    water(&page, "A water main", ["5 C", "25 C", "5", "15"]).await;
    page.says("Backwash at 5 gpm: stop").await;
    page.says("Take a vessel of at most").await;

    // A gauge before and one after the bed: how closely it lies, and what no bed can lose.
    page.unfold("What was seen").await;
    page.choose("Kind", "Clean pressure drop").await;
    page.type_into("Water temperature", "12 C").await;
    page.type_into("Flow", "5").await;
    page.type_into("Pressure lost over the bed", "60").await;
    page.enter_on(Role::Button, "Add it").await;
    page.says("60 psi was read").await;
    page.enter_on(Role::Button, "Withdraw").await;
    page.until("it is gone", "!document.body.innerText.includes('60 psi was read')").await;
    page.type_into("Water temperature", "12 C").await;
    page.type_into("Flow", "5").await;
    page.type_into("Pressure lost over the bed", "0.5").await;
    page.enter_on(Role::Button, "Add it").await;
    page.says("Settled voidage by clean pressure drops: Coconut carbon 12×40 0.").await;
    page.no_complaints().await;
}

async fn resin_is_judged(page: Page) {
    vessel(&page, "10x54", "9.7", "53").await;
    page.choose("Upper collector", "Yes").await;
    page.type_into("Rim down to the upper collector", "1").await;
    page.enter_on(Role::Button, "Add media").await;
    page.choose("Material", "Softening resin, cation").await;
    page.choose("Fill by", "Volume").await;
    page.type_into("How much", "1.5").await;
    let beads = [
        ("Smallest grain", "0.68"),
        ("Largest grain", "0.68"),
        ("Effective size", "0.68"),
        ("Uniformity coefficient", "1"),
        ("Particle density, wetted", "1260"),
        ("Settled voidage", "0.38"),
        ("Sphericity", "1"),
    ];
    grains(&page, 0, &beads).await;
    water(&page, "A well", ["12 C", "12 C", "10", "30"]).await;
    page.type_into("Slot width of the upper collector", "0.2").await;
    page.type_into("Drain line flow control fitted", "2").await;
    page.says("Backwash at 2 gpm: set on site").await;
    // What reaches slots that hold it is a caution, and no stop.
    page.type_into("Drain line flow control fitted", "2.4").await;
    page.says("Backwash at 2.4 gpm: caution").await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn carbon_on_a_well_and_on_mains_is_judged_by_keyboard_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), carbon_is_judged).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn carbon_on_a_well_and_on_mains_is_judged_by_keyboard_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), carbon_is_judged).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn resin_under_an_upper_collector_is_judged_by_keyboard_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), resin_is_judged).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn resin_under_an_upper_collector_is_judged_by_keyboard_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), resin_is_judged).await;
}
