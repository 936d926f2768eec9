//! What the card of a tag says: the front answer first, and everything behind it.

use std::sync::Arc;

use bedwright_calc::hydraulics::Purpose;
use bedwright_calc::life::{Surface, UsualLife};
use bedwright_calc::quantity::{Assumption, Source, Time};

use super::bed_life::{BedLife, Lives};
use super::forecast::{Forecast, Reached, forecast};
use super::happened::{Expected, Place, expected_of};
use super::question::{Question, questions};
use super::run::{SeenRun, seen_run};
use super::seen::{Seen, seen};
use super::surface::{SurfaceAnswer, surface};
use super::visit::{Drain, Test, TestUnit, Visit, VisitField, read_test};
use crate::answers::VesselAnswers;
use crate::answers::life::{Expected as BedExpected, LimitedBy};
use crate::day::Day;
use crate::entry::{Dimension, Entry};
use crate::id::Id;
use crate::job::Job;

/// How a bed stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CareMark {
    /// Nothing to do before the next visit is due.
    Fine,
    /// Something to do on the next visit.
    NextVisit,
    /// New media are to be ordered now.
    OrderNow,
}

/// Why.
#[derive(Clone, Debug, PartialEq)]
pub enum CareReason {
    /// The outlet shows something: the first that isn't nought.
    OutletShows {
        /// What.
        outlet: f64,
        /// In this unit.
        unit: TestUnit,
        /// When.
        day: Day,
        /// Since when it has shown something at every test.
        since: Day,
    },
    /// The outlet shows more than its limit.
    OutletAboveLimit {
        /// What.
        outlet: f64,
        /// The limit.
        limit: f64,
        /// In this unit.
        unit: TestUnit,
        /// When.
        day: Day,
    },
    /// A bed that is regenerated lets something through: salt, settings and a regeneration first.
    Regenerate {
        /// What.
        outlet: f64,
        /// In this unit.
        unit: TestUnit,
        /// When.
        day: Day,
    },
    /// The bed is as old as a bed may be.
    LifeOver {
        /// How old that is, and how it is known.
        long: HowLong,
        /// When it was reached.
        day: Day,
    },
    /// As much water went through as may.
    WaterOver,
    /// The curve through the tests has passed the limit.
    LimitPassed {
        /// The likely day.
        day: Day,
    },
    /// Something leaks.
    Leak,
    /// Grains came with the backwash.
    Grains,
    /// The drain was still cloudy at the end.
    Cloudy,
    /// Media are lost.
    MediaLost {
        /// Packs of them.
        packs: f64,
    },
    /// A new bed is due before the visit after the next.
    DueSoon {
        /// When.
        day: Day,
        /// Whether it is only filled up: what it lost has dissolved.
        fill_up: bool,
    },
    /// The outlet was never tested on this bed.
    NeverTested,
    /// The visit is overdue.
    VisitOverdue {
        /// It was due then.
        day: Day,
    },
    /// Everything that was read is as it should be.
    AllWell {
        /// The next visit.
        next: Day,
    },
}

/// How long a bed lasts, before any reading says more.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum HowLong {
    /// As long as somebody typed.
    Typed {
        /// Months after which it is changed.
        months: u32,
    },
    /// As long as its water and the bed say.
    Worked {
        /// The likely time.
        time: Time,
        /// What ends it.
        limited_by: LimitedBy,
    },
    /// As long as such a bed usually lasts.
    Usual {
        /// Months it lasts at the least.
        low_months: u32,
        /// Months after which it is changed.
        months: u32,
        /// Where that comes from.
        source: Source,
    },
}

impl HowLong {
    /// What is typed goes before everything. Of what is worked out and what is usual the shorter holds: a bed is also
    /// changed for what no capacity tells.
    fn of(typed: Option<u32>, worked: Option<&BedExpected>, purpose: Purpose) -> Option<HowLong> {
        if let Some(months) = typed {
            return Some(HowLong::Typed { months });
        }
        let usual = UsualLife::of(purpose);
        if let Some(worked) = worked
            && usual.is_none_or(|usual| worked.time.value.value < f64::from(usual.high_months) * SECONDS_A_MONTH)
        {
            return Some(HowLong::Worked { time: worked.time.value, limited_by: worked.limited_by });
        }
        let usual = usual?;
        Some(HowLong::Usual { low_months: usual.low_months, months: usual.high_months, source: usual.source })
    }

