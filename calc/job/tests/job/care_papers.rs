//! What a card shows from visit to visit, and what card, due list and labels say on paper.

use std::sync::Arc;

use bedwright_job::Job;
use bedwright_job::answers::water::{WaterAsked, clean_loss, water_answers};
use bedwright_job::answers::{job_answers, vessel_answers};
use bedwright_job::care::due::{card_of, due_list};
use bedwright_job::care::happened::{Happened, Place, What};
use bedwright_job::care::question::Asked;
use bedwright_job::care::visit::{TestUnit, Visit, VisitField};
use bedwright_job::day::Day;
use bedwright_job::edit::Edit;
use bedwright_job::entry::Unit;
use bedwright_job::id::Id;
use bedwright_job::papers::{Cell, Paper, RowKind, due_list_sheet, service_card, stickers};
use bedwright_job::words::{Language, Manner};

use crate::jobs::{self, change, entry};

const TODAY: &str = "2026-10-02";

fn today() -> Day {
    Day::of(TODAY).unwrap()
}

fn place() -> Place {
    Place { vessel: Id::new("filter"), tag: "CF-1".to_owned() }
}

fn changed(job: &mut Job, on: &str) {
    let id = Id::new(&format!("h{}", job.records.len()));
    let what = What::Changeout { place: place() };
    let happened = Happened { id, day: on.to_owned(), at: String::new(), by: String::new(), what };
    change(job, Edit::AddRecord(happened.record()));
}

fn visited(job: &mut Job, on: &str, entries: &[(VisitField, &str, Unit)]) -> Id {
    let id = Id::new(&format!("v{}", job.records.len()));
    let Place { vessel, tag } = place();
    let mut visit = Visit::new(id.clone(), on.to_owned(), vessel, tag, TestUnit::MilligramPerLitre);
    visit.by = "A. Elm (invented)".to_owned();
    for (field, text, unit) in entries {
        visit.put(*field, Some(entry(text, *unit)));
    }
    change(job, Edit::AddRecord(visit.record()));
    id
}

/// A year of an invented bed: a meter that was misread once, pressures that grow apart.
fn looked_after() -> Job {
    use VisitField::{Inlet, Meter, Outlet, PressureIn, PressureOut};
    let mut job = jobs::sample();
    changed(&mut job, "2026-01-01");
    let (gallons, psi, one) = (Unit::UsGallon, Unit::Psi, Unit::One);
    visited(&mut job, "2026-01-01", &[(Meter, "1000", gallons)]);
    visited(&mut job, "2026-03-02", &[(Meter, "7000", gallons), (PressureIn, "60", psi), (PressureOut, "57.5", psi)]);
    visited(&mut job, "2026-05-01", &[(Meter, "700", gallons), (Outlet, "0", one), (Inlet, "2", one)]);
    visited(
        &mut job,
        "2026-07-01",
        &[(Meter, "19000", gallons), (PressureIn, "4.1", Unit::Bar), (PressureOut, "3.5", Unit::Bar)],
    );
    visited(&mut job, "2026-08-01", &[(VisitField::Salt, "40", Unit::Pound)]);
    job
}

fn texts(paper: &Paper) -> Vec<String> {
    let text = |cell: &Cell| match cell {
        Cell::Text(text) | Cell::Large(text) | Cell::Pen(text) => text.clone(),
        Cell::Lines(lines) => lines.join(" "),
        Cell::Named { name, hint } => format!("{name} {hint}"),
        _ => String::new(),
    };
    paper.rows.iter().map(|row| row.cells.iter().map(text).collect::<Vec<_>>().join(" | ")).collect()
}

