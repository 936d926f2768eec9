//! Verdicts in words.

use bedwright_calc::quantity::{Amount, Assumption, Mark, Reason, Remedy, Subject, Verdict};

use super::Manner;
use super::label::verdict::{ReasonText, RemedyText, SubjectText};
use super::problem::capital;

/// A verdict in words.
#[derive(Clone, Debug, PartialEq)]
pub struct VerdictWords {
    /// What is judged and how: "Gravel: pour slowly".
    pub headline: String,
    /// Why, with the figure it missed.
    pub reason: String,
    /// What would mend it.
    pub remedies: Vec<String>,
    /// Where the limit comes from: a document, common practice, or from memory.
    pub source: String,
}

/// Whether an expansion is no bed any more.
fn washed_out(expansion: Amount) -> bool {
    expansion.si() > 1e3
}

impl Manner {
    /// A verdict; `layers` are the names of the layers, bottom first.
    #[must_use]
    pub fn verdict(&self, verdict: &Verdict, layers: &[String]) -> VerdictWords {
        VerdictWords {
            headline: self.named(&self.subject(verdict.subject, layers), self.label(verdict.mark)),
            reason: self.reason(verdict),
            remedies: verdict.remedies.iter().map(|remedy| self.remedy(remedy, verdict)).collect(),
            source: self.source(verdict.source),
        }
    }

    fn subject(&self, subject: Subject, layers: &[String]) -> String {
        use SubjectText as Text;
        let name = |index: usize| layers.get(index).map_or_else(|| self.label(Text::Layer), String::as_str);
        let of_layer = |text: Text, layer: &str| self.sentence(text, &[("layer", layer)]);
        let pair = |text: Text, lower: &str, upper: &str| self.sentence(text, &[("lower", lower), ("upper", upper)]);
        let plain = match subject {
            Subject::Gap { layer } => return of_layer(Text::Gap, name(layer)),
            Subject::Slot { layer } => return of_layer(Text::Slot, name(layer)),
            Subject::UpperSlot => {
                return of_layer(
                    Text::UpperSlot,
                    layers.last().map_or_else(|| self.label(Text::Media), String::as_str),
                );
            }
            Subject::Neighbours { lower } => return pair(Text::Neighbours, name(lower), name(lower + 1)),
            Subject::Mixing { lower, upper } => return pair(Text::Mixing, name(lower), name(upper)),
            Subject::Backwash { flow } => return self.sentence(Text::Backwash, &[("flow", &self.flow(flow))]),
            Subject::Rule { quantity, section: "" } | Subject::Label { quantity } => {
                return capital(self.term(quantity));
            }
            Subject::Rule { quantity, section } => {
                return [&capital(self.term(quantity)), " (", section, ")"].concat();
            }
            Subject::Feed { quantity } => return self.sentence(Text::Feed, &[("what", self.term(quantity))]),
            Subject::Cover => Text::Cover,
            Subject::Freeboard => Text::Freeboard,
            Subject::Diameter => Text::Diameter,
            Subject::CarryOver => Text::CarryOver,
            Subject::PressureLoss { peak: false } => Text::PressureLoss,
            Subject::PressureLoss { peak: true } => Text::PeakLoss,
            Subject::ServiceLift => Text::ServiceLift,
        };
        self.label(plain).to_owned()
    }

