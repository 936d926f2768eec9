//! Lines of the water side.

use bedwright_calc::fill::steps::ceiling_steps;
use bedwright_calc::fill::weights::weight_steps;
use bedwright_calc::hydraulics::Bed;
use bedwright_calc::hydraulics::backwash::{Backwash, End, Setting};
use bedwright_calc::hydraulics::seen::seen_steps;
use bedwright_calc::hydraulics::service::Rates;
use bedwright_calc::hydraulics::steps::{Model, OfLayer};
use bedwright_calc::quantity::{Figure, Formula, Known, Source, Step, Term, VolumeRate, metres_per_second};
use bedwright_calc::vessel::{Rungs, Vessel};
use bedwright_calc::water::Water;

use super::lines::{Lines, Place};
use super::number::six_digits;
use crate::answers::VesselAnswers;
use crate::answers::water::WaterAnswers;
use crate::evidence::read_evidence;
use crate::id::Id;
use crate::words::label::calculation::CalculationLabel;
use crate::words::{Label, LifeLabel, Manner};

/// Puts steps one after the other, each called by its noun and its layer's place.
fn put_all(lines: &mut Lines, steps: &[OfLayer], at: &str, manner: Manner) {
    for (layer, step) in steps {
        let mut name = match page_label(step, *layer, at) {
            Some(label) => manner.label(label).to_owned(),
            None => manner.term(step.term).to_owned(),
        };
        if let Some(layer) = layer {
            name.push_str(", ");
            name.push_str(manner.label(CalculationLabel::Layer));
            name.push(' ');
            name.push_str(&(layer + 1).to_string());
        }
        if let Some(fraction) = step.fraction {
            name.push_str(", ");
            name.push_str(manner.label(CalculationLabel::Fraction));
            name.push(' ');
            name.push_str(&fraction.to_string());
        }
        lines.put(&name, step, Place { layer: *layer, at });
    }
}

/// What the vessel's page calls a figure that stands there too.
fn page_label(step: &Step, layer: Option<usize>, at: &str) -> Option<Label> {
    if layer.is_some() {
        return None;
    }
    Some(match (step.term, at) {
        (Term::FlowPerArea, "s") => Label::FlowPerArea,
        (Term::FlowPerArea, "p") => Label::PeakFlowPerArea,
        (Term::FlowPerArea, "w") => Label::WashingFlowPerArea,
        (Term::ContactTime, "s") if step.figure.formula == Formula::ContactTimePair => Label::ContactTimePair,
        (Term::ContactTime, "s") => Label::ContactTime,
        (Term::ContactTime, "w") if step.figure.formula == Formula::ContactTime => Label::WashingContactTime,
        (Term::BedVolumes, "s") => Label::BedVolumes,
        (Term::UnitLoss, "s") => Label::PressureLoss,
        (Term::UnitLoss, "p") => Label::PeakPressureLoss,
        (Term::MemoryExpansion, "cold") => Label::MemoryCold,
        (Term::MemoryExpansion, "warm") => Label::MemoryWarm,
        (Term::DryMass, _) => Label::Weight,
        (Term::FullMass, _) => Label::WeightWaterFull,
        (Term::OperatingMass, _) => Label::WeightOperating,
        (Term::FloorLoad, _) => Label::FloorLoad,
        (Term::DrainedMass, "most") => Label::WeightDrained,
        _ => return None,
    })
}

