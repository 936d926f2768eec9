//! A value of any quantity, with the trade's noun for it.

use uom::si::f64::{Area, Length, Mass, MassDensity, Pressure, Volume};

/// A value together with the kind of quantity it is; what problems, inputs and verdicts carry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Amount {
    /// A length.
    Length(Length),
    /// An area.
    Area(Area),
    /// A volume.
    Volume(Volume),
    /// A mass.
    Mass(Mass),
    /// A mass per volume.
    Density(MassDensity),
    /// A gauge pressure.
    Pressure(Pressure),
    /// A plain ratio (0.1 is ten per cent).
    Ratio(f64),
    /// A number of things.
    Count(u32),
}

impl Amount {
    /// The bare number in the SI unit of its kind (m, m², m³, kg, kg/m³, Pa, 1).
    #[must_use]
    pub fn si(self) -> f64 {
        match self {
            Amount::Length(x) => x.value,
            Amount::Area(x) => x.value,
            Amount::Volume(x) => x.value,
            Amount::Mass(x) => x.value,
            Amount::Density(x) => x.value,
            Amount::Pressure(x) => x.value,
            Amount::Ratio(x) => x,
            Amount::Count(n) => f64::from(n),
        }
    }
}

macro_rules! from_quantity {
    ($($kind:ident($quantity:ty)),*) => {$(
        impl From<$quantity> for Amount {
            fn from(value: $quantity) -> Amount {
                Amount::$kind(value)
            }
        }
    )*};
}
from_quantity!(
    Length(Length),
    Area(Area),
    Volume(Volume),
    Mass(Mass),
    Density(MassDensity),
    Pressure(Pressure),
    Ratio(f64),
    Count(u32)
);

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
    /// What something costs.
    Price,
}
