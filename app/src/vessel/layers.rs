//! The layers, as they lie: the top one first.

use std::rc::Rc;
use std::sync::Arc;

use bedwright_calc::fill::{LayerFill, Role};
use bedwright_calc::material::{Kind, Material, Pack};
use bedwright_job::Edit;
use bedwright_job::answers::{LayerAnswer, LayerOutcome, VesselAnswers};
use bedwright_job::edit::LayerChoice;
use bedwright_job::entry::{Entry, Unit};
use bedwright_job::field::{LayerField, PlanField};
use bedwright_job::id::Id;
use bedwright_job::reading::LayerFault;
use bedwright_job::sections::plan::{LayerPlan, TargetKind, VesselPlan};
use bedwright_job::words::Label;
use leptos::prelude::*;

use super::number_line::NumberLine;
use crate::desk::{Answers, Desk, new_id, with_answers};
use crate::parts::choice::choice;
use crate::parts::live::{El, button, el, ticked};
use crate::parts::signal::{Held, Kept};

/// The plan of a vessel of the open job.
#[derive(Clone, Copy)]
struct There {
    desk: Desk,
    vessel: Kept<Id>,
    answers: Answers,
    selected: Held<Option<usize>>,
}

impl There {
    fn plan<T: Default>(self, read: impl FnOnce(&VesselPlan) -> T) -> T {
        self.now().map(|plan| read(&plan)).unwrap_or_default()
    }

    #[inline(never)]
    fn now(self) -> Option<Arc<VesselPlan>> {
        let job = self.desk.open()?;
        self.vessel.with(|id| Some(job.plan_of(id)))
    }

    fn ids(self) -> Vec<String> {
        self.plan(|plan| plan.layers.iter().map(|layer| layer.id.to_string()).collect())
    }
}

/// The layers of one vessel.
pub fn layers(desk: Desk, vessel: &Id, answers: Answers, selected: Held<Option<usize>>) -> El {
    let there = There { desk, vessel: Kept::new(vessel.clone()), answers, selected };
    let say = move |label: Label| desk.label(label);
    let add = move |role: Role| {
        let at = untrack(|| {
            there.plan(|plan| match role {
                Role::Media => plan.layers.len(),
                Role::Underbed => plan.layers.iter().take_while(|layer| layer.role == Role::Underbed).count(),
            })
        });
        let material = match role {
            Role::Underbed => "gravel_1_8x1_4",
            Role::Media => "",
        };
        let layer = LayerPlan::new(new_id(), material, role);
        desk.edit(Edit::InsertLayer { vessel: there.vessel.get(), at, layer });
        selected.set(Some(at));
    };
    let without_underbed = move || {
        there.plan(|plan| !plan.layers.is_empty() && plan.layers.iter().all(|layer| layer.role != Role::Underbed))
    };
    let top_first = move || {
        let mut ids = there.ids();
        ids.reverse();
        ids
    };
    let actions = el("div", "actions")
        .kid(button("primary", say(Label::AddMedia), move || add(Role::Media)))
        .kid(button("", say(Label::AddUnderbed), move || add(Role::Underbed)));
    el("section", "layers")
        .set("aria-labelledby", "layers")
        .kid(el("h2", "rule").set("id", "layers").text(say(Label::Layers)))
        .kid(actions)
        .kid(el("ol", "layer-list").each(top_first, move |id| Layer { there, id: Kept::new(Id::new(id)) }.card()))
        .when(without_underbed, move || {
            let none = el("p", "layer-none").text(say(Label::Underbed)).text(": ").text(say(Label::UnderbedNone));
            vec![none]
        })
        .kid(bucket_line(there))
}

/// One layer of the plan.
#[derive(Clone, Copy)]
struct Layer {
    there: There,
    id: Kept<Id>,
}

impl Layer {
    fn plan<T>(self, read: impl FnOnce(&LayerPlan) -> T) -> Option<T> {
        let plan = self.there.now()?;
        plan.layers.get(self.at(&plan)?).map(read)
    }

    #[inline(never)]
    fn at(self, plan: &VesselPlan) -> Option<usize> {
        self.id.with(|id| plan.layers.iter().position(|layer| layer.id == *id))
    }

    fn place(self) -> usize {
        self.there.plan(|plan| self.at(plan)).unwrap_or(0)
    }

