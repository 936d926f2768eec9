//! What stands under the lines of a pick list: how pipe is cut, what may be lifted, papers and tools to send along.

use std::sync::Arc;

use bedwright_calc::supply::Item;

use super::picking::pick_rows;
use super::staging::{on_pallets, staged};
use super::{Cell, Row, RowKind, vessel_name};
use crate::answers::JobBill;
use crate::answers::supply::{RiserCuts, lift, riser_cuts};
use crate::drawing::{Drawing, Form, cut_drawing};
use crate::job::Job;
use crate::words::{Manner, SupplyLabel};

/// A tool to take along.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Tool {
    /// To read the tape.
    Tape,
    /// To look inside.
    Light,
    /// To level the bed.
    Level,
    /// To mark the riser.
    Marker,
    /// For part bags, and to measure the drain.
    Bucket,
    /// To cut the riser.
    Saw,
    /// To take the old bed out.
    Vacuum,
    /// To lead the first water away.
    Hoses,
    /// To test the outlet.
    TestKit,
    /// For packs nobody should lift alone.
    LiftingAid,
}

/// Room for a cut plan on a sheet, mm.
const PICTURE: Form = Form::Paper { width_mm: 170.0, height_mm: 250.0 };

/// The rows.
pub(super) fn rows(job: &Job, bill: &JobBill, manner: Manner) -> Vec<Row> {
    if bill.bill.pooled.is_empty() {
        return Vec::new();
    }
    let say = |label: SupplyLabel| manner.label(label);
    let mut rows = Vec::new();
    let cuts = riser_cuts(job, bill);
    if !cuts.is_empty() {
        rows.push(Row::heading("cutting", say(SupplyLabel::CutFromStock)));
        for (at, cut) in cuts.iter().enumerate() {
            rows.push(Row::remark(format!("cutting:{at}"), cut_text(cut, manner)));
            let pictures = pictures(job, bill, cut, manner, PICTURE);
            for (part, drawing) in pictures.into_iter().enumerate() {
                rows.push(Row::new(
                    format!("cutting:{at}:{part}"),
                    RowKind::Remark,
                    vec![Cell::Picture(Arc::new(drawing))],
                ));
            }
        }
    }
    rows.push(Row::heading("lifting", say(SupplyLabel::Lifting)));
    rows.extend(
        lifting_texts(job, bill, manner)
            .into_iter()
            .enumerate()
            .map(|(at, text)| Row::remark(format!("lifting:{at}"), text)),
    );
    let pallets = match on_pallets(job, &staged(job, bill, manner)) {
        Ok(pallets) => manner.named(say(SupplyLabel::OnPallets), &pallets.len().to_string()),
        Err(problem) => manner.problem(&problem),
    };
    rows.push(Row::remark("pallets", pallets));
    let tick = |key: String, text: String| Row::new(key, RowKind::Remark, vec![Cell::Choice(vec![(false, text)])]);
    rows.push(Row::heading("send", say(SupplyLabel::SendAlong)));
    let mut materials: Vec<&str> = Vec::new();
    for line in &bill.bill.pooled {
        if let Item::Pack { material, .. } = &line.item
            && !materials.contains(&material.as_ref())
        {
            materials.push(material);
        }
    }
    for material in materials {
        let name = manner.material(material);
        rows.push(tick(format!("safety:{material}"), manner.named(say(SupplyLabel::SafetySheet), &name)));
        rows.push(tick(format!("certificate:{material}"), manner.named(&name, say(SupplyLabel::Certificate))));
    }
    rows.push(Row::heading("tools", say(SupplyLabel::Tools)));
    let heavy = pick_rows(job, bill, manner).iter().any(|row| row.lifting.is_some_and(|index| index > 1.0));
    let tools = tools(job, !cuts.is_empty(), heavy);
    rows.push(Row::new(
        "tools:all",
        RowKind::Remark,
        vec![Cell::Choice(tools.into_iter().map(|tool| (false, manner.label(tool).to_owned())).collect())],
    ));
    rows
}

