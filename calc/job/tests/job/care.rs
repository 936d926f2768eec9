//! The card of a tag, from records as somebody would add them.

use std::sync::Arc;

use bedwright_calc::fill::SurfaceState;
use bedwright_job::answers::vessel_answers;
use bedwright_job::care::bed_life::Lives;
use bedwright_job::care::card::{Card, CareMark, CareReason, HowLong};
use bedwright_job::care::due::{card_of, due_list};
use bedwright_job::care::forecast::{Axis, NotYet};
use bedwright_job::care::happened::{Expected, Happened, Place, What, follows};
use bedwright_job::care::question::Asked;
use bedwright_job::care::replacement::replacement_job;
use bedwright_job::care::visit::{Drain, TestUnit, Visit, VisitField};
use bedwright_job::day::Day;
use bedwright_job::entry::{Entry, Unit};
use bedwright_job::evidence::{evidence_of, withdrawal};
use bedwright_job::id::Id;
use bedwright_job::loading::{load_answers, to_sign};
use bedwright_job::prices::{PriceKind, PriceRow};
use bedwright_job::saved::{is_records, job_text, parts_from, read_job, read_records, records_text};
use bedwright_job::words::Manner;
use bedwright_job::{Edit, Job, apply};

use crate::jobs;

fn typed(text: &str, unit: Unit) -> Entry {
    Entry { text: text.to_owned(), unit, meaning: None }
}

fn day(text: &str) -> Day {
    Day::of(text).unwrap()
}

/// The invented sample, whose first vessel is a carbon filter for chlorine.
fn job() -> (Job, Place) {
    let job = jobs::sample();
    let vessel = &job.survey.body.vessels[0];
    let place = Place { vessel: vessel.id.clone(), tag: vessel.tags.first().cloned().unwrap_or_default() };
    (job, place)
}

fn add(job: &mut Job, record: bedwright_job::job::Record) {
    apply(job, Edit::AddRecord(record), &Id::new("phone")).unwrap();
}

fn happen(job: &mut Job, on: &str, what: What) {
    let id = Id::new(&format!("h{}", job.records.len()));
    add(job, Happened { id, day: on.to_owned(), at: String::new(), by: String::new(), what }.record());
}

fn visit(job: &mut Job, place: &Place, on: &str, entries: &[(VisitField, &str, Unit)]) -> Id {
    let id = Id::new(&format!("v{}", job.records.len()));
    let mut visit =
        Visit::new(id.clone(), on.to_owned(), place.vessel.clone(), place.tag.clone(), TestUnit::MilligramPerLitre);
    for (field, text, unit) in entries {
        visit.put(*field, Some(typed(text, *unit)));
    }
    add(job, visit.record());
    id
}

fn outlet(text: &str) -> (VisitField, &str, Unit) {
    (VisitField::Outlet, text, Unit::One)
}

fn inlet(text: &str) -> (VisitField, &str, Unit) {
    (VisitField::Inlet, text, Unit::One)
}

fn meter(text: &str) -> (VisitField, &str, Unit) {
    (VisitField::Meter, text, Unit::UsGallon)
}

fn changed(job: &mut Job, place: &Place, on: &str) {
    happen(job, on, What::Changeout { place: place.clone() });
}

fn asked(card: &Card) -> Vec<&Asked> {
    card.questions.iter().map(|question| &question.asked).collect()
}

#[test]
fn the_first_outlet_that_is_not_nought_says_order_now() {
    let (mut job, place) = job();
    changed(&mut job, &place, "2026-06-01");
    for (on, shown) in [("2026-07-01", "0"), ("2026-08-01", "0"), ("2026-09-01", "<0.1")] {
        visit(&mut job, &place, on, &[outlet(shown), inlet("1.5")]);
        let card = card_of(&job, &place, day(on));
        assert_eq!(card.mark, CareMark::Fine, "{on}");
        assert!(matches!(card.forecast.reached, Err(NotYet::NothingFound { .. })));
    }
    visit(&mut job, &place, "2026-10-01", &[outlet("0.1"), inlet("1.5")]);
    let card = card_of(&job, &place, day("2026-10-02"));
    assert_eq!(card.mark, CareMark::OrderNow);
    assert!(matches!(card.reason, CareReason::OutletShows { outlet, .. } if outlet == 0.1));
    assert!(Manner::default().care_reason(&card.reason).contains("0.1 mg/L on 2026-10-01"));
}

