//! Keeps texts apart: each as near to where it belongs as the others allow.

/// A text that wants to be somewhere along a column.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Wish {
    /// Where its middle should be.
    pub at: f64,
    /// How much room it takes.
    pub size: f64,
}

/// The middles of texts in this order, none overlapping, all between `low` and `high`, moved as little as can be
/// (least squares, by pooling neighbours that would meet). Where they don't all fit, they start at `low`.
pub(super) fn spread(wishes: &[Wish], low: f64, high: f64) -> Vec<f64> {
    // With all sizes taken out, not overlapping means not falling.
    let mut before = 0.0;
    let mut offsets = Vec::with_capacity(wishes.len());
    let mut pools: Vec<(f64, f64)> = Vec::new();
    for wish in wishes {
        let offset = before + wish.size / 2.0;
        before += wish.size;
        offsets.push(offset);
        let mut pool = (wish.at - offset, 1.0);
        while let Some(&(mean, count)) = pools.last() {
            if mean <= pool.0 {
                break;
            }
            pool = ((mean * count + pool.0 * pool.1) / (count + pool.1), count + pool.1);
            pools.pop();
        }
        pools.push(pool);
    }
    let most = (high - before).max(low);
    let starts = pools.iter().flat_map(|&(mean, count)| std::iter::repeat_n(mean.max(low).min(most), count as usize));
    offsets.iter().zip(starts).map(|(offset, start)| offset + start).collect()
}
