//! The scripts beside the page say everything in three languages.

use std::collections::BTreeSet;

use super::{root, text};

/// What stands between double quotes in a script and is meant for people: it begins with a capital and holds a space or ends
/// as a sentence. Names of the browser's own (`Content-Type`) do neither.
fn told(script: &str) -> BTreeSet<String> {
    let script = text(&root().join("public").join(script));
    let code: Vec<&str> = script.lines().filter(|line| !line.trim_start().starts_with("//")).collect();
    let strings = code.join("\n");
    let strings = strings.split('"').skip(1).step_by(2);
    strings
        .filter(|told| told.starts_with(char::is_uppercase) && (told.contains(' ') || told.ends_with('.')))
        .map(str::to_owned)
        .collect()
}

#[test]
fn every_sentence_of_the_scripts_beside_the_page_stands_in_three_languages() {
    let sentences = text(&root().join("public/sentences.js"));
    // `"English": [`, in one line or its first.
    let english: BTreeSet<String> = sentences
        .lines()
        .filter_map(|line| Some(line.trim().strip_prefix('"')?.split_once("\": [")?.0.to_owned()))
        .collect();
    assert!(english.len() > 20, "{english:?}");
    let said: BTreeSet<String> = ["boot.js", "crash.js", "inside.js"].into_iter().flat_map(told).collect();
    let missing: Vec<&String> = said.difference(&english).collect();
    assert!(missing.is_empty(), "in English only: {missing:#?}");
    let spare: Vec<&String> = english.iter().filter(|each| each.contains(' ') && !said.contains(*each)).collect();
    assert!(spare.is_empty(), "nobody says: {spare:#?}");
    // Each stands twice more: Spanish, then French.
    let table = &sentences[sentences.find("OTHERS = {").unwrap()..sentences.find("function chosen").unwrap()];
    assert_eq!(table.matches('"').count(), english.len() * 6, "an English sentence stands with two others");
}
