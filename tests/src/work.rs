//! One piece of work and nothing else, for callgrind to count: `work volumes N`, `work vessels N`, `work windows N`,
//! `work expansions N`, `work packs N` or `work waters N`; `work nearness 1` says how near PHREEQC our waters are.
#![allow(clippy::unwrap_used, clippy::panic, clippy::indexing_slicing)] // Run by the bench only.

use bedwright_calc::fill::plan;
use bedwright_calc::quantity::metres;
use bedwright_tests::{beds, carbonates, contactors, fills, packs};

fn main() {
    let mut arguments = std::env::args().skip(1);
    let (what, count) = (arguments.next().unwrap(), arguments.next().unwrap().parse::<u32>().unwrap());
    let (vessel, layers) = fills::examples().remove(1);
    let bucket = fills::bucket();
    let mut sum = 0.0;
    for k in 0..count {
        match what.as_str() {
            "volumes" => {
                let height = metres(0.1 + 1.6 * f64::from(k % 1000) / 1000.0);
                sum += vessel.cavity.volume_below(height).unwrap().value;
            }
            "vessels" => {
                let filled = plan(&vessel, &layers, &bucket);
                sum += filled.freeboard.unwrap().length.value.value;
            }
            "windows" => {
                let rows = beds::planned_window();
                sum += rows.iter().filter_map(|row| row.lifts_from[1]).map(|flow| flow.value).sum::<f64>();
            }
            "expansions" => {
                sum += beds::planned_expansions().iter().filter_map(|expansion| expansion.likely).sum::<f64>();
            }
            "waters" => sum += carbonates::waters().values.iter().sum::<f64>(),
            "nearness" => print!("{}{}", carbonates::nearness(), contactors::nearness()),
            "packs" => {
                let (cents, alone) = packs::fifty_vessels();
                sum = cents as f64 + alone as f64 / 1e4;
            }
            _ => panic!("what is {what}?"),
        }
    }
    println!("{sum}");
}
