//! An envelope over several codes that are shown in turn, read in any order, and never mixed up with another's.
//!
//! ```text
//! BW1:      in letters, so that nobody takes it for something else; then in base45
//! 4 bytes   CRC-32 of what follows
//! 4 bytes   CRC-32 of the job's id: of which job
//! 4 bytes   CRC-32 of the whole envelope: of which sending of it
//! 1 byte    which frame, from 0
//! 1 byte    how many there are, less one
//! the rest  its share of the envelope; all are equally long but the last
//! ```

use super::base45::{base45, from_base45};
use super::crc32;

const MARK: &str = "BW1:";
const HEAD: usize = 14;
/// How much of an envelope one frame holds at most: 12 + 1.5 × (14 + 470) letters fit into a code of version 15 with the
/// least correction (ISO/IEC 18004: 758), which a phone reads off another one's screen.
pub const MOST_BYTES: usize = 470;
/// The most frames there may be; what takes more goes as a file.
const MOST_FRAMES: usize = 256;

/// One of several.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Frame {
    job: u32,
    envelope: u32,
    index: u8,
    last: u8,
    bytes: Vec<u8>,
}

/// Why a text is no frame, or not one of those that are being read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum FrameFault {
    /// It is something else.
    OtherThing,
    /// Something in it was changed.
    Changed,
    /// It belongs to another job.
    OtherJob,
    /// It belongs to another sending of the same job.
    OtherSending,
}

fn four(number: u32) -> [u8; 4] {
    number.to_be_bytes()
}

/// The frames of an envelope as texts, each for one code; none where it takes too many.
#[must_use]
pub fn frames(job: &str, sealed: &[u8]) -> Option<Vec<String>> {
    let count = sealed.len().div_ceil(MOST_BYTES).max(1);
    if count > MOST_FRAMES {
        return None;
    }
    // As equal as can be: the largest code decides how small its squares are.
    let each = sealed.len().div_ceil(count).max(1);
    let last = u8::try_from(count - 1).ok()?;
    let (job, envelope) = (crc32(job.as_bytes()), crc32(sealed));
    let share = |(index, share): (usize, &[u8])| {
        let mut told = Vec::with_capacity(HEAD + share.len());
        told.extend(four(job));
        told.extend(four(envelope));
        told.extend([u8::try_from(index).unwrap_or(u8::MAX), last]);
        told.extend(share);
        let sum = four(crc32(&told));
        [MARK, &base45(&[sum.as_slice(), &told].concat())].concat()
    };
    Some(sealed.chunks(each).enumerate().map(share).collect())
}

impl Frame {
    /// Whether a text says that it is a frame.
    #[must_use]
    pub fn is_one(text: &str) -> bool {
        text.starts_with(MARK)
    }

    /// Reads one.
    ///
    /// # Errors
    /// [`FrameFault::OtherThing`], [`FrameFault::Changed`].
    pub fn read(text: &str) -> Result<Frame, FrameFault> {
        let letters = text.strip_prefix(MARK).ok_or(FrameFault::OtherThing)?;
        let bytes = from_base45(letters).ok_or(FrameFault::Changed)?;
        let (sum, told) = bytes.split_at_checked(4).ok_or(FrameFault::Changed)?;
        if sum != four(crc32(told)) {
            return Err(FrameFault::Changed);
        }
        let (head, share) = told.split_at_checked(HEAD - 4).ok_or(FrameFault::Changed)?;
        let number = |from: usize| head.iter().skip(from).take(4).fold(0_u32, |sum, byte| sum << 8 | u32::from(*byte));
        let [.., index, last] = head else { return Err(FrameFault::Changed) };
        if index > last {
            return Err(FrameFault::Changed);
        }
        Ok(Frame { job: number(0), envelope: number(4), index: *index, last: *last, bytes: share.to_vec() })
    }
}

/// Frames as they come in.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Gathered {
    of: Option<(u32, u32)>,
    there: Vec<Option<Vec<u8>>>,
}

impl Gathered {
    /// Takes one in; tells whether it is new.
    ///
    /// # Errors
    /// [`FrameFault::OtherJob`], [`FrameFault::OtherSending`], and [`FrameFault::Changed`] where it says otherwise how many
    /// there are; what is there already stays.
    pub fn take(&mut self, frame: Frame) -> Result<bool, FrameFault> {
        let count = usize::from(frame.last) + 1;
        match self.of {
            None => {
                self.of = Some((frame.job, frame.envelope));
                self.there = vec![None; count];
            }
            Some((job, _)) if job != frame.job => return Err(FrameFault::OtherJob),
            Some((_, envelope)) if envelope != frame.envelope => return Err(FrameFault::OtherSending),
            Some(_) if self.there.len() != count => return Err(FrameFault::Changed),
            Some(_) => {}
        }
        let place = self.there.get_mut(usize::from(frame.index)).ok_or(FrameFault::Changed)?;
        let new = place.is_none();
        *place = Some(frame.bytes);
        Ok(new)
    }

    /// How many there are to be; nought before the first.
    #[must_use]
    pub fn count(&self) -> usize {
        self.there.len()
    }

    /// Which are still missing, counted from 1.
    #[must_use]
    pub fn missing(&self) -> Vec<usize> {
        (1..).zip(&self.there).filter(|(_, there)| there.is_none()).map(|(number, _)| number).collect()
    }

    /// The whole envelope, once none is missing.
    #[must_use]
    pub fn whole(&self) -> Option<Vec<u8>> {
        let (_, envelope) = self.of?;
        let parts: Option<Vec<&[u8]>> = self.there.iter().map(|part| part.as_deref()).collect();
        Some(parts?.concat()).filter(|sealed| crc32(sealed) == envelope)
    }
}
