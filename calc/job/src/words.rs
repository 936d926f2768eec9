//! Every sentence a person reads: a code with typed arguments becomes a text in a language, units and number marks.
//!
//! No view and no calculation holds a text of its own. A [`Message`] is what travels; [`Manner`] says how a person
//! reads, and puts it into words.

mod apart;
mod care;
pub mod choices;
mod drawing;
mod keeping;
pub mod label;
pub mod language;
mod life;
pub mod loading;
pub mod names;
mod number;
mod prices;
mod problem;
mod quote;
mod search;
pub mod supply;
mod sure;
pub mod travel;
mod verdict;
mod window;

pub use apart::{apart, side_by_side};
use label::field::SurveyHint;
pub use label::life::LifeLabel;
pub use label::loading::LoadingLabel;
pub use label::picture::DrawingLabel;
use label::thing::CountName;
pub use label::thing::Joint;
use label::water::WaterHint;
pub use label::{
    BillLabel, CardLabel, CareLabel, CorrectionLabel, DeviceLabel, Fixed, KeepingLabel, Label, PhotoLabel, PriceLabel,
    QuoteLabel, SureLabel, TopLabel, TravelLabel,
};
pub use language::Language;
pub use supply::SupplyLabel;
pub use verdict::VerdictWords;

use bedwright_calc::material::{Container, Pack};
use bedwright_calc::quantity::{
    Amount, Basis, Caution, Concentration, Input, Length, Mark, Mass, Problem, Temperature, Term, Velocity, Volume,
    VolumeRate,
};
use bedwright_calc::supply::{BillLine, CountUnit, Item};

use crate::entry::{Dimension, Marks, Misread, Understood, Unit};
use crate::field::{SurveyField, WaterField};
use crate::reading::LayerFault;

/// How a person reads: language, units, number marks. Kept on the device, never in a job.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Manner {
    /// The language.
    pub language: Language,
    /// Millimetres, litres and kilograms instead of inches, cubic feet and pounds.
    pub metric: bool,
    /// The decimal mark.
    pub decimal: char,
}

impl Default for Manner {
    fn default() -> Manner {
        Manner { language: Language::English, metric: false, decimal: '.' }
    }
}

/// A sentence, as a code with its arguments.
#[derive(Clone, Debug, PartialEq)]
pub enum Message {
    /// A fixed text.
    Label(Label),
    /// The name of an entry.
    Field(SurveyField),
    /// Why what was typed makes no sense; with the unit of the field.
    Misread(Misread, Unit),
    /// Why there is no answer.
    Problem(Problem),
    /// What to bear in mind.
    Caution(Caution),
    /// Why a layer can't be worked out.
    LayerFault(LayerFault),
    /// The name of a quantity.
    Term(Term),
    /// What a value rests on.
    Basis(Basis),
    /// A material's name.
    Material(String),
}

impl Manner {
    /// The marks this person types with.
    #[must_use]
    pub const fn marks(&self) -> Marks {
        Marks { decimal: self.decimal }
    }

    /// A message in words.
    #[must_use]
    pub fn text(&self, message: &Message) -> String {
        match message {
            Message::Label(label) => self.label(*label).to_owned(),
            Message::Field(field) => self.field(*field).to_owned(),
            Message::Misread(misread, unit) => self.misread(misread, *unit),
            Message::Problem(problem) => self.problem(problem),
            Message::Caution(caution) => self.caution(caution),
            Message::LayerFault(fault) => self.layer_fault(fault),
            Message::Term(term) => self.term(*term).to_owned(),
            Message::Basis(basis) => self.basis(*basis).to_owned(),
            Message::Material(id) => self.material(id),
        }
    }

