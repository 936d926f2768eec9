//! One door: every change can be taken back, a refused one changes nothing, and every state can be written and read.

use std::sync::Arc;

use bedwright_calc::fill::{Role, SurfaceState};
use bedwright_calc::hydraulics::Purpose;
use bedwright_calc::supply::lifting::Grip;
use bedwright_calc::supply::{JobKind, Money};
use bedwright_calc::vessel::Opening;
use bedwright_job::Job;
use bedwright_job::back;
use bedwright_job::edit::quote::QuoteEdit;
use bedwright_job::edit::{Choice, DutyChoice, Edit, LayerChoice, Refused, SearchChoice, WaterOf, apply, sections_of};
use bedwright_job::entry::{Entry, Meaning, Unit};
use bedwright_job::field::{
    KitField, LayerField, LineField, PlanField, QuoteField, SupplyField, SurveyField, WaterField,
};
use bedwright_job::history::History;
use bedwright_job::id::Id;
use bedwright_job::job::Record;
use bedwright_job::prices::{Care, Catalogue, JobPrices, PriceKind, PriceRow};
use bedwright_job::saved::{job_text, read_job};
use bedwright_job::sections::SectionName;
use bedwright_job::sections::head::{Head, TextField};
use bedwright_job::sections::kit::Kit;
use bedwright_job::sections::loading::{
    Acknowledgement, Drum, Loading, LoadingText, Photo, ReadingPlace, RemovalMethod, Stamp, TagChange, TapeReading,
    WorkSheet,
};
use bedwright_job::sections::picking::{PickField, Picking};
use bedwright_job::sections::plan::{FillPlan, LayerPlan, TargetKind, VesselPlan};
use bedwright_job::sections::quote::{
    HALVES, LabourLine, LineText, PriceBy, Quote, QuoteLine, QuoteText, STANDINGS, TaxClass,
};
use bedwright_job::sections::search::VesselSearch;
use bedwright_job::sections::site::{ARRANGEMENTS, REGIMES, SiteConditions, WaterSource};
use bedwright_job::sections::supply::{Supply, SupplyEdit, TakenField};
use bedwright_job::sections::survey::{
    CollectorKind, DiameterWay, HeadShape, Path, Standing, Survey, SurveyEntry, VesselSurvey,
};
use proptest::prelude::*;
use rust_decimal::Decimal;
use serde_json::json;

use crate::{cases, jobs};

fn one_of<T: Copy + std::fmt::Debug + 'static>(all: &'static [T]) -> impl Strategy<Value = T> {
    prop::sample::select(all)
}

/// A few ids, so that many changes find what they look for and many don't.
fn vessel_id() -> impl Strategy<Value = Id> {
    one_of(&["filter", "softener", "v1", "v2"]).prop_map(Id::new)
}

fn layer_id() -> impl Strategy<Value = Id> {
    one_of(&["0-filter", "1-filter", "0-softener", "l1", "l2"]).prop_map(Id::new)
}

fn text() -> impl Strategy<Value = String> {
    prop_oneof![Just(String::new()), "[a-z0-9 .,'\"/x]{0,9}", any::<String>()]
}

fn entry() -> impl Strategy<Value = Entry> {
    let meaning = one_of(&[None, Some(Meaning::DecimalPoint), Some(Meaning::Thousands)]);
    (text(), one_of(Unit::ALL), meaning).prop_map(|(text, unit, meaning)| Entry { text, unit, meaning })
}

fn survey_entry() -> impl Strategy<Value = SurveyEntry> {
    (entry(), one_of(Standing::ALL)).prop_map(|(entry, standing)| SurveyEntry { entry, standing })
}

fn role() -> impl Strategy<Value = Role> {
    one_of(&[Role::Underbed, Role::Media])
}

fn material() -> impl Strategy<Value = String> {
    one_of(&["", "gravel_1_8x1_4", "resin_cation", "no such"]).prop_map(str::to_owned)
}

