//! Sentences in English.

pub(super) mod loading;
pub(super) mod prices;
mod verdict;
pub(super) mod water;

pub(super) use verdict::{mark, verdict};

use bedwright_calc::quantity::{Amount, Assumption, Basis, Caution, Fault, Problem, Source, Standing, Term};

use super::Manner;
use crate::entry::{Dimension, Misread, Unit};
use crate::field::SurveyField;
use crate::reading::LayerFault;

pub(super) fn field(field: SurveyField) -> &'static str {
    match field {
        SurveyField::NominalSize => "Nominal size",
        SurveyField::InsideDiameter => "Inside diameter",
        SurveyField::Circumference => "Round the bare shell",
        SurveyField::Wall => "Wall",
        SurveyField::MeteredVolume => "Water let in",
        SurveyField::BagVolume => "Volume of the bag",
        SurveyField::TapeBefore => "Tape before",
        SurveyField::TapeAfter => "Tape after",
        SurveyField::InsideDepth => "Inside depth",
        SurveyField::ConeDepth => "Depth of the cone",
        SurveyField::NeckHeight => "Neck height",
        SurveyField::ClearBore => "Clear bore",
        SurveyField::RiserOutsideDiameter => "Riser outside diameter",
        SurveyField::RiserSeat => "Riser stands at height",
        SurveyField::RiserAllowance => "Valve wants it above the rim by",
        SurveyField::CollectorDiameter => "Collector diameter",
        SurveyField::CollectorBottom => "Collector lower end at height",
        SurveyField::CollectorTop => "Collector upper end at height",
        SurveyField::LateralCount => "Number of laterals",
        SurveyField::LateralLength => "Length of a lateral",
        SurveyField::LateralAxis => "Laterals' centre at height",
        SurveyField::TopSlot => "Top slot at height",
        SurveyField::SlotWidth => "Slot width",
        SurveyField::UpperCollector => "Rim down to the upper collector",
    }
}

pub(super) fn hint(field: SurveyField) -> &'static str {
    match field {
        SurveyField::NominalSize => "as on the label: 12x52, or 1252",
        SurveyField::Circumference => "never over a jacket",
        SurveyField::InsideDepth => "rim of the opening to the lowest inside point",
        SurveyField::NeckHeight => "top of the head to the rim",
        SurveyField::RiserOutsideDiameter => "measure across the pipe; names mislead",
        SurveyField::RiserSeat => "its lower end above the lowest inside point",
        SurveyField::RiserAllowance => "0 if flush; minus if it ends below",
        SurveyField::TapeBefore | SurveyField::TapeAfter => "rim down to the surface",
        SurveyField::MeteredVolume => "between the two tape readings",
        SurveyField::BagVolume => "as printed, and the bag was full",
        _ => "",
    }
}

