//! How long a bed lasts, from what was typed: one view, its figures, and what a mistake does.

use bedwright_calc::fill::Role;
use bedwright_calc::hydraulics::Purpose;
use bedwright_calc::material::Pack;
use bedwright_calc::quantity::Mark;
use bedwright_job::answers::life::{LifeName, LimitedBy};
use bedwright_job::answers::vessel_answers;
use bedwright_job::answers::water::{WaterAnswers, WaterAsked, bed_expected, water_answers};
use bedwright_job::care::card::{CareMark, CareReason, HowLong};
use bedwright_job::care::due::card_of;
use bedwright_job::care::happened::{Happened, Place, What};
use bedwright_job::care::run::SeenRun;
use bedwright_job::care::visit::{TestUnit, Visit, VisitField};
use bedwright_job::day::Day;
use bedwright_job::edit::{DutyChoice, Edit, LayerChoice, WaterOf};
use bedwright_job::entry::{Entry, Unit};
use bedwright_job::field::WaterField;
use bedwright_job::id::Id;
use bedwright_job::papers::calculation_sheet;
use bedwright_job::saved::{job_text, read_job};
use bedwright_job::sections::survey::{Standing, SurveyEntry};
use bedwright_job::words::Manner;
use bedwright_job::{Job, apply};

use crate::jobs;

/// The sample's first vessel with this medium in its top layer and these entries, worked out.
fn worked(material: &str, entries: &[(WaterField, &str, Unit)]) -> (Job, WaterAnswers) {
    let mut job = jobs::sample();
    let device = Id::new("test");
    let vessel = job.survey.body.vessels[0].id.clone();
    let top = job.plan_of(&vessel).layers.iter().rev().find(|layer| layer.role == Role::Media).unwrap().id.clone();
    // As the page does it: the medium with its most usual pack.
    let pack = Pack::of_material(material).first().unwrap().id.to_string();
    for choice in [LayerChoice::Material(material.to_owned()), LayerChoice::Pack(pack)] {
        apply(&mut job, Edit::Layer { vessel: vessel.clone(), layer: top.clone(), choice }, &device).unwrap();
    }
    for (field, text, unit) in entries {
        let of = if WaterField::OF_ANALYSIS.contains(field) { WaterOf::Site } else { WaterOf::Vessel(vessel.clone()) };
        let entry = Entry { text: (*text).to_owned(), unit: *unit, meaning: None };
        let entry = Some(SurveyEntry { entry, standing: Standing::Measured });
        apply(&mut job, Edit::Water { of, field: *field, entry }, &device).unwrap();
    }
    let survey = job.vessel(&vessel).unwrap().clone();
    let answers = vessel_answers(&survey, &job.plan_of(&vessel));
    let water = water_answers(&answers, &WaterAsked::of(&job, &vessel));
    (job, water)
}

fn figure(water: &WaterAnswers, name: LifeName) -> Option<f64> {
    water.life.lines.iter().find(|(there, _)| *there == name).map(|(_, figure)| figure.value.si())
}

const SOFT: &[(WaterField, &str, Unit)] = &[
    (WaterField::DailyUse, "300", Unit::UsGallonPerDay),
    (WaterField::Ph, "6.2", Unit::One),
    (WaterField::Alkalinity, "30", Unit::AsCalciumCarbonate),
    (WaterField::CalciumHardness, "1.5", Unit::GrainPerGallon),
];

#[test]
fn a_bed_of_calcite_says_when_it_is_filled_up_and_what_it_takes_in_a_year() {
    let (_, water) = worked("calcite_16x40", SOFT);
    let life = &water.life;
    assert_eq!((life.problems.as_slice(), life.missing.as_slice()), (&[][..], &[][..]));
    let expected = life.expected.as_ref().unwrap();
    assert_eq!(expected.limited_by, LimitedBy::Dissolving);
    assert!(expected.longest.as_ref().unwrap().value >= expected.time.value);
    // What it takes up is bought again: a month of it twelve times.
    let month = figure(&water, LifeName::CalciteMonth).unwrap();
    let year = life.year.media.as_ref().unwrap().value.value;
    assert!((year - 12.0 * month).abs() < 1e-9 * year);
    assert!(life.year.packs.as_ref().unwrap().value > 0.0);
    // A milligram dissolved is one of hardness.
    let taken = figure(&water, LifeName::Calcite).unwrap();
    let (before, after) = (figure(&water, LifeName::HardnessBefore), figure(&water, LifeName::HardnessAfter));
    assert!((after.unwrap() - before.unwrap() - taken).abs() < 1e-9);
    assert!(taken <= figure(&water, LifeName::ToSaturation).unwrap());
    assert!(figure(&water, LifeName::PhAfter).unwrap() > 6.2);
    assert!(Manner::default().changes_most(expected).unwrap().contains('%'));
}

