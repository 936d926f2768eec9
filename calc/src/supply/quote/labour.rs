//! How long work takes, by a table that its owner fills.

use rust_decimal::Decimal;

use crate::quantity::Length;
use crate::supply::JobKind;

/// A row of the table: so many hours for each vessel up to a size.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LabourRow {
    /// The kind of job it is for; none for any.
    pub kind: Option<JobKind>,
    /// The largest inside diameter it is for; none for any.
    pub up_to: Option<Length>,
    /// Hours for one vessel; none while nobody said.
    pub hours: Option<Decimal>,
}

/// The row that says how long a vessel takes, by its place: of those for this kind of job the one with the least size
/// that still holds the vessel, of two such the first; a row for this kind goes before one for any. None where none fits.
///
/// # Example
/// ```
/// use bedwright_calc::quantity::metres;
/// use bedwright_calc::supply::JobKind;
/// use bedwright_calc::supply::quote::{LabourRow, labour_row};
/// let row = |up_to: Option<f64>| LabourRow { kind: None, up_to: up_to.map(metres), hours: None };
/// let table = [row(None), row(Some(0.35)), row(Some(0.6))];
/// assert_eq!(labour_row(&table, JobKind::New, metres(0.298)), Some(1));
/// assert_eq!(labour_row(&table, JobKind::New, metres(0.9)), Some(0));
/// ```
#[must_use]
pub fn labour_row(table: &[LabourRow], kind: JobKind, inside_diameter: Length) -> Option<usize> {
    let mut best: Option<(bool, f64, usize)> = None;
    for (at, row) in table.iter().enumerate() {
        let size = row.up_to.map_or(f64::INFINITY, |size| size.value);
        // Written so that a size that is no number holds nothing.
        let holds = size >= inside_diameter.value;
        if !holds || row.kind.is_some_and(|there| there != kind) {
            continue;
        }
        let any = row.kind.is_none();
        let better = best.is_none_or(|(there, least, _)| (any, size) < (there, least));
        if better {
            best = Some((any, size, at));
        }
    }
    best.map(|(_, _, at)| at)
}

#[cfg(test)]
mod tests {
    use super::{LabourRow, labour_row};
    use crate::quantity::metres;
    use crate::supply::JobKind;

    #[test]
    fn the_smallest_size_that_holds_the_vessel_of_this_kind_of_job_is_taken() {
        let row = |kind, up_to: Option<f64>| LabourRow { kind, up_to: up_to.map(metres), hours: None };
        let table = [
            row(None, Some(0.61)),
            row(Some(JobKind::Changeout), Some(0.92)),
            row(Some(JobKind::TopUp), None),
            row(None, Some(0.31)),
        ];
        let of = |kind, metre| labour_row(&table, kind, metres(metre));
        assert_eq!(of(JobKind::New, 0.3), Some(3));
        assert_eq!(of(JobKind::New, 0.31), Some(3));
        assert_eq!(of(JobKind::New, 0.32), Some(0));
        assert_eq!(of(JobKind::New, 0.7), None);
        assert_eq!(of(JobKind::Changeout, 0.3), Some(1));
        assert_eq!(of(JobKind::TopUp, 3.0), Some(2));
        assert_eq!(of(JobKind::New, f64::NAN), None);
        assert_eq!(labour_row(&[], JobKind::New, metres(0.3)), None);
    }
}
