//! The calculation sheet: every figure of a vessel with its formula, the values that went in, and where both come from.
//!
//! Values stand in SI with six digits, so that a line can be worked out again from the paper alone. What went in stands
//! once at the top with what it rests on; below, each equation is followed by its values.

use bedwright_calc::quantity::{Amount, Basis, Figure, Formula, Input, Source, Term};

use super::title::{notes, subtitle, title_block};
use super::{Align, Cell, Column, Paper, PaperKind, Row, RowKind, vessel_name};
use crate::answers::VesselAnswers;
use crate::answers::water::WaterAnswers;
use crate::decimal::to_places;
use crate::job::Job;
use crate::words::{Label, LifeLabel, Manner};

/// A figure without its kind of quantity.
struct Line<'a> {
    name: String,
    formula: Formula,
    inputs: &'a [Input],
    value: Amount,
    basis: Basis,
}

fn line<'a, Q: Copy + Into<Amount>>(name: &str, figure: &'a Figure<Q>) -> Line<'a> {
    Line {
        name: name.to_owned(),
        formula: figure.formula,
        inputs: &figure.inputs,
        value: figure.value.into(),
        basis: figure.basis,
    }
}

/// The calculation sheet of one vessel.
#[must_use]
pub fn calculation_sheet(
    job: &Job,
    answers: &VesselAnswers,
    water: Option<&WaterAnswers>,
    manner: Manner,
    today: &str,
) -> Paper {
    let say = |label: Label| manner.label(label);
    let mut rows = Vec::new();
    let mut given: Vec<Input> = Vec::new();
    let mut put = |heading: &str, lines: Vec<Line>| {
        if lines.is_empty() {
            return;
        }
        rows.push(Row::heading(heading, heading));
        for input in lines.iter().flat_map(|line| line.inputs) {
            if !given.contains(input) {
                given.push(*input);
            }
        }
        for (place, line) in lines.iter().enumerate() {
            let mut key = String::from(heading);
            key.push_str(&place.to_string());
            rows.push(row(key, line, manner));
        }
    };
    put(say(Label::Vessel), of_vessel(answers, manner));
    for (place, layer) in answers.planned.iter().enumerate() {
        let mut name = (place + 1).to_string();
        name.push_str(" · ");
        name.push_str(&manner.material(&layer.material.id));
        put(&name, of_layer(answers, place, manner));
    }
    if let Some(water) = water {
        put(say(Label::SiteWater), of_water(water, manner));
        put(say(Label::Backwash), of_backwash(water, manner));
        put(say(Label::Service), of_service(water, manner));
        put(manner.label(LifeLabel::MediaLife), of_life(water, manner));
    }
    if rows.is_empty() {
        rows.push(Row::remark("empty", say(Label::WaterWaits)));
    }
    let mut all = Vec::with_capacity(rows.len() + given.len() + 1);
    if !given.is_empty() {
        all.push(Row::heading("given", say(Label::WhatWentIn)));
        for (place, input) in given.iter().enumerate() {
            all.push(given_row(place, input, manner));
        }
    }
    all.append(&mut rows);
    let place = job.survey.body.vessels.iter().position(|vessel| vessel.id == answers.id);
    let mut about = vessel_name(job, &answers.id, manner);
    about.push_str(" · ");
    about.push_str(&subtitle(job, manner));
    Paper {
        kind: PaperKind::Calculation,
        title: say(Label::CalculationSheet).to_owned(),
        subtitle: about,
        title_block: title_block(job, PaperKind::Calculation, place.map(|place| place + 1), manner, today),
        columns: vec![
            Column::new("what", say(Label::Figure), Align::Start, 26),
            Column::new("formula", say(Label::FormulaTitle), Align::Start, 42),
            Column::new("values", say(Label::WithValues), Align::Start, 40),
            Column::new("result", say(Label::Result), Align::End, 22),
            Column::new("source", say(Label::SourceTitle), Align::Start, 30),
        ],
        rows: all,
        totals: Vec::new(),
        notes: notes(job, manner, true),
    }
}

