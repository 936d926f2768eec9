//! The service card of a tag on paper: the front answer first, what it rests on, every visit, and lines for the next ones.

use bedwright_calc::quantity::{Pressure, cubic_metres};

use super::title::{notes, subtitle, title_block};
use super::{Align, Cell, Column, Paper, PaperKind, Row, RowKind, vessel_name};
use crate::care::card::Card;
use crate::care::visit::{Visit, VisitField};
use crate::day::Day;
use crate::job::Job;
use crate::words::{CardLabel, CareLabel, Manner};

/// So many visits stand on the sheets, the latest first.
const MOST_VISITS: usize = 60;
/// Lines for visits to come.
const LINES_FOR_VISITS: usize = 5;

/// The card of a place of a job. `clean` is the pressure its clean bed loses, where that is known.
#[must_use]
pub fn service_card(job: &Job, card: &Card, clean: Option<Pressure>, manner: Manner, today: &str) -> Paper {
    let of = On { card, manner };
    let mut rows = of.front(Day::of(today).unwrap_or(Day::FIRST));
    rows.extend(of.bed(clean));
    rows.extend(of.visits());
    let place = job.survey.body.vessels.iter().position(|there| there.id == card.place.vessel);
    let mut block = title_block(job, PaperKind::ServiceCard, place.map(|place| place + 1), manner, today);
    let tag = card.place.tag.trim();
    let name = if tag.is_empty() { vessel_name(job, &card.place.vessel, manner) } else { tag.to_owned() };
    // Cards of several tags of one vessel are told apart by the tag.
    if !tag.is_empty() {
        block.document.value = [&block.document.value, "-", tag].concat();
    }
    block.title.value = [&block.title.value, ", ", &name].concat();
    let say = |label: CareLabel| manner.label(label).to_owned();
    let card = |label: CardLabel| manner.label(label).to_owned();
    Paper {
        kind: PaperKind::ServiceCard,
        title: say(CareLabel::ServiceCard),
        subtitle: [&name, " · ", &subtitle(job, manner)].concat(),
        title_block: block,
        columns: vec![
            Column::new("day", card(CardLabel::DayAndName), Align::Start, 24),
            Column::new("tests", card(CardLabel::Tests), Align::Start, 22),
            Column::new("drain", say(CareLabel::DrainSeen), Align::Start, 19),
            Column::new("meter", say(CareLabel::Meter), Align::Start, 23),
            Column::new("pressure", card(CardLabel::Pressures), Align::Start, 24),
            Column::new("more", say(CareLabel::Notes), Align::Start, 34),
        ],
        rows,
        totals: Vec::new(),
        notes: notes(job, manner, false),
    }
}

/// Two readings in one cell; of one unit it stands once.
fn both(first: &str, second: &str) -> String {
    match (first.rsplit_once(' '), second.rsplit_once(' ')) {
        (Some((bare, unit)), Some((_, other))) if unit == other => [bare, " / ", second].concat(),
        _ => [first, " / ", second].concat(),
    }
}

struct On<'a> {
    card: &'a Card,
    manner: Manner,
}

