//! Codes with their values, and the sentence a person would read.

use bedwright_calc::quantity::{
    Amount, Basis, Caution, Fault, Mark, Problem, Reason, Remedy, Standing, Subject, Verdict,
};
use bedwright_job::entry::{Misread, Unit};
use bedwright_job::id::Id;
use bedwright_job::job::Locked;
use bedwright_job::reading::LayerFault;
use bedwright_job::words::Manner;
use serde_json::{Map, Value, json};

use super::figures::{put_amount, term};

/// The code of a basis.
pub const fn basis(basis: Basis) -> &'static str {
    match basis {
        Basis::Measured => "measured",
        Basis::Typed => "typed",
        Basis::Catalogue => "catalogue",
        Basis::Assumed => "assumed",
    }
}

/// The code of a source's standing.
pub const fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Typed => "typed",
        Standing::Derived => "derived",
        Standing::Published => "published",
        Standing::Library => "library",
        Standing::Practice => "practice",
        Standing::Memory => "memory",
    }
}

fn amounts(of: &[(&str, Amount)]) -> Value {
    let mut values = Map::new();
    for (name, amount) in of {
        put_amount(&mut values, name, *amount);
    }
    Value::Object(values)
}

/// What to bear in mind.
pub fn caution(manner: &Manner, caution: &Caution) -> Value {
    let (code, values) = match *caution {
        Caution::MeasureDiameter => ("measure_diameter", json!({})),
        Caution::AboveNominal { inside, nominal } => {
            ("above_nominal", amounts(&[("inside", inside), ("nominal", nominal)]))
        }
        Caution::MeasureDepth => ("measure_depth", json!({})),
        Caution::IfPackWasFull => ("if_pack_was_full", json!({})),
        Caution::BeyondFit { value, limit } => ("beyond_fit", amounts(&[("value", value), ("limit", limit)])),
        Caution::NotLifted => ("not_lifted", json!({})),
        Caution::SizesGuessed => ("sizes_guessed", json!({})),
        Caution::FromMemory => ("from_memory", json!({})),
        Caution::ChargesMiss { share } => ("charges_miss", amounts(&[("share", share)])),
        Caution::Overshoot { limit } => ("overshoot", amounts(&[("limit", limit)])),
        Caution::AboveRule { value, limit } => ("above_rule", amounts(&[("value", value), ("limit", limit)])),
        Caution::Supersaturated { index } => ("supersaturated", amounts(&[("index", index)])),
        Caution::WithoutVessel => ("without_vessel", json!({})),
        Caution::DensityVaries { low, high } => ("density_varies", amounts(&[("low", low), ("high", high)])),
    };
    json!({ "code": code, "values": values, "text": manner.caution(caution) })
}

/// Why there is no answer; `field` is the entry it comes from.
pub fn problem(manner: &Manner, problem: &Problem, field: Option<&str>) -> Value {
    let other = |code: &'static str, value: Amount, other, limit: Amount| {
        let mut values = amounts(&[("value", value), ("limit", limit)]);
        if let Value::Object(map) = &mut values {
            map.insert("other".to_owned(), term(other).into());
        }
        (code, values)
    };
    let (code, values) = match problem.fault {
        Fault::Missing => ("missing", json!({})),
        Fault::NotPositive { value } => ("not_positive", amounts(&[("value", value)])),
        Fault::OutOfRange { value, low, high } => {
            ("out_of_range", amounts(&[("value", value), ("low", low), ("high", high)]))
        }
        Fault::NotBelow { value, other: than, limit } => other("not_below", value, than, limit),
        Fault::NotAbove { value, other: than, limit } => other("not_above", value, than, limit),
        Fault::DoesNotFit { needs, room } => ("does_not_fit", amounts(&[("needs", needs), ("room", room)])),
        Fault::AlreadyReached { value, there } => ("already_reached", amounts(&[("value", value), ("there", there)])),
        Fault::WaitsFor { other } => ("waits_for", json!({ "other": term(other) })),
        Fault::NoSolution => ("no_solution", json!({})),
        Fault::TooFine { places } => ("too_fine", json!({ "places": places })),
        Fault::TooManyWays => ("too_many_ways", json!({})),
        Fault::CarriesAway { value } => ("carries_away", amounts(&[("value", value)])),
    };
    json!({
        "code": code, "term": term(problem.term), "field": field, "values": values, "text": manner.problem(problem),
    })
}

/// Why what was typed makes no sense; `unit` is the field's.
pub fn misread(manner: &Manner, misread: &Misread, unit: Unit, field: &str) -> Value {
    let (code, values) = misread_code(misread);
    json!({ "code": code, "field": field, "values": values, "text": manner.misread(misread, unit) })
}

