//! The start-up report: what went into a vessel and how it was read, as it was signed, with what was set right since.

use bedwright_calc::material::Pack;
use bedwright_calc::quantity::metres;

use super::loading::SheetOf;
use super::{Align, Cell, Column, Paper, PaperKind, Row, RowKind};
use crate::as_loaded::{AsLoaded, LoadedReading};
use crate::loading::StepRow;
use crate::sections::loading::LoadingText;
use crate::words::loading::{method, state};
use crate::words::{LoadingLabel, Manner};

/// The start-up report of a vessel that was signed for.
#[must_use]
pub fn start_up_report(of: &SheetOf, loaded: &AsLoaded) -> Paper {
    let mut rows = vec![Row::heading("layers", of.say(LoadingLabel::AsLoaded))];
    rows.extend(loaded.layers.iter().map(|layer| {
        let pack = Pack::of(&layer.pack);
        let amount = match &pack {
            _ if layer.packs <= 0.0 => of.say(LoadingLabel::NoPacks),
            Some(pack) => of.manner.packs(layer.packs, pack),
            None => of.manner.decimal(layer.packs, 2),
        };
        let volume = of.manner.volume(bedwright_calc::quantity::cubic_metres(layer.volume_l / 1000.0));
        let volume = if layer.packs > 0.0 { Cell::Text(volume) } else { Cell::Empty };
        let name = Cell::Named {
            name: of.manner.material(&layer.material),
            hint: pack.map(|pack| of.manner.pack(&pack)).unwrap_or_default(),
        };
        let lot = Cell::Lines(vec![of.manner.label(crate::words::Label::LotAndDate).to_owned(), layer.lot.clone()]);
        Row::new(["layer:", layer.layer.as_str()].concat(), RowKind::Item, vec![name, Cell::Text(amount), volume, lot])
    }));
    rows.push(Row::heading("readings", of.say(LoadingLabel::Readings)));
    rows.extend(loaded.readings.iter().map(|reading| reading_row(of, reading)));
    rows.push(Row::heading("steps", of.say(LoadingLabel::AllSteps)));
    let done = |id: &str| loaded.done.iter().find(|(there, _)| there == id).map(|(_, stamp)| stamp);
    // In the order of the sheets, so that the words are those the steps were done by.
    for step in of.of.removal.iter().chain(&of.of.loading) {
        match done(&step.id) {
            Some(stamp) => rows.push(Row::new(
                ["step:", &step.id].concat(),
                RowKind::Item,
                vec![title_of(of, step), Cell::Tick(true), Cell::Empty, of.stamp(stamp)],
            )),
            None if loaded.not_done.contains(&step.id) => rows.push(Row::new(
                ["step:", &step.id].concat(),
                RowKind::Item,
                vec![title_of(of, step), Cell::Tick(false)],
            )),
            None => {}
        }
    }
    rows.extend(written(of, loaded));
    rows.extend(corrections(of, loaded));
    let columns = vec![
        Column::new("what", "", Align::Start, 46),
        Column::new("amount", "", Align::Start, 22),
        Column::new("expected", of.say(LoadingLabel::Expected), Align::Start, 22),
        Column::new("when", "", Align::Start, 24),
    ];
    let mut paper = of.paper(PaperKind::StartUp, LoadingLabel::StartUpReport, columns, rows);
    paper.title_block.signed.value = [&loaded.signed.by, " · ", &of.manner.instant(&loaded.signed.at)].concat();
    paper.title_block.date.value.clone_from(&loaded.day);
    paper
}

fn title_of(of: &SheetOf, step: &StepRow) -> Cell {
    Cell::Text(of.manner.step(step, of.of, of.answers, of.wash).title)
}

