//! What a quantity is called.

mod symbol;

/// The trade's noun for a quantity: what an input is, and which one a problem is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Term {
    /// The nominal diameter a vessel is sold by.
    NominalDiameter,
    /// The nominal height a vessel is sold by.
    NominalHeight,
    /// The diameter of the cavity inside the shell.
    InsideDiameter,
    /// The length of a tape round the bare shell.
    Circumference,
    /// The thickness of the shell's wall.
    Wall,
    /// A volume of water let in by a meter.
    MeteredVolume,
    /// The tape reading before something was filled in.
    TapeBefore,
    /// The tape reading after it.
    TapeAfter,
    /// The volume in one pack.
    PackVolume,
    /// The mass in one pack.
    PackMass,
    /// From the datum to the lowest inside point.
    InsideDepth,
    /// What the inside depth is taken to be less than the nominal height.
    DepthUnderNominal,
    /// From the top head's crown to the datum.
    NeckHeight,
    /// The clear bore of the opening.
    ClearBore,
    /// Depth of the bottom head.
    BottomHeadDepth,
    /// Depth of the top head.
    TopHeadDepth,
    /// From tangent line to tangent line.
    StraightSide,
    /// The riser's outside diameter.
    RiserOutsideDiameter,
    /// Height of the riser's lower end above the lowest inside point.
    RiserSeat,
    /// What the valve asks the riser to stand above (or, negative, below) the datum.
    RiserAllowance,
    /// The outside diameter of the bottom collector, or of one lateral.
    CollectorDiameter,
    /// Height of the lower end of the bottom collector.
    CollectorBottom,
    /// Height of the upper end of the bottom collector, or of the plate.
    CollectorTop,
    /// Number of laterals.
    LateralCount,
    /// Height of the laterals' centre line.
    LateralAxis,
    /// Length of one lateral.
    LateralLength,
    /// Height of the collector's top slot.
    TopSlot,
    /// Width of the collector's slots.
    SlotWidth,
    /// Distance from the datum down to the upper collector.
    UpperCollector,
    /// A height above the lowest inside point.
    Height,
    /// A volume of free space.
    FreeVolume,
    /// What is asked of a layer: its cover, depth, volume, weight, packs or freeboard.
    Target,
    /// The volume of a layer.
    LayerVolume,
    /// Dry mass per volume as poured.
    BulkDensity,
    /// The smallest grain.
    GrainLow,
    /// The largest grain.
    GrainHigh,
    /// The volume of the bucket part bags are measured with.
    Bucket,
    /// The step of the depth table.
    Step,
    /// Media surface up to the upper collector, or to the top tangent line.
    Freeboard,
    /// Depth of all media, underbed excluded.
    MediaDepth,
    /// From the datum down to a surface.
    TapeReading,
    /// Number of packs.
    Packs,
    /// What something sells for.
    Price,
    /// Temperature of the water.
    WaterTemperature,
    /// Lowest temperature of the water over the year.
    TemperatureLow,
    /// Highest temperature of the water over the year.
    TemperatureHigh,
    /// Density of the water.
    WaterDensity,
    /// Viscosity of the water.
    WaterViscosity,
    /// Section of the empty shell.
    CrossSection,
    /// Flow divided by the empty shell's section.
    FlowPerArea,
    /// Flow in service through one vessel.
    ServiceFlow,
    /// Flow in service of the whole site.
    SiteFlow,
    /// How many vessels share a flow.
    Vessels,
    /// The highest flow in service.
    PeakFlow,
    /// Flow in backwash.
    BackwashFlow,
    /// The most the site gives for backwash.
    BackwashAvailable,
    /// The drain line flow control.
    FlowControl,
    /// Volume of the media over the flow.
    ContactTime,
    /// Flow over the volume of the media.
    BedVolumes,
    /// Volume of all media, as poured.
    MediaVolume,
    /// Mass of a wetted grain over its volume.
    ParticleDensity,
    /// Share of the settled bed that is water.
    Voidage,
    /// Surface of a ball of the grain's volume over the grain's surface.
    Sphericity,
    /// Size that a tenth by mass is finer than.
    EffectiveSize,
    /// Size that six tenths are finer than, over the effective size.
    Uniformity,
    /// Diameter of a grain.
    GrainSize,
    /// Depth of a layer.
    LayerDepth,
    /// Pressure lost.
    PressureLoss,
    /// What the valve loses at the service flow.
    ValveLoss,
    /// What the collectors lose at the service flow.
    CollectorLoss,
    /// The most the whole unit may lose.
    PressureLossLimit,
    /// How much larger the bed is in backwash, as a share of the settled one.
    Expansion,
    /// The least expansion that cleans the bed.
    MinimumExpansion,
    /// The expansion that fills the room there is.
    RoomExpansion,
    /// Where the likely line stands between the low one (0) and the high one (1).
    LineWeight,
    /// Speed at which the bed begins to lift.
    MinimumFluidisation,
    /// Speed at which a grain falls in still water.
    SettlingSpeed,
    /// Depth of air that is kept above the water.
    AirHead,
    /// Width of the upper collector's slots.
    UpperSlotWidth,
    /// Gauge pressure on site.
    SitePressure,
    /// The highest pressure on the vessel's label.
    LabelPressure,
    /// The highest temperature on the vessel's label.
    LabelTemperature,
    /// Silt density index over 15 minutes.
    SiltDensityIndex,
    /// Mass of the empty vessel.
    EmptyMass,
    /// Diameter of the ring the vessel stands on.
    FootDiameter,
    /// Mass of water.
    WaterMass,
    /// Mass of the grains over the volume of their solid matter.
    SkeletalDensity,
    /// Water that stays in a drained bed, as a share of its volume.
    RetainedWater,
    /// How long a drain check ran.
    Minutes,
    /// Clear height for the vessel and what stands above it.
    CeilingClearance,
    /// Dry mass of a layer.
    LayerMass,
    /// Mass of the vessel in operation.
    OperatingMass,
    /// Thickness of the riser's wall.
    RiserWall,
    /// Length of the riser.
    RiserLength,
    /// Number of vessels.
    VesselCount,
    /// Radius of a torispherical head's crown, as a share of the diameter.
    CrownShare,
    /// Radius of its knuckle, as a share of the diameter.
    KnuckleShare,
    /// Radius of a torispherical head's crown.
    CrownRadius,
    /// Radius of its knuckle.
    KnuckleRadius,
    /// From the outermost inside point of a torispherical head to where crown and knuckle meet.
    KnuckleJoint,
    /// Depth of a head.
    HeadDepth,
    /// Volume of a head.
    HeadVolume,
    /// Volume of the empty shell below a height.
    ShellVolume,
    /// A height from which on something else stands on the axis.
    StepHeight,
    /// Volume of the empty shell below such a height.
    ShellAtStep,
    /// Free volume below such a height.
    FreeAtStep,
    /// Section of what stands on the axis above such a height.
    SolidSection,
    /// Height of the top head's highest inside point.
    CrownHeight,
    /// Height of the upper tangent line.
    TangentHeight,
    /// Volume of the empty shell below the upper tangent line.
    ShellAtTangent,
    /// Volume of the empty shell below the crown.
    ShellAtCrown,
    /// Height of what limits the bed at the top.
    Ceiling,
    /// The same without the air that is kept below it.
    CeilingOpen,
    /// Height a layer is asked to reach.
    AskedHeight,
    /// Free volume below that height.
    AskedVolume,
    /// Volume of all layers below.
    VolumeBelow,
    /// Height of a layer's lower face.
    BottomHeight,
    /// Depth of the media below.
    MediaBelow,
    /// Height the layer would reach with all that was asked for.
    FullHeight,
    /// Volume a layer would have with all that was asked for.
    AskedLayerVolume,
    /// Volume of the stack with it.
    AskedStackVolume,
    /// Packs that would take.
    AskedPacks,
    /// Whole packs.
    WholePacks,
    /// Packs to buy.
    PacksToBuy,
    /// Share of a pack that is poured.
    PartShare,
    /// What is left of the last pack.
    LeftOver,
    /// Volume of a part pack.
    PartVolume,
    /// Bucket measures.
    BucketMeasures,
    /// Depth at the wall.
    WallDepth,
    /// The surface above the top slot.
    Cover,
    /// How much shorter the bed is.
    ShorterBy,
    /// Freeboard over the depth of the media.
    FreeboardRatio,
    /// Length the riser is cut to.
    RiserCut,
    /// Dry mass of all layers.
    DryMass,
    /// Height of the surface before something was filled in.
    HeightBefore,
    /// Height of the surface after it.
    HeightAfter,
    /// Volume below the surface before something was filled in.
    VolumeBefore,
    /// Volume below the surface after it.
    VolumeAfter,
    /// How far the tolerance of the diameter moves a surface.
    SpreadOfDiameter,
    /// How far what is in the packs moves it.
    SpreadOfPacks,
    /// How far a tape is read off.
    SpreadOfTape,
    /// How far an assumed depth moves a reading.
    SpreadOfDepth,
    /// What nine of ten readings keep within.
    TapeSpread,
    /// Share by mass that is finer.
    Share,
    /// Mean of the logarithm of the sizes.
    LogMean,
    /// Standard deviation of the logarithm of the sizes.
    LogDeviation,
    /// The next known size below.
    SizeBelow,
    /// The next known size above.
    SizeAbove,
    /// Share that is finer than the next known size below.
    ShareBelow,
    /// Share that is finer than the next known size above.
    ShareAbove,
    /// Size that six tenths are finer than.
    SixTenthsSize,
    /// Fractions of equal mass.
    Fractions,
    /// Mean of one over the sizes.
    MeanReciprocal,
    /// Mean of one over the sizes squared.
    MeanReciprocalSquare,
    /// Pressure lost by the whole unit.
    UnitLoss,
    /// The usual flow of one vessel.
    UsualFlow,
    /// Volume of the underbed.
    UnderbedVolume,
    /// Free volume below the ceiling.
    CeilingVolume,
    /// Expansion of a layer or a bed by Wen and Yu.
    WenYuExpansion,
    /// The same by Ergun.
    ErgunExpansion,
    /// The same by Dharmarajah and Cleasby.
    MemoryExpansion,
    /// Expansion of all media together by one model.
    BedExpansion,
    /// The lower of two models.
    LowExpansion,
    /// The higher of two models.
    HighExpansion,
    /// Share of water in a lifted fraction by Wen and Yu.
    WenYuVoidage,
    /// The same by Ergun.
    ErgunVoidage,
    /// The same by Dharmarajah and Cleasby.
    MemoryVoidage,
    /// The lowest place of the line that can still be.
    WeightLow,
    /// The highest place of the line that can still be.
    WeightHigh,
    /// The place of the line by one piece of evidence.
    SeenWeight,
    /// Pieces of evidence.
    SeenCount,
    /// An expansion that was read off.
    PointExpansion,
    /// Speed at which the bed begins to lift by Ergun.
    ErgunMinimum,
    /// Size that nine tenths are finer than: the grain that must lift.
    CoarsestSize,
    /// Size that a twentieth is finer than: the grain that must stay.
    FinestSize,
    /// Water in the pores of wet grains over their dry mass.
    PoreWater,
    /// Mass of a drained layer.
    WetMass,
    /// Mass of all drained layers.
    DrainedMass,
    /// Mass of the vessel full of water.
    FullMass,
    /// Volume of what is solid in a layer.
    SolidVolume,
    /// Density of what is solid in a layer.
    SolidDensity,
    /// Volume of the riser's wall.
    WallVolume,
    /// What presses on the floor.
    FloorLoad,
    /// What something costs.
    Cost,
    /// How many or how much of something is quoted.
    Quantity,
    /// The share that is taken off.
    Discount,
    /// The share of the cost that is put on it.
    Markup,
    /// The share of the price that is kept.
    Margin,
    /// The rate of a tax.
    TaxRate,
    /// What freight comes to.
    Freight,
    /// What freight costs for each unit of weight.
    FreightRate,
    /// The weight that freight is charged by.
    FreightWeight,
    /// Hours of work.
    LabourHours,
    /// How many lines a quote has.
    QuoteLines,
    /// What a quote comes to.
    QuoteTotal,
    /// How long one backwash takes.
    WashTime,
    /// How often a vessel is backwashed in a year.
    WashesPerYear,
    /// Pressure lost over the clean bed alone, as read.
    CleanDrop,
    /// How acid the water is.
    Ph,
    /// Acid that the water takes up, as calcium carbonate.
    Alkalinity,
    /// Dissolved carbon dioxide.
    CarbonDioxide,
    /// Calcium in the water, as calcium carbonate.
    CalciumHardness,
    /// Magnesium in the water, as calcium carbonate.
    MagnesiumHardness,
    /// Calcium and magnesium, as calcium carbonate.
    Hardness,
    /// Sodium in the water.
    Sodium,
    /// Sulfate in the water.
    Sulfate,
    /// Chloride in the water.
    Chloride,
    /// Everything dissolved in the water.
    DissolvedSolids,
    /// By what share of all charge cations and anions miss each other.
    ChargeBalance,
    /// How far from saturation with calcite.
    SaturationIndex,
    /// Calcite that a volume of water takes up.
    CalciteDissolved,
    /// Magnesia that a volume of water takes up.
    MagnesiaDissolved,
    /// Surface of all grains that the water passes.
    GrainSurface,
    /// Mass of the calcite.
    CalciteMass,
    /// Mass of the magnesia.
    MagnesiaMass,
    /// Water treated on average.
    AverageUse,
    /// Share of a bed that may go before it is filled up.
    RefillShare,
    /// What comes in.
    InletConcentration,
    /// What may leave.
    OutletConcentration,
    /// What media hold when full.
    MediaCapacity,
    /// Share of a capacity that is used.
    UsableShare,
    /// How long a bed served.
    ServiceTime,
    /// Service time that a metre of bed adds.
    ServiceTimePerMetre,
    /// Depth of bed that brings no service time.
    CriticalDepth,
    /// Depth of carbon that halves chlorine in a test.
    HalfLength,
    /// Flow per area of that test.
    TestVelocity,
    /// Contact time that halves chlorine.
    HalfTime,
    /// What a gram of carbon holds at 1 mg/L.
    FreundlichFactor,
    /// Exponent of Freundlich's isotherm.
    FreundlichExponent,
    /// Iron in the water.
    Iron,
    /// Manganese in the water.
    Manganese,
    /// Aluminium in the water.
    Aluminium,
    /// How cloudy the water is.
    Turbidity,
    /// Salt for a regeneration on a volume of resin.
    SaltDose,
    /// Hardness that a volume of resin takes up.
    ResinCapacity,
    /// Hardness that iron counts for.
    IronFactor,
    /// Hardness with what iron counts for.
    CompensatedHardness,
    /// Share of the capacity kept in reserve.
    Reserve,
    /// Water between regenerations.
    WaterBetween,
    /// Time between regenerations.
    RegenerationInterval,
    /// Suspended solids in the water.
    Solids,
    /// How long a filter runs between washes.
    RunLength,
    /// Water for one wash.
    WashWater,
    /// How long a bed lasts.
    Life,
    /// The length pipe is sold in.
    StockLength,
    /// What one cut of the saw takes.
    Kerf,
    /// From between the ankles out to the middle of the hands.
    LiftReach,
    /// Height of the hands above the floor where a lift begins.
    LiftHeight,
    /// How far up or down a lift goes.
    LiftTravel,
    /// How far a load lies to the side, degrees.
    LiftTwist,
    /// The factor for how well the hands hold.
    LiftGrip,
    /// What one person may lift.
    LiftLimit,
    /// The most a pallet may bear.
    PalletMass,
    /// The most packs on a pallet.
    PalletPacks,
    /// In how many of all cases an interval holds the truth.
    Confidence,
    /// Degrees of freedom.
    Freedom,
    /// How many readings there are.
    Readings,
    /// When readings were taken, or after how much water.
    ReadingPlace,
    /// How readings rise.
    Trend,
    /// How far readings scatter about their curve.
    ReadingSpread,
    /// The share of its inlet, or the concentration, that an outlet may reach.
    OutletLimit,
    /// Share of its depth that a bed settles by.
    Settling,
    /// Free chlorine in the water.
    FreeChlorine,
    /// Chlorine in the water, free and combined.
    TotalChlorine,
    /// Volume of media in a drum over its volume in the bed.
    Bulking,
    /// What a drum holds.
    DrumVolume,
    /// Time since a filter was washed.
    SinceWash,
    /// Pressure a filter was seen to lose.
    DropSeen,
    /// The loss of pressure at which a filter is washed.
    TerminalDrop,
}
