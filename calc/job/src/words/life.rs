//! How long a bed lasts, in words.

use bedwright_calc::life::sensitivity::LifeSensitivity;
use bedwright_calc::quantity::{Amount, Concentration, Figure, Term, Time, Volume};

use super::Manner;
use super::label::life::{LifeLabel, life_name, limited_by};
use super::label::measure::TimeText;
use crate::answers::life::{Expected, LifeAnswers, LifeName, LimitedBy};
use crate::entry::Unit;
use crate::field::WaterField;

impl Manner {
    /// A time as a bed lasts: hours, days, months or years, two digits.
    #[must_use]
    pub fn lifetime(&self, time: Time) -> String {
        const DAY: f64 = 86_400.0;
        const YEAR: f64 = 365.25 * DAY;
        let seconds = time.value;
        let (value, text) = if seconds >= 2.0 * YEAR {
            (seconds / YEAR, TimeText::Years)
        } else if seconds >= YEAR / 6.0 {
            (seconds / (YEAR / 12.0), TimeText::Months)
        } else if seconds >= 2.0 * DAY {
            (seconds / DAY, TimeText::Days)
        } else if seconds >= 2.0 * 3600.0 {
            (seconds / 3600.0, TimeText::Hours)
        } else {
            (seconds / 60.0, TimeText::Minutes)
        };
        self.sentence(text, &[("number", &self.decimal(value, usize::from(value < 10.0)))])
    }

    /// A hardness or an alkalinity in every unit the trade uses for it.
    #[must_use]
    pub fn hardness(&self, concentration: Concentration) -> String {
        let kilograms = concentration.to_kilograms_per_cubic_metre();
        let other = |unit: Unit| format!("{} {}", self.decimal(unit.from_si(kilograms), 1), unit.symbol());
        [
            format!("{} CaCO₃", self.concentration(concentration)),
            other(Unit::GrainPerGallon),
            other(Unit::GermanDegree),
            other(Unit::FrenchDegree),
        ]
        .join(" = ")
    }

    /// A volume of water: gallons, or cubic metres; two digits.
    #[must_use]
    pub fn water_volume(&self, volume: Volume) -> String {
        let unit = if self.metric { Unit::CubicMetre } else { Unit::UsGallon };
        let value = unit.from_si(volume.value);
        let places = if value >= 10.0 { 0 } else { 2 };
        format!("{} {}", self.decimal(value, places), self.unit(unit))
    }

    /// A figure of a bed's life as the trade writes it.
    #[must_use]
    pub fn life_figure(&self, name: LifeName, figure: &Figure<Amount>) -> String {
        match (name, figure.value) {
            (
                LifeName::HardnessBefore
                | LifeName::HardnessAfter
                | LifeName::AlkalinityAfter
                | LifeName::CompensatedHardness,
                Amount::Concentration(x),
            ) => self.hardness(x),
            (LifeName::ResinCapacity, Amount::Concentration(x)) => {
                let unit = WaterField::ResinCapacity.usual_unit(self.metric);
                let places = usize::from(self.metric);
                format!("{} {}", self.decimal(unit.from_si(x.to_kilograms_per_cubic_metre()), places), self.unit(unit))
            }
            (LifeName::HalfTime | LifeName::ContactTimeNeeded, Amount::Time(x)) => {
                format!("{} s", self.decimal(x.value, 0))
            }
            (_, Amount::Time(x)) => self.lifetime(x),
            (_, Amount::Volume(x)) => self.water_volume(x),
            (LifeName::CarbonCapacity, Amount::Ratio(x)) => format!("{} g/kg", self.decimal(x * 1000.0, 2)),
            (LifeName::BedVolumes, Amount::Ratio(x)) => self.decimal(x, 0),
            (_, amount) => self.amount(amount),
        }
    }

    /// The expected life, with its range.
    #[must_use]
    pub fn expected_life(&self, expected: &Expected) -> String {
        let mut text = self.lifetime(expected.time.value);
        if let Some(longest) = &expected.longest {
            let longest = self.lifetime(longest.value);
            if longest != text {
                text =
                    format!("{text}, {} {longest} {}", self.label(LifeLabel::UpTo), self.label(LifeLabel::WhereSlowed));
            }
        }
        text
    }

