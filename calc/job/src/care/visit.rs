//! A visit: what somebody read at a vessel on a day. A record; what was wrong is withdrawn by another one.

use bedwright_calc::fill::SurfaceState;
use serde_json::Value;

use crate::day::Day;
use crate::entry::{Dimension, Entry, Misread, Unit};
use crate::evidence::{Evidence, EvidenceKind};
use crate::id::Id;
use crate::job::Record;
use crate::saved::fields::{Taken, Written};
use crate::sections::survey::ids;

/// What a record of this kind says it is.
pub const VISIT: &str = "visit";

/// The unit a test at inlet and outlet reads in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TestUnit {
    /// Milligrams per litre.
    MilligramPerLitre,
    /// Parts per million: of water the same as milligrams per litre.
    PartPerMillion,
    /// Grains per US gallon, as CaCO₃.
    GrainPerGallon,
    /// German degrees of hardness.
    GermanDegree,
    /// Nephelometric turbidity units.
    TurbidityUnit,
    /// pH.
    Ph,
}

ids!(TestUnit {
    MilligramPerLitre = "mg_L",
    PartPerMillion = "ppm",
    GrainPerGallon = "gpg",
    GermanDegree = "dH",
    TurbidityUnit = "ntu",
    Ph = "ph",
});

impl TestUnit {
    /// As the trade writes it.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            TestUnit::MilligramPerLitre => "mg/L",
            TestUnit::PartPerMillion => "ppm",
            TestUnit::GrainPerGallon => "gpg",
            TestUnit::GermanDegree => "°dH",
            TestUnit::TurbidityUnit => "NTU",
            TestUnit::Ph => "pH",
        }
    }

    /// How many milligrams per litre one is; hardness as CaCO₃. Nothing where it counts something else.
    ///
    /// A grain is 64.798 91 mg, a US gallon 3.785 411 784 L (NIST SP 811, appendix B); a German degree is 10 mg/L of CaO,
    /// times 100.0869/56.0774 as CaCO₃.
    #[must_use]
    pub const fn milligrams_per_litre(self) -> Option<f64> {
        match self {
            TestUnit::MilligramPerLitre | TestUnit::PartPerMillion => Some(1.0),
            TestUnit::GrainPerGallon => Some(64.798_91 / 3.785_411_784),
            TestUnit::GermanDegree => Some(10.0 * 100.0869 / 56.0774),
            TestUnit::TurbidityUnit | TestUnit::Ph => None,
        }
    }
}

/// How the water at the drain looked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Drain {
    /// Clear at the end of the backwash.
    Clear,
    /// Still cloudy.
    Cloudy,
}

ids!(Drain { Clear = "clear", Cloudy = "cloudy" });

/// A number somebody reads on a visit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum VisitField {
    /// What the meter shows.
    Meter,
    /// Test of the inlet.
    Inlet,
    /// Test of the outlet.
    Outlet,
    /// Pressure before the vessel.
    PressureIn,
    /// Pressure after it.
    PressureOut,
    /// Time since the filter was washed.
    SinceWash,
    /// Flow at the drain, by bucket and watch.
    DrainFlow,
    /// How long the drain was watched.
    DrainMinutes,
    /// The water's temperature.
    Temperature,
    /// From the datum down to the surface, valve off.
    Tape,
    /// Salt that was filled in.
    Salt,
}

ids!(VisitField {
    Meter = "meter",
    Inlet = "inlet",
    Outlet = "outlet",
    PressureIn = "pressure_in",
    PressureOut = "pressure_out",
    SinceWash = "since_wash",
    DrainFlow = "drain_flow",
    DrainMinutes = "drain_minutes",
    Temperature = "temperature",
    Tape = "tape",
    Salt = "salt",
});

impl VisitField {
    /// What kind of quantity it is.
    #[must_use]
    pub const fn dimension(self) -> Dimension {
        match self {
            VisitField::Meter => Dimension::Volume,
            VisitField::Inlet | VisitField::Outlet => Dimension::Ratio,
            VisitField::PressureIn | VisitField::PressureOut => Dimension::Pressure,
            VisitField::DrainFlow => Dimension::VolumeFlow,
            VisitField::DrainMinutes | VisitField::SinceWash => Dimension::Time,
            VisitField::Temperature => Dimension::Temperature,
            VisitField::Tape => Dimension::Length,
            VisitField::Salt => Dimension::Mass,
        }
    }
}

