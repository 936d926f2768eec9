//! Openings of test sieves.

use std::marker::PhantomData;

use crate::quantity::{Length, Source};

/// A test sieve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sieve {
    /// Its designation.
    pub designation: &'static str,
    /// The side of its square opening.
    pub opening: Length,
    /// Where that comes from.
    pub source: Source,
}

include!(concat!(env!("OUT_DIR"), "/sieves.rs"));

impl Sieve {
    /// All of the table, the widest first.
    #[must_use]
    pub fn all() -> &'static [Sieve] {
        SIEVES
    }

    /// The sieve of this designation.
    #[must_use]
    pub fn of(designation: &str) -> Option<&'static Sieve> {
        SIEVES.iter().find(|sieve| sieve.designation == designation)
    }
}
