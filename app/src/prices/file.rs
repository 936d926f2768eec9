//! The list as a file: out, and in after it was tried.

use std::sync::Arc;

use bedwright_edge::fault::Fault;
use bedwright_edge::files;
use bedwright_job::prices::PriceRow;
use bedwright_job::prices::csv::{
    Changed, Column, DryRun, FileFault, FileForm, MOST_BYTES, Refusal, Separator, cells_csv, dry_run, list_csv,
};
use bedwright_job::words::PriceLabel;

use crate::desk::Desk;
use crate::parts::choice::pick;
use crate::parts::live::{El, button, el, ticked};
use crate::parts::signal::Held;

/// How many rows of each sort are shown.
const SHOWN: usize = 100;

/// A file that was tried.
#[derive(Clone)]
struct Trial {
    name: String,
    bytes: Arc<Vec<u8>>,
    /// The decimal mark a person said it has.
    decimal: Option<char>,
    run: Result<Arc<DryRun>, FileFault>,
}

#[derive(Clone, Copy)]
struct Files {
    desk: Desk,
    separator: Held<Separator>,
    mark: Held<bool>,
    trial: Held<Option<Trial>>,
    said: Held<Option<String>>,
}

/// The part of the screen about files.
pub fn file_part(desk: Desk) -> El {
    let separator = if desk.manner().decimal == ',' { Separator::Semicolon } else { Separator::Comma };
    let files = Files {
        desk,
        separator: Held::new(separator),
        mark: Held::new(true),
        trial: Held::new(None),
        said: Held::new(None),
    };
    let say = move |label: PriceLabel| desk.label(label);
    let separators = [Separator::Comma, Separator::Semicolon];
    let between = pick(
        say(PriceLabel::Separator),
        "price-separator",
        &[say(PriceLabel::Comma), say(PriceLabel::Semicolon)],
        move || Some(usize::from(files.separator.get() == Separator::Semicolon)),
        move |at| files.separator.set(separators.get(at).copied().unwrap_or(Separator::Comma)),
    );
    let marked = el("input", "")
        .set("type", "checkbox")
        .holds("checked", move || files.mark.get())
        .on("change", move |event| files.mark.set(ticked(&event)));
    el("section", "price-part")
        .kid(el("h2", "rule").text(say(PriceLabel::FileTitle)))
        .kid(el("p", "").text(say(PriceLabel::FileAbout)))
        .kid(between)
        .kid(el("label", "tick").kid(marked).kid(el("span", "").text(say(PriceLabel::Mark))))
        .kid(el("div", "actions").kid(button("", say(PriceLabel::SaveList), move || files.save())).kid(button(
            "",
            say(PriceLabel::OpenList),
            move || files.choose(),
        )))
        .kid(el("p", "price-said").set("role", "status").says(move || files.said.get().unwrap_or_default()))
        .live(move || {
            files.trial.with(|trial| trial.as_ref().map(|trial| vec![files.tried(trial)]).unwrap_or_default())
        })
}