/// What a test showed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Test {
    /// The number, in the visit's unit; what is detected at the least where nothing was.
    pub value: f64,
    /// Whether nothing was detected down to it: typed with a `<` before it.
    pub below: bool,
}

impl Test {
    /// Whether something was found.
    #[must_use]
    pub fn found(self) -> bool {
        !self.below && self.value > 0.0
    }

    /// What it counts as: nothing where nothing was found.
    #[must_use]
    pub fn counted(self) -> f64 {
        if self.below { 0.0 } else { self.value }
    }
}

/// What somebody read at a vessel on a day.
#[derive(Clone, Debug, PartialEq)]
pub struct Visit {
    /// The record's id.
    pub id: Id,
    /// The day, as `2026-11-24`.
    pub day: String,
    /// When it was written down, in UTC as ISO 8601 writes it; what was written down first on a day comes first.
    pub at: String,
    /// The vessel.
    pub vessel: Id,
    /// Its tag; empty where it has none.
    pub tag: String,
    /// Who read; empty where nobody said.
    pub by: String,
    /// The unit of the two tests.
    pub unit: TestUnit,
    /// The numbers, as typed, in the order of the fields.
    pub entries: Vec<(VisitField, Entry)>,
    /// How the drain looked.
    pub drain: Option<Drain>,
    /// Whether grains came.
    pub grains: Option<bool>,
    /// Whether something leaks.
    pub leak: Option<bool>,
    /// The state of the surface the tape was read to.
    pub state: SurfaceState,
    /// How the valve is set.
    pub settings: String,
    /// Anything else.
    pub notes: String,
}

impl Visit {
    /// A visit on which nothing was read yet.
    #[must_use]
    pub fn new(id: Id, day: String, vessel: Id, tag: String, unit: TestUnit) -> Visit {
        Visit {
            id,
            day,
            at: String::new(),
            vessel,
            tag,
            by: String::new(),
            unit,
            entries: Vec::new(),
            drain: None,
            grains: None,
            leak: None,
            state: SurfaceState::SettledAtOpening,
            settings: String::new(),
            notes: String::new(),
        }
    }

