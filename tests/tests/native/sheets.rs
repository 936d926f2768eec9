//! Which formulas stand on the printed sheets that the journey `checked` has worked out again from their text: those and
//! no others may say so.

#[path = "../journeys/unlike.rs"]
mod unlike;

use std::collections::BTreeSet;

use bedwright_calc::quantity::{Check, Formula};
use bedwright_job::Job;
use bedwright_job::answers::vessel_answers;
use bedwright_job::answers::water::{WaterAsked, water_answers};
use bedwright_job::papers::formulas_of_sheet;
use bedwright_job::words::Manner;

/// Ids of the formulas in numbered lines of a job's sheets.
fn printed(job: &Job) -> BTreeSet<&'static str> {
    let mut found = BTreeSet::new();
    for vessel in &job.survey.body.vessels {
        let answers = vessel_answers(vessel, &job.plan_of(&vessel.id));
        let water = water_answers(&answers, &WaterAsked::of(job, &vessel.id));
        found.extend(formulas_of_sheet(&answers, Some(&water), Manner::default()).iter().map(|formula| formula.id()));
    }
    found
}

#[test]
fn the_formulas_said_to_be_worked_again_from_paper_are_those_on_the_paper() {
    let mut found = printed(&unlike::sample());
    found.extend(printed(&unlike::vessels()));
    let claims = |formula: &&Formula| formula.checks().contains(&Check::PrintedSheet);
    let said: BTreeSet<&str> = Formula::ALL.iter().filter(claims).map(|formula| formula.id()).collect();
    let missing: Vec<_> = found.difference(&said).collect();
    let hopeful: Vec<_> = said.difference(&found).collect();
    assert!(missing.is_empty(), "on the sheets, and not said in formulas.csv: {missing:?}");
    assert!(hopeful.is_empty(), "said in formulas.csv, and on no sheet: {hopeful:?}");
    let sheets = [unlike::sample(), unlike::vessels()].map(|job| job.survey.body.vessels.len());
    assert_eq!(Check::PrintedSheet.count().0 as usize, sheets.iter().sum::<usize>(), "{sheets:?}");
}

#[test]
fn nothing_typed_is_said_to_be_a_formula_that_is_checked() {
    assert!(Formula::Given.checks().is_empty());
}
