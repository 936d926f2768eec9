//! Vessels that have as little in common as vessels can: heads, collectors, beds, ways of the water, ways to fill.

use std::sync::Arc;

use bedwright_calc::fill::Role;
use bedwright_calc::hydraulics::{Arrangement, Regime};
use bedwright_job::Job;
use bedwright_job::edit::{Choice, DutyChoice, Edit, LayerChoice, WaterOf, apply};
use bedwright_job::entry::{Entry, Unit};
use bedwright_job::evidence::{Evidence, EvidenceKind};
use bedwright_job::field::{LayerField, SurveyField as S, WaterField as W};
use bedwright_job::id::Id;
use bedwright_job::sample::sample_job;
use bedwright_job::sections::head::TextField;
use bedwright_job::sections::plan::{LayerPlan, TargetKind, VesselPlan};
use bedwright_job::sections::site::WaterSource;
use bedwright_job::sections::survey::{CollectorKind, DiameterWay, HeadShape, Standing, SurveyEntry, VesselSurvey};

/// The sample.
pub fn sample() -> Job {
    sample_job(Id::new("sample"), [Id::new("filter"), Id::new("softener")], "2026-11-26")
}

/// One vessel as it is put together.
struct Made {
    id: Id,
    edits: Vec<Edit>,
}

impl Made {
    fn new(at: usize, tag: &str) -> Made {
        let id = Id::new(&tag.to_lowercase());
        let survey = Arc::new(VesselSurvey::new(id.clone()));
        let edits = vec![
            Edit::InsertVessel { at, vessel: survey, plan: Arc::new(VesselPlan::default()) },
            Edit::Tags { vessel: id.clone(), tags: vec![tag.to_owned()] },
        ];
        Made { id, edits }
    }

    fn chosen(mut self, choices: &[Choice]) -> Made {
        let choose = |choice: &Choice| Edit::Choose { vessel: self.id.clone(), choice: *choice };
        self.edits.extend(choices.iter().map(choose));
        self
    }

    fn surveyed(mut self, entries: &[(S, &str)]) -> Made {
        let survey = |(field, text): &(S, &str)| {
            let entry = SurveyEntry { entry: typed(text, field.usual_unit(false)), standing: Standing::Measured };
            Edit::Survey { vessel: self.id.clone(), field: *field, entry: Some(entry) }
        };
        self.edits.extend(entries.iter().map(survey));
        self
    }

    fn layer(
        mut self,
        at: usize,
        (material, role): (&str, Role),
        target: TargetKind,
        (text, unit): (&str, Unit),
    ) -> Made {
        let layer = Id::new(&format!("l{at}-{}", self.id));
        let vessel = self.id.clone();
        let entry = Some(typed(text, unit));
        self.edits.extend([
            Edit::InsertLayer { vessel: vessel.clone(), at, layer: LayerPlan::new(layer.clone(), material, role) },
            Edit::Layer { vessel: vessel.clone(), layer: layer.clone(), choice: LayerChoice::Target(target) },
            Edit::LayerEntry { vessel, layer, field: LayerField::Amount, entry },
        ]);
        self
    }

    fn grains(mut self, at: usize, entries: &[(W, &str)]) -> Made {
        let of = WaterOf::Layer(self.id.clone(), Id::new(&format!("l{at}-{}", self.id)));
        self.edits.extend(entries.iter().map(|(field, text)| water(of.clone(), *field, text)));
        self
    }

    fn asked(mut self, entries: &[(W, &str)]) -> Made {
        let of = WaterOf::Vessel(self.id.clone());
        self.edits.extend(entries.iter().map(|(field, text)| water(of.clone(), *field, text)));
        self
    }

    /// What was seen of its bed: a drain check without grains at a flow, or a point read off a paper for a layer.
    fn seen(mut self, flow: (&str, Unit), point: Option<(usize, &str)>) -> Made {
        let seen = Evidence {
            id: Id::new(&format!("e{}-{}", self.edits.len(), self.id)),
            kind: if point.is_some() { EvidenceKind::PaperPoint } else { EvidenceKind::DrainCheck },
            day: "2026-11-26".to_owned(),
            vessel: self.id.clone(),
            layer: point.map(|(at, _)| Id::new(&format!("l{at}-{}", self.id))),
            flow: typed(flow.0, flow.1),
            temperature: typed("6", Unit::Celsius),
            minutes: point.is_none().then(|| typed("10", Unit::Minute)),
            grains: false,
            expansion: point.map(|(_, share)| typed(share, Unit::Percent)),
            drop: None,
            of_visit: false,
        };
        self.edits.push(Edit::AddRecord(seen.record()));
        self
    }