/// Common practice, no source: carbon lasts six to twelve months.
#[test]
fn a_carbon_bed_is_old_after_a_year_and_a_new_one_begins_again() {
    let (mut job, place) = job();
    changed(&mut job, &place, "2025-11-20");
    visit(&mut job, &place, "2026-11-01", &[outlet("0")]);
    let card = card_of(&job, &place, day("2026-11-26"));
    assert_eq!(card.mark, CareMark::OrderNow);
    assert!(matches!(card.reason, CareReason::LifeOver { long: HowLong::Usual { months: 12, .. }, .. }));
    changed(&mut job, &place, "2026-11-26");
    let card = card_of(&job, &place, day("2026-11-26"));
    assert_ne!(card.mark, CareMark::OrderNow);
    assert_eq!(card.bed.begun, Some(day("2026-11-26")));
    assert_eq!(card.before, [(Some(day("2025-11-20")), Some(day("2026-11-26")))]);
    assert!(card.bed.visits.is_empty());
}

#[test]
fn a_typed_life_holds_instead_of_the_usual_one() {
    let (mut job, place) = job();
    changed(&mut job, &place, "2026-05-01");
    let mut expected = Expected::nothing(place.vessel.clone());
    expected.months = Some(typed("6", Unit::Each));
    expected.water = Some(typed("10000", Unit::UsGallon));
    happen(&mut job, "2026-05-01", What::Expected(expected));
    visit(&mut job, &place, "2026-05-01", &[meter("0"), outlet("0")]);
    visit(&mut job, &place, "2026-10-01", &[meter("5000"), outlet("0")]);
    let card = card_of(&job, &place, day("2026-10-02"));
    assert_eq!(card.life.unwrap().ends, Some(day("2026-11-01")));
    assert!(card.water_ends.unwrap() > day("2027-01-01"));
    assert_eq!(card.mark, CareMark::NextVisit, "{:?}", card.reason);
    assert!(matches!(
        card_of(&job, &place, day("2026-11-01")).reason,
        CareReason::LifeOver { long: HowLong::Typed { months: 6 }, .. }
    ));
}

#[test]
fn tests_that_rise_tell_when_and_the_usual_life_is_set_aside() {
    let (mut job, place) = job();
    changed(&mut job, &place, "2026-01-01");
    // 1/(1 + exp(0.05·(250 − day))) of 2 mg/L, with a little scatter.
    let readings = [
        (60, "0"),
        (120, "0"),
        (150, "0.02"),
        (180, "0.05"),
        (200, "0.16"),
        (215, "0.29"),
        (230, "0.55"),
        (240, "0.74"),
    ];
    for (after, shown) in readings {
        let on = day("2026-01-01").plus(after).text();
        visit(&mut job, &place, &on, &[outlet(shown), inlet("2"), meter(&(after * 100).to_string())]);
    }
    let today = day("2026-01-01").plus(241);
    let card = card_of(&job, &place, today);
    assert_eq!(card.forecast.axis, Axis::Water);
    let reached = card.forecast.reached.unwrap();
    // A tenth of the inlet, as none was typed: 250 − ln(9)/0.05 = 206 days.
    let likely = reached.likely.unwrap().since(day("2026-01-01"));
    assert!((200..=212).contains(&likely), "{likely}");
    assert!(reached.low < reached.likely && reached.likely < reached.high);
    assert_eq!((reached.curve.front.used, reached.curve.front.nothing), (6, 2));
}

#[test]
fn more_that_comes_in_uses_the_bed_up_sooner() {
    let (mut steady, place) = job();
    let mut varying = steady.clone();
    for job in [&mut steady, &mut varying] {
        changed(job, &place, "2026-01-01");
    }
    for (after, share) in [(40, 0.02), (60, 0.05), (80, 0.1), (100, 0.19), (120, 0.35), (140, 0.6)] {
        let on = day("2026-01-01").plus(after).text();
        for (job, inlet_shown) in [(&mut steady, 2.0), (&mut varying, if after > 90 { 3.0 } else { 1.0 })] {
            let shown = format!("{:.3}", share * inlet_shown);
            visit(job, &place, &on, &[outlet(&shown), inlet(&inlet_shown.to_string())]);
        }
    }
    let today = day("2026-06-01");
    assert!(!card_of(&steady, &place, today).forecast.weighed);
    let card = card_of(&varying, &place, today);
    assert!(card.forecast.weighed && card.forecast.reached.is_ok(), "{:?}", card.forecast.reached);
}

