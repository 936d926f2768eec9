//! The life of a bed of calcite.

use bedwright_calc::fill::Role;
use bedwright_calc::hydraulics::{Arrangement, Duty};
use bedwright_calc::life::carbonate::{Analysis, Carbonate, CarbonateWater, grain_surface};
use bedwright_calc::life::neutralising::{NeutralisingBed, neutralised};
use bedwright_calc::life::sensitivity::sensitivities;
use bedwright_calc::life::yearly::{dissolved_in_year, packs_in_year, years_of};
use bedwright_calc::material::grading::Grading;
use bedwright_calc::quantity::{
    Area, Concentration, Figure, Known, Mass, Problem, Temperature, Term, VolumeRate, kelvins, square_metres,
};

use super::{Bed, Expected, LifeAnswers, LifeName, LimitedBy, media_depth, media_mass, media_packs, scaled};
use crate::field::WaterField;

/// Materials whose ids begin so are the mineral.
const CALCITE: &str = "calcite";
const MAGNESIA: &str = "magnesia";

/// The grains of a bed: surface and mass of its calcite, mass of its magnesia.
struct Grains {
    surface: Known<Area>,
    calcite: Known<Mass>,
    magnesia: Option<Known<Mass>>,
}

impl LifeAnswers {
    pub(super) fn neutralising(&mut self, bed: &Bed) -> Result<(), Problem> {
        let reading = bed.reading;
        let calcium = self.needs(reading.calcium, WaterField::CalciumHardness);
        let carbonate = match (reading.ph, reading.alkalinity, reading.dioxide) {
            (Some(ph), Some(alkalinity), _) => Carbonate::PhAndAlkalinity { ph, alkalinity },
            (Some(ph), None, Some(dioxide)) => Carbonate::PhAndDioxide { ph, dioxide },
            (None, Some(alkalinity), Some(dioxide)) => Carbonate::AlkalinityAndDioxide { alkalinity, dioxide },
            (ph, alkalinity, _) => {
                self.needs(ph, WaterField::Ph);
                self.needs(alkalinity, WaterField::Alkalinity);
                return Ok(());
            }
        };
        let Some(calcium) = calcium else { return Ok(()) };
        let analysis = Analysis {
            magnesium: reading.magnesium,
            sodium: reading.sodium,
            sulfate: reading.sulfate,
            chloride: reading.chloride,
            dissolved_solids: reading.dissolved,
            ..Analysis::new(mean_temperature(bed), carbonate, calcium)
        };
        let water = CarbonateWater::of(&analysis)?;
        self.put(LifeName::Dioxide, &water.carbon_dioxide());
        self.put(LifeName::IndexBefore, &water.saturation_index());
        self.put(LifeName::HardnessBefore, &water.hardness());
        let most = water.dissolved_to_saturation()?;
        self.put(LifeName::ToSaturation, &most);
        if most.value <= Concentration::default() {
            return Ok(());
        }
        let duty = &bed.water.reading.duty;
        let Some(flow) = self.needs(duty.service_flow, WaterField::ServiceFlow) else { return Ok(()) };
        let (Some(grains), Some(average), Some(depth)) = (grains(bed)?, bed.average, media_depth(bed.vessel)) else {
            return Ok(());
        };
        let asked = NeutralisingBed {
            surface: grains.surface,
            calcite: grains.calcite,
            magnesia: grains.magnesia,
            depth,
            flow: through_one(duty, flow),
            peak: duty.peak_flow.map(|peak| through_one(duty, peak)),
            average,
            refill_share: reading.refill_share,
        };
        let found = neutralised(&water, &asked)?;
        self.put(LifeName::Calcite, &found.usual.calcite);
        if let Some(magnesia) = &found.usual.magnesia {
            self.put(LifeName::Magnesia, magnesia);
        }
        self.put(LifeName::PhAfter, &found.usual.ph);
        self.put(LifeName::PhSlowed, &found.slowed.ph);
        if let Some(peak) = &found.peak {
            self.put(LifeName::PhPeak, &peak.ph);
        }
        self.put(LifeName::PhStanding, &found.standing.ph);
        self.put(LifeName::HardnessAfter, &found.usual.hardness);
        self.put(LifeName::AlkalinityAfter, &found.usual.alkalinity);
        self.put(LifeName::IndexAfter, &found.usual.saturation_index);
        self.put(LifeName::CalciteMonth, &found.calcite_month);
        if let Some(month) = &found.magnesia_month {
            self.put(LifeName::MagnesiaMonth, month);
        }
        self.put(LifeName::RefillDepth, &found.refill_depth);
        let terms = [
            Term::Ph,
            Term::Alkalinity,
            Term::CarbonDioxide,
            Term::CalciumHardness,
            Term::AverageUse,
            Term::CalciteMass,
            Term::GrainSurface,
            Term::RefillShare,
        ];
        let decides = sensitivities(&terms, |term, factor| {
            let (mut water, mut bed) = (analysis.clone(), asked.clone());
            match term {
                Term::Ph | Term::Alkalinity | Term::CarbonDioxide => changed(&mut water.carbonate, term, factor)?,
                Term::CalciumHardness => water.calcium = scaled(water.calcium, factor),
                Term::AverageUse => bed.average.value *= factor,
                Term::CalciteMass => bed.calcite.value *= factor,
                Term::GrainSurface => bed.surface.value *= factor,
                _ => bed.refill_share.value *= factor,
            }
            Some(neutralised(&CarbonateWater::of(&water).ok()?, &bed).ok()?.refill.value.value)
        });
        // What dissolves is bought again, not the whole bed.
        let months: Vec<&Figure<Mass>> =
            [Some(&found.calcite_month), found.magnesia_month.as_ref()].into_iter().flatten().collect();
        let year = dissolved_in_year(&months);
        if let (Some(mass), Some(packs)) = (media_mass(bed.vessel), media_packs(bed.vessel)) {
            self.year.packs = Some(packs_in_year(&packs, &years_of(&mass, &year)));
        }
        self.year.media = Some(year);
        let (time, longest) = (found.refill, Some(found.refill_slowed));
        self.expected = Some(Expected { time, longest, limited_by: LimitedBy::Dissolving, decides });
        Ok(())
    }
}

