#![allow(clippy::unwrap_used, clippy::indexing_slicing)] // Tests say so by panicking.

use bedwright_calc::quantity::{Assumption, Formula, Standing};

use super::{Counts, Part, lines, summary};
use crate::words::{Language, Manner};

const LANGUAGES: [Language; 3] = [Language::English, Language::Spanish, Language::French];

fn manner(language: Language) -> Manner {
    Manner { language, ..Manner::default() }
}

#[test]
fn every_formula_and_every_doubted_number_has_a_name_in_every_language() {
    for language in LANGUAGES {
        let manner = manner(language);
        for formula in Formula::ALL {
            let name = manner.formula(*formula);
            assert!(
                !name.is_empty() && (formula.gives().is_some() || name != formula.id()),
                "{language:?}: {}",
                formula.id()
            );
        }
        for number in Assumption::ALL {
            if matches!(number.source().standing(), Standing::Practice | Standing::Memory) {
                assert_ne!(manner.assumption(*number), number.id(), "{language:?}");
            }
        }
    }
}

#[test]
fn every_line_has_all_its_cells() {
    for language in LANGUAGES {
        for part in Part::ALL {
            let lines = lines(*part, manner(language));
            assert!(lines.len() > 20, "{part:?}: {}", lines.len());
            for line in lines {
                assert!(line.cells.iter().all(|cell| !cell.trim().is_empty()), "{line:?}");
            }
        }
    }
}

/// Counted once more from the lines that are shown.
#[test]
fn the_sentences_count_what_the_lines_say() {
    let manner = manner(Language::English);
    let counts = Counts::all();
    let formulas = lines(Part::Formulas, manner);
    assert_eq!(formulas.len(), counts.formulas);
    let from = |text: &str| formulas.iter().filter(|line| line.cells[2] == text).count();
    assert_eq!((from("common practice"), from("from memory")), (counts.practice, counts.memory));
    assert!(counts.practice > 0 && counts.memory > 0);
    let held = |test: fn(&str) -> bool| formulas.iter().filter(|line| test(&line.cells[3])).count();
    assert_eq!(held(|text| text == "our own tests only"), counts.none);
    assert_eq!(held(|text| text.split(" · ").all(|part| part.starts_with("worked again"))), counts.again);
    assert_eq!(counts.outside + counts.again + counts.none, counts.formulas);
    let kinds = [counts.arithmetic, counts.own, counts.published, counts.library, counts.practice, counts.memory];
    assert_eq!(kinds.iter().sum::<usize>(), counts.formulas);
    let said = summary(manner);
    assert!(said[0].starts_with(&format!("{} formulas: ", counts.formulas)), "{}", said[0]);
    assert!(said[1].starts_with(&format!("{} of them ", counts.outside)), "{}", said[1]);
}

#[test]
fn what_is_from_memory_says_so_and_nothing_else_is_among_it() {
    let lines = lines(Part::Memory, manner(Language::English));
    assert!(lines.iter().all(|line| line.cells[3] == "from memory"));
    let of = |used: &str| lines.iter().filter(|line| line.cells[2] == used).count();
    assert_eq!(of("formula"), Counts::all().memory);
    assert_eq!(of("number assumed, or limit"), Counts::all().numbers_memory);

    assert!(of("rule of a purpose") >= 4 && of("data of a material") >= 20 && of("table to choose from") == 3);
    let grains = lines.iter().filter(|line| line.cells[1].contains("bulk density ")).count();
    assert_eq!(grains, 21, "rows of materials.csv whose bulk density is from memory");
}