#[test]
fn readings_out_of_order_and_a_replaced_meter_say_the_same() {
    let (mut there, place) = job();
    changed(&mut there, &place, "2026-01-01");
    let mut back = there.clone();
    let days = [("2026-01-01", "0"), ("2026-02-01", "3100"), ("2026-03-01", "5900")];
    for (on, shown) in days {
        visit(&mut there, &place, on, &[meter(shown)]);
    }
    for (on, shown) in days.iter().rev() {
        visit(&mut back, &place, on, &[meter(shown)]);
    }
    for job in [&mut there, &mut back] {
        let replaced = What::MeterReplaced {
            place: place.clone(),
            end: Some(typed("5900", Unit::UsGallon)),
            start: typed("0", Unit::UsGallon),
        };
        happen(job, "2026-03-01", replaced);
        visit(job, &place, "2026-04-01", &[meter("3100")]);
    }
    let today = day("2026-04-01");
    let (there, back) = (card_of(&there, &place, today), card_of(&back, &place, today));
    assert_eq!(there.water, back.water);
    assert!((there.water.unwrap() / 0.003_785_411_784 - 9000.0).abs() < 1e-6, "{:?}", there.water);
}

#[test]
fn what_contradicts_is_asked_about_and_never_dropped() {
    let (mut job, place) = job();
    changed(&mut job, &place, "2026-01-01");
    visit(
        &mut job,
        &place,
        "2026-02-01",
        &[meter("500"), outlet("0"), inlet("1"), (VisitField::Tape, "30", Unit::Inch)],
    );
    visit(&mut job, &place, "2026-03-01", &[meter("400"), outlet("1.2"), inlet("0.2")]);
    visit(&mut job, &place, "2027-03-01", &[outlet("0")]);
    visit(&mut job, &place, "2026-04-01", &[(VisitField::Tape, "20", Unit::Inch), outlet("zero")]);
    let card = card_of(&job, &place, day("2026-05-01"));
    let found = asked(&card);
    assert!(found.iter().any(|asked| matches!(asked, Asked::MeterFell)), "{found:?}");
    assert!(found.iter().any(|asked| matches!(asked, Asked::OutletAboveInlet { .. })), "{found:?}");
    assert!(found.iter().any(|asked| matches!(asked, Asked::DayToCome)), "{found:?}");
    assert!(found.iter().any(|asked| matches!(asked, Asked::Unread { field: VisitField::Outlet, .. })), "{found:?}");
    assert!(found.iter().any(|asked| matches!(asked, Asked::SurfaceRose { .. })), "{found:?}");
    assert_eq!(card.bed.visits.len() + card.waiting.len(), 4);
    let manner = Manner::default();
    for question in &card.questions {
        let sentence = manner.question(question);
        assert!(sentence.contains('?') || sentence.contains("number"), "{sentence}");
    }
}

#[test]
fn tests_in_another_kind_of_unit_are_asked_about() {
    let (mut job, place) = job();
    changed(&mut job, &place, "2026-01-01");
    for (on, unit) in [("2026-02-01", TestUnit::TurbidityUnit), ("2026-03-01", TestUnit::PartPerMillion)] {
        let mut made = Visit::new(Id::new(on), on.to_owned(), place.vessel.clone(), place.tag.clone(), unit);
        made.put(VisitField::Outlet, Some(typed("0.2", Unit::One)));
        add(&mut job, made.record());
    }
    let card = card_of(&job, &place, day("2026-03-02"));
    assert!(matches!(asked(&card)[..], [Asked::OtherUnit { unit: TestUnit::TurbidityUnit }]));
}