fn layer() -> impl Strategy<Value = LayerPlan> {
    (layer_id(), material(), role(), one_of(TargetKind::ALL), prop::option::of(entry())).prop_map(
        |(id, material, role, target, amount)| LayerPlan { target, amount, ..LayerPlan::new(id, &material, role) },
    )
}

fn vessel() -> impl Strategy<Value = VesselSurvey> {
    let entries = prop::collection::btree_map(one_of(SurveyField::ALL), survey_entry(), 0..4)
        .prop_map(|entries| entries.into_iter().collect());
    (vessel_id(), entries, prop::collection::vec(text(), 0..3), one_of(HeadShape::ALL))
        .prop_map(|(id, entries, tags, top_head)| VesselSurvey { entries, tags, top_head, ..VesselSurvey::new(id) })
}

fn plan() -> impl Strategy<Value = VesselPlan> {
    (prop::collection::vec(layer(), 0..3), prop::option::of(entry())).prop_map(|(layers, bucket)| VesselPlan {
        layers,
        bucket,
        ..VesselPlan::default()
    })
}

fn choice() -> impl Strategy<Value = Choice> {
    prop_oneof![
        one_of(Path::ALL).prop_map(Choice::Path),
        one_of(DiameterWay::ALL).prop_map(Choice::Diameter),
        one_of(HeadShape::ALL).prop_map(Choice::BottomHead),
        one_of(HeadShape::ALL).prop_map(Choice::TopHead),
        one_of(Opening::ALL).prop_map(Choice::Opening),
        any::<bool>().prop_map(Choice::Riser),
        one_of(CollectorKind::ALL).prop_map(Choice::Collector),
        any::<bool>().prop_map(Choice::UpperCollector),
    ]
}

fn layer_choice() -> impl Strategy<Value = LayerChoice> {
    prop_oneof![
        material().prop_map(LayerChoice::Material),
        text().prop_map(LayerChoice::Pack),
        role().prop_map(LayerChoice::Role),
        one_of(TargetKind::ALL).prop_map(LayerChoice::Target),
        any::<bool>().prop_map(LayerChoice::Minimum),
    ]
}

fn of_the_job() -> impl Strategy<Value = Edit> {
    let kinds = &[JobKind::New, JobKind::Changeout, JobKind::Partial, JobKind::TopUp];
    let keys = || one_of(&["pack:a:b", "part:c:0:0"]).prop_map(str::to_owned);
    let fields = &[PickField::Bin, PickField::PartNumber, PickField::Lot, PickField::Note];
    prop_oneof![
        (one_of(TextField::ALL), text()).prop_map(|(field, text)| Edit::Text { field, text }),
        one_of(kinds).prop_map(Edit::Kind),
        prop::option::of(text()).prop_map(Edit::Bin),
        (keys(), one_of(fields), text()).prop_map(|(key, field, text)| Edit::PickText { key, field, text }),
        (keys(), prop::option::of(any::<u32>())).prop_map(|(key, picked)| Edit::Pick { key, picked }),
        one_of(&["r1", "r2"]).prop_map(|id| Edit::AddRecord(Record { id: Id::new(id), value: json!({ "id": id }) })),
    ]
}

fn of_a_vessel() -> impl Strategy<Value = Edit> {
    prop_oneof![
        2 => (0_usize..4, vessel(), plan())
            .prop_map(|(at, vessel, plan)| Edit::InsertVessel { at, vessel: Arc::new(vessel), plan: Arc::new(plan) }),
        1 => vessel_id().prop_map(Edit::RemoveVessel),
        1 => (vessel_id(), 0_usize..4).prop_map(|(vessel, to)| Edit::MoveVessel { vessel, to }),
        1 => (vessel_id(), prop::collection::vec(text(), 0..3)).prop_map(|(vessel, tags)| Edit::Tags { vessel, tags }),
        1 => (vessel_id(), text()).prop_map(|(vessel, text)| Edit::VesselNotes { vessel, text }),
        2 => (vessel_id(), choice()).prop_map(|(vessel, choice)| Edit::Choose { vessel, choice }),
        3 => (vessel_id(), one_of(SurveyField::ALL), prop::option::of(survey_entry()))
            .prop_map(|(vessel, field, entry)| Edit::Survey { vessel, field, entry }),
    ]
}

