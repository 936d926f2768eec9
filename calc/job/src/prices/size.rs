//! The length a thing is stocked in, or what a pack holds.

use crate::entry::{Dimension, Entry, Marks, Unit, typed};

/// Why a text is no size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SizeFault {
    /// It is no length, volume or mass with its unit.
    NotASize,
    /// It is nought or less.
    NoSize,
}

/// Reads a length, a volume or a mass, typed with its unit; none where nothing is typed.
///
/// # Errors
/// Why it is none.
///
/// # Example
/// ```
/// use bedwright_job::entry::Marks;
/// use bedwright_job::prices::{SizeFault, size};
/// assert_eq!(size("10 ft", Marks { decimal: '.' }).unwrap().unwrap().text, "10 ft");
/// assert_eq!(size("10", Marks { decimal: '.' }), Err(SizeFault::NotASize));
/// assert_eq!(size("0 kg", Marks { decimal: '.' }), Err(SizeFault::NoSize));
/// ```
pub fn size(text: &str, marks: Marks) -> Result<Option<Entry>, SizeFault> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    let read = |unit: Unit| typed(text, unit, marks).ok().filter(|(_, understood)| understood.names_unit);
    match [Unit::Foot, Unit::CubicFoot, Unit::Kilogram].into_iter().find_map(read) {
        Some((_, understood)) if understood.si <= 0.0 => Err(SizeFault::NoSize),
        Some((mut entry, understood))
            if matches!(understood.dimension, Dimension::Length | Dimension::Volume | Dimension::Mass) =>
        {
            entry.unit = understood.written;
            Ok(Some(entry))
        }
        _ => Err(SizeFault::NotASize),
    }
}
