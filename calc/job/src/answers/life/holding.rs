//! The lives of beds that take something out of the water: resin, carbon, filters, oxidising media.

use bedwright_calc::hydraulics::Purpose;
use bedwright_calc::life::capacity::{HoldingBed, depth_line, holding_life, water_until_full};
use bedwright_calc::life::carbon::{
    Freundlich, bed_volumes_until, capacity_of, carbon_use, chlorine_left, contact_time_needed, half_time,
};
use bedwright_calc::life::oxidant::{Oxidant, oxidant_demand};
use bedwright_calc::life::run_by_drop;
use bedwright_calc::life::sensitivity::sensitivities;
use bedwright_calc::life::softening::{Softener, softened};
use bedwright_calc::life::yearly::wash_water_in_year;
use bedwright_calc::quantity::{Assumption, Concentration, Figure, Formula, Known, Problem, Term};

use super::{Bed, Expected, LifeAnswers, LifeName, LimitedBy, media_density, media_depth, scaled};
use crate::field::WaterField;

impl LifeAnswers {
    pub(super) fn softening(&mut self, bed: &Bed) -> Result<(), Problem> {
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
        let time = Figure::new(age.value, Formula::Given, vec![age.input(Term::Life)]);
        // What decides is how often it regenerates: its age is from memory whatever the water.
        let decides = sensitivities(
            &[Term::Hardness, Term::AverageUse, Term::MediaVolume, Term::SaltDose, Term::Iron, Term::Reserve],
            |term, factor| {
                let mut changed = softener.clone();
                match term {
                    Term::Hardness => changed.hardness = scaled(changed.hardness, factor),
                    Term::AverageUse => changed.average.value *= factor,
                    Term::MediaVolume => changed.resin.value *= factor,
                    Term::SaltDose => changed.salt_dose.value *= factor,
                    Term::Iron => changed.iron = Some(scaled(changed.iron?, factor)),
                    _ => changed.reserve.value *= factor,
                }
                Some(softened(&changed).ok()?.interval.value.value)
            },
        );
        self.expect(bed, Expected { time, longest: None, limited_by: LimitedBy::Age, decides });
        Ok(())
    }

    pub(super) fn chlorine(&mut self, bed: &Bed) -> Result<(), Problem> {
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

    pub(super) fn organics(&mut self, bed: &Bed) -> Result<(), Problem> {
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
                Term::AverageUse => changed.average.value *= factor,
                Term::MediaVolume => changed.volume.value *= factor,
                _ => changed.usable.value *= factor,
            }
            Some(holding_life(&changed).ok()?.value.value)
        });
        if self.expected.is_none() {
            self.expect(bed, Expected { time, longest: None, limited_by: LimitedBy::Capacity, decides });
        }
        Ok(())
    }

    pub(super) fn sediment(&mut self, bed: &Bed) -> Result<(), Problem> {
        let reading = bed.reading;
        let by_drop = self.by_drop(bed);
        if by_drop && (reading.solids.is_none() || reading.capacity.is_none()) {
            return Ok(());
        }
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

    /// How long it runs by the pressures that were seen; whether they tell.
    fn by_drop(&mut self, bed: &Bed) -> bool {
        if bed.water.drops.is_empty() {
            return false;
        }
        let Some(terminal) = self.needs(bed.reading.terminal_drop, WaterField::TerminalDrop) else { return false };
        match run_by_drop(&bed.water.drops, &terminal) {
            Ok(run) => {
                self.put(LifeName::RunByDrop, &run.time);
                true
            }
            Err(problem) => {
                self.problems.push(problem);
                false
            }
        }
    }

    pub(super) fn iron(&mut self, bed: &Bed) -> Result<(), Problem> {
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
    pub(super) fn holding(
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
                Term::AverageUse => changed.average.value *= factor,
                Term::MediaVolume => changed.volume.value *= factor,
                _ => changed.usable.value *= factor,
            }
            Some(holding_life(&changed).ok()?.value.value)
        });
        self.expect(bed, Expected { time, longest: None, limited_by: LimitedBy::Capacity, decides });
        Ok(())
    }
}
