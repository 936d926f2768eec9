//! The S-shaped curve along which the outlet of a bed that is being spent rises to its inlet.
//!
//! One curve, met under three names: Yoon and Nelson write it with a rate and a middle, Thomas and Bohart and Adams with
//! a rate constant and a capacity. It is fitted once.

use super::calibration::Span;
use super::student::t_quantile;
use crate::order::{Between as _, sorted};
use crate::quantity::root::crossing;
use crate::quantity::{Fault, Problem, Term};

/// A reading at the outlet. Its place is bare: days, bed volumes or cubic metres, as whoever fits has them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spent {
    /// When it was taken, or after how much water.
    pub at: f64,
    /// Outlet over inlet; nought where nothing was found.
    pub share: f64,
}

/// Which readings a curve was fitted to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Front {
    /// Readings that went into the fit: those between nothing and the inlet.
    pub used: u32,
    /// Readings that showed nothing: they say only that the front had not come.
    pub nothing: u32,
    /// Readings at the inlet or above it: they say only that the front had gone.
    pub whole: u32,
}

/// A fitted curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Breakthrough {
    /// Which readings it was fitted to.
    pub front: Front,
    /// How fast it rises, over one unit of place.
    pub rate: f64,
    /// Where half the inlet comes through.
    pub middle: f64,
    /// Standard deviation of one reading about the curve, as a share of the inlet.
    pub spread: f64,
    curve: Curve,
    scale: Scale,
    /// Inverse of the normal matrix: level·level, level·rise, rise·rise.
    inverse: (f64, f64, f64),
}

/// share = 1/(1 + exp(−(level + rise·z)))
#[derive(Clone, Copy, Debug, PartialEq)]
struct Curve {
    level: f64,
    rise: f64,
}

/// Places as they are fitted: about nought, and of the size of one.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Scale {
    place: f64,
    unit: f64,
}

/// The normal equations at a curve.
struct Normal {
    left: f64,
    matrix: (f64, f64, f64),
    gradient: (f64, f64),
}

/// Steps of the search at most.
const MOST_STEPS: usize = 200;
/// Shares further from the middle than this many steps of the logit can't be told from nought or one.
const FARTHEST: f64 = 40.0;

