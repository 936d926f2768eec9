//! Entries of the water side in English.

use crate::field::WaterField;

pub(in crate::words) fn field(field: WaterField) -> &'static str {
    match field {
        WaterField::TemperatureLow => "Coldest water",
        WaterField::TemperatureHigh => "Warmest water",
        WaterField::BackwashAvailable => "Flow there is for backwash",
        WaterField::SitePressure => "Pressure at rest",
        WaterField::CeilingClearance => "Clear height",
        WaterField::ServiceFlow => "Service flow of the site",
        WaterField::PeakFlow => "Highest service flow",
        WaterField::MinimumExpansion => "Least expansion",
        WaterField::FlowControl => "Drain line flow control fitted",
        WaterField::ValveLoss => "Pressure lost in the valve",
        WaterField::CollectorLoss => "Pressure lost in the collectors",
        WaterField::LabelPressure => "Highest pressure on the label",
        WaterField::LabelTemperature => "Highest temperature on the label",
        WaterField::AirHead => "Depth of air kept on top",
        WaterField::UpperSlotWidth => "Slot width of the upper collector",
        WaterField::FeedFreeChlorine => "Free chlorine after it",
        WaterField::FeedTotalChlorine => "Total chlorine after it",
        WaterField::FeedHardness => "Hardness after it",
        WaterField::FeedIron => "Iron after it",
        WaterField::SiltDensityIndex => "Silt density index after it",
        WaterField::EmptyMass => "Weight of the empty vessel",
        WaterField::FootDiameter => "Diameter of its foot",
        WaterField::GrainLow => "Smallest grain",
        WaterField::GrainHigh => "Largest grain",
        WaterField::EffectiveSize => "Effective size",
        WaterField::Uniformity => "Uniformity coefficient",
        WaterField::ParticleDensity => "Particle density, wetted",
        WaterField::Voidage => "Settled voidage",
        WaterField::Sphericity => "Sphericity",
    }
}

pub(in crate::words) fn hint(field: WaterField) -> &'static str {
    match field {
        WaterField::TemperatureLow => "in late winter; the well's own if it is one",
        WaterField::TemperatureHigh => "in late summer",
        WaterField::BackwashAvailable => "bucket and watch at the drain, or what the pump gives",
        WaterField::ServiceFlow | WaterField::PeakFlow => "all vessels of this kind together",
        WaterField::MinimumExpansion => "of the settled media, in the warmest water",
        WaterField::FlowControl => "as stamped on it; leave empty to have one chosen",
        WaterField::ValveLoss | WaterField::CollectorLoss => "at the usual flow of one vessel",
        WaterField::AirHead => "no room for the bed",
        WaterField::FeedFreeChlorine => "at the membrane",
        WaterField::FeedTotalChlorine => "at the membrane, free and combined",
        WaterField::FeedHardness => "as calcium carbonate",
        WaterField::SiltDensityIndex => "over 15 minutes",
        WaterField::GrainLow => "the lower sieve",
        WaterField::GrainHigh => "the upper sieve",
        WaterField::EffectiveSize => "a tenth by weight is finer",
        WaterField::Uniformity => "size six tenths are finer than, over the effective size; 1 for one size",
        WaterField::Voidage => "share of the settled bed that is water",
        WaterField::Sphericity => "1 for balls",
        _ => "",
    }
}
