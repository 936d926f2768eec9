//! Papers as data: what stands on a sheet, in words, with nothing of how it is drawn.
//!
//! A [`Paper`] is a table with a title block. It is made from a job in one pass and holds texts only, so that whoever
//! draws it decides nothing; [`crate::sheets`] says which rows go on which sheet.

mod bill;
mod calculation;
mod due_list;
mod labels;
mod left_out;
mod loading;
mod natural;
mod picking;
mod quote;
mod section;
mod send;
mod service_card;
mod shelf;
mod staging;
mod start_up;
mod survey;
#[cfg(test)]
mod tests;
mod title;

pub use bill::{bill_of_materials, vessel_name};
pub use calculation::{calculation_sheet, formulas_of_sheet};
pub use due_list::due_list_sheet;
pub use labels::{SMALLEST_MM, Sticker, places, stickers};
pub use left_out::{LeftOut, left_out};
pub use loading::{SheetOf, work_sheet};
pub use natural::natural_order;
pub use picking::{PickRow, PickState, PutBack, changed_since, pick_list, pick_rows, picked_lines, put_back};
pub use quote::{internal_quote_sheet, quote_sheet};
pub use section::{section_caption, section_file, section_sheet};
pub use send::{Tool, cut_text, lifting_texts, pictures};
pub use service_card::service_card;
pub use shelf::{Shelf, shelf_of};
pub use staging::{Staged, on_pallets, staged, staging_list};
pub use start_up::start_up_report;
pub use survey::survey_sheet;
pub use title::{Field, TitleBlock};

/// Which paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum PaperKind {
    /// What a warehouse pulls.
    PickList,
    /// What stands where, in loading order.
    Staging,
    /// What was found, or what is to be found, of a vessel.
    Survey,
    /// What the job takes.
    BillOfMaterials,
    /// A vessel as it is filled, to scale.
    Section,
    /// Every figure of a vessel with its formula and what went in.
    Calculation,
    /// Taking a vessel's old bed out, step by step.
    Removal,
    /// Loading it, step by step.
    Loading,
    /// What went into it, as it was signed.
    StartUp,
    /// How a bed is looked after.
    ServiceCard,
    /// What is due, over all jobs.
    DueList,
    /// What is offered and for how much.
    Quote,
    /// The same with cost and margin.
    InternalQuote,
}

/// Everything that stands on a paper.
#[derive(Clone, Debug, PartialEq)]
pub struct Paper {
    /// Which it is.
    pub kind: PaperKind,
    /// Its title.
    pub title: String,
    /// What it is about, in a line.
    pub subtitle: String,
    /// The title block, lower right on every sheet.
    pub title_block: TitleBlock,
    /// Its columns, from the left.
    pub columns: Vec<Column>,
    /// Its rows, from the top.
    pub rows: Vec<Row>,
    /// The last line, one cell for each column; empty where there is nothing to add up.
    pub totals: Vec<Cell>,
    /// Beside the title block on every sheet: cautions above all.
    pub notes: Vec<String>,
}

/// A column.
#[derive(Clone, Debug, PartialEq)]
pub struct Column {
    /// Its permanent name.
    pub id: &'static str,
    /// What stands above it.
    pub heading: String,
    /// Where its texts stand.
    pub align: Align,
    /// Its share of the width, against the other columns' shares.
    pub weight: u32,
}

/// Where the texts of a column stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Align {
    /// At the left.
    Start,
    /// At the right, as numbers do.
    End,
}

/// A row.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// Its name on this paper; no other row has it.
    pub key: String,
    /// What kind of row it is.
    pub kind: RowKind,
    /// One cell for each column. Where there are fewer, the last one reaches to the right edge.
    pub cells: Vec<Cell>,
}

/// What kind of row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RowKind {
    /// Names the rows below it, and stays with the first of them.
    Heading,
    /// One thing.
    Item,
    /// A remark.
    Remark,
    /// A part of a sum: its name, and the amount at the right edge.
    Sum,
    /// What a sum comes to.
    Total,
    /// A ruled line to write on.
    Writing,
    /// Room for a sketch.
    Sketch,
}

/// What stands in a cell.
#[derive(Clone, Debug, PartialEq)]
pub enum Cell {
    /// Nothing.
    Empty,
    /// A text.
    Text(String),
    /// A text that is read at arm's length.
    Large(String),
    /// Short texts, one under the other.
    Lines(Vec<String>),
    /// Equations, one under the other; what follows a low line in a symbol is its index.
    Equation(Vec<String>),
    /// A name, and how to take what it names.
    Named {
        /// The name.
        name: String,
        /// How to take it; empty where the name says it.
        hint: String,
    },
    /// A box to tick, ticked or not.
    Tick(bool),
    /// Boxes with what each stands for, ticked or not.
    Choice(Vec<(bool, String)>),
    /// A line to write on, with what stands there already.
    Pen(String),
    /// A text that is read at arm's length, and under it the same as bars; none where it can't be.
    Code {
        /// The text.
        text: String,
        /// Widths in modules, bar and space in turn.
        bars: Option<Vec<u8>>,
        /// How wide it may be, mm.
        room_mm: f64,
    },
    /// A picture, as wide as the sheet.
    Picture(std::sync::Arc<crate::drawing::Drawing>),
}

impl Row {
    fn new(key: impl Into<String>, kind: RowKind, cells: Vec<Cell>) -> Row {
        Row { key: key.into(), kind, cells }
    }

    fn heading(key: impl Into<String>, text: impl Into<String>) -> Row {
        Row::new(key, RowKind::Heading, vec![Cell::Text(text.into())])
    }

    fn remark(key: impl Into<String>, text: impl Into<String>) -> Row {
        Row::new(key, RowKind::Remark, vec![Cell::Text(text.into())])
    }
}

impl Column {
    fn new(id: &'static str, heading: impl Into<String>, align: Align, weight: u32) -> Column {
        Column { id, heading: heading.into(), align, weight }
    }
}
