//! Records in the published schema: every kind as it is saved, made from the ids the code knows and proved on records that
//! the code writes.

use bedwright_calc::fill::SurfaceState;
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
use bedwright_job::quote::{LineGroup, issued};
use bedwright_job::saved::{job_text, read_job};
use bedwright_job::sections::loading::{LoadingText, ReadingPlace, RemovalMethod};
use bedwright_job::sections::quote::{HALVES, STANDINGS, halves_id, standing_id};
use serde_json::{Map, Value, json};

use crate::as_loaded::record as as_loaded_record;
use crate::jobs::{self, change, entry};
use crate::schema::{described, drum, ids, open_object, reference, text, validator};

/// The place of a tape reading, by its name.
const READING_PLACE: &str = "^(found|left|[a-z0-9-]{1,64}/(end|[1-9][0-9]*))$";

/// Every kind of record: what it says it is, the name of its description, and that.
fn kinds() -> Vec<(&'static str, &'static str, Value)> {
    let mut kinds = vec![
        ("visit", "visit_1", visit()),
        ("changeout", "changeout_1", dated(&["vessel"], place("Where the bed was changed."))),
        ("rotation", "rotation_1", rotation()),
        ("meter_replaced", "meter_replaced_1", meter_replaced()),
        ("expected", "expected_1", expected()),
        ("follows", "follows_1", follows()),
        ("as_loaded", "as_loaded_1", as_loaded()),
        ("as_loaded_correction", "as_loaded_correction_1", correction()),
        (
            "withdrawn",
            "withdrawn_1",
            dated(&["of"], json!({ "of": described(reference("id"), "The record it takes back.") })),
        ),
        ("picking_step", "picking_step_1", picking_step()),
        ("quote_issued", "quote_issued_1", quote_issued()),
    ];
    kinds.extend(EvidenceKind::ALL.iter().map(|kind| (kind.id(), "evidence_1", evidence())));
    kinds
}

/// The descriptions, by name.
pub fn definitions() -> Map<String, Value> {
    kinds().into_iter().map(|(_, name, schema)| (name.to_owned(), schema)).collect()
}

/// A record: what it is depends on its kind. One of an unknown kind, or of a later version, is kept as it came.
pub fn record() -> Value {
    let each = |(kind, name, _): (&'static str, &'static str, Value)| {
        let mut known = json!({ "kind": { "const": kind } });
        let mut required = vec!["kind"];
        // The one kind that has had to count its versions.
        if kind == "quote_issued" {
            known["version"] = json!({ "const": 1 });
            required.push("version");
        }
        json!({ "if": { "required": required, "properties": known }, "then": reference(name) })
    };
    let mut record = open_object(
        &["id"],
        json!({ "id": reference("id"), "kind": text("What it is; one that is not known here is kept as it came.") }),
    );
    record["allOf"] = kinds().into_iter().map(each).collect();
    record
}

/// A record of a day.
fn dated(required: &[&str], properties: Value) -> Value {
    let mut properties = properties;
    properties["id"] = reference("id");
    properties["kind"] = json!({ "type": "string" });
    properties["day"] = text("The day, as 2026-11-24.");
    let required: Vec<&str> = ["id", "kind", "day"].iter().chain(required).copied().collect();
    open_object(&required, properties)
}

/// What happened, with when it was written down and who did it, where that was said.
fn happened(required: &[&str], properties: Value) -> Value {
    let mut properties = properties;
    properties["at"] =
        text("The instant it was written down, as ISO 8601 writes it; of one day the earlier comes first.");
    properties["by"] = text("Who, as typed.");
    dated(required, properties)
}

fn place(description: &str) -> Value {
    json!({
        "vessel": described(reference("id"), description),
        "tag": text("Its tag; absent where it has none."),
        "at": text("The instant it was written down, as ISO 8601 writes it; of one day the earlier comes first."),
        "by": text("Who, as typed."),
    })
}

fn visit() -> Value {
    let mut properties = place("Where somebody read.");
    for &field in VisitField::ALL {
        properties[field.id()] = reference("entry");
    }
    for field in [VisitField::Inlet, VisitField::Outlet] {
        properties[field.id()] = described(
            reference("entry"),
            "In the unit of the test; with < before it what is detected at the least where nothing was.",
        );
    }
    properties["test_unit"] =
        described(ids(TestUnit::ALL, TestUnit::id), "The unit of the two tests; there with either.");
    properties["state"] = described(
        ids(SurfaceState::ALL, SurfaceState::id),
        "Of the surface the tape was read to; there with the tape.",
    );
    properties["drain"] = described(ids(Drain::ALL, Drain::id), "How the water at the drain looked.");
    properties["grains"] =
        json!({ "type": "boolean", "description": "Whether grains came; absent where nobody looked." });
    properties["leak"] =
        json!({ "type": "boolean", "description": "Whether something leaks; absent where nobody looked." });
    properties["settings"] = text("How the valve is set.");
    properties["notes"] = json!({ "type": "string" });
    dated(&["vessel"], properties)
}

