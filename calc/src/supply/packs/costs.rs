//! Prices as whole numbers of one small unit, so that costs compare exactly.

use crate::quantity::{Amount, Fault, Problem, Term};
use crate::supply::Money;

/// The most one price may be in that unit: a million of them still adds up in 64 bits.
const MOST: u64 = 1_000_000_000_000;

/// Every price in the smallest unit any of them uses; none where there is none.
pub(super) fn whole_costs(prices: &[Option<Money>]) -> Result<Vec<Option<u64>>, Problem> {
    let places = prices.iter().flatten().map(|price| price.value().normalize().scale()).max().unwrap_or(0);
    prices.iter().map(|price| price.map(|price| whole(price, places)).transpose()).collect()
}

fn whole(price: Money, places: u32) -> Result<u64, Problem> {
    let value = price.value().normalize();
    let missing = places.saturating_sub(value.scale());
    let raised = 10_u128.checked_pow(missing).and_then(|power| value.mantissa().unsigned_abs().checked_mul(power));
    let whole = raised.and_then(|whole| u64::try_from(whole).ok()).filter(|whole| *whole <= MOST);
    whole.filter(|_| value.mantissa() >= 0).ok_or_else(|| {
        let power = |places: u32| (0..places).fold(1.0, |power, _| power * 10.0);
        let value = Amount::Ratio(value.mantissa() as f64 / power(value.scale()));
        let high = Amount::Ratio(MOST as f64 / power(places));
        Problem::new(Term::Price, Fault::OutOfRange { value, low: Amount::Ratio(0.0), high })
    })
}