fn misread_code(misread: &Misread) -> (&'static str, Value) {
    match misread {
        Misread::Empty => ("empty", json!({})),
        Misread::NotANumber { at, found } => ("not_a_number", json!({ "at": at, "found": found })),
        Misread::Ambiguous { as_decimal, as_thousands, written } => {
            ("ambiguous", json!({ "as_decimal": as_decimal, "as_thousands": as_thousands, "unit": written.id() }))
        }
        Misread::UnknownUnit(found) => ("unknown_unit", json!({ "found": found })),
        Misread::WrongDimension { found, wanted } => {
            let units: Vec<&str> = Unit::of(*wanted).iter().map(|unit| unit.id()).collect();
            ("wrong_dimension", json!({ "found": found.id(), "units": units }))
        }
        Misread::PartTooLarge { value, unit, below } => {
            ("part_too_large", json!({ "value": value, "unit": unit.id(), "below": below }))
        }
        Misread::TooLong => ("too_long", json!({})),
        Misread::TooLarge => ("too_large", json!({})),
        Misread::TooSmall => ("too_small", json!({})),
        Misread::DivideByZero => ("divide_by_zero", json!({})),
        Misread::NotWhole { value } => ("not_whole", json!({ "value": value })),
        Misread::NoSuchSize { diameter_in, height_in } => {
            ("no_such_size", json!({ "diameter_in": diameter_in, "height_in": height_in }))
        }
    }
}

/// Why a layer can't be read.
pub fn layer_fault(manner: &Manner, fault: &LayerFault) -> Value {
    let (code, field, values) = match fault {
        LayerFault::NoMaterial => ("no_material", "material", json!({})),
        LayerFault::UnknownMaterial(id) => ("unknown_material", "material", json!({ "material": id })),
        LayerFault::UnknownPack(id) => ("unknown_pack", "pack", json!({ "pack": id })),
        LayerFault::NoAmount => ("no_amount", "amount", json!({})),
        LayerFault::Amount(found) => {
            let (code, values) = misread_code(found);
            (code, "amount", values)
        }
        LayerFault::BulkDensity(found) => {
            let (code, values) = misread_code(found);
            (code, "bulk_density", values)
        }
    };
    json!({ "code": code, "field": field, "values": values, "text": manner.layer_fault(fault) })
}

/// A judgement; `layers` are the ids of the layers and `names` their names, bottom first.
pub fn verdict(manner: &Manner, verdict: &Verdict, layers: &[Id], names: &[String]) -> Value {
    let id = |index: usize| layers.get(index).map(Id::as_str);
    let (subject, of) = match verdict.subject {
        Subject::Gap { layer } => ("gap", vec![id(layer)]),
        Subject::Slot { layer } => ("slot", vec![id(layer)]),
        Subject::Neighbours { lower } => ("neighbours", vec![id(lower), id(lower + 1)]),
        Subject::Cover => ("cover", vec![]),
        Subject::Freeboard => ("freeboard", vec![]),
        Subject::Diameter => ("diameter", vec![]),
        Subject::Backwash { .. } => ("backwash", vec![]),
        Subject::CarryOver => ("carry_over", vec![]),
        Subject::UpperSlot => ("upper_slot", vec![]),
        Subject::Mixing { lower, upper } => ("mixing", vec![id(lower), id(upper)]),
        Subject::Rule { .. } => ("rule", vec![]),
        Subject::PressureLoss { peak: false } => ("pressure_loss", vec![]),
        Subject::PressureLoss { peak: true } => ("pressure_loss_peak", vec![]),
        Subject::Label { .. } => ("label", vec![]),
        Subject::ServiceLift => ("service_lift", vec![]),
        Subject::Feed { .. } => ("feed", vec![]),
    };
    let words = manner.verdict(verdict, names);
    let remedies: Vec<Value> = verdict
        .remedies
        .iter()
        .zip(&words.remedies)
        .map(|(mends, text)| {
            let (code, values) = remedy(mends);
            json!({ "code": code, "values": values, "text": text })
        })
        .collect();
    let (code, values) = reason(&verdict.reason);
    json!({
        "subject": subject, "layers": of, "mark": mark(verdict.mark),
        "reason": { "code": code, "values": values, "text": words.reason },
        "remedies": remedies,
        "basis": basis(verdict.basis), "source": verdict.source.id(), "text": words.headline,
    })
}

/// The code of a mark.
pub const fn mark(mark: Mark) -> &'static str {
    match mark {
        Mark::Fine => "fine",
        Mark::SetOnSite => "set_on_site",
        Mark::Caution => "caution",
        Mark::Stop => "stop",
    }
}

