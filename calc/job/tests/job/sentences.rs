//! Every sentence a person can meet when something is wrong or to be minded, letter for letter.
//!
//! Where it can be, the mistake is made the way a person makes it and the sentence is read off the answer, so that the
//! figures in it are those of the mistake. The wording is ours; no outside source.

use std::collections::BTreeSet;

use bedwright_calc::quantity::{
    Basis, Caution, Fault, Mark, Problem, Reason, Remedy, Source, Subject, Term, Verdict, cubic_metres,
    kilograms_per_cubic_metre, metres,
};
use bedwright_job::Job;
use bedwright_job::answers::{LayerOutcome, VesselAnswers, vessel_answers};
use bedwright_job::edit::{Choice, Edit, LayerChoice};
use bedwright_job::entry::{Entry, Misread, Unit, nominal_size, understand};
use bedwright_job::field::{LayerField, PlanField, SurveyField};
use bedwright_job::id::Id;
use bedwright_job::reading::{LayerFault, read_survey};
use bedwright_job::sections::plan::TargetKind;
use bedwright_job::sections::survey::{CollectorKind, DiameterWay, HeadShape, Standing, SurveyEntry, VesselSurvey};
use bedwright_job::words::{Manner, VerdictWords};

use crate::jobs;

const INCH: f64 = 0.0254;
const CUBIC_FOOT: f64 = 0.028_316_846_592;

fn inches() -> Manner {
    Manner::default()
}

fn millimetres() -> Manner {
    Manner { metric: true, decimal: ',', ..Manner::default() }
}

#[track_caller]
fn misread(text: &str, unit: Unit) -> Misread {
    match understand(text, unit, None) {
        Err(misread) => misread,
        Ok(understood) => panic!("{text} is {understood:?}"),
    }
}

#[test]
fn what_is_said_of_a_text_that_makes_no_sense() {
    let table = [
        ("", Unit::Inch, "Nothing is typed. Type a number, like 52, 11 3/4 or 4 ft 4 in."),
        ("about", Unit::Inch, "“about” isn't part of a number. Type a number, like 52, 11 3/4 or 4 ft 4 in."),
        ("a bit", Unit::Millimetre, "“a” isn't part of a number. Type a number, like 1320 or 298.5."),
        ("-", Unit::CubicFoot, "This stops before it is a number. Type a number, like 2, 1.5 or 1/6."),
        ("two", Unit::Each, "“two” isn't part of a number. Type a number, like 2 or 1.5."),
        ("x", Unit::Pound, "“x” isn't part of a number. Type a number, like 1.5."),
        ("1,234", Unit::Millimetre, "This could be 1.234 mm or 1234 mm. Say which."),
        ("1,234", Unit::Each, "This could be 1.234 or 1234. Say which."),
        ("12 furlongs", Unit::Inch, "“furlongs” is no unit known here. Units it can be in: in, ft, mm, cm, m."),
        ("12 furlongs", Unit::Each, "“furlongs” is no unit known here. Type a bare number."),
        ("12 psi", Unit::Inch, "“psi” measures something else. Units it can be in: in, ft, mm, cm, m."),
        ("12 in", Unit::CubicFoot, "“in” measures something else. Units it can be in: cu ft, L, gal, m³, cu in."),
        ("12 in", Unit::Percent, "“in” measures something else. Units it can be in: %."),
        ("2 bags", Unit::Inch, "A number of pieces isn't asked for here. Units it can be in: in, ft, mm, cm, m."),
        ("4 ft 14 in", Unit::Inch, "14 in after the larger unit is too much: it must be below 12."),
        (
            "9999999999999999 ft",
            Unit::Inch,
            "This is larger than anything in this trade. Check the number and its unit.",
        ),
        (
            "0.00000000000000000001",
            Unit::Inch,
            "This is smaller than anything in this trade. Check the number and its unit.",
        ),
        ("1/0", Unit::Inch, "A fraction over 0 is no number."),
    ];
    for (text, unit, sentence) in table {
        assert_eq!(inches().misread(&misread(text, unit), unit), sentence, "{text}");
    }
    let long = misread(&"1".repeat(65), Unit::Inch);
    assert_eq!(inches().misread(&long, Unit::Inch), "This is too long for a number.");
    let size = nominal_size("5212").unwrap_err();
    let sentence = "52 × 12 in is no vessel's size. Type the diameter, then the height: 12x52.";
    assert_eq!(inches().misread(&size, Unit::Inch), sentence);
    let doubt = misread("1,234", Unit::Millimetre);
    assert_eq!(millimetres().misread(&doubt, Unit::Millimetre), "This could be 1,234 mm or 1234 mm. Say which.");
}

