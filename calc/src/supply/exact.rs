//! Decimals to the last digit: a result is the exact one, or the exact one rounded once where that is asked for, or none.
//!
//! `rust_decimal`'s own operations give a result that was rounded silently where 28 digits don't hold it; these don't.

use rust_decimal::Decimal;

/// The most places a decimal may have.
const MOST_PLACES: u32 = 28;

/// What becomes of what lies half way between two neighbours.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Halves {
    /// It goes away from zero: 0.125 becomes 0.13.
    Up,
    /// It goes to the even neighbour: 0.125 becomes 0.12.
    Even,
}

/// How amounts of a currency are rounded.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Rounding {
    /// Decimal places of its smallest unit.
    pub places: u32,
    /// What becomes of halves.
    pub halves: Halves,
}

include!(concat!(env!("OUT_DIR"), "/currencies.rs"));

/// Decimal places of a currency's smallest unit, by its code: two for every code that isn't known to have others.
#[must_use]
pub fn currency_places(code: &str) -> u32 {
    CURRENCIES.iter().find(|(known, _)| *known == code).map_or(2, |(_, places)| *places)
}

/// The sum of two, exact.
pub(crate) fn sum(a: Decimal, b: Decimal) -> Option<Decimal> {
    let places = a.scale().max(b.scale());
    fitted(raised(a, places)?.checked_add(raised(b, places)?)?, places)
}

/// The difference of two, exact.
pub(crate) fn difference(a: Decimal, b: Decimal) -> Option<Decimal> {
    sum(a, Decimal::ZERO.checked_sub(b)?)
}

/// The product of two, exact.
pub(crate) fn product(a: Decimal, b: Decimal) -> Option<Decimal> {
    fitted(a.mantissa().checked_mul(b.mantissa())?, a.scale().checked_add(b.scale())?)
}

/// The exact product of two, rounded once.
pub(crate) fn product_rounded(a: Decimal, b: Decimal, rounding: Rounding) -> Option<Decimal> {
    let whole = a.mantissa().checked_mul(b.mantissa())?;
    let places = a.scale().checked_add(b.scale())?;
    if places <= rounding.places {
        return fitted(whole.checked_mul(ten_to(rounding.places.checked_sub(places)?)?)?, rounding.places);
    }
    fitted(divided(whole, ten_to(places.checked_sub(rounding.places)?)?, rounding.halves)?, rounding.places)
}

/// The exact quotient of two, rounded once; none by zero.
pub(crate) fn quotient_rounded(a: Decimal, b: Decimal, rounding: Rounding) -> Option<Decimal> {
    // (a / 10^s) / (b / 10^t) in units of 10^-p: a · 10^(p + t) over b · 10^s.
    let (up, down) = (rounding.places.checked_add(b.scale())?, a.scale());
    let common = up.min(down);
    let above = a.mantissa().checked_mul(ten_to(up.checked_sub(common)?)?)?;
    let below = b.mantissa().checked_mul(ten_to(down.checked_sub(common)?)?)?;
    fitted(divided(above, below, rounding.halves)?, rounding.places)
}

/// It as the nearest number, to tell how large it is.
pub(crate) fn nearly(value: Decimal) -> f64 {
    value.mantissa() as f64 / (0..value.scale()).fold(1.0, |power, _| power * 10.0)
}

/// A whole number over another, rounded to a whole one.
fn divided(above: i128, below: i128, halves: Halves) -> Option<i128> {
    let quotient = above.checked_div(below)?;
    let rest = above.checked_rem(below)?.unsigned_abs();
    let other = below.unsigned_abs().checked_sub(rest)?;
    let further = rest > other || rest == other && (halves == Halves::Up || quotient % 2 != 0);
    if !further || rest == 0 {
        return Some(quotient);
    }
    quotient.checked_add(if (above < 0) == (below < 0) { 1 } else { -1 })
}

fn ten_to(power: u32) -> Option<i128> {
    10_i128.checked_pow(power)
}

/// Its digits with so many places, at least those it has.
fn raised(value: Decimal, places: u32) -> Option<i128> {
    value.mantissa().checked_mul(ten_to(places.checked_sub(value.scale())?)?)
}

/// Digits as a decimal; noughts at its end go where they are too many.
fn fitted(mut digits: i128, mut places: u32) -> Option<Decimal> {
    loop {
        if places <= MOST_PLACES
            && let Ok(value) = Decimal::try_from_i128_with_scale(digits, places)
        {
            return Some(value);
        }
        if places == 0 || digits % 10 != 0 {
            return None;
        }
        digits /= 10;
        places -= 1;
    }
}

#[cfg(test)]
mod tests {
    use super::{Halves, Rounding, difference, product, product_rounded, quotient_rounded, sum};
    use rust_decimal::Decimal;

    const CENTS: Rounding = Rounding { places: 2, halves: Halves::Up };
    const EVEN: Rounding = Rounding { places: 2, halves: Halves::Even };

    fn decimal(text: &str) -> Decimal {
        Decimal::from_str_exact(text).unwrap_or_default()
    }

    /// The cases of ROUND_HALF_UP and ROUND_HALF_EVEN in the General Decimal Arithmetic Specification, section "rounding".
    #[test]
    fn halves_go_where_they_are_told() {
        for (value, up, even) in [
            ("0.125", "0.13", "0.12"),
            ("0.135", "0.14", "0.14"),
            ("-0.125", "-0.13", "-0.12"),
            ("0.1249", "0.12", "0.12"),
            ("0.1251", "0.13", "0.13"),
            ("2.5", "2.50", "2.50"),
        ] {
            assert_eq!(product_rounded(decimal(value), Decimal::ONE, CENTS), Some(decimal(up)), "{value}");
            assert_eq!(product_rounded(decimal(value), Decimal::ONE, EVEN), Some(decimal(even)), "{value}");
        }
    }

    #[test]
    fn a_quotient_is_rounded_once() {
        assert_eq!(quotient_rounded(decimal("10"), decimal("3"), CENTS), Some(decimal("3.33")));
        assert_eq!(quotient_rounded(decimal("-10"), decimal("3"), CENTS), Some(decimal("-3.33")));
        assert_eq!(quotient_rounded(decimal("0.01"), decimal("8"), EVEN), Some(decimal("0.00")));
        assert_eq!(quotient_rounded(decimal("1"), decimal("8"), EVEN), Some(decimal("0.12")));
        assert_eq!(quotient_rounded(decimal("1"), decimal("0"), CENTS), None);
    }

    #[test]
    fn what_28_digits_do_not_hold_is_none_and_never_rounded() {
        let most = Decimal::MAX;
        assert_eq!(sum(most, Decimal::ONE), None);
        assert_eq!(sum(most, decimal("0.1")), None);
        assert_eq!(difference(Decimal::MIN, Decimal::ONE), None);
        assert_eq!(product(most, decimal("1.1")), None);
        assert_eq!(product(decimal("0.0000000000000001"), decimal("0.0000000000001")), None);
        assert_eq!(sum(decimal("0.1"), decimal("0.2")), Some(decimal("0.3")));
    }
}
