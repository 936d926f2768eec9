//! Values put back to what they were.

use super::touched::touch;
use super::{Edit, Inverse, Refused};
use crate::back::{Back, between, restored, sections};
use crate::id::Id;
use crate::job::Job;

pub(super) fn apply(job: &mut Job, backs: &[Back], device: &Id) -> Result<Inverse, Refused> {
    let mut before = restored(job, backs).ok_or(Refused::NotSo)?;
    for section in sections(backs) {
        touch(&mut before, section, device);
    }
    let inverse = between(job, &before);
    *job = before;
    Ok(Some(Edit::Back(inverse)))
}