pub(super) fn term(term: Term) -> &'static str {
    match term {
        Term::NominalDiameter => "nominal diameter",
        Term::NominalHeight => "nominal height",
        Term::InsideDiameter => "inside diameter",
        Term::Circumference => "tape round the bare shell",
        Term::Wall => "wall",
        Term::MeteredVolume => "water let in",
        Term::TapeBefore => "tape before",
        Term::TapeAfter => "tape after",
        Term::PackVolume => "volume of a pack",
        Term::PackMass => "weight of a pack",
        Term::InsideDepth => "inside depth",
        Term::DepthUnderNominal => "nominal height less inside depth",
        Term::NeckHeight => "neck height",
        Term::ClearBore => "clear bore",
        Term::BottomHeadDepth => "depth of the bottom head",
        Term::TopHeadDepth => "depth of the top head",
        Term::StraightSide => "straight side",
        Term::RiserOutsideDiameter => "riser outside diameter",
        Term::RiserSeat => "height the riser stands at",
        Term::RiserAllowance => "what the valve wants above the rim",
        Term::CollectorDiameter => "collector diameter",
        Term::CollectorBottom => "collector lower end",
        Term::CollectorTop => "collector upper end",
        Term::LateralCount => "number of laterals",
        Term::LateralAxis => "laterals' centre",
        Term::LateralLength => "length of a lateral",
        Term::TopSlot => "height of the top slot",
        Term::SlotWidth => "slot width",
        Term::UpperCollector => "rim to upper collector",
        Term::Height => "height",
        Term::FreeVolume => "free volume",
        Term::Target => "amount of the layer",
        Term::LayerVolume => "volume of the layer",
        Term::BulkDensity => "bulk density",
        Term::GrainLow => "smallest grain",
        Term::GrainHigh => "largest grain",
        Term::Bucket => "bucket",
        Term::Step => "step of the table",
        Term::Freeboard => "freeboard",
        Term::MediaDepth => "depth of the media bed",
        Term::TapeReading => "tape reading",
        Term::Packs => "packs",
        Term::Price => "price",
        Term::Cost => "cost",
        Term::Quantity => "quantity",
        Term::Discount => "discount",
        Term::Markup => "markup on the cost",
        Term::Margin => "margin on the price",
        Term::TaxRate => "rate of the tax class",
        Term::Freight => "freight",
        Term::FreightRate => "freight rate",
        Term::FreightWeight => "weight for freight",
        Term::LabourHours => "hours of work",
        Term::QuoteLines => "number of lines",
        Term::QuoteTotal => "total of the quote",
        Term::WashTime => "time of one backwash",
        Term::WashesPerYear => "backwashes a year",
        Term::WaterTemperature => "water temperature",
        Term::TemperatureLow => "coldest water",
        Term::TemperatureHigh => "warmest water",
        Term::WaterDensity => "density of the water",
        Term::WaterViscosity => "viscosity of the water",
        Term::CrossSection => "section of the shell",
        Term::FlowPerArea => "flow per area",
        Term::ServiceFlow => "service flow through one vessel",
        Term::SiteFlow => "service flow of the site",
        Term::Vessels => "vessels that share it",
        Term::PeakFlow => "highest service flow",
        Term::BackwashFlow => "backwash flow",
        Term::BackwashAvailable => "flow there is for backwash",
        Term::FlowControl => "drain line flow control",
        Term::ContactTime => "empty-bed contact time",
        Term::BedVolumes => "bed volumes an hour",
        Term::MediaVolume => "volume of the media",
        Term::ParticleDensity => "particle density, wetted",
        Term::Voidage => "settled voidage",
        Term::Sphericity => "sphericity",
        Term::EffectiveSize => "effective size",
        Term::Uniformity => "uniformity coefficient",
        Term::GrainSize => "grain size",
        Term::LayerDepth => "depth of the layer",
        Term::PressureLoss => "pressure lost in the layer",
        Term::CleanDrop => "pressure lost over the clean bed",
        Term::ValveLoss => "pressure lost in the valve",
        Term::CollectorLoss => "pressure lost in the collectors",
        Term::PressureLossLimit => "most the unit may lose",
        Term::Expansion => "expansion",
        Term::MinimumExpansion => "least expansion",
        Term::RoomExpansion => "expansion there is room for",
        Term::LineWeight => "place of the line between low (0) and high (1)",
        Term::MinimumFluidisation => "speed that begins to lift",
        Term::SettlingSpeed => "settling speed of the finest kept grain",
        Term::AirHead => "air head",
        Term::UpperSlotWidth => "slot width of the upper collector",
        Term::SitePressure => "pressure on site",
        Term::LabelPressure => "pressure on the label",
        Term::LabelTemperature => "temperature on the label",
        Term::FreeChlorine => "free chlorine",
        Term::TotalChlorine => "total chlorine",
        Term::SiltDensityIndex => "silt density index",
        Term::EmptyMass => "weight of the empty vessel",
        Term::FootDiameter => "diameter of the foot",
        Term::WaterMass => "weight of the water",
        Term::SkeletalDensity => "density of the solid",
        Term::RetainedWater => "water that stays when drained",
        Term::Minutes => "how long",
        Term::CeilingClearance => "clear height",
        Term::LayerMass => "dry weight of the layer",
        Term::OperatingMass => "weight in operation",
        Term::RiserWall => "wall of the riser",
        Term::RiserLength => "length of the riser",
        Term::VesselCount => "number of vessels",
        Term::Ph => "pH",
        Term::Alkalinity => "alkalinity as CaCO₃",
        Term::CarbonDioxide => "carbon dioxide",
        Term::CalciumHardness => "calcium as CaCO₃",
        Term::MagnesiumHardness => "magnesium as CaCO₃",
        Term::Hardness => "hardness as CaCO₃",
        Term::Sodium => "sodium",
        Term::Sulfate => "sulfate",
        Term::Chloride => "chloride",
        Term::DissolvedSolids => "dissolved solids",
        Term::ChargeBalance => "difference of cations and anions",
        Term::SaturationIndex => "saturation index",
        Term::CalciteDissolved => "calcite taken up",
        Term::MagnesiaDissolved => "magnesia taken up",
        Term::GrainSurface => "surface of the grains",
        Term::CalciteMass => "weight of the calcite",
        Term::MagnesiaMass => "weight of the magnesia",
        Term::AverageUse => "water treated on average",
        Term::RefillShare => "share that may go before filling up",
        Term::InletConcentration => "what comes in",
        Term::OutletConcentration => "what may leave",
        Term::MediaCapacity => "what the media hold",
        Term::UsableShare => "share that is used",
        Term::ServiceTime => "service time",
        Term::ServiceTimePerMetre => "service time a metre of bed adds",
        Term::CriticalDepth => "depth that brings no service time",
        Term::HalfLength => "half-length",
        Term::TestVelocity => "flow per area of the test",
        Term::HalfTime => "contact time that halves it",
        Term::FreundlichFactor => "Freundlich K, mg/g at 1 mg/L",
        Term::FreundlichExponent => "Freundlich 1/n",
        Term::Iron => "iron",
        Term::Manganese => "manganese",
        Term::Aluminium => "aluminium",
        Term::Turbidity => "turbidity, NTU",
        Term::SaltDose => "salt dose",
        Term::ResinCapacity => "capacity of the resin",
        Term::IronFactor => "hardness a milligram of iron counts for",
        Term::CompensatedHardness => "hardness with iron counted",
        Term::Reserve => "reserve",
        Term::WaterBetween => "water between regenerations",
        Term::RegenerationInterval => "time between regenerations",
        Term::Solids => "suspended solids",
        Term::RunLength => "run length",
        Term::WashWater => "water for one wash",
        Term::Life => "expected life",
        Term::StockLength => "stock length",
        Term::Kerf => "width of the saw's cut",
        Term::LiftReach => "reach out to the hands",
        Term::LiftHeight => "height of the hands",
        Term::LiftTravel => "way up or down",
        Term::LiftTwist => "twist to the side, degrees",
        Term::LiftGrip => "factor for the grip",
        Term::LiftLimit => "what one person may lift",
        Term::PalletMass => "weight a pallet may bear",
        Term::PalletPacks => "packs a pallet may bear",
        Term::Confidence => "confidence",
        Term::Freedom => "degrees of freedom",
        Term::Readings => "number of readings",
        Term::ReadingPlace => "spread of the readings over time",
        Term::Trend => "rise of the readings",
        Term::ReadingSpread => "scatter of the readings",
        Term::OutletLimit => "outlet limit",
        Term::Settling => "settling allowance",
        Term::Bulking => "bulking of spent media",
        Term::DrumVolume => "what a drum holds",
    }
}

