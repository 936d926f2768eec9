//! What a water may hold where a medium is to do its work.

use crate::hydraulics::Purpose;
use crate::hydraulics::service::limited;
use crate::quantity::{Amount, Concentration, Known, Source, Subject, Term, Verdict};

/// A limit on the water for a purpose: a row of `water_limits.csv`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WaterLimit {
    /// Where it holds.
    pub purpose: Purpose,
    /// What it limits.
    pub quantity: Term,
    /// The least.
    pub low: Option<Amount>,
    /// The most.
    pub high: Option<Amount>,
    /// Section or table of the source.
    pub section: &'static str,
    /// Where it comes from.
    pub source: Source,
}

include!(concat!(env!("OUT_DIR"), "/water_limits.rs"));

impl WaterLimit {
    /// All of them.
    #[must_use]
    pub fn all() -> &'static [WaterLimit] {
        WATER_LIMITS
    }
}

/// What was found in the water, by the noun it is limited by.
#[must_use]
pub fn water_verdicts(purpose: Purpose, found: &[(Term, Known<Amount>)]) -> Vec<Verdict> {
    WATER_LIMITS
        .iter()
        .filter(|limit| limit.purpose == purpose)
        .filter_map(|limit| {
            let (_, known) = found.iter().find(|(term, _)| *term == limit.quantity)?;
            Some(limited(
                Subject::Rule { quantity: limit.quantity, section: limit.section },
                known.value,
                (limit.low, limit.high),
                Vec::new(),
                (known.basis, limit.source),
            ))
        })
        .collect()
}
