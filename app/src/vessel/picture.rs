//! What the section of a vessel is drawn from, on its own page and wherever else it is shown.

use std::rc::Rc;
use std::sync::Arc;

use bedwright_job::as_loaded::{AsLoaded, as_loaded_of, last_loaded};
use bedwright_job::drawing::{Besides, Form, section_with};
use bedwright_job::id::Id;
use bedwright_job::papers::{Paper, section_caption, section_file, section_sheet, vessel_name};
use leptos::prelude::*;

use crate::desk::{Desk, today, with_answers, with_water};
use crate::parts::drawing_file::Filed;
use crate::parts::live::Shared;

/// A file's drawing has the room it has on a sheet of paper, mm.
const ROOM: Form = Form::Paper { width_mm: 168.0, height_mm: 210.0 };

/// What was signed for a vessel: of one tag, or what was signed last of any.
pub fn loaded_of(desk: Desk, vessel: &Id, tag: Option<&str>) -> Option<Arc<AsLoaded>> {
    desk.of_job(|job| match tag {
        Some(tag) => as_loaded_of(job, vessel, tag),
        None => last_loaded(job, vessel),
    })
}

/// The section for a file, made when it is asked for.
pub fn filed(desk: Desk, vessel: &Id, tag: Option<&str>) -> Shared<Option<Filed>> {
    let (vessel, tag) = (vessel.clone(), tag.map(str::to_owned));
    Rc::new(move || {
        untrack(|| {
            let (manner, today) = (desk.manner(), today());
            let besides = besides(desk, &vessel, tag.as_deref());
            let job = desk.open()?;
            with_answers(desk.answers(&vessel), |answers| {
                let answers = answers?;
                let name = match tag.as_deref().map(str::trim) {
                    None | Some("") => vessel_name(&job, &vessel, manner),
                    Some(tag) => tag.to_owned(),
                };
                let besides = besides.captioned(section_caption(&job, &name, manner, &today));
                Some((section_file(&job, &name, &today), section_with(answers, &manner, ROOM, &besides)))
            })
        })
    })
}

/// The section on a sheet of its own.
pub fn section_paper(desk: Desk, vessel: &Id, tag: Option<&str>) -> Option<Paper> {
    let (manner, besides) = (desk.paper_manner(), besides(desk, vessel, tag));
    let job = desk.open()?;
    with_answers(desk.answers(vessel), |answers| Some(section_sheet(&job, answers?, &besides, manner, &today())))
}

fn besides(desk: Desk, vessel: &Id, tag: Option<&str>) -> Besides {
    let loaded = loaded_of(desk, vessel, tag);
    with_water(desk.water(vessel), |water| Besides::new(water, loaded))
}