    /// The input that changes it most.
    #[must_use]
    pub fn changes_most(&self, expected: &Expected) -> Option<String> {
        let first: &LifeSensitivity = expected.decides.first()?;
        let how = match (first.term, expected.limited_by) {
            (Term::Ph, _) => LifeLabel::TenthPh,
            (_, LimitedBy::Age) => LifeLabel::RegeneratesEvery,
            _ => LifeLabel::TenthMore,
        };
        let by = (first.more - 1.0) * 100.0;
        let turn = if by > 0.5 {
            LifeLabel::Longer
        } else if by < -0.5 {
            LifeLabel::Shorter
        } else {
            let unchanged = [self.label(how), " ", self.label(LifeLabel::Unchanged)].concat();
            return Some(self.named(self.term(first.term), &unchanged));
        };
        let changed = [self.label(how), " ", &self.decimal(by.abs(), 0), " % ", self.label(turn)].concat();
        Some(self.named(self.term(first.term), &changed))
    }

    /// What ends it.
    #[must_use]
    pub fn limit_of(&self, expected: &Expected) -> &'static str {
        self.label(limited_by(expected.limited_by))
    }

    /// What it takes in a year.
    #[must_use]
    pub fn year_of(&self, life: &LifeAnswers) -> Option<String> {
        let year = &life.year;
        let mut parts = Vec::new();
        if let Some(packs) = &year.packs {
            parts.push(format!("{} {}", self.decimal(packs.value, 1), self.label(LifeLabel::PacksWord)));
        }
        if let Some(media) = &year.media {
            parts.push(format!("{} {}", self.mass(media.value), self.label(LifeLabel::MediaWord)));
        }
        if let Some(salt) = &year.salt {
            parts.push(format!("{} {}", self.mass(salt.value), self.label(LifeLabel::SaltWord)));
        }
        if let Some(water) = &year.wash_water {
            let what = if year.salt.is_some() { LifeLabel::RegenerationWater } else { LifeLabel::WashWaterWord };
            parts.push(format!("{} {}", self.water_volume(water.value), self.label(what)));
        }
        (!parts.is_empty()).then(|| parts.join(" · "))
    }

    /// How long a bed lasts, what ends it and what it takes in a year, in one line for a quote; nothing where nothing is
    /// known. `count` is how many such vessels there are.
    #[must_use]
    pub fn life_quoted(&self, life: &LifeAnswers, count: u32) -> Option<String> {
        let lasts = life.expected.as_ref().map(|expected| {
            [self.label(LifeLabel::Lasts), " ", &self.expected_life(expected), " (", self.limit_of(expected), ")"]
                .concat()
        });
        let year = self.year_of(life).map(|year| {
            let each = if count > 1 { [" ", self.label(LifeLabel::EachOf)].concat() } else { String::new() };
            [self.label(LifeLabel::InYearQuoted), &each, self.colon(), &year].concat()
        });
        let grounds = (!life.grounds.is_empty())
            .then(|| self.sentence(LifeLabel::GroundsSaid, &[("grounds", life.grounds.trim_end_matches('.'))]));
        let grounds = grounds.filter(|_| lasts.is_some());
        let parts: Vec<String> = [lasts, year, grounds].into_iter().flatten().collect();
        (!parts.is_empty()).then(|| [&parts.join("; "), "."].concat())
    }

    /// Which entries are needed first, or that one makes no sense.
    #[must_use]
    pub fn life_missing(&self, life: &LifeAnswers, whole: bool) -> Option<String> {
        if !whole {
            return Some(self.label(LifeLabel::LifeWaits).to_owned());
        }
        let names: Vec<&str> = life.missing.iter().map(|field| self.water_field(*field)).collect();
        (!names.is_empty()).then(|| format!("{} {}.", self.label(LifeLabel::ToSay), names.join(", ")))
    }

    /// What a figure of a bed's life is called.
    #[must_use]
    pub fn life_name(&self, name: LifeName) -> &'static str {
        self.label(life_name(name))
    }
}
