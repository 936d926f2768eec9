//! The bed in backwash: the window, what each setting does, what decides, what was seen.

use std::sync::Arc;

use bedwright_calc::hydraulics::backwash::End;
use bedwright_calc::hydraulics::{Expansion, FlowControl, Setting};
use bedwright_calc::quantity::{Assumption, Mark, VolumeRate};
use bedwright_edge::timer::Timer;
use bedwright_job::Edit;
use bedwright_job::answers::search::flow_control_entry;
use bedwright_job::answers::water::{WaterAnswers, window_rows};
use bedwright_job::drawing::{Form, WindowChart, backwash_window};
use bedwright_job::edit::WaterOf;
use bedwright_job::field::WaterField;
use bedwright_job::id::Id;
use bedwright_job::sections::survey::{Standing, SurveyEntry};
use bedwright_job::words::{Label, Manner};

use super::evidence::evidence;
use super::results::{Shown, share, shown};
use crate::desk::{Answers, Desk, Water, with_water};
use crate::parts::drawing::section_drawing;
use crate::parts::how::figure_line;
use crate::parts::live::{El, button, el, follow};
use crate::parts::signal::{Held, Kept, Worked};

type Reads = fn(&WaterAnswers, Manner) -> Shown;

fn chosen(water: &WaterAnswers) -> Option<&Setting> {
    let washed = water.backwash.as_ref()?;
    washed.settings.get(washed.chosen?)
}

/// How far the bed stands out at the judged setting by a model whose coefficients are from memory.
fn from_memory(water: &WaterAnswers, manner: Manner, end: &End) -> Shown {
    let speed = chosen(water)?.flow_per_area.known();
    share(manner, &water.bed.as_ref()?.expansion_from_memory(&end.water, &speed)?)
}

/// What is shown, in this order.
const SHOWN: [(Label, Reads); 10] = [
    (Label::ExpansionCold, |water, manner| share(manner, chosen(water)?.likely_cold.as_ref()?)),
    (Label::ExpansionWarm, |water, manner| share(manner, chosen(water)?.likely_warm.as_ref()?)),
    // Beside the likely line, and no verdict rests on it.
    (Label::MemoryCold, |water, manner| from_memory(water, manner, &water.backwash.as_ref()?.cold)),
    (Label::MemoryWarm, |water, manner| from_memory(water, manner, &water.backwash.as_ref()?.warm)),
    (Label::Room, |water, manner| water.backwash.as_ref().and_then(|_| share(manner, &water.bed.as_ref()?.room))),
    (Label::LiftsFrom, |water, manner| shown(manner, water.backwash.as_ref()?.warm.lifts_from[1].as_ref()?)),
    (Label::StaysTo, |water, manner| shown(manner, water.backwash.as_ref()?.cold.stays_to[1].as_ref()?)),
    (Label::BackwashPerArea, |water, manner| shown(manner, &chosen(water)?.flow_per_area)),
    (Label::StartsLifting, |water, manner| shown(manner, water.backwash.as_ref()?.warm.wen_yu_minimum.last()?)),
    (Label::LinesTitle, |water, manner| water.backwash.as_ref().and_then(|_| share(manner, &water.lines.likely))),
];

/// Backwash of a vessel.
pub fn backwash(desk: Desk, vessel: &Id, water: Water, answers: Answers) -> El {
    let manner = desk.manner();
    let say = move |label: Label| desk.label(label);
    let vessel = Kept::new(vessel.clone());
    let washed = move || with_water(water, |water| water.is_some_and(|water| water.backwash.is_some()));
    let told = move || {
        with_water(water, |water| {
            let Some(water) = water else { return say(Label::WaterWaits).to_owned() };
            if let Some(problem) = water.problems.first() {
                return manner.problem(problem);
            }
            if water.bed.is_none() {
                return say(Label::WaterWaits).to_owned();
            }
            if water.backwash.is_none() { say(Label::NeverWashed).to_owned() } else { String::new() }
        })
    };
    let part = el("section", "results")
        .set("aria-labelledby", "backwash")
        .kid(el("h2", "rule").set("id", "backwash").text(say(Label::Backwash)))
        .kid(el("p", "layer-trouble").says(told))
        .when(washed, move || vec![window(desk, water)]);
    SHOWN
        .into_iter()
        .fold(part, |part, (label, read)| {
            figure_line(part, say(label), move || {
                with_water(water, |water| water.and_then(|water| read(water, manner)))
            })
        })
        .when(washed, move || vec![settings(desk, vessel, water), decides(desk, water)])
        // Always there: what is half typed isn't lost while an entry of the vessel is wrong.
        .kid(evidence(desk, vessel, water, answers))
}

