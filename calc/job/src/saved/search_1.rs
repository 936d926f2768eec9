//! Search, version 1. Frozen.

use bedwright_calc::hydraulics::{Arrangement, Purpose};
use serde_json::Value;

use super::fields::{Taken, Written};
use super::site_1::{put_entries, take_entries};
use crate::sections::search::VesselSearch;
use crate::sections::site::{ARRANGEMENTS, arrangement_id};

/// As saved: choices by id, then what was typed.
pub(super) fn write(search: &VesselSearch) -> Value {
    let mut body = Written::default();
    body.text("purpose", search.purpose.id());
    body.text("arrangement", arrangement_id(search.arrangement));
    body.text_unless_empty("media", &search.media);
    body.text_unless_empty("underbed", &search.underbed);
    body.flag_unless_no("riser_in_parts", search.riser_in_parts);
    put_entries(&mut body, &search.entries);
    body.unknown(&search.unknown);
    body.whole()
}

/// From what was saved, or the field that is wrong.
pub(super) fn read(body: Value) -> Result<VesselSearch, String> {
    let mut body = Taken::of(body);
    Ok(VesselSearch {
        purpose: body.chosen("purpose", Purpose::Dechlorination, Purpose::of),
        arrangement: body.chosen("arrangement", Arrangement::Parallel, |id| {
            ARRANGEMENTS.iter().copied().find(|there| arrangement_id(*there) == id)
        }),
        media: body.text_or_empty("media"),
        underbed: body.text_or_empty("underbed"),
        riser_in_parts: body.flag_or_no("riser_in_parts"),
        entries: take_entries(&mut body),
        unknown: body.rest()?,
    })
}
