//! Jobs to take apart: every choice used, every kind of mistake typed.

use std::sync::Arc;

use bedwright_calc::fill::{Role, SurfaceState};
use bedwright_calc::hydraulics::{Arrangement, Purpose};
use bedwright_calc::supply::JobKind;
use bedwright_calc::supply::lifting::Grip;
use bedwright_calc::vessel::Opening;
use bedwright_job::edit::quote::QuoteEdit;
use bedwright_job::edit::{Choice, Edit, LayerChoice, SearchChoice, WaterOf, apply};
use bedwright_job::entry::{Entry, Meaning, Unit};
use bedwright_job::field::{
    KitField, LayerField, LineField, PlanField, QuoteField, SupplyField, SurveyField, WaterField,
};
use bedwright_job::id::{Id, Revision};
use bedwright_job::job::{Job, Record};
use bedwright_job::picked::{PickedLine, Step, Taken};
use bedwright_job::prices::{Care, Catalogue, Origin, PriceField, PriceKind, PriceRow, amount};
use bedwright_job::sample::sample_job;
use bedwright_job::sections::head::TextField;
use bedwright_job::sections::loading::{
    Acknowledgement, Drum, LoadingText, Photo, ReadingPlace, RemovalMethod, Stamp, TagChange, TapeReading, WorkSheet,
};
use bedwright_job::sections::picking::PickField;
use bedwright_job::sections::plan::{LayerPlan, TargetKind, VesselPlan};
use bedwright_job::sections::quote::{
    HALVES, LabourLine, LineText, PriceBy, QuoteLine, QuoteText, STANDINGS, TaxClass, UNTAXED,
};
use bedwright_job::sections::supply::{SupplyEdit, TakenField};
use bedwright_job::sections::survey::{
    CollectorKind, DiameterWay, HeadShape, Path, Standing, SurveyEntry, VesselSurvey,
};
use serde_json::json;

/// The sample as it is published.
pub fn sample() -> Job {
    sample_job(Id::new("sample"), [Id::new("filter"), Id::new("softener")], "2026-11-24")
}

/// The sample with every choice and entry of a search.
pub fn searched() -> Job {
    let mut job = sample();
    let entries = [
        (WaterField::ServiceFlow, "10", Unit::UsGallonPerMinute),
        (WaterField::PeakFlow, "14", Unit::UsGallonPerMinute),
        (WaterField::CeilingClearance, "10 ft", Unit::Inch),
        (WaterField::MinimumExpansion, "40", Unit::Percent),
        (WaterField::FlowControl, "8.5", Unit::UsGallonPerMinute),
    ];
    for choice in [
        SearchChoice::Purpose(Purpose::Softening),
        SearchChoice::Arrangement(Arrangement::TwinAlternating),
        SearchChoice::Media("resin_cation".to_owned()),
        SearchChoice::Underbed("gravel_1_8x1_4".to_owned()),
        SearchChoice::RiserInParts(true),
    ] {
        change(&mut job, Edit::Search(choice));
    }
    for (field, text, unit) in entries {
        change(&mut job, Edit::Water { of: WaterOf::Search, field, entry: Some(measured(text, unit)) });
    }
    job
}

/// An entry.
pub fn entry(text: &str, unit: Unit) -> Entry {
    Entry { text: text.to_owned(), unit, meaning: None }
}

/// An entry of a survey, measured.
pub fn measured(text: &str, unit: Unit) -> SurveyEntry {
    SurveyEntry { entry: entry(text, unit), standing: Standing::Measured }
}

/// Changes a job, which must let itself be changed.
#[track_caller]
pub fn change(job: &mut Job, edit: Edit) {
    let shown = format!("{edit:?}");
    if let Err(refused) = apply(job, edit, &Id::new("bench")) {
        panic!("{refused:?}: {shown}");
    }
}

/// Puts a new vessel at the end.
pub fn add_vessel(job: &mut Job, id: &str) -> Id {
    let vessel = Arc::new(VesselSurvey::new(Id::new(id)));
    let at = job.survey.body.vessels.len();
    change(job, Edit::InsertVessel { at, vessel, plan: Arc::new(VesselPlan::default()) });
    Id::new(id)
}

