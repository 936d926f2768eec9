//! Which rows stand on which sheet.
//!
//! Whoever draws measures every row at the width of the paper; here nothing is drawn, so that page breaks and
//! "2 of 3" are right before anything is printed.

use std::ops::Range;

/// A size of paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum PageSize {
    /// US Letter, 8 1/2 × 11 in (ANSI/ASME Y14.1, size A).
    Letter,
    /// A4, 210 × 297 mm (ISO 216).
    A4,
}

impl PageSize {
    /// All of them.
    pub const ALL: &'static [PageSize] = &[PageSize::Letter, PageSize::A4];

    /// The permanent id.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            PageSize::Letter => "letter",
            PageSize::A4 => "a4",
        }
    }

    /// The one with this id.
    #[must_use]
    pub fn of(id: &str) -> Option<PageSize> {
        PageSize::ALL.iter().copied().find(|size| size.id() == id)
    }

    /// Its width in millimetres.
    #[must_use]
    pub const fn width_mm(self) -> f64 {
        match self {
            PageSize::Letter => 215.9,
            PageSize::A4 => 210.0,
        }
    }

    /// Its height in millimetres.
    #[must_use]
    pub const fn height_mm(self) -> f64 {
        match self {
            PageSize::Letter => 279.4,
            PageSize::A4 => 297.0,
        }
    }
}

/// How high a row is, in the same unit as [`Room`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RowHeight {
    /// Its height.
    pub height: f64,
    /// Whether it must not end a sheet while a row follows: a heading.
    pub with_next: bool,
}

/// The height a sheet has for rows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Room {
    /// On the first sheet, below title and head, above the title block.
    pub first: f64,
    /// On every later one.
    pub later: f64,
    /// What the last sheet needs below its rows: totals.
    pub end: f64,
}

/// One sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sheet {
    /// Its rows; none where the totals have a sheet of their own, or there is nothing at all.
    pub rows: Range<usize>,
    /// Which it is, from 1.
    pub number: usize,
    /// How many there are.
    pub of: usize,
}

impl Sheet {
    /// Whether it is the last, which bears the totals.
    #[must_use]
    pub const fn is_last(&self) -> bool {
        self.number == self.of
    }
}

/// Lays rows out on sheets, as many on each as fit.
///
/// Every row stands on exactly one sheet, whole and in order. A heading stays with the row it heads wherever both fit
/// on one sheet. A row that is higher than a sheet has one of its own. Totals stand below the last row; where they
/// don't fit, the last row goes with them to the next sheet. There is always at least one sheet. Heights that are no
/// numbers count as none.
///
/// # Example
/// ```
/// use bedwright_job::sheets::{Room, RowHeight, fill};
/// let rows = [RowHeight { height: 40.0, with_next: false }; 5];
/// let sheets = fill(&rows, Room { first: 100.0, later: 130.0, end: 20.0 });
/// let rows: Vec<_> = sheets.iter().map(|sheet| sheet.rows.clone()).collect();
/// // Two fit on the first. Three would on the second, but with the totals that is 140.
/// assert_eq!(rows, [0..2, 2..4, 4..5]);
/// ```
#[must_use]
pub fn fill(rows: &[RowHeight], room: Room) -> Vec<Sheet> {
    let high = |range: Range<usize>| -> f64 { rows.get(range).unwrap_or_default().iter().map(height).sum() };
    let mut ranges: Vec<Range<usize>> = Vec::new();
    let mut from = 0;
    let mut at = 0;
    for block in blocks(rows, room.later.min(room.first)) {
        let here = if ranges.is_empty() { room.first } else { room.later };
        if at > from && high(from..block.end) > here {
            ranges.push(from..at);
            from = at;
        }
        at = block.end;
    }
    ranges.push(from..at);
    let here = if ranges.len() == 1 { room.first } else { room.later };
    if room.end.max(0.0) > 0.0 && high(from..at) + room.end > here {
        move_the_end(rows, room, &mut ranges, &high);
    }
    let of = ranges.len();
    ranges.into_iter().zip(1..).map(|(rows, number)| Sheet { rows, number, of }).collect()
}

/// The last block goes to a sheet with the totals, unless it is all there is or too high for that.
fn move_the_end(rows: &[RowHeight], room: Room, ranges: &mut Vec<Range<usize>>, high: &impl Fn(Range<usize>) -> f64) {
    let Some(last) = ranges.pop() else { return };
    let tail = blocks(rows, room.later.min(room.first)).last().cloned().unwrap_or(last.end..last.end);
    let moved =
        if tail.start > last.start && high(tail.clone()) + room.end <= room.later { tail.start } else { last.end };
    // Nothing on a first sheet but totals that don't fit: no other sheet would do better.
    if last.is_empty() {
        ranges.push(last);
        return;
    }
    ranges.push(last.start..moved);
    ranges.push(moved..last.end);
}

fn height(row: &RowHeight) -> f64 {
    if row.height.is_finite() { row.height.max(0.0) } else { 0.0 }
}

/// Rows that stay together: headings with the row they head, as long as that fits on any sheet; else each row alone.
fn blocks(rows: &[RowHeight], room: f64) -> Vec<Range<usize>> {
    let mut blocks = Vec::new();
    let mut from = 0;
    for (at, row) in rows.iter().enumerate() {
        if row.with_next && at + 1 < rows.len() {
            continue;
        }
        let block = from..at + 1;
        let high: f64 = rows.get(block.clone()).unwrap_or_default().iter().map(height).sum();
        if high <= room {
            blocks.push(block);
        } else {
            blocks.extend(block.map(|one| one..one + 1));
        }
        from = at + 1;
    }
    blocks
}

#[cfg(test)]
mod tests;
