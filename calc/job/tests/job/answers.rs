//! Whatever is typed: answers are numbers or none, and a mistake stays where it was made.

use bedwright_calc::quantity::Problem;
use bedwright_calc::vessel::Opening;
use bedwright_job::Job;
use bedwright_job::answers::{LayerOutcome, VesselAnswers, job_answers};
use bedwright_job::edit::{Choice, Edit};
use bedwright_job::entry::{Entry, Unit};
use bedwright_job::field::{LayerField, PlanField, SurveyField};
use bedwright_job::id::Id;
use bedwright_job::reading::asked;
use bedwright_job::sections::plan::TargetKind;
use bedwright_job::sections::survey::{CollectorKind, DiameterWay, HeadShape, Standing, SurveyEntry};
use bedwright_job::words::Manner;
use proptest::prelude::*;
use serde_json::Value;

use crate::plan::report;
use crate::{cases, jobs};

/// What people, cats and scripts type.
fn text() -> impl Strategy<Value = String> {
    prop_oneof![
        4 => (1_u32..4000).prop_map(|n| (f64::from(n) / 8.0).to_string()),
        2 => prop::sample::select(vec![
            "0", "-0", "-1", "-51", "1e308", "1e-308", "NaN", "inf", "", "  ", "12", "51", "1/0", "1/3", "4 ft 4 in", "1,234",
            "999999999999", "-999999999999", "0.000000000000001", "5 psi", "2 bags", "12x52", "1252", "½", "٣", "12 12",
        ])
        .prop_map(str::to_owned),
        1 => any::<String>(),
    ]
}

fn entry() -> impl Strategy<Value = Entry> {
    let usual = prop::sample::select(vec![Unit::Inch, Unit::Millimetre, Unit::Each, Unit::CubicFoot, Unit::Percent]);
    (text(), prop_oneof![3 => usual, 1 => prop::sample::select(Unit::ALL)]).prop_map(|(text, unit)| Entry {
        text,
        unit,
        meaning: None,
    })
}

#[derive(Clone, Debug)]
struct Chosen {
    way: DiameterWay,
    bottom: HeadShape,
    top: HeadShape,
    opening: Opening,
    collector: CollectorKind,
    riser: bool,
    upper: bool,
}

fn chosen() -> impl Strategy<Value = Chosen> {
    let tops: Vec<HeadShape> = HeadShape::ALL.iter().copied().filter(|shape| *shape != HeadShape::Conical).collect();
    (
        prop::sample::select(DiameterWay::ALL),
        prop::sample::select(HeadShape::ALL),
        prop::sample::select(tops),
        prop::sample::select(Opening::ALL),
        prop::sample::select(CollectorKind::ALL),
        any::<bool>(),
        any::<bool>(),
    )
        .prop_map(|(way, bottom, top, opening, collector, riser, upper)| Chosen {
            way,
            bottom,
            top,
            opening,
            collector,
            riser,
            upper,
        })
}

fn choose(job: &mut Job, vessel: &Id, chosen: &Chosen) {
    for choice in [
        Choice::Diameter(chosen.way),
        Choice::BottomHead(chosen.bottom),
        Choice::TopHead(chosen.top),
        Choice::Opening(chosen.opening),
        Choice::Collector(chosen.collector),
        Choice::Riser(chosen.riser),
        Choice::UpperCollector(chosen.upper),
    ] {
        jobs::change(job, Edit::Choose { vessel: vessel.clone(), choice });
    }
}

fn answer<'a>(answers: &'a [std::sync::Arc<VesselAnswers>], vessel: &Id) -> &'a VesselAnswers {
    answers.iter().find(|answer| answer.id == *vessel).unwrap()
}

