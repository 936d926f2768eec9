//! What stands in order: a value between two others, a list.
//!
//! Std's own `clamp` and `sort` do the same; their panic texts and their speed with long lists make the page heavier
//! (with std's number tables, see `decimal` in the job: 32 kB of wasm, 17 kB in brotli).

use std::cmp::Ordering;

/// A value between two others.
pub trait Between {
    /// The value where it lies between the two, else the nearer of them. Not a number stays none.
    #[must_use]
    fn between(self, low: Self, high: Self) -> Self;
}

impl Between for f64 {
    #[allow(clippy::manual_clamp, reason = "the panic text of clamp brings all of float printing along")]
    fn between(self, low: f64, high: f64) -> f64 {
        if self < low {
            low
        } else if self > high {
            high
        } else {
            self
        }
    }
}

/// The list in order; what is equal stays as it stood. For short lists: each item is put in its place.
#[must_use]
pub fn sorted<T>(list: Vec<T>, compare: impl Fn(&T, &T) -> Ordering) -> Vec<T> {
    let mut ordered: Vec<T> = Vec::with_capacity(list.len());
    for item in list {
        let at = ordered.partition_point(|there| compare(there, &item) != Ordering::Greater);
        ordered.insert(at, item);
    }
    ordered
}

#[cfg(test)]
mod tests {
    use super::{Between as _, sorted};

    #[test]
    fn a_value_is_held_as_std_holds_it() {
        for value in [-1.0, -0.0, 0.0, 0.5, 1.0, 2.0, f64::INFINITY, f64::NEG_INFINITY] {
            assert_eq!(value.between(0.0, 1.0).to_bits(), value.clamp(0.0, 1.0).to_bits(), "{value}");
        }
        assert!(f64::NAN.between(0.0, 1.0).is_nan());
    }

    #[test]
    fn a_list_is_sorted_as_std_sorts_it() {
        let list: Vec<(u32, u32)> = (0..200).map(|place| (place * 7919 % 31, place)).collect();
        let mut expected = list.clone();
        expected.sort_by_key(|(key, _)| *key);
        assert_eq!(sorted(list, |a, b| a.0.cmp(&b.0)), expected);
    }
}
