//! Why a text makes no sense, why there is no answer, what to bear in mind, where a value comes from.

use bedwright_calc::quantity::{Amount, Assumption, Caution, Fault, Problem, Source, Standing, Term};

use super::Manner;
use super::label::problem::{CautionText, MisreadText, ProblemText};
use super::label::thing::SourceText;
use crate::entry::{Dimension, Misread, Unit};
use crate::field::SurveyField;
use crate::reading::LayerFault;

const fn example(unit: Unit) -> MisreadText {
    match unit {
        Unit::Inch => MisreadText::LikeInch,
        Unit::Millimetre => MisreadText::LikeMillimetre,
        Unit::CubicFoot => MisreadText::LikeCubicFoot,
        Unit::Each => MisreadText::LikeEach,
        Unit::UsGallonPerMinute => MisreadText::LikeFlow,
        Unit::Celsius | Unit::Fahrenheit => MisreadText::LikeTemperature,
        Unit::Percent => MisreadText::LikePercent,
        _ => MisreadText::Like,
    }
}

/// Whether a bare number of this is typed in per cent: a layer that is filled up to a share of the media bed, a discount.
const fn is_share(term: Term) -> bool {
    matches!(term, Term::Target | Term::Discount | Term::Markup | Term::Margin | Term::TaxRate)
}

impl Manner {
    /// Where a value comes from, or that nobody knows. A document keeps the title it was published under.
    #[must_use]
    pub fn source(&self, source: Source) -> String {
        let text = match source.standing() {
            Standing::Practice => SourceText::Practice,
            Standing::Memory => SourceText::Memory,
            Standing::Typed => SourceText::Typed,
            Standing::Derived if source == Source::OwnRule => SourceText::OwnRule,
            Standing::Derived => SourceText::Arithmetic,
            Standing::Published | Standing::Library => {
                return [source.title(), source.issuer(), source.edition(), source.page()]
                    .iter()
                    .filter(|part| !part.is_empty())
                    .copied()
                    .collect::<Vec<_>>()
                    .join(", ");
            }
        };
        self.label(text).to_owned()
    }

    /// That an entry is needed and isn't there.
    #[must_use]
    pub fn missing(&self, field: SurveyField) -> String {
        self.sentence(ProblemText::Missing, &[("what", self.field(field))])
    }

    fn with_unit(&self, number: String, unit: Unit) -> String {
        let unit = self.unit(unit);
        if unit.is_empty() { number } else { [&number, " ", unit].concat() }
    }

    fn units_for(&self, dimension: Dimension) -> String {
        let units: Vec<&str> =
            Unit::of(dimension).iter().map(|unit| self.unit(*unit)).filter(|symbol| !symbol.is_empty()).collect();
        if units.is_empty() {
            self.label(MisreadText::BareNumber).to_owned()
        } else {
            self.sentence(MisreadText::Units, &[("units", &units.join(", "))])
        }
    }

    /// Why what was typed makes no sense, and what it may be.
    #[must_use]
    pub fn misread(&self, misread: &Misread, unit: Unit) -> String {
        let example = self.label(example(unit));
        let found_in = |text: MisreadText, found: Unit, dimension: Dimension| {
            self.sentence(text, &[("found", self.unit(found)), ("units", &self.units_for(dimension))])
        };
        let text = match misread {
            Misread::Empty => return self.sentence(MisreadText::Empty, &[("example", example)]),
            Misread::NotANumber { found, .. } if found.is_empty() => {
                return self.sentence(MisreadText::Stops, &[("example", example)]);
            }
            Misread::NotANumber { found, .. } => {
                return self.sentence(MisreadText::NotANumber, &[("found", found), ("example", example)]);
            }
            Misread::Ambiguous { as_decimal, as_thousands, written } => {
                let one = self.with_unit(self.decimal(*as_decimal, 6), *written);
                let other = self.with_unit(self.decimal(*as_thousands, 6), *written);
                return self.sentence(MisreadText::Ambiguous, &[("one", &one), ("other", &other)]);
            }
            Misread::UnknownUnit(found) => {
                let units = self.units_for(unit.dimension());
                return self.sentence(MisreadText::UnknownUnit, &[("found", found), ("units", &units)]);
            }
            Misread::WrongDimension { found, wanted } if found.symbol().is_empty() => {
                return self.sentence(MisreadText::NoCount, &[("units", &self.units_for(*wanted))]);
            }
            Misread::WrongDimension { found, wanted: Dimension::Hardness }
                if found.dimension() == Dimension::Concentration || found.dimension() == Dimension::Hardness =>
            {
                return self.sentence(MisreadText::CountedAs, &[("found", self.unit(*found))]);
            }
            Misread::WrongDimension { found, wanted } => {
                return found_in(MisreadText::SomethingElse, *found, *wanted);
            }
            Misread::PartTooLarge { value, unit, below } => {
                let part = self.with_unit(self.decimal(*value, 3), *unit);
                return self
                    .sentence(MisreadText::PartTooLarge, &[("part", &part), ("limit", &self.decimal(*below, 3))]);
            }
            Misread::NotWhole { value } => {
                return self.sentence(MisreadText::NotWhole, &[("value", &self.decimal(*value, 3))]);
            }
            Misread::NoSuchSize { diameter_in, height_in } => {
                let (diameter, height) = (self.decimal(*diameter_in, 2), self.decimal(*height_in, 2));
                return self.sentence(MisreadText::NoSuchSize, &[("diameter", &diameter), ("height", &height)]);
            }
            Misread::TooLong => MisreadText::TooLong,
            Misread::TooLarge => MisreadText::TooLarge,
            Misread::TooSmall => MisreadText::TooSmall,
            Misread::DivideByZero => MisreadText::DivideByZero,
        };
        self.label(text).to_owned()
    }

