//! What was seen of a bed: written down as records, used where it says something, taken back by another record.

use std::sync::Arc;

use bedwright_calc::fill::Role;
use bedwright_calc::quantity::Basis;
use bedwright_job::Job;
use bedwright_job::answers::vessel_answers;
use bedwright_job::answers::water::{WaterAnswers, WaterAsked, water_answers};
use bedwright_job::edit::{Edit, WaterOf};
use bedwright_job::entry::Unit;
use bedwright_job::evidence::{Evidence, EvidenceKind, evidence_of, withdrawal};
use bedwright_job::field::WaterField;
use bedwright_job::id::Id;
use bedwright_job::saved::{job_text, read_job};
use bedwright_job::sections::plan::{LayerPlan, TargetKind};
use bedwright_job::words::Manner;

use crate::jobs::{self, change, entry};

fn filter() -> Id {
    Id::new("filter")
}

/// A piece of evidence of the sample's filter, invented.
pub fn piece(id: &str, kind: EvidenceKind) -> Evidence {
    let drop = kind == EvidenceKind::CleanDrop;
    let flow = if kind.is_of_layer() { Unit::UsGallonPerMinuteSquareFoot } else { Unit::UsGallonPerMinute };
    Evidence {
        id: Id::new(id),
        kind,
        day: "2026-11-24".to_owned(),
        vessel: filter(),
        layer: None,
        flow: entry("8", flow),
        temperature: entry("12", Unit::Celsius),
        minutes: (kind == EvidenceKind::DrainCheck).then(|| entry("10", Unit::Minute)),
        grains: false,
        expansion: kind.is_of_layer().then(|| entry("20", Unit::Percent)),
        drop: drop.then(|| entry("1.2", Unit::Psi)),
        of_visit: false,
    }
}

fn answers(job: &Job) -> WaterAnswers {
    let vessel = vessel_answers(job.vessel(&filter()).unwrap(), &job.plan_of(&filter()));
    water_answers(&vessel, &WaterAsked::of(job, &filter()))
}

fn voidages(answers: &WaterAnswers) -> Vec<(f64, Basis)> {
    let bed = answers.bed.as_ref().unwrap();
    bed.media_layers().map(|layer| (layer.voidage.value, layer.voidage.basis)).collect()
}

#[test]
fn every_kind_of_evidence_comes_back_from_a_file_as_it_was_written() {
    let mut job = jobs::sample();
    let pieces: Vec<Evidence> = EvidenceKind::ALL
        .iter()
        .map(|kind| Evidence { layer: kind.is_of_layer().then(|| Id::new("1-filter")), ..piece(kind.id(), *kind) })
        .collect();
    for piece in &pieces {
        change(&mut job, Edit::AddRecord(piece.record()));
    }
    let read = read_job(&job_text(&job)).unwrap();
    assert_eq!(evidence_of(&read, &filter()), pieces);
}

#[test]
fn a_clean_pressure_drop_says_how_closely_the_bed_lies_until_it_is_withdrawn() {
    let mut job = jobs::sample();
    let before = answers(&job);
    assert_eq!(before.packing, None);
    change(&mut job, Edit::AddRecord(piece("drop", EvidenceKind::CleanDrop).record()));
    let after = answers(&job);
    let packing = after.packing.as_ref().unwrap();
    assert_eq!((packing.used, packing.refused.len(), packing.voidages.len()), (1, 0, 1));
    let (voidage, basis) = voidages(&after)[0];
    assert_eq!(basis, Basis::Measured);
    assert_eq!(packing.voidages[0].1.value, voidage);
    assert_ne!(voidages(&before)[0].0, voidage);
    // Service and expansion are worked out with it, and it stands in the empty entry.
    assert_ne!(before.service, after.service);
    assert_ne!(before.backwash, after.backwash);
    let of = WaterOf::Layer(filter(), Id::new("1-filter"));
    let shown = after.reading.assumed.iter().find(|(at, field, _)| *at == of && *field == WaterField::Voidage).unwrap();
    assert_eq!(shown.2, voidage);
    change(&mut job, Edit::AddRecord(withdrawal(Id::new("back"), &Id::new("drop"), "2026-11-25")));
    assert_eq!(answers(&job), before);
}

#[test]
fn a_drop_that_no_grains_can_lose_is_kept_and_says_why_it_counts_for_nothing() {
    let mut job = jobs::sample();
    let mut wild = piece("wild", EvidenceKind::CleanDrop);
    wild.drop = Some(entry("50", Unit::Psi));
    change(&mut job, Edit::AddRecord(wild.record()));
    let found = answers(&job);
    let packing = found.packing.as_ref().unwrap();
    assert_eq!((packing.used, packing.voidages.len()), (0, 0));
    assert_eq!(voidages(&found), voidages(&answers(&jobs::sample())));
    let (id, problem) = &packing.refused[0];
    assert_eq!(id.as_str(), "wild");
    let said = Manner::default().problem(problem);
    assert!(
        said.starts_with("At this flow grains of these sizes lose from 0.") && said.contains("50 psi was read"),
        "{said}"
    );
}

#[test]
fn a_point_off_a_paper_counts_for_the_layer_it_was_chosen_for() {
    let mut job = jobs::sample();
    let sand = LayerPlan {
        target: TargetKind::Depth,
        amount: Some(entry("6", Unit::Inch)),
        ..LayerPlan::new(Id::new("sand"), "sand_filter_045_055", Role::Media)
    };
    change(&mut job, Edit::InsertLayer { vessel: filter(), at: 1, layer: sand });
    let known = |layer: &str| {
        let mut job = job.clone();
        let point = Evidence {
            layer: Some(Id::new(layer)),
            flow: entry("13", Unit::UsGallonPerMinuteSquareFoot),
            expansion: Some(entry("15", Unit::Percent)),
            ..piece("point", EvidenceKind::PaperPoint)
        };
        change(&mut job, Edit::AddRecord(point.record()));
        let lines = answers(&job).lines;
        (lines.used, lines.set_aside, lines.likely.value)
    };
    // Sand stands out by 15 % at 13 gpm/ft² of 12 °C between the two models; carbon at that flow stands far higher.
    let (used, _, likely) = known("sand");
    assert!(used == 1 && (0.0..=1.0).contains(&likely), "{used} {likely}");
    assert_eq!(known("1-filter").0, 0);
    // A layer that is gone says nothing.
    assert_eq!(known("gone").0 + known("gone").1, 0);
}

#[test]
fn evidence_of_one_vessel_says_nothing_of_another() {
    let mut job = jobs::sample();
    change(&mut job, Edit::AddRecord(piece("drop", EvidenceKind::CleanDrop).record()));
    assert_eq!(Arc::new(evidence_of(&job, &Id::new("softener"))), Arc::default());
}
