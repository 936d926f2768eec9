//! The water side of a vessel: what it was asked, the window, every setting, service, weights.

use bedwright_calc::fill::weights::Weights;
use bedwright_calc::hydraulics::service::Rates;
use bedwright_calc::hydraulics::{End, Expansion, Sensitivity, Setting};
use bedwright_calc::quantity::{Amount, Figure, Problem};
use bedwright_job::Job;
use bedwright_job::answers::VesselAnswers;
use bedwright_job::answers::water::{PackingAnswer, WaterAnswers, WaterAsked, water_answers, window_rows};
use bedwright_job::edit::WaterOf;
use bedwright_job::id::Id;
use bedwright_job::sections::site::{arrangement_id, regime_id};
use bedwright_job::words::Manner;
use serde_json::{Map, Value, json};

use super::codes;
use super::figures::{put, put_amount, put_known, term};
use super::life::life;

/// The water side of a vessel of a job.
pub fn water(job: &Job, answer: &VesselAnswers, ids: &[Id], names: &[String], manner: &Manner) -> Value {
    let found = water_answers(answer, &WaterAsked::of(job, &answer.id));
    let mut map = Map::new();
    map.insert("asked".to_owned(), asked(&found));
    let misread: Map<String, Value> = found
        .reading
        .misread
        .iter()
        .map(|(of, field, misread)| {
            let key = match of {
                WaterOf::Layer(_, layer) => [layer.as_str(), "/", field.id()].concat(),
                WaterOf::Site | WaterOf::Vessel(_) | WaterOf::Search => field.id().to_owned(),
            };
            (key, codes::misread(manner, misread, field.usual_unit(manner.metric), field.id()))
        })
        .collect();
    map.insert("misread".to_owned(), misread.into());
    let problems: Vec<Value> = found.problems.iter().map(|problem| codes::problem(manner, problem, None)).collect();
    map.insert("problems".to_owned(), problems.into());
    if let Some(bed) = &found.bed {
        put(&mut map, "cross_section", &bed.area, manner);
        put(&mut map, "media_volume", &bed.media_volume, manner);
        put(&mut map, "room", &bed.room, manner);
    }
    map.insert("lines".to_owned(), lines(&found, manner));
    if let Some(packing) = &found.packing {
        map.insert("packing".to_owned(), packed(packing, manner));
    }
    if let Some(washed) = &found.backwash {
        map.insert("coldest".to_owned(), end(&washed.cold, manner));
        map.insert("warmest".to_owned(), end(&washed.warm, manner));
        let settings: Vec<Value> = washed.settings.iter().map(|one| setting(one, manner)).collect();
        map.insert("settings".to_owned(), settings.into());
        map.insert("chosen".to_owned(), json!(washed.chosen));
        map.insert("most_packs".to_owned(), json!(washed.most_packs));
        map.insert("decides".to_owned(), washed.sensitivities.iter().map(decides).collect());
        map.insert("window".to_owned(), window(&found));
    }
    map.insert("life".to_owned(), life(&found.life, manner));
    if let Some(surface) = &found.expanded_surface {
        put(&mut map, "expanded_surface", surface, manner);
    }
    if let Some(surface) = &found.expanded_surface_warm {
        put(&mut map, "expanded_surface_warm", surface, manner);
    }
    if let Some(served) = &found.service {
        let parts = [("usual", &served.usual), ("peak", &served.peak), ("while_washing", &served.while_washing)];
        let parts: Map<String, Value> = parts
            .into_iter()
            .filter_map(|(name, of)| of.as_ref().map(|of| (name.to_owned(), rates(of, manner))))
            .collect();
        map.insert("service".to_owned(), parts.into());
    }
    if let Some(weights) = &found.weights {
        map.insert("weights".to_owned(), weighed(weights, manner));
    }
    let verdicts: Vec<Value> =
        found.verdicts.iter().map(|verdict| codes::verdict(manner, verdict, ids, names)).collect();
    map.insert("verdicts".to_owned(), verdicts.into());
    Value::Object(map)
}

fn asked(found: &WaterAnswers) -> Value {
    let (site, duty) = (&found.reading.site, &found.reading.duty);
    let mut map = Map::new();
    map.insert("purpose".to_owned(), found.reading.purpose.id().into());
    map.insert("regime".to_owned(), regime_id(duty.regime).into());
    map.insert("arrangement".to_owned(), arrangement_id(duty.arrangement).into());
    map.insert("vessels".to_owned(), duty.vessels.into());
    put_known(&mut map, "temperature_low", &site.temperature_low);
    put_known(&mut map, "temperature_high", &site.temperature_high);
    put_known(&mut map, "minimum_expansion", &duty.minimum_expansion);
    for (name, flow) in [
        ("backwash_available", &site.backwash_available),
        ("service_flow", &duty.service_flow),
        ("peak_flow", &duty.peak_flow),
        ("flow_control", &duty.flow_control),
    ] {
        if let Some(flow) = flow {
            put_known(&mut map, name, flow);
        }
    }
    Value::Object(map)
}

fn lines(found: &WaterAnswers, manner: &Manner) -> Value {
    let mut map = Map::new();
    put(&mut map, "low", &found.lines.low, manner);
    put(&mut map, "likely", &found.lines.likely, manner);
    put(&mut map, "high", &found.lines.high, manner);
    map.insert("used".to_owned(), found.lines.used.into());
    map.insert("set_aside".to_owned(), found.lines.set_aside.into());
    Value::Object(map)
}

