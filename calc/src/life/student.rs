//! Student's t: how far a mean of few readings may lie from the truth.

use crate::quantity::root::crossing;
use crate::quantity::{Fault, Problem, Term};

/// Degrees of freedom beyond which nobody asks; the sums below have half as many terms.
const MOST: u32 = 100_000;

/// The value that Student's t stays below with the probability asked for.
///
/// ```text
/// t such that P(T ≤ t) = p, T with ν degrees of freedom
/// P(|T| ≤ t) as a finite sum in θ = atan(t/√ν): odd ν and even ν each
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | p | `probability`, 0.5 to 0.9999 | – |
/// | ν | `freedom` | – |
///
/// More freedom never gives more; more probability never gives less.
///
/// # Errors
/// [`Term::Confidence`] outside 0.5 to 0.9999; [`Term::Freedom`] none, or above 100 000.
///
/// # Sources
/// Finite sums: M. Abramowitz, I. A. Stegun (1964), Handbook of Mathematical Functions, 26.7.3 and 26.7.4.
///
/// # Example
/// The table of the same handbook, 26.10, has 2.571 for 5 degrees of freedom and 0.975.
/// ```
/// let t = bedwright_calc::life::t_quantile(0.975, 5).unwrap();
/// assert!((t - 2.571).abs() < 5e-4);
/// ```
pub fn t_quantile(probability: f64, freedom: u32) -> Result<f64, Problem> {
    let (low, high) = (0.5, 0.9999);
    if !(low..=high).contains(&probability) {
        let value = probability.into();
        return Err(Problem::new(Term::Confidence, Fault::OutOfRange { value, low: low.into(), high: high.into() }));
    }
    if freedom == 0 || freedom > MOST {
        let value = freedom.into();
        return Err(Problem::new(Term::Freedom, Fault::OutOfRange { value, low: 1_u32.into(), high: MOST.into() }));
    }
    let wanted = 2.0 * probability - 1.0;
    let mut high = 1.0;
    while within(high, freedom) < wanted {
        high *= 2.0;
    }
    Ok(crossing(|t| within(t, freedom) - wanted, 0.0, high, 1e-15))
}

/// The probability that |T| stays within `t`.
fn within(t: f64, freedom: u32) -> f64 {
    let nu = f64::from(freedom);
    let root = (nu + t * t).sqrt();
    let (sine, cosine) = (t / root, nu.sqrt() / root);
    let square = cosine * cosine;
    let mut sum = 1.0;
    let mut term = 1.0;
    if freedom.is_multiple_of(2) {
        // 1 + 1/2·cos² + (1·3)/(2·4)·cos⁴ + … up to cos^(ν−2)
        for step in 1..freedom / 2 {
            let step = f64::from(step);
            term *= square * (2.0 * step - 1.0) / (2.0 * step);
            sum += term;
        }
        return sine * sum;
    }
    let angle = libm::atan2(t, nu.sqrt());
    let half_circle = std::f64::consts::FRAC_2_PI;
    if freedom == 1 {
        return half_circle * angle;
    }
    // cos·(1 + 2/3·cos² + (2·4)/(3·5)·cos⁴ + …) up to cos^(ν−2)
    for step in 1..=(freedom - 3) / 2 {
        let step = f64::from(step);
        term *= square * (2.0 * step) / (2.0 * step + 1.0);
        sum += term;
    }
    half_circle * (angle + sine * cosine * sum)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)] // Tests say so by panicking.

    use super::t_quantile;

    #[test]
    fn one_degree_of_freedom_is_a_tangent() {
        // t = tan(π·(p − 1/2))
        for p in [0.6, 0.9, 0.99, 0.999] {
            let wanted = libm::tan(std::f64::consts::PI * (p - 0.5));
            assert!((t_quantile(p, 1).unwrap() / wanted - 1.0).abs() < 1e-12, "{p}");
        }
    }

    #[test]
    fn half_is_the_middle() {
        for freedom in [1, 2, 7, 100] {
            assert!(t_quantile(0.5, freedom).unwrap().abs() < 1e-12);
        }
    }

    #[test]
    fn what_can_t_be_asked_is_refused() {
        for (p, freedom) in [(f64::NAN, 3), (0.4, 3), (1.0, 3), (0.9, 0), (0.9, u32::MAX)] {
            assert!(t_quantile(p, freedom).is_err(), "{p} {freedom}");
        }
    }
}
