//! The cheapest cover of a number by others, in whole numbers.

use std::cmp::Ordering;

use super::MOST_PACKS;

/// Steps over the common measure of the sizes, for each size.
const MOST_STEPS: u64 = 200_000;

/// Partial covers that are looked at where the sizes have no useful common measure.
const MOST_TRIES: u32 = 4_000_000;

/// A size: what it holds and what it costs, both whole numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Size {
    /// What it holds: more than nothing.
    pub content: u64,
    /// What it costs.
    pub cost: u64,
}

/// A cover.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Cover {
    /// How many of each size.
    pub counts: Vec<u32>,
    /// What they cost together.
    pub cost: u64,
}

/// What a cover is judged by, in this order: its cost, what it holds, how many there are.
#[derive(Clone, Copy, PartialEq, Eq)]
struct Worth {
    cost: u64,
    content: u64,
    packs: u32,
}

const NOTHING: Worth = Worth { cost: 0, content: 0, packs: 0 };

impl Worth {
    fn with(self, size: Size, count: u32) -> Worth {
        Worth {
            cost: self.cost.saturating_add(size.cost.saturating_mul(u64::from(count))),
            content: self.content.saturating_add(size.content.saturating_mul(u64::from(count))),
            packs: self.packs.saturating_add(count),
        }
    }

    /// Whether it is better than another; `more` says whether of equal costs the one that holds less or more is.
    fn beats(self, other: Worth, more: Ordering) -> bool {
        let content = match more {
            Ordering::Greater => other.content.cmp(&self.content),
            _ => self.content.cmp(&other.content),
        };
        self.cost.cmp(&other.cost).then(content).then(self.packs.cmp(&other.packs)) == Ordering::Less
    }
}

/// The cheapest cover of `need`; none where it would take too many packs or too many tries to be sure.
pub(super) fn cheapest_cover(need: u64, sizes: &[Size], more: Ordering) -> Option<Cover> {
    let smallest = sizes.iter().map(|size| size.content).min().filter(|content| *content > 0)?;
    if need.div_ceil(smallest) > u64::from(MOST_PACKS) {
        return None;
    }
    let measure = sizes.iter().fold(0, |measure, size| common_measure(measure, size.content));
    let steps = need.div_ceil(measure.max(1));
    if steps <= MOST_STEPS { by_steps(steps, measure, sizes, more) } else { by_tries(need, sizes, more) }
}

/// The largest number that goes into both without a rest.
fn common_measure(mut a: u64, mut b: u64) -> u64 {
    while b > 0 {
        (a, b) = (b, a % b);
    }
    a
}

/// For every number of measures up to the need the best cover, each from those below it.
fn by_steps(steps: u64, measure: u64, sizes: &[Size], more: Ordering) -> Option<Cover> {
    let mut best: Vec<(Worth, usize)> = vec![(NOTHING, 0)];
    for step in 1..=steps {
        let mut found: Option<(Worth, usize)> = None;
        for (at, size) in sizes.iter().enumerate() {
            let below = usize::try_from(step.saturating_sub(size.content / measure)).ok()?;
            let worth = best.get(below)?.0.with(*size, 1);
            if found.is_none_or(|(there, _)| worth.beats(there, more)) {
                found = Some((worth, at));
            }
        }
        best.push(found?);
    }
    let cost = best.last()?.0.cost;
    let mut counts = vec![0_u32; sizes.len()];
    let mut step = steps;
    while step > 0 {
        let (_, at) = best.get(usize::try_from(step).ok()?)?;
        *counts.get_mut(*at)? += 1;
        step = step.saturating_sub(sizes.get(*at)?.content / measure);
    }
    Some(Cover { counts, cost })
}

