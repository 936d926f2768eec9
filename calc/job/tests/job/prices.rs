//! The price list: one door, kept in parts, and what a job carries of it.

use std::sync::Arc;

use bedwright_calc::material::Pack;
use bedwright_calc::quantity::metres;
use bedwright_calc::supply::{Fitting, Item};
use bedwright_job::answers::job_answers;
use bedwright_job::edit::{Edit, apply};
use bedwright_job::id::Id;
use bedwright_job::papers::{Shelf, pick_rows};
use bedwright_job::prices::{
    ListEdit, ListRefused, MOST_ROWS, Origin, PriceKind, PriceList, PriceRow, Prices, amount, carries, differing,
    lacks, price_key, price_keys,
};
use bedwright_job::saved::{Unreadable, list_part, list_parts, list_text, newer, read_list_part};
use bedwright_job::sections::picking::PickField;
use bedwright_job::words::Manner;
use bedwright_job::{Job, prices};

use crate::jobs;

fn desk() -> Id {
    Id::new("desk")
}

fn change(list: &mut PriceList, edit: ListEdit) -> ListEdit {
    prices::apply(list, edit, &desk()).unwrap()
}

/// A row with a price.
fn row(key: &str, price: &str) -> PriceRow {
    PriceRow { price: amount(price, '.').unwrap(), ..PriceRow::new(key, PriceKind::Part) }
}

/// A list read from what another one wrote.
fn kept(list: &PriceList) -> PriceList {
    let mut again = PriceList::shipped();
    for part in list_parts() {
        read_list_part(&mut again, &part, &list_text(list, &part)).unwrap();
    }
    again
}

#[test]
fn shipped_rows_have_no_price_and_there_is_one_for_everything_on_a_bill() {
    let list = PriceList::shipped();
    assert!(list.rows().len() > 100);
    for row in list.rows() {
        assert_eq!((row.cost, row.price, row.origin), (None, None, Origin::Shipped), "{}", row.key);
    }
    let job = jobs::sample();
    let (_, bill) = job_answers(&job);
    let prices = Prices { job: &job.prices.body, list: &list };
    assert!(bill.bill.pooled.len() > 5);
    for line in &bill.bill.pooled {
        assert!(prices.of(&line.item).is_some(), "{}", line.item.key());
    }
}

#[test]
fn every_change_of_the_list_can_be_taken_back() {
    let mut list = PriceList::shipped();
    let first = list.clone();
    let mut own = row("own:a", "1");
    own.part_number = "A-1".to_owned();
    let twice = vec![
        ("own:b".to_owned(), Some(Arc::new(row("own:b", "1")))),
        ("own:b".to_owned(), Some(Arc::new(row("own:b", "2")))),
    ];
    let edits = [
        ListEdit::Title("Autumn".to_owned()),
        ListEdit::Currency("USD".to_owned()),
        ListEdit::row(own),
        ListEdit::Rows(twice),
        ListEdit::row(PriceRow {
            price: amount("3", '.').unwrap(),
            ..PriceRow::new("part:riser_cap", PriceKind::Part)
        }),
    ];
    let mut states = Vec::new();
    let mut back = Vec::new();
    for edit in edits {
        states.push(list.clone());
        back.push(change(&mut list, edit));
    }
    states.push(list.clone());
    back.push({
        let reset = ListEdit::reset(&list);
        change(&mut list, reset)
    });
    assert_eq!(list.rows(), first.rows());
    while let Some(edit) = back.pop() {
        change(&mut list, edit);
        let was = states.pop().unwrap();
        assert_eq!((list.rows(), &list.catalogue.title), (was.rows(), &was.catalogue.title));
    }
}

#[test]
fn a_refused_change_leaves_the_list_as_it_was() {
    let mut list = PriceList::shipped();
    let before = list.clone();
    let dear =
        PriceRow { cost: Some(bedwright_calc::supply::Money::new(rust_decimal::Decimal::MAX)), ..row("own:a", "1") };
    for (wrong, why) in [
        (ListEdit::row(row("", "1")), ListRefused::Row(String::new())),
        (
            ListEdit::Rows(vec![("own:a".to_owned(), Some(Arc::new(row("own:b", "1"))))]),
            ListRefused::Row("own:a".to_owned()),
        ),
        (ListEdit::row(dear), ListRefused::Row("own:a".to_owned())),
    ] {
        assert_eq!(prices::apply(&mut list, wrong, &desk()), Err(why));
    }
    let many = (0..MOST_ROWS).map(|n| (format!("own:{n}"), Some(Arc::new(row(&format!("own:{n}"), "1"))))).collect();
    let rows = before.rows().len() + MOST_ROWS;
    assert_eq!(prices::apply(&mut list, ListEdit::Rows(many), &desk()), Err(ListRefused::TooMany { rows }));
    assert_eq!(list, before);
}

