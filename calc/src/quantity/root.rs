//! Where a function that rises or falls passes a value.

use crate::order::Between as _;

/// Rounds at most; each at least halves what is left when the quick step fails.
const MOST: usize = 80;

/// The place between `low` and `high` where `f` passes zero, to `tolerance` of the place; `f` has different signs at both.
///
/// Chandrupatla's method: inverse quadratic steps where they help, halving where they don't; never leaves the bracket.
/// Of two equal signs the end nearer to zero is given back.
///
/// Source: T. R. Chandrupatla (1997), Advances in Engineering Software 28(3), 145–149.
pub(crate) fn crossing(f: impl Fn(f64) -> f64, low: f64, high: f64, tolerance: f64) -> f64 {
    let (mut a, mut b) = (low, high);
    let (mut fa, mut fb) = (f(a), f(b));
    if fa == 0.0 {
        return a;
    }
    if fb == 0.0 || (fa > 0.0) == (fb > 0.0) {
        return if fb == 0.0 || fb.abs() < fa.abs() { b } else { a };
    }
    let mut t = 0.5;
    for _ in 0..MOST {
        let x = a + t * (b - a);
        let fx = f(x);
        let (c, fc);
        if (fx > 0.0) == (fa > 0.0) {
            (c, fc) = (a, fa);
        } else {
            (c, fc) = (b, fb);
            (b, fb) = (a, fa);
        }
        (a, fa) = (x, fx);
        let best = if fa.abs() < fb.abs() { a } else { b };
        let least = tolerance * best.abs() + f64::MIN_POSITIVE;
        let share = least / (b - c).abs();
        if share > 0.5 || fa == 0.0 || share.is_nan() {
            return best;
        }
        let xi = (a - b) / (c - b);
        let phi = (fa - fb) / (fc - fb);
        t = if phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi {
            fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)
        } else {
            0.5
        };
        t = t.between(share, 1.0 - share);
        if t.is_nan() {
            t = 0.5;
        }
    }
    if fa.abs() < fb.abs() { a } else { b }
}

#[cfg(test)]
mod tests {
    use super::crossing;

    #[test]
    fn the_square_root_of_two_is_found() {
        assert!((crossing(|x| x * x - 2.0, 0.0, 2.0, 1e-15) - std::f64::consts::SQRT_2).abs() < 1e-14);
    }

    #[test]
    fn a_flat_start_and_a_steep_end_don_t_mislead() {
        let found = crossing(|x| (x - 0.9).max(0.0) * 1e9 - 1.0, 0.0, 1.0, 1e-12);
        assert!((found - 0.900_000_001).abs() < 1e-9);
    }

    #[test]
    fn equal_signs_give_the_nearer_end() {
        assert_eq!(crossing(|x| x + 1.0, 0.0, 1.0, 1e-12), 0.0);
    }
}
