//! The tables of formulas and of what they are compared with.

use std::fmt::Write as _;

use super::{Sources, Table, id_enum, variant};

/// What is compared with; its ids.
pub fn checks(out: &mut String) -> Vec<String> {
    let table = Table::read("checks.csv");
    let checks = table.ids("");
    id_enum(out, "Check", "Something outside that our results are compared with: a row of `checks.csv`.", &checks);
    let _ = writeln!(out, "static CHECKS: &[CheckRow] = &[");
    for (line, row) in &table.rows {
        let way = table.one_of(*line, row, "way", &["outside", "again"]);
        let of = table.one_of(*line, row, "of", &["rows", "vessels", "currencies"]);
        let _ = writeln!(
            out,
            "    CheckRow {{ with: {:?}, way: CheckWay::{}, file: {:?}, count: {}, of: Counted::{} }},",
            table.filled(*line, row, "with"),
            variant(way),
            table.filled(*line, row, "file"),
            table.whole(*line, row, "count"),
            variant(of),
        );
    }
    let _ = writeln!(out, "];");
    checks
}

/// Formulas, each with its source, its checks and the noun of what it gives.
pub fn formulas(out: &mut String, sources: &Sources, checks: &[String]) {
    let table = Table::read("formulas.csv");
    id_enum(out, "Formula", "How a figure was reached: a row of `formulas.csv`.", &table.ids(""));
    let _ = writeln!(out, "static FORMULAS: &[FormulaRow] = &[");
    for (line, row) in &table.rows {
        // A noun that isn't one stops the compiler.
        let gives = match table.text(*line, row, "gives") {
            "" => "None".to_owned(),
            noun => format!("Some(Term::{})", variant(noun)),
        };
        let checked: Vec<String> = match table.filled(*line, row, "checked") {
            "none" => Vec::new(),
            ids => ids
                .split(' ')
                .map(|id| {
                    if !checks.iter().any(|check| check == id) {
                        table.stop(*line, "checked", &format!("“{id}” is no check in checks.csv"));
                    }
                    format!("Check::{}", variant(id))
                })
                .collect(),
        };
        let _ = writeln!(
            out,
            "    FormulaRow {{ statement: {:?}, source: {}, checks: &[{}], gives: {gives} }},",
            table.filled(*line, row, "statement"),
            sources.check(&table, *line, row, "source"),
            checked.join(", "),
        );
    }
    let _ = writeln!(out, "];");
}
