//! Money, in exact decimals with checked arithmetic: a price has more places than cents, and no sum may lose one.

use rust_decimal::Decimal;

use super::exact::{self, Rounding};
use crate::quantity::{Fault, Problem, Term};

/// An amount of money in the job's own currency, exact.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Money(Decimal);

impl Money {
    /// This many of the currency's units.
    #[must_use]
    pub const fn new(value: Decimal) -> Money {
        Money(value)
    }

    /// Its exact value.
    #[must_use]
    pub const fn value(self) -> Decimal {
        self.0
    }

    /// The sum of two.
    ///
    /// # Errors
    /// [`Fault::NoSolution`] of [`Term::Price`] beyond what 28 digits hold.
    ///
    /// # Sources
    /// Arithmetic.
    ///
    /// # Example
    /// Ten cents and twenty cents are thirty cents, to the last digit.
    /// ```
    /// use bedwright_calc::supply::Money;
    /// use rust_decimal::Decimal;
    /// let sum = Money::new(Decimal::new(10, 2)).plus(Money::new(Decimal::new(20, 2))).unwrap();
    /// assert_eq!(sum.value().to_string(), "0.30");
    /// ```
    pub fn plus(self, other: Money) -> Result<Money, Problem> {
        exact::sum(self.0, other.0).map(Money).ok_or(TOO_LARGE)
    }

    /// What is left when another is taken off; below nought where that is more.
    ///
    /// # Errors
    /// As [`Money::plus`].
    ///
    /// # Sources
    /// Arithmetic.
    ///
    /// # Example
    /// ```
    /// use bedwright_calc::supply::Money;
    /// use rust_decimal::Decimal;
    /// let left = Money::new(Decimal::new(30, 2)).less(Money::new(Decimal::new(125, 3))).unwrap();
    /// assert_eq!(left.value().to_string(), "0.175");
    /// ```
    pub fn less(self, other: Money) -> Result<Money, Problem> {
        exact::difference(self.0, other.0).map(Money).ok_or(TOO_LARGE)
    }

    /// So many at this price.
    ///
    /// # Errors
    /// As [`Money::plus`].
    ///
    /// # Sources
    /// Arithmetic.
    ///
    /// # Example
    /// Seven at 1.005 are 7.035: nothing is rounded on the way.
    /// ```
    /// use bedwright_calc::supply::Money;
    /// use rust_decimal::Decimal;
    /// let total = Money::new(Decimal::new(1005, 3)).times(7).unwrap();
    /// assert_eq!(total.value().to_string(), "7.035");
    /// ```
    pub fn times(self, count: u32) -> Result<Money, Problem> {
        exact::product(self.0, Decimal::from(count)).map(Money).ok_or(TOO_LARGE)
    }

    /// So much of it, a quantity or a share, rounded once.
    ///
    /// # Errors
    /// As [`Money::plus`].
    ///
    /// # Sources
    /// Arithmetic.
    ///
    /// # Example
    /// 2.5 hours at 85.01 are 212.525: 212.53 where halves go up, 212.52 where they go to the even cent.
    /// ```
    /// use bedwright_calc::supply::{Halves, Money, Rounding};
    /// use rust_decimal::Decimal;
    /// let (rate, hours) = (Money::new(Decimal::new(8501, 2)), Decimal::new(25, 1));
    /// let up = rate.of(hours, Rounding { places: 2, halves: Halves::Up }).unwrap();
    /// assert_eq!(up.value().to_string(), "212.53");
    /// let even = rate.of(hours, Rounding { places: 2, halves: Halves::Even }).unwrap();
    /// assert_eq!(even.value().to_string(), "212.52");
    /// ```
    pub fn of(self, part: Decimal, rounding: Rounding) -> Result<Money, Problem> {
        exact::product_rounded(self.0, part, rounding).map(Money).ok_or(TOO_LARGE)
    }
}

pub(super) const TOO_LARGE: Problem = Problem::new(Term::Price, Fault::NoSolution);

#[cfg(test)]
mod tests {
    use super::{Money, TOO_LARGE};
    use rust_decimal::Decimal;

    #[test]
    fn a_sum_beyond_the_digits_is_a_problem_not_a_panic() {
        let most = Money::new(Decimal::MAX);
        assert_eq!(most.plus(most), Err(TOO_LARGE));
        assert_eq!(most.times(2), Err(TOO_LARGE));
        assert_eq!(most.times(1), Ok(most));
        assert_eq!(Money::new(Decimal::MIN).less(most), Err(TOO_LARGE));
    }
}