/// An expansion: what is likely, and the range below it in small.
fn range(manner: Manner, leave: &str, expansion: &Expansion) -> El {
    let bare = |share: Option<f64>| share.map(|share| manner.decimal(share * 100.0, 0));
    let cell = el("td", "figure");
    let Some(likely) = bare(expansion.likely) else { return cell.text(leave) };
    let cell = cell.text(&likely).text(" % ");
    match (bare(expansion.low), bare(expansion.high)) {
        (Some(low), Some(high)) if low != high => {
            cell.kid(el("span", "setting-range").text(&low).text("–").text(&high))
        }
        _ => cell,
    }
}

/// Every size that can be fed, and what it does; a tap fits it.
fn settings(desk: Desk, vessel: Kept<Id>, water: Water) -> El {
    let manner = desk.manner();
    let say = move |label: Label| desk.label(label);
    let head = move |label: Label| el("th", "").set("scope", "col").text(say(label));
    let heads = [Label::SettingFlow, Label::SettingCold, Label::SettingWarm, Label::SettingMark];
    let fit = move |flow: VolumeRate| {
        let field = WaterField::FlowControl;
        let entry = SurveyEntry { entry: flow_control_entry(flow), standing: Standing::Assumed };
        desk.edit(Edit::Water { of: WaterOf::Vessel(vessel.get()), field, entry: Some(entry) });
        desk.turned.update(|n| *n = n.wrapping_add(1));
    };
    let row = move |setting: &Setting, taken: bool| {
        let flow = setting.flow.value;
        let leave = say(Label::GrainsLeave);
        let class = if taken { "setting setting-taken" } else { "setting" };
        el("tr", class)
            .kid(
                el("td", "").kid(
                    button("quiet figure", &manner.flow(setting.flow.value), move || fit(flow))
                        .set("aria-label", &[say(Label::FitThis), " ", &manner.flow(setting.flow.value)].concat()),
                ),
            )
            .kid(range(manner, leave, &setting.cold))
            .kid(range(manner, leave, &setting.warm))
            .kid(el("td", "").text(manner.mark(setting.mark)))
    };
    let rows = move || {
        with_water(water, |water| {
            let Some(washed) = water.and_then(|water| water.backwash.as_ref()) else { return Vec::new() };
            // The stops at both ends tell nothing new beyond the one next to what works.
            let keep = |at: usize| {
                let near = |other: Option<usize>| {
                    other.and_then(|other| washed.settings.get(other)).is_some_and(|s| s.mark != Mark::Stop)
                };
                washed.settings.get(at).is_some_and(|s| s.mark != Mark::Stop)
                    || near(at.checked_sub(1))
                    || near(Some(at + 1))
                    || washed.chosen == Some(at)
            };
            let kept = washed.settings.iter().enumerate().filter(|(at, _)| keep(*at));
            kept.map(|(at, setting)| row(setting, washed.chosen == Some(at))).collect()
        })
    };
    let tolerance = manner.percent(Assumption::FlowControlTolerance.ratio());
    let most = move || {
        with_water(water, |water| {
            let most = water?.backwash.as_ref()?.most_packs?;
            Some(manner.named(say(Label::MostPacks), &most.to_string()))
        })
        .unwrap_or_default()
    };
    el("div", "settings")
        .kid(el("p", "settings-most").says(most))
        .kid(el("h3", "").set("id", "flow-controls").text(say(Label::FlowControls)))
        .kid(el("p", "survey-missing").text("± ").text(&tolerance).text(" ").text(say(Label::FlowControlHint)))
        .kid(
            el("table", "settings-table")
                .set("aria-labelledby", "flow-controls")
                .kid(el("thead", "").kid(el("tr", "").kids(heads.map(head).into_iter().collect())))
                .kid(el("tbody", "").live(rows)),
        )
}

