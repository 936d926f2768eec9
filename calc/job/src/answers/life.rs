//! How long a vessel's bed lasts, what limits it, and what it takes in a year.

mod holding;
mod name;
mod neutralising;

use bedwright_calc::fill::{LayerFill, Role};
use bedwright_calc::hydraulics::{Arrangement, Purpose};
use bedwright_calc::life::limits::water_verdicts;
use bedwright_calc::life::sensitivity::LifeSensitivity;
use bedwright_calc::life::yearly::{media_in_year, packs_in_year, wash_water_in_year};
use bedwright_calc::quantity::{
    Amount, Concentration, Figure, Formula, Known, Length, Mass, MassDensity, Problem, Term, Time, Verdict, Volume,
    VolumeRate,
};

use super::VesselAnswers;
use super::water::WaterAnswers;
use crate::field::WaterField;
use crate::reading::life::LifeReading;
pub use name::LifeName;

/// What ends a bed's life.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LimitedBy {
    /// So much of it is dissolved that it must be filled up.
    Dissolving,
    /// It holds what it can.
    Capacity,
    /// One's own readings by depth.
    Readings,
    /// The resin's age, from memory.
    Age,
}

/// How long it lasts.
#[derive(Clone, Debug, PartialEq)]
pub struct Expected {
    /// The likely time.
    pub time: Figure<Time>,
    /// The longest that is likely, where more than one line was worked out.
    pub longest: Option<Figure<Time>>,
    /// What ends it.
    pub limited_by: LimitedBy,
    /// Which inputs would change it, the strongest first.
    pub decides: Vec<LifeSensitivity>,
}

/// What a vessel takes in a year; what a quote may count on.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Year {
    /// Media, by weight.
    pub media: Option<Figure<Mass>>,
    /// Packs of them.
    pub packs: Option<Figure<f64>>,
    /// Salt.
    pub salt: Option<Figure<Mass>>,
    /// Water for washing, or for brine and rinse at their most.
    pub wash_water: Option<Figure<Volume>>,
}

/// Everything that is said of a bed's life.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LifeAnswers {
    /// Figures with their names, in the order in which they are read.
    pub lines: Vec<(LifeName, Figure<Amount>)>,
    /// How long it lasts.
    pub expected: Option<Expected>,
    /// What it takes in a year.
    pub year: Year,
    /// Entries without which there is no answer.
    pub missing: Vec<WaterField>,
    /// What keeps some of it from being worked out.
    pub problems: Vec<Problem>,
    /// What was judged of the water.
    pub verdicts: Vec<Verdict>,
    /// Where what was typed of the bed comes from, in the person's words; empty where nobody said.
    pub grounds: String,
}

/// What a bed is worked out from besides its reading.
struct Bed<'a> {
    reading: &'a LifeReading,
    vessel: &'a VesselAnswers,
    water: &'a WaterAnswers,
    /// Volume of all media.
    volume: Known<Volume>,
    /// Water through one vessel on average.
    average: Option<Known<VolumeRate>>,
}

/// What the life of a vessel's bed is; nothing where its fill isn't known.
#[must_use]
pub fn life_answers(vessel: &VesselAnswers, water: &WaterAnswers) -> LifeAnswers {
    let mut answers = LifeAnswers::default();
    let reading = &water.reading.life;
    let Some(volume) = media_volume(vessel) else { return answers };
    let duty = &water.reading.duty;
    let sharing = match duty.arrangement {
        Arrangement::Parallel | Arrangement::TwinAlternating => f64::from(duty.vessels.max(1)),
        Arrangement::Single | Arrangement::LeadLag => 1.0,
    };
    let average = reading.daily_use.map(|known| Known { value: known.value / sharing, ..known });
    let bed = Bed { reading, vessel, water, volume, average };
    if average.is_none() {
        answers.missing.push(WaterField::DailyUse);
    }
    answers.verdicts = water_verdicts(water.reading.purpose, &found_in_water(reading));
    let done = match water.reading.purpose {
        Purpose::Neutralising => answers.neutralising(&bed),
        Purpose::Softening => answers.softening(&bed),
        Purpose::Dechlorination | Purpose::Chloramine => answers.chlorine(&bed),
        Purpose::Organics => answers.organics(&bed),
        Purpose::Sediment => answers.sediment(&bed),
        Purpose::IronManganese => answers.iron(&bed),
        Purpose::AnionExchange | Purpose::Other => answers.holding(&bed, reading.inlet, reading.outlet),
    };
    if let Err(problem) = done {
        answers.problems.push(problem);
    }
    answers.wash(&bed);
    answers
}

/// Volume of all media of a vessel.
fn media_volume(vessel: &VesselAnswers) -> Option<Known<Volume>> {
    let mut sum: Option<Known<Volume>> = None;
    for (layer, answer) in vessel.planned.iter().zip(&vessel.layers) {
        let fill = answer.fill()?;
        if layer.role == Role::Media {
            let this = fill.volume.known();
            sum = Some(match sum {
                Some(sum) => Known { value: sum.value + this.value, basis: sum.basis.weaker(this.basis), ..sum },
                None => this,
            });
        }
    }
    sum
}

