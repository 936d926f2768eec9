//! Links to the cards of a vessel, one for each tag.

use bedwright_job::id::Id;
use bedwright_job::words::CareLabel;

use crate::desk::Desk;
use crate::parts::live::{El, el};
use crate::route::Route;

/// The links; they change with the tags.
pub fn card_links(desk: Desk, vessel: &Id) -> El {
    let vessel = vessel.clone();
    let links = move || {
        desk.of_job(|job| {
            let tags = job.vessel(&vessel).map(|vessel| vessel.tags.clone()).unwrap_or_default();
            let tags = if tags.is_empty() { vec![String::new()] } else { tags };
            tags.iter()
                .map(|tag| {
                    let tag = tag.trim();
                    let address = Route::Card(job.id.clone(), vessel.clone(), tag.to_owned()).address();
                    let name =
                        [desk.label(CareLabel::ServiceCard), if tag.is_empty() { "" } else { " " }, tag].concat();
                    el("a", "card-link").set("href", &address).text(&name)
                })
                .collect()
        })
    };
    el("p", "card-links").live(links)
}
