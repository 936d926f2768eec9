//! The published schema: made from the ids the code knows, and proved on files.

use bedwright_calc::fill::SurfaceState;
use bedwright_calc::hydraulics::Purpose;
use bedwright_calc::supply::lifting::Grip;
use bedwright_calc::vessel::Opening;
use bedwright_job::entry::Unit;
use bedwright_job::field::{KitField, LineField, QuoteField, SupplyField, SurveyField, WaterField};
use bedwright_job::prices::{Care, Origin, PriceKind};
use bedwright_job::saved::{FORMAT, VERSION, job_text, read_job};
use bedwright_job::sections::loading::{LoadingText, RemovalMethod, WorkSheet};
use bedwright_job::sections::plan::TargetKind;
use bedwright_job::sections::quote::{HALVES, LineText, PriceBy, QuoteText, STANDINGS, halves_id, standing_id};
use bedwright_job::sections::site::{ARRANGEMENTS, REGIMES, WaterSource, arrangement_id, regime_id};
use bedwright_job::sections::survey::{CollectorKind, DiameterWay, HeadShape, Path, Standing};
use jsonschema::Validator;
use serde_json::{Map, Value, json};

use crate::{jobs, repository, saved, schema_records};

/// Ids as a list to choose from.
pub fn ids<T: Copy>(all: &[T], id: impl Fn(T) -> &'static str) -> Value {
    json!({ "enum": all.iter().map(|one| id(*one)).collect::<Vec<_>>() })
}

pub fn described(mut schema: Value, description: &str) -> Value {
    schema["description"] = description.into();
    schema
}

pub fn text(description: &str) -> Value {
    json!({ "type": "string", "description": description })
}

pub fn reference(name: &str) -> Value {
    json!({ "$ref": format!("#/$defs/{name}") })
}

/// An object that must have some of its fields and may have others that no version up to this one knows.
pub fn open_object(required: &[&str], properties: Value) -> Value {
    json!({ "type": "object", "required": required, "properties": properties })
}

/// A section: a body of version 1 as described, one of a later version as it likes.
fn section(body: &str) -> Value {
    let mut section = open_object(
        &["version", "body"],
        json!({
            "version": { "type": "integer", "minimum": 1 },
            "revision": described(reference("revision"), "The state the section is in; none before its first change."),
            "parent": described(reference("revision"), "The state it was in when it was handed over."),
            "base": text("The section's text as it was handed over."),
        }),
    );
    section["if"] = json!({ "properties": { "version": { "const": 1 } } });
    section["then"] = json!({ "properties": { "body": reference(body) } });
    section
}

fn entry(with_standing: bool) -> Value {
    let mut properties = json!({
        "text": text("As typed."),
        "unit": described(ids(Unit::ALL, Unit::id), "The unit of the field: what the text means where it names none."),
        "meaning": {
            "enum": ["DecimalPoint", "Thousands"],
            "description": "How a mark that could be taken two ways is meant, as in 1,234.",
        },
    });
    let mut required = vec!["text", "unit"];
    if with_standing {
        properties["standing"] = ids(Standing::ALL, Standing::id);
        required.push("standing");
    }
    let mut entry = open_object(&required, properties);
    // A field of an entry that isn't known closes its section, so that it can't be lost.
    entry["additionalProperties"] = false.into();
    entry
}

fn head() -> Value {
    open_object(
        &["title", "kind", "created"],
        json!({
            "title": text("What the job is called."),
            "customer": text("Whom it is for."),
            "site": text("Where it is."),
            "owner": text("Whose sheets these are: the owner in the title block."),
            "number": text("Number in the person's own books."),
            "notes": { "type": "string" },
            "kind": { "enum": ["new", "changeout", "partial", "top_up"] },
            "created": text("The day it was made, as 2026-11-24."),
            "binned": text("The day it was put into the bin; absent while it isn't there."),
            "sample": { "type": "boolean", "description": "Whether every name and figure is invented." },
        }),
    )
}

