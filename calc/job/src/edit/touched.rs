//! Which sections a change touches, and that they count it.

use super::{Edit, WaterOf};
use crate::id::{Id, Revision};
use crate::job::Job;
use crate::sections::SectionName;

/// The sections a change touches.
#[must_use]
pub fn sections_of(edit: &Edit) -> &'static [SectionName] {
    match edit {
        Edit::Text { .. } | Edit::Kind(_) | Edit::Bin(_) => &[SectionName::Head],
        Edit::InsertVessel { .. } | Edit::RemoveVessel(_) => &[SectionName::Survey, SectionName::Plan],
        Edit::MoveVessel { .. }
        | Edit::Tags { .. }
        | Edit::VesselNotes { .. }
        | Edit::Choose { .. }
        | Edit::Survey { .. } => &[SectionName::Survey],
        Edit::Plan { .. }
        | Edit::InsertLayer { .. }
        | Edit::RemoveLayer { .. }
        | Edit::MoveLayer { .. }
        | Edit::Layer { .. }
        | Edit::LayerEntry { .. } => &[SectionName::Plan],
        Edit::PickText { .. } | Edit::Pick { .. } => &[SectionName::Picking],
        Edit::Search(_) | Edit::Water { of: WaterOf::Search, .. } => &[SectionName::Search],
        Edit::Source(_) | Edit::Duty { .. } | Edit::Water { .. } => &[SectionName::Site],
        Edit::Quote(_) => &[SectionName::Quote],
        Edit::Acknowledge { .. } | Edit::Load { .. } => &[SectionName::Loading],
        Edit::Supply(_) => &[SectionName::Supply],
        Edit::Price { .. } | Edit::Catalogue(_) => &[SectionName::Prices],
        Edit::Kit { .. } | Edit::LeaveOut { .. } => &[SectionName::Kit],
        Edit::AddRecord(_) => &[],
        Edit::All(_) | Edit::Back(_) | Edit::Joined(_) => SectionName::ALL,
    }
}

/// Counts a section up: two states are never the same state.
pub(super) fn touch(job: &mut Job, section: SectionName, device: &Id) {
    let revision = match section {
        SectionName::Head => &mut job.head.revision,
        SectionName::Survey => &mut job.survey.revision,
        SectionName::Plan => &mut job.plan.revision,
        SectionName::Picking => &mut job.picking.revision,
        SectionName::Site => &mut job.site.revision,
        SectionName::Quote => &mut job.quote.revision,
        SectionName::Loading => &mut job.loading.revision,
        SectionName::Supply => &mut job.supply.revision,
        SectionName::Prices => &mut job.prices.revision,
        SectionName::Kit => &mut job.kit.revision,
        SectionName::Search => &mut job.search.revision,
    };
    let counter = revision.as_ref().map_or(0, |r| r.counter).saturating_add(1);
    *revision = Some(Revision { device: device.clone(), counter });
}