/// Puts a new layer on top.
pub fn add_layer(job: &mut Job, vessel: &Id, layer: LayerPlan) {
    let at = job.plan_of(vessel).layers.len();
    change(job, Edit::InsertLayer { vessel: vessel.clone(), at, layer });
}

/// When somebody did something.
pub fn stamp(at: &str) -> Stamp {
    Stamp { at: at.to_owned(), by: "Ida Larch (invented)".to_owned() }
}

/// Changes the loading of a tag of the sample's filter.
#[track_caller]
pub fn load(job: &mut Job, tag: &str, change_of: TagChange) {
    change(job, Edit::Load { vessel: Id::new("filter"), tag: tag.to_owned(), change: change_of });
}

/// The sample with one vessel emptied and loaded, another begun; every text, state and method is used.
pub fn loaded() -> Job {
    let mut job = sample();
    for (sheet, at) in WorkSheet::ALL.iter().zip(["2026-11-26T08:00:00.000Z", "2026-11-26T09:00:00.000Z"]) {
        let of = Acknowledgement { sheet: *sheet, day: "2026-11-26".to_owned(), stamp: stamp(at) };
        change(&mut job, Edit::Acknowledge { of, read: true });
    }
    let reading = |text: &str, state| TapeReading {
        entry: Some(entry(text, Unit::Inch)),
        state,
        stamp: stamp("2026-11-26T09:20:00.000Z"),
    };
    let layer = || Id::new("1-filter");
    let mut drum = Drum::new(Id::new("d1"));
    drum.label = "CF-1 spent".to_owned();
    drum.contents = "spent carbon, drained".to_owned();
    drum.weight = Some(entry("118", Unit::Pound));
    let (poured, settled) = (SurfaceState::AsPoured, SurfaceState::SettledAtOpening);
    let untaken = TapeReading { entry: None, ..reading("", poured) };
    let mut changes = vec![
        TagChange::Tick("position".to_owned(), Some(stamp("2026-11-26T09:05:00.000Z"))),
        TagChange::Reading(ReadingPlace::Found, Some(reading("16 1/2", settled))),
        TagChange::Reading(ReadingPlace::End(Id::new("0-filter")), Some(reading("47 1/4", poured))),
        TagChange::Reading(ReadingPlace::Pack(layer(), 1), Some(untaken)),
        TagChange::Reading(ReadingPlace::End(layer()), Some(reading("15 1/4", poured))),
        TagChange::Poured(layer(), Some(entry("2 1/8", Unit::Each))),
        TagChange::Lot(layer(), "L-2210".to_owned()),
        TagChange::InsertDrum(0, drum),
        TagChange::Photo(Some(Photo { id: Id::new("p1"), bytes: 181_204 })),
    ];
    changes.extend(LoadingText::ALL.iter().map(|which| TagChange::Text(*which, format!("{} (invented)", which.id()))));
    changes.extend(RemovalMethod::ALL.iter().map(|method| TagChange::Method(Some(*method))));
    changes.into_iter().for_each(|change| load(&mut job, "CF-1", change));
    for (tag, method) in ["CF-2", "CF-3", "CF-4", ""].iter().zip(RemovalMethod::ALL) {
        load(&mut job, tag, TagChange::Method(Some(*method)));
    }
    job
}

