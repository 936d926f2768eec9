//! Boiling many values down to one number that changes with any bit of any of them.

use crate::{
    balances, beds, carbonates, contactors, expansions, fills, fluidisation, gradings, heads, lives, packed_beds,
    packings, packs, quotes, sieves, tape_spreads, vessels, water,
};

/// FNV-1a over 64 bits (Fowler, Noll, Vo; RFC 9923).
#[must_use]
pub fn fnv_1a(bytes: impl IntoIterator<Item = u8>) -> u64 {
    bytes
        .into_iter()
        .fold(0xcbf2_9ce4_8422_2325, |hash, byte| (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3))
}

/// The digest of values, bit by bit.
#[must_use]
pub fn of(values: &[f64]) -> u64 {
    fnv_1a(values.iter().flat_map(|value| value.to_bits().to_le_bytes()))
}

/// A digest for everything that is compared between native and wasm: name and value, `name=hex`, a comma between.
#[must_use]
pub fn all() -> String {
    [
        ("vessel_volume", vessels::volumes().values),
        ("vessel_height", vessels::heights().values),
        ("vessel_inverse", vessels::inverses().values),
        ("head_shape", heads::shapes().values),
        ("sieve", sieves::openings().values),
        ("water", water::properties().values),
        ("packed_bed", packed_beds::gradients().values),
        ("packing", packings::voidages().values),
        ("minimum_fluidisation", fluidisation::minima().values),
        ("fluidised", fluidisation::voidages().values),
        ("terminal_speed", fluidisation::settling().values),
        ("grading", gradings::gradings().values),
        ("expansion", expansions::expansions().values),
        ("tape_spread", tape_spreads::spreads().values),
        ("carbonate", carbonates::waters().values),
        ("contactor", contactors::beds().values),
        ("magnesia", contactors::magnesia().values),
        ("bed_depth", contactors::depth_lines().values),
        ("packs", packs::packings().values),
        ("cutting", packs::cuts().values),
        ("student_t", lives::quantiles().values),
        ("calibration", lives::places().values),
        ("spent", lives::curves().values),
        ("media_loss", lives::losses().values),
        ("balances", balances::balances().values),
        ("quote", quotes::sums().values),
        ("fills", fills::values()),
        ("beds", beds::values()),
    ]
    .iter()
    .map(|(name, values)| format!("{name}:{}={:016x}", values.len(), of(values)))
    .collect::<Vec<_>>()
    .join(",")
}
