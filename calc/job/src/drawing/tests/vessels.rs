//! Invented vessels to draw.

use std::sync::Arc;

use litemap::LiteMap;

use bedwright_calc::fill::{Role, SurfaceState};
use bedwright_calc::quantity::{kelvins, metres};
use bedwright_calc::vessel::Opening;

use crate::answers::{VesselAnswers, vessel_answers};
use crate::as_loaded::{AsLoaded, LoadedReading};
use crate::drawing::{Besides, Lifted};
use crate::entry::{Entry, Unit};
use crate::field::SurveyField as F;
use crate::id::Id;
use crate::sections::loading::{ReadingPlace, Stamp};
use crate::sections::plan::{LayerPlan, TargetKind, VesselPlan};
use crate::sections::survey::{CollectorKind, DiameterWay, HeadShape, Standing, SurveyEntry, VesselSurvey};

pub(crate) fn survey(fields: &[(F, f64)]) -> VesselSurvey {
    let mut survey = VesselSurvey::new(Id::new("v1"));
    let entries: LiteMap<F, SurveyEntry> = fields
        .iter()
        .map(|(field, value)| {
            let unit = if *field == F::LateralCount { Unit::Each } else { Unit::Inch };
            let text = if *field == F::LateralCount { format!("{value:.0}") } else { format!("{value:.4}") };
            (*field, SurveyEntry { entry: Entry { text, unit, meaning: None }, standing: Standing::Measured })
        })
        .collect();
    survey.entries = entries;
    survey.diameter_way = DiameterWay::Measured;
    survey
}

pub(crate) fn layer(material: &str, role: Role, target: TargetKind, amount: f64, unit: Unit) -> LayerPlan {
    let mut layer = LayerPlan::new(Id::new(&format!("l-{material}-{amount}")), material, role);
    layer.target = target;
    layer.amount = Some(Entry { text: format!("{amount:.4}"), unit, meaning: None });
    layer
}

pub(crate) fn gravel(material: &str, depth: f64) -> LayerPlan {
    layer(material, Role::Underbed, TargetKind::Depth, depth, Unit::Inch)
}

pub(crate) fn media(material: &str, depth: f64) -> LayerPlan {
    layer(material, Role::Media, TargetKind::Depth, depth, Unit::Inch)
}

pub(crate) fn packs(material: &str, count: f64) -> LayerPlan {
    layer(material, Role::Media, TargetKind::Packs, count, Unit::Each)
}

pub(crate) fn answers(survey: &VesselSurvey, layers: Vec<LayerPlan>) -> VesselAnswers {
    vessel_answers(survey, &VesselPlan { layers, ..VesselPlan::default() })
}

const BASKET: [(F, f64); 4] =
    [(F::CollectorDiameter, 2.0), (F::CollectorBottom, 0.25), (F::CollectorTop, 2.5), (F::TopSlot, 2.25)];

/// A small vessel with a basket, gravel and two bags of carbon.
pub(crate) fn small_carbon() -> VesselAnswers {
    let mut fields = vec![
        (F::InsideDiameter, 11.75),
        (F::InsideDepth, 51.0),
        (F::NeckHeight, 1.0),
        (F::ClearBore, 2.5),
        (F::RiserOutsideDiameter, 1.05),
        (F::RiserSeat, 1.0),
        (F::RiserAllowance, 0.25),
        (F::UpperCollector, 2.5),
    ];
    fields.extend(BASKET);
    let mut survey = survey(&fields);
    survey.collector = CollectorKind::Basket;
    survey.upper_collector = true;
    answers(
        &survey,
        vec![
            layer("gravel_1_8x1_4", Role::Underbed, TargetKind::Cover, 0.75, Unit::Inch),
            packs("carbon_coconut_12x40", 2.0),
        ],
    )
}

/// A large one with laterals, three graded gravels, sand and anthracite.
pub(crate) fn large_layered() -> VesselAnswers {
    let mut survey = survey(&[
        (F::InsideDiameter, 29.5),
        (F::InsideDepth, 71.0),
        (F::NeckHeight, 1.5),
        (F::ClearBore, 4.0),
        (F::RiserOutsideDiameter, 1.9),
        (F::RiserSeat, 3.0),
        (F::RiserAllowance, 0.0),
        (F::LateralCount, 8.0),
        (F::CollectorDiameter, 1.05),
        (F::LateralLength, 8.0),
        (F::LateralAxis, 4.0),
        (F::TopSlot, 4.5),
    ]);
    survey.collector = CollectorKind::HubAndLaterals;
    let layers = vec![
        gravel("gravel_1_2x3_4", 6.0),
        gravel("gravel_1_4x1_2", 3.0),
        gravel("gravel_1_8x1_4", 3.0),
        media("sand_20x30", 12.0),
        media("anthracite_08_12", 18.0),
    ];
    answers(&survey, layers)
}

/// A wide one on a nozzle plate with a flanged opening.
pub(crate) fn wide_flat() -> VesselAnswers {
    let mut survey = survey(&[
        (F::InsideDiameter, 62.0),
        (F::InsideDepth, 76.0),
        (F::NeckHeight, 3.0),
        (F::ClearBore, 6.0),
        (F::CollectorTop, 0.5),
        (F::TopSlot, 2.5),
    ]);
    survey.bottom_head = HeadShape::Flat;
    survey.collector = CollectorKind::NozzlePlate;
    survey.opening = Opening::Flange;
    survey.riser = false;
    answers(
        &survey,
        vec![
            gravel("gravel_1_8x1_4", 4.0),
            media("garnet_30x60", 4.0),
            media("calcite_16x40", 14.0),
            media("zeolite_14x40", 16.0),
        ],
    )
}