/// A value that went in, with what it rests on.
fn given_row(place: usize, input: &Input, manner: Manner) -> Row {
    let mut rests = manner.basis(input.basis).to_owned();
    if input.basis >= Basis::Catalogue && input.source != Source::Typed {
        rests.push_str(": ");
        rests.push_str(&manner.source(input.source));
    }
    let mut key = String::from("given");
    key.push_str(&place.to_string());
    Row::new(
        key,
        RowKind::Item,
        vec![Cell::Text(manner.term(input.term).to_owned()), Cell::Text(substituted(input, manner)), Cell::Text(rests)],
    )
}

fn row(key: String, line: &Line, manner: Manner) -> Row {
    let values: Vec<String> = line.inputs.iter().map(|input| substituted(input, manner)).collect();
    let mut shown = exact(line.value);
    // A share is read as per cent by everybody but an equation.
    if let Amount::Ratio(share) = line.value
        && matches!(line.formula, Formula::ExpansionLikely | Formula::RoomExpansion)
    {
        shown.push_str(" = ");
        shown.push_str(&manner.percent(share));
    }
    let mut source = manner.source(line.formula.source());
    source.push_str("; ");
    source.push_str(manner.basis(line.basis));
    Row::new(
        key,
        RowKind::Item,
        vec![
            Cell::Text(line.name.clone()),
            Cell::Text(line.formula.statement().to_owned()),
            Cell::Text(values.join("; ")),
            Cell::Text(shown),
            Cell::Text(source),
        ],
    )
}

/// An input as it goes into the equation: "D = 0.298297 m".
fn substituted(input: &Input, manner: Manner) -> String {
    let mut text = String::from(input.term.symbol());
    if text.is_empty() {
        text.push_str(manner.term(input.term));
    }
    text.push_str(" = ");
    text.push_str(&exact(input.amount));
    text
}

/// A value in SI with six digits and its unit.
fn exact(amount: Amount) -> String {
    let (value, unit) = match amount {
        Amount::Length(x) => (x.value, " m"),
        Amount::Area(x) => (x.value, " m²"),
        Amount::Volume(x) => (x.value, " m³"),
        Amount::Mass(x) => (x.value, " kg"),
        Amount::Density(x) => (x.value, " kg/m³"),
        Amount::Pressure(x) => (x.value, " Pa"),
        Amount::Speed(x) => (x.value, " m/s"),
        Amount::Flow(x) => (x.value, " m³/s"),
        Amount::Temperature(x) => (x.value, " K"),
        Amount::Viscosity(x) => (x.value, " Pa·s"),
        Amount::Time(x) => (x.value, " s"),
        Amount::Rate(x) => (x.value, " 1/s"),
        Amount::Concentration(x) => (x.to_kilograms_per_cubic_metre(), " kg/m³"),
        Amount::Ratio(x) => (x, ""),
        Amount::Count(n) => return n.to_string(),
    };
    let mut text = six_digits(value);
    text.push_str(unit);
    text
}

/// Six digits that count, however small the number, with a point.
fn six_digits(value: f64) -> String {
    let size = value.abs();
    if !(size > 0.0 && size.is_finite()) {
        return to_places(value, 0);
    }
    let mut places: i32 = 5;
    let mut scaled = size;
    while scaled >= 10.0 && places > 0 {
        scaled /= 10.0;
        places -= 1;
    }
    while scaled < 1.0 && places < 16 {
        scaled *= 10.0;
        places += 1;
    }
    to_places(value, usize::try_from(places).unwrap_or(0))
}

fn of_vessel<'a>(answers: &'a VesselAnswers, manner: Manner) -> Vec<Line<'a>> {
    let say = |label: Label| manner.label(label);
    let mut lines = Vec::new();
    if let Some(vessel) = &answers.vessel {
        lines.push(line(say(Label::InsideDiameter), &vessel.inside_diameter));
    }
    if let Some(cut) = &answers.riser_cut {
        lines.push(line(say(Label::RiserCut), cut));
    }
    if let Some(plan) = &answers.plan {
        if let Ok(freeboard) = &plan.freeboard {
            lines.push(line(say(Label::Freeboard), &freeboard.length));
        }
        if let Ok(weight) = &plan.dry_weight {
            lines.push(line(say(Label::Weight), weight));
        }
    }
    lines
}

fn of_layer<'a>(answers: &'a VesselAnswers, place: usize, manner: Manner) -> Vec<Line<'a>> {
    let Some(fill) = answers.layers.get(place).and_then(|layer| layer.fill()) else { return Vec::new() };
    let say = |label: Label| manner.label(label);
    vec![
        line(say(Label::Volume), &fill.volume),
        line(say(Label::WeightTogether), &fill.mass),
        line(say(Label::Height), &fill.top),
        line(say(Label::TapeReads), &fill.tape.reading),
        line(say(Label::Packs), &fill.packs),
    ]
}

