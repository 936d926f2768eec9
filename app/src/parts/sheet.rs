//! Papers on sheets: measured at the paper's width, laid out row by row, shown and printed as the same sheets.

use bedwright_edge::listen::Listener;
use bedwright_job::decimal::to_places;
use bedwright_job::drawing::code_128::QUIET;
use bedwright_job::papers::{Align, Cell, Column, Field, Paper, PaperKind, Row, RowKind};
use bedwright_job::sheets::{PageSize, Room, RowHeight, Sheet, fill};
use bedwright_job::words::{Label, Language};
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::Element;

use super::choice::{choice, pick};
use super::drawing::still_drawing;
use super::equation::equation;
use super::letterhead::{self, Letterhead};
use super::live::{El, Shared, button, el, follow, svg};
use super::signal::{Held, Kept, Worked};
use crate::desk::Desk;
use crate::language::bring;
use crate::person::{PaperSize, Person};

/// Less than this, in CSS pixels, is left free on every sheet: printers round.
const SLACK_PX: f64 = 2.0;

/// The sheets for the paper in a person's printer.
pub fn page_size(paper: PaperSize) -> PageSize {
    match paper {
        PaperSize::Letter => PageSize::Letter,
        PaperSize::A4 => PageSize::A4,
    }
}

/// Choice of paper, the button that prints, and the sheets as they will come out.
pub fn printing(desk: Desk, papers: impl Fn() -> Vec<Paper> + 'static) -> El {
    let paper = Worked::new(move || desk.person.with(|person| person.paper));
    printing_around(desk, paper, sheets(std::rc::Rc::new(papers), paper, letterhead::of(desk)))
}

/// The same of sheets that are drawn as they are, not filled with rows.
pub fn printing_of(desk: Desk, drawn: impl Fn() -> Vec<El> + 'static) -> El {
    let paper = Worked::new(move || desk.person.with(|person| person.paper));
    let scale = Held::new("1.0000".to_owned());
    let shown = el("div", "sheets-shown");
    let room = shown.node().clone();
    let fitted: std::rc::Rc<dyn Fn()> = std::rc::Rc::new(move || fit(&room, page_size(untrack(|| paper.get())), scale));
    let (first, resized) = (fitted.clone(), fitted);
    follow(move || {
        paper.track();
        after_drawing(first.clone());
    });
    // It goes with the screen.
    Kept::new(Listener::on_window("resize", move |_| resized()));
    let shown = shown.kid(el("div", "sheets-scale").styles("zoom", move || scale.get()).live(drawn));
    printing_around(desk, paper, el("div", "sheets").kid(shown))
}

/// Calls after the browser has put in place what was changed.
fn after_drawing(call: std::rc::Rc<dyn Fn()>) {
    let call = Closure::once_into_js(move || call());
    // A page that draws no frames shows no sheets either.
    let _ = window().request_animation_frame(call.unchecked_ref());
}

/// Shows sheets as large as there is room for, never larger than they are.
fn fit(room: &Element, size: PageSize, scale: Held<String>) {
    let wide = size.width_mm() / 25.4 * 96.0;
    let room = f64::from(room.client_width());
    if room > 0.0 {
        let zoom = to_places((room / wide).min(1.0), 4);
        if scale.with_untracked(|there| *there != zoom) {
            scale.set(zoom);
        }
    }
}

fn printing_around(desk: Desk, paper: Worked<PaperSize>, sheets: El) -> El {
    let silent = Held::new(false);
    let sizes = [(PaperSize::Letter, Label::PaperLetter), (PaperSize::A4, Label::PaperA4)];
    let print = move || {
        silent.set(false);
        bedwright_edge::print::print(move |begun| {
            // The screen may have been left before the dialog was.
            silent.set(!begun);
        });
    };
    let tools = el("div", "printing-tools")
        .kid(pick(
            desk.label(Label::Paper),
            "sheet-size",
            &sizes.map(|(_, label)| desk.label(label)),
            move || sizes.iter().position(|(size, _)| *size == paper.get()),
            move |at| {
                if let Some((size, _)) = sizes.get(at) {
                    desk.prefer(|person| person.paper = *size);
                }
            },
        ))
        .kid(paper_language(desk))
        .kid(button("primary", desk.label(Label::Print), print))
        .kid(
            el("p", "printing-hint")
                .set("role", "status")
                .marks("printing-silent", move || silent.get())
                .text(desk.label(Label::PrintHint)),
        );
    let foreign = move || {
        let (paper, person) = (desk.paper_manner().language, desk.person.with(Person::manner).language);
        (paper != person).then(|| paper.tag().to_owned())
    };
    el("section", "printing")
        .set("aria-labelledby", "on-paper")
        .kid(el("h2", "rule").set("id", "on-paper").text(desk.label(Label::OnPaper)))
        .kid(tools)
        .kid(el("div", "").tells("lang", foreign).kid(sheets))
}

