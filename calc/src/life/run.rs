//! How long a filter runs from wash to wash, by the pressure it was seen to lose.

use super::calibration::straight_line;
use crate::quantity::problem::{between, positive};
use crate::quantity::{Fault, Figure, Formula, Input, Known, Pressure, Problem, Term, Time, seconds};

/// Pressure lost over a filter some time after it was washed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DropReading {
    /// Time since the wash.
    pub since: Known<Time>,
    /// Pressure lost then, the valve's and the underdrain's included.
    pub lost: Known<Pressure>,
}

/// Time from a wash until so much pressure is lost that the next is due.
#[derive(Clone, Debug, PartialEq)]
pub struct WashRun {
    /// The likely time.
    pub time: Figure<Time>,
    /// Where one run ends in nine of ten cases, never before the wash; nothing with fewer than three readings, or where they scatter so much that
    /// no end can be told.
    pub range: Option<(Time, Time)>,
}

/// In so many cases the range holds the end of a run.
const CONFIDENCE: f64 = 0.9;
const TEN_YEARS: f64 = 10.0 * 365.25 * 86_400.0;

/// Time from a wash until a filter loses `terminal`, by a straight line through readings of the same flow.
///
/// ```text
/// t = t̄ + (Δp_T − p̄)/b; b = Σ(t − t̄)(Δp − p̄)/Σ(t − t̄)²
/// ```
///
/// | symbol | here |
/// |---|---|
/// | Δp_T | `terminal`, the loss at which it is washed |
/// | t̄, p̄ | means of time since the wash and of the loss read then |
///
/// # Validity
/// A bed that fills in its depth, at one flow and about one temperature: there the loss rises evenly with what was filtered
/// (common practice). Where a cake closes the surface it rises ever faster, and the line promises too much.
///
/// # Errors
/// [`Term::TerminalDrop`] or [`Term::DropSeen`] not above zero; [`Term::SinceWash`] outside 0 to ten years; [`Term::Readings`] fewer than
/// two times that differ; [`Term::Trend`] where the loss doesn't rise; [`Term::RunLength`] where it was above `terminal` right
/// after the wash.
///
/// # Sources
/// That it rises evenly: common practice. The line and its range: [`straight_line`] and [`Line::place_of`].
///
/// [`Line::place_of`]: super::Line::place_of
///
/// # Example
/// 2 psi after a day, 4 after two, 6 after three: 10 psi after five days.
/// ```
/// use bedwright_calc::life::{DropReading, run_by_drop};
/// use bedwright_calc::quantity::{Known, pascals, seconds};
/// let (day, psi) = (86_400.0, 6894.757);
/// let read = |days: f64, lost: f64| DropReading {
///     since: Known::measured(seconds(days * day)),
///     lost: Known::measured(pascals(lost * psi)),
/// };
/// let run = run_by_drop(&[read(1.0, 2.0), read(2.0, 4.0), read(3.0, 6.0)], &Known::typed(pascals(10.0 * psi))).unwrap();
/// assert!((run.time.value.value / day - 5.0).abs() < 1e-9);
/// ```
pub fn run_by_drop(readings: &[DropReading], terminal: &Known<Pressure>) -> Result<WashRun, Problem> {
    positive(Term::TerminalDrop, terminal.value.value, terminal.value.into())?;
    for DropReading { since, lost } in readings {
        positive(Term::DropSeen, lost.value.value, lost.value.into())?;
        between(Term::SinceWash, since.value.value, (0.0, TEN_YEARS), |x| seconds(x).into())?;
    }
    let count = readings.len() as f64;
    let mean = |read: fn(&DropReading) -> f64| readings.iter().map(read).sum::<f64>() / count;
    let (time, loss) = (mean(|reading| reading.since.value.value), mean(|reading| reading.lost.value.value));
    let over = |read: fn(&DropReading, f64, f64) -> f64| readings.iter().map(|one| read(one, time, loss)).sum::<f64>();
    let across = over(|one, time, _| (one.since.value.value - time) * (one.since.value.value - time));
    let along = over(|one, time, loss| (one.since.value.value - time) * (one.lost.value.value - loss));
    if readings.len() < 2 || !(across > 0.0 && across.is_finite()) {
        let value = u32::try_from(readings.len()).unwrap_or(u32::MAX).into();
        return Err(Problem::new(
            Term::Readings,
            Fault::OutOfRange { value, low: 2_u32.into(), high: u32::MAX.into() },
        ));
    }
    let slope = along / across;
    if !(slope > 0.0 && slope.is_finite()) {
        return Err(Problem::new(Term::Trend, Fault::NoSolution));
    }
    let run = time + (terminal.value.value - loss) / slope;
    if !(run > 0.0 && run.is_finite()) {
        return Err(Problem::new(Term::RunLength, Fault::NoSolution));
    }
    let bare: Vec<(f64, f64)> = readings.iter().map(|one| (one.since.value.value, one.lost.value.value)).collect();
    let spread = straight_line(&bare).and_then(|line| line.place_of(terminal.value.value, true, CONFIDENCE));
    let range = spread.ok().filter(|span| span.low.is_finite() && span.high.is_finite());
    let mut inputs: Vec<Input> =
        readings.iter().flat_map(|one| [one.since.input(Term::SinceWash), one.lost.input(Term::DropSeen)]).collect();
    inputs.push(terminal.input(Term::TerminalDrop));
    Ok(WashRun {
        time: Figure::new(seconds(run), Formula::RunByDrop, inputs),
        range: range.map(|span| (seconds(span.low.max(0.0)), seconds(span.high))),
    })
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)] // Tests say so by panicking.

    use super::{DropReading, run_by_drop};
    use crate::quantity::{Known, Term, pascals, seconds};

    fn read(since: f64, lost: f64) -> DropReading {
        DropReading { since: Known::measured(seconds(since)), lost: Known::measured(pascals(lost)) }
    }

    fn refused(readings: &[DropReading], terminal: f64) -> Term {
        run_by_drop(readings, &Known::typed(pascals(terminal))).unwrap_err().term
    }

    #[test]
    fn two_readings_give_a_line_and_no_range_three_give_both() {
        let two = run_by_drop(&[read(100.0, 10.0), read(200.0, 20.0)], &Known::typed(pascals(50.0))).unwrap();
        assert!((two.time.value.value - 500.0).abs() < 1e-9 && two.range.is_none());
        let three = [read(100.0, 10.0), read(200.0, 21.0), read(300.0, 29.0)];
        let three = run_by_drop(&three, &Known::typed(pascals(50.0))).unwrap();
        let (low, high) = three.range.unwrap();
        assert!(low < three.time.value && three.time.value < high);
    }

    #[test]
    fn what_tells_no_run_is_refused_by_name() {
        let rising = [read(100.0, 10.0), read(200.0, 20.0)];
        assert_eq!(refused(&[], 50.0), Term::Readings);
        assert_eq!(refused(&[read(100.0, 10.0)], 50.0), Term::Readings);
        assert_eq!(refused(&[read(100.0, 10.0), read(100.0, 12.0)], 50.0), Term::Readings);
        assert_eq!(refused(&[read(100.0, 10.0), read(200.0, 9.0)], 50.0), Term::Trend);
        assert_eq!(refused(&[read(100.0, 90.0), read(200.0, 100.0)], 50.0), Term::RunLength);
        assert_eq!(refused(&rising, 0.0), Term::TerminalDrop);
        assert_eq!(refused(&rising, f64::NAN), Term::TerminalDrop);
        assert_eq!(refused(&[read(-1.0, 10.0), read(200.0, 20.0)], 50.0), Term::SinceWash);
        assert_eq!(refused(&[read(1.0, 0.0), read(200.0, 20.0)], 50.0), Term::DropSeen);
    }
}
