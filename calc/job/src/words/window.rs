//! What stands on a backwash window, and what is read out in its place.

use bedwright_calc::hydraulics::WindowRow;
use bedwright_calc::quantity::{Mark, Temperature, VolumeRate};

use super::label::picture::WindowText as Text;
use super::{Label, Manner};
use crate::drawing::WindowChart;
use crate::entry::Unit;

impl Manner {
    /// The unit of flows.
    #[must_use]
    pub const fn flow_unit(&self) -> Unit {
        if self.metric { Unit::LitrePerMinute } else { Unit::UsGallonPerMinute }
    }

    /// The unit of temperatures.
    #[must_use]
    pub const fn temperature_unit(&self) -> Unit {
        if self.metric { Unit::Celsius } else { Unit::Fahrenheit }
    }

    /// A flow in SI units, without its unit.
    #[must_use]
    pub fn flow_bare(&self, flow: f64) -> String {
        self.decimal(self.flow_unit().from_si(flow), 1)
    }

    /// A temperature without its unit.
    #[must_use]
    pub fn temperature_bare(&self, temperature: Temperature) -> String {
        self.decimal(self.temperature_unit().from_si(temperature.value), 1)
    }

    /// Above the axis of flows.
    #[must_use]
    pub fn window_flow(&self) -> String {
        self.sentence(Text::Flow, &[("unit", self.flow_unit().symbol())])
    }

    /// Under the axis of temperatures, with the site's own.
    #[must_use]
    pub fn window_temperature(&self, site: Option<(Temperature, Temperature)>) -> String {
        let unit = ("unit", self.temperature_unit().symbol());
        match site.map(|(low, high)| (self.temperature_bare(low), self.temperature_bare(high))) {
            None => self.sentence(Text::Temperature, &[unit]),
            Some((low, high)) if low == high => self.sentence(Text::OneTemperature, &[("low", &low), unit]),
            Some((low, high)) => self.sentence(Text::Temperatures, &[("low", &low), ("high", &high), unit]),
        }
    }

    /// At the line of the flow that is set: "7 gpm: set on site".
    #[must_use]
    pub fn window_chosen(&self, flow: VolumeRate, mark: Mark) -> String {
        self.named(&self.flow(flow), self.mark(mark))
    }

    /// At the line of the flow there is.
    #[must_use]
    pub fn window_available(&self, flow: VolumeRate) -> String {
        self.sentence(Text::Available, &[("flow", &self.flow(flow))])
    }

    /// Above the columns of the table.
    #[must_use]
    pub fn window_headings(&self) -> Vec<String> {
        let with = |heading: Text, unit: Unit| [self.label(heading), ", ", unit.symbol()].concat();
        let mut headings = vec![with(Text::Water, self.temperature_unit())];
        let flows = [
            Text::LiftsLow,
            Text::LiftsLikely,
            Text::LiftsHigh,
            Text::StaysLow,
            Text::StaysLikely,
            Text::StaysHigh,
            Text::FinestLeave,
        ];
        headings.extend(flows.into_iter().map(|heading| with(heading, self.flow_unit())));
        headings
    }

    /// The whole picture as a text: the window at its ends, the flow there is, the flow that is set.
    #[must_use]
    pub fn window_description(&self, chart: &WindowChart) -> String {
        let mut text = String::new();
        let (first, last) = (chart.rows.first(), chart.rows.last());
        for row in [first, last.filter(|last| first != Some(*last))].into_iter().flatten() {
            text.push_str(&self.window_row(row));
        }
        if text.is_empty() {
            text.push_str(self.label(Label::WindowNoLines));
            text.push('.');
        }
        if let Some(flow) = chart.available {
            text.push_str(&self.sentence(Text::AvailableSentence, &[("available", &self.window_available(flow))]));
        }
        if let Some((flow, mark)) = chart.chosen {
            text.push_str(&self.sentence(Text::Chosen, &[("chosen", &self.window_chosen(flow, mark))]));
        }
        text.trim_start().to_owned()
    }

    fn window_row(&self, row: &WindowRow) -> String {
        let at = self.temperature(row.temperature);
        let finite = |flow: Option<VolumeRate>| flow.filter(|flow| flow.value.is_finite());
        let (lifts, stays) = (finite(row.lifts_from[1]), finite(row.stays_to[1]));
        let said = match (lifts, stays) {
            (Some(lifts), Some(stays)) if lifts.value <= stays.value => Text::Both,
            (Some(_), Some(_)) => Text::Neither,
            (Some(_), None) => Text::Lifts,
            (None, Some(_)) => Text::Stays,
            (None, None) => Text::UnknownLines,
        };
        let flow = |flow: Option<VolumeRate>| flow.map(|flow| self.flow(flow)).unwrap_or_default();
        let mut text = self.sentence(said, &[("at", &at), ("lifts", &flow(lifts)), ("stays", &flow(stays))]);
        if let Some(carries) = finite(row.carries_from) {
            text.push_str(&self.sentence(Text::Finest, &[("flow", &self.flow(carries))]));
        }
        text.push('.');
        text
    }
}