/// Every number that the report prints is one: JSON has no other way to say NaN or infinity than null.
fn no_null_number(path: &str, value: &Value) {
    match value {
        Value::Object(map) => {
            for (key, inner) in map {
                let number = ["_m", "_m2", "_m3", "_kg", "_kg_m3", "_ratio"].iter().any(|unit| key.ends_with(unit));
                assert!(!(number && inner.is_null()), "{path}.{key} is no number");
                no_null_number(&format!("{path}.{key}"), inner);
            }
        }
        Value::Array(list) => list.iter().for_each(|inner| no_null_number(path, inner)),
        _ => {}
    }
}

proptest! {
    #![proptest_config(cases())]

    #[test]
    fn nothing_that_is_typed_panics_or_prints_what_is_no_number(
        chosen in chosen(),
        entries in prop::collection::btree_map(prop::sample::select(SurveyField::ALL), entry(), 0..SurveyField::ALL.len()),
        layers in prop::collection::vec((prop::sample::select(TargetKind::ALL), prop::option::of(entry()), prop::option::of(entry())), 0..4),
        bucket in prop::option::of(entry()),
        metric in any::<bool>(),
        printed in 0_u8..8,
    ) {
        let mut job = jobs::sample();
        let filter = Id::new("filter");
        choose(&mut job, &filter, &chosen);
        for (field, entry) in entries {
            let entry = Some(SurveyEntry { entry, standing: Standing::Measured });
            jobs::change(&mut job, Edit::Survey { vessel: filter.clone(), field, entry });
        }
        for (index, (target, amount, density)) in layers.into_iter().enumerate() {
            let mut layer = job.plan_of(&filter).layers[index % 2].clone();
            layer.id = Id::new(&format!("more-{index}"));
            layer.target = target;
            layer.amount = amount;
            layer.bulk_density = density;
            jobs::add_layer(&mut job, &filter, layer);
        }
        if let Some(entry) = bucket {
            jobs::change(&mut job, Edit::Plan { vessel: filter, field: PlanField::Bucket, entry: Some(entry) });
        }
        let _ = job_answers(&job);
        // Printing costs many times what the answers do.
        if printed == 0 {
            let manner = Manner { metric, ..Manner::default() };
            no_null_number("", &report::report(&job, &manner, true));
        }
    }

    /// The same with a vessel that stays sound, so that fills, verdicts and bills are reached.
    #[test]
    fn no_amount_of_a_layer_panics_in_a_sound_vessel(
        amounts in prop::collection::vec((prop::sample::select(TargetKind::ALL), text(), any::<bool>()), 1..5),
        printed in 0_u8..8,
    ) {
        let mut job = jobs::sample();
        let filter = Id::new("filter");
        for (index, (target, text, minimum)) in amounts.into_iter().enumerate() {
            let mut layer = job.plan_of(&filter).layers[1].clone();
            layer.id = Id::new(&format!("more-{index}"));
            layer.target = target;
            layer.minimum = minimum;
            layer.amount = Some(jobs::entry(&text, target.usual_unit(false)));
            let plan = job.plan_of(&filter);
            let at = plan.layers.len() - 1;
            jobs::change(&mut job, Edit::InsertLayer { vessel: filter.clone(), at, layer });
        }
        let (answers, _) = job_answers(&job);
        let surface = answer(&answers, &filter).plan.as_ref().and_then(|plan| bedwright_calc::fill::plan::surface(plan));
        prop_assert!(surface.is_none_or(|surface| surface.value.is_finite()));
        if printed == 0 {
            no_null_number("", &report::report(&job, &Manner::default(), false));
        }
    }

    /// A text that makes no sense takes away what rests on it and nothing else.
    #[test]
    fn a_bad_entry_takes_away_its_own_answers_only(
        softener in any::<bool>(),
        which in any::<prop::sample::Index>(),
        nonsense in prop::sample::select(&["x", "12 psi", "1/0", "1,234", "--", "1e308", "4 ft 14 in", "99999999999999 ft"][..]),
    ) {
        let mut job = jobs::sample();
        let (bad, good) = if softener { ("softener", "filter") } else { ("filter", "softener") };
        let (bad, good) = (Id::new(bad), Id::new(good));
        let (before, _) = job_answers(&job);
        let fields = asked(job.vessel(&bad).unwrap());
        let field = *which.get(&fields);
        jobs::change(&mut job, Edit::Survey { vessel: bad.clone(), field, entry: Some(jobs::measured(nonsense, Unit::Millimetre)) });
        let (after, bill) = job_answers(&job);
        prop_assert_eq!(answer(&after, &good), answer(&before, &good));
        let hit = answer(&after, &bad);
        prop_assert_eq!(hit.survey.misread.keys().collect::<Vec<_>>(), [&field]);
        prop_assert!(hit.vessel.is_none() && hit.plan.is_none() && hit.riser_cut.is_none());
        prop_assert!(hit.layers.iter().all(|layer| layer.outcome == LayerOutcome::Waits));
        prop_assert_eq!(&bill.left_out, &[bad]);
        prop_assert_eq!(&bill.vessels, &[good]);
        // The others that were typed are still understood, for the echo beside their fields.
        let understood = answer(&before, &hit.id).survey.understood.keys().filter(|there| **there != field).count();
        prop_assert_eq!(hit.survey.understood.len(), understood);
    }

    /// Of layers: those below keep their answers, the bad one says why, those above wait, and nothing is said of the whole.
    #[test]
    fn a_bad_layer_keeps_those_below_and_stops_those_above(
        at in 0_usize..2,
        nonsense in prop::sample::select(&["x", "12 psi", "1/0", "", "1,234", "9999999999999999"][..]),
        density in any::<bool>(),
    ) {
        let mut job = jobs::sample();
        let filter = Id::new("filter");
        let (before, _) = job_answers(&job);
        let layer = job.plan_of(&filter).layers[at].id.clone();
        let field = if density && !nonsense.is_empty() { LayerField::BulkDensity } else { LayerField::Amount };
        let entry = Some(jobs::entry(nonsense, if density { Unit::PoundPerCubicFoot } else { Unit::Inch }));
        jobs::change(&mut job, Edit::LayerEntry { vessel: filter.clone(), layer, field, entry });
        let (after, bill) = job_answers(&job);
        let (was, is) = (answer(&before, &filter), answer(&after, &filter));
        prop_assert_eq!(&is.vessel, &was.vessel);
        prop_assert_eq!(&is.layers[..at], &was.layers[..at]);
        prop_assert!(matches!(is.layers[at].outcome, LayerOutcome::Unread(_)), "{:?}", is.layers[at].outcome);
        prop_assert!(is.layers[at + 1..].iter().all(|layer| layer.outcome == LayerOutcome::Waits));
        let plan = is.plan.as_ref().unwrap();
        prop_assert!(plan.freeboard.is_err() && plan.dry_weight.is_err());
        prop_assert_eq!(&bill.left_out, &[filter]);
        prop_assert_eq!(answer(&after, &Id::new("softener")), answer(&before, &Id::new("softener")));
    }
}

