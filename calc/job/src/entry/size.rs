//! Nominal vessel sizes: the trade's inches, "12×52" or "1252".

use super::glyph::glyphs;
use super::number::Reader;
use super::{LONGEST, Meaning, Misread};

/// Narrowest and widest nominal diameter, inches. From memory: what is sold as one vessel.
const DIAMETERS: (f64, f64) = (4.0, 160.0);
/// Lowest and highest nominal height, inches. From memory, likewise.
const HEIGHTS: (f64, f64) = (8.0, 240.0);
/// A vessel is never lower than this part of its diameter; "5212" is no size. From memory.
const LEAST_SLENDERNESS: f64 = 0.33;
/// Nor higher than this many diameters; "0499" is no size. From memory.
const MOST_SLENDERNESS: f64 = 16.0;

/// Nominal diameter and height in inches: two numbers with x, ×, * or "by" between them, or four
/// digits that split in the middle, "1252", "0835".
///
/// A start only: the inside diameter is never the nominal one.
///
/// # Errors
/// What isn't a number; [`Misread::NoSuchSize`] when the two numbers are no vessel's.
pub fn nominal_size(text: &str) -> Result<(f64, f64), Misread> {
    let glyphs = glyphs(text);
    if glyphs.is_empty() {
        return Err(Misread::Empty);
    }
    if glyphs.len() > LONGEST {
        return Err(Misread::TooLong);
    }
    let mut reader = Reader::new(&glyphs, Meaning::DecimalPoint);
    let digits = reader.rest().iter().map(|glyph| glyph.shape);
    let (diameter, height) = if glyphs.len() == 4 && digits.clone().all(|c| c.is_ascii_digit()) {
        let mut pairs = digits.filter_map(|c| c.to_digit(10));
        let mut two_digits = || {
            let tens = pairs.next().unwrap_or_default();
            let ones = pairs.next().unwrap_or_default();
            f64::from(10 * tens + ones)
        };
        (two_digits(), two_digits())
    } else {
        let diameter = side(&mut reader)?;
        separator(&mut reader)?;
        let height = side(&mut reader)?;
        if !reader.at_end() {
            return Err(reader.not_a_number());
        }
        (diameter, height)
    };
    let slenderness = height / diameter;
    let is_a_size = (DIAMETERS.0..=DIAMETERS.1).contains(&diameter)
        && (HEIGHTS.0..=HEIGHTS.1).contains(&height)
        && (LEAST_SLENDERNESS..=MOST_SLENDERNESS).contains(&slenderness);
    if is_a_size {
        Ok((diameter, height))
    } else {
        Err(Misread::NoSuchSize { diameter_in: diameter, height_in: height })
    }
}

/// One number, and an inch sign if somebody wrote one.
fn side(reader: &mut Reader<'_>) -> Result<f64, Misread> {
    let number = reader.number()?;
    reader.skip_spaces();
    match (reader.peek(0), reader.peek(1)) {
        (Some('"'), _) => reader.advance(1),
        (Some('\''), Some('\'')) | (Some('i'), Some('n')) => reader.advance(2),
        _ => {}
    }
    if reader.peek(0) == Some('.') {
        reader.advance(1);
    }
    reader.skip_spaces();
    Ok(number.value())
}

fn separator(reader: &mut Reader<'_>) -> Result<(), Misread> {
    match (reader.peek(0), reader.peek(1)) {
        (Some('x' | '×' | '*'), _) => reader.advance(1),
        (Some('b'), Some('y')) => reader.advance(2),
        _ => return Err(reader.not_a_number()),
    }
    reader.skip_spaces();
    Ok(())
}
