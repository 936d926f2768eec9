//! What is said of a job that travels: why it isn't taken, what it holds, what is not the same.

mod difference;

use super::label::TravelLabel;
use super::{CareLabel, Label, Language, Manner, PriceLabel, QuoteLabel, SupplyLabel};
use crate::envelope::{Damage, FrameFault, Part, Receiver};
use crate::join::{Changed, Unjoined};
use crate::saved::Unreadable;
use crate::sections::SectionName;

pub use difference::DifferenceWords;

impl Manner {
    /// Why something that was sent isn't taken, and what to do.
    #[must_use]
    pub fn damage(&self, damage: &Damage) -> String {
        let Language::English = self.language;
        match damage {
            Damage::Cut => {
                "Its end is missing: most likely a messenger cut a long link off. Ask for the file instead.".to_owned()
            }
            Damage::Changed => {
                "Something in it was changed on the way, or a piece is missing. Copy it again as a whole, or ask for the file."
                    .to_owned()
            }
            Damage::Letter { letter, at } => {
                format!("At its letter {at} stands “{letter}”, which no code has. Copy it again as a whole, or ask for the file.")
            }
            Damage::OtherThing => {
                "There is no job in it. Paste the whole link or message, or choose the file that was sent.".to_owned()
            }
            Damage::TooNew { .. } | Damage::NoJob(Unreadable::TooNew { .. }) => {
                "It was made by a later version of Bedwright. Update this page, then open it again.".to_owned()
            }
            Damage::TooLong { bytes } | Damage::NoJob(Unreadable::TooLong { letters: bytes }) => {
                let million = self.decimal(*bytes as f64 / 1e6, 1);
                format!("Unpacked it would be {million} million letters, more than any job. It is not opened.")
            }
            Damage::TooDeep => "Its lists stand in each other deeper than in any job. It is not opened.".to_owned(),
            Damage::TooMany => "It holds more values than any job. It is not opened.".to_owned(),
            Damage::NoJob(Unreadable::NotJson { line, column }) => {
                format!("The file makes no sense from line {line}, letter {column} on: it was cut or changed. Ask for it again.")
            }
            Damage::NoJob(Unreadable::OtherFormat) => "It is a file of something else.".to_owned(),
            Damage::NoJob(Unreadable::Lacks { .. }) => {
                "It lacks what every job has: it was cut or changed. Ask for it again.".to_owned()
            }
        }
    }