    /// A fixed text.
    #[must_use]
    pub fn label(&self, label: impl Fixed) -> &'static str {
        label.text(self.language)
    }

    /// A text that is put together: a pattern with its places filled, each by its name.
    #[must_use]
    pub fn sentence(&self, pattern: impl Fixed, places: &[(&str, &str)]) -> String {
        language::filled(pattern.text(self.language), places)
    }

    /// The name of an entry.
    #[must_use]
    pub fn field(&self, field: SurveyField) -> &'static str {
        self.label(field)
    }

    /// The name of an entry of the water side.
    #[must_use]
    pub fn water_field(&self, field: WaterField) -> &'static str {
        self.label(field)
    }

    /// How to take an entry of the water side, in a few words; empty where the name says it.
    #[must_use]
    pub fn water_hint(&self, field: WaterField) -> &'static str {
        WaterHint::of(field).map_or("", |hint| self.label(hint))
    }

    /// How to take a measure, in a few words; empty where the name says it.
    #[must_use]
    pub fn hint(&self, field: SurveyField) -> &'static str {
        SurveyHint::of(field).map_or("", |hint| self.label(hint))
    }

    /// The name of a quantity.
    #[must_use]
    pub fn term(&self, term: Term) -> &'static str {
        self.label(term)
    }

    /// What a value rests on.
    #[must_use]
    pub fn basis(&self, basis: Basis) -> &'static str {
        self.label(basis)
    }

    /// What a mark is called.
    #[must_use]
    pub fn mark(&self, mark: Mark) -> &'static str {
        self.label(mark)
    }

    /// What stands between a name and its value.
    #[must_use]
    pub fn colon(&self) -> &'static str {
        self.label(Joint::Colon)
    }

    /// A name and its value, with what the language puts between: "Cover: fine".
    #[must_use]
    pub fn named(&self, name: &str, value: &str) -> String {
        // A value that begins with a number would be drawn into a name that runs from right to left.
        [&apart(name), self.colon(), value].concat()
    }

    /// The sign of a unit.
    #[must_use]
    pub fn unit(&self, unit: Unit) -> &'static str {
        match unit {
            Unit::SquareFoot => self.label(Joint::SquareFoot),
            Unit::CubicFoot => self.label(Joint::CubicFoot),
            Unit::CubicInch => self.label(Joint::CubicInch),
            Unit::GrainPerCubicFoot => self.label(Joint::GrainPerCubicFoot),
            other => other.symbol(),
        }
    }

    /// A material's name; the id itself where the catalogue doesn't know it.
    #[must_use]
    pub fn material(&self, id: &str) -> String {
        names::material(id).map_or(id, |name| self.label(name)).to_owned()
    }

    /// A pack: "bag, 1 cu ft".
    #[must_use]
    pub fn pack(&self, pack: &Pack) -> String {
        let mut parts = vec![self.container(pack.container, 1).to_owned()];
        if let Some(volume) = &pack.volume {
            parts.push(self.pack_volume(volume.value));
        }
        if let Some(mass) = &pack.mass {
            parts.push(self.pack_mass(mass.value));
        }
        parts.join(", ")
    }

    /// What a pack is called, one or many.
    #[must_use]
    pub fn container(&self, container: Container, count: u32) -> &'static str {
        self.label(names::container(container, self.language.is_one(f64::from(count))))
    }

    /// A line of a bill, as it is asked for over a counter.
    #[must_use]
    pub fn item(&self, item: &Item) -> String {
        match item {
            Item::Pack { material, pack } => {
                let pack = Pack::of(pack).map_or_else(|| pack.to_string(), |pack| self.pack(&pack));
                [&self.material(material), ", ", &pack].concat()
            }
            Item::Part { fitting, size, cut, on_site } => {
                let mut parts = vec![self.label(*fitting).to_owned()];
                parts.extend(size.map(|size| self.size(size)));
                let text = if *on_site { Joint::CutOnSite } else { Joint::CutTo };
                parts.extend(cut.map(|cut| self.sentence(text, &[("length", &self.tape(cut))])));
                parts.join(", ")
            }
        }
    }

    /// How a line is counted, one or many: "bags", "each".
    #[must_use]
    pub fn unit_of(&self, line: &BillLine) -> &'static str {
        match (&line.item, line.unit) {
            (Item::Pack { pack, .. }, _) => {
                self.container(Pack::of(pack).map_or(Container::Bag, |pack| pack.container), line.quantity)
            }
            (Item::Part { .. }, CountUnit::Length) if self.language.is_one(f64::from(line.quantity)) => {
                self.label(CountName::Piece)
            }
            (Item::Part { .. }, CountUnit::Length) => self.label(CountName::Pieces),
            (Item::Part { .. }, _) => self.label(CountName::Each),
        }
    }

    /// A value with its unit, as a sentence needs it.
    #[must_use]
    pub fn amount(&self, amount: Amount) -> String {
        match amount {
            Amount::Length(x) => self.length(x),
            Amount::Area(x) => {
                if self.metric {
                    format!("{} m²", self.decimal(x.value, 4))
                } else {
                    format!("{} {}", self.decimal(Unit::SquareFoot.from_si(x.value), 3), self.unit(Unit::SquareFoot))
                }
            }
            Amount::Volume(x) => self.volume(x),
            Amount::Mass(x) => self.mass(x),
            Amount::Density(x) => {
                if self.metric {
                    format!("{} kg/m³", self.decimal(x.value, 0))
                } else {
                    format!(
                        "{} {}",
                        self.decimal(Unit::PoundPerCubicFoot.from_si(x.value), 1),
                        self.label(Joint::PoundPerCubicFoot)
                    )
                }
            }
            Amount::Pressure(x) => {
                if self.metric {
                    format!("{} bar", self.decimal(x.value / 1e5, 2))
                } else {
                    format!("{} psi", self.decimal(Unit::Psi.from_si(x.value), 1))
                }
            }
            Amount::Speed(x) => self.flow_per_area(x),
            Amount::Flow(x) => self.flow(x),
            Amount::Temperature(x) => self.temperature(x),
            Amount::Viscosity(x) => format!("{} mPa·s", self.decimal(x.value * 1000.0, 3)),
            Amount::Time(x) if x.value >= 3600.0 * 2.0 => format!("{} h", self.decimal(x.value / 3600.0, 1)),
            Amount::Time(x) => format!("{} min", self.decimal(x.value / 60.0, 1)),
            Amount::Rate(x) => format!("{} BV/h", self.decimal(x.value * 3600.0, 1)),
            Amount::Concentration(x) => self.concentration(x),
            Amount::Ratio(x) => self.decimal(x, 2),
            Amount::Count(n) => n.to_string(),
        }
    }

    /// An input of a figure with its unit; grains and slots in millimetres whatever else is in inches.
    #[must_use]
    pub fn input(&self, input: &Input) -> String {
        match (input.term, input.amount) {
            (
                Term::GrainLow
                | Term::GrainHigh
                | Term::GrainSize
                | Term::EffectiveSize
                | Term::SlotWidth
                | Term::UpperSlotWidth,
                Amount::Length(x),
            ) => self.small(x),
            (Term::AverageUse, Amount::Flow(x)) => {
                let unit = if self.metric { Unit::CubicMetrePerDay } else { Unit::UsGallonPerDay };
                let places = if self.metric { 2 } else { 0 };
                format!("{} {}", self.decimal(unit.from_si(x.value), places), unit.symbol())
            }
            (Term::Life | Term::ServiceTime | Term::RegenerationInterval | Term::RunLength, Amount::Time(x)) => {
                self.lifetime(x)
            }
            (Term::HalfTime, Amount::Time(x)) => format!("{} s", self.decimal(x.value, 0)),
            (_, amount) => self.amount(amount),
        }
    }

    /// A length to two decimals of an inch, or whole millimetres with one decimal.
    #[must_use]
    pub fn length(&self, length: Length) -> String {
        if self.metric {
            format!("{} mm", self.decimal(length.value * 1000.0, 1))
        } else {
            format!("{} in", self.decimal(Unit::Inch.from_si(length.value), 2))
        }
    }

    /// A flow: gallons a minute, or litres a minute.
    #[must_use]
    pub fn flow(&self, flow: VolumeRate) -> String {
        if self.metric {
            format!("{} L/min", self.decimal(Unit::LitrePerMinute.from_si(flow.value), 1))
        } else {
            format!("{} gpm", self.decimal(Unit::UsGallonPerMinute.from_si(flow.value), 1))
        }
    }

    /// A concentration in milligrams per litre, to about three digits.
    #[must_use]
    pub fn concentration(&self, concentration: Concentration) -> String {
        let value = concentration.to_milligrams_per_litre();
        let places = if value.abs() >= 100.0 {
            0
        } else if value.abs() >= 10.0 {
            1
        } else if value.abs() >= 1.0 {
            2
        } else {
            3
        };
        format!("{} mg/L", self.decimal(value, places))
    }

    /// A flow per area, or a speed of water.
    #[must_use]
    pub fn flow_per_area(&self, speed: Velocity) -> String {
        if self.metric {
            format!("{} m/h", self.decimal(Unit::MetrePerHour.from_si(speed.value), 1))
        } else {
            format!("{} gpm/ft²", self.decimal(Unit::UsGallonPerMinuteSquareFoot.from_si(speed.value), 1))
        }
    }

    /// A temperature in whole degrees and a half where it is one.
    #[must_use]
    pub fn temperature(&self, temperature: Temperature) -> String {
        let unit = if self.metric { Unit::Celsius } else { Unit::Fahrenheit };
        format!("{} {}", self.decimal(unit.from_si(temperature.value), 1), unit.symbol())
    }

    /// A tape reading: eighths of an inch, or whole millimetres.
    #[must_use]
    pub fn tape(&self, length: Length) -> String {
        let bare = self.tape_bare(length);
        if self.metric { format!("{bare} mm") } else { format!("{bare} in") }
    }

    /// A tape reading without its unit.
    #[must_use]
    pub fn tape_bare(&self, length: Length) -> String {
        if self.metric {
            self.decimal(length.value * 1000.0, 0)
        } else {
            crate::entry::fraction_text(Unit::Inch.from_si(length.value), 8)
        }
    }

    /// A spread, rounded up so that it promises nothing: "± 1 1/8 in".
    #[must_use]
    pub fn spread(&self, length: Length) -> String {
        if self.metric {
            format!("± {} mm", self.decimal((length.value * 1000.0).ceil(), 0))
        } else {
            let eighths = (Unit::Inch.from_si(length.value) * 8.0 - 1e-9).ceil();
            format!("± {} in", crate::entry::fraction_text(eighths / 8.0, 8))
        }
    }

    /// The size of a part: an outside diameter or a bore.
    #[must_use]
    pub fn size(&self, length: Length) -> String {
        if self.metric {
            format!("{} mm", self.decimal(length.value * 1000.0, 1))
        } else {
            format!("{} in", self.decimal(Unit::Inch.from_si(length.value), 3))
        }
    }

    /// Small things, grains and slots, in millimetres.
    #[must_use]
    pub fn small(&self, length: Length) -> String {
        format!("{} mm", self.decimal(length.value * 1000.0, 2))
    }

    /// A volume: cubic feet to two decimals, or litres to one.
    #[must_use]
    pub fn volume(&self, volume: Volume) -> String {
        if self.metric {
            format!("{} L", self.decimal(volume.value * 1000.0, 1))
        } else {
            format!("{} {}", self.fixed(Unit::CubicFoot.from_si(volume.value), 2), self.unit(Unit::CubicFoot))
        }
    }

    /// The volume printed on a pack.
    #[must_use]
    pub fn pack_volume(&self, volume: Volume) -> String {
        let feet = Unit::CubicFoot.from_si(volume.value);
        let litres = volume.value * 1000.0;
        if (feet * 2.0 - (feet * 2.0).round()).abs() < 1e-9 {
            return if (feet - 0.5).abs() < 1e-9 {
                ["1/2 ", self.unit(Unit::CubicFoot)].concat()
            } else {
                format!("{} {}", self.decimal(feet, 1), self.unit(Unit::CubicFoot))
            };
        }
        format!("{} L", self.decimal(litres, 1))
    }

    /// The mass printed on a pack.
    #[must_use]
    pub fn pack_mass(&self, mass: Mass) -> String {
        let pounds = Unit::Pound.from_si(mass.value);
        if (pounds - pounds.round()).abs() < 1e-9 {
            format!("{} lb", self.decimal(pounds, 0))
        } else {
            format!("{} kg", self.decimal(mass.value, 1))
        }
    }

    /// A mass in whole pounds or kilograms.
    #[must_use]
    pub fn mass(&self, mass: Mass) -> String {
        if self.metric {
            format!("{} kg", self.decimal(mass.value, 0))
        } else {
            format!("{} lb", self.decimal(Unit::Pound.from_si(mass.value), 0))
        }
    }

    /// A share as per cent.
    #[must_use]
    pub fn percent(&self, ratio: f64) -> String {
        format!("{} %", self.decimal(ratio * 100.0, 0))
    }

    /// What was understood of an entry, for the echo beside it: "52.5 in".
    #[must_use]
    pub fn echo(&self, understood: &Understood) -> String {
        let unit = understood.written;
        if understood.dimension == Dimension::Hardness && !WaterField::ResinCapacity.units().contains(&unit) {
            return self.hardness(Concentration::kilograms_per_cubic_metre(understood.si));
        }
        let number = self.decimal(understood.value, 4);
        if unit.symbol().is_empty() { number } else { [&number, " ", self.unit(unit)].concat() }
    }

    /// A number to at most so many decimals, trailing noughts left out.
    #[must_use]
    pub fn decimal(&self, value: f64, places: usize) -> String {
        number::trimmed(value, places, self.decimal)
    }

    /// A number to exactly so many decimals.
    #[must_use]
    pub fn fixed(&self, value: f64, places: usize) -> String {
        number::fixed(value, places, self.decimal)
    }
}
