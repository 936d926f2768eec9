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

/// A list of verdicts.
#[component]
pub fn Verdicts(
    /// Each with its mark.
    #[prop(into)]
    verdicts: Signal<Vec<(Sign, VerdictWords)>>,
) -> impl IntoView {
    view! {
        <ul class="verdicts">
            {move || verdicts.get().into_iter().map(|(sign, words)| view! {
                <li class="verdict" class:verdict-fine=sign == Sign::Fine>
                    <svg class="verdict-sign" viewBox="0 0 24 24" aria-hidden="true">
                        {(sign == Sign::SetOnSite).then(|| view! { <circle class="verdict-ring" cx="12" cy="12" r="8.5" /> })}
                        <path d=sign.path() />
                    </svg>
                    <div>
                        <p class="verdict-head">{words.headline}</p>
                        <p>{words.reason} " " {words.remedies.into_iter().map(|remedy| view! { <span class="verdict-remedy">{remedy} " "</span> }).collect_view()}</p>
                    </div>
                </li>
            }).collect_view()}
        </ul>
    }
}
