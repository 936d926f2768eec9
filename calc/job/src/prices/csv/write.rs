//! The file out.

use super::{Column, NAMES, Separator, guarded};
use crate::prices::PriceList;

/// How a file is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct FileForm {
    /// What stands between cells.
    pub separator: Separator,
    /// The decimal mark of amounts, `.` or `,`.
    pub decimal: char,
    /// Whether a byte order mark comes first, by which some programs know that the text is UTF-8.
    pub mark: bool,
}

/// Every row of a list, the shipped ones and those no longer offered among them.
#[must_use]
pub fn list_csv(list: &PriceList, form: FileForm) -> String {
    let mut text = String::new();
    if form.mark {
        text.push('\u{feff}');
    }
    let header = NAMES.iter().map(|(name, _)| (*name).to_owned());
    put_row(&mut text, header, form.separator.mark());
    for row in list.rows() {
        let cells = NAMES.iter().map(|(_, column): &(&str, Column)| column.cell(row, form.decimal));
        put_row(&mut text, cells, form.separator.mark());
    }
    text
}

/// Rows of texts, none of which a spreadsheet takes for a formula.
#[must_use]
pub fn cells_csv(rows: impl Iterator<Item = Vec<String>>, separator: Separator) -> String {
    let mut text = String::from('\u{feff}');
    for row in rows {
        put_row(&mut text, row.iter().map(|cell| guarded(cell)), separator.mark());
    }
    text
}

fn put_row(text: &mut String, cells: impl Iterator<Item = String>, separator: char) {
    for (place, cell) in cells.enumerate() {
        if place > 0 {
            text.push(separator);
        }
        put_cell(text, &cell, separator);
    }
    text.push_str("\r\n");
}

fn put_cell(text: &mut String, cell: &str, separator: char) {
    // A space at either end is kept by every reader only between quotation marks.
    let plain = !cell.contains([separator, '"', '\r', '\n']) && cell.trim().len() == cell.len();
    if plain {
        text.push_str(cell);
        return;
    }
    text.push('"');
    for c in cell.chars() {
        if c == '"' {
            text.push('"');
        }
        text.push(c);
    }
    text.push('"');
}
