//! The layers, as they lie: the top one first.

use std::sync::Arc;

use bedwright_calc::fill::{LayerFill, Role};
use bedwright_calc::material::{Kind, Material, Pack};
use bedwright_job::Edit;
use bedwright_job::answers::{LayerOutcome, VesselAnswers};
use bedwright_job::edit::LayerChoice;
use bedwright_job::entry::{Entry, Meaning, Misread, Unit, answered, typed};
use bedwright_job::field::{LayerField, PlanField};
use bedwright_job::id::Id;
use bedwright_job::reading::LayerFault;
use bedwright_job::sections::plan::{LayerPlan, TargetKind};
use bedwright_job::words::{Label, Manner};
use leptos::prelude::*;

use crate::desk::{Desk, new_id};
use crate::parts::choice::Choice;
use crate::parts::entry::{Doubt, EntryField, Written};

type Answers = Memo<Option<Arc<VesselAnswers>>>;

/// The layers of one vessel.
#[component]
pub fn Layers(vessel: Id, answers: Answers, selected: RwSignal<Option<usize>>) -> impl IntoView {
    let desk = Desk::of();
    let say = move |label: Label| move || desk.label(label);
    let there = StoredValue::new(vessel);
    let ids = Memo::new(move |_| {
        there.with_value(|id| {
            desk.job.with(|job| {
                job.as_ref()
                    .map(|job| job.plan_of(id).layers.iter().map(|layer| layer.id.clone()).collect::<Vec<_>>())
                    .unwrap_or_default()
            })
        })
    });
    let add = move |role: Role| {
        let id = there.get_value();
        let Some(job) = desk.job.get_untracked() else { return };
        let layers = &job.plan_of(&id).layers;
        let at = match role {
            Role::Media => layers.len(),
            Role::Underbed => layers.iter().take_while(|layer| layer.role == Role::Underbed).count(),
        };
        let material = match role {
            Role::Underbed => "gravel_1_8x1_4",
            Role::Media => "",
        };
        desk.edit(Edit::InsertLayer { vessel: id, at, layer: LayerPlan::new(new_id(), material, role) });
        selected.set(Some(at));
    };
    let underbed = Memo::new(move |_| {
        there.with_value(|id| {
            desk.job.with(|job| {
                job.as_ref().is_some_and(|job| job.plan_of(id).layers.iter().any(|layer| layer.role == Role::Underbed))
            })
        })
    });
    let top_first = move || ids.get().into_iter().rev().collect::<Vec<_>>();
    view! {
        <section class="layers" aria-labelledby="layers">
            <h2 class="rule" id="layers">{say(Label::Layers)}</h2>
            <div class="actions">
                <button type="button" class="primary" on:click=move |_| add(Role::Media)>{say(Label::AddMedia)}</button>
                <button type="button" on:click=move |_| add(Role::Underbed)>{say(Label::AddUnderbed)}</button>
            </div>
            <ol class="layer-list">
                <For each=top_first key=|id| id.clone() let:id>
                    <LayerCard vessel=there.get_value() layer=id ids answers selected />
                </For>
            </ol>
            <Show when=move || !underbed.get() && !ids.with(Vec::is_empty)>
                <p class="layer-none">{say(Label::Underbed)}": "{say(Label::UnderbedNone)}</p>
            </Show>
            <BucketLine vessel=there.get_value() answers />
        </section>
    }
}

