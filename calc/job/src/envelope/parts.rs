//! What of a job may be sent or left, as a person ticks it.

use serde_json::Value;

use super::Contents;
use crate::as_loaded;
use crate::care::happened;
use crate::evidence;
use crate::picked;
use crate::saved::ISSUED;
use crate::sections::SectionName;

/// A part of a job: sections, and records that belong to them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Part {
    /// The vessels as they were surveyed.
    Vessels,
    /// Their layers.
    Layers,
    /// The site's water, what each bed is asked to do, what was seen of it, what vessels are looked for.
    Site,
    /// How material is bought, cut, lifted and stacked, and which lines are left out.
    Packs,
    /// Part numbers, bins and prices.
    Prices,
    /// The pick list's ticks, and what was picked.
    Picking,
    /// The quote as it is being made. It is nothing without its costs.
    Quote,
    /// Quotes that were issued.
    Issued,
    /// What was read and signed when beds were taken out and loaded.
    Loading,
    /// Visits, and what happened to beds since.
    Visits,
}

impl Part {
    /// All of them, in the order of the work.
    pub const ALL: &'static [Part] = &[
        Part::Vessels,
        Part::Layers,
        Part::Site,
        Part::Packs,
        Part::Prices,
        Part::Quote,
        Part::Issued,
        Part::Picking,
        Part::Loading,
        Part::Visits,
    ];

    /// The sections it is made of.
    #[must_use]
    pub const fn sections(self) -> &'static [SectionName] {
        match self {
            Part::Vessels => &[SectionName::Survey],
            Part::Layers => &[SectionName::Plan],
            Part::Site => &[SectionName::Site, SectionName::Search],
            Part::Packs => &[SectionName::Supply, SectionName::Kit],
            Part::Prices => &[SectionName::Prices],
            Part::Picking => &[SectionName::Picking],
            Part::Quote => &[SectionName::Quote],
            Part::Loading => &[SectionName::Loading],
            Part::Issued | Part::Visits => &[],
        }
    }

    /// The kinds of its records.
    #[must_use]
    pub const fn records(self) -> &'static [&'static str] {
        match self {
            Part::Site => evidence::RECORDS,
            Part::Picking => &[picked::KIND],
            Part::Issued => &[ISSUED],
            Part::Loading => as_loaded::RECORDS,
            Part::Visits => happened::RECORDS,
            Part::Vessels | Part::Layers | Part::Packs | Part::Prices | Part::Quote => &[],
        }
    }

    /// Whether a record belongs to it.
    #[must_use]
    pub fn has_record(self, record: &Value) -> bool {
        record.get("kind").and_then(Value::as_str).is_some_and(|kind| self.records().contains(&kind))
    }

    /// Whether it is nothing but costs and what is made of them.
    #[must_use]
    pub const fn is_costs(self) -> bool {
        matches!(self, Part::Quote)
    }
}

/// Whom a job is sent to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Receiver {
    /// Somebody who goes on with the offer.
    Colleague,
    /// Who pulls and stages.
    Warehouse,
    /// Who takes the old bed out and loads the new one.
    Contractor,
    /// Who looks after the bed from then on.
    Technician,
    /// Who pays for it.
    Customer,
}

impl Receiver {
    /// All of them.
    pub const ALL: &'static [Receiver] =
        &[Receiver::Colleague, Receiver::Warehouse, Receiver::Contractor, Receiver::Technician, Receiver::Customer];

    /// What they usually need.
    #[must_use]
    pub const fn parts(self) -> &'static [Part] {
        match self {
            Receiver::Colleague => Part::ALL,
            Receiver::Warehouse => &[Part::Vessels, Part::Layers, Part::Site, Part::Packs, Part::Prices, Part::Picking],
            Receiver::Contractor => &[Part::Vessels, Part::Layers, Part::Site, Part::Packs, Part::Loading],
            Receiver::Technician => &[Part::Vessels, Part::Layers, Part::Site, Part::Loading, Part::Visits],
            Receiver::Customer => &[Part::Vessels, Part::Layers, Part::Site, Part::Issued],
        }
    }

    /// Whether costs and margins go along until somebody says otherwise.
    #[must_use]
    pub const fn costs(self) -> bool {
        matches!(self, Receiver::Colleague)
    }

    /// The paper they usually land on, by the last part of its address; empty for the job's own screen.
    #[must_use]
    pub const fn lands_on(self) -> &'static str {
        match self {
            Receiver::Colleague | Receiver::Technician => "",
            Receiver::Warehouse => "picking",
            Receiver::Contractor => "loading",
            Receiver::Customer => "quote",
        }
    }
}

impl Contents {
    /// Some parts, with or without costs.
    #[must_use]
    pub fn of(parts: &[Part], costs: bool, lands_on: &str) -> Contents {
        let some: Vec<Part> = parts.iter().copied().filter(|part| costs || !part.is_costs()).collect();
        let whole = costs && Part::ALL.iter().all(|part| some.contains(part));
        if whole {
            return Contents { lands_on: lands_on.to_owned(), ..Contents::whole() };
        }
        let mut contents = Contents {
            sections: vec![SectionName::Head],
            records: Some(Vec::new()),
            costs,
            lands_on: lands_on.to_owned(),
            ..Contents::whole()
        };
        for part in some {
            contents.sections.extend(part.sections());
            if let Some(records) = &mut contents.records {
                records.extend(part.records().iter().map(|kind| (*kind).to_owned()));
            }
        }
        contents
    }
}
