//! The survey sheet: what was found of a vessel, or a form to be filled by hand beside it.

use bedwright_calc::vessel::Opening;

use super::title::{notes, subtitle, title_block};
use super::{Align, Cell, Column, Paper, PaperKind, Row, RowKind, vessel_name};
use crate::entry::Unit;
use crate::field::SurveyField;
use crate::id::Id;
use crate::job::Job;
use crate::reading::{SurveyReading, asked, read_survey};
use crate::sections::survey::{CollectorKind, DiameterWay, HeadShape, Path, Standing, VesselSurvey};
use crate::words::choices::{collector, head, opening, path, way, yes_no};
use crate::words::{Label, Manner};

/// Ruled lines for notes on a form.
const LINES_FOR_NOTES: usize = 4;
/// Lines on a form for the tape readings after this many bags.
const LINES_FOR_BAGS: usize = 3;

/// The survey sheet of a vessel. Filled, it says what is known and how; else it is a form with a line or boxes for
/// everything that may be asked, since on site the vessel may turn out another than it was thought.
///
/// Without a vessel, or with one that isn't in the job, it is the form with nothing on it.
#[must_use]
pub fn survey_sheet(job: &Job, vessel: Option<&Id>, manner: Manner, today: &str, filled: bool) -> Paper {
    let survey = vessel.and_then(|id| job.vessel(id));
    let rows = match survey {
        Some(survey) if filled => filled_rows(job, survey, manner),
        _ => form_rows(survey.map(AsRef::as_ref), manner),
    };
    let place = survey.and_then(|survey| job.survey.body.vessels.iter().position(|there| there.id == survey.id));
    let subject = survey.map(|survey| vessel_name(job, &survey.id, manner));
    let about = subtitle(job, manner);
    let mut title_block = title_block(job, PaperKind::Survey, place.map(|place| place + 1), manner, today);
    if let Some(subject) = &subject {
        title_block.title.value = format!("{}, {subject}", title_block.title.value);
    }
    Paper {
        kind: PaperKind::Survey,
        title: manner.label(Label::SurveySheet).to_owned(),
        subtitle: match subject {
            Some(subject) => format!("{subject} · {about}"),
            None => about,
        },
        title_block,
        columns: vec![
            Column::new("entry", "", Align::Start, 42),
            Column::new("value", manner.label(Label::Value), Align::Start, 30),
            Column::new("unit", manner.label(Label::Unit), Align::Start, 11),
            Column::new("standing", manner.label(Label::MeasuredHow), Align::Start, 40),
        ],
        rows,
        totals: Vec::new(),
        notes: notes(job, manner, false),
    }
}

fn named(manner: Manner, field: SurveyField) -> Cell {
    Cell::Named { name: manner.field(field).to_owned(), hint: manner.hint(field).to_owned() }
}

fn titled(manner: Manner, label: Label) -> Cell {
    Cell::Named { name: manner.label(label).to_owned(), hint: String::new() }
}

/// Boxes of which the chosen one is ticked.
fn boxes<T: Copy + PartialEq>(manner: Manner, all: &[T], chosen: Option<T>, label: impl Fn(T) -> Label) -> Cell {
    Cell::Choice(all.iter().map(|each| (chosen == Some(*each), manner.label(label(*each)).to_owned())).collect())
}

fn choice(key: &str, manner: Manner, name: Label, cell: Cell) -> Row {
    Row::new(format!("choice:{key}"), RowKind::Item, vec![titled(manner, name), cell])
}

/// Every entry once, under the choice that asks for it.
const FORM: &[(Label, &[SurveyField])] = &[
    (
        Label::DiameterBy,
        &[
            SurveyField::InsideDiameter,
            SurveyField::Circumference,
            SurveyField::Wall,
            SurveyField::MeteredVolume,
            SurveyField::BagVolume,
            SurveyField::TapeBefore,
            SurveyField::TapeAfter,
        ],
    ),
    (
        Label::HeadsAndOpening,
        &[SurveyField::InsideDepth, SurveyField::NeckHeight, SurveyField::ClearBore, SurveyField::ConeDepth],
    ),
    (Label::Riser, &[SurveyField::RiserOutsideDiameter, SurveyField::RiserSeat, SurveyField::RiserAllowance]),
    (
        Label::BottomCollector,
        &[
            SurveyField::CollectorDiameter,
            SurveyField::CollectorBottom,
            SurveyField::CollectorTop,
            SurveyField::LateralCount,
            SurveyField::LateralLength,
            SurveyField::LateralAxis,
            SurveyField::TopSlot,
            SurveyField::SlotWidth,
        ],
    ),
    (Label::UpperCollector, &[SurveyField::UpperCollector]),
];

