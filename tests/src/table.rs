//! Reading the reference tables: no field holds a comma or a quotation mark (see their README).

use std::collections::BTreeMap;

/// One row, by column.
#[derive(Clone, Debug)]
pub struct Row(BTreeMap<&'static str, &'static str>);

impl Row {
    /// The text in a column.
    ///
    /// # Panics
    /// When there is no such column.
    #[must_use]
    pub fn text(&self, column: &str) -> &'static str {
        self.0.get(column).copied().unwrap_or_else(|| panic!("no column {column}"))
    }

    /// The number in a column; `None` where the cell is empty.
    ///
    /// # Panics
    /// When it is no number.
    #[must_use]
    pub fn number(&self, column: &str) -> Option<f64> {
        let text = self.text(column);
        (!text.is_empty()).then(|| text.parse().unwrap_or_else(|_| panic!("{column}: “{text}” is no number")))
    }

    /// The number in a column that may not be empty.
    ///
    /// # Panics
    /// When it is empty.
    #[must_use]
    pub fn needed(&self, column: &str) -> f64 {
        self.number(column).unwrap_or_else(|| panic!("{column} is empty"))
    }
}

/// The rows of a table.
///
/// # Panics
/// When a row has more or fewer cells than the header.
#[must_use]
pub fn rows(csv: &'static str) -> Vec<Row> {
    let mut lines = csv.lines();
    let header: Vec<&str> = lines.next().unwrap_or_default().split(',').collect();
    lines
        .map(|line| {
            let cells: Vec<&str> = line.split(',').collect();
            assert_eq!(cells.len(), header.len(), "cells of {line}");
            Row(header.iter().copied().zip(cells).collect())
        })
        .collect()
}
