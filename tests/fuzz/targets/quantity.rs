//! A typed quantity.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| bedwright_fuzz::quantity::holds(bytes));
