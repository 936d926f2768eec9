//! Checks of the whole against the outside.
//!
//! This library is what natively and in wasm must come out alike: it reads the tables of `tests/reference` into the
//! binary, works every row out with the engineering, and says what missed its tolerance. Both builds also boil every
//! computed value down to digests, which must agree to the bit.
//!
//! | module | holds |
//! |---|---|
//! | [`table`] | reading the reference tables |
//! | [`vessels`] | volumes and heights of vessels |
//! | [`heads`] | depths and volumes of heads |
//! | [`sieves`] | openings of test sieves |
//! | [`water`] | density and viscosity of water |
//! | [`packed_beds`] | pressure lost in a bed at rest |
//! | [`packings`] | how closely a bed lies, back from the pressure lost |
//! | [`fluidisation`] | when grains lift, how far they stand apart, how fast they fall |
//! | [`gradings`] | gradings cut at the mesh |
//! | [`expansions`] | expansion of graded beds |
//! | [`tape_spreads`] | how far a tape reading may lie from the one to expect |
//! | [`carbonates`] | waters and what calcite does to them |
//! | [`contactors`] | beds of calcite and their waters |
//! | [`balances`] | how long beds last, what they take in a year, what is lifted |
//! | [`lives`] | readings of a bed that is being spent, and media lost |
//! | [`quotes`] | what quotes come to |
//! | [`fills`] | whole fills, for the digests |
//! | [`beds`] | whole beds in backwash and service, for the digests |
//! | [`packs`] | packs at least cost, pieces from stock lengths |
//! | [`digest`] | boiling values down |
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)] // A broken table fails its test.

pub mod balances;
pub mod beds;
pub mod carbonates;
pub mod contactors;
pub mod digest;
pub mod expansions;
pub mod fills;
pub mod fluidisation;
pub mod gradings;
pub mod heads;
pub mod lives;
pub mod packed_beds;
pub mod packings;
pub mod packs;
pub mod quotes;
pub mod sieves;
pub mod table;
pub mod tape_spreads;
pub mod vessels;
pub mod water;

/// What came of one reference table.
#[derive(Clone, Debug, Default)]
pub struct Checked {
    /// Rows that were compared.
    pub rows: usize,
    /// Rows outside their tolerance, a line each.
    pub misses: Vec<String>,
    /// Every value that was computed, in order.
    pub values: Vec<f64>,
}

impl Checked {
    /// Compares one value with its reference: within `tolerance`, which is absolute.
    pub fn compare(&mut self, id: &str, found: f64, wanted: f64, tolerance: f64) {
        self.rows += 1;
        self.values.push(found);
        let miss = (found - wanted).abs();
        // Written so that NaN is a miss.
        let within = miss <= tolerance;
        if !within {
            self.misses.push(format!("{id}: {found:e}, should be {wanted:e}; off by {miss:e}, allowed {tolerance:e}"));
        }
    }

    /// Notes a row that could not be computed.
    pub fn refuse(&mut self, id: &str, why: impl std::fmt::Debug) {
        self.rows += 1;
        self.values.push(f64::NAN);
        self.misses.push(format!("{id}: refused: {why:?}"));
    }

    /// Notes a row where something holds or doesn't, rather than a number.
    pub fn expect(&mut self, id: &str, holds: bool, found: impl std::fmt::Debug) {
        self.rows += 1;
        self.values.push(f64::from(u8::from(holds)));
        if !holds {
            self.misses.push(format!("{id}: {found:?}"));
        }
    }

    /// Fails the test that asks, with the first misses, unless all `rows` came out.
    ///
    /// # Panics
    /// When a row missed, or the table has another number of rows.
    pub fn settle(&self, table: &str, rows: usize) {
        assert!(
            self.misses.is_empty(),
            "{table}: {} of {} rows missed:\n{}",
            self.misses.len(),
            self.rows,
            self.misses.iter().take(40).cloned().collect::<Vec<_>>().join("\n")
        );
        assert_eq!(self.rows, rows, "{table}: number of rows");
    }
}