    fn outcome<T>(self, read: impl FnOnce(&LayerOutcome) -> Option<T>) -> Option<T> {
        with_answers(self.there.answers, |answers| read(&self.answer(answers?)?.outcome))
    }

    #[inline(never)]
    fn answer(self, answers: &VesselAnswers) -> Option<&LayerAnswer> {
        self.id.with(|id| answers.layers.iter().find(|layer| layer.id == *id))
    }

    fn fill<T>(self, read: impl FnOnce(&LayerFill) -> T) -> Option<T> {
        self.outcome(|outcome| match outcome {
            LayerOutcome::Filled(fill) => Some(read(fill)),
            _ => None,
        })
    }

    fn material(self) -> String {
        self.plan(|plan| plan.material.clone()).unwrap_or_default()
    }

    fn pack(self) -> Option<Pack> {
        self.plan(pack_of).flatten()
    }

    fn edit(self, choice: LayerChoice) -> Edit {
        Edit::Layer { vessel: self.there.vessel.get(), layer: self.id.get(), choice }
    }

    fn amount(self, entry: Option<Entry>) -> Edit {
        let (vessel, layer) = (self.there.vessel.get(), self.id.get());
        Edit::LayerEntry { vessel, layer, field: LayerField::Amount, entry }
    }

    fn target(self) -> TargetKind {
        self.plan(|plan| plan.target).unwrap_or(TargetKind::Packs)
    }

    fn take_target(self, kind: TargetKind) {
        let desk = self.there.desk;
        let same = untrack(|| self.plan(|plan| plan.target.dimension() == kind.dimension()).unwrap_or(false));
        let mut edits = vec![self.edit(LayerChoice::Target(kind))];
        if !same {
            edits.push(self.amount(None));
        }
        desk.edit(Edit::All(edits));
        desk.turned.update(|n| *n = n.wrapping_add(1));
    }

    fn shift(self, up: bool) {
        let (at, count) = untrack(|| (self.place(), self.there.ids().len()));
        let to = if up { at.checked_add(1) } else { at.checked_sub(1) };
        if let Some(to) = to.filter(|to| *to < count) {
            let (vessel, layer) = (self.there.vessel.get(), self.id.get());
            self.there.desk.edit(Edit::MoveLayer { vessel, layer, to });
        }
    }

    fn trouble(self) -> Option<String> {
        let (desk, manner) = (self.there.desk, self.there.desk.manner());
        self.outcome(|outcome| match outcome {
            LayerOutcome::Problem(problem) => Some(manner.problem(problem)),
            LayerOutcome::Unread(LayerFault::Amount(_) | LayerFault::BulkDensity(_)) => None,
            LayerOutcome::Unread(fault) => Some(manner.layer_fault(fault)),
            LayerOutcome::Waits => Some(desk.label(Label::Waits).to_owned()),
            _ => None,
        })
    }

    fn card(self) -> El {
        let There { desk, selected, .. } = self.there;
        let manner = desk.manner();
        let say = move |label: Label| desk.label(label);
        let title = move || match self.material() {
            id if id.is_empty() => say(Label::ChooseMaterial).to_owned(),
            id => manner.material(&id),
        };
        let head = el("header", "layer-head")
            .kid(el("span", "layer-number").says(move || (self.place() + 1).to_string()))
            .kid(el("h3", "layer-title").says(title))
            .kid(self.figures());
        let tools = el("div", "layer-tools")
            .kid(
                el("label", "tick")
                    .kid(
                        el("input", "")
                            .set("type", "checkbox")
                            .holds("checked", move || self.plan(|plan| plan.minimum).unwrap_or(false))
                            .on("change", move |event| desk.edit(self.edit(LayerChoice::Minimum(ticked(&event))))),
                    )
                    .kid(el("span", "").text(say(Label::Minimum))),
            )
            .kid(button("quiet", say(Label::MoveUp), move || self.shift(true)))
            .kid(button("quiet", say(Label::MoveDown), move || self.shift(false)))
            .kid(button("quiet", say(Label::RemoveLayer), move || {
                let (vessel, layer) = (self.there.vessel.get(), self.id.get());
                desk.edit(Edit::RemoveLayer { vessel, layer });
            }));
        let card = el("li", "layer")
            .tells("aria-label", move || Some(format!("{} {}", self.place() + 1, title())))
            .marks("layer-selected", move || selected.get() == Some(self.place()))
            .on("focusin", move |_| selected.set(Some(untrack(|| self.place()))))
            .kid(head)
            .kid(el("p", "layer-trouble").says(move || self.trouble().unwrap_or_default()))
            .kid(self.entries());
        self.detail(card).kid(tools)
    }