fn found_in_water(reading: &LifeReading) -> Vec<(Term, Known<Amount>)> {
    let mut found = Vec::new();
    let mut put = |term: Term, known: Option<Known<Amount>>| found.extend(known.map(|known| (term, known)));
    put(Term::Ph, reading.ph.as_ref().map(any));
    put(Term::CalciumHardness, reading.calcium.as_ref().map(any));
    put(Term::Alkalinity, reading.alkalinity.as_ref().map(any));
    put(Term::Iron, reading.iron.as_ref().map(any));
    put(Term::Aluminium, reading.aluminium.as_ref().map(any));
    put(Term::Turbidity, reading.turbidity.as_ref().map(any));
    found
}

fn any<Q: Copy + Into<Amount>>(known: &Known<Q>) -> Known<Amount> {
    Known { value: known.value.into(), basis: known.basis, source: known.source }
}

impl LifeAnswers {
    fn put<Q: Copy + Into<Amount>>(&mut self, name: LifeName, figure: &Figure<Q>) {
        self.lines.push((
            name,
            Figure {
                value: figure.value.into(),
                formula: figure.formula,
                inputs: figure.inputs.clone(),
                basis: figure.basis,
                cautions: figure.cautions.clone(),
            },
        ));
    }

    fn needs<Q: Copy>(&mut self, known: Option<Known<Q>>, field: WaterField) -> Option<Known<Q>> {
        if known.is_none() && !self.missing.contains(&field) {
            self.missing.push(field);
        }
        known
    }

    /// The bed is changed when it has lasted: its media and their packs over a year.
    fn expect(&mut self, bed: &Bed, expected: Expected) {
        let life = expected.time.known();
        if let (Some(mass), Some(packs)) = (media_mass(bed.vessel), media_packs(bed.vessel)) {
            self.year.media = Some(media_in_year(&mass, &life));
            self.year.packs = Some(packs_in_year(&packs, &life));
        }
        self.expected = Some(expected);
    }

    /// Water that washing takes in a year, where the bed is washed and it is known how long and how often.
    fn wash(&mut self, bed: &Bed) {
        let run = |wanted: LifeName| {
            let (_, figure) = self.lines.iter().find(|(name, _)| *name == wanted)?;
            let Amount::Time(time) = figure.value else { return None };
            Some(Known { value: time, basis: figure.basis, source: figure.formula.source() })
        };
        // What was typed goes before what was seen, and that before what is worked out.
        let interval = bed.reading.wash_interval.or(run(LifeName::RunByDrop)).or(run(LifeName::RunLength));
        let setting = bed.water.backwash.as_ref().and_then(|washed| washed.settings.get(washed.chosen?));
        let (Some(interval), Some(minutes), Some(setting)) = (interval, bed.reading.wash_time, setting) else { return };
        if interval.value.value > 0.0 && minutes.value.value > 0.0 && self.year.wash_water.is_none() {
            let one = Figure::new(
                setting.flow.value * minutes.value,
                Formula::WashWater,
                vec![setting.flow.input(Term::BackwashFlow), minutes.input(Term::Minutes)],
            );
            self.year.wash_water = Some(wash_water_in_year(&[&one], &interval));
        }
    }
}

fn scaled(known: Known<Concentration>, factor: f64) -> Known<Concentration> {
    let value = Concentration::kilograms_per_cubic_metre(known.value.to_kilograms_per_cubic_metre() * factor);
    Known { value, ..known }
}

/// Something summed over the layers of media; none where one isn't known.
fn over_media<Q: Copy + std::ops::Add<Output = Q>>(
    vessel: &VesselAnswers,
    read: impl Fn(&LayerFill) -> Known<Q>,
) -> Option<Known<Q>> {
    let mut sum: Option<Known<Q>> = None;
    for (layer, answer) in vessel.planned.iter().zip(&vessel.layers) {
        let this = read(answer.fill()?);
        if layer.role == Role::Media {
            sum = Some(match sum {
                Some(sum) => Known { value: sum.value + this.value, basis: sum.basis.weaker(this.basis), ..sum },
                None => this,
            });
        }
    }
    sum
}

fn media_mass(vessel: &VesselAnswers) -> Option<Known<Mass>> {
    over_media(vessel, |fill| fill.mass.known())
}

fn media_packs(vessel: &VesselAnswers) -> Option<Known<f64>> {
    over_media(vessel, |fill| fill.packs.known())
}

fn media_depth(vessel: &VesselAnswers) -> Option<Known<Length>> {
    over_media(vessel, |fill| fill.depth_axis.known())
}

/// Dry mass over volume of all media.
fn media_density(vessel: &VesselAnswers) -> Option<Known<MassDensity>> {
    let (mass, volume) = (media_mass(vessel)?, media_volume(vessel)?);
    Some(Known { value: mass.value / volume.value, basis: mass.basis.weaker(volume.basis), source: mass.source })
}
