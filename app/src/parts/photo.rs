//! What is said of a picture that was chosen.

use bedwright_edge::photo::NotKept;
use bedwright_job::words::{LoadingLabel, PhotoLabel};

use crate::desk::Desk;

/// Why it wasn't kept, in a sentence.
pub fn not_kept(desk: Desk, why: &NotKept) -> &'static str {
    match why {
        NotKept::NoPicture => desk.label(PhotoLabel::NoPicture),
        NotKept::TooLarge => desk.label(PhotoLabel::TooLarge),
        NotKept::Fault(_) => desk.label(LoadingLabel::PhotoFailed),
    }
}