fn rotation() -> Value {
    happened(
        &["places"],
        json!({
            "places": {
                "type": "array",
                "items": open_object(&["vessel"], json!({ "vessel": reference("id"), "tag": { "type": "string" } })),
                "description": "The places, the first water comes to first; the beds moved on by one towards it.",
            },
        }),
    )
}

fn meter_replaced() -> Value {
    let mut properties = place("Where the meter was replaced.");
    properties["end"] = described(reference("entry"), "What the old one showed at its end, where somebody read it.");
    properties["start"] = described(reference("entry"), "What the new one showed at its start.");
    dated(&["vessel", "start"], properties)
}

fn expected() -> Value {
    happened(
        &["vessel", "test_unit"],
        json!({
            "vessel": described(reference("id"), "Whose beds; the latest that was written down holds."),
            "test_unit": ids(TestUnit::ALL, TestUnit::id),
            "limit": described(reference("entry"), "The most the outlet may show, in that unit."),
            "months": described(reference("entry"), "How many months a bed is used at the most."),
            "water": described(reference("entry"), "How much water goes through a bed at the most."),
            "visits": described(reference("entry"), "How many months lie between visits."),
            "settling": described(reference("entry"), "Share of its depth that a bed settles by between two openings."),
        }),
    )
}

fn follows() -> Value {
    let mut properties = place("The bed's place in the other job.");
    properties["job"] = described(reference("id"), "The job whose bed this one replaces.");
    properties["as_loaded"] = described(reference("id"), "The record of how that bed was loaded, where there is one.");
    dated(&["job", "vessel"], properties)
}

/// A signed record: when, and the name under it.
fn signed(required: &[&str], properties: Value) -> Value {
    let mut schema = happened(required, properties);
    let all = schema["required"].as_array().unwrap().iter().cloned().chain(["at".into(), "by".into()]);
    schema["required"] = all.collect();
    schema
}

fn number(description: &str) -> Value {
    json!({ "type": "number", "description": description })
}

fn as_loaded() -> Value {
    let stamp = json!({ "at": { "type": "string" }, "by": { "type": "string" } });
    let with_stamp = |required: &[&str], mut properties: Value| {
        properties["at"] = stamp["at"].clone();
        properties["by"] = stamp["by"].clone();
        open_object(required, properties)
    };
    let layer = open_object(
        &["layer", "material", "role", "pack"],
        json!({
            "layer": described(reference("id"), "Its id in the plan."),
            "material": { "type": "string" },
            "role": { "enum": ["underbed", "media"] },
            "pack": { "type": "string" },
            "packs": number("How many went in, part packs in shares."),
            "volume_l": number("The volume they were reckoned with."),
            "lot": text("Lot and date, as on the packs."),
        }),
    );
    let reading = with_stamp(
        &["place", "state"],
        json!({
            "place": { "type": "string", "pattern": READING_PLACE },
            "state": ids(SurfaceState::ALL, SurfaceState::id),
            "tape": described(reference("entry"), "From the rim down; absent where it could not be taken."),
            "expected_mm": number("What was expected that day."),
            "spread_mm": number("Nine of ten readings fall within this of it."),
            "packs_more": number("How many packs more than counted would make this reading; less than nought for fewer."),
        }),
    );
    let texts: Map<String, Value> =
        LoadingText::ALL.iter().map(|which| (which.id().to_owned(), json!({ "type": "string" }))).collect();
    signed(
        &["vessel", "layers", "readings", "done", "not_done", "texts"],
        json!({
            "vessel": reference("id"),
            "tag": text("Its tag; absent where it has none."),
            "inside_diameter_mm": number("The inside diameter that was reckoned with."),
            "inside_depth_mm": number("The inside depth that was reckoned with."),
            "layers": { "type": "array", "items": layer, "description": "Bottom first, as they were poured." },
            "readings": { "type": "array", "items": reading, "description": "From the bottom up, beside what was expected." },
            "done": {
                "type": "array", "items": with_stamp(&["step"], json!({ "step": { "type": "string" } })),
                "description": "Steps that were ticked, in the order of the sheets.",
            },
            "not_done": { "type": "array", "items": { "type": "string" }, "description": "Steps that were not." },
            "texts": { "type": "object", "properties": texts },
            "method": described(ids(RemovalMethod::ALL, RemovalMethod::id), "How the old bed was taken out."),
            "drums": { "type": "array", "items": drum() },
            "photo": open_object(&["id", "bytes"], json!({
                "id": reference("id"),
                "bytes": { "type": "integer", "minimum": 0, "maximum": 4_294_967_295_u32 },
            })),
        }),
    )
}

fn correction() -> Value {
    let mut schema = signed(
        &["of", "text"],
        json!({
            "of": described(reference("id"), "The as-loaded record it corrects."),
            "text": text("What was wrong, and why."),
            "place": { "type": "string", "pattern": READING_PLACE, "description": "The reading that is set right." },
            "tape": described(reference("entry"), "As it should be."),
            "layer": described(reference("id"), "The layer whose lot is set right."),
            "lot": text("As it should be."),
        }),
    );
    schema["dependentRequired"] = json!({ "place": ["tape"], "tape": ["place"], "layer": ["lot"], "lot": ["layer"] });
    schema
}

