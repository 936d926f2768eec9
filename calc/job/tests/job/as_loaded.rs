//! The as-loaded record: written once, read by itself, set right only by another record.

use bedwright_calc::fill::{Role, SurfaceState};
use bedwright_job::Job;
use bedwright_job::as_loaded::{
    AsLoaded, Correction, LoadedLayer, LoadedReading, all_as_loaded, as_loaded_of, is_signed,
};
use bedwright_job::edit::{Edit, Refused, apply};
use bedwright_job::entry::Unit;
use bedwright_job::id::Id;
use bedwright_job::saved::{job_text, read_job};
use bedwright_job::sections::loading::{LoadingText, ReadingPlace, TagChange};

use crate::jobs::{self, entry, stamp};

/// A signed record of the sample's filter, invented.
pub fn record() -> AsLoaded {
    let job = jobs::loaded();
    let tag = job.loading.body.of(&Id::new("filter"), "CF-1").unwrap().clone();
    let reading = |place: ReadingPlace, text: &str, expected_mm: f64, packs_more: f64| LoadedReading {
        place,
        entry: Some(entry(text, Unit::Inch)),
        state: SurfaceState::AsPoured,
        stamp: stamp("2026-11-26T09:20:00.000Z"),
        expected_mm: Some(expected_mm),
        spread_mm: Some(20.0),
        packs_more: Some(packs_more),
    };
    let layer = |layer: &str, material: &str, role, packs, lot: &str| LoadedLayer {
        layer: Id::new(layer),
        material: material.to_owned(),
        role,
        pack: format!("{material}.x"),
        packs,
        volume_l: packs * 28.3,
        lot: lot.to_owned(),
    };
    AsLoaded {
        id: Id::new("signed-1"),
        day: "2026-11-26".to_owned(),
        signed: stamp("2026-11-26T11:00:00.000Z"),
        vessel: Id::new("filter"),
        tag: "CF-1".to_owned(),
        inside_diameter_mm: Some(298.3),
        inside_depth_mm: Some(1295.4),
        layers: vec![
            layer("0-filter", "gravel_1_8x1_4", Role::Underbed, 0.4, ""),
            layer("1-filter", "carbon_coconut_12x40", Role::Media, 2.0, "L-2210"),
        ],
        readings: vec![
            reading(ReadingPlace::End(Id::new("0-filter")), "47 1/4", 1200.0, 0.01),
            reading(ReadingPlace::End(Id::new("1-filter")), "16 1/4", 385.0, -0.07),
        ],
        done: tag.ticks.clone(),
        not_done: vec!["soak".to_owned()],
        texts: tag.texts.clone(),
        method: tag.method,
        drums: tag.drums.clone(),
        photo: tag.photo.clone(),
        corrections: Vec::new(),
    }
}

fn signed() -> Job {
    let mut job = jobs::loaded();
    jobs::change(&mut job, Edit::AddRecord(record().record()));
    job
}

#[test]
fn what_was_signed_is_read_as_it_was_and_survives_a_file() {
    let job = read_job(&job_text(&signed())).unwrap();
    let filter = Id::new("filter");
    assert_eq!(*as_loaded_of(&job, &filter, "CF-1").unwrap(), record());
    assert!(is_signed(&job, &filter, "CF-1") && !is_signed(&job, &filter, "CF-2"));
    assert!(as_loaded_of(&job, &Id::new("softener"), "CF-1").is_none());
    assert_eq!(all_as_loaded(&job).len(), 1);
}

#[test]
fn the_surface_is_the_last_reading_of_the_uppermost_layer() {
    let record = record();
    let surface = record.surface().unwrap();
    assert!((surface.tape().unwrap().value - 16.25 * 0.0254).abs() < 1e-12);
    // 385 − 412.75 = −27.75 mm: lower than expected, and beyond the spread of 20.
    assert!((surface.higher().unwrap().value + 0.027_75).abs() < 1e-9);
    assert_eq!(surface.within(), Some(false));
    assert_eq!(record.text(LoadingText::Settings), "settings (invented)");
}

#[test]
fn what_was_signed_can_not_be_changed_and_the_other_tags_can() {
    let mut job = signed();
    let of = |tag: &str| Edit::Load {
        vessel: Id::new("filter"),
        tag: tag.to_owned(),
        change: TagChange::Tick("cap".to_owned(), Some(stamp("2026-11-26T12:00:00.000Z"))),
    };
    let before = job.clone();
    assert_eq!(apply(&mut job, of("CF-1"), &Id::new("d")), Err(Refused::Signed));
    assert_eq!(job, before);
    assert!(apply(&mut job, of("CF-2"), &Id::new("d")).is_ok());
}

#[test]
fn a_correction_is_added_and_shows_what_is_right_with_who_said_so() {
    let mut job = signed();
    let correction = |id: &str, reading, lot| Correction {
        id: Id::new(id),
        of: Id::new("signed-1"),
        day: "2026-11-27".to_owned(),
        stamp: stamp("2026-11-27T08:00:00.000Z"),
        text: "Read the wrong side of the tape.".to_owned(),
        reading,
        lot,
    };
    let place = ReadingPlace::End(Id::new("1-filter"));
    let corrections = [
        correction("c1", Some((place, entry("15 1/4", Unit::Inch))), None),
        correction("c2", None, Some((Id::new("1-filter"), "L-2211".to_owned()))),
    ];
    for correction in &corrections {
        jobs::change(&mut job, Edit::AddRecord(correction.record()));
    }
    let job = read_job(&job_text(&job)).unwrap();
    let found = as_loaded_of(&job, &Id::new("filter"), "CF-1").unwrap();
    assert_eq!(found.corrections, corrections);
    let surface = found.surface().unwrap();
    assert_eq!(surface.entry, Some(entry("15 1/4", Unit::Inch)));
    assert_eq!(surface.stamp.at, "2026-11-27T08:00:00.000Z");
    assert_eq!(surface.within(), Some(true));
    assert_eq!(found.layers[1].lot, "L-2211");
    // What was signed stands as it was.
    assert_eq!(job.records[0], record().record());
}

#[test]
fn a_record_with_parts_missing_or_wrong_gives_what_can_be_read() {
    let whole = record().record();
    for key in
        whole.value.as_object().unwrap().keys().filter(|key| !["kind", "vessel", "tag", "id"].contains(&key.as_str()))
    {
        for wrong in [serde_json::json!(null), serde_json::json!(7), serde_json::json!([1, "x", {}])] {
            let mut broken = whole.clone();
            broken.value[key] = wrong;
            let mut job = jobs::loaded();
            jobs::change(&mut job, Edit::AddRecord(broken.clone()));
            let found = as_loaded_of(&job, &Id::new("filter"), "CF-1").unwrap();
            assert_eq!(found.id, record().id, "{key}");
            assert_eq!(job.records[0], broken);
        }
    }
}