pub(super) fn of_water(
    lines: &mut Lines,
    vessel: &Vessel,
    rungs: &Rungs,
    answers: &VesselAnswers,
    water: &WaterAnswers,
    manner: Manner,
) {
    let (Some(bed), Some(plan)) = (&water.bed, &answers.plan) else { return };
    let say = |label: CalculationLabel| manner.label(label);
    let site = &water.reading.site;
    let (cold, warm) = (Water::at(&site.temperature_low), Water::at(&site.temperature_high));
    let Ok(cold) = cold else { return };
    lines.heading(say(CalculationLabel::Water));
    let both = [Some((&cold, "cold")), warm.as_ref().ok().map(|warm| (warm, "warm"))];
    for (water, at) in both.into_iter().flatten() {
        put_water(lines, water, at, manner);
    }
    of_grains(lines, bed, answers, manner);
    lines.heading(say(CalculationLabel::Room));
    lines.put(manner.term(Term::CrossSection), &Step::of(Term::CrossSection, &bed.area), Place::WHOLE);
    let mut height = vessel.ceiling();
    for step in ceiling_steps(vessel, water.reading.duty.air_head.as_ref()) {
        if let bedwright_calc::quantity::Amount::Length(found) = step.figure.value {
            height = found;
        }
        let air = Place { layer: None, at: if step.figure.formula == Formula::CeilingAir { "air" } else { "" } };
        if water.reading.duty.air_head.is_some() {
            lines.put(manner.term(step.term), &step, air);
        }
    }
    let known = Known { value: height, ..vessel.inside_diameter.known() };
    let ceiling = rungs.volume_below(vessel, &known, Term::CeilingVolume);
    lines.put(manner.term(Term::CeilingVolume), &ceiling, Place::WHOLE);
    for step in bed.room_steps(ceiling.input(Term::CeilingVolume)) {
        let name = if step.term == Term::RoomExpansion { manner.label(Label::Room) } else { manner.term(step.term) };
        lines.put(name, &step, Place::WHOLE);
    }
    if let Some(washed) = &water.backwash {
        of_backwash(lines, bed, washed, (answers, water), manner);
    }
    if let (Some(surface), Some(washed)) = (&water.expanded_surface, &water.backwash)
        && let Some(likely) = chosen(washed).and_then(|setting| setting.likely_cold.as_ref())
    {
        let place = Place { layer: None, at: "lifted" };
        let volume = bed.expanded_step(likely);
        lines.put(manner.term(volume.term), &volume, place);
        let step = rungs.height_holding(vessel, volume.input(Term::FreeVolume), surface.value, Term::Height);
        lines.put(manner.label(Label::LiftedSurface), &step, place);
    }
    of_service(lines, bed, water, manner);
    of_life(lines, water, manner);
    if let Some(weights) = &water.weights {
        lines.heading(say(CalculationLabel::Weights));
        let duty = &water.reading.duty;
        let rim = Known { value: vessel.cavity.rim(), ..vessel.inside_diameter.known() };
        let shell = rungs.shell_below(vessel, &rim, Term::ShellVolume).input(Term::ShellVolume);
        let own = (duty.empty_mass.as_ref(), duty.foot_diameter.as_ref());
        let steps = weight_steps(vessel, &answers.planned, plan, own, &cold, weights, shell);
        for of_drained in steps.chunk_by(|(_, step), _| step.term != Term::DrainedMass) {
            let drained = of_drained.last().is_some_and(|(_, step)| step.term == Term::DrainedMass);
            let least = of_drained.iter().any(|(_, step)| step.term == Term::DryMass);
            let at = match (drained, least) {
                (true, true) => "least",
                (true, false) => "most",
                (false, _) => "",
            };
            put_all(lines, of_drained, at, manner);
        }
    }
}

fn of_grains(lines: &mut Lines, bed: &Bed, answers: &VesselAnswers, manner: Manner) {
    lines.heading(manner.label(CalculationLabel::Grains));
    for (layer, planned) in bed.layers.iter().zip(answers.planned.iter()) {
        let place = Place { layer: Some(layer.index), at: "" };
        // Grains without pores: what isn't grain is water.
        if let (None, Some(particle)) = (&layer.grains.voidage, &layer.grains.particle_density) {
            let inputs = vec![planned.density().input(Term::BulkDensity), particle.input(Term::ParticleDensity)];
            // A pressure drop that was read says better how they lie: then it goes in as measured.
            let by_densities = 1.0 - planned.density().value.value / particle.value.value;
            let step = Step::new(Term::Voidage, layer.voidage.value, Formula::VoidageOfDensities, inputs);
            if by_densities == layer.voidage.value {
                lines.put(manner.term(Term::Voidage), &step, place);
            }
        }
        let own: Vec<OfLayer> =
            bed.grading_steps().into_iter().filter(|(index, _)| *index == Some(layer.index)).collect();
        let (means, fitted): (Vec<OfLayer>, Vec<OfLayer>) = own
            .into_iter()
            .partition(|(_, step)| matches!(step.term, Term::MeanReciprocal | Term::MeanReciprocalSquare));
        put_all(lines, &fitted, "", manner);
        for (row, ten) in layer.fractions().chunks(10).enumerate() {
            let from = row * 10 + 1;
            let mut name = manner.label(CalculationLabel::Fractions).to_owned();
            name.push_str(&format_range(from, from + ten.len() - 1));
            let sizes: Vec<String> = ten.iter().map(|size| six_digits(size * 1000.0)).collect();
            lines.sizes(&name, layer.index, from, &sizes);
        }
        put_all(lines, &means, "", manner);
    }
}

