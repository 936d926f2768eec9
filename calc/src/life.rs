//! How long a bed lasts: what the water takes from it and it from the water, and what readings of it say.
//!
//! | file | holds |
//! |---|---|
//! | [`carbonate`] | carbonate in water, and what calcite and magnesia do to it |
//! | [`neutralising`] | a bed of calcite, with or without magnesia |
//! | [`carbon`] | chlorine and organics in activated carbon |
//! | [`softening`] | a softener between regenerations |
//! | [`oxidant`] | what iron and manganese ask of an oxidant |
//! | [`capacity`] | media that hold so much and no more; service time by depth |
//! | [`limits`] | what a water may hold where a medium is to work |
//! | [`sensitivity`] | which input would change a life most |
//! | [`yearly`] | what a bed takes in a year |
//! | [`student`] | quantiles of Student's t |
//! | [`calibration`] | a straight line through readings, and back from a reading to where it was taken |
//! | [`breakthrough`] | the S-shaped curve of a bed that is being spent, and when its outlet reaches a limit |
//! | [`throughput`] | water through a place, from its meters, one after the other |
//! | [`usual`] | how long a bed usually lasts, before it was read |
//! | [`media_loss`] | media lost between two tape readings of the same state |

pub mod breakthrough;
pub mod calibration;
pub mod capacity;
pub mod carbon;
pub mod carbonate;
pub mod limits;
pub mod media_loss;
pub mod neutralising;
pub mod oxidant;
pub mod run;
pub mod sensitivity;
pub mod softening;
pub mod student;
pub mod throughput;
pub mod usual;
pub mod yearly;

pub use breakthrough::{Breakthrough, Front, Spent, breakthrough};
pub use calibration::{Line, Span, straight_line};
pub use limits::WaterLimit;
pub use media_loss::{MediaLoss, Surface, media_lost};
pub use run::{DropReading, WashRun, run_by_drop};
pub use student::t_quantile;
pub use throughput::{MeterReading, Throughput};
pub use usual::UsualLife;

/// A year of 365 days and a quarter, s.
pub(crate) const YEAR_S: f64 = 365.25 * 86_400.0;
/// Months in it.
pub(crate) const MONTHS_IN_YEAR: f64 = 12.0;