fn form_rows(survey: Option<&VesselSurvey>, manner: Manner) -> Vec<Row> {
    let pen =
        |key: &str, name: Cell, known: &str| Row::new(key, RowKind::Item, vec![name, Cell::Pen(known.to_owned())]);
    let tags = survey.map(|survey| survey.tags.join(", ")).unwrap_or_default();
    let nominal = survey
        .and_then(|survey| survey.entries.get(&SurveyField::NominalSize))
        .map_or("", |typed| typed.entry.text.trim());
    let mut rows = vec![
        Row::heading("vessel", manner.label(Label::Vessel)),
        pen("tags", titled(manner, Label::Tags), &tags),
        choice("path", manner, Label::FoundAs, boxes(manner, Path::ALL, None, path)),
        pen(SurveyField::NominalSize.id(), named(manner, SurveyField::NominalSize), nominal),
        Row::heading("rating", manner.label(Label::OnTheLabel)),
    ];
    for (key, label) in [
        ("rated_pressure", Label::RatedPressure),
        ("rated_temperature", Label::RatedTemperature),
        ("serial", Label::LabelNumber),
        ("made", Label::LabelYear),
    ] {
        rows.push(pen(key, titled(manner, label), ""));
    }
    for (label, fields) in FORM {
        rows.push(Row::heading(
            format!("about:{}", fields.first().map_or("", |field| field.id())),
            manner.label(*label),
        ));
        match label {
            Label::DiameterBy => {
                rows.push(choice("way", manner, Label::MeasuredHow, boxes(manner, DiameterWay::ALL, None, way)))
            }
            Label::HeadsAndOpening => rows.extend([
                choice("opening", manner, Label::Opening, boxes(manner, Opening::ALL, None, opening)),
                choice("top_head", manner, Label::TopHead, boxes(manner, tops(), None, head)),
                choice("bottom_head", manner, Label::BottomHead, boxes(manner, HeadShape::ALL, None, head)),
            ]),
            Label::Riser => {
                rows.push(choice("riser", manner, Label::Riser, boxes(manner, &[true, false], None, yes_no)))
            }
            Label::BottomCollector => rows.push(choice(
                "collector",
                manner,
                Label::BottomCollector,
                boxes(manner, CollectorKind::ALL, None, collector),
            )),
            _ => rows.push(choice("upper", manner, Label::UpperCollector, boxes(manner, &[true, false], None, yes_no))),
        }
        rows.extend(fields.iter().map(|field| form_entry(*field, manner)));
    }
    rows.push(Row::heading("tape", manner.label(Label::TapeReadings)));
    let unit = if manner.metric { Unit::Millimetre } else { Unit::Inch };
    let mut tape = |key: String, label: Label| {
        rows.push(Row::new(
            key,
            RowKind::Item,
            vec![
                titled(manner, label),
                Cell::Pen(String::new()),
                Cell::Text(manner.unit(unit).to_owned()),
                Cell::Empty,
            ],
        ));
    };
    tape("tape_found".to_owned(), Label::TapeAsFound);
    tape("tape_underbed".to_owned(), Label::TapeAfterUnderbed);
    for bag in 1..=LINES_FOR_BAGS {
        tape(format!("tape_bag_{bag}"), Label::TapeAfterBag);
    }
    rows.push(Row::heading("notes", manner.label(Label::Notes)));
    rows.extend((0..LINES_FOR_NOTES).map(|line| Row::new(format!("note:{line}"), RowKind::Writing, vec![Cell::Empty])));
    rows.extend(sketch(manner));
    rows
}

/// The shapes a top head may have.
fn tops() -> &'static [HeadShape] {
    // The cone, for the bottom only, stands last.
    HeadShape::ALL.split_last().map_or(&[], |(_, tops)| tops)
}

fn form_entry(field: SurveyField, manner: Manner) -> Row {
    let standings = [false, false].into_iter().zip([Label::StandingMeasured, Label::StandingAssumed]);
    Row::new(
        field.id(),
        RowKind::Item,
        vec![
            named(manner, field),
            Cell::Pen(String::new()),
            Cell::Text(manner.unit(field.usual_unit(manner.metric)).to_owned()),
            Cell::Choice(standings.map(|(ticked, label)| (ticked, manner.label(label).to_owned())).collect()),
        ],
    )
}

fn sketch(manner: Manner) -> [Row; 2] {
    [
        Row::heading("sketch_heading", manner.label(Label::Sketch)),
        Row::new("sketch", RowKind::Sketch, vec![Cell::Text(manner.label(Label::SketchHint).to_owned())]),
    ]
}

