//! A price list as a file.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| bedwright_fuzz::price_csv::holds(bytes));