    /// Why a code isn't taken, and what to do.
    #[must_use]
    pub fn frame_fault(&self, fault: FrameFault) -> &'static str {
        let Language::English = self.language;
        match fault {
            FrameFault::OtherThing => "This code holds something else.",
            FrameFault::Changed => "This code could not be read whole. Hold on until it comes round again.",
            FrameFault::OtherJob => "This code belongs to another job. Begin again to read that one.",
            FrameFault::OtherSending => {
                "This code belongs to another sending of the same job. Begin again to read that one."
            }
        }
    }

    /// Why two jobs can't be joined.
    #[must_use]
    pub fn unjoined(&self, why: &Unjoined) -> String {
        let Language::English = self.language;
        match why {
            Unjoined::OtherJob => "They are two different jobs.".to_owned(),
            Unjoined::Section(name) => format!(
                "With these choices “{}” would not make sense. Choose one side for it, or keep both jobs.",
                self.section(name)
            ),
        }
    }

    /// What a section is called.
    #[must_use]
    pub fn section(&self, name: &str) -> &'static str {
        match SectionName::of(name) {
            Some(SectionName::Head) => self.label(TravelLabel::SectionHead),
            Some(SectionName::Survey) => self.label(Label::Survey),
            Some(SectionName::Plan) => self.label(Label::Layers),
            Some(SectionName::Picking) => self.label(Label::PickList),
            Some(SectionName::Site) => self.label(TravelLabel::PartSite),
            Some(SectionName::Quote) => self.label(TravelLabel::SectionQuote),
            Some(SectionName::Loading) => self.label(TravelLabel::SectionLoading),
            Some(SectionName::Supply) => self.label(SupplyLabel::Packs),
            Some(SectionName::Prices) => self.label(PriceLabel::Title),
            Some(SectionName::Kit) => self.label(Label::BillOfMaterials),
            Some(SectionName::Search) => self.label(TravelLabel::SectionSearch),
            None => self.label(TravelLabel::SectionLater),
        }
    }

    /// What a part of a job is called.
    #[must_use]
    pub fn part(&self, part: Part) -> &'static str {
        self.label(match part {
            Part::Vessels => TravelLabel::PartVessels,
            Part::Layers => TravelLabel::PartLayers,
            Part::Site => TravelLabel::PartSite,
            Part::Packs => TravelLabel::PartPacks,
            Part::Prices => TravelLabel::PartPrices,
            Part::Quote => TravelLabel::PartQuote,
            Part::Issued => TravelLabel::PartIssued,
            Part::Picking => TravelLabel::PartPicking,
            Part::Loading => TravelLabel::PartLoading,
            Part::Visits => TravelLabel::PartVisits,
        })
    }

    /// Whom a job is for.
    #[must_use]
    pub fn receiver(&self, receiver: Receiver) -> &'static str {
        self.label(match receiver {
            Receiver::Colleague => TravelLabel::Colleague,
            Receiver::Warehouse => TravelLabel::Warehouse,
            Receiver::Contractor => TravelLabel::Contractor,
            Receiver::Technician => TravelLabel::Technician,
            Receiver::Customer => TravelLabel::Customer,
        })
    }

    /// What a screen of a job is called, by the last part of its address.
    #[must_use]
    pub fn landing(&self, lands_on: &str) -> Option<&'static str> {
        Some(match lands_on {
            "" => self.label(TravelLabel::JobItself),
            "survey-sheet" => self.label(Label::SurveySheet),
            "calculation" => self.label(Label::CalculationSheet),
            "bill" => self.label(Label::BillOfMaterials),
            "quote" => self.label(QuoteLabel::Quote),
            "packs" => self.label(SupplyLabel::Packs),
            "picking" => self.label(Label::PickList),
            "labels" => self.label(SupplyLabel::Labels),
            "loading" => self.label(super::LoadingLabel::Loading),
            "due" => self.label(CareLabel::DueList),
            _ => return None,
        })
    }

    /// Who changed something.
    #[must_use]
    pub fn changed(&self, changed: Changed) -> &'static str {
        self.label(match changed {
            Changed::Here => TravelLabel::ChangedHere,
            Changed::There => TravelLabel::ChangedThere,
            Changed::Both => TravelLabel::ChangedBoth,
        })
    }

    /// What a message with a job says before the link.
    #[must_use]
    pub fn covering_text(&self, title: &str, parts: &[Part], from: &str) -> String {
        let Language::English = self.language;
        let holds: Vec<&str> = parts.iter().map(|part| self.part(*part)).collect();
        let by = if from.is_empty() { String::new() } else { format!("Sent by {from}.\n") };
        format!(
            "{title}\n{by}Holds: {}.\nTo open it: in Bedwright choose “{}” and open this file, or paste the line below. \
             Whoever has it can read it.\n",
            holds.join("; "),
            self.label(TravelLabel::Receive)
        )
    }

    /// Which frames are missing: "still missing: 2, 4".
    #[must_use]
    pub fn missing_frames(&self, missing: &[usize], count: usize) -> String {
        let Language::English = self.language;
        let numbers: Vec<String> = missing.iter().map(usize::to_string).collect();
        format!("{} of {count} read. Still missing: {}.", count - missing.len().min(count), numbers.join(", "))
    }

    /// Where a shown frame stands: "2 of 5".
    #[must_use]
    pub fn frame_of(&self, number: usize, count: usize) -> String {
        let Language::English = self.language;
        format!("{number} of {count}")
    }
}