fn of_a_plan() -> impl Strategy<Value = Edit> {
    let fields = &[LayerField::Amount, LayerField::BulkDensity];
    prop_oneof![
        1 => (vessel_id(), prop::option::of(entry()))
            .prop_map(|(vessel, entry)| Edit::Plan { vessel, field: PlanField::Bucket, entry }),
        2 => (vessel_id(), 0_usize..4, layer()).prop_map(|(vessel, at, layer)| Edit::InsertLayer { vessel, at, layer }),
        2 => (vessel_id(), layer_id()).prop_map(|(vessel, layer)| Edit::RemoveLayer { vessel, layer }),
        2 => (vessel_id(), layer_id(), 0_usize..4).prop_map(|(vessel, layer, to)| Edit::MoveLayer { vessel, layer, to }),
        2 => (vessel_id(), layer_id(), layer_choice()).prop_map(|(vessel, layer, choice)| Edit::Layer { vessel, layer, choice }),
        2 => (vessel_id(), layer_id(), one_of(fields), prop::option::of(entry()))
            .prop_map(|(vessel, layer, field, entry)| Edit::LayerEntry { vessel, layer, field, entry }),
    ]
}

fn of_the_water() -> impl Strategy<Value = Edit> {
    let purposes = prop::option::of(one_of(Purpose::ALL)).prop_map(DutyChoice::Purpose);
    let duties = prop_oneof![
        purposes,
        one_of(REGIMES).prop_map(DutyChoice::Regime),
        one_of(ARRANGEMENTS).prop_map(DutyChoice::Arrangement),
        text().prop_map(DutyChoice::Grounds),
    ];
    let of = prop_oneof![
        Just(WaterOf::Site),
        Just(WaterOf::Search),
        vessel_id().prop_map(WaterOf::Vessel),
        (vessel_id(), layer_id()).prop_map(|(vessel, layer)| WaterOf::Layer(vessel, layer)),
    ];
    let searches = prop_oneof![
        one_of(Purpose::ALL).prop_map(SearchChoice::Purpose),
        one_of(ARRANGEMENTS).prop_map(SearchChoice::Arrangement),
        text().prop_map(SearchChoice::Media),
        text().prop_map(SearchChoice::Underbed),
        any::<bool>().prop_map(SearchChoice::RiserInParts),
    ];
    prop_oneof![
        1 => one_of(WaterSource::ALL).prop_map(Edit::Source),
        1 => searches.prop_map(Edit::Search),
        2 => (vessel_id(), duties).prop_map(|(vessel, choice)| Edit::Duty { vessel, choice }),
        4 => (of, one_of(WaterField::ALL), prop::option::of(survey_entry()))
            .prop_map(|(of, field, entry)| Edit::Water { of, field, entry }),
    ]
}

fn stamp() -> impl Strategy<Value = Stamp> {
    (text(), text()).prop_map(|(at, by)| Stamp { at, by })
}

fn place() -> impl Strategy<Value = ReadingPlace> {
    prop_oneof![
        Just(ReadingPlace::Found),
        Just(ReadingPlace::Left),
        (layer_id(), 1_u32..4).prop_map(|(layer, pack)| ReadingPlace::Pack(layer, pack)),
        layer_id().prop_map(ReadingPlace::End),
    ]
}

fn drum_id() -> impl Strategy<Value = Id> {
    one_of(&["d1", "d2"]).prop_map(Id::new)
}