/// What goes through one vessel of a flow of the site: the grains' own figures needn't be known for it.
fn through_one(duty: &Duty, flow: Known<VolumeRate>) -> Known<VolumeRate> {
    let sharing = if duty.arrangement == Arrangement::Parallel { f64::from(duty.vessels.max(1)) } else { 1.0 };
    Known { value: flow.value / sharing, ..flow }
}

/// Halfway between the coldest and the warmest water of the year.
fn mean_temperature(bed: &Bed) -> Known<Temperature> {
    let site = &bed.water.reading.site;
    let (low, high) = (site.temperature_low, site.temperature_high);
    Known {
        value: kelvins(0.5 * (low.value.value + high.value.value)),
        basis: low.basis.weaker(high.basis),
        source: low.source,
    }
}

/// One of the carbonate's figures changed; a pH by a tenth where others change by a tenth of themselves.
fn changed(carbonate: &mut Carbonate, term: Term, factor: f64) -> Option<()> {
    match (carbonate, term) {
        (Carbonate::PhAndAlkalinity { ph, .. } | Carbonate::PhAndDioxide { ph, .. }, Term::Ph) => {
            ph.value += factor - 1.0;
        }
        (
            Carbonate::PhAndAlkalinity { alkalinity, .. } | Carbonate::AlkalinityAndDioxide { alkalinity, .. },
            Term::Alkalinity,
        ) => *alkalinity = scaled(*alkalinity, factor),
        (
            Carbonate::PhAndDioxide { dioxide, .. } | Carbonate::AlkalinityAndDioxide { dioxide, .. },
            Term::CarbonDioxide,
        ) => *dioxide = scaled(*dioxide, factor),
        _ => return None,
    }
    Some(())
}

/// The bed's minerals; none where it holds no calcite, or voidage or sphericity of its calcite isn't known.
fn grains(bed: &Bed) -> Result<Option<Grains>, Problem> {
    let mut found: Option<Grains> = None;
    let mut magnesia: Option<Known<Mass>> = None;
    let layers = bed.vessel.planned.iter().zip(&bed.vessel.layers).zip(&bed.water.reading.grains);
    for ((layer, answer), grains) in layers {
        let Some(fill) = answer.fill().filter(|_| layer.role == Role::Media) else { continue };
        if layer.material.id.starts_with(MAGNESIA) {
            let mass = fill.mass.known();
            magnesia = Some(magnesia.map_or(mass, |sum| Known { value: sum.value + mass.value, ..sum }));
        }
        if !layer.material.id.starts_with(CALCITE) {
            continue;
        }
        let (Some(voidage), Some(sphericity)) = (&grains.voidage, &grains.sphericity) else { return Ok(None) };
        let grading =
            Grading::new(&grains.low, &grains.high, grains.effective_size.as_ref(), grains.uniformity.as_ref())?;
        let surface = grain_surface(&fill.volume.known(), &grading, sphericity, voidage)?.known();
        let mass = fill.mass.known();
        found = Some(match found {
            Some(sum) => Grains {
                surface: Known { value: square_metres(sum.surface.value.value + surface.value.value), ..sum.surface },
                calcite: Known { value: sum.calcite.value + mass.value, ..sum.calcite },
                magnesia: None,
            },
            None => Grains { surface, calcite: mass, magnesia: None },
        });
    }
    Ok(found.map(|grains| Grains { magnesia, ..grains }))
}