    fn reason(&self, verdict: &Verdict) -> String {
        use ReasonText as Text;
        // What falls short is rounded down and what is too much is rounded up, so that no limit looks met.
        let rounded = |amount: Amount, round: fn(f64) -> f64| match amount {
            Amount::Ratio(x) => self.decimal(round(x * 10.0) / 10.0, 1),
            other => self.amount(other),
        };
        let down = |amount: Amount| rounded(amount, f64::floor);
        let plain = |amount: Amount| rounded(amount, f64::round);
        let small = |amount: Amount| self.small_amount(amount);
        let share = |amount: Amount| self.percent(amount.si());
        let over = verdict.mark != Mark::Fine;
        let stop = verdict.mark == Mark::Stop;
        let up = |amount: Amount| if over { rounded(amount, f64::ceil) } else { plain(amount) };
        let two = |text: Text, one: (&str, String), other: (&str, String)| {
            self.sentence(text, &[(one.0, &one.1), (other.0, &other.1)])
        };
        let amounts = |text: Text, one: (&str, Amount), other: (&str, Amount)| {
            two(text, (one.0, self.amount(one.1)), (other.0, self.amount(other.1)))
        };
        match verdict.reason {
            Reason::GapCentred { grains, wanted } => {
                let text = if over { Text::GapJams } else { Text::GapFine };
                two(text, ("grains", down(grains)), ("wanted", plain(wanted)))
            }
            Reason::GapLeaned { grains, wanted } => {
                two(Text::GapLeaned, ("grains", down(grains)), ("wanted", plain(wanted)))
            }
            Reason::Slot { slot, grain } => {
                let text = match (stop, over) {
                    (true, _) => Text::SlotLets,
                    (false, true) => Text::SlotClose,
                    (false, false) => Text::SlotHolds,
                };
                let share = self.decimal(Assumption::SlotCaution.ratio(), 2);
                self.sentence(text, &[("slot", &small(slot)), ("grain", &small(grain)), ("share", &share)])
            }
            Reason::GapHeld { grains } => self.sentence(Text::GapHeld, &[("grains", &plain(grains))]),
            Reason::CoarserAbove { below, above } => {
                two(Text::CoarserAbove, ("below", small(below)), ("above", small(above)))
            }
            Reason::SizeRatio { ratio, limit } => two(Text::SizeRatio, ("ratio", up(ratio)), ("limit", plain(limit))),
            Reason::FilterRatio { ratio, limit } => {
                two(Text::FilterRatio, ("ratio", up(ratio)), ("limit", plain(limit)))
            }
            Reason::NoRoom { needs, room } => amounts(Text::NoRoom, ("needs", needs), ("room", room)),
            Reason::CoverAboveSlot { cover: Amount::Length(cover) } if cover.value < 0.0 => {
                self.sentence(Text::SlotAbove, &[("length", &self.length(-cover))])
            }
            Reason::CoverAboveSlot { cover } => self.sentence(Text::CoverAbove, &[("length", &self.amount(cover))]),
            Reason::Room { freeboard: Amount::Length(room) } => {
                self.sentence(Text::OverEnd, &[("length", &self.length(-room))])
            }
            Reason::Room { freeboard } => self.sentence(Text::Freeboard, &[("length", &self.amount(freeboard))]),
            Reason::Stands { cold, warm, room } => {
                self.sentence(Text::Stands, &[("warm", &share(warm)), ("cold", &share(cold)), ("room", &share(room))])
            }
            Reason::LiftsTooLittle { expansion, wanted } => {
                let text = if stop { Text::LiftsAtBest } else { Text::LiftsLikely };
                two(text, ("expansion", share(expansion)), ("wanted", share(wanted)))
            }
            Reason::StandsTooHigh { expansion, room } => {
                let text = match (washed_out(expansion), stop) {
                    (true, _) => Text::WashesOut,
                    (false, true) => Text::StandsAtLeast,
                    (false, false) => Text::StandsLikely,
                };
                two(text, ("expansion", share(expansion)), ("room", share(room)))
            }
            Reason::CarriesAway { speed, settling } => {
                let text = if over { Text::FinestLeaves } else { Text::FinestFalls };
                amounts(text, ("speed", speed), ("settling", settling))
            }
            Reason::HeavierAbove { below, above } => amounts(Text::HeavierAbove, ("above", above), ("below", below)),
            Reason::EdgesMix { below, above } => {
                let text = if over { Text::EdgesMix } else { Text::EdgesApart };
                amounts(text, ("above", above), ("below", below))
            }
            Reason::AtLeast { value, limit } => amounts(Text::AtLeast, ("value", value), ("limit", limit)),
            Reason::AtMost { value, limit } => amounts(Text::AtMost, ("value", value), ("limit", limit)),
            Reason::LiftsInService { speed, start } => {
                let text = if over { Text::TenthLifts } else { Text::LiesStill };
                amounts(text, ("speed", speed), ("start", start))
            }
            Reason::AboveNominal { inside, nominal } => {
                amounts(Text::AboveNominal, ("inside", inside), ("nominal", nominal))
            }
        }
    }

    /// Grains and slots in millimetres, other amounts as they are.
    fn small_amount(&self, amount: Amount) -> String {
        match amount {
            Amount::Length(x) => self.small(x),
            other => self.amount(other),
        }
    }

    fn remedy(&self, remedy: &Remedy, verdict: &Verdict) -> String {
        use RemedyText as Text;
        let with = |text: Text, name: &str, amount: Amount| self.sentence(text, &[(name, &self.amount(amount))]);
        let text = match remedy {
            Remedy::SmallerGrain { largest } => {
                return self.sentence(Text::SmallerGrain, &[("size", &self.small_amount(*largest))]);
            }
            Remedy::CoarserGrain { smallest } => {
                return self.sentence(Text::CoarserGrain, &[("size", &self.small_amount(*smallest))]);
            }
            Remedy::MoreUnderbed { volume } => return with(Text::MoreUnderbed, "volume", *volume),
            Remedy::FewerPacks { packs } if packs.si() == 1.0 => Text::OnePack,
            Remedy::FewerPacks { packs } => {
                return self.sentence(Text::FewerPacks, &[("packs", &crate::decimal::plain(packs.si()))]);
            }
            Remedy::DrainCheck { flow, minutes } => {
                let places = [("flow", &*self.amount(*flow)), ("minutes", &self.amount(*minutes))];
                return self.sentence(Text::DrainCheck, &places);
            }
            Remedy::FlowControl { flow } => return with(Text::FlowControl, "flow", *flow),
            Remedy::TwoFlowControls { cold, warm } => {
                let places = [("cold", &*self.amount(*cold)), ("warm", &self.amount(*warm))];
                return self.sentence(Text::TwoFlowControls, &places);
            }
            Remedy::NarrowerVessel { nominal } => return with(Text::NarrowerVessel, "diameter", *nominal),
            Remedy::MoreBackwash { flow } => {
                let first = verdict.remedies.first() == Some(remedy);
                return with(if first { Text::Give } else { Text::OrGive }, "flow", *flow);
            }
            Remedy::LessBackwash { flow } => return with(Text::LessBackwash, "flow", *flow),
            Remedy::MoreRoom { length } => return with(Text::MoreRoom, "length", *length),
            Remedy::LessFlow { flow } => return with(Text::LessFlow, "flow", *flow),
            Remedy::MoreVessels { vessels } => return with(Text::MoreVessels, "vessels", *vessels),
            Remedy::PourSlowly => Text::PourSlowly,
            Remedy::FillPortOrManway => Text::FillPortOrManway,
            Remedy::LayerBetween if matches!(verdict.subject, Subject::Slot { .. }) => Text::CoarserAtSlots,
            Remedy::LayerBetween => Text::LayerBetween,
            Remedy::SwapLayers => Text::SwapLayers,
            Remedy::CheckReadings => Text::CheckReadings,
            Remedy::ReducePressure => Text::ReducePressure,
            Remedy::OtherVessel => Text::OtherVessel,
            Remedy::TapeBareShell => Text::TapeBareShell,
        };
        self.label(text).to_owned()
    }
}
