//! What the layout promises, for rows nobody thought of; and three layouts counted by hand.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use std::ops::Range;

use proptest::prelude::*;

use super::{PageSize, Room, RowHeight, Sheet, fill};

fn rows(heights: &[f64]) -> Vec<RowHeight> {
    heights.iter().map(|&height| RowHeight { height, with_next: false }).collect()
}

fn ranges(sheets: &[Sheet]) -> Vec<Range<usize>> {
    sheets.iter().map(|sheet| sheet.rows.clone()).collect()
}

const ROOM: Room = Room { first: 100.0, later: 120.0, end: 10.0 };

#[test]
fn counted_by_hand() {
    // 50 + 50 fill the first; 60 + 60 fill the second, but not with totals of 10.
    assert_eq!(ranges(&fill(&rows(&[50.0, 50.0, 60.0, 60.0]), ROOM)), [0..2, 2..3, 3..4]);
    // 90 and the totals are exactly the first.
    assert_eq!(ranges(&fill(&rows(&[90.0]), ROOM)), std::slice::from_ref(&(0..1)));
    // A row that no sheet holds has one of its own, and the totals the next.
    assert_eq!(ranges(&fill(&rows(&[10.0, 500.0]), ROOM)), [0..1, 1..2, 2..2]);
}

#[test]
fn nothing_at_all_is_one_sheet() {
    assert_eq!(fill(&[], ROOM), [Sheet { rows: 0..0, number: 1, of: 1 }]);
}

#[test]
fn a_heading_goes_with_the_row_it_heads() {
    let mut rows = rows(&[80.0, 15.0, 30.0]);
    rows[1].with_next = true;
    // The heading alone would still fit on the first sheet: 95.
    assert_eq!(ranges(&fill(&rows, ROOM)), [0..1, 1..3]);
}

#[test]
fn totals_never_leave_a_heading_behind() {
    let mut rows = rows(&[40.0, 20.0, 38.0]);
    rows[1].with_next = true;
    // All three are 98, with totals 108: the last row takes its heading along.
    assert_eq!(ranges(&fill(&rows, ROOM)), [0..1, 1..3]);
}

#[test]
fn sizes_of_paper_are_those_of_the_standards() {
    // ISO 216: A4 is 210 × 297 mm. ANSI/ASME Y14.1: size A is 8.50 × 11.00 in; an inch is 25.4 mm.
    let a4 = PageSize::A4;
    assert!((a4.width_mm() - 210.0).abs() < 1e-9 && (a4.height_mm() - 297.0).abs() < 1e-9);
    let letter = PageSize::Letter;
    assert!((letter.width_mm() - 8.5 * 25.4).abs() < 1e-9 && (letter.height_mm() - 11.0 * 25.4).abs() < 1e-9);
    for &size in PageSize::ALL {
        assert_eq!(PageSize::of(size.id()), Some(size));
    }
}

fn any_rows() -> impl Strategy<Value = Vec<RowHeight>> {
    let row = (prop_oneof![5 => 1.0..40.0, 1 => 0.0..300.0, 1 => Just(0.0)], prop::bool::weighted(0.2))
        .prop_map(|(height, with_next)| RowHeight { height, with_next });
    prop::collection::vec(row, 0..80)
}

fn any_room() -> impl Strategy<Value = Room> {
    (60.0..250.0, 0.0..60.0, 0.0..50.0).prop_map(|(first, more, end)| Room { first, later: first + more, end })
}

fn high(rows: &[RowHeight]) -> f64 {
    rows.iter().map(|row| row.height).sum()
}

proptest! {
    #[test]
    fn every_row_stands_on_one_sheet_and_in_order(rows in any_rows(), room in any_room()) {
        let sheets = fill(&rows, room);
        let all: Vec<usize> = sheets.iter().flat_map(|sheet| sheet.rows.clone()).collect();
        prop_assert_eq!(all, (0..rows.len()).collect::<Vec<_>>());
    }

    #[test]
    fn sheets_are_numbered_from_one_to_how_many_there_are(rows in any_rows(), room in any_room()) {
        let sheets = fill(&rows, room);
        for (sheet, number) in sheets.iter().zip(1..) {
            prop_assert_eq!((sheet.number, sheet.of), (number, sheets.len()));
            prop_assert_eq!(sheet.is_last(), number == sheets.len());
        }
    }

    #[test]
    fn no_sheet_is_overfull_unless_one_row_is(rows in any_rows(), room in any_room()) {
        let sheets = fill(&rows, room);
        for sheet in &sheets {
            let here = if sheet.number == 1 { room.first } else { room.later };
            let end = if sheet.is_last() { room.end } else { 0.0 };
            let full = high(&rows[sheet.rows.clone()]) + end;
            prop_assert!(full <= here + 1e-6 || (sheet.rows.len() == 1 && end == 0.0), "{sheet:?} holds {full} of {here}");
        }
    }

    #[test]
    fn no_sheet_but_the_last_is_empty(rows in any_rows(), room in any_room()) {
        let sheets = fill(&rows, room);
        for sheet in &sheets {
            prop_assert!(!sheet.rows.is_empty() || sheet.is_last());
        }
    }

    #[test]
    fn a_heading_ends_a_sheet_only_where_its_row_would_not_fit_below_it(rows in any_rows(), room in any_room()) {
        let sheets = fill(&rows, room);
        for sheet in sheets.iter().filter(|sheet| !sheet.is_last() && !sheet.rows.is_empty()) {
            let last = sheet.rows.end - 1;
            if rows[last].with_next && last + 1 < rows.len() {
                let start = (0..=last).rev().take_while(|&at| rows[at].with_next).last().unwrap();
                let end = (last..rows.len()).find(|&at| !rows[at].with_next).unwrap_or(rows.len() - 1);
                prop_assert!(high(&rows[start..=end]) > room.first);
            }
        }
    }

    #[test]
    fn no_row_would_have_fitted_on_the_sheet_before(rows in any_rows(), room in any_room()) {
        let sheets = fill(&rows, room);
        // The last two aside, between which the totals may have moved a row.
        for pair in sheets.windows(2).take(sheets.len().saturating_sub(2)) {
            let here = if pair[0].number == 1 { room.first } else { room.later };
            let end = (pair[1].rows.start..rows.len()).find(|&at| !rows[at].with_next).unwrap_or(rows.len() - 1);
            prop_assert!(high(&rows[pair[0].rows.start..=end]) > here);
        }
    }
}
