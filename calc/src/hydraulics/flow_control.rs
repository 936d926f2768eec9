//! Drain line flow controls: fixed orifices that set the flow of a backwash.

use std::marker::PhantomData;

use crate::quantity::{Source, VolumeRate};

/// A size that is sold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlowControl {
    /// The flow it lets pass.
    pub flow: VolumeRate,
    /// Where that comes from.
    pub source: Source,
}

include!(concat!(env!("OUT_DIR"), "/flow_controls.rs"));

impl FlowControl {
    /// All that are sold, smallest first.
    #[must_use]
    pub fn all() -> &'static [FlowControl] {
        FLOW_CONTROLS
    }
}
