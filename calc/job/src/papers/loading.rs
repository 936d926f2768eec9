//! The removal sheet and the loading sheet of one vessel: filled as far as it was done, with a line for a pen where it wasn't.

use bedwright_calc::material::Pack;
use bedwright_calc::quantity::VolumeRate;

use super::title::{notes, subtitle, title_block};
use super::{Align, Cell, Column, Paper, PaperKind, Row, RowKind, vessel_name};
use crate::answers::VesselAnswers;
use crate::job::Job;
use crate::loading::{LoadAnswers, Step, StepRow};
use crate::sections::loading::{LoadingText, ReadingPlace, Stamp, WorkSheet};
use crate::words::loading::{method, sheet as sheet_label};
use crate::words::{LoadingLabel, Manner};

/// Ruled lines for drums that aren't written down yet.
const LINES_FOR_DRUMS: usize = 3;

/// Everything a sheet of a vessel is made from.
#[derive(Clone, Copy)]
pub struct SheetOf<'a> {
    /// The job.
    pub job: &'a Job,
    /// What the vessel says.
    pub answers: &'a VesselAnswers,
    /// What its sheets say.
    pub of: &'a LoadAnswers,
    /// The flow its backwash is set to, where known.
    pub wash: Option<VolumeRate>,
    /// How the reader reads.
    pub manner: Manner,
    /// Today.
    pub today: &'a str,
}

impl SheetOf<'_> {
    pub(super) fn say(&self, label: LoadingLabel) -> String {
        self.manner.label(label).to_owned()
    }

    /// What the vessel is called: its tag alone, since each has a sheet of its own.
    pub(super) fn name(&self) -> String {
        let tag = self.of.done.tag.trim();
        if tag.is_empty() { vessel_name(self.job, &self.answers.id, self.manner) } else { tag.to_owned() }
    }

    pub(super) fn paper(&self, kind: PaperKind, title: LoadingLabel, columns: Vec<Column>, rows: Vec<Row>) -> Paper {
        let place = self.job.survey.body.vessels.iter().position(|there| there.id == self.answers.id);
        let mut block = title_block(self.job, kind, place.map(|place| place + 1), self.manner, self.today);
        let name = self.name();
        // Papers of several tags of one vessel are told apart by the tag.
        if !self.of.done.tag.trim().is_empty() {
            block.document.value = [&block.document.value, "-", &name].concat();
        }
        block.title.value = [&block.title.value, ", ", &name].concat();
        Paper {
            kind,
            title: self.say(title),
            subtitle: [&name, " · ", &subtitle(self.job, self.manner)].concat(),
            title_block: block,
            columns,
            rows,
            totals: Vec::new(),
            notes: notes(self.job, self.manner, true),
        }
    }

    pub(super) fn stamp(&self, stamp: &Stamp) -> Cell {
        Cell::Lines(vec![self.manner.instant(&stamp.at), stamp.by.clone()])
    }
}

/// One of both sheets.
#[must_use]
pub fn work_sheet(of: &SheetOf, which: WorkSheet) -> Paper {
    let mut rows = cautions(of, which);
    rows.push(Row::heading("steps", of.say(LoadingLabel::AllSteps)));
    let steps = match which {
        WorkSheet::Removal => &of.of.removal,
        WorkSheet::Loading => &of.of.loading,
    };
    if steps.is_empty() {
        rows.push(Row::remark("nothing", of.say(LoadingLabel::NothingToTakeOut)));
    }
    for (at, step) in steps.iter().enumerate() {
        rows.extend(step_rows(of, at + 1, step));
    }
    if which == WorkSheet::Loading {
        rows.push(text_row(of, LoadingText::Deviations, LoadingLabel::Deviations));
    }
    let columns = vec![
        Column::new("check", "", Align::Start, 5),
        Column::new("step", of.say(LoadingLabel::Step), Align::Start, 52),
        Column::new("expected", of.say(LoadingLabel::Expected), Align::Start, 18),
        Column::new("read", of.say(LoadingLabel::Read), Align::Start, 14),
        Column::new("when", of.say(LoadingLabel::When), Align::Start, 20),
    ];
    let kind = match which {
        WorkSheet::Removal => PaperKind::Removal,
        WorkSheet::Loading => PaperKind::Loading,
    };
    of.paper(kind, sheet_label(which), columns, rows)
}