fn vessel() -> Value {
    let heads = ids(HeadShape::ALL, HeadShape::id);
    let tops: Vec<HeadShape> = HeadShape::ALL.iter().copied().filter(|shape| *shape != HeadShape::Conical).collect();
    let entries: Map<String, Value> =
        SurveyField::ALL.iter().map(|field| (field.id().to_owned(), reference("survey_entry"))).collect();
    open_object(
        &[
            "id",
            "path",
            "diameter_by",
            "bottom_head",
            "top_head",
            "opening",
            "riser",
            "bottom_collector",
            "upper_collector",
            "entries",
        ],
        json!({
            "id": reference("id"),
            "tags": {
                "type": "array", "items": { "type": "string" },
                "description": "The tags of the vessels that are the same; none stands for one vessel without a tag.",
            },
            "path": described(ids(Path::ALL, Path::id), "The state in which it was found."),
            "diameter_by": described(ids(DiameterWay::ALL, DiameterWay::id), "How the inside diameter is found."),
            "bottom_head": heads,
            "top_head": ids(&tops, HeadShape::id),
            "opening": ids(Opening::ALL, Opening::id),
            "riser": { "type": "boolean" },
            "bottom_collector": ids(CollectorKind::ALL, CollectorKind::id),
            "upper_collector": { "type": "boolean" },
            "entries": {
                "type": "object", "properties": entries,
                "description": "What was typed, by field. Heights are above the lowest inside point; tape readings from the \
                                rim of the opening down.",
            },
            "notes": { "type": "string" },
        }),
    )
}

fn layer() -> Value {
    open_object(
        &["id", "material", "role", "target"],
        json!({
            "id": reference("id"),
            "material": text("The id of a material of the catalogue; empty until one is chosen."),
            "pack": text("The id of a pack of the catalogue; absent for the material's most usual one."),
            "role": { "enum": ["underbed", "media"] },
            "target": described(ids(TargetKind::ALL, TargetKind::id), "What the amount is an amount of."),
            "amount": reference("entry"),
            "minimum": { "type": "boolean", "description": "Whether the amount may not be met by a little less." },
            "bulk_density": described(reference("entry"), "Dry mass over the volume it fills as poured."),
        }),
    )
}

fn site() -> Value {
    open_object(
        &["source", "entries", "vessels"],
        json!({
            "source": described(ids(WaterSource::ALL, WaterSource::id), "Where the water comes from."),
            "entries": reference("water_entries_1"),
            "vessels": {
                "type": "object", "propertyNames": reference("id"), "additionalProperties": reference("duty_1"),
                "description": "What each vessel is asked to do, by the vessel's id.",
            },
        }),
    )
}

fn duty() -> Value {
    open_object(
        &["regime", "arrangement", "entries", "grains"],
        json!({
            "purpose": described(ids(Purpose::ALL, Purpose::id), "What the bed is there for; absent for what is usual."),
            "regime": described(ids(REGIMES, regime_id), "How water goes through it."),
            "arrangement": described(ids(ARRANGEMENTS, arrangement_id), "How it shares the flow with others of its kind."),
            "entries": reference("water_entries_1"),
            "grounds": described(json!({ "type": "string" }), "Where what was typed of the bed's life comes from."),
            "grains": {
                "type": "object", "propertyNames": reference("id"),
                "additionalProperties": {
                    "type": "object", "required": ["entries"],
                    "properties": { "entries": reference("water_entries_1") }, "additionalProperties": false,
                },
                "description": "What was typed of the grains of its layers, by the layer's id.",
            },
        }),
    )
}

fn loading() -> Value {
    open_object(
        &[],
        json!({
            "acknowledged": {
                "type": "array",
                "items": stamped(&["sheet", "day"], json!({
                    "sheet": ids(WorkSheet::ALL, WorkSheet::id),
                    "day": text("The day, as 2026-11-24."),
                })),
                "description": "Who read the cautions of which sheet on which day.",
            },
            "tags": {
                "type": "array", "items": reference("tag_loading_1"),
                "description": "What was done at each vessel, told by its tag; none of them twice.",
            },
        }),
    )
}

