//! The two ways a text can be meant, put so that a person can choose.

use bedwright_job::entry::Misread;
use bedwright_job::words::Manner;

use crate::parts::entry::Doubt;

/// Both ways, where that is what keeps the text from being understood.
pub fn doubt_of(manner: Manner, misread: Option<Misread>) -> Option<Doubt> {
    match misread {
        Some(Misread::Ambiguous { as_decimal, as_thousands, written }) => {
            let way = |value: f64| format!("{} {}", manner.decimal(value, 6), manner.unit(written));
            Some(Doubt { first: way(as_decimal), second: way(as_thousands) })
        }
        _ => None,
    }
}