#[test]
fn a_bucket_that_makes_no_sense_stops_the_fill_and_not_the_vessel() {
    let mut job = jobs::sample();
    let filter = Id::new("filter");
    let entry = Some(jobs::entry("a pail", Unit::UsGallon));
    jobs::change(&mut job, Edit::Plan { vessel: filter.clone(), field: PlanField::Bucket, entry });
    let (answers, _) = job_answers(&job);
    let hit = answer(&answers, &filter);
    assert!(hit.bucket.is_some() && hit.vessel.is_some() && hit.plan.is_none());
    assert!(hit.layers.iter().all(|layer| layer.outcome == LayerOutcome::Waits));
}

/// Every problem of a vessel's inside names an entry that this vessel is asked for, so that it can be shown under it.
#[test]
fn a_problem_of_the_inside_stands_under_an_entry_that_is_asked_for() {
    let table: [(SurveyField, &str); 9] = [
        (SurveyField::Circumference, "0"),
        (SurveyField::Wall, "7"),
        (SurveyField::InsideDepth, "5"),
        (SurveyField::NeckHeight, "-1"),
        (SurveyField::ClearBore, "13"),
        (SurveyField::RiserOutsideDiameter, "3"),
        (SurveyField::RiserSeat, "60"),
        (SurveyField::RiserAllowance, "-60"),
        (SurveyField::CollectorTop, "0"),
    ];
    for (field, text) in table {
        let mut job = jobs::sample();
        let filter = Id::new("filter");
        jobs::change(
            &mut job,
            Edit::Survey { vessel: filter.clone(), field, entry: Some(jobs::measured(text, Unit::Inch)) },
        );
        let (answers, _) = job_answers(&job);
        let hit = answer(&answers, &filter);
        let found: Vec<(&SurveyField, &Problem)> = hit.problems.iter().collect();
        assert_eq!(found.iter().map(|(field, _)| **field).collect::<Vec<_>>(), [field], "{text}: {found:?}");
        assert_eq!(hit.problem, None);
    }
}

