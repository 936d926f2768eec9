//! A softener: what its resin takes up for its salt, and how far that goes.

use crate::quantity::problem::{between, positive};
use crate::quantity::{
    Assumption, Caution, Concentration, Fault, Figure, Formula, Known, Mass, MassDensity, Problem, Term, Time, Volume,
    VolumeRate, cubic_metres, kilograms, seconds,
};

use super::YEAR_S;

/// A softener and what it is asked to do.
#[derive(Clone, Debug, PartialEq)]
pub struct Softener {
    /// Volume of its resin.
    pub resin: Known<Volume>,
    /// Salt for a regeneration, on a volume of resin.
    pub salt_dose: Known<MassDensity>,
    /// What a volume of resin takes up at that dose, as calcium carbonate; none to have it taken from the dose.
    pub capacity: Option<Known<Concentration>>,
    /// Hardness of the water, as calcium carbonate.
    pub hardness: Known<Concentration>,
    /// Iron in the water.
    pub iron: Option<Known<Concentration>>,
    /// What a milligram of iron counts for, in milligrams of hardness as calcium carbonate.
    pub iron_factor: Known<f64>,
    /// Share of the capacity that is kept for the day on which it regenerates.
    pub reserve: Known<f64>,
    /// Water it treats on average, day and night.
    pub average: Known<VolumeRate>,
}

/// What it does.
#[derive(Clone, Debug, PartialEq)]
pub struct Softened {
    /// What a volume of resin takes up.
    pub capacity: Figure<Concentration>,
    /// Hardness with what iron counts for.
    pub compensated: Figure<Concentration>,
    /// Water between regenerations.
    pub water: Figure<Volume>,
    /// Time between regenerations.
    pub interval: Figure<Time>,
    /// Salt for one.
    pub salt: Figure<Mass>,
    /// Salt in a year.
    pub salt_year: Figure<Mass>,
    /// Brine for one, at the weakest and the strongest brine of the handbook.
    pub brine: (Figure<Volume>, Figure<Volume>),
    /// Water for slow and fast rinse of one, the least and the most of the handbook.
    pub rinse: (Figure<Volume>, Figure<Volume>),
}

/// Salt doses that are typed, kg/m³: 1 to 30 lb/cu ft.
const DOSE_KG_M3: (f64, f64) = (16.0, 481.0);
/// Water of such hardness is no longer softened.
const HARDNESS_KG_M3: f64 = 5.0;

/// What a volume of resin takes up for a dose of salt, where it isn't known from the resin's paper.
///
/// A thousand grains for every 0.3 lb of salt, and no more than twenty thousand in a cubic foot.
///
/// # Errors
/// [`Term::SaltDose`] outside 16 to 481 kg/m³, which is 1 to 30 lb/cu ft.
///
/// # Sources
/// 35 Illinois Administrative Code 604.805(c): at most 20 000 gr/cu ft at 0.3 lb of salt per 1000 gr.
///
/// # Example
/// ```
/// use bedwright_calc::life::softening::capacity_at;
/// use bedwright_calc::quantity::{Known, kilograms_per_cubic_metre};
/// // 6 lb/cu ft is 96.11 kg/m³ and gives the rule's 20 000 gr/cu ft, 45.77 g/L.
/// let found = capacity_at(&Known::typed(kilograms_per_cubic_metre(96.111))).unwrap();
/// assert!((found.value.to_kilograms_per_cubic_metre() - 45.77).abs() < 0.005);
/// ```
pub fn capacity_at(dose: &Known<MassDensity>) -> Result<Figure<Concentration>, Problem> {
    between(Term::SaltDose, dose.value.value, DOSE_KG_M3, |x| crate::quantity::kilograms_per_cubic_metre(x).into())?;
    let rule = dose.value.value / Assumption::SaltPerHardness.ratio();
    let most = Assumption::ResinCapacityRule.ratio();
    let value = if rule < most { rule } else { most };
    Ok(Figure::new(
        Concentration::kilograms_per_cubic_metre(value),
        Formula::ResinCapacity,
        vec![dose.input(Term::SaltDose)],
    ))
}