#[test]
fn a_list_is_read_as_it_was_written_part_by_part() {
    let mut list = PriceList::shipped();
    change(&mut list, ListEdit::Title("Autumn".to_owned()));
    for carried in jobs::priced().prices.body.rows() {
        // A shipped row is not written: the page has it.
        let own = PriceRow { origin: Origin::Own, ..(**carried).clone() };
        change(&mut list, ListEdit::row(own));
    }
    change(&mut list, ListEdit::row(row("part:riser_cap", "0")));
    assert_eq!(kept(&list), list);
    assert_eq!(kept(&PriceList::shipped()), PriceList::shipped());
}

/// Another tab wrote a part: what it took out is taken out here as well, and the shipped row stands there again.
#[test]
fn a_part_read_again_takes_the_place_of_what_was_there() {
    let mut list = PriceList::shipped();
    change(&mut list, ListEdit::row(row("part:riser_cap", "1")));
    let mut other = list.clone();
    let reset = ListEdit::reset(&other);
    change(&mut other, reset);
    let part = list_part("part:riser_cap");
    let (before, after) = (list_text(&list, &part), list_text(&other, &part));
    assert!(newer(&before, &after).is_lt());
    read_list_part(&mut list, &part, &after).unwrap();
    assert_eq!(list, other);
}

