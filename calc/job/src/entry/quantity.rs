//! A sign, a number, and the unit or second part behind it.

use super::glyph::{Glyph, as_typed, raised_digit, vulgar_fraction};
use super::name::{unit_named, unit_named_for};
use super::number::{Number, Reader};
use super::{Dimension, LARGEST_SI, Misread, SMALLEST_SI, Understood, Unit};

/// A unit that is written with a smaller one behind it: 4 ft 4 in.
struct Pair {
    large: Unit,
    small: Unit,
    /// How many of the small make one of the large.
    count: f64,
    /// Whether the small one may stay unsaid: 4 ft 4.
    unsaid: bool,
}

const PAIRS: [Pair; 5] = [
    pair(Unit::Foot, Unit::Inch, 12.0, true),
    pair(Unit::Pound, Unit::Ounce, 16.0, false),
    pair(Unit::Day, Unit::Hour, 24.0, false),
    pair(Unit::Hour, Unit::Minute, 60.0, true),
    pair(Unit::Minute, Unit::Second, 60.0, false),
];

const fn pair(large: Unit, small: Unit, count: f64, unsaid: bool) -> Pair {
    Pair { large, small, count, unsaid }
}

/// Reads all that is left.
pub(super) fn quantity(reader: &mut Reader<'_>, unit: Unit) -> Result<Understood, Misread> {
    if reader.at_end() {
        return Err(Misread::Empty);
    }
    let negative = matches!(reader.peek(0), Some('-' | '−'));
    if negative || reader.peek(0) == Some('+') {
        reader.advance(1);
        reader.skip_spaces();
    }
    let number = reader.number()?;
    reader.skip_spaces();
    let names_unit = !reader.at_end();
    let (magnitude, written) =
        if names_unit { with_named_unit(reader, number, unit.dimension())? } else { (number.value(), unit) };
    // Taken from zero, so that "-0" is plain zero.
    let value = if negative { 0.0 - magnitude } else { magnitude };
    let si = written.to_si(value);
    if !(0.0..=LARGEST_SI).contains(&si.abs()) || !value.is_finite() {
        return Err(Misread::TooLarge);
    }
    let dimension = written.dimension();
    if si != 0.0 && si.abs() < SMALLEST_SI && dimension != Dimension::Temperature {
        return Err(Misread::TooSmall);
    }
    Ok(Understood { si, dimension, written, value, names_unit, meaning: None })
}

/// The number in the unit that the text names. What the field wants decides between "4ft3", a
/// volume, and "4ft3", a length.
fn with_named_unit(reader: &mut Reader<'_>, number: Number, wanted: Dimension) -> Result<(f64, Unit), Misread> {
    let tail = reader.rest();
    let starts_a_name = tail.first().is_some_and(|glyph| {
        glyph.shape.is_alphabetic() || matches!(glyph.shape, '\'' | '′' | '"' | '°' | '%' | '℃' | '℉')
    });
    if !starts_a_name {
        return Err(reader.not_a_number());
    }
    if let Some(unit) = unit_named_for(tail, wanted) {
        return Ok((number.value(), unit));
    }
    let named = unit_named(tail);
    let found = match two_parts(reader, number)? {
        Some((value, unit)) if unit.dimension() == wanted => return Ok((value, unit)),
        Some((_, unit)) => named.unwrap_or(unit),
        None => named.ok_or_else(|| Misread::UnknownUnit(as_typed(tail)))?,
    };
    Err(Misread::WrongDimension { found, wanted })
}

/// Feet and inches, pounds and ounces, hours and minutes: the sum in the smaller unit; nothing when
/// the text isn't built like that.
fn two_parts(reader: &mut Reader<'_>, large: Number) -> Result<Option<(f64, Unit)>, Misread> {
    let tail = reader.rest();
    let Some(second) = (1..tail.len()).find(|&index| starts_a_number(tail, index)) else {
        return Ok(None);
    };
    let before = tail.get(..second).unwrap_or_default();
    let name = without_separator(before);
    let plain = name.iter().all(|glyph| glyph.shape.is_alphabetic() || matches!(glyph.shape, '.' | ' ' | '\'' | '′'));
    let Some(pair) = unit_named(name).filter(|_| plain).and_then(|unit| PAIRS.iter().find(|pair| pair.large == unit))
    else {
        return Ok(None);
    };
    // "4ft.5": five inches, or half of one?
    if before.last().is_some_and(|glyph| glyph.shape == '.') {
        reader.advance(second - 1);
        return Err(reader.not_a_number());
    }
    reader.advance(second);
    // "1 300'000": thousands with two kinds of separator, not feet and inches.
    let padded = reader.peek(0) == Some('0') && reader.digits_ahead(0) > 2;
    if padded || !large.whole {
        return Err(reader.not_a_number());
    }
    let small = reader.number()?;
    reader.skip_spaces();
    let said = unit_named(reader.rest());
    if said != Some(pair.small) && !(pair.unsaid && reader.at_end()) {
        return Ok(None);
    }
    if small.value() >= pair.count {
        return Err(Misread::PartTooLarge { value: small.value(), unit: pair.small, below: pair.count });
    }
    let numerator = large.numerator * pair.count * small.denominator + small.numerator;
    Ok(Some((numerator / small.denominator, pair.small)))
}

fn starts_a_number(glyphs: &[Glyph], index: usize) -> bool {
    let shape = |index: usize| glyphs.get(index).map_or(' ', |glyph| glyph.shape);
    let before = shape(index.saturating_sub(1));
    match shape(index) {
        '0'..='9' | '⅟' => true,
        '.' | ',' => !before.is_alphabetic() && shape(index + 1).is_ascii_digit(),
        // Behind a letter it is a power: "ft³".
        c if raised_digit(c).is_some() => !before.is_alphabetic(),
        c => vulgar_fraction(c).is_some(),
    }
}

/// The name of the first part, without the spaces or the hyphen of "4'-4\"" behind it.
fn without_separator(glyphs: &[Glyph]) -> &[Glyph] {
    let trimmed = without_trailing(glyphs, ' ');
    match trimmed.split_last() {
        Some((last, rest)) if last.shape == '-' => without_trailing(rest, ' '),
        _ => trimmed,
    }
}

fn without_trailing(glyphs: &[Glyph], shape: char) -> &[Glyph] {
    let count = glyphs.iter().rev().take_while(|glyph| glyph.shape == shape).count();
    glyphs.get(..glyphs.len().saturating_sub(count)).unwrap_or_default()
}
