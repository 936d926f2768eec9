//! What a quote says besides its fixed texts.

use bedwright_calc::quantity::{Figure, Mass, Time, Volume, VolumeRate};
use bedwright_calc::supply::quote::LineStanding;
use bedwright_calc::supply::{Halves, JobKind, Money};
use rust_decimal::Decimal;

use super::choices::kind as kind_label;
use super::label::measure::YearText;
use super::{Manner, QuoteLabel};
use crate::entry::Unit;
use crate::field::{LineField, QuoteField};
use crate::quote::{FieldFault, PriceFrom, Refusal, decimal_text};
use crate::sections::quote::PriceBy;

impl Manner {
    /// An amount of money, at least so many places of it, digits in groups of three.
    #[must_use]
    pub fn money(&self, money: Money, places: u32) -> String {
        self.grouped(&decimal_text(money.value(), places))
    }

    /// An exact figure as short as it can be.
    #[must_use]
    pub fn exact(&self, value: Decimal) -> String {
        self.grouped(&decimal_text(value, 0))
    }

    /// A share in per cent, exact.
    #[must_use]
    pub fn exact_percent(&self, share: Decimal) -> String {
        let hundredfold = Money::new(share).times(100).map(Money::value).unwrap_or_default();
        [&self.grouped(&decimal_text(hundredfold, 0)), " %"].concat()
    }

    /// Digits in groups: commas where the decimal mark is a point, thin spaces where it is a comma.
    fn grouped(&self, text: &str) -> String {
        let (sign, unsigned) = match text.strip_prefix('-') {
            Some(rest) => ("−", rest),
            None => ("", text),
        };
        let (whole, places) = unsigned.split_once('.').unwrap_or((unsigned, ""));
        let mut out = String::from(sign);
        for (at, digit) in whole.chars().enumerate() {
            if at > 0 && (whole.len() - at) % 3 == 0 {
                out.push(if self.decimal == '.' { ',' } else { '\u{202f}' });
            }
            out.push(digit);
        }
        if !places.is_empty() {
            out.push(self.decimal);
            out.push_str(places);
        }
        out
    }

    /// What is wrong with a field.
    #[must_use]
    pub fn field_fault(&self, fault: &FieldFault) -> String {
        match fault {
            FieldFault::Misread(misread, unit) => self.misread(misread, *unit),
            FieldFault::Problem(problem) => self.problem(problem),
        }
    }

