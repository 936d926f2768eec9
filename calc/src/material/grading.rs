//! How the sizes of a material's grains are spread: from the mesh, the effective size and the uniformity.

use crate::quantity::root::crossing;
use crate::quantity::{Fault, Known, Length, Problem, Term, metres, problem::within};

/// Fractions of equal mass that a layer is reckoned in.
pub const FRACTIONS: usize = 100;

/// Grains are larger than dust and smaller than a head: from 1 µm to 0.3 m.
pub(crate) const GRAIN_M: (f64, f64) = (1e-6, 0.3);

/// Two sizes that differ by less are one.
const ROUNDING: f64 = 1e-9;

/// The sizes of a layer's grains, and how they were found.
#[derive(Clone, Debug, PartialEq)]
pub struct Grading {
    shape: Shape,
    /// Natural logarithms of the lower and the upper sieve, metres.
    low: f64,
    high: f64,
}

/// How the sizes are spread between the sieves.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Shape {
    /// All grains have one size.
    One,
    /// The logarithm of the size is normally distributed, cut at the mesh.
    LogNormal {
        /// Mean of the logarithm before the cut.
        mean: f64,
        /// Standard deviation before the cut.
        sigma: f64,
    },
    /// No such distribution has these sizes: straight lines on logarithmic paper through the sieves, d10 and d60.
    Straight {
        /// Logarithm of the effective size.
        d10: f64,
        /// Logarithm of the size that six tenths are finer than.
        d60: f64,
    },
    /// Only the mesh is known: evenly spread on logarithmic paper.
    Even,
}

/// How a grading was found: what a figure built on it must say.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GradingBy {
    /// One size.
    OneSize,
    /// Log-normal, cut at the mesh, with the effective size and uniformity given.
    LogNormal,
    /// Straight lines through what is known, since no log-normal has these sizes.
    StraightLines,
    /// Evenly spread between the sieves, since nothing else is known.
    MeshOnly,
}

impl Grading {
    /// The grading of grains that passed the upper sieve and stayed on the lower, of which a tenth by mass is finer than
    /// the effective size and six tenths are finer than uniformity times that.
    ///
    /// The log-normal is cut at the mesh and fitted so that what *remains* has the given effective size and uniformity.
    /// Where no log-normal has them, straight lines on logarithmic paper go through the four known points; where they
    /// are not known, one line through the two sieves. A uniformity of 1, or both sieves alike, means one size.
    ///
    /// # Validity
    /// Sizes by mass. What is left of the mesh by wear, or comes with the bag as dust, is not in it.
    ///
    /// # Errors
    /// [`Term::GrainLow`] or [`Term::GrainHigh`] not from 1 µm to 0.3 m or the wrong way round; [`Term::EffectiveSize`]
    /// not between the sieves; [`Term::Uniformity`] below 1, or so large that the size lies above the upper sieve.
    ///
    /// # Sources
    /// Definition of effective size and uniformity: M. L. Davis, Water and Wastewater Engineering, ch. 11. The cut
    /// log-normal: our own decision.
    ///
    /// # Example
    /// ```
    /// use bedwright_calc::material::grading::Grading;
    /// use bedwright_calc::quantity::{Known, metres};
    /// let mm = |x: f64| Known::typed(metres(x / 1000.0));
    /// let grading = Grading::new(&mm(0.425), &mm(1.70), Some(&mm(0.65)), Some(&Known::typed(1.7))).unwrap();
    /// assert!((grading.size_finer_than(0.10).value - 0.65e-3).abs() < 1e-12);
    /// assert!((grading.size_finer_than(0.60).value - 1.105e-3).abs() < 1e-12);
    /// ```
    pub fn new(
        low: &Known<Length>,
        high: &Known<Length>,
        effective_size: Option<&Known<Length>>,
        uniformity: Option<&Known<f64>>,
    ) -> Result<Grading, Problem> {
        let (a, b) = (low.value.value, high.value.value);
        within(Term::GrainLow, a, GRAIN_M, |x| metres(x).into())?;
        within(Term::GrainHigh, b, GRAIN_M, |x| metres(x).into())?;
        if a > b {
            return Err(Problem::new(
                Term::GrainLow,
                Fault::NotBelow { value: low.value.into(), other: Term::GrainHigh, limit: high.value.into() },
            ));
        }
        let (ln_a, ln_b) = (libm::log(a), libm::log(b));
        // One size is its own effective size; what rounding leaves between two ways to type it is no contradiction.
        let rounding = if a == b { ROUNDING } else { 0.0 };
        // Without an effective size it must at least fit between the sieves.
        let d10 = effective_size.map_or(a, |size| size.value.value);
        if let Some(size) = effective_size
            && !(d10 >= a * (1.0 - rounding) && (d10 < b || a == b && d10 <= b * (1.0 + rounding)))
        {
            return Err(Problem::new(
                Term::EffectiveSize,
                Fault::OutOfRange { value: size.value.into(), low: low.value.into(), high: high.value.into() },
            ));
        }
        if let Some(ratio) = uniformity {
            let most = if a == b { 1.0 + ROUNDING } else { b / d10 };
            if !(1.0..most).contains(&ratio.value) {
                return Err(Problem::new(
                    Term::Uniformity,
                    Fault::OutOfRange { value: ratio.value.into(), low: 1.0.into(), high: most.into() },
                ));
            }
        }
        if a == b {
            return Ok(Grading { shape: Shape::One, low: ln_a, high: ln_b });
        }
        let (Some(_), Some(ratio)) = (effective_size, uniformity) else {
            return Ok(Grading { shape: Shape::Even, low: ln_a, high: ln_b });
        };
        let ln_10 = libm::log(d10);
        if ratio.value == 1.0 {
            return Ok(Grading { shape: Shape::One, low: ln_10, high: ln_10 });
        }
        let ln_60 = libm::log(d10 * ratio.value);
        let shape = match fit(ln_a, ln_b, ln_10, ln_60) {
            Some((mean, sigma)) => Shape::LogNormal { mean, sigma },
            None => Shape::Straight { d10: ln_10, d60: ln_60 },
        };
        Ok(Grading { shape, low: ln_a, high: ln_b })
    }