fn supply() -> Value {
    let count = |description: &str| json!({ "type": "integer", "minimum": 0, "maximum": 4_294_967_295_u32, "description": description });
    let entries: Map<String, Value> =
        SupplyField::ALL.iter().map(|field| (field.id().to_owned(), reference("entry"))).collect();
    let pack = open_object(
        &[],
        json!({
            "offered": { "type": "boolean", "description": "Whether it may be taken; absent while nobody said." },
            "locked": count("How many are taken whatever else is best."),
        }),
    );
    let material = open_object(
        &["packs"],
        json!({
            "per_vessel": { "type": "boolean", "description": "Whether every vessel gets whole packs of its own." },
            "opened": described(reference("entry"), "What is left in opened packs."),
            "packs": { "type": "object", "additionalProperties": pack, "description": "By the pack's id." },
        }),
    );
    let line = open_object(
        &[],
        json!({
            "asked": count("How many were asked for when it was ticked."),
            "instead": text("What was taken instead."),
            "date": text("The date on it."),
        }),
    );
    open_object(
        &["materials", "entries", "grip", "lines"],
        json!({
            "materials": { "type": "object", "additionalProperties": material, "description": "By the material's id." },
            "entries": {
                "type": "object", "properties": entries, "additionalProperties": false,
                "description": "What was typed of stock, pallets, the lift and labels.",
            },
            "grip": described(ids(Grip::ALL, Grip::id), "How well hands hold the packs."),
            "lines": { "type": "object", "additionalProperties": line, "description": "By the key of the bill's line." },
        }),
    )
}

fn prices() -> Value {
    open_object(
        &["rows"],
        json!({
            "title": text("What the list is called that rows were taken from."),
            "currency": text("The currency of its prices, as in USD; absent where nobody said."),
            "list": described(reference("revision"), "The state that list was in; absent for the list as it ships."),
            "rows": {
                "type": "object", "propertyNames": { "minLength": 1 }, "additionalProperties": reference("price_row_1"),
                "description": "The rows of the price list that the job carries, by their keys.",
            },
        }),
    )
}

fn kit() -> Value {
    let entries: Map<String, Value> =
        KitField::ALL.iter().map(|field| (field.id().to_owned(), reference("entry"))).collect();
    open_object(
        &["entries", "left_out"],
        json!({
            "entries": {
                "type": "object", "properties": entries, "additionalProperties": false,
                "description": "What the parts of the job are counted by, as typed.",
            },
            "left_out": {
                "type": "object", "additionalProperties": { "type": "string" },
                "description": "Lines left out of the bill: the reason, by the key of the row that prices them.",
            },
        }),
    )
}

/// What somebody did, and when.
fn stamped(required: &[&str], properties: Value) -> Value {
    let mut properties = properties;
    properties["at"] = text("The instant as ISO 8601 writes it, in the time of the place.");
    properties["by"] = text("The person's name, as typed.");
    let required: Vec<&str> = ["at", "by"].iter().chain(required).copied().collect();
    let mut object = open_object(&required, properties);
    object["additionalProperties"] = false.into();
    object
}

/// A drum of a removal.
pub fn drum() -> Value {
    open_object(
        &["id"],
        json!({
            "id": reference("id"),
            "label": { "type": "string" },
            "contents": { "type": "string" },
            "weight": reference("entry"),
        }),
    )
}

fn tag_loading() -> Value {
    let texts: Map<String, Value> =
        LoadingText::ALL.iter().map(|which| (which.id().to_owned(), json!({ "type": "string" }))).collect();
    open_object(
        &["vessel"],
        json!({
            "vessel": reference("id"),
            "tag": text("Its tag; absent where it has none."),
            "ticks": {
                "type": "object", "additionalProperties": stamped(&[], json!({})),
                "description": "Steps that were ticked, by their ids.",
            },
            "readings": {
                "type": "object",
                "propertyNames": { "pattern": "^(found|left|[a-z0-9-]{1,64}/(end|[1-9][0-9]*))$" },
                "additionalProperties": stamped(&["state"], json!({
                    "state": described(ids(SurfaceState::ALL, SurfaceState::id), "Only readings of one state are compared."),
                    "tape": described(reference("entry"), "From the rim down; absent where it could not be taken."),
                })),
                "description": "Tape readings: as found, as left after some was taken out, after a pack of a layer, after its last.",
            },
            "poured": {
                "type": "object", "propertyNames": reference("id"), "additionalProperties": reference("entry"),
                "description": "How many packs of a layer went in, where it isn't what was planned.",
            },
            "lots": {
                "type": "object", "propertyNames": reference("id"), "additionalProperties": { "type": "string" },
                "description": "Lot and date of a layer's packs.",
            },
            "texts": { "type": "object", "properties": texts, "additionalProperties": false },
            "drums": { "type": "array", "items": drum(), "description": "What the old bed went into." },
            "method": described(ids(RemovalMethod::ALL, RemovalMethod::id), "How the old bed was taken out."),
            "photo": {
                "type": "object", "required": ["id", "bytes"],
                "properties": { "id": reference("id"), "bytes": { "type": "integer", "minimum": 0, "maximum": 4_294_967_295_u32 } },
                "additionalProperties": false,
                "description": "A photo on the device that took it; it doesn't travel with the job.",
            },
        }),
    )
}