/// A job that uses every choice, entry, unit, target, standing and text there is.
pub fn every_choice() -> Job {
    let mut job = Job::new(Id::new("every-choice"), "2026-11-24");
    for &field in TextField::ALL {
        change(&mut job, Edit::Text { field, text: format!("{field:?} – ä “x” \u{1F6B0}\n2nd line") });
    }
    change(&mut job, Edit::Kind(JobKind::Partial));
    change(&mut job, Edit::Bin(Some("2026-12-01".to_owned())));
    let most = [DiameterWay::ALL.len(), HeadShape::ALL.len(), Opening::ALL.len(), CollectorKind::ALL.len()];
    for index in 0..most.into_iter().max().unwrap_or(0) {
        let id = add_vessel(&mut job, &format!("v{index}"));
        let choices = [
            Choice::Path(Path::ALL[index % Path::ALL.len()]),
            Choice::Diameter(DiameterWay::ALL[index % DiameterWay::ALL.len()]),
            Choice::BottomHead(HeadShape::ALL[index % HeadShape::ALL.len()]),
            // The last shape is the cone, which is for the bottom only.
            Choice::TopHead(HeadShape::ALL[index % (HeadShape::ALL.len() - 1)]),
            Choice::Opening(Opening::ALL[index % Opening::ALL.len()]),
            Choice::Collector(CollectorKind::ALL[index % CollectorKind::ALL.len()]),
            Choice::Riser(index % 2 == 0),
            Choice::UpperCollector(index % 2 == 1),
        ];
        for choice in choices {
            change(&mut job, Edit::Choose { vessel: id.clone(), choice });
        }
        change(&mut job, Edit::Tags { vessel: id.clone(), tags: (0..index).map(|tag| format!("T-{tag}")).collect() });
        change(&mut job, Edit::VesselNotes { vessel: id.clone(), text: format!("note {index}") });
    }
    entries_of_every_field(&mut job);
    layers_of_every_target(&mut job);
    for field in [PickField::Bin, PickField::PartNumber, PickField::Lot, PickField::Note] {
        change(&mut job, Edit::PickText { key: "pack:a:b".to_owned(), field, text: format!("{field:?}") });
    }
    change(&mut job, Edit::Pick { key: "pack:a:b".to_owned(), picked: Some(3) });
    change(&mut job, Edit::Pick { key: "part:c:0:0".to_owned(), picked: Some(0) });
    let record = json!({ "id": "r1", "what": "reading", "values": [1, 2.5, null, true, { "deep": "x" }] });
    change(&mut job, Edit::AddRecord(Record { id: Id::new("r1"), value: record }));
    job
}

fn entries_of_every_field(job: &mut Job) {
    let vessel = Id::new("v0");
    for (index, &field) in SurveyField::ALL.iter().enumerate() {
        let units = Unit::of(field.dimension());
        let text = match field {
            SurveyField::NominalSize => "12x52",
            SurveyField::Wall => "1,234",
            _ => "4",
        };
        let mut typed = measured(text, units[index % units.len()]);
        typed.standing = Standing::ALL[index % Standing::ALL.len()];
        if field == SurveyField::Wall {
            typed.entry.meaning = Some(Meaning::DecimalPoint);
        }
        change(job, Edit::Survey { vessel: vessel.clone(), field, entry: Some(typed) });
    }
    let bucket = Entry { text: "1.234".to_owned(), unit: Unit::Litre, meaning: Some(Meaning::Thousands) };
    change(job, Edit::Plan { vessel, field: PlanField::Bucket, entry: Some(bucket) });
}

fn layers_of_every_target(job: &mut Job) {
    let vessel = Id::new("v1");
    for (index, &target) in TargetKind::ALL.iter().enumerate() {
        let role = if index < 2 { Role::Underbed } else { Role::Media };
        let mut layer = LayerPlan::new(Id::new(&format!("l{index}")), "sand_20x30", role);
        "sand_20x30.25_kg".clone_into(&mut layer.pack);
        layer.target = target;
        layer.amount = Some(entry("1", target.usual_unit(index % 2 == 0)));
        layer.minimum = index % 2 == 1;
        layer.bulk_density = (index % 3 == 0).then(|| entry("100", Unit::PoundPerCubicFoot));
        add_layer(job, &vessel, layer);
    }
}

/// A job that carries a row of the price list of every kind, with every text, care and origin there is.
pub fn priced() -> Job {
    let mut job = Job::new(Id::new("priced"), "2026-11-26");
    for (index, &kind) in PriceKind::ALL.iter().enumerate() {
        let mut row = PriceRow::new(&format!("own:{}", kind.id()), kind);
        for &field in PriceField::ALL {
            *row.text_mut(field) = format!("{field:?} – ä “x” {index}");
        }
        row.cost = (index % 3 != 0).then(|| amount("999999999999.999999", '.').unwrap().unwrap());
        row.price = (index % 3 != 1).then(|| amount("0.10", '.').unwrap().unwrap());
        row.size = (index % 2 == 0).then(|| entry("3,000", Unit::Millimetre));
        if let Some(size) = &mut row.size {
            size.meaning = Some(Meaning::Thousands);
        }
        for &care in Care::ALL {
            row.set_care(care, index % 2 == 1);
        }
        row.retired = index == 3;
        row.origin = Origin::ALL[index % Origin::ALL.len()];
        change(&mut job, Edit::Price { key: row.key.clone(), row: Some(Arc::new(row)) });
    }
    change(
        &mut job,
        Edit::Catalogue(Catalogue {
            title: "Autumn".to_owned(),
            currency: "USD".to_owned(),
            revision: Some(Revision { device: Id::new("desk"), counter: 12 }),
        }),
    );
    job
}

