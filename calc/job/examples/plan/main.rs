//! Prints every answer of a job file as JSON.
//!
//! ```text
//! cargo run -q --release -p bedwright-job --example plan -- JOB.json [--depth-table] [--metric]
//! cargo run -q --release -p bedwright-job --example plan -- - < JOB.json
//! ```
//!
//! `--depth-table` adds each vessel's depth table, every whole inch. `--metric` puts sentences into metric units and
//! the table into steps of 25 mm; numbers are SI either way.
//!
//! # What it prints
//! A name ends in its unit: `_m` metres, `_m2` square metres, `_m3` cubic metres, `_kg` kilograms, `_kg_m3` kilograms
//! per cubic metre, `_pa` pascals, `_ratio` a plain ratio. Without one it is a text, a yes or no, or a count (`packs`
//! may be a part, `bucket_measures` too). Heights are above the lowest inside point; tape readings are from the rim of
//! the opening down. Beside `NAME_UNIT` stands `NAME_how`: `basis` (measured, typed, catalogue, assumed), `formula` and
//! its `statement`, `source` (an id of `sources`), `inputs` (each with its value, basis, source) and `cautions`.
//!
//! | name | holds |
//! |---|---|
//! | `job` | id, title, kind, sample, closed sections with why |
//! | `vessels[]` | in the order of the job |
//! | `.complete` | whether every answer of the vessel is there |
//! | `.survey` | `entries` (value, standing), `assumed`, `missing`, `misread` by field, `not_measured` |
//! | `.inside_diameter_m`, `.inside_depth_m`, `.straight_side_m`, `.capacity_m3`, `.ceiling_height_m`, `.riser_cut_m` | the inside, where it could be worked out |
//! | `.problems` | by field of the survey: `code`, `term`, `values`, `text`; `other` for one of no field |
//! | `.layers[]` | bottom first: `outcome` `filled` (the figures beside it), `unread`, `problem` (`code`, `field`, `values`, `text`), `waits` |
//! | `.layers[].packs`, `.packs_to_buy`, `.left_over_m3`, `.part_pack`, `.near_miss` | whole packs, the last one's part in bucket measures, and whether a small need was met by whole ones |
//! | `.layers[].after_packs[]` | `tape_reading_m` after each pack, and `spread_m`: nine of ten real ones lie that near |
//! | `.freeboard` | `length_m`, `of_media_depth_ratio`, `tape_reading_m`, `media_depth_m` |
//! | `.dry_weight_kg` | all layers |
//! | `.verdicts[]` | worst first: `subject`, `mark` (stop, caution, set_on_site, fine), `reason`, `remedies`, `text` |
//! | `.depth_table[]` | `tape_reading_m`, `height_m`, `volume_m3` |
//! | `bill` | `vessels[]` each on its own, `pooled[]` with `saved`, `left_out[]` |
//! | `sources` | what each source id stands for |
//! | `error` | only where there is no job: `code`, `values`, `text`; the exit code is then 1 |

mod codes;
mod figures;
mod life;
mod order;
mod refusal;
mod report;
mod water;

use std::io::{Read, Write};
use std::process::ExitCode;

use bedwright_job::saved::{LONGEST, Unreadable, read_job};
use bedwright_job::words::Manner;
use serde_json::Value;

/// What was asked for.
struct Asked {
    file: String,
    depth_table: bool,
    metric: bool,
}

fn main() -> ExitCode {
    let (answer, code) = match answer(std::env::args().skip(1)) {
        Ok(answer) => (answer, ExitCode::SUCCESS),
        Err(error) => (error, ExitCode::FAILURE),
    };
    let text = serde_json::to_string_pretty(&answer).unwrap_or_else(|_| answer.to_string());
    // Whoever reads may have gone; there is nobody left to tell.
    let _ = writeln!(std::io::stdout(), "{text}");
    code
}

fn answer(arguments: impl Iterator<Item = String>) -> Result<Value, Value> {
    let asked = asked(arguments)?;
    let manner = Manner { metric: asked.metric, ..Manner::default() };
    let bytes = bytes(&asked.file)?;
    if bytes.len() > LONGEST {
        return Err(refusal::unreadable(&manner, &Unreadable::TooLong { letters: bytes.len() }));
    }
    let text = String::from_utf8(bytes).map_err(|found| refusal::not_text(found.utf8_error().valid_up_to()))?;
    // A mark that some editors put in front of a text.
    let text = text.strip_prefix('\u{feff}').unwrap_or(&text);
    let job = read_job(text).map_err(|found| refusal::unreadable(&manner, &found))?;
    Ok(report::report(&job, &manner, asked.depth_table))
}

fn asked(arguments: impl Iterator<Item = String>) -> Result<Asked, Value> {
    let mut asked = Asked { file: String::new(), depth_table: false, metric: false };
    for argument in arguments {
        match argument.as_str() {
            "--depth-table" => asked.depth_table = true,
            "--metric" => asked.metric = true,
            other if other.starts_with("--") => return Err(refusal::usage(other)),
            other if asked.file.is_empty() => other.clone_into(&mut asked.file),
            other => return Err(refusal::usage(other)),
        }
    }
    if asked.file.is_empty() { Err(refusal::usage("")) } else { Ok(asked) }
}

fn bytes(file: &str) -> Result<Vec<u8>, Value> {
    let mut bytes = Vec::new();
    // One letter more than the longest job tells that a file is too long without reading all of it.
    let most = LONGEST as u64 + 1;
    let read = if file == "-" {
        std::io::stdin().take(most).read_to_end(&mut bytes)
    } else {
        std::fs::File::open(file).and_then(|file| file.take(most).read_to_end(&mut bytes))
    };
    match read {
        Ok(_) => Ok(bytes),
        Err(found) => Err(refusal::not_opened(file, &found.to_string())),
    }
}
