//! How the person at this device likes things: kept on the device, never in a job.

use bedwright_job::id::Id;
use bedwright_job::words::{Language, Manner};

/// The key it is kept under.
pub const KEY: &str = "bedwright/person";

/// Which paper is in the printer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PaperSize {
    /// US Letter.
    Letter,
    /// ISO A4.
    A4,
}

/// Light or dark.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Theme {
    /// As the device.
    System,
    /// Light.
    Light,
    /// Dark.
    Dark,
}

/// A person's ways.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Person {
    /// Inches or millimetres.
    pub metric: bool,
    /// Point or comma.
    pub decimal: char,
    /// Paper in the printer.
    pub paper: PaperSize,
    /// Light or dark.
    pub theme: Theme,
    /// This device's name in revisions.
    pub device: Id,
}

impl Person {
    /// What the browser suggests for somebody new.
    pub fn new(device: Id) -> Person {
        let american = bedwright_edge::intl::languages()
            .first()
            .is_none_or(|language| language == "en" || language.ends_with("-US"));
        let comma = bedwright_edge::intl::number_marks().is_some_and(|marks| marks.decimal == ",");
        Person {
            metric: !american,
            decimal: if comma { ',' } else { '.' },
            paper: if american { PaperSize::Letter } else { PaperSize::A4 },
            theme: Theme::System,
            device,
        }
    }

    /// How this person reads.
    pub fn manner(&self) -> Manner {
        Manner { language: Language::English, metric: self.metric, decimal: self.decimal }
    }

    /// As it is kept.
    pub fn text(&self) -> String {
        let paper = match self.paper {
            PaperSize::Letter => "letter",
            PaperSize::A4 => "a4",
        };
        let theme = match self.theme {
            Theme::System => "system",
            Theme::Light => "light",
            Theme::Dark => "dark",
        };
        let units = if self.metric { "metric" } else { "us" };
        format!("1 {} {units} {} {paper} {theme}", self.device, if self.decimal == ',' { "comma" } else { "point" })
    }

    /// From what was kept; words that aren't known are left at what the browser suggests.
    pub fn read(text: &str) -> Option<Person> {
        let mut words = text.split_whitespace();
        if words.next()? != "1" {
            return None;
        }
        let mut person = Person::new(Id::new(words.next()?));
        for word in words {
            match word {
                "metric" => person.metric = true,
                "us" => person.metric = false,
                "comma" => person.decimal = ',',
                "point" => person.decimal = '.',
                "letter" => person.paper = PaperSize::Letter,
                "a4" => person.paper = PaperSize::A4,
                "light" => person.theme = Theme::Light,
                "dark" => person.theme = Theme::Dark,
                "system" => person.theme = Theme::System,
                _ => {}
            }
        }
        Some(person)
    }
}
