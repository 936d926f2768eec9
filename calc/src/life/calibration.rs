//! A straight line through readings, and back: where a reading of a given size was taken.

use super::student::t_quantile;
use crate::quantity::{Fault, Problem, Term};

/// A straight line fitted to readings by least squares. Its numbers are bare: whoever fits knows their units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Line {
    /// Height of the line at the middle of the places.
    pub middle: f64,
    /// How much it rises over one unit of place.
    pub slope: f64,
    /// The middle of the places.
    pub place: f64,
    /// Sum of the squares of the places' distances from their middle.
    pub squares: f64,
    /// Variance of one reading about the line.
    pub variance: f64,
    /// How many readings.
    pub count: u32,
}

/// A likely value and how far it may be off, both ways.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// The lowest it may be.
    pub low: f64,
    /// The likely value.
    pub likely: f64,
    /// The highest it may be.
    pub high: f64,
}

/// The straight line through readings that leaves the least squares.
///
/// ```text
/// slope = Σ(x − x̄)(y − ȳ)/Σ(x − x̄)²; s² = Σ(y − line)²/(n − 2)
/// ```
///
/// # Errors
/// [`Term::Readings`] fewer than three, or not a number; [`Term::ReadingPlace`] where all were taken at one place.
///
/// # Sources
/// N. R. Draper, H. Smith (1998), Applied Regression Analysis, 3rd ed., ch. 1.
///
/// # Example
/// By hand: 1, 3, 5 at 0, 1, 2 lie on a line that rises by 2.
/// ```
/// let line = bedwright_calc::life::straight_line(&[(0.0, 1.0), (1.0, 3.0), (2.0, 5.0)]).unwrap();
/// assert_eq!((line.middle, line.slope, line.place), (3.0, 2.0, 1.0));
/// ```
pub fn straight_line(readings: &[(f64, f64)]) -> Result<Line, Problem> {
    let count = readings.len() as u32;
    if count < 3 || readings.iter().any(|(x, y)| !x.is_finite() || !y.is_finite()) {
        let value = count.into();
        return Err(Problem::new(
            Term::Readings,
            Fault::OutOfRange { value, low: 3_u32.into(), high: u32::MAX.into() },
        ));
    }
    let n = f64::from(count);
    let place = readings.iter().map(|(x, _)| x).sum::<f64>() / n;
    let middle = readings.iter().map(|(_, y)| y).sum::<f64>() / n;
    let squares: f64 = readings.iter().map(|(x, _)| (x - place) * (x - place)).sum();
    if squares <= 0.0 {
        return Err(Problem::new(Term::ReadingPlace, Fault::NoSolution));
    }
    let slope = readings.iter().map(|(x, y)| (x - place) * (y - middle)).sum::<f64>() / squares;
    let rest = |(x, y): &(f64, f64)| y - middle - slope * (x - place);
    let left: f64 = readings.iter().map(|reading| rest(reading) * rest(reading)).sum();
    Ok(Line { middle, slope, place, squares, variance: left / (n - 2.0), count })
}

impl Line {
    /// Where a reading of this size was taken, with the interval that holds the place in `confidence` of all cases.
    ///
    /// ```text
    /// x₀ = x̄ + (y₀ − ȳ)/b; g = t²·s²/(b²·Sxx)
    /// x₀ + ((x₀ − x̄)·g ± (t·s/b)·√((x₀ − x̄)²/Sxx + (1 − g)·(1/m + 1/n)))/(1 − g)
    /// ```
    ///
    /// | symbol | here |
    /// |---|---|
    /// | y₀ | `size`: one reading (m = 1) where `single`, else the line itself (no 1/m) |
    /// | t | Student's t at n − 2 degrees of freedom |
    ///
    /// # Errors
    /// [`Term::Confidence`] as [`t_quantile`]; [`Term::Trend`] where the line may as well be level (g ≥ 1): then no finite
    /// interval is there.
    ///
    /// # Sources
    /// E. C. Fieller (1954), J. R. Stat. Soc. B 16:175–185; as in B. M. Greenwell, C. M. Schubert Kabban (2014), The R
    /// Journal 6(1):90–100.
    ///
    /// # Example
    /// A thermostat (F. A. Graybill, H. K. Iyer, 1994): 100.1 (99.63, 100.59) at 90 %.
    /// ```
    /// let set = [96.0, 98.0, 100.0, 102.0, 104.0, 106.0, 108.0, 110.0];
    /// let read = [95.71, 98.16, 99.52, 102.09, 103.79, 106.18, 108.14, 110.21];
    /// let readings: Vec<_> = set.into_iter().zip(read).collect();
    /// let found = bedwright_calc::life::straight_line(&readings).unwrap().place_of(100.0, true, 0.9).unwrap();
    /// assert!((found.low - 99.63).abs() < 0.005 && (found.high - 100.59).abs() < 0.005);
    /// ```
    pub fn place_of(&self, size: f64, single: bool, confidence: f64) -> Result<Span, Problem> {
        let t = t_quantile(f64::midpoint(1.0, confidence), self.count.saturating_sub(2))?;
        let s = self.variance.sqrt();
        let g = t * t * self.variance / (self.slope * self.slope * self.squares);
        let level = |g: f64| {
            Problem::new(Term::Trend, Fault::NotBelow { value: g.into(), other: Term::Trend, limit: 1.0.into() })
        };
        if g.is_nan() || g >= 1.0 {
            return Err(level(g));
        }
        let away = (size - self.middle) / self.slope;
        let of_reading = if single { 1.0 } else { 0.0 } + 1.0 / f64::from(self.count);
        let root = (away * away / self.squares + (1.0 - g) * of_reading).sqrt();
        let reach = (t * s / self.slope).abs() * root;
        let at = |half: f64| self.place + away + (away * g + half) / (1.0 - g);
        Ok(Span { low: at(-reach), likely: self.place + away, high: at(reach) })
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)] // Tests say so by panicking.

    use super::straight_line;
    use crate::quantity::Term;

    #[test]
    fn a_level_line_tells_no_place() {
        let line = straight_line(&[(0.0, 1.0), (1.0, 1.2), (2.0, 0.9), (3.0, 1.05)]).unwrap();
        assert_eq!(line.place_of(2.0, true, 0.9).unwrap_err().term, Term::Trend);
    }

    #[test]
    fn readings_at_one_place_or_too_few_are_refused() {
        assert_eq!(straight_line(&[(1.0, 1.0), (1.0, 2.0), (1.0, 3.0)]).unwrap_err().term, Term::ReadingPlace);
        assert_eq!(straight_line(&[(1.0, 1.0), (2.0, 2.0)]).unwrap_err().term, Term::Readings);
        assert_eq!(straight_line(&[(1.0, 1.0), (2.0, 2.0), (3.0, f64::NAN)]).unwrap_err().term, Term::Readings);
    }

    #[test]
    fn a_single_reading_is_less_sure_than_the_line() {
        let line = straight_line(&[(0.0, 0.1), (1.0, 1.2), (2.0, 1.9), (3.0, 3.05)]).unwrap();
        let (wide, narrow) = (line.place_of(2.0, true, 0.9).unwrap(), line.place_of(2.0, false, 0.9).unwrap());
        assert!(wide.low < narrow.low && narrow.high < wide.high && wide.likely == narrow.likely);
    }
}
