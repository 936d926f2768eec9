//! The calculation sheet: every figure of a vessel with its equation, the values that went in, and where both come from.
//!
//! Each result has a symbol that later lines use, and every line holds what it takes to work it out again: the equation
//! with the symbols of this sheet, and their values in SI with six digits.

mod lines;
mod number;
mod statement;
mod water;

use bedwright_calc::fill::steps::{below, ceiling_steps, freeboard_steps, layer_steps, pack_by_pack};
use bedwright_calc::quantity::{Formula, Known, Step, Term};
use bedwright_calc::vessel::{Rungs, Vessel};

use lines::{Lines, Place};

use super::title::{notes, subtitle, title_block};
use super::{Align, Column, Paper, PaperKind, Row, vessel_name};
use crate::answers::VesselAnswers;
use crate::answers::water::WaterAnswers;
use crate::job::Job;
use crate::words::label::calculation::CalculationLabel;
use crate::words::{Label, Manner};

/// The calculation sheet of one vessel.
#[must_use]
pub fn calculation_sheet(
    job: &Job,
    answers: &VesselAnswers,
    water: Option<&WaterAnswers>,
    manner: Manner,
    today: &str,
) -> Paper {
    let say = |label: CalculationLabel| manner.label(label);
    let lines = lines_of(answers, water, manner);
    let mut rows = Vec::new();
    if lines.is_empty() {
        rows.push(Row::remark("empty", manner.label(Label::WaterWaits)));
    } else {
        for rule in [CalculationLabel::RuleOfDigits, CalculationLabel::RuleOfTrial, CalculationLabel::RuleOfSums] {
            rows.push(Row::remark(["rule", &rows.len().to_string()].concat(), say(rule)));
        }
    }
    rows.extend(lines.finish(manner.label(Label::WhatWentIn), say(CalculationLabel::Sources)));
    let place = job.survey.body.vessels.iter().position(|vessel| vessel.id == answers.id);
    let mut about = vessel_name(job, &answers.id, manner);
    about.push_str(" · ");
    about.push_str(&subtitle(job, manner));
    Paper {
        kind: PaperKind::Calculation,
        title: manner.label(Label::CalculationSheet).to_owned(),
        subtitle: about,
        title_block: title_block(job, PaperKind::Calculation, place.map(|place| place + 1), manner, today),
        columns: vec![
            Column::new("number", say(CalculationLabel::Number), Align::Start, 8),
            Column::new("what", manner.label(Label::Figure), Align::Start, 34),
            Column::new("equation", say(CalculationLabel::Equation), Align::Start, 79),
            Column::new("result", manner.label(Label::Result), Align::Start, 41),
            Column::new("source", say(CalculationLabel::Rests), Align::Start, 18),
        ],
        rows,
        totals: Vec::new(),
        notes: notes(job, manner, true),
    }
}

/// The formulas that stand in a numbered line of a vessel's sheet, one for each time: what can be worked out again from it.
#[must_use]
pub fn formulas_of_sheet(answers: &VesselAnswers, water: Option<&WaterAnswers>, manner: Manner) -> Vec<Formula> {
    lines_of(answers, water, manner).formulas()
}

fn lines_of(answers: &VesselAnswers, water: Option<&WaterAnswers>, manner: Manner) -> Lines {
    let mut lines = Lines::new(manner);
    if let Some(vessel) = &answers.vessel {
        let rungs = vessel.rungs();
        of_vessel(&mut lines, vessel, &rungs, answers, manner);
        of_layers(&mut lines, vessel, &rungs, answers, manner);
        if let Some(water) = water {
            water::of_water(&mut lines, vessel, &rungs, answers, water, manner);
        }
    }
    lines
}

/// What a step is called where no other name is said.
fn name_of(step: &Step, manner: Manner) -> &'static str {
    manner.term(step.term)
}

/// Rungs are counted in Roman figures, since layers have the others. No vessel has more.
const ROMAN: [&str; 14] = ["i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii", "xiii", "xiv"];