fn tag_change() -> impl Strategy<Value = TagChange> {
    let steps = one_of(&["position", "cap", "pour/l1"]).prop_map(str::to_owned);
    let reading = (prop::option::of(entry()), one_of(SurfaceState::ALL), stamp())
        .prop_map(|(entry, state, stamp)| TapeReading { entry, state, stamp });
    prop_oneof![
        (steps, prop::option::of(stamp())).prop_map(|(step, stamp)| TagChange::Tick(step, stamp)),
        (place(), prop::option::of(reading)).prop_map(|(place, reading)| TagChange::Reading(place, reading)),
        (layer_id(), prop::option::of(entry())).prop_map(|(layer, entry)| TagChange::Poured(layer, entry)),
        (layer_id(), text()).prop_map(|(layer, lot)| TagChange::Lot(layer, lot)),
        (one_of(LoadingText::ALL), text()).prop_map(|(which, text)| TagChange::Text(which, text)),
        (0_usize..3, drum_id()).prop_map(|(at, id)| TagChange::InsertDrum(at, Drum::new(id))),
        drum_id().prop_map(TagChange::RemoveDrum),
        (drum_id(), text()).prop_map(|(id, text)| TagChange::DrumLabel(id, text)),
        (drum_id(), text()).prop_map(|(id, text)| TagChange::DrumContents(id, text)),
        (drum_id(), prop::option::of(entry())).prop_map(|(id, entry)| TagChange::DrumWeight(id, entry)),
        prop::option::of(one_of(RemovalMethod::ALL)).prop_map(TagChange::Method),
        prop::option::of(any::<u32>())
            .prop_map(|bytes| { TagChange::Photo(bytes.map(|bytes| Photo { id: Id::new("p"), bytes })) }),
    ]
}

fn of_the_loading() -> impl Strategy<Value = Edit> {
    let tags = one_of(&["", "CF-1", "x"]).prop_map(str::to_owned);
    let of =
        (one_of(WorkSheet::ALL), text(), stamp()).prop_map(|(sheet, day, stamp)| Acknowledgement { sheet, day, stamp });
    prop_oneof![
        1 => (of, any::<bool>()).prop_map(|(of, read)| Edit::Acknowledge { of, read }),
        8 => (vessel_id(), tags, tag_change()).prop_map(|(vessel, tag, change)| Edit::Load { vessel, tag, change }),
    ]
}

fn of_supply() -> impl Strategy<Value = Edit> {
    let key = || one_of(&["pack:a:b", "part:c:0:0"]).prop_map(str::to_owned);
    let pack = || one_of(&["a.half", "a.whole"]).prop_map(str::to_owned);
    let count = || prop::option::of(any::<u32>());
    let edits = prop_oneof![
        (material(), any::<bool>()).prop_map(|(material, yes)| SupplyEdit::PerVessel { material, yes }),
        (material(), pack(), prop::option::of(any::<bool>())).prop_map(|(material, pack, offered)| SupplyEdit::Offer {
            material,
            pack,
            offered
        }),
        (material(), pack(), count()).prop_map(|(material, pack, count)| SupplyEdit::Lock { material, pack, count }),
        (material(), prop::option::of(entry())).prop_map(|(material, entry)| SupplyEdit::Opened { material, entry }),
        (one_of(SupplyField::ALL), prop::option::of(entry()))
            .prop_map(|(field, entry)| SupplyEdit::Entry { field, entry }),
        one_of(Grip::ALL).prop_map(SupplyEdit::Grip),
        (key(), count()).prop_map(|(key, asked)| SupplyEdit::Asked { key, asked }),
        (key(), one_of(&[TakenField::Instead, TakenField::Date]), text())
            .prop_map(|(key, field, text)| SupplyEdit::Line { key, field, text }),
    ];
    edits.prop_map(Edit::Supply)
}

fn price_row() -> impl Strategy<Value = PriceRow> {
    let key = one_of(&["own:a", "own:b", "pack:a:b", ""]);
    let money = || {
        prop::option::of(
            (0_i64..2_000_000_000, 0_u32..9).prop_map(|(units, scale)| Money::new(Decimal::new(units, scale))),
        )
    };
    let care = prop::collection::vec(one_of(Care::ALL), 0..3);
    (key, one_of(PriceKind::ALL), text(), money(), money(), prop::option::of(entry()), care).prop_map(
        |(key, kind, name, cost, price, size, cares)| {
            let mut row = PriceRow { name, cost, price, size, ..PriceRow::new(key, kind) };
            cares.into_iter().for_each(|care| row.set_care(care, true));
            row
        },
    )
}

