//! The calculation sheet's screen: one paper for each vessel of the job.

use bedwright_job::id::Id;
use bedwright_job::papers::{Paper, calculation_sheet};
use bedwright_job::words::Label;

use crate::desk::{Desk, today, with_answers, with_water};
use crate::parts::live::{El, el};
use crate::parts::sheet::printing;

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
    let papers = move || {
        let ids = desk.of_job(|job| job.survey.body.vessels.iter().map(|vessel| vessel.id.clone()).collect::<Vec<_>>());
        ids.iter().filter_map(paper).collect()
    };
    el("main", "page calculation")
        .kid(el("h1", "page-title").text(desk.label(Label::CalculationSheet)))
        .kid(printing(desk, papers))
}
