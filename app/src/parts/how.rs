//! How a figure knows: opened on a tap.

use leptos::prelude::*;

/// A figure's grounds, in words.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Grounds {
    /// The equation.
    pub formula: String,
    /// Where the equation comes from.
    pub source: String,
    /// Each input: name, value, what it rests on.
    pub inputs: Vec<(String, String, String)>,
    /// What to bear in mind.
    pub cautions: Vec<String>,
}

/// A figure in a line; its grounds open on a tap.
#[component]
pub fn FigureLine(
    /// What it is.
    name: &'static str,
    /// The figure as shown, and its grounds; nothing where there is no answer.
    #[prop(into)]
    figure: Signal<Option<(String, Grounds)>>,
) -> impl IntoView {
    view! {
        {move || figure.get().map(|(value, grounds)| view! {
            <details class="how">
                <summary><span class="how-name">{name}</span> <span class="figure how-value">{value}</span></summary>
                <p class="how-formula">{grounds.formula}</p>
                <table>
                    <tbody>
                        {grounds.inputs.into_iter().map(|(name, value, basis)| view! {
                            <tr><th scope="row">{name}</th><td class="figure">{value}</td><td>{basis}</td></tr>
                        }).collect_view()}
                    </tbody>
                </table>
                <p>{grounds.source}</p>
                {grounds.cautions.into_iter().map(|caution| view! { <p>{caution}</p> }).collect_view()}
            </details>
        })}
    }
}