fn of_the_prices() -> impl Strategy<Value = Edit> {
    prop_oneof![
        price_row().prop_map(|row| Edit::Price { key: row.key.clone(), row: Some(Arc::new(row)) }),
        price_row().prop_map(|row| Edit::Price { key: "own:a".to_owned(), row: Some(Arc::new(row)) }),
        one_of(&["own:a", "own:b"]).prop_map(|key| Edit::Price { key: key.to_owned(), row: None }),
        (one_of(KitField::ALL), prop::option::of(entry())).prop_map(|(field, entry)| Edit::Kit { field, entry }),
        (one_of(&["own:a", "own:b"]), prop::option::of(text()))
            .prop_map(|(key, reason)| Edit::LeaveOut { key: key.to_owned(), reason }),
        (text(), text()).prop_map(|(title, currency)| Edit::Catalogue(Catalogue { title, currency, revision: None })),
    ]
}

fn quote_line() -> impl Strategy<Value = QuoteLine> {
    let fields = (one_of(LineField::ALL), prop::option::of(entry()));
    let texts = (one_of(LineText::ALL), text());
    (fields, texts, one_of(STANDINGS), any::<bool>(), prop::option::of(text())).prop_map(
        |((field, entry), (kind, text), standing, on_request, removed)| {
            let mut line = QuoteLine { standing, on_request, removed, ..QuoteLine::default() };
            line.entries.set(field, entry);
            line.set_text(kind, text);
            line
        },
    )
}

fn of_the_quote() -> impl Strategy<Value = Edit> {
    let keys = || one_of(&["pack:a:b", "own:1", "own:2", "labour:filter"]).prop_map(str::to_owned);
    let tax = (one_of(&["a", "b"]), text(), prop::option::of(entry())).prop_map(|(id, name, rate)| TaxClass {
        id: Id::new(id),
        name,
        rate,
        unknown: serde_json::Map::new(),
    });
    let labour = (prop::option::of(one_of(&[JobKind::New, JobKind::TopUp])), prop::option::of(entry())).prop_map(
        |(kind, hours)| LabourLine {
            id: Id::new("l"),
            kind,
            up_to: hours.clone(),
            hours,
            unknown: serde_json::Map::new(),
        },
    );
    let line = (keys(), prop::option::of(0_usize..4), prop::option::of(quote_line().prop_map(Arc::new)));
    let one = prop_oneof![
        (one_of(QuoteText::ALL), text()).prop_map(|(field, text)| QuoteEdit::Text { field, text }),
        (one_of(QuoteField::ALL), prop::option::of(entry()))
            .prop_map(|(field, entry)| QuoteEdit::Entry { field, entry }),
        one_of(PriceBy::ALL).prop_map(QuoteEdit::Way),
        one_of(HALVES).prop_map(QuoteEdit::Halves),
        prop::option::of(0_u32..5).prop_map(QuoteEdit::Places),
        any::<bool>().prop_map(QuoteEdit::FreightByKilogram),
        prop::collection::vec(tax, 0..3).prop_map(QuoteEdit::Taxes),
        prop::collection::vec(labour, 0..3).prop_map(QuoteEdit::Labour),
        line.prop_map(|(key, at, line)| QuoteEdit::Line { key, at, line }),
        Just(QuoteEdit::Whole(Arc::new(Quote::default()))),
    ];
    one.prop_map(Edit::Quote)
}

pub fn edit() -> impl Strategy<Value = Edit> {
    // Boxed: together they are too large for a thread's stack where nothing is optimised.
    let one = || {
        prop_oneof![
            of_the_job().boxed(),
            of_a_vessel().boxed(),
            of_a_plan().boxed(),
            of_the_water().boxed(),
            of_the_prices().boxed(),
            of_the_loading().boxed(),
            of_supply().boxed(),
            of_the_quote().boxed()
        ]
    };
    prop_oneof![
        8 => one(),
        1 => prop::collection::vec(one(), 0..4).prop_map(Edit::All),
    ]
}

