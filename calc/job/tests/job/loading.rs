//! The sheets of a tag: their steps in the order of the work, what a reading says in words, what keeps them from being signed.

use bedwright_calc::supply::JobKind;
use bedwright_job::Job;
use bedwright_job::answers::vessel_answers;
use bedwright_job::as_loaded::as_loaded_of;
use bedwright_job::edit::Edit;
use bedwright_job::entry::Unit;
use bedwright_job::id::Id;
use bedwright_job::loading::{Lack, LoadAnswers, Step, lacking, load_answers, tags_of, to_sign};
use bedwright_job::papers::{SheetOf, start_up_report, work_sheet};
use bedwright_job::sections::loading::{ReadingPlace, TagChange, TapeReading, WorkSheet};
use bedwright_job::words::Manner;

use crate::jobs::{self, entry, load, stamp};

fn answers_of(job: &Job) -> bedwright_job::answers::VesselAnswers {
    let filter = Id::new("filter");
    vessel_answers(job.vessel(&filter).unwrap(), &job.plan_of(&filter))
}

fn sheets(job: &Job) -> LoadAnswers {
    load_answers(job, "CF-1", &answers_of(job))
}

fn read(job: &mut Job, place: ReadingPlace, text: &str) {
    let state = bedwright_calc::fill::SurfaceState::AsPoured;
    let entry = (!text.is_empty()).then(|| entry(text, Unit::Inch));
    let reading = TapeReading { entry, state, stamp: stamp("2026-11-26T09:20:00+01:00") };
    load(job, "CF-1", TagChange::Reading(place, Some(reading)));
}

fn gravel() -> ReadingPlace {
    ReadingPlace::End(Id::new("0-filter"))
}

fn carbon() -> ReadingPlace {
    ReadingPlace::End(Id::new("1-filter"))
}

#[test]
fn the_steps_stand_in_the_order_of_the_work() {
    use Step as S;
    let of = sheets(&jobs::sample());
    let steps = |rows: &[bedwright_job::loading::StepRow]| rows.iter().map(|row| row.step).collect::<Vec<_>>();
    let loading = steps(&of.loading);
    let order = [
        S::Position,
        S::RinseVessel,
        S::Collector,
        S::RiserMark,
        S::RiserCut,
        S::RiserCap,
        S::Cushion,
        S::Pour,
        S::Read,
        S::RiserCentred,
        S::Pour,
        S::Read,
        S::Seal,
        S::CapOff,
        S::UpperCollector,
        S::ValveOn,
        S::AirGap,
        S::Fill,
        S::Soak,
        S::Backwash,
        S::RinseToWaste,
        S::Settings,
        S::Leaks,
        S::OutletTest,
        S::Label,
    ];
    assert_eq!(loading, order);
    let removal = steps(&of.removal);
    assert_eq!(removal[..6], [S::Bypass, S::Isolate, S::Depressurise, S::Vent, S::Power, S::ValveOff]);
    let mut ids: Vec<&str> = of.removal.iter().chain(&of.loading).map(|row| row.id.as_str()).collect();
    let all = ids.len();
    ids.sort_unstable();
    ids.dedup();
    assert_eq!(ids.len(), all, "a step's name is its own");
    assert_eq!(tags_of(&jobs::sample(), &Id::new("filter")), ["CF-1", "CF-2"]);
}

#[test]
fn a_top_up_begins_on_what_was_found_and_a_new_vessel_has_nothing_to_take_out() {
    let mut job = jobs::sample();
    jobs::change(&mut job, Edit::Kind(JobKind::New));
    assert!(sheets(&job).removal.is_empty());
    jobs::change(&mut job, Edit::Kind(JobKind::TopUp));
    assert_eq!(lacking(&sheets(&job)), [Lack::Reading(ReadingPlace::Found)]);
    // The bed that should read 15 1/8 in reads half a bag lower.
    read(&mut job, ReadingPlace::Found, "23 1/8");
    let of = sheets(&job);
    assert!((of.pours[0].packs.value - 0.5).abs() < 0.01, "{:?}", of.pours);
    assert!(of.loading.iter().all(|row| row.step != Step::Position));
    assert_eq!(lacking(&of), [Lack::Reading(carbon())]);
}

