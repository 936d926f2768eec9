//! Verdicts: a mark that survives a photocopy, a sentence, and what would mend it.

use bedwright_job::words::VerdictWords;

use super::live::{El, Shared, el, svg};

/// Which mark stands before a verdict.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Sign {
    /// A filled circle.
    Fine,
    /// A half circle.
    SetOnSite,
    /// A triangle.
    Caution,
    /// A square.
    Stop,
}

impl Sign {
    fn path(self) -> &'static str {
        match self {
            Sign::Fine => "M12 3a9 9 0 1 1 0 18a9 9 0 1 1 0-18z",
            Sign::SetOnSite => "M12 3a9 9 0 0 1 0 18z",
            Sign::Caution => "M12 2.5L22.5 21H1.5z",
            Sign::Stop => "M3.5 3.5h17v17h-17z",
        }
    }
}

/// A list of verdicts, each with its mark: those that ask for something first, the fine ones folded below them.
/// `fine` is what the fold is called; it stays open while verdicts change.
pub fn verdicts(into: El, verdicts: Shared<Vec<(Sign, VerdictWords)>>, fine: &'static str) -> El {
    let of = move |good: bool| {
        let verdicts = verdicts.clone();
        move || -> Vec<(Sign, VerdictWords)> {
            verdicts().into_iter().filter(|(sign, _)| (*sign == Sign::Fine) == good).collect()
        }
    };
    let asking = of(false);
    into.kid(el("ul", "verdicts").live(move || asking().iter().map(line).collect())).when(
        {
            let good = of(true);
            move || !good().is_empty()
        },
        move || {
            let (count, good) = (of(true), of(true));
            let head = el("summary", "").kid(sign(Sign::Fine)).text(fine).text(": ");
            vec![
                el("details", "verdicts-fine")
                    .kid(head.says(move || count().len().to_string()))
                    .kid(el("ul", "verdicts").live(move || good().iter().map(line).collect())),
            ]
        },
    )
}

/// The mark alone.
pub fn sign(sign: Sign) -> El {
    let mut marks = Vec::new();
    if sign == Sign::SetOnSite {
        marks.push(svg("circle", "verdict-ring").set("cx", "12").set("cy", "12").set("r", "8.5"));
    }
    marks.push(svg("path", "").set("d", sign.path()));
    svg("svg", "verdict-sign").set("viewBox", "0 0 24 24").set("aria-hidden", "true").kids(marks)
}

/// A list of verdicts as they are, none folded.
pub fn verdict_lines(verdicts: &[(Sign, VerdictWords)]) -> El {
    el("ul", "verdicts").kids(verdicts.iter().map(line).collect())
}

fn line((mark, words): &(Sign, VerdictWords)) -> El {
    let class = if *mark == Sign::Fine { "verdict verdict-fine" } else { "verdict" };
    let reason =
        el("p", "").text(&words.reason).text(" ").kid(el("span", "verdict-remedy").text(&words.remedies.join(" ")));
    let source = el("p", "verdict-source").text(&words.source);
    let said = el("div", "").kid(el("p", "verdict-head").text(&words.headline)).kid(reason).kid(source);
    el("li", class).kid(sign(*mark)).kid(said)
}
