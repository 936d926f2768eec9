//! What the data says of its checks is so: the file is there, its count is right, `tests/run` runs it, and something rests
//! on it.

use bedwright_calc::quantity::{Check, CheckWay, Counted, Formula, Standing};

use super::{files_in, none, root, text};

/// Rows of a file below its header.
fn rows(path: &str) -> usize {
    text(&root().join(path)).lines().count() - 1
}

/// Whether a layer of `tests/run` that everybody runs begins with this.
fn runs(layer: &str, command: &str) -> bool {
    let run = text(&root().join("tests/run"));
    let body = run.split(&format!("layer_{layer}() {{")).nth(1).and_then(|rest| rest.split("\n}").next());
    let default = run.lines().find(|line| line.starts_with("DEFAULT=")).unwrap_or_default();
    default.contains(layer) && body.is_some_and(|body| body.contains(command))
}

#[test]
fn every_check_names_a_file_that_is_there_and_is_run() {
    let native = runs("native", "--lib --test native");
    let journeys = runs("journeys", "--test journeys");
    let outside = runs("outside", "tests/reference/generate.py --check");
    assert!(native && journeys && outside);
    let makers = text(&root().join("tests/reference/generate.py")) + &text(&root().join("tests/reference/textbook.py"));
    let readers: Vec<String> = ["tests/src", "tests/tests/native"]
        .iter()
        .flat_map(|folder| files_in(folder, ".rs"))
        .filter(|path| !path.ends_with("house/checks.rs"))
        .map(|path| text(&path))
        .collect();
    let mut breaches = Vec::new();
    for check in Check::ALL {
        let file = check.file();
        if !root().join(file).is_file() {
            breaches.push(format!("{}: no file {file}", check.id()));
            continue;
        }
        let name = file.rsplit('/').next().unwrap_or(file);
        let stem = name.split('.').next().unwrap_or(name);
        let there = match name.rsplit('.').next() {
            // A table: read by a native test, and made or recomputed by the outside libraries.
            Some("csv") => {
                readers.iter().any(|reader| {
                    reader.contains(&format!("reference/{name}\"))"))
                        || reader.contains(&format!("reference/{name}\");"))
                }) && (makers.contains(&format!("import {stem}\n")) || makers.contains(name))
            }
            // A program that a journey asks, or a journey.
            Some("py") => files_in("tests/tests/journeys", ".rs").iter().any(|path| text(path).contains(name)),
            _ => text(&root().join("tests/tests/journeys/main.rs")).contains(&format!("mod {stem};")),
        };
        if !there {
            breaches.push(format!("{}: nothing runs {file}", check.id()));
        }
    }
    none("a check is a file that tests/run runs", &breaches);
}

#[test]
fn the_counts_said_of_checks_are_those_of_their_files() {
    let mut breaches = Vec::new();
    for check in Check::ALL {
        let (said, of) = check.count();
        let found = match of {
            Counted::Rows => rows(check.file()),
            // Every currency of the data stands in the journey.
            Counted::Currencies => {
                let journey = text(&root().join(check.file()));
                let ids = text(&root().join("calc/data/currencies.csv"));
                let codes = ids.lines().skip(1).filter_map(|line| line.split(',').next());
                codes.filter(|code| journey.contains(&format!("(\"{code}\", "))).count()
            }
            // Held by the test that lays the sheets out.
            Counted::Vessels => continue,
        };
        if found != said as usize {
            breaches.push(format!("{}: {said} said, {found} in {}", check.id(), check.file()));
        }
    }
    none("counts are those of the files", &breaches);
}

/// Nothing is lost on the way to the page, and what has no formula of its own is known by name.
#[test]
fn a_check_either_holds_a_formula_or_is_of_what_has_none() {
    let without =
        [Check::Sieves, Check::Packs, Check::Cutting, Check::Quotes, Check::StudentT, Check::Spent, Check::Currencies];
    for check in Check::ALL {
        let holds = Formula::ALL.iter().any(|formula| formula.checks().contains(check));
        assert_eq!(holds, !without.contains(check), "{}", check.id());
    }
}

/// The table of balances names its formulas itself.
#[test]
fn the_formulas_of_the_balances_are_those_of_their_table() {
    let table = text(&root().join(Check::Balances.file()));
    for formula in Formula::ALL {
        let there = table.lines().any(|line| line.split(',').nth(2) == Some(formula.id()));
        assert_eq!(there, formula.checks().contains(&Check::Balances), "{}", formula.id());
    }
}

/// A formula from memory is not known better because its arithmetic was worked again.
#[test]
fn no_formula_from_memory_is_said_to_be_compared_with_an_outside_value_of_itself() {
    let hopeful: Vec<&str> = Formula::ALL
        .iter()
        .filter(|formula| formula.source().standing() == Standing::Memory)
        .filter(|formula| formula.best_check() == Some(CheckWay::Outside))
        .map(|formula| formula.id())
        .collect();
    // The line of bed depth and service time: that it is a least-squares line is checked, that beds follow it is not.
    assert_eq!(hopeful, ["bed_depth_service_time", "critical_depth"]);
}
