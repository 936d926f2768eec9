//! Media that hold so much and no more: how long until they are full.

use crate::quantity::problem::{between, positive};
use crate::quantity::{
    Concentration, Fault, Figure, Formula, Input, Known, Length, Problem, Term, Time, Volume, VolumeRate, metres,
    seconds,
};

/// A bed that takes something out of the water until it holds what it can.
#[derive(Clone, Debug, PartialEq)]
pub struct HoldingBed {
    /// Volume of its media.
    pub volume: Known<Volume>,
    /// What a volume of it holds when it is full.
    pub capacity: Known<Concentration>,
    /// Share of that which is used before it is changed or regenerated.
    pub usable: Known<f64>,
    /// What comes in.
    pub inlet: Known<Concentration>,
    /// What may leave.
    pub outlet: Known<Concentration>,
    /// Water it treats on average, day and night.
    pub average: Known<VolumeRate>,
}

impl HoldingBed {
    fn removed(&self) -> Result<f64, Problem> {
        let (inlet, outlet) = (self.inlet.value, self.outlet.value);
        positive(Term::InletConcentration, inlet.to_kilograms_per_cubic_metre(), inlet.into())?;
        if !(outlet >= Concentration::default() && outlet < inlet) {
            return Err(Problem::new(
                Term::OutletConcentration,
                Fault::NotBelow { value: outlet.into(), other: Term::InletConcentration, limit: inlet.into() },
            ));
        }
        Ok(inlet.to_kilograms_per_cubic_metre() - outlet.to_kilograms_per_cubic_metre())
    }

    fn inputs(&self) -> Vec<Input> {
        vec![
            self.volume.input(Term::MediaVolume),
            self.capacity.input(Term::MediaCapacity),
            self.usable.input(Term::UsableShare),
            self.inlet.input(Term::InletConcentration),
            self.outlet.input(Term::OutletConcentration),
        ]
    }
}

/// Water that a bed treats before it holds what it can.
///
/// ```text
/// V_water = V_media·capacity·usable/(C_in − C_out)
/// ```
///
/// # Errors
/// [`Term::MediaVolume`] or [`Term::MediaCapacity`] not above zero; [`Term::UsableShare`] outside 0.01 to 1;
/// [`Term::InletConcentration`] not above zero; [`Term::OutletConcentration`] not below it.
///
/// # Sources
/// Mass balance; V_water = V_media·capacity/hardness as M. L. Davis, Water and Wastewater Engineering, ch. 8.
///
/// # Example
/// See [`holding_life`].
pub fn water_until_full(bed: &HoldingBed) -> Result<Figure<Volume>, Problem> {
    positive(Term::MediaVolume, bed.volume.value.value, bed.volume.value.into())?;
    let capacity = bed.capacity.value;
    positive(Term::MediaCapacity, capacity.to_kilograms_per_cubic_metre(), capacity.into())?;
    between(Term::UsableShare, bed.usable.value, (0.01, 1.0), Into::into)?;
    let removed = bed.removed()?;
    let water = bed.volume.value * (capacity.to_kilograms_per_cubic_metre() * bed.usable.value / removed);
    Ok(Figure::new(water, Formula::WaterUntilFull, bed.inputs()))
}

/// How long a bed lasts until it holds what it can.
///
/// # Errors
/// As [`water_until_full`]; [`Term::AverageUse`] not above zero.
///
/// # Sources
/// Mass balance.
///
/// # Example
/// ```
/// use bedwright_calc::life::capacity::{HoldingBed, holding_life};
/// use bedwright_calc::quantity::{Concentration, Known, cubic_metres, cubic_metres_per_second};
/// // 50 L that hold 1 g/L each, half of it used, of 1 mg/L: 25 g are in 25 m³, ten days at 2.5 m³ a day.
/// let bed = HoldingBed {
///     volume: Known::typed(cubic_metres(0.05)),
///     capacity: Known::typed(Concentration::kilograms_per_cubic_metre(1.0)),
///     usable: Known::typed(0.5),
///     inlet: Known::typed(Concentration::milligrams_per_litre(1.0)),
///     outlet: Known::typed(Concentration::default()),
///     average: Known::typed(cubic_metres_per_second(2.5 / 86_400.0)),
/// };
/// assert!((holding_life(&bed).unwrap().value.value / 86_400.0 - 10.0).abs() < 1e-9);
/// ```
pub fn holding_life(bed: &HoldingBed) -> Result<Figure<Time>, Problem> {
    positive(Term::AverageUse, bed.average.value.value, bed.average.value.into())?;
    let water = water_until_full(bed)?;
    let mut inputs = water.inputs;
    inputs.push(bed.average.input(Term::AverageUse));
    Ok(Figure::new(seconds(water.value.value / bed.average.value.value), Formula::HoldingLife, inputs))
}