    fn duty(mut self, choice: DutyChoice) -> Made {
        self.edits.push(Edit::Duty { vessel: self.id.clone(), choice });
        self
    }
}

fn typed(text: &str, unit: Unit) -> Entry {
    Entry { text: text.to_owned(), unit, meaning: None }
}

fn water(of: WaterOf, field: W, text: &str) -> Edit {
    let entry = SurveyEntry { entry: typed(text, field.usual_unit(false)), standing: Standing::Measured };
    Edit::Water { of, field, entry: Some(entry) }
}

/// 12×52 with 0.15 cu ft of gravel and two bags of carbon.
fn carbon() -> Made {
    Made::new(0, "Carbon")
        .chosen(&[Choice::Diameter(DiameterWay::Measured)])
        .surveyed(&[
            (S::NominalSize, "12x52"),
            (S::InsideDiameter, "11.75"),
            (S::InsideDepth, "51"),
            (S::NeckHeight, "1"),
            (S::ClearBore, "2.5"),
            (S::RiserOutsideDiameter, "1.05"),
            (S::RiserSeat, "0"),
        ])
        .layer(0, ("gravel_1_8x1_4", Role::Underbed), TargetKind::Volume, ("0.15", Unit::CubicFoot))
        .layer(1, ("carbon_coconut_12x40", Role::Media), TargetKind::Packs, ("2", Unit::Each))
        .grains(1, &[(W::Uniformity, "1.7"), (W::Voidage, "0.5")])
        .seen(("8", Unit::UsGallonPerMinute), None)
        .asked(&[(W::ServiceFlow, "4"), (W::MinimumExpansion, "20"), (W::EmptyMass, "45"), (W::FootDiameter, "11")])
}

/// Anthracite over sand on gravel between torispherical heads, on laterals, filled by weight and by depth.
fn two_media() -> Made {
    Made::new(1, "Two-media")
        .chosen(&[
            Choice::Diameter(DiameterWay::Circumference),
            Choice::BottomHead(HeadShape::Din28011),
            Choice::TopHead(HeadShape::AsmeFd),
            Choice::Collector(CollectorKind::HubAndLaterals),
        ])
        .surveyed(&[
            (S::NominalSize, "24x72"),
            (S::Circumference, "75.5"),
            (S::Wall, "0.25"),
            (S::InsideDepth, "71"),
            (S::NeckHeight, "1.5"),
            (S::ClearBore, "4"),
            (S::RiserOutsideDiameter, "1.9"),
            (S::RiserSeat, "3"),
            (S::LateralCount, "6"),
            (S::LateralLength, "9"),
            (S::LateralAxis, "4"),
            (S::CollectorDiameter, "1"),
            (S::TopSlot, "4.25"),
            (S::SlotWidth, "0.3 mm"),
        ])
        .layer(0, ("gravel_1_8x1_4", Role::Underbed), TargetKind::Cover, ("3", Unit::Inch))
        .layer(1, ("sand_20x30", Role::Media), TargetKind::Weight, ("300", Unit::Pound))
        .layer(2, ("anthracite_08_12", Role::Media), TargetKind::Depth, ("15", Unit::Inch))
        .asked(&[(W::ServiceFlow, "8"), (W::PeakFlow, "12"), (W::ValveLoss, "1.5"), (W::CollectorLoss, "0.5")])
}

/// 10×54 without gravel: one size of beads on a bottom basket, an upper collector whose slots hold them.
fn resin() -> Made {
    Made::new(2, "Resin")
        .chosen(&[Choice::Diameter(DiameterWay::Measured), Choice::UpperCollector(true)])
        .surveyed(&[
            (S::NominalSize, "10x54"),
            (S::InsideDiameter, "9.7"),
            (S::InsideDepth, "53"),
            (S::NeckHeight, "1"),
            (S::ClearBore, "2.5"),
            (S::RiserOutsideDiameter, "1.05"),
            (S::RiserSeat, "0"),
            (S::UpperCollector, "3.4"),
        ])
        .layer(0, ("resin_cation", Role::Media), TargetKind::Volume, ("1.5", Unit::CubicFoot))
        .grains(
            0,
            &[
                (W::GrainLow, "0.68 mm"),
                (W::GrainHigh, "0.68 mm"),
                (W::EffectiveSize, "0.68 mm"),
                (W::Uniformity, "1"),
                (W::ParticleDensity, "1260 kg/m3"),
                (W::Sphericity, "1"),
                (W::Voidage, "0.38"),
            ],
        )
        .asked(&[(W::ServiceFlow, "3"), (W::UpperSlotWidth, "0.2 mm"), (W::FlowControl, "2.4")])
}

