//! One line of the pick list: tick, quantity, where it lies, what was taken.

use bedwright_job::Edit;
use bedwright_job::papers::{PickRow, PickState};
use bedwright_job::sections::picking::PickField;
use bedwright_job::words::Label;
use leptos::html::Input;
use leptos::prelude::*;

use crate::desk::Desk;

/// A line.
#[component]
pub fn Line(
    /// The item's key.
    key: String,
    /// Every line, this one among them.
    rows: Memo<Vec<PickRow>>,
) -> impl IntoView {
    let desk = Desk::of();
    let row = {
        let key = key.clone();
        Memo::new(move |_| rows.with(|rows| rows.iter().find(|row| row.key == key).cloned()))
    };
    let of = move |read: fn(&PickRow) -> String| move || row.with(|row| row.as_ref().map(read).unwrap_or_default());
    let picked = move || row.with(|row| row.as_ref().is_some_and(|row| row.state == PickState::Picked));
    let changed = move || {
        row.with(|row| match row.as_ref()?.state {
            PickState::Changed { picked } => Some(format!("▲ {} {picked}", desk.label(Label::PickedThenChanged))),
            PickState::Open | PickState::Picked => None,
        })
    };
    let weight = move || {
        let manner = desk.manner.get();
        row.with(|row| {
            let row = row.as_ref()?;
            let mark = if row.heavy { "▲ " } else { "" };
            Some(format!("{mark}{} {}", manner.mass(row.each?), manner.label(Label::Each)))
        })
    };
    let comes_back = move || row.with(|row| row.as_ref().is_some_and(|row| row.returns));
    let name = move || {
        row.with(|row| {
            row.as_ref().map(|row| format!("{}: {} {} {}", desk.label(Label::Picked), row.quantity, row.unit, row.item))
        })
    };
    let ticked = {
        let key = key.clone();
        move |event: web_sys::Event| {
            let quantity = row.with_untracked(|row| row.as_ref().map(|row| row.quantity));
            let picked = if event_target_checked(&event) { quantity } else { None };
            desk.edit(Edit::Pick { key: key.clone(), picked });
        }
    };
    view! {
        <li class="pick-line" class:pick-done=picked>
            <label class="pick-tick">
                <input type="checkbox" aria-label=name prop:checked=picked on:change=ticked />
            </label>
            <p class="pick-quantity">
                <span class="pick-count figure">{of(|row| row.quantity.to_string())}</span>
                " "
                <span>{of(|row| row.unit.to_owned())}</span>
            </p>
            <div class="pick-what">
                <p class="pick-item">{of(|row| row.item.clone())}</p>
                <p class="pick-about">
                    <span>{of(|row| row.split.join(" · "))}</span>
                    <Show when=move || weight().is_some()><span>{weight}</span></Show>
                    <Show when=comes_back><span>{move || desk.label(Label::ComesBack)}</span></Show>
                </p>
                <p class="pick-changed" role="status">{changed}</p>
            </div>
            <div class="pick-texts">
                <Text key=key.clone() row field=PickField::Bin label=Label::BinPlace />
                <Text key=key.clone() row field=PickField::PartNumber label=Label::PartNumber />
                <Text key=key.clone() row field=PickField::Lot label=Label::LotAndDate />
                <Text key row field=PickField::Note label=Label::Note />
            </div>
        </li>
    }
}

/// A text typed on a line. Set from outside only when something else than typing changed it.
#[component]
fn Text(key: String, row: Memo<Option<PickRow>>, field: PickField, label: Label) -> impl IntoView {
    let desk = Desk::of();
    let input: NodeRef<Input> = NodeRef::new();
    Effect::new(move |_| {
        desk.turned.track();
        if let Some(input) = input.get() {
            let text =
                row.with_untracked(|row| row.as_ref().map(|row| row.line.text(field).to_owned()).unwrap_or_default());
            if input.value() != text {
                input.set_value(&text);
            }
        }
    });
    let name = move || row.with(|row| row.as_ref().map(|row| format!("{}: {}", desk.label(label), row.item)));
    let class = match field {
        PickField::Bin => "pick-text pick-bin",
        PickField::PartNumber => "pick-text pick-part",
        PickField::Lot | PickField::Note => "pick-text",
    };
    view! {
        <label class=class>
            <span class="pick-text-label">{move || desk.label(label)}</span>
            <input type="text" autocomplete="off" autocapitalize="characters" spellcheck="false" node_ref=input aria-label=name
                on:input=move |event| desk.edit(Edit::PickText { key: key.clone(), field, text: event_target_value(&event) })
                on:blur=move |_| desk.pause() />
        </label>
    }
}
