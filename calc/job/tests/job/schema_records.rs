//! Records in the published schema: every kind as it is saved, made from the ids the code knows. `records` proves them.

use bedwright_calc::fill::SurfaceState;
use bedwright_job::care::visit::{Drain, TestUnit, VisitField};
use bedwright_job::evidence::EvidenceKind;
use bedwright_job::picked::Step;
use bedwright_job::quote::LineGroup;
use bedwright_job::sections::loading::{LoadingText, RemovalMethod};
use bedwright_job::sections::quote::{HALVES, STANDINGS, halves_id, standing_id};
use serde_json::{Map, Value, json};

use crate::schema::{described, drum, ids, open_object, reference, text};

/// The place of a tape reading, by its name.
const READING_PLACE: &str = "^(found|left|[a-z0-9-]{1,64}/(end|[1-9][0-9]*))$";

/// Every kind of record: what it says it is, the name of its description, and that.
pub fn kinds() -> Vec<(&'static str, &'static str, Value)> {
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