    /// Whether it says anything at all.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        self.entries.is_empty()
            && (self.drain, self.grains, self.leak) == (None, None, None)
            && self.settings.is_empty()
            && self.notes.is_empty()
    }

    /// One of its numbers, as typed.
    #[must_use]
    pub fn entry(&self, field: VisitField) -> Option<&Entry> {
        self.entries.iter().find(|(there, _)| *there == field).map(|(_, entry)| entry)
    }

    /// Puts a number into its place, or takes it away where it is blank.
    pub fn put(&mut self, field: VisitField, entry: Option<Entry>) {
        self.entries.retain(|(there, _)| *there != field);
        if let Some(entry) = entry.filter(|entry| !entry.text.trim().is_empty()) {
            let at = self.entries.partition_point(|(there, _)| *there < field);
            self.entries.insert(at, (field, entry));
        }
    }

    /// The day it was made on; nothing where what was written is none.
    #[must_use]
    pub fn date(&self) -> Option<Day> {
        Day::of(&self.day)
    }

    /// One of its numbers in SI; nothing where it wasn't read, or makes no sense.
    #[must_use]
    pub fn number(&self, field: VisitField) -> Option<f64> {
        read_number(field, self.entry(field)?).ok()
    }

    /// A test; nothing where it wasn't made, or makes no sense.
    #[must_use]
    pub fn test(&self, field: VisitField) -> Option<Test> {
        read_test(self.entry(field)?).ok()
    }

    /// The backwash that was watched, where it was measured: flow, temperature, and whether grains came.
    #[must_use]
    pub fn drain_check(&self) -> Option<Evidence> {
        Some(Evidence {
            id: self.id.clone(),
            kind: EvidenceKind::DrainCheck,
            day: self.day.clone(),
            vessel: self.vessel.clone(),
            layer: None,
            flow: self.entry(VisitField::DrainFlow)?.clone(),
            temperature: self.entry(VisitField::Temperature)?.clone(),
            minutes: Some(self.entry(VisitField::DrainMinutes)?.clone()),
            grains: self.grains?,
            expansion: None,
            drop: None,
            of_visit: true,
        })
    }

    /// It as a record of a job.
    #[must_use]
    pub fn record(&self) -> Record {
        let mut fields = Written::default();
        fields.text("id", self.id.as_str());
        fields.text("kind", VISIT);
        fields.text("day", &self.day);
        fields.text_unless_empty("at", &self.at);
        fields.text("vessel", self.vessel.as_str());
        fields.text_unless_empty("tag", &self.tag);
        fields.text_unless_empty("by", &self.by);
        if self.entry(VisitField::Inlet).is_some() || self.entry(VisitField::Outlet).is_some() {
            fields.text("test_unit", self.unit.id());
        }
        for (field, entry) in &self.entries {
            fields.entry(field.id(), Some(entry));
        }
        if self.entry(VisitField::Tape).is_some() {
            fields.text("state", self.state.id());
        }
        if let Some(drain) = self.drain {
            fields.text("drain", drain.id());
        }
        for (key, flag) in [("grains", self.grains), ("leak", self.leak)] {
            if let Some(flag) = flag {
                fields.put(key, flag.into());
            }
        }
        fields.text_unless_empty("settings", &self.settings);
        fields.text_unless_empty("notes", &self.notes);
        Record { id: self.id.clone(), value: fields.whole() }
    }

    /// The visit that a record tells; nothing where it is of another kind, or of a shape this version doesn't know.
    #[must_use]
    pub fn of(record: &Record) -> Option<Visit> {
        let text = |key: &str| record.value.get(key).and_then(Value::as_str);
        if text("kind") != Some(VISIT) {
            return None;
        }
        let mut fields = Taken::of(record.value.clone());
        let mut visit = Visit::new(
            record.id.clone(),
            fields.text("day"),
            fields.id("vessel"),
            fields.text_or_empty("tag"),
            text("test_unit").and_then(TestUnit::of).unwrap_or(TestUnit::MilligramPerLitre),
        );
        visit.at = fields.text_or_empty("at");
        visit.by = fields.text_or_empty("by");
        for &field in VisitField::ALL {
            visit.put(field, fields.entry(field.id()));
        }
        visit.state = text("state").and_then(SurfaceState::of).unwrap_or(SurfaceState::SettledAtOpening);
        visit.drain = text("drain").and_then(Drain::of);
        visit.grains = record.value.get("grains").and_then(Value::as_bool);
        visit.leak = record.value.get("leak").and_then(Value::as_bool);
        visit.settings = fields.text_or_empty("settings");
        visit.notes = fields.text_or_empty("notes");
        fields.rest().ok().map(|_| visit)
    }
}

/// What a number of a visit means, in SI. A test keeps its own unit.
///
/// # Errors
/// Why it is no number of this kind.
pub fn read_number(field: VisitField, entry: &Entry) -> Result<f64, Misread> {
    if matches!(field, VisitField::Inlet | VisitField::Outlet) {
        return read_test(entry).map(Test::counted);
    }
    let understood = entry.understood()?;
    if understood.dimension == field.dimension() {
        Ok(understood.si)
    } else {
        Err(Misread::WrongDimension { found: understood.written, wanted: field.dimension() })
    }
}

/// What a test showed: a number, or a `<` and what it detects at the least.
///
/// # Errors
/// Why it is no number.
pub fn read_test(entry: &Entry) -> Result<Test, Misread> {
    let text = entry.text.trim_start();
    let (below, rest) = match text.strip_prefix('<') {
        Some(rest) => (true, rest),
        None => (false, text),
    };
    let understood = Entry { text: rest.to_owned(), unit: Unit::One, meaning: entry.meaning }.understood()?;
    if understood.dimension == Dimension::Ratio && understood.written == Unit::One {
        Ok(Test { value: understood.si, below })
    } else {
        Err(Misread::WrongDimension { found: understood.written, wanted: Dimension::Ratio })
    }
}
