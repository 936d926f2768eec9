//! What a person typed, and what it means.
//!
//! An [`Entry`] keeps the text as typed, the unit of its field at that moment and, where a mark
//! could be taken two ways, the meaning it was given. Reading an entry ([`understand`]) never
//! consults a preference, so `12 in` and `1,234` say the same on everybody's phone. A person's own
//! decimal mark counts once only, while typing ([`typed`]).
//!
//! # Marks
//! - Two kinds of mark: the last is the decimal mark. One kind, twice or more: thousands.
//! - One mark with three digits behind it and one to three before it, the first not zero, is *in
//!   doubt*. If only one reading makes a number, that is it. Else the person's own decimal mark is
//!   decimal, and the other mark is a question: [`Misread::Ambiguous`].
//! - Any other single mark is decimal.
//! - Spaces of every width and apostrophes group digits in threes.
//!
//! ```
//! use bedwright_job::entry::{Marks, Meaning, Misread, Unit, typed, understand};
//!
//! let (entry, understood) = typed("4' 4 1/2\"", Unit::Millimetre, Marks { decimal: '.' })?;
//! assert_eq!(understood.written, Unit::Inch);
//! assert_eq!(understood.value, 52.5); // 4 × 12 + 4.5
//! assert_eq!(entry.understood()?, understood);
//!
//! let asked = typed("1,234", Unit::Millimetre, Marks { decimal: '.' });
//! assert!(matches!(asked, Err(Misread::Ambiguous { .. })));
//! let answered = understand("1,234", Unit::Millimetre, Some(Meaning::Thousands))?;
//! assert_eq!(answered.value, 1234.0);
//! # Ok::<(), Misread>(())
//! ```

mod fraction;
mod glyph;
mod name;
mod number;
mod quantity;
mod size;
#[cfg(test)]
mod tests;
mod unit;

use serde::{Deserialize, Serialize};

pub use fraction::{fraction_text, with_part};
use glyph::glyphs;
use number::{Doubt, Reader};
use quantity::quantity;
pub use size::nominal_size;
pub use unit::{Dimension, Unit};

/// The most visible characters a number with its unit may have.
pub const LONGEST: usize = 64;
/// The largest magnitude in SI that is taken for a number somebody meant.
pub const LARGEST_SI: f64 = 1e12;
/// The smallest magnitude in SI, zero apart, that is taken for a number somebody meant.
pub const SMALLEST_SI: f64 = 1e-15;

/// One entry as typed.
#[derive(Clone, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Entry {
    /// The text, letter by letter.
    pub text: String,
    /// The unit of the field when it was typed: what the text means where it names no unit.
    pub unit: Unit,
    /// How a mark that could be taken two ways was taken.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub meaning: Option<Meaning>,
}

impl Entry {
    /// What the entry means.
    ///
    /// # Errors
    /// As [`understand`].
    pub fn understood(&self) -> Result<Understood, Misread> {
        understand(&self.text, self.unit, self.meaning)
    }
}

/// How a mark that could be taken two ways was taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Meaning {
    /// It divides wholes from decimals.
    DecimalPoint,
    /// It groups thousands.
    Thousands,
}

/// The marks a person is used to. Asked while typing, never while reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Marks {
    /// The person's own decimal mark, '.' or ','; with any other every mark in doubt is asked.
    pub decimal: char,
}

impl Default for Marks {
    fn default() -> Self {
        Self { decimal: '.' }
    }
}

/// What a text means.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Understood {
    /// The quantity in SI.
    pub si: f64,
    /// What kind of quantity it is.
    pub dimension: Dimension,
    /// The unit that was used: the one in the text wins over the field's. Feet and inches are inches.
    pub written: Unit,
    /// The number in `written`.
    pub value: f64,
    /// Whether the text names its unit.
    pub names_unit: bool,
    /// How a mark in doubt was taken; nothing when none was.
    pub meaning: Option<Meaning>,
}