#[test]
fn a_part_that_cannot_be_read_changes_nothing_and_says_why() {
    let mut list = PriceList::shipped();
    change(&mut list, ListEdit::row(row("own:a", "1")));
    let before = list.clone();
    let format = r#""format":"bedwright-prices""#;
    for (text, why) in [
        ("{".to_owned(), Unreadable::NotJson { line: 1, column: 1 }),
        ("{}".to_owned(), Unreadable::OtherFormat),
        (format!("{{{format}}}"), Unreadable::Lacks { what: "version" }),
        (format!("{{{format},\"version\":2}}"), Unreadable::TooNew { version: 2 }),
        (format!("{{{format},\"version\":1}}"), Unreadable::Lacks { what: "rows" }),
        (
            format!(r#"{{{format},"version":1,"rows":{{"a":{{"kind":"part","cost":"dear"}}}}}}"#),
            Unreadable::Lacks { what: "rows" },
        ),
    ] {
        assert_eq!(read_list_part(&mut list, "00", &text), Err(why), "{text}");
        assert_eq!(list, before);
    }
}

#[test]
fn what_is_not_known_of_a_part_and_of_a_row_is_kept() {
    let part = list_part("own:a");
    let text = r#"{"format":"bedwright-prices","version":1,"revision":{"device":"desk","counter":3},"rows":{"own:a":{"kind":"part","of_later":[1]}},"later":2}"#;
    let mut list = PriceList::shipped();
    read_list_part(&mut list, &part, text).unwrap();
    assert_eq!(list_text(&list, &part), text);
    assert_eq!(list.catalogue.version(), "desk:3");
}

/// Saved lists hang on it: a row that moved to another part would be there twice.
#[test]
fn the_part_of_a_key_never_changes() {
    // By an implementation of FNV-1a in Python: the 32-bit hash of the key, modulo 64.
    for (key, part) in [("own:a", "26"), ("part:riser_cap", "48"), ("pack:resin_cation:resin_cation.1_ft3", "33")] {
        assert_eq!(list_part(key), part, "{key}");
    }
}

#[test]
fn a_pipe_has_one_price_whatever_it_is_cut_to_and_a_row_of_any_size_stands_in() {
    let pipe = |cut: f64| Item::Part {
        fitting: Fitting::RiserPipe,
        size: Some(metres(0.02667)),
        cut: Some(metres(cut)),
        on_site: false,
    };
    assert_eq!(price_key(&pipe(1.0)), price_key(&pipe(1.2)));
    assert_eq!(price_keys(&pipe(1.0)), ["part:riser_pipe:26670", "part:riser_pipe"]);
    let mut list = PriceList::shipped();
    let job = Job::new(Id::new("j"), "");
    let priced = |list: &PriceList| Prices { job: &job.prices.body, list }.of(&pipe(1.0)).map(|row| row.key.clone());
    assert_eq!(priced(&list).as_deref(), Some("part:riser_pipe"));
    change(&mut list, ListEdit::row(row("part:riser_pipe", "4")));
    assert_eq!(priced(&list).as_deref(), Some("part:riser_pipe"));
    change(&mut list, ListEdit::row(row("part:riser_pipe:26670", "5")));
    assert_eq!(priced(&list).as_deref(), Some("part:riser_pipe:26670"));
}

/// What it costs in every size decides what is bought; whoever opens the job later with another list changes nothing.
#[test]
fn the_costs_of_every_size_come_along_once_and_decide_what_is_bought() {
    let mut job = jobs::sample();
    let (_, bill) = job_answers(&job);
    let several = |material: &str| Pack::of_material(material).len() > 1;
    let bought = bill.bought.iter().find(|bought| several(&bought.material)).unwrap();
    let material = bought.material.clone();
    let item = |pack: &Pack| Item::Pack { material: material.clone(), pack: pack.id.clone() };
    let packs = Pack::of_material(&material);
    let planned = bill.bill.pooled.iter().find(|line| packs.iter().any(|pack| item(pack) == line.item)).unwrap();
    let planned = planned.item.clone();
    let mut list = PriceList::shipped();
    let cost = |list: &mut PriceList, item: &Item, cost: &str| {
        let key = price_key(item);
        let row = PriceRow { cost: amount(cost, '.').unwrap(), ..PriceRow::new(&key, PriceKind::Pack) };
        change(list, ListEdit::row(row));
    };
    for pack in &packs {
        cost(&mut list, &item(pack), if item(pack) == planned { "900" } else { "1" });
    }
    let taken = lacks(&job, &list, &bill).unwrap();
    apply(&mut job, taken, &desk()).unwrap();
    let (_, after) = job_answers(&job);
    assert!(after.bill.pooled.iter().all(|line| line.item != planned), "the dear size is left");
    assert!(after.bill.pooled.iter().any(|line| packs.iter().any(|pack| item(pack) == line.item)));
    // Another device, where the dear size is the cheap one: nothing comes along by itself, all on a tap.
    let mut other = PriceList::shipped();
    for pack in &packs {
        cost(&mut other, &item(pack), if item(pack) == planned { "1" } else { "900" });
    }
    assert_eq!(lacks(&job, &other, &after), None);
    let taken = carries(&job, &other, &after, &[]).unwrap();
    apply(&mut job, taken, &desk()).unwrap();
    assert!(job_answers(&job).1.bill.pooled.iter().any(|line| line.item == planned));
}

#[test]
fn a_job_carries_the_rows_of_its_bill_and_reads_them_where_the_list_is_another() {
    let mut job = jobs::sample();
    let (_, bill) = job_answers(&job);
    let item = bill.bill.pooled[0].item.clone();
    let mut list = PriceList::shipped();
    assert_eq!(carries(&job, &list, &bill, &[]), None, "nothing was said yet");
    change(&mut list, ListEdit::row(row(&price_key(&item), "10")));
    change(&mut list, ListEdit::row(row("labour:on_site", "95")));
    change(&mut list, ListEdit::row(row("own:not-used", "1")));
    let edit = carries(&job, &list, &bill, &["labour:on_site".to_owned()]).unwrap();
    let undo = apply(&mut job, edit, &desk()).unwrap().unwrap();
    assert_eq!(job.prices.body.rows().len(), 2);
    assert_eq!(job.prices.body.catalogue.version(), "desk:3");
    assert_eq!(carries(&job, &list, &bill, &[]), None);
    // Elsewhere, with the list as it ships.
    let shipped = PriceList::shipped();
    let prices = Prices { job: &job.prices.body, list: &shipped };
    assert_eq!(prices.of(&item).unwrap().price, amount("10", '.').unwrap());
    // Here, after a change of the list: the job says what it said.
    change(&mut list, ListEdit::row(row(&price_key(&item), "12")));
    let prices = Prices { job: &job.prices.body, list: &list };
    assert_eq!(prices.of(&item).unwrap().price, amount("10", '.').unwrap());
    let differs = differing(&job.prices.body, &list);
    assert_eq!(differs.len(), 1);
    assert_eq!(differs[0].1.price, amount("12", '.').unwrap());
    assert!(carries(&job, &list, &bill, &[]).is_some());
    apply(&mut job, undo, &desk()).unwrap();
    assert_eq!(job.prices.body, jobs::sample().prices.body);
}

#[test]
fn the_pick_list_takes_bins_and_part_numbers_of_the_list_where_its_line_has_none() {
    let mut job = jobs::sample();
    let (_, bill) = job_answers(&job);
    let item = bill.bill.pooled[1].item.clone();
    let listed = PriceRow { bin: "C-9".to_owned(), part_number: " P-1 ".to_owned(), ..row(&price_key(&item), "1") };
    apply(&mut job, Edit::Price { key: listed.key.clone(), row: Some(Arc::new(listed)) }, &desk()).unwrap();
    let shelf = |job: &Job| {
        let rows = pick_rows(job, &bill, Manner::default());
        // The only one with a bin stands first.
        assert_eq!(rows[0].key, item.key());
        rows[0].shelf.clone()
    };
    assert_eq!(shelf(&job), Shelf { bin: "C-9".to_owned(), part_number: "P-1".to_owned() });
    let (key, text) = (item.key(), "A-1".to_owned());
    apply(&mut job, Edit::PickText { key, field: PickField::Bin, text }, &desk()).unwrap();
    assert_eq!(shelf(&job), Shelf { bin: "A-1".to_owned(), part_number: "P-1".to_owned() });
}

#[test]
fn part_numbers_find_rows_and_give_keys_that_are_free() {
    let mut list = PriceList::shipped();
    let numbered = |key: &str, retired: bool| PriceRow { part_number: " A-1 ".to_owned(), retired, ..row(key, "1") };
    assert_eq!(list.free_key("A 1/2"), "own:a-1-2");
    change(&mut list, ListEdit::row(numbered("own:a-1", true)));
    change(&mut list, ListEdit::row(numbered("own:b", false)));
    assert_eq!(list.free_key("A-1"), "own:a-1:2");
    let found: Vec<&str> = list.with_part_number("a-1").iter().map(|row| row.key.as_str()).collect();
    assert_eq!(found, ["own:b", "own:a-1"]);
    assert!(list.with_part_number(" ").is_empty());
}
