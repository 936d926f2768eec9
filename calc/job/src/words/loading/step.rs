//! The steps of removal and loading in words, each with this vessel's figures.

use bedwright_calc::quantity::{VolumeRate, metres};
use bedwright_calc::supply::JobKind;
use bedwright_calc::vessel::{BottomCollector, Opening};

use super::{StepWords, method};
use crate::answers::VesselAnswers;
use crate::loading::{LoadAnswers, Step, StepRow, is_carbon, is_silica};
use crate::sections::loading::WorkSheet;
use crate::words::Manner;
use crate::words::label::step::{LoadingCaution, StepText as Text};
use crate::words::problem::capital;

/// Whether the vessel closes with a thread and an O-ring.
const fn is_threaded(opening: Opening) -> bool {
    matches!(opening, Opening::TopOnly | Opening::FillPort)
}

/// What to do, and how where the step doesn't say it; of what needs this vessel's figures the title alone.
const fn texts(step: Step, threaded: bool) -> (Text, Option<Text>) {
    match step {
        Step::Bypass => (Text::Bypass, Some(Text::BypassHow)),
        Step::Isolate => (Text::Isolate, None),
        Step::Depressurise => (Text::Depressurise, None),
        Step::Vent => (Text::Vent, Some(Text::VentHow)),
        Step::Power => (Text::Power, None),
        Step::ValveOff => (Text::ValveOff, Some(Text::ValveOffHow)),
        Step::ReadFound => (Text::ReadFound, Some(Text::ReadFoundHow)),
        Step::TakeOut => (Text::TakeOut, None),
        Step::ReadLeft => (Text::ReadLeft, Some(Text::LevelFirst)),
        Step::Gravel => (Text::Gravel, Some(Text::GravelHow)),
        Step::SlotsSeen => (Text::SlotsSeen, Some(Text::SlotsSeenHow)),
        Step::RiserSeen => (Text::RiserSeen, Some(Text::RiserSeenHow)),
        Step::SeatSeen => (Text::SeatSeen, Some(Text::SeatSeenHow)),
        Step::ThreadSeen if threaded => (Text::ThreadSeen, None),
        Step::ThreadSeen => (Text::FacesSeen, None),
        Step::Drums => (Text::Drums, None),
        Step::Waste => (Text::Waste, Some(Text::WasteHow)),
        Step::Position => (Text::Position, Some(Text::PositionHow)),
        Step::RinseVessel => (Text::RinseVessel, None),
        Step::Collector => (Text::Collector, None),
        Step::RiserMark => (Text::RiserMark, None),
        Step::RiserCut => (Text::RiserCut, Some(Text::RiserCutHow)),
        Step::RiserCap => (Text::RiserCap, Some(Text::RiserCapHow)),
        Step::Cushion => (Text::Cushion, None),
        Step::Pour => (Text::PouredPlain, None),
        Step::Read => (Text::Read, Some(Text::ReadHow)),
        Step::RiserCentred => (Text::RiserCentred, Some(Text::RiserCentredHow)),
        Step::Seal if threaded => (Text::SealThread, Some(Text::SealThreadHow)),
        Step::Seal => (Text::SealFaces, None),
        Step::CapOff => (Text::CapOff, Some(Text::CapOffHow)),
        Step::UpperCollector => (Text::UpperCollector, None),
        Step::ValveOn if threaded => (Text::ValveOn, None),
        Step::ValveOn => (Text::ClosedUp, None),
        Step::AirGap => (Text::AirGap, None),
        Step::Fill => (Text::Fill, Some(Text::FillHow)),
        Step::Soak => (Text::Soak, Some(Text::SoakHow)),
        Step::Backwash => (Text::Backwash, None),
        Step::RinseToWaste => (Text::RinseToWaste, None),
        Step::Regenerate => (Text::Regenerate, None),
        Step::Settings => (Text::Settings, None),
        Step::Leaks => (Text::Leaks, Some(Text::LeaksHow)),
        Step::OutletTest => (Text::OutletTest, None),
        Step::Label => (Text::Label, Some(Text::LabelHow)),
    }
}

fn words(title: impl Into<String>, lines: Vec<String>) -> StepWords {
    StepWords { title: title.into(), lines }
}