/// The sample's carbon filter after some changes.
fn filter(edits: Vec<Edit>) -> (Job, VesselAnswers) {
    let mut job = jobs::sample();
    for edit in edits {
        jobs::change(&mut job, edit);
    }
    let answers = vessel_answers(job.vessel(&id()).unwrap(), &job.plan_of(&id()));
    (job, answers)
}

fn id() -> Id {
    Id::new("filter")
}

fn typed(field: SurveyField, text: &str) -> Edit {
    Edit::Survey { vessel: id(), field, entry: Some(jobs::measured(text, field.usual_unit(false))) }
}

fn choose(choice: Choice) -> Edit {
    Edit::Choose { vessel: id(), choice }
}

/// The first problem of the vessel, in words.
#[track_caller]
fn problem_of_the_inside(edits: Vec<Edit>) -> String {
    let (_, answers) = filter(edits);
    assert!(answers.survey.misread.is_empty() && answers.survey.missing.is_empty(), "{:?}", answers.survey);
    let problem = answers.problems.values().next().or(answers.problem.as_ref()).unwrap();
    inches().problem(problem)
}

#[test]
fn what_is_said_of_an_inside_that_cannot_be() {
    use SurveyField as F;
    let laterals = |count: &str, length: &str| {
        vec![
            choose(Choice::Collector(CollectorKind::HubAndLaterals)),
            typed(F::LateralCount, count),
            typed(F::CollectorDiameter, "1"),
            typed(F::LateralLength, length),
            typed(F::LateralAxis, "3"),
        ]
    };
    let rise = |before: &str, after: &str, volume: &str| {
        vec![
            choose(Choice::Diameter(DiameterWay::MeteredFill)),
            typed(F::TapeBefore, before),
            typed(F::TapeAfter, after),
            typed(F::MeteredVolume, volume),
        ]
    };
    let table: Vec<(Vec<Edit>, &str)> = vec![
        (vec![typed(F::Circumference, "0")], "Tape round the bare shell must be more than 0; it is 0 in."),
        (vec![typed(F::Wall, "-0.16")], "Wall must be more than 0; it is −0.16 in."),
        (
            vec![typed(F::Wall, "7")],
            "Wall must be less than half the shell's diameter by the tape, 6.03 in; it is 7 in.",
        ),
        (
            vec![typed(F::InsideDepth, "5")],
            "Inside depth must be more than heads and neck together, 6.87 in; it is 5 in.",
        ),
        (vec![typed(F::NeckHeight, "-1")], "Neck height can't be below 0; it is −1 in."),
        (vec![typed(F::ClearBore, "13")], "Clear bore must be less than the inside diameter, 11.74 in; it is 13 in."),
        (
            vec![typed(F::RiserOutsideDiameter, "2 3/4")],
            "Riser outside diameter must be less than the clear bore, 2.5 in; it is 2.75 in.",
        ),
        (vec![typed(F::RiserSeat, "60")], "Height the riser stands at must be from 0 in to 51 in; it is 60 in."),
        (vec![typed(F::RiserAllowance, "-60")], "No riser would be left: this must be more than −51 in; it is −60 in."),
        (
            vec![typed(F::CollectorTop, "0")],
            "Collector upper end must be more than the collector lower end, 0 in; it is 0 in.",
        ),
        (
            vec![typed(F::CollectorDiameter, "12")],
            "Collector diameter must be less than the inside diameter, 11.74 in; it is 12 in.",
        ),
        (laterals("0", "4"), "Number of laterals must be from 1 to 200; it is 0."),
        (
            laterals("8", "6"),
            "Length of a lateral must be at most 5.87 in, what the shell leaves at their height; it is 6 in.",
        ),
        (
            laterals("40", "5"),
            "The laterals would take 1.389 sq ft of a section of 0.736 sq ft, and grains could not pass. Check their number, \
             length and diameter.",
        ),
        (
            vec![choose(Choice::UpperCollector(true)), typed(F::UpperCollector, "60")],
            "Rim to upper collector must be from 0 in to 51 in; it is 60 in.",
        ),
        (
            vec![choose(Choice::BottomHead(HeadShape::Conical)), typed(F::ConeDepth, "0")],
            "Depth of the bottom head must be more than 0; it is 0 in.",
        ),
        (rise("30", "40", "5"), "Tape after must be less than the tape before, 30 in; it is 40 in."),
        (rise("60", "40", "5"), "Tape before must be from 0 in to 51 in; it is 60 in."),
        (rise("40", "39", "500"), "No diameter fits the water let in and these two tape readings. Check all three."),
    ];
    for (edits, sentence) in table {
        let shown = format!("{edits:?}");
        assert_eq!(problem_of_the_inside(edits), sentence, "{shown}");
    }
}

