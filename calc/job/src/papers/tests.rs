//! What stands on the papers, counted by hand from what a job asks for.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::cmp::Ordering;
use std::collections::BTreeSet;

use proptest::prelude::*;

use super::*;
use crate::answers::water::{WaterAsked, water_answers};
use crate::answers::{job_answers, vessel_answers};
use crate::edit::{Edit, apply};
use crate::field::{LayerField, SurveyField};
use crate::id::Id;
use crate::job::Job;
use crate::reading::asked;
use crate::sample::sample_job;
use crate::sections::picking::PickField;
use crate::sections::survey::{Standing, SurveyEntry};
use crate::words::{Label, Manner};

const TODAY: &str = "2026-11-24";

fn sample() -> Job {
    sample_job(Id::new("sample"), [Id::new("filter"), Id::new("softener")], TODAY)
}

fn change(job: &mut Job, edit: Edit) {
    apply(job, edit, &Id::new("device")).unwrap();
}

fn place(job: &mut Job, key: &str, field: PickField, text: &str) {
    change(job, Edit::PickText { key: key.to_owned(), field, text: text.to_owned() });
}

fn list(job: &Job) -> Paper {
    pick_list(job, &job_answers(job).1, Manner::default(), TODAY)
}

/// The keys of what is picked, in the order of the list; what stands under them is told, not picked.
fn lines_of(paper: &Paper) -> Vec<String> {
    paper.rows.iter().filter(|row| row.kind == RowKind::Item).map(|row| row.key.clone()).collect()
}

fn cells<'a>(paper: &'a Paper, column: &str) -> Vec<&'a Cell> {
    let at = paper.columns.iter().position(|there| there.id == column).unwrap();
    paper.rows.iter().filter_map(|row| row.cells.get(at)).collect()
}

fn text(cell: &Cell) -> String {
    match cell {
        Cell::Empty | Cell::Tick(_) => String::new(),
        Cell::Text(text) | Cell::Large(text) | Cell::Pen(text) => text.clone(),
        Cell::Code { text, .. } => text.clone(),
        Cell::Picture(drawing) => drawing.description.clone(),
        Cell::Lines(lines) | Cell::Equation(lines) => lines.join("\n"),
        Cell::Named { name, hint } => format!("{name} {hint}"),
        Cell::Choice(choices) => choices.iter().map(|(_, name)| name.as_str()).collect::<Vec<_>>().join(" "),
    }
}

fn keys_are_single_and_rows_fit(paper: &Paper) {
    let keys: BTreeSet<&str> = paper.rows.iter().map(|row| row.key.as_str()).collect();
    assert_eq!(keys.len(), paper.rows.len(), "{:?}", paper.title);
    for row in &paper.rows {
        assert!(!row.cells.is_empty() && row.cells.len() <= paper.columns.len(), "{}", row.key);
    }
    assert!(paper.totals.is_empty() || paper.totals.len() == paper.columns.len());
}

#[test]
fn places_of_a_shelf_stand_as_they_are_counted() {
    let mut bins = ["B-10-1", "b-2-10", "B-2-9", "A-1", "B-02-9", "B-2"];
    bins.sort_by(|a, b| natural_order(a, b));
    assert_eq!(bins, ["A-1", "B-2", "B-02-9", "B-2-9", "b-2-10", "B-10-1"]);
    assert_eq!(natural_order("99999999999999999999999", "100000000000000000000000"), Ordering::Less);
}

proptest! {
    #[test]
    fn the_order_of_places_is_an_order(a in "[ab02 -]{0,6}", b in "[ab02 -]{0,6}", c in "[ab02 -]{0,6}") {
        prop_assert_eq!(natural_order(&a, &b), natural_order(&b, &a).reverse());
        prop_assert_eq!(natural_order(&a, &b) == Ordering::Equal, a == b);
        if natural_order(&a, &b).is_le() && natural_order(&b, &c).is_le() {
            prop_assert!(natural_order(&a, &c).is_le());
        }
    }
}

