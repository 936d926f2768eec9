//! How long a bed lasts: what readings of it say.
//!
//! | file | holds |
//! |---|---|
//! | [`student`] | quantiles of Student's t |
//! | [`calibration`] | a straight line through readings, and back from a reading to where it was taken |
//! | [`breakthrough`] | the S-shaped curve of a bed that is being spent, and when its outlet reaches a limit |
//! | [`throughput`] | water through a place, from its meters, one after the other |
//! | [`media_loss`] | media lost between two tape readings of the same state |

pub mod breakthrough;
pub mod calibration;
pub mod media_loss;
pub mod student;
pub mod throughput;

pub use breakthrough::{Breakthrough, Front, Spent, breakthrough};
pub use calibration::{Line, Span, straight_line};
pub use media_loss::{MediaLoss, Surface, media_lost};
pub use student::t_quantile;
pub use throughput::{MeterReading, Throughput};