    /// The day it ends, of a bed that was put in on this one.
    fn from(self, begun: Day) -> Option<Day> {
        match self {
            HowLong::Typed { months } | HowLong::Usual { months, .. } => Some(begun.plus_months(months)),
            HowLong::Worked { time, .. } => Day::numbered(begun.number() + time.value / SECONDS_A_DAY),
        }
    }

    const fn is_typed(self) -> bool {
        matches!(self, HowLong::Typed { .. })
    }

    const fn is_filled_up(self) -> bool {
        matches!(self, HowLong::Worked { limited_by: LimitedBy::Dissolving, .. })
    }
}

const SECONDS_A_DAY: f64 = 86_400.0;
const SECONDS_A_MONTH: f64 = 365.25 / 12.0 * SECONDS_A_DAY;

/// When a bed ends, before any reading says more.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CalendarLife {
    /// How long it lasts.
    pub long: HowLong,
    /// The day it ends; nothing where nobody wrote down when the bed was put in.
    pub ends: Option<Day>,
}

/// The card of a tag.
#[derive(Clone, Debug, PartialEq)]
pub struct Card {
    /// Where.
    pub place: Place,
    /// The bed that stands there; one of which nothing is known where nothing was written down.
    pub bed: Arc<BedLife>,
    /// Beds that stood there before, the latest first: when they were put in and taken out.
    pub before: Vec<(Option<Day>, Option<Day>)>,
    /// What the bed is there for.
    pub purpose: Purpose,
    /// What is expected of it.
    pub expected: Expected,
    /// How long it lasts by the calendar; nothing where nobody knows.
    pub life: Option<CalendarLife>,
    /// Water through it, m³.
    pub water: Option<f64>,
    /// Water over the bed's volume.
    pub bed_volumes: Option<f64>,
    /// The day by which as much water went through as may.
    pub water_ends: Option<Day>,
    /// What its tests say.
    pub forecast: Forecast,
    /// What its tape readings say.
    pub surface: SurfaceAnswer,
    /// What meter and pressures showed from visit to visit.
    pub seen: Vec<Seen>,
    /// What its pressures say of how long it runs from wash to wash; nothing where no visit says how long ago that was.
    pub run: Option<SeenRun>,
    /// What is asked about.
    pub questions: Vec<Question>,
    /// Visits whose meter shows less than before.
    pub fell: Vec<Id>,
    /// Visits whose day is still to come.
    pub waiting: Vec<Visit>,
    /// When the next visit is due.
    pub next_visit: Day,
    /// When a new bed is due, by whatever comes first; nothing where nothing tells.
    pub new_bed: Option<Day>,
    /// How it stands.
    pub mark: CareMark,
    /// Why.
    pub reason: CareReason,
}

impl Card {
    /// The latest visit that was made.
    #[must_use]
    pub fn latest(&self) -> Option<&Visit> {
        self.bed.visits.last()
    }

    /// Whether what is due next is a new bed; else it is a visit.
    #[must_use]
    pub fn is_new_bed_next(&self) -> bool {
        self.mark == CareMark::OrderNow || self.new_bed.is_some_and(|new_bed| new_bed <= self.next_visit)
    }

    /// The day something is due: today where media are to be ordered now.
    #[must_use]
    pub fn due(&self, today: Day) -> Day {
        match (self.mark, self.new_bed) {
            (CareMark::OrderNow, _) => today,
            (_, Some(new_bed)) => new_bed.min(self.next_visit),
            (_, None) => self.next_visit,
        }
    }
}

/// A whole number above nought of an entry that counts something, or a number of months.
fn whole(entry: Option<&Entry>) -> Option<u32> {
    let read = entry?.understood().ok()?;
    let whole = read.dimension == Dimension::Count && read.si.fract() == 0.0 && (1.0..=1200.0).contains(&read.si);
    whole.then_some(read.si as u32)
}