/// The problem of the carbon layer, asked for like this, in words.
#[track_caller]
fn problem_of_the_layer(target: TargetKind, text: &str, more: Vec<Edit>) -> String {
    let layer = || Id::new("1-filter");
    let amount = Some(jobs::entry(text, target.usual_unit(false)));
    let mut edits = vec![
        Edit::Layer { vessel: id(), layer: layer(), choice: LayerChoice::Target(target) },
        Edit::LayerEntry { vessel: id(), layer: layer(), field: LayerField::Amount, entry: amount },
    ];
    edits.extend(more);
    let (_, answers) = filter(edits);
    match &answers.layers[1].outcome {
        LayerOutcome::Problem(problem) => inches().problem(problem),
        other => panic!("{other:?}"),
    }
}

#[test]
fn what_is_said_of_a_layer_that_cannot_be() {
    let no_collector = || vec![choose(Choice::Collector(CollectorKind::None)), gravel_by_volume()];
    let table = [
        (TargetKind::Packs, "3", vec![], "This needs 3.00 cu ft; there is room for 2.69 cu ft."),
        (TargetKind::Packs, "0", vec![], "Amount of the layer must be more than 0; it is 0."),
        (TargetKind::Depth, "-2", vec![], "Amount of the layer must be more than 0; it is −2 in."),
        (TargetKind::Volume, "0", vec![], "Amount of the layer must be more than 0; it is 0.00 cu ft."),
        (TargetKind::Weight, "-5", vec![], "Amount of the layer must be more than 0; it is −5 lb."),
        (
            TargetKind::Depth,
            "60",
            vec![],
            "This would bring the surface to 63.75 in above the lowest point, over the rim at 51 in.",
        ),
        (
            TargetKind::TapeReading,
            "48",
            vec![],
            "48 in is already reached: the surface below stands 3.75 in above the lowest point.",
        ),
        (TargetKind::TapeReading, "60", vec![], "Amount of the layer must be from 0 in to 51 in; it is 60 in."),
        (
            TargetKind::Freeboard,
            "44",
            vec![],
            "44 in is already reached: the surface below stands 3.75 in above the lowest point.",
        ),
        (TargetKind::FreeboardRatio, "2000", vec![], "Amount of the layer must be from 0 % to 1000 %; it is 2000 %."),
        (
            TargetKind::Cover,
            "1",
            no_collector(),
            "There is no top slot to cover: choose a bottom collector with slots and its height, or fill by another measure.",
        ),
        (TargetKind::Packs, "1", vec![density("0")], "Bulk density must be more than 0; it is 0 lb/cu ft."),
        (
            TargetKind::Packs,
            "1",
            vec![density("0.5")],
            "Bulk density must be from 0.6 lb/cu ft to 1248.6 lb/cu ft; it is 0.5 lb/cu ft.",
        ),
        (TargetKind::Packs, "20000000", vec![], "Packs must be from 0 to 10000000; it is 20000000."),
    ];
    for (target, text, more, sentence) in table {
        assert_eq!(problem_of_the_layer(target, text, more), sentence, "{target:?} {text}");
    }
}

fn gravel_by_volume() -> Edit {
    let layer = || Id::new("0-filter");
    Edit::All(vec![
        Edit::Layer { vessel: id(), layer: layer(), choice: LayerChoice::Target(TargetKind::Volume) },
        Edit::LayerEntry {
            vessel: id(),
            layer: layer(),
            field: LayerField::Amount,
            entry: Some(jobs::entry("1/6", Unit::CubicFoot)),
        },
    ])
}

