//! From decimals to the nearest number, and back to decimals: each exact, as std's own are.
//!
//! Std's carry tables for speed that nobody types or reads at.

/// The number nearest to digits with at most one point and one power of ten, as in `012.50e-3`; of two that are equally
/// near the even one. What is too large is infinite.
pub(crate) fn nearest(text: &str) -> f64 {
    let (digits, power) = text.split_once('e').unwrap_or((text, "0"));
    let mut exponent = power.parse::<i64>().unwrap_or(0);
    let (whole, decimals) = digits.split_once('.').unwrap_or((digits, ""));
    exponent = exponent.saturating_sub(i64::try_from(decimals.len()).unwrap_or(i64::MAX));
    let mut number = Large::of(0);
    let mut small = Some(0_u64);
    for digit in whole.bytes().chain(decimals.bytes()).map(|digit| u32::from(digit.wrapping_sub(b'0'))) {
        number.times_plus(10, digit);
        small = small.and_then(|small| small.checked_mul(10)?.checked_add(u64::from(digit)));
    }
    match small {
        Some(0) => 0.0,
        // Both are exact, so one rounding is all there is.
        Some(small) if small <= 1 << 53 && exponent.unsigned_abs() <= 22 => {
            let power = (0..exponent.unsigned_abs()).fold(1.0, |power, _| power * 10.0);
            if exponent < 0 { small as f64 / power } else { small as f64 * power }
        }
        _ => divided(number, exponent),
    }
}

/// A number times a power of ten, rounded once.
fn divided(mut number: Large, exponent: i64) -> f64 {
    // Beyond these no number of as many digits as may be typed is left, or finite.
    if exponent > 400 {
        return f64::INFINITY;
    }
    if exponent < -1_000 {
        return 0.0;
    }
    let mut by = Large::of(1);
    for _ in 0..exponent.unsigned_abs() {
        if exponent < 0 { by.times_plus(10, 0) } else { number.times_plus(10, 0) }
    }
    // Below the divisor, and not below a quarter of it.
    let shift = number.bits() - by.bits() + 1;
    if shift > 0 {
        by.shift(shift)
    } else {
        number.shift(-shift)
    }
    // 64 bits of the quotient, what is left over standing in the last.
    let mut quotient = 0_u64;
    for _ in 0..64 {
        number.shift(1);
        quotient = quotient << 1 | u64::from(number.take(&by));
    }
    quotient |= u64::from(!number.is_zero());
    scaled(quotient, shift - 64)
}

/// A whole number of at least 62 bits times a power of two; its last bit tells whether anything stood behind it.
fn scaled(whole: u64, power: i64) -> f64 {
    // The last bit a number can have here.
    let lowest = (64 - i64::from(whole.leading_zeros()) + power - 53).max(-1_074);
    let cut = u32::try_from(lowest - power).unwrap_or(0);
    if cut >= 64 {
        // Only half of the least number or more counts; a quotient so far below it rounds to nothing.
        return if cut == 64 && whole > 1 << 63 { f64::from_bits(1) } else { 0.0 };
    }
    let (kept, rest, half) = (whole >> cut, whole & ((1 << cut) - 1), (1_u64 << cut) >> 1);
    let rounded = kept + u64::from(rest > half || rest == half && kept & 1 == 1);
    // Exact in two steps: the power alone may be below the least number.
    let half_way = lowest / 2;
    rounded as f64 * two_to(half_way) * two_to(lowest - half_way)
}

fn two_to(power: i64) -> f64 {
    u64::try_from(power + 1_023).map_or(0.0, |biased| f64::from_bits(biased.min(2_047) << 52))
}

/// A number to exactly so many decimals, at most twenty; a half goes to the even digit. Signed where it was below
/// nought, as `-0.00` is. What isn't finite is `inf` or `NaN`.
#[must_use]
pub fn to_places(value: f64, places: usize) -> String {
    if value.is_nan() {
        return "NaN".to_owned();
    }
    let mut text = String::new();
    if value.is_sign_negative() {
        text.push('-');
    }
    if value.is_infinite() {
        text.push_str("inf");
        return text;
    }
    let places = places.min(20);
    let bits = value.to_bits();
    let biased = bits >> 52 & 0x7ff;
    let fraction = bits & ((1 << 52) - 1);
    let (whole, power) = if biased == 0 { (fraction, -1_074) } else { (fraction | 1 << 52, biased as i64 - 1_075) };
    let mut digits = Vec::new();
    if power < 0 {
        let scaled = (0..places).fold(u128::from(whole), |scaled, _| scaled * 10);
        let cut = power.unsigned_abs() as u32;
        let mut rest = 0;
        // Nothing has 127 bits: 53 for the number, 67 for twenty decimals.
        if cut < 127 {
            let (kept, half) = (scaled >> cut, 1_u128 << cut >> 1);
            let left = scaled & ((1 << cut) - 1);
            rest = kept + u128::from(left > half || left == half && kept & 1 == 1);
        }
        while rest > 0 || digits.len() <= places {
            digits.push(b'0' + (rest % 10) as u8);
            rest /= 10;
        }
    } else {
        let mut rest = whole;
        while rest > 0 {
            digits.push(b'0' + (rest % 10) as u8);
            rest /= 10;
        }
        for _ in 0..power {
            let mut carry = 0;
            for digit in &mut digits {
                let twice = (*digit - b'0') * 2 + carry;
                (*digit, carry) = (b'0' + twice % 10, twice / 10);
            }
            if carry > 0 {
                digits.push(b'0' + carry);
            }
        }
        digits.splice(0..0, std::iter::repeat_n(b'0', places));
    }
    for (place, digit) in digits.iter().enumerate().rev() {
        text.push(char::from(*digit));
        if place == places && places > 0 {
            text.push('.');
        }
    }
    text
}

