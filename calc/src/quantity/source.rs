//! Where a value or an equation comes from.

struct SourceRow {
    title: &'static str,
    issuer: &'static str,
    edition: &'static str,
    page: &'static str,
    standing: Standing,
}

include!(concat!(env!("OUT_DIR"), "/sources.rs"));

/// How far a source can be relied on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// A person typed it.
    Typed,
    /// Follows by arithmetic from its inputs.
    Derived,
    /// Stands in a published document.
    Published,
    /// Produced or listed by a public general-purpose library.
    Library,
    /// Common practice in the trade; no document.
    Practice,
    /// From memory; not verified.
    Memory,
}

impl Source {
    fn row(self) -> Option<&'static SourceRow> {
        SOURCES.get(self as usize)
    }

    /// Title of the document.
    #[must_use]
    pub fn title(self) -> &'static str {
        self.row().map_or("", |row| row.title)
    }

    /// Who issued it.
    #[must_use]
    pub fn issuer(self) -> &'static str {
        self.row().map_or("", |row| row.issuer)
    }

    /// Edition or year.
    #[must_use]
    pub fn edition(self) -> &'static str {
        self.row().map_or("", |row| row.edition)
    }

    /// Page, table or clause.
    #[must_use]
    pub fn page(self) -> &'static str {
        self.row().map_or("", |row| row.page)
    }

    /// How far it can be relied on.
    #[must_use]
    pub fn standing(self) -> Standing {
        self.row().map_or(Standing::Memory, |row| row.standing)
    }
}