fn density(text: &str) -> Edit {
    let entry = Some(jobs::entry(text, Unit::PoundPerCubicFoot));
    Edit::LayerEntry { vessel: id(), layer: Id::new("1-filter"), field: LayerField::BulkDensity, entry }
}

#[test]
fn what_is_said_of_a_bucket_that_holds_nothing() {
    let entry = Some(jobs::entry("0", Unit::UsGallon));
    let (_, answers) = filter(vec![Edit::Plan { vessel: id(), field: PlanField::Bucket, entry }]);
    let problem = answers.bucket_problem.unwrap();
    assert_eq!(inches().problem(&problem), "Bucket must be more than 0; it is 0.00 cu ft.");
    assert!(answers.layers.iter().all(|layer| layer.outcome == LayerOutcome::Waits), "{:?}", answers.layers);
}

/// Those that a vessel or layer of a job never shows, but a caller of the engineering may.
#[test]
fn what_is_said_of_what_waits_or_lacks() {
    let table = [
        (Problem::new(Term::Freeboard, Fault::Missing), "Freeboard is needed and isn't there yet."),
        (
            Problem::new(Term::Freeboard, Fault::WaitsFor { other: Term::LayerVolume }),
            "Waits for a layer that has no answer yet.",
        ),
        (Problem::new(Term::Freeboard, Fault::WaitsFor { other: Term::InsideDepth }), "Waits for the inside depth."),
        (
            Problem::new(Term::PackVolume, Fault::NoSolution),
            "No diameter fits the volume of a pack and these two tape readings. Check all three.",
        ),
    ];
    for (problem, sentence) in table {
        assert_eq!(inches().problem(&problem), sentence);
    }
}

#[test]
fn what_is_said_of_a_layer_that_cannot_be_read() {
    let table = [
        (LayerFault::NoMaterial, "Choose a material."),
        (
            LayerFault::UnknownMaterial("unobtainium".to_owned()),
            "This version doesn't know the material “unobtainium”. Choose another, or update.",
        ),
        (
            LayerFault::UnknownPack("tub".to_owned()),
            "This version doesn't know the pack “tub”. Choose another, or update.",
        ),
        (LayerFault::NoAmount, "Type how much."),
        (
            LayerFault::Amount(misread("two", Unit::Each)),
            "“two” isn't part of a number. Type a number, like 2, 1.5 or 1/6.",
        ),
        (
            LayerFault::Amount(misread("2 furlongs", Unit::Inch)),
            "“furlongs” is no unit known here. Leave it out, or type another.",
        ),
        (
            LayerFault::Amount(misread("2 psi", Unit::Inch)),
            "“psi” measures something else. Units it can be in: in, ft, mm, cm, m.",
        ),
        (
            LayerFault::BulkDensity(misread("30 lb", Unit::PoundPerCubicFoot)),
            "“lb” measures something else. Units it can be in: lb/ft³, kg/m³, g/L, kg/L.",
        ),
    ];
    for (fault, sentence) in table {
        assert_eq!(inches().layer_fault(&fault), sentence);
    }
}

#[test]
fn what_is_said_to_be_borne_in_mind() {
    let above = Caution::AboveNominal { inside: metres(12.26 * INCH).into(), nominal: metres(12.0 * INCH).into() };
    let varies = Caution::DensityVaries {
        low: kilograms_per_cubic_metre(449.0).into(),
        high: kilograms_per_cubic_metre(561.0).into(),
    };
    let table = [
        (inches(), Caution::MeasureDiameter, "Taken as 0.98 of the nominal diameter, from memory. Measure it."),
        (inches(), Caution::MeasureDepth, "Taken as 1 in under the nominal height, from memory. Measure it."),
        (inches(), above, "Comes out at 12.26 in, more than the nominal 12 in. Check the reading it comes from."),
        (
            millimetres(),
            above,
            "Comes out at 311,4 mm, more than the nominal 304,8 mm. Check the reading it comes from.",
        ),
        (
            inches(),
            Caution::IfPackWasFull,
            "True if the bag was full. If it was short, the vessel is narrower than this.",
        ),
        (inches(), varies, "Bulk density is 28 lb/cu ft to 35 lb/cu ft from lot to lot."),
        (millimetres(), varies, "Bulk density is 449 kg/m³ to 561 kg/m³ from lot to lot."),
    ];
    for (manner, caution, sentence) in table {
        assert_eq!(manner.caution(&caution), sentence);
    }
}

