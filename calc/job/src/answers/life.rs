//! How long a vessel's bed lasts, what limits it, and what it takes in a year.

mod neutralising;

use bedwright_calc::fill::Role;
use bedwright_calc::hydraulics::{Arrangement, Purpose};
use bedwright_calc::life::capacity::{HoldingBed, depth_line, holding_life, water_until_full};
use bedwright_calc::life::carbon::{
    Freundlich, bed_volumes_until, capacity_of, carbon_use, chlorine_left, contact_time_needed, half_time,
};
use bedwright_calc::life::limits::water_verdicts;
use bedwright_calc::life::oxidant::{Oxidant, oxidant_demand};
use bedwright_calc::life::sensitivity::{LifeSensitivity, sensitivities};
use bedwright_calc::life::softening::{Softener, softened};
use bedwright_calc::life::yearly::{media_in_year, packs_in_year, wash_water_in_year};
use bedwright_calc::quantity::{
    Amount, Assumption, Concentration, Figure, Known, Problem, Term, Time, Verdict, Volume, VolumeRate,
};

use super::VesselAnswers;
use super::water::WaterAnswers;
use crate::field::WaterField;
use crate::reading::life::LifeReading;

/// What a figure of a bed's life is called.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LifeName {
    /// Calcite the water could take up.
    ToSaturation,
    /// Calcite it takes up in passing.
    Calcite,
    /// Magnesia it takes up in passing.
    Magnesia,
    /// Free carbon dioxide of the water that comes.
    Dioxide,
    /// Saturation index of the water that comes.
    IndexBefore,
    /// Hardness of the water that comes.
    HardnessBefore,
    /// pH of the water that leaves.
    PhAfter,
    /// The same where films slow the bed.
    PhSlowed,
    /// The same at the highest flow.
    PhPeak,
    /// pH after standing.
    PhStanding,
    /// Its hardness.
    HardnessAfter,
    /// Its alkalinity.
    AlkalinityAfter,
    /// Its saturation index.
    IndexAfter,
    /// Calcite in a month.
    CalciteMonth,
    /// Magnesia in a month.
    MagnesiaMonth,
    /// How much deeper filling up makes the bed.
    RefillDepth,
    /// Contact time that halves chlorine.
    HalfTime,
    /// Chlorine that leaves.
    ChlorineLeft,
    /// Contact time that is needed.
    ContactTimeNeeded,
    /// What carbon holds.
    CarbonCapacity,
    /// Bed volumes until it is used.
    BedVolumes,
    /// Carbon that a volume of water uses.
    CarbonUse,
    /// Service time that a metre of bed adds.
    TimePerMetre,
    /// Depth that adds none.
    CriticalDepth,
    /// Service time of this bed by one's own readings.
    ServiceTime,
    /// What resin takes up.
    ResinCapacity,
    /// Hardness with iron counted.
    CompensatedHardness,
    /// Water until the bed is full, or between regenerations.
    Water,
    /// Time between regenerations.
    Regenerations,
    /// Salt for one.
    Salt,
    /// The least brine for one.
    BrineLow,
    /// The most brine for one.
    BrineHigh,
    /// The least rinse water for one.
    RinseLow,
    /// The most rinse water for one.
    RinseHigh,
    /// Time between two washes.
    RunLength,
    /// Oxygen that iron and manganese ask for.
    Oxygen,
    /// Chlorine that they ask for.
    ChlorineDemand,
    /// Permanganate that they ask for.
    Permanganate,
}

