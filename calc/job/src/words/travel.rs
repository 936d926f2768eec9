//! What is said of a job that travels: why it isn't taken, what it holds, what is not the same.

mod difference;

use super::label::{TravelLabel, labels, names};
use super::{Label, LoadingLabel, Manner, PriceLabel, QuoteLabel, SupplyLabel};
use crate::envelope::{Damage, FrameFault, Part, Receiver};
use crate::join::{Changed, Unjoined};
use crate::saved::Unreadable;
use crate::sections::SectionName;

pub use difference::DifferenceWords;

names! {
/// What a part of a job is called.
PartName of Part {
    Vessels = "Vessels as surveyed" / "Recipientes como se midieron" / "Cuves telles que relevées",
    Layers = "Layers" / "Capas" / "Couches",
    Site = "Site, water and what was seen of the beds"
        / "Lugar, agua y lo que se vio de los lechos"
        / "Site, eau et ce qui a été vu des lits",
    Packs = "Packs, cutting, pallets, lines left out"
        / "Envases, cortes, palés, líneas omitidas"
        / "Conditionnements, coupes, palettes, lignes omises",
    Prices = "Part numbers, bins and prices"
        / "Referencias, ubicaciones y precios"
        / "Références, emplacements et prix",
    Quote = "The quote being made" / "La oferta en curso" / "Le devis en cours",
    Issued = "Quotes that were issued" / "Ofertas emitidas" / "Devis émis",
    Picking = "Pick list and what was picked"
        / "Lista de recogida y lo recogido"
        / "Liste de prélèvement et ce qui a été prélevé",
    Loading = "Removal and loading, with signatures"
        / "Vaciado y carga, con firmas"
        / "Vidange et chargement, avec signatures",
    Visits = "Visits and changeouts" / "Visitas y cambios de lecho" / "Visites et remplacements",
}}

names! {
/// Whom a job is for.
ReceiverName of Receiver {
    Colleague = "A colleague" / "Un colega" / "Un collègue",
    Warehouse = "The warehouse" / "El almacén" / "Le magasin",
    Contractor = "Who loads" / "Quien carga" / "Qui charge",
    Technician = "Who services" / "Quien da servicio" / "Qui entretient",
    Customer = "The customer" / "El cliente" / "Le client",
}}

names! {
/// Why a code isn't taken, and what to do.
FrameFaultSays of FrameFault {
    OtherThing = "This code holds something else."
        / "Este código contiene otra cosa."
        / "Ce code contient autre chose.",
    Changed = "This code could not be read whole. Hold on until it comes round again."
        / "Este código no se pudo leer entero. Espere a que vuelva a pasar."
        / "Ce code n’a pas pu être lu en entier. Attendez qu’il repasse.",
    OtherJob = "This code belongs to another job. Begin again to read that one."
        / "Este código es de otro trabajo. Empiece de nuevo para leer aquel."
        / "Ce code est d’un autre chantier. Recommencez pour lire celui-là.",
    OtherSending = "This code belongs to another sending of the same job. Begin again to read that one."
        / "Este código es de otro envío del mismo trabajo. Empiece de nuevo para leer aquel."
        / "Ce code est d’un autre envoi du même chantier. Recommencez pour lire celui-là.",
}}

impl Manner {
    /// Why something that was sent isn't taken, and what to do.
    #[must_use]
    pub fn damage(&self, damage: &Damage) -> String {
        let plain = |label: TravelLabel| self.label(label).to_owned();
        match damage {
            Damage::Cut => plain(TravelLabel::DamageCut),
            Damage::Changed => plain(TravelLabel::DamageChanged),
            Damage::Letter { letter, at } => self.sentence(
                TravelLabel::DamageLetter,
                &[("at", &at.to_string()), ("letter", letter.encode_utf8(&mut [0; 4]))],
            ),
            Damage::OtherThing => plain(TravelLabel::DamageOther),
            Damage::TooNew { .. } | Damage::NoJob(Unreadable::TooNew { .. }) => plain(TravelLabel::DamageTooNew),
            Damage::TooLong { bytes } | Damage::NoJob(Unreadable::TooLong { letters: bytes }) => {
                let million = self.decimal(*bytes as f64 / 1e6, 1);
                self.sentence(TravelLabel::DamageTooLong, &[("million", &million)])
            }
            Damage::TooDeep => plain(TravelLabel::DamageTooDeep),
            Damage::TooMany => plain(TravelLabel::DamageTooMany),
            Damage::NoJob(Unreadable::NotJson { line, column }) => self
                .sentence(TravelLabel::DamageNotJson, &[("line", &line.to_string()), ("column", &column.to_string())]),
            Damage::NoJob(Unreadable::OtherFormat) => plain(TravelLabel::DamageOtherFormat),
            Damage::NoJob(Unreadable::Lacks { .. }) => plain(TravelLabel::DamageLacks),
        }
    }

    /// Why two jobs can't be joined.
    #[must_use]
    pub fn unjoined(&self, why: &Unjoined) -> String {
        match why {
            Unjoined::OtherJob => self.label(TravelLabel::OtherJob).to_owned(),
            Unjoined::Section(name) => self.sentence(TravelLabel::NoSense, &[("section", self.section(name))]),
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
            Some(SectionName::Site) => self.label(Part::Site),
            Some(SectionName::Quote) => self.label(QuoteLabel::Quote),
            Some(SectionName::Loading) => self.label(LoadingLabel::Loading),
            Some(SectionName::Supply) => self.label(SupplyLabel::Packs),
            Some(SectionName::Prices) => self.label(PriceLabel::Title),
            Some(SectionName::Kit) => self.label(Label::BillOfMaterials),
            Some(SectionName::Search) => self.label(TravelLabel::SectionSearch),
            None => self.label(TravelLabel::SectionLater),
        }
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
            "loading" => self.label(LoadingLabel::Loading),
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
        let holds: Vec<&str> = parts.iter().map(|part| self.label(*part)).collect();
        let mut lines = vec![title.to_owned()];
        if !from.is_empty() {
            lines.push(self.sentence(TravelLabel::CoverFrom, &[("from", from)]));
        }
        lines.push(self.sentence(TravelLabel::CoverHolds, &[("parts", &holds.join("; "))]));
        lines.push(self.label(TravelLabel::CoverHow).to_owned());
        lines.push(String::new());
        lines.join("\n")
    }

    /// Which frames are missing: "1 of 3 read. Still missing: 2, 3."
    #[must_use]
    pub fn missing_frames(&self, missing: &[usize], count: usize) -> String {
        let numbers: Vec<String> = missing.iter().map(usize::to_string).collect();
        let read = count.saturating_sub(missing.len());
        self.sentence(
            TravelLabel::FramesMissing,
            &[("read", &read.to_string()), ("count", &count.to_string()), ("numbers", &numbers.join(", "))],
        )
    }

    /// Where a shown frame stands: "2 of 5".
    #[must_use]
    pub fn frame_of(&self, number: usize, count: usize) -> String {
        self.sentence(TravelLabel::FrameOf, &[("number", &number.to_string()), ("count", &count.to_string())])
    }
}