/// The inputs that move the likely expansion most.
fn decides(desk: Desk, water: Water) -> El {
    let manner = desk.manner();
    let rows = move || {
        with_water(water, |water| {
            let Some(washed) = water.and_then(|water| water.backwash.as_ref()) else { return Vec::new() };
            washed
                .sensitivities
                .iter()
                .take(5)
                .map(|one| {
                    let (less, more) = one.over_range.unwrap_or((one.less, one.more));
                    let mut name = manner.term(one.term).to_owned();
                    if one.over_range.is_none() {
                        name.push_str(if one.step < 1.0 { " ± 1 %" } else { " ± 1 °C" });
                    }
                    el("tr", "")
                        .kid(el("th", "").set("scope", "row").text(&name))
                        .kid(el("td", "figure").text(&manner.percent(less)))
                        .kid(el("td", "figure").text(&manner.percent(more)))
                })
                .collect()
        })
    };
    let head = |label: Label| el("th", "").set("scope", "col").text(desk.label(label));
    let heads = el("tr", "").kid(el("td", "")).kid(head(Label::Least)).kid(head(Label::Most));
    el("details", "how")
        .kid(el("summary", "").kid(el("span", "how-name").text(desk.label(Label::Decides))))
        .kid(el("p", "survey-missing").text(desk.label(Label::DecidesHint)))
        .kid(el("table", "settings-table").kid(el("thead", "").kid(heads)).kid(el("tbody", "").live(rows)))
}

/// From this width on the window is drawn wide.
const WIDE: &str = "(min-width: 60rem)";

/// How long typing has to rest before the window is drawn anew, in milliseconds. Measured: drawn at every letter it takes a third
/// of the time that a letter takes.
const REST: i32 = 150;

/// What the water side says: at first at once, then whenever typing rests.
fn at_rest(water: Water) -> Held<Option<Arc<WaterAnswers>>> {
    let rest = Held::new(None);
    let mut shown = false;
    let mut waiting = None;
    follow(move || {
        let now = water.get();
        if std::mem::replace(&mut shown, true) {
            drop(waiting.replace(Timer::after(REST, move || rest.set(now))));
        } else {
            rest.set(now);
        }
    });
    rest
}

/// The window: a picture, its figures folded below.
fn window(desk: Desk, water: Water) -> El {
    let manner = desk.manner();
    let wide = Held::new(bedwright_edge::display::matches(WIDE));
    // It goes with the screen.
    Kept::new(bedwright_edge::display::on_match(WIDE, move |now| wide.set(now)));
    let rest = at_rest(water);
    let picture = Worked::new(move || {
        let form = if wide.get() {
            Form::Full { width: 640.0, height: 560.0 }
        } else {
            Form::Full { width: 300.0, height: 420.0 }
        };
        rest.with(|water| {
            let water = water.as_deref()?;
            let rows = window_rows(water);
            let site = &water.reading.site;
            let chart = WindowChart {
                rows: &rows,
                available: site.backwash_available.map(|flow| flow.value),
                sizes: FlowControl::all(),
                chosen: chosen(water).map(|setting| (setting.flow.value, setting.mark)),
                site: Some((site.temperature_low.value, site.temperature_high.value)),
            };
            Some(Arc::new(backwash_window(&chart, &manner, form)))
        })
    });
    let drawing = move || picture.get().map(|picture| Arc::new(picture.drawing.clone()));
    let cell = |text: &String| el("td", "figure").text(text);
    let table = move || {
        let Some(picture) = picture.get() else { return Vec::new() };
        let heads = picture.table.headings.iter().map(|text| el("th", "").set("scope", "col").text(text)).collect();
        let row = |row: &Vec<String>| {
            let (name, rest) = row.split_first().map_or(("", &[][..]), |(name, rest)| (name.as_str(), rest));
            el("tr", "").kid(el("th", "figure").set("scope", "row").text(name)).kids(rest.iter().map(cell).collect())
        };
        vec![
            el("table", "settings-table window-table")
                .kid(el("caption", "").text(picture.table.caption))
                .kid(el("thead", "").kid(el("tr", "").kids(heads)))
                .kid(el("tbody", "").kids(picture.table.rows.iter().map(row).collect())),
        ]
    };
    let open = Held::new(false);
    el("div", "window").kid(section_drawing(drawing, Held::new(None))).kid(
        el("details", "how")
            .on("toggle", move |_| open.set(true))
            .kid(el("summary", "").kid(el("span", "how-name").text(desk.label(Label::WindowTable))))
            .kid(
                el("div", "window-figures")
                    .set("tabindex", "0")
                    .set("role", "region")
                    .set("aria-label", desk.label(Label::WindowTable))
                    .live(move || if open.get() { table() } else { Vec::new() }),
            ),
    )
}