/// Depth first, the size that costs least for what it holds first; what can't beat the best found is left.
fn by_tries(need: u64, sizes: &[Size], more: Ordering) -> Option<Cover> {
    let mut order: Vec<usize> = (0..sizes.len()).collect();
    order = crate::order::sorted(order, |a, b| {
        let price =
            |at: &usize| sizes.get(*at).map_or((0, 1), |size| (u128::from(size.cost), u128::from(size.content)));
        let ((cost_a, content_a), (cost_b, content_b)) = (price(a), price(b));
        (cost_a * content_b).cmp(&(cost_b * content_a)).then(content_b.cmp(&content_a))
    });
    let ordered: Vec<Size> = order.iter().filter_map(|at| sizes.get(*at).copied()).collect();
    let mut search =
        Search { need, sizes: &ordered, more, counts: vec![0; ordered.len()], best: None, tries: MOST_TRIES };
    if !search.from(0, NOTHING) {
        return None;
    }
    let (worth, found) = search.best?;
    let mut counts = vec![0_u32; sizes.len()];
    for (at, count) in order.iter().zip(found) {
        *counts.get_mut(*at)? = count;
    }
    Some(Cover { counts, cost: worth.cost })
}

struct Search<'a> {
    need: u64,
    sizes: &'a [Size],
    more: Ordering,
    counts: Vec<u32>,
    best: Option<(Worth, Vec<u32>)>,
    tries: u32,
}

impl Search<'_> {
    /// Tries every number of the size at this place and of those after it; false when the tries are used up.
    fn from(&mut self, at: usize, so_far: Worth) -> bool {
        let Some(left) = self.tries.checked_sub(1) else { return false };
        self.tries = left;
        let Some(size) = self.sizes.get(at).copied() else { return true };
        let rest = self.need.saturating_sub(so_far.content);
        let most = u32::try_from(rest.div_ceil(size.content)).unwrap_or(MOST_PACKS);
        let next = self.sizes.get(at + 1).copied();
        for count in (0..=most).rev() {
            let worth = so_far.with(size, count);
            self.set(at, count);
            if worth.content >= self.need {
                self.offer(worth);
                continue;
            }
            let Some(next) = next else { break };
            match self.hope(worth, next) {
                Hope::Worse => break,
                Hope::Equal => continue,
                Hope::Better => {}
            }
            if !self.from(at + 1, worth) {
                return false;
            }
        }
        self.set(at, 0);
        true
    }

    fn set(&mut self, at: usize, count: u32) {
        if let Some(place) = self.counts.get_mut(at) {
            *place = count;
        }
    }

    fn offer(&mut self, worth: Worth) {
        if self.best.as_ref().is_none_or(|(best, _)| worth.beats(*best, self.more)) {
            self.best = Some((worth, self.counts.clone()));
        }
    }

    /// Whether the sizes from `next` on could still beat the best: none of them gives more for its cost than it does.
    fn hope(&self, worth: Worth, next: Size) -> Hope {
        let Some((best, _)) = &self.best else { return Hope::Better };
        let rest = u128::from(self.need.saturating_sub(worth.content));
        let least = (rest * u128::from(next.cost)).div_ceil(u128::from(next.content));
        let cost = u128::from(worth.cost) + least;
        if cost > u128::from(best.cost) {
            return Hope::Worse;
        }
        if cost < u128::from(best.cost) || self.more == Ordering::Greater {
            return Hope::Better;
        }
        let largest = self.sizes.iter().map(|size| size.content).max().unwrap_or(1);
        let packs = u128::from(worth.packs) + rest.div_ceil(u128::from(largest.max(1)));
        // At the best there is nothing left over.
        match self.need.cmp(&best.content).then(packs.cmp(&u128::from(best.packs))) {
            Ordering::Less => Hope::Better,
            Ordering::Equal | Ordering::Greater => Hope::Equal,
        }
    }
}

/// What may still come of a partial cover.
enum Hope {
    /// Something better than the best.
    Better,
    /// At most something as good.
    Equal,
    /// Nothing as good, and fewer of this size won't do better.
    Worse,
}