#[test]
fn a_life_goes_with_the_media_when_lag_becomes_lead() {
    let (mut job, place) = job();
    let lag = Place { tag: "second".to_owned(), ..place.clone() };
    changed(&mut job, &place, "2026-01-01");
    changed(&mut job, &lag, "2026-02-01");
    visit(&mut job, &lag, "2026-03-01", &[outlet("0")]);
    happen(&mut job, "2026-04-01", What::Rotation { places: vec![place.clone(), lag.clone()] });
    visit(&mut job, &place, "2026-05-01", &[outlet("0")]);
    let card = card_of(&job, &place, day("2026-05-02"));
    assert_eq!(card.bed.begun, Some(day("2026-02-01")));
    assert_eq!(card.bed.visits.len(), 2);
    assert_eq!(card_of(&job, &lag, day("2026-05-02")).bed.begun, Some(day("2026-01-01")));
}

#[test]
fn a_visit_moves_the_line_and_takes_it_back_when_withdrawn() {
    let (mut job, place) = job();
    let mut made = Visit::new(
        Id::new("seen"),
        "2026-03-01".to_owned(),
        place.vessel.clone(),
        place.tag.clone(),
        TestUnit::MilligramPerLitre,
    );
    made.put(VisitField::DrainFlow, Some(typed("8", Unit::UsGallonPerMinute)));
    made.put(VisitField::DrainMinutes, Some(typed("10", Unit::Minute)));
    made.put(VisitField::Temperature, Some(typed("6", Unit::Celsius)));
    (made.drain, made.grains) = (Some(Drain::Clear), Some(false));
    let before = evidence_of(&job, &place.vessel).len();
    add(&mut job, made.record());
    let seen = evidence_of(&job, &place.vessel);
    assert_eq!(seen.len(), before + 1);
    assert!(seen.last().unwrap().of_visit);
    add(&mut job, withdrawal(Id::new("back"), &made.id, "2026-03-02"));
    assert_eq!(evidence_of(&job, &place.vessel).len(), before);
    assert!(Lives::of(&job, day("2026-03-02")).now_at(&place).is_none());
}

#[test]
fn media_is_lost_only_beyond_the_spread_and_in_one_state() {
    let (mut job, place) = job();
    changed(&mut job, &place, "2026-01-01");
    let tape = |job: &mut Job, on: &str, shown: &str, state: SurfaceState| {
        let mut made = Visit::new(
            Id::new(on),
            on.to_owned(),
            place.vessel.clone(),
            place.tag.clone(),
            TestUnit::MilligramPerLitre,
        );
        made.put(VisitField::Tape, Some(typed(shown, Unit::Inch)));
        made.state = state;
        add(job, made.record());
        card_of(job, &place, day(on)).surface
    };
    assert!(tape(&mut job, "2026-02-01", "22", SurfaceState::AsPoured).compared.is_none());
    assert!(tape(&mut job, "2026-03-01", "23", SurfaceState::SettledAtOpening).compared.is_none());
    let manner = Manner::default();
    let near = tape(&mut job, "2026-04-01", "23.5", SurfaceState::SettledAtOpening).compared.unwrap();
    assert!(manner.media_loss(&near).contains("No top-up"), "{}", manner.media_loss(&near));
    let far = tape(&mut job, "2026-05-01", "28", SurfaceState::SettledAtOpening).compared.unwrap();
    assert!(manner.media_loss(&far).contains("Lost:"), "{}", manner.media_loss(&far));
    assert!(matches!(card_of(&job, &place, day("2026-05-01")).reason, CareReason::MediaLost { packs } if packs > 0.0));
}

#[test]
fn what_is_due_first_stands_first_and_orders_before_all() {
    let (mut near, place) = job();
    near.id = Id::new("near");
    changed(&mut near, &place, "2026-05-01");
    let (mut spent, _) = job();
    spent.id = Id::new("spent");
    visit(&mut spent, &place, "2026-10-01", &[outlet("0.3")]);
    let (mut far, _) = job();
    far.id = Id::new("far");
    visit(&mut far, &place, "2026-10-01", &[outlet("0")]);
    let jobs: Vec<Arc<Job>> = [near, far, spent].into_iter().map(Arc::new).collect();
    let rows = due_list(jobs.iter(), day("2026-10-02"));
    let order: Vec<&str> = rows.iter().map(|row| row.job.as_str()).collect();
    assert_eq!(order, ["spent", "near", "far"]);
    assert!(rows[0].new_bed && rows[0].day == day("2026-10-02"));
}