pub(super) fn basis(basis: Basis) -> &'static str {
    match basis {
        Basis::Measured => "measured",
        Basis::Typed => "typed",
        Basis::Catalogue => "catalogue",
        Basis::Assumed => "assumed",
    }
}

pub(super) fn source(source: Source) -> String {
    match source.standing() {
        Standing::Practice => "common practice".to_owned(),
        Standing::Memory => "from memory".to_owned(),
        Standing::Typed => "typed by a person".to_owned(),
        Standing::Derived if source == Source::OwnRule => source.title().to_owned(),
        Standing::Derived => "arithmetic".to_owned(),
        Standing::Published | Standing::Library => [source.title(), source.issuer(), source.edition(), source.page()]
            .iter()
            .filter(|part| !part.is_empty())
            .copied()
            .collect::<Vec<_>>()
            .join(", "),
    }
}

fn example(unit: Unit) -> &'static str {
    match unit {
        Unit::Inch => "like 52, 11 3/4 or 4 ft 4 in",
        Unit::Millimetre => "like 1320 or 298.5",
        Unit::CubicFoot => "like 2, 1.5 or 1/6",
        Unit::Each => "like 2 or 1.5",
        Unit::UsGallonPerMinute => "like 7 or 3.5",
        Unit::Celsius | Unit::Fahrenheit => "like 12",
        Unit::Percent => "like 20",
        _ => "like 1.5",
    }
}

