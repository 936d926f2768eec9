//! Texts of the page and of the sheets, one code each, every language side by side.
//!
//! A table a screen, paper or kind of thing, in a file of its own: `labels! { PriceLabel { … } }`, and a line in the list
//! below. A text that is put together has named places: `"{what} is needed."`, filled by [`super::Manner::sentence`].
//! The compiler refuses a text that one language lacks, and places that differ between languages.

use super::language::{self, Language};

/// A code that has a text in every language.
pub trait Fixed: Copy {
    /// Its text.
    fn text(self, language: Language) -> &'static str;
}

/// A table of texts, and where it begins among all of them.
pub(super) trait Table {
    /// The number of its first text.
    const FIRST: usize;
}

/// How many languages a program holds by itself: see [`language`].
#[cfg(target_family = "wasm")]
pub(super) const HELD: usize = 1;
#[cfg(not(target_family = "wasm"))]
pub(super) const HELD: usize = 3;

/// A text in the languages that are held.
pub(super) type Row = [&'static str; HELD];

/// A text in every language, side by side. Stops the build where the places differ or a text has lines.
pub(super) const fn row(english: &'static str, spanish: &'static str, french: &'static str) -> Row {
    assert!(places::same(english, spanish), "the Spanish text has other places than the English");
    assert!(places::same(english, french), "the French text has other places than the English");
    #[cfg(target_family = "wasm")]
    return [english];
    #[cfg(not(target_family = "wasm"))]
    [english, spanish, french]
}

pub(super) fn text_at(table: &'static [Row], first: usize, at: usize, language: Language) -> &'static str {
    table.get(at).map_or("", |row| language::text(row, first + at, language))
}

macro_rules! labels {
    ($(#[$about:meta])* $name:ident { $($variant:ident = $english:literal / $spanish:literal / $french:literal),* $(,)? }) => {
        $(#[$about])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum $name {
            $(#[doc = $english] $variant),*
        }

        impl $name {
            // Worked out while the page is built: a text that isn't held isn't in it.
            pub(in crate::words) const TEXTS: &'static [$crate::words::label::Row] =
                &[$(const { $crate::words::label::row($english, $spanish, $french) }),*];
        }

        impl $crate::words::label::Fixed for $name {
            fn text(self, language: $crate::words::Language) -> &'static str {
                let first = <$name as $crate::words::label::Table>::FIRST;
                $crate::words::label::text_at($name::TEXTS, first, self as usize, language)
            }
        }
    };
}

/// What the values of a type of ours are called, all of them.
macro_rules! names {
    ($(#[$about:meta])* $name:ident of $of:ty { $($variant:ident = $english:literal / $spanish:literal / $french:literal),* $(,)? }) => {
        labels! { $(#[$about])* $name { $($variant = $english / $spanish / $french),* } }

        impl $crate::words::label::Fixed for $of {
            fn text(self, language: $crate::words::Language) -> &'static str {
                match self { $(<$of>::$variant => $name::$variant),* }.text(language)
            }
        }
    };
}

/// What some values of a type of ours need said, where their names don't say it.
macro_rules! hints {
    ($(#[$about:meta])* $name:ident of $of:ty { $($variant:ident = $english:literal / $spanish:literal / $french:literal),* $(,)? }) => {
        labels! { $(#[$about])* $name { $($variant = $english / $spanish / $french),* } }

        impl $name {
            /// What is said of a value; nothing of most.
            pub(in crate::words) const fn of(value: $of) -> Option<$name> {
                Some(match value { $(<$of>::$variant => $name::$variant,)* _ => return None })
            }
        }
    };
}

macro_rules! tables {
    ($($table:ty),* $(,)?) => {
        /// Every table, in order.
        pub(super) const TABLES: &[&[Row]] = &[$(<$table>::TEXTS),*];
        /// How many texts there are.
        pub(super) const COUNT: usize = 0 $(+ <$table>::TEXTS.len())*;
        tables!(@first 0; $($table,)*);
    };
    (@first $first:expr; $table:ty, $($rest:tt)*) => {
        impl Table for $table {
            const FIRST: usize = $first;
        }
        tables!(@first <$table as Table>::FIRST + <$table>::TEXTS.len(); $($rest)*);
    };
    (@first $first:expr;) => {};
}

mod bill;
pub mod calculation;
mod card;
mod care;
pub(super) mod care_text;
mod device;
pub(super) mod field;
mod keeping;
pub mod life;
pub mod loading;
pub(super) mod measure;
mod page;
pub(super) mod picture;
mod places;
pub(super) mod price_file;
mod prices;
pub(super) mod problem;
mod quote;
mod record;
mod search;
pub(super) mod statement;
pub(super) mod step;
pub(super) mod sure;
pub(super) mod term;
pub(super) mod thing;
mod top;
mod travel;
pub(super) mod verdict;
pub(super) mod water;

pub use bill::BillLabel;
pub use card::CardLabel;
pub use care::CareLabel;
pub use device::DeviceLabel;
pub use keeping::KeepingLabel;
pub use page::Label;
pub use prices::PriceLabel;
pub use quote::QuoteLabel;
pub use record::{CorrectionLabel, PhotoLabel};
pub use search::SearchLabel;
pub use sure::SureLabel;
pub use top::TopLabel;
pub use travel::TravelLabel;
pub(super) use {labels, names};

#[cfg(test)]
mod tests;

tables![
    Label,
    BillLabel,
    calculation::CalculationLabel,
    CardLabel,
    CareLabel,
    care_text::CareText,
    DeviceLabel,
    field::SurveyName,
    field::SurveyHint,
    KeepingLabel,
    life::LifeLabel,
    loading::LoadingLabel,
    CorrectionLabel,
    PhotoLabel,
    measure::TimeText,
    measure::FoundText,
    measure::YearText,
    measure::SupplyName,
    measure::ChosenText,
    picture::PictureText,
    picture::WindowText,
    picture::DrawingLabel,
    price_file::KindName,
    price_file::CareName,
    price_file::SizeText,
    price_file::ChargeName,
    price_file::ColumnName,
    price_file::PriceFault,
    PriceLabel,
    problem::MisreadText,
    problem::ProblemText,
    problem::CautionText,
    QuoteLabel,
    SearchLabel,
    statement::StatementText,
    sure::AssumptionName,
    sure::CheckName,
    sure::FormulaName,
    sure::SureLabel,
    step::LoadingCaution,
    step::StepText,
    step::ReadingText,
    super::supply::SupplyLabel,
    super::supply::ToolName,
    term::TermName,
    thing::PartName,
    thing::MaterialName,
    thing::CountName,
    thing::Joint,
    thing::MarkName,
    thing::BasisName,
    thing::SourceText,
    TopLabel,
    TravelLabel,
    super::travel::PartName,
    super::travel::ReceiverName,
    super::travel::FrameFaultSays,
    verdict::SubjectText,
    verdict::ReasonText,
    verdict::RemedyText,
    water::WaterName,
    water::WaterHint,
];