/// The line of service time by bed depth through somebody's own readings.
#[derive(Clone, Debug, PartialEq)]
pub struct DepthLine {
    /// Service time that a metre of bed brings.
    pub per_metre: Figure<Time>,
    /// The depth that brings none: what the front itself takes up.
    pub critical: Figure<Length>,
}

impl DepthLine {
    /// Service time of a bed of this depth; none where it isn't deeper than the front.
    #[must_use]
    pub fn service_time(&self, depth: &Known<Length>) -> Option<Figure<Time>> {
        let time = (depth.value.value - self.critical.value.value) * self.per_metre.value.value;
        (time > 0.0).then(|| {
            Figure::new(
                seconds(time),
                Formula::ServiceTimeByDepth,
                vec![
                    depth.input(Term::MediaDepth),
                    self.critical.input(Term::CriticalDepth),
                    self.per_metre.input(Term::ServiceTimePerMetre),
                ],
            )
        })
    }
}

/// The line through readings of depth and service time to one outlet limit, at one inlet and one flow per area.
///
/// ```text
/// t = N₀/(C₀·v)·Z − ln(C₀/C_b − 1)/(k·C₀)
/// ```
///
/// Least squares. What the line means: its slope is the time that each metre adds, the depth where it meets zero is the
/// critical depth.
///
/// # Validity
/// Readings of the same medium, inlet, outlet limit and flow per area; other flows or inlets move slope and critical depth.
///
/// # Errors
/// [`Term::ServiceTime`] with fewer than two depths that differ, or a line that doesn't rise; [`Term::MediaDepth`] or
/// [`Term::ServiceTime`] of a reading not above zero.
///
/// # Sources
/// R. A. Hutchins (1973), Chemical Engineering 80(19), 133–138, from memory; the line is checked against numpy.
///
/// # Example
/// ```
/// use bedwright_calc::life::capacity::depth_line;
/// use bedwright_calc::quantity::{Known, metres, seconds};
/// // 1 m lasts 10 days, 2 m last 25: 15 days a metre, a third of a metre brings none.
/// let day = 86_400.0;
/// let reading = |depth: f64, days: f64| (Known::measured(metres(depth)), Known::measured(seconds(days * day)));
/// let line = depth_line(&[reading(1.0, 10.0), reading(2.0, 25.0)]).unwrap();
/// assert!((line.per_metre.value.value / day - 15.0).abs() < 1e-9);
/// assert!((line.critical.value.value - 1.0 / 3.0).abs() < 1e-12);
/// ```
pub fn depth_line(readings: &[(Known<Length>, Known<Time>)]) -> Result<DepthLine, Problem> {
    for (depth, time) in readings {
        positive(Term::MediaDepth, depth.value.value, depth.value.into())?;
        positive(Term::ServiceTime, time.value.value, time.value.into())?;
    }
    let count = readings.len() as f64;
    let depth = readings.iter().map(|(depth, _)| depth.value.value).sum::<f64>() / count;
    let time = readings.iter().map(|(_, time)| time.value.value).sum::<f64>() / count;
    let across = readings.iter().map(|(z, _)| (z.value.value - depth) * (z.value.value - depth)).sum::<f64>();
    let along = readings.iter().map(|(z, t)| (z.value.value - depth) * (t.value.value - time)).sum::<f64>();
    let slope = along / across;
    if readings.len() < 2 || !(across > 0.0 && slope > 0.0 && slope.is_finite()) {
        return Err(Problem::new(Term::ServiceTime, Fault::NoSolution));
    }
    let inputs: Vec<Input> = readings
        .iter()
        .flat_map(|(depth, time)| [depth.input(Term::MediaDepth), time.input(Term::ServiceTime)])
        .collect();
    Ok(DepthLine {
        per_metre: Figure::new(seconds(slope), Formula::BedDepthServiceTime, inputs.clone()),
        critical: Figure::new(metres(depth - time / slope), Formula::CriticalDepth, inputs),
    })
}
