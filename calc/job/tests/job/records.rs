//! Records of every kind, as the code writes them, against the published schema.

use bedwright_job::Job;
use bedwright_job::as_loaded::{Correction, all_as_loaded};
use bedwright_job::care::happened::{Expected, Happened, Place, What};
use bedwright_job::care::visit::{Drain, TestUnit, Visit, VisitField};
use bedwright_job::edit::Edit;
use bedwright_job::entry::Unit;
use bedwright_job::evidence::{EvidenceKind, evidence_of, withdrawal};
use bedwright_job::id::Id;
use bedwright_job::job::Record;
use bedwright_job::picked::{PickedLine, Step, Taken, steps_of};
use bedwright_job::quote::issued;
use bedwright_job::saved::{job_text, read_job};
use bedwright_job::sections::loading::ReadingPlace;
use bedwright_job::sections::quote::{HALVES, STANDINGS, halves_id, standing_id};
use serde_json::{Value, json};

use crate::as_loaded::record as as_loaded_record;
use crate::jobs::{self, change, entry};
use crate::schema::validator;
use crate::schema_records::kinds;

/// A quote as the page issues one, invented.
fn an_issued_quote() -> Value {
    json!({
        "id": "q1", "kind": "quote_issued", "version": 1, "number": 1, "day": "2026-11-26", "title": "Quillmoss Laundry",
        "sample": true, "currency": "USD", "places": 2, "halves": halves_id(HALVES[0]),
        "lines": [{
            "key": "own:1", "group": "own", "name": "Visit", "quantity": "1", "unit": "each", "price": "120.00",
            "net": "120.00", "standing": standing_id(STANDINGS[0]),
        }],
        "removed": [{ "name": "Riser", "reason": "there is one" }],
        "freight": { "weight": "210.5", "rate": "0.1", "amount": "21.05" },
        "taxes": [{ "name": "Material", "rate": "0.05", "base": "120.00", "amount": "6.00" }],
        "totals": {
            "lines": "120.00", "discount_share": "0", "discount": "0.00", "net": "120.00", "total": "126.00", "cost": "0",
            "unpriced": 0, "uncosted": 1,
        },
        "assumptions": ["One assumption."], "packs": [], "yearly": [], "left_out": [],
    })
}

/// A job with a record of every kind, each with every field it can have.
fn every_record() -> Job {
    let mut job = jobs::loaded();
    let place = Place { vessel: Id::new("filter"), tag: "CF-2".to_owned() };
    let at = "2026-11-26T09:20:00.000Z".to_owned();
    let by = "Ida Larch (invented)".to_owned();
    let day = "2026-11-26".to_owned();
    let gallons = |text: &str| entry(text, Unit::UsGallon);
    let mut visit =
        Visit::new(Id::new("v1"), day.clone(), place.vessel.clone(), place.tag.clone(), TestUnit::GrainPerGallon);
    for &field in VisitField::ALL {
        let unit = Unit::of(field.dimension())[0];
        visit.put(
            field,
            Some(entry("1", if field.dimension() == VisitField::Inlet.dimension() { Unit::One } else { unit })),
        );
    }
    (visit.at, visit.by) = (at.clone(), by.clone());
    (visit.drain, visit.grains, visit.leak) = (Some(Drain::Cloudy), Some(true), Some(false));
    (visit.settings, visit.notes) = ("every 3 days".to_owned(), "note".to_owned());
    let mut expected = Expected::nothing(place.vessel.clone());
    for each in [&mut expected.limit, &mut expected.months, &mut expected.visits, &mut expected.settling] {
        *each = Some(entry("1", Unit::One));
    }
    expected.water = Some(gallons("10000"));
    let whats = [
        What::Changeout { place: place.clone() },
        What::Rotation { places: vec![Place { tag: "CF-1".to_owned(), ..place.clone() }, place.clone()] },
        What::MeterReplaced { place: place.clone(), end: Some(gallons("9000")), start: gallons("0") },
        What::Expected(expected),
        What::Follows { job: Id::new("old"), place: place.clone(), as_loaded: Some(Id::new("signed-0")) },
    ];
    let mut records = vec![visit.record(), as_loaded_record().record()];
    records.extend(whats.into_iter().enumerate().map(|(at_place, what)| {
        Happened { id: Id::new(&format!("h{at_place}")), day: day.clone(), at: at.clone(), by: by.clone(), what }
            .record()
    }));
    let correction = Correction {
        id: Id::new("c1"),
        of: Id::new("signed-1"),
        day: day.clone(),
        stamp: jobs::stamp(&at),
        text: "Misread.".to_owned(),
        reading: Some((ReadingPlace::End(Id::new("1-filter")), entry("15 1/4", Unit::Inch))),
        lot: Some((Id::new("1-filter"), "L-2211".to_owned())),
    };
    records.push(correction.record());
    for &kind in EvidenceKind::ALL {
        let mut piece = crate::evidence::piece(kind.id().replace('_', "-").as_str(), kind);
        piece.layer = kind.is_of_layer().then(|| Id::new("1-filter"));
        records.push(piece.record());
    }
    records.push(withdrawal(Id::new("w1"), &Id::new("drain-check"), &day));
    let line = PickedLine {
        key: "pack:a:b".to_owned(),
        item: "Coconut carbon".to_owned(),
        unit: "bags".to_owned(),
        asked: 3,
        picked: 2,
        each_kg: Some(13.6),
        bin: "A-2".to_owned(),
        part_number: "C-12".to_owned(),
        lot: "L-1".to_owned(),
        date: "2026-08".to_owned(),
        instead: "8×30".to_owned(),
        note: "one torn".to_owned(),
        split: vec!["CF-1".to_owned()],
        returns: true,
    };
    records.extend(Step::ALL.iter().map(|&step| {
        let lines = if step == Step::Picked { vec![line.clone()] } else { Vec::new() };
        Taken { id: Id::new(&step.id().replace('_', "-")), step, day: day.clone(), name: by.clone(), lines }.record()
    }));
    let quote = an_issued_quote();
    records.push(Record { id: Id::new("q1"), value: quote });
    for record in records {
        change(&mut job, Edit::AddRecord(record));
    }
    job
}

