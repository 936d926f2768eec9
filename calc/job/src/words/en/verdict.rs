//! Verdicts in English.

use bedwright_calc::quantity::{Amount, Assumption, Mark, Reason, Remedy, Subject, Verdict};

use super::{capital, source, term};
use crate::words::{Manner, VerdictWords};

/// Whether an expansion is no bed any more.
fn washed_out(expansion: Amount) -> bool {
    expansion.si() > 1e3
}

pub(in crate::words) fn mark(mark: Mark) -> &'static str {
    match mark {
        Mark::Fine => "fine",
        Mark::SetOnSite => "set on site",
        Mark::Caution => "caution",
        Mark::Stop => "stop",
    }
}

pub(in crate::words) fn verdict(manner: Manner, verdict: &Verdict, layers: &[String]) -> VerdictWords {
    let name = |index: usize| layers.get(index).map_or("layer", String::as_str);
    let subject = match verdict.subject {
        Subject::Gap { layer } => format!("Gap beside the riser, {}", name(layer)),
        Subject::Slot { layer } => format!("Collector slots, {}", name(layer)),
        Subject::Neighbours { lower } => format!("{} under {}", name(lower), name(lower + 1)),
        Subject::Cover => "Cover of the collector".to_owned(),
        Subject::Freeboard => "Room above the media".to_owned(),
        Subject::Diameter => "Inside diameter".to_owned(),
        Subject::Backwash { flow } => format!("Backwash at {}", manner.flow(flow)),
        Subject::CarryOver => "Fines in the backwash".to_owned(),
        Subject::UpperSlot => format!("Upper collector slots, {}", layers.last().map_or("media", String::as_str)),
        Subject::Mixing { lower, upper } => format!("{} on {} in backwash", name(upper), name(lower)),
        Subject::Rule { quantity, section } => {
            let what = capital(term(quantity));
            if section.is_empty() { what } else { format!("{what} ({section})") }
        }
        Subject::PressureLoss { peak: false } => "Pressure lost by the clean unit".to_owned(),
        Subject::PressureLoss { peak: true } => "Pressure lost by the clean unit at the peak".to_owned(),
        Subject::Label { quantity } => capital(term(quantity)),
        Subject::ServiceLift => "Lift at the service flow".to_owned(),
        Subject::Feed { quantity } => format!("Feed to reverse osmosis, {}", term(quantity)),
    };
    // What falls short is rounded down and what is too much is rounded up, so that no limit looks met.
    let rounded = |amount: Amount, round: fn(f64) -> f64| match amount {
        Amount::Ratio(x) => manner.decimal(round(x * 10.0) / 10.0, 1),
        other => manner.amount(other),
    };
    let down = |amount: Amount| rounded(amount, f64::floor);
    let up = |amount: Amount| rounded(amount, f64::ceil);
    let plain = |amount: Amount| rounded(amount, f64::round);
    let small = |amount: Amount| match amount {
        Amount::Length(x) => manner.small(x),
        other => manner.amount(other),
    };
    let share = |amount: Amount| manner.percent(amount.si());
    let over = verdict.mark != Mark::Fine;
    let reason = match verdict.reason {
        Reason::GapCentred { grains, wanted } if !over => {
            format!("{} of the largest grains fit beside the riser; {} are enough.", down(grains), plain(wanted))
        }
        Reason::GapCentred { grains, wanted } => {
            format!("{} of the largest grains fit beside the riser; under {} they jam.", down(grains), plain(wanted))
        }
        Reason::GapLeaned { grains, wanted } => format!(
            "Even with the riser leaned over only {} of the largest grains fit; under {} none pass.",
            down(grains),
            plain(wanted)
        ),
        Reason::Slot { slot, grain } if verdict.mark == Mark::Stop => {
            format!("Slots of {} let the smallest grains through, {}.", small(slot), small(grain))
        }
        Reason::Slot { slot, grain } if over => format!(
            "Slots of {} are close to the smallest grains, {}; up to {} of a grain is safe.",
            small(slot),
            small(grain),
            manner.decimal(Assumption::SlotCaution.ratio(), 2)
        ),
        Reason::Slot { slot, grain } => format!("Slots of {} hold the smallest grains, {}.", small(slot), small(grain)),
        Reason::GapHeld { grains } => {
            format!(
                "The layer below holds the riser, and only {} of the largest grains fit beside it; none pass.",
                plain(grains)
            )
        }
        Reason::CoarserAbove { below, above } => {
            format!("Its grains reach {}, those above {}: the coarser belongs below.", small(below), small(above))
        }
        Reason::SizeRatio { ratio, limit } => format!(
            "The largest grain below is {} times the smallest above; {} is the most.",
            if over { up(ratio) } else { plain(ratio) },
            plain(limit)
        ),
        Reason::FilterRatio { ratio, limit } => format!(
            "Grains below are {} times those above (D15 over D85); {} is the most.",
            if over { up(ratio) } else { plain(ratio) },
            plain(limit)
        ),
        Reason::NoRoom { needs, room } => {
            format!("It needs {}; there is room for {}.", manner.amount(needs), manner.amount(room))
        }
        Reason::CoverAboveSlot { cover: Amount::Length(cover) } if cover.value < 0.0 => {
            format!("The top slot stands {} above the underbed.", manner.length(-cover))
        }
        Reason::CoverAboveSlot { cover } => format!("The underbed stands {} above the top slot.", manner.amount(cover)),
        Reason::Room { freeboard: Amount::Length(room) } => {
            format!("The media would stand {} above where the bed must end.", manner.length(-room))
        }
        Reason::Room { freeboard } => format!("Freeboard {}.", manner.amount(freeboard)),
        Reason::Stands { cold, warm, room } => format!(
            "Likely {} in the warmest water and {} in the coldest; there is room for {}.",
            share(warm),
            share(cold),
            share(room)
        ),
        Reason::LiftsTooLittle { expansion, wanted } if verdict.mark == Mark::Stop => format!(
            "In the warmest water it lifts the bed by {} at best; {} is the least that cleans it.",
            share(expansion),
            share(wanted)
        ),
        Reason::LiftsTooLittle { expansion, wanted } => format!(
            "In the warmest water it likely lifts the bed by {}; {} is the least that cleans it.",
            share(expansion),
            share(wanted)
        ),
        Reason::StandsTooHigh { expansion, room } if washed_out(expansion) => {
            format!("In the coldest water it washes the finest grains out; there is room for {}.", share(room))
        }
        Reason::StandsTooHigh { expansion, room } if verdict.mark == Mark::Stop => format!(
            "In the coldest water the bed stands out by {} at the least; there is room for {}.",
            share(expansion),
            share(room)
        ),
        Reason::StandsTooHigh { expansion, room } => format!(
            "In the coldest water the bed likely stands out by {}; there is room for {}.",
            share(expansion),
            share(room)
        ),
        Reason::CarriesAway { speed, settling } if verdict.mark == Mark::Fine => format!(
            "Water rises at {}; the finest kept grain falls at {}.",
            manner.amount(speed),
            manner.amount(settling)
        ),
        Reason::CarriesAway { speed, settling } => format!(
            "Water rises at {}, the finest kept grain falls at only {} in the coldest water.",
            manner.amount(speed),
            manner.amount(settling)
        ),
        Reason::HeavierAbove { below, above } => format!(
            "Lifted, the upper layer weighs {} and the lower {}: they change places.",
            manner.amount(above),
            manner.amount(below)
        ),
        Reason::EdgesMix { below, above } if over => format!(
            "Its coarsest grains weigh {} when lifted, the finest below {}: a band between them mixes.",
            manner.amount(above),
            manner.amount(below)
        ),
        Reason::EdgesMix { below, above } => format!(
            "Its coarsest grains weigh {} when lifted, the finest below {}: they stay apart.",
            manner.amount(above),
            manner.amount(below)
        ),
        Reason::AtLeast { value, limit } => {
            format!("It is {}; {} is the least.", manner.amount(value), manner.amount(limit))
        }
        Reason::AtMost { value, limit } => {
            format!("It is {}; {} is the most.", manner.amount(value), manner.amount(limit))
        }
        Reason::LiftsInService { speed, start } if over => format!(
            "Water rises at {}; the finest tenth of the bed lifts from {}.",
            manner.amount(speed),
            manner.amount(start)
        ),
        Reason::LiftsInService { speed, start } => {
            format!("Water rises at {}; the bed lies still up to {}.", manner.amount(speed), manner.amount(start))
        }
        Reason::AboveNominal { inside, nominal } => {
            format!("It comes out at {}, more than the nominal {}.", manner.amount(inside), manner.amount(nominal))
        }
    };
    let remedies = verdict
        .remedies
        .iter()
        .map(|remedy| match remedy {
            Remedy::PourSlowly => "Pour slowly and work it round.".to_owned(),
            Remedy::FillPortOrManway => "Load by a fill port or a manway.".to_owned(),
            Remedy::SmallerGrain { largest } => format!("Or take grains of at most {}.", small(*largest)),
            Remedy::CoarserGrain { smallest } => {
                format!("Take grains of at least {}, or finer slots.", small(*smallest))
            }
            Remedy::LayerBetween if matches!(verdict.subject, Subject::Slot { .. }) => {
                "Or put a coarser layer against the slots.".to_owned()
            }
            Remedy::SwapLayers => "Put the coarser layer below.".to_owned(),
            Remedy::CheckReadings => "Check the readings, and whether the pack was fuller than printed.".to_owned(),
            Remedy::LayerBetween => "Put a layer between, of a size between the two.".to_owned(),
            Remedy::MoreUnderbed { volume } => format!("Add {} of underbed.", manner.amount(*volume)),
            Remedy::FewerPacks { packs } => {
                let count = packs.si();
                if count == 1.0 {
                    "At most 1 pack fits.".to_owned()
                } else {
                    format!("At most {} packs fit.", crate::decimal::plain(count))
                }
            }
            Remedy::DrainCheck { flow, minutes } => format!(
                "Settle it on site: {} at the coldest water for {}; no grains in the drain.",
                manner.amount(*flow),
                manner.amount(*minutes)
            ),
            Remedy::FlowControl { flow } => {
                format!("Fit a drain line flow control of {}.", manner.amount(*flow))
            }
            Remedy::TwoFlowControls { cold, warm } => format!(
                "Or two drain line flow controls: {} in the cold season, {} in the warm.",
                manner.amount(*cold),
                manner.amount(*warm)
            ),
            Remedy::NarrowerVessel { nominal } => {
                format!("Take a vessel of at most {} diameter.", manner.amount(*nominal))
            }
            Remedy::MoreBackwash { flow } => {
                let give = if verdict.remedies.first() == Some(remedy) { "Give" } else { "Or give" };
                format!("{give} at least {} for backwash.", manner.amount(*flow))
            }
            Remedy::LessBackwash { flow } => format!("Backwash at no more than {}.", manner.amount(*flow)),
            Remedy::MoreRoom { length } => {
                format!("Or take a vessel with {} more height above the bed.", manner.amount(*length))
            }
            Remedy::LessFlow { flow } => format!("Send at most {} through one vessel.", manner.amount(*flow)),
            Remedy::MoreVessels { vessels } => format!("{} vessels side by side would do.", manner.amount(*vessels)),
            Remedy::ReducePressure => "Fit a pressure reducing valve before it.".to_owned(),
            Remedy::OtherVessel => "Take a vessel whose label allows it, or cool the water.".to_owned(),
            Remedy::TapeBareShell => "Tape the bare shell, not the jacket, and measure the wall.".to_owned(),
        })
        .collect();
    VerdictWords {
        headline: format!("{subject}: {}", mark(verdict.mark)),
        reason,
        remedies,
        source: source(verdict.source),
    }
}
