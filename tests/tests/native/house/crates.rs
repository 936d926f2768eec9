//! Which crate may use what, and what the lock may hold.

use std::collections::BTreeMap;
use std::process::Command;

use serde_json::Value;

use super::{none, root};

fn metadata() -> Value {
    let output = Command::new(env!("CARGO"))
        .current_dir(root())
        .args(["metadata", "--locked", "--format-version", "1"])
        .output()
        .unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    serde_json::from_slice(&output.stdout).unwrap()
}

fn packages(metadata: &Value) -> &Vec<Value> {
    metadata["packages"].as_array().unwrap()
}

fn name(package: &Value) -> &str {
    package["name"].as_str().unwrap()
}

/// Our own crates, by name, with the names of what each depends on when it runs or builds (`dev` left out).
fn own(metadata: &Value) -> BTreeMap<String, Vec<String>> {
    packages(metadata)
        .iter()
        .filter(|package| package["source"].is_null())
        .map(|package| {
            let dependencies = package["dependencies"]
                .as_array()
                .unwrap()
                .iter()
                .filter(|dependency| dependency["kind"].as_str() != Some("dev"))
                .map(|dependency| name(dependency).to_owned())
                .collect();
            (name(package).to_owned(), dependencies)
        })
        .collect()
}

#[test]
fn each_crate_depends_only_on_what_its_layer_may() {
    let metadata = metadata();
    let own = own(&metadata);
    let expected = [
        "bedwright-app",
        "bedwright-bundle",
        "bedwright-calc",
        "bedwright-edge",
        "bedwright-floor",
        "bedwright-job",
        "bedwright-reader",
        "bedwright-tests",
    ];
    assert_eq!(own.keys().collect::<Vec<_>>(), expected);
    let mut breaches = Vec::new();
    for (from, dependencies) in &own {
        for to in dependencies {
            let browser = to == "web-sys" || to == "js-sys" || to.starts_with("wasm-bindgen");
            let wrong = match from.as_str() {
                "bedwright-calc" => to.starts_with("bedwright-") || to.starts_with("serde") || browser,
                "bedwright-job" => (to.starts_with("bedwright-") && to != "bedwright-calc") || browser,
                "bedwright-edge" => to == "bedwright-app",
                // It writes the texts of the other languages into files of their own.
                "bedwright-bundle" => to.starts_with("bedwright-") && to != "bedwright-job",
                "bedwright-reader" => to.starts_with("bedwright-"),
                _ => false,
            } || (to.starts_with("leptos")
                && !["bedwright-app", "bedwright-floor"].contains(&from.as_str()))
                || (to.starts_with("gloo") && from != "bedwright-edge");
            if wrong {
                breaches.push(format!("{from} → {to}"));
            }
        }
    }
    none("calc ← calc/job ← app, app/edge; leptos only in app, gloo only in app/edge", &breaches);
}

/// What `calc` pulls in when it runs: neither serde nor anything of the browser, at any depth.
#[test]
fn nothing_of_the_outside_reaches_calc_by_a_detour() {
    let metadata = metadata();
    let nodes = metadata["resolve"]["nodes"].as_array().unwrap();
    let id_of = |wanted: &str| {
        packages(&metadata).iter().find(|package| name(package) == wanted).unwrap()["id"].as_str().unwrap()
    };
    let names: BTreeMap<&str, &str> =
        packages(&metadata).iter().map(|package| (package["id"].as_str().unwrap(), name(package))).collect();
    // rust_decimal brings serde for the job's sake; calc itself never names it. All else is followed.
    let mut waiting = vec![id_of("bedwright-calc")];
    let mut seen = Vec::new();
    while let Some(id) = waiting.pop() {
        if seen.contains(&id) {
            continue;
        }
        seen.push(id);
        if names[id] == "rust_decimal" {
            continue;
        }
        let node = nodes.iter().find(|node| node["id"].as_str() == Some(id)).unwrap();
        for dependency in node["deps"].as_array().unwrap() {
            let runs = dependency["dep_kinds"].as_array().unwrap().iter().any(|kind| kind["kind"].is_null());
            if runs {
                waiting.push(dependency["pkg"].as_str().unwrap());
            }
        }
    }
    let breaches: Vec<String> = seen
        .iter()
        .map(|id| names[id].to_owned())
        .filter(|name| {
            name.starts_with("serde")
                || name.starts_with("wasm-bindgen")
                || name == "web-sys"
                || name == "js-sys"
                || name == "getrandom"
        })
        .collect();
    none("what calc pulls in", &breaches);
}

#[test]
fn there_is_one_leptos_and_one_wasm_bindgen() {
    let metadata = metadata();
    for single in
        ["leptos", "wasm-bindgen", "web-sys", "js-sys", "reactive_graph", "serde", "libm", "uom", "rust_decimal"]
    {
        let versions: Vec<&str> = packages(&metadata)
            .iter()
            .filter(|package| name(package) == single)
            .map(|package| package["version"].as_str().unwrap())
            .collect();
        assert!(versions.len() <= 1, "{single}: {versions:?}");
    }
    assert_eq!(packages(&metadata).iter().filter(|package| name(package) == "wasm-bindgen").count(), 1);
}