#[test]
fn every_kind_of_record_is_described_with_every_field_it_has() {
    let job = every_record();
    // What was put there is understood by the reader.
    let again = read_job(&job_text(&job)).unwrap();
    assert_eq!(again, job);
    assert_eq!((issued(&job).len(), all_as_loaded(&job).len(), steps_of(&job).len()), (1, 1, 3));
    assert_eq!(evidence_of(&job, &Id::new("filter")).len(), EvidenceKind::ALL.len());
    assert_eq!(job.records.iter().filter_map(Happened::of).count(), 5);
    assert_eq!(job.records.iter().filter_map(Visit::of).count(), 1);

    let file: Value = serde_json::from_str(&job_text(&job)).unwrap();
    let validator = validator();
    let errors: Vec<String> =
        validator.iter_errors(&file).map(|error| format!("{error} at {}", error.instance_path())).collect();
    assert_eq!(errors, Vec::<String>::new());
    // Each kind is there, and no field of it is one that the schema doesn't name.
    for (kind, name, schema) in kinds() {
        let mut of_kind = job.records.iter().filter(|record| record.value["kind"] == kind).peekable();
        assert!(of_kind.peek().is_some(), "no record is a {kind}");
        for record in of_kind {
            for key in record.value.as_object().unwrap().keys() {
                assert!(schema["properties"].get(key).is_some(), "{name} doesn't name {key}");
            }
        }
    }
}

#[test]
fn the_schema_refuses_a_record_that_is_wrong_in_one_place() {
    let good: Value = serde_json::from_str(&job_text(&every_record())).unwrap();
    let validator = validator();
    let wrong: [(&str, &str, Value); 20] = [
        ("visit", "day", json!(20_261_126)),
        ("visit", "vessel", json!(null)),
        ("visit", "meter", json!("1000 gal")),
        ("visit", "meter", json!({ "text": "1000", "unit": "firkin" })),
        ("visit", "test_unit", json!("drops")),
        ("visit", "drain", json!("murky")),
        ("visit", "grains", json!("no")),
        ("changeout", "vessel", json!("")),
        ("rotation", "places", json!({ "vessel": "filter" })),
        ("meter_replaced", "start", json!(null)),
        ("expected", "test_unit", json!("mg")),
        ("follows", "job", json!(7)),
        ("as_loaded", "layers", json!("two")),
        ("as_loaded", "by", json!(null)),
        ("as_loaded_correction", "lot", json!(null)),
        ("as_loaded_correction", "place", json!("at the top")),
        ("drain_check", "flow", json!(8)),
        ("withdrawn", "of", json!(null)),
        ("picking_step", "step", json!("dropped")),
        ("quote_issued", "lines", json!([{ "key": "a" }])),
    ];
    for (kind, key, value) in wrong {
        let mut file = good.clone();
        let records = file["records"].as_array_mut().unwrap();
        let record = records.iter_mut().find(|record| record["kind"] == kind).unwrap();
        assert!(record.get(key).is_some(), "{kind} has no {key}");
        if value.is_null() {
            drop(record.as_object_mut().unwrap().remove(key))
        } else {
            record[key] = value.clone()
        }
        assert!(!validator.is_valid(&file), "{kind} with {key}: {value} is taken");
    }
}

#[test]
fn a_record_of_another_kind_or_a_later_version_is_taken_as_it_comes() {
    let mut file: Value = serde_json::from_str(&job_text(&every_record())).unwrap();
    let records = file["records"].as_array_mut().unwrap();
    records.push(json!({ "id": "later", "kind": "weather", "day": 3 }));
    records.push(json!({ "id": "q2", "kind": "quote_issued", "version": 2, "lines": "other" }));
    records.push(json!({ "id": "kindless", "what": [1, 2] }));
    let errors: Vec<String> = validator().iter_errors(&file).map(|error| error.to_string()).collect();
    assert_eq!(errors, Vec::<String>::new());
    assert_eq!(issued(&read_job(&file.to_string()).unwrap()).len(), 1);
}