/// The sample, by hand: two filters of 2 bags of carbon each are 4; a softener of 4 packs of resin; its gravel of
/// 1/2 cu ft is one bag of 1/2 cu ft. A cap and grease for the whole job, three O-rings and three labels for three tags.
#[test]
fn the_pick_list_has_every_line_of_the_pooled_bill_once() {
    let job = sample();
    let (_, bill) = job_answers(&job);
    let paper = list(&job);
    keys_are_single_and_rows_fit(&paper);
    let keys = lines_of(&paper);
    // No bin was typed: in the order of the bill.
    assert_eq!(keys, bill.bill.pooled.iter().map(|line| line.item.key()).collect::<Vec<_>>());
    let quantity = |part: &str| {
        let at = keys.iter().position(|key| key.contains(part)).unwrap();
        text(cells(&paper, "quantity")[at])
    };
    for (part, wanted) in [
        ("carbon_coconut_12x40", "4"),
        ("resin_cation", "4"),
        ("gravel_1_16x1_8", "1"),
        ("riser_cap", "1"),
        ("silicone_grease", "1"),
        ("opening_o_ring", "3"),
        ("tag_label", "3"),
    ] {
        if part == "opening_o_ring" {
            // One line for each bore.
            let rings: u32 = (0..keys.len())
                .filter(|&at| keys[at].contains(part))
                .map(|at| text(cells(&paper, "quantity")[at]).parse::<u32>().unwrap())
                .sum();
            assert_eq!(rings.to_string(), wanted);
        } else {
            assert_eq!(quantity(part), wanted, "{part}");
        }
    }
}

#[test]
fn a_line_says_which_vessels_it_is_for() {
    let paper = list(&sample());
    let split = |part: &str| {
        let at = paper.rows.iter().position(|row| row.key.contains(part)).unwrap();
        text(cells(&paper, "for")[at])
    };
    assert_eq!(split("carbon_coconut_12x40"), "CF-1, CF-2: 2 each");
    assert_eq!(split("resin_cation"), "SO-1: 4");
    // One bore for all three.
    assert_eq!(split("opening_o_ring"), "CF-1, CF-2, SO-1: 1 each");
    // There is one for the job, and it comes back.
    assert_eq!(split("riser_cap"), "CF-1, CF-2, SO-1\ncomes back");
}

#[test]
fn lines_stand_in_the_order_of_their_bins_and_those_without_stand_last() {
    let mut job = sample();
    let keys = lines_of(&list(&job));
    place(&mut job, &keys[0], PickField::Bin, "C-10-1");
    place(&mut job, &keys[2], PickField::Bin, "C-9-1");
    place(&mut job, &keys[3], PickField::Bin, " a-1");
    let mut wanted = vec![keys[3].clone(), keys[2].clone(), keys[0].clone(), keys[1].clone()];
    wanted.extend(keys[4..].iter().cloned());
    assert_eq!(lines_of(&list(&job)), wanted);
}

#[test]
fn a_tick_shows_until_the_bill_changes_and_then_says_so() {
    let mut job = sample();
    let key = list(&job).rows[1].key.clone();
    let quantity: u32 = text(cells(&list(&job), "quantity")[1]).parse().unwrap();
    change(&mut job, Edit::Pick { key: key.clone(), picked: Some(quantity) });
    assert_eq!(cells(&list(&job), "check")[1], &Cell::Tick(true));
    change(&mut job, Edit::Pick { key: key.clone(), picked: Some(quantity + 2) });
    let paper = list(&job);
    assert_eq!(cells(&paper, "check")[1], &Cell::Tick(false));
    let said = format!("{} {}", Manner::default().label(Label::PickedThenChanged), quantity + 2);
    assert!(text(cells(&paper, "for")[1]).contains(&said));
}

#[test]
fn what_was_picked_and_is_no_longer_wanted_goes_back() {
    let mut job = sample();
    let key = list(&job).rows.iter().find(|row| row.key.contains("resin_cation")).unwrap().key.clone();
    change(&mut job, Edit::Pick { key: key.clone(), picked: Some(4) });
    change(&mut job, Edit::RemoveVessel(Id::new("softener")));
    let (_, bill) = job_answers(&job);
    let back = put_back(&job, &bill, Manner::default());
    assert_eq!((back.len(), back[0].picked), (1, 4));
    assert!(back[0].item.starts_with("Softening resin, cation"), "{}", back[0].item);
    let paper = list(&job);
    keys_are_single_and_rows_fit(&paper);
    let at = paper.rows.iter().position(|row| row.key == key).unwrap();
    assert_eq!(paper.rows[at - 1].kind, RowKind::Heading);
    // A key from elsewhere is shown as it is, not lost.
    change(&mut job, Edit::Pick { key: "part:of:another:version:1".to_owned(), picked: Some(1) });
    assert!(put_back(&job, &bill, Manner::default()).iter().any(|back| back.item == "part:of:another:version:1"));
}