impl On<'_> {
    fn say(&self, label: CareLabel) -> String {
        self.manner.label(label).to_owned()
    }

    /// How it stands, why, what is due; and what is asked about.
    fn front(&self, today: Day) -> Vec<Row> {
        let (card, manner) = (self.card, self.manner);
        let mark = [manner.care_sign(card.mark), " ", manner.care_mark(card.mark)].concat();
        let mut rows = vec![
            Row::new("front", RowKind::Remark, vec![Cell::Large(mark)]),
            Row::remark("reason", manner.care_reason(&card.reason)),
        ];
        if let Some(day) = card.new_bed {
            rows.push(self.fact("new_bed", CareLabel::NewBedDue, day.max(today).text()));
        }
        rows.push(self.fact("next_visit", CareLabel::NextVisitDue, card.next_visit.text()));
        if !card.questions.is_empty() {
            rows.push(Row::heading("asked", self.say(CareLabel::Asked)));
            let asked = card.questions.iter().enumerate();
            rows.extend(asked.map(|(at, asked)| Row::remark(format!("asked:{at}"), manner.question(asked))));
        }
        rows
    }

    /// The bed: since when, how much, how long, what is lost.
    fn bed(&self, clean: Option<Pressure>) -> Vec<Row> {
        let (card, manner) = (self.card, self.manner);
        let mut rows = vec![Row::heading("bed", self.say(CareLabel::Bed))];
        let begun = card.bed.begun.map_or_else(|| self.say(CareLabel::BedUnknown), Day::text);
        rows.push(self.fact("begun", CareLabel::BedBegan, begun));
        let water = card.water.filter(|water| *water > 0.0);
        let water = water.map_or_else(|| self.say(CareLabel::NoMeter), |water| manner.water(cubic_metres(water)));
        rows.push(self.fact("water", CareLabel::Water, water));
        if let Some(volumes) = card.bed_volumes.filter(|volumes| *volumes > 0.0) {
            rows.push(self.fact("bed_volumes", CareLabel::BedVolumes, manner.decimal(volumes, 0)));
        }
        rows.push(self.fact("assumed", CareLabel::AssumedBefore, manner.assumed_life(card)));
        rows.push(self.fact("forecast", CareLabel::Forecast, manner.forecast(&card.forecast)));
        let surface = card.surface.compared.as_ref().map(|compared| manner.media_loss(compared));
        rows.push(self.fact(
            "surface",
            CareLabel::MediaSurface,
            surface.unwrap_or_else(|| self.say(CareLabel::NoTwoTapes)),
        ));
        if let Some(clean) = clean {
            let said = manner.sentence(CardLabel::CleanSaid, &[("loss", &manner.pressure(clean))]);
            rows.push(self.fact("clean", CareLabel::ChartPressure, said));
        }
        if let Some(run) = &card.run {
            let name = manner.label(CardLabel::RunByDrop).to_owned();
            let cells = vec![Cell::Text(name), Cell::Text(manner.seen_run(run))];
            rows.push(Row::new("fact:run", RowKind::Item, cells));
        }
        let day = |day: Option<Day>| day.map_or_else(|| "–".to_owned(), Day::text);
        let before: Vec<String> =
            card.before.iter().map(|(from, to)| [&day(*from), " – ", &day(*to)].concat()).collect();
        if !before.is_empty() {
            rows.push(self.fact("before", CareLabel::EarlierBeds, before.join(", ")));
        }
        rows
    }

    /// A fact: its name, and what it says to the right edge.
    fn fact(&self, key: &str, name: CareLabel, said: String) -> Row {
        Row::new(["fact:", key].concat(), RowKind::Item, vec![Cell::Text(self.say(name)), Cell::Text(said)])
    }

    fn visits(&self) -> Vec<Row> {
        let (card, manner) = (self.card, self.manner);
        let mut rows = vec![Row::heading("visits", self.say(CareLabel::Visits))];
        let all = card.waiting.iter().rev().chain(card.bed.visits.iter().rev());
        rows.extend(all.take(MOST_VISITS).map(|visit| self.visit(visit)));
        let count = card.waiting.len() + card.bed.visits.len();
        if count == 0 {
            rows.push(Row::remark("none", self.say(CareLabel::NoVisits)));
        }
        if count > MOST_VISITS {
            let said = manner.sentence(CardLabel::EarlierVisits, &[("count", &(count - MOST_VISITS).to_string())]);
            rows.push(Row::remark("earlier", said));
        }
        rows.push(Row::heading("pen", manner.label(CardLabel::ByPen)));
        let pen = || Cell::Pen(String::new());
        rows.extend((0..LINES_FOR_VISITS).map(|line| {
            Row::new(format!("pen:{line}"), RowKind::Item, vec![pen(), pen(), pen(), pen(), pen(), pen()])
        }));
        rows
    }

    fn visit(&self, visit: &Visit) -> Row {
        let manner = self.manner;
        let read = |field: VisitField| visit.entry(field).map(|_| manner.visit_number(visit, field));
        let pair = |first: VisitField, second: VisitField| match (read(first), read(second)) {
            (None, None) => Cell::Empty,
            (Some(first), Some(second)) => Cell::Text(both(&first, &second)),
            (Some(first), None) => Cell::Text([&first, " / –"].concat()),
            (None, Some(second)) => Cell::Text(["– / ", &second].concat()),
        };
        let text = |text: Option<String>| text.map_or(Cell::Empty, Cell::Text);
        let drain = manner.drain_seen(visit).map(str::to_owned);
        let cells = vec![
            Cell::Lines(
                [visit.day.trim(), visit.by.trim()]
                    .iter()
                    .filter(|part| !part.is_empty())
                    .map(|part| (*part).to_owned())
                    .collect(),
            ),
            pair(VisitField::Inlet, VisitField::Outlet),
            text(drain),
            text(read(VisitField::Meter)),
            pair(VisitField::PressureIn, VisitField::PressureOut),
            Cell::Lines(self.more(visit)),
        ];
        Row::new(["visit:", visit.id.as_str()].concat(), RowKind::Item, cells)
    }

    /// What has no column of its own.
    fn more(&self, visit: &Visit) -> Vec<String> {
        let manner = self.manner;
        let fields = [
            VisitField::SinceWash,
            VisitField::DrainFlow,
            VisitField::DrainMinutes,
            VisitField::Temperature,
            VisitField::Tape,
            VisitField::Salt,
        ];
        let mut lines: Vec<String> = fields
            .into_iter()
            .filter(|field| visit.entry(*field).is_some())
            .map(|field| [manner.visit_field(field), " ", &manner.visit_number(visit, field)].concat())
            .collect();
        lines.extend(visit.leak.map(|leak| manner.leak_seen(leak)));
        let texts = [visit.settings.trim(), visit.notes.trim()];
        lines.extend(texts.into_iter().filter(|text| !text.is_empty()).map(str::to_owned));
        lines
    }
}