fn cautions(of: &SheetOf, which: WorkSheet) -> Vec<Row> {
    let mut rows = vec![Row::heading("cautions", of.say(LoadingLabel::Cautions))];
    let said = of.manner.cautions(which, of.answers);
    rows.extend(said.iter().enumerate().map(|(at, caution)| Row::remark(format!("caution:{at}"), *caution)));
    rows.push(Row::remark("codes", of.say(LoadingLabel::CodesDecide)));
    let read = of.job.loading.body.acknowledged.iter().filter(|read| read.sheet == which);
    let who: Vec<String> = read.map(|read| [&read.stamp.by, ", ", &read.day].concat()).collect();
    rows.push(Row::new(
        "read_by",
        RowKind::Item,
        vec![Cell::Tick(!who.is_empty()), named(of.say(LoadingLabel::ReadBy)), Cell::Pen(who.join(" · "))],
    ));
    rows
}

fn named(name: String) -> Cell {
    Cell::Named { name, hint: String::new() }
}

/// A step with the readings, lots and texts that belong to it.
fn step_rows(of: &SheetOf, number: usize, step: &StepRow) -> Vec<Row> {
    let words = of.manner.step(step, of.of, of.answers, of.wash);
    let name = Cell::Named { name: format!("{number}  {}", words.title), hint: words.lines.join(" ") };
    let when = step.stamp.as_ref().map_or(Cell::Pen(String::new()), |stamp| of.stamp(stamp));
    let (expected, read) = match step.place() {
        None => (Cell::Empty, Cell::Empty),
        Some(place) => (expected(of, place), read(of, place)),
    };
    let mut rows = vec![Row::new(
        ["step:", &step.id].concat(),
        RowKind::Item,
        vec![Cell::Tick(step.is_done()), name, expected, read, when],
    )];
    match (step.step, step.layer) {
        (Step::Pour, Some(layer)) => {
            rows.extend(pack_rows(of, layer));
            if let Some(id) = of.of.layers.get(layer) {
                let lot = Cell::Pen(of.of.done.lot(id).to_owned());
                let key = ["lot:", id.as_str()].concat();
                rows.push(Row::new(key, RowKind::Item, vec![Cell::Empty, named(of.say(LoadingLabel::Lot)), lot]));
            }
        }
        (Step::Read, _) => {
            if let Some(place) = step.place() {
                rows.extend(remarks(of, place));
            }
        }
        (Step::TakeOut, _) => {
            let chosen = of.of.done.method.map(|way| of.say(method(way))).unwrap_or_default();
            let cells = vec![Cell::Empty, named(of.say(LoadingLabel::Method)), Cell::Pen(chosen)];
            rows.push(Row::new("method", RowKind::Item, cells));
        }
        (Step::ThreadSeen, _) => rows.push(text_row(of, LoadingText::Found, LoadingLabel::FoundText)),
        (Step::Drums, _) => rows.extend(drum_rows(of)),
        (Step::Waste, _) => {
            rows.push(text_row(of, LoadingText::WasteBy, LoadingLabel::WasteBy));
            rows.push(text_row(of, LoadingText::WasteClass, LoadingLabel::WasteClass));
        }
        (Step::Settings, _) => rows.push(text_row(of, LoadingText::Settings, LoadingLabel::SettingsText)),
        (Step::OutletTest, _) => rows.push(text_row(of, LoadingText::OutletTest, LoadingLabel::OutletText)),
        _ => {}
    }
    rows
}

/// What to expect at a place.
fn expected(of: &SheetOf, place: &ReadingPlace) -> Cell {
    match of.of.rung(place).map(|rung| &rung.expected) {
        Some(Ok(tape)) => Cell::Lines(vec![of.manner.tape(tape.reading.value), of.manner.spread(tape.spread)]),
        _ => Cell::Empty,
    }
}

