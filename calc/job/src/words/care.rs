//! Sentences of the service card and of the due list.

use bedwright_calc::life::{MediaLoss, Surface};
use bedwright_calc::material::Pack;
use bedwright_calc::quantity::{Amount, Length, Pressure, Volume, metres};

use super::{CardLabel, CareLabel, Label, Manner, label};
use crate::care::card::{Card, CareMark, CareReason, HowLong};
use crate::care::forecast::{Forecast, NotYet};
use crate::care::question::{Asked, Question};
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
        self.reason_english(reason)
    }

    fn reason_english(&self, reason: &CareReason) -> String {
        let (test, on) = (|value: f64, unit: TestUnit| self.test(value, unit), |day: &Day| day.text());
        match reason {
            CareReason::OutletShows { outlet, unit, day, since } => {
                let first = if since == day {
                    "the first that isn't nought".to_owned()
                } else {
                    format!("not nought since {}", on(since))
                };
                format!("The outlet showed {} on {}: {first}. The bed is being spent.", test(*outlet, *unit), on(day))
            }
            CareReason::OutletAboveLimit { outlet, limit, unit, day } => {
                format!(
                    "The outlet showed {} on {}, above its limit of {}.",
                    test(*outlet, *unit),
                    on(day),
                    test(*limit, *unit)
                )
            }
            CareReason::Regenerate { outlet, unit, day } => format!(
                "The outlet showed {} on {}. Look at salt and settings and regenerate, then test again, before media are ordered.",
                test(*outlet, *unit),
                on(day)
            ),
            CareReason::LifeOver { long, day } => match long {
                HowLong::Typed { months } => {
                    format!("The bed was {months} months old on {}. That is as long as it may be used.", on(day))
                }
                HowLong::Usual { months, source, .. } => format!(
                    "The bed was {months} months old on {}. That is as long as such a bed is usually used ({}).",
                    on(day),
                    self.source(*source)
                ),
                HowLong::Worked { time, limited_by } => format!(
                    "By its water and the bed it lasted {}, to {}: {}.",
                    self.lifetime(*time),
                    on(day),
                    self.label(label::life::limited_by(*limited_by))
                ),
            },
            CareReason::WaterOver => "As much water went through the bed as may.".to_owned(),
            CareReason::LimitPassed { day } => {
                format!("By its tests the outlet reached its limit about {}.", on(day))
            }
            CareReason::Leak => "Something leaks.".to_owned(),
            CareReason::Grains => "Grains came with the backwash: set it lower, and look again.".to_owned(),
            CareReason::Cloudy => "The drain was still cloudy at the end: backwash until it runs clear.".to_owned(),
            CareReason::MediaLost { packs } => {
                format!("Media is lost: bring {} of a pack.", self.decimal(*packs, 1))
            }
            CareReason::DueSoon { day, fill_up: false } => format!("A new bed is due on {}: bring it along.", on(day)),
            CareReason::DueSoon { day, fill_up: true } => {
                format!("The bed is to be filled up by {}: bring what has dissolved.", on(day))
            }
            CareReason::NeverTested => "The outlet of this bed was never tested.".to_owned(),
            CareReason::VisitOverdue { day } => format!("The visit was due on {}.", on(day)),
            CareReason::AllWell { next } => {
                format!("All that was read is as it should be. Next visit by {}.", on(next))
            }
        }
    }

    /// A question about a reading, in a sentence that says what becomes of it.
    #[must_use]
    pub fn question(&self, question: &Question) -> String {
        format!("{}: {}", question.day, self.asked_english(&question.asked))
    }

    fn asked_english(&self, asked: &Asked) -> String {
        match asked {
            Asked::DayToCome => {
                "Is the day right? It is still to come, or is none. The visit is kept and counts from that \
                                 day on."
                    .to_owned()
            }
            Asked::OutletAboveInlet { outlet, inlet, unit } => format!(
                "Were the two tests swapped? The outlet shows {}, the inlet {}. A reading at the inlet or above stays out of \
                 the curve.",
                self.test(*outlet, *unit),
                self.test(*inlet, *unit)
            ),
            Asked::PressureRose { before, after } => self.sentence(
                CardLabel::PressureRose,
                &[("before", &self.pressure(*before)), ("after", &self.pressure(*after))],
            ),
            Asked::MeterFell => {
                "Was the meter misread, or replaced? It shows less than before. The reading is kept and \
                                 doesn't count; write down a replaced meter as such."
                    .to_owned()
            }
            Asked::OtherUnit { unit } => format!(
                "Is {} the right unit? It can't be compared with that of the latest test. These tests are kept and stay out \
                 of the curve.",
                unit.symbol()
            ),
            Asked::SurfaceRose { by } => format!(
                "Was it read in the same state? The surface lies {} higher than the first time: less freeboard. Carbon often \
                 reads higher after its first backwash; otherwise media were added, or the tape was read to something else.",
                self.tape(*by)
            ),
            Asked::TapeOutside { tape } => {
                format!("Is it from the rim down to the media? {} lies outside this vessel's bed.", self.tape(*tape))
            }
            Asked::Unread { field, misread } => {
                format!("{}: {}", self.visit_field(*field), self.misread(misread, Unit::One))
            }
        }
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
        self.forecast_english(forecast)
    }

    fn forecast_english(&self, forecast: &Forecast) -> String {
        let waits = self.label(CareLabel::NotDeterminable);
        match &forecast.reached {
            Ok(reached) => {
                let day = |day: Option<Day>| day.map_or_else(|| "–".to_owned(), Day::text);
                format!(
                    "Likely about {}; between {} and {} a test reads the limit (nine of ten).",
                    day(reached.likely),
                    day(reached.low),
                    day(reached.high)
                )
            }
            Err(NotYet::NothingFound { tests }) => format!(
                "{waits} {tests} {} showed nothing so far: as long as the front hasn't come no curve can tell when it will.",
                if *tests == 1 { "test" } else { "tests" }
            ),
            Err(NotYet::NoInlet) => {
                format!("{waits} The inlet was never tested, so nothing says how much comes through.")
            }
            Err(NotYet::Limit) => format!("{waits} The limit must lie between nothing and the inlet."),
            Err(NotYet::Problem(problem)) => format!("{waits} {}", self.curve_problem(problem)),
        }
    }

    fn curve_problem(&self, problem: &bedwright_calc::quantity::Problem) -> String {
        use bedwright_calc::quantity::Term;
        match problem.term {
            Term::Readings => "Three tests that show something, and less than the inlet, are the least.".to_owned(),
            Term::ReadingPlace => "The tests were all made at one time.".to_owned(),
            Term::Trend => "The tests that show something don't rise clearly yet.".to_owned(),
            Term::OutletLimit => "The limit is lost in the scatter of the tests.".to_owned(),
            _ => self.problem(problem),
        }
    }

    /// What two tape readings of one state say.
    #[must_use]
    pub fn media_loss(&self, compared: &Compared) -> String {
        let loss = match &compared.loss {
            Ok(loss) => loss,
            Err(problem) => return self.problem(problem),
        };
        self.loss_english(compared, loss)
    }

    fn loss_english(&self, compared: &Compared, loss: &MediaLoss) -> String {
        let between = format!(
            "{} on {}, {} on {}",
            self.tape(compared.first.tape),
            compared.first.day.text(),
            self.tape(compared.latest.tape),
            compared.latest.day.text()
        );
        let size = |length: Length| self.tape(metres(length.value.abs()));
        match loss.surface {
            Surface::AsBefore => {
                format!("{between}: {} {}", self.label(CareLabel::NoTopUp), self.spread(loss.spread))
            }
            Surface::Higher => {
                format!(
                    "{between}: the surface lies {} higher than settling explains ({}).",
                    size(loss.length.value),
                    self.spread(loss.spread)
                )
            }
            Surface::Lower => {
                let (material, pack) = &compared.of;
                let packs = loss.packs.as_ref().zip(Pack::of(pack)).map_or_else(String::new, |(packs, pack)| {
                    format!(", {} of a {}", self.decimal(packs.value, 2), self.pack(&pack))
                });
                format!(
                    "{between}: {} lower than settling explains ({}). Lost: {} or {} of {}{packs}.",
                    size(loss.length.value),
                    self.spread(loss.spread),
                    self.volume(loss.volume.value),
                    self.mass(loss.mass.value),
                    self.material(material)
                )
            }
        }
    }

    /// What was assumed of a bed's life before it was read, and when readings take over.
    #[must_use]
    pub fn assumed_life(&self, card: &Card) -> String {
        let Some(life) = card.life else {
            return {
                "No usual life is known for such a bed. Type after how many months, or how much water, it \
                                      is changed."
                    .to_owned()
            };
        };
        let mut text = match life.long {
            HowLong::Usual { low_months, months, source } => {
                format!("{low_months} to {months} months ({}).", self.source(source))
            }
            HowLong::Typed { months } => format!("{months} months, as typed."),
            HowLong::Worked { time, limited_by } => format!(
                "{} by its water and the bed: {}.",
                self.lifetime(time),
                self.label(label::life::limited_by(limited_by))
            ),
        };
        text.push(' ');
        text.push_str(match (&card.forecast.reached, life.long) {
            (Ok(_), HowLong::Typed { .. }) => "The tests say when; what was typed holds besides.",
            (Ok(_), _) => self.label(CareLabel::TakesOver),
            (Err(_), _) => "Readings take over as soon as three tests show something and a curve goes through them.",
        });
        text
    }

    /// What a due list's line or a calendar's entry is called.
    #[must_use]
    pub fn due_what(&self, card: &Card, new_bed: bool) -> String {
        let what = self.label(if new_bed { CareLabel::NewBedWord } else { CareLabel::VisitWord });
        let tag = if card.place.tag.is_empty() { self.label(CareLabel::Untagged) } else { &card.place.tag };
        [tag, ": ", what].concat()
    }
}
