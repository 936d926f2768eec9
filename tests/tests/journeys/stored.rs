//! Jobs that are already kept in the browser, written as the page writes them: a text per section.

use std::sync::Arc;

use bedwright_calc::fill::Role as LayerRole;
use bedwright_calc::material::{Kind, Material, Pack};
use bedwright_job::Job;
use bedwright_job::edit::{Choice, Edit, apply};
use bedwright_job::entry::{Entry, Unit};
use bedwright_job::field::SurveyField;
use bedwright_job::id::Id;
use bedwright_job::saved::section_text;
use bedwright_job::sections::SectionName;
use bedwright_job::sections::head::TextField;
use bedwright_job::sections::picking::PickField;
use bedwright_job::sections::plan::{LayerPlan, VesselPlan};
use bedwright_job::sections::survey::{DiameterWay, Standing, SurveyEntry, VesselSurvey};
use serde_json::json;

use crate::page::Page;

fn typed(text: &str, unit: Unit) -> Entry {
    Entry { text: text.to_owned(), unit, meaning: None }
}

/// A job of vessels, one for every list of packs: each a vessel of 48 × 72 in, wide enough for a bulk bag.
fn job(id: &str, title: &str, vessels: &[Vec<Pack>]) -> Job {
    let mut job = Job::new(Id::new(id), "2026-11-24");
    let device = Id::new("stored");
    let mut edit = |edit: Edit| {
        let shown = format!("{edit:?}");
        assert!(apply(&mut job, edit, &device).is_ok(), "{shown}");
    };
    edit(Edit::Text { field: TextField::Title, text: title.to_owned() });
    edit(Edit::Text { field: TextField::Owner, text: "Tarn Water".to_owned() });
    edit(Edit::Text { field: TextField::Number, text: "S-060".to_owned() });
    for (at, packs) in vessels.iter().enumerate() {
        let vessel = Id::new(&format!("v-{at}"));
        let survey = Arc::new(VesselSurvey::new(vessel.clone()));
        edit(Edit::InsertVessel { at, vessel: survey, plan: Arc::new(VesselPlan::default()) });
        edit(Edit::Tags { vessel: vessel.clone(), tags: vec![format!("V-{}", at + 1)] });
        edit(Edit::Choose { vessel: vessel.clone(), choice: Choice::Diameter(DiameterWay::Measured) });
        let entries = [
            (SurveyField::NominalSize, "48x72"),
            (SurveyField::InsideDiameter, "47"),
            (SurveyField::InsideDepth, "71"),
            (SurveyField::NeckHeight, "1"),
            (SurveyField::RiserOutsideDiameter, "2.38"),
            (SurveyField::RiserSeat, "0"),
        ];
        for (field, text) in entries {
            let entry = SurveyEntry { entry: typed(text, field.usual_unit(false)), standing: Standing::Measured };
            edit(Edit::Survey { vessel: vessel.clone(), field, entry: Some(entry) });
        }
        for (at, pack) in packs.iter().enumerate() {
            // A pack's id begins with its material's.
            let material = pack.id.split('.').next().unwrap();
            let gravel = Material::of(material).is_some_and(|material| material.kind == Kind::Gravel);
            let role = if gravel { LayerRole::Underbed } else { LayerRole::Media };
            let mut layer = LayerPlan::new(Id::new(&format!("l-{at}-{vessel}")), material, role);
            layer.pack = pack.id.to_string();
            layer.amount = Some(if gravel { typed("0.5", Unit::CubicFoot) } else { typed("1", Unit::Each) });
            edit(Edit::InsertLayer { vessel: vessel.clone(), at, layer });
        }
    }
    job
}

/// A job with every pack there is on its bill, so that its pick list has more than sixty lines.
pub fn every_pack() -> Job {
    let packs: Vec<Pack> = Material::all().flat_map(|material| Pack::of_material(&material.id)).collect();
    let vessels: Vec<Vec<Pack>> = packs.into_iter().map(|pack| vec![pack]).collect();
    job("every-pack", "Every pack (invented)", &vessels)
}

/// Ten vessels of two layers each: one job to pick for, with places on the shelf and part numbers.
pub fn ten_to_pick() -> Job {
    let pack = |id: &str| Pack::of(id).unwrap();
    let two = vec![pack("gravel_1_8x1_4.half_ft3"), pack("carbon_coconut_12x40.1_ft3")];
    let mut job = job("ten-to-pick", "Ten to pick (invented)", &vec![two; 10]);
    let keys = ["pack:gravel_1_8x1_4:gravel_1_8x1_4.half_ft3", "pack:carbon_coconut_12x40:carbon_coconut_12x40.1_ft3"];
    for (key, (bin, part)) in keys.into_iter().zip([("A-10", "GR-1814/05"), ("A-2", "0012345678")]) {
        for (field, text) in [(PickField::Bin, bin), (PickField::PartNumber, part)] {
            let edit = Edit::PickText { key: key.to_owned(), field, text: text.to_owned() };
            assert!(apply(&mut job, edit, &Id::new("stored")).is_ok());
        }
    }
    job
}

/// A job of fifty vessels with two layers each.
pub fn fifty_vessels() -> Job {
    of_two_layers("fifty-vessels", "Fifty vessels (invented)", 50)
}

/// A job of as many vessels with two layers each as nobody has.
pub fn five_hundred_vessels() -> Job {
    of_two_layers("five-hundred-vessels", "Five hundred vessels (invented)", 500)
}

/// One vessel like those.
pub fn one_vessel() -> Job {
    of_two_layers("one-vessel", "One vessel (invented)", 1)
}

fn of_two_layers(id: &str, title: &str, count: usize) -> Job {
    let pack = |id: &str| Pack::of(id).unwrap();
    let two = vec![pack("gravel_1_8x1_4.half_ft3"), pack("carbon_coconut_12x40.1_ft3")];
    job(id, title, &vec![two; count])
}

/// The key a section is kept under.
pub fn key(job: &Job, section: SectionName) -> String {
    format!("bedwright/job/{}/{}", job.id, section.id())
}

/// The job's texts, by key.
pub fn texts(job: &Job) -> Vec<(String, String)> {
    SectionName::ALL.iter().map(|&name| (key(job, name), section_text(job, name))).collect()
}

/// Puts texts into local storage as they are, then loads the page again.
pub async fn put(page: &Page, texts: &[(String, String)]) {
    for (key, text) in texts {
        page.script(&format!("localStorage.setItem({}, {});", json!(key), json!(text))).await;
    }
    page.reload().await;
}

/// What local storage holds under a key.
pub async fn text(page: &Page, key: &str) -> Option<String> {
    page.script(&format!("return localStorage.getItem({});", json!(key))).await.as_str().map(str::to_owned)
}