fn evidence() -> Value {
    dated(
        &["vessel", "flow", "temperature"],
        json!({
            "vessel": reference("id"),
            "layer": described(reference("id"), "The layer, for a point of a paper or a test in a clear tube."),
            "flow": described(reference("entry"), "The flow, or the flow per area."),
            "temperature": described(reference("entry"), "The water's."),
            "minutes": described(reference("entry"), "How long the drain was watched."),
            "grains": { "type": "boolean", "description": "Whether grains came." },
            "expansion": described(reference("entry"), "The expansion that was read."),
            "drop": described(reference("entry"), "The pressure lost over the clean bed that was read."),
        }),
    )
}

fn picking_step() -> Value {
    let count = json!({ "type": "integer", "minimum": 0, "maximum": 4_294_967_295_u32 });
    let line = open_object(
        &["asked", "picked"],
        json!({
            "key": text("The item's key."),
            "item": text("What it is, as the list said."),
            "unit": text("How they are counted, as the list said."),
            "asked": count,
            "picked": count,
            "each_kg": number("What one weighs, where known."),
            "bin": { "type": "string" },
            "part_number": { "type": "string" },
            "lot": { "type": "string" },
            "date": text("The date on it."),
            "instead": text("What was taken instead."),
            "note": { "type": "string" },
            "for": { "type": "array", "items": { "type": "string" }, "description": "Which vessels it is for." },
            "returns": { "type": "boolean", "description": "Whether it comes back after the job." },
        }),
    );
    dated(
        &["step", "name"],
        json!({
            "step": ids(Step::ALL, Step::id),
            "name": text("Who did it."),
            "lines": { "type": "array", "items": line, "description": "What was picked; with the first step." },
        }),
    )
}

fn quote_issued() -> Value {
    let decimal = json!({ "type": "string", "pattern": "^-?[0-9]+(\\.[0-9]+)?$" });
    let texts = json!({ "type": "array", "items": { "type": "string" } });
    let line = open_object(
        &["key", "group", "name", "unit", "standing"],
        json!({
            "key": { "type": "string" },
            "group": ids(LineGroup::ALL, LineGroup::id),
            "name": { "type": "string" },
            "part_number": { "type": "string" },
            "note": { "type": "string" },
            "quantity": decimal,
            "unit": { "type": "string" },
            "price": decimal,
            "cost": decimal,
            "discount": described(decimal.clone(), "The share taken off; absent for none."),
            "net": decimal,
            "cost_together": decimal,
            "tax": text("Its tax class by name; absent for none."),
            "standing": ids(STANDINGS, standing_id),
            "instead_of": text("The name of the line it stands in for."),
            "on_request": { "type": "boolean" },
        }),
    );
    let totals = open_object(
        &["lines", "discount_share", "discount", "net", "total", "unpriced", "uncosted"],
        json!({
            "lines": decimal,
            "discount_share": decimal,
            "discount": decimal,
            "net": decimal,
            "total": decimal,
            "cost": decimal,
            "margin": decimal,
            "margin_share": decimal,
            "unpriced": { "type": "integer", "minimum": 0 },
            "uncosted": { "type": "integer", "minimum": 0 },
        }),
    );
    let mut properties = json!({
        "version": { "const": 1 },
        "number": { "type": "integer", "minimum": 0, "description": "Which revision, from 1." },
        "sample": { "type": "boolean", "description": "Whether every name and figure is invented." },
        "currency": { "type": "string" },
        "places": { "type": "integer", "minimum": 0, "description": "Decimal places of the currency." },
        "halves": described(ids(HALVES, halves_id), "What became of halves."),
        "lines": { "type": "array", "items": line },
        "removed": {
            "type": "array",
            "items": open_object(&["name", "reason"], json!({ "name": { "type": "string" }, "reason": { "type": "string" } })),
        },
        "freight": open_object(&["amount"], json!({
            "weight": decimal, "kilogram": { "type": "boolean" }, "rate": decimal, "amount": decimal,
        })),
        "taxes": {
            "type": "array",
            "items": open_object(&["name", "rate", "base", "amount"], json!({
                "name": { "type": "string" }, "rate": decimal, "base": decimal, "amount": decimal,
            })),
        },
        "totals": totals,
    });
    for key in ["assumptions", "packs", "yearly", "left_out"] {
        properties[key] = texts.clone();
    }
    let written = [
        "valid_until",
        "catalogue",
        "document",
        "title",
        "customer",
        "site",
        "owner",
        "job_kind",
        "exclusions",
        "notes",
        "customer_words",
    ];
    for key in written {
        properties[key] = json!({ "type": "string" });
    }
    let required = [
        "version",
        "number",
        "currency",
        "places",
        "halves",
        "lines",
        "removed",
        "taxes",
        "totals",
        "assumptions",
        "packs",
        "yearly",
        "left_out",
    ];
    described(dated(&required, properties), "A quote as it was issued: every text and figure as printed.")
}

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
