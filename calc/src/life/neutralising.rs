//! A bed of calcite, with or without magnesia: what it makes of the water, and when it must be filled up.

use super::carbonate::{CarbonateWater, Until};
use super::{MONTHS_IN_YEAR, YEAR_S};
use crate::quantity::problem::{between, positive};
use crate::quantity::{
    Area, Assumption, Caution, Concentration, Fault, Figure, Formula, Known, Length, Mass, Problem, Term, Time,
    VolumeRate, kilograms, metres, seconds,
};

/// A bed that neutralises.
#[derive(Clone, Debug, PartialEq)]
pub struct NeutralisingBed {
    /// Surface of its calcite.
    pub surface: Known<Area>,
    /// Mass of its calcite.
    pub calcite: Known<Mass>,
    /// Mass of its magnesia, where some is mixed in.
    pub magnesia: Option<Known<Mass>>,
    /// Its depth.
    pub depth: Known<Length>,
    /// Flow in service through it.
    pub flow: Known<VolumeRate>,
    /// The highest flow through it.
    pub peak: Option<Known<VolumeRate>>,
    /// Water it treats on average, day and night.
    pub average: Known<VolumeRate>,
    /// Share of it that may be gone before it is filled up.
    pub refill_share: Known<f64>,
}

/// The water that leaves.
#[derive(Clone, Debug, PartialEq)]
pub struct Outlet {
    /// Calcite it took up.
    pub calcite: Figure<Concentration>,
    /// Magnesia it took up.
    pub magnesia: Option<Figure<Concentration>>,
    /// Its pH.
    pub ph: Figure<f64>,
    /// Its alkalinity, as calcium carbonate.
    pub alkalinity: Figure<Concentration>,
    /// Its hardness, as calcium carbonate.
    pub hardness: Figure<Concentration>,
    /// Its saturation index.
    pub saturation_index: Figure<f64>,
}

/// What the bed does.
#[derive(Clone, Debug, PartialEq)]
pub struct Neutralised {
    /// At the usual flow.
    pub usual: Outlet,
    /// At the usual flow where films leave only a tenth of the rate.
    pub slowed: Outlet,
    /// At the highest flow.
    pub peak: Option<Outlet>,
    /// After standing.
    pub standing: Outlet,
    /// Calcite that goes in a month.
    pub calcite_month: Figure<Mass>,
    /// Magnesia that goes in a month.
    pub magnesia_month: Option<Figure<Mass>>,
    /// How long until it must be filled up.
    pub refill: Figure<Time>,
    /// The same where films leave only a tenth of the rate.
    pub refill_slowed: Figure<Time>,
    /// How much deeper filling up makes it.
    pub refill_depth: Figure<Length>,
}

/// Water left standing with magnesia above this pH deserves a word.
const OVERSHOOT_PH: f64 = 8.5;

/// What a bed of calcite, with or without magnesia, makes of a water and how fast it goes.
///
/// Calcite gives what its surface and the flow allow ([`CarbonateWater::dissolved_in_contact`]). How fast magnesia
/// dissolves nobody has published: in passing it is taken to finish what calcite left, up to saturation with calcite; in
/// standing water it goes on until brucite forms, far above that.
///
/// # Validity
/// The bed as it is full; with less of it the surface is less, and so is what the water takes. Whether water passes it
/// upwards or downwards changes nothing here as long as it passes all of it.
///
/// # Errors
/// [`Term::CalciteMass`] or [`Term::MediaDepth`] not above zero; [`Term::AverageUse`] not above zero;
/// [`Term::RefillShare`] outside 0.01 to 1; as [`CarbonateWater::dissolved_in_contact`].
///
/// # Sources
/// As [`CarbonateWater::of`] and [`CarbonateWater::dissolved_in_contact`]; the rest is arithmetic.
///
/// # Example
/// ```
/// use bedwright_calc::life::carbonate::{Analysis, Carbonate, CarbonateWater};
/// use bedwright_calc::life::neutralising::{NeutralisingBed, neutralised};
/// use bedwright_calc::quantity::{
///     Concentration, Known, cubic_metres_per_second, kelvins, kilograms, metres, square_metres,
/// };
/// let mg = |x: f64| Known::typed(Concentration::milligrams_per_litre(x));
/// let carbonate = Carbonate::AlkalinityAndDioxide { alkalinity: mg(20.0), dioxide: mg(20.0) };
/// let water = CarbonateWater::of(&Analysis::new(Known::typed(kelvins(283.15)), carbonate, mg(15.0))).unwrap();
/// let bed = NeutralisingBed {
///     surface: Known::typed(square_metres(300.0)),
///     calcite: Known::typed(kilograms(60.0)),
///     magnesia: None,
///     depth: Known::typed(metres(0.7)),
///     flow: Known::typed(cubic_metres_per_second(1e-4)),
///     peak: None,
///     average: Known::typed(cubic_metres_per_second(1.0 / 86_400.0)),
///     refill_share: Known::typed(0.15),
/// };
/// let found = neutralised(&water, &bed).unwrap();
/// // A cubic metre a day takes about 45 g of it: 9 kg of the 60 last some two hundred days.
/// assert!(found.refill.value.value > 180.0 * 86_400.0 && found.refill.value.value < 220.0 * 86_400.0);
/// ```
pub fn neutralised(water: &CarbonateWater, bed: &NeutralisingBed) -> Result<Neutralised, Problem> {
    positive(Term::CalciteMass, bed.calcite.value.value, bed.calcite.value.into())?;
    positive(Term::MediaDepth, bed.depth.value.value, bed.depth.value.into())?;
    positive(Term::AverageUse, bed.average.value.value, bed.average.value.into())?;
    between(Term::RefillShare, bed.refill_share.value, (0.01, 1.0), Into::into)?;
    if let Some(magnesia) = &bed.magnesia {
        positive(Term::MagnesiaMass, magnesia.value.value, magnesia.value.into())?;
    }
    let usual = passing(water, bed, &bed.surface, &bed.flow)?;
    let peak = bed.peak.as_ref().map(|peak| passing(water, bed, &bed.surface, peak)).transpose()?;
    let working = Assumption::SurfaceWorkingLow.ratio();
    let surface = Known { value: bed.surface.value * working, ..bed.surface };
    let slowed = passing(water, bed, &surface, &bed.flow)?;
    let standing = standing(water, bed)?;
    let calcite_month = month(bed, &usual.calcite, Formula::CalciteMonth);
    let magnesia_month = usual.magnesia.as_ref().map(|taken| month(bed, taken, Formula::MagnesiaMonth));
    let refill = refill(bed, &usual)?;
    let refill_slowed = self::refill(bed, &slowed)?;
    let share = bed.refill_share.value;
    let refill_depth = Figure::new(
        metres(share * bed.depth.value.value),
        Formula::RefillDepth,
        vec![bed.refill_share.input(Term::RefillShare), bed.depth.input(Term::MediaDepth)],
    );
    Ok(Neutralised {
        usual,
        slowed,
        peak,
        standing,
        calcite_month,
        magnesia_month,
        refill,
        refill_slowed,
        refill_depth,
    })
}