#[component]
fn LayerCard(
    vessel: Id,
    layer: Id,
    ids: Memo<Vec<Id>>,
    answers: Answers,
    selected: RwSignal<Option<usize>>,
) -> impl IntoView {
    let desk = Desk::of();
    let manner = desk.manner;
    let say = move |label: Label| move || desk.label(label);
    let (vessel, layer) = (StoredValue::new(vessel), StoredValue::new(layer));
    let place = Memo::new(move |_| {
        layer.with_value(|id| ids.with(|ids| ids.iter().position(|there| there == id)).unwrap_or(0))
    });
    let plan = Memo::new(move |_| {
        vessel.with_value(|vessel| {
            layer.with_value(|id| {
                desk.job.with(|job| {
                    job.as_ref()
                        .and_then(|job| job.plan_of(vessel).layers.iter().find(|there| there.id == *id).cloned())
                })
            })
        })
    });
    let outcome = Memo::new(move |_| {
        layer.with_value(|id| {
            answers.with(|answers| {
                answers.as_ref().and_then(|answers| {
                    answers.layers.iter().find(|there| there.id == *id).map(|there| there.outcome.clone())
                })
            })
        })
    });
    let fill = Memo::new(move |_| match outcome.get() {
        Some(LayerOutcome::Filled(fill)) => Some(fill),
        _ => None,
    });
    let pack = Memo::new(move |_| plan.with(|plan| plan.as_ref().and_then(pack_of)));
    let choose = move |choice: LayerChoice| {
        desk.edit(Edit::Layer { vessel: vessel.get_value(), layer: layer.get_value(), choice })
    };
    let role = Memo::new(move |_| plan.with(|plan| plan.as_ref().map_or(Role::Media, |plan| plan.role)));
    let materials = Signal::derive(move || {
        let kind = if role.get() == Role::Underbed { Kind::Gravel } else { Kind::Media };
        let mut all = vec![(String::new(), desk.label(Label::ChooseMaterial).to_owned())];
        all.extend(
            Material::all()
                .filter(|material| material.kind == kind)
                .map(|material| (material.id.to_string(), manner.get().material(&material.id))),
        );
        all
    });
    let packs = Signal::derive(move || {
        let id = plan.with(|plan| plan.as_ref().map(|plan| plan.material.clone()).unwrap_or_default());
        Pack::of_material(&id)
            .into_iter()
            .map(|pack| (pack.id.to_string(), manner.get().pack(&pack)))
            .collect::<Vec<_>>()
    });
    let targets = Signal::derive(move || {
        TargetKind::ALL.iter().map(|kind| (*kind, desk.label(target_label(*kind)).to_owned())).collect::<Vec<_>>()
    });
    let target = Memo::new(move |_| plan.with(|plan| plan.as_ref().map_or(TargetKind::Packs, |plan| plan.target)));
    let take_material = move |id: String| {
        let (vessel, layer) = (vessel.get_value(), layer.get_value());
        desk.edit(Edit::All(vec![
            Edit::Layer { vessel: vessel.clone(), layer: layer.clone(), choice: LayerChoice::Pack(String::new()) },
            Edit::Layer { vessel, layer, choice: LayerChoice::Material(id) },
        ]));
    };
    let take_target = move |kind: TargetKind| {
        let (vessel, layer) = (vessel.get_value(), layer.get_value());
        let same =
            plan.with_untracked(|plan| plan.as_ref().is_some_and(|plan| plan.target.dimension() == kind.dimension()));
        let mut edits =
            vec![Edit::Layer { vessel: vessel.clone(), layer: layer.clone(), choice: LayerChoice::Target(kind) }];
        if !same {
            edits.push(Edit::LayerEntry { vessel, layer, field: LayerField::Amount, entry: None });
        }
        desk.edit(Edit::All(edits));
        desk.turned.update(|n| *n = n.wrapping_add(1));
    };
    let shift = move |up: bool| {
        let at = place.get_untracked();
        let to = if up { at.checked_add(1) } else { at.checked_sub(1) };
        if let Some(to) = to.filter(|to| *to < ids.with_untracked(Vec::len)) {
            desk.edit(Edit::MoveLayer { vessel: vessel.get_value(), layer: layer.get_value(), to });
        }
    };
    let trouble = Memo::new(move |_| {
        let manner = manner.get();
        match outcome.get() {
            Some(LayerOutcome::Problem(problem)) => Some(manner.problem(&problem)),
            Some(LayerOutcome::Unread(LayerFault::Amount(_) | LayerFault::BulkDensity(_))) => None,
            Some(LayerOutcome::Unread(fault)) => Some(manner.layer_fault(&fault)),
            Some(LayerOutcome::Waits) => Some(desk.label(Label::Waits).to_owned()),
            _ => None,
        }
    });
    let title = move || {
        plan.with(|plan| plan.as_ref().map(|plan| plan.material.clone()))
            .filter(|id| !id.is_empty())
            .map_or_else(|| desk.label(Label::ChooseMaterial).to_owned(), |id| manner.get().material(&id))
    };
    view! {
        <li class="layer" class:layer-selected=move || selected.get() == Some(place.get()) on:focusin=move |_| selected.set(Some(place.get_untracked()))>
            <header class="layer-head">
                <span class="layer-number">{move || place.get() + 1}</span>
                <h3 class="layer-title">{title}</h3>
                <LayerFigures fill pack />
            </header>
            <p class="layer-trouble">{move || trouble.get()}</p>
            <div class="layer-entries">
                <Choice label=desk.label(Label::Material) options=materials value=Signal::derive(move || plan.with(|plan| plan.as_ref().map(|plan| plan.material.clone()).unwrap_or_default()))
                    on_choose=Callback::new(take_material) />
                <Choice label=desk.label(Label::Target) options=targets value=target on_choose=Callback::new(take_target) />
                <AmountLine vessel=vessel.get_value() layer=layer.get_value() plan outcome place />
                <Choice label=desk.label(Label::Pack) options=packs
                    value=Signal::derive(move || pack.with(|pack| pack.as_ref().map(|pack| pack.id.to_string()).unwrap_or_default()))
                    on_choose=Callback::new(move |id| choose(LayerChoice::Pack(id))) />
            </div>
            <LayerDetail fill pack />
            <div class="layer-tools">
                <label class="tick">
                    <input type="checkbox" prop:checked=move || plan.with(|plan| plan.as_ref().is_some_and(|plan| plan.minimum))
                        on:change=move |event| choose(LayerChoice::Minimum(event_target_checked(&event))) />
                    <span>{say(Label::Minimum)}</span>
                </label>
                <button type="button" class="quiet" on:click=move |_| shift(true)>{say(Label::MoveUp)}</button>
                <button type="button" class="quiet" on:click=move |_| shift(false)>{say(Label::MoveDown)}</button>
                <button type="button" class="quiet" on:click=move |_| desk.edit(Edit::RemoveLayer { vessel: vessel.get_value(), layer: layer.get_value() })>{say(Label::RemoveLayer)}</button>
            </div>
        </li>
    }
}