    fn entries(self) -> El {
        let desk = self.there.desk;
        let manner = desk.manner();
        let say = move |label: Label| desk.label(label);
        let materials = move || -> Vec<String> {
            let kind = if self.plan(|plan| plan.role) == Some(Role::Underbed) { Kind::Gravel } else { Kind::Media };
            Material::all().filter(|material| material.kind == kind).map(|material| material.id.to_string()).collect()
        };
        let material = choice(
            say(Label::Material),
            move || {
                let first = say(Label::ChooseMaterial).to_owned();
                [first].into_iter().chain(materials().iter().map(|id| manner.material(id))).collect()
            },
            move || {
                let now = self.material();
                materials().iter().position(|id| *id == now).map(|at| at + 1)
            },
            move |at| {
                let id = at.checked_sub(1).and_then(|at| untrack(materials).into_iter().nth(at)).unwrap_or_default();
                let pack = self.edit(LayerChoice::Pack(String::new()));
                desk.edit(Edit::All(vec![pack, self.edit(LayerChoice::Material(id))]));
            },
        );
        let target = choice(
            say(Label::Target),
            move || TargetKind::ALL.iter().map(|kind| say(target_label(*kind)).to_owned()).collect(),
            move || TargetKind::ALL.iter().position(|kind| *kind == self.target()),
            move |at| {
                if let Some(kind) = TargetKind::ALL.get(at) {
                    self.take_target(*kind);
                }
            },
        );
        let packs = move || Pack::of_material(&self.material());
        let pack = choice(
            say(Label::Pack),
            move || packs().into_iter().map(|pack| manner.pack(&pack)).collect(),
            move || {
                let now = self.pack()?;
                packs().iter().position(|pack| pack.id == now.id)
            },
            move |at| {
                if let Some(pack) = untrack(packs).get(at) {
                    desk.edit(self.edit(LayerChoice::Pack(pack.id.to_string())));
                }
            },
        );
        // Another kind of target is typed in other units: another field.
        let kinds = move || {
            let target = self.target();
            vec![target.id().to_owned()]
        };
        let amount = move |target: &str| {
            let target = TargetKind::of(target).unwrap_or(TargetKind::Packs);
            let misread = move || {
                self.outcome(|outcome| match outcome {
                    LayerOutcome::Unread(LayerFault::Amount(misread)) => Some(misread.clone()),
                    _ => None,
                })
            };
            NumberLine {
                id: format!("amount-{}", self.id.get()),
                label: say(Label::Amount),
                units: Unit::of(target.dimension()),
                usual: target.usual_unit(manner.metric),
                entry: Rc::new(move || self.plan(|plan| plan.amount.clone()).flatten()),
                misread: Rc::new(misread),
                problem: Rc::new(|| None),
                put: Rc::new(move |entry| desk.edit(self.amount(entry))),
                hint: "",
                assumed: Rc::new(|| None),
                standing: None,
            }
            .show(desk)
        };
        el("div", "layer-entries").kid(material).kid(target).each(kinds, amount).kid(pack)
    }

    /// The two figures somebody reads at arm's length: packs, and the tape.
    fn figures(self) -> El {
        let desk = self.there.desk;
        let manner = desk.manner();
        let none = || "–".to_owned();
        let packs = move || self.fill(|fill| fill.packs_to_buy.to_string()).unwrap_or_else(none);
        let unit = move || {
            let count = self.fill(|fill| fill.packs_to_buy).unwrap_or(2);
            self.pack().map(|pack| manner.container(pack.container, count).to_string()).unwrap_or_default()
        };
        let tape = move || self.fill(|fill| manner.tape(fill.tape.reading.value)).unwrap_or_else(none);
        let spread = move || self.fill(|fill| manner.spread(fill.tape.spread)).unwrap_or_default();
        el("p", "layer-figures")
            .kid(el("span", "layer-figure").kid(el("strong", "big").says(packs)).text(" ").says(unit))
            .kid(
                el("span", "layer-figure")
                    .kid(el("span", "quietly").text(desk.label(Label::TapeReads)))
                    .text(" ")
                    .kid(el("strong", "big").says(tape))
                    .text(" ")
                    .kid(el("span", "quietly").says(spread)),
            )
    }

