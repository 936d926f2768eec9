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

/// A figure with its grounds behind it.
#[component]
pub fn How(
    /// What opens it.
    #[prop(into)]
    label: String,
    /// The grounds.
    #[prop(into)]
    grounds: Signal<Option<Grounds>>,
) -> impl IntoView {
    view! {
        <Show when=move || grounds.with(Option::is_some)>
            <details class="how">
                <summary>{label.clone()}</summary>
                {move || grounds.get().map(|grounds| view! {
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
                })}
            </details>
        </Show>
    }
}