fn format_range(from: usize, to: usize) -> String {
    let mut text = String::from(" ");
    text.push_str(&from.to_string());
    if to > from {
        text.push('–');
        text.push_str(&to.to_string());
    }
    text
}

fn chosen(washed: &Backwash) -> Option<&Setting> {
    washed.settings.get(washed.chosen?)
}

/// Where the likely line stands: half way, or where what was seen puts it.
fn of_evidence(lines: &mut Lines, bed: &Bed, answers: &VesselAnswers, water: &WaterAnswers, manner: Manner) {
    let ids: Vec<Id> = answers.layers.iter().map(|layer| layer.id.clone()).collect();
    let read = read_evidence(&water.evidence, &ids);
    let (seen, joined) = seen_steps(bed, &read.checks, &read.points, &water.lines);
    for (number, piece) in seen.iter().enumerate() {
        let number = (number + 1).to_string();
        let at = ["e", &number].concat();
        lines.heading(&[manner.label(CalculationLabel::Seen), " ", &number].concat());
        put_water(lines, &piece.water, &at, manner);
        put_all(lines, &piece.steps, &at, manner);
    }
    let likely = &water.lines.likely;
    let joined = joined.unwrap_or_else(|| Step::given(Term::LineWeight, &likely.known()));
    lines.put(manner.label(Label::LinesTitle), &joined, Place::WHOLE);
}

fn put_water(lines: &mut Lines, water: &Water, at: &str, manner: Manner) {
    let place = Place { layer: None, at };
    lines.put(manner.term(Term::WaterTemperature), &Step::given(Term::WaterTemperature, &water.temperature), place);
    lines.put(manner.term(Term::WaterDensity), &Step::of(Term::WaterDensity, &water.density), place);
    lines.put(manner.term(Term::WaterViscosity), &Step::of(Term::WaterViscosity, &water.viscosity), place);
}

fn of_backwash(
    lines: &mut Lines,
    bed: &Bed,
    washed: &Backwash,
    (answers, water): (&VesselAnswers, &WaterAnswers),
    manner: Manner,
) {
    let say = |label: CalculationLabel| manner.label(label);
    lines.heading(say(CalculationLabel::Starts));
    for (end, at) in [(&washed.cold, "cold"), (&washed.warm, "warm")] {
        let steps = bed.start_steps(&end.wen_yu_minimum, &end.ergun_minimum);
        let last = steps.iter().rposition(|(_, step)| step.term == Term::MinimumFluidisation);
        let (before, rest) = steps.split_at(last.unwrap_or(0));
        put_all(lines, before, at, manner);
        // The page shows the top layer's in warm water.
        if let [(layer, first), rest @ ..] = rest {
            let name = if at == "warm" { manner.label(Label::StartsLifting) } else { manner.term(first.term) };
            lines.put(name, first, Place { layer: *layer, at });
            put_all(lines, rest, at, manner);
        }
    }
    put_all(lines, &bed.settling_steps(&washed.cold.water), "cold", manner);
    let weight = &water.lines.likely;
    of_evidence(lines, bed, answers, water, manner);
    if let Some(setting) = chosen(washed) {
        let place = Place { layer: None, at: "bw" };
        lines.heading(say(CalculationLabel::LiftCold));
        lines.put(manner.term(Term::BackwashFlow), &Step::given(Term::BackwashFlow, &setting.flow), place);
        lines.put(manner.label(Label::BackwashPerArea), &Step::of(Term::FlowPerArea, &setting.flow_per_area), place);
        let speed = setting.flow_per_area.known();
        let ends =
            [(&washed.cold, "cold", Label::ExpansionCold, true), (&washed.warm, "warm", Label::ExpansionWarm, false)];
        for (end, at, label, shown) in ends {
            if at == "warm" {
                lines.heading(say(CalculationLabel::LiftWarm));
            }
            let steps = bed.likely_steps(&end.water, &speed, weight, shown);
            put_lifted(lines, &steps, at, manner.label(label), manner);
            let memory = bed.lift_steps(&end.water, &speed, Model::DharmarajahCleasby, shown);
            if !memory.is_empty() {
                lines.remark(say(CalculationLabel::FromMemory));
                put_all(lines, &memory, at, manner);
            }
        }
    }
    let [_, lifts, _] = &washed.warm.lifts_from;
    let [_, stays, _] = &washed.cold.stays_to;
    let flows = [
        (lifts, &washed.warm, "lifts", CalculationLabel::Lifts, Label::LiftsFrom),
        (stays, &washed.cold, "stays", CalculationLabel::Stays, Label::StaysTo),
    ];
    for (flow, end, at, heading, label) in flows {
        if let Some(flow) = flow {
            lines.heading(say(heading));
            of_flow(lines, bed, (flow, weight), end, at, (manner.label(label), manner));
        }
    }
}

