//! One vessel: a drawing you can type on.

mod backwash;
mod doubt;
mod evidence;
mod layers;
mod life;
pub mod number_line;
mod page;
pub mod picture;
mod results;
mod service;
mod survey;
mod water;

use bedwright_job::decimal::plain;
use bedwright_job::id::Id;
use bedwright_job::sections::survey::VesselSurvey;
use bedwright_job::words::{Label, apart};

pub use number_line::NumberLine;
pub use page::vessel_page;

use crate::desk::Desk;

/// What a vessel is called: its tags and its nominal size.
pub fn name_of(desk: Desk, id: &Id) -> String {
    desk.of_job(|job| job.vessel(id).map(|vessel| name(desk, vessel)).unwrap_or_default())
}

fn name(desk: Desk, vessel: &VesselSurvey) -> String {
    let tags = if vessel.tags.is_empty() { desk.label(Label::Untagged).to_owned() } else { vessel.tags.join(", ") };
    match vessel.entries.get(&bedwright_job::field::SurveyField::NominalSize) {
        Some(typed) if !typed.entry.text.trim().is_empty() => {
            let size = bedwright_job::entry::nominal_size(&typed.entry.text).map_or_else(
                |_| typed.entry.text.clone(),
                |(diameter, height)| format!("{}×{}", plain(diameter), plain(height)),
            );
            format!("{} · {size}", apart(&tags))
        }
        _ => tags,
    }
}
