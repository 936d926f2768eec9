//! How the person at this device likes things: kept on the device, never in a job.

use bedwright_job::id::Id;
use bedwright_job::words::language::is_here;
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
    /// The language this person reads.
    pub language: Language,
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
    /// What the person is called, beside what they tick and under what they sign; empty until typed.
    pub name: String,
    /// The company that this person's own papers are of; empty until typed.
    pub company: String,
    /// Its address, a line each.
    pub address: String,
}

impl Person {
    /// What the browser suggests for somebody new.
    pub fn new(device: Id) -> Person {
        let languages = bedwright_edge::intl::languages();
        let american = languages.first().is_none_or(|language| language == "en" || language.ends_with("-US"));
        let comma = bedwright_edge::intl::number_marks().is_some_and(|marks| marks.decimal == ",");
        Person {
            language: Language::best_of(languages.iter().map(String::as_str)),
            metric: !american,
            decimal: if comma { ',' } else { '.' },
            paper: if american { PaperSize::Letter } else { PaperSize::A4 },
            theme: Theme::System,
            device,
            name: String::new(),
            company: String::new(),
            address: String::new(),
        }
    }

    /// How this person reads.
    pub fn manner(&self) -> Manner {
        // Texts that could not be had are shown in English.
        let language = if is_here(self.language) { self.language } else { Language::English };
        Manner { language, metric: self.metric, decimal: self.decimal }
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
        let mark = if self.decimal == ',' { "comma" } else { "point" };
        let mut text = format!("1 {} {units} {mark} {paper} {theme} {}", self.device, self.language.tag());
        // On lines of their own, since they may hold any of the words.
        let (name, company, address) = (self.name.trim(), self.company.trim(), self.address.trim());
        if ![name, company, address].concat().is_empty() {
            text.push_str(&["\n", name, "\n", company, "\n", address].concat());
        }
        text
    }

    /// From what was kept; words that aren't known are left at what the browser suggests.
    pub fn read(text: &str) -> Option<Person> {
        let (words, rest) = text.split_once('\n').unwrap_or((text, ""));
        let mut words = words.split_whitespace();
        if words.next()? != "1" {
            return None;
        }
        let mut person = Person::new(Id::new(words.next()?));
        let mut lines = rest.splitn(3, '\n');
        for place in [&mut person.name, &mut person.company, &mut person.address] {
            lines.next().unwrap_or_default().trim().clone_into(place);
        }
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
                other => person.language = Language::of_tag(other).unwrap_or(person.language),
            }
        }
        Some(person)
    }
}
