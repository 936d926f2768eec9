//! What the choices of a job and of its survey are called, on the page and on paper.

use bedwright_calc::hydraulics::{Arrangement, Purpose, Regime};
use bedwright_calc::supply::JobKind;
use bedwright_calc::vessel::Opening;

use super::Label;
use crate::evidence::EvidenceKind;
use crate::sections::site::WaterSource;
use crate::sections::survey::{CollectorKind, DiameterWay, HeadShape, Path};

/// What a kind of job is called.
#[must_use]
pub const fn kind(kind: JobKind) -> Label {
    match kind {
        JobKind::New => Label::KindNew,
        JobKind::Changeout => Label::KindChangeout,
        JobKind::Partial => Label::KindPartial,
        JobKind::TopUp => Label::KindTopUp,
    }
}

/// What the state a vessel was found in is called.
#[must_use]
pub const fn path(path: Path) -> Label {
    match path {
        Path::OpenAndEmpty => Label::OpenAndEmpty,
        Path::InService => Label::InService,
    }
}

/// What a way to the inside diameter is called.
#[must_use]
pub const fn way(way: DiameterWay) -> Label {
    match way {
        DiameterWay::Nominal => Label::WayNominal,
        DiameterWay::Measured => Label::WayMeasured,
        DiameterWay::Circumference => Label::WayCircumference,
        DiameterWay::MeteredFill => Label::WayMeteredFill,
        DiameterWay::RiseOfBag => Label::WayRiseOfBag,
    }
}

/// What the shape of a head is called.
#[must_use]
pub const fn head(shape: HeadShape) -> Label {
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

/// What a way to open is called.
#[must_use]
pub const fn opening(opening: Opening) -> Label {
    match opening {
        Opening::TopOnly => Label::OpeningTopOnly,
        Opening::TopAndBottom => Label::OpeningTopAndBottom,
        Opening::SidePorts => Label::OpeningSidePorts,
        Opening::Flange => Label::OpeningFlange,
        Opening::Manway => Label::OpeningManway,
        Opening::FillPort => Label::OpeningFillPort,
    }
}

/// What a bottom collector is called.
#[must_use]
pub const fn collector(kind: CollectorKind) -> Label {
    match kind {
        CollectorKind::None => Label::CollectorNone,
        CollectorKind::Basket => Label::CollectorBasket,
        CollectorKind::HubAndLaterals => Label::CollectorLaterals,
        CollectorKind::SlottedPlate => Label::CollectorSlottedPlate,
        CollectorKind::NozzlePlate => Label::CollectorNozzlePlate,
    }
}

/// What a source of water is called.
#[must_use]
pub const fn source(source: WaterSource) -> Label {
    match source {
        WaterSource::Well => Label::FromWell,
        WaterSource::Mains => Label::FromMains,
        WaterSource::Surface => Label::FromSurface,
    }
}

/// What a purpose is called.
#[must_use]
pub const fn purpose(purpose: Purpose) -> Label {
    match purpose {
        Purpose::Dechlorination => Label::PurposeDechlorination,
        Purpose::Chloramine => Label::PurposeChloramine,
        Purpose::Organics => Label::PurposeOrganics,
        Purpose::Sediment => Label::PurposeSediment,
        Purpose::IronManganese => Label::PurposeIron,
        Purpose::Softening => Label::PurposeSoftening,
        Purpose::AnionExchange => Label::PurposeAnion,
        Purpose::Neutralising => Label::PurposeNeutralising,
        Purpose::Other => Label::PurposeOther,
    }
}

/// What a flow regime is called.
#[must_use]
pub const fn regime(regime: Regime) -> Label {
    match regime {
        Regime::Backwashed => Label::RegimeBackwashed,
        Regime::Upflow => Label::RegimeUpflow,
        Regime::NeverBackwashed => Label::RegimeNever,
        Regime::AirHead => Label::RegimeAirHead,
    }
}

/// What an arrangement is called.
#[must_use]
pub const fn arrangement(arrangement: Arrangement) -> Label {
    match arrangement {
        Arrangement::Single => Label::ArrangementSingle,
        Arrangement::Parallel => Label::ArrangementParallel,
        Arrangement::TwinAlternating => Label::ArrangementTwin,
        Arrangement::LeadLag => Label::ArrangementLeadLag,
    }
}

/// What a kind of evidence is called.
#[must_use]
pub const fn evidence(kind: EvidenceKind) -> Label {
    match kind {
        EvidenceKind::DrainCheck => Label::EvidenceDrain,
        EvidenceKind::PaperPoint => Label::EvidencePaper,
        EvidenceKind::TubeTest => Label::EvidenceTube,
        EvidenceKind::CleanDrop => Label::EvidenceDrop,
    }
}

/// Yes or no.
#[must_use]
pub const fn yes_no(yes: bool) -> Label {
    if yes { Label::Yes } else { Label::No }
}
