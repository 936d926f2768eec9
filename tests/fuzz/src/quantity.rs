//! A typed quantity: the same for ever once it is understood, and as written again.

use bedwright_job::entry::{
    Entry, LARGEST_SI, LONGEST, Marks, Meaning, Misread, Unit, answered, nominal_size, typed, understand,
};

use crate::before::first;

/// One byte says the unit, one the marks, the rest is what was typed.
///
/// # Panics
/// What was typed reads otherwise the second time.
pub fn holds(bytes: &[u8]) {
    let (unit, bytes) = first(bytes);
    let (marks, bytes) = first(bytes);
    let text = String::from_utf8_lossy(bytes);
    let unit = Unit::ALL[usize::from(unit) % Unit::ALL.len()];
    let marks = Marks { decimal: ['.', ',', '\0'][usize::from(marks) % 3] };
    // Names of sizes go their own way.
    let _ = nominal_size(&text);
    for meaning in [Meaning::DecimalPoint, Meaning::Thousands] {
        if let Ok((entry, understood)) = answered(&text, unit, meaning) {
            kept(&entry, understood.si);
        }
    }
    match typed(&text, unit, marks) {
        Ok((entry, understood)) => {
            assert!(understood.si.is_finite() && understood.si.abs() <= LARGEST_SI, "{understood:?}");
            assert_eq!(understood.dimension, unit.dimension());
            assert_eq!(understood.written.dimension(), unit.dimension());
            kept(&entry, understood.si);
            // Kept without a meaning only where none is needed.
            if entry.meaning.is_none() {
                assert_eq!(understand(&text, unit, None), Ok(understood));
            }
            written_again(understood.value, understood.written, understood.si);
        }
        Err(Misread::Ambiguous { as_decimal, as_thousands, written }) => {
            assert!(matches!(understand(&text, unit, None), Err(Misread::Ambiguous { .. })));
            for (meaning, value) in [(Meaning::DecimalPoint, as_decimal), (Meaning::Thousands, as_thousands)] {
                let (_, understood) = answered(&text, unit, meaning).expect("both readings make a number");
                assert_eq!((understood.value, understood.written), (value, written));
            }
        }
        Err(_) => {}
    }
}

/// What is kept of an entry says the same when it is read.
fn kept(entry: &Entry, si: f64) {
    let read: Entry = serde_json::from_str(&serde_json::to_string(entry).expect("it is written")).expect("it is read");
    assert_eq!(read, *entry);
    assert_eq!(read.understood().map(|understood| understood.si.to_bits()), Ok(si.to_bits()));
}

/// Written by std as the shortest text that gives the same double, in the unit it was understood in.
fn written_again(value: f64, unit: Unit, si: f64) {
    let plain = format!("{value}");
    let text = if plain.len() > LONGEST { format!("{value:e}") } else { plain };
    // The mark of "1.234" is in doubt; said to be decimal it isn't.
    let again = understand(&text, unit, Some(Meaning::DecimalPoint));
    assert_eq!(again.map(|understood| understood.si.to_bits()), Ok(si.to_bits()), "{text} {unit:?}");
}