/// The language of the papers: the person's own, or the customer's.
fn paper_language(desk: Desk) -> El {
    let now = move || {
        let language = desk.paper_manner().language;
        Language::ALL.iter().position(|there| *there == language)
    };
    let choose = move |at: usize| {
        let Some(language) = Language::ALL.get(at).copied() else { return };
        wasm_bindgen_futures::spawn_local(async move {
            // Where its texts can't be had the paper stays as it is.
            if bring(language).await {
                desk.paper_language.set(Some(language));
            }
        });
    };
    let names = || Language::ALL.iter().map(|language| language.own_name().to_owned()).collect();
    choice(desk.label(Label::PaperLanguage), names, now, choose)
}

/// The sheets of some papers.
fn sheets(papers: Shared<Vec<Paper>>, paper: Worked<PaperSize>, head: Shared<Option<Letterhead>>) -> El {
    let size = move || page_size(paper.get());
    // Each paper with its sheets; what was measured goes with what was drawn, so that rows never change under a layout.
    let laid: Held<Vec<(Paper, Vec<Sheet>)>> = Held::new(Vec::new());
    let scale = Held::new("1.0000".to_owned());
    let (drawn, watched) = (papers.clone(), papers.clone());
    let (measured_head, watched_head) = (head.clone(), head.clone());
    let measured = el("div", "sheets-measured").set("aria-hidden", "true").live(move || {
        let (size, head) = (size(), measured_head());
        drawn().iter().map(|paper| whole_sheet(paper, size, head.as_ref())).collect()
    });
    let shown =
        el("div", "sheets-shown").kid(el("div", "sheets-scale").styles("zoom", move || scale.get()).live(move || {
            let (size, head) = (size(), head());
            let head = head.as_ref();
            laid.with(|laid| {
                laid.iter()
                    .flat_map(|(paper, sheets)| sheets.iter().map(move |sheet| one_sheet(paper, sheet, size, head)))
                    .collect()
            })
        }));
    let (column, room) = (measured.node().clone(), shown.node().clone());
    let lay_out: std::rc::Rc<dyn Fn()> = std::rc::Rc::new(move || {
        // The screen may have been left since this was asked for.
        if !column.is_connected() {
            return;
        }
        let size = page_size(untrack(|| paper.get()));
        let papers = untrack(|| papers());
        let measured = by_class(&column, "sheet");
        let all: Vec<(Paper, Vec<Sheet>)> = papers
            .into_iter()
            .zip(measured)
            .map(|(paper, element)| {
                let sheets = fill_measured(&paper, &element);
                (paper, sheets)
            })
            .collect();
        if laid.with_untracked(|there| *there != all) {
            laid.set(all);
        }
        fit(&room, size, scale);
    });
    let (asked, resized) = (lay_out.clone(), lay_out);
    follow(move || {
        watched();
        watched_head();
        paper.track();
        after_drawing(asked.clone());
    });
    // It goes with the screen.
    Kept::new(Listener::on_window("resize", move |_| resized()));
    el("div", "sheets").kid(measured).kid(shown)
}

/// The elements of a class inside another, in order.
fn by_class(inside: &Element, class: &str) -> Vec<Element> {
    let found = inside.get_elements_by_class_name(class);
    (0..found.length()).filter_map(|at| found.item(at)).collect()
}

fn height_of(element: &Element) -> f64 {
    element.get_bounding_client_rect().height()
}

/// Lays out a paper from the sheet that holds all of it.
fn fill_measured(paper: &Paper, element: &Element) -> Vec<Sheet> {
    let sum = |class: &str| by_class(element, class).iter().map(height_of).sum::<f64>();
    let rows: Vec<RowHeight> = by_class(element, "sheet-row")
        .iter()
        .zip(&paper.rows)
        .map(|(drawn, row)| RowHeight { height: height_of(drawn), with_next: row.kind == RowKind::Heading })
        .collect();
    let first = sum("sheet-body") - sum("sheet-columns") - SLACK_PX;
    fill(&rows, Room { first, later: first + sum("sheet-head"), end: sum("sheet-totals") })
}

fn kind_class(kind: PaperKind) -> &'static str {
    match kind {
        PaperKind::PickList => "sheet-pick-list",
        PaperKind::Staging => "sheet-staging",
        PaperKind::Survey => "sheet-survey",
        PaperKind::BillOfMaterials => "sheet-bill",
        PaperKind::Section => "sheet-section",
        PaperKind::Calculation => "sheet-calculation",
        PaperKind::Removal | PaperKind::Loading => "sheet-work",
        PaperKind::StartUp => "sheet-start-up",
        PaperKind::ServiceCard | PaperKind::DueList => "sheet-care",
        PaperKind::Quote => "sheet-quote",
        PaperKind::InternalQuote => "sheet-quote sheet-internal",
    }
}