/// A job whose parts are counted by what was typed, with lines left out.
pub fn kitted() -> Job {
    let mut job = Job::new(Id::new("kitted"), "2026-11-26");
    for (field, text) in [(KitField::Bulking, "1.3"), (KitField::DrumVolume, "30")] {
        change(&mut job, Edit::Kit { field, entry: Some(entry(text, Unit::of(field.dimension())[0])) });
    }
    for key in ["part:riser_cap:26670", "pack:a:b"] {
        change(&mut job, Edit::LeaveOut { key: key.to_owned(), reason: Some("“there” is one, ä".to_owned()) });
    }
    job
}

/// A job in which everything that may be said of supply is said, and picking went all the way.
pub fn supplied() -> Job {
    let mut job = Job::new(Id::new("supplied"), "2026-11-26");
    let of = |edit: SupplyEdit| Edit::Supply(edit);
    let (material, pack) = ("gravel_1_8x1_4".to_owned(), "gravel_1_8x1_4.half_ft3".to_owned());
    for (index, &field) in SupplyField::ALL.iter().enumerate() {
        let entry = Some(entry(&format!("1{index}"), field.usual_unit(index % 2 == 0)));
        change(&mut job, of(SupplyEdit::Entry { field, entry }));
    }
    change(&mut job, of(SupplyEdit::PerVessel { material: material.clone(), yes: true }));
    let opened = Some(entry("0.2", Unit::CubicFoot));
    change(&mut job, of(SupplyEdit::Opened { material: material.clone(), entry: opened }));
    let (m, p) = (material.clone(), pack.clone());
    change(&mut job, of(SupplyEdit::Offer { material: m, pack: p, offered: Some(false) }));
    change(&mut job, of(SupplyEdit::Lock { material, pack, count: Some(3) }));
    change(&mut job, of(SupplyEdit::Grip(Grip::Fair)));
    let key = "pack:gravel_1_8x1_4:gravel_1_8x1_4.half_ft3".to_owned();
    change(&mut job, of(SupplyEdit::Asked { key: key.clone(), asked: Some(3) }));
    let instead = "Gravel of the next size – ä".to_owned();
    change(&mut job, of(SupplyEdit::Line { key: key.clone(), field: TakenField::Instead, text: instead }));
    change(&mut job, of(SupplyEdit::Line { key: key.clone(), field: TakenField::Date, text: "2026-10".to_owned() }));
    for (at, &step) in Step::ALL.iter().enumerate() {
        let line =
            PickedLine { key: key.clone(), item: "Gravel".to_owned(), asked: 3, picked: 2, ..PickedLine::default() };
        let lines = if step == Step::Picked { vec![line] } else { Vec::new() };
        let (id, day) = (Id::new(&format!("step-{at}")), format!("2026-11-2{at}"));
        let taken = Taken { id, step, day, name: "R. Moss (invented)".to_owned(), lines };
        change(&mut job, Edit::AddRecord(taken.record()));
    }
    job
}

/// Texts that make no sense, one for each way a text can be misread.
pub const NONSENSE: [&str; 11] = [
    "about a foot",
    "12 +",
    "1,234",
    "12 furlongs",
    "12 psi",
    "4 ft 14 in",
    "1234567890123456789012345678901234567890123456789012345678901234567890",
    "9999999999999999 ft",
    "0.00000000000000000001",
    "1/0",
    "",
];