pub(super) fn misread(manner: Manner, misread: &Misread, unit: Unit) -> String {
    match misread {
        Misread::Empty => format!("Nothing is typed. Type a number, {}.", example(unit)),
        Misread::NotANumber { found, .. } if found.is_empty() => {
            format!("This stops before it is a number. Type a number, {}.", example(unit))
        }
        Misread::NotANumber { found, .. } => {
            format!("“{found}” isn't part of a number. Type a number, {}.", example(unit))
        }
        Misread::Ambiguous { as_decimal, as_thousands, written } => format!(
            "This could be {} or {}. Say which.",
            with_unit(manner.decimal(*as_decimal, 6), *written),
            with_unit(manner.decimal(*as_thousands, 6), *written)
        ),
        Misread::UnknownUnit(found) => format!("“{found}” is no unit known here. {}", units_for(unit.dimension())),
        Misread::WrongDimension { found, wanted } if found.symbol().is_empty() => {
            format!("A number of pieces isn't asked for here. {}", units_for(*wanted))
        }
        Misread::WrongDimension { found, wanted: Dimension::Hardness }
            if found.dimension() == Dimension::Concentration || found.dimension() == Dimension::Hardness =>
        {
            format!(
                "“{}” doesn't say what is meant here: as calcium carbonate, or as the ion? Choose the unit beside it.",
                found.symbol()
            )
        }
        Misread::WrongDimension { found, wanted } => {
            format!("“{}” measures something else. {}", found.symbol(), units_for(*wanted))
        }
        Misread::PartTooLarge { value, unit, below } => format!(
            "{} after the larger unit is too much: it must be below {}.",
            with_unit(manner.decimal(*value, 3), *unit),
            manner.decimal(*below, 3)
        ),
        Misread::TooLong => "This is too long for a number.".to_owned(),
        Misread::TooLarge => "This is larger than anything in this trade. Check the number and its unit.".to_owned(),
        Misread::TooSmall => "This is smaller than anything in this trade. Check the number and its unit.".to_owned(),
        Misread::DivideByZero => "A fraction over 0 is no number.".to_owned(),
        Misread::NotWhole { value } => {
            format!("{} is no number of things. It must be a whole number from 1, like 8.", manner.decimal(*value, 3))
        }
        Misread::NoSuchSize { diameter_in, height_in } => format!(
            "{} × {} in is no vessel's size. Type the diameter, then the height: 12x52.",
            manner.decimal(*diameter_in, 2),
            manner.decimal(*height_in, 2)
        ),
    }
}

fn with_unit(number: String, unit: Unit) -> String {
    if unit.symbol().is_empty() { number } else { format!("{number} {}", unit.symbol()) }
}

fn units_for(dimension: Dimension) -> String {
    let units: Vec<&str> =
        Unit::of(dimension).iter().map(|unit| unit.symbol()).filter(|symbol| !symbol.is_empty()).collect();
    if units.is_empty() {
        "Type a bare number.".to_owned()
    } else {
        format!("Units it can be in: {}.", units.join(", "))
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_ascii_uppercase().to_string() + letters.as_str())
}