/// What a softener does between regenerations, and what it takes in a year.
///
/// # Validity
/// The rule's capacity is what a regulator lets a design count on; resin on good water gives more for more salt. A
/// capacity that is typed is cautioned about where it lies above what exchange capacity and usual share allow.
///
/// # Errors
/// [`Term::MediaVolume`], [`Term::Hardness`] or [`Term::AverageUse`] not above zero; [`Term::Hardness`] above 5 g/L;
/// [`Term::Reserve`] outside 0 to 0.9; [`Term::IronFactor`] below zero; as [`capacity_at`].
///
/// # Sources
/// Capacity: 35 Illinois Administrative Code 604.805(c); exchange capacity 1.6 to 2.2 eq/L of which 50 to 70 % operate,
/// brine 5 to 10 %, 2 to 5 bed volumes an hour, slow rinse 10 to 30 min and fast rinse 5 to 15 min: M. L. Davis, Water
/// and Wastewater Engineering, table 8-2 and p. 8-19.
///
/// # Example
/// ```
/// use bedwright_calc::life::softening::{Softener, softened};
/// use bedwright_calc::quantity::{
///     Concentration, Known, cubic_metres, cubic_metres_per_second, kilograms_per_cubic_metre,
/// };
/// // A cubic foot at 6 lb takes 20 000 gr; of 20 gr/gal that is 1000 gal, 800 with a fifth in reserve.
/// let found = softened(&Softener {
///     resin: Known::typed(cubic_metres(0.028316846592)),
///     salt_dose: Known::typed(kilograms_per_cubic_metre(96.1108)),
///     capacity: None,
///     hardness: Known::typed(Concentration::milligrams_per_litre(20.0 * 17.1181)),
///     iron: None,
///     iron_factor: Known::typed(68.5),
///     reserve: Known::typed(0.2),
///     average: Known::typed(cubic_metres_per_second(1e-5)),
/// })
/// .unwrap();
/// assert!((found.water.value.value / 0.003785411784 - 800.0).abs() < 0.1);
/// assert!((found.salt.value.value / 0.45359237 - 6.0).abs() < 1e-3);
/// ```
pub fn softened(softener: &Softener) -> Result<Softened, Problem> {
    positive(Term::MediaVolume, softener.resin.value.value, softener.resin.value.into())?;
    let hardness = softener.hardness.value;
    positive(Term::Hardness, hardness.to_kilograms_per_cubic_metre(), hardness.into())?;
    between(Term::Hardness, hardness.to_kilograms_per_cubic_metre(), (0.0, HARDNESS_KG_M3), |x| {
        Concentration::kilograms_per_cubic_metre(x).into()
    })?;
    between(Term::Reserve, softener.reserve.value, (0.0, 0.9), Into::into)?;
    between(Term::IronFactor, softener.iron_factor.value, (0.0, 1000.0), Into::into)?;
    positive(Term::AverageUse, softener.average.value.value, softener.average.value.into())?;
    let capacity = capacity(softener)?;
    let compensated = compensated(softener)?;
    let volume = softener.resin.value.value;
    let taken = capacity.value.to_kilograms_per_cubic_metre() * volume * (1.0 - softener.reserve.value);
    let water = cubic_metres(taken / compensated.value.to_kilograms_per_cubic_metre());
    let water = Figure::new(
        water,
        Formula::WaterBetween,
        vec![
            softener.resin.input(Term::MediaVolume),
            capacity.input(Term::ResinCapacity),
            compensated.input(Term::CompensatedHardness),
            softener.reserve.input(Term::Reserve),
        ],
    );
    let interval = Figure::new(
        seconds(water.value.value / softener.average.value.value),
        Formula::RegenerationInterval,
        vec![water.input(Term::WaterBetween), softener.average.input(Term::AverageUse)],
    );
    let dose_inputs = vec![softener.salt_dose.input(Term::SaltDose), softener.resin.input(Term::MediaVolume)];
    let salt_kg = softener.salt_dose.value.value * volume;
    let salt = Figure::new(kilograms(salt_kg), Formula::SaltForOne, dose_inputs.clone());
    let mut year = dose_inputs.clone();
    year.push(interval.input(Term::RegenerationInterval));
    let salt_year = Figure::new(kilograms(salt_kg * YEAR_S / interval.value.value), Formula::SaltInYear, year);
    // Brine of a share by mass; its own density is left out: a litre is taken for a kilogram.
    let brine = |strength: Assumption| {
        Figure::new(cubic_metres(salt_kg / strength.ratio() / 1000.0), Formula::BrineVolume, dose_inputs.clone())
    };
    // Bed volumes an hour over so many minutes.
    let rinsed = |slow: Assumption, slow_rate: Assumption, fast: Assumption, fast_rate: Assumption| {
        let volumes = slow.ratio() / 3600.0 * slow_rate.ratio() + fast.ratio() / 3600.0 * fast_rate.ratio();
        let inputs = vec![softener.resin.input(Term::MediaVolume)];
        Figure::new(cubic_metres(volumes * volume), Formula::RinseVolume, inputs)
    };
    let brine = (brine(Assumption::BrineStrong), brine(Assumption::BrineWeak));
    let rinse = (
        rinsed(
            Assumption::SlowRinseLow,
            Assumption::BrineRateLow,
            Assumption::FastRinseLow,
            Assumption::ServiceRateLow,
        ),
        rinsed(
            Assumption::SlowRinseHigh,
            Assumption::BrineRateHigh,
            Assumption::FastRinseHigh,
            Assumption::ServiceRateHigh,
        ),
    );
    Ok(Softened { capacity, compensated, water, interval, salt, salt_year, brine, rinse })
}

