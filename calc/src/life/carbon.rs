//! Activated carbon: chlorine that dies away in it, and organics that fill it.

use crate::quantity::problem::{between, positive};
use crate::quantity::{
    Concentration, Fault, Figure, Formula, Known, Length, MassDensity, Problem, Term, Time, Velocity, seconds,
};

/// Contact time that halves what goes through, from the half-length of a test and the test's flow per area.
///
/// A half-length alone says nothing: it was found at a speed, and both go together.
///
/// ```text
/// t½ = h½/v_test
/// ```
///
/// # Errors
/// [`Term::HalfLength`] or [`Term::TestVelocity`] not above zero.
///
/// # Sources
/// Definition of the half-length; decay by halves along the bed.
///
/// # Example
/// ```
/// use bedwright_calc::life::carbon::half_time;
/// use bedwright_calc::quantity::{Known, metres, metres_per_second};
/// // 3 cm at 3.6 m/h, which is 1 mm/s: 30 s.
/// let time = half_time(&Known::typed(metres(0.03)), &Known::typed(metres_per_second(0.001))).unwrap();
/// assert!((time.value.value - 30.0).abs() < 1e-9);
/// ```
pub fn half_time(half_length: &Known<Length>, test: &Known<Velocity>) -> Result<Figure<Time>, Problem> {
    positive(Term::HalfLength, half_length.value.value, half_length.value.into())?;
    positive(Term::TestVelocity, test.value.value, test.value.into())?;
    Ok(Figure::new(
        half_length.value / test.value,
        Formula::HalfTime,
        vec![half_length.input(Term::HalfLength), test.input(Term::TestVelocity)],
    ))
}

/// What is left of chlorine after a contact time.
///
/// ```text
/// C = C₀·2^(−EBCT/t½)
/// ```
///
/// # Validity
/// Fresh carbon; warm water and low pH make it better, age, fines in the gaps and chloramine worse.
///
/// # Errors
/// [`Term::InletConcentration`] below zero; [`Term::ContactTime`] or [`Term::HalfTime`] not above zero.
///
/// # Sources
/// Decay by halves along the bed.
///
/// # Example
/// ```
/// use bedwright_calc::life::carbon::chlorine_left;
/// use bedwright_calc::quantity::{Concentration, Known, seconds};
/// let inlet = Known::typed(Concentration::milligrams_per_litre(2.0));
/// let left = chlorine_left(&inlet, &Known::typed(seconds(90.0)), &Known::typed(seconds(30.0))).unwrap();
/// assert!((left.value.to_milligrams_per_litre() - 0.25).abs() < 1e-12);
/// ```
pub fn chlorine_left(
    inlet: &Known<Concentration>,
    contact_time: &Known<Time>,
    half_time: &Known<Time>,
) -> Result<Figure<Concentration>, Problem> {
    let start = inlet.value.to_kilograms_per_cubic_metre();
    between(Term::InletConcentration, start, (0.0, MOST_KG_M3), |x| {
        Concentration::kilograms_per_cubic_metre(x).into()
    })?;
    positive(Term::ContactTime, contact_time.value.value, contact_time.value.into())?;
    positive(Term::HalfTime, half_time.value.value, half_time.value.into())?;
    let halves = contact_time.value.value / half_time.value.value;
    Ok(Figure::new(
        Concentration::kilograms_per_cubic_metre(start * libm::exp2(-halves)),
        Formula::ChlorineLeft,
        vec![
            inlet.input(Term::InletConcentration),
            contact_time.input(Term::ContactTime),
            half_time.input(Term::HalfTime),
        ],
    ))
}