fn price_row() -> Value {
    // Twelve digits, and six behind the point.
    let money = |description: &str| json!({ "type": "string", "pattern": "^[0-9]{1,12}(\\.[0-9]{1,6})?$", "description": description });
    open_object(
        &["kind"],
        json!({
            "kind": described(ids(PriceKind::ALL, PriceKind::id), "What it prices."),
            "part_number": { "type": "string" },
            "name": text("Absent where the page has a name for the item of this key."),
            "bin": { "type": "string" },
            "unit": text("What one is."),
            "cost": money("What one costs; absent while it isn't known."),
            "price": money("What one sells for; absent while it isn't known."),
            "tax_class": { "type": "string" },
            "size": described(reference("entry"), "The length it is stocked in, or what a pack holds."),
            "superseded_by": text("The part number of what takes its place."),
            "care": {
                "type": "array", "items": ids(Care::ALL, Care::id),
                "description": "How it is stored, and what can hurt.",
            },
            "retired": { "type": "boolean", "description": "Whether it is no longer offered." },
            "origin": described(ids(Origin::ALL, Origin::id), "Where it comes from; absent for a person's own."),
        }),
    )
}

/// Entries or texts by field, and nothing else.
fn by_field<T: Copy>(all: &[T], id: impl Fn(T) -> &'static str, each: Value) -> Value {
    let fields: Map<String, Value> = all.iter().map(|field| (id(*field).to_owned(), each.clone())).collect();
    json!({ "type": "object", "properties": fields, "additionalProperties": false })
}

fn quote() -> Value {
    let list = |name: &str, description: &str| json!({ "type": "array", "items": reference(name), "description": description });
    open_object(
        &["price_by", "halves", "entries", "texts", "taxes", "labour", "lines"],
        json!({
            "price_by": described(ids(PriceBy::ALL, PriceBy::id), "How a price is found where none is typed on the line."),
            "halves": described(ids(HALVES, halves_id), "What becomes of halves of the currency's smallest unit."),
            "places": {
                "type": "integer", "minimum": 0, "maximum": 4,
                "description": "Decimal places, where they aren't those of the currency.",
            },
            "freight_by_kilogram": { "type": "boolean", "description": "Whether freight is charged by the kilogram." },
            "entries": by_field(QuoteField::ALL, QuoteField::id, reference("entry")),
            "texts": by_field(QuoteText::ALL, QuoteText::id, json!({ "type": "string" })),
            "taxes": list("tax_class_1", "The first is the usual one."),
            "labour": list("labour_1", "How long work takes; a vessel takes the smallest size that holds it."),
            "lines": list("quote_line_1", "What is said of lines, by key; own lines in their order."),
        }),
    )
}

fn quote_line() -> Value {
    open_object(
        &["key", "texts", "entries"],
        json!({
            "key": text("That of the bill's line, or own: or labour: and an id."),
            "standing": described(ids(STANDINGS, standing_id), "Whether it counts; absent for firm."),
            "on_request": { "type": "boolean", "description": "Whether its price is given on request." },
            "removed": text("Why it was taken out; absent while it stands."),
            "tax": text("The id of its tax class, none for untaxed; absent for the usual."),
            "instead_of": text("The key of the line it stands in for, as an alternate."),
            "texts": by_field(LineText::ALL, LineText::id, json!({ "type": "string" })),
            "entries": by_field(LineField::ALL, LineField::id, reference("entry")),
        }),
    )
}

