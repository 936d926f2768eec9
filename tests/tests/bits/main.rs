//! What ships is what is proved: the reference tables and whole fills on the page's own profile, equal to the bit
//! with the native build.
#![cfg(target_arch = "wasm32")]
#![allow(clippy::panic)] // A test says what is wrong by panicking.

use bedwright_tests::{
    balances, carbonates, contactors, digest, expansions, fluidisation, gradings, heads, lives, packed_beds, packings,
    packs, quotes, sieves, tape_spreads, vessels, water,
};
use wasm_bindgen_test::wasm_bindgen_test;

/// What the native build computed; `tests/run` hands it in.
const NATIVE: Option<&str> = option_env!("BEDWRIGHT_DIGESTS");

#[wasm_bindgen_test]
fn wasm_and_native_agree_to_the_bit() {
    let Some(native) = NATIVE else { panic!("BEDWRIGHT_DIGESTS was not set at build time: run `tests/run bits`") };
    let native: Vec<&str> = native.split(',').collect();
    let here = digest::all();
    let here: Vec<&str> = here.split(',').collect();
    assert_eq!(native, here, "name:count=digest, native on the left");
}

#[wasm_bindgen_test]
fn volumes_below_heights_match_the_reference() {
    vessels::volumes().settle("vessel_volume.csv", 1257);
}

#[wasm_bindgen_test]
fn heights_holding_volumes_match_the_reference() {
    vessels::heights().settle("vessel_height.csv", 262);
}

#[wasm_bindgen_test]
fn a_volume_turned_into_its_height_comes_back() {
    vessels::inverses().settle("vessel_volume.csv, there and back", 1257);
}

#[wasm_bindgen_test]
fn heads_match_fifty_digits() {
    heads::shapes().settle("head_shape.csv", 18);
}

#[wasm_bindgen_test]
fn sieves_match_the_standard() {
    sieves::openings().settle("sieve.csv", 27);
}

#[wasm_bindgen_test]
fn water_matches_the_reference() {
    water::properties().settle("water.csv", 298);
}

#[wasm_bindgen_test]
fn pressure_lost_at_rest_matches_the_reference() {
    packed_beds::gradients().settle("packed_bed.csv", 288);
}

#[wasm_bindgen_test]
fn voidages_come_back_from_pressures() {
    packings::voidages().settle("packed_bed.csv, from pressure to voidage", 288);
}

#[wasm_bindgen_test]
fn speeds_that_begin_to_lift_match_the_reference() {
    fluidisation::minima().settle("minimum_fluidisation.csv", 168);
}

#[wasm_bindgen_test]
fn voidages_of_lifted_beds_match_the_reference() {
    fluidisation::voidages().settle("fluidised.csv", 600);
}

#[wasm_bindgen_test]
fn falling_grains_match_the_reference() {
    fluidisation::settling().settle("terminal_speed.csv", 171);
}

#[wasm_bindgen_test]
fn gradings_match_the_reference() {
    gradings::gradings().settle("grading.csv", 298);
}

#[wasm_bindgen_test]
fn expansions_match_the_reference() {
    expansions::expansions().settle("expansion.csv", 585);
}

#[wasm_bindgen_test]
fn tape_readings_spread_as_random_vessels_and_bags_do() {
    tape_spreads::spreads().settle("tape_spread.csv", 102);
}

#[wasm_bindgen_test]
fn waters_and_what_calcite_does_to_them_match_phreeqc() {
    carbonates::waters().settle("carbonate.csv", 2676);
}

#[wasm_bindgen_test]
fn calcite_taken_up_in_contact_matches_phreeqc_s_kinetics() {
    contactors::beds().settle("contactor.csv", 60);
}

#[wasm_bindgen_test]
fn magnesia_in_passing_and_in_standing_matches_phreeqc() {
    contactors::magnesia().settle("magnesia.csv", 160);
}

#[wasm_bindgen_test]
fn lines_of_service_time_by_depth_match_numpy() {
    contactors::depth_lines().settle("bed_depth.csv", 48);
}

#[wasm_bindgen_test]
fn packs_cost_what_the_general_solver_says() {
    packs::packings().settle("packs.csv", 500);
}

#[wasm_bindgen_test]
fn pieces_take_as_few_lengths_as_the_general_solver_says() {
    packs::cuts().settle("cutting.csv", 500);
}

#[wasm_bindgen_test]
fn quantiles_of_student_s_t_match_the_reference() {
    lives::quantiles().settle("student_t.csv", 171);
}

#[wasm_bindgen_test]
fn places_of_readings_match_the_reference() {
    lives::places().settle("calibration.csv", 607);
}

#[wasm_bindgen_test]
fn curves_of_spent_beds_match_the_reference() {
    lives::curves().settle("spent.csv", 755);
}

#[wasm_bindgen_test]
fn media_lost_matches_the_reference() {
    lives::losses().settle("media_loss.csv", 80);
}

#[wasm_bindgen_test]
fn balances_come_out_as_they_do_with_units_in_python() {
    balances::balances().settle("balances.csv", 208);
}

/// Told, not judged.
#[wasm_bindgen_test]
fn packs_of_fifty_vessels_are_chosen_while_somebody_waits() {
    let begun = js_sys::Date::now();
    let rounds = 20;
    for _ in 0..rounds {
        assert_eq!(packs::fifty_vessels(), (4_771_020, 991), "as the general solver has it");
    }
    let each = (js_sys::Date::now() - begun) / f64::from(rounds);
    wasm_bindgen_test::console_log!("packs of fifty vessels and six materials in wasm: {each} ms");
}

#[wasm_bindgen_test]
fn quotes_come_to_the_same_in_every_digit() {
    quotes::sums().settle("quote.csv", 14_228);
}
