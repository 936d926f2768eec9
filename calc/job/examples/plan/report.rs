//! Everything a job says.

use std::sync::Arc;

use bedwright_calc::fill::{LayerFill, Plan, Role, Tape};
use bedwright_calc::quantity::{Problem, Term, metres};
use bedwright_calc::vessel::Vessel;
use bedwright_job::Job;
use bedwright_job::answers::{LayerAnswer, LayerOutcome, VesselAnswers, depth_rows, job_answers};
use bedwright_job::entry::{Dimension, Unit};
use bedwright_job::field::SurveyField;
use bedwright_job::id::Id;
use bedwright_job::reading::field_of;
use bedwright_job::sections::plan::{LayerPlan, VesselPlan};
use bedwright_job::sections::survey::VesselSurvey;
use bedwright_job::words::Manner;
use serde_json::{Map, Value, json};

use super::figures::{put, put_amount, put_known, put_number, sources};
use super::{codes, order, water};

/// A job's answers.
pub fn report(job: &Job, manner: &Manner, depth_table: bool) -> Value {
    let (answers, bill) = job_answers(job);
    let vessels: Vec<Value> = answers
        .iter()
        .zip(&job.survey.body.vessels)
        .map(|(answer, survey)| {
            let plan = job.plan_of(&survey.id);
            let mut value = vessel(answer, survey, &plan, manner, depth_table);
            let ids: Vec<Id> = plan.layers.iter().map(|layer| layer.id.clone()).collect();
            let names: Vec<String> = plan.layers.iter().map(|layer| manner.material(&layer.material)).collect();
            if let Value::Object(map) = &mut value {
                map.insert("water".to_owned(), water::water(job, answer, &ids, &names, manner));
            }
            value
        })
        .collect();
    json!({
        "job": head(job),
        "vessels": vessels,
        "bill": order::bill(&bill, manner),
        "sources": sources(),
    })
}

fn head(job: &Job) -> Value {
    let closed: Vec<Value> =
        job.locked.iter().map(|(name, locked)| json!({ "section": name, "why": codes::locked(&locked.why) })).collect();
    json!({
        "id": job.id.as_str(), "title": job.head.body.title, "kind": order::kind(job.head.body.kind),
        "sample": job.head.body.sample, "created": job.head.body.created, "closed_sections": closed,
        "records": job.records.len(),
    })
}

fn vessel(
    answer: &VesselAnswers,
    survey: &Arc<VesselSurvey>,
    plan: &Arc<VesselPlan>,
    manner: &Manner,
    table: bool,
) -> Value {
    let mut map = Map::new();
    map.insert("id".to_owned(), answer.id.as_str().into());
    map.insert("tags".to_owned(), json!(survey.tags));
    map.insert("count".to_owned(), answer.count.into());
    let layers_filled = answer.layers.iter().all(|layer| layer.fill().is_some());
    let complete = answer.vessel.is_some() && layers_filled && answer.problems.is_empty() && answer.bucket.is_none();
    map.insert("complete".to_owned(), complete.into());
    map.insert("survey".to_owned(), entries(answer, survey, manner));
    let mut problems: Map<String, Value> = answer
        .problems
        .iter()
        .map(|(field, problem)| (field.id().to_owned(), codes::problem(manner, problem, Some(field.id()))))
        .collect();
    if let Some(problem) = &answer.problem {
        problems.insert("other".to_owned(), codes::problem(manner, problem, None));
    }
    if let Some(misread) = &answer.bucket {
        problems.insert("bucket".to_owned(), codes::misread(manner, misread, unit_of(plan), "bucket"));
    }
    map.insert("problems".to_owned(), Value::Object(problems));
    if let Some(vessel) = &answer.vessel {
        inside(&mut map, vessel, manner);
    }
    if let Some(cut) = &answer.riser_cut {
        put(&mut map, "riser_cut", cut, manner);
    }
    let layers: Vec<Value> = answer
        .layers
        .iter()
        .zip(&plan.layers)
        .map(|(layer, asked)| layer_value(layer, asked, survey, manner))
        .collect();
    map.insert("layers".to_owned(), layers.into());
    if let Some(filled) = &answer.plan {
        fill(&mut map, filled, &plan.layers, manner);
    }
    if table {
        map.insert("depth_table".to_owned(), rows(answer, manner.metric));
    }
    Value::Object(map)
}

