//! How a figure knows: opened on a tap.

use std::rc::Rc;

use super::equation::equation;
use super::live::{El, el};
use super::signal::Held;

/// A figure's grounds, in words.
#[derive(Clone, PartialEq, Eq, Default)]
pub struct Grounds {
    /// The equation.
    pub formula: String,
    /// Where the equation comes from.
    pub source: String,
    /// Each input: name, value, what it rests on.
    pub inputs: Vec<(String, String, String)>,
    /// Where it is said how sure the equation is: address and text; nothing where there is no equation.
    pub sure: Option<(String, &'static str)>,
    /// What to bear in mind.
    pub cautions: Vec<String>,
}

/// A fold whose inside is drawn when it is first opened, and kept up to date from then on.
pub fn fold(name: &str, inside: impl Fn() -> Vec<El> + 'static) -> El {
    let open = Held::new(false);
    el("details", "how")
        .on("toggle", move |_| open.set(true))
        .kid(el("summary", "").kid(el("span", "how-name").text(name)))
        .kid(el("div", "how-inside").live(move || if open.get() { inside() } else { Vec::new() }))
}

/// Adds a figure in a line, once there is one; its grounds open on a tap, and stay open while the figure changes.
pub fn figure_line(into: El, name: &'static str, figure: impl Fn() -> Option<(String, Grounds)> + 'static) -> El {
    let figure: Rc<dyn Fn() -> Option<(String, Grounds)>> = Rc::new(figure);
    let there = figure.clone();
    into.when(
        move || there().is_some(),
        move || {
            let (value, grounds) = (figure.clone(), figure.clone());
            let head = el("summary", "")
                .kid(el("span", "how-name").text(name))
                .text(" ")
                .kid(el("span", "figure how-value").says(move || value().map(|(value, _)| value).unwrap_or_default()));
            vec![
                el("details", "how")
                    .kid(head)
                    .live(move || grounds().map(|(_, known)| open(&known)).unwrap_or_default()),
            ]
        },
    )
}

fn open(grounds: &Grounds) -> Vec<El> {
    let row = |(name, value, basis): &(String, String, String)| {
        el("tr", "")
            .kid(el("th", "").set("scope", "row").text(name))
            .kid(el("td", "figure").text(value))
            .kid(el("td", "").text(basis))
    };
    let mut all = vec![
        equation(el("p", "how-formula"), &grounds.formula),
        el("table", "").kid(el("tbody", "").kids(grounds.inputs.iter().map(row).collect())),
        el("p", "").text(&grounds.source),
    ];
    let link =
        |(address, text): &(String, &'static str)| el("p", "").kid(el("a", "how-sure").set("href", address).text(text));
    all.extend(grounds.sure.iter().map(link));
    all.extend(grounds.cautions.iter().map(|caution| el("p", "").text(caution)));
    all
}