    /// The name of an entry of a quote.
    #[must_use]
    pub fn quote_field(&self, field: QuoteField, way: PriceBy) -> &'static str {
        self.label(match field {
            QuoteField::Share if way == PriceBy::Margin => QuoteLabel::MarginOfPrice,
            QuoteField::Share => QuoteLabel::Markup,
            QuoteField::Discount => QuoteLabel::DiscountWhole,
            QuoteField::FreightRate => QuoteLabel::FreightRate,
            QuoteField::FreightLeast => QuoteLabel::FreightLeast,
            QuoteField::FreightWeight => QuoteLabel::FreightWeight,
            QuoteField::LabourPrice => QuoteLabel::LabourPrice,
            QuoteField::LabourCost => QuoteLabel::LabourCost,
            QuoteField::WashTime => QuoteLabel::WashTime,
            QuoteField::WashesPerYear => QuoteLabel::WashesPerYear,
            QuoteField::SaltPerYear => QuoteLabel::SaltPerYear,
        })
    }

    /// How to take an entry of a quote; empty where the name says it.
    #[must_use]
    pub fn quote_hint(&self, field: QuoteField) -> &'static str {
        match field {
            QuoteField::Discount => self.label(QuoteLabel::DiscountHint),
            QuoteField::FreightWeight => self.label(QuoteLabel::FreightWeightHint),
            QuoteField::SaltPerYear => self.label(QuoteLabel::SaltHint),
            _ => "",
        }
    }

    /// The name of an entry of a line.
    #[must_use]
    pub fn line_field(&self, field: LineField) -> &'static str {
        self.label(match field {
            LineField::Quantity => QuoteLabel::Quantity,
            LineField::Price => QuoteLabel::Price,
            LineField::Cost => QuoteLabel::Cost,
            LineField::Discount => QuoteLabel::Discount,
        })
    }

    /// What a standing is called.
    #[must_use]
    pub fn standing(&self, standing: LineStanding) -> &'static str {
        self.label(match standing {
            LineStanding::Firm => QuoteLabel::Firm,
            LineStanding::Optional => QuoteLabel::Optional,
            LineStanding::Alternate => QuoteLabel::Alternate,
        })
    }

    /// Where a price comes from, in a few words.
    #[must_use]
    pub fn price_from(&self, from: PriceFrom) -> &'static str {
        match from {
            PriceFrom::Nowhere => "",
            PriceFrom::Typed => self.label(QuoteLabel::FromTyped),
            PriceFrom::List => self.label(QuoteLabel::FromList),
            PriceFrom::Cost => self.label(QuoteLabel::FromCost),
        }
    }

    /// Work on a vessel, as a line.
    #[must_use]
    pub fn work_on(&self, kind: JobKind, vessel: &str) -> String {
        [self.label(kind_label(kind)), ", ", vessel].concat()
    }

    /// Hours, as a unit of work.
    #[must_use]
    pub fn hours(&self) -> &'static str {
        self.label(YearText::Hour)
    }

    /// Why a quote can't be issued.
    #[must_use]
    pub fn refusal(&self, refusal: Refusal) -> String {
        match refusal {
            Refusal::Empty => self.label(QuoteLabel::RefusedEmpty).to_owned(),
            Refusal::Gaps(1) => ["1 ", self.label(QuoteLabel::RefusedGap)].concat(),
            Refusal::Gaps(count) => [&count.to_string(), " ", self.label(QuoteLabel::RefusedGaps)].concat(),
            Refusal::Wrong => self.label(QuoteLabel::RefusedWrong).to_owned(),
            Refusal::NoCurrency => self.label(QuoteLabel::RefusedCurrency).to_owned(),
            Refusal::Locked => self.label(QuoteLabel::RefusedLocked).to_owned(),
        }
    }

    /// How a quote's amounts were rounded.
    #[must_use]
    pub fn rounding(&self, places: u32, halves: Halves) -> String {
        let halves = match halves {
            Halves::Up => QuoteLabel::HalvesUpNote,
            Halves::Even => QuoteLabel::HalvesEvenNote,
        };
        let places =
            [self.label(QuoteLabel::Rounded), " ", &places.to_string(), " ", self.label(QuoteLabel::RoundedPlaces)];
        [&places.concat(), ", ", self.label(halves)].concat()
    }

    /// Wash water of a year with what it comes from.
    #[must_use]
    pub fn wash_water(
        &self,
        water: &Figure<Volume>,
        flow: VolumeRate,
        time: Time,
        washes: f64,
        vessels: u32,
    ) -> String {
        let volume = self.yearly_volume(water.value);
        let minutes = self.decimal(time.value / 60.0, 1);
        let (flow, washes) = (self.flow(flow), self.decimal(washes, 1));
        let text = if vessels == 1 { YearText::WashWater } else { YearText::WashWaterOfMany };
        let places = [
            ("volume", &*volume),
            ("flow", &flow),
            ("minutes", &minutes),
            ("washes", &washes),
            ("vessels", &vessels.to_string()),
        ];
        self.sentence(text, &places)
    }

    fn yearly_volume(&self, volume: Volume) -> String {
        let (value, unit) =
            if self.metric { (volume.value, "m³") } else { (Unit::UsGallon.from_si(volume.value), "gal") };
        let places = if self.metric && value < 100.0 { 1 } else { 0 };
        [&self.grouped(&crate::decimal::to_places(value, places)), " ", unit].concat()
    }

    /// Salt of a year, as it was typed.
    #[must_use]
    pub fn salt_a_year(&self, salt: Mass) -> String {
        self.sentence(YearText::Salt, &[("mass", &self.mass(salt))])
    }
}

#[cfg(test)]
mod tests {
    use super::Manner;
    use bedwright_calc::supply::Money;
    use rust_decimal::Decimal;

    #[test]
    fn amounts_are_grouped_as_people_write_them() {
        let comma = Manner { decimal: ',', ..Manner::default() };
        for (digits, places, point, marked) in [
            ((123_456_789, 2), 2, "1,234,567.89", "1\u{202f}234\u{202f}567,89"),
            ((100, 2), 2, "1.00", "1,00"),
            ((1, 0), 2, "1.00", "1,00"),
            ((12_345, 3), 2, "12.345", "12,345"),
            ((0, 0), 0, "0", "0"),
            ((-123_456, 2), 2, "−1,234.56", "−1\u{202f}234,56"),
        ] {
            let money = Money::new(Decimal::new(digits.0, digits.1));
            assert_eq!(Manner::default().money(money, places), point);
            assert_eq!(comma.money(money, places), marked);
        }
        assert_eq!(Manner::default().exact_percent(Decimal::new(88_75, 5)), "8.875 %");
    }
}