    /// Why what was typed into an entry of the survey makes no sense: a nominal size isn't a number.
    #[must_use]
    pub fn misread_in(&self, field: SurveyField, misread: &Misread, unit: Unit) -> String {
        match (field, misread) {
            (SurveyField::NominalSize, Misread::NoSuchSize { .. }) => self.misread(misread, unit),
            (SurveyField::NominalSize, _) => self.label(MisreadText::NoSize).to_owned(),
            _ => self.misread(misread, unit),
        }
    }

    /// Why there is no answer, and what to do.
    #[must_use]
    pub fn problem(&self, problem: &Problem) -> String {
        use ProblemText as Text;
        let name = self.term(problem.term);
        let what = capital(name);
        let what = what.as_str();
        let amount = |amount: Amount| match amount {
            Amount::Ratio(x) if is_share(problem.term) => self.percent(x),
            other => self.amount(other),
        };
        // A limit by another quantity, and by how much it is missed.
        let against = |text: Text, other: Term, limit: Amount, value: Amount| {
            let places = [
                ("what", what),
                ("other", self.term(other)),
                ("limit", &self.amount(limit)),
                ("value", &self.amount(value)),
            ];
            self.sentence(text, &places)
        };
        let within = |text: Text, low: &str, high: &str, value: &str| {
            self.sentence(text, &[("what", what), ("low", low), ("high", high), ("value", value)])
        };
        let of_value =
            |text: Text, value: Amount| self.sentence(text, &[("what", what), ("value", &self.amount(value))]);
        let room = |text: Text, needs: Amount, room: Amount| {
            self.sentence(text, &[("needs", &self.amount(needs)), ("room", &self.amount(room))])
        };
        match problem.fault {
            Fault::Missing if problem.term == Term::TopSlot => self.label(Text::NoTopSlot).to_owned(),
            Fault::Missing => self.sentence(Text::Missing, &[("what", what)]),
            Fault::NotPositive { value } if problem.term == Term::NeckHeight => of_value(Text::BelowNought, value),
            Fault::NotPositive { value } => of_value(Text::NotPositive, value),
            Fault::OutOfRange { value, low, high } if problem.term == Term::CleanDrop => {
                within(Text::DropOutside, &self.amount(low), &self.amount(high), &self.amount(value))
            }
            // A lower limit so small that it would be shown as nothing.
            Fault::OutOfRange { value, low, high } if low.si() != 0.0 && shows_nothing(&amount(low)) => {
                within(Text::UpTo, "", &amount(high), &amount(value))
            }
            Fault::OutOfRange { value, low, high } => {
                within(Text::OutOfRange, &amount(low), &amount(high), &amount(value))
            }
            Fault::NotBelow { value, other, limit } => {
                let text = match (problem.term, other) {
                    (Term::Target, Term::InsideDepth) => Text::OverTheRim,
                    (Term::LateralLength, _) => Text::LateralTooLong,
                    (_, Term::Circumference) => Text::WallTooThick,
                    _ => Text::NotBelow,
                };
                against(text, other, limit, value)
            }
            Fault::NotAbove { value, other, limit } => {
                let text = match (problem.term, other) {
                    (_, Term::TopHeadDepth) => Text::NoStraightSide,
                    (Term::RiserAllowance, _) => Text::NoRiserLeft,
                    _ => Text::NotAbove,
                };
                against(text, other, limit, value)
            }
            Fault::DoesNotFit { needs, room: there } if problem.term == Term::LateralCount => {
                room(Text::LateralsFill, needs, there)
            }
            Fault::DoesNotFit { needs, room: there } => room(Text::DoesNotFit, needs, there),
            Fault::AlreadyReached { value, there } => {
                self.sentence(Text::AlreadyReached, &[("value", &amount(value)), ("there", &self.amount(there))])
            }
            Fault::WaitsFor { other: Term::LayerVolume } => self.label(Text::WaitsForLayer).to_owned(),
            Fault::WaitsFor { other } => self.sentence(Text::WaitsFor, &[("other", self.term(other))]),
            Fault::CarriesAway { value } => of_value(Text::CarriesAway, value),
            Fault::TooFine { places } => {
                self.sentence(Text::TooFine, &[("what", what), ("places", &places.to_string())])
            }
            Fault::NoSolution if problem.term == Term::Margin => self.sentence(Text::WholePrice, &[("what", what)]),
            Fault::NoSolution if problem.term == Term::Price => self.sentence(Text::TooLargeToAdd, &[("what", what)]),
            Fault::TooManyWays => self.sentence(Text::TooManyWays, &[("what", what)]),
            Fault::NoSolution => self.sentence(Text::NoSolution, &[("what", name)]),
        }
    }

