//! What the vessel is: choices, and entries with what was understood of each.

use std::sync::Arc;

use bedwright_calc::vessel::Opening;
use bedwright_job::Edit;
use bedwright_job::answers::VesselAnswers;
use bedwright_job::edit::Choice as Chosen;
use bedwright_job::entry::{Entry, Meaning, Misread, Unit, answered, typed};
use bedwright_job::field::SurveyField;
use bedwright_job::id::Id;
use bedwright_job::reading::asked;
use bedwright_job::sections::survey::{
    CollectorKind, DiameterWay, HeadShape, Path, Standing, SurveyEntry, VesselSurvey,
};
use bedwright_job::words::Label;
use leptos::prelude::*;

use crate::desk::Desk;
use crate::parts::choice::{Choice, Pick};
use crate::parts::entry::{Doubt, EntryField, Written};

type Answers = Memo<Option<Arc<VesselAnswers>>>;

/// The survey of one vessel.
#[component]
pub fn Survey(vessel: Id, answers: Answers) -> impl IntoView {
    let desk = Desk::of();
    let say = move |label: Label| move || desk.label(label);
    let there = StoredValue::new(vessel.clone());
    let of = move |read: fn(&VesselSurvey) -> Chosen| {
        Memo::new(move |_| {
            there.with_value(|id| {
                desk.job.with(|job| job.as_ref().and_then(|job| job.vessel(id).map(|vessel| read(vessel))))
            })
        })
    };
    let choose = move |choice: Chosen| desk.edit(Edit::Choose { vessel: there.get_value(), choice });
    let select = move |label: Label, all: Vec<(Chosen, Label)>, read: fn(&VesselSurvey) -> Chosen| {
        let now = of(read);
        let first = all.first().map(|(choice, _)| *choice);
        let options = Signal::derive(move || {
            all.iter().map(|(choice, label)| (Some(*choice), desk.label(*label).to_owned())).collect::<Vec<_>>()
        });
        let value = Signal::derive(move || now.get().or(first));
        view! {
            <Choice label=desk.label(label) options value
                on_choose=Callback::new(move |choice: Option<Chosen>| if let Some(choice) = choice { choose(choice) }) />
        }
    };
    let heads = |conical: bool| {
        HeadShape::ALL
            .iter()
            .filter(move |shape| conical || **shape != HeadShape::Conical)
            .map(|shape| (*shape, head_label(*shape)))
            .collect::<Vec<_>>()
    };
    let path = Memo::new(move |_| {
        there.with_value(|id| {
            desk.job.with(|job| {
                job.as_ref().and_then(|job| job.vessel(id)).map_or(Path::OpenAndEmpty, |vessel| vessel.path)
            })
        })
    });
    let fields = Memo::new(move |_| {
        there.with_value(|id| {
            desk.job
                .with(|job| job.as_ref().and_then(|job| job.vessel(id)).map(|vessel| asked(vessel)).unwrap_or_default())
        })
    });
    let missing = move || {
        there
            .with_value(|id| {
                let survey = desk.job.with(|job| job.as_ref().and_then(|job| job.vessel(id).cloned()))?;
                let unmeasured =
                    answers.with(|answers| answers.as_ref().map(|answers| answers.survey.unmeasured(&survey)))?;
                let manner = desk.manner.get();
                Some(unmeasured.iter().map(|field| manner.field(*field).to_lowercase()).collect::<Vec<_>>())
            })
            .unwrap_or_default()
    };
    view! {
        <section class="survey" aria-labelledby="survey">
            <h2 class="rule" id="survey">{say(Label::Vessel)}</h2>
            <Pick label=desk.label(Label::FoundAs) group="path"
                options=vec![(Path::OpenAndEmpty, desk.label(Label::OpenAndEmpty).to_owned()), (Path::InService, desk.label(Label::InService).to_owned())]
                value=path on_choose=Callback::new(move |path| choose(Chosen::Path(path))) />
            <p class="survey-missing">
                {move || {
                    let missing = missing();
                    if missing.is_empty() {
                        desk.label(Label::NothingMissing).to_owned()
                    } else {
                        format!("{} {}.", desk.label(Label::StillMissing), missing.join(", "))
                    }
                }}
            </p>
            <TagsLine vessel=vessel.clone() />
            <div class="choices">
                {select(Label::DiameterBy, DiameterWay::ALL.iter().map(|way| (Chosen::Diameter(*way), way_label(*way))).collect(), |v| Chosen::Diameter(v.diameter_way))}
                {select(Label::BottomHead, heads(true).into_iter().map(|(shape, label)| (Chosen::BottomHead(shape), label)).collect(), |v| Chosen::BottomHead(v.bottom_head))}
                {select(Label::TopHead, heads(false).into_iter().map(|(shape, label)| (Chosen::TopHead(shape), label)).collect(), |v| Chosen::TopHead(v.top_head))}
                {select(Label::Opening, Opening::ALL.iter().map(|opening| (Chosen::Opening(*opening), opening_label(*opening))).collect(), |v| Chosen::Opening(v.opening))}
                {select(Label::Riser, vec![(Chosen::Riser(true), Label::Yes), (Chosen::Riser(false), Label::No)], |v| Chosen::Riser(v.riser))}
                {select(Label::BottomCollector, CollectorKind::ALL.iter().map(|kind| (Chosen::Collector(*kind), collector_label(*kind))).collect(), |v| Chosen::Collector(v.collector))}
                {select(Label::UpperCollector, vec![(Chosen::UpperCollector(false), Label::No), (Chosen::UpperCollector(true), Label::Yes)], |v| Chosen::UpperCollector(v.upper_collector))}
            </div>
            <div class="entries">
                <For each=move || fields.get() key=|field| *field let:field>
                    <SurveyLine vessel=there.get_value() field answers />
                </For>
            </div>
        </section>
    }
}

