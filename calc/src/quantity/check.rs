//! What our results are compared with.

struct CheckRow {
    with: &'static str,
    way: CheckWay,
    file: &'static str,
    count: u32,
    of: Counted,
}

include!(concat!(env!("OUT_DIR"), "/checks.rs"));

/// How much a comparison says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CheckWay {
    /// With values of a library or a document that has the formula itself, or of another way to the same value.
    Outside,
    /// With the same formula worked again by another program: a slip in working it out is found, a wrong formula isn't.
    Again,
}

/// What is counted of a comparison.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Counted {
    /// Rows of a table of values.
    Rows,
    /// Vessels whose sheets are worked again line by line.
    Vessels,
    /// Currencies.
    Currencies,
}

impl Check {
    fn row(self) -> Option<&'static CheckRow> {
        CHECKS.get(self as usize)
    }

    /// What it compares with: proper names, with version or page.
    #[must_use]
    pub fn with(self) -> &'static str {
        self.row().map_or("", |row| row.with)
    }

    /// How much it says.
    #[must_use]
    pub fn way(self) -> CheckWay {
        self.row().map_or(CheckWay::Again, |row| row.way)
    }

    /// The table of values, or the test, in the repository.
    #[must_use]
    pub fn file(self) -> &'static str {
        self.row().map_or("", |row| row.file)
    }

    /// How much is compared, and of what.
    #[must_use]
    pub fn count(self) -> (u32, Counted) {
        self.row().map_or((0, Counted::Rows), |row| (row.count, row.of))
    }
}
