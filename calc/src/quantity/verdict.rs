//! Judgements: how good, why, and the smallest thing that would mend it.

use super::{Amount, Basis, Source, Term, VolumeRate};

/// How good.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Mark {
    /// Nothing to do.
    Fine,
    /// Likely right; a check on site settles it.
    SetOnSite,
    /// Works with care, or likely not at one end.
    Caution,
    /// Does not work.
    Stop,
}

/// What is judged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Subject {
    /// Whether grains pass between riser and opening.
    Gap {
        /// The layer, from the bottom and from zero.
        layer: usize,
    },
    /// Whether the collector's slots hold the grains that touch them.
    Slot {
        /// The layer that touches the slots.
        layer: usize,
    },
    /// Whether the grains above stay above.
    Neighbours {
        /// The lower of the two layers.
        lower: usize,
    },
    /// Whether the bottom collector is covered.
    Cover,
    /// Whether there is room above the media.
    Freeboard,
    /// Whether the inside diameter can be right.
    Diameter,
    /// Whether a backwash lifts the bed and keeps it.
    Backwash {
        /// The flow that is judged.
        flow: VolumeRate,
    },
    /// Whether a backwash carries fines away.
    CarryOver,
    /// Whether the upper collector's slots hold the finest grains.
    UpperSlot,
    /// Whether two layers of media change places in backwash.
    Mixing {
        /// The lower of the two.
        lower: usize,
        /// The upper.
        upper: usize,
    },
    /// Whether a rule of the purpose is met.
    Rule {
        /// What the rule limits.
        quantity: Term,
        /// Section or table of its source.
        section: &'static str,
    },
    /// Whether the unit loses too little pressure.
    PressureLoss {
        /// At the peak, not at the usual flow.
        peak: bool,
    },
    /// Whether the label allows what the site gives.
    Label {
        /// What is limited.
        quantity: Term,
    },
    /// Whether the service flow lifts an upflow bed.
    ServiceLift,
    /// Whether the water may feed reverse osmosis.
    Feed {
        /// What was measured of it.
        quantity: Term,
    },
}

/// Why.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reason {
    /// The gap beside a centred riser, in largest grains, against the least that flows freely.
    GapCentred {
        /// Grains that fit.
        grains: Amount,
        /// Grains that should.
        wanted: Amount,
    },
    /// The widest gap with the riser leaned over, in largest grains, against the least that passes at all.
    GapLeaned {
        /// Grains that fit.
        grains: Amount,
        /// Grains that should.
        wanted: Amount,
    },
    /// The gap beside a riser that the layer below holds, in largest grains; under one none pass.
    GapHeld {
        /// Grains that fit.
        grains: Amount,
    },
    /// The largest grain above is larger than the largest below: it sinks in, or lets the finer through.
    CoarserAbove {
        /// The largest grain below.
        below: Amount,
        /// The largest grain above.
        above: Amount,
    },
    /// The slot against the smallest grain that touches it.
    Slot {
        /// The slot's width.
        slot: Amount,
        /// The smallest grain.
        grain: Amount,
    },
    /// The largest grain below against the smallest grain above.
    SizeRatio {
        /// How many times larger.
        ratio: Amount,
        /// The most it should be.
        limit: Amount,
    },
    /// D15 of the grains below against D85 of the grains above.
    FilterRatio {
        /// How many times larger.
        ratio: Amount,
        /// The most it should be.
        limit: Amount,
    },
    /// What the layer needs against the room there is.
    NoRoom {
        /// What it needs.
        needs: Amount,
        /// What there is.
        room: Amount,
    },
    /// The underbed's surface against the top slot; negative when slots stand above it.
    CoverAboveSlot {
        /// Surface above the top slot.
        cover: Amount,
    },
    /// The media surface against the upper collector or the top tangent line; negative when above it.
    Room {
        /// The freeboard.
        freeboard: Amount,
    },
    /// The likely line stays inside both limits.
    Stands {
        /// Likely expansion in the coldest water.
        cold: Amount,
        /// Likely expansion in the warmest water.
        warm: Amount,
        /// The expansion that fills the room.
        room: Amount,
    },
    /// Warm water lifts too little.
    LiftsTooLittle {
        /// Expansion in the warmest water, on the line that decides.
        expansion: Amount,
        /// The least that cleans the bed.
        wanted: Amount,
    },
    /// Cold water lifts too high.
    StandsTooHigh {
        /// Expansion in the coldest water, on the line that decides.
        expansion: Amount,
        /// The expansion that fills the room.
        room: Amount,
    },
    /// The flow against the fall of the finest kept grain.
    CarriesAway {
        /// Flow per area.
        speed: Amount,
        /// Speed at which the finest kept grain falls.
        settling: Amount,
    },
    /// Weight in water of both layers' middle grains with their gaps: the heavier goes down.
    HeavierAbove {
        /// Of the lower layer.
        below: Amount,
        /// Of the upper layer.
        above: Amount,
    },
    /// Weight in water of the finest grains below and the coarsest above.
    EdgesMix {
        /// Of the finest below.
        below: Amount,
        /// Of the coarsest above.
        above: Amount,
    },
    /// A figure against the least it should be.
    AtLeast {
        /// The figure.
        value: Amount,
        /// The least.
        limit: Amount,
    },
    /// A figure against the most it should be.
    AtMost {
        /// The figure.
        value: Amount,
        /// The most.
        limit: Amount,
    },
    /// The service flow against what lifts the bed.
    LiftsInService {
        /// Flow per area at the peak.
        speed: Amount,
        /// Speed at which the bed begins to lift.
        start: Amount,
    },
    /// The inside diameter against the nominal one.
    AboveNominal {
        /// The inside diameter.
        inside: Amount,
        /// The nominal one.
        nominal: Amount,
    },
}

