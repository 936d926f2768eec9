//! Numbers assumed until somebody knows better, and limits that rules of the trade draw.

use std::marker::PhantomData;

use super::{Amount, Basis, Known, Length, Mass, Pressure, Source, Temperature, Time, Volume, VolumeRate};

struct AssumptionRow {
    amount: Amount,
    source: Source,
}

include!(concat!(env!("OUT_DIR"), "/assumptions.rs"));

impl Assumption {
    fn row(self) -> Option<&'static AssumptionRow> {
        ASSUMPTIONS.get(self as usize)
    }

    /// Its value.
    #[must_use]
    pub fn amount(self) -> Amount {
        self.row().map_or(Amount::Ratio(0.0), |row| row.amount)
    }

    /// Where it comes from.
    #[must_use]
    pub fn source(self) -> Source {
        self.row().map_or(Source::FromMemory, |row| row.source)
    }

    /// Its bare number: a ratio as it is, anything else in SI.
    #[must_use]
    pub fn ratio(self) -> f64 {
        self.amount().si()
    }

    /// It as a length that is assumed; a length of its bare number where it is none.
    #[must_use]
    pub fn length(self) -> Known<Length> {
        Known { value: super::metres(self.ratio()), basis: Basis::Assumed, source: self.source() }
    }

    /// It as a volume that is assumed.
    #[must_use]
    pub fn volume(self) -> Known<Volume> {
        Known { value: super::cubic_metres(self.ratio()), basis: Basis::Assumed, source: self.source() }
    }

    /// It as a mass that is assumed.
    #[must_use]
    pub fn mass(self) -> Known<Mass> {
        Known { value: super::kilograms(self.ratio()), basis: Basis::Assumed, source: self.source() }
    }

    /// It as a bare ratio that is assumed.
    #[must_use]
    pub fn number(self) -> Known<f64> {
        Known { value: self.ratio(), basis: Basis::Assumed, source: self.source() }
    }

    /// It as a pressure that is assumed.
    #[must_use]
    pub fn pressure(self) -> Known<Pressure> {
        Known { value: super::pascals(self.ratio()), basis: Basis::Assumed, source: self.source() }
    }

    /// It as a temperature that is assumed.
    #[must_use]
    pub fn temperature(self) -> Known<Temperature> {
        Known { value: super::kelvins(self.ratio()), basis: Basis::Assumed, source: self.source() }
    }

    /// It as a time that is assumed.
    #[must_use]
    pub fn time(self) -> Known<Time> {
        Known { value: super::seconds(self.ratio()), basis: Basis::Assumed, source: self.source() }
    }
}
