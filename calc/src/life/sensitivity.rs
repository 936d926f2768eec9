//! Which input would change a life most.

use crate::order::sorted;
use crate::quantity::Term;

/// What a life becomes when one input is a tenth more and a tenth less.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LifeSensitivity {
    /// The input.
    pub term: Term,
    /// The life with a tenth more of it, over the life as it is.
    pub more: f64,
    /// The life with a tenth less.
    pub less: f64,
}

impl LifeSensitivity {
    /// How much it moves the life, as a share.
    #[must_use]
    pub fn swing(&self) -> f64 {
        (self.more - self.less).abs()
    }
}

/// By how much an input is changed.
const STEP: f64 = 0.1;

/// How a life answers to a tenth more and less of each input, the strongest first. `life` is asked with an input and
/// what it is multiplied by; where it has no answer the input is left out.
pub fn sensitivities(terms: &[Term], life: impl Fn(Term, f64) -> Option<f64>) -> Vec<LifeSensitivity> {
    let mut found = Vec::new();
    for term in terms {
        if let (Some(as_is), Some(more), Some(less)) =
            (life(*term, 1.0), life(*term, 1.0 + STEP), life(*term, 1.0 - STEP))
            && as_is > 0.0
            && as_is.is_finite()
        {
            found.push(LifeSensitivity { term: *term, more: more / as_is, less: less / as_is });
        }
    }
    sorted(found, |a, b| b.swing().total_cmp(&a.swing()))
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::indexing_slicing)] // A test says what is wrong by panicking.
mod tests {
    use super::sensitivities;
    use crate::quantity::Term;

    #[test]
    fn a_life_answers_to_a_square_more_than_to_a_factor() {
        let found = sensitivities(&[Term::AverageUse, Term::MediaVolume, Term::Ph], |term, factor| match term {
            Term::AverageUse => Some(10.0 / factor),
            Term::MediaVolume => Some(10.0 * factor * factor),
            _ => None,
        });
        assert_eq!(found.iter().map(|found| found.term).collect::<Vec<_>>(), [Term::MediaVolume, Term::AverageUse]);
        assert!((found[0].more - 1.21).abs() < 1e-12 && (found[1].less - 1.0 / 0.9).abs() < 1e-12);
    }
}