fn search() -> Value {
    open_object(
        &["purpose", "arrangement", "entries"],
        json!({
            "purpose": described(ids(Purpose::ALL, Purpose::id), "What the bed is to be there for."),
            "arrangement": described(ids(ARRANGEMENTS, arrangement_id), "How several vessels would share the flow."),
            "media": text("The id of what treats the water; absent for what is usual for the purpose."),
            "underbed": text("The id of the gravel in the bottom head; absent for none."),
            "riser_in_parts": {
                "type": "boolean", "description": "Whether the riser comes in parts, or goes in before the vessel is stood up.",
            },
            "entries": reference("water_entries_1"),
        }),
    )
}

/// The schema, from the ids the code knows.
fn schema() -> Value {
    let sections = ["head", "survey", "plan", "picking", "site", "loading", "prices", "kit", "supply", "search"];
    let mut known: Map<String, Value> =
        sections.iter().map(|name| ((*name).to_owned(), section(&format!("{name}_1")))).collect();
    // Files of before may hold anything under this name.
    known.insert("quote".to_owned(), json!({ "if": { "type": "object" }, "then": section("quote_1") }));
    let mut file = open_object(
        &["format", "version", "id", "sections"],
        json!({
            "format": { "const": FORMAT },
            "version": { "const": VERSION },
            "id": reference("id"),
            "sections": {
                "type": "object", "properties": known,
                "description": "Parts that are kept, sent and joined on their own. One that is absent was not sent; it is not \
                                deleted. One of an unknown name is kept as it came.",
            },
            "records": {
                "type": "array",
                "items": reference("record"),
                "description": "What happened and stays: only ever added to.",
            },
        }),
    );
    let Value::Object(file) = &mut file else { unreachable!() };
    let mut schema = Map::new();
    schema.insert("$schema".to_owned(), "https://json-schema.org/draft/2020-12/schema".into());
    schema.insert("$id".to_owned(), "urn:bedwright:job:1".into());
    schema.insert("title".to_owned(), "Bedwright job, version 1".into());
    schema.insert(
        "description".to_owned(),
        "One site's work on pressure vessels filled with granular media. Fields that are not named here are kept as they came.".into(),
    );
    schema.append(file);
    schema.insert(
        "$defs".to_owned(),
        json!({
            "id": { "type": "string", "pattern": "^[a-z0-9-]{1,64}$", "description": "A name that never changes." },
            "revision": open_object(&["device", "counter"], json!({
                "device": { "type": "string" },
                "counter": { "type": "integer", "minimum": 0 },
            })),
            "entry": entry(false),
            "survey_entry": entry(true),
            "head_1": head(),
            "survey_1": open_object(&["vessels"], json!({ "vessels": { "type": "array", "items": reference("vessel_1") } })),
            "vessel_1": vessel(),
            "plan_1": open_object(&["vessels"], json!({
                "vessels": {
                    "type": "object", "propertyNames": reference("id"), "additionalProperties": reference("vessel_plan_1"),
                    "description": "By the vessel's id.",
                },
            })),
            "vessel_plan_1": open_object(&["layers"], json!({
                "layers": { "type": "array", "items": reference("layer_1"), "description": "Bottom first." },
                "bucket": described(reference("entry"), "The bucket part bags are measured with."),
            })),
            "layer_1": layer(),
            "picking_1": open_object(&["lines"], json!({
                "lines": {
                    "type": "object", "additionalProperties": reference("pick_line_1"),
                    "description": "By the key of the bill's line.",
                },
            })),
            "loading_1": loading(),
            "tag_loading_1": tag_loading(),
            "site_1": site(),
            "supply_1": supply(),
            "prices_1": prices(),
            "price_row_1": price_row(),
            "kit_1": kit(),
            "duty_1": duty(),
            "quote_1": quote(),
            "quote_line_1": quote_line(),
            "tax_class_1": open_object(&["id", "name"], json!({
                "id": reference("id"),
                "name": { "type": "string" },
                "rate": reference("entry"),
            })),
            "labour_1": open_object(&["id"], json!({
                "id": reference("id"),
                "kind": described(json!({ "enum": ["new", "changeout", "partial", "top_up"] }), "Absent for any."),
                "up_to": described(reference("entry"), "The largest inside diameter; absent for any."),
                "hours": described(reference("entry"), "For one vessel."),
            })),
            "water_entries_1": {
                "type": "object",
                "properties": WaterField::ALL
                    .iter()
                    .map(|field| (field.id().to_owned(), reference("survey_entry")))
                    .collect::<Map<String, Value>>(),
                "additionalProperties": false,
                "description": "What was typed, by field.",
            },
            "search_1": search(),
            "pick_line_1": open_object(&[], json!({
                "bin": { "type": "string" },
                "part_number": { "type": "string" },
                "lot": { "type": "string" },
                "note": { "type": "string" },
                "picked": { "type": "integer", "minimum": 0, "maximum": 4_294_967_295_u32 },
            })),
        }),
    );
    let Some(Value::Object(definitions)) = schema.get_mut("$defs") else { unreachable!() };
    definitions.insert("record".to_owned(), schema_records::record());
    definitions.extend(schema_records::definitions());
    Value::Object(schema)
}

