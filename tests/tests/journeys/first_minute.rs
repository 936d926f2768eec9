//! The first vessel from a cold start, then its quote and its pick list: how many taps and keys each takes, and how long by a
//! stated model. What a visit and a loading take is counted where they are made (`card.rs`, `load.rs`).
//!
//! Seconds by the keystroke-level model (S. K. Card, T. P. Moran, A. Newell 1980, Communications of the ACM 23(7):396–410):
//! 0.28 s a key of an average typist, 1.1 s to point at something (here: to reach it with a finger), 1.35 s to make up one's
//! mind before each thing that is named in the steps below. The operators' times are from memory.

use std::collections::BTreeSet;

use bedwright_job::answers::job_answers;
use bedwright_job::prices::price_keys;

use crate::browser::{Screen, visit};
use crate::filter;
use crate::folder::Folder;
use crate::page::{Page, Role};
use crate::site::Site;
use crate::stored;

const KEY: f64 = 0.28;
const TAP: f64 = 1.1;
const MIND: f64 = 1.35;

/// What was done so far.
#[derive(Default)]
struct Done {
    taps: usize,
    keys: usize,
    steps: usize,
}

impl Done {
    async fn press(&mut self, page: &Page, name: &str) {
        page.press(name).await;
        self.taps += 1;
        self.steps += 1;
    }

    /// A tap into the field, a key for every letter.
    async fn enter(&mut self, page: &Page, name: &str, place: usize, text: &str) {
        let field = page.find_at(Role::Textbox, name, place).await;
        page.enter_into(&field, text).await;
        self.taps += 1;
        self.keys += text.chars().count();
        self.steps += 1;
    }

    /// A tap that opens the list, and one on the option.
    async fn pick(&mut self, page: &Page, name: &str, option: &str) {
        let list = page.find_at(Role::Combobox, name, 0).await;
        page.pick_from(&list, name, option).await;
        self.taps += 2;
        self.steps += 1;
    }

    async fn follow(&mut self, page: &Page, name: &str) {
        page.click(Role::Link, name).await;
        self.taps += 1;
        self.steps += 1;
    }

    fn told(&self, what: &str) {
        let (taps, keys, all, seconds) = (self.taps, self.keys, self.all(), self.seconds());
        println!("{what}: {taps} taps + {keys} keys = {all}, {seconds:.0} s by the keystroke-level model");
    }

    fn all(&self) -> usize {
        self.taps + self.keys
    }

    fn seconds(&self) -> f64 {
        self.taps as f64 * TAP + self.keys as f64 * KEY + self.steps as f64 * MIND
    }
}

async fn first_vessel(screen: Screen) {
    let site = Site::serve();
    visit(screen, &site.address(), async |page: Page| {
        page.started().await;
        page.says("No job on this device yet.").await;
        for way in ["New job", "Sample job"] {
            page.find(Role::Button, way).await;
        }
        page.find(Role::Link, "Receive a job").await;
        let mut done = Done::default();
        done.press(&page, "New job").await;
        done.press(&page, "Add a vessel").await;
        page.find(Role::Heading, "Layers").await;
        done.enter(&page, "Nominal size", 0, "12x52").await;
        done.press(&page, "Add media").await;
        done.pick(&page, "Material", "Coconut carbon 12×40").await;
        done.enter(&page, "How much", 0, "2").await;
        // Planned: what is bought, and where its surface comes to stand.
        page.until("bags", "/2 bags/.test(document.querySelector('li.layer').innerText)").await;
        page.until("a tape reading", "/ in( |$|\\n)/.test(document.querySelector('li.layer').innerText)").await;
        done.told("first vessel");
        assert!(done.all() <= 25, "{} taps and keys", done.all());
        // The next is of the same make: what was chosen is chosen, what must be measured isn't there.
        page.enter("Riser outside diameter", "1.05").await;
        page.pick("Bottom head", "Torispherical, ASME F&D").await;
        page.session().back().await.unwrap();
        page.press("Add a vessel").await;
        page.find(Role::Heading, "Layers").await;
        assert_eq!(page.entered("Nominal size").await, "");
        assert_eq!(page.entered("Riser outside diameter").await, "1.05");
        let head = page.find(Role::Combobox, "Bottom head").await;
        let chosen = "return arguments[0].selectedOptions[0].innerText;";
        let chosen = page.session().execute(chosen, vec![head.to_json().unwrap()]).await.unwrap();
        assert_eq!(chosen.json(), "Torispherical, ASME F&D");
        page.no_complaints().await;
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_first_vessel_takes_at_most_25_taps_and_keys_on_a_phone() {
    first_vessel(Screen::Phone).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_first_vessel_takes_at_most_25_taps_and_keys_on_a_desk() {
    first_vessel(Screen::Desk).await;
}

/// A price list that knows what a vessel takes: what is set up once.
async fn price_list(page: &Page) {
    let folder = Folder::new("prices");
    let (_, bill) = job_answers(&stored::one_vessel());
    // Of every size: the first key is the item's own, the last its kind's.
    let keys: BTreeSet<String> = bill.bill.pooled.iter().filter_map(|line| price_keys(&line.item).pop()).collect();
    let rows: String = keys.iter().map(|key| format!("{key},10.00\n")).collect();
    let file = folder.path().join("list.csv");
    std::fs::write(&file, ["key,price\n", &rows].concat()).unwrap();
    page.open("#/prices").await;
    page.pick_file("Try a file", &file).await;
    page.press("Take it into the list").await;
    page.find(Role::Button, "New row").await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_planned_vessel_is_quoted_and_picked_in_few_taps_and_keys() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        price_list(&page).await;
        page.open("#/jobs").await;
        filter::planned(&page, "Quoted and picked").await;
        let mut done = Done::default();
        done.follow(&page, "Quoted and picked").await;
        done.follow(&page, "Quote what is offered, for how much, and on what it rests").await;
        page.find(Role::Heading, "Lines").await;
        done.enter(&page, "Currency", 0, "usd").await;
        done.press(&page, "Issue revision 1").await;
        page.says("Nothing has changed since revision 1.").await;
        done.told("quote, with the prices on the device");
        assert!(done.all() <= 8, "{} taps and keys", done.all());

        page.session().back().await.unwrap();
        let mut done = Done::default();
        done.follow(&page, "Pick list what the warehouse pulls, in the order of the shelf").await;
        page.find(Role::Heading, "Pick list").await;
        done.enter(&page, "Your name", 0, "R. Moss").await;
        let lines = page.names(Role::Checkbox).await;
        for line in &lines {
            page.click(Role::Checkbox, line).await;
        }
        done.taps += lines.len();
        done.press(&page, "Picked").await;
        page.says("R. Moss").await;
        done.told(&format!("pick list of {} lines", lines.len()));
        // The way there, the name, and one for each line.
        assert!(done.all() <= lines.len() + 3 + "R. Moss".len(), "{} taps and keys", done.all());
        page.no_complaints().await;
    })
    .await;
}
