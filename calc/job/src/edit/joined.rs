//! Taking over what came of a join: section by section, so that only what differs counts as changed.

use std::sync::Arc;

use super::Edit;
use crate::id::{Id, Revision};
use crate::job::Job;
use crate::join::unite;
use crate::sections::Section;

/// Puts the sections of `with` into the job where they differ, and adds its records; gives back what takes the sections
/// back. Records stay.
pub(super) fn take(job: &mut Job, with: &Job, device: &Id) -> Edit {
    let before = Job { records: Vec::new(), ..job.clone() };
    section(&mut job.head, &with.head, device);
    section(&mut job.survey, &with.survey, device);
    section(&mut job.plan, &with.plan, device);
    section(&mut job.picking, &with.picking, device);
    section(&mut job.site, &with.site, device);
    section(&mut job.quote, &with.quote, device);
    section(&mut job.loading, &with.loading, device);
    section(&mut job.supply, &with.supply, device);
    section(&mut job.prices, &with.prices, device);
    section(&mut job.kit, &with.kit, device);
    section(&mut job.search, &with.search, device);
    job.locked = with.locked.clone();
    job.unknown = with.unknown.clone();
    unite(&mut job.records, &with.records);
    Edit::Joined(Arc::new(before))
}

fn section<T: Clone + PartialEq>(there: &mut Section<T>, with: &Section<T>, device: &Id) {
    if there == with {
        return;
    }
    let count = |section: &Section<T>| section.revision.as_ref().map_or(0, |revision| revision.counter);
    // A state that no device had: it counts on from both.
    let counter = count(there).max(count(with)).saturating_add(1);
    *there = with.clone();
    there.revision = Some(Revision { device: device.clone(), counter });
}