/// A change that mends it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Remedy {
    /// Pour slowly and work it round.
    PourSlowly,
    /// Load through a fill port or a manway.
    FillPortOrManway,
    /// Take a material whose largest grain is at most this.
    SmallerGrain {
        /// The largest grain that would do.
        largest: Amount,
    },
    /// Take a material whose smallest grain is at least this, or a finer slot.
    CoarserGrain {
        /// The smallest grain that would do.
        smallest: Amount,
    },
    /// Put a layer of grains between.
    LayerBetween,
    /// Add this much underbed.
    MoreUnderbed {
        /// The volume that is missing.
        volume: Amount,
    },
    /// Take fewer packs.
    FewerPacks {
        /// The largest whole number that fits.
        packs: Amount,
    },
    /// Put the coarser layer below.
    SwapLayers,
    /// Check the pack and the readings the diameter was found from.
    CheckReadings,
    /// Tape the bare shell, not a jacket, and measure the wall.
    TapeBareShell,
    /// Watch the drain at this flow, in the coldest water, for so long.
    DrainCheck {
        /// The flow.
        flow: Amount,
        /// How long.
        minutes: Amount,
    },
    /// Fit a drain line flow control of this size.
    FlowControl {
        /// Its flow.
        flow: Amount,
    },
    /// Change the drain line flow control with the season.
    TwoFlowControls {
        /// For the coldest water.
        cold: Amount,
        /// For the warmest.
        warm: Amount,
    },
    /// Take a narrower vessel: this nominal diameter.
    NarrowerVessel {
        /// The nominal diameter.
        nominal: Amount,
    },
    /// Give at least this much for backwash.
    MoreBackwash {
        /// The flow.
        flow: Amount,
    },
    /// Backwash at no more than this.
    LessBackwash {
        /// The flow.
        flow: Amount,
    },
    /// Take a vessel with this much more height above the bed.
    MoreRoom {
        /// The height.
        length: Amount,
    },
    /// Send at most this flow through one vessel, or add vessels.
    LessFlow {
        /// The flow through one vessel.
        flow: Amount,
    },
    /// Add vessels until there are this many.
    MoreVessels {
        /// How many.
        vessels: Amount,
    },
    /// Fit a pressure reducing valve.
    ReducePressure,
    /// Take a vessel whose label allows it, or cool the water.
    OtherVessel,
}

/// A judgement.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    /// What is judged.
    pub subject: Subject,
    /// How good.
    pub mark: Mark,
    /// Why.
    pub reason: Reason,
    /// What would mend it, the smallest change first.
    pub remedies: Vec<Remedy>,
    /// The weakest basis of what it rests on.
    pub basis: Basis,
    /// Where the limit comes from.
    pub source: Source,
}
