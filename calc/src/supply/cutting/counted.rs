//! The least number of bins for certain, where the ways of counting items out are few enough to go through.

/// Ways that are gone through; twelve items that are all different make 4 096.
const MOST_WAYS: usize = 262_144;

/// The best way to have taken out some of each size.
#[derive(Clone, Copy)]
struct Best {
    /// Bins that were begun.
    bins: u32,
    /// What is in the last one.
    last: u64,
    /// Which size was put in last.
    by: usize,
}

/// Items, longest first, in the least number of bins of a room; none where there are too many ways. Each fits on its own.
///
/// Whoever has taken some items out in fewer bins, or in as many with less in the last, is never worse off with what is
/// left: so one best way for each count of each size is enough.
pub(super) fn least_bins(room: u64, items: &[u64]) -> Option<Vec<Vec<usize>>> {
    // Sizes, how many of each, and how far apart one more of it stands in the list of ways.
    let mut sizes: Vec<(u64, usize, usize)> = Vec::new();
    for item in items {
        match sizes.last_mut() {
            Some((size, count, _)) if size == item => *count += 1,
            _ => sizes.push((*item, 1, 0)),
        }
    }
    let mut ways = 1_usize;
    for (_, count, stride) in &mut sizes {
        *stride = ways;
        ways = ways.checked_mul(*count + 1).filter(|ways| *ways <= MOST_WAYS)?;
    }
    let mut best = vec![Best { bins: 0, last: room, by: 0 }];
    for way in 1..ways {
        let mut found: Option<Best> = None;
        for (by, (size, count, stride)) in sizes.iter().enumerate() {
            if way / stride % (count + 1) == 0 {
                continue;
            }
            let before = best.get(way - stride)?;
            let (bins, last) =
                if before.last + size <= room { (before.bins, before.last + size) } else { (before.bins + 1, *size) };
            if found.is_none_or(|there| (bins, last) < (there.bins, there.last)) {
                found = Some(Best { bins, last, by });
            }
        }
        best.push(found?);
    }
    // Back from all of them: each step took one item out of the last bin.
    let mut next: Vec<usize> = Vec::with_capacity(sizes.len());
    let mut first = 0;
    for (_, count, _) in &sizes {
        next.push(first);
        first += count;
    }
    let mut way = ways - 1;
    let mut bins: Vec<Vec<usize>> = vec![Vec::new(); usize::try_from(best.get(way)?.bins).ok()?];
    while way > 0 {
        let here = best.get(way)?;
        let (_, _, stride) = sizes.get(here.by)?;
        let item = next.get_mut(here.by)?;
        bins.get_mut(usize::try_from(here.bins).ok()?.checked_sub(1)?)?.push(*item);
        *item += 1;
        way -= stride;
    }
    for bin in &mut bins {
        *bin = crate::order::sorted(std::mem::take(bin), usize::cmp);
    }
    Some(bins)
}