fn reason(reason: &Reason) -> (&'static str, Value) {
    match *reason {
        Reason::GapCentred { grains, wanted } => ("gap_centred", amounts(&[("grains", grains), ("wanted", wanted)])),
        Reason::GapLeaned { grains, wanted } => ("gap_leaned", amounts(&[("grains", grains), ("wanted", wanted)])),
        Reason::Slot { slot, grain } => ("slot", amounts(&[("slot", slot), ("grain", grain)])),
        Reason::GapHeld { grains } => ("gap_held", amounts(&[("grains", grains)])),
        Reason::CoarserAbove { below, above } => ("coarser_above", amounts(&[("below", below), ("above", above)])),
        Reason::SizeRatio { ratio, limit } => ("size_ratio", amounts(&[("size", ratio), ("limit", limit)])),
        Reason::FilterRatio { ratio, limit } => ("filter_ratio", amounts(&[("filter", ratio), ("limit", limit)])),
        Reason::NoRoom { needs, room } => ("no_room", amounts(&[("needs", needs), ("room", room)])),
        Reason::CoverAboveSlot { cover } => ("cover_above_slot", amounts(&[("cover", cover)])),
        Reason::Room { freeboard } => ("room", amounts(&[("freeboard", freeboard)])),
        Reason::AboveNominal { inside, nominal } => {
            ("above_nominal", amounts(&[("inside", inside), ("nominal", nominal)]))
        }
        Reason::Stands { cold, warm, room } => ("stands", amounts(&[("cold", cold), ("warm", warm), ("room", room)])),
        Reason::LiftsTooLittle { expansion, wanted } => {
            ("lifts_too_little", amounts(&[("expansion", expansion), ("wanted", wanted)]))
        }
        Reason::StandsTooHigh { expansion, room } => {
            ("stands_too_high", amounts(&[("expansion", expansion), ("room", room)]))
        }
        Reason::CarriesAway { speed, settling } => {
            ("carries_away", amounts(&[("speed", speed), ("settling", settling)]))
        }
        Reason::HeavierAbove { below, above } => ("heavier_above", amounts(&[("below", below), ("above", above)])),
        Reason::EdgesMix { below, above } => ("edges_mix", amounts(&[("below", below), ("above", above)])),
        Reason::AtLeast { value, limit } => ("at_least", amounts(&[("value", value), ("limit", limit)])),
        Reason::AtMost { value, limit } => ("at_most", amounts(&[("value", value), ("limit", limit)])),
        Reason::LiftsInService { speed, start } => ("lifts_in_service", amounts(&[("speed", speed), ("start", start)])),
    }
}

fn remedy(remedy: &Remedy) -> (&'static str, Value) {
    match *remedy {
        Remedy::PourSlowly => ("pour_slowly", json!({})),
        Remedy::FillPortOrManway => ("fill_port_or_manway", json!({})),
        Remedy::SmallerGrain { largest } => ("smaller_grain", amounts(&[("largest", largest)])),
        Remedy::CoarserGrain { smallest } => ("coarser_grain", amounts(&[("smallest", smallest)])),
        Remedy::LayerBetween => ("layer_between", json!({})),
        Remedy::MoreUnderbed { volume } => ("more_underbed", amounts(&[("volume", volume)])),
        Remedy::FewerPacks { packs } => ("fewer_packs", amounts(&[("packs", packs)])),
        Remedy::SwapLayers => ("swap_layers", json!({})),
        Remedy::CheckReadings => ("check_readings", json!({})),
        Remedy::TapeBareShell => ("tape_bare_shell", json!({})),
        Remedy::DrainCheck { flow, minutes } => ("drain_check", amounts(&[("flow", flow), ("minutes", minutes)])),
        Remedy::FlowControl { flow } => ("flow_control", amounts(&[("flow", flow)])),
        Remedy::TwoFlowControls { cold, warm } => ("two_flow_controls", amounts(&[("cold", cold), ("warm", warm)])),
        Remedy::NarrowerVessel { nominal } => ("narrower_vessel", amounts(&[("nominal", nominal)])),
        Remedy::MoreBackwash { flow } => ("more_backwash", amounts(&[("flow", flow)])),
        Remedy::LessBackwash { flow } => ("less_backwash", amounts(&[("flow", flow)])),
        Remedy::MoreRoom { length } => ("more_room", amounts(&[("length", length)])),
        Remedy::LessFlow { flow } => ("less_flow", amounts(&[("flow", flow)])),
        Remedy::MoreVessels { vessels } => ("more_vessels", amounts(&[("vessels", vessels)])),
        Remedy::ReducePressure => ("reduce_pressure", json!({})),
        Remedy::OtherVessel => ("other_vessel", json!({})),
    }
}

/// Why a section stays closed.
pub fn locked(why: &Locked) -> Value {
    match why {
        Locked::UnknownName => json!({ "code": "unknown_name", "values": {} }),
        Locked::TooNew { version } => json!({ "code": "too_new", "values": { "version": version } }),
        Locked::Unreadable { detail } => json!({ "code": "unreadable", "values": { "detail": detail } }),
    }
}