    /// What else is known of the layer, one fact a row.
    fn facts(self) -> Vec<(Label, String)> {
        let desk = self.there.desk;
        let manner = desk.manner();
        self.fill(|fill| {
            let mut rows = vec![
                (Label::Volume, manner.volume(fill.volume.value)),
                (Label::Weight, manner.mass(fill.mass.value)),
                (Label::DepthAtAxis, manner.tape(fill.depth_axis.value)),
                (Label::DepthAtWall, manner.tape(fill.depth_wall.value)),
            ];
            let underbed = self.plan(|plan| plan.role == Role::Underbed).unwrap_or(false);
            if let Some(cover) = fill.cover.as_ref().filter(|_| underbed) {
                rows.push((Label::Cover, manner.tape(cover.value)));
            }
            let left_over = if fill.part.is_some() {
                manner.volume(fill.left_over.value)
            } else {
                desk.label(Label::None).to_owned()
            };
            rows.push((Label::LeftOver, left_over));
            if let Some(part) = &fill.part {
                let (share, buckets) = (manner.percent(part.share.value), manner.decimal(part.buckets.value, 1));
                rows.push((Label::PartBag, format!("{share}, {buckets} {}", desk.label(Label::Buckets))));
            }
            if let Some(near) = &fill.near_miss {
                let packs = self
                    .pack()
                    .map(|pack| manner.container(pack.container, near.taken).to_string())
                    .unwrap_or_default();
                let (needed, shorter) = (manner.decimal(near.needed.value, 2), manner.tape(near.shorter.value));
                let taken = near.taken;
                rows.push((
                    Label::Packs,
                    format!("{needed} → {taken} {packs}, {shorter} {}", desk.label(Label::Shorter)),
                ));
            }
            rows
        })
        .unwrap_or_default()
    }

    fn detail(self, card: El) -> El {
        let desk = self.there.desk;
        let manner = desk.manner();
        let facts = move || {
            let row = |(label, value): (Label, String)| {
                el("div", "").kid(el("dt", "").text(desk.label(label))).kid(el("dd", "figure").text(&value))
            };
            self.facts().into_iter().map(row).collect()
        };
        let ladder = move || {
            let rung = |(k, reading, spread): (usize, String, String)| {
                el("li", "")
                    .kid(el("span", "quietly").text(desk.label(Label::After)).text(" ").text(&(k + 1).to_string()))
                    .text(" ")
                    .kid(el("span", "figure").text(&reading))
                    .text(" ")
                    .kid(el("span", "quietly").text(&spread))
            };
            let rungs = self.fill(|fill| {
                let rungs = fill.after_packs.iter().enumerate().take(40);
                rungs
                    .map(|(k, tape)| (k, manner.tape(tape.reading.value), manner.spread(tape.spread)))
                    .collect::<Vec<_>>()
            });
            rungs.unwrap_or_default().into_iter().map(rung).collect()
        };
        card.when(move || self.fill(|_| ()).is_some(), move || vec![el("dl", "facts").live(facts)]).when(
            move || self.fill(|fill| fill.after_packs.len() > 1).unwrap_or(false),
            move || vec![el("ol", "ladder").set("aria-label", desk.label(Label::TapeReads)).live(ladder)],
        )
    }
}

fn bucket_line(there: There) -> El {
    let desk = there.desk;
    let manner = desk.manner();
    let usual = if manner.metric { Unit::Litre } else { Unit::UsGallon };
    let assumed = bedwright_calc::quantity::Assumption::Bucket.volume();
    NumberLine {
        id: "bucket".to_owned(),
        label: desk.label(Label::Bucket),
        units: Unit::of(usual.dimension()),
        usual,
        entry: Rc::new(move || there.plan(|plan| plan.bucket.clone())),
        misread: Rc::new(move || {
            with_answers(there.answers, |answers| answers.and_then(|answers| answers.bucket.clone()))
        }),
        problem: Rc::new(move || {
            let problem = with_answers(there.answers, |answers| answers.and_then(|answers| answers.bucket_problem));
            problem.map(|problem| manner.problem(&problem))
        }),
        put: Rc::new(move |entry| {
            desk.edit(Edit::Plan { vessel: there.vessel.get(), field: PlanField::Bucket, entry });
        }),
        hint: "",
        assumed: Rc::new(move || Some(assumed.value.value)),
        standing: None,
    }
    .show(desk)
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