/// A card counts on what water and bed say, from the day the bed was put in; the same figure as on the vessel's page.
#[test]
fn a_card_of_a_bed_that_dissolves_says_when_it_is_filled_up() {
    let (mut job, water) = worked("calcite_16x40", SOFT);
    let vessel = job.survey.body.vessels[0].clone();
    let place = Place { vessel: vessel.id.clone(), tag: vessel.tags.first().cloned().unwrap_or_default() };
    let answers = vessel_answers(&vessel, &job.plan_of(&vessel.id));
    let expected = water.life.expected.clone().unwrap();
    assert_eq!(bed_expected(&job, &answers), Some(expected.clone()));
    let begun = Day::of("2026-01-15").unwrap();
    let what = What::Changeout { place: place.clone() };
    let happened = Happened { id: Id::new("h"), day: begun.text(), at: String::new(), by: String::new(), what };
    apply(&mut job, Edit::AddRecord(happened.record()), &Id::new("test")).unwrap();
    let days = expected.time.value.value / 86_400.0;
    let card = card_of(&job, &place, begun);
    let life = card.life.unwrap();
    assert_eq!(life.long, HowLong::Worked { time: expected.time.value, limited_by: LimitedBy::Dissolving });
    let ends = life.ends.unwrap();
    assert_eq!(ends.since(begun), days.floor() as i64);
    assert_eq!(card.new_bed, Some(ends));
    let manner = Manner::default();
    assert!(manner.assumed_life(&card).contains("dissolved"), "{}", manner.assumed_life(&card));
    let before = Day::numbered(ends.number() - 20.0).unwrap();
    let (on, unit) = (before.text(), TestUnit::MilligramPerLitre);
    let visit = Visit::new(Id::new("v"), on, place.vessel.clone(), place.tag.clone(), unit);
    apply(&mut job, Edit::AddRecord(visit.record()), &Id::new("test")).unwrap();
    let soon = card_of(&job, &place, before);
    assert_eq!((soon.mark, soon.reason), (CareMark::NextVisit, CareReason::DueSoon { day: ends, fill_up: true }));
    assert_eq!(card_of(&job, &place, ends).mark, CareMark::OrderNow);
}

/// What is usual holds where it is shorter: common practice, no source, carbon lasts six to twelve months.
#[test]
fn a_carbon_bed_that_holds_ten_years_of_chlorine_is_changed_as_usual_all_the_same() {
    let entries = [
        (WaterField::DailyUse, "1", Unit::UsGallonPerDay),
        (WaterField::Chlorine, "1", Unit::MilligramPerLitre),
        (WaterField::MediaCapacity, "100", Unit::GramPerLitre),
    ];
    let (job, water) = worked("carbon_coconut_12x40", &entries);
    assert!(water.life.expected.is_some_and(|expected| expected.time.value.value > 10.0 * 365.0 * 86_400.0));
    let vessel = job.survey.body.vessels[0].clone();
    let place = Place { vessel: vessel.id.clone(), tag: vessel.tags.first().cloned().unwrap_or_default() };
    let card = card_of(&job, &place, Day::of("2026-01-15").unwrap());
    assert!(matches!(card.life.map(|life| life.long), Some(HowLong::Usual { months: 12, .. })));
}

