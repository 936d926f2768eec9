//! A field a number is typed into: text as typed, unit beside it, what was understood, what is wrong.

use leptos::html::Input;
use leptos::prelude::*;

/// What stands in a field: the text and its unit's place in the list.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Written {
    /// As typed.
    pub text: String,
    /// Which of the units.
    pub unit: usize,
}

/// Two ways a text can be meant, offered as buttons.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Doubt {
    /// The first way.
    pub first: String,
    /// The second way.
    pub second: String,
}

/// A field. The text is never changed while somebody types; it is set only when `turned` counts up.
#[component]
pub fn EntryField(
    /// What is asked for.
    #[prop(into)]
    label: String,
    /// How to take it, in a few words.
    #[prop(into, optional)]
    hint: String,
    /// An id no other field on the screen has.
    #[prop(into)]
    id: String,
    /// The units it may be typed in, by symbol; one of none for a bare number.
    units: Vec<&'static str>,
    /// What stands in it.
    #[prop(into)]
    written: Signal<Written>,
    /// Told at every change of text or unit.
    on_write: Callback<Written>,
    /// Told when the field is left.
    #[prop(optional, into)]
    on_leave: Option<Callback<()>>,
    /// What was understood, beside the field.
    #[prop(into)]
    echo: Signal<Option<String>>,
    /// What is wrong, under the field, once it was left.
    #[prop(into)]
    wrong: Signal<Option<String>>,
    /// Two ways the text can be meant.
    #[prop(optional, into)]
    doubt: Option<Signal<Option<Doubt>>>,
    /// Told which of the two: `false` the first, `true` the second.
    #[prop(optional, into)]
    on_settle: Option<Callback<bool>>,
    /// What stands in the empty field: what is assumed.
    #[prop(into, optional)]
    assumed: Signal<Option<String>>,
    /// Counted up when the text was changed by something else than typing.
    #[prop(into)]
    turned: Signal<u32>,
    /// Names of the two keypads, digits and letters.
    keypads: (&'static str, &'static str),
    /// Letters from the start, where a bare number is rare.
    #[prop(optional)]
    letters: bool,
    /// What stands at the field's right: its standing, a choice.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let input: NodeRef<Input> = NodeRef::new();
    let left = RwSignal::new(!written.with_untracked(|w| w.text.is_empty()));
    let by_letters = RwSignal::new(letters);
    let shows = Memo::new(move |_| if left.get() { wrong.get() } else { None });
    Effect::new(move |_| {
        turned.track();
        if let Some(input) = input.get() {
            let text = written.with_untracked(|w| w.text.clone());
            if input.value() != text {
                input.set_value(&text);
            }
        }
    });
    let typed = move |_| {
        if let Some(input) = input.get_untracked() {
            let unit = written.with_untracked(|w| w.unit);
            on_write.run(Written { text: input.value(), unit });
        }
    };
    let switched = move |event: web_sys::Event| {
        use wasm_bindgen::JsCast;
        let index = event
            .target()
            .and_then(|target| target.dyn_into::<web_sys::HtmlSelectElement>().ok())
            .map(|select| select.selected_index());
        if let Some(unit) = index.and_then(|index| usize::try_from(index).ok()) {
            let text = written.with_untracked(|w| w.text.clone());
            on_write.run(Written { text, unit });
        }
    };
    let leave = move |_| {
        left.set(true);
        if let Some(on_leave) = on_leave {
            on_leave.run(());
        }
    };
    let (wrong_id, hint_id) = (format!("{id}-wrong"), format!("{id}-hint"));
    let described = {
        let (wrong_id, hint_id) = (wrong_id.clone(), hint_id.clone());
        move || if shows.with(Option::is_some) { format!("{wrong_id} {hint_id}") } else { hint_id.clone() }
    };
    let (digits, abc) = keypads;
    let single = units.len() < 2;
    let symbol = units.first().copied().unwrap_or_default();
    view! {
        <div class="entry" class:entry-wrong=move || shows.with(Option::is_some)>
            <label class="entry-label" for=id.clone()>{label.clone()}</label>
            <div class="entry-frame">
                <input type="text" id=id autocomplete="off" autocapitalize="off" spellcheck="false" enterkeyhint="next"
                    inputmode=move || if by_letters.get() { "text" } else { "decimal" }
                    node_ref=input
                    placeholder=move || assumed.get().unwrap_or_default()
                    aria-invalid=move || shows.with(Option::is_some).then_some("true")
                    aria-describedby=described
                    on:input=typed on:blur=leave />
                <button type="button" class="entry-keys" tabindex="-1" aria-hidden="true"
                    on:click=move |_| {
                        by_letters.update(|letters| *letters = !*letters);
                        if let Some(input) = input.get_untracked() && input.focus().is_err() {
                            leptos::logging::warn!("focus refused");
                        }
                    }>
                    {move || if by_letters.get() { digits } else { abc }}
                </button>
                {if single {
                    view! { <span class="entry-unit">{symbol}</span> }.into_any()
                } else {
                    view! {
                        <select class="entry-unit" aria-label=label on:change=switched>
                            {units.iter().enumerate().map(|(index, symbol)| {
                                view! { <option prop:selected=move || written.with(|w| w.unit == index)>{*symbol}</option> }
                            }).collect_view()}
                        </select>
                    }.into_any()
                }}
            </div>
            <div class="entry-after">
                {children.map(|children| children())}
                <span class="entry-echo">{move || echo.get()}</span>
            </div>
            <p class="entry-hint" id=hint_id>{hint}</p>
            <p class="entry-message" id=wrong_id>{move || shows.get()}</p>
            {doubt.zip(on_settle).map(|(doubt, on_settle)| view! {
                {move || doubt.get().map(|two| view! {
                    <p class="entry-doubt">
                        <button type="button" on:click=move |_| on_settle.run(false)>{two.first}</button>
                        <button type="button" on:click=move |_| on_settle.run(true)>{two.second}</button>
                    </p>
                })}
            })}
        </div>
    }
}
