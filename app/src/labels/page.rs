//! The labels' screen: a size, and the sheets as they will come out.

use std::sync::Arc;

use bedwright_edge::address;
use bedwright_job::answers::VesselAnswers;
use bedwright_job::answers::supply::entered;
use bedwright_job::decimal::to_places;
use bedwright_job::drawing::{MOST_ON_LABEL, QrPicture, qr_of_link};
use bedwright_job::envelope::{card, digits};
use bedwright_job::field::SupplyField;
use bedwright_job::id::Id;
use bedwright_job::papers::{SMALLEST_MM, Sticker, places, stickers};
use bedwright_job::sheets::PageSize;
use bedwright_job::words::{CareLabel, DeviceLabel, Label, SupplyLabel};

use crate::desk::{Desk, today, with_bill};
use crate::packs::entry_line;
use crate::parts::live::{El, el};
use crate::parts::qr::qr;
use crate::parts::sheet::{page_size, printing_of};
use crate::parts::signal::Worked;

/// A size that labels may be printed in, or why not.
#[derive(Clone, Copy, PartialEq)]
enum Size {
    Of(f64, f64),
    TooSmall,
    Misread,
}

/// The labels.
pub fn labels_page(desk: Desk) -> El {
    let say = move |label: SupplyLabel| desk.label(label);
    let bill = desk.bill();
    let size = Worked::new(move || {
        let of = |field: SupplyField| {
            desk.of_job(|job| entered(&job.supply.body, field).ok().flatten().map(|known| known.value))
        };
        match (of(SupplyField::LabelWidth), of(SupplyField::LabelHeight)) {
            (Some(width), Some(height)) => {
                let (width, height) = (width * 1000.0, height * 1000.0);
                if width < SMALLEST_MM.0 || height < SMALLEST_MM.1 { Size::TooSmall } else { Size::Of(width, height) }
            }
            _ => Size::Misread,
        }
    });
    let all: Worked<Vec<Sticker>> = Worked::new(move || {
        let ids = desk.of_job(|job| job.survey.body.vessels.iter().map(|vessel| vessel.id.clone()).collect::<Vec<_>>());
        let answers: Vec<Arc<VesselAnswers>> = ids.iter().filter_map(|id| desk.answers(id).get()).collect();
        let height = match size.get() {
            Size::Of(_, height) => height,
            Size::TooSmall | Size::Misread => SMALLEST_MM.1,
        };
        desk.of_job(|job| with_bill(bill, |bill| stickers(job, &answers, bill, desk.paper_manner(), &today(), height)))
    });
    let paper = Worked::new(move || page_size(desk.person.with(|person| person.paper)));
    let on_sheet = move || match size.get() {
        Size::Of(width, height) => places(paper.get(), width, height),
        Size::TooSmall | Size::Misread => Vec::new(),
    };
    let told = move || match size.get() {
        Size::TooSmall => say(SupplyLabel::LabelTooSmall).to_owned(),
        Size::Of(..) if on_sheet().is_empty() => say(SupplyLabel::LabelTooLarge).to_owned(),
        Size::Of(..) => {
            let count = all.with(Vec::len);
            format!(
                "{count} {} · {} {}",
                say(SupplyLabel::Labels).to_lowercase(),
                on_sheet().len(),
                say(SupplyLabel::LabelsPerSheet)
            )
        }
        Size::Misread => String::new(),
    };
    let empty = move || all.with(Vec::is_empty);
    el("main", "page labels")
        .kid(el("h1", "page-title").text(say(SupplyLabel::Labels)))
        .kid(el("p", "").text(say(SupplyLabel::LabelsHint)))
        .when(address::from_disk, move || vec![el("p", "").text(desk.label(DeviceLabel::CodeForPage))])
        .when(empty, move || vec![el("p", "").text(desk.label(Label::EmptyBill))])
        .kid(el("div", "entries").kid(entry_line(desk, SupplyField::LabelWidth, "")).kid(entry_line(
            desk,
            SupplyField::LabelHeight,
            "",
        )))
        .kid(el("p", "packs-decided").set("role", "status").says(told))
        .kid(printing_of(desk, move || {
            let (places, paper) = (on_sheet(), paper.get());
            let Size::Of(width, height) = size.get() else { return Vec::new() };
            all.with(|all| sheets(desk, all, &places, paper, (width, height)))
        }))
}

/// The sheets, as many labels on each as fit.
fn sheets(desk: Desk, all: &[Sticker], places: &[(f64, f64)], paper: PageSize, size: (f64, f64)) -> Vec<El> {
    if places.is_empty() {
        return Vec::new();
    }
    all.chunks(places.len())
        .map(|some| {
            let class = format!("sheet sheet-{} sheet-labels", paper.id());
            let labels = some.iter().zip(places).map(|(label, place)| label_on(desk, label, *place, size));
            el("article", &class).set("aria-label", desk.label(SupplyLabel::Labels)).kids(labels.collect())
        })
        .collect()
}

/// The code with the card of a tag: with every measure where that can be printed, else with what the vessel is and holds.
fn card_code(desk: Desk, vessel: &Id, tag: &str) -> Option<QrPicture> {
    let job = desk.open_now()?;
    let before = [&address::page(), "#/open/"].concat();
    [true, false].into_iter().find_map(|full| {
        let sealed = card(&job, vessel, tag, full)?;
        qr_of_link(&before, &digits(&sealed), MOST_ON_LABEL)
    })
}

fn label_on(desk: Desk, label: &Sticker, (x, y): (f64, f64), (width, height): (f64, f64)) -> El {
    let mm = |value: f64| to_places(value, 2) + "mm";
    let line = |(name, text): &(String, String)| {
        el("div", "label-line").kid(el("dt", "").text(name)).kid(el("dd", "").text(text))
    };
    let mut body = el("div", "label-body").kid(el("dl", "label-lines").kids(label.lines.iter().map(line).collect()));
    if let Some((vessel, tag)) = &label.card {
        let code = el("div", "label-code");
        body = body.kid(match card_code(desk, vessel, tag) {
            Some(picture) => {
                code.kid(qr(&picture, &[desk.paper_manner().label(CareLabel::ServiceCard), " ", &label.title].concat()))
            }
            // More layers than a code of this size holds: a pen finds room.
            None => code.kid(el("span", "label-room").text(desk.paper_manner().label(SupplyLabel::QrRoom))),
        });
    }
    el("section", "label")
        .set("data-key", &label.key)
        .styled("left", &mm(x))
        .styled("top", &mm(y))
        .styled("width", &mm(width))
        .styled("height", &mm(height))
        .kid(el("p", "label-title").text(&label.title))
        .kid(el("p", "label-about").text(&label.about))
        .kid(body)
}
