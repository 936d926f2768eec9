#![allow(clippy::unwrap_used, clippy::indexing_slicing)] // Tests say so by panicking.

use rust_decimal::Decimal;

use super::{Chosen, Content, MOST_OFFERS, Need, Offer, cheapest_packs};
use crate::quantity::{Fault, Term, cubic_metres};
use crate::supply::Money;

fn cents(cents: i64) -> Option<Money> {
    Some(Money::new(Decimal::new(cents, 2)))
}

fn offer(content: u64, price: Option<Money>) -> Offer {
    Offer { content: Content::new(content), price, locked: None }
}

fn need(content: u64) -> Need {
    Need { content: Content::new(content), minimum: true, ..Need::default() }
}

#[test]
fn the_cheapest_combination_is_taken_not_the_cheapest_size() {
    // 2.5 of something: two of 1 and one of 0.5 for 85, against three of 1 for 105 or five of 0.5 for 100.
    let packing = cheapest_packs(&need(25), &[offer(10, cents(3500)), offer(5, cents(1500))]).unwrap();
    assert_eq!((packing.counts.as_slice(), packing.cost), (&[0, 5][..], cents(7500)));
    let packing = cheapest_packs(&need(25), &[offer(10, cents(3500)), offer(5, cents(2000))]).unwrap();
    assert_eq!((packing.counts.as_slice(), packing.cost), (&[2, 1][..], cents(9000)));
    assert_eq!(packing.chosen, Chosen::LeastCost);
    let alone: Vec<_> = packing.alone.iter().flatten().map(|alone| (alone.count, alone.cost)).collect();
    assert_eq!(alone, [(3, cents(10500)), (5, cents(10000))]);
}

#[test]
fn of_equal_costs_the_least_is_left_over_and_of_those_the_fewest_packs_are_taken() {
    // 7 costs 70 as 10, or as 4 + 3, which leaves nothing.
    let packing =
        cheapest_packs(&need(7), &[offer(10, cents(7000)), offer(4, cents(4000)), offer(3, cents(3000))]).unwrap();
    assert_eq!((packing.counts.as_slice(), packing.left_over), (&[0, 1, 1][..], Content::new(0)));
    // 12 as 10 + 2, as 6 + 6, as 4 + 4 + 4: all 12.00, none leaves anything.
    let offers = [offer(4, cents(400)), offer(6, cents(600)), offer(10, cents(1000)), offer(2, cents(200))];
    let packing = cheapest_packs(&need(12), &offers).unwrap();
    assert_eq!(packing.packs(), 2);
}

#[test]
fn without_every_price_the_least_is_left_over_and_it_says_so() {
    let packing = cheapest_packs(&need(7), &[offer(10, cents(1)), offer(4, None), offer(3, None)]).unwrap();
    assert_eq!(packing.counts, [0, 1, 1]);
    assert_eq!(packing.chosen, Chosen::LeastLeftOver { unpriced: 2 });
    // A missing price is no price of nought.
    assert_eq!(packing.cost, None);
}

#[test]
fn what_is_locked_is_taken_and_the_rest_is_the_best_of_what_is_free() {
    let locked = Offer { locked: Some(1), ..offer(10, cents(5000)) };
    let packing = cheapest_packs(&need(25), &[locked, offer(5, cents(1500))]).unwrap();
    assert_eq!(packing.counts, [1, 3]);
    let nothing_else = Offer { locked: Some(2), ..offer(10, None) };
    let problem = cheapest_packs(&need(25), &[nothing_else]).unwrap_err();
    assert!(matches!((problem.term, problem.fault), (Term::Packs, Fault::DoesNotFit { .. })), "{problem:?}");
    let enough = Offer { locked: Some(3), ..offer(10, None) };
    let packing = cheapest_packs(&need(25), &[enough]).unwrap();
    assert_eq!((packing.counts.as_slice(), packing.chosen), (&[3][..], Chosen::NoChoice));
}

#[test]
fn opened_packs_are_used_up_first() {
    let opened = Need { opened: Content::new(6), ..need(25) };
    let packing = cheapest_packs(&opened, &[offer(10, cents(1000))]).unwrap();
    assert_eq!((packing.counts.as_slice(), packing.from_opened), (&[2][..], Content::new(6)));
    assert_eq!(packing.left_over, Content::new(1));
    let all = Need { opened: Content::new(60), ..need(25) };
    let packing = cheapest_packs(&all, &[offer(10, None)]).unwrap();
    assert_eq!((packing.counts.as_slice(), packing.chosen), (&[0][..], Chosen::NothingToBuy));
    assert_eq!((packing.from_opened, packing.cost), (Content::new(25), Some(Money::default())));
}

