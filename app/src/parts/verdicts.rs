//! Verdicts: a mark that survives a photocopy, a sentence, and what would mend it.

use bedwright_job::words::VerdictWords;
use leptos::prelude::*;

/// Which mark stands before a verdict.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
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

/// A list of verdicts: those that ask for something first, the fine ones folded below them.
#[component]
pub fn Verdicts(
    /// Each with its mark, the gravest first.
    #[prop(into)]
    verdicts: Signal<Vec<(Sign, VerdictWords)>>,
    /// What the fold of fine ones is called.
    fine: &'static str,
) -> impl IntoView {
    view! {
        {move || {
            let (good, asking): (Vec<_>, Vec<_>) = verdicts.get().into_iter().partition(|(sign, _)| *sign == Sign::Fine);
            let count = good.len();
            view! {
                <ul class="verdicts">{asking.into_iter().map(line).collect_view()}</ul>
                {(count > 0).then(|| view! {
                    <details class="verdicts-fine">
                        <summary><svg class="verdict-sign" viewBox="0 0 24 24" aria-hidden="true"><path d=Sign::Fine.path() /></svg>{fine}": "{count}</summary>
                        <ul class="verdicts">{good.into_iter().map(line).collect_view()}</ul>
                    </details>
                })}
            }
        }}
    }
}

fn line((sign, words): (Sign, VerdictWords)) -> AnyView {
    let remedies: Vec<String> = words.remedies;
    view! {
        <li class="verdict" class:verdict-fine=sign == Sign::Fine>
            <svg class="verdict-sign" viewBox="0 0 24 24" aria-hidden="true">
                {(sign == Sign::SetOnSite).then(|| view! { <circle class="verdict-ring" cx="12" cy="12" r="8.5" /> })}
                <path d=sign.path() />
            </svg>
            <div>
                <p class="verdict-head">{words.headline}</p>
                <p>{words.reason} " " <span class="verdict-remedy">{remedies.join(" ")}</span></p>
            </div>
        </li>
    }
    .into_any()
}
