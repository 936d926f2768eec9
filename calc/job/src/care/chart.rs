//! Where points of a small chart stand, and which numbers stand beside its axes.

/// An axis from one number to another.
#[derive(Clone, Debug, PartialEq)]
pub struct Axis {
    /// The number at its beginning.
    pub low: f64,
    /// The number at its end.
    pub high: f64,
    /// Numbers that stand beside it: 1, 2 or 5 times a power of ten apart.
    pub marks: Vec<f64>,
}

impl Axis {
    /// One that holds all of these numbers, with at most so many steps; from nought to one where there are none.
    #[must_use]
    pub fn holding(numbers: impl Iterator<Item = f64>, steps: u32) -> Axis {
        let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
        for number in numbers.filter(|number| number.is_finite()) {
            low = low.min(number);
            high = high.max(number);
        }
        if low > high {
            (low, high) = (0.0, 1.0);
        }
        if high - low <= low.abs() * 1e-9 {
            high = low + if low == 0.0 { 1.0 } else { low.abs() };
        }
        let rough = (high - low) / f64::from(steps.max(1));
        let mut step = 1.0;
        while step > rough {
            step /= 10.0;
        }
        while step * 10.0 <= rough {
            step *= 10.0;
        }
        let step =
            [1.0, 2.0, 5.0, 10.0].map(|times| times * step).into_iter().find(|step| *step >= rough).unwrap_or(rough);
        let (first, last) = ((low / step).floor(), (high / step).ceil());
        let count = (last - first).clamp(1.0, 100.0) as u32;
        let marks: Vec<f64> = (0..=count).map(|at| (first + f64::from(at)) * step).collect();
        Axis { low: first * step, high: last * step, marks }
    }

    /// Where a number stands: 0 at the beginning, 1 at the end.
    #[must_use]
    pub fn share(&self, number: f64) -> f64 {
        (number - self.low) / (self.high - self.low)
    }

    /// Decimals that tell its marks apart.
    #[must_use]
    pub fn decimals(&self) -> usize {
        let step = (self.high - self.low) / (self.marks.len().max(2) - 1) as f64;
        [1.0, 0.1, 0.01, 0.001].iter().position(|unit| step >= *unit * 0.999).unwrap_or(4)
    }
}

#[cfg(test)]
mod tests {
    use super::Axis;

    #[test]
    fn marks_are_round_and_hold_everything() {
        let axis = Axis::holding([3.0, 47.0].into_iter(), 5);
        assert_eq!(axis.marks, [0.0, 10.0, 20.0, 30.0, 40.0, 50.0]);
        assert_eq!((axis.share(0.0), axis.share(50.0), axis.decimals()), (0.0, 1.0, 0));
        assert_eq!(Axis::holding([0.0, 0.3].into_iter(), 4).decimals(), 1);
    }

    #[test]
    fn one_number_none_and_no_number_have_an_axis() {
        for numbers in [vec![], vec![5.0], vec![0.0], vec![f64::NAN, f64::INFINITY], vec![-3.0, -3.0]] {
            let axis = Axis::holding(numbers.clone().into_iter(), 5);
            assert!(axis.low < axis.high && axis.marks.len() >= 2, "{numbers:?}: {axis:?}");
        }
    }
}
