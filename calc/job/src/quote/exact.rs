//! From what was typed to a decimal that is it, and from a decimal to its digits.

use bedwright_calc::quantity::{Fault, Problem, Term};
use rust_decimal::Decimal;

use crate::decimal::{nearest, to_places};
use crate::entry::{Dimension, Entry, Misread, Unit};

/// The most places that are taken of a typed figure.
const PLACES: u32 = 6;

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub enum FieldFault {
    /// It makes no sense, in the unit it is in.
    Misread(Misread, Unit),
    /// It can't be so.
    Problem(Problem),
}

/// The exact value of an entry that is a bare number, an amount of money or a share: 12.5 % is 0.125.
///
/// A figure of up to nine digits before and six behind the mark is one double only, and that double is no other such
/// figure; so what was read comes back to its digits. What doesn't has more places, as a third has.
///
/// # Errors
/// Why it makes no sense; that it has more than six places.
pub fn exact(entry: &Entry, term: Term) -> Result<Decimal, FieldFault> {
    let misread = |misread| FieldFault::Misread(misread, entry.unit);
    if entry.unit.dimension() != Dimension::Ratio {
        return Err(misread(Misread::WrongDimension { found: entry.unit, wanted: Dimension::Ratio }));
    }
    let understood = entry.understood().map_err(misread)?;
    let share = understood.written == Unit::Percent;
    if share && entry.unit != Unit::Percent {
        // Per cent of what? Money isn't a share.
        return Err(misread(Misread::UnknownUnit(Unit::Percent.symbol().to_owned())));
    }
    let text = to_places(understood.value, PLACES as usize);
    let found = read_decimal(&text).filter(|_| nearest(text.trim_start_matches('-')) == understood.value.abs());
    let too_fine = FieldFault::Problem(Problem::new(term, Fault::TooFine { places: PLACES }));
    let found = found.ok_or(too_fine)?.normalize();
    Ok(if share { hundredth(found) } else { found })
}

fn hundredth(value: Decimal) -> Decimal {
    // Six places and two more are far from the most there can be.
    Decimal::try_from_i128_with_scale(value.mantissa(), value.scale() + 2).unwrap_or_default().normalize()
}

/// A decimal from its digits, with a point and perhaps a minus; none for anything else.
#[must_use]
pub fn read_decimal(text: &str) -> Option<Decimal> {
    let (unsigned, negative) = match text.strip_prefix('-') {
        Some(rest) => (rest, true),
        None => (text, false),
    };
    let (whole, places) = unsigned.split_once('.').unwrap_or((unsigned, ""));
    if whole.is_empty() {
        return None;
    }
    let mut digits = 0_i128;
    for digit in whole.bytes().chain(places.bytes()) {
        if !digit.is_ascii_digit() {
            return None;
        }
        digits = digits.checked_mul(10)?.checked_add(i128::from(digit - b'0'))?;
    }
    let digits = if negative { -digits } else { digits };
    Decimal::try_from_i128_with_scale(digits, u32::try_from(places.len()).ok()?).ok()
}

/// The number nearest to a decimal, for a field that shows what is taken while it is empty.
#[must_use]
pub fn nearly(value: Decimal) -> f64 {
    nearest(decimal_text(value, 0).trim_start_matches('-'))
}

/// A decimal as its digits, at least so many places of it.
#[must_use]
pub fn decimal_text(value: Decimal, least: u32) -> String {
    let value = value.normalize();
    let scale = value.scale().max(least) as usize;
    let mut rest = value.mantissa().unsigned_abs();
    let mut digits = vec!['0'; scale.saturating_sub(value.scale() as usize)];
    while rest > 0 || digits.len() <= scale {
        digits.push(char::from(b'0' + (rest % 10) as u8));
        rest /= 10;
    }
    let mut text = String::new();
    if value.is_sign_negative() && !value.is_zero() {
        text.push('-');
    }
    for (place, digit) in digits.iter().enumerate().rev() {
        text.push(*digit);
        if place == scale && scale > 0 {
            text.push('.');
        }
    }
    text
}