/// By hand: 2 psi a day after the wash, 4 after two, 6 after three, so that 10 psi are lost after five days.
#[test]
fn a_filter_says_how_long_it_runs_by_the_pressures_that_visits_saw() {
    let (mut job, _) = worked("sand_20x30", &[]);
    let device = Id::new("test");
    let vessel = job.survey.body.vessels[0].clone();
    let place = Place { vessel: vessel.id.clone(), tag: vessel.tags.first().cloned().unwrap_or_default() };
    let purpose = DutyChoice::Purpose(Some(Purpose::Sediment));
    apply(&mut job, Edit::Duty { vessel: vessel.id.clone(), choice: purpose }, &device).unwrap();
    let typed = |text: &str, unit: Unit| Some(Entry { text: text.to_owned(), unit, meaning: None });
    let manner = Manner::default();
    let today = Day::of("2026-03-01").unwrap();
    let answers = vessel_answers(&vessel, &job.plan_of(&vessel.id));
    for (at, (days, after)) in [("1", "48"), ("2", "46"), ("3", "44")].into_iter().enumerate() {
        let on = Day::of("2026-01-01").unwrap().plus(at as i64).text();
        let id = Id::new(&format!("v{at}"));
        let mut visit = Visit::new(id, on, place.vessel.clone(), place.tag.clone(), TestUnit::MilligramPerLitre);
        visit.put(VisitField::PressureIn, typed("50", Unit::Psi));
        visit.put(VisitField::PressureOut, typed(after, Unit::Psi));
        visit.put(VisitField::SinceWash, typed(days, Unit::Day));
        apply(&mut job, Edit::AddRecord(visit.record()), &device).unwrap();
    }
    assert_eq!(card_of(&job, &place, today).run, Some(SeenRun::NoTerminal));
    let water = water_answers(&answers, &WaterAsked::of(&job, &vessel.id));
    assert!(water.life.missing.contains(&WaterField::TerminalDrop));
    let of = WaterOf::Vessel(vessel.id.clone());
    let entry = typed("10", Unit::Psi).map(|entry| SurveyEntry { entry, standing: Standing::Measured });
    apply(&mut job, Edit::Water { of, field: WaterField::TerminalDrop, entry }, &device).unwrap();
    let Some(SeenRun::Told(run, 3)) = card_of(&job, &place, today).run else { panic!("a run") };
    assert!((run.time.value.value / 86_400.0 - 5.0).abs() < 1e-9);
    let water = water_answers(&answers, &WaterAsked::of(&job, &vessel.id));
    assert!((figure(&water, LifeName::RunByDrop).unwrap() / 86_400.0 - 5.0).abs() < 1e-9);
    assert!(water.life.missing.iter().all(|field| *field != WaterField::MediaCapacity), "{:?}", water.life.missing);
    let said = manner.seen_run(&SeenRun::Told(run, 3));
    assert!(said.starts_with("5.0 days") || said.starts_with("5 days"), "{said}");
    // Another bed begins anew: what was read of the one before says nothing of it.
    let what = What::Changeout { place: place.clone() };
    let happened =
        Happened { id: Id::new("h"), day: "2026-02-01".to_owned(), at: String::new(), by: String::new(), what };
    apply(&mut job, Edit::AddRecord(happened.record()), &device).unwrap();
    assert_eq!(card_of(&job, &place, today).run, None);
    assert!(WaterAsked::of(&job, &vessel.id).drops.is_empty());
}

#[test]
fn where_typed_figures_come_from_stands_on_the_calculation_sheet_and_in_the_quote() {
    let entries = [
        (WaterField::DailyUse, "300", Unit::UsGallonPerDay),
        (WaterField::Chlorine, "1", Unit::MilligramPerLitre),
        (WaterField::MediaCapacity, "100", Unit::GramPerLitre),
    ];
    let (mut job, _) = worked("carbon_coconut_12x40", &entries);
    let vessel = job.survey.body.vessels[0].clone();
    let grounds = "a paper that came with the bags (invented)";
    let choice = DutyChoice::Grounds(grounds.to_owned());
    let inverse = apply(&mut job, Edit::Duty { vessel: vessel.id.clone(), choice }, &Id::new("test")).unwrap();
    let answers = vessel_answers(&vessel, &job.plan_of(&vessel.id));
    let water = water_answers(&answers, &WaterAsked::of(&job, &vessel.id));
    let manner = Manner::default();
    assert!(manner.life_quoted(&water.life, 1).unwrap().contains(grounds));
    let paper = calculation_sheet(&job, &answers, Some(&water), manner, "2026-01-01");
    assert!(format!("{:?}", paper.rows).contains(grounds));
    // It is kept with the job.
    let read = read_job(&job_text(&job)).unwrap();
    assert_eq!(read.site.body.duty_of(&vessel.id).grounds, grounds);
    apply(&mut job, inverse.unwrap(), &Id::new("test")).unwrap();
    assert_eq!(job.site.body.duty_of(&vessel.id).grounds, "");
}

#[test]
fn a_line_for_the_quote_says_how_long_it_lasts_and_what_it_takes_in_a_year() {
    let (_, water) = worked("calcite_16x40", SOFT);
    let manner = Manner::default();
    let said = manner.life_quoted(&water.life, 2).unwrap();
    let year = manner.year_of(&water.life).unwrap();
    assert!(said.contains(&year) && said.contains("each") && said.contains("dissolved"), "{said}");
    assert_eq!(manner.life_quoted(&worked("calcite_16x40", &[]).1.life, 1), None);
}

