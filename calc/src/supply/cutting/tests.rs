#![allow(clippy::unwrap_used, clippy::indexing_slicing)] // Tests say so by panicking.

use super::{CutPlan, MOST_PIECES, Stock, cut_plan};
use crate::quantity::{Fault, Length, Term, metres};

fn stock(length: f64, kerf: f64) -> Stock {
    Stock { length: metres(length), kerf: metres(kerf) }
}

/// Every piece once, and every stock length long enough for its pieces and the cuts between them.
fn holds(stock: &Stock, pieces: &[Length], plan: &CutPlan) {
    let mut seen = vec![0; pieces.len()];
    for length in &plan.lengths {
        let long: f64 = length.pieces.iter().map(|piece| pieces[*piece].value).sum();
        let cuts = (length.pieces.len() - 1) as f64;
        assert!(long + cuts * stock.kerf.value <= stock.length.value + 1e-9, "{length:?}");
        for piece in &length.pieces {
            seen[*piece] += 1;
        }
    }
    assert!(seen.iter().all(|times| *times == 1), "{seen:?}");
    assert!(plan.at_least as usize <= plan.lengths.len());
}

#[test]
fn the_last_cut_may_fall_into_the_air() {
    // 1.5 + 0.003 + 1.497 = 3 to the micrometre.
    let stock = stock(3.0, 0.003);
    let pieces = [metres(1.5), metres(1.497)];
    let plan = cut_plan(&stock, &pieces).unwrap();
    assert_eq!(plan.lengths.len(), 1);
    assert_eq!(plan.lengths[0].rest.value, 0.0);
    let plan = cut_plan(&stock, &[metres(1.5), metres(1.497_001)]).unwrap();
    assert_eq!(plan.lengths.len(), 2);
}

#[test]
fn pieces_that_fill_by_threes_are_found_where_the_longest_first_would_miss_them() {
    // Best fit takes 4 for these; 3 hold them: 44+24+32, 44+24+32, 42+22+36.
    let pieces: Vec<Length> = [44, 24, 32, 44, 24, 32, 42, 22, 36].map(|cm| metres(f64::from(cm) / 100.0)).to_vec();
    let stock = stock(1.0, 0.0);
    let plan = cut_plan(&stock, &pieces).unwrap();
    holds(&stock, &pieces, &plan);
    assert_eq!(plan.lengths.len(), 3);
    assert!(plan.is_least());
}

#[test]
fn many_of_few_lengths_are_the_least_for_certain_too() {
    let pieces: Vec<Length> = (0..150).map(|at| metres([1.295, 1.32, 0.86][at % 3])).collect();
    let stock = stock(6.0, 0.003);
    let plan = cut_plan(&stock, &pieces).unwrap();
    holds(&stock, &pieces, &plan);
    assert!(plan.is_least());
}

#[test]
fn many_that_are_all_different_end_within_the_tries_with_a_proven_bound() {
    let begun = std::time::Instant::now();
    let pieces: Vec<Length> = (0..400).map(|at| metres(0.5 + f64::from(at * 7919 % 1009) / 1000.0)).collect();
    let stock = stock(3.0, 0.003);
    let plan = cut_plan(&stock, &pieces).unwrap();
    holds(&stock, &pieces, &plan);
    let volume: f64 = pieces.iter().map(|piece| piece.value + 0.003).sum();
    assert!(plan.at_least as f64 >= (volume / 3.003).floor());
    assert!(begun.elapsed().as_secs() < 20, "{:?}", begun.elapsed());
}

#[test]
fn nothing_is_cut_from_nothing() {
    let plan = cut_plan(&stock(3.0, 0.003), &[]).unwrap();
    assert_eq!((plan.lengths.len(), plan.at_least), (0, 0));
}

#[test]
fn what_cannot_be_cut_names_what_is_wrong() {
    let long = cut_plan(&stock(3.0, 0.003), &[metres(1.0), metres(3.001)]).unwrap_err();
    assert_eq!((long.term, long.layer), (Term::RiserLength, Some(1)));
    assert!(matches!(long.fault, Fault::NotBelow { other: Term::StockLength, .. }));
    for (length, kerf, piece, term) in [
        (0.0, 0.0, 1.0, Term::StockLength),
        (f64::NAN, 0.0, 1.0, Term::StockLength),
        (1e30, 0.0, 1.0, Term::StockLength),
        (3.0, -0.001, 1.0, Term::Kerf),
        (3.0, f64::INFINITY, 1.0, Term::Kerf),
        (3.0, 0.0, 0.0, Term::RiserLength),
        (3.0, 0.0, f64::NAN, Term::RiserLength),
    ] {
        assert_eq!(cut_plan(&stock(length, kerf), &[metres(piece)]).unwrap_err().term, term);
    }
    let many = vec![metres(1.0); MOST_PIECES + 1];
    assert_eq!(cut_plan(&stock(3.0, 0.0), &many).unwrap_err().fault, Fault::TooManyWays);
}