/// The two figures somebody reads at arm's length: packs, and the tape.
#[component]
fn LayerFigures(fill: Memo<Option<Box<LayerFill>>>, pack: Memo<Option<Pack>>) -> impl IntoView {
    let desk = Desk::of();
    let packs =
        move || fill.with(|fill| fill.as_ref().map_or_else(|| "–".to_owned(), |fill| fill.packs_to_buy.to_string()));
    let unit = move || {
        let count = fill.with(|fill| fill.as_ref().map_or(2, |fill| fill.packs_to_buy));
        pack.with(|pack| pack.as_ref().map(|pack| desk.manner.get().container(pack.container, count)))
    };
    let tape = move || {
        fill.with(|fill| {
            fill.as_ref().map_or_else(|| "–".to_owned(), |fill| desk.manner.get().tape(fill.tape.reading.value))
        })
    };
    let spread = move || fill.with(|fill| fill.as_ref().map(|fill| desk.manner.get().spread(fill.tape.spread)));
    view! {
        <p class="layer-figures">
            <span class="layer-figure"><strong class="big">{packs}</strong> " " {unit}</span>
            <span class="layer-figure"><span class="quietly">{move || desk.label(Label::TapeReads)}</span> " " <strong class="big">{tape}</strong> " " <span class="quietly">{spread}</span></span>
        </p>
    }
}

