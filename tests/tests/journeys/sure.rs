//! How sure the figures are: from the menu to the page, from a figure to its formula, searched, printed, without a barrier.

use crate::axe;
use crate::browser::{Screen, visit};
use crate::filter;
use crate::page::{Page, Role};
use crate::paper::{self, Paper};
use crate::site::Site;

/// Ids of the lines that are shown in a part, from the first one.
async fn shown(page: &Page, part: usize) -> Vec<String> {
    let read = format!(
        "return [...document.querySelectorAll('.sure-part')[{part}].querySelectorAll('tbody tr')].map((row) => row.dataset.of);"
    );
    let found = page.script(&read).await;
    found.as_array().unwrap().iter().map(|id| id.as_str().unwrap().to_owned()).collect()
}

async fn search(page: &Page, words: &str) {
    let field = page.find(Role::Searchbox, "Search formulas, numbers and sources").await;
    page.enter_into(&field, words).await;
    page.settled().await;
}

async fn everybody_sees_how_sure_the_figures_are(page: Page) {
    page.started().await;
    page.press("Menu").await;
    page.follow("How sure are we").await;
    page.find(Role::Heading, "How sure are we").await;
    assert_eq!(page.fragment().await, "#/sure");
    // First of all what nobody looked up, and it says so on every line.
    let headings = page.names(Role::Heading).await;
    let titles = ["From memory", "Common practice", "Every formula", "What we compare with"];
    let at = titles.map(|title| headings.iter().position(|heading| heading.eq_ignore_ascii_case(title)).unwrap());
    assert!(at.is_sorted(), "{headings:?}");
    let read = "return [...document.querySelectorAll('.sure-part')[0].querySelectorAll('tbody tr')].map((row) => row.lastElementChild.textContent);";
    let said = page.script(read).await;
    let said = said.as_array().unwrap();
    assert!(said.len() > 60 && said.iter().all(|text| text == "from memory"), "{said:?}");
    assert!(shown(&page, 0).await.contains(&"dharmarajah_cleasby_voidage".to_owned()));
    assert_eq!(shown(&page, 2).await.len() + 1, bedwright_calc::quantity::Formula::ALL.len());
    page.says("held by our own tests only").await;
    page.fits_its_width().await;

    // Searched by what stands in a line, in whatever letters.
    search(&page, "SETTLING speed haider").await;
    assert_eq!(shown(&page, 2).await, ["settling_speed", "settling_speed_ball"]);
    assert!(!page.text().await.contains("Common practice"));
    page.says("fluids 1.3.1 (v_terminal)").await;
    // A line of every part: axe takes too long over all of them.
    search(&page, "grain").await;
    for part in 0..4 {
        assert!(!shown(&page, part).await.is_empty(), "{part}");
    }
    assert_eq!(axe::barriers(&page).await, Vec::<String>::new());
    search(&page, "no such thing").await;
    page.says("No line has all these words.").await;
    page.fits_its_width().await;
    search(&page, "").await;
    assert!(shown(&page, 0).await.len() > 60);

    // On paper: every line, no tools.
    let sheets = paper::sheets(&page, Paper::Letter).await;
    let text = sheets.join(" ");
    for wanted in ["How sure are we", "Dharmarajah", "PHREEQC", "HiGHS"] {
        assert!(text.contains(wanted), "{wanted}");
    }
    assert!(sheets.len() > 3 && !text.contains("Search formulas"), "{} sheets", sheets.len());

    // From a figure to its formula and back.
    page.open("#/jobs").await;
    filter::planned(&page, "Sure").await;
    page.script("document.querySelectorAll('details.how').forEach((each) => { each.open = true; });").await;
    page.settled().await;
    let link = page.find_at(Role::Link, "How sure is this formula", 0).await;
    link.scroll_into_view().await.unwrap();
    link.click().await.unwrap();
    page.find(Role::Heading, "How sure are we").await;
    let formula = page.fragment().await.trim_start_matches("#/sure/").to_owned();
    assert!(shown(&page, 2).await.contains(&formula), "{formula}");
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn everybody_sees_how_sure_the_figures_are_on_a_phone() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), everybody_sees_how_sure_the_figures_are).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn everybody_sees_how_sure_the_figures_are_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), everybody_sees_how_sure_the_figures_are).await;
}
