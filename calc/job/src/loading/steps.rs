//! The steps of both sheets, in the order of the work, for one vessel.

use bedwright_calc::fill::Role;
use bedwright_calc::quantity::Assumption;
use bedwright_calc::vessel::{BottomCollector, Opening, Vessel};

use super::{LoadAnswers, is_carbon, is_resin};
use crate::answers::VesselAnswers;
use crate::id::Id;
use crate::sections::loading::{ReadingPlace, RemovalMethod, Stamp};
use crate::sections::survey::ids;
use bedwright_calc::supply::JobKind;

/// What is done at a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Step {
    /// Water goes round the vessel.
    Bypass,
    /// Inlet and outlet are shut and tagged.
    Isolate,
    /// The pressure is let off.
    Depressurise,
    /// A vent stays open.
    Vent,
    /// The valve has no power.
    Power,
    /// The valve is off.
    ValveOff,
    /// The surface is read as it was found.
    ReadFound,
    /// The water runs off, the bed is taken out.
    TakeOut,
    /// The surface is read that was left.
    ReadLeft,
    /// What becomes of the gravel.
    Gravel,
    /// The collector's slots were looked at.
    SlotsSeen,
    /// The riser was.
    RiserSeen,
    /// The seat was.
    SeatSeen,
    /// The thread was, or the sealing face.
    ThreadSeen,
    /// What came out stands in labelled drums.
    Drums,
    /// Somebody says what class of waste it is.
    Waste,
    /// The vessel stands where it stays.
    Position,
    /// It is rinsed and empty.
    RinseVessel,
    /// The collector is on its seat.
    Collector,
    /// The riser is marked at the rim.
    RiserMark,
    /// It is cut and deburred.
    RiserCut,
    /// It is capped.
    RiserCap,
    /// Water stands over the collector.
    Cushion,
    /// A layer is poured and levelled.
    Pour,
    /// Its surface is read.
    Read,
    /// The riser wasn't lifted and stands in the middle.
    RiserCentred,
    /// Thread and O-ring groove, or sealing faces, are clean.
    Seal,
    /// The cap is off the riser.
    CapOff,
    /// The upper collector is in.
    UpperCollector,
    /// The valve is on.
    ValveOn,
    /// The drain ends over an air gap.
    AirGap,
    /// It fills slowly.
    Fill,
    /// Carbon soaks.
    Soak,
    /// It is backwashed until clear.
    Backwash,
    /// It is rinsed to waste.
    RinseToWaste,
    /// A resin is regenerated.
    Regenerate,
    /// Times, hardness and salt are set.
    Settings,
    /// Nothing leaks.
    Leaks,
    /// The outlet was tested.
    OutletTest,
    /// The label is on.
    Label,
}

ids!(Step {
    Bypass = "bypass",
    Isolate = "isolate",
    Depressurise = "depressurise",
    Vent = "vent",
    Power = "power",
    ValveOff = "valve_off",
    ReadFound = "read_found",
    TakeOut = "take_out",
    ReadLeft = "read_left",
    Gravel = "gravel",
    SlotsSeen = "slots_seen",
    RiserSeen = "riser_seen",
    SeatSeen = "seat_seen",
    ThreadSeen = "thread_seen",
    Drums = "drums",
    Waste = "waste",
    Position = "position",
    RinseVessel = "rinse_vessel",
    Collector = "collector",
    RiserMark = "riser_mark",
    RiserCut = "riser_cut",
    RiserCap = "riser_cap",
    Cushion = "cushion",
    Pour = "pour",
    Read = "read",
    RiserCentred = "riser_centred",
    Seal = "seal",
    CapOff = "cap_off",
    UpperCollector = "upper_collector",
    ValveOn = "valve_on",
    AirGap = "air_gap",
    Fill = "fill",
    Soak = "soak",
    Backwash = "backwash",
    RinseToWaste = "rinse_to_waste",
    Regenerate = "regenerate",
    Settings = "settings",
    Leaks = "leaks",
    OutletTest = "outlet_test",
    Label = "label",
});

/// How a step is done.
#[derive(Clone, Debug, PartialEq)]
pub enum StepWork {
    /// By a tick.
    Tick,
    /// By a tape reading that must be typed.
    Read(ReadingPlace),
    /// By a tape reading that may be.
    MayRead(ReadingPlace),
}

/// A step of a sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct StepRow {
    /// Its name, which no other step of both sheets has.
    pub id: String,
    /// What is done.
    pub step: Step,
    /// Of which layer, from the bottom at 0.
    pub layer: Option<usize>,
    /// How it is done.
    pub work: StepWork,
    /// When it was, and by whom.
    pub stamp: Option<Stamp>,
}

impl StepRow {
    /// Whether it was done.
    #[must_use]
    pub const fn is_done(&self) -> bool {
        self.stamp.is_some()
    }

    /// The place of its reading, where it has one.
    #[must_use]
    pub const fn place(&self) -> Option<&ReadingPlace> {
        match &self.work {
            StepWork::Tick => None,
            StepWork::Read(place) | StepWork::MayRead(place) => Some(place),
        }
    }
}

