//! The figures of a window, for whoever reads rather than looks.

use bedwright_calc::hydraulics::WindowRow;
use bedwright_calc::quantity::VolumeRate;

use super::drawable;
use crate::words::{Label, Manner};

/// The figures of a window as texts.
#[derive(Clone, Debug, PartialEq)]
pub struct WindowTable {
    /// What it is.
    pub caption: &'static str,
    /// What stands above each column, with its unit.
    pub headings: Vec<String>,
    /// A row for each temperature, a text for each column; the first names the row.
    pub rows: Vec<Vec<String>>,
}

pub(super) fn table(rows: &[WindowRow], manner: &Manner) -> WindowTable {
    let cell = |flow: Option<VolumeRate>| match drawable(flow) {
        Some(flow) => manner.flow_bare(flow),
        None => manner.label(Label::WindowNoValue).to_owned(),
    };
    let line = |row: &WindowRow| {
        let mut cells = Vec::with_capacity(8);
        cells.push(manner.temperature_bare(row.temperature));
        cells.extend(row.lifts_from.into_iter().chain(row.stays_to).map(cell));
        cells.push(cell(row.carries_from));
        cells
    };
    WindowTable {
        caption: manner.label(Label::BackwashWindow),
        headings: manner.window_headings(),
        rows: rows.iter().map(line).collect(),
    }
}
