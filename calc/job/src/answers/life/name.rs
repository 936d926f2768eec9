//! The names of a bed's figures.

/// What a figure of a bed's life is called.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LifeName {
    /// Calcite the water could take up.
    ToSaturation,
    /// Calcite it takes up in passing.
    Calcite,
    /// Magnesia it takes up in passing.
    Magnesia,
    /// Free carbon dioxide of the water that comes.
    Dioxide,
    /// Saturation index of the water that comes.
    IndexBefore,
    /// Hardness of the water that comes.
    HardnessBefore,
    /// pH of the water that leaves.
    PhAfter,
    /// The same where films slow the bed.
    PhSlowed,
    /// The same at the highest flow.
    PhPeak,
    /// pH after standing.
    PhStanding,
    /// Its hardness.
    HardnessAfter,
    /// Its alkalinity.
    AlkalinityAfter,
    /// Its saturation index.
    IndexAfter,
    /// Calcite in a month.
    CalciteMonth,
    /// Magnesia in a month.
    MagnesiaMonth,
    /// How much deeper filling up makes the bed.
    RefillDepth,
    /// Contact time that halves chlorine.
    HalfTime,
    /// Chlorine that leaves.
    ChlorineLeft,
    /// Contact time that is needed.
    ContactTimeNeeded,
    /// What carbon holds.
    CarbonCapacity,
    /// Bed volumes until it is used.
    BedVolumes,
    /// Carbon that a volume of water uses.
    CarbonUse,
    /// Service time that a metre of bed adds.
    TimePerMetre,
    /// Depth that adds none.
    CriticalDepth,
    /// Service time of this bed by one's own readings.
    ServiceTime,
    /// What resin takes up.
    ResinCapacity,
    /// Hardness with iron counted.
    CompensatedHardness,
    /// Water until the bed is full, or between regenerations.
    Water,
    /// Time between regenerations.
    Regenerations,
    /// Salt for one.
    Salt,
    /// The least brine for one.
    BrineLow,
    /// The most brine for one.
    BrineHigh,
    /// The least rinse water for one.
    RinseLow,
    /// The most rinse water for one.
    RinseHigh,
    /// Time between two washes.
    RunLength,
    /// The same by the pressure that was seen to be lost.
    RunByDrop,
    /// Oxygen that iron and manganese ask for.
    Oxygen,
    /// Chlorine that they ask for.
    ChlorineDemand,
    /// Permanganate that they ask for.
    Permanganate,
}

impl LifeName {
    /// Every one, in the order in which they are read.
    pub const ALL: &'static [LifeName] = &[
        LifeName::ToSaturation,
        LifeName::Calcite,
        LifeName::Magnesia,
        LifeName::Dioxide,
        LifeName::IndexBefore,
        LifeName::HardnessBefore,
        LifeName::PhAfter,
        LifeName::PhSlowed,
        LifeName::PhPeak,
        LifeName::PhStanding,
        LifeName::HardnessAfter,
        LifeName::AlkalinityAfter,
        LifeName::IndexAfter,
        LifeName::CalciteMonth,
        LifeName::MagnesiaMonth,
        LifeName::RefillDepth,
        LifeName::HalfTime,
        LifeName::ChlorineLeft,
        LifeName::ContactTimeNeeded,
        LifeName::CarbonCapacity,
        LifeName::BedVolumes,
        LifeName::CarbonUse,
        LifeName::TimePerMetre,
        LifeName::CriticalDepth,
        LifeName::ServiceTime,
        LifeName::ResinCapacity,
        LifeName::CompensatedHardness,
        LifeName::Water,
        LifeName::Regenerations,
        LifeName::Salt,
        LifeName::BrineLow,
        LifeName::BrineHigh,
        LifeName::RinseLow,
        LifeName::RinseHigh,
        LifeName::RunLength,
        LifeName::RunByDrop,
        LifeName::Oxygen,
        LifeName::ChlorineDemand,
        LifeName::Permanganate,
    ];
}
