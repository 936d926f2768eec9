//! One of several, by a native control.

use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// One of several, as a list that drops down.
#[component]
pub fn Choice<T>(
    /// What is chosen.
    #[prop(into)]
    label: String,
    /// What there is, with its name.
    #[prop(into)]
    options: Signal<Vec<(T, String)>>,
    /// What is chosen now.
    #[prop(into)]
    value: Signal<T>,
    /// Told when another is chosen.
    on_choose: Callback<T>,
) -> impl IntoView
where
    T: Clone + PartialEq + Send + Sync + 'static,
{
    let chosen = move |event: web_sys::Event| {
        let index = event
            .target()
            .and_then(|target| target.dyn_into::<web_sys::HtmlSelectElement>().ok())
            .map(|select| select.selected_index());
        let picked = index
            .and_then(|index| usize::try_from(index).ok())
            .and_then(|index| options.with_untracked(|all| all.get(index).map(|(option, _)| option.clone())));
        if let Some(option) = picked {
            on_choose.run(option);
        }
    };
    view! {
        <label class="choice">
            <span class="choice-label">{label}</span>
            <select on:change=chosen>
                {move || options.get().into_iter().map(|(option, name)| {
                    view! { <option prop:selected=move || value.with(|value| *value == option)>{name}</option> }
                }).collect_view()}
            </select>
        </label>
    }
}

/// One of a few, side by side.
#[component]
pub fn Pick<T>(
    /// What is chosen; unseen where the options say it.
    #[prop(into)]
    label: String,
    /// A name no other group on the screen has.
    #[prop(into)]
    group: String,
    /// What there is, with its name.
    options: Vec<(T, String)>,
    /// What is chosen now.
    #[prop(into)]
    value: Signal<T>,
    /// Told when another is chosen.
    on_choose: Callback<T>,
) -> impl IntoView
where
    T: Clone + PartialEq + Send + Sync + 'static,
{
    view! {
        <fieldset class="pick">
            <legend class="pick-legend">{label}</legend>
            {options.into_iter().map(|(option, name)| {
                let (here, this) = (option.clone(), option);
                view! {
                    <label class="pick-option">
                        <input type="radio" name=group.clone() prop:checked=move || value.with(|value| *value == here)
                            on:change=move |_| on_choose.run(this.clone()) />
                        <span>{name}</span>
                    </label>
                }
            }).collect_view()}
        </fieldset>
    }
}
