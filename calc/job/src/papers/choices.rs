//! What the choices of a survey are called.

use bedwright_calc::supply::JobKind;
use bedwright_calc::vessel::Opening;

use crate::sections::survey::{CollectorKind, DiameterWay, HeadShape, Path};
use crate::words::Label;

pub(super) const fn kind(kind: JobKind) -> Label {
    match kind {
        JobKind::New => Label::KindNew,
        JobKind::Changeout => Label::KindChangeout,
        JobKind::Partial => Label::KindPartial,
        JobKind::TopUp => Label::KindTopUp,
    }
}

pub(super) const fn path(path: Path) -> Label {
    match path {
        Path::OpenAndEmpty => Label::OpenAndEmpty,
        Path::InService => Label::InService,
    }
}

pub(super) const fn way(way: DiameterWay) -> Label {
    match way {
        DiameterWay::Nominal => Label::WayNominal,
        DiameterWay::Measured => Label::WayMeasured,
        DiameterWay::Circumference => Label::WayCircumference,
        DiameterWay::MeteredFill => Label::WayMeteredFill,
        DiameterWay::RiseOfBag => Label::WayRiseOfBag,
    }
}

pub(super) const fn head(shape: HeadShape) -> Label {
    match shape {
        HeadShape::Flat => Label::HeadFlat,
        HeadShape::Ellipsoidal => Label::HeadEllipsoidal,
        HeadShape::Hemispherical => Label::HeadHemispherical,
        HeadShape::AsmeFd => Label::HeadAsmeFd,
        HeadShape::Din28011 => Label::HeadDin28011,
        HeadShape::Din28013 => Label::HeadDin28013,
        HeadShape::Conical => Label::HeadConical,
    }
}

pub(super) const fn opening(opening: Opening) -> Label {
    match opening {
        Opening::TopOnly => Label::OpeningTopOnly,
        Opening::TopAndBottom => Label::OpeningTopAndBottom,
        Opening::SidePorts => Label::OpeningSidePorts,
        Opening::Flange => Label::OpeningFlange,
        Opening::Manway => Label::OpeningManway,
        Opening::FillPort => Label::OpeningFillPort,
    }
}

pub(super) const fn collector(kind: CollectorKind) -> Label {
    match kind {
        CollectorKind::None => Label::CollectorNone,
        CollectorKind::Basket => Label::CollectorBasket,
        CollectorKind::HubAndLaterals => Label::CollectorLaterals,
        CollectorKind::SlottedPlate => Label::CollectorSlottedPlate,
        CollectorKind::NozzlePlate => Label::CollectorNozzlePlate,
    }
}

pub(super) const fn yes_no(yes: bool) -> Label {
    if yes { Label::Yes } else { Label::No }
}
