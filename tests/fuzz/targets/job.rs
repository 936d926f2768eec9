//! A job file.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| bedwright_fuzz::job::holds(bytes));
