//! Our results against the reference tables; sources and tolerances stand in the tables and in their README.

use bedwright_tests::{digest, heads, sieves, vessels};

#[test]
fn volumes_below_heights_match_the_reference() {
    vessels::volumes().settle("vessel_volume.csv", 1257);
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

/// Test vectors of FNV-1a 64 from RFC 9923, appendix C: the empty text, "a" and "foobar".
#[test]
fn a_digest_changes_with_any_bit() {
    assert_eq!(digest::fnv_1a([]), 0xcbf2_9ce4_8422_2325);
    assert_eq!(digest::fnv_1a(*b"a"), 0xaf63_dc4c_8601_ec8c);
    assert_eq!(digest::fnv_1a(*b"foobar"), 0x8594_4171_f739_67e8);
    assert_ne!(digest::of(&[1.0]), digest::of(&[1.0 + f64::EPSILON]));
    assert_ne!(digest::of(&[0.0]), digest::of(&[-0.0]));
}
