//! The steps a person takes to plan one carbon filter, 12×52, and to look round a job.

use crate::page::{Page, Role};

/// What is typed into the survey: name of the field, text.
pub const SURVEY: &[(&str, &str)] = &[
    ("Nominal size", "12x52"),
    ("Round the bare shell", "37.9"),
    ("Wall", "0.16"),
    ("Inside depth", "51"),
    ("Neck height", "1"),
    ("Riser outside diameter", "1.05"),
    ("Riser stands at height", "0"),
];

/// The tape after the underbed and after two bags: 47.33 and 15.17 in, worked by hand from the vessel's measures
/// (`tests/native/acceptance.rs`; common practice, no source), read to the eighth.
pub const TAPES: [&str; 2] = ["47 3/8 in", "15 1/8 in"];

/// Starts a job and gives it a title.
pub async fn new_job(page: &Page, title: &str) {
    page.press("New job").await;
    page.enter("Job", title).await;
}

/// Adds a vessel to the open job and types its survey.
pub async fn survey(page: &Page) {
    page.press("Add a vessel").await;
    page.find(Role::Heading, "Layers").await;
    page.pick("Inside diameter by", "Tape round the bare shell").await;
    for (name, text) in SURVEY {
        page.enter(name, text).await;
    }
}

/// Plans a sixth of a cubic foot of gravel and two bags of carbon in the open vessel.
pub async fn layers(page: &Page) {
    page.press("Add underbed").await;
    page.pick("Material", "Gravel 1/8 × 1/4 in").await;
    page.enter("How much", "1/6").await;
    page.press("Add media").await;
    // The list shows the top layer first.
    let material = page.find_at(Role::Combobox, "Material", 0).await;
    page.pick_from(&material, "Material", "Coconut carbon 12×40").await;
    let amount = page.find_at(Role::Textbox, "How much", 0).await;
    page.enter_into(&amount, "2").await;
}

/// A job of one planned vessel; its address.
pub async fn planned(page: &Page, title: &str) -> String {
    new_job(page, title).await;
    let job = page.fragment().await;
    survey(page).await;
    layers(page).await;
    page.says(TAPES[1]).await;
    job
}

/// What was typed of that vessel is there, letter for letter, and its tape readings with it.
pub async fn holds(page: &Page) {
    for (name, text) in SURVEY {
        assert_eq!(page.entered(name).await, *text, "{name}");
    }
    let cards = cards(page).await;
    assert!(cards[0].contains(TAPES[1]) && cards[1].contains(TAPES[0]), "{cards:?}");
}

/// The layers as they can be read, the top one first.
pub async fn cards(page: &Page) -> Vec<String> {
    let cards = page.script("return [...document.querySelectorAll('li.layer')].map((card) => card.innerText);").await;
    cards.as_array().unwrap().iter().map(|card| card.as_str().unwrap().replace('\n', " ")).collect()
}

/// The addresses of every screen: of the sample job, which has two vessels, and of those beside it.
pub async fn screens(page: &Page) -> Vec<String> {
    page.press("Sample job").await;
    page.find(Role::Button, "Add a vessel").await;
    let job = page.fragment().await;
    let vessels =
        page.script("return [...document.querySelectorAll('main a')].map((a) => a.getAttribute('href')).filter((to) => to.includes('/vessels/') && !to.includes('/card'));").await;
    let vessels: Vec<String> = vessels.as_array().unwrap().iter().map(|to| to.as_str().unwrap().to_owned()).collect();
    assert_eq!(vessels.len(), 2, "{vessels:?}");
    let papers =
        ["search", "bill", "quote", "packs", "picking", "labels", "survey-sheet", "calculation", "loading", "send"]
            .map(|paper| format!("{job}/{paper}"));
    let of_a_tag = ["removal", "loading"].map(|sheet| vessels[0].replace("/vessels/", &format!("/{sheet}/")) + "/CF-1");
    let card = vessels[0].clone() + "/card/CF-1";
    let beside = [card]
        .into_iter()
        .chain(["#/due", "#/prices", "#/open", "#/backup", "#/settings"].map(str::to_owned))
        .collect::<Vec<_>>();
    [vec!["#/jobs".to_owned(), job], vessels, papers.to_vec(), of_a_tag.to_vec(), beside].concat()
}
