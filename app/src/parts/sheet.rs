//! Papers on sheets: measured at the paper's width, laid out row by row, shown and printed as the same sheets.

use bedwright_job::papers::{Align, Cell, Column, Field, Paper, PaperKind, Row, RowKind};
use bedwright_job::sheets::{PageSize, Room, RowHeight, Sheet, fill};
use bedwright_job::words::{Label, Manner};
use leptos::html::Div;
use leptos::{ev, prelude::*};
use web_sys::Element;

use super::choice::Pick;
use crate::person::PaperSize;

/// Less than this, in CSS pixels, is left free on every sheet: printers round.
const SLACK_PX: f64 = 2.0;

/// The sheets for the paper in a person's printer.
pub fn page_size(paper: PaperSize) -> PageSize {
    match paper {
        PaperSize::Letter => PageSize::Letter,
        PaperSize::A4 => PageSize::A4,
    }
}

/// The paper in a person's printer, from the sheets chosen.
pub fn paper_size(size: PageSize) -> PaperSize {
    match size {
        PageSize::Letter => PaperSize::Letter,
        PageSize::A4 => PaperSize::A4,
    }
}

/// Choice of paper, the button that prints, and the sheets as they will come out.
#[component]
pub fn Printing(
    /// What is printed, one after the other.
    #[prop(into)]
    papers: Signal<Vec<Paper>>,
    /// On what.
    #[prop(into)]
    size: Signal<PageSize>,
    /// Told when another paper is chosen.
    on_size: Callback<PageSize>,
    /// How the person reads.
    #[prop(into)]
    manner: Signal<Manner>,
) -> impl IntoView {
    let say = move |label: Label| manner.with(|manner| manner.label(label));
    let silent = RwSignal::new(false);
    let sizes = [(PageSize::Letter, Label::PaperLetter), (PageSize::A4, Label::PaperA4)]
        .map(|(size, label)| (size, say(label).to_owned()))
        .to_vec();
    let print = move |_| {
        silent.set(false);
        bedwright_edge::print::print(move |begun| {
            // The screen may have been left before the dialog was.
            let _ = silent.try_set(!begun);
        });
    };
    view! {
        <section class="printing" aria-labelledby="on-paper">
            <h2 class="rule" id="on-paper">{move || say(Label::OnPaper)}</h2>
            <div class="printing-tools">
                <Pick label=say(Label::Paper) group="sheet-size" options=sizes value=size on_choose=on_size />
                <button type="button" class="primary" on:click=print>{move || say(Label::Print)}</button>
                <p class="printing-hint" class:printing-silent=move || silent.get() role="status">
                    {move || say(Label::PrintHint)}
                </p>
            </div>
            <Sheets papers size />
        </section>
    }
}