/// What goes of a mineral in a month.
fn month(bed: &NeutralisingBed, taken: &Figure<Concentration>, formula: Formula) -> Figure<Mass> {
    let mass = taken.value.to_kilograms_per_cubic_metre() * bed.average.value.value * YEAR_S / MONTHS_IN_YEAR;
    let term = if formula == Formula::CalciteMonth { Term::CalciteDissolved } else { Term::MagnesiaDissolved };
    Figure::new(kilograms(mass), formula, vec![taken.input(term), bed.average.input(Term::AverageUse)])
}

/// How long until so much of the bed is gone; the mineral that goes first decides.
fn refill(bed: &NeutralisingBed, outlet: &Outlet) -> Result<Figure<Time>, Problem> {
    let lasts = |mass: &Known<Mass>, taken: &Figure<Concentration>| {
        bed.refill_share.value * mass.value.value
            / (taken.value.to_kilograms_per_cubic_metre() * bed.average.value.value)
    };
    let mut time = lasts(&bed.calcite, &outlet.calcite);
    if let (Some(mass), Some(taken)) = (&bed.magnesia, &outlet.magnesia) {
        time = time.min(lasts(mass, taken));
    }
    if !(time > 0.0 && time.is_finite()) {
        let value = outlet.calcite.value.into();
        return Err(Problem::new(Term::CalciteDissolved, Fault::NotPositive { value }));
    }
    let inputs = vec![
        bed.calcite.input(Term::CalciteMass),
        bed.refill_share.input(Term::RefillShare),
        outlet.calcite.input(Term::CalciteDissolved),
        bed.average.input(Term::AverageUse),
    ];
    Ok(Figure::new(seconds(time), Formula::RefillInterval, inputs))
}

fn passing(
    water: &CarbonateWater,
    bed: &NeutralisingBed,
    surface: &Known<Area>,
    flow: &Known<VolumeRate>,
) -> Result<Outlet, Problem> {
    let calcite = water.dissolved_in_contact(surface, flow)?;
    let after = water.with(calcite.value, Concentration::default())?;
    let magnesia = bed.magnesia.as_ref().map(|_| after.magnesia_taken(Until::Calcite)).transpose()?;
    outlet(&after, calcite, magnesia)
}

fn standing(water: &CarbonateWater, bed: &NeutralisingBed) -> Result<Outlet, Problem> {
    let mut calcite = water.dissolved_to_saturation()?;
    if calcite.value < Concentration::default() {
        calcite.value = Concentration::default();
    }
    let after = water.with(calcite.value, Concentration::default())?;
    let magnesia = bed.magnesia.as_ref().map(|_| after.magnesia_taken(Until::Brucite)).transpose()?;
    let mut found = outlet(&after, calcite, magnesia)?;
    if bed.magnesia.is_some() && found.ph.value > OVERSHOOT_PH {
        found.ph = found.ph.with(Caution::Overshoot { limit: OVERSHOOT_PH.into() });
    }
    Ok(found)
}

fn outlet(
    after: &CarbonateWater,
    calcite: Figure<Concentration>,
    magnesia: Option<Figure<Concentration>>,
) -> Result<Outlet, Problem> {
    let mixed;
    let water = match &magnesia {
        Some(taken) => {
            mixed = after.with(Concentration::default(), taken.value)?;
            &mixed
        }
        None => after,
    };
    // What the water is rests on what it took up.
    let taken = |figure: Figure<Concentration>| {
        let mut figure = figure;
        figure.inputs.clone_from(&calcite.inputs);
        figure
    };
    let bare = |figure: Figure<f64>| {
        let mut figure = figure;
        figure.inputs.clone_from(&calcite.inputs);
        figure
    };
    Ok(Outlet {
        ph: bare(water.ph()),
        alkalinity: taken(water.alkalinity()),
        hardness: taken(water.hardness()),
        saturation_index: bare(water.saturation_index()),
        calcite,
        magnesia,
    })
}
