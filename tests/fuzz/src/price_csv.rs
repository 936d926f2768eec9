//! A price list as a file: taken twice it changes nothing the second time.

use std::sync::OnceLock;

use bedwright_job::id::Id;
use bedwright_job::prices::csv::{DryRun, FileForm, Separator, dry_run, list_csv};
use bedwright_job::prices::{PriceList, amount, amount_text, apply};

use crate::before::first;

/// One byte says what the person said of the decimal mark, the rest is the file.
///
/// # Panics
/// A file changes the list again when it is taken again, or the list changes on its way out and in.
pub fn holds(bytes: &[u8]) {
    let (said, file) = first(bytes);
    let decimal = [None, Some('.'), Some(',')][usize::from(said) % 3];
    if let Ok(text) = std::str::from_utf8(file) {
        any_amount(text);
    }
    let mut list = shipped().clone();
    let Ok(tried) = dry_run(&list, file, decimal) else { return };
    assert_eq!(list, *shipped(), "a trial changes nothing");
    let before = list.clone();
    let undo = match apply(&mut list, tried.edit(), &Id::new("desk")) {
        Ok(undo) => undo,
        Err(refused) => panic!("what was tried isn't taken: {refused:?}"),
    };
    let second = dry_run(&list, file, decimal).expect("it was tried before");
    nothing_new(&second);
    // Two retired rows of one part number, without keys: both are taken, and then it doesn't tell which of them is meant.
    let rows = |tried: &DryRun| tried.unchanged + tried.added.len() + tried.changed.len() + tried.refused.len();
    assert_eq!(rows(&second), rows(&tried));
    if tried.added.is_empty() && tried.changed.is_empty() {
        return;
    }
    let form = FileForm {
        separator: Separator::ALL[usize::from(said / 3) % Separator::ALL.len()],
        decimal: if said & 64 == 0 { '.' } else { ',' },
        mark: said & 128 != 0,
    };
    let out = dry_run(&list, list_csv(&list, form).as_bytes(), None).expect("what is written is read");
    nothing_new(&out);
    assert_eq!((out.unchanged, out.refused.len()), (list.rows().len(), 0));
    apply(&mut list, undo, &Id::new("desk")).expect("it is taken back");
    assert_eq!(list.rows(), before.rows(), "taken back it is as it was");
}

fn nothing_new(tried: &DryRun) {
    assert_eq!((&tried.added, &tried.changed), (&Vec::new(), &Vec::new()));
}

/// An amount that was understood reads the same as it is written.
fn any_amount(text: &str) {
    for mark in ['.', ','] {
        if let Ok(Some(money)) = amount(text, mark) {
            assert_eq!(amount(&amount_text(money, mark), mark), Ok(Some(money)), "{text:?}");
        }
    }
}

fn shipped() -> &'static PriceList {
    static SHIPPED: OnceLock<PriceList> = OnceLock::new();
    SHIPPED.get_or_init(PriceList::shipped)
}