/// The card of a place.
///
/// `vessel` is what the vessel says, where it could be worked out; `worked` how long its bed lasts by the water and the bed,
/// where that could be; `purpose` what it is there for.
#[must_use]
pub fn card(
    job: &Job,
    lives: &Lives,
    place: &Place,
    today: Day,
    vessel: Option<&VesselAnswers>,
    worked: Option<&BedExpected>,
    purpose: Purpose,
) -> Card {
    let expected = expected_of(job, &place.vessel);
    let unknown = BedLife { begun: None, ended: None, as_loaded: None, stays: Vec::new(), visits: Vec::new() };
    let bed = lives.now_at(place).cloned().unwrap_or(unknown);
    let before = lives.beds.iter().rev().filter(|there| there.ended.is_some());
    let before = before.filter(|there| there.stays.last().is_some_and(|stay| stay.place == *place));
    let before = before.map(|there| (there.begun, there.ended)).collect();
    let life = HowLong::of(whole(expected.months.as_ref()), worked, purpose)
        .map(|long| CalendarLife { long, ends: bed.begun.and_then(|day| long.from(day)) });
    let forecast = forecast(lives, &bed, &expected);
    let surface = surface(&bed, vessel, &expected);
    let water = lives.water_through(&bed, today);
    let media = vessel.and_then(media_volume);
    let interval = whole(expected.visits.as_ref()).unwrap_or(Assumption::VisitIntervalMonths.ratio() as u32);
    let last = bed.visits.last().and_then(Visit::date).or(bed.begun);
    let fell = lives.water.iter().find(|(there, ..)| there == place);
    let fell = fell.map(|(_, water, ids)| water.fell.iter().filter_map(|at| ids.get(*at).cloned()).collect());
    let waiting = lives.waiting.iter().filter(|visit| visit.vessel == place.vessel && visit.tag == place.tag);
    let mut card = Card {
        place: place.clone(),
        before,
        purpose,
        bed_volumes: water.zip(media).map(|(water, media)| water / media),
        water_ends: water_ends(lives, &bed, &expected, today),
        water,
        life,
        forecast,
        surface,
        seen: seen(lives, &bed),
        run: seen_run(job, place, &bed),
        questions: Vec::new(),
        fell: fell.unwrap_or_default(),
        waiting: waiting.cloned().collect(),
        next_visit: last.map_or(today, |day| day.plus_months(interval)),
        new_bed: None,
        mark: CareMark::Fine,
        reason: CareReason::AllWell { next: today },
        expected,
        bed: Arc::new(bed),
    };
    card.new_bed = card.first_end();
    card.questions = questions(&card);
    (card.mark, card.reason) = card.judged(today);
    card
}

/// The volume of all media, m³.
fn media_volume(vessel: &VesselAnswers) -> Option<f64> {
    let media = vessel.planned.iter().zip(&vessel.layers);
    let media = media.filter(|(layer, _)| layer.role == bedwright_calc::fill::Role::Media);
    let volume: f64 = media.filter_map(|(_, answer)| answer.fill()).map(|fill| fill.volume.value.value).sum();
    (volume > 0.0).then_some(volume)
}

/// The day by which as much water went through a bed as may, at the rate of late.
fn water_ends(lives: &Lives, bed: &BedLife, expected: &Expected, today: Day) -> Option<Day> {
    let most = expected.water.as_ref()?.understood().ok().filter(|read| read.dimension == Dimension::Volume)?;
    let through = lives.water_through(bed, today)?;
    let place = &bed.stays.last()?.place;
    let rate = lives.water_at(place)?.rate_over(Assumption::RecentDays.ratio()).filter(|rate| *rate > 0.0)?;
    Day::numbered(today.number() + (most.si - through) / rate)
}

impl Card {
    fn reached(&self) -> Option<&Reached> {
        self.forecast.reached.as_ref().ok()
    }

    /// Whatever ends the bed first. Once the tests tell when, a usual life isn't asked any more; a typed one is.
    fn first_end(&self) -> Option<Day> {
        let told = self.reached().and_then(|reached| reached.low);
        let calendar = self.life.filter(|life| told.is_none() || life.long.is_typed()).and_then(|life| life.ends);
        [told, calendar, self.water_ends].into_iter().flatten().min()
    }

    fn latest_outlet(&self) -> Option<(&Visit, Test)> {
        self.bed.visits.iter().rev().find_map(|visit| Some((visit, visit.test(VisitField::Outlet)?)))
    }

