//! What somebody pasted, dropped or opened: a link inside a message, the code alone, a job file, frames of codes.

use super::{Damage, Frame, FrameFault, Received, from_digits, from_link, limits, open, received};
use crate::saved::{self, Unreadable};

/// What stands before the code of a link.
const BEFORE: &str = "#/open/";
/// How often a code may be broken over lines.
const MOST_PIECES: usize = 400;

/// What was found.
#[derive(Clone, Debug, PartialEq)]
pub enum Found {
    /// A job, or some of its sections.
    Job(Box<Received>),
    /// One code of several.
    Frames(Vec<Frame>),
}

/// Looks for a job in what a file holds.
///
/// # Errors
/// Why there is none.
pub fn found_in_file(bytes: &[u8]) -> Result<Found, Damage> {
    if bytes.len() > saved::LONGEST {
        return Err(Damage::TooLong { bytes: bytes.len() });
    }
    match std::str::from_utf8(bytes) {
        Ok(text) if bytes.first() != Some(&super::VERSION) => found(text),
        // As it is, not in letters.
        _ => open(bytes).map(|came| Found::Job(Box::new(came))),
    }
}

/// Looks for a job in a text.
///
/// # Errors
/// Why there is none.
pub fn found(text: &str) -> Result<Found, Damage> {
    let text = text.trim_start_matches('\u{FEFF}').trim();
    if text.starts_with('{') {
        return file(text).map(|came| Found::Job(Box::new(came)));
    }
    if let Some(frames) = frames(text) {
        return frames.map(Found::Frames).map_err(|_| Damage::Changed);
    }
    let code = code_of(text).ok_or(Damage::OtherThing)?;
    message(code).map(|came| Found::Job(Box::new(came)))
}

/// The code of a link, with whatever comes after it; the text itself where it is nothing but a code.
#[must_use]
pub fn code_of(text: &str) -> Option<&str> {
    match text.find(BEFORE) {
        Some(at) => text.get(at + BEFORE.len()..),
        // Words of a language aren't as long, and have spaces between.
        None if text.len() >= 40 && !text.trim().contains(' ') => Some(text),
        None => None,
    }
}

/// A job file, or what an envelope holds, as plain JSON.
fn file(text: &str) -> Result<Received, Damage> {
    limits::check(text)?;
    match saved::read_job(text) {
        Ok(job) => Ok(Received::plain(job)),
        Err(Unreadable::OtherFormat) => received(text),
        Err(why) => Err(Damage::NoJob(why)),
    }
}

/// The code at the start of what is left of a message. A messenger may have broken it over lines, and a person's own words
/// may follow: as many pieces are taken as make it whole.
fn message(text: &str) -> Result<Received, Damage> {
    let mut code = String::new();
    let mut first = None;
    for piece in text.split_whitespace().take(MOST_PIECES) {
        code.push_str(piece.trim_end_matches(['.', ',', ';', ':', '!', '?', ')', ']', '>', '"', '\'', '”', '’', '»']));
        match opened(&code) {
            Ok(came) => return Ok(came),
            Err(damage) => first = first.or(Some(damage)),
        }
    }
    Err(first.unwrap_or(Damage::Cut))
}

/// What a code alone holds.
fn opened(code: &str) -> Result<Received, Damage> {
    let sealed = if code.starts_with('.') { from_digits(code) } else { from_link(code) };
    open(&sealed?)
}

/// Frames, one a line; none where the first is none.
fn frames(text: &str) -> Option<Result<Vec<Frame>, FrameFault>> {
    // None ends with a space: the last letter of base45 is never that large a digit.
    let lines: Vec<&str> = text.lines().map(str::trim).filter(|line| !line.is_empty()).collect();
    lines.first().is_some_and(|line| Frame::is_one(line)).then(|| lines.iter().map(|line| Frame::read(line)).collect())
}