fn of_vessel(lines: &mut Lines, vessel: &Vessel, rungs: &Rungs, answers: &VesselAnswers, manner: Manner) {
    let say = |label: CalculationLabel| manner.label(label);
    lines.heading(say(CalculationLabel::Inside));
    let diameter = Step::of(Term::InsideDiameter, &vessel.inside_diameter);
    let by_rise = diameter.figure.formula == Formula::InsideDiameterFill;
    // Found by trial from a rise, which is put in below.
    let shown = if by_rise {
        Step::new(Term::InsideDiameter, diameter.figure.value, Formula::ByTrial, Vec::new())
    } else {
        diameter
    };
    lines.put(manner.label(Label::InsideDiameter), &shown, Place::WHOLE);
    let heads = ["b", "t"];
    let mut head = 0_usize;
    for step in &rungs.shell {
        let of_head = matches!(
            step.term,
            Term::CrownShare
                | Term::KnuckleShare
                | Term::CrownRadius
                | Term::KnuckleRadius
                | Term::KnuckleJoint
                | Term::HeadDepth
                | Term::HeadVolume
        );
        let at = if of_head { heads.get(head).copied().unwrap_or("t") } else { "" };
        let name =
            if step.term == Term::StraightSide { manner.label(Label::StraightSide) } else { name_of(step, manner) };
        lines.put(name, step, Place { layer: None, at });
        if step.term == Term::HeadVolume {
            head += 1;
        }
    }
    for (rung, roman) in rungs.rungs.iter().zip(ROMAN) {
        for step in &rung.steps {
            let typed = matches!(step.term, Term::RiserOutsideDiameter | Term::CollectorDiameter);
            let at = if typed { "" } else { roman };
            lines.put(name_of(step, manner), step, Place { layer: None, at });
        }
    }
    for step in rungs.rise_steps(vessel) {
        lines.put(name_of(&step, manner), &step, Place::WHOLE);
    }
    let rim = Step::new(
        Term::Height,
        vessel.cavity.rim(),
        Formula::RimHeight,
        vec![vessel.measures.inside_depth.input(Term::InsideDepth)],
    );
    let at = Place { layer: None, at: "rim" };
    let known = Known { value: vessel.cavity.rim(), ..vessel.inside_diameter.known() };
    lines.put(name_of(&rim, manner), &rim, at);
    let shell = rungs.shell_below(vessel, &known, Term::ShellVolume);
    lines.put(name_of(&shell, manner), &shell, at);
    lines.put(manner.label(Label::Capacity), &rungs.volume_below(vessel, &known, Term::FreeVolume), at);
    for step in ceiling_steps(vessel, None) {
        lines.put(name_of(&step, manner), &step, Place::WHOLE);
    }
    if let Some(cut) = &answers.riser_cut {
        lines.put(manner.label(Label::RiserCut), &Step::of(Term::RiserCut, cut), Place::WHOLE);
    }
}

fn of_layers(lines: &mut Lines, vessel: &Vessel, rungs: &Rungs, answers: &VesselAnswers, manner: Manner) {
    let Some(plan) = &answers.plan else { return };
    for (index, layer) in answers.planned.iter().enumerate() {
        let Some(fill) = answers.layers.get(index).and_then(|layer| layer.fill()) else { return };
        let Some(under) = below(vessel, &answers.planned, plan, index) else { return };
        let mut name = (index + 1).to_string();
        name.push_str(" · ");
        name.push_str(&manner.material(&layer.material.id));
        lines.heading(&name);
        let place = Place { layer: Some(index), at: "" };
        let one_by_one = pack_by_pack(vessel, rungs, layer, fill, &under);
        for step in layer_steps(vessel, rungs, layer, fill, &under) {
            lines.put(name_of(&step, manner), &step, place);
        }
        for (count, steps) in one_by_one {
            let poured = count.to_string();
            let at = Place { layer: Some(index), at: &["after", &poured].concat() };
            for step in steps {
                let name = [name_of(&step, manner), ", ", manner.label(CalculationLabel::After), " ", &poured].concat();
                lines.put(&name, &step, at);
            }
        }
    }
    if plan.freeboard.is_ok() {
        lines.heading(manner.label(CalculationLabel::Ceiling));
    }
    for step in freeboard_steps(vessel, &answers.planned, plan) {
        let label = manner.label(Label::Freeboard);
        let name = if step.term == Term::Freeboard { label } else { name_of(&step, manner) };
        lines.put(name, &step, Place::WHOLE);
    }
}
