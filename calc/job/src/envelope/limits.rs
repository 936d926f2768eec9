//! What no job has, so that nothing made to do harm is taken apart.

use super::Damage;

/// The most bytes unpacked.
pub const LONGEST: usize = 8 * 1024 * 1024;
/// How deep lists and objects may stand in each other.
pub const DEEPEST: usize = 48;
/// The most lists, objects, fields and values.
pub const MOST_ROWS: usize = 400_000;

/// Looks at a text of JSON without taking it apart.
pub(super) fn check(text: &str) -> Result<(), Damage> {
    if text.len() > LONGEST {
        return Err(Damage::TooLong { bytes: text.len() });
    }
    let (mut deep, mut rows, mut inside, mut escaped) = (0_usize, 0_usize, false, false);
    for byte in text.bytes() {
        if inside {
            match byte {
                _ if escaped => escaped = false,
                b'\\' => escaped = true,
                b'"' => inside = false,
                _ => {}
            }
            continue;
        }
        match byte {
            b'"' => inside = true,
            b'[' | b'{' => {
                deep += 1;
                rows += 1;
            }
            b']' | b'}' => deep = deep.saturating_sub(1),
            b',' => rows += 1,
            _ => {}
        }
        if deep > DEEPEST {
            return Err(Damage::TooDeep);
        }
        if rows > MOST_ROWS {
            return Err(Damage::TooMany);
        }
    }
    Ok(())
}
