//! Taking in a job that somebody sent: the ways in, what came, what it would change. Nothing changes before a tap.

mod came;
mod codes;
mod page;

use bedwright_job::envelope::{Frame, Gathered};
use bedwright_job::words::Manner;

pub use page::receive_page;

/// The envelope that frames are of; else what to say, once it is known who reads it.
pub fn gathered(frames: Vec<Frame>) -> Result<Vec<u8>, Box<dyn Fn(Manner) -> String>> {
    let mut gathered = Gathered::default();
    for frame in frames {
        if let Err(fault) = gathered.take(frame) {
            return Err(Box::new(move |manner| manner.label(fault).to_owned()));
        }
    }
    gathered.whole().ok_or_else(|| -> Box<dyn Fn(Manner) -> String> {
        Box::new(move |manner| manner.missing_frames(&gathered.missing(), gathered.count()))
    })
}
