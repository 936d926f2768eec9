//! What formulas and assumed numbers are called.

use bedwright_calc::quantity::{Assumption, Formula};

use super::Manner;
use super::label::sure::{AssumptionName, FormulaName};

/// The text that has the same name, where there is one.
macro_rules! of_same_name {
    ($value:expr, $of:ident, $name:ident: $($variant:ident),* $(,)?) => {
        match $value {
            $($of::$variant => Some($name::$variant),)*
            _ => None,
        }
    };
}

impl Manner {
    /// What a formula gives.
    #[must_use]
    pub fn formula(&self, formula: Formula) -> &'static str {
        if let Some(term) = formula.gives() {
            return self.term(term);
        }
        let name = of_same_name!(
            formula, Formula, FormulaName: Given, GapCentred, GapLeaned, SlotRatio, SizeRatio, FilterRatio, PacksOfAll, RuleMargin, AboveEllipsoid, AboveCap, AboveKnuckle, ByTrial, WashWaterYear, TapeDeviation, PacksDeviation, PackHeld, CalciteMonth, MagnesiaMonth, RefillDepth, WaterUntilFull, BedVolumesUntil, CarbonUse, OxidantDemand, SaltForOne, SaltInYear, BrineVolume, RinseVolume, LiftingIndex, MediaLost, SurfaceLower, MediaInYear, PacksInYear, DissolvedInYear, WashWaterInYear, SpentVolume, SpentDrums
        );
        name.map_or(formula.id(), |name| self.label(name))
    }

    /// What a number that is common practice or from memory is there for; its id for any other.
    #[must_use]
    pub fn assumption(&self, assumption: Assumption) -> &'static str {
        let name = of_same_name!(
            assumption, Assumption, AssumptionName: InsideOfNominal, DepthUnderNominal, NeckHeight, RiserOutsideDiameter, RiserWall, NeighbourRatio, SpreadDiameterNominal, GapHeldStop, SpreadDepthAssumed, WellLow, WellHigh, MainsLow, MainsHigh, SurfaceLow, SurfaceHigh, RetainedLow, RetainedHigh, RetainedCarbon, SettlingAllowance, VoidageLoosest, IronFactor, SoftenerReserve, RefillShare, CarbonUsable, MediaUsable, ResinLife, SurfaceWorkingLow, Bucket, NearMiss, GapCentredCaution, GapLeanedStop, SlotCaution, SpreadDiameterMeasured, SpreadPack, SpreadTape, CarryOverCaution, LossLimitService, LossLimitPeak, DrainCheckMinutes, FlowControlTolerance, TipDiameter, Bulking, SpentDrum, StockLength, Kerf, LiftReach, LiftHeight, LiftTravel, PalletMass
        );
        name.map_or(assumption.id(), |name| self.label(name))
    }
}
