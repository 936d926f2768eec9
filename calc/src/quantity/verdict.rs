//! Judgements: how good, why, and the smallest thing that would mend it.

use super::{Amount, Basis, Source};

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
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
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