impl Files {
    fn say(self, label: PriceLabel) -> &'static str {
        self.desk.label(label)
    }

    fn save(self) {
        let form = FileForm {
            separator: self.separator.get_untracked(),
            decimal: self.desk.manner().decimal,
            mark: self.mark.get_untracked(),
        };
        let text = self.desk.prices.list.with_untracked(|list| list_csv(list, form));
        // A browser that refuses says so itself.
        let _ = files::download("price-list.csv", "text/csv", text.as_bytes());
    }

    fn choose(self) {
        wasm_bindgen_futures::spawn_local(async move {
            self.said.set(None);
            match files::pick_file(".csv,.txt,text/csv,text/plain", MOST_BYTES as u64).await {
                Ok(None) => {}
                Ok(Some((name, bytes))) => self.try_out(name, Arc::new(bytes), None),
                Err(Fault::TooLarge { bytes, .. }) => self.wont(&FileFault::TooLong { bytes: bytes as usize }),
                Err(_) => self.wont(&FileFault::NotUtf8),
            }
        });
    }

    fn wont(self, fault: &FileFault) {
        self.trial.set(None);
        let why = self.desk.manner().file_fault(fault);
        self.said.set(Some(format!("{} {why}", self.say(PriceLabel::NotTaken))));
    }

    fn try_out(self, name: String, bytes: Arc<Vec<u8>>, decimal: Option<char>) {
        let run = self.desk.prices.list.with_untracked(|list| dry_run(list, &bytes, decimal));
        self.trial.set(Some(Trial { name, bytes, decimal, run: run.map(Arc::new) }));
    }

    /// What the file would do.
    fn tried(self, trial: &Trial) -> El {
        let part = el("section", "price-trial")
            .kid(el("h3", "").text(self.say(PriceLabel::Trial)))
            .kid(el("p", "price-file").text(&trial.name));
        let run = match &trial.run {
            Ok(run) => run.clone(),
            Err(fault) => {
                let why = self.desk.manner().file_fault(fault);
                return part
                    .kid(el("p", "").set("role", "alert").text(self.say(PriceLabel::NotTaken)).text(" ").text(&why))
                    .kid(self.decimals(trial))
                    .kid(button("", self.say(PriceLabel::Leave), move || self.trial.set(None)));
            }
        };
        let count = |label: PriceLabel, count: usize| {
            el("li", "").kid(el("span", "big figure").text(&count.to_string())).text(" ").text(self.say(label))
        };
        let counts = el("ul", "price-counts")
            .set("role", "status")
            .kid(count(PriceLabel::Added, run.added.len()))
            .kid(count(PriceLabel::Changed, run.changed.len()))
            .kid(count(PriceLabel::Unchanged, run.unchanged))
            .kid(count(PriceLabel::Refused, run.refused.len()));
        let taken = run.clone();
        let take = button("primary", self.say(PriceLabel::Take), move || self.take(&taken));
        let mut actions = el("div", "actions");
        if !run.added.is_empty() || !run.changed.is_empty() {
            actions = actions.kid(take);
        }
        actions = actions.kid(button("", self.say(PriceLabel::Leave), move || self.trial.set(None)));
        let mut part = part.kid(counts).kid(actions).kid(self.decimals(trial));
        if !run.ignored.is_empty() {
            part = part.kid(el("p", "").text(self.say(PriceLabel::Ignored)).text(" ").text(&run.ignored.join(", ")));
        }
        if !run.refused.is_empty() {
            let refused = run.clone();
            part = part
                .kid(self.rows(
                    PriceLabel::RefusedTitle,
                    run.refused.iter().map(|row| self.refusal(row)),
                    run.refused.len(),
                ))
                .kid(el("p", "").text(self.say(PriceLabel::RefusedAbout)))
                .kid(button("", self.say(PriceLabel::SaveRefusals), move || self.save_refusals(&refused)));
        }
        if !run.changed.is_empty() {
            let rows = run.changed.iter().map(|row| self.changed(row));
            part = part.kid(self.rows(PriceLabel::ChangedTitle, rows, run.changed.len()));
        }
        if !run.added.is_empty() {
            let rows = run.added.iter().map(|row| self.added(row));
            part = part.kid(self.rows(PriceLabel::AddedTitle, rows, run.added.len()));
        }
        part
    }

    /// Which decimal mark the amounts have; asked again at every change.
    fn decimals(self, trial: &Trial) -> El {
        let (trial, marks) = (trial.clone(), [None, Some('.'), Some(',')]);
        let now = marks.iter().position(|mark| *mark == trial.decimal);
        pick(
            self.say(PriceLabel::Decimal),
            "price-decimal",
            &[PriceLabel::DecimalOfFile, PriceLabel::DecimalPoint, PriceLabel::DecimalComma]
                .map(|label| self.say(label)),
            move || now,
            move |at| self.try_out(trial.name.clone(), trial.bytes.clone(), marks.get(at).copied().flatten()),
        )
    }

    fn rows(self, title: PriceLabel, rows: impl Iterator<Item = El>, count: usize) -> El {
        let mut list = el("ul", "price-told").kids(rows.take(SHOWN).collect());
        if count > SHOWN {
            list = list.kid(el("li", "").text(&format!("{} {}", self.say(PriceLabel::AndMore), count - SHOWN)));
        }
        el("div", "").kid(el("h4", "").text(self.say(title))).kid(list)
    }

    fn refusal(self, row: &Refusal) -> El {
        let line = format!("{} {}", self.say(PriceLabel::Line), row.line);
        el("li", "")
            .kid(el("span", "price-where figure").text(&line))
            .kid(el("strong", "").text(&row.name))
            .kid(el("span", "").text(&self.desk.manner().row_fault(&row.why)))
    }

    fn named(self, row: &PriceRow) -> String {
        [row.part_number.as_str(), &self.desk.manner().price_name(row)]
            .into_iter()
            .filter(|text| !text.is_empty())
            .collect::<Vec<_>>()
            .join(" · ")
    }

    fn changed(self, row: &Changed) -> El {
        let manner = self.desk.manner();
        let cell = |row: &Arc<PriceRow>, column: Column| {
            let text = column.shown(row, manner.decimal);
            if text.is_empty() { self.say(PriceLabel::Blank).to_owned() } else { text }
        };
        let columns = row.columns.iter().map(|column| {
            let text = format!(
                "{}: {} ({} {})",
                manner.price_column(*column),
                cell(&row.after, *column),
                self.say(PriceLabel::Was),
                cell(&row.before, *column)
            );
            el("span", "").text(&text)
        });
        el("li", "").kid(el("strong", "").text(&self.named(&row.after))).kids(columns.collect())
    }

    fn added(self, row: &Arc<PriceRow>) -> El {
        let manner = self.desk.manner();
        let price =
            row.price.map_or_else(|| self.say(PriceLabel::NoPrice).to_owned(), |price| manner.price_amount(price));
        el("li", "").kid(el("strong", "").text(&self.named(row))).kid(el("span", "figure").text(&price))
    }

    fn take(self, run: &DryRun) {
        self.trial.set(None);
        if self.desk.edit_list("", run.edit()) {
            self.desk.turn_list();
            self.said.set(Some(self.say(PriceLabel::Taken).to_owned()));
        } else {
            self.said.set(Some(self.say(PriceLabel::NotTaken).to_owned()));
        }
    }

    fn save_refusals(self, run: &DryRun) {
        let manner = self.desk.manner();
        let rows =
            run.refused.iter().map(|row| vec![row.line.to_string(), row.name.clone(), manner.row_fault(&row.why)]);
        let text = cells_csv(rows, self.separator.get_untracked());
        // A browser that refuses says so itself.
        let _ = files::download("refused-rows.csv", "text/csv", text.as_bytes());
    }
}