/// A number as short as it can be written, to a millionth.
#[must_use]
pub fn plain(value: f64) -> String {
    let text = to_places(value, 6);
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// A whole number of any size; the lowest part first, no nought at the end.
struct Large(Vec<u32>);

impl Large {
    fn of(value: u32) -> Large {
        Large(if value == 0 { Vec::new() } else { vec![value] })
    }

    fn is_zero(&self) -> bool {
        self.0.is_empty()
    }

    fn bits(&self) -> i64 {
        let full = i64::try_from(self.0.len()).unwrap_or(i64::MAX) * 32;
        full - self.0.last().map_or(0, |last| i64::from(last.leading_zeros()))
    }

    fn times_plus(&mut self, by: u32, plus: u32) {
        let mut carry = u64::from(plus);
        for part in &mut self.0 {
            carry += u64::from(*part) * u64::from(by);
            *part = carry as u32;
            carry >>= 32;
        }
        if carry > 0 {
            self.0.push(carry as u32);
        }
    }

    /// Times two so many times.
    fn shift(&mut self, by: i64) {
        for _ in 0..by {
            self.times_plus(2, 0);
        }
    }

    /// Takes another away where it isn't larger, and says so.
    fn take(&mut self, other: &Large) -> bool {
        if self.0.len() < other.0.len() || self.0.len() == other.0.len() && self.0.iter().rev().lt(other.0.iter().rev())
        {
            return false;
        }
        let mut borrow = false;
        let mut others = other.0.iter();
        for part in &mut self.0 {
            let (less, below) = part.overflowing_sub(others.next().copied().unwrap_or(0));
            let (less, again) = less.overflowing_sub(u32::from(borrow));
            (*part, borrow) = (less, below || again);
        }
        while self.0.last() == Some(&0) {
            self.0.pop();
        }
        true
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::{nearest, plain, to_places};

    fn reads_as_std(text: &str) {
        let expected: f64 = text.parse().unwrap_or(f64::NAN);
        assert_eq!(nearest(text).to_bits(), expected.to_bits(), "{text}: {} for {expected}", nearest(text));
    }

    #[test]
    fn what_lies_on_an_edge_is_read_as_std_reads_it() {
        for text in [
            "0",
            "00.000e5",
            "0e999",
            "9007199254740993",
            "9007199254740992.99999",
            "9007199254740993.00000000000000000000000000000001",
            "1e22",
            "1e23",
            "8.5e22",
            "1.7976931348623157e308",
            "1.7976931348623158e308",
            "1.7976931348623159e308",
            "17976931348623158079372897140530341507993413271003782693617377898044496829276475e229",
            "2e308",
            "1e309",
            "9e999",
            "2.2250738585072014e-308",
            "2.2250738585072011e-308",
            "2.225073858507201136057409796709131975934819546351645648023426109724822222021e-308",
            "4.9406564584124654e-324",
            "2.4703282292062327e-324",
            "2.4703282292062328e-324",
            "2.47032822920623272088284396434110686182e-324",
            "1e-323",
            "1e-324",
            "1e-999",
            "123456789012345678901234567890123456789012345678901234567890.1234",
            "0.00000000000000000000000000000000000000000000000000000000000001e62",
        ] {
            reads_as_std(text);
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(20_000))]

        #[test]
        fn digits_are_read_as_std_reads_them(text in "[0-9]{1,40}(\\.[0-9]{1,24})?(e-?[0-9]{1,3})?") {
            reads_as_std(&text);
        }

        #[test]
        fn every_number_is_read_back(bits in any::<u64>()) {
            let value = f64::from_bits(bits >> 1);
            prop_assume!(value.is_finite());
            // As long and exact as a number can be written, and as short as it can be told from others.
            reads_as_std(&format!("{value:.80e}"));
            reads_as_std(&format!("{value:e}"));
            // The middle between it and the next one.
            if value > 1e-300 {
                let text = format!("{value:.17e}");
                reads_as_std(&text);
            }
        }

        #[test]
        fn numbers_are_written_as_std_writes_them(bits in any::<u64>(), near in -1e6..1e6, places in 0_usize..12) {
            for value in [f64::from_bits(bits), near, (near * 16.0).round() / 16.0, near * 1e-9] {
                prop_assert_eq!(to_places(value, places), format!("{value:.places$}"));
            }
        }
    }

    #[test]
    fn a_plain_number_is_as_short_as_it_can_be() {
        for (value, text) in [(12.0, "12"), (100.0, "100"), (12.5, "12.5"), (0.1, "0.1"), (1.0 / 3.0, "0.333333")] {
            assert_eq!(plain(value), text);
        }
    }

    #[test]
    fn halves_and_ends_are_written_as_std_writes_them() {
        for value in [0.0, -0.0, 0.5, 1.5, 2.5, -0.5, 0.125, 0.375, 1e300, f64::MAX, f64::MIN_POSITIVE, 5e-324, 2e-16] {
            for places in 0..=20 {
                assert_eq!(to_places(value, places), format!("{value:.places$}"));
            }
        }
        for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert_eq!(to_places(value, 2), format!("{value:.2}"));
        }
    }
}
