//! A section of a vessel, shown; touching a layer selects it.

use std::sync::Arc;
use std::sync::atomic::{AtomicU32, Ordering};

use bedwright_job::drawing::{Drawing, Geometry, Shape};
use leptos::prelude::*;

/// Tells several drawings on a page apart, for the ids their descriptions need.
static DRAWINGS: AtomicU32 = AtomicU32::new(0);

/// A section of a vessel.
///
/// A pointer can select a layer here; the keyboard does it in the list of layers beside it.
#[component]
pub fn SectionDrawing(
    /// What is drawn.
    #[prop(into)]
    drawing: Signal<Arc<Drawing>>,
    /// The layer that is selected, from the bottom at 0.
    #[prop(into)]
    selected: Signal<Option<usize>>,
    /// Told when another layer is touched.
    on_select: Callback<usize>,
) -> impl IntoView {
    let number = DRAWINGS.fetch_add(1, Ordering::Relaxed);
    let (title, description) = (format!("section-title-{number}"), format!("section-text-{number}"));
    let labels = format!("{title} {description}");
    view! {
        <svg
            class="section-drawing"
            role="img"
            aria-labelledby=labels
            width=move || drawing.with(|drawing| drawing.width.to_string())
            height=move || drawing.with(|drawing| drawing.height.to_string())
            viewBox=move || drawing.with(|drawing| drawing.view_box.clone())
        >
            <title id=title>{move || drawing.with(|drawing| drawing.title.clone())}</title>
            <desc id=description>{move || drawing.with(|drawing| drawing.description.clone())}</desc>
            {move || {
                drawing.with(|drawing| drawing.shapes.iter().map(|shape| mark(shape, selected, on_select)).collect_view())
            }}
        </svg>
    }
}

/// One mark; a layer's can be touched.
fn mark(shape: &Shape, selected: Signal<Option<usize>>, on_select: Callback<usize>) -> AnyView {
    let name = shape.class.name();
    let layer = shape.layer;
    let class = move || match layer {
        None => name.to_owned(),
        Some(_) if selected.get() == layer => format!("{name} section-touch section-selected"),
        Some(_) => format!("{name} section-touch"),
    };
    let touched = move |_| {
        if let Some(layer) = layer {
            on_select.run(layer);
        }
    };
    match shape.geometry.clone() {
        Geometry::Path { d } => view! { <path class=class d=d on:click=touched /> }.into_any(),
        Geometry::Line { x1, y1, x2, y2 } => {
            view! { <line class=class x1=at(x1) y1=at(y1) x2=at(x2) y2=at(y2) on:click=touched /> }.into_any()
        }
        Geometry::Circle { cx, cy, r } => {
            view! { <circle class=class cx=at(cx) cy=at(cy) r=at(r) on:click=touched /> }.into_any()
        }
        Geometry::Rect { x, y, width, height, round } => view! {
            <rect class=class x=at(x) y=at(y) width=at(width) height=at(height) rx=at(round) on:click=touched />
        }
        .into_any(),
        Geometry::Text { x, y, anchor, text, size } => view! {
            <text class=class x=at(x) y=at(y) text-anchor=anchor.word() font-size=at(size) on:click=touched>
                {text}
            </text>
        }
        .into_any(),
    }
}

/// A coordinate as an attribute.
fn at(value: f64) -> String {
    format!("{value:.2}")
}
