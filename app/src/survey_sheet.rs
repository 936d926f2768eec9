//! The survey sheet, blank or filled.

mod page;

pub use page::survey_sheet_page;