#[test]
fn a_replacement_job_takes_the_vessel_and_says_what_it_follows() {
    let (old, place) = job();
    let new = replacement_job(&old, &place, Id::new("new"), Id::new("r"), day("2026-11-26")).unwrap();
    assert_eq!(new.survey.body.vessels.len(), 1);
    assert_eq!(new.survey.body.vessels[0].entries, old.survey.body.vessels[0].entries);
    assert_eq!(*new.plan_of(&place.vessel), *old.plan_of(&place.vessel));
    assert_eq!(new.head.body.kind, bedwright_calc::supply::JobKind::Changeout);
    assert_eq!(follows(&new), Some((old.id.clone(), place)));
    assert_eq!(read_job(&job_text(&new)).unwrap(), new);
}

/// What went in is what was signed for, not what was planned; prices are those of the day it is made.
#[test]
fn a_replacement_of_a_signed_loading_takes_what_was_loaded_and_names_its_record() {
    let mut old = jobs::loaded();
    let place = Place { vessel: Id::new("filter"), tag: "CF-1".to_owned() };
    let planned = old.plan_of(&place.vessel);
    let carried = old.prices.body.rows().len();
    let vessel = vessel_answers(old.vessel(&place.vessel).unwrap(), &planned);
    let signed = to_sign(
        &load_answers(&old, &place.tag, &vessel),
        &vessel,
        Id::new("signed-1"),
        "2026-11-26",
        jobs::stamp("2026-11-26T11:00:00.000Z"),
    );
    let mut signed = signed.unwrap();
    // Another carbon was poured than planned.
    let layer = signed.layers.iter_mut().find(|layer| layer.layer == Id::new("1-filter")).unwrap();
    layer.material = "carbon_bituminous_12x40".to_owned();
    layer.pack = "carbon_bituminous_12x40.55_lb".to_owned();
    let poured = (layer.material.clone(), layer.pack.clone());
    add(&mut old, signed.record());
    let row = PriceRow::new("own:carried", PriceKind::Part);
    jobs::change(&mut old, Edit::Price { key: row.key.clone(), row: Some(Arc::new(row)) });
    assert_eq!(old.prices.body.rows().len(), carried + 1);

    let new = replacement_job(&old, &place, Id::new("new"), Id::new("r"), day("2027-11-26")).unwrap();
    let layers = &new.plan_of(&place.vessel).layers;
    assert_eq!(layers.len(), planned.layers.len());
    // The pack that was usual while it was planned stands there by its name now.
    assert_eq!((layers[0].material.as_str(), layers[0].pack.as_str()), ("gravel_1_8x1_4", "gravel_1_8x1_4.half_ft3"));
    assert_eq!((layers[1].material.clone(), layers[1].pack.clone()), poured);
    assert_eq!(new.survey.body.vessels[0].tags, ["CF-1"]);
    assert_eq!(new.prices.body.rows().len(), 0, "prices of the day, none that the old job carried");
    assert_eq!(new.records.len(), 1);
    assert!(matches!(
        Happened::of(&new.records[0]).unwrap().what,
        What::Follows { as_loaded: Some(record), .. } if record == Id::new("signed-1")
    ));
    assert_eq!(read_job(&job_text(&new)).unwrap(), new);
}

#[test]
fn visits_are_kept_by_their_year_and_come_back() {
    let (mut job, place) = job();
    changed(&mut job, &place, "2025-01-01");
    for on in ["2025-03-01", "2026-03-01", "2026-04-01"] {
        visit(&mut job, &place, on, &[meter("1"), outlet("0")]);
    }
    let parts = parts_from(&job, 0);
    assert_eq!(parts, ["records", "records-2025", "records-2026"]);
    assert!(parts.iter().all(|part| is_records(part)) && !is_records("recorded"));
    assert_eq!(parts_from(&job, 3), ["records-2026"]);
    let mut again = Job { records: Vec::new(), ..job.clone() };
    for part in parts.iter().rev() {
        read_records(&mut again, &records_text(&job, part)).unwrap();
    }
    let today = day("2026-05-01");
    assert_eq!(card_of(&again, &place, today), card_of(&job, &place, today));
}