fn verdict(subject: Subject, mark: Mark, reason: Reason, remedies: Vec<Remedy>) -> String {
    let verdict = Verdict { subject, mark, reason, remedies, basis: Basis::Measured, source: Source::CommonPractice };
    let layers = ["Gravel 1/8 × 1/4 in".to_owned(), "Coconut carbon 12×40".to_owned()];
    let VerdictWords { headline, reason, remedies, source } = inches().verdict(&verdict, &layers);
    assert!(!source.is_empty(), "a verdict without a source: {headline}");
    format!("{headline} | {reason} | {}", remedies.join(" "))
}

#[test]
fn what_is_said_when_a_gap_is_judged() {
    let gap = Subject::Gap { layer: 0 };
    // 0.725 in beside the riser takes 2.9 grains of a quarter inch; 2.96 must not read as the 3 it misses.
    let centred = |grains: f64| Reason::GapCentred { grains: grains.into(), wanted: 3.0.into() };
    let smaller = |largest: f64| Remedy::SmallerGrain { largest: metres(largest).into() };
    assert_eq!(
        verdict(gap, Mark::Fine, centred(10.83), vec![]),
        "Gap beside the riser, Gravel 1/8 × 1/4 in: fine | 10.8 of the largest grains fit beside the riser; 3 are enough. | "
    );
    assert_eq!(
        verdict(gap, Mark::Caution, centred(2.96), vec![Remedy::PourSlowly, smaller(0.006_138_3)]),
        "Gap beside the riser, Gravel 1/8 × 1/4 in: caution | 2.9 of the largest grains fit beside the riser; under 3 they jam. | \
         Pour slowly and work it round. Or take grains of at most 6.14 mm."
    );
    assert_eq!(
        verdict(
            gap,
            Mark::Stop,
            Reason::GapLeaned { grains: 1.2.into(), wanted: 1.5.into() },
            vec![Remedy::FillPortOrManway, smaller(0.010_16)]
        ),
        "Gap beside the riser, Gravel 1/8 × 1/4 in: stop | Even with the riser leaned over only 1.2 of the largest grains fit; \
         under 1.5 none pass. | Load by a fill port or a manway. Or take grains of at most 10.16 mm."
    );
}

#[test]
fn what_is_said_when_slots_and_neighbours_are_judged() {
    let slot = |slot: f64, grain: f64| Reason::Slot { slot: metres(slot).into(), grain: metres(grain).into() };
    let mends = || vec![Remedy::CoarserGrain { smallest: metres(0.000_714).into() }, Remedy::LayerBetween];
    let at = Subject::Slot { layer: 1 };
    assert_eq!(
        verdict(at, Mark::Fine, slot(0.000_25, 0.003_18), vec![]),
        "Collector slots, Coconut carbon 12×40: fine | Slots of 0.25 mm hold the smallest grains, 3.18 mm. | "
    );
    assert_eq!(
        verdict(at, Mark::Caution, slot(0.000_4, 0.000_425), mends()),
        "Collector slots, Coconut carbon 12×40: caution | Slots of 0.4 mm are close to the smallest grains, 0.43 mm; up to 0.7 of \
         a grain is safe. | Take grains of at least 0.71 mm, or finer slots. Or put a coarser layer against the slots."
    );
    assert_eq!(
        verdict(at, Mark::Stop, slot(0.000_5, 0.000_425), mends()),
        "Collector slots, Coconut carbon 12×40: stop | Slots of 0.5 mm let the smallest grains through, 0.43 mm. | Take grains of \
         at least 0.71 mm, or finer slots. Or put a coarser layer against the slots."
    );
    let lower = Subject::Neighbours { lower: 0 };
    assert_eq!(
        verdict(
            lower,
            Mark::Caution,
            Reason::SizeRatio { ratio: 4.02.into(), limit: 4.0.into() },
            vec![Remedy::LayerBetween]
        ),
        "Gravel 1/8 × 1/4 in under Coconut carbon 12×40: caution | The largest grain below is 4.1 times the smallest above; 4 is \
         the most. | Put a layer between, of a size between the two."
    );
    assert_eq!(
        verdict(lower, Mark::Fine, Reason::FilterRatio { ratio: 2.42.into(), limit: 5.0.into() }, vec![]),
        "Gravel 1/8 × 1/4 in under Coconut carbon 12×40: fine | Grains below are 2.4 times those above (D15 over D85); 5 is the \
         most. | "
    );
}

