//! How many bins there must be at least.

/// The bound L2 of Martello and Toth over items, largest first: items above half a bin have one each, and what is left
/// beside them is filled by the middling ones; it is taken at every size that may be called small.
pub(super) fn at_least(room: u64, items: &[u64]) -> usize {
    let mut best = by_volume(room, items.iter().sum());
    for small in items.iter().copied().filter(|item| *item <= room / 2) {
        let large = items.iter().filter(|item| **item > room - small);
        let middle: Vec<u64> = items.iter().copied().filter(|item| *item <= room - small && *item > room / 2).collect();
        let rest: u64 = items.iter().filter(|item| **item <= room / 2 && **item >= small).sum();
        let beside = (middle.len() as u64 * room).saturating_sub(middle.iter().sum());
        best = best.max(large.count() + middle.len() + by_volume(room, rest.saturating_sub(beside)));
    }
    best.max(items.iter().filter(|item| **item > room / 2).count())
}

fn by_volume(room: u64, volume: u64) -> usize {
    usize::try_from(volume.div_ceil(room.max(1))).unwrap_or(usize::MAX)
}

#[cfg(test)]
mod tests {
    use super::at_least;

    #[test]
    fn large_items_have_a_bin_each_and_their_rest_takes_only_what_fits() {
        assert_eq!(at_least(100, &[60, 60, 60]), 3);
        assert_eq!(at_least(100, &[60, 60, 40, 40]), 2);
        assert_eq!(at_least(100, &[60, 60, 41, 41]), 3);
        assert_eq!(at_least(100, &[]), 0);
    }
}
