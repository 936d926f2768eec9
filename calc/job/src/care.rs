//! The care of a bed after it was loaded: visits and what they say, when it is due, what must be ordered.
//!
//! | file | holds |
//! |---|---|
//! | [`visit`] | what somebody read on a visit, as a record |
//! | [`happened`] | what happened to a bed: changed, rotated, its meter replaced, what is expected of it |
//! | [`bed_life`] | which readings belong to which bed |
//! | [`forecast`] | when the outlet reaches its limit |
//! | [`surface`] | media lost |
//! | [`seen`] | meter and pressures from visit to visit |
//! | [`run`] | how long it runs from wash to wash, by the pressures that were seen |
//! | [`card`] | what the card of a tag says |
//! | [`question`] | readings that contradict each other, or the vessel |
//! | [`due`] | what is due over all jobs |
//! | [`calendar`] | the same as a calendar file |
//! | [`chart`] | the axes of a small chart |
//! | [`replacement`] | the job that replaces a bed |

pub mod bed_life;
pub mod calendar;
pub mod card;
pub mod chart;
pub mod due;
pub mod forecast;
pub mod happened;
pub mod question;
pub mod replacement;
pub mod run;
pub mod seen;
pub mod surface;
pub mod visit;
