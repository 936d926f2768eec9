//! An envelope, a link, codes, a message.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| bedwright_fuzz::envelope::holds(bytes));