/// The sample with a quote that uses every field, text, choice and standing there is.
pub fn quoted() -> Job {
    let mut job = sample();
    job.id = Id::new("quoted");
    let mut quote = |edit: QuoteEdit| change(&mut job, Edit::Quote(edit));
    quote(QuoteEdit::Way(PriceBy::Margin));
    quote(QuoteEdit::Halves(HALVES[1]));
    quote(QuoteEdit::Places(Some(3)));
    quote(QuoteEdit::FreightByKilogram(true));
    for &field in QuoteField::ALL {
        quote(QuoteEdit::Entry { field, entry: Some(entry("12.5", field.usual_unit(true))) });
    }
    for &field in QuoteText::ALL {
        quote(QuoteEdit::Text { field, text: format!("{field:?} – ä “x”\n2nd line") });
    }
    let rate = |text: &str| Some(entry(text, Unit::Percent));
    let unknown = serde_json::Map::new;
    let tax = |id: &str, name: &str| TaxClass {
        id: Id::new(id),
        name: name.to_owned(),
        rate: rate("8.875"),
        unknown: unknown(),
    };
    quote(QuoteEdit::Taxes(vec![tax("goods", "Goods"), tax("service", "Service")]));
    let row = |id: &str, kind, up_to: Option<&str>| LabourLine {
        id: Id::new(id),
        kind,
        up_to: up_to.map(|size| entry(size, Unit::Inch)),
        hours: Some(entry("1.5", Unit::One)),
        unknown: unknown(),
    };
    quote(QuoteEdit::Labour(vec![row("small", Some(JobKind::Changeout), Some("12")), row("any", None, None)]));
    for (at, &standing) in STANDINGS.iter().enumerate() {
        let mut line = QuoteLine { standing, on_request: at == 1, ..QuoteLine::default() };
        line.removed = (at == 2).then(|| "by others".to_owned());
        line.tax = ["", "service", UNTAXED][at].to_owned();
        line.instead_of = ["", "", "own:0"][at].to_owned();
        for &field in LineText::ALL {
            line.set_text(field, format!("{field:?} {at}"));
        }
        for &field in LineField::ALL {
            line.entries.set(field, Some(entry("2.25", field.usual_unit())));
        }
        quote(QuoteEdit::Line { key: format!("own:{at}"), at: None, line: Some(Arc::new(line)) });
    }
    job
}

/// A job in which every text is nonsense of every kind, and every layer lacks something else.
pub fn misread() -> Job {
    let mut job = Job::new(Id::new("misread"), "2026-11-24");
    change(&mut job, Edit::Kind(JobKind::TopUp));
    for (index, text) in NONSENSE.iter().enumerate() {
        let id = add_vessel(&mut job, &format!("v{index}"));
        change(&mut job, Edit::Choose { vessel: id.clone(), choice: Choice::Diameter(DiameterWay::Measured) });
        for field in [SurveyField::InsideDiameter, SurveyField::InsideDepth, SurveyField::ClearBore] {
            let typed = Some(measured(text, Unit::Inch));
            change(&mut job, Edit::Survey { vessel: id.clone(), field, entry: typed });
        }
        let bucket = Some(entry(text, Unit::UsGallon));
        change(&mut job, Edit::Plan { vessel: id, field: PlanField::Bucket, entry: bucket });
    }
    let nominal = add_vessel(&mut job, "nominal");
    let size = Some(measured("5212", Unit::Inch));
    change(&mut job, Edit::Survey { vessel: nominal, field: SurveyField::NominalSize, entry: size });
    let faults = add_vessel(&mut job, "faults");
    let size = Some(measured("12x52", Unit::Inch));
    change(&mut job, Edit::Survey { vessel: faults.clone(), field: SurveyField::NominalSize, entry: size });
    add_layer(&mut job, &faults, LayerPlan::new(Id::new("no-amount"), "resin_cation", Role::Media));
    add_layer(&mut job, &faults, LayerPlan::new(Id::new("no-material"), "", Role::Media));
    add_layer(&mut job, &faults, LayerPlan::new(Id::new("unknown"), "unobtainium", Role::Media));
    for (layer, field, text) in [
        ("amount", LayerField::Amount, "two bags"),
        ("density", LayerField::BulkDensity, "heavy"),
        ("pack", LayerField::Amount, "1"),
    ] {
        let id = Id::new(layer);
        add_layer(&mut job, &faults, LayerPlan::new(id.clone(), "resin_cation", Role::Media));
        let typed = Some(entry(text, Unit::Each));
        change(&mut job, Edit::LayerEntry { vessel: faults.clone(), layer: id, field, entry: typed });
    }
    let choice = LayerChoice::Pack("a_pack_of_later".to_owned());
    change(&mut job, Edit::Layer { vessel: faults, layer: Id::new("pack"), choice });
    job
}
