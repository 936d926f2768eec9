//! Depth against volume for one vessel.

use crate::quantity::{Fault, Known, Length, Problem, Term, Volume, cubic_metres, metres, problem::positive};
use crate::vessel::Vessel;

/// One row.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DepthRow {
    /// From the datum down.
    pub tape: Length,
    /// Above the lowest inside point.
    pub height: Length,
    /// Free volume below.
    pub volume: Volume,
}

/// Free volume at tape readings of a step, from the lowest whole step up to the datum.
///
/// # Errors
/// [`Term::Step`] not above zero, or so fine that the table would pass 2 000 rows.
///
/// # Sources
/// As [`crate::vessel::Cavity::volume_below`].
///
/// # Example
/// See [`crate::fill::plan`].
pub fn depth_table(vessel: &Vessel, step: &Known<Length>) -> Result<Vec<DepthRow>, Problem> {
    positive(Term::Step, step.value.value, step.value.into())?;
    let depth = vessel.measures.inside_depth.value.value;
    let rows = (depth / step.value.value + 1e-9).floor();
    if rows > 2000.0 {
        return Err(Problem::new(
            Term::Step,
            Fault::OutOfRange {
                value: step.value.into(),
                low: metres(depth / 2000.0).into(),
                high: metres(depth).into(),
            },
        ));
    }
    let mut table = Vec::new();
    let mut k = rows as u32;
    loop {
        let tape = f64::from(k) * step.value.value;
        let height = (depth - tape).max(0.0);
        table.push(DepthRow {
            tape: metres(tape),
            height: metres(height),
            volume: cubic_metres(vessel.cavity.free_below(height)),
        });
        if k == 0 {
            return Ok(table);
        }
        k -= 1;
    }
}
