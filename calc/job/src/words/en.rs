//! Sentences in English.

use bedwright_calc::quantity::{
    Amount, Assumption, Basis, Caution, Fault, Mark, Problem, Reason, Remedy, Source, Standing, Subject, Term, Verdict,
};

use super::{Manner, VerdictWords};
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

pub(super) fn problem(manner: Manner, problem: &Problem) -> String {
    let what = capital(term(problem.term));
    // A layer that is filled up to a share of the media bed is asked for in per cent.
    let amount = |amount: Amount| match amount {
        Amount::Ratio(x) if problem.term == Term::Target => manner.percent(x),
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

fn mark(mark: Mark) -> &'static str {
    match mark {
        Mark::Fine => "fine",
        Mark::SetOnSite => "set on site",
        Mark::Caution => "caution",
        Mark::Stop => "stop",
    }
}

pub(super) fn verdict(manner: Manner, verdict: &Verdict, layers: &[String]) -> VerdictWords {
    let name = |index: usize| layers.get(index).map_or("layer", String::as_str);
    let subject = match verdict.subject {
        Subject::Gap { layer } => format!("Gap beside the riser, {}", name(layer)),
        Subject::Slot { layer } => format!("Collector slots, {}", name(layer)),
        Subject::Neighbours { lower } => format!("{} under {}", name(lower), name(lower + 1)),
        Subject::Cover => "Cover of the collector".to_owned(),
        Subject::Freeboard => "Room above the media".to_owned(),
        Subject::Diameter => "Inside diameter".to_owned(),
    };
    // What falls short is rounded down and what is too much is rounded up, so that no limit looks met.
    let rounded = |amount: Amount, round: fn(f64) -> f64| match amount {
        Amount::Ratio(x) => manner.decimal(round(x * 10.0) / 10.0, 1),
        other => manner.amount(other),
    };
    let down = |amount: Amount| rounded(amount, f64::floor);
    let up = |amount: Amount| rounded(amount, f64::ceil);
    let plain = |amount: Amount| rounded(amount, f64::round);
    let small = |amount: Amount| match amount {
        Amount::Length(x) => manner.small(x),
        other => manner.amount(other),
    };
    let over = verdict.mark != Mark::Fine;
    let reason = match verdict.reason {
        Reason::GapCentred { grains, wanted } if !over => {
            format!("{} of the largest grains fit beside the riser; {} are enough.", down(grains), plain(wanted))
        }
        Reason::GapCentred { grains, wanted } => {
            format!("{} of the largest grains fit beside the riser; under {} they jam.", down(grains), plain(wanted))
        }
        Reason::GapLeaned { grains, wanted } => format!(
            "Even with the riser leaned over only {} of the largest grains fit; under {} none pass.",
            down(grains),
            plain(wanted)
        ),
        Reason::Slot { slot, grain } if verdict.mark == Mark::Stop => {
            format!("Slots of {} let the smallest grains through, {}.", small(slot), small(grain))
        }
        Reason::Slot { slot, grain } if over => format!(
            "Slots of {} are close to the smallest grains, {}; up to {} of a grain is safe.",
            small(slot),
            small(grain),
            manner.decimal(Assumption::SlotCaution.ratio(), 2)
        ),
        Reason::Slot { slot, grain } => format!("Slots of {} hold the smallest grains, {}.", small(slot), small(grain)),
        Reason::GapHeld { grains } => {
            format!(
                "The layer below holds the riser, and only {} of the largest grains fit beside it; none pass.",
                plain(grains)
            )
        }
        Reason::CoarserAbove { below, above } => {
            format!("Its grains reach {}, those above {}: the coarser belongs below.", small(below), small(above))
        }
        Reason::SizeRatio { ratio, limit } => format!(
            "The largest grain below is {} times the smallest above; {} is the most.",
            if over { up(ratio) } else { plain(ratio) },
            plain(limit)
        ),
        Reason::FilterRatio { ratio, limit } => format!(
            "Grains below are {} times those above (D15 over D85); {} is the most.",
            if over { up(ratio) } else { plain(ratio) },
            plain(limit)
        ),
        Reason::NoRoom { needs, room } => {
            format!("It needs {}; there is room for {}.", manner.amount(needs), manner.amount(room))
        }
        Reason::CoverAboveSlot { cover: Amount::Length(cover) } if cover.value < 0.0 => {
            format!("The top slot stands {} above the underbed.", manner.length(-cover))
        }
        Reason::CoverAboveSlot { cover } => format!("The underbed stands {} above the top slot.", manner.amount(cover)),
        Reason::Room { freeboard: Amount::Length(room) } => {
            format!("The media would stand {} above where the bed must end.", manner.length(-room))
        }
        Reason::Room { freeboard } => format!("Freeboard {}.", manner.amount(freeboard)),
        Reason::AboveNominal { inside, nominal } => {
            format!("It comes out at {}, more than the nominal {}.", manner.amount(inside), manner.amount(nominal))
        }
    };
    let remedies = verdict
        .remedies
        .iter()
        .map(|remedy| match remedy {
            Remedy::PourSlowly => "Pour slowly and work it round.".to_owned(),
            Remedy::FillPortOrManway => "Load by a fill port or a manway.".to_owned(),
            Remedy::SmallerGrain { largest } => format!("Or take grains of at most {}.", small(*largest)),
            Remedy::CoarserGrain { smallest } => {
                format!("Take grains of at least {}, or finer slots.", small(*smallest))
            }
            Remedy::LayerBetween if matches!(verdict.subject, Subject::Slot { .. }) => {
                "Or put a coarser layer against the slots.".to_owned()
            }
            Remedy::SwapLayers => "Put the coarser layer below.".to_owned(),
            Remedy::CheckReadings => "Check the readings, and whether the pack was fuller than printed.".to_owned(),
            Remedy::LayerBetween => "Put a layer between, of a size between the two.".to_owned(),
            Remedy::MoreUnderbed { volume } => format!("Add {} of underbed.", manner.amount(*volume)),
            Remedy::FewerPacks { packs } => {
                let count = packs.si();
                if count == 1.0 { "At most 1 pack fits.".to_owned() } else { format!("At most {count} packs fit.") }
            }
            Remedy::TapeBareShell => "Tape the bare shell, not the jacket, and measure the wall.".to_owned(),
        })
        .collect();
    VerdictWords {
        headline: format!("{subject}: {}", mark(verdict.mark)),
        reason,
        remedies,
        source: source(verdict.source),
    }
}
