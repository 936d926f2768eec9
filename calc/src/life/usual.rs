//! How long a bed usually lasts: what is assumed before it was read.

use crate::hydraulics::Purpose;
use crate::quantity::Source;

/// A usual life: a row of `lives.csv`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UsualLife {
    /// What the bed is there for.
    pub purpose: Purpose,
    /// Months it lasts at the least.
    pub low_months: u32,
    /// Months after which it is changed whatever was read.
    pub high_months: u32,
    /// Where it comes from.
    pub source: Source,
}

include!(concat!(env!("OUT_DIR"), "/lives.rs"));

impl UsualLife {
    /// That of a purpose; nothing where none is known.
    #[must_use]
    pub fn of(purpose: Purpose) -> Option<UsualLife> {
        LIVES.iter().find(|row| row.purpose == purpose).copied()
    }
}

#[cfg(test)]
mod tests {
    use super::UsualLife;
    use crate::hydraulics::Purpose;
    use crate::quantity::Source;

    /// Common practice, no source: carbon for chlorine is changed after six to twelve months.
    #[test]
    fn carbon_lasts_half_a_year_to_a_year() {
        let life = UsualLife::of(Purpose::Dechlorination).map(|life| (life.low_months, life.high_months, life.source));
        assert_eq!(life, Some((6, 12, Source::CommonPractice)));
        assert_eq!(UsualLife::of(Purpose::Sediment), None);
    }
}