/// A sheet with every row on it, to be measured.
fn whole_sheet(paper: &Paper, size: PageSize, head: Option<&Letterhead>) -> El {
    let all = Sheet { rows: 0..paper.rows.len(), number: 1, of: 1 };
    one_sheet(paper, &all, size, head)
}

fn one_sheet(paper: &Paper, sheet: &Sheet, size: PageSize, head: Option<&Letterhead>) -> El {
    let block = &paper.title_block;
    let number = block.sheet_number(sheet.number, sheet.of);
    let rows = paper.rows.get(sheet.rows.clone()).unwrap_or_default();
    let columns = paper.columns.len();
    let headings = paper
        .columns
        .iter()
        .map(|column| match column.heading.as_str() {
            "" => el("td", &cell_class(column)),
            heading => el("th", &cell_class(column)).set("scope", "col").text(heading),
        })
        .collect();
    let mut table = el("table", "sheet-table").kid(column_widths(&paper.columns));
    // A sheet of a quote that holds nothing but texts has no use for the columns' names.
    let quote = matches!(paper.kind, PaperKind::Quote | PaperKind::InternalQuote);
    if !quote || sheet.number == 1 || rows.iter().any(|row| row.kind == RowKind::Item) {
        table = table.kid(el("thead", "").kid(el("tr", "sheet-columns").kids(headings)));
    }
    table = table.kid(el("tbody", "").kids(rows.iter().map(|row| sheet_row(row, &paper.columns, columns)).collect()));
    if sheet.is_last() && !paper.totals.is_empty() {
        table = table.kid(el("tfoot", "").kid(el("tr", "sheet-totals").kids(cells(&paper.totals, &paper.columns))));
    }
    let mut frame = el("div", "sheet-frame");
    if sheet.number == 1 {
        frame = frame.kid(
            el("header", "sheet-head")
                .kid(
                    el("div", "sheet-titles")
                        .kid(el("p", "sheet-title").text(&paper.title))
                        .kid(el("p", "sheet-subtitle").text(&paper.subtitle)),
                )
                .kids(head.and_then(|head| head.on(&block.owner.value)).into_iter().collect()),
        );
    }
    let fields = vec![
        block_field("owner", &block.owner),
        block_field("signed", &block.signed),
        block_field("title", &block.title),
        block_field("document", &block.document),
        block_field("date", &block.date),
        block_field("revision", &block.revision),
        block_field("job", &block.job),
        block_field("sheet", &Field { label: block.sheet.clone(), value: number.clone() }),
    ];
    let foot = el("footer", "sheet-foot")
        .kid(el("div", "sheet-notes").kids(paper.notes.iter().map(|note| el("p", "").text(note)).collect()))
        .kid(el("dl", "title-block").kids(fields));
    el("article", &format!("sheet sheet-{} {}", size.id(), kind_class(paper.kind)))
        .set("aria-label", &format!("{}, {} {number}", paper.title, block.sheet))
        .kid(frame.kid(el("div", "sheet-body").kid(table)).kid(foot))
}

fn block_field(id: &'static str, field: &Field) -> El {
    el("div", &format!("block-field block-{id}"))
        .kid(el("dt", "").text(&field.label))
        .kid(el("dd", "").text(&field.value))
}

fn column_widths(columns: &[Column]) -> El {
    let all: u32 = columns.iter().map(|column| column.weight).sum::<u32>().max(1);
    let widths = columns.iter().map(|column| {
        let width = to_places(f64::from(column.weight) / f64::from(all) * 100.0, 3) + "%";
        el("col", "").styled("width", &width)
    });
    el("colgroup", "").kids(widths.collect())
}

fn cell_class(column: &Column) -> String {
    let align = match column.align {
        Align::Start => "",
        Align::End => " cell-end",
    };
    format!("cell cell-{}{align}", column.id)
}

fn sheet_row(row: &Row, columns: &[Column], count: usize) -> El {
    let class = match row.kind {
        RowKind::Heading => "sheet-row row-heading",
        RowKind::Item => "sheet-row",
        RowKind::Remark => "sheet-row row-remark",
        RowKind::Sum => "sheet-row row-sum",
        RowKind::Total => "sheet-row row-sum row-total",
        RowKind::Writing => "sheet-row row-writing",
        RowKind::Sketch => "sheet-row row-sketch",
    };
    let drawn = el("tr", class);
    if row.cells.len() == 1 && row.kind != RowKind::Item {
        let mut wide = el("td", "cell cell-wide").set("colspan", &count.to_string());
        if let Some(cell) = row.cells.first() {
            wide = cell_inside(wide, cell);
        }
        return drawn.kid(wide);
    }
    if matches!(row.kind, RowKind::Sum | RowKind::Total) {
        return drawn.kids(sum_cells(&row.cells, count));
    }
    drawn.kids(cells(&row.cells, columns))
}