#[component]
fn LayerDetail(fill: Memo<Option<Box<LayerFill>>>, pack: Memo<Option<Pack>>) -> impl IntoView {
    let desk = Desk::of();
    let rows = move || {
        let manner = desk.manner.get();
        let mut rows: Vec<(String, String)> = Vec::new();
        fill.with(|fill| {
            let Some(fill) = fill else { return };
            let mut row = |label: Label, value: String| rows.push((desk.label(label).to_owned(), value));
            row(Label::Volume, manner.volume(fill.volume.value));
            row(Label::Weight, manner.mass(fill.mass.value));
            row(Label::DepthAtAxis, manner.tape(fill.depth_axis.value));
            row(Label::DepthAtWall, manner.tape(fill.depth_wall.value));
            if let Some(cover) = &fill.cover {
                row(Label::Cover, manner.tape(cover.value));
            }
            row(
                Label::LeftOver,
                if fill.part.is_some() {
                    manner.volume(fill.left_over.value)
                } else {
                    desk.label(Label::None).to_owned()
                },
            );
            if let Some(part) = &fill.part {
                row(
                    Label::PartBag,
                    format!(
                        "{}, {} {}",
                        manner.percent(part.share.value),
                        manner.decimal(part.buckets.value, 1),
                        desk.label(Label::Buckets)
                    ),
                );
            }
            if let Some(near) = &fill.near_miss {
                let packs =
                    pack.with(|pack| pack.as_ref().map_or("", |pack| manner.container(pack.container, near.taken)));
                row(
                    Label::Packs,
                    format!(
                        "{} → {} {packs}, {} {}",
                        manner.decimal(near.needed.value, 2),
                        near.taken,
                        manner.tape(near.shorter.value),
                        desk.label(Label::Shorter)
                    ),
                );
            }
        });
        rows
    };
    let ladder = move || {
        let manner = desk.manner.get();
        fill.with(|fill| {
            fill.as_ref()
                .map(|fill| {
                    fill.after_packs
                        .iter()
                        .map(|tape| (manner.tape(tape.reading.value), manner.spread(tape.spread)))
                        .collect::<Vec<_>>()
                })
                .unwrap_or_default()
        })
    };
    view! {
        <Show when=move || fill.with(Option::is_some)>
            <dl class="facts">
                {move || rows().into_iter().map(|(name, value)| view! { <div><dt>{name}</dt><dd class="figure">{value}</dd></div> }).collect_view()}
            </dl>
            <Show when=move || { ladder().len() > 1 }>
                <ol class="ladder" aria-label=move || desk.label(Label::TapeReads)>
                    {move || ladder().into_iter().enumerate().take(40).map(|(k, (reading, spread))| view! {
                        <li><span class="quietly">{desk.label(Label::After)} " " {k + 1}</span> " " <span class="figure">{reading}</span> " " <span class="quietly">{spread}</span></li>
                    }).collect_view()}
                </ol>
            </Show>
        </Show>
    }
}

#[component]
fn AmountLine(
    vessel: Id,
    layer: Id,
    plan: Memo<Option<LayerPlan>>,
    outcome: Memo<Option<LayerOutcome>>,
    place: Memo<usize>,
) -> impl IntoView {
    let desk = Desk::of();
    let (vessel, layer) = (StoredValue::new(vessel), StoredValue::new(layer));
    let entry = Memo::new(move |_| plan.with(|plan| plan.as_ref().and_then(|plan| plan.amount.clone())));
    let kind = Memo::new(move |_| plan.with(|plan| plan.as_ref().map_or(TargetKind::Packs, |plan| plan.target)));
    let misread = Memo::new(move |_| match outcome.get() {
        Some(LayerOutcome::Unread(LayerFault::Amount(misread))) => Some(misread),
        _ => None,
    });
    let put = move |entry: Option<Entry>| {
        desk.edit(Edit::LayerEntry {
            vessel: vessel.get_value(),
            layer: layer.get_value(),
            field: LayerField::Amount,
            entry,
        })
    };
    let label = desk.label(Label::Amount);
    view! {
        {move || {
            let kind = kind.get();
            let units = Unit::of(kind.dimension());
            view! {
                <NumberLine id=format!("amount-{}", place.get_untracked()) label units usual=kind.usual_unit(desk.manner.get().metric) entry misread put=Callback::new(put) />
            }
        }}
    }
}

#[component]
fn BucketLine(vessel: Id, answers: Answers) -> impl IntoView {
    let desk = Desk::of();
    let vessel = StoredValue::new(vessel);
    let entry = Memo::new(move |_| {
        vessel.with_value(|id| desk.job.with(|job| job.as_ref().and_then(|job| job.plan_of(id).bucket.clone())))
    });
    let misread =
        Memo::new(move |_| answers.with(|answers| answers.as_ref().and_then(|answers| answers.bucket.clone())));
    let put = move |entry: Option<Entry>| {
        desk.edit(Edit::Plan { vessel: vessel.get_value(), field: PlanField::Bucket, entry })
    };
    view! {
        {move || {
            let metric = desk.manner.get().metric;
            let usual = if metric { Unit::Litre } else { Unit::UsGallon };
            let assumed = bedwright_calc::quantity::Assumption::Bucket.volume();
            view! {
                <NumberLine id="bucket" label=desk.label(Label::Bucket) units=Unit::of(usual.dimension()) usual entry misread put=Callback::new(put)
                    assumed=desk.manner.get().decimal(usual.from_si(assumed.value.value), 1) />
            }
        }}
    }
}

