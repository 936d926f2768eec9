//! Why a change was not made.

use crate::id::Id;
use crate::sections::SectionName;

/// Why a change was not made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Refused {
    /// No vessel has this id.
    NoVessel(Id),
    /// No layer has this id.
    NoLayer(Id),
    /// A vessel or layer with this id is there already.
    SameId(Id),
    /// There is no such place.
    NoPlace {
        /// The place asked for.
        at: usize,
        /// How many there are.
        of: usize,
    },
    /// A cone is for the bottom only.
    ConeOnTop,
    /// The section could not be read, so it isn't changed.
    Locked(SectionName),
    /// A record with this id is there already.
    SameRecord(Id),
    /// The vessel's loading was signed; from there on corrections are added.
    Signed,
    /// There is no such drum, or no such place for one.
    NoDrum,
    /// What is to be put back doesn't fit the job any more.
    NotSo,
    /// A row of the price list has another key than it is put under, or an amount that can't be kept.
    PriceRow(String),
}
