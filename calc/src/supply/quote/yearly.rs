//! What a vessel takes over a year.

use crate::quantity::problem::{positive, within};
use crate::quantity::{Amount, Figure, Formula, Known, Problem, Term, Time, Volume, VolumeRate, cubic_metres, seconds};

/// The most washes in a year: one an hour.
const MOST_WASHES: f64 = 8_784.0;
/// The longest a wash may take, in seconds: a day.
const LONGEST: f64 = 86_400.0;

/// Water that backwash takes in a year, for all vessels of a kind together.
///
/// ```text
/// V = n · Q · t · N
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | n | `vessels` | 1 |
/// | Q | `flow`: of one vessel in backwash | m³/s |
/// | t | `time`: how long one wash takes | s |
/// | N | `washes`: washes of one vessel in a year | 1 |
///
/// More of any of them never gives less. Rinses are not counted: their time is to be typed with the wash.
///
/// # Errors
/// A flow, a time or a number of washes that isn't more than nought; a wash longer than a day; more washes than hours.
///
/// # Sources
/// Arithmetic.
///
/// # Example
/// Two vessels, 7 gpm (4.4163·10⁻⁴ m³/s), 10 min, 122 times a year: 17 080 gallons, 64.655 m³.
/// ```
/// use bedwright_calc::quantity::{Known, cubic_metres_per_second, seconds};
/// use bedwright_calc::supply::quote::wash_water_per_year;
/// let flow = Known::typed(cubic_metres_per_second(7.0 * 3.785_411_784e-3 / 60.0));
/// let water = wash_water_per_year(2, &flow, &Known::typed(seconds(600.0)), &Known::typed(122.0)).unwrap();
/// assert!((water.value.value - 64.655).abs() < 5e-4);
/// ```
pub fn wash_water_per_year(
    vessels: u32,
    flow: &Known<VolumeRate>,
    time: &Known<Time>,
    washes: &Known<f64>,
) -> Result<Figure<Volume>, Problem> {
    positive(Term::BackwashFlow, flow.value.value, flow.value.into())?;
    within(Term::WashTime, time.value.value, (0.0, LONGEST), |x| seconds(x).into())?;
    within(Term::WashesPerYear, washes.value, (0.0, MOST_WASHES), Amount::Ratio)?;
    let inputs = vec![
        Known::typed(vessels).input(Term::VesselCount),
        flow.input(Term::BackwashFlow),
        time.input(Term::WashTime),
        washes.input(Term::WashesPerYear),
    ];
    let volume = f64::from(vessels) * flow.value.value * time.value.value * washes.value;
    Ok(Figure::new(cubic_metres(volume), Formula::WashWaterYear, inputs))
}