impl Manner {
    /// A step with this vessel's figures; `wash` is the flow its backwash is set to, where known.
    #[must_use]
    pub fn step(
        &self,
        row: &StepRow,
        of: &LoadAnswers,
        answers: &VesselAnswers,
        wash: Option<VolumeRate>,
    ) -> StepWords {
        let threaded = answers.vessel.as_ref().is_none_or(|vessel| is_threaded(vessel.measures.opening));
        let (title, how) = texts(row.step, threaded);
        match row.step {
            Step::TakeOut => self.take_out(of),
            Step::Pour => self.pour(row, of, answers),
            Step::RiserMark => words(self.label(title), self.riser_mark(answers)),
            Step::Cushion => words(self.label(title), vec![self.label(cushion(answers)).to_owned()]),
            Step::Backwash => {
                let how = wash.map_or_else(
                    || self.label(Text::BackwashSlowly).to_owned(),
                    |flow| self.sentence(Text::BackwashUpTo, &[("flow", &self.flow(flow))]),
                );
                words(self.label(title), vec![how])
            }
            _ => words(self.label(title), how.map(|how| self.label(how).to_owned()).into_iter().collect()),
        }
    }

    fn take_out(&self, of: &LoadAnswers) -> StepWords {
        let weight = of.drained.as_ref().map(|(least, most)| {
            let (least, most) = (self.mass(least.value), self.mass(most.value));
            self.sentence(Text::BedWeighs, &[("least", &least), ("most", &most)])
        });
        let usual = self.label(method(of.usual_method));
        let usual = self.sentence(Text::UsualMethod, &[("method", &capital(usual))]);
        let title = if of.kind == JobKind::Partial { Text::TakeOutPart } else { Text::TakeOut };
        words(self.label(title), weight.into_iter().chain([usual]).collect())
    }

    fn riser_mark(&self, answers: &VesselAnswers) -> Vec<String> {
        let cut = answers.riser_cut.as_ref();
        let cut = cut.map(|cut| self.sentence(Text::ExpectCut, &[("length", &self.tape(cut.value))]));
        let allowance =
            answers.vessel.as_ref().and_then(|vessel| Some(vessel.measures.riser.as_ref()?.allowance.value));
        let valve = match allowance {
            Some(allowance) if allowance.value > 0.0 => {
                self.sentence(Text::ValveAbove, &[("length", &self.tape(allowance))])
            }
            Some(allowance) if allowance.value < 0.0 => {
                self.sentence(Text::ValveBelow, &[("length", &self.tape(metres(-allowance.value)))])
            }
            _ => self.label(Text::ValveFlush).to_owned(),
        };
        cut.into_iter().chain([valve]).collect()
    }

    fn pour(&self, row: &StepRow, of: &LoadAnswers, answers: &VesselAnswers) -> StepWords {
        let layer = row.layer.and_then(|at| answers.planned.get(at));
        let fill = row.layer.and_then(|at| answers.layers.get(at)).and_then(|layer| layer.fill());
        let (Some(layer), Some(at)) = (layer, row.layer) else {
            return words(self.label(Text::PouredPlain), Vec::new());
        };
        let amount = of.pour_of(at).map(|pour| self.packs(pour.packs.value, &layer.pack)).unwrap_or_default();
        let title =
            self.sentence(Text::Poured, &[("amount", &amount), ("material", &self.material(&layer.material.id))]);
        let pack = self.sentence(Text::PourPack, &[("pack", &self.pack(&layer.pack))]);
        let part = fill.and_then(|fill| fill.part.as_ref()).filter(|_| of.from_empty() && of.done.poured.is_empty());
        let part = part.map(|part| {
            let (share, buckets) = (self.decimal(part.share.value, 2), self.decimal(part.buckets.value, 1));
            let places = [("share", &*share), ("volume", &self.volume(part.volume.value)), ("buckets", &buckets)];
            self.sentence(Text::PourPart, &places)
        });
        words(title.trim(), [pack].into_iter().chain(part).collect())
    }

    /// The cautions of a sheet for a vessel, a sentence each.
    #[must_use]
    pub fn cautions(&self, sheet: WorkSheet, answers: &VesselAnswers) -> Vec<&'static str> {
        let carbon = answers.planned.iter().any(is_carbon);
        let silica = answers.planned.iter().any(is_silica);
        let mut said = vec![LoadingCaution::Isolate, LoadingCaution::Power];
        if carbon {
            said.push(LoadingCaution::Oxygen);
        }
        match sheet {
            WorkSheet::Removal => said.extend([LoadingCaution::Heavy, LoadingCaution::Spent]),
            WorkSheet::Loading => {
                let dust = if silica { LoadingCaution::Silica } else { LoadingCaution::Dust };
                said.extend([LoadingCaution::Lift, dust, LoadingCaution::Vacuum, LoadingCaution::Disinfect]);
            }
        }
        said.into_iter().map(|caution| self.label(caution)).collect()
    }
}

/// Why water stands over the collector before anything is poured.
fn cushion(answers: &VesselAnswers) -> Text {
    let laterals = answers
        .vessel
        .as_ref()
        .is_some_and(|vessel| matches!(vessel.measures.bottom_collector, BottomCollector::HubAndLaterals { .. }));
    if laterals { Text::CushionMust } else { Text::CushionHelps }
}
