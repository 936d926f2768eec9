//! The engineering of granular-media beds in pressure vessels.
//!
//! Computes the inside of a vessel (volume below a height, and back), its fill in layers with tape readings,
//! whole packs and part packs, the judgements a loader needs, and the bill of materials. Pure: no clock, no
//! input or output, no browser, and no sentences; a figure says how it knows, a problem names its quantity.
//!
//! Heights are above the lowest inside point, on the axis. Tape readings are from the datum (the rim of the
//! opening) down. Inside, everything is SI.

pub mod fill;
pub mod hydraulics;
pub mod life;
pub mod material;
pub mod order;
pub mod quantity;
pub mod supply;
pub mod vessel;
pub mod water;