    /// What to bear in mind.
    #[must_use]
    pub fn caution(&self, caution: &Caution) -> String {
        use CautionText as Text;
        let against = |text: Text, value: Amount, limit: Amount| {
            self.sentence(text, &[("value", &self.amount(value)), ("limit", &self.amount(limit))])
        };
        match caution {
            Caution::MeasureDiameter => self
                .sentence(Text::MeasureDiameter, &[("share", &self.decimal(Assumption::InsideOfNominal.ratio(), 3))]),
            Caution::AboveNominal { inside, nominal } => self.sentence(
                Text::AboveNominal,
                &[("inside", &self.amount(*inside)), ("nominal", &self.amount(*nominal))],
            ),
            Caution::MeasureDepth => {
                let length = self.length(Assumption::DepthUnderNominal.length().value);
                self.sentence(Text::MeasureDepth, &[("length", &length)])
            }
            Caution::IfPackWasFull => self.label(Text::IfPackWasFull).to_owned(),
            Caution::DensityVaries { low, high } => {
                self.sentence(Text::DensityVaries, &[("low", &self.amount(*low)), ("high", &self.amount(*high))])
            }
            Caution::BeyondFit { value, limit } => against(Text::BeyondFit, *value, *limit),
            Caution::NotLifted => self.label(Text::NotLifted).to_owned(),
            Caution::SizesGuessed => self.label(Text::SizesGuessed).to_owned(),
            Caution::FromMemory => self.label(Text::FromMemory).to_owned(),
            Caution::ChargesMiss { share } => self.sentence(Text::ChargesMiss, &[("share", &self.percent(share.si()))]),
            Caution::Overshoot { limit } => self.sentence(Text::Overshoot, &[("limit", &self.amount(*limit))]),
            Caution::AboveRule { value, limit } => against(Text::AboveRule, *value, *limit),
            Caution::Supersaturated { index } => {
                self.sentence(Text::Supersaturated, &[("index", &self.amount(*index))])
            }
            Caution::WithoutVessel => self.label(Text::WithoutVessel).to_owned(),
        }
    }

    /// Why a layer can't be worked out.
    #[must_use]
    pub fn layer_fault(&self, fault: &LayerFault) -> String {
        match fault {
            LayerFault::NoMaterial => self.label(ProblemText::NoMaterial).to_owned(),
            LayerFault::UnknownMaterial(id) => self.sentence(ProblemText::UnknownMaterial, &[("id", id)]),
            LayerFault::UnknownPack(id) => self.sentence(ProblemText::UnknownPack, &[("id", id)]),
            LayerFault::NoAmount => self.label(ProblemText::NoAmount).to_owned(),
            // What the amount measures isn't known here, so no list of units.
            LayerFault::Amount(Misread::UnknownUnit(found)) => {
                self.sentence(ProblemText::NoSuchUnit, &[("found", found)])
            }
            LayerFault::Amount(found) => self.misread(found, Unit::CubicFoot),
            LayerFault::BulkDensity(found) => self.misread(found, Unit::PoundPerCubicFoot),
        }
    }
}

/// Whether a value with its unit is shown as nothing: "0 in", "0.00 cu ft", "0,00 ft³".
fn shows_nothing(text: &str) -> bool {
    text.split_once(' ').is_some_and(|(number, _)| matches!(number, "0" | "0.00" | "0,00"))
}

/// A text that begins with a capital, as a sentence does.
pub(super) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    let Some(first) = letters.next() else { return String::new() };
    // "pH" stays as it is.
    if letters.as_str().starts_with(|next: char| next.is_ascii_uppercase()) {
        return text.to_owned();
    }
    let first = match first {
        'á' => 'Á',
        'à' => 'À',
        'â' => 'Â',
        'é' => 'É',
        'è' => 'È',
        'ê' => 'Ê',
        'í' => 'Í',
        'î' => 'Î',
        'ó' => 'Ó',
        'ô' => 'Ô',
        'œ' => 'Œ',
        'ú' => 'Ú',
        'ñ' => 'Ñ',
        other => other.to_ascii_uppercase(),
    };
    let mut out = String::from(first);
    out.push_str(letters.as_str());
    out
}