/// What was read at a place, or a line for it.
fn read(of: &SheetOf, place: &ReadingPlace) -> Cell {
    match of.of.done.reading(place) {
        None => Cell::Pen(String::new()),
        Some(reading) => match (&reading.entry, of.of.tape_at(place)) {
            (None, _) => Cell::Text(of.say(LoadingLabel::NotTaken)),
            (Some(_), Some(tape)) => Cell::Text(of.manner.tape(tape.value)),
            (Some(entry), None) => Cell::Pen(entry.text.clone()),
        },
    }
}

/// Lines for the readings that may be taken between a layer's packs.
fn pack_rows(of: &SheetOf, layer: usize) -> Vec<Row> {
    let Ok(rungs) = &of.of.rungs else { return Vec::new() };
    let between = rungs.iter().filter(|rung| rung.layer == layer && !rung.last);
    let row = |place: ReadingPlace| {
        let name = of.manner.place(&place, of.of, of.answers);
        let when = of.of.done.reading(&place).map_or(Cell::Pen(String::new()), |reading| of.stamp(&reading.stamp));
        Row::new(
            ["reading:", &place.name()].concat(),
            RowKind::Item,
            vec![
                Cell::Empty,
                Cell::Named { name, hint: of.say(LoadingLabel::Optional) },
                expected(of, &place),
                read(of, &place),
                when,
            ],
        )
    };
    between.filter_map(|rung| of.of.place_of(rung)).map(row).collect()
}

/// What a reading beyond the spread says.
fn remarks(of: &SheetOf, place: &ReadingPlace) -> Vec<Row> {
    let said = said_at(of, place);
    let key = |at: usize| ["said:", &place.name(), ":", &at.to_string()].concat();
    said.into_iter().enumerate().map(|(at, text)| Row::remark(key(at), text)).collect()
}

/// The sentences of a reading beyond the spread.
pub(super) fn said_at(of: &SheetOf, place: &ReadingPlace) -> Vec<String> {
    let Some(rung) = of.of.rung(place) else { return Vec::new() };
    let pack: Option<&Pack> = of.answers.planned.get(rung.layer).map(|layer| &layer.pack);
    match (&rung.outcome, pack) {
        (Some(Ok(found)), Some(pack)) => of.manner.deviation(rung, found, pack),
        (Some(Err(problem)), _) => vec![of.manner.problem(problem)],
        _ => Vec::new(),
    }
}

fn text_row(of: &SheetOf, which: LoadingText, label: LoadingLabel) -> Row {
    let written = of.of.done.text(which).to_owned();
    Row::new(["text:", which.id()].concat(), RowKind::Item, vec![Cell::Empty, named(of.say(label)), Cell::Pen(written)])
}

fn drum_rows(of: &SheetOf) -> Vec<Row> {
    let weight = |entry: &crate::entry::Entry| match entry.understood() {
        Ok(read) => of.manner.echo(&read),
        Err(_) => entry.text.clone(),
    };
    let row = |at: usize, label: &str, contents: &str, weighs: String| {
        let name = [&of.say(LoadingLabel::Drum), " ", &(at + 1).to_string()].concat();
        Row::new(
            ["drum:", &at.to_string()].concat(),
            RowKind::Item,
            vec![
                Cell::Empty,
                named(name),
                Cell::Pen(label.to_owned()),
                Cell::Pen(weighs),
                Cell::Pen(contents.to_owned()),
            ],
        )
    };
    let headings = [LoadingLabel::DrumLabel, LoadingLabel::DrumWeight, LoadingLabel::DrumContents].map(|l| of.say(l));
    let mut head = vec![Cell::Empty, Cell::Empty];
    head.extend(headings.map(Cell::Text));
    let mut rows = vec![Row::new("drum_heads", RowKind::Item, head)];
    let drums = &of.of.done.drums;
    rows.extend(
        drums.iter().enumerate().map(|(at, drum)| {
            row(at, &drum.label, &drum.contents, drum.weight.as_ref().map(weight).unwrap_or_default())
        }),
    );
    rows.extend((drums.len()..LINES_FOR_DRUMS).map(|at| row(at, "", "", String::new())));
    rows
}
