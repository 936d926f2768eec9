//! Sentences of the service card and of the due list.

use bedwright_calc::life::{MediaLoss, Surface};
use bedwright_calc::material::Pack;
use bedwright_calc::quantity::{Amount, Pressure, Volume, metres};

use super::label::care_text::CareText as Text;
use super::label::life::limited_by;
use super::{CardLabel, CareLabel, Label, Manner};
use crate::care::card::{Card, CareMark, CareReason, HowLong};
use crate::care::forecast::{Forecast, NotYet};
use crate::care::question::{Asked, Question};
use crate::care::run::SeenRun;
use crate::care::surface::Compared;
use crate::care::visit::{Drain, Test, TestUnit, Visit, VisitField, read_test};
use crate::day::Day;
use crate::entry::Unit;

impl Manner {
    /// A mark in a word or two.
    #[must_use]
    pub fn care_mark(&self, mark: CareMark) -> &'static str {
        self.label(match mark {
            CareMark::Fine => CareLabel::Fine,
            CareMark::NextVisit => CareLabel::NextVisit,
            CareMark::OrderNow => CareLabel::OrderNow,
        })
    }

    /// The sign of a mark: never the colour alone.
    #[must_use]
    pub const fn care_sign(&self, mark: CareMark) -> &'static str {
        match mark {
            CareMark::Fine => "✓",
            CareMark::NextVisit => "→",
            CareMark::OrderNow => "!",
        }
    }

    /// What a test showed, with its unit.
    #[must_use]
    pub fn test(&self, value: f64, unit: TestUnit) -> String {
        [&self.decimal(value, 3), " ", unit.symbol()].concat()
    }

    /// Water in the large units of a meter: gallons, or cubic metres.
    #[must_use]
    pub fn water(&self, volume: Volume) -> String {
        if self.metric {
            format!("{} m³", self.decimal(volume.value, 1))
        } else {
            format!("{} gal", self.decimal(Unit::UsGallon.from_si(volume.value), 0))
        }
    }

    /// A pressure, or what is lost of one.
    #[must_use]
    pub fn pressure(&self, pressure: Pressure) -> String {
        self.amount(Amount::Pressure(pressure))
    }

    /// Why a bed stands as it does, in one sentence.
    #[must_use]
    pub fn care_reason(&self, reason: &CareReason) -> String {
        let test = |value: &f64, unit: &TestUnit| self.test(*value, *unit);
        let on = |text: Text, day: &Day| self.sentence(text, &[("day", &day.text())]);
        let text = match reason {
            CareReason::OutletShows { outlet, unit, day, since } => {
                let text = if since == day { Text::FirstShown } else { Text::ShownSince };
                let places = [("outlet", &*test(outlet, unit)), ("day", &day.text()), ("since", &since.text())];
                return self.sentence(text, &places);
            }
            CareReason::OutletAboveLimit { outlet, limit, unit, day } => {
                let places = [("outlet", &*test(outlet, unit)), ("day", &day.text()), ("limit", &test(limit, unit))];
                return self.sentence(Text::AboveLimit, &places);
            }
            CareReason::Regenerate { outlet, unit, day } => {
                return self.sentence(Text::Regenerate, &[("outlet", &test(outlet, unit)), ("day", &day.text())]);
            }
            CareReason::LifeOver { long, day } => return self.life_over(*long, *day),
            CareReason::LimitPassed { day } => return on(Text::LimitPassed, day),
            CareReason::MediaLost { packs } => {
                return self.sentence(Text::MediaLost, &[("packs", &self.decimal(*packs, 1))]);
            }
            CareReason::DueSoon { day, fill_up } => {
                return on(if *fill_up { Text::FillUpSoon } else { Text::DueSoon }, day);
            }
            CareReason::VisitOverdue { day } => return on(Text::VisitOverdue, day),
            CareReason::AllWell { next } => return self.sentence(Text::AllWell, &[("next", &next.text())]),
            CareReason::WaterOver => Text::WaterOver,
            CareReason::Leak => Text::Leak,
            CareReason::Grains => Text::Grains,
            CareReason::Cloudy => Text::Cloudy,
            CareReason::NeverTested => Text::NeverTested,
        };
        self.label(text).to_owned()
    }

    fn life_over(&self, long: HowLong, day: Day) -> String {
        let (text, months) = match long {
            HowLong::Typed { months } => (Text::TypedOver, months),
            HowLong::Usual { months, .. } => (Text::UsualOver, months),
            HowLong::Worked { time, limited_by: limit } => {
                let places =
                    [("time", &*self.lifetime(time)), ("day", &day.text()), ("why", self.label(limited_by(limit)))];
                return self.sentence(Text::WorkedOver, &places);
            }
        };
        let source = if let HowLong::Usual { source, .. } = long { self.source(source) } else { String::new() };
        self.sentence(text, &[("months", &months.to_string()), ("day", &day.text()), ("source", &source)])
    }

    /// A question about a reading, in a sentence that says what becomes of it.
    #[must_use]
    pub fn question(&self, question: &Question) -> String {
        self.named(&question.day.to_string(), &self.asked(&question.asked))
    }

    fn asked(&self, asked: &Asked) -> String {
        let text = match asked {
            Asked::DayToCome => Text::DayToCome,
            Asked::MeterFell => Text::MeterFell,
            Asked::OutletAboveInlet { outlet, inlet, unit } => {
                let (outlet, inlet) = (self.test(*outlet, *unit), self.test(*inlet, *unit));
                return self.sentence(Text::OutletAboveInlet, &[("outlet", &outlet), ("inlet", &inlet)]);
            }
            Asked::PressureRose { before, after } => {
                let (before, after) = (self.pressure(*before), self.pressure(*after));
                return self.sentence(CardLabel::PressureRose, &[("before", &before), ("after", &after)]);
            }
            Asked::OtherUnit { unit } => return self.sentence(Text::OtherUnit, &[("unit", unit.symbol())]),
            Asked::SurfaceRose { by } => return self.sentence(Text::SurfaceRose, &[("length", &self.tape(*by))]),
            Asked::TapeOutside { tape } => return self.sentence(Text::TapeOutside, &[("length", &self.tape(*tape))]),
            Asked::Unread { field, misread } => {
                return self.named(self.visit_field(*field), &self.misread(misread, Unit::One));
            }
        };
        self.label(text).to_owned()
    }

    /// The name of a number of a visit.
    #[must_use]
    pub fn visit_field(&self, field: VisitField) -> &'static str {
        self.label(match field {
            VisitField::Meter => CareLabel::Meter,
            VisitField::Inlet => CareLabel::Inlet,
            VisitField::Outlet => CareLabel::Outlet,
            VisitField::PressureIn => CareLabel::PressureIn,
            VisitField::PressureOut => CareLabel::PressureOut,
            VisitField::DrainFlow => CareLabel::DrainFlow,
            VisitField::SinceWash => CareLabel::SinceWash,
            VisitField::DrainMinutes => CareLabel::DrainMinutes,
            VisitField::Temperature => CareLabel::WaterTemperature,
            VisitField::Tape => CareLabel::Tape,
            VisitField::Salt => CareLabel::Salt,
        })
    }

    /// A number of a visit as it was read, with its unit; as typed where it makes no sense.
    #[must_use]
    pub fn visit_number(&self, visit: &Visit, field: VisitField) -> String {
        let Some(entry) = visit.entry(field) else { return String::new() };
        if matches!(field, VisitField::Inlet | VisitField::Outlet) {
            return match read_test(entry) {
                Ok(Test { value, below }) => [if below { "<" } else { "" }, &self.test(value, visit.unit)].concat(),
                Err(_) => entry.text.clone(),
            };
        }
        entry.understood().map_or_else(|_| entry.text.clone(), |read| self.echo(&read))
    }

    /// How the drain looked on a visit; nothing where nobody looked.
    #[must_use]
    pub fn drain_seen(&self, visit: &Visit) -> Option<&'static str> {
        let seen = match (visit.drain?, visit.grains) {
            (Drain::Clear, Some(true)) => CareLabel::DrainClearGrains,
            (Drain::Clear, _) => CareLabel::DrainClearNoGrains,
            (Drain::Cloudy, Some(true)) => CareLabel::DrainCloudyGrains,
            (Drain::Cloudy, _) => CareLabel::DrainCloudy,
        };
        Some(self.label(seen))
    }

    /// Whether something leaks, with what is asked.
    #[must_use]
    pub fn leak_seen(&self, leak: bool) -> String {
        [self.label(CareLabel::Leaks), " ", self.label(if leak { Label::Yes } else { Label::No })].concat()
    }

    /// What the tests say of when the limit is reached, in a sentence.
    #[must_use]
    pub fn forecast(&self, forecast: &Forecast) -> String {
        let waits = self.label(CareLabel::NotDeterminable);
        let because = |why: &str| [waits, " ", why].concat();
        match &forecast.reached {
            Ok(reached) => {
                let day = |day: Option<Day>| day.map_or_else(|| "–".to_owned(), Day::text);
                let places =
                    [("likely", &*day(reached.likely)), ("low", &day(reached.low)), ("high", &day(reached.high))];
                self.sentence(Text::ReachedAbout, &places)
            }
            Err(NotYet::NothingFound { tests: 0 }) => because(self.label(Text::NoTest)),
            Err(NotYet::NothingFound { tests }) => {
                let text = if *tests == 1 { Text::NothingFoundOnce } else { Text::NothingFound };
                self.sentence(text, &[("waits", waits), ("tests", &tests.to_string())])
            }
            Err(NotYet::NoInlet) => because(self.label(Text::NoInlet)),
            Err(NotYet::Limit) => because(self.label(Text::LimitBetween)),
            Err(NotYet::Problem(problem)) => because(&self.curve_problem(problem)),
        }
    }

    /// How long a filter runs from wash to wash by the pressures that were seen.
    #[must_use]
    pub fn seen_run(&self, run: &SeenRun) -> String {
        match run {
            SeenRun::NoTerminal => self.label(CardLabel::RunNoTerminal).to_owned(),
            SeenRun::Untold(problem) => self.problem(problem),
            SeenRun::Told(run, count) => {
                let time = self.lifetime(run.time.value);
                let said = self.sentence(CardLabel::RunSaid, &[("time", &time), ("count", &count.to_string())]);
                let range = run.range.map(|(low, high)| {
                    let ends = [("low", &*self.lifetime(low)), ("high", &self.lifetime(high))];
                    [" ", &self.sentence(CardLabel::RunRange, &ends)].concat()
                });
                said + &range.unwrap_or_default()
            }
        }
    }

    fn curve_problem(&self, problem: &bedwright_calc::quantity::Problem) -> String {
        use bedwright_calc::quantity::Term;
        let text = match problem.term {
            Term::Readings => Text::ThreeTests,
            Term::ReadingPlace => Text::OneTime,
            Term::Trend => Text::NoRise,
            Term::OutletLimit => Text::LostInScatter,
            _ => return self.problem(problem),
        };
        self.label(text).to_owned()
    }

    /// What two tape readings of one state say.
    #[must_use]
    pub fn media_loss(&self, compared: &Compared) -> String {
        match &compared.loss {
            Ok(loss) => self.loss(compared, loss),
            Err(problem) => self.problem(problem),
        }
    }

    fn loss(&self, compared: &Compared, loss: &MediaLoss) -> String {
        let (first, latest) = (self.tape(compared.first.tape), self.tape(compared.latest.tape));
        let between = [
            ("first", &*first),
            ("first_day", &compared.first.day.text()),
            ("latest", &latest),
            ("latest_day", &compared.latest.day.text()),
        ];
        let between = self.sentence(Text::Between, &between);
        let length = self.tape(metres(loss.length.value.value.abs()));
        let (material, pack) = &compared.of;
        let packs = loss.packs.as_ref().zip(Pack::of(pack));
        let text = match (loss.surface, &packs) {
            (Surface::AsBefore, _) => Text::AsBefore,
            (Surface::Higher, _) => Text::LiesHigher,
            (Surface::Lower, Some(_)) => Text::LiesLowerPacks,
            (Surface::Lower, None) => Text::LiesLower,
        };
        let (packs, pack) =
            packs.map_or_else(Default::default, |(packs, pack)| (self.decimal(packs.value, 2), self.pack(&pack)));
        let places = [
            ("between", &*between),
            ("said", self.label(CareLabel::NoTopUp)),
            ("spread", &self.spread(loss.spread)),
            ("length", &length),
            ("volume", &self.volume(loss.volume.value)),
            ("mass", &self.mass(loss.mass.value)),
            ("material", &self.material(material)),
            ("packs", &packs),
            ("pack", &pack),
        ];
        self.sentence(text, &places)
    }

    /// What was assumed of a bed's life before it was read, and when readings take over.
    #[must_use]
    pub fn assumed_life(&self, card: &Card) -> String {
        let Some(life) = card.life else { return self.label(Text::NoUsualLife).to_owned() };
        let assumed = match life.long {
            HowLong::Usual { low_months, months, source } => {
                let (low, high) = (low_months.to_string(), months.to_string());
                self.sentence(Text::UsualMonths, &[("low", &low), ("high", &high), ("source", &self.source(source))])
            }
            HowLong::Typed { months } => self.sentence(Text::TypedMonths, &[("months", &months.to_string())]),
            HowLong::Worked { time, limited_by: limit } => {
                let places = [("time", &*self.lifetime(time)), ("why", self.label(limited_by(limit)))];
                self.sentence(Text::WorkedLife, &places)
            }
        };
        let then = match (&card.forecast.reached, life.long) {
            (Ok(_), HowLong::Typed { .. }) => self.label(Text::TestsAndTyped),
            (Ok(_), _) => self.label(CareLabel::TakesOver),
            (Err(_), _) => self.label(Text::ReadingsTakeOver),
        };
        [&assumed, " ", then].concat()
    }

    /// What a due list's line or a calendar's entry is called.
    #[must_use]
    pub fn due_what(&self, card: &Card, new_bed: bool) -> String {
        let what = self.label(if new_bed { CareLabel::NewBedWord } else { CareLabel::VisitWord });
        let tag = if card.place.tag.is_empty() { self.label(CareLabel::Untagged) } else { &card.place.tag };
        self.named(tag, what)
    }
}