/// The curve through readings at the outlet that leaves the least squares of shares.
///
/// ```text
/// C/C₀ = 1/(1 + exp(k·(τ − x)))
/// ```
///
/// | symbol | here |
/// |---|---|
/// | C/C₀ | `share` of a reading |
/// | x | `at` of a reading |
/// | k, τ | `rate`, `middle` of the answer |
///
/// Fitted to the shares themselves, not to their logits: errors of a reading near nought or near the inlet would blow up.
/// Readings that show nothing are left out: a test shows nothing below what it can detect, so they scatter less than they
/// should; two thousand invented vessels say that the intervals hold better so. The order doesn't matter.
///
/// # Errors
/// [`Term::Readings`] fewer than three between nothing and the inlet, or one that is not a number; [`Term::ReadingPlace`] where
/// all were taken at one place; [`Term::Trend`] where the outlet doesn't rise.
///
/// # Sources
/// Y. H. Yoon, J. H. Nelson (1984), Am. Ind. Hyg. Assoc. J. 45:509–516; the same curve as H. C. Thomas (1944) and the whole
/// form of G. S. Bohart, E. Q. Adams (1920).
///
/// # Example
/// Readings made with k = 2, τ = 5 give them back.
/// ```
/// use bedwright_calc::life::{Spent, breakthrough};
/// let share = |x: f64| 1.0 / (1.0 + (2.0 * (5.0 - x)).exp());
/// let readings: Vec<Spent> = [3.0, 4.0, 4.5, 5.5, 6.0].map(|at| Spent { at, share: share(at) }).to_vec();
/// let found = breakthrough(&readings).unwrap();
/// assert!((found.rate - 2.0).abs() < 1e-9 && (found.middle - 5.0).abs() < 1e-9);
/// ```
pub fn breakthrough(readings: &[Spent]) -> Result<Breakthrough, Problem> {
    let few = |count: usize| {
        let value = (count as u32).into();
        Problem::new(Term::Readings, Fault::OutOfRange { value, low: 3_u32.into(), high: u32::MAX.into() })
    };
    if readings.iter().any(|reading| !reading.at.is_finite() || !reading.share.is_finite()) {
        return Err(few(0));
    }
    let mut front = sorted(readings.to_vec(), |a, b| a.at.total_cmp(&b.at));
    let nothing = front.iter().filter(|reading| reading.share <= 0.0).count();
    let whole = front.iter().filter(|reading| reading.share >= 1.0).count();
    front.retain(|reading| reading.share > 0.0 && reading.share < 1.0);
    if front.len() < 3 {
        return Err(few(front.len()));
    }
    let scale = Scale::of(&front).ok_or(Problem::new(Term::ReadingPlace, Fault::NoSolution))?;
    let level = || Problem::new(Term::Trend, Fault::NotPositive { value: 0.0.into() });
    let curve = Curve::start(&front, scale).and_then(|start| start.settle(&front, scale)).ok_or_else(level)?;
    if curve.rise <= 0.0 || !curve.rise.is_finite() || !curve.level.is_finite() {
        return Err(level());
    }
    let normal = curve.normal(&front, scale);
    let inverse = inverted(normal.matrix).ok_or_else(level)?;
    let freedom = (front.len() - 2) as f64;
    Ok(Breakthrough {
        front: Front { used: front.len() as u32, nothing: nothing as u32, whole: whole as u32 },
        rate: curve.rise / scale.unit,
        middle: scale.place - curve.level / curve.rise * scale.unit,
        spread: (normal.left / freedom).sqrt(),
        curve,
        scale,
        inverse,
    })
}

impl Breakthrough {
    /// Share of the inlet that comes through at a place.
    #[must_use]
    pub fn share_at(&self, place: f64) -> f64 {
        self.curve.share(self.scale.fitted(place))
    }