/// 23 kg is the load constant of the revised lifting equation (NIOSH 94-110); a bag of 50 lb is 22.68 kg.
#[test]
fn a_bag_of_fifty_pounds_bears_no_mark_and_a_sack_of_25_kg_does() {
    use crate::edit::LayerChoice;
    let mut job = sample();
    let vessel = Id::new("softener");
    let layer = job.plan_of(&vessel).layers[0].id.clone();
    let weight = |job: &Job| {
        let paper = list(job);
        let at = paper.rows.iter().position(|row| row.key.contains("gravel_1_16x1_8")).unwrap();
        text(cells(&paper, "weight")[at])
    };
    assert_eq!(weight(&job), "50 lb");
    let pack = LayerChoice::Pack("gravel_1_16x1_8.25_kg".to_owned());
    change(&mut job, Edit::Layer { vessel, layer, choice: pack });
    assert_eq!(weight(&job), "▲ 55 lb");
}

#[test]
fn the_title_block_says_whose_which_and_when() {
    let job = sample();
    let block = list(&job).title_block;
    assert_eq!(block.document.value, "PL-S-001");
    assert_eq!(block.job.value, "S-001");
    assert_eq!(block.date.value, TODAY);
    assert_eq!(block.sheet_number(2, 3), "2 of 3");
    assert!(block.title.value.contains(&job.head.body.title) && block.signed.value.is_empty());
    let mut later = job.clone();
    place(&mut later, "pack:x:y", PickField::Bin, "A-1");
    let number = |job: &Job| list(job).title_block.revision.value.parse::<u64>().unwrap();
    assert!(number(&later) > number(&job));
}

#[test]
fn every_sheet_of_the_sample_says_that_it_is_invented_and_an_aid() {
    let job = sample();
    let (_, bill) = job_answers(&job);
    let manner = Manner::default();
    for paper in [
        pick_list(&job, &bill, manner, TODAY),
        bill_of_materials(&job, &bill, manner, TODAY),
        survey_sheet(&job, None, manner, TODAY, false),
    ] {
        for label in [Label::SampleMark, Label::PlanningAid] {
            assert!(paper.notes.iter().any(|note| note == manner.label(label)), "{}", paper.title);
        }
    }
}

#[test]
fn the_bill_has_each_vessel_then_all_with_what_pooling_saves() {
    let job = sample();
    let (_, bill) = job_answers(&job);
    let paper = bill_of_materials(&job, &bill, Manner::default(), TODAY);
    keys_are_single_and_rows_fit(&paper);
    let headings: Vec<String> =
        paper.rows.iter().filter(|row| row.kind == RowKind::Heading).map(|row| text(&row.cells[0])).collect();
    assert_eq!(headings, ["CF-1, CF-2", "SO-1", Manner::default().label(Label::Pooled)]);
    let lines = bill.bill.pooled.len() + bill.bill.vessels.iter().map(|own| own.lines.len()).sum::<usize>();
    assert_eq!(paper.rows.iter().filter(|row| row.kind == RowKind::Item).count(), lines);
    // Two vessels would bring a cap each; the job needs one.
    let cap = paper.rows.iter().rfind(|row| row.key.contains("riser_cap")).unwrap();
    assert_eq!(text(&cap.cells[6]), "comes back");
}

#[test]
fn what_is_left_out_says_why() {
    let mut job = sample();
    let softener = Id::new("softener");
    change(&mut job, Edit::Survey { vessel: softener.clone(), field: SurveyField::NominalSize, entry: None });
    change(&mut job, Edit::Survey { vessel: softener.clone(), field: SurveyField::InsideDepth, entry: None });
    let (_, bill) = job_answers(&job);
    let out = left_out(&job, &bill, Manner::default());
    assert_eq!((out.len(), out[0].name.as_str()), (1, "SO-1"));
    let reasons = out[0].reasons.join(" ");
    assert!(reasons.contains("Nominal size") && reasons.contains("Inside depth"), "{reasons}");
    let paper = bill_of_materials(&job, &bill, Manner::default(), TODAY);
    assert!(paper.rows.iter().any(|row| row.kind == RowKind::Remark && text(&row.cells[0]).contains("SO-1")));
    assert!(list(&job).rows.iter().any(|row| row.kind == RowKind::Remark && text(&row.cells[0]).contains("SO-1")));
}