/// The sheets of some papers.
#[component]
pub fn Sheets(
    /// What stands on them.
    papers: Signal<Vec<Paper>>,
    /// How large they are.
    size: Signal<PageSize>,
) -> impl IntoView {
    let measured: NodeRef<Div> = NodeRef::new();
    let shown: NodeRef<Div> = NodeRef::new();
    // Each paper with its sheets; what was measured goes with what was drawn, so that rows never change under a layout.
    let laid: RwSignal<Vec<(Paper, Vec<Sheet>)>> = RwSignal::new(Vec::new());
    let scale = RwSignal::new(1.0_f64);
    let lay_out = move || {
        let (Some(papers), Some(size)) = (papers.try_get_untracked(), size.try_get_untracked()) else { return };
        if let Some(view) = measured.try_get_untracked().flatten() {
            let measured = by_class(&view, "sheet");
            let all = papers.into_iter().zip(measured).map(|(paper, element)| {
                let sheets = fill_measured(&paper, &element);
                (paper, sheets)
            });
            let all: Vec<_> = all.collect();
            if laid.with_untracked(|there| *there != all) {
                laid.set(all);
            }
        }
        if let Some(view) = shown.try_get_untracked().flatten() {
            let wide = size.width_mm() / 25.4 * 96.0;
            let room = f64::from(view.client_width());
            if room > 0.0 {
                scale.set((room / wide).min(1.0));
            }
        }
    };
    Effect::new(move |_| {
        papers.with(|_| ());
        size.with(|_| ());
        // After the browser has put the measured column in place.
        request_animation_frame(lay_out);
    });
    let resized = window_event_listener(ev::resize, move |_| lay_out());
    on_cleanup(move || resized.remove());
    view! {
        <div class="sheets">
            <div class="sheets-measured" aria-hidden="true" node_ref=measured>
                {move || {
                    let size = size.get();
                    papers.get().iter().map(|paper| whole_sheet(paper, size)).collect_view()
                }}
            </div>
            <div class="sheets-shown" node_ref=shown>
                <div class="sheets-scale" style:zoom=move || format!("{:.4}", scale.get())>
                    {move || {
                        let size = size.get();
                        laid.get().iter().flat_map(|(paper, sheets)| {
                            sheets.iter().map(|sheet| one_sheet(paper, sheet, size)).collect::<Vec<_>>()
                        }).collect_view()
                    }}
                </div>
            </div>
        </div>
    }
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
        PaperKind::Survey => "sheet-survey",
        PaperKind::BillOfMaterials => "sheet-bill",
    }
}

/// A sheet with every row on it, to be measured.
fn whole_sheet(paper: &Paper, size: PageSize) -> AnyView {
    let all = Sheet { rows: 0..paper.rows.len(), number: 1, of: 1 };
    one_sheet(paper, &all, size)
}

fn one_sheet(paper: &Paper, sheet: &Sheet, size: PageSize) -> AnyView {
    let class = format!("sheet sheet-{} {}", size.id(), kind_class(paper.kind));
    let block = &paper.title_block;
    let number = block.sheet_number(sheet.number, sheet.of);
    let label = format!("{}, {} {number}", paper.title, block.sheet);
    let rows = paper.rows.get(sheet.rows.clone()).unwrap_or_default();
    let columns = paper.columns.len();
    let totals = (sheet.is_last() && !paper.totals.is_empty()).then(|| {
        view! {
            <tfoot>
                <tr class="sheet-totals">{cells(&paper.totals, &paper.columns)}</tr>
            </tfoot>
        }
    });
    view! {
        <article class=class aria-label=label>
            <div class="sheet-frame">
                {(sheet.number == 1).then(|| view! {
                    <header class="sheet-head">
                        <p class="sheet-title">{paper.title.clone()}</p>
                        <p class="sheet-subtitle">{paper.subtitle.clone()}</p>
                    </header>
                })}
                <div class="sheet-body">
                    <table class="sheet-table">
                        {column_widths(&paper.columns)}
                        <thead>
                            <tr class="sheet-columns">
                                {paper.columns.iter().map(|column| view! {
                                    <th scope="col" class=cell_class(column)>{column.heading.clone()}</th>
                                }).collect_view()}
                            </tr>
                        </thead>
                        <tbody>
                            {rows.iter().map(|row| sheet_row(row, &paper.columns, columns)).collect_view()}
                        </tbody>
                        {totals}
                    </table>
                </div>
                <footer class="sheet-foot">
                    <div class="sheet-notes">
                        {paper.notes.iter().map(|note| view! { <p>{note.clone()}</p> }).collect_view()}
                    </div>
                    <dl class="title-block">
                        {block_field("owner", &block.owner)}
                        {block_field("signed", &block.signed)}
                        {block_field("title", &block.title)}
                        {block_field("document", &block.document)}
                        {block_field("date", &block.date)}
                        {block_field("revision", &block.revision)}
                        {block_field("job", &block.job)}
                        {block_field("sheet", &Field { label: block.sheet.clone(), value: number })}
                    </dl>
                </footer>
            </div>
        </article>
    }
    .into_any()
}