#[test]
fn what_is_said_when_cover_room_and_diameter_are_judged() {
    let cover = |inches: f64| Reason::CoverAboveSlot { cover: metres(inches * INCH).into() };
    let more = Remedy::MoreUnderbed { volume: cubic_metres(0.05 * CUBIC_FOOT).into() };
    assert_eq!(
        verdict(Subject::Cover, Mark::Fine, cover(1.5), vec![]),
        "Cover of the collector: fine | The underbed stands 1.5 in above the top slot. | "
    );
    assert_eq!(
        verdict(Subject::Cover, Mark::Caution, cover(-0.75), vec![more]),
        "Cover of the collector: caution | The top slot stands 0.75 in above the underbed. | Add 0.05 cu ft of underbed."
    );
    let fewer = |packs: u32| vec![Remedy::FewerPacks { packs: packs.into() }];
    let room =
        Reason::NoRoom { needs: cubic_metres(3.0 * CUBIC_FOOT).into(), room: cubic_metres(2.85 * CUBIC_FOOT).into() };
    assert_eq!(
        verdict(Subject::Freeboard, Mark::Stop, room, fewer(2)),
        "Room above the media: stop | It needs 3.00 cu ft; there is room for 2.85 cu ft. | At most 2 packs fit."
    );
    assert_eq!(
        verdict(Subject::Freeboard, Mark::Stop, Reason::Room { freeboard: metres(-2.0 * INCH).into() }, fewer(1)),
        "Room above the media: stop | The media would stand 2 in above where the bed must end. | At most 1 pack fits."
    );
    let above = Reason::AboveNominal { inside: metres(12.26 * INCH).into(), nominal: metres(12.0 * INCH).into() };
    assert_eq!(
        verdict(Subject::Diameter, Mark::Caution, above, vec![Remedy::TapeBareShell]),
        "Inside diameter: caution | It comes out at 12.26 in, more than the nominal 12 in. | Tape the bare shell, not the jacket, \
         and measure the wall."
    );
}

/// A sentence ends in a full stop, says no number with too many decimals, and has no two spaces in it.
#[test]
fn no_sentence_of_a_broken_job_is_ragged() {
    let mut seen = BTreeSet::new();
    for manner in [inches(), millimetres()] {
        let report = crate::plan::report::report(&jobs::misread(), &manner, false);
        texts(&report, &mut seen);
    }
    assert!(seen.len() > 20, "{seen:?}");
    for text in seen {
        assert!(text.ends_with('.') && !text.contains("  ") && !text.contains(" ."), "{text:?}");
        assert!(text.chars().next().is_some_and(|first| !first.is_lowercase()), "{text:?}");
    }
}

/// The sentences of problems in a report.
fn texts(value: &serde_json::Value, into: &mut BTreeSet<String>) {
    match value {
        serde_json::Value::Object(map) => {
            if let (Some(serde_json::Value::String(text)), true) = (map.get("text"), map.contains_key("code")) {
                into.insert(text.clone());
            }
            map.values().for_each(|inner| texts(inner, into));
        }
        serde_json::Value::Array(list) => list.iter().for_each(|inner| texts(inner, into)),
        _ => {}
    }
}

#[test]
fn a_part_of_a_lateral_is_no_number_of_laterals() {
    let survey = |count: &str| {
        let mut survey = VesselSurvey::new(Id::new("v"));
        survey.collector = CollectorKind::HubAndLaterals;
        let entry = Entry { text: count.to_owned(), unit: Unit::Each, meaning: None };
        survey.entries.insert(SurveyField::LateralCount, SurveyEntry { entry, standing: Standing::Measured });
        read_survey(&survey).misread.get(&SurveyField::LateralCount).cloned()
    };
    let said = |count: &str| survey(count).map(|found| Manner::default().misread(&found, Unit::Each));
    assert_eq!(said("2.5").as_deref(), Some("2.5 is no number of things. It must be a whole number from 1, like 8."));
    assert_eq!(said("8"), None);
}