/// Why a text is no number. Codes and values only: the sentence is made elsewhere.
#[derive(Clone, Debug, PartialEq)]
pub enum Misread {
    /// Nothing visible was typed.
    Empty,
    /// What stands here isn't a number or part of one.
    NotANumber {
        /// Which character of the text, counted from zero.
        at: usize,
        /// The word that stands there, as typed; nothing at the end.
        found: String,
    },
    /// A mark could be taken two ways, and both make a number.
    Ambiguous {
        /// The number if the mark is decimal, in the unit `written`.
        as_decimal: f64,
        /// The number if the mark groups thousands, in the unit `written`.
        as_thousands: f64,
        /// The unit of both.
        written: Unit,
    },
    /// No unit has this name, as typed.
    UnknownUnit(String),
    /// The unit measures something else.
    WrongDimension {
        /// The unit in the text.
        found: Unit,
        /// What the field is for.
        wanted: Dimension,
    },
    /// The smaller of two parts reaches the larger one: 4 ft 14 in.
    PartTooLarge {
        /// The smaller part.
        value: f64,
        /// Its unit.
        unit: Unit,
        /// What it must stay below.
        below: f64,
    },
    /// More than [`LONGEST`] visible characters.
    TooLong,
    /// Beyond [`LARGEST_SI`].
    TooLarge,
    /// Not zero but within [`SMALLEST_SI`] of it.
    TooSmall,
    /// A fraction over nothing.
    DivideByZero,
    /// It counts things and isn't whole, or is less than one.
    NotWhole {
        /// The number as read.
        value: f64,
    },
    /// No vessel has this nominal size.
    NoSuchSize {
        /// Nominal diameter as read, inches.
        diameter_in: f64,
        /// Nominal height as read, inches.
        height_in: f64,
    },
}

/// Reads a saved text. Never consults a preference: a mark in doubt is taken as `meaning` says.
///
/// # Errors
/// Why it is no number of this kind; [`Misread::Ambiguous`] when a mark is in doubt, both readings
/// make a number and no meaning was given.
pub fn understand(text: &str, unit: Unit, meaning: Option<Meaning>) -> Result<Understood, Misread> {
    if let Some(meaning) = meaning {
        return read(text, unit, meaning).0;
    }
    let (decimal, doubt) = read(text, unit, Meaning::DecimalPoint);
    if doubt.any() { certain(decimal, read(text, unit, Meaning::Thousands).0) } else { decimal }
}

/// Reads a text while its author is there, and makes the entry that will be saved.
///
/// The entry holds a meaning wherever a mark was in doubt, so that [`understand`] reads it the same
/// for ever.
///
/// # Errors
/// As [`understand`]; a person's own decimal mark is never in doubt. After
/// [`Misread::Ambiguous`] and the person's answer, [`answered`] makes the entry.
pub fn typed(text: &str, unit: Unit, marks: Marks) -> Result<(Entry, Understood), Misread> {
    let (decimal, doubt) = read(text, unit, Meaning::DecimalPoint);
    let understood = if !doubt.any() || doubt.only(marks.decimal) {
        decimal
    } else {
        certain(decimal, read(text, unit, Meaning::Thousands).0)
    }?;
    Ok((entry(text, unit, &understood), understood))
}

/// The entry after the person said how a mark in doubt is meant.
///
/// # Errors
/// Why the text is no number in that reading.
pub fn answered(text: &str, unit: Unit, meaning: Meaning) -> Result<(Entry, Understood), Misread> {
    let understood = read(text, unit, meaning).0?;
    Ok((entry(text, unit, &understood), understood))
}

fn entry(text: &str, unit: Unit, understood: &Understood) -> Entry {
    Entry { text: text.to_owned(), unit, meaning: understood.meaning }
}

/// The only reading that makes a number, or the question which of two is meant.
fn certain(
    decimal: Result<Understood, Misread>,
    thousands: Result<Understood, Misread>,
) -> Result<Understood, Misread> {
    match (decimal, thousands) {
        (Ok(decimal), Ok(thousands)) => Err(Misread::Ambiguous {
            as_decimal: decimal.value,
            as_thousands: thousands.value,
            written: decimal.written,
        }),
        (Ok(only), Err(_)) | (Err(_), Ok(only)) => Ok(only),
        (Err(misread), Err(_)) => Err(misread),
    }
}

/// One reading of a text, and what was in doubt.
fn read(text: &str, unit: Unit, meaning: Meaning) -> (Result<Understood, Misread>, Doubt) {
    let glyphs = glyphs(text);
    if glyphs.len() > LONGEST {
        return (Err(Misread::TooLong), Doubt::default());
    }
    let mut reader = Reader::new(&glyphs, meaning);
    let mut result = quantity(&mut reader, unit);
    let doubt = reader.doubt;
    if let Ok(understood) = &mut result {
        understood.meaning = doubt.any().then_some(meaning);
    }
    (result, doubt)
}
