//! What a quote rests on, in sentences: what was measured, what assumed; packs; what the vessels take in a year.

use bedwright_calc::quantity::{Basis, Input, Known, Term, kilograms, seconds};
use bedwright_calc::supply::quote::wash_water_per_year;
use bedwright_calc::supply::{BillLine, Item};

use super::work::{QuoteSources, measured};
use crate::field::{QuoteField, SurveyField};
use crate::papers::vessel_name;
use crate::reading::asked;
use crate::sections::survey::Standing;
use crate::words::QuoteLabel;

/// What was measured of each vessel, what is assumed until it is, and the figures of its layers that nobody measured.
pub(super) fn assumptions(sources: &QuoteSources<'_>) -> Vec<String> {
    let manner = sources.manner;
    let mut said = Vec::new();
    for answers in sources.answers {
        let Some(survey) = sources.job.vessel(&answers.id) else { continue };
        let name = vessel_name(sources.job, &answers.id, manner);
        let unmeasured = answers.survey.unmeasured(survey);
        let measured: Vec<&str> = asked(survey)
            .iter()
            .filter(|field| !matches!(field, SurveyField::NominalSize | SurveyField::RiserAllowance))
            .filter(|field| !unmeasured.contains(field))
            .filter(|field| survey.entries.get(*field).is_some_and(|typed| typed.standing == Standing::Measured))
            .map(|field| manner.field(*field))
            .collect();
        let assumed: Vec<&str> = unmeasured.iter().map(|field| manner.field(*field)).collect();
        for (label, fields) in [(QuoteLabel::WasMeasured, measured), (QuoteLabel::IsAssumed, assumed)] {
            if !fields.is_empty() {
                said.push([name.as_str(), ", ", manner.label(label), " ", &fields.join(", "), "."].concat());
            }
        }
        for (layer, answer) in answers.planned.iter().zip(&answers.layers) {
            let Some(fill) = answer.fill() else { continue };
            let mut inputs: Vec<Input> = Vec::new();
            for input in fill.packs.inputs.iter().chain(&fill.mass.inputs) {
                if input.term == Term::BulkDensity && input.basis >= Basis::Catalogue && !inputs.contains(input) {
                    inputs.push(*input);
                }
            }
            for input in inputs {
                let material = manner.material(&layer.material.id);
                let what = manner.term(input.term);
                let value = manner.input(&input);
                let basis = manner.basis(input.basis);
                let sentence = [&material, manner.colon(), what, " ", &value, ", ", basis, "."].concat();
                if !said.contains(&sentence) {
                    said.push(sentence);
                }
            }
        }
    }
    said
}

/// Packs of each vessel on its own, then pooled over the job.
pub(super) fn packs(sources: &QuoteSources<'_>) -> Vec<String> {
    let manner = sources.manner;
    let counted = |line: &BillLine| {
        let Item::Pack { material, .. } = &line.item else { return None };
        Some([&line.quantity.to_string(), " ", manner.unit_of(line), " ", &manner.material(material)].concat())
    };
    let mut said = Vec::new();
    for (id, own) in sources.bill.vessels.iter().zip(&sources.bill.bill.vessels) {
        let packs: Vec<String> = own.lines.iter().filter_map(counted).collect();
        if !packs.is_empty() {
            said.push([&vessel_name(sources.job, id, manner), manner.colon(), &packs.join(", "), "."].concat());
        }
    }
    if said.len() > 1 || sources.bill.bill.pooled.iter().any(|line| sources.bill.bill.saved(line) > 0) {
        let pooled: Vec<String> = sources
            .bill
            .bill
            .pooled
            .iter()
            .filter_map(|line| {
                let saved = sources.bill.bill.saved(line);
                let text = counted(line)?;
                if saved == 0 {
                    return Some(text);
                }
                Some([&text, " (", &saved.to_string(), " ", manner.label(QuoteLabel::FewerPooled), ")"].concat())
            })
            .collect();
        said.push([manner.label(QuoteLabel::PooledOverJob), " ", &pooled.join(", "), "."].concat());
    }
    said
}

/// What each vessel's bed takes in a year by its water, as far as that is known. Wash water of each vessel whose backwash
/// setting is known, where time and number of washes were typed; salt as typed.
pub(super) fn yearly(sources: &QuoteSources<'_>) -> Vec<String> {
    let manner = sources.manner;
    let quote = &sources.job.quote.body;
    let mut said = Vec::new();
    let typed = |field: QuoteField| measured(quote, field).ok();
    for (id, water) in sources.waters {
        let name = vessel_name(sources.job, id, manner);
        let count = sources.answers.iter().find(|answers| answers.id == *id).map_or(1, |answers| answers.count);
        said.extend(manner.life_quoted(&water.life, count).map(|text| manner.named(&name, &text)));
    }
    if let (Some(time), Some(washes)) = (typed(QuoteField::WashTime), typed(QuoteField::WashesPerYear)) {
        for (id, water) in sources.waters {
            let name = vessel_name(sources.job, id, manner);
            let count = sources.answers.iter().find(|answers| answers.id == *id).map_or(1, |answers| answers.count);
            let chosen = water.backwash.as_ref().and_then(|washed| washed.settings.get(washed.chosen?));
            let Some(setting) = chosen else {
                if water.reading.duty.regime.is_backwashed() {
                    said.push(manner.named(&name, manner.label(QuoteLabel::NoWashWater)));
                }
                continue;
            };
            let (time, washes) = (Known::typed(seconds(time)), Known::typed(washes));
            said.push(match wash_water_per_year(count, &setting.flow, &time, &washes) {
                Ok(water) => [
                    &name,
                    manner.colon(),
                    &manner.wash_water(&water, setting.flow.value, time.value, washes.value, count),
                ]
                .concat(),
                Err(problem) => manner.named(&name, &manner.problem(&problem)),
            });
        }
    }
    if let Some(salt) = typed(QuoteField::SaltPerYear) {
        said.push(manner.salt_a_year(kilograms(salt)));
    }
    said
}