#[test]
fn water_and_pressure_stand_from_visit_to_visit_and_a_meter_that_fell_is_left_out() {
    let card = card_of(&looked_after(), &place(), today());
    // The visit that read neither isn't among them.
    let days: Vec<(String, i64)> = card.seen.iter().map(|seen| (seen.day.text(), seen.age)).collect();
    let wanted = [("2026-01-01", 0), ("2026-03-02", 60), ("2026-05-01", 120), ("2026-07-01", 181)];
    assert_eq!(days, wanted.map(|(day, age)| (day.to_owned(), age)));
    let gallons: Vec<Option<f64>> = card
        .seen
        .iter()
        .map(|seen| seen.through.map(|through| (Unit::UsGallon.from_si(through.value) * 1e6).round() / 1e6))
        .collect();
    assert_eq!(gallons, [Some(0.0), Some(6000.0), None, Some(18_000.0)]);
    assert_eq!(card.seen.iter().map(|seen| seen.left_out).collect::<Vec<_>>(), [false, false, true, false]);
    let lost: Vec<Option<f64>> = card.seen.iter().map(|seen| seen.lost().map(|lost| lost.value)).collect();
    assert!((Unit::Psi.from_si(lost[1].unwrap()) - 2.5).abs() < 1e-9);
    assert!((lost[3].unwrap() / 1e5 - 0.6).abs() < 1e-9);
    assert_eq!((lost[0], lost[2]), (None, None));
}

#[test]
fn two_pressures_the_wrong_way_round_are_asked_about_and_kept() {
    let mut job = looked_after();
    let id = visited(
        &mut job,
        "2026-09-01",
        &[(VisitField::PressureIn, "52", Unit::Psi), (VisitField::PressureOut, "60", Unit::Psi)],
    );
    let card = card_of(&job, &place(), today());
    let question = card.questions.iter().find(|question| question.visit.as_ref() == Some(&id)).unwrap();
    assert!(matches!(question.asked, Asked::PressureRose { .. }));
    let said = Manner::default().question(question);
    assert!(said.contains("swapped?") && said.contains("60 psi") && said.contains("52 psi"), "{said}");
    assert!(card.seen.last().unwrap().lost().unwrap().value < 0.0);
}

#[test]
fn the_clean_bed_loses_on_the_card_what_the_water_side_says() {
    let job = jobs::sample();
    let vessel = vessel_answers(job.vessel(&Id::new("filter")).unwrap(), &job.plan_of(&Id::new("filter")));
    let water = water_answers(&vessel, &WaterAsked::of(&job, &vessel.id));
    let loss = clean_loss(&job, &vessel).unwrap();
    assert_eq!(Some(&loss), water.service.as_ref().and_then(|served| served.usual.as_ref()).map(|usual| &usual.loss));
    assert!(loss.value.value > 0.0);
}

#[test]
fn the_card_on_paper_says_the_front_answer_first_and_every_visit_once() {
    let job = looked_after();
    let card = card_of(&job, &place(), today());
    for language in Language::ALL {
        let manner = Manner { language, ..Manner::default() };
        let paper = service_card(&job, &card, None, manner, TODAY);
        let lines = texts(&paper);
        assert!(lines[0].contains(manner.care_mark(card.mark)), "{}", lines[0]);
        assert_eq!(lines[1], manner.care_reason(&card.reason));
        let mut keys: Vec<&str> = paper.rows.iter().map(|row| row.key.as_str()).collect();
        keys.sort_unstable();
        keys.dedup();
        assert_eq!(keys.len(), paper.rows.len(), "a key twice");
        let visits = paper.rows.iter().filter(|row| row.key.starts_with("visit:")).count();
        assert_eq!(visits, card.bed.visits.len());
        assert!(paper.rows.iter().all(|row| row.cells.len() <= paper.columns.len()));
        assert!(paper.title_block.document.value.ends_with("-CF-1"));
        assert!(paper.notes.len() >= 2, "{:?}", paper.notes);
        // What was read stands there in its own unit.
        assert!(lines.iter().any(|line| line.contains("4.1 / 3.5 bar")), "{lines:#?}");
        assert!(lines.iter().any(|line| line.contains("60 / 57.5 psi")), "{lines:#?}");
    }
}