/// Contact time that brings chlorine down to what may leave.
///
/// ```text
/// EBCT = t½·log₂(C₀/C)
/// ```
///
/// # Errors
/// [`Term::OutletConcentration`] not above zero or not below the inlet; [`Term::HalfTime`] not above zero.
///
/// # Sources
/// Decay by halves along the bed.
///
/// # Example
/// ```
/// use bedwright_calc::life::carbon::contact_time_needed;
/// use bedwright_calc::quantity::{Concentration, Known, seconds};
/// // Half-lengths of 2, 3 and 5 cm at 3.6 m/h: from 5 to 0.05 mg/L in 133, 199 and 332 s.
/// let mg = |x: f64| Known::typed(Concentration::milligrams_per_litre(x));
/// for (half, wanted) in [(20.0, 133.0), (30.0, 199.0), (50.0, 332.0)] {
///     let found = contact_time_needed(&mg(5.0), &mg(0.05), &Known::typed(seconds(half))).unwrap();
///     assert!((found.value.value - wanted).abs() < 0.5);
/// }
/// ```
pub fn contact_time_needed(
    inlet: &Known<Concentration>,
    outlet: &Known<Concentration>,
    half_time: &Known<Time>,
) -> Result<Figure<Time>, Problem> {
    let (start, end) = (inlet.value.to_kilograms_per_cubic_metre(), outlet.value.to_kilograms_per_cubic_metre());
    positive(Term::OutletConcentration, end, outlet.value.into())?;
    positive(Term::HalfTime, half_time.value.value, half_time.value.into())?;
    if !(end < start && start <= MOST_KG_M3) {
        return Err(Problem::new(
            Term::OutletConcentration,
            Fault::NotBelow { value: outlet.value.into(), other: Term::InletConcentration, limit: inlet.value.into() },
        ));
    }
    let halves = libm::log2(start / end);
    Ok(Figure::new(
        seconds(half_time.value.value * halves),
        Formula::ContactTimeNeeded,
        vec![
            inlet.input(Term::InletConcentration),
            outlet.input(Term::OutletConcentration),
            half_time.input(Term::HalfTime),
        ],
    ))
}

/// More than this, kg/m³, is no water a filter is put in.
const MOST_KG_M3: f64 = 10.0;

/// An isotherm of Freundlich: what carbon holds of something, by what is in the water.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Freundlich {
    /// What a gram holds, mg, in water of 1 mg/L.
    pub factor: Known<f64>,
    /// The exponent on the concentration, 1/n.
    pub exponent: Known<f64>,
}

/// What carbon holds when it is in balance with the water that comes in, as a share of its own mass.
///
/// ```text
/// q = K·C^(1/n)       q in mg/g, C in mg/L
/// ```
///
/// # Validity
/// One substance in clean water; natural organic matter takes part of it, which the usable share must say.
///
/// # Errors
/// [`Term::FreundlichFactor`] not above zero; [`Term::FreundlichExponent`] outside 0.01 to 2;
/// [`Term::InletConcentration`] not above zero.
///
/// # Sources
/// H. Freundlich (1906); form and units as in textbooks of water treatment.
///
/// # Example
/// ```
/// use bedwright_calc::life::carbon::{Freundlich, capacity_of};
/// use bedwright_calc::quantity::{Concentration, Known};
/// // K = 28 and 1/n = 0.62 at 0.1 mg/L: 28·0.1^0.62 = 6.72 mg/g.
/// let isotherm = Freundlich { factor: Known::typed(28.0), exponent: Known::typed(0.62) };
/// let capacity = capacity_of(&isotherm, &Known::typed(Concentration::milligrams_per_litre(0.1))).unwrap();
/// assert!((capacity.value - 6.72e-3).abs() < 5e-6);
/// ```
pub fn capacity_of(isotherm: &Freundlich, inlet: &Known<Concentration>) -> Result<Figure<f64>, Problem> {
    positive(Term::FreundlichFactor, isotherm.factor.value, isotherm.factor.value.into())?;
    between(Term::FreundlichExponent, isotherm.exponent.value, (0.01, 2.0), Into::into)?;
    let milligrams = inlet.value.to_milligrams_per_litre();
    positive(Term::InletConcentration, milligrams, inlet.value.into())?;
    let share = isotherm.factor.value * libm::pow(milligrams, isotherm.exponent.value) / 1000.0;
    Ok(Figure::new(
        share,
        Formula::FreundlichCapacity,
        vec![
            isotherm.factor.input(Term::FreundlichFactor),
            isotherm.exponent.input(Term::FreundlichExponent),
            inlet.input(Term::InletConcentration),
        ],
    ))
}