fn reading_row(of: &SheetOf, reading: &LoadedReading) -> Row {
    let manner: Manner = of.manner;
    let name =
        Cell::Named { name: manner.place(&reading.place, of.of, of.answers), hint: of.say(state(reading.state)) };
    let tape = match (&reading.entry, reading.tape()) {
        (None, _) => of.say(LoadingLabel::NotTaken),
        (Some(_), Some(tape)) => manner.tape(tape),
        (Some(entry), None) => entry.text.clone(),
    };
    let expected = match (reading.expected_mm, reading.spread_mm) {
        (Some(expected), Some(spread)) => {
            let mut lines =
                vec![[&manner.tape(metres(expected / 1000.0)), " ", &manner.spread(metres(spread / 1000.0))].concat()];
            if let Some(higher) = reading.higher() {
                let beyond = reading.within() == Some(false);
                lines.push([if beyond { "▲ " } else { "" }, &manner.higher(higher)].concat());
            }
            Cell::Lines(lines)
        }
        _ => Cell::Empty,
    };
    let key = ["reading:", &reading.place.name()].concat();
    Row::new(key, RowKind::Item, vec![name, Cell::Large(tape), expected, of.stamp(&reading.stamp)])
}

/// What was written down beside steps and readings.
fn written(of: &SheetOf, loaded: &AsLoaded) -> Vec<Row> {
    let mut rows = Vec::new();
    let mut put = |key: &str, label: LoadingLabel, text: &str| {
        if !text.trim().is_empty() {
            let name = Cell::Named { name: of.say(label), hint: String::new() };
            let key = ["written:", key].concat();
            rows.push(Row::new(key, RowKind::Item, vec![name, Cell::Text(text.trim().to_owned())]));
        }
    };
    let texts = [
        (LoadingText::Settings, LoadingLabel::SettingsText),
        (LoadingText::OutletTest, LoadingLabel::OutletText),
        (LoadingText::Found, LoadingLabel::FoundText),
        (LoadingText::WasteBy, LoadingLabel::WasteBy),
        (LoadingText::WasteClass, LoadingLabel::WasteClass),
        (LoadingText::Deviations, LoadingLabel::Deviations),
    ];
    for (which, label) in texts {
        put(which.id(), label, loaded.text(which));
    }
    if let Some(way) = loaded.method {
        put("method", LoadingLabel::Method, &of.say(method(way)));
    }
    for (at, drum) in loaded.drums.iter().enumerate() {
        let weight = drum.weight.as_ref().map(|entry| match entry.understood() {
            Ok(read) => of.manner.echo(&read),
            Err(_) => entry.text.clone(),
        });
        let parts = [Some(drum.label.clone()), Some(drum.contents.clone()), weight];
        let parts: Vec<String> = parts.into_iter().flatten().filter(|part| !part.trim().is_empty()).collect();
        put(&format!("drum:{at}"), LoadingLabel::Drums, &parts.join(" · "));
    }
    if loaded.photo.is_some() {
        put("photo", LoadingLabel::Photo, &of.say(LoadingLabel::PhotoElsewhere));
    }
    rows
}

fn corrections(of: &SheetOf, loaded: &AsLoaded) -> Vec<Row> {
    if loaded.corrections.is_empty() {
        return Vec::new();
    }
    let mut rows = vec![Row::heading("corrections", of.say(LoadingLabel::Corrections))];
    rows.extend(loaded.corrections.iter().map(|correction| {
        let about = correction.reading.as_ref().map(|(place, _)| of.manner.place(place, of.of, of.answers));
        let tape = correction.reading.as_ref().map(|(_, entry)| match entry.understood() {
            Ok(read) => of.manner.echo(&read),
            Err(_) => entry.text.clone(),
        });
        let text = Cell::Named { name: correction.text.clone(), hint: about.unwrap_or_default() };
        let key = ["correction:", correction.id.as_str()].concat();
        Row::new(
            key,
            RowKind::Item,
            vec![text, Cell::Text(tape.unwrap_or_default()), Cell::Empty, of.stamp(&correction.stamp)],
        )
    }));
    rows
}