#[test]
fn a_layer_that_waits_for_what_is_below_it_is_named_too() {
    let mut job = sample();
    let filter = Id::new("filter");
    let bottom = job.plan_of(&filter).layers[0].id.clone();
    let edit = Edit::LayerEntry { vessel: filter, layer: bottom, field: LayerField::Amount, entry: None };
    change(&mut job, edit);
    let (_, bill) = job_answers(&job);
    let out = left_out(&job, &bill, Manner::default());
    let layers = job.plan_of(&Id::new("filter")).layers.len();
    assert!(layers > 1);
    assert_eq!(out[0].reasons.len(), layers, "one each: {:?}", out[0].reasons);
    assert!(out[0].reasons[1].ends_with("waits for what is below it"), "{:?}", out[0].reasons);
}

#[test]
fn the_form_has_a_line_for_every_entry_and_nothing_on_it() {
    let job = sample();
    for vessel in [None, Some(Id::new("filter"))] {
        let paper = survey_sheet(&job, vessel.as_ref(), Manner::default(), TODAY, false);
        keys_are_single_and_rows_fit(&paper);
        for field in SurveyField::ALL {
            let row = paper.rows.iter().find(|row| row.key == field.id()).unwrap();
            let known = vessel.is_some() && *field == SurveyField::NominalSize;
            assert_eq!(
                row.cells[1],
                Cell::Pen(if known { "12x52".to_owned() } else { String::new() }),
                "{}",
                field.id()
            );
        }
        let ticked = paper.rows.iter().flat_map(|row| &row.cells).any(|cell| match cell {
            Cell::Choice(choices) => choices.iter().any(|(ticked, _)| *ticked),
            _ => false,
        });
        assert!(!ticked);
        assert!(paper.rows.iter().any(|row| row.kind == RowKind::Sketch));
    }
}

#[test]
fn the_filled_sheet_says_what_is_known_and_how() {
    let mut job = sample();
    let filter = Id::new("filter");
    let paper = survey_sheet(&job, Some(&filter), Manner::default(), TODAY, true);
    keys_are_single_and_rows_fit(&paper);
    for field in asked(job.vessel(&filter).unwrap()) {
        assert!(paper.rows.iter().any(|row| row.key == field.id()), "{}", field.id());
    }
    let row = |paper: &Paper, field: SurveyField| {
        paper.rows.iter().find(|row| row.key == field.id()).unwrap().cells.iter().skip(1).map(text).collect::<Vec<_>>()
    };
    assert_eq!(row(&paper, SurveyField::Circumference), ["37.9", "in", "measured"]);
    // It names its unit itself.
    assert_eq!(row(&paper, SurveyField::SlotWidth), ["0.25 mm", "", "measured"]);
    let softener = survey_sheet(&job, Some(&Id::new("softener")), Manner::default(), TODAY, true);
    assert_eq!(row(&softener, SurveyField::InsideDepth), ["64", "in", "assumed"]);
    let nonsense = SurveyEntry {
        entry: crate::entry::Entry { text: "wide".to_owned(), unit: crate::entry::Unit::Inch, meaning: None },
        standing: Standing::Measured,
    };
    change(&mut job, Edit::Survey { vessel: filter.clone(), field: SurveyField::Wall, entry: Some(nonsense) });
    let paper = survey_sheet(&job, Some(&filter), Manner::default(), TODAY, true);
    let wall = row(&paper, SurveyField::Wall);
    assert_eq!(wall[0], "wide");
    assert!(wall[2].contains("isn't part of a number"), "{wall:?}");
}

/// What a line of a calculation sheet names by an index, and whether it says what that is.
fn unsaid(row: &Row) -> Vec<String> {
    let Some(Cell::Equation(lines)) = row.cells.get(2) else { return Vec::new() };
    let Some(Cell::Equation(result)) = row.cells.get(3) else { return Vec::new() };
    let equation = lines.first().map_or("", String::as_str);
    let said = lines.get(1).map_or("", String::as_str);
    let symbol = |letter: char| letter.is_alphabetic() || letter.is_ascii_digit() || letter == '_' || letter == ',';
    let named = equation.split(|letter| !symbol(letter)).filter(|word| word.contains('_') && *word != "Σ_d");
    let missing = named.filter(|word| {
        let value = format!("{word}\u{a0}=");
        // Given as a value, found by this line, or said by a clause of it.
        !(said.contains(&value) || result[0].starts_with(&value) || equation.contains(&format!("; {word} = ")))
    });
    missing.map(str::to_owned).collect()
}