/// A pair, one after the other, with a conical bottom and a Korbbogen on top; filled up to a freeboard as a share.
fn lead_lag() -> Made {
    Made::new(3, "Lead-lag")
        .chosen(&[
            Choice::Diameter(DiameterWay::Measured),
            Choice::BottomHead(HeadShape::Conical),
            Choice::TopHead(HeadShape::Din28013),
            Choice::Riser(false),
        ])
        .surveyed(&[
            (S::InsideDiameter, "36"),
            (S::InsideDepth, "84"),
            (S::ConeDepth, "9"),
            (S::NeckHeight, "2"),
            (S::ClearBore, "6"),
        ])
        .layer(0, ("gravel_1_4x1_2", Role::Underbed), TargetKind::TapeReading, ("72", Unit::Inch))
        .layer(1, ("carbon_bituminous_8x30", Role::Media), TargetKind::FreeboardRatio, ("60", Unit::Percent))
        .seen(("20", Unit::MetrePerHour), Some((1, "15")))
        .duty(DutyChoice::Arrangement(Arrangement::LeadLag))
        .asked(&[(W::ServiceFlow, "30")])
}

/// Calcite that water lifts in service, in a flat-bottomed vessel on a slotted plate, filled up to a freeboard.
fn upflow() -> Made {
    Made::new(4, "Upflow")
        .chosen(&[
            Choice::Diameter(DiameterWay::Nominal),
            Choice::BottomHead(HeadShape::Flat),
            Choice::TopHead(HeadShape::Hemispherical),
            Choice::Riser(false),
            Choice::Collector(CollectorKind::SlottedPlate),
        ])
        .surveyed(&[
            (S::NominalSize, "13x54"),
            (S::InsideDepth, "53"),
            (S::NeckHeight, "1"),
            (S::ClearBore, "4"),
            (S::CollectorTop, "2"),
            (S::SlotWidth, "0.2 mm"),
        ])
        .layer(0, ("calcite_16x40", Role::Media), TargetKind::Freeboard, ("20", Unit::Inch))
        .duty(DutyChoice::Regime(Regime::Upflow))
        .asked(&[(W::ServiceFlow, "3")])
}

/// Three sorts of gravel and garnet filled into a hemispherical bottom by what rose in it, under a head of air.
fn risen() -> Made {
    Made::new(5, "Risen")
        .chosen(&[
            Choice::Diameter(DiameterWay::MeteredFill),
            Choice::BottomHead(HeadShape::Hemispherical),
            Choice::Collector(CollectorKind::Basket),
        ])
        .surveyed(&[
            (S::MeteredVolume, "5 gal"),
            (S::TapeBefore, "40"),
            (S::TapeAfter, "28.2"),
            (S::InsideDepth, "51"),
            (S::NeckHeight, "1"),
            (S::ClearBore, "2.5"),
            (S::RiserOutsideDiameter, "1.05"),
            (S::RiserSeat, "0.5"),
            (S::CollectorDiameter, "2"),
            (S::CollectorBottom, "0.5"),
            (S::CollectorTop, "3"),
            (S::TopSlot, "2.5"),
        ])
        .layer(0, ("gravel_1_8x1_4", Role::Underbed), TargetKind::Cover, ("1.5", Unit::Inch))
        .layer(1, ("garnet_30x60", Role::Media), TargetKind::Packs, ("0.4", Unit::Each))
        .layer(2, ("sand_filter_045_055", Role::Media), TargetKind::Volume, ("0.52", Unit::CubicFoot))
        .duty(DutyChoice::Regime(Regime::AirHead))
        .asked(&[(W::ServiceFlow, "3"), (W::AirHead, "6")])
}

/// All of them in one job, on a well.
pub fn vessels() -> Job {
    let mut job = Job::new(Id::new("unlike"), "2026-11-26");
    let site = |field: W, text: &str| water(WaterOf::Site, field, text);
    let mut edits = vec![
        Edit::Text { field: TextField::Title, text: "Unlike vessels (invented)".to_owned() },
        Edit::Text { field: TextField::Owner, text: "Tarn Water".to_owned() },
        Edit::Source(WaterSource::Well),
        site(W::TemperatureLow, "10 C"),
        site(W::TemperatureHigh, "14 C"),
        site(W::BackwashAvailable, "25"),
    ];
    for made in [carbon(), two_media(), resin(), lead_lag(), upflow(), risen()] {
        edits.extend(made.edits);
    }
    for edit in edits {
        let shown = format!("{edit:?}");
        assert!(apply(&mut job, edit, &Id::new("unlike")).is_ok(), "{shown}");
    }
    job
}