fn pretty(value: &Value) -> String {
    serde_json::to_string_pretty(value).unwrap() + "\n"
}

fn example() -> String {
    pretty(&serde_json::from_str(&job_text(&jobs::sample())).unwrap())
}

fn published(name: &str) -> String {
    std::fs::read_to_string(repository("public").join(name)).unwrap()
}

pub fn validator() -> Validator {
    jsonschema::draft202012::new(&serde_json::from_str(&published("job.schema.json")).unwrap()).unwrap()
}

#[test]
#[ignore = "writes into the repository: run after a change of the format"]
fn write_the_published_schema_and_example() {
    std::fs::write(repository("public/job.schema.json"), pretty(&schema())).unwrap();
    std::fs::write(repository("public/job.example.json"), example()).unwrap();
}

#[test]
fn the_published_schema_is_the_one_the_code_means() {
    assert_eq!(published("job.schema.json"), pretty(&schema()), "run write_the_published_schema_and_example");
}

#[test]
fn the_published_example_is_the_sample() {
    assert_eq!(published("job.example.json"), example(), "run write_the_published_schema_and_example");
    assert_eq!(read_job(&published("job.example.json")).unwrap(), jobs::sample());
}

/// Against the rules of the draft itself, which the validator's library carries.
#[test]
fn the_published_schema_is_a_schema() {
    let schema = serde_json::from_str(&published("job.schema.json")).unwrap();
    assert!(jsonschema::meta::validate(&schema).is_ok());
}

#[test]
fn the_schema_takes_every_saved_file_and_the_example() {
    let validator = validator();
    let example = ("example".to_owned(), published("job.example.json"));
    for (name, text) in saved::files().into_iter().chain([example]) {
        let file: Value = serde_json::from_str(&text).unwrap();
        // Sections of unknown names may be anything; known ones are objects.
        let errors: Vec<String> =
            validator.iter_errors(&file).map(|error| format!("{error} at {}", error.instance_path())).collect();
        assert_eq!(errors, Vec::<String>::new(), "{name}");
    }
}

