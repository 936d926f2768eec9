//! The pressure vessel: its heads, shell, neck, openings, riser and collectors, and the space inside them.

pub mod cavity;
pub mod collector;
pub mod diameter;
pub mod head;
pub mod measures;
pub mod nominal;
pub mod opening;
pub mod riser;

pub use cavity::{Cavity, Rung, Rungs};
pub use collector::BottomCollector;
pub use diameter::DiameterBy;
pub use head::Head;
pub use measures::{Measures, Vessel};
pub use nominal::NominalDiameter;
pub use opening::Opening;
pub use riser::{Riser, RiserDiameter};