/// A conical bottom, F&D top, resin.
pub(crate) fn conical() -> VesselAnswers {
    let mut survey = survey(&[
        (F::InsideDiameter, 24.0),
        (F::InsideDepth, 66.0),
        (F::ConeDepth, 10.0),
        (F::NeckHeight, 2.0),
        (F::ClearBore, 4.0),
    ]);
    survey.bottom_head = HeadShape::Conical;
    survey.top_head = HeadShape::AsmeFd;
    survey.opening = Opening::TopAndBottom;
    survey.riser = false;
    answers(&survey, vec![gravel("garnet_coarse_8x16", 9.0), media("resin_cation", 28.0)])
}

/// Hemispherical heads and side ports; a shallow bed of two.
pub(crate) fn hemispherical() -> VesselAnswers {
    let mut survey =
        survey(&[(F::InsideDiameter, 36.0), (F::InsideDepth, 84.0), (F::NeckHeight, 2.0), (F::ClearBore, 16.0)]);
    survey.bottom_head = HeadShape::Hemispherical;
    survey.top_head = HeadShape::Hemispherical;
    survey.opening = Opening::SidePorts;
    survey.riser = false;
    answers(
        &survey,
        vec![gravel("gravel_1_4x1_2", 5.0), media("manganese_dioxide_20x40", 3.0), media("alumina_14x28", 2.0)],
    )
}

/// Torispherical heads on a slotted plate, the last layer more than goes in.
pub(crate) fn overfull() -> VesselAnswers {
    let mut survey = survey(&[
        (F::InsideDiameter, 20.0),
        (F::InsideDepth, 60.0),
        (F::NeckHeight, 2.0),
        (F::ClearBore, 4.0),
        (F::RiserOutsideDiameter, 1.66),
        (F::RiserSeat, 5.0),
        (F::RiserAllowance, 3.0),
        (F::CollectorTop, 5.0),
    ]);
    survey.bottom_head = HeadShape::AsmeFd;
    survey.top_head = HeadShape::Din28013;
    survey.collector = CollectorKind::SlottedPlate;
    answers(
        &survey,
        vec![
            media("sand_filter_045_055", 20.0),
            packs("carbon_bituminous_12x40", 4.0),
            packs("carbon_coconut_8x30", 60.0),
        ],
    )
}

/// Known inside, nothing in it.
pub(crate) fn empty() -> VesselAnswers {
    answers(
        &survey(&[
            (F::InsideDiameter, 15.5),
            (F::InsideDepth, 64.0),
            (F::NeckHeight, 1.0),
            (F::ClearBore, 2.5),
            (F::RiserOutsideDiameter, 1.05),
            (F::RiserSeat, 0.0),
            (F::RiserAllowance, -0.5),
        ]),
        Vec::new(),
    )
}

/// Nothing known.
pub(crate) fn unknown() -> VesselAnswers {
    answers(&VesselSurvey::new(Id::new("v1")), Vec::new())
}

/// A record of a loading that read each surface higher than planned by some inches, bottom first.
pub(crate) fn loaded(answers: &VesselAnswers, higher: &[f64]) -> Arc<AsLoaded> {
    let stamp = Stamp { at: "2026-11-20T10:00:00".to_owned(), by: "A. Example".to_owned() };
    let reading = |(layer, higher): (&crate::answers::LayerAnswer, &f64)| {
        let planned = layer.fill()?.tape.reading.value.value / 0.0254;
        Some(LoadedReading {
            place: ReadingPlace::End(layer.id.clone()),
            entry: Some(Entry { text: format!("{:.2}", planned - higher), unit: Unit::Inch, meaning: None }),
            state: SurfaceState::ALL[0],
            stamp: stamp.clone(),
            expected_mm: None,
            spread_mm: None,
            packs_more: None,
        })
    };
    Arc::new(AsLoaded {
        id: Id::new("record"),
        day: "2026-11-20".to_owned(),
        signed: stamp.clone(),
        vessel: answers.id.clone(),
        tag: "F-1".to_owned(),
        inside_diameter_mm: None,
        inside_depth_mm: None,
        layers: Vec::new(),
        readings: answers.layers.iter().zip(higher).filter_map(reading).collect(),
        done: Vec::new(),
        not_done: Vec::new(),
        texts: Vec::new(),
        method: None,
        drums: Vec::new(),
        photo: None,
        corrections: Vec::new(),
    })
}

/// A bed that the coldest and the warmest water lift to some inches under the rim.
pub(crate) fn lifted(answers: &VesselAnswers, under_rim: (f64, f64)) -> Besides {
    let rim = answers.vessel.as_ref().map_or(0.0, |vessel| vessel.cavity.rim().value);
    let at = |inches: f64, kelvin: f64| Some(Lifted { height: metres(rim - inches * 0.0254), water: kelvins(kelvin) });
    Besides { cold: at(under_rim.0, 277.594), warm: at(under_rim.1, 298.15), ..Besides::default() }
}