/// How such a vessel is usually emptied.
pub(super) fn usual_method(vessel: &Vessel) -> RemovalMethod {
    match vessel.measures.opening {
        Opening::Manway => RemovalMethod::Manway,
        Opening::TopAndBottom | Opening::SidePorts => RemovalMethod::Eductor,
        Opening::TopOnly | Opening::Flange | Opening::FillPort => {
            let two_people = vessel.inside_diameter.value.value <= Assumption::TipDiameter.ratio();
            if two_people { RemovalMethod::Tip } else { RemovalMethod::WetVacuum }
        }
    }
}

/// Steps in the making.
struct Rows<'a> {
    of: &'a LoadAnswers,
    rows: Vec<StepRow>,
}

impl Rows<'_> {
    fn put(&mut self, step: Step, layer: Option<(usize, &Id)>, work: StepWork) {
        let id = match layer {
            Some((_, layer)) => [step.id(), "/", layer.as_str()].concat(),
            None => step.id().to_owned(),
        };
        let stamp = match &work {
            StepWork::Tick => self.of.done.tick(&id).cloned(),
            // An entry that isn't a reading yet is none; one that somebody says can't be taken is done with.
            StepWork::Read(place) | StepWork::MayRead(place) => self.of.done.reading(place).and_then(|reading| {
                let taken = reading.entry.is_none() || self.of.tape_at(place).is_some();
                taken.then(|| reading.stamp.clone())
            }),
        };
        self.rows.push(StepRow { id, step, layer: layer.map(|(at, _)| at), work, stamp });
    }

    fn ticks(&mut self, steps: &[Step]) {
        steps.iter().for_each(|step| self.put(*step, None, StepWork::Tick));
    }

    fn when(&mut self, so: bool, step: Step) {
        if so {
            self.put(step, None, StepWork::Tick);
        }
    }
}

/// The steps that take the old bed out, or open a vessel that is topped up.
pub(super) fn removal(of: &LoadAnswers) -> Vec<StepRow> {
    let mut rows = Rows { of, rows: Vec::new() };
    if of.kind == JobKind::New {
        return rows.rows;
    }
    rows.ticks(&[Step::Bypass, Step::Isolate, Step::Depressurise, Step::Vent, Step::Power, Step::ValveOff]);
    let found = ReadingPlace::Found;
    rows.put(
        Step::ReadFound,
        None,
        if of.kind == JobKind::TopUp { StepWork::Read(found) } else { StepWork::MayRead(found) },
    );
    match of.kind {
        JobKind::New | JobKind::TopUp => {}
        JobKind::Partial => {
            rows.ticks(&[Step::TakeOut]);
            rows.put(Step::ReadLeft, None, StepWork::Read(ReadingPlace::Left));
            rows.ticks(&[Step::ThreadSeen, Step::Drums, Step::Waste]);
        }
        JobKind::Changeout => rows.ticks(&[
            Step::TakeOut,
            Step::Gravel,
            Step::SlotsSeen,
            Step::RiserSeen,
            Step::SeatSeen,
            Step::ThreadSeen,
            Step::Drums,
            Step::Waste,
        ]),
    }
    rows.rows
}

/// The steps that load the vessel.
pub(super) fn loading(of: &LoadAnswers, answers: &VesselAnswers) -> Vec<StepRow> {
    let measures = answers.vessel.as_ref().map(|vessel| &vessel.measures);
    let riser = measures.is_none_or(|measures| measures.riser.is_some());
    let collector = measures.is_none_or(|measures| !matches!(measures.bottom_collector, BottomCollector::None));
    let upper = measures.is_some_and(|measures| measures.upper_collector.is_some());
    let mut rows = Rows { of, rows: Vec::new() };
    if of.from_empty() {
        rows.ticks(&[Step::Position, Step::RinseVessel]);
        rows.when(riser || collector, Step::Collector);
        if riser {
            rows.ticks(&[Step::RiserMark, Step::RiserCut, Step::RiserCap]);
        }
        rows.ticks(&[Step::Cushion]);
    } else {
        rows.when(riser, Step::RiserCap);
        rows.when(riser, Step::RiserCentred);
    }
    let mut centred = !of.from_empty() || !riser;
    for (at, layer) in answers.planned.iter().enumerate() {
        let (Some(id), Some(_)) = (of.layers.get(at), of.pour_of(at)) else { continue };
        // After the underbed, which holds the riser from there on; before the media where there is none.
        if layer.role == Role::Media && !centred {
            rows.put(Step::RiserCentred, None, StepWork::Tick);
            centred = true;
        }
        rows.put(Step::Pour, Some((at, id)), StepWork::Tick);
        rows.put(Step::Read, Some((at, id)), StepWork::Read(ReadingPlace::End(id.clone())));
    }
    rows.when(!centred, Step::RiserCentred);
    rows.ticks(&[Step::Seal]);
    rows.when(riser, Step::CapOff);
    rows.when(upper || riser, Step::UpperCollector);
    rows.ticks(&[Step::ValveOn, Step::AirGap, Step::Fill]);
    rows.when(answers.planned.iter().any(is_carbon), Step::Soak);
    rows.ticks(&[Step::Backwash, Step::RinseToWaste]);
    rows.when(answers.planned.iter().any(is_resin), Step::Regenerate);
    rows.ticks(&[Step::Settings, Step::Leaks, Step::OutletTest, Step::Label]);
    rows.rows
}