fn capacity(softener: &Softener) -> Result<Figure<Concentration>, Problem> {
    let by_rule = capacity_at(&softener.salt_dose)?;
    let Some(typed) = &softener.capacity else { return Ok(by_rule) };
    let value = typed.value.to_kilograms_per_cubic_metre();
    positive(Term::ResinCapacity, value, typed.value.into())?;
    let most = Assumption::ResinCapacityMost.ratio();
    if value > most {
        return Err(Problem::new(
            Term::ResinCapacity,
            Fault::OutOfRange {
                value: typed.value.into(),
                low: Concentration::default().into(),
                high: Concentration::kilograms_per_cubic_metre(most).into(),
            },
        ));
    }
    let inputs = vec![typed.input(Term::ResinCapacity), softener.salt_dose.input(Term::SaltDose)];
    let figure = Figure::new(typed.value, Formula::Given, inputs);
    Ok(if typed.value > by_rule.value {
        figure.with(Caution::AboveRule { value: typed.value.into(), limit: by_rule.value.into() })
    } else {
        figure
    })
}

fn compensated(softener: &Softener) -> Result<Figure<Concentration>, Problem> {
    let mut value = softener.hardness.value.to_kilograms_per_cubic_metre();
    let mut inputs = vec![softener.hardness.input(Term::Hardness)];
    if let Some(iron) = &softener.iron {
        let amount = |x: f64| Concentration::kilograms_per_cubic_metre(x).into();
        between(Term::Iron, iron.value.to_kilograms_per_cubic_metre(), (0.0, 1.0), amount)?;
        value += softener.iron_factor.value * iron.value.to_kilograms_per_cubic_metre();
        inputs.push(iron.input(Term::Iron));
        inputs.push(softener.iron_factor.input(Term::IronFactor));
    }
    Ok(Figure::new(Concentration::kilograms_per_cubic_metre(value), Formula::CompensatedHardness, inputs))
}