fn packed(packing: &PackingAnswer, manner: &Manner) -> Value {
    let voidages: Vec<Value> = packing
        .voidages
        .iter()
        .map(|(layer, voidage)| {
            let mut map = Map::new();
            map.insert("layer".to_owned(), json!(layer));
            put(&mut map, "voidage", voidage, manner);
            Value::Object(map)
        })
        .collect();
    let refused: Map<String, Value> =
        packing.refused.iter().map(|(id, why)| (id.to_string(), codes::problem(manner, why, None))).collect();
    json!({ "voidages": voidages, "used": packing.used, "refused": refused })
}

fn end(end: &End, manner: &Manner) -> Value {
    let mut map = Map::new();
    put_known(&mut map, "temperature", &end.water.temperature);
    put(&mut map, "density", &end.water.density, manner);
    put(&mut map, "viscosity", &end.water.viscosity, manner);
    for (name, flows) in [("lifts_from", &end.lifts_from), ("stays_to", &end.stays_to)] {
        for (line, flow) in ["low", "likely", "high"].into_iter().zip(flows) {
            if let Some(flow) = flow {
                put(&mut map, &[name, "_", line].concat(), flow, manner);
            }
        }
    }
    if let Some(flow) = &end.carries_from {
        put(&mut map, "carries_from", flow, manner);
    }
    let speeds = |figures: &[Figure<_>]| -> Value {
        figures
            .iter()
            .map(|figure| {
                let mut one = Map::new();
                put(&mut one, "speed", figure, manner);
                Value::Object(one)
            })
            .collect()
    };
    map.insert("wen_yu_minimum".to_owned(), speeds(&end.wen_yu_minimum));
    map.insert("ergun_minimum".to_owned(), speeds(&end.ergun_minimum));
    Value::Object(map)
}

fn expansion(of: &Expansion) -> Value {
    let lines = [("low_ratio", of.low), ("likely_ratio", of.likely), ("high_ratio", of.high)];
    // On a line on which grains leave there is no number.
    lines.into_iter().filter_map(|(name, share)| share.map(|share| (name.to_owned(), json!(share)))).collect()
}

fn setting(one: &Setting, manner: &Manner) -> Value {
    let mut map = Map::new();
    put_known(&mut map, "flow", &one.flow);
    put(&mut map, "flow_per_area", &one.flow_per_area, manner);
    map.insert("mark".to_owned(), codes::mark(one.mark).into());
    map.insert("coldest".to_owned(), expansion(&one.cold));
    map.insert("warmest".to_owned(), expansion(&one.warm));
    Value::Object(map)
}

fn decides(one: &Sensitivity) -> Value {
    let mut value = json!({
        "term": term(one.term), "layer": one.layer, "step": one.step, "less_ratio": one.less, "more_ratio": one.more,
    });
    if let (Some((low, high)), Value::Object(map)) = (one.over_range, &mut value) {
        map.insert("over_range_ratio".to_owned(), json!([low, high]));
    }
    value
}

fn window(found: &WaterAnswers) -> Value {
    let flows =
        |of: [Option<_>; 3]| of.map(|flow: Option<bedwright_calc::quantity::VolumeRate>| flow.map(|flow| flow.value));
    window_rows(found)
        .iter()
        .map(|row| {
            json!({
                "temperature_k": row.temperature.value, "lifts_from_m3_s": flows(row.lifts_from),
                "stays_to_m3_s": flows(row.stays_to), "carries_from_m3_s": row.carries_from.map(|flow| flow.value),
            })
        })
        .collect()
}

fn rates(of: &Rates, manner: &Manner) -> Value {
    let mut map = Map::new();
    put(&mut map, "flow", &of.flow, manner);
    put(&mut map, "flow_per_area", &of.flow_per_area, manner);
    put(&mut map, "contact_time", &of.contact_time, manner);
    if let Some(pair) = &of.contact_time_pair {
        put(&mut map, "contact_time_pair", pair, manner);
    }
    put(&mut map, "bed_volumes", &of.bed_volumes, manner);
    put(&mut map, "pressure_loss", &of.loss, manner);
    let layers: Vec<Value> = of
        .layers
        .iter()
        .map(|figure| {
            let mut one = Map::new();
            put_amount(&mut one, "pressure_loss", figure.value.into());
            Value::Object(one)
        })
        .collect();
    map.insert("layers".to_owned(), layers.into());
    Value::Object(map)
}

fn weighed(weights: &Weights, manner: &Manner) -> Value {
    fn one<Q: Copy + Into<Amount>>(
        map: &mut Map<String, Value>,
        name: &str,
        figure: &Result<Figure<Q>, Problem>,
        manner: &Manner,
    ) {
        match figure {
            Ok(figure) => put(map, name, figure, manner),
            Err(problem) => {
                map.insert([name, "_problem"].concat(), codes::problem(manner, problem, None));
            }
        }
    }
    let mut map = Map::new();
    one(&mut map, "dry", &weights.dry, manner);
    one(&mut map, "drained_low", &weights.drained_low, manner);
    one(&mut map, "drained_high", &weights.drained_high, manner);
    one(&mut map, "operating", &weights.operating, manner);
    one(&mut map, "water_full", &weights.water_full, manner);
    one(&mut map, "floor_load", &weights.floor_load, manner);
    Value::Object(map)
}