/// Sections that came later than the first five.
type Later = ((JobPrices, Kit), Loading, Supply, VesselSearch, Quote);

/// All that a change may change and an undo must restore.
fn content(job: &Job) -> (Head, Survey, FillPlan, Picking, SiteConditions, Later) {
    let (head, survey, plan) = (job.head.body.clone(), job.survey.body.clone(), job.plan.body.clone());
    let (supply, search) = (job.supply.body.clone(), job.search.body.clone());
    let prices = (job.prices.body.clone(), job.kit.body.clone());
    let later = (prices, job.loading.body.clone(), supply, search, job.quote.body.clone());
    (head, survey, plan, job.picking.body.clone(), job.site.body.clone(), later)
}

fn counters(job: &Job) -> Vec<u64> {
    SectionName::ALL.iter().map(|name| job.revision(*name).map_or(0, |revision| revision.counter)).collect()
}

fn device() -> Id {
    Id::new("bench")
}

proptest! {
    #![proptest_config(cases())]

    /// Back and forth through what was done, as far and as often as one likes: each state is the one it was.
    #[test]
    fn every_change_can_be_taken_back_and_done_again(
        edits in prop::collection::vec(edit(), 1..16),
        walk in prop::collection::vec(any::<bool>(), 0..24),
    ) {
        let mut job = jobs::sample();
        let mut states = vec![content(&job)];
        let mut undo = Vec::new();
        let mut records = 0;
        for edit in edits {
            if let Ok(inverse) = apply(&mut job, edit, &device()) {
                prop_assert!(job.records.len() >= records);
                records = job.records.len();
                if let Some(inverse) = inverse {
                    undo.push(inverse);
                    states.push(content(&job));
                } else {
                    prop_assert_eq!(&content(&job), states.last().unwrap());
                }
            }
        }
        let mut redo = Vec::new();
        for back in walk.into_iter().chain(std::iter::repeat_n(true, states.len())) {
            let (from, to) = if back { (&mut undo, &mut redo) } else { (&mut redo, &mut undo) };
            let Some(edit) = from.pop() else { continue };
            let inverse = apply(&mut job, edit, &device());
            prop_assert!(matches!(inverse, Ok(Some(_))), "{:?}", inverse);
            to.push(inverse.unwrap().unwrap());
            prop_assert_eq!(&content(&job), &states[undo.len()]);
        }
        prop_assert_eq!(job.records.len(), records);
    }

    #[test]
    fn a_refused_change_leaves_the_job_as_it_was(edits in prop::collection::vec(edit(), 1..16)) {
        let mut job = jobs::sample();
        for edit in edits {
            let before = job.clone();
            if apply(&mut job, edit, &device()).is_err() {
                prop_assert_eq!(&job, &before);
            }
        }
    }

    /// Two states are never the same state: what a change touches counts up, what it doesn't stays.
    #[test]
    fn a_change_counts_up_what_it_touches_and_nothing_else(edits in prop::collection::vec(edit(), 1..16)) {
        let mut job = jobs::sample();
        for edit in edits {
            let before = job.clone();
            let single = !matches!(edit, Edit::All(_));
            let touched = sections_of(&edit);
            if apply(&mut job, edit, &device()).is_err() {
                continue;
            }
            for (index, name) in SectionName::ALL.iter().enumerate() {
                let (was, is) = (counters(&before)[index], counters(&job)[index]);
                if single {
                    prop_assert_eq!(is, was + u64::from(touched.contains(name)), "{:?}", name);
                }
                let same = match name {
                    SectionName::Head => before.head.body == job.head.body,
                    SectionName::Survey => before.survey.body == job.survey.body,
                    SectionName::Plan => before.plan.body == job.plan.body,
                    SectionName::Picking => before.picking.body == job.picking.body,
                    SectionName::Site => before.site.body == job.site.body,
                    SectionName::Loading => before.loading.body == job.loading.body,
                    SectionName::Prices => before.prices.body == job.prices.body,
                    SectionName::Kit => before.kit.body == job.kit.body,
                    SectionName::Search => before.search.body == job.search.body,
                    SectionName::Supply => before.supply.body == job.supply.body,
                    SectionName::Quote => before.quote.body == job.quote.body,
                };
                prop_assert!(is > was || same, "{:?} changed without counting", name);
            }
        }
    }

    #[test]
    fn a_job_is_read_as_it_was_written(edits in prop::collection::vec(edit(), 0..24)) {
        let mut job = jobs::sample();
        for edit in edits {
            let _ = apply(&mut job, edit, &device());
        }
        prop_assert_eq!(read_job(&job_text(&job)).unwrap(), job);
    }

    /// A change to one vessel leaves the others the very same, not only equal: nothing of theirs is worked out again.
    #[test]
    fn a_change_to_one_vessel_leaves_the_others_alone(choice in choice(), entry in prop::option::of(survey_entry()), field in one_of(SurveyField::ALL)) {
        let mut job = jobs::sample();
        let other = job.vessel(&Id::new("softener")).unwrap().clone();
        let _ = apply(&mut job, Edit::Choose { vessel: Id::new("filter"), choice }, &device());
        apply(&mut job, Edit::Survey { vessel: Id::new("filter"), field, entry }, &device()).unwrap();
        prop_assert!(Arc::ptr_eq(&other, job.vessel(&Id::new("softener")).unwrap()));
    }
}

