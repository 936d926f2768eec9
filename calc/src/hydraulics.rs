//! Whether water does in a bed what it should: pressure lost in service, lift in backwash, and what the site can give.
//!
//! Speeds are flow divided by the *empty* shell's section. An expansion is a share of the settled volume.

pub mod backwash;
pub mod bed;
pub mod duty;
pub mod evidence;
pub mod expansion;
pub mod feed;
pub mod flow_control;
pub mod fluidisation;
pub mod packed_bed;
pub mod packing;
pub mod search;
pub mod seen;
pub mod sensitivity;
pub mod service;
pub mod steps;
pub mod window;

pub use backwash::{Backwash, End, Setting, backwash};
pub use bed::Bed;
pub use duty::{Arrangement, Criterion, CriterionOf, Duty, Purpose, Regime, Site};
pub use evidence::{DrainCheck, Lines, PaperPoint, lines};
pub use expansion::Expansion;
pub use feed::FeedQuantity;
pub use flow_control::FlowControl;
pub use packing::{CleanDrop, Packing, packing};
pub use search::{Candidate, Found, Margin, Stuff, Wanted, search};
pub use sensitivity::Sensitivity;
pub use service::{Service, service};
pub use window::{WindowRow, window};

pub(crate) use crate::quantity::GRAVITY;