/// The name of a sum over all columns but two, and its amount over those.
fn sum_cells(cells: &[Cell], count: usize) -> Vec<El> {
    let spans = [count.saturating_sub(2).max(1), 2];
    let classes = ["cell cell-sum", "cell cell-sum cell-sum-amount"];
    let drawn = cells.iter().zip(spans).zip(classes);
    drawn.map(|((cell, span), class)| cell_inside(el("td", class).set("colspan", &span.to_string()), cell)).collect()
}

/// The cells of a row; where they are fewer than the columns the last one reaches to the right edge.
fn cells(cells: &[Cell], columns: &[Column]) -> Vec<El> {
    let last = cells.len().saturating_sub(1);
    cells
        .iter()
        .zip(columns)
        .enumerate()
        .map(|(at, (cell, column))| {
            let span = if at == last { columns.len().saturating_sub(at) } else { 1 };
            let class = if span > 1 { "cell cell-wide".to_owned() } else { cell_class(column) };
            cell_inside(el("td", &class).set("colspan", &span.to_string()), cell)
        })
        .collect()
}

/// Fills a cell.
fn cell_inside(drawn: El, cell: &Cell) -> El {
    match cell {
        Cell::Empty => drawn,
        Cell::Text(text) => drawn.text(text),
        Cell::Large(text) => drawn.kid(el("span", "cell-large").text(text)),
        Cell::Lines(lines) => {
            drawn.kid(el("span", "cell-lines").kids(lines.iter().map(|line| el("span", "").text(line)).collect()))
        }
        Cell::Equation(lines) => {
            drawn.kids(lines.iter().map(|line| equation(el("span", "equation-line"), line)).collect())
        }
        Cell::Named { name, hint } => {
            let drawn = drawn.kid(el("span", "cell-name").text(name));
            if hint.is_empty() { drawn } else { drawn.kid(el("span", "cell-hint").text(hint)) }
        }
        Cell::Tick(ticked) => drawn.kid(tick(*ticked)),
        Cell::Choice(choices) => {
            let one =
                |ticked: bool, name: &str| el("span", "cell-choice").kid(tick(ticked)).kid(el("span", "").text(name));
            drawn
                .kid(el("span", "cell-choices").kids(choices.iter().map(|(ticked, name)| one(*ticked, name)).collect()))
        }
        Cell::Pen(text) => drawn.kid(el("span", "cell-pen").text(text)),
        Cell::Code { text, bars, room_mm } => {
            let drawn = drawn.kid(el("span", "cell-large").text(text));
            match bars {
                Some(bars) => drawn.kid(bar_code(bars, *room_mm)),
                None => drawn,
            }
        }
        Cell::Picture(drawing) => drawn.kid(still_drawing(drawing)),
    }
}

/// The widest module, mm.
const MODULE_MM: f64 = 0.25;

/// Bars as wide as a scanner likes, white on either side.
fn bar_code(bars: &[u8], room_mm: f64) -> El {
    let modules = bars.iter().map(|width| u32::from(*width)).sum::<u32>() + 2 * QUIET;
    let mut path = String::new();
    let mut at = QUIET;
    for (place, width) in bars.iter().enumerate() {
        if place % 2 == 0 {
            path.push_str(&["M", &at.to_string(), " 0h", &width.to_string(), "v1h-", &width.to_string(), "z"].concat());
        }
        at += u32::from(*width);
    }
    let wide = (f64::from(modules) * MODULE_MM).min(room_mm);
    svg("svg", "cell-bars")
        .set("viewBox", &["0 0 ", &modules.to_string(), " 1"].concat())
        .set("preserveAspectRatio", "none")
        .set("aria-hidden", "true")
        .styled("width", &(to_places(wide, 2) + "mm"))
        .kid(svg("path", "").set("d", &path).set("fill", "#000"))
}

/// A box, drawn, so that it prints where backgrounds don't.
fn tick(ticked: bool) -> El {
    let line =
        |drawn: El, width: &str| drawn.set("fill", "none").set("stroke", "currentColor").set("stroke-width", width);
    let frame = svg("rect", "").set("x", "1").set("y", "1").set("width", "14").set("height", "14");
    let mut marks = vec![line(frame, "1.4")];
    if ticked {
        marks.push(line(svg("path", "").set("d", "M3.5 8.5l3 3.5 6-8"), "2"));
    }
    svg("svg", "cell-tick").set("viewBox", "0 0 16 16").set("aria-hidden", "true").kids(marks)
}