#[component]
fn TagsLine(vessel: Id) -> impl IntoView {
    let desk = Desk::of();
    let there = StoredValue::new(vessel);
    let now = Memo::new(move |_| {
        there.with_value(|id| {
            desk.job.with(|job| {
                job.as_ref().and_then(|job| job.vessel(id)).map(|vessel| vessel.tags.join(", ")).unwrap_or_default()
            })
        })
    });
    let input: NodeRef<leptos::html::Input> = NodeRef::new();
    Effect::new(move |_| {
        desk.turned.track();
        if let Some(input) = input.get() {
            let text = now.get_untracked();
            if input.value() != text {
                input.set_value(&text);
            }
        }
    });
    let write = move |event: web_sys::Event| {
        let tags: Vec<String> = event_target_value(&event)
            .split([',', ';'])
            .map(|tag| tag.trim().to_owned())
            .filter(|tag| !tag.is_empty())
            .collect();
        desk.edit(Edit::Tags { vessel: there.get_value(), tags });
    };
    view! {
        <label class="text-line">
            <span class="text-label">{move || desk.label(Label::Tags)}</span>
            <input type="text" autocomplete="off" node_ref=input on:input=write on:blur=move |_| desk.pause() />
            <span class="entry-hint">{move || desk.label(Label::TagsHint)}</span>
        </label>
    }
}

