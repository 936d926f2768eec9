//! Prints what this build computes, boiled down, for another build to be compared with.

fn main() {
    println!("{}", bedwright_tests::digest::all());
}