#[test]
fn without_an_analysis_it_names_what_to_type() {
    let (_, water) = worked("calcite_16x40", &[]);
    assert!(water.life.expected.is_none());
    let missing = Manner::default().life_missing(&water.life, true).unwrap();
    for name in ["Water used a day", "pH", "Alkalinity"] {
        assert!(missing.contains(name), "{missing}");
    }
}

#[test]
fn a_slip_in_the_analysis_leaves_the_backwash_as_it_was() {
    let mut entries = SOFT.to_vec();
    entries[3] = (WaterField::CalciumHardness, "25 mg/L", Unit::AsCalciumCarbonate);
    let (_, water) = worked("calcite_16x40", &entries);
    assert!(water.bed.is_some());
    assert!(water.life.expected.is_none());
    let (_, field, misread) = &water.reading.misread[0];
    assert_eq!(*field, WaterField::CalciumHardness);
    let said = Manner::default().misread(misread, Unit::AsCalciumCarbonate);
    assert!(said.contains("as calcium carbonate, or as the ion?"), "{said}");
}

#[test]
fn impossible_and_satisfied_waters_are_said() {
    let mut entries = SOFT.to_vec();
    entries[1] = (WaterField::Ph, "10.5", Unit::One);
    entries[2] = (WaterField::Alkalinity, "0", Unit::AsCalciumCarbonate);
    let (_, water) = worked("calcite_16x40", &entries);
    assert_eq!(water.life.problems.len(), 1, "{:?}", water.life.problems);
    entries[1] = (WaterField::Ph, "8.6", Unit::One);
    entries[2] = (WaterField::Alkalinity, "220", Unit::AsCalciumCarbonate);
    entries[3] = (WaterField::CalciumHardness, "12", Unit::GrainPerGallon);
    let (_, water) = worked("calcite_16x40", &entries);
    let (_, most) = water.life.lines.iter().find(|(name, _)| *name == LifeName::ToSaturation).unwrap();
    assert!(most.value.si() < 0.0 && !most.cautions.is_empty());
    assert!(water.life.expected.is_none());
    assert!(water.verdicts.iter().any(|verdict| verdict.mark == Mark::Caution), "limits of the guide");
}

/// 35 Illinois Administrative Code 604.805(c): 20 000 gr/cu ft at 6 lb; of 20 gr/gal that is 1000 gal a cubic foot.
#[test]
fn a_softener_counts_on_what_the_rule_lets_it() {
    let entries = [
        (WaterField::DailyUse, "200", Unit::UsGallonPerDay),
        (WaterField::CalciumHardness, "20", Unit::GrainPerGallon),
        (WaterField::SaltDose, "6", Unit::PoundPerCubicFoot),
        (WaterField::Reserve, "0", Unit::Percent),
    ];
    let (job, water) = worked("resin_cation", &entries);
    let vessel = job.survey.body.vessels[0].id.clone();
    let answers = vessel_answers(&job.vessel(&vessel).unwrap().clone(), &job.plan_of(&vessel));
    let resin: f64 = answers
        .planned
        .iter()
        .zip(&answers.layers)
        .filter(|(layer, _)| layer.role == Role::Media)
        .map(|(_, layer)| layer.fill().unwrap().volume.value.value)
        .sum();
    let gallons = figure(&water, LifeName::Water).unwrap() / 0.003_785_411_784;
    assert!((gallons / (1000.0 * resin / 0.028_316_846_592) - 1.0).abs() < 2e-3, "{gallons}");
    assert!(water.life.year.salt.is_some() && water.life.year.wash_water.is_some());
}

// The power of another library than the one that is tried.
#[allow(clippy::disallowed_methods)]
#[test]
fn carbon_says_what_chlorine_leaves_it() {
    let entries = [
        (WaterField::DailyUse, "200", Unit::UsGallonPerDay),
        (WaterField::Chlorine, "2", Unit::MilligramPerLitre),
        (WaterField::HalfLength, "3", Unit::Centimetre),
        (WaterField::TestVelocity, "3.6", Unit::MetrePerHour),
    ];
    let (_, water) = worked("carbon_coconut_12x40", &entries);
    assert!((figure(&water, LifeName::HalfTime).unwrap() - 30.0).abs() < 1e-9);
    let contact = water.service.as_ref().unwrap().usual.as_ref().unwrap().contact_time.value.value;
    let left = figure(&water, LifeName::ChlorineLeft).unwrap();
    assert!((left - 0.002 * (0.5_f64).powf(contact / 30.0)).abs() < 1e-15);
    let (_, water) = worked("carbon_coconut_12x40", &entries[..3]);
    assert!(water.life.missing.contains(&WaterField::TestVelocity), "a half-length alone says nothing");
}