#[test]
fn a_need_a_tenth_of_the_smallest_pack_above_whole_ones_is_met_by_them_unless_it_is_a_minimum() {
    let sizes = [offer(1_000, cents(3000)), offer(500, cents(1600))];
    let near = Need { minimum: false, ..need(2_050) };
    let packing = cheapest_packs(&near, &sizes).unwrap();
    assert_eq!((packing.counts.as_slice(), packing.short_by), (&[2, 0][..], Content::new(50)));
    let above = Need { minimum: false, ..need(2_051) };
    assert_eq!(cheapest_packs(&above, &sizes).unwrap().counts, [2, 1]);
    let packing = cheapest_packs(&need(2_050), &sizes).unwrap();
    assert_eq!((packing.counts.as_slice(), packing.short_by), (&[2, 1][..], Content::new(0)));
    // Without a price it is the same rule: what is bought counts.
    let packing = cheapest_packs(&near, &[offer(1_000, None)]).unwrap();
    assert_eq!((packing.counts.as_slice(), packing.short_by), (&[2][..], Content::new(50)));
}

#[test]
fn of_equally_cheap_near_misses_the_one_that_falls_short_least_is_taken() {
    // 1 999 falls a hair short of 2 000 and costs no less than 2 006, so nothing speaks for it.
    let sizes = [offer(996, cents(1000)), offer(1_003, cents(1000)), offer(100, cents(900))];
    let packing = cheapest_packs(&Need { minimum: false, ..need(2_000) }, &sizes).unwrap();
    assert_eq!((packing.counts.as_slice(), packing.left_over), (&[0, 2, 0][..], Content::new(6)));
    // Of 1 999 and 2 006, equally cheap, 2 006 is nearer to 2 009.
    let packing = cheapest_packs(&Need { minimum: false, ..need(2_009) }, &sizes).unwrap();
    assert_eq!((packing.counts.as_slice(), packing.short_by), (&[0, 2, 0][..], Content::new(3)));
}

#[test]
fn sizes_without_a_common_measure_are_tried_and_agree_with_those_that_have_one() {
    // The same sizes in a measure a million times finer, and one pack a hair larger so that nothing is common.
    for wanted in [1_u64, 17, 99, 250, 613] {
        let coarse = [offer(30, cents(1010)), offer(50, cents(1590)), offer(70, cents(2300)), offer(110, cents(3500))];
        let fine: Vec<Offer> = coarse
            .iter()
            .map(|there| Offer { content: there.content.times(1_000_000).plus(Content::new(1)), ..*there })
            .collect();
        let a = cheapest_packs(&need(wanted * 10), &coarse).unwrap();
        let b = cheapest_packs(&need(wanted * 10_000_000), &fine).unwrap();
        assert_eq!(a.cost, b.cost, "{wanted}");
        assert_eq!(a.counts, b.counts, "{wanted}");
    }
}

#[test]
fn hostile_sizes_are_a_problem_not_a_wait() {
    let begun = std::time::Instant::now();
    let primes = [999_999_937, 999_999_929, 999_999_893, 999_999_883, 999_999_797, 999_999_761, 999_999_757];
    let sizes: Vec<Offer> = primes.iter().map(|content| offer(*content, None)).collect();
    let problem = cheapest_packs(&need(999_999_937 * 5_000 + 1), &sizes).unwrap_err();
    assert_eq!((problem.term, problem.fault), (Term::Packs, Fault::TooManyWays));
    assert!(begun.elapsed().as_secs() < 20, "{:?}", begun.elapsed());
    let problem = cheapest_packs(&need(u64::MAX), &[offer(1, None)]).unwrap_err();
    assert_eq!((problem.term, problem.fault), (Term::Packs, Fault::TooManyWays));
    assert!(cheapest_packs(&need(5), &[]).is_err());
    assert!(cheapest_packs(&need(5), &[offer(0, cents(1))]).is_err());
    assert!(cheapest_packs(&need(5), &vec![offer(5, None); MOST_OFFERS + 1]).is_err());
}

#[test]
fn a_price_that_is_below_nought_or_too_long_is_a_problem_of_the_price() {
    let huge = Some(Money::new(Decimal::from_scientific("1e28").unwrap()));
    let long = Some(Money::new(Decimal::new(1, 28)));
    for price in [cents(-1), huge] {
        let problem = cheapest_packs(&need(5), &[offer(5, price)]).unwrap_err();
        assert!(matches!((problem.term, problem.fault), (Term::Price, Fault::OutOfRange { .. })), "{problem:?}");
    }
    assert!(cheapest_packs(&need(5), &[offer(5, long), offer(5, cents(100))]).is_err());
    let free = cheapest_packs(&need(5), &[offer(5, cents(0)), offer(3, cents(0))]).unwrap();
    // Of what costs nothing the least is left over.
    assert_eq!(free.counts, [1, 0]);
}

#[test]
fn contents_that_are_none_are_refused() {
    for volume in [0.0, -1.0, f64::NAN, f64::INFINITY, 1e30] {
        assert!(Content::of_pack(cubic_metres(volume)).is_err(), "{volume}");
    }
    for volume in [-1.0, f64::NAN, f64::INFINITY, 1e30] {
        assert!(Content::needed(cubic_metres(volume)).is_err(), "{volume}");
    }
    assert_eq!(Content::needed(cubic_metres(0.0)).unwrap(), Content::new(0));
}
