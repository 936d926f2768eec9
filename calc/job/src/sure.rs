//! How sure the figures are: every formula with its source and what it was compared with, and everything that is from
//! memory or common practice.

mod doubts;

use bedwright_calc::quantity::{Assumption, Check, CheckWay, Counted, Formula, Source, Standing};

use crate::words::{Manner, SureLabel};

/// A part of the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// What is from memory.
    Memory,
    /// What is common practice.
    Practice,
    /// Every formula.
    Formulas,
    /// What is compared with.
    Checks,
}

impl Part {
    /// All of them, in the order of the page: first what nobody can rely on.
    pub const ALL: &'static [Part] = &[Part::Memory, Part::Practice, Part::Formulas, Part::Checks];

    /// What it is called, and what its columns are.
    #[must_use]
    pub const fn headings(self) -> (SureLabel, [SureLabel; 4]) {
        use SureLabel as L;
        match self {
            Part::Memory => (L::Memory, [L::What, L::Value, L::UsedAs, L::Comes]),
            Part::Practice => (L::Practice, [L::What, L::Value, L::UsedAs, L::Comes]),
            Part::Formulas => (L::Every, [L::Gives, L::Equation, L::Comes, L::Held]),
            Part::Checks => (L::With, [L::What, L::Held, L::Size, L::Said]),
        }
    }
}

/// A line of the page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// The permanent id of what it is of.
    pub key: String,
    /// What stands in its columns.
    pub cells: [String; 4],
    /// Whether the second column is an equation.
    pub equation: bool,
}

/// The lines of a part.
#[must_use]
pub fn lines(part: Part, manner: Manner) -> Vec<Line> {
    match part {
        Part::Memory => doubts::doubts(Standing::Memory, manner),
        Part::Practice => doubts::doubts(Standing::Practice, manner),
        Part::Formulas => formulas().map(|formula| of_formula(formula, manner)).collect(),
        Part::Checks => Check::ALL.iter().map(|check| of_check(*check, manner)).collect(),
    }
}

/// The formulas: what was typed has none.
fn formulas() -> impl Iterator<Item = Formula> {
    Formula::ALL.iter().copied().filter(|formula| formula.source().standing() != Standing::Typed)
}

fn of_formula(formula: Formula, manner: Manner) -> Line {
    let held: Vec<String> = formula.checks().iter().map(|check| held_by(*check, manner)).collect();
    let held = if held.is_empty() { manner.label(SureLabel::OwnTests).to_owned() } else { held.join(" · ") };
    let cells =
        [manner.formula(formula).to_owned(), formula.statement().to_owned(), manner.source(formula.source()), held];
    Line { key: formula.id().to_owned(), cells, equation: true }
}

fn held_by(check: Check, manner: Manner) -> String {
    match check.way() {
        CheckWay::Outside => check.with().to_owned(),
        CheckWay::Again => manner.sentence(SureLabel::Again, &[("what", manner.label(check)), ("with", check.with())]),
    }
}

fn of_check(check: Check, manner: Manner) -> Line {
    let (count, of) = check.count();
    let size = match of {
        Counted::Rows => SureLabel::Rows,
        Counted::Vessels => SureLabel::Sheets,
        Counted::Currencies => SureLabel::Currencies,
    };
    let says = match check.way() {
        CheckWay::Outside => SureLabel::SaysOutside,
        CheckWay::Again => SureLabel::SaysAgain,
    };
    let cells = [
        manner.label(check).to_owned(),
        check.with().to_owned(),
        manner.sentence(size, &[("count", &count.to_string())]),
        manner.label(says).to_owned(),
    ];
    Line { key: check.id().to_owned(), cells, equation: false }
}

/// How many formulas and numbers there are of each kind.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Counts {
    /// All formulas.
    pub formulas: usize,
    /// Those that follow by arithmetic or a definition.
    pub arithmetic: usize,
    /// Rules of our own.
    pub own: usize,
    /// Published ones.
    pub published: usize,
    /// Those of public libraries.
    pub library: usize,
    /// Common practice.
    pub practice: usize,
    /// From memory.
    pub memory: usize,
    /// Formulas compared with values from outside.
    pub outside: usize,
    /// Formulas that are only worked again.
    pub again: usize,
    /// Formulas that only our own tests hold.
    pub none: usize,
    /// Numbers that are assumed or draw a limit.
    pub numbers: usize,
    /// Those of them from memory.
    pub numbers_memory: usize,
    /// Those of them that are common practice.
    pub numbers_practice: usize,
}

impl Counts {
    /// Counted from the tables.
    #[must_use]
    pub fn all() -> Counts {
        let mut counts = Counts::default();
        for formula in formulas() {
            counts.formulas += 1;
            let source = formula.source();
            let kind = match source.standing() {
                _ if source == Source::OwnRule => &mut counts.own,
                Standing::Derived | Standing::Typed => &mut counts.arithmetic,
                Standing::Published => &mut counts.published,
                Standing::Library => &mut counts.library,
                Standing::Practice => &mut counts.practice,
                Standing::Memory => &mut counts.memory,
            };
            *kind += 1;
            let held = match formula.best_check() {
                Some(CheckWay::Outside) => &mut counts.outside,
                Some(CheckWay::Again) => &mut counts.again,
                None => &mut counts.none,
            };
            *held += 1;
        }
        for number in Assumption::ALL {
            counts.numbers += 1;
            counts.numbers_memory += usize::from(number.source().standing() == Standing::Memory);
            counts.numbers_practice += usize::from(number.source().standing() == Standing::Practice);
        }
        counts
    }
}

/// How sure the figures are, in a few sentences.
#[must_use]
pub fn summary(manner: Manner) -> Vec<String> {
    let counts = Counts::all();
    let say = |pattern: SureLabel, places: &[(&str, usize)]| {
        let texts: Vec<(&str, String)> = places.iter().map(|(name, count)| (*name, count.to_string())).collect();
        let places: Vec<(&str, &str)> = texts.iter().map(|(name, text)| (*name, text.as_str())).collect();
        manner.sentence(pattern, &places)
    };
    vec![
        say(
            SureLabel::Formulas,
            &[
                ("count", counts.formulas),
                ("arithmetic", counts.arithmetic),
                ("own", counts.own),
                ("published", counts.published),
                ("library", counts.library),
                ("practice", counts.practice),
                ("memory", counts.memory),
            ],
        ),
        say(SureLabel::Compared, &[("outside", counts.outside), ("again", counts.again), ("none", counts.none)]),
        say(
            SureLabel::Numbers,
            &[("count", counts.numbers), ("memory", counts.numbers_memory), ("practice", counts.numbers_practice)],
        ),
        manner.label(SureLabel::Advice).to_owned(),
    ]
}

#[cfg(test)]
mod tests;
