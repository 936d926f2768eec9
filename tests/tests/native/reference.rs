//! Our results against the reference tables; sources and tolerances stand in the tables and in their README.

use bedwright_tests::{
    balances, carbonates, contactors, digest, expansions, fluidisation, gradings, heads, lives, packed_beds, packs,
    quotes, sieves, tape_spreads, vessels, water,
};

#[test]
fn volumes_below_heights_match_the_reference() {
    vessels::volumes().settle("vessel_volume.csv", 1257);
}

#[test]
fn what_vessels_hold_up_to_the_rim_matches_the_reference() {
    vessels::capacities().settle("vessel_volume.csv, at the rim", 44);
}

#[test]
fn heights_holding_volumes_match_the_reference() {
    vessels::heights().settle("vessel_height.csv", 262);
}

#[test]
fn a_volume_turned_into_its_height_comes_back() {
    vessels::inverses().settle("vessel_volume.csv, there and back", 1257);
}

#[test]
fn heads_match_fifty_digits() {
    heads::shapes().settle("head_shape.csv", 18);
}

#[test]
fn sieves_match_the_standard() {
    sieves::openings().settle("sieve.csv", 27);
}

#[test]
fn water_matches_the_reference() {
    water::properties().settle("water.csv", 298);
}

#[test]
fn pressure_lost_at_rest_matches_the_reference() {
    packed_beds::gradients().settle("packed_bed.csv", 288);
}

#[test]
fn speeds_that_begin_to_lift_match_the_reference() {
    fluidisation::minima().settle("minimum_fluidisation.csv", 168);
}

#[test]
fn voidages_of_lifted_beds_match_the_reference() {
    fluidisation::voidages().settle("fluidised.csv", 600);
}

#[test]
fn falling_grains_match_the_reference() {
    fluidisation::settling().settle("terminal_speed.csv", 171);
}

#[test]
fn gradings_match_the_reference() {
    gradings::gradings().settle("grading.csv", 298);
}

#[test]
fn expansions_match_the_reference() {
    expansions::expansions().settle("expansion.csv", 585);
}

#[test]
fn tape_readings_spread_as_random_vessels_and_bags_do() {
    tape_spreads::spreads().settle("tape_spread.csv", 102);
}

#[test]
fn waters_and_what_calcite_does_to_them_match_phreeqc() {
    carbonates::waters().settle("carbonate.csv", 2676);
}

#[test]
fn calcite_taken_up_in_contact_matches_phreeqc_s_kinetics() {
    contactors::beds().settle("contactor.csv", 60);
}

#[test]
fn magnesia_in_passing_and_in_standing_matches_phreeqc() {
    contactors::magnesia().settle("magnesia.csv", 160);
}

#[test]
fn lines_of_service_time_by_depth_match_numpy() {
    contactors::depth_lines().settle("bed_depth.csv", 48);
}

#[test]
fn packs_cost_what_the_general_solver_says() {
    packs::packings().settle("packs.csv", 500);
}

#[test]
fn pieces_take_as_few_lengths_as_the_general_solver_says() {
    packs::cuts().settle("cutting.csv", 500);
}

#[test]
fn quantiles_of_student_s_t_match_the_reference() {
    lives::quantiles().settle("student_t.csv", 171);
}

#[test]
fn places_of_readings_match_the_reference() {
    lives::places().settle("calibration.csv", 607);
    lives::runs().settle("calibration.csv", 72);
}

#[test]
fn curves_of_spent_beds_match_the_reference() {
    lives::curves().settle("spent.csv", 755);
}

#[test]
fn media_lost_matches_the_reference() {
    lives::losses().settle("media_loss.csv", 80);
}

/// Costs and counts of 306 choices, as `packs_speed.py` prints them with scipy 1.17.1.
#[test]
fn packs_of_fifty_vessels_are_those_of_the_general_solver() {
    assert_eq!(packs::fifty_vessels(), (4_771_020, 991));
}

#[test]
fn balances_come_out_as_they_do_with_units_in_python() {
    balances::balances().settle("balances.csv", 208);
}

#[test]
fn quotes_come_to_the_same_in_every_digit() {
    quotes::sums().settle("quote.csv", 14_228);
}

/// Test vectors of FNV-1a 64 from RFC 9923, appendix C: the empty text, "a" and "foobar".
#[test]
fn a_digest_changes_with_any_bit() {
    assert_eq!(digest::fnv_1a([]), 0xcbf2_9ce4_8422_2325);
    assert_eq!(digest::fnv_1a(*b"a"), 0xaf63_dc4c_8601_ec8c);
    assert_eq!(digest::fnv_1a(*b"foobar"), 0x8594_4171_f739_67e8);
    assert_ne!(digest::of(&[1.0]), digest::of(&[1.0 + f64::EPSILON]));
    assert_ne!(digest::of(&[0.0]), digest::of(&[-0.0]));
}
