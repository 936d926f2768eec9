//! Why there is no job to report on.

use bedwright_job::saved::Unreadable;
use bedwright_job::words::{Label, Manner};
use serde_json::{Value, json};

fn error(code: &str, values: Value, text: &str) -> Value {
    json!({ "error": { "code": code, "values": values, "text": text } })
}

/// A text that is no job.
pub fn unreadable(manner: &Manner, found: &Unreadable) -> Value {
    let (code, values, why) = match found {
        Unreadable::TooLong { letters } => ("too_long", json!({ "letters": letters }), Label::FileNotAJob),
        Unreadable::NotJson { line, column } => {
            ("not_json", json!({ "line": line, "column": column }), Label::FileDamaged)
        }
        Unreadable::OtherFormat => ("other_format", json!({}), Label::FileNotAJob),
        Unreadable::TooNew { version } => ("too_new", json!({ "version": version }), Label::FileTooNew),
        Unreadable::Lacks { what } => ("lacks", json!({ "what": what }), Label::FileDamaged),
    };
    error(code, values, &format!("{} {}", manner.label(Label::FileNotRead), manner.label(why)))
}

/// Bytes that are no text.
pub fn not_text(at: usize) -> Value {
    let manner = Manner::default();
    let text = format!("{} {}", manner.label(Label::FileNotRead), manner.label(Label::FileDamaged));
    error("not_text", json!({ "byte": at }), &text)
}

/// A file that could not be opened.
pub fn not_opened(file: &str, why: &str) -> Value {
    error("not_opened", json!({ "file": file, "why": why }), &format!("{file} was not opened: {why}"))
}

/// A call that can't be followed.
pub fn usage(argument: &str) -> Value {
    let text = "Say: plan JOB.json [--depth-table] [--metric], or - for standard input.";
    error("usage", json!({ "argument": argument }), text)
}