#[test]
fn of_many_visits_the_latest_are_printed_and_the_others_counted() {
    let mut job = jobs::sample();
    changed(&mut job, "2026-01-01");
    for after in 0..70 {
        let on = Day::of("2026-01-02").unwrap().plus(after).text();
        visited(&mut job, &on, &[(VisitField::Outlet, "0", Unit::One)]);
    }
    let card = card_of(&job, &place(), today());
    let paper = service_card(&job, &card, None, Manner::default(), TODAY);
    let visits: Vec<String> = texts(&paper)
        .into_iter()
        .zip(&paper.rows)
        .filter(|(_, row)| row.key.starts_with("visit:"))
        .map(|(text, _)| text)
        .collect();
    assert_eq!(visits.len(), 60);
    assert!(visits[0].starts_with(&Day::of("2026-01-02").unwrap().plus(69).text()));
    assert!(texts(&paper).iter().any(|line| line.ends_with(": 10.")));
}

#[test]
fn the_due_list_on_paper_has_every_line_once_and_what_to_order_first() {
    let (mut far, mut spent) = (looked_after(), jobs::sample());
    (far.id, spent.id) = (Id::new("far"), Id::new("spent"));
    for job in [&mut far, &mut spent] {
        job.head.body.owner = "Tarn Water (invented)".to_owned();
    }
    visited(&mut spent, "2026-10-01", &[(VisitField::Outlet, "0.3", Unit::One)]);
    let jobs: Vec<Arc<Job>> = [far, spent].into_iter().map(Arc::new).collect();
    let rows = due_list(jobs.iter(), today());
    let paper = due_list_sheet(&rows, jobs.iter().map(AsRef::as_ref), Manner::default(), TODAY);
    let lines = texts(&paper);
    let items: Vec<&String> =
        lines.iter().zip(&paper.rows).filter(|(_, row)| row.kind == RowKind::Item).map(|(line, _)| line).collect();
    assert_eq!(items.len(), 2);
    assert!(items[0].contains("0.3 mg/L on 2026-10-01") && items[0].contains("CF-1: new bed"), "{}", items[0]);
    assert_eq!(lines.iter().zip(&paper.rows).filter(|(_, row)| row.kind == RowKind::Heading).count(), 2);
    assert_eq!(paper.title_block.owner.value, "Tarn Water (invented)");
    assert_eq!(paper.title_block.document.value, "DL-2026-10-02");
    // Of two owners neither stands on it.
    let mut other = Job::clone(&jobs[0]);
    other.head.body.owner = "Beck Water (invented)".to_owned();
    let all = jobs.iter().map(AsRef::as_ref).chain([&other]);
    assert_eq!(due_list_sheet(&rows, all, Manner::default(), TODAY).title_block.owner.value, "");
    // Nothing due is said too.
    let none = due_list_sheet(&[], jobs.iter().map(AsRef::as_ref), Manner::default(), TODAY);
    assert_eq!(none.rows.len(), 1);
}

#[test]
fn a_label_says_what_is_due_next_where_the_card_knows_it_and_leaves_a_line_where_not() {
    let mut job = jobs::sample();
    let due = |job: &Job, tag: &str| {
        let (answers, bill) = job_answers(job);
        let all = stickers(job, &answers, &bill, Manner::default(), TODAY, 62.0);
        let label = all.iter().find(|label| label.title == tag).unwrap();
        label.lines.iter().find(|(name, _)| name == "Next due").unwrap().1.clone()
    };
    assert_eq!(due(&job, "CF-1"), "");
    changed(&mut job, "2026-09-15");
    visited(&mut job, "2026-10-01", &[(VisitField::Outlet, "0", Unit::One)]);
    // A visit a month after the last is common practice, no source; the card says when.
    let card = card_of(&job, &place(), today());
    assert_eq!(due(&job, "CF-1"), format!("{} · visit", card.next_visit.text()));
    assert_eq!(due(&job, "CF-2"), "", "nothing was written down of it");
    visited(&mut job, "2026-10-02", &[(VisitField::Outlet, "0.3", Unit::One)]);
    assert_eq!(due(&job, "CF-1"), "2026-10-02 · new bed");
}
