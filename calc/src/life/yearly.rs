//! What a bed takes in a year: what a quote counts on.

use super::{MONTHS_IN_YEAR, YEAR_S};
use crate::quantity::{Figure, Formula, Known, Mass, Term, Time, Volume, cubic_metres, kilograms};

/// Media in a year, of a bed that is changed whole when it has lasted.
#[must_use]
pub fn media_in_year(mass: &Known<Mass>, life: &Known<Time>) -> Figure<Mass> {
    let inputs = vec![mass.input(Term::LayerMass), life.input(Term::Life)];
    Figure::new(kilograms(mass.value.value * YEAR_S / life.value.value), Formula::MediaInYear, inputs)
}

/// Packs in a year, of a bed that takes so many when it is changed.
#[must_use]
pub fn packs_in_year(packs: &Known<f64>, life: &Known<Time>) -> Figure<f64> {
    let inputs = vec![packs.input(Term::Packs), life.input(Term::Life)];
    Figure::new(packs.value * YEAR_S / life.value.value, Formula::PacksInYear, inputs)
}

/// Media in a year, of a bed that dissolves by so much in a month.
#[must_use]
pub fn dissolved_in_year(months: &[&Figure<Mass>]) -> Figure<Mass> {
    let sum = months.iter().map(|month| month.value.value).sum::<f64>();
    let inputs = months.iter().map(|month| month.input(Term::CalciteMass)).collect();
    Figure::new(kilograms(sum * MONTHS_IN_YEAR), Formula::DissolvedInYear, inputs)
}

/// How long a bed of this mass would last to its last grain at so much in a year.
#[must_use]
pub fn years_of(mass: &Known<Mass>, year: &Figure<Mass>) -> Known<Time> {
    Known {
        value: crate::quantity::seconds(YEAR_S * mass.value.value / year.value.value),
        basis: mass.basis.weaker(year.basis),
        source: year.formula.source(),
    }
}

/// Water in a year, of what one wash or regeneration takes and how often it comes.
#[must_use]
pub fn wash_water_in_year(parts: &[&Figure<Volume>], interval: &Known<Time>) -> Figure<Volume> {
    let one = parts.iter().map(|part| part.value.value).sum::<f64>();
    let mut inputs: Vec<_> = parts.iter().map(|part| part.input(Term::WashWater)).collect();
    inputs.push(interval.input(Term::RegenerationInterval));
    Figure::new(cubic_metres(one * YEAR_S / interval.value.value), Formula::WashWaterInYear, inputs)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::seconds;

    #[test]
    fn a_bed_that_lasts_half_a_year_is_bought_twice_in_one() {
        let life = Known::typed(seconds(YEAR_S / 2.0));
        assert!((media_in_year(&Known::typed(kilograms(25.0)), &life).value.value - 50.0).abs() < 1e-9);
        assert!((packs_in_year(&Known::typed(2.0), &life).value - 4.0).abs() < 1e-12);
    }

    #[test]
    fn brine_and_rinse_of_a_week_come_fifty_two_times() {
        let week = Known::typed(seconds(7.0 * 86_400.0));
        let part = |litres: f64| Figure::new(cubic_metres(litres / 1000.0), Formula::BrineVolume, Vec::new());
        let found = wash_water_in_year(&[&part(40.0), &part(60.0)], &week);
        assert!((found.value.value - 0.1 * 365.25 / 7.0).abs() < 1e-12);
    }
}