/// 47.33 − 32.13 = 15.2 in are expected after the carbon; at 18 1/2 in a fifth of a bag is missing.
#[test]
fn a_reading_inside_the_spread_says_nothing_and_one_outside_says_what_is_likely() {
    let mut job = jobs::sample();
    read(&mut job, gravel(), "47 1/2");
    read(&mut job, carbon(), "18 1/2");
    let (of, answers) = (sheets(&job), answers_of(&job));
    let manner = Manner::default();
    let said = |place: &ReadingPlace| {
        let rung = of.rung(place).unwrap();
        manner.deviation(rung, rung.outcome.as_ref().unwrap().as_ref().unwrap(), &answers.planned[rung.layer].pack)
    };
    assert_eq!(said(&gravel()), Vec::<String>::new());
    assert_eq!(
        said(&carbon()),
        [
            "The surface stands 3 1/8 in lower than expected (± 1 1/4 in): 0.2 bag less than counted. Read the tape once more.",
            "Likely: one bag was only 80 % full.",
            "Or: the inside diameter is 12.36 in, not 11.74 in.",
        ]
    );
}

#[test]
fn it_is_signed_once_every_reading_is_there_or_said_to_be_out_of_reach() {
    let mut job = jobs::sample();
    let signed = |job: &Job| {
        to_sign(&sheets(job), &answers_of(job), Id::new("s"), "2026-11-26", stamp("2026-11-26T11:00:00+01:00"))
    };
    assert_eq!(signed(&job).unwrap_err(), [Lack::Reading(gravel()), Lack::Reading(carbon())]);
    read(&mut job, gravel(), "");
    read(&mut job, carbon(), "52");
    assert_eq!(signed(&job).unwrap_err(), [Lack::Contradicts(carbon())]);
    read(&mut job, carbon(), "abc");
    assert!(matches!(signed(&job).unwrap_err()[..], [Lack::Misread(..), ..]));
    read(&mut job, carbon(), "15 1/8");
    let loaded = signed(&job).unwrap();
    assert_eq!(
        loaded.not_done.len() + loaded.done.len() + 2,
        sheets(&job).removal.len() + sheets(&job).loading.len() - 1
    );
    assert_eq!(loaded.readings.iter().map(|read| read.entry.is_some()).collect::<Vec<_>>(), [false, true]);
    jobs::change(&mut job, Edit::AddRecord(loaded.record()));
    let kept = as_loaded_of(&job, &Id::new("filter"), "CF-1").unwrap();
    assert_eq!(*kept, loaded);
    assert_eq!(kept.surface().unwrap().within(), Some(true));
}

#[test]
fn every_paper_has_every_row_once() {
    let mut job = jobs::sample();
    read(&mut job, gravel(), "47 1/2");
    read(&mut job, carbon(), "18 1/2");
    let answers = answers_of(&job);
    let loaded =
        to_sign(&sheets(&job), &answers, Id::new("s"), "2026-11-26", stamp("2026-11-26T11:00:00+01:00")).unwrap();
    jobs::change(&mut job, Edit::AddRecord(loaded.record()));
    let of = sheets(&job);
    let sheet =
        SheetOf { job: &job, answers: &answers, of: &of, wash: None, manner: Manner::default(), today: "2026-11-26" };
    let papers = [
        work_sheet(&sheet, WorkSheet::Removal),
        work_sheet(&sheet, WorkSheet::Loading),
        start_up_report(&sheet, of.signed.as_ref().unwrap()),
    ];
    for paper in papers {
        let mut keys: Vec<&str> = paper.rows.iter().map(|row| row.key.as_str()).collect();
        let all = keys.len();
        keys.sort_unstable();
        keys.dedup();
        assert_eq!(keys.len(), all, "{:?}", paper.kind);
        assert!(paper.rows.iter().all(|row| row.cells.len() <= paper.columns.len()), "{:?}", paper.kind);
        assert!(all > 20, "{:?}: {all} rows", paper.kind);
    }
}