proptest! {
    // Every state is written and read on the way: a twentieth of the cases takes as long as the others.
    #![proptest_config(ProptestConfig { cases: cases().cases.div_ceil(20), ..cases() })]

    /// What can be taken back is kept, read again, and taken back to each state in turn, and forth again.
    #[test]
    fn every_change_can_be_taken_back_after_a_reload(edits in prop::collection::vec((edit(), any::<bool>()), 1..16)) {
        let mut job = jobs::sample();
        let mut history = History::default();
        let (mut states, mut depth) = (vec![content(&job)], 0);
        for (edit, pauses) in edits {
            let before = job.clone();
            if let Ok(Some(inverse)) = apply(&mut job, edit.clone(), &device()) {
                history.push(&edit, inverse, back::between(&before, &job));
                let steps = history.steps();
                // Typing on in one field is one step.
                states.truncate(steps);
                depth = steps;
                states.push(content(&job));
                if pauses {
                    history.pause();
                }
            }
        }
        let job = read_job(&job_text(&job)).unwrap();
        let mut read = History::read(&history.text(&job), &job);
        prop_assert_eq!(read.steps(), depth);
        let mut at = job.clone();
        while let Some(edit) = read.undo() {
            let before = at.clone();
            let inverse = apply(&mut at, edit, &device());
            prop_assert!(matches!(inverse, Ok(Some(_))), "{:?}", inverse);
            read.undone(inverse.unwrap().unwrap(), back::between(&before, &at));
            prop_assert_eq!(&content(&at), &states[read.steps()]);
        }
        // Loaded anew before every other step.
        let mut step = 0;
        loop {
            if step % 2 == 0 {
                at = read_job(&job_text(&at)).unwrap();
                read = History::read(&read.text(&at), &at);
            }
            let before = at.clone();
            let Some(edit) = read.redo() else { break };
            let inverse = apply(&mut at, edit, &device());
            prop_assert!(matches!(inverse, Ok(Some(_))), "{:?}", inverse);
            read.redone(inverse.unwrap().unwrap(), back::between(&before, &at));
            step += 1;
            prop_assert_eq!(&content(&at), &states[step]);
        }
        prop_assert_eq!((step, read.steps()), (depth, depth));
        // A job that went on elsewhere meanwhile isn't taken back by these.
        let mut other = job.clone();
        apply(&mut other, Edit::Kind(job.head.body.kind), &Id::new("tablet")).unwrap();
        prop_assert_eq!(History::read(&history.text(&job), &other).steps(), 0);
    }
}