/// Whether a bare number of this is typed in per cent: a layer that is filled up to a share of the media bed, a discount.
const fn is_share(term: Term) -> bool {
    matches!(term, Term::Target | Term::Discount | Term::Markup | Term::Margin | Term::TaxRate)
}

pub(super) fn problem(manner: Manner, problem: &Problem) -> String {
    let what = capital(term(problem.term));
    let amount = |amount: Amount| match amount {
        Amount::Ratio(x) if is_share(problem.term) => manner.percent(x),
        other => manner.amount(other),
    };
    match problem.fault {
        Fault::Missing => match problem.term {
            Term::TopSlot => {
                "There is no top slot to cover: choose a bottom collector with slots and its height, or fill by another measure."
                    .to_owned()
            }
            _ => format!("{what} is needed and isn't there yet."),
        },
        Fault::NotPositive { value } if problem.term == Term::NeckHeight => {
            format!("{what} can't be below 0; it is {}.", manner.amount(value))
        }
        Fault::NotPositive { value } => format!("{what} must be more than 0; it is {}.", manner.amount(value)),
        Fault::OutOfRange { value, low, high } if problem.term == Term::CleanDrop => format!(
            "At this flow grains of these sizes lose from {} to {} however they lie; {} was read. Check flow, gauges and \
             grains, and whether the bed was clean.",
            manner.amount(low),
            manner.amount(high),
            manner.amount(value)
        ),
        // A lower limit so small that it would be shown as nothing.
        Fault::OutOfRange { value, low, high }
            if low.si() != 0.0 && (amount(low).starts_with("0 ") || amount(low).starts_with("0.00 ")) =>
        {
            format!("{what} must be more than 0 and at most {}; it is {}.", amount(high), amount(value))
        }
        Fault::OutOfRange { value, low, high } => {
            format!("{what} must be from {} to {}; it is {}.", amount(low), amount(high), amount(value))
        }
        Fault::NotBelow { value, other: Term::InsideDepth, limit } if problem.term == Term::Target => format!(
            "This would bring the surface to {} above the lowest point, over the rim at {}.",
            manner.amount(value),
            manner.amount(limit)
        ),
        Fault::NotBelow { value, limit, .. } if problem.term == Term::LateralLength => format!(
            "{what} must be at most {}, what the shell leaves at their height; it is {}.",
            manner.amount(limit),
            manner.amount(value)
        ),
        Fault::NotBelow { value, other: Term::Circumference, limit } => format!(
            "{what} must be less than half the shell's diameter by the tape, {}; it is {}.",
            manner.amount(limit),
            manner.amount(value)
        ),
        Fault::NotBelow { value, other, limit } => {
            format!("{what} must be less than the {}, {}; it is {}.", term(other), manner.amount(limit), manner.amount(value))
        }
        Fault::NotAbove { value, other: Term::TopHeadDepth, limit } => format!(
            "{what} must be more than heads and neck together, {}; it is {}.",
            manner.amount(limit),
            manner.amount(value)
        ),
        Fault::NotAbove { value, limit, .. } if problem.term == Term::RiserAllowance => {
            format!("No riser would be left: this must be more than {}; it is {}.", manner.amount(limit), manner.amount(value))
        }
        Fault::NotAbove { value, other, limit } => {
            format!("{what} must be more than the {}, {}; it is {}.", term(other), manner.amount(limit), manner.amount(value))
        }
        Fault::DoesNotFit { needs, room } if problem.term == Term::LateralCount => format!(
            "The laterals would take {} of a section of {}, and grains could not pass. Check their number, length and diameter.",
            manner.amount(needs),
            manner.amount(room)
        ),
        Fault::DoesNotFit { needs, room } => {
            format!("This needs {}; there is room for {}.", manner.amount(needs), manner.amount(room))
        }
        Fault::AlreadyReached { value, there } => format!(
            "{} is already reached: the surface below stands {} above the lowest point.",
            amount(value),
            manner.amount(there)
        ),
        Fault::WaitsFor { other: Term::LayerVolume } => "Waits for a layer that has no answer yet.".to_owned(),
        Fault::WaitsFor { other } => format!("Waits for the {}.", term(other)),
        Fault::CarriesAway { value } => {
            format!("{what} of {} leaves no bed: the grains go with the water.", manner.amount(value))
        }
        Fault::TooFine { places } => format!("{what} has more than {places} decimal places."),
        Fault::NoSolution if problem.term == Term::Margin => {
            format!("{what} can't be the whole price: type less than 100 %.")
        }
        Fault::NoSolution if problem.term == Term::Price => {
            format!("{what} and quantity are too large to be added up to the last digit.")
        }
        Fault::TooManyWays => format!(
            "{what}: more ways than can be gone through to be sure which is best. Offer fewer sizes, or lock some."
        ),
        Fault::NoSolution => {
            format!("No diameter fits the {} and these two tape readings. Check all three.", term(problem.term))
        }
    }
}