/// Each is wrong in one place. What the schema refuses is not read as if nothing were wrong: the file is refused, or the
/// section stays closed.
#[test]
fn the_schema_refuses_what_the_reader_does_not_take() {
    let validator = validator();
    let good: Value = serde_json::from_str(&example()).unwrap();
    let wrong: [(&str, saved::Breaks); 29] = [
        ("other format", |file| file["format"] = "another".into()),
        ("no format", |file| drop(file.as_object_mut().unwrap().remove("format"))),
        ("no version", |file| drop(file.as_object_mut().unwrap().remove("version"))),
        ("later version", |file| file["version"] = 2.into()),
        ("empty id", |file| file["id"] = "".into()),
        ("no sections", |file| drop(file.as_object_mut().unwrap().remove("sections"))),
        ("sections in a list", |file| file["sections"] = json!([])),
        ("section without version", |file| drop(file["sections"]["plan"].as_object_mut().unwrap().remove("version"))),
        ("section without body", |file| drop(file["sections"]["plan"].as_object_mut().unwrap().remove("body"))),
        ("revision without counter", |file| file["sections"]["plan"]["revision"] = json!({ "device": "x" })),
        ("counter below nought", |file| file["sections"]["plan"]["revision"]["counter"] = json!(-1)),
        ("kind", |file| file["sections"]["head"]["body"]["kind"] = "party".into()),
        ("title missing", |file| drop(file["sections"]["head"]["body"].as_object_mut().unwrap().remove("title"))),
        ("cone on top", |file| file["sections"]["survey"]["body"]["vessels"][0]["top_head"] = "conical".into()),
        ("opening", |file| file["sections"]["survey"]["body"]["vessels"][0]["opening"] = "window".into()),
        ("unit", |file| file["sections"]["survey"]["body"]["vessels"][0]["entries"]["wall"]["unit"] = "furlong".into()),
        ("number for a text", |file| {
            file["sections"]["survey"]["body"]["vessels"][0]["entries"]["wall"]["text"] = json!(0.16)
        }),
        ("standing", |file| {
            let wall = &mut file["sections"]["survey"]["body"]["vessels"][0]["entries"]["wall"];
            drop(wall.as_object_mut().unwrap().remove("standing"));
        }),
        ("target", |file| {
            file["sections"]["plan"]["body"]["vessels"]["filter"]["layers"][0]["target"] = "as_usual".into()
        }),
        ("role", |file| file["sections"]["plan"]["body"]["vessels"]["filter"]["layers"][0]["role"] = "ballast".into()),
        ("price in words", |file| file["sections"]["prices"] = priced(json!({ "kind": "part", "price": "dear" }))),
        ("price below nought", |file| file["sections"]["prices"] = priced(json!({ "kind": "part", "price": "-1" }))),
        ("care", |file| file["sections"]["prices"] = priced(json!({ "kind": "pack", "care": ["keep_warm"] }))),
        ("reason", |file| file["sections"]["kit"] = kitted(json!({ "entries": {}, "left_out": { "k": 1 } }))),
        ("kit entry", |file| file["sections"]["kit"] = kitted(json!({ "entries": { "x": {} }, "left_out": {} }))),
        ("grip", |file| file["sections"]["supply"] = supplied(json!({ "grip": "firm" }))),
        ("locked below nought", |file| {
            file["sections"]["supply"] =
                supplied(json!({ "materials": { "m": { "packs": { "p": { "locked": -1 } } } } }))
        }),
        ("an entry nobody knows", |file| {
            file["sections"]["supply"] = supplied(json!({ "entries": { "lid": { "text": "1", "unit": "mm" } } }))
        }),
        ("picked below nought", |file| file["sections"]["picking"]["body"]["lines"]["k"] = json!({ "picked": -1 })),
    ];
    assert!(validator.is_valid(&good));
    for (what, breaks) in wrong {
        let mut file = good.clone();
        breaks(&mut file);
        assert!(!validator.is_valid(&file), "{what}");
        let taken = read_job(&file.to_string()).is_ok_and(|job| job.locked.is_empty());
        assert!(!taken, "{what} is read all the same");
    }
}

/// A section of the kit.
fn kitted(body: Value) -> Value {
    json!({ "version": 1, "body": body })
}

/// A section of prices with one row.
fn priced(row: Value) -> Value {
    json!({ "version": 1, "body": { "rows": { "own:x": row } } })
}

/// A section of supply with something in it.
fn supplied(with: Value) -> Value {
    let mut body = json!({ "materials": {}, "entries": {}, "grip": "poor", "lines": {} });
    for (key, value) in with.as_object().unwrap() {
        body[key] = value.clone();
    }
    json!({ "version": 1, "body": body })
}

/// What is not known must not be refused: later versions add fields, sections and records.
#[test]
fn the_schema_takes_what_it_does_not_know() {
    let validator = validator();
    let mut file = saved::unknown_everywhere();
    assert!(validator.is_valid(&file), "{:?}", validator.validate(&file).err().map(|error| error.to_string()));
    file["sections"]["survey"] = json!({ "version": 9, "body": 3 });
    assert!(validator.is_valid(&file));
}
