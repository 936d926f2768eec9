//! Removal and loading in English.

use bedwright_calc::fill::{Deviation, Explanation, Rung};
use bedwright_calc::material::Pack;
use bedwright_calc::quantity::{Amount, Length, Term, VolumeRate, metres};
use bedwright_calc::supply::JobKind;
use bedwright_calc::vessel::{BottomCollector, Opening};

use crate::answers::VesselAnswers;
use crate::entry::Unit;
use crate::loading::{Lack, LoadAnswers, Step, StepRow, is_carbon, is_silica};
use crate::sections::loading::{ReadingPlace, WorkSheet};
use crate::words::Manner;
use crate::words::loading::{StepWords, method};

pub(in crate::words) fn cautions(sheet: WorkSheet, answers: &VesselAnswers) -> Vec<&'static str> {
    let carbon = answers.planned.iter().any(is_carbon);
    let silica = answers.planned.iter().any(is_silica);
    let mut said = vec![
        "Bypass, isolate, let the pressure off, vent. Gauge at nought and vent open before anything is loosened.",
        "Pull the valve's plug. Where the site locks out, lock out.",
    ];
    if carbon {
        said.push(
            "Wet carbon takes the oxygen from the air of a closed vessel. Never put your head in, never enter alone; test the air first.",
        );
    }
    match sheet {
        WorkSheet::Removal => {
            said.push("A drained bed is heavy and shifts: two people or a lift aid, feet clear when tipping.");
            said.push(
                "The old bed holds what it took out: arsenic, radium, uranium, solvents, PFAS. Gloves, no dust, and its owner says what class of waste it is.",
            );
        }
        WorkSheet::Loading => {
            said.push("Bags over 51 lb (23 kg): two people or a lift aid. Never lift one overhead from a ladder.");
            said.push(if silica {
                "Gravel and sand dust is silica: wet it down, mask as the local code says."
            } else {
                "Dust: wet it down, mask as the local code says."
            });
            said.push("Fill slowly from below, vent open. Plastic vessels take no vacuum.");
            said.push("Disinfect as the site's rules say, and rinse to waste, before anybody drinks of it.");
        }
    }
    said
}

fn words(title: impl Into<String>, lines: &[&str]) -> StepWords {
    StepWords {
        title: title.into(),
        lines: lines.iter().filter(|line| !line.is_empty()).map(|line| (*line).to_owned()).collect(),
    }
}

pub(in crate::words) fn step(
    manner: Manner,
    row: &StepRow,
    of: &LoadAnswers,
    answers: &VesselAnswers,
    wash: Option<VolumeRate>,
) -> StepWords {
    let threaded = answers.vessel.as_ref().is_none_or(|vessel| is_threaded(vessel.measures.opening));
    match row.step {
        Step::Bypass => words("Bypass open", &["Tell whoever uses the water: it is untreated while you work."]),
        Step::Isolate => words("Inlet and outlet shut and tagged", &[]),
        Step::Depressurise => words("Pressure let off through the drain", &[]),
        Step::Vent => words("Vent open, gauge at nought", &["Only now loosen anything."]),
        Step::Power => words("Valve without power", &[]),
        Step::ValveOff => words("Valve off", &["Cap the riser, so that nothing falls into it."]),
        Step::ReadFound => words("Read the tape: surface as found", &["On the axis, from the rim down."]),
        Step::TakeOut => take_out(manner, of),
        Step::ReadLeft => words("Read the tape: surface that is left", &["Level it first."]),
        Step::Gravel => words(
            "Gravel: new, or washed and separated",
            &["Gravel that can't be separated from the old bed goes with it."],
        ),
        Step::SlotsSeen => words("Collector's slots looked at", &["All open, none torn, none wider than the others."]),
        Step::RiserSeen => words("Riser looked at", &["Straight, no crack, its end square."]),
        Step::SeatSeen => words("Seat looked at", &["The riser stands in it without rocking."]),
        Step::ThreadSeen if threaded => words("Thread and O-ring groove looked at", &[]),
        Step::ThreadSeen => words("Sealing faces looked at", &[]),
        Step::Drums => words("What came out stands in labelled drums", &[]),
        Step::Waste => words(
            "Waste class decided by its owner",
            &["A leaching test or the local equivalent decides, not the look of it."],
        ),
        Step::Position => words("On its final spot, level, facing right", &["Loaded, it can't be moved."]),
        Step::RinseVessel => words("Rinsed, empty, nothing left in it", &[]),
        Step::Collector => words("Collector on its seat", &[]),
        Step::RiserMark => riser_mark(manner, answers),
        Step::RiserCut => words("Riser cut at the mark, deburred", &["Square; no burr inside or out."]),
        Step::RiserCap => words("Riser capped", &["The cap stays on until the last bag is in."]),
        Step::Cushion => cushion(answers),
        Step::Pour => pour(manner, row, of, answers),
        Step::Read => words("Read the tape", &["Level it first; on the axis beside the riser, from the rim down."]),
        Step::RiserCentred => words(
            "Riser not lifted, still in the middle",
            &["Once gravel runs under a lifted riser, the valve won't go on."],
        ),
        Step::Seal if threaded => words(
            "Thread and O-ring groove clean, silicone only",
            &["No tape and no dope on the vessel's thread; no petroleum grease on the O-ring."],
        ),
        Step::Seal => words("Sealing faces and gasket clean", &[]),
        Step::CapOff => words("Cap off the riser", &["Forgotten, no water gets through."]),
        Step::UpperCollector => words("Upper collector in", &[]),
        Step::ValveOn if threaded => words("Valve on, hand-tight", &[]),
        Step::ValveOn => words("Closed up, bolts evenly tight", &[]),
        Step::AirGap => words("Drain ends over an air gap", &[]),
        Step::Fill => words(
            "Filled slowly in backwash position",
            &["Bypass half open, vent open: through the riser, so that water rises from below."],
        ),
        Step::Soak => {
            words("Carbon soaked", &["Up to a day wets its pores (from memory). Air left in it blows the bed out."])
        }
        Step::Backwash => {
            let flow = wash.map(|flow| format!("Up to {} at the drain. Raise it slowly.", manner.flow(flow)));
            words("First backwash until it runs clear", &[flow.as_deref().unwrap_or("Raise the flow slowly.")])
        }
        Step::RinseToWaste => words("Rinsed to waste until clear", &[]),
        Step::Regenerate => words("Regenerated once", &[]),
        Step::Settings => words("Times, hardness and salt set", &[]),
        Step::Leaks => words("No leak under pressure", &["Wait ten minutes, look again."]),
        Step::OutletTest => words("Outlet tested", &[]),
        Step::Label => words("Label on", &["Media, lot, date, your name."]),
    }
}