#[test]
fn each_refusal_says_why() {
    let (filter, nobody) = (Id::new("filter"), Id::new("nobody"));
    let there = Arc::new(VesselSurvey::new(filter.clone()));
    let plan = || Arc::new(VesselPlan::default());
    let mut coned = VesselSurvey::new(Id::new("new"));
    coned.top_head = HeadShape::Conical;
    let layer = |id: &str| LayerPlan::new(Id::new(id), "resin_cation", Role::Media);
    let twice = Arc::new(VesselPlan { layers: vec![layer("a"), layer("a")], ..VesselPlan::default() });
    let new = || Arc::new(VesselSurvey::new(Id::new("new")));
    let record = || Edit::AddRecord(Record { id: Id::new("r"), value: json!({ "id": "r" }) });
    let load = |vessel: &str, change| Edit::Load { vessel: Id::new(vessel), tag: String::new(), change };
    let table = [
        (Edit::RemoveVessel(nobody.clone()), Refused::NoVessel(nobody.clone())),
        (Edit::MoveVessel { vessel: filter.clone(), to: 2 }, Refused::NoPlace { at: 2, of: 2 }),
        (Edit::InsertVessel { at: 3, vessel: new(), plan: plan() }, Refused::NoPlace { at: 3, of: 2 }),
        (Edit::InsertVessel { at: 0, vessel: there, plan: plan() }, Refused::SameId(filter.clone())),
        (Edit::InsertVessel { at: 0, vessel: Arc::new(coned), plan: plan() }, Refused::ConeOnTop),
        (Edit::InsertVessel { at: 0, vessel: new(), plan: twice }, Refused::SameId(Id::new("a"))),
        (Edit::Choose { vessel: filter.clone(), choice: Choice::TopHead(HeadShape::Conical) }, Refused::ConeOnTop),
        (Edit::RemoveLayer { vessel: filter.clone(), layer: nobody.clone() }, Refused::NoLayer(nobody.clone())),
        (Edit::RemoveLayer { vessel: nobody.clone(), layer: nobody.clone() }, Refused::NoVessel(nobody)),
        (Edit::InsertLayer { vessel: filter.clone(), at: 3, layer: layer("new") }, Refused::NoPlace { at: 3, of: 2 }),
        (
            Edit::InsertLayer { vessel: filter.clone(), at: 0, layer: layer("0-filter") },
            Refused::SameId(Id::new("0-filter")),
        ),
        (Edit::MoveLayer { vessel: filter, layer: Id::new("0-filter"), to: 2 }, Refused::NoPlace { at: 2, of: 2 }),
        (Edit::All(vec![record(), record()]), Refused::SameRecord(Id::new("r"))),
        (load("nobody", TagChange::Photo(None)), Refused::NoVessel(Id::new("nobody"))),
        (load("filter", TagChange::RemoveDrum(Id::new("d"))), Refused::NoDrum),
        (load("filter", TagChange::InsertDrum(1, Drum::new(Id::new("d")))), Refused::NoDrum),
    ];
    for (edit, why) in table {
        let mut job = jobs::sample();
        let shown = format!("{edit:?}");
        assert_eq!(apply(&mut job, edit, &device()), Err(why), "{shown}");
        assert_eq!(job, jobs::sample(), "{shown}");
    }
}

#[test]
fn a_record_stays_when_what_was_done_with_it_is_taken_back() {
    let mut job = jobs::sample();
    let record = Edit::AddRecord(Record { id: Id::new("r"), value: json!({ "id": "r" }) });
    let title = Edit::Text { field: TextField::Title, text: "Signed".to_owned() };
    let undo = apply(&mut job, Edit::All(vec![title, record]), &device()).unwrap().unwrap();
    apply(&mut job, undo, &device()).unwrap();
    assert_eq!(job.head.body.title, jobs::sample().head.body.title);
    assert_eq!(job.records.len(), 1);
}