    /// How it was found.
    #[must_use]
    pub fn by(&self) -> GradingBy {
        match self.shape {
            Shape::One => GradingBy::OneSize,
            Shape::LogNormal { .. } => GradingBy::LogNormal,
            Shape::Straight { .. } => GradingBy::StraightLines,
            Shape::Even => GradingBy::MeshOnly,
        }
    }

    /// The mean and standard deviation of ln(d/mm) before the cut, of a log-normal one.
    #[must_use]
    pub fn log_normal(&self) -> Option<(f64, f64)> {
        match self.shape {
            Shape::LogNormal { mean, sigma } => Some((mean + libm::log(1000.0), sigma)),
            _ => None,
        }
    }

    /// The size that this share by mass is finer than; the lower sieve below 0, the upper above 1.
    #[must_use]
    pub fn size_finer_than(&self, share: f64) -> Length {
        metres(libm::exp(self.ln_size(share)))
    }

    /// Sizes of a hundred fractions of equal mass, finest first: each at the middle of its share.
    #[must_use]
    pub fn fractions(&self) -> Vec<Length> {
        let count = if self.shape == Shape::One { 1 } else { FRACTIONS };
        (0..count).map(|i| self.size_finer_than((i as f64 + 0.5) / count as f64)).collect()
    }

    fn ln_size(&self, share: f64) -> f64 {
        let (low, high) = (self.low, self.high);
        if share.is_nan() || share <= 0.0 {
            return low;
        }
        if share >= 1.0 {
            return high;
        }
        match self.shape {
            Shape::One => low,
            Shape::Even => low + share * (high - low),
            Shape::Straight { d10, d60 } => {
                let between = |x0: f64, y0: f64, x1: f64, y1: f64| y0 + (share - x0) / (x1 - x0) * (y1 - y0);
                if share <= 0.1 {
                    between(0.0, low, 0.1, d10)
                } else if share <= 0.6 {
                    between(0.1, d10, 0.6, d60)
                } else {
                    between(0.6, d60, 1.0, high)
                }
            }
            Shape::LogNormal { mean, sigma } => {
                let cut = Cut { mean, sigma, low, high };
                crossing(|y| cut.finer(y) - share, low, high, 1e-15)
            }
        }
    }
}

/// A normal distribution cut at both ends.
struct Cut {
    mean: f64,
    sigma: f64,
    low: f64,
    high: f64,
}

impl Cut {
    /// Share below `y` of what lies between the cuts; from the tail that keeps its digits.
    fn finer(&self, y: f64) -> f64 {
        let z = |y: f64| (y - self.mean) / (self.sigma * std::f64::consts::SQRT_2);
        let (a, b, x) = (z(self.low), z(self.high), z(y));
        // Differences of the complementary error function keep their digits only where it is small.
        if a + b > 0.0 {
            (libm::erfc(a) - libm::erfc(x)) / (libm::erfc(a) - libm::erfc(b))
        } else {
            (libm::erfc(-x) - libm::erfc(-a)) / (libm::erfc(-b) - libm::erfc(-a))
        }
    }
}

/// Narrowest and widest standard deviation tried, in widths of the mesh. A wider one is as good as straight.
const SIGMA: (f64, f64) = (1e-4, 8.0);
/// The mean is looked for this many standard deviations beyond the mesh: further out the tails have no digits left.
const REACH: f64 = 36.0;

/// The mean and standard deviation whose cut distribution has a tenth below `ln_10` and six tenths below `ln_60`.
fn fit(low: f64, high: f64, ln_10: f64, ln_60: f64) -> Option<(f64, f64)> {
    let width = high - low;
    let tenth = |mean: f64, sigma: f64| Cut { mean, sigma, low, high }.finer(ln_10) - 0.1;
    let reach = |sigma: f64| (low - REACH * sigma, high + REACH * sigma);
    let mean_of = |sigma: f64| {
        let (from, to) = reach(sigma);
        crossing(|mean| tenth(mean, sigma), from, to, 1e-15)
    };
    let miss = |sigma: f64| Cut { mean: mean_of(sigma), sigma, low, high }.finer(ln_60) - 0.6;
    let narrow = SIGMA.0 * width;
    // Sizes close to a sieve want a mean further out the wider it is: not wider than where one can be found.
    let mut wide = SIGMA.1 * width;
    while wide > narrow && !(tenth(reach(wide).0, wide) > 0.0 && tenth(reach(wide).1, wide) < 0.0) {
        wide /= 2.0;
    }
    if ln_10 <= low || !(miss(narrow) > 0.0 && miss(wide) < 0.0) {
        return None;
    }
    // By halving on a logarithmic scale first: the miss is flat where the distribution is narrow.
    let sigma = libm::exp(crossing(|ln_sigma| miss(libm::exp(ln_sigma)), libm::log(narrow), libm::log(wide), 1e-15));
    let mean = mean_of(sigma);
    let cut = Cut { mean, sigma, low, high };
    let met = (cut.finer(ln_10) - 0.1).abs() < 1e-9 && (cut.finer(ln_60) - 0.6).abs() < 1e-9;
    met.then_some((mean, sigma))
}