fn tools(job: &Job, cut: bool, heavy: bool) -> Vec<Tool> {
    use bedwright_calc::supply::JobKind;
    let mut tools = vec![Tool::Tape, Tool::Light, Tool::Level, Tool::Marker, Tool::Bucket];
    if cut {
        tools.push(Tool::Saw);
    }
    if matches!(job.head.body.kind, JobKind::Changeout | JobKind::Partial) {
        tools.push(Tool::Vacuum);
    }
    tools.extend([Tool::Hoses, Tool::TestKit]);
    if heavy {
        tools.push(Tool::LiftingAid);
    }
    tools
}

/// How a pipe is cut, in a sentence.
#[must_use]
pub fn cut_text(cut: &RiserCuts, manner: Manner) -> String {
    let say = |label: SupplyLabel| manner.label(label);
    let pipe = cut.size.map(|size| manner.size(size)).unwrap_or_default();
    match &cut.plan {
        Ok(plan) => {
            let count = plan.lengths.len();
            let of = if count == 1 { SupplyLabel::LengthOf } else { SupplyLabel::LengthsOf };
            let bound = if plan.is_least() {
                say(SupplyLabel::LeastProven).to_owned()
            } else {
                format!("{} {}", say(SupplyLabel::LeastUnknown), plan.at_least)
            };
            let about = if cut.on_site { format!(" {}", say(SupplyLabel::AboutCut)) } else { String::new() };
            format!("{pipe}: {count} {} {}, {bound}.{about}", say(of), manner.tape(cut.stock.length))
        }
        Err(problem) => manner.named(&pipe, &manner.problem(problem)),
    }
}

/// Stock lengths in one picture: no picture may be higher than a sheet.
const LENGTHS_DRAWN: usize = 10;

/// The pictures of a cut plan, some stock lengths on each.
#[must_use]
pub fn pictures(job: &Job, bill: &JobBill, cut: &RiserCuts, manner: Manner, form: Form) -> Vec<Drawing> {
    // Each piece is for one tag of its vessel, in their order.
    let mut before: Vec<usize> = vec![0; bill.vessels.len()];
    let mut name = |vessel: usize| {
        let id = bill.vessels.get(vessel)?;
        let place = before.get_mut(vessel)?;
        let tag = job.vessel(id).and_then(|there| there.tags.get(*place).map(|tag| tag.trim().to_owned()));
        *place += 1;
        Some(tag.filter(|tag| !tag.is_empty()).unwrap_or_else(|| vessel_name(job, id, manner)))
    };
    let names: Vec<String> = cut.pieces.iter().map(|(vessel, _)| name(*vessel).unwrap_or_default()).collect();
    let lengths = cut.plan.as_ref().map_or(0, |plan| plan.lengths.len());
    (0..lengths)
        .step_by(LENGTHS_DRAWN)
        .filter_map(|from| cut_drawing(cut, from..lengths.min(from + LENGTHS_DRAWN), &names, &manner, form))
        .collect()
}

/// What one person may lift, and which packs are more than that.
#[must_use]
pub fn lifting_texts(job: &Job, bill: &JobBill, manner: Manner) -> Vec<String> {
    let say = |label: SupplyLabel| manner.label(label);
    let limit = match lift(job) {
        Ok(limit) => limit.value,
        Err(problem) => return vec![manner.problem(&problem)],
    };
    let mut texts =
        vec![format!("{} {}. {}", say(SupplyLabel::MayLift), manner.mass(limit), say(SupplyLabel::LiftingHint))];
    for row in pick_rows(job, bill, manner) {
        if let (Some(each), Some(index)) = (row.each, row.lifting.filter(|index| *index > 1.0)) {
            texts.push(format!(
                "▲ {}, {}: {} {}: {}.",
                row.item,
                manner.mass(each),
                manner.decimal(index, 1),
                say(SupplyLabel::TimesLimit),
                say(SupplyLabel::TwoPeople)
            ));
        }
    }
    texts
}
