//! The backwash window: over the water's temperature, from "lifts enough" to "reaches the ceiling".

use super::backwash::finest_settling;
use super::bed::Bed;
use super::evidence::Lines;
use crate::quantity::{Fault, Known, Problem, Temperature, Term, VolumeRate, cubic_metres_per_second, kelvins};
use crate::water::{Water, fluid_at};

/// The window at one temperature; each line low, likely, high.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WindowRow {
    /// The temperature.
    pub temperature: Temperature,
    /// Flow from which the bed stands out by the least expansion.
    pub lifts_from: [Option<VolumeRate>; 3],
    /// Flow up to which it stays under the ceiling.
    pub stays_to: [Option<VolumeRate>; 3],
    /// Flow from which the finest grains leave.
    pub carries_from: Option<VolumeRate>,
}

/// The backwash window at evenly spaced temperatures, both ends included.
///
/// Warmer water lifts less, so every line rises with the temperature.
///
/// # Errors
/// [`Term::WaterTemperature`] outside 0 to 60 °C; [`Term::TemperatureLow`] above the highest; [`Term::MinimumExpansion`]
/// below zero or not a number.
///
/// # Sources
/// Our own rule on the equations of [`super::fluidisation`].
///
/// # Example
/// See [`super::backwash`], which asks for the same at both ends of the year.
pub fn window(
    bed: &Bed,
    lines: &Lines,
    minimum_expansion: &Known<f64>,
    from: &Known<Temperature>,
    to: &Known<Temperature>,
    rows: usize,
) -> Result<Vec<WindowRow>, Problem> {
    for temperature in [from, to] {
        bed.sinks_in(&Water::at(temperature)?)?;
    }
    let (low, high) = (from.value.value, to.value.value);
    if low > high {
        return Err(Problem::new(
            Term::TemperatureLow,
            Fault::NotBelow { value: from.value.into(), other: Term::TemperatureHigh, limit: to.value.into() },
        ));
    }
    let minimum = minimum_expansion.value;
    if minimum.is_nan() || minimum < 0.0 {
        return Err(Problem::new(Term::MinimumExpansion, Fault::NotPositive { value: minimum.into() }));
    }
    let weights = [lines.low.value, lines.likely.value, lines.high.value];
    let area = bed.area.value.value;
    let steps = rows.max(2) - 1;
    // The speeds of the row before: the next ones lie near them.
    let mut before: [[Option<f64>; 3]; 2] = [[None; 3]; 2];
    Ok((0..=steps)
        .map(|i| {
            let kelvin = low + (high - low) * i as f64 / steps as f64;
            let fluid = fluid_at(kelvin);
            let flow = |v: f64| cubic_metres_per_second(v * area);
            for (speeds, expansion) in before.iter_mut().zip([minimum, bed.room.value]) {
                for (speed, weight) in speeds.iter_mut().zip(weights) {
                    *speed = bed.speed_near(fluid, expansion, weight, *speed);
                }
            }
            let [lifts, stays] = before;
            WindowRow {
                temperature: kelvins(kelvin),
                lifts_from: lifts.map(|speed| speed.map(flow)),
                stays_to: stays.map(|speed| speed.map(flow)),
                carries_from: finest_settling(bed, fluid).map(flow),
            }
        })
        .collect())
}