#[test]
fn the_test_runner_speaks_the_wasm_bindgen_that_is_linked() {
    let metadata = metadata();
    let linked = packages(&metadata).iter().find(|package| name(package) == "wasm-bindgen").unwrap()["version"]
        .as_str()
        .unwrap();
    let manifest = std::fs::read_to_string(root().join("tests/runner/Cargo.toml")).unwrap();
    assert!(manifest.contains(&format!("\"={linked}\"")), "tests/runner is not at {linked}");
}

/// Names and versions in a lock file.
fn locked(file: &str) -> Vec<(String, String)> {
    let text = std::fs::read_to_string(root().join(file)).unwrap();
    let value = |line: Option<&str>| line.and_then(|line| line.split('"').nth(1)).unwrap_or_default().to_owned();
    let packages = text.split("[[package]]").skip(1);
    packages.map(|package| (value(package.lines().nth(1)), value(package.lines().nth(2)))).collect()
}

/// The fuzzer has a lock of its own: what it goes through must be what ships, and it must not be shipped itself.
#[test]
fn what_is_fuzzed_is_what_ships() {
    let (ships, fuzzed) = (locked("Cargo.lock"), locked("tests/fuzz/Cargo.lock"));
    assert!(fuzzed.iter().any(|(name, _)| name == "bedwright-job"));
    let breaches: Vec<String> = fuzzed
        .iter()
        .filter(|(name, _)| ships.iter().any(|(there, _)| there == name))
        .filter(|package| !ships.contains(package))
        .map(|(name, version)| format!("{name} {version} is fuzzed, another one ships"))
        .collect();
    none("tests/fuzz/Cargo.lock", &breaches);
    assert!(!ships.iter().any(|(name, _)| name == "libfuzzer-sys"));
}

#[test]
fn every_crate_comes_from_the_registry_or_this_workspace() {
    let metadata = metadata();
    let breaches: Vec<String> = packages(&metadata)
        .iter()
        .filter(|package| {
            !package["source"].is_null()
                && package["source"].as_str() != Some("registry+https://github.com/rust-lang/crates.io-index")
        })
        .map(|package| format!("{}: {}", name(package), package["source"]))
        .collect();
    none("sources of crates", &breaches);
}

/// Advisories can't be checked here: there is no database of them among the registries.
#[test]
fn every_licence_may_be_passed_on() {
    const ALLOWED: &[&str] = &[
        "MIT",
        "MIT-0",
        "Apache-2.0",
        "BSD-2-Clause",
        "BSD-3-Clause",
        "ISC",
        "Zlib",
        "0BSD",
        "Unlicense",
        "Unicode-3.0",
        "CC0-1.0",
        "BSL-1.0",
        "CDLA-Permissive-2.0",
        "Apache-2.0 WITH LLVM-exception",
    ];
    let metadata = metadata();
    let mut breaches = Vec::new();
    for package in packages(&metadata) {
        let licence = package["license"].as_str().unwrap_or_default();
        if !satisfied(licence, ALLOWED) {
            breaches.push(format!("{}: “{licence}”", name(package)));
        }
    }
    none("licences", &breaches);
}

/// Whether a licence expression can be met with the allowed ones: one side of each `OR`, both sides of each `AND`.
fn satisfied(expression: &str, allowed: &[&str]) -> bool {
    // The older way to write OR.
    let expression = expression.replace('/', " OR ");
    let expression = expression.trim();
    if let Some((before, after)) = split_outside(expression, " AND ") {
        return satisfied(before, allowed) && satisfied(after, allowed);
    }
    if let Some((before, after)) = split_outside(expression, " OR ") {
        return satisfied(before, allowed) || satisfied(after, allowed);
    }
    match expression.strip_prefix('(').and_then(|inner| inner.strip_suffix(')')) {
        Some(inner) => satisfied(inner, allowed),
        None => allowed.contains(&expression),
    }
}

/// Splits at the first `word` that stands outside brackets.
fn split_outside<'a>(expression: &'a str, word: &str) -> Option<(&'a str, &'a str)> {
    expression.match_indices(word).map(|(at, _)| at).find_map(|at| {
        let (before, after) = (&expression[..at], &expression[at + word.len()..]);
        (before.matches('(').count() == before.matches(')').count()).then_some((before, after))
    })
}

#[test]
fn a_licence_expression_is_read_as_it_is_meant() {
    let allowed = &["MIT", "Apache-2.0"];
    assert!(satisfied("MIT OR GPL-3.0", allowed));
    assert!(satisfied("MIT/Apache-2.0", allowed));
    assert!(satisfied("(MIT OR GPL-3.0) AND Apache-2.0", allowed));
    assert!(!satisfied("MIT AND GPL-3.0", allowed));
    assert!(!satisfied("", allowed));
}
