//! What contradicts something: asked about in a sentence. The reading is kept, and the answer says whether it counts.

use bedwright_calc::life::Surface;
use bedwright_calc::quantity::{Length, Pressure, Term, pascals};

use super::card::Card;
use super::visit::{TestUnit, VisitField, read_number};
use crate::entry::Misread;
use crate::id::Id;

/// A reading that contradicts another, the vessel, or the calendar.
#[derive(Clone, Debug, PartialEq)]
pub struct Question {
    /// The visit; none where it is of a meter that was replaced.
    pub visit: Option<Id>,
    /// The day, as written.
    pub day: String,
    /// What is asked.
    pub asked: Asked,
}

/// What is asked.
#[derive(Clone, Debug, PartialEq)]
pub enum Asked {
    /// The day is still to come, or is no day: the visit waits for it.
    DayToCome,
    /// The outlet shows more than the inlet.
    OutletAboveInlet {
        /// What the outlet showed.
        outlet: f64,
        /// What the inlet showed.
        inlet: f64,
        /// In this unit.
        unit: TestUnit,
    },
    /// The pressure after the vessel is higher than before it.
    PressureRose {
        /// Before the vessel.
        before: Pressure,
        /// After it.
        after: Pressure,
    },
    /// The meter shows less than before, and no new one was written down: the reading is left out.
    MeterFell,
    /// The tests are in a unit that can't be compared with the latest: they are left out of the forecast.
    OtherUnit {
        /// The unit.
        unit: TestUnit,
    },
    /// The surface lies higher than the first time: less freeboard than before.
    SurfaceRose {
        /// By how much.
        by: Length,
    },
    /// The tape says that the surface is outside the vessel.
    TapeOutside {
        /// What was read.
        tape: Length,
    },
    /// What was written makes no sense to this version.
    Unread {
        /// Which number.
        field: VisitField,
        /// Why.
        misread: Misread,
    },
}

/// Everything that is asked of a card, in the order of the visits.
pub(super) fn questions(card: &Card) -> Vec<Question> {
    let mut found = Vec::new();
    let visits = card.bed.visits.iter();
    for visit in visits {
        let mut ask = |asked: Asked| {
            found.push(Question { visit: Some(visit.id.clone()), day: visit.day.clone(), asked });
        };
        for (field, entry) in &visit.entries {
            if let Err(misread) = read_number(*field, entry) {
                ask(Asked::Unread { field: *field, misread });
            }
        }
        if let (Some(outlet), Some(inlet)) = (visit.test(VisitField::Outlet), visit.test(VisitField::Inlet))
            && outlet.counted() > inlet.value
            && visit.unit != TestUnit::Ph
        {
            ask(Asked::OutletAboveInlet { outlet: outlet.value, inlet: inlet.value, unit: visit.unit });
        }
        let pressure = |field: VisitField| visit.number(field).map(pascals);
        if let (Some(before), Some(after)) = (pressure(VisitField::PressureIn), pressure(VisitField::PressureOut))
            && after > before
        {
            ask(Asked::PressureRose { before, after });
        }
        if card.fell.contains(&visit.id) {
            ask(Asked::MeterFell);
        }
        if card.forecast.other_units.contains(&visit.id) {
            ask(Asked::OtherUnit { unit: visit.unit });
        }
        if let Some(compared) = card.surface.compared.as_ref()
            && compared.latest.visit.as_ref() == Some(&visit.id)
        {
            match &compared.loss {
                Ok(loss) if loss.surface == Surface::Higher => ask(Asked::SurfaceRose { by: -loss.length.value }),
                Err(problem) if matches!(problem.term, Term::TapeAfter | Term::TapeBefore) => {
                    ask(Asked::TapeOutside { tape: compared.latest.tape });
                }
                _ => {}
            }
        }
    }
    for visit in &card.waiting {
        found.push(Question { visit: Some(visit.id.clone()), day: visit.day.clone(), asked: Asked::DayToCome });
    }
    found
}
