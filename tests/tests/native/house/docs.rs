//! What every engineering function says of itself, and where a number of a table may come from.

use super::{files_in, none, said, text};

/// A public function of `calc` that returns a `Result`: its name and its documentation.
fn fallible_functions() -> Vec<(String, String, String)> {
    let mut found = Vec::new();
    for path in files_in("calc/src", ".rs") {
        let mut doc = String::new();
        let source = text(&path);
        let lines: Vec<&str> = source.lines().collect();
        for (number, line) in lines.iter().enumerate() {
            let line = line.trim();
            if let Some(comment) = line.strip_prefix("///") {
                doc.push_str(comment.trim());
                doc.push('\n');
            } else if line.starts_with("#[") || line.starts_with("//") {
                // Attributes and comments stand between a documentation and what it documents.
            } else {
                if line.starts_with("pub fn ") || line.starts_with("pub const fn ") {
                    // The signature goes on until its body opens.
                    let signature: String =
                        lines[number..].iter().take_while(|line| !line.trim_end().ends_with('{')).copied().collect();
                    let signature = signature
                        + lines[number..].iter().find(|line| line.trim_end().ends_with('{')).copied().unwrap_or("");
                    let returns = signature.rsplit_once(") ->").map_or("", |(_, returns)| returns);
                    if returns.trim_start().starts_with("Result<") || returns.trim_start().starts_with("Option<Result<")
                    {
                        found.push((said(&path), line.to_owned(), doc.clone()));
                    }
                }
                doc.clear();
            }
        }
    }
    found
}

#[test]
fn every_function_that_can_fail_says_how_whence_and_shows_a_case() {
    let functions = fallible_functions();
    assert!(functions.len() >= 10, "only {} functions found", functions.len());
    let mut breaches = Vec::new();
    for (path, line, doc) in functions {
        for section in ["# Errors", "# Sources", "# Example"] {
            if !doc.lines().any(|line| line == section) {
                breaches.push(format!("{path}: {line} has no {section}"));
            }
        }
    }
    none("documentation of fallible functions", &breaches);
}

/// `source` columns are checked by the build script, which stops the build; here only that every table has one.
#[test]
fn every_table_says_where_its_rows_come_from() {
    let breaches: Vec<String> = files_in("calc/data", ".csv")
        .iter()
        // A check is what its column `with` says, and no value that comes from anywhere.
        .filter(|path| !path.ends_with("sources.csv") && !path.ends_with("checks.csv"))
        .filter(|path| {
            !text(path).lines().next().unwrap_or_default().split(',').any(|column| column.ends_with("source"))
        })
        .map(|path| said(path))
        .collect();
    none("a table without a source column", &breaches);
}

#[test]
fn every_reference_row_names_its_source() {
    let mut breaches = Vec::new();
    for path in files_in("tests/reference", ".csv") {
        let table = text(&path);
        let mut lines = table.lines();
        let header: Vec<&str> = lines.next().unwrap_or_default().split(',').collect();
        let Some(column) = header.iter().position(|name| *name == "source") else {
            breaches.push(format!("{}: no source column", said(&path)));
            continue;
        };
        for (number, line) in lines.enumerate() {
            if line.split(',').nth(column).unwrap_or_default().is_empty() {
                breaches.push(format!("{}:{}", said(&path), number + 2));
            }
        }
    }
    none("reference rows without a source", &breaches);
}