impl LifeName {
    /// Every one, in the order in which they are read.
    pub const ALL: &'static [LifeName] = &[
        LifeName::ToSaturation,
        LifeName::Calcite,
        LifeName::Magnesia,
        LifeName::Dioxide,
        LifeName::IndexBefore,
        LifeName::HardnessBefore,
        LifeName::PhAfter,
        LifeName::PhSlowed,
        LifeName::PhPeak,
        LifeName::PhStanding,
        LifeName::HardnessAfter,
        LifeName::AlkalinityAfter,
        LifeName::IndexAfter,
        LifeName::CalciteMonth,
        LifeName::MagnesiaMonth,
        LifeName::RefillDepth,
        LifeName::HalfTime,
        LifeName::ChlorineLeft,
        LifeName::ContactTimeNeeded,
        LifeName::CarbonCapacity,
        LifeName::BedVolumes,
        LifeName::CarbonUse,
        LifeName::TimePerMetre,
        LifeName::CriticalDepth,
        LifeName::ServiceTime,
        LifeName::ResinCapacity,
        LifeName::CompensatedHardness,
        LifeName::Water,
        LifeName::Regenerations,
        LifeName::Salt,
        LifeName::BrineLow,
        LifeName::BrineHigh,
        LifeName::RinseLow,
        LifeName::RinseHigh,
        LifeName::RunLength,
        LifeName::Oxygen,
        LifeName::ChlorineDemand,
        LifeName::Permanganate,
    ];
}

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
    pub media: Option<Figure<bedwright_calc::quantity::Mass>>,
    /// Packs of them.
    pub packs: Option<Figure<f64>>,
    /// Salt.
    pub salt: Option<Figure<bedwright_calc::quantity::Mass>>,
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

    fn softening(&mut self, bed: &Bed) -> Result<(), Problem> {
        let calcium = self.needs(bed.reading.calcium, WaterField::CalciumHardness);
        let (Some(calcium), Some(average)) = (calcium, bed.average) else { return Ok(()) };
        let mut hardness = calcium.value.to_kilograms_per_cubic_metre();
        let mut basis = calcium.basis;
        if let Some(magnesium) = bed.reading.magnesium {
            hardness += magnesium.value.to_kilograms_per_cubic_metre();
            basis = basis.weaker(magnesium.basis);
        }
        let hardness =
            Known { value: Concentration::kilograms_per_cubic_metre(hardness), basis, source: calcium.source };
        let softener = Softener {
            resin: bed.volume,
            salt_dose: bed.reading.salt_dose,
            capacity: bed.reading.resin_capacity,
            hardness,
            iron: bed.reading.iron,
            iron_factor: bed.reading.iron_factor,
            reserve: bed.reading.reserve,
            average,
        };
        let found = softened(&softener)?;
        self.put(LifeName::ResinCapacity, &found.capacity);
        self.put(LifeName::CompensatedHardness, &found.compensated);
        self.put(LifeName::Water, &found.water);
        self.put(LifeName::Regenerations, &found.interval);
        self.put(LifeName::Salt, &found.salt);
        self.put(LifeName::BrineLow, &found.brine.0);
        self.put(LifeName::BrineHigh, &found.brine.1);
        self.put(LifeName::RinseLow, &found.rinse.0);
        self.put(LifeName::RinseHigh, &found.rinse.1);
        let used = [&found.brine.1, &found.rinse.1];
        self.year.wash_water = Some(wash_water_in_year(&used, &found.interval.known()));
        self.year.salt = Some(found.salt_year);
        let age = Assumption::ResinLife.time();
        let time = Figure::new(age.value, bedwright_calc::quantity::Formula::Given, vec![age.input(Term::Life)]);
        // What decides is how often it regenerates: its age is from memory whatever the water.
        let decides = sensitivities(
            &[Term::Hardness, Term::AverageUse, Term::MediaVolume, Term::SaltDose, Term::Iron, Term::Reserve],
            |term, factor| {
                let mut changed = softener.clone();
                match term {
                    Term::Hardness => changed.hardness = scaled(changed.hardness, factor),
                    Term::AverageUse => changed.average.value = changed.average.value * factor,
                    Term::MediaVolume => changed.resin.value = changed.resin.value * factor,
                    Term::SaltDose => changed.salt_dose.value = changed.salt_dose.value * factor,
                    Term::Iron => changed.iron = Some(scaled(changed.iron?, factor)),
                    _ => changed.reserve.value *= factor,
                }
                Some(softened(&changed).ok()?.interval.value.value)
            },
        );
        self.expect(bed, Expected { time, longest: None, limited_by: LimitedBy::Age, decides });
        Ok(())
    }

    fn chlorine(&mut self, bed: &Bed) -> Result<(), Problem> {
        let reading = bed.reading;
        let chlorine = self.needs(reading.chlorine, WaterField::Chlorine);
        let half = match (reading.half_length, reading.test_velocity) {
            (Some(length), Some(velocity)) => {
                let half = half_time(&length, &velocity)?;
                self.put(LifeName::HalfTime, &half);
                Some(half)
            }
            (None, None) => None,
            (None, Some(_)) => {
                self.missing.push(WaterField::HalfLength);
                None
            }
            (Some(_), None) => {
                self.missing.push(WaterField::TestVelocity);
                None
            }
        };
        let usual = bed.water.service.as_ref().and_then(|service| service.usual.as_ref());
        if let (Some(chlorine), Some(half)) = (chlorine, &half) {
            if let Some(usual) = usual {
                let contact = usual.contact_time_pair.as_ref().unwrap_or(&usual.contact_time);
                let left = chlorine_left(&chlorine, &contact.known(), &half.known())?;
                self.put(LifeName::ChlorineLeft, &left);
            }
            if let Some(outlet) = reading.outlet {
                let needed = contact_time_needed(&chlorine, &outlet, &half.known())?;
                self.put(LifeName::ContactTimeNeeded, &needed);
            }
        }
        self.holding(bed, chlorine, reading.outlet)
    }

    fn organics(&mut self, bed: &Bed) -> Result<(), Problem> {
        let reading = bed.reading;
        let depth = media_depth(bed.vessel);
        if reading.readings.len() >= 2 {
            let line = depth_line(&reading.readings)?;
            self.put(LifeName::TimePerMetre, &line.per_metre);
            self.put(LifeName::CriticalDepth, &line.critical);
            if let Some(time) = depth.as_ref().and_then(|depth| line.service_time(depth)) {
                self.put(LifeName::ServiceTime, &time);
                let decides = Vec::new();
                self.expect(bed, Expected { time, longest: None, limited_by: LimitedBy::Readings, decides });
            }
        }
        let inlet = self.needs(reading.inlet, WaterField::InletConcentration);
        let factor = self.needs(reading.factor, WaterField::FreundlichFactor);
        let exponent = self.needs(reading.exponent, WaterField::FreundlichExponent);
        let (Some(inlet), Some(factor), Some(exponent)) = (inlet, factor, exponent) else { return Ok(()) };
        let isotherm = Freundlich { factor, exponent };
        let capacity = capacity_of(&isotherm, &inlet)?;
        self.put(LifeName::CarbonCapacity, &capacity);
        let Some(density) = media_density(bed.vessel) else { return Ok(()) };
        let volumes = bed_volumes_until(&capacity.known(), &density, &reading.usable, &inlet)?;
        self.put(LifeName::BedVolumes, &volumes);
        self.put(LifeName::CarbonUse, &carbon_use(&capacity.known(), &reading.usable, &inlet)?);
        let Some(average) = bed.average else { return Ok(()) };
        let held = |isotherm: &Freundlich, inlet: Known<Concentration>| -> Result<Known<Concentration>, Problem> {
            let share = capacity_of(isotherm, &inlet)?;
            let value = Concentration::kilograms_per_cubic_metre(share.value * density.value.value);
            Ok(Known { value, basis: share.basis.weaker(density.basis), source: share.formula.source() })
        };
        let whole = HoldingBed {
            volume: bed.volume,
            capacity: held(&isotherm, inlet)?,
            usable: reading.usable,
            inlet,
            outlet: Known { value: Concentration::default(), ..inlet },
            average,
        };
        let time = holding_life(&whole)?;
        let terms =
            [Term::InletConcentration, Term::FreundlichFactor, Term::AverageUse, Term::MediaVolume, Term::UsableShare];
        let decides = sensitivities(&terms, |term, factor| {
            let mut changed = whole.clone();
            match term {
                Term::InletConcentration => {
                    changed.inlet = scaled(changed.inlet, factor);
                    changed.capacity = held(&isotherm, changed.inlet).ok()?;
                }
                Term::FreundlichFactor => changed.capacity = scaled(changed.capacity, factor),
                Term::AverageUse => changed.average.value = changed.average.value * factor,
                Term::MediaVolume => changed.volume.value = changed.volume.value * factor,
                _ => changed.usable.value *= factor,
            }
            Some(holding_life(&changed).ok()?.value.value)
        });
        if self.expected.is_none() {
            self.expect(bed, Expected { time, longest: None, limited_by: LimitedBy::Capacity, decides });
        }
        Ok(())
    }

    fn sediment(&mut self, bed: &Bed) -> Result<(), Problem> {
        let reading = bed.reading;
        let solids = self.needs(reading.solids, WaterField::SuspendedSolids);
        let capacity = self.needs(reading.capacity, WaterField::MediaCapacity);
        let (Some(inlet), Some(capacity), Some(average)) = (solids, capacity, bed.average) else { return Ok(()) };
        let outlet = reading.outlet.unwrap_or(Known { value: Concentration::default(), ..inlet });
        // A wash empties it: all that it holds up to the terminal loss is used.
        let usable = Known { value: 1.0, ..reading.usable };
        let run = holding_life(&HoldingBed { volume: bed.volume, capacity, usable, inlet, outlet, average })?;
        self.put(LifeName::RunLength, &run);
        Ok(())
    }

    fn iron(&mut self, bed: &Bed) -> Result<(), Problem> {
        let reading = bed.reading;
        let iron = self.needs(reading.iron, WaterField::Iron);
        let none = Known::typed(Concentration::default());
        let (Some(iron), manganese) = (iron, reading.manganese.unwrap_or(none)) else { return Ok(()) };
        for (name, oxidant) in [
            (LifeName::Oxygen, Oxidant::Oxygen),
            (LifeName::ChlorineDemand, Oxidant::Chlorine),
            (LifeName::Permanganate, Oxidant::Permanganate),
        ] {
            self.put(name, &oxidant_demand(oxidant, &iron, &manganese)?);
        }
        let both = iron.value.to_kilograms_per_cubic_metre() + manganese.value.to_kilograms_per_cubic_metre();
        let inlet = Known {
            value: Concentration::kilograms_per_cubic_metre(both),
            basis: iron.basis.weaker(manganese.basis),
            source: iron.source,
        };
        self.holding(bed, Some(inlet), Some(none))
    }

    /// A bed that holds so much and no more, where its capacity was typed.
    fn holding(
        &mut self,
        bed: &Bed,
        inlet: Option<Known<Concentration>>,
        outlet: Option<Known<Concentration>>,
    ) -> Result<(), Problem> {
        let reading = bed.reading;
        let capacity = self.needs(reading.capacity, WaterField::MediaCapacity);
        let Some(inlet) = inlet else {
            if bed.water.reading.purpose == Purpose::Other || bed.water.reading.purpose == Purpose::AnionExchange {
                self.missing.push(WaterField::InletConcentration);
            }
            return Ok(());
        };
        let (Some(capacity), Some(average)) = (capacity, bed.average) else { return Ok(()) };
        let outlet = outlet.unwrap_or(Known { value: Concentration::default(), ..inlet });
        let whole = HoldingBed { volume: bed.volume, capacity, usable: reading.usable, inlet, outlet, average };
        self.put(LifeName::Water, &water_until_full(&whole)?);
        let time = holding_life(&whole)?;
        let terms =
            [Term::InletConcentration, Term::MediaCapacity, Term::AverageUse, Term::MediaVolume, Term::UsableShare];
        let decides = sensitivities(&terms, |term, factor| {
            let mut changed = whole.clone();
            match term {
                Term::InletConcentration => changed.inlet = scaled(changed.inlet, factor),
                Term::MediaCapacity => changed.capacity = scaled(changed.capacity, factor),
                Term::AverageUse => changed.average.value = changed.average.value * factor,
                Term::MediaVolume => changed.volume.value = changed.volume.value * factor,
                _ => changed.usable.value *= factor,
            }
            Some(holding_life(&changed).ok()?.value.value)
        });
        self.expect(bed, Expected { time, longest: None, limited_by: LimitedBy::Capacity, decides });
        Ok(())
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
        let interval = self.lines.iter().find(|(name, _)| *name == LifeName::RunLength).and_then(|(_, figure)| {
            let Amount::Time(time) = figure.value else { return None };
            Some(Known { value: time, basis: figure.basis, source: figure.formula.source() })
        });
        let interval = bed.reading.wash_interval.or(interval);
        let setting = bed.water.backwash.as_ref().and_then(|washed| washed.settings.get(washed.chosen?));
        let (Some(interval), Some(minutes), Some(setting)) = (interval, bed.reading.wash_time, setting) else { return };
        if interval.value.value > 0.0 && minutes.value.value > 0.0 && self.year.wash_water.is_none() {
            let one = Figure::new(
                setting.flow.value * minutes.value,
                bedwright_calc::quantity::Formula::WashWater,
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
    read: impl Fn(&bedwright_calc::fill::LayerFill) -> Known<Q>,
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

fn media_mass(vessel: &VesselAnswers) -> Option<Known<bedwright_calc::quantity::Mass>> {
    over_media(vessel, |fill| fill.mass.known())
}

fn media_packs(vessel: &VesselAnswers) -> Option<Known<f64>> {
    over_media(vessel, |fill| fill.packs.known())
}

fn media_depth(vessel: &VesselAnswers) -> Option<Known<bedwright_calc::quantity::Length>> {
    over_media(vessel, |fill| fill.depth_axis.known())
}

/// Dry mass over volume of all media.
fn media_density(vessel: &VesselAnswers) -> Option<Known<bedwright_calc::quantity::MassDensity>> {
    let (mass, volume) = (media_mass(vessel)?, media_volume(vessel)?);
    Some(Known { value: mass.value / volume.value, basis: mass.basis.weaker(volume.basis), source: mass.source })
}