    /// The day since which every test of the outlet has shown something.
    fn shows_since(&self) -> Option<Day> {
        let tests =
            self.bed.visits.iter().rev().filter_map(|visit| Some((visit.date()?, visit.test(VisitField::Outlet)?)));
        tests.take_while(|(_, test)| test.found()).last().map(|(day, _)| day)
    }

    fn judged(&self, today: Day) -> (CareMark, CareReason) {
        if let Some(reason) = self.order(today) {
            return (CareMark::OrderNow, reason);
        }
        if let Some(reason) = self.attend(today) {
            return (CareMark::NextVisit, reason);
        }
        (CareMark::Fine, CareReason::AllWell { next: self.next_visit })
    }

    fn order(&self, today: Day) -> Option<CareReason> {
        if let Some((visit, test)) = self.latest_outlet()
            && let Some(day) = visit.date()
        {
            let (outlet, unit) = (test.value, visit.unit);
            if test.found() && shows_nothing(self.purpose) {
                return Some(CareReason::OutletShows { outlet, unit, day, since: self.shows_since().unwrap_or(day) });
            }
            if let Some(limit) = self.limit_in(unit)
                && test.found()
                && outlet > limit
                && !regenerated(self.purpose)
            {
                return Some(CareReason::OutletAboveLimit { outlet, limit, unit, day });
            }
        }
        if let Some(life) = self.life
            && let Some(day) = life.ends.filter(|day| *day <= today)
            && (life.long.is_typed() || self.reached().and_then(|reached| reached.low).is_none())
        {
            return Some(CareReason::LifeOver { long: life.long, day });
        }
        if self.water_ends.is_some_and(|day| day <= today) {
            return Some(CareReason::WaterOver);
        }
        let passed = self.reached().and_then(|reached| reached.likely).filter(|day| *day <= today)?;
        (!regenerated(self.purpose)).then_some(CareReason::LimitPassed { day: passed })
    }

    fn attend(&self, today: Day) -> Option<CareReason> {
        let latest = self.latest();
        if latest.is_some_and(|visit| visit.leak == Some(true)) {
            return Some(CareReason::Leak);
        }
        if latest.is_some_and(|visit| visit.grains == Some(true)) {
            return Some(CareReason::Grains);
        }
        if let Some((visit, test)) = self.latest_outlet()
            && let Some(day) = visit.date()
            && regenerated(self.purpose)
            && test.found()
            && self.limit_in(visit.unit).is_none_or(|limit| test.value > limit)
        {
            return Some(CareReason::Regenerate { outlet: test.value, unit: visit.unit, day });
        }
        if let Some(compared) = &self.surface.compared
            && let Ok(loss) = &compared.loss
            && loss.surface == Surface::Lower
        {
            return Some(CareReason::MediaLost { packs: loss.packs.as_ref().map_or(0.0, |packs| packs.value) });
        }
        if let Some(day) = self.new_bed.filter(|day| *day <= self.next_visit.max(today)) {
            let fill_up = self.life.is_some_and(|life| life.long.is_filled_up() && life.ends == Some(day));
            return Some(CareReason::DueSoon { day, fill_up });
        }
        if shows_nothing(self.purpose) && self.latest_outlet().is_none() {
            return Some(CareReason::NeverTested);
        }
        if self.next_visit < today {
            return Some(CareReason::VisitOverdue { day: self.next_visit });
        }
        latest.is_some_and(|visit| visit.drain == Some(Drain::Cloudy)).then_some(CareReason::Cloudy)
    }

    /// The limit that was typed, in the unit of a test.
    fn limit_in(&self, unit: TestUnit) -> Option<f64> {
        let limit = read_test(self.expected.limit.as_ref()?).ok()?.value;
        if unit == self.expected.unit {
            return Some(limit);
        }
        Some(limit * self.expected.unit.milligrams_per_litre()? / unit.milligrams_per_litre()?)
    }
}

/// Whether the outlet of such a bed shows nothing while it works.
#[must_use]
pub const fn shows_nothing(purpose: Purpose) -> bool {
    matches!(purpose, Purpose::Dechlorination | Purpose::Chloramine | Purpose::Organics | Purpose::IronManganese)
}

/// Whether such a bed is regenerated on the spot.
#[must_use]
pub const fn regenerated(purpose: Purpose) -> bool {
    matches!(purpose, Purpose::Softening | Purpose::AnionExchange)
}