fn of_water<'a>(water: &'a WaterAnswers, manner: Manner) -> Vec<Line<'a>> {
    let Some(washed) = &water.backwash else { return Vec::new() };
    let mut lines = Vec::new();
    for (end, when) in [(&washed.cold, Label::SettingCold), (&washed.warm, Label::SettingWarm)] {
        let mut named = |term, figure: Line<'a>| {
            let mut name = manner.term(term).to_owned();
            name.push_str(", ");
            name.push_str(manner.label(when));
            lines.push(Line { name, ..figure });
        };
        named(Term::WaterDensity, line("", &end.water.density));
        named(Term::WaterViscosity, line("", &end.water.viscosity));
        for figure in &end.wen_yu_minimum {
            named(Term::MinimumFluidisation, line("", figure));
        }
        for figure in &end.ergun_minimum {
            named(Term::MinimumFluidisation, line("", figure));
        }
    }
    lines
}

fn of_backwash<'a>(water: &'a WaterAnswers, manner: Manner) -> Vec<Line<'a>> {
    let (Some(washed), Some(bed)) = (&water.backwash, &water.bed) else { return Vec::new() };
    let say = |label: Label| manner.label(label);
    let term = |term| manner.term(term).to_owned();
    let mut lines = vec![line(&term(Term::CrossSection), &bed.area), line(say(Label::Room), &bed.room)];
    if let Some(setting) = washed.chosen.and_then(|at| washed.settings.get(at)) {
        lines.push(line(say(Label::BackwashPerArea), &setting.flow_per_area));
        lines.extend(setting.likely_cold.as_ref().map(|figure| line(say(Label::ExpansionCold), figure)));
        lines.extend(setting.likely_warm.as_ref().map(|figure| line(say(Label::ExpansionWarm), figure)));
    }
    if let [_, Some(flow), _] = &washed.warm.lifts_from {
        lines.push(line(say(Label::LiftsFrom), flow));
    }
    if let [_, Some(flow), _] = &washed.cold.stays_to {
        lines.push(line(say(Label::StaysTo), flow));
    }
    lines
}

fn of_service<'a>(water: &'a WaterAnswers, manner: Manner) -> Vec<Line<'a>> {
    let Some(usual) = water.service.as_ref().and_then(|service| service.usual.as_ref()) else { return Vec::new() };
    let say = |label: Label| manner.label(label);
    let mut lines = vec![
        line(manner.term(Term::ServiceFlow), &usual.flow),
        line(say(Label::FlowPerArea), &usual.flow_per_area),
        line(say(Label::ContactTime), &usual.contact_time),
        line(say(Label::BedVolumes), &usual.bed_volumes),
    ];
    lines.extend(usual.contact_time_pair.as_ref().map(|figure| line(say(Label::ContactTimePair), figure)));
    lines.extend(usual.layers.iter().map(|figure| line(manner.term(Term::PressureLoss), figure)));
    lines.push(line(say(Label::PressureLoss), &usual.loss));
    lines
}

fn of_life(water: &WaterAnswers, manner: Manner) -> Vec<Line<'_>> {
    let life = &water.life;
    let mut lines: Vec<Line> = life.lines.iter().map(|(name, figure)| line(manner.life_name(*name), figure)).collect();
    if let Some(expected) = &life.expected {
        lines.push(line(manner.label(LifeLabel::ExpectedLife), &expected.time));
    }
    let year = |what: LifeLabel| [manner.label(LifeLabel::InYear), ": ", manner.label(what)].concat();
    let of_year = &life.year;
    lines.extend(of_year.packs.as_ref().map(|figure| line(&year(LifeLabel::PacksWord), figure)));
    lines.extend(of_year.media.as_ref().map(|figure| line(&year(LifeLabel::MediaWord), figure)));
    lines.extend(of_year.salt.as_ref().map(|figure| line(&year(LifeLabel::SaltWord), figure)));
    lines.extend(of_year.wash_water.as_ref().map(|figure| line(&year(LifeLabel::WashWaterWord), figure)));
    lines
}
