//! The due list on paper: what is to be ordered or brought now, then what comes by its day, over all jobs.

use super::title::{job_title, list_block};
use super::{Align, Cell, Column, Paper, PaperKind, Row, RowKind};
use crate::care::card::CareMark;
use crate::care::due::DueRow;
use crate::job::Job;
use crate::words::{CardLabel, CareLabel, Label, Manner};

/// The list, from its rows in their order; `jobs` are those they are of.
#[must_use]
pub fn due_list_sheet<'a>(
    rows: &[DueRow],
    jobs: impl Iterator<Item = &'a Job> + Clone,
    manner: Manner,
    today: &str,
) -> Paper {
    let say = |label: CareLabel| manner.label(label).to_owned();
    let mut lines = Vec::new();
    for (now, title) in [(true, CardLabel::Order), (false, CardLabel::Coming)] {
        let some: Vec<Row> = rows
            .iter()
            .filter(|row| (row.card.mark == CareMark::OrderNow) == now)
            .map(|row| line(row, jobs.clone().find(|job| job.id == row.job), manner))
            .collect();
        if !some.is_empty() {
            let count = manner.sentence(CardLabel::Rows, &[("count", &some.len().to_string())]);
            lines.push(Row::heading(format!("heading:{now}"), [manner.label(title), " · ", &count].concat()));
            lines.extend(some);
        }
    }
    if lines.is_empty() {
        lines.push(Row::remark("none", say(CareLabel::NothingDue)));
    }
    let sample = jobs.clone().any(|job| job.head.body.sample && rows.iter().any(|row| row.job == job.id));
    let notes = [sample.then_some(Label::SampleMark), Some(Label::PlanningAid)];
    Paper {
        kind: PaperKind::DueList,
        title: say(CareLabel::DueList),
        subtitle: [today, " · ", manner.label(CareLabel::DueHint)].concat(),
        title_block: list_block(jobs, manner, today),
        columns: vec![
            Column::new("check", "", Align::Start, 6),
            Column::new("day", say(CareLabel::Due), Align::Start, 21),
            Column::new("what", say(CareLabel::What), Align::Start, 30),
            Column::new("where", say(CareLabel::Where), Align::Start, 34),
            Column::new("why", say(CareLabel::Why), Align::Start, 52),
        ],
        rows: lines,
        totals: Vec::new(),
        notes: notes.into_iter().flatten().map(|label| manner.label(label).to_owned()).collect(),
    }
}

fn line(row: &DueRow, job: Option<&Job>, manner: Manner) -> Row {
    let mark = [manner.care_sign(row.card.mark), " ", manner.care_mark(row.card.mark)].concat();
    let title = job.map_or_else(|| row.title.clone(), |job| job_title(job, manner));
    let place = &row.card.place;
    let key = ["due:", row.job.as_str(), ":", place.vessel.as_str(), ":", &place.tag].concat();
    let cells = vec![
        Cell::Tick(false),
        Cell::Text(row.day.text()),
        Cell::Named { name: manner.due_what(&row.card, row.new_bed), hint: mark },
        Cell::Named { name: title, hint: row.site.trim().to_owned() },
        Cell::Text(manner.care_reason(&row.card.reason)),
    ];
    Row::new(key, RowKind::Item, cells)
}