#[test]
fn every_line_of_the_calculation_sheet_says_what_its_symbols_are() {
    let job = sample();
    for vessel in &job.survey.body.vessels {
        let answers = vessel_answers(vessel, &job.plan_of(&vessel.id));
        let water = water_answers(&answers, &WaterAsked::of(&job, &vessel.id));
        let paper = calculation_sheet(&job, &answers, Some(&water), Manner::default(), TODAY);
        keys_are_single_and_rows_fit(&paper);
        let equations: Vec<&Row> =
            paper.rows.iter().filter(|row| matches!(row.cells.get(3), Some(Cell::Equation(_)))).collect();
        assert!(equations.len() > 150, "{}", equations.len());
        for row in equations {
            assert_eq!(unsaid(row), Vec::<String>::new(), "{row:?}");
        }
        // Numbered through, and no symbol twice with two values.
        let mut values: Vec<(&str, &str)> = Vec::new();
        for (at, row) in
            paper.rows.iter().filter(|row| row.kind == RowKind::Item && text(&row.cells[0]) != "–").enumerate()
        {
            assert_eq!(text(&row.cells[0]), (at + 1).to_string());
            if let Some(Cell::Equation(result)) = row.cells.get(3) {
                let (symbol, value) = result[0].split_once("\u{a0}= ").unwrap();
                assert!(
                    symbol == "p" || !values.iter().any(|(there, other)| *there == symbol && *other != value),
                    "{row:?}"
                );
                values.push((symbol, value));
            }
        }
    }
}

#[test]
fn an_empty_job_has_papers_too() {
    let job = Job::new(Id::new("none-yet"), TODAY);
    let (_, bill) = job_answers(&job);
    let manner = Manner { metric: true, ..Manner::default() };
    for paper in [
        pick_list(&job, &bill, manner, TODAY),
        bill_of_materials(&job, &bill, manner, TODAY),
        survey_sheet(&job, Some(&Id::new("gone")), manner, TODAY, true),
    ] {
        keys_are_single_and_rows_fit(&paper);
        assert!(!paper.rows.is_empty());
        assert!(paper.title_block.document.value.ends_with("noneye"), "{}", paper.title_block.document.value);
    }
}

#[test]
fn the_section_has_a_sheet_of_its_own_with_every_figure_of_the_picture_read_out() {
    let job = sample();
    let vessel = &job.survey.body.vessels[0];
    let answers = vessel_answers(vessel, &job.plan_of(&vessel.id));
    let water = water_answers(&answers, &WaterAsked::of(&job, &vessel.id));
    let besides = crate::drawing::Besides::new(Some(&water), None);
    let paper = section_sheet(&job, &answers, &besides, Manner::default(), TODAY);
    let told: Vec<String> = paper.rows.iter().flat_map(|row| &row.cells).map(text).collect();
    assert_eq!(told.len(), 1);
    for part in ["inside depth", "Layer 1", "Layer 2", "coldest water", "warmest water", "Freeboard"] {
        assert!(told[0].contains(part), "{part} in {}", told[0]);
    }
    assert_eq!(paper.title_block.title.value, "Section to scale, Quillmoss Laundry (sample)");
    assert!(paper.title_block.document.value.starts_with("SC-"), "{}", paper.title_block.document.value);
    assert!(paper.notes.iter().any(|note| note == Manner::default().label(Label::PlanningAid)));
}

#[test]
fn a_file_of_the_section_is_called_after_the_job_the_vessel_and_the_day_whatever_they_are_called() {
    let mut job = sample();
    assert_eq!(section_file(&job, "CF-1", TODAY), "Quillmoss-Laundry-sample_CF-1_2026-11-24");
    job.head.body.title = "../a\\b:c*?\"<>|\u{202e}né 🚿\0".to_owned();
    assert_eq!(section_file(&job, "A/B, C", TODAY), "a-b-c-né_A-B-C_2026-11-24");
    job.head.body.title = " \n".to_owned();
    assert!(section_file(&job, "F", TODAY).ends_with("_F_2026-11-24"));
    job.head.body.title = "x".repeat(100_000);
    assert!(section_file(&job, &"y".repeat(100_000), TODAY).len() < 120);
}