/// Whether the vessel closes with a thread and an O-ring.
const fn is_threaded(opening: Opening) -> bool {
    matches!(opening, Opening::TopOnly | Opening::FillPort)
}

fn take_out(manner: Manner, of: &LoadAnswers) -> StepWords {
    let weight = of.drained.as_ref().map(|(least, most)| {
        let (least, most) = (manner.mass(least.value), manner.mass(most.value));
        format!(
            "The whole bed weighs {least} to {most} once the water has run off. How much stays in it is from memory."
        )
    });
    let usual = manner.label(method(of.usual_method));
    let usual = format!("Usual for its size and openings: {}.", super::capital(usual));
    let title =
        if of.kind == JobKind::Partial { "Drained, upper part taken out" } else { "Drained, old bed taken out" };
    words(title, &[weight.as_deref().unwrap_or_default(), &usual])
}

fn riser_mark(manner: Manner, answers: &VesselAnswers) -> StepWords {
    let cut = answers.riser_cut.as_ref().map(|cut| format!("Expect to cut it to {}.", manner.tape(cut.value)));
    let allowance = answers.vessel.as_ref().and_then(|vessel| Some(vessel.measures.riser.as_ref()?.allowance.value));
    let valve = match allowance {
        Some(allowance) if allowance.value > 0.0 => {
            format!("The valve wants it {} above the rim.", manner.tape(allowance))
        }
        Some(allowance) if allowance.value < 0.0 => {
            format!("The valve wants it {} below the rim.", manner.tape(metres(-allowance.value)))
        }
        _ => "Flush with the rim, unless the valve's paper says otherwise.".to_owned(),
    };
    words("Riser marked at the rim", &[cut.as_deref().unwrap_or_default(), &valve])
}

fn cushion(answers: &VesselAnswers) -> StepWords {
    let laterals = answers
        .vessel
        .as_ref()
        .is_some_and(|vessel| matches!(vessel.measures.bottom_collector, BottomCollector::HubAndLaterals { .. }));
    let why = if laterals {
        "A must here: falling grains break laterals."
    } else {
        "It breaks the fall of the first grains."
    };
    words("Water stands over the collector", &[why])
}

fn pour(manner: Manner, row: &StepRow, of: &LoadAnswers, answers: &VesselAnswers) -> StepWords {
    let layer = row.layer.and_then(|at| answers.planned.get(at));
    let fill = row.layer.and_then(|at| answers.layers.get(at)).and_then(|layer| layer.fill());
    let (Some(layer), Some(at)) = (layer, row.layer) else { return words("Poured and levelled", &[]) };
    let name = manner.material(&layer.material.id);
    let packs = of.pour_of(at).map(|pour| pour.packs.value);
    let amount = packs.map(|packs| manner.packs(packs, &layer.pack));
    let title = format!("{} {name} poured, levelled", amount.unwrap_or_default());
    let pack = format!("Pack: {}.", manner.pack(&layer.pack));
    let part = fill.and_then(|fill| fill.part.as_ref()).filter(|_| of.from_empty() && of.done.poured.is_empty());
    let part = part.map(|part| {
        let (share, buckets) = (manner.decimal(part.share.value, 2), manner.decimal(part.buckets.value, 1));
        format!("Of the last pack {share}: {} or {buckets} buckets.", manner.volume(part.volume.value))
    });
    words(title.trim(), &[&pack, part.as_deref().unwrap_or_default()])
}