    /// Where the outlet reaches a share of the inlet, with the interval that holds the place in `confidence` of all cases:
    /// all places where a reading of this share may have been taken.
    ///
    /// ```text
    /// |C/C₀(x) − share| = t·√(s²·(1/m) + var(x)); var(x) = s²·∇ᵀ(JᵀJ)⁻¹∇
    /// ```
    ///
    /// `single` is for one reading (m = 1); without it the interval is that of the curve itself (no 1/m). t is Student's
    /// at n − 2 degrees of freedom.
    ///
    /// # Errors
    /// [`Term::OutletLimit`] not between nought and one, or lost in the scatter of the readings; [`Term::Confidence`] as
    /// [`t_quantile`]; [`Term::Trend`] where the readings may as well be level, or the interval has no end.
    ///
    /// # Sources
    /// Inversion interval: B. M. Greenwell, C. M. Schubert Kabban (2014), The R Journal 6(1):90–100.
    ///
    /// # Example
    /// See [`breakthrough`]; without scatter the interval has no width.
    /// ```
    /// use bedwright_calc::life::{Spent, breakthrough};
    /// let share = |x: f64| 1.0 / (1.0 + (2.0 * (5.0 - x)).exp());
    /// let readings: Vec<Spent> = [3.0, 4.0, 4.5, 5.5, 6.0].map(|at| Spent { at, share: share(at) }).to_vec();
    /// let found = breakthrough(&readings).unwrap().reached(0.5, true, 0.9).unwrap();
    /// assert!((found.likely - 5.0).abs() < 1e-9 && found.high - found.low < 1e-6);
    /// ```
    pub fn reached(&self, share: f64, single: bool, confidence: f64) -> Result<Span, Problem> {
        if !(share > 0.0 && share < 1.0) {
            return Err(Problem::new(
                Term::OutletLimit,
                Fault::OutOfRange { value: share.into(), low: 0.0.into(), high: 1.0.into() },
            ));
        }
        let t = t_quantile(f64::midpoint(1.0, confidence), self.front.used.saturating_sub(2))?;
        let (of_level, of_both, of_rise) = self.inverse;
        let Curve { level, rise } = self.curve;
        let g = t * t * self.spread * self.spread * of_rise / (rise * rise);
        let no_trend =
            Problem::new(Term::Trend, Fault::NotBelow { value: g.into(), other: Term::Trend, limit: 1.0.into() });
        if g.is_nan() || g >= 1.0 {
            return Err(no_trend);
        }
        let scatter = t * self.spread;
        if single && scatter >= share.min(1.0 - share) {
            let (value, limit) = (share.into(), scatter.into());
            return Err(Problem::new(Term::OutletLimit, Fault::NotAbove { value, other: Term::ReadingSpread, limit }));
        }
        let of_reading = if single { 1.0 } else { 0.0 };
        let outside = |z: f64| {
            let at = self.curve.share(z);
            let weight = at * (1.0 - at);
            let mean = weight * weight * (of_level + 2.0 * z * of_both + z * z * of_rise);
            (at - share).abs() - scatter * (of_reading + mean).max(0.0).sqrt()
        };
        let likely = (libm::log(share / (1.0 - share)) - level) / rise;
        let end = |way: f64| {
            let step = way * 0.25 / rise;
            let mut near = likely;
            for _ in 0..(FARTHEST / 0.25) as u32 {
                let far = near + step;
                if outside(far) > 0.0 {
                    return Ok(crossing(outside, near, far, 1e-14));
                }
                near = far;
            }
            Err(no_trend)
        };
        let (low, high) = (end(-1.0)?, end(1.0)?);
        let place = |z: f64| self.scale.place + z * self.scale.unit;
        Ok(Span { low: place(low), likely: place(likely), high: place(high) })
    }
}

impl Scale {
    fn of(readings: &[Spent]) -> Option<Scale> {
        let n = readings.len() as f64;
        let place = readings.iter().map(|reading| reading.at).sum::<f64>() / n;
        let away = |reading: &Spent| (reading.at - place) * (reading.at - place);
        let unit = (readings.iter().map(away).sum::<f64>() / n).sqrt();
        (unit.is_finite() && unit > 0.0).then_some(Scale { place, unit })
    }

    fn fitted(self, place: f64) -> f64 {
        (place - self.place) / self.unit
    }
}

impl Curve {
    fn share(self, z: f64) -> f64 {
        1.0 / (1.0 + libm::exp(-(self.level + self.rise * z)))
    }

    /// A straight line through the logits, each weighed by how much of it is reading and not error: (r·(1 − r))².
    fn start(readings: &[Spent], scale: Scale) -> Option<Curve> {
        let (mut w, mut wz, mut wy, mut wzz, mut wzy) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for reading in readings {
            let share = reading.share.between(0.01, 0.99);
            let (z, y) = (scale.fitted(reading.at), libm::log(share / (1.0 - share)));
            let weight = share * (1.0 - share) * share * (1.0 - share);
            w += weight;
            wz += weight * z;
            wy += weight * y;
            wzz += weight * z * z;
            wzy += weight * z * y;
        }
        let squares = wzz - wz * wz / w;
        let rise = (wzy - wz * wy / w) / squares;
        let curve = Curve { level: (wy - rise * wz) / w, rise };
        (curve.level.is_finite() && curve.rise.is_finite()).then_some(curve)
    }