/// Bed volumes of water until carbon of this capacity is used as far as it may be.
///
/// ```text
/// BV = q·ρ·usable/C₀
/// ```
///
/// # Errors
/// [`Term::MediaCapacity`], [`Term::BulkDensity`] or [`Term::InletConcentration`] not above zero;
/// [`Term::UsableShare`] outside 0.01 to 1.
///
/// # Sources
/// Mass balance.
///
/// # Example
/// ```
/// use bedwright_calc::life::carbon::bed_volumes_until;
/// use bedwright_calc::quantity::{Concentration, Known, kilograms_per_cubic_metre};
/// // 10 g/kg in 450 kg/m³, half of it used: 2.25 kg in a cubic metre of bed, which are in 22 500 of 0.1 g/m³.
/// let found = bed_volumes_until(
///     &Known::typed(0.01),
///     &Known::typed(kilograms_per_cubic_metre(450.0)),
///     &Known::typed(0.5),
///     &Known::typed(Concentration::milligrams_per_litre(0.1)),
/// );
/// assert!((found.unwrap().value - 22_500.0).abs() < 1e-6);
/// ```
pub fn bed_volumes_until(
    capacity: &Known<f64>,
    density: &Known<MassDensity>,
    usable: &Known<f64>,
    inlet: &Known<Concentration>,
) -> Result<Figure<f64>, Problem> {
    positive(Term::MediaCapacity, capacity.value, capacity.value.into())?;
    positive(Term::BulkDensity, density.value.value, density.value.into())?;
    between(Term::UsableShare, usable.value, (0.01, 1.0), Into::into)?;
    let start = inlet.value.to_kilograms_per_cubic_metre();
    positive(Term::InletConcentration, start, inlet.value.into())?;
    Ok(Figure::new(
        capacity.value * density.value.value * usable.value / start,
        Formula::BedVolumesUntil,
        vec![
            capacity.input(Term::MediaCapacity),
            density.input(Term::BulkDensity),
            usable.input(Term::UsableShare),
            inlet.input(Term::InletConcentration),
        ],
    ))
}

/// Carbon that a volume of water uses up.
///
/// ```text
/// CUR = C₀/(q·usable)
/// ```
///
/// # Errors
/// As [`bed_volumes_until`].
///
/// # Sources
/// Mass balance; the term as in Water Treatment Plant Design, p. 14.15.
///
/// # Example
/// ```
/// use bedwright_calc::life::carbon::carbon_use;
/// use bedwright_calc::quantity::{Concentration, Known};
/// let inlet = Known::typed(Concentration::milligrams_per_litre(0.1));
/// let found = carbon_use(&Known::typed(0.01), &Known::typed(0.5), &inlet).unwrap();
/// assert!((found.value.to_milligrams_per_litre() - 20.0).abs() < 1e-9); // 0.1/(0.01·0.5)
/// ```
pub fn carbon_use(
    capacity: &Known<f64>,
    usable: &Known<f64>,
    inlet: &Known<Concentration>,
) -> Result<Figure<Concentration>, Problem> {
    positive(Term::MediaCapacity, capacity.value, capacity.value.into())?;
    between(Term::UsableShare, usable.value, (0.01, 1.0), Into::into)?;
    let start = inlet.value.to_kilograms_per_cubic_metre();
    positive(Term::InletConcentration, start, inlet.value.into())?;
    Ok(Figure::new(
        Concentration::kilograms_per_cubic_metre(start / (capacity.value * usable.value)),
        Formula::CarbonUse,
        vec![
            inlet.input(Term::InletConcentration),
            capacity.input(Term::MediaCapacity),
            usable.input(Term::UsableShare),
        ],
    ))
}