fn filled_rows(job: &Job, survey: &VesselSurvey, manner: Manner) -> Vec<Row> {
    let reading = read_survey(survey);
    let text = |label: Label| Cell::Text(manner.label(label).to_owned());
    let mut rows = vec![
        Row::heading("vessel", vessel_name(job, &survey.id, manner)),
        Row::new(
            "tags",
            RowKind::Item,
            vec![
                titled(manner, Label::Tags),
                Cell::Text(if survey.tags.is_empty() {
                    manner.label(Label::Untagged).to_owned()
                } else {
                    survey.tags.join(", ")
                }),
            ],
        ),
        choice("path", manner, Label::FoundAs, text(path(survey.path))),
        choice("way", manner, Label::DiameterBy, text(way(survey.diameter_way))),
        choice("top_head", manner, Label::TopHead, text(head(survey.top_head))),
        choice("bottom_head", manner, Label::BottomHead, text(head(survey.bottom_head))),
        choice("opening", manner, Label::Opening, text(opening(survey.opening))),
        choice("riser", manner, Label::Riser, text(yes_no(survey.riser && survey.opening.takes_riser()))),
        choice("collector", manner, Label::BottomCollector, text(collector(survey.collector))),
        choice("upper", manner, Label::UpperCollector, text(yes_no(survey.upper_collector))),
        Row::heading("entries", manner.label(Label::Survey)),
    ];
    rows.extend(asked(survey).into_iter().map(|field| filled_entry(survey, &reading, field, manner)));
    let unmeasured: Vec<&str> = reading.unmeasured(survey).into_iter().map(|field| manner.field(field)).collect();
    rows.push(Row::remark(
        "still_missing",
        if unmeasured.is_empty() {
            manner.label(Label::NothingMissing).to_owned()
        } else {
            format!("{} {}", manner.label(Label::StillMissing), unmeasured.join(", "))
        },
    ));
    let notes: Vec<&str> = survey.notes.lines().map(str::trim).filter(|line| !line.is_empty()).collect();
    rows.push(Row::heading("notes", manner.label(Label::Notes)));
    if notes.is_empty() {
        rows.push(Row::new("note:0", RowKind::Writing, vec![Cell::Empty]));
    }
    rows.extend(notes.iter().enumerate().map(|(at, line)| Row::remark(format!("note:{at}"), *line)));
    rows.extend(sketch(manner));
    rows
}

/// Value, unit and standing of an entry: as typed, or as assumed, or a line to write on where it is missing.
fn filled_entry(survey: &VesselSurvey, reading: &SurveyReading, field: SurveyField, manner: Manner) -> Row {
    let typed = survey.entries.get(&field).filter(|typed| !typed.entry.text.trim().is_empty());
    let unit = |symbol: &str| super::bill::text_or_empty(symbol);
    let usual = field.usual_unit(manner.metric);
    let (value, unit, standing) = match typed {
        Some(typed) => {
            let text = typed.entry.text.trim().to_owned();
            if let Some(misread) = reading.misread.get(&field) {
                let why = manner.misread(misread, typed.entry.unit);
                (Cell::Pen(text), unit(manner.unit(typed.entry.unit)), Cell::Lines(vec![why]))
            } else {
                let standing = manner.label(match typed.standing {
                    Standing::Measured => Label::StandingMeasured,
                    Standing::Assumed => Label::StandingAssumed,
                });
                // A text that names its unit, 4 ft 4 in, says so itself.
                let symbol = match reading.understood.get(&field) {
                    Some(understood) if !understood.names_unit => manner.unit(understood.written),
                    _ => "",
                };
                (Cell::Text(text), unit(symbol), Cell::Text(standing.to_owned()))
            }
        }
        None => match reading.assumed.get(&field) {
            Some(known) => {
                let value =
                    manner.decimal(usual.from_si(known.value.value), if usual == Unit::Millimetre { 1 } else { 2 });
                let standing = manner.label(Label::StandingAssumed).to_owned();
                (Cell::Text(value), unit(manner.unit(usual)), Cell::Lines(vec![standing, manner.source(known.source)]))
            }
            None => {
                let standing =
                    if reading.missing.contains(&field) { text_of(manner, Label::NotThereYet) } else { Cell::Empty };
                (Cell::Pen(String::new()), unit(manner.unit(usual)), standing)
            }
        },
    };
    Row::new(field.id(), RowKind::Item, vec![named(manner, field), value, unit, standing])
}

fn text_of(manner: Manner, label: Label) -> Cell {
    Cell::Text(manner.label(label).to_owned())
}