    fn normal(self, readings: &[Spent], scale: Scale) -> Normal {
        let mut normal = Normal { left: 0.0, matrix: (0.0, 0.0, 0.0), gradient: (0.0, 0.0) };
        for reading in readings {
            let z = scale.fitted(reading.at);
            let share = self.share(z);
            let slope = share * (1.0 - share);
            let rest = reading.share - share;
            normal.left += rest * rest;
            normal.matrix.0 += slope * slope;
            normal.matrix.1 += slope * slope * z;
            normal.matrix.2 += slope * slope * z * z;
            normal.gradient.0 += slope * rest;
            normal.gradient.1 += slope * z * rest;
        }
        normal
    }

    /// Goes down to the least squares: Gauss and Newton's step, held back where it would go up (Levenberg, Marquardt).
    fn settle(self, readings: &[Spent], scale: Scale) -> Option<Curve> {
        let mut curve = self;
        let mut normal = curve.normal(readings, scale);
        let mut held = 1e-3;
        for _ in 0..MOST_STEPS {
            let (a, b, c) = normal.matrix;
            let (u, v, w) = inverted((a * (1.0 + held), b, c * (1.0 + held)))?;
            let (p, q) = normal.gradient;
            let (to_level, to_rise) = (u * p + v * q, v * p + w * q);
            let next = Curve { level: curve.level + to_level, rise: curve.rise + to_rise };
            let ahead = next.normal(readings, scale);
            let still = (to_level.abs() + to_rise.abs()) <= 1e-15 * (curve.level.abs() + curve.rise.abs());
            if ahead.left <= normal.left {
                (curve, normal) = (next, ahead);
                held = (held / 10.0).max(1e-12);
            } else {
                held *= 10.0;
            }
            if still || held > 1e12 {
                break;
            }
        }
        Some(curve)
    }
}

/// The inverse of a symmetric matrix of two rows.
fn inverted((a, b, c): (f64, f64, f64)) -> Option<(f64, f64, f64)> {
    let determinant = a * c - b * b;
    (determinant.is_finite() && determinant > 0.0).then_some((c / determinant, -b / determinant, a / determinant))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)] // Tests say so by panicking.

    use super::{Spent, breakthrough};
    use crate::quantity::Term;

    fn readings(shares: &[f64]) -> Vec<Spent> {
        shares.iter().enumerate().map(|(place, &share)| Spent { at: place as f64, share }).collect()
    }

    #[test]
    fn a_bed_that_lets_nothing_through_has_no_curve_yet() {
        assert_eq!(breakthrough(&readings(&[0.0; 12])).unwrap_err().term, Term::Readings);
        assert_eq!(breakthrough(&readings(&[0.0, 0.0, 0.0, 0.1])).unwrap_err().term, Term::Readings);
    }

    #[test]
    fn an_outlet_that_falls_has_none() {
        assert_eq!(breakthrough(&readings(&[0.6, 0.5, 0.4, 0.2])).unwrap_err().term, Term::Trend);
    }

    #[test]
    fn the_order_of_readings_says_nothing() {
        let there = readings(&[0.0, 0.05, 0.13, 0.3, 0.42, 0.7]);
        let back: Vec<Spent> = there.iter().rev().copied().collect();
        assert_eq!(breakthrough(&there), breakthrough(&back));
    }

    #[test]
    fn a_limit_within_the_scatter_can_t_be_told() {
        let found = breakthrough(&readings(&[0.02, 0.3, 0.15, 0.5, 0.45, 0.9])).unwrap();
        assert_eq!(found.reached(0.02, true, 0.9).unwrap_err().term, Term::OutletLimit);
    }

    #[test]
    fn what_is_no_number_is_refused() {
        let mut bad = readings(&[0.1, 0.2, 0.5, 0.6]);
        bad[2].share = f64::NAN;
        assert!(breakthrough(&bad).is_err());
        let good = breakthrough(&readings(&[0.1, 0.2, 0.5, 0.6])).unwrap();
        assert!(good.reached(f64::NAN, true, 0.9).is_err() && good.reached(0.5, true, f64::NAN).is_err());
    }
}
