//! The entries a person types numbers into, by permanent ids.

use crate::entry::{Dimension, Unit};

macro_rules! fields {
    ($(#[$meta:meta])* $name:ident { $($(#[$doc:meta])* $variant:ident = $id:literal : $dimension:ident),* $(,)? }) => {
        $(#[$meta])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $name {
            $($(#[$doc])* $variant),*
        }

        impl $name {
            /// All of them.
            pub const ALL: &'static [$name] = &[$($name::$variant),*];

            /// The permanent id; saved jobs hold it.
            #[must_use]
            pub const fn id(self) -> &'static str {
                match self { $($name::$variant => $id),* }
            }

            /// The one with this id.
            #[must_use]
            pub fn of(id: &str) -> Option<$name> {
                $name::ALL.iter().copied().find(|field| field.id() == id)
            }

            /// What it measures.
            #[must_use]
            pub const fn dimension(self) -> Dimension {
                match self { $($name::$variant => Dimension::$dimension),* }
            }
        }
    };
}

fields! {
    /// An entry of a vessel's survey.
    SurveyField {
        /// Nominal size, "12x52".
        NominalSize = "nominal_size": Length,
        /// Inside diameter, measured.
        InsideDiameter = "inside_diameter": Length,
        /// Tape round the bare shell.
        Circumference = "circumference": Length,
        /// Thickness of the wall.
        Wall = "wall": Length,
        /// Water let in by a meter.
        MeteredVolume = "metered_volume": Volume,
        /// Volume of a bag that raised the surface.
        BagVolume = "bag_volume": Volume,
        /// Tape reading before filling.
        TapeBefore = "tape_before": Length,
        /// Tape reading after filling.
        TapeAfter = "tape_after": Length,
        /// Datum to lowest inside point.
        InsideDepth = "inside_depth": Length,
        /// Depth of a conical bottom.
        ConeDepth = "cone_depth": Length,
        /// Crown of the top head to the datum.
        NeckHeight = "neck_height": Length,
        /// Clear bore of the opening.
        ClearBore = "clear_bore": Length,
        /// Riser's outside diameter.
        RiserOutsideDiameter = "riser_outside_diameter": Length,
        /// Height of the riser's lower end.
        RiserSeat = "riser_seat": Length,
        /// What the valve asks the riser to stand above the datum.
        RiserAllowance = "riser_allowance": Length,
        /// Outside diameter of the basket, or of one lateral.
        CollectorDiameter = "collector_diameter": Length,
        /// Height of the basket's lower end.
        CollectorBottom = "collector_bottom": Length,
        /// Height of the basket's upper end, or of the plate's upper face.
        CollectorTop = "collector_top": Length,
        /// Number of laterals.
        LateralCount = "lateral_count": Count,
        /// Length of one lateral.
        LateralLength = "lateral_length": Length,
        /// Height of the laterals' centre line.
        LateralAxis = "lateral_axis": Length,
        /// Height of the top slot.
        TopSlot = "top_slot": Length,
        /// Width of a slot.
        SlotWidth = "slot_width": Length,
        /// Datum to the underside of the upper collector.
        UpperCollector = "upper_collector": Length,
    }
}

fields! {
    /// An entry of a vessel's plan besides its layers.
    PlanField {
        /// The bucket part bags are measured with.
        Bucket = "bucket": Volume,
    }
}

fields! {
    /// An entry the parts of a job are counted by.
    KitField {
        /// Volume of media in a drum over its volume in the bed.
        Bulking = "bulking": Ratio,
        /// What a drum for spent media holds.
        DrumVolume = "drum_volume": Volume,
    }
}

fields! {
    /// An entry of the water side: of the site, of what a vessel is asked to do, or of a layer's grains.
    WaterField {
        /// The coldest water of the year.
        TemperatureLow = "temperature_low": Temperature,
        /// The warmest.
        TemperatureHigh = "temperature_high": Temperature,
        /// The most the site gives for backwash.
        BackwashAvailable = "backwash_available": VolumeFlow,
        /// Pressure at rest.
        SitePressure = "site_pressure": Pressure,
        /// Clear height where the vessel stands.
        CeilingClearance = "ceiling_clearance": Length,
        /// The site's usual flow in service.
        ServiceFlow = "service_flow": VolumeFlow,
        /// The site's highest flow in service.
        PeakFlow = "peak_flow": VolumeFlow,
        /// The least expansion that cleans the bed.
        MinimumExpansion = "minimum_expansion": Ratio,
        /// The drain line flow control that is fitted.
        FlowControl = "flow_control": VolumeFlow,
        /// What the valve loses at the usual flow of one vessel.
        ValveLoss = "valve_loss": Pressure,
        /// What both collectors lose at the usual flow of one vessel.
        CollectorLoss = "collector_loss": Pressure,
        /// The highest pressure on the label.
        LabelPressure = "label_pressure": Pressure,
        /// The highest temperature on the label.
        LabelTemperature = "label_temperature": Temperature,
        /// Depth of the air kept above the water.
        AirHead = "air_head": Length,
        /// Width of the upper collector's slots.
        UpperSlotWidth = "upper_slot_width": Length,
        /// Free chlorine of the water that leaves.
        FeedFreeChlorine = "feed_free_chlorine": Concentration,
        /// Free and combined chlorine of the water that leaves.
        FeedTotalChlorine = "feed_total_chlorine": Concentration,
        /// Hardness of the water that leaves.
        FeedHardness = "feed_hardness": Hardness,
        /// Iron of the water that leaves.
        FeedIron = "feed_iron": Concentration,
        /// Silt density index of the water that leaves.
        SiltDensityIndex = "silt_density_index": Ratio,
        /// Mass of the empty vessel with its valve.
        EmptyMass = "empty_mass": Mass,
        /// Diameter of the ring it stands on.
        FootDiameter = "foot_diameter": Length,
        /// The lower sieve.
        GrainLow = "grain_low": Length,
        /// The upper sieve.
        GrainHigh = "grain_high": Length,
        /// Size that a tenth by mass is finer than.
        EffectiveSize = "effective_size": Length,
        /// Size that six tenths are finer than, over the effective size.
        Uniformity = "uniformity": Ratio,
        /// Mass of a wetted grain over its volume.
        ParticleDensity = "particle_density": Density,
        /// Share of the settled bed that is water.
        Voidage = "voidage": Ratio,
        /// Surface of a ball of the grain's volume over the grain's surface.
        Sphericity = "sphericity": Ratio,
        /// Water that the site uses.
        DailyUse = "daily_use": VolumeFlow,
        /// pH of its water.
        Ph = "ph": Ratio,
        /// Alkalinity.
        Alkalinity = "alkalinity": Hardness,
        /// Free carbon dioxide.
        CarbonDioxide = "carbon_dioxide": Concentration,
        /// Calcium; all hardness where magnesium isn't known apart.
        CalciumHardness = "calcium": Hardness,
        /// Magnesium.
        MagnesiumHardness = "magnesium": Hardness,
        /// Sodium.
        Sodium = "sodium": Concentration,
        /// Sulfate.
        Sulfate = "sulfate": Concentration,
        /// Chloride.
        Chloride = "chloride": Concentration,
        /// Everything dissolved.
        DissolvedSolids = "dissolved_solids": Concentration,
        /// Iron.
        Iron = "iron": Concentration,
        /// Manganese.
        Manganese = "manganese": Concentration,
        /// Aluminium.
        Aluminium = "aluminium": Concentration,
        /// Turbidity, NTU.
        Turbidity = "turbidity": Ratio,
        /// Chlorine, free and combined.
        Chlorine = "chlorine": Concentration,
        /// Suspended solids.
        SuspendedSolids = "suspended_solids": Concentration,
        /// Share of a bed that may go before it is filled up.
        RefillShare = "refill_share": Ratio,
        /// How long a wash takes.
        WashTime = "wash_time": Time,
        /// Time between two washes.
        WashInterval = "wash_interval": Time,
        /// Salt on a volume of resin.
        SaltDose = "salt_dose": Density,
        /// What a volume of resin takes up at that.
        ResinCapacity = "resin_capacity": Hardness,
        /// Share kept in reserve.
        Reserve = "reserve": Ratio,
        /// Milligrams of hardness that a milligram of iron counts for.
        IronFactor = "iron_factor": Ratio,
        /// Depth of carbon that halves chlorine in a test.
        HalfLength = "half_length": Length,
        /// Flow per area of that test.
        TestVelocity = "test_velocity": FlowPerArea,
        /// What comes in of what is taken out.
        InletConcentration = "inlet_concentration": Concentration,
        /// What may leave of it.
        OutletLimit = "outlet_limit": Concentration,
        /// What a volume of media holds.
        MediaCapacity = "media_capacity": Density,
        /// Share of that which is used.
        UsableShare = "usable_share": Ratio,
        /// What a gram of carbon holds at 1 mg/L, mg.
        FreundlichFactor = "freundlich_factor": Ratio,
        /// Exponent of that isotherm.
        FreundlichExponent = "freundlich_exponent": Ratio,
        /// Depth of a bed whose service time is known.
        ReadingDepth1 = "reading_depth_1": Length,
        /// Its service time.
        ReadingTime1 = "reading_time_1": Time,
        /// Depth of a second.
        ReadingDepth2 = "reading_depth_2": Length,
        /// Its service time.
        ReadingTime2 = "reading_time_2": Time,
        /// Depth of a third.
        ReadingDepth3 = "reading_depth_3": Length,
        /// Its service time.
        ReadingTime3 = "reading_time_3": Time,
        /// The loss of pressure at which it is washed.
        TerminalDrop = "terminal_drop": Pressure,
    }
}

fields! {
    /// An entry of a quote as a whole.
    QuoteField {
        /// The share of the cost that is put on it, or the share of the price that is kept.
        Share = "share": Ratio,
        /// What is taken off the whole.
        Discount = "discount": Ratio,
        /// Freight for each unit of weight, in the quote's currency.
        FreightRate = "freight_rate": Ratio,
        /// The least that freight comes to, in the quote's currency.
        FreightLeast = "freight_least": Ratio,
        /// The weight that freight is charged by, where it isn't that of the lines.
        FreightWeight = "freight_weight": Mass,
        /// An hour of work sells for, in the quote's currency.
        LabourPrice = "labour_price": Ratio,
        /// An hour of work costs, in the quote's currency.
        LabourCost = "labour_cost": Ratio,
        /// How long one backwash takes.
        WashTime = "wash_time": Time,
        /// How often a vessel is backwashed in a year.
        WashesPerYear = "washes_per_year": Ratio,
        /// Salt the job takes in a year.
        SaltPerYear = "salt_per_year": Mass,
    }
}

fields! {
    /// An entry of a line of a quote.
    LineField {
        /// How many, or how much.
        Quantity = "quantity": Ratio,
        /// One sells for, in the quote's currency.
        Price = "price": Ratio,
        /// One costs, in the quote's currency.
        Cost = "cost": Ratio,
        /// What is taken off.
        Discount = "discount": Ratio,
    }
}

impl QuoteField {
    /// The unit it starts in, for a person who measures in pounds or in kilograms.
    #[must_use]
    pub const fn usual_unit(self, metric: bool) -> Unit {
        match (self, metric) {
            (QuoteField::Share | QuoteField::Discount, _) => Unit::Percent,
            (QuoteField::WashTime, _) => Unit::Minute,
            (QuoteField::FreightWeight | QuoteField::SaltPerYear, false) => Unit::Pound,
            (QuoteField::FreightWeight | QuoteField::SaltPerYear, true) => Unit::Kilogram,
            _ => Unit::One,
        }
    }
}

impl LineField {
    /// The unit it starts in.
    #[must_use]
    pub const fn usual_unit(self) -> Unit {
        match self {
            LineField::Discount => Unit::Percent,
            _ => Unit::One,
        }
    }
}

fields! {
    /// An entry of how material is cut, lifted and stacked.
    SupplyField {
        /// The length pipe is sold in.
        StockLength = "stock_length": Length,
        /// What one cut of the saw takes.
        Kerf = "kerf": Length,
        /// The most a pallet may bear.
        PalletMass = "pallet_mass": Mass,
        /// The most packs on a pallet.
        PalletPacks = "pallet_packs": Count,
        /// From between the ankles out to the middle of the hands.
        LiftReach = "lift_reach": Length,
        /// Height of the hands where a lift begins.
        LiftHeight = "lift_height": Length,
        /// How far up or down the hands travel.
        LiftTravel = "lift_travel": Length,
        /// How far the load lies to the side, degrees.
        LiftTwist = "lift_twist": Ratio,
        /// Width of a label.
        LabelWidth = "label_width": Length,
        /// Height of a label.
        LabelHeight = "label_height": Length,
    }
}

impl SupplyField {
    /// The unit it starts in, for a person who measures in feet and pounds or in metres.
    #[must_use]
    pub const fn usual_unit(self, metric: bool) -> Unit {
        match (self, self.dimension(), metric) {
            (SupplyField::LabelWidth | SupplyField::LabelHeight, ..) => Unit::Millimetre,
            (SupplyField::StockLength, _, false) => Unit::Foot,
            (SupplyField::StockLength, _, true) => Unit::Metre,
            (_, Dimension::Length, false) => Unit::Inch,
            (SupplyField::Kerf, Dimension::Length, true) => Unit::Millimetre,
            (_, Dimension::Length, true) => Unit::Centimetre,
            (_, Dimension::Mass, false) => Unit::Pound,
            (_, Dimension::Mass, true) => Unit::Kilogram,
            (_, Dimension::Count, _) => Unit::Each,
            _ => Unit::One,
        }
    }
}

impl WaterField {
    /// Those of the site.
    pub const OF_SITE: &'static [WaterField] = &[
        WaterField::TemperatureLow,
        WaterField::TemperatureHigh,
        WaterField::BackwashAvailable,
        WaterField::SitePressure,
    ];

    /// Those of a vessel's label, pressures and weights.
    pub const OF_LABEL: &'static [WaterField] = &[
        WaterField::ValveLoss,
        WaterField::CollectorLoss,
        WaterField::LabelPressure,
        WaterField::LabelTemperature,
        WaterField::EmptyMass,
        WaterField::FootDiameter,
    ];

    /// Those of the water that leaves, where it feeds reverse osmosis.
    pub const OF_FEED: &'static [WaterField] = &[
        WaterField::FeedFreeChlorine,
        WaterField::FeedTotalChlorine,
        WaterField::FeedHardness,
        WaterField::FeedIron,
        WaterField::SiltDensityIndex,
    ];

    /// Those of a layer's grains.
    pub const OF_GRAINS: &'static [WaterField] = &[
        WaterField::GrainLow,
        WaterField::GrainHigh,
        WaterField::EffectiveSize,
        WaterField::Uniformity,
        WaterField::ParticleDensity,
        WaterField::Voidage,
        WaterField::Sphericity,
    ];

    /// Those of the water's analysis and use.
    pub const OF_ANALYSIS: &'static [WaterField] = &[
        WaterField::DailyUse,
        WaterField::Ph,
        WaterField::Alkalinity,
        WaterField::CarbonDioxide,
        WaterField::CalciumHardness,
        WaterField::MagnesiumHardness,
        WaterField::Sodium,
        WaterField::Sulfate,
        WaterField::Chloride,
        WaterField::DissolvedSolids,
        WaterField::Iron,
        WaterField::Manganese,
        WaterField::Aluminium,
        WaterField::Turbidity,
        WaterField::Chlorine,
        WaterField::SuspendedSolids,
    ];

    /// Whether it is of a bed's life: what it says changes no other figure.
    #[must_use]
    pub fn is_of_life(self) -> bool {
        self >= WaterField::DailyUse
    }

    /// The units it may be typed in.
    #[must_use]
    pub const fn units(self) -> &'static [Unit] {
        match self {
            WaterField::Alkalinity => &[
                Unit::AsCalciumCarbonate,
                Unit::GrainPerGallon,
                Unit::GermanDegree,
                Unit::FrenchDegree,
                Unit::MilliequivalentPerLitre,
                Unit::AsBicarbonate,
            ],
            WaterField::CalciumHardness | WaterField::FeedHardness => &[
                Unit::AsCalciumCarbonate,
                Unit::GrainPerGallon,
                Unit::GermanDegree,
                Unit::FrenchDegree,
                Unit::MilliequivalentPerLitre,
                Unit::MillimolePerLitre,
                Unit::AsCalcium,
            ],
            WaterField::MagnesiumHardness => &[
                Unit::AsCalciumCarbonate,
                Unit::GrainPerGallon,
                Unit::GermanDegree,
                Unit::FrenchDegree,
                Unit::MilliequivalentPerLitre,
                Unit::MillimolePerLitre,
                Unit::AsMagnesium,
            ],
            WaterField::DailyUse => &[
                Unit::UsGallonPerDay,
                Unit::CubicMetrePerDay,
                Unit::LitrePerDay,
                Unit::UsGallonPerMinute,
                Unit::LitrePerMinute,
            ],
            WaterField::Ph
            | WaterField::Turbidity
            | WaterField::FreundlichFactor
            | WaterField::FreundlichExponent
            | WaterField::IronFactor => &[Unit::One],
            WaterField::ResinCapacity => {
                &[Unit::GrainPerCubicFoot, Unit::GramPerLitreAsCalciumCarbonate, Unit::EquivalentPerLitre]
            }
            _ => Unit::of(self.dimension()),
        }
    }

    /// The unit it starts in, for a person who measures in gallons and pounds or in litres.
    #[must_use]
    pub const fn usual_unit(self, metric: bool) -> Unit {
        match (self, self.dimension(), metric) {
            (
                WaterField::GrainLow | WaterField::GrainHigh | WaterField::EffectiveSize | WaterField::UpperSlotWidth,
                ..,
            ) => Unit::Millimetre,
            (
                WaterField::MinimumExpansion | WaterField::RefillShare | WaterField::UsableShare | WaterField::Reserve,
                ..,
            ) => Unit::Percent,
            (WaterField::DailyUse, _, false) => Unit::UsGallonPerDay,
            (WaterField::DailyUse, _, true) => Unit::CubicMetrePerDay,
            (WaterField::CalciumHardness | WaterField::MagnesiumHardness | WaterField::FeedHardness, _, false) => {
                Unit::GrainPerGallon
            }
            (WaterField::HalfLength, ..) => Unit::Centimetre,
            (WaterField::SaltDose, _, false) => Unit::PoundPerCubicFoot,
            (WaterField::ResinCapacity, _, false) => Unit::GrainPerCubicFoot,
            (WaterField::ResinCapacity, _, true) => Unit::GramPerLitreAsCalciumCarbonate,
            (WaterField::SaltDose | WaterField::MediaCapacity, ..) => Unit::GramPerLitre,
            (WaterField::WashTime, ..) => Unit::Minute,
            (_, Dimension::Time, _) => Unit::Day,
            (_, Dimension::Hardness, _) => Unit::AsCalciumCarbonate,
            (_, Dimension::Concentration, _) => Unit::MilligramPerLitre,
            (_, Dimension::FlowPerArea, false) => Unit::UsGallonPerMinuteSquareFoot,
            (_, Dimension::FlowPerArea, true) => Unit::MetrePerHour,
            (_, Dimension::Temperature, false) => Unit::Fahrenheit,
            (_, Dimension::Temperature, true) => Unit::Celsius,
            (_, Dimension::VolumeFlow, false) => Unit::UsGallonPerMinute,
            (_, Dimension::VolumeFlow, true) => Unit::LitrePerMinute,
            (_, Dimension::Pressure, false) => Unit::Psi,
            (_, Dimension::Pressure, true) => Unit::Bar,
            (_, Dimension::Length, false) => Unit::Inch,
            (_, Dimension::Length, true) => Unit::Millimetre,
            (_, Dimension::Mass, false) => Unit::Pound,
            (_, Dimension::Mass, true) => Unit::Kilogram,
            (_, Dimension::Density, _) => Unit::KilogramPerCubicMetre,
            _ => Unit::One,
        }
    }
}

/// An entry of a layer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LayerField {
    /// How much: in the quantity its target is in.
    Amount,
    /// Dry mass over volume as poured.
    BulkDensity,
}

impl SurveyField {
    /// The unit it starts in, for a person who measures in feet and pounds or in metres.
    #[must_use]
    pub const fn usual_unit(self, metric: bool) -> Unit {
        match (self, metric) {
            (SurveyField::SlotWidth, _) => Unit::Millimetre,
            (SurveyField::LateralCount, _) => Unit::Each,
            (SurveyField::MeteredVolume, false) => Unit::UsGallon,
            (SurveyField::BagVolume, false) => Unit::CubicFoot,
            (SurveyField::MeteredVolume | SurveyField::BagVolume, true) => Unit::Litre,
            (SurveyField::NominalSize, _) | (_, false) => Unit::Inch,
            (_, true) => Unit::Millimetre,
        }
    }
}
