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