pub(super) fn caution(manner: Manner, caution: &Caution) -> String {
    match caution {
        Caution::MeasureDiameter => format!(
            "Taken as {} of the nominal diameter, from memory. Measure it.",
            manner.decimal(Assumption::InsideOfNominal.ratio(), 3)
        ),
        Caution::AboveNominal { inside, nominal } => format!(
            "Comes out at {}, more than the nominal {}. Check the reading it comes from.",
            manner.amount(*inside),
            manner.amount(*nominal)
        ),
        Caution::MeasureDepth => format!(
            "Taken as {} under the nominal height, from memory. Measure it.",
            manner.length(Assumption::DepthUnderNominal.length().value)
        ),
        Caution::IfPackWasFull => {
            "True if the bag was full. If it was short, the vessel is narrower than this.".to_owned()
        }
        Caution::DensityVaries { low, high } => {
            format!("Bulk density is {} to {} from lot to lot.", manner.amount(*low), manner.amount(*high))
        }
        Caution::BeyondFit { value, limit } => format!(
            "Outside what the equation was fitted to: {} against {}.",
            manner.amount(*value),
            manner.amount(*limit)
        ),
        Caution::NotLifted => "This flow doesn't lift the grains; they lie as they settled.".to_owned(),
        Caution::SizesGuessed => {
            "How the sizes are spread is a guess between the sieves: effective size and uniformity aren't known."
                .to_owned()
        }
        Caution::FromMemory => "From memory: no verdict rests on it.".to_owned(),
        Caution::ChargesMiss { share } => format!(
            "Cations and anions of the analysis miss each other by {}: something is left out or measured wrong.",
            manner.percent(share.si())
        ),
        Caution::Overshoot { limit } => format!(
            "Water that stands in magnesia goes above pH {}: flush before use, and mind fittings and taste.",
            manner.amount(*limit)
        ),
        Caution::AboveRule { value, limit } => format!(
            "{} is more than the rule counts on at this salt dose ({}).",
            manner.amount(*value),
            manner.amount(*limit)
        ),
        Caution::Supersaturated { index } => format!(
            "The water is supersaturated already (saturation index {}): it takes up no calcite and may lay some down.",
            manner.amount(*index)
        ),
        Caution::WithoutVessel => {
            "Without the vessel itself: the weight of the empty vessel isn't known. Add it.".to_owned()
        }
    }
}

pub(super) fn layer_fault(manner: Manner, fault: &LayerFault) -> String {
    match fault {
        LayerFault::NoMaterial => "Choose a material.".to_owned(),
        LayerFault::UnknownMaterial(id) => {
            format!("This version doesn't know the material “{id}”. Choose another, or update.")
        }
        LayerFault::UnknownPack(id) => format!("This version doesn't know the pack “{id}”. Choose another, or update."),
        LayerFault::NoAmount => "Type how much.".to_owned(),
        // What the amount measures isn't known here, so no list of units.
        LayerFault::Amount(Misread::UnknownUnit(found)) => {
            format!("“{found}” is no unit known here. Leave it out, or type another.")
        }
        LayerFault::Amount(found) => misread(manner, found, Unit::CubicFoot),
        LayerFault::BulkDensity(found) => misread(manner, found, Unit::PoundPerCubicFoot),
    }
}