fn block_field(id: &'static str, field: &Field) -> AnyView {
    view! {
        <div class=format!("block-field block-{id}")>
            <dt>{field.label.clone()}</dt>
            <dd>{field.value.clone()}</dd>
        </div>
    }
    .into_any()
}

fn column_widths(columns: &[Column]) -> AnyView {
    let all: u32 = columns.iter().map(|column| column.weight).sum::<u32>().max(1);
    let widths = columns.iter().map(|column| {
        let width = format!("{:.3}%", f64::from(column.weight) / f64::from(all) * 100.0);
        view! { <col style:width=width /> }
    });
    view! { <colgroup>{widths.collect_view()}</colgroup> }.into_any()
}

fn cell_class(column: &Column) -> String {
    let align = match column.align {
        Align::Start => "",
        Align::End => " cell-end",
    };
    format!("cell cell-{}{align}", column.id)
}

fn sheet_row(row: &Row, columns: &[Column], count: usize) -> AnyView {
    let class = match row.kind {
        RowKind::Heading => "sheet-row row-heading",
        RowKind::Item => "sheet-row",
        RowKind::Remark => "sheet-row row-remark",
        RowKind::Writing => "sheet-row row-writing",
        RowKind::Sketch => "sheet-row row-sketch",
    };
    let wide = row.cells.len() == 1;
    if wide && row.kind != RowKind::Item {
        let inside = row.cells.first().map(cell_inside);
        return view! { <tr class=class><td class="cell cell-wide" colspan=count.to_string()>{inside}</td></tr> }
            .into_any();
    }
    view! { <tr class=class>{cells(&row.cells, columns)}</tr> }.into_any()
}

/// The cells of a row; where they are fewer than the columns the last one reaches to the right edge.
fn cells(cells: &[Cell], columns: &[Column]) -> AnyView {
    let last = cells.len().saturating_sub(1);
    cells
        .iter()
        .zip(columns)
        .enumerate()
        .map(|(at, (cell, column))| {
            let span = if at == last { columns.len().saturating_sub(at) } else { 1 };
            let class = if span > 1 { "cell cell-wide".to_owned() } else { cell_class(column) };
            view! { <td class=class colspan=span.to_string()>{cell_inside(cell)}</td> }
        })
        .collect_view()
        .into_any()
}

fn cell_inside(cell: &Cell) -> AnyView {
    match cell {
        Cell::Empty => ().into_any(),
        Cell::Text(text) => text.clone().into_any(),
        Cell::Large(text) => view! { <span class="cell-large">{text.clone()}</span> }.into_any(),
        Cell::Lines(lines) => {
            view! { <span class="cell-lines">{lines.iter().map(|line| view! { <span>{line.clone()}</span> }).collect_view()}</span> }
                .into_any()
        }
        Cell::Named { name, hint } => view! {
            <span class="cell-name">{name.clone()}</span>
            {(!hint.is_empty()).then(|| view! { <span class="cell-hint">{hint.clone()}</span> })}
        }
        .into_any(),
        Cell::Tick(ticked) => tick(*ticked),
        Cell::Choice(choices) => view! {
            <span class="cell-choices">
                {choices.iter().map(|(ticked, name)| view! {
                    <span class="cell-choice">{tick(*ticked)}<span>{name.clone()}</span></span>
                }).collect_view()}
            </span>
        }
        .into_any(),
        Cell::Pen(text) => view! { <span class="cell-pen">{text.clone()}</span> }.into_any(),
    }
}

/// A box, drawn, so that it prints where backgrounds don't.
fn tick(ticked: bool) -> AnyView {
    view! {
        <svg class="cell-tick" viewBox="0 0 16 16" aria-hidden="true">
            <rect x="1" y="1" width="14" height="14" fill="none" stroke="currentColor" stroke-width="1.4" />
            {ticked.then(|| view! { <path d="M3.5 8.5l3 3.5 6-8" fill="none" stroke="currentColor" stroke-width="2" /> })}
        </svg>
    }
    .into_any()
}