/// The lines of a likely expansion; the last of them is called by its own name.
fn put_lifted(lines: &mut Lines, steps: &[OfLayer], at: &str, name: &str, manner: Manner) {
    let Some(((_, likely), steps)) = steps.split_last() else { return };
    put_all(lines, steps, at, manner);
    lines.put(name, likely, Place { layer: None, at });
}

/// A flow that was found by trial, so that the likely line comes out at what is asked for.
fn of_flow(
    lines: &mut Lines,
    bed: &Bed,
    (flow, weight): (&Figure<VolumeRate>, &Figure<f64>),
    end: &End,
    at: &str,
    (name, manner): (&str, Manner),
) {
    let speed = Known {
        value: metres_per_second(flow.value.value / bed.area.value.value),
        basis: flow.basis,
        source: Source::Arithmetic,
    };
    let place = Place { layer: None, at };
    let trial = Step::new(Term::FlowPerArea, speed.value, Formula::ByTrial, Vec::new());
    lines.put(manner.term(Term::FlowPerArea), &trial, place);
    let steps = bed.likely_steps(&end.water, &speed, weight, false);
    put_lifted(lines, &steps, at, manner.term(Term::Expansion), manner);
    let inputs = vec![speed.input(Term::FlowPerArea), bed.area.input(Term::CrossSection)];
    lines.put(name, &Step::new(Term::BackwashFlow, flow.value, Formula::FlowForExpansion, inputs), place);
}

/// What the media's life comes to.
fn of_life(lines: &mut Lines, water: &WaterAnswers, manner: Manner) {
    let life = &water.life;
    let of_year = &life.year;
    let nothing = life.lines.is_empty()
        && life.expected.is_none()
        && of_year.packs.is_none()
        && of_year.media.is_none()
        && of_year.salt.is_none()
        && of_year.wash_water.is_none();
    if nothing {
        return;
    }
    lines.heading(manner.label(LifeLabel::MediaLife));
    for (name, figure) in &life.lines {
        lines.whole(manner.life_name(*name), figure);
    }
    if !life.grounds.is_empty() {
        lines.remark(&manner.sentence(LifeLabel::GroundsSaid, &[("grounds", &life.grounds)]));
    }
    if let Some(expected) = &life.expected {
        lines.whole(manner.label(LifeLabel::ExpectedLife), &expected.time);
    }
    let year = |what: LifeLabel| manner.named(manner.label(LifeLabel::InYear), manner.label(what));
    if let Some(figure) = &of_year.packs {
        lines.whole(&year(LifeLabel::PacksWord), figure);
    }
    if let Some(figure) = &of_year.media {
        lines.whole(&year(LifeLabel::MediaWord), figure);
    }
    if let Some(figure) = &of_year.salt {
        lines.whole(&year(LifeLabel::SaltWord), figure);
    }
    if let Some(figure) = &of_year.wash_water {
        lines.whole(&year(LifeLabel::WashWaterWord), figure);
    }
}

fn of_service(lines: &mut Lines, bed: &Bed, water: &WaterAnswers, manner: Manner) {
    let Some(service) = &water.service else { return };
    let flows: [(&Option<Rates>, &str, CalculationLabel); 3] = [
        (&service.usual, "s", CalculationLabel::ServiceUsual),
        (&service.peak, "p", CalculationLabel::ServicePeak),
        (&service.while_washing, "w", CalculationLabel::ServiceWashing),
    ];
    for (rates, at, heading) in flows {
        if let Some(rates) = rates {
            lines.heading(manner.label(heading));
            put_all(lines, &bed.service_steps(rates), at, manner);
        }
    }
}