fn unit_of(plan: &VesselPlan) -> Unit {
    plan.bucket.as_ref().map_or(Unit::UsGallon, |entry| entry.unit)
}

fn rows(answer: &VesselAnswers, metric: bool) -> Value {
    let row = |row: bedwright_calc::fill::DepthRow| json!({ "tape_reading_m": row.tape.value, "height_m": row.height.value, "volume_m3": row.volume.value });
    depth_rows(answer, metric).into_iter().map(row).collect()
}

fn entries(answer: &VesselAnswers, survey: &VesselSurvey, manner: &Manner) -> Value {
    let reading = &answer.survey;
    let mut typed = Map::new();
    for (field, understood) in &reading.understood {
        let mut entry = Map::new();
        let unit = match understood.dimension {
            Dimension::Length => "value_m",
            Dimension::Volume => "value_m3",
            _ => "value",
        };
        entry.insert(unit.to_owned(), json!(understood.si));
        if let Some(there) = survey.entries.get(field) {
            entry.insert("typed".to_owned(), there.entry.text.as_str().into());
            entry.insert("basis".to_owned(), there.standing.id().into());
        }
        entry.insert("understood".to_owned(), manner.echo(understood).into());
        typed.insert(field.id().to_owned(), Value::Object(entry));
    }
    let mut assumed = Map::new();
    for (field, known) in &reading.assumed {
        put_known(&mut assumed, field.id(), known);
    }
    let misread: Map<String, Value> = reading
        .misread
        .iter()
        .map(|(field, misread)| {
            let unit = survey.entries.get(field).map_or(field.usual_unit(manner.metric), |typed| typed.entry.unit);
            (field.id().to_owned(), codes::misread(manner, misread, unit, field.id()))
        })
        .collect();
    let ids = |fields: &[SurveyField]| fields.iter().map(|field| field.id()).collect::<Vec<_>>();
    let mut map = Map::new();
    if let Some((diameter, height)) = reading.nominal {
        put_amount(&mut map, "nominal_diameter", metres(Unit::Inch.to_si(diameter)).into());
        put_amount(&mut map, "nominal_height", metres(Unit::Inch.to_si(height)).into());
    }
    map.insert("entries".to_owned(), Value::Object(typed));
    map.insert("assumed".to_owned(), Value::Object(assumed));
    map.insert("missing".to_owned(), json!(ids(&reading.missing)));
    map.insert("misread".to_owned(), Value::Object(misread));
    map.insert("not_measured".to_owned(), json!(ids(&reading.unmeasured(survey))));
    Value::Object(map)
}

fn inside(map: &mut Map<String, Value>, vessel: &Vessel, manner: &Manner) {
    put(map, "inside_diameter", &vessel.inside_diameter, manner);
    put_known(map, "inside_depth", &vessel.measures.inside_depth);
    put(map, "straight_side", &vessel.straight_side(), manner);
    put(map, "capacity", &vessel.capacity(), manner);
    put_amount(map, "bottom_tangent_height", vessel.cavity.bottom_tangent().into());
    put_amount(map, "top_tangent_height", vessel.cavity.top_tangent().into());
    put_amount(map, "ceiling_height", vessel.ceiling().into());
    map.insert("diameter_tolerance_ratio".to_owned(), json!(vessel.diameter_tolerance()));
}

fn layer_value(layer: &LayerAnswer, asked: &LayerPlan, survey: &VesselSurvey, manner: &Manner) -> Value {
    let mut map = Map::new();
    map.insert("id".to_owned(), layer.id.as_str().into());
    map.insert("material".to_owned(), asked.material.as_str().into());
    map.insert("name".to_owned(), manner.material(&asked.material).into());
    let role = match asked.role {
        Role::Underbed => "underbed",
        Role::Media => "media",
    };
    map.insert("role".to_owned(), role.into());
    map.insert("target".to_owned(), asked.target.id().into());
    match &layer.outcome {
        LayerOutcome::Filled(fill) => {
            map.insert("outcome".to_owned(), "filled".into());
            filled(&mut map, fill, manner);
        }
        LayerOutcome::Unread(fault) => {
            map.insert("outcome".to_owned(), "unread".into());
            map.insert("problem".to_owned(), codes::layer_fault(manner, fault));
        }
        LayerOutcome::Problem(problem) => {
            map.insert("outcome".to_owned(), "problem".into());
            map.insert("problem".to_owned(), codes::problem(manner, problem, Some(layer_field(problem, survey))));
        }
        LayerOutcome::Waits => {
            map.insert("outcome".to_owned(), "waits".into());
        }
    }
    Value::Object(map)
}

