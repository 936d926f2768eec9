//! Labels in plain print: one for every vessel's tag, one for every pallet; and where they stand on a sheet.

use std::sync::Arc;

use bedwright_calc::order::Between as _;

use super::staging::{Staged, on_pallets, staged};
use super::vessel_name;
use crate::answers::water::bed_expected;
use crate::answers::{JobBill, VesselAnswers};
use crate::care::bed_life::Lives;
use crate::care::card::card;
use crate::care::due::purpose_of;
use crate::care::happened::Place;
use crate::day::Day;
use crate::field::WaterField;
use crate::id::Id;
use crate::job::Job;
use crate::sheets::PageSize;
use crate::words::{CareLabel, Label, Manner, SupplyLabel, apart};

/// A label.
#[derive(Clone, Debug, PartialEq)]
pub struct Sticker {
    /// Its name among the labels of this job.
    pub key: String,
    /// What it is on: a tag, a pallet.
    pub title: String,
    /// Job and site.
    pub about: String,
    /// What stands on it: a name and what it says; nothing where a pen is to fill it.
    pub lines: Vec<(String, String)>,
    /// The vessel and tag whose card its code holds, in 25 mm; none for a pallet.
    pub card: Option<(Id, String)>,
}

/// What a pallet's label keeps for its title and weight, and what a load with a long name takes, mm.
const HEAD_MM: f64 = 22.0;
const LOAD_MM: f64 = 10.0;

/// How many loads of a pallet stand on a label of this height.
fn loads_on(height_mm: f64) -> usize {
    ((height_mm - HEAD_MM) / LOAD_MM).floor().between(1.0, 20.0) as usize
}

/// Every label of a job in this height: the vessels' first, tag by tag, then the pallets'. What doesn't fit on one label of a
/// pallet goes on the next, with the same title.
#[must_use]
pub fn stickers(
    job: &Job,
    answers: &[Arc<VesselAnswers>],
    bill: &JobBill,
    manner: Manner,
    today: &str,
    height_mm: f64,
) -> Vec<Sticker> {
    let head = &job.head.body;
    let about = [head.title.trim(), head.site.trim(), today].into_iter().filter(|part| !part.is_empty());
    let about: Vec<_> = about.map(apart).collect();
    let about = about.join(" · ");
    let say = |label: SupplyLabel| manner.label(label).to_owned();
    let mut all = Vec::new();
    for answer in answers {
        let Some(lines) = of_vessel(job, answer, manner) else { continue };
        let due = next_due(job, answer, manner, today);
        for (place, tag) in tags_of(job, answer, manner).into_iter().enumerate() {
            let key = format!("{}:{place}", answer.id);
            // A vessel without a tag has a card without one.
            let there = job.vessel(&answer.id).is_some_and(|vessel| vessel.tags.iter().any(|own| own.trim() == tag));
            let card = Some((answer.id.clone(), if there { tag.clone() } else { String::new() }));
            let mut lines = lines.clone();
            lines.push((say(SupplyLabel::NextDue), due(&tag)));
            all.push(Sticker { key, title: tag, about: about.clone(), lines, card });
        }
    }
    let loads = staged(job, bill, manner);
    let pallets = on_pallets(job, &loads).unwrap_or_default();
    for (pallet, number) in pallets.iter().zip(1_usize..) {
        let title = format!("{} {number} {} {}", say(SupplyLabel::Pallet), manner.label(Label::Of), pallets.len());
        for (part, some) in pallet.loads.chunks(loads_on(height_mm)).enumerate() {
            let mut lines = vec![(say(SupplyLabel::Weighs), manner.mass(pallet.mass_known))];
            let load = |(at, packs): &(usize, u32)| Some(of_load(job, bill, loads.get(*at)?, *packs, manner));
            lines.extend(some.iter().filter_map(load));
            let key = if part == 0 { format!("pallet:{number}") } else { format!("pallet:{number}:{part}") };
            all.push(Sticker { key, title: title.clone(), about: about.clone(), lines, card: None });
        }
    }
    all
}

/// The tags a vessel stands for, each with a label of its own.
fn tags_of(job: &Job, answer: &VesselAnswers, manner: Manner) -> Vec<String> {
    let tags: Vec<String> = job
        .vessel(&answer.id)
        .map(|vessel| vessel.tags.iter().map(|tag| tag.trim().to_owned()).filter(|tag| !tag.is_empty()).collect())
        .unwrap_or_default();
    if tags.is_empty() { vec![vessel_name(job, &answer.id, manner)] } else { tags }
}

/// What is due next at the tags of a vessel, as their cards say; nothing for a tag of which nothing was written down yet.
fn next_due(job: &Job, answer: &VesselAnswers, manner: Manner, today: &str) -> impl Fn(&str) -> String {
    let today = Day::of(today);
    let lives = today.map(|today| Lives::of(job, today)).unwrap_or_default();
    let places: Vec<&Place> = lives.places().filter(|place| place.vessel == answer.id).collect();
    let worked = if places.is_empty() { None } else { bed_expected(job, answer) };
    let purpose = purpose_of(job, &answer.id);
    let said: Vec<(String, String)> = today
        .into_iter()
        .flat_map(|today| places.iter().map(move |place| (today, *place)))
        .map(|(today, place)| {
            let card = card(job, &lives, place, today, Some(answer), worked.as_ref(), purpose);
            let what = if card.is_new_bed_next() { CareLabel::NewBedWord } else { CareLabel::VisitWord };
            let said = [&card.due(today).text(), " · ", manner.label(what)].concat();
            (place.tag.clone(), said)
        })
        .collect();
    // A vessel without tags is looked after under an empty one.
    let untagged = job.vessel(&answer.id).is_none_or(|vessel| vessel.tags.iter().all(|tag| tag.trim().is_empty()));
    move |tag: &str| {
        let there = said.iter().find(|(there, _)| there == tag || untagged && there.is_empty());
        there.map(|(_, said)| said.clone()).unwrap_or_default()
    }
}

