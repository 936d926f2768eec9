//! Few bins, with a proven bound, where the least can't be had for certain.

use super::bound::at_least;

/// Places that are tried at most.
const MOST_TRIES: u32 = 200_000;

/// Items, largest first, in few bins, and how many there must be at least.
pub(super) fn few_bins(room: u64, items: &[u64]) -> (Vec<Vec<usize>>, usize) {
    let mut bound = at_least(room, items);
    let mut best = best_fit(room, items);
    let mut tries = MOST_TRIES;
    // One more bin at a time than must be: the first that is found is the least, as long as the tries last.
    while bound < best.len() {
        let mut search = Search { room, items, bins: Vec::new(), limit: bound, tries };
        match search.place(0) {
            Some(true) => best = search.bins.into_iter().map(|(_, bin)| bin).collect(),
            Some(false) => {
                bound += 1;
                tries = search.tries;
            }
            None => break,
        }
    }
    (best, bound)
}

/// Each item where it leaves least room.
fn best_fit(room: u64, items: &[u64]) -> Vec<Vec<usize>> {
    let mut bins: Vec<(u64, Vec<usize>)> = Vec::new();
    for (at, item) in items.iter().enumerate() {
        let tightest = bins.iter_mut().filter(|(left, _)| left >= item).min_by_key(|(left, _)| *left);
        match tightest {
            Some((left, bin)) => {
                *left -= item;
                bin.push(at);
            }
            None => bins.push((room - item, vec![at])),
        }
    }
    bins.into_iter().map(|(_, bin)| bin).collect()
}

struct Search<'a> {
    room: u64,
    items: &'a [u64],
    /// What is left in each bin, and what lies in it.
    bins: Vec<(u64, Vec<usize>)>,
    /// How many bins there may be.
    limit: usize,
    tries: u32,
}

impl Search<'_> {
    /// Whether the items from this place on fit; none when the tries are used up.
    fn place(&mut self, at: usize) -> Option<bool> {
        let Some(item) = self.items.get(at).copied() else { return Some(true) };
        self.tries = self.tries.checked_sub(1)?;
        // What is left over in all bins together must hold what is left.
        let left: u64 = self.bins.iter().map(|(left, _)| *left).sum();
        let unopened = (self.limit - self.bins.len()) as u64 * self.room;
        if self.items.get(at..).is_some_and(|rest| rest.iter().sum::<u64>() > left + unopened) {
            return Some(false);
        }
        let mut tried: Vec<u64> = Vec::new();
        for place in 0..self.bins.len() {
            let left = self.bins.get(place).map_or(0, |(left, _)| *left);
            // Bins with as much room are one as good as the other.
            if left < item || tried.contains(&left) {
                continue;
            }
            tried.push(left);
            if let Some((left, bin)) = self.bins.get_mut(place) {
                *left -= item;
                bin.push(at);
            }
            if self.place(at + 1)? {
                return Some(true);
            }
            if let Some((left, bin)) = self.bins.get_mut(place) {
                *left += item;
                bin.pop();
            }
            // A bin it fills to the brim can't be used better.
            if left == item {
                return Some(false);
            }
        }
        if self.bins.len() < self.limit {
            self.bins.push((self.room - item, vec![at]));
            if self.place(at + 1)? {
                return Some(true);
            }
            self.bins.pop();
        }
        Some(false)
    }
}
