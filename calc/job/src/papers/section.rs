//! The section of a vessel on a sheet of its own.

use std::sync::Arc;

use super::title::{notes, subtitle, title_block};
use super::{Align, Cell, Column, Paper, PaperKind, Row, RowKind, vessel_name};
use crate::answers::VesselAnswers;
use crate::drawing::{Besides, Form, section_with};
use crate::job::Job;
use crate::words::{DrawingLabel, Manner};

/// Room on both sizes of paper, mm.
const ROOM: Form = Form::Paper { width_mm: 168.0, height_mm: 176.0 };

/// A vessel as it is filled, to scale, with what is known of it besides the plan.
#[must_use]
pub fn section_sheet(job: &Job, answers: &VesselAnswers, besides: &Besides, manner: Manner, today: &str) -> Paper {
    let drawing = section_with(answers, &manner, ROOM, besides);
    let place = job.survey.body.vessels.iter().position(|vessel| vessel.id == answers.id);
    Paper {
        kind: PaperKind::Section,
        title: manner.label(DrawingLabel::Sheet).to_owned(),
        subtitle: [&vessel_name(job, &answers.id, manner), " · ", &subtitle(job, manner)].concat(),
        title_block: title_block(job, PaperKind::Section, place.map(|place| place + 1), manner, today),
        columns: vec![Column::new("picture", "", Align::Start, 1)],
        rows: vec![Row::new("section", RowKind::Remark, vec![Cell::Picture(Arc::new(drawing))])],
        totals: Vec::new(),
        notes: notes(job, manner, false),
    }
}

/// A line that says whose picture a file holds: the vessel, the day, the job.
#[must_use]
pub fn section_caption(job: &Job, name: &str, manner: Manner, today: &str) -> String {
    [name, " · ", today, " · ", &subtitle(job, manner)].concat()
}

/// What a file with the section is called, without what follows the dot: the job, the vessel, the day.
#[must_use]
pub fn section_file(job: &Job, name: &str, today: &str) -> String {
    let title = job.head.body.title.trim();
    let title = if title.is_empty() { job.id.as_str() } else { title };
    let parts = [title, name, today];
    parts.map(|part| plain(part, 40)).join("_")
}

/// A name as any file system takes it.
fn plain(text: &str, most: usize) -> String {
    let mut plain = String::new();
    for letter in text.trim().chars().take(most) {
        let letter = if letter.is_alphanumeric() { letter } else { '-' };
        if letter != '-' || !plain.ends_with('-') {
            plain.push(letter);
        }
    }
    plain.trim_matches('-').to_owned()
}
