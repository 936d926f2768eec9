//! What stands on which pallet.

use crate::quantity::{Amount, Fault, Mass, Problem, Term, kilograms};

/// Pallets that are planned with.
pub const MOST_PALLETS: usize = 1_000;

/// What a pallet may bear, as somebody typed it; none where it doesn't matter.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PalletLimits {
    /// The most it may bear.
    pub mass: Option<Mass>,
    /// The most packs that may stand on it.
    pub packs: Option<u32>,
}

/// Packs of one kind that are to be staged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Load {
    /// How many.
    pub packs: u32,
    /// What one weighs; none where nobody knows.
    pub each: Option<Mass>,
}

/// One pallet.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Pallet {
    /// Which loads, by their place, and how many of each, in the order of the loads.
    pub loads: Vec<(usize, u32)>,
    /// What they weigh, as far as it is known.
    pub mass_known: Mass,
}

/// Loads put on pallets in their order: the next pallet is begun when the one before can't take another pack.
///
/// Every pack stands on exactly one pallet, and what is loaded first stands on the first ones. A pack whose mass nobody
/// knows counts as one pack without mass.
///
/// # Errors
/// [`Term::PalletMass`] or [`Term::PalletPacks`] that isn't more than zero; [`Term::PackMass`] of a pack that is more than
/// a pallet may bear, or no number ([`Problem::layer`] is its load); [`Term::Packs`] of more than [`MOST_PALLETS`] pallets.
///
/// # Sources
/// Arithmetic; the limits are typed: they are the truck's, the rack's and the pallet's own.
///
/// # Example
/// 45 bags of 25 kg on pallets that bear 1000 kg: 40 and 5.
/// ```
/// use bedwright_calc::quantity::kilograms;
/// use bedwright_calc::supply::pallets::{Load, PalletLimits, pallets};
/// let limits = PalletLimits { mass: Some(kilograms(1000.0)), packs: None };
/// let on = pallets(&limits, &[Load { packs: 45, each: Some(kilograms(25.0)) }]).unwrap();
/// assert_eq!(on.iter().map(|pallet| pallet.loads[0].1).collect::<Vec<_>>(), [40, 5]);
/// ```
pub fn pallets(limits: &PalletLimits, loads: &[Load]) -> Result<Vec<Pallet>, Problem> {
    if let Some(mass) = limits.mass {
        crate::quantity::problem::positive(Term::PalletMass, mass.value, mass.into())?;
    }
    if limits.packs == Some(0) {
        return Err(Problem::new(Term::PalletPacks, Fault::NotPositive { value: Amount::Count(0) }));
    }
    let mut pallets: Vec<Pallet> = Vec::new();
    let mut packs_on_last = 0_u32;
    for (place, load) in loads.iter().enumerate() {
        let each = load.each.map_or(0.0, |mass| mass.value);
        if let Some(mass) = load.each {
            crate::quantity::problem::positive(Term::PackMass, mass.value, mass.into())
                .map_err(|p| p.of_layer(place))?;
            if let Some(limit) = limits.mass.filter(|limit| mass.value > limit.value) {
                let fault = Fault::NotBelow { value: mass.into(), other: Term::PalletMass, limit: limit.into() };
                return Err(Problem::new(Term::PackMass, fault).of_layer(place));
            }
        }
        let mut left = load.packs;
        while left > 0 {
            let by_packs = limits.packs.map_or(left, |most| most.saturating_sub(packs_on_last));
            let borne = pallets.last().map_or(0.0, |pallet| pallet.mass_known.value);
            let by_mass = match limits.mass {
                // A billionth more is what arithmetic in doubles leaves.
                Some(limit) if each > 0.0 => (((limit.value - borne) / each) + 1e-9).floor().max(0.0) as u32,
                _ => left,
            };
            let fits = if pallets.is_empty() { 0 } else { left.min(by_packs).min(by_mass) };
            if fits == 0 {
                if pallets.len() >= MOST_PALLETS {
                    return Err(Problem::new(Term::Packs, Fault::TooManyWays));
                }
                pallets.push(Pallet::default());
                packs_on_last = 0;
                continue;
            }
            if let Some(pallet) = pallets.last_mut() {
                pallet.loads.push((place, fits));
                pallet.mass_known += kilograms(each * f64::from(fits));
            }
            packs_on_last = packs_on_last.saturating_add(fits);
            left -= fits;
        }
    }
    Ok(pallets)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)] // Tests say so by panicking.

    use super::{Load, MOST_PALLETS, Pallet, PalletLimits, pallets};
    use crate::quantity::{Fault, Term, kilograms};

    fn load(packs: u32, each: f64) -> Load {
        Load { packs, each: Some(kilograms(each)) }
    }

    fn limits(mass: f64, packs: u32) -> PalletLimits {
        PalletLimits { mass: Some(kilograms(mass)), packs: Some(packs) }
    }

    fn counts(pallets: &[Pallet]) -> Vec<Vec<(usize, u32)>> {
        pallets.iter().map(|pallet| pallet.loads.clone()).collect()
    }

    #[test]
    fn a_pallet_is_full_by_mass_or_by_packs_whichever_comes_first() {
        let on = pallets(&limits(1000.0, 30), &[load(45, 25.0)]).unwrap();
        assert_eq!(counts(&on), [[(0, 30)], [(0, 15)]]);
        let on = pallets(&limits(500.0, 30), &[load(3, 22.68), load(25, 25.0)]).unwrap();
        assert_eq!(counts(&on), [vec![(0, 3), (1, 17)], vec![(1, 8)]]);
        assert!((on[0].mass_known.value - (3.0 * 22.68 + 17.0 * 25.0)).abs() < 1e-9);
    }

    #[test]
    fn every_pack_stands_on_one_pallet_in_the_order_of_the_loads() {
        let loads = [load(7, 22.68), Load { packs: 5, each: None }, load(0, 10.0), load(61, 12.5)];
        let on = pallets(&limits(200.0, 11), &loads).unwrap();
        let mut seen = [0; 4];
        let mut order = Vec::new();
        for pallet in &on {
            assert!(pallet.mass_known.value <= 200.0 + 1e-6);
            assert!(pallet.loads.iter().map(|(_, packs)| packs).sum::<u32>() <= 11);
            for (place, packs) in &pallet.loads {
                seen[*place] += packs;
                order.push(*place);
            }
        }
        assert_eq!(seen, [7, 5, 0, 61]);
        assert!(order.is_sorted());
    }

    #[test]
    fn without_limits_everything_stands_on_one() {
        let on = pallets(&PalletLimits::default(), &[load(10, 25.0), load(3, 22.7)]).unwrap();
        assert_eq!(counts(&on), [[(0, 10), (1, 3)]]);
        assert!(pallets(&PalletLimits::default(), &[]).unwrap().is_empty());
    }

    #[test]
    fn what_cannot_stand_names_what_is_wrong() {
        let problem = pallets(&limits(20.0, 30), &[load(1, 10.0), load(1, 25.0)]).unwrap_err();
        assert_eq!((problem.term, problem.layer), (Term::PackMass, Some(1)));
        for (mass, packs, term) in
            [(0.0, 1, Term::PalletMass), (f64::NAN, 1, Term::PalletMass), (1.0, 0, Term::PalletPacks)]
        {
            assert_eq!(pallets(&limits(mass, packs), &[]).unwrap_err().term, term);
        }
        assert_eq!(pallets(&limits(1000.0, 30), &[load(1, f64::NAN)]).unwrap_err().term, Term::PackMass);
        let many = u32::try_from(MOST_PALLETS).unwrap() + 1;
        let problem = pallets(&limits(1000.0, 1), &[load(many, 1.0)]).unwrap_err();
        assert_eq!((problem.term, problem.fault), (Term::Packs, Fault::TooManyWays));
    }
}
