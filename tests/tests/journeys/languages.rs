//! The page in Spanish and in French: chosen in the settings, kept, as narrow as it gets; papers in another language.

use crate::browser::{Screen, visit};
use crate::filter;
use crate::page::{Page, Role};
use crate::site::Site;

/// A language as somebody finds it who reads English so far.
struct Tongue {
    tag: &'static str,
    own_name: &'static str,
    /// What the settings, the survey sheet and the choice of a paper's language are called.
    settings: &'static str,
    survey_sheet: &'static str,
    paper_language: &'static str,
}

const SPANISH: Tongue = Tongue {
    tag: "es",
    own_name: "Español",
    settings: "Ajustes",
    survey_sheet: "Hoja de toma de datos",
    paper_language: "Idioma del documento",
};

const FRENCH: Tongue = Tongue {
    tag: "fr",
    own_name: "Français",
    settings: "Réglages",
    survey_sheet: "Fiche de relevé",
    paper_language: "Langue du document",
};

/// Words that stand in nearly every English sentence and in none of the other languages.
const ENGLISH: &str = "/\\b(the|of|and|with|which|from|isn't|doesn't)\\b/";

async fn is_spoken(page: &Page, tag: &str) {
    page.until("the page says its language", &format!("document.documentElement.lang === '{tag}'")).await;
}

async fn speaks(page: Page, tongue: Tongue) {
    page.started().await;
    is_spoken(&page, "en").await;
    let screens = filter::screens(&page).await;
    page.open("#/settings").await;
    page.click(Role::Radio, tongue.own_name).await;
    page.find(Role::Heading, tongue.settings).await;
    is_spoken(&page, tongue.tag).await;
    page.reload().await;
    page.started().await;
    page.find(Role::Heading, tongue.settings).await;
    for screen in &screens {
        page.open(screen).await;
        page.script("document.querySelectorAll('details').forEach((each) => { each.open = true; });").await;
        page.settled().await;
        page.fits_its_width().await;
        // What people typed, equations and the titles of documents stay as they are: only what
        // stands alone as a line is looked at.
        let left = page
            .script(&format!(
                "return [...document.querySelectorAll('main h1, main h2, main label, main legend, main button, main a, main p')] \
                   .filter((each) => !each.matches('.how-formula, .verdict-source, details.how table + p')) \
                   .map((each) => each.innerText || '').filter((text) => {ENGLISH}.test(text) && !text.includes('invented'));",
            ))
            .await;
        assert_eq!(left, serde_json::json!([]), "{screen}: English in {}", tongue.own_name);
    }
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn every_screen_is_spanish_and_fits_320_pixels() {
    let site = Site::serve();
    visit(Screen::Narrow, &site.address(), async |page| speaks(page, SPANISH).await).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn every_screen_is_french_and_fits_320_pixels() {
    let site = Site::serve();
    visit(Screen::Narrow, &site.address(), async |page| speaks(page, FRENCH).await).await;
}

/// The survey sheet in the customer's language, on the page of somebody who reads another.
async fn a_paper_in_another_language(page: Page) {
    page.started().await;
    let job = filter::planned(&page, "For a customer who reads French").await;
    page.open(&format!("{job}/survey-sheet")).await;
    page.pick("Language of the paper", FRENCH.own_name).await;
    let on_sheet =
        format!("document.querySelector('[lang=fr] .sheet-title')?.textContent.includes('{}')", FRENCH.survey_sheet);
    page.until("the sheet is French", &on_sheet).await;
    page.find(Role::Heading, "Survey sheet").await;
    is_spoken(&page, "en").await;
    page.open("#/settings").await;
    page.click(Role::Radio, SPANISH.own_name).await;
    page.find(Role::Heading, SPANISH.settings).await;
    page.open(&format!("{job}/survey-sheet")).await;
    page.until("the sheet is still French", &on_sheet).await;
    page.pick(SPANISH.paper_language, SPANISH.own_name).await;
    page.until(
        "the sheet is Spanish",
        &format!("document.querySelector('.sheet-title').textContent.includes('{}')", SPANISH.survey_sheet),
    )
    .await;
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_paper_is_in_the_customers_language_and_the_page_in_the_readers() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), a_paper_in_another_language).await;
}