/// What is typed of the water after the vessel is judged reading by reading; a mistake stands under its own entry.
#[test]
fn the_feed_of_a_membrane_is_read_in_the_units_it_is_measured_in() {
    use bedwright_calc::quantity::{Mark, Subject, Term};
    use bedwright_job::answers::vessel_answers;
    use bedwright_job::answers::water::{WaterAnswers, WaterAsked, water_answers};
    use bedwright_job::edit::WaterOf;
    use bedwright_job::field::WaterField;
    use bedwright_job::reading::site::water_field_of;

    let filter = Id::new("filter");
    let of = |typed: &[(WaterField, &str, Unit)]| -> WaterAnswers {
        let mut job = jobs::sample();
        for (field, text, unit) in typed {
            let entry = Some(jobs::measured(text, *unit));
            jobs::change(&mut job, Edit::Water { of: WaterOf::Vessel(filter.clone()), field: *field, entry });
        }
        let vessel = vessel_answers(job.vessel(&filter).unwrap(), &job.plan_of(&filter));
        water_answers(&vessel, &WaterAsked::of(&job, &filter))
    };
    let marks = |answers: &WaterAnswers| -> Vec<(Term, Mark)> {
        let feed = answers.verdicts.iter().filter_map(|verdict| match verdict.subject {
            Subject::Feed { quantity } => Some((quantity, verdict.mark)),
            _ => None,
        });
        feed.collect()
    };
    let milligrams = Unit::MilligramPerLitre;
    let found = of(&[
        (WaterField::FeedFreeChlorine, "0.02", milligrams),
        (WaterField::FeedTotalChlorine, "0.4", milligrams),
        // 12 grains a gallon are 205 mg/L as calcium carbonate.
        (WaterField::FeedHardness, "12", Unit::GrainPerGallon),
        (WaterField::FeedIron, "20 ug/L", milligrams),
        (WaterField::SiltDensityIndex, "4", Unit::One),
    ]);
    assert_eq!(found.problems, []);
    let wanted = [
        (Term::TotalChlorine, Mark::Stop),
        (Term::Hardness, Mark::Caution),
        (Term::SiltDensityIndex, Mark::Caution),
        (Term::FreeChlorine, Mark::Fine),
        (Term::Iron, Mark::Fine),
    ];
    assert_eq!(marks(&found), wanted);
    // Free chlorine above all of it: under the entry of the total, and the rest of the water side waits for it.
    let wrong =
        of(&[(WaterField::FeedFreeChlorine, "1", milligrams), (WaterField::FeedTotalChlorine, "0.5", milligrams)]);
    let problem = wrong.problems.first().unwrap();
    let field = water_field_of(problem.term, &filter, None);
    assert_eq!(field, Some((WaterOf::Vessel(filter.clone()), WaterField::FeedTotalChlorine)));
    let said = Manner::default().problem(problem);
    assert_eq!(said, "Total chlorine must be more than the free chlorine, 1 mg/L; it is 0.5 mg/L.");
}
