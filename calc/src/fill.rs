//! How a vessel is filled: layers, tape readings, packs, freeboard, and what a loader must know.

pub mod checks;
pub mod depth_table;
pub mod deviation;
pub mod freeboard;
pub mod ladder;
pub mod layer;
pub mod plan;
pub mod steps;
pub mod tape;
pub mod weights;

pub use depth_table::{DepthRow, depth_table};
pub use deviation::{Deviation, Explanation};
pub use freeboard::Freeboard;
pub use ladder::{Pour, Rung, Sounding, SurfaceState, all_read, ladder, pours_of, top_up};
pub use layer::{Layer, LayerFill, NearMiss, PartPack, Role, Target};
pub use plan::{Plan, plan};
pub use tape::Tape;
pub use weights::{Weights, weights};