/// A number with its unit, its echo and its mistake.
#[component]
fn NumberLine(
    #[prop(into)] id: String,
    label: &'static str,
    units: &'static [Unit],
    usual: Unit,
    entry: Memo<Option<Entry>>,
    misread: Memo<Option<Misread>>,
    put: Callback<Option<Entry>>,
    #[prop(optional, into)] assumed: Option<String>,
) -> impl IntoView {
    let desk = Desk::of();
    let manner = desk.manner;
    let taken = RwSignal::new(None::<Unit>);
    let unit = Memo::new(move |_| {
        entry
            .with(|entry| entry.as_ref().map(|entry| entry.unit))
            .filter(|unit| units.contains(unit))
            .or(taken.get())
            .unwrap_or(usual)
    });
    let written = Memo::new(move |_| Written {
        text: entry.with(|entry| entry.as_ref().map(|entry| entry.text.clone()).unwrap_or_default()),
        unit: units.iter().position(|there| *there == unit.get()).unwrap_or(0),
    });
    let write = move |now: Written| {
        let unit = units.get(now.unit).copied().unwrap_or(usual);
        taken.set(Some(unit));
        if now.text.trim().is_empty() {
            if entry.with_untracked(Option::is_some) {
                put.run(None);
            }
            return;
        }
        let marks = Manner::marks(&manner.get_untracked());
        put.run(Some(
            typed(&now.text, unit, marks)
                .map_or_else(|_| Entry { text: now.text, unit, meaning: None }, |(entry, _)| entry),
        ));
    };
    let settle = move |second: bool| {
        let Some(entry) = entry.get_untracked() else { return };
        let meaning = if second { Meaning::Thousands } else { Meaning::DecimalPoint };
        if let Ok((settled, _)) = answered(&entry.text, entry.unit, meaning) {
            put.run(Some(settled));
        }
    };
    let wrong = Signal::derive(move || misread.get().map(|misread| manner.get().misread(&misread, unit.get())));
    let doubt = Signal::derive(move || match misread.get() {
        Some(Misread::Ambiguous { as_decimal, as_thousands, written }) => {
            let manner = manner.get();
            let way = |value: f64| format!("{} {}", manner.decimal(value, 6), written.symbol());
            Some(Doubt { first: way(as_decimal), second: way(as_thousands) })
        }
        _ => None,
    });
    let echo = Signal::derive(move || {
        let entry = entry.get()?;
        let understood = entry.understood().ok()?;
        (entry.text.trim() != manner.get().decimal(understood.value, 4)).then(|| manner.get().echo(&understood))
    });
    let keypads = (desk.label(Label::DigitsKey), desk.label(Label::AbcKey));
    let symbols: Vec<&'static str> = units.iter().map(|unit| unit.symbol()).collect();
    view! {
        <EntryField id label units=symbols written on_write=Callback::new(write)
            on_leave=Callback::new(move |()| desk.pause()) echo wrong doubt on_settle=Callback::new(settle)
            assumed=Signal::derive(move || assumed.clone()) turned=desk.turned keypads />
    }
}

fn pack_of(plan: &LayerPlan) -> Option<Pack> {
    if plan.pack.is_empty() { Pack::of_material(&plan.material).into_iter().next() } else { Pack::of(&plan.pack) }
}

fn target_label(kind: TargetKind) -> Label {
    match kind {
        TargetKind::Cover => Label::TargetCover,
        TargetKind::Depth => Label::TargetDepth,
        TargetKind::Volume => Label::TargetVolume,
        TargetKind::Weight => Label::TargetWeight,
        TargetKind::Packs => Label::TargetPacks,
        TargetKind::Freeboard => Label::TargetFreeboard,
        TargetKind::FreeboardRatio => Label::TargetFreeboardRatio,
        TargetKind::TapeReading => Label::TargetTapeReading,
    }
}
