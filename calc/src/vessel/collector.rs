//! What gathers water at the bottom, and the room it takes from the bed.

use crate::quantity::{Input, Known, Length, Term, metres};

/// The bottom collector.
///
/// Heights are above the lowest inside point. The height of the top slot decides what covers it; its width decides
/// which grains it holds back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BottomCollector {
    /// None: water leaves by a bottom opening, or by the riser's open end.
    None,
    /// A basket or cone screen on the riser's lower end, taken as the cylinder that encloses it.
    Basket {
        /// Outside diameter of the cylinder that encloses it.
        diameter: Known<Length>,
        /// Its lower end.
        bottom: Known<Length>,
        /// Its upper end.
        top: Known<Length>,
        /// Height of the top slot.
        top_slot: Known<Length>,
        /// Width of a slot.
        slot_width: Option<Known<Length>>,
    },
    /// Slotted pipes lying level round a hub.
    HubAndLaterals {
        /// Number of laterals.
        count: u32,
        /// Outside diameter of one.
        diameter: Known<Length>,
        /// Length of one, from the hub outward.
        length: Known<Length>,
        /// Height of their centre line.
        axis: Known<Length>,
        /// Height of the top slot.
        top_slot: Known<Length>,
        /// Width of a slot.
        slot_width: Option<Known<Length>>,
    },
    /// A level plate with slots; the bed stands on it.
    SlottedPlate {
        /// Height of its upper face.
        top: Known<Length>,
        /// Width of a slot.
        slot_width: Option<Known<Length>>,
    },
    /// A level plate with nozzles; the bed stands on it.
    NozzlePlate {
        /// Height of the plate's upper face.
        top: Known<Length>,
        /// Height of the nozzles' top slot.
        top_slot: Known<Length>,
        /// Width of a slot.
        slot_width: Option<Known<Length>>,
    },
}

impl BottomCollector {
    /// Height of the top slot, where there is one to be covered; a slotted plate needs no cover.
    #[must_use]
    pub fn top_slot(&self) -> Option<Known<Length>> {
        match *self {
            BottomCollector::None | BottomCollector::SlottedPlate { .. } => None,
            BottomCollector::Basket { top_slot, .. }
            | BottomCollector::HubAndLaterals { top_slot, .. }
            | BottomCollector::NozzlePlate { top_slot, .. } => Some(top_slot),
        }
    }

    /// Width of its slots, where known.
    #[must_use]
    pub fn slot_width(&self) -> Option<Known<Length>> {
        match *self {
            BottomCollector::None => None,
            BottomCollector::Basket { slot_width, .. }
            | BottomCollector::HubAndLaterals { slot_width, .. }
            | BottomCollector::SlottedPlate { slot_width, .. }
            | BottomCollector::NozzlePlate { slot_width, .. } => slot_width,
        }
    }

    /// Height of the face the bed stands on: a plate's upper face, else the lowest inside point.
    #[must_use]
    pub fn floor(&self) -> Option<Known<Length>> {
        match *self {
            BottomCollector::SlottedPlate { top, .. } | BottomCollector::NozzlePlate { top, .. } => Some(top),
            _ => None,
        }
    }

    /// Height of the lowest slot, as far as the collector's own shape tells it.
    #[must_use]
    pub fn bottom_slot(&self) -> Option<Length> {
        match self {
            BottomCollector::None => None,
            BottomCollector::Basket { bottom, .. } => Some(bottom.value),
            BottomCollector::HubAndLaterals { axis, diameter, .. } => {
                Some(metres(axis.value.value - diameter.value.value / 2.0))
            }
            BottomCollector::SlottedPlate { top, .. } | BottomCollector::NozzlePlate { top, .. } => Some(top.value),
        }
    }

    /// What the room it takes rests on.
    pub(crate) fn inputs(&self) -> Vec<Input> {
        match self {
            BottomCollector::None => Vec::new(),
            BottomCollector::Basket { diameter, bottom, top, .. } => vec![
                diameter.input(Term::CollectorDiameter),
                bottom.input(Term::CollectorBottom),
                top.input(Term::CollectorTop),
            ],
            BottomCollector::HubAndLaterals { diameter, length, axis, .. } => vec![
                diameter.input(Term::CollectorDiameter),
                length.input(Term::LateralLength),
                axis.input(Term::LateralAxis),
            ],
            BottomCollector::SlottedPlate { top, .. } | BottomCollector::NozzlePlate { top, .. } => {
                vec![top.input(Term::CollectorTop)]
            }
        }
    }
}
