//! The job document: entries as typed, sections and records, edits and their undoing, saved formats, the answers a
//! job gives, papers as data, and every sentence a person reads. Pure.
//!
//! A job is changed only through [`edit::apply`]. What it says in figures comes from [`answers`]; what a person
//! reads comes from [`words`].

pub mod answers;
pub mod as_loaded;
pub mod back;
pub mod backup;
pub mod care;
pub mod day;
pub mod decimal;
pub mod drawing;
pub mod edit;
pub mod entry;
pub mod envelope;
pub mod evidence;
pub mod field;
pub mod history;
pub mod id;
pub mod job;
pub mod join;
pub mod loading;
pub mod papers;
pub mod picked;
pub mod prices;
pub mod quote;
pub mod reading;
pub mod sample;
pub mod saved;
pub mod sections;
pub mod sheets;
pub mod sure;
pub mod words;

pub use edit::{Edit, Inverse, apply};
pub use job::Job;
