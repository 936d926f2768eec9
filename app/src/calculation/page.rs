//! The calculation sheet's screen: one paper for each vessel of the job.

use bedwright_job::id::Id;
use bedwright_job::papers::{Paper, calculation_sheet};
use bedwright_job::words::Label;

use crate::desk::{Desk, today, with_answers, with_water};
use crate::parts::drawing_file::drawing_file;
use crate::parts::live::{El, el};
use crate::parts::sheet::printing;
use crate::vessel::picture::{filed, section_paper};

/// The calculation sheets.
pub fn calculation_page(desk: Desk) -> El {
    let paper = move |id: &Id| -> Option<Paper> {
        let (answers, water, manner) = (desk.answers(id), desk.water(id), desk.paper_manner());
        desk.of_job(|job| {
            with_answers(answers, |answers| {
                with_water(water, |water| Some(calculation_sheet(job, answers?, water, manner, &today())))
            })
        })
    };
    let ids =
        move || desk.of_job(|job| job.survey.body.vessels.iter().map(|vessel| vessel.id.clone()).collect::<Vec<_>>());
    // The picture first: what the figures after it are of.
    let papers = move || {
        let both = |id: &Id| [section_paper(desk, id, None), paper(id)];
        ids().iter().flat_map(both).flatten().collect()
    };
    let files = move |id: &str| {
        let id = Id::new(id);
        let name = crate::vessel::name_of(desk, &id);
        drawing_file(desk, &name, filed(desk, &id, None))
    };
    el("main", "page calculation")
        .kid(el("h1", "page-title").text(desk.label(Label::CalculationSheet)))
        .kid(el("div", "drawing-files").each(move || ids().iter().map(Id::to_string).collect(), files))
        .kid(printing(desk, papers))
}