/// What stands on a vessel's label; none while its fill isn't known.
fn of_vessel(job: &Job, answer: &VesselAnswers, manner: Manner) -> Option<Vec<(String, String)>> {
    let plan = answer.plan.as_ref()?;
    if answer.layers.is_empty() || answer.layers.iter().any(|layer| layer.fill().is_none()) {
        return None;
    }
    let say = |label: SupplyLabel| manner.label(label).to_owned();
    let mut lines = Vec::new();
    let mut name = say(SupplyLabel::Medium);
    for (layer, fill) in answer.planned.iter().zip(&plan.layers) {
        let Ok(fill) = fill else { continue };
        let packs = format!(
            "{} · {} {} ({})",
            manner.material(&layer.material.id),
            manner.decimal(fill.packs.value, 2),
            manner.container(layer.pack.container, if fill.packs.value > 1.0 { 2 } else { 1 }),
            manner.volume(fill.volume.value)
        );
        lines.push((std::mem::take(&mut name), packs));
    }
    // Who fills it writes when, and what the tape says.
    lines.push((say(SupplyLabel::FilledOn), String::new()));
    let tape = answer.layers.last().and_then(|layer| layer.fill()).map(|fill| manner.tape(fill.tape.reading.value));
    lines.push((
        say(SupplyLabel::BaselineTape),
        format!("____________  ({} {})", say(SupplyLabel::Planned).to_lowercase(), tape.unwrap_or_default()),
    ));
    let duty = job.site.body.duty_of(&answer.id);
    let control = duty.entries.get(WaterField::FlowControl).and_then(|typed| typed.entry.understood().ok());
    lines.push((say(SupplyLabel::DrainControl), control.map(|read| manner.echo(&read)).unwrap_or_default()));
    Some(lines)
}

fn of_load(job: &Job, bill: &JobBill, load: &Staged, packs: u32, manner: Manner) -> (String, String) {
    let tags = bill.vessels.get(load.vessel).and_then(|id| job.vessel(id)).map(|vessel| vessel.tags.as_slice());
    // Of many tags the first and the last: a label is small.
    let vessel = match tags {
        Some([first, _, .., last]) => format!("{} … {}", first.trim(), last.trim()),
        _ => bill.vessels.get(load.vessel).map(|id| vessel_name(job, id, manner)).unwrap_or_default(),
    };
    (vessel, format!("{packs} × {}", load.item))
}

/// The least a label may be, mm: room for a code of 25 mm beside its lines.
pub const SMALLEST_MM: (f64, f64) = (70.0, 45.0);

/// What stays free at the edge of a sheet, and between two labels, mm.
const EDGE_MM: f64 = 10.0;
const GAP_MM: f64 = 3.0;

/// Where labels of a size stand on a sheet: the upper left corner of each, mm; none where not one fits.
#[must_use]
pub fn places(size: PageSize, width_mm: f64, height_mm: f64) -> Vec<(f64, f64)> {
    let fits = |room: f64, one: f64| -> u32 {
        let room = room - 2.0 * EDGE_MM;
        if !(one > 0.0 && one <= room) {
            return 0;
        }
        // A size of nearly nothing isn't offered; the most there may be is held all the same.
        (((room - one) / (one + GAP_MM)).floor().min(50.0) as u32).saturating_add(1)
    };
    let (across, down) = (fits(size.width_mm(), width_mm), fits(size.height_mm(), height_mm));
    let place = |number: u32, one: f64| EDGE_MM + f64::from(number) * (one + GAP_MM);
    (0..down).flat_map(|row| (0..across).map(move |column| (place(column, width_mm), place(row, height_mm)))).collect()
}

#[cfg(test)]
mod tests {
    use super::{SMALLEST_MM, places};
    use crate::sheets::PageSize;

    #[test]
    fn labels_stand_on_the_sheet_and_none_on_another() {
        for &size in PageSize::ALL {
            for (width, height) in [(100.0, 66.0), SMALLEST_MM, (90.0, 130.0), (195.0, 259.0)] {
                let places = places(size, width, height);
                for (at, (x, y)) in places.iter().enumerate() {
                    assert!(x + width <= size.width_mm() - 9.99 && y + height <= size.height_mm() - 9.99);
                    for (u, v) in places.iter().skip(at + 1) {
                        assert!((x - u).abs() >= width || (y - v).abs() >= height);
                    }
                }
            }
            assert!(places(size, 100.0, 300.0).is_empty());
            assert!(places(size, f64::NAN, 50.0).is_empty());
            assert!(places(size, 0.0, 50.0).is_empty());
        }
        assert_eq!(places(PageSize::A4, 92.0, 66.0).len(), 8);
        assert_eq!(places(PageSize::Letter, 92.0, 62.0).len(), 8);
    }
}
