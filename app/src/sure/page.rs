//! Every formula with its source and what it was compared with; first of all what nobody looked up.

use std::rc::Rc;

use bedwright_job::sure::{Line, Part, lines, summary};
use bedwright_job::words::{Label, SureLabel};

use crate::desk::Desk;
use crate::parts::equation::equation;
use crate::parts::live::{El, button, el, small_letters, value_of};
use crate::parts::signal::Held;

/// The page; with the id of a formula, only that one until something else is searched.
pub fn sure_page(desk: Desk, formula: &str) -> El {
    let say = move |label: SureLabel| desk.label(label);
    let manner = desk.manner();
    let words = Held::new(formula.to_owned());
    let parts: Rc<Vec<(Part, Vec<Searched>)>> = Rc::new(
        Part::ALL.iter().map(|part| (*part, lines(*part, manner).into_iter().map(Searched::of).collect())).collect(),
    );
    let counted = parts.clone();
    let count = move || {
        let asked = Asked::of(&words.get());
        let all = counted.iter().map(|(_, lines)| lines.len()).sum::<usize>();
        let found = counted.iter().flat_map(|(_, lines)| lines).filter(|line| asked.finds(line)).count();
        if found == 0 {
            return say(SureLabel::NothingFound).to_owned();
        }
        manner.sentence(SureLabel::Found, &[("count", &found.to_string()), ("of", &all.to_string())])
    };
    let search = el("input", "search")
        .set("type", "search")
        .set("value", formula)
        .set("aria-label", say(SureLabel::Search))
        .set("placeholder", say(SureLabel::Search))
        .on("input", move |event| words.set(value_of(&event)));
    let print = button("", desk.label(Label::Print), || bedwright_edge::print::print(|_| ()));
    let sentences = summary(manner).iter().map(|sentence| el("p", "").text(sentence)).collect();
    let sections = (0..parts.len()).map(|at| section(desk, &parts, at, words)).collect();
    el("main", "page sure")
        .kid(el("h1", "page-title").text(say(SureLabel::Title)))
        .kid(el("p", "").text(say(SureLabel::About)))
        .kid(el("div", "sure-summary").kids(sentences))
        .kid(
            el("div", "sure-tools").kid(search).kid(print).kid(el("p", "sure-count").set("role", "status").says(count)),
        )
        .kids(sections)
}

/// A line with all that is searched of it, in small letters.
struct Searched {
    line: Line,
    letters: String,
}

impl Searched {
    fn of(line: Line) -> Searched {
        let letters = small_letters(&[&line.cells.join(" "), " ", &line.key].concat());
        Searched { line, letters }
    }
}

/// The words that must all stand in a line.
struct Asked(String);

impl Asked {
    fn of(words: &str) -> Asked {
        Asked(small_letters(words))
    }

    fn finds(&self, line: &Searched) -> bool {
        self.0.split_whitespace().all(|word| holds(&line.letters, word))
    }
}

/// Byte by byte: std's search is made for long texts, and is longer itself.
fn holds(text: &str, word: &str) -> bool {
    text.as_bytes().windows(word.len()).any(|part| part == word.as_bytes())
}

/// A part of the page, as long as any of its lines is found.
fn section(desk: Desk, parts: &Rc<Vec<(Part, Vec<Searched>)>>, at: usize, words: Held<String>) -> El {
    let parts = parts.clone();
    let found = move || {
        let asked = Asked::of(&words.get());
        let Some((part, lines)) = parts.get(at) else { return Vec::new() };
        let rows: Vec<El> =
            lines.iter().filter(|line| asked.finds(line)).map(|line| row(desk, *part, &line.line)).collect();
        if rows.is_empty() {
            return Vec::new();
        }
        let (title, heads) = part.headings();
        let id = ["sure-", &at.to_string()].concat();
        let head = heads.iter().map(|head| el("th", "").set("scope", "col").text(desk.label(*head))).collect();
        let table = el("table", "sure-table")
            .set("aria-labelledby", &id)
            .kid(el("thead", "").kid(el("tr", "").kids(head)))
            .kid(el("tbody", "").kids(rows));
        let title = el("h2", "rule").set("id", &id).text(desk.label(title));
        vec![title, table]
    };
    el("section", "sure-part").live(found)
}

fn row(desk: Desk, part: Part, line: &Line) -> El {
    let (_, heads) = part.headings();
    let cell = |at: usize| {
        let text = line.cells.get(at).map(String::as_str).unwrap_or_default();
        // On a phone the heads of the columns stand in the lines.
        let head = heads.get(at).map(|head| desk.label(*head)).unwrap_or_default();
        let cell =
            if at == 0 { el("th", "sure-what").set("scope", "row") } else { el("td", "") }.set("data-head", head);
        if at == 1 && line.equation { equation(cell.set("class", "sure-equation"), text) } else { cell.text(text) }
    };
    el("tr", "").set("data-of", &line.key).kids((0..line.cells.len()).map(cell).collect())
}
