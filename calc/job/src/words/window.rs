//! What stands on a backwash window, and what is read out in its place.

use bedwright_calc::hydraulics::WindowRow;
use bedwright_calc::quantity::{Mark, Temperature, VolumeRate};

use super::{Label, Manner, en};
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

    /// What a mark is called.
    #[must_use]
    pub fn mark(&self, mark: Mark) -> &'static str {
        en::mark(mark)
    }

    /// Above the axis of flows.
    #[must_use]
    pub fn window_flow(&self) -> &'static str {
        match self.metric {
            false => "flow, gpm",
            true => "flow, L/min",
        }
    }

    /// Under the axis of temperatures, with the site's own.
    #[must_use]
    pub fn window_temperature(&self, site: Option<(Temperature, Temperature)>) -> String {
        let unit = self.temperature_unit().symbol();
        let shown = site.map(|(low, high)| (self.temperature_bare(low), self.temperature_bare(high)));
        match shown {
            None => format!("water temperature, {unit}"),
            Some((low, high)) if low == high => format!("water at this site: {low} {unit}"),
            Some((low, high)) => format!("water at this site: {low} to {high} {unit}"),
        }
    }

    /// At the line of the flow that is set: "7 gpm: set on site".
    #[must_use]
    pub fn window_chosen(&self, flow: VolumeRate, mark: Mark) -> String {
        format!("{}: {}", self.flow(flow), self.mark(mark))
    }

    /// At the line of the flow there is.
    #[must_use]
    pub fn window_available(&self, flow: VolumeRate) -> String {
        format!("{} available", self.flow(flow))
    }

    /// Above the columns of the table.
    #[must_use]
    pub fn window_headings(&self) -> Vec<String> {
        let flow = self.flow_unit().symbol();
        let temperature = self.temperature_unit().symbol();
        [
            ("Water", temperature),
            ("Lifts enough from, low line", flow),
            ("Lifts enough from, likely", flow),
            ("Lifts enough from, high line", flow),
            ("Stays in up to, low line", flow),
            ("Stays in up to, likely", flow),
            ("Stays in up to, high line", flow),
            ("Finest grains leave from", flow),
        ]
        .into_iter()
        .map(|(heading, unit)| [heading, ", ", unit].concat())
        .collect()
    }

    /// The whole picture as a text: the window at its ends, the flow there is, the flow that is set.
    #[must_use]
    pub fn window_description(&self, chart: &WindowChart) -> String {
        self.window_description_english(chart)
    }

    fn window_description_english(&self, chart: &WindowChart) -> String {
        let mut text = String::new();
        let (first, last) = (chart.rows.first(), chart.rows.last());
        for row in [first, last.filter(|last| first != Some(*last))].into_iter().flatten() {
            text.push_str(&self.window_row_english(row));
        }
        if text.is_empty() {
            text.push_str(self.label(Label::WindowNoLines));
            text.push('.');
        }
        if let Some(flow) = chart.available {
            text.push_str(&format!(" {}.", self.window_available(flow)));
        }
        if let Some((flow, mark)) = chart.chosen {
            text.push_str(&format!(" Chosen {}.", self.window_chosen(flow, mark)));
        }
        text.trim_start().to_owned()
    }

    fn window_row_english(&self, row: &WindowRow) -> String {
        let at = self.temperature(row.temperature);
        let finite = |flow: Option<VolumeRate>| flow.filter(|flow| flow.value.is_finite());
        let mut text = match (finite(row.lifts_from[1]), finite(row.stays_to[1])) {
            (Some(lifts), Some(stays)) if lifts.value <= stays.value => {
                format!(
                    " At {at} the bed likely lifts enough from {} and stays in up to {}",
                    self.flow(lifts),
                    self.flow(stays)
                )
            }
            (Some(lifts), Some(stays)) => format!(
                " At {at} no flow likely does: the bed lifts enough from {} only and stays in only up to {}",
                self.flow(lifts),
                self.flow(stays)
            ),
            (Some(lifts), None) => format!(" At {at} the bed likely lifts enough from {}", self.flow(lifts)),
            (None, Some(stays)) => format!(" At {at} the bed likely stays in up to {}", self.flow(stays)),
            (None, None) => format!(" At {at} neither line is known"),
        };
        if let Some(flow) = finite(row.carries_from) {
            text.push_str(&format!("; the finest grains leave from {}", self.flow(flow)));
        }
        text.push('.');
        text
    }
}
