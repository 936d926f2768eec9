//! Pieces of a screen that know nothing of jobs.

pub mod chart;
pub mod choice;
pub mod drawing;
pub mod drawing_file;
pub mod entry;
pub mod equation;
pub mod how;
pub mod letterhead;
pub mod live;
pub mod photo;
pub mod qr;
pub mod sheet;
pub mod signal;
pub mod typing;
pub mod verdicts;