pub(in crate::words) fn higher(manner: Manner, higher: Length) -> String {
    let much = metres(higher.value.abs());
    let text = manner.tape(much);
    if text == manner.tape(metres(0.0)) {
        return "as expected".to_owned();
    }
    format!("{text} {}", if higher.value > 0.0 { "higher" } else { "lower" })
}

pub(in crate::words) fn deviation(manner: Manner, rung: &Rung, found: &Deviation, pack: &Pack) -> Vec<String> {
    let spread = rung.expected.as_ref().map(|tape| manner.spread(tape.spread)).unwrap_or_default();
    let packs = manner.packs(found.packs.value.abs(), pack);
    let side = if found.packs.value < 0.0 { "less" } else { "more" };
    let mut said = vec![format!(
        "The surface stands {} than expected ({spread}): {packs} {side} than counted. Read the tape once more.",
        higher(manner, found.higher.value)
    )];
    for (at, explanation) in found.explanations.iter().enumerate() {
        let begin = if at == 0 { "Likely:" } else { "Or:" };
        said.push(format!("{begin} {}", self::explanation(manner, explanation, rung, pack)));
    }
    said
}

/// What a reading to expect was reckoned with.
fn reckoned(rung: &Rung, term: Term) -> Option<Length> {
    let inputs = &rung.expected.as_ref().ok()?.reading.inputs;
    inputs.iter().find(|input| input.term == term).and_then(|input| match input.amount {
        Amount::Length(length) => Some(length),
        _ => None,
    })
}

fn explanation(manner: Manner, explanation: &Explanation, rung: &Rung, pack: &Pack) -> String {
    let one = manner.container(pack.container, 1);
    match explanation {
        Explanation::PartFull(held) if held.value < 1.0 => {
            format!("one {one} was only {} full.", manner.percent(held.value))
        }
        Explanation::PartFull(held) => {
            format!("one {one} held {} more than is printed on it.", manner.percent(held.value - 1.0))
        }
        Explanation::Miscount(fewer) => {
            let packs = manner.packs(fewer.value.abs(), pack);
            format!("{packs} {} than counted went in.", if fewer.value > 0.0 { "fewer" } else { "more" })
        }
        Explanation::Diameter(inside) => {
            let known = reckoned(rung, Term::InsideDiameter).map(|known| format!(", not {}", manner.length(known)));
            format!("the inside diameter is {}{}.", manner.length(inside.value), known.unwrap_or_default())
        }
        Explanation::Depth(depth) => {
            format!("the inside depth, which is only assumed, is {}.", manner.tape(depth.value))
        }
        Explanation::BulkDensity(density) => {
            format!("this lot's bulk density is {}.", manner.amount(density.value.into()))
        }
    }
}

/// The name of a layer of the plan.
fn layer_name(manner: Manner, layer: &crate::id::Id, answers: &VesselAnswers) -> String {
    let at = answers.layers.iter().position(|there| there.id == *layer);
    let planned = at.and_then(|at| answers.planned.get(at));
    planned.map(|layer| manner.material(&layer.material.id)).unwrap_or_default()
}

pub(in crate::words) fn place(
    manner: Manner,
    place: &ReadingPlace,
    of: &LoadAnswers,
    answers: &VesselAnswers,
) -> String {
    let name = place.layer().map(|layer| layer_name(manner, layer, answers)).unwrap_or_default();
    match place {
        ReadingPlace::Found => "Surface as found".to_owned(),
        ReadingPlace::Left => "Surface that was left".to_owned(),
        ReadingPlace::End(_) => format!("After the last of {name}"),
        ReadingPlace::Pack(layer, pack) => {
            let at = of.layers.iter().position(|there| there == layer);
            let container = at.and_then(|at| answers.planned.get(at)).map(|layer| layer.pack.container);
            let container = container.map_or("pack", |container| manner.container(container, 1));
            format!("After {container} {pack} of {name}")
        }
    }
}

pub(in crate::words) fn lack(manner: Manner, lack: &Lack, of: &LoadAnswers, answers: &VesselAnswers) -> String {
    match lack {
        Lack::Plan => "The vessel's inside and its layers must be known: see the vessel's page.".to_owned(),
        Lack::Reading(at) => format!("{}: type the tape reading.", place(manner, at, of, answers)),
        Lack::Misread(at, misread) => {
            format!("{}: {}", place(manner, at, of, answers), manner.misread(misread, Unit::Inch))
        }
        Lack::Contradicts(at) => {
            format!(
                "{}: the reading contradicts the vessel or the one below it. Read it once more.",
                place(manner, at, of, answers)
            )
        }
        Lack::Packs(layer) => format!("{}: the number of packs makes no sense.", layer_name(manner, layer, answers)),
    }
}