#[component]
fn SurveyLine(vessel: Id, field: SurveyField, answers: Answers) -> impl IntoView {
    let desk = Desk::of();
    let manner = desk.manner;
    let there = StoredValue::new(vessel);
    let units: &'static [Unit] =
        if field == SurveyField::NominalSize { &[Unit::Inch] } else { Unit::of(field.dimension()) };
    let entry = Memo::new(move |_| {
        there.with_value(|id| {
            desk.job.with(|job| {
                job.as_ref().and_then(|job| job.vessel(id)).and_then(|vessel| vessel.entries.get(&field).cloned())
            })
        })
    });
    // The unit of an empty field: the person's usual one until another is taken.
    let taken = RwSignal::new(None::<Unit>);
    let unit = Memo::new(move |_| {
        entry
            .with(|entry| entry.as_ref().map(|typed| typed.entry.unit))
            .or(taken.get())
            .unwrap_or_else(|| field.usual_unit(manner.get().metric))
    });
    let written = Memo::new(move |_| Written {
        text: entry.with(|entry| entry.as_ref().map(|typed| typed.entry.text.clone()).unwrap_or_default()),
        unit: units.iter().position(|u| *u == unit.get()).unwrap_or(0),
    });
    let standing_now = move || {
        entry.with_untracked(|entry| entry.as_ref().map(|typed| typed.standing)).unwrap_or_else(|| {
            let open = there.with_value(|id| {
                desk.job.with_untracked(|job| {
                    job.as_ref().and_then(|job| job.vessel(id)).is_none_or(|vessel| vessel.path == Path::OpenAndEmpty)
                })
            });
            let outside =
                matches!(field, SurveyField::Circumference | SurveyField::NominalSize | SurveyField::BagVolume);
            if open || outside { Standing::Measured } else { Standing::Assumed }
        })
    };
    let put = move |entry: Option<SurveyEntry>| desk.edit(Edit::Survey { vessel: there.get_value(), field, entry });
    let write = move |now: Written| {
        let unit = units.get(now.unit).copied().unwrap_or_else(|| unit.get_untracked());
        taken.set(Some(unit));
        if now.text.trim().is_empty() {
            if entry.with_untracked(Option::is_some) {
                put(None);
            }
            return;
        }
        let marks = manner.get_untracked().marks();
        let entry = if field == SurveyField::NominalSize {
            Entry { text: now.text, unit, meaning: None }
        } else {
            typed(&now.text, unit, marks)
                .map_or_else(|_| Entry { text: now.text, unit, meaning: None }, |(entry, _)| entry)
        };
        put(Some(SurveyEntry { entry, standing: standing_now() }));
    };
    let settle = move |second: bool| {
        let Some(typed) = entry.get_untracked() else { return };
        let meaning = if second { Meaning::Thousands } else { Meaning::DecimalPoint };
        if let Ok((settled, _)) = answered(&typed.entry.text, typed.entry.unit, meaning) {
            put(Some(SurveyEntry { entry: settled, standing: typed.standing }));
        }
    };
    let misread = Memo::new(move |_| {
        answers.with(|answers| answers.as_ref().and_then(|answers| answers.survey.misread.get(&field).cloned()))
    });
    let wrong = Signal::derive(move || {
        if let Some(misread) = misread.get() {
            return Some(manner.get().misread(&misread, unit.get()));
        }
        answers.with(|answers| {
            answers
                .as_ref()
                .and_then(|answers| answers.problems.get(&field).map(|problem| manner.get().problem(problem)))
        })
    });
    let doubt = Signal::derive(move || match misread.get() {
        Some(Misread::Ambiguous { as_decimal, as_thousands, written }) => {
            let manner = manner.get();
            let way = |value: f64| format!("{} {}", manner.decimal(value, 6), written.symbol());
            Some(Doubt { first: way(as_decimal), second: way(as_thousands) })
        }
        _ => None,
    });
    let echo = Signal::derive(move || {
        if field == SurveyField::NominalSize {
            return answers
                .with(|answers| answers.as_ref().and_then(|answers| answers.survey.nominal))
                .map(|(diameter, height)| format!("{diameter} × {height} in"));
        }
        let understood = answers
            .with(|answers| answers.as_ref().and_then(|answers| answers.survey.understood.get(&field).copied()))?;
        Some(manner.get().echo(&understood))
    });
    let assumed = Signal::derive(move || {
        let known =
            answers.with(|answers| answers.as_ref().and_then(|answers| answers.survey.assumed.get(&field).copied()))?;
        let unit = unit.get();
        Some(manner.get().decimal(unit.from_si(known.value.value), 3))
    });
    let toggle = move |_| {
        if let Some(mut typed) = entry.get_untracked() {
            typed.standing = match typed.standing {
                Standing::Measured => Standing::Assumed,
                Standing::Assumed => Standing::Measured,
            };
            put(Some(typed));
        }
    };
    let keypads = (desk.label(Label::DigitsKey), desk.label(Label::AbcKey));
    let symbols: Vec<&'static str> = units.iter().map(|unit| unit.symbol()).collect();
    view! {
        <EntryField id=format!("survey-{}", field.id()) label=manner.get_untracked().field(field) hint=manner.get_untracked().hint(field)
            units=symbols written on_write=Callback::new(write)
            on_leave=Callback::new(move |()| desk.pause()) echo wrong doubt on_settle=Callback::new(settle) assumed turned=desk.turned keypads>
            {move || match entry.with(|entry| entry.as_ref().map(|typed| typed.standing)) {
                Some(standing) => {
                    let measured = standing == Standing::Measured;
                    view! {
                        <button type="button" class="standing" class:standing-measured=measured aria-pressed=measured.to_string() on:click=toggle>
                            {desk.label(if measured { Label::StandingMeasured } else { Label::StandingAssumed })}
                        </button>
                    }.into_any()
                }
                None => assumed.with(Option::is_some).then(|| view! { <span class="standing">{desk.label(Label::AssumedUntilMeasured)}</span> }).into_any(),
            }}
        </EntryField>
    }
}

fn head_label(shape: HeadShape) -> Label {
    match shape {
        HeadShape::Flat => Label::HeadFlat,
        HeadShape::Ellipsoidal => Label::HeadEllipsoidal,
        HeadShape::Hemispherical => Label::HeadHemispherical,
        HeadShape::AsmeFd => Label::HeadAsmeFd,
        HeadShape::Din28011 => Label::HeadDin28011,
        HeadShape::Din28013 => Label::HeadDin28013,
        HeadShape::Conical => Label::HeadConical,
    }
}

fn way_label(way: DiameterWay) -> Label {
    match way {
        DiameterWay::Nominal => Label::WayNominal,
        DiameterWay::Measured => Label::WayMeasured,
        DiameterWay::Circumference => Label::WayCircumference,
        DiameterWay::MeteredFill => Label::WayMeteredFill,
        DiameterWay::RiseOfBag => Label::WayRiseOfBag,
    }
}

fn opening_label(opening: Opening) -> Label {
    match opening {
        Opening::TopOnly => Label::OpeningTopOnly,
        Opening::TopAndBottom => Label::OpeningTopAndBottom,
        Opening::SidePorts => Label::OpeningSidePorts,
        Opening::Flange => Label::OpeningFlange,
        Opening::Manway => Label::OpeningManway,
        Opening::FillPort => Label::OpeningFillPort,
    }
}

fn collector_label(kind: CollectorKind) -> Label {
    match kind {
        CollectorKind::None => Label::CollectorNone,
        CollectorKind::Basket => Label::CollectorBasket,
        CollectorKind::HubAndLaterals => Label::CollectorLaterals,
        CollectorKind::SlottedPlate => Label::CollectorSlottedPlate,
        CollectorKind::NozzlePlate => Label::CollectorNozzlePlate,
    }
}