/// The entry a layer's problem comes from: one of the layer's, the bucket, or one of the survey.
fn layer_field(problem: &Problem, survey: &VesselSurvey) -> &'static str {
    match problem.term {
        Term::BulkDensity => "bulk_density",
        Term::Bucket => "bucket",
        Term::TopSlot => field_of(Term::TopSlot, survey).map_or("amount", SurveyField::id),
        _ => "amount",
    }
}

fn filled(map: &mut Map<String, Value>, fill: &LayerFill, manner: &Manner) {
    put(map, "volume", &fill.volume, manner);
    put(map, "mass", &fill.mass, manner);
    put(map, "bottom_height", &fill.bottom, manner);
    put(map, "top_height", &fill.top, manner);
    put(map, "depth_axis", &fill.depth_axis, manner);
    put(map, "depth_wall", &fill.depth_wall, manner);
    put(map, "tape_reading", &fill.tape.reading, manner);
    put_amount(map, "spread", fill.tape.spread.into());
    if let Some(cover) = &fill.cover {
        put(map, "cover", cover, manner);
    }
    put_number(map, "packs", &fill.packs, manner);
    map.insert("packs_to_buy".to_owned(), fill.packs_to_buy.into());
    put(map, "left_over", &fill.left_over, manner);
    let after: Vec<Value> =
        fill.after_packs.iter().enumerate().map(|(index, tape)| reading(index + 1, tape, manner)).collect();
    map.insert("after_packs".to_owned(), after.into());
    if let Some(part) = &fill.part {
        let mut last = Map::new();
        put(&mut last, "share", &part.share, manner);
        put(&mut last, "volume", &part.volume, manner);
        put_number(&mut last, "bucket_measures", &part.buckets, manner);
        map.insert("part_pack".to_owned(), Value::Object(last));
    }
    if let Some(miss) = &fill.near_miss {
        let mut near = Map::new();
        put_number(&mut near, "needed_packs", &miss.needed, manner);
        near.insert("taken_packs".to_owned(), miss.taken.into());
        put(&mut near, "shorter", &miss.shorter, manner);
        map.insert("near_miss".to_owned(), Value::Object(near));
    }
}

fn reading(pack: usize, tape: &Tape, manner: &Manner) -> Value {
    let mut map = Map::new();
    map.insert("pack".to_owned(), pack.into());
    put_amount(&mut map, "tape_reading", tape.reading.value.into());
    put_amount(&mut map, "spread", tape.spread.into());
    map.insert("basis".to_owned(), codes::basis(tape.reading.basis).into());
    map.insert("source".to_owned(), tape.reading.formula.source().id().into());
    map.insert("formula".to_owned(), tape.reading.formula.id().into());
    map.insert("text".to_owned(), format!("{} {}", manner.tape(tape.reading.value), manner.spread(tape.spread)).into());
    Value::Object(map)
}

fn fill(map: &mut Map<String, Value>, plan: &Plan, layers: &[LayerPlan], manner: &Manner) {
    match &plan.freeboard {
        Ok(room) => {
            let mut three = Map::new();
            put(&mut three, "length", &room.length, manner);
            if let Some(ratio) = &room.ratio {
                put(&mut three, "of_media_depth", ratio, manner);
            }
            put(&mut three, "tape_reading", &room.tape, manner);
            put(&mut three, "media_depth", &room.media_depth, manner);
            map.insert("freeboard".to_owned(), Value::Object(three));
        }
        Err(problem) => {
            map.insert("freeboard".to_owned(), json!({ "problem": codes::problem(manner, problem, None) }));
        }
    }
    match &plan.dry_weight {
        Ok(mass) => put(map, "dry_weight", mass, manner),
        Err(problem) => {
            map.insert("dry_weight_problem".to_owned(), codes::problem(manner, problem, None));
        }
    }
    let ids: Vec<Id> = layers.iter().map(|layer| layer.id.clone()).collect();
    let names: Vec<String> = layers.iter().map(|layer| manner.material(&layer.material)).collect();
    let verdicts: Vec<Value> =
        plan.verdicts.iter().map(|verdict| codes::verdict(manner, verdict, &ids, &names)).collect();
    map.insert("verdicts".to_owned(), verdicts.into());
}
