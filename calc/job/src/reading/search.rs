//! From what was typed of a search to what can be looked for.

use bedwright_calc::hydraulics::{Stuff, Wanted};
use bedwright_calc::quantity::{Fault, Problem, Term, cubic_metres_per_second, metres};

use super::site::Reader;
use crate::edit::WaterOf;
use crate::entry::{Misread, Understood};
use crate::field::WaterField;
use crate::sections::search::VesselSearch;
use crate::sections::site::SiteConditions;

/// What a search says, read.
#[derive(Clone, Debug, PartialEq)]
pub struct SearchReading {
    /// Entries that make no sense.
    pub misread: Vec<(WaterOf, WaterField, Misread)>,
    /// Entries that do.
    pub understood: Vec<(WaterOf, WaterField, Understood)>,
    /// What is assumed where nothing was typed, in SI.
    pub assumed: Vec<(WaterOf, WaterField, f64)>,
    /// What is looked for, or what is missing.
    pub wanted: Result<Wanted, Problem>,
}

/// Reads a search and the site's water.
#[must_use]
pub fn read_search(conditions: &SiteConditions, search: &VesselSearch) -> SearchReading {
    let mut reader = Reader::default();
    let site = reader.site(conditions);
    let (of, entries) = (WaterOf::Search, &search.entries);
    let flow = reader.typed(&of, entries, WaterField::ServiceFlow, cubic_metres_per_second);
    let peak_flow = reader.typed(&of, entries, WaterField::PeakFlow, cubic_metres_per_second);
    let clearance = reader.typed(&of, entries, WaterField::CeilingClearance, metres);
    let least = reader.typed(&of, entries, WaterField::MinimumExpansion, |x| x);
    let usual = search.purpose.minimum_expansion();
    let minimum_expansion = reader.or(&of, WaterField::MinimumExpansion, least, usual, |x: &f64| *x);
    let flow_control = reader.typed(&of, entries, WaterField::FlowControl, cubic_metres_per_second);
    let missing = |term: Term| Problem::new(term, Fault::Missing);
    let stuff = |id: &str| Stuff::of(id).ok_or(missing(Term::BulkDensity));
    let underbed = if search.underbed.is_empty() { Ok(None) } else { stuff(&search.underbed).map(Some) };
    let wanted = flow.ok_or(missing(Term::SiteFlow)).and_then(|service_flow| {
        Ok(Wanted {
            purpose: search.purpose,
            arrangement: search.arrangement,
            service_flow,
            peak_flow,
            media: stuff(search.media_id())?,
            underbed: underbed?,
            clearance,
            straight_riser: !search.riser_in_parts,
            temperature_low: site.temperature_low,
            temperature_high: site.temperature_high,
            backwash_available: site.backwash_available,
            flow_control,
            minimum_expansion,
        })
    });
    let Reader { misread, understood, assumed } = reader;
    SearchReading { misread, understood, assumed, wanted }
}
