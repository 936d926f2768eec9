//! Parts by rule: what stands on a bill for which vessel, purpose and kind of job, and what a person leaves out.

use bedwright_calc::hydraulics::{Purpose, Regime};
use bedwright_calc::supply::{Fitting, Item, JobKind};
use bedwright_calc::vessel::Opening;
use bedwright_job::Job;
use bedwright_job::answers::{JobBill, job_answers};
use bedwright_job::edit::{Choice, DutyChoice, Edit};
use bedwright_job::entry::{Entry, Unit};
use bedwright_job::field::{KitField, SurveyField};
use bedwright_job::id::Id;
use bedwright_job::papers::{bill_of_materials, pick_rows};
use bedwright_job::prices::price_key;
use bedwright_job::sections::plan::{LayerPlan, TargetKind};
use bedwright_job::words::Manner;
use proptest::prelude::*;

use crate::{cases, jobs};

fn bill(job: &Job) -> JobBill {
    job_answers(job).1
}

/// The parts of the pooled bill, by id, with how many.
fn parts(job: &Job) -> Vec<(&'static str, u32)> {
    let lines = bill(job).bill.pooled.into_iter();
    lines
        .filter_map(|line| match line.item {
            Item::Part { fitting, .. } => Some((fitting.id(), line.quantity)),
            Item::Pack { .. } => None,
        })
        .collect()
}

/// A job of this kind with one planned vessel of so many tags, opened and used this way.
fn job(kind: JobKind, tags: usize, opening: Opening, regime: Regime, purpose: Purpose) -> Job {
    let mut job = Job::new(Id::new("kit"), "2026-11-26");
    jobs::change(&mut job, Edit::Kind(kind));
    let vessel = jobs::add_vessel(&mut job, "v");
    jobs::change(&mut job, Edit::Tags { vessel: vessel.clone(), tags: (0..tags).map(|n| format!("T-{n}")).collect() });
    jobs::change(&mut job, Edit::Choose { vessel: vessel.clone(), choice: Choice::Opening(opening) });
    let riser = opening != Opening::TopAndBottom;
    jobs::change(&mut job, Edit::Choose { vessel: vessel.clone(), choice: Choice::Riser(riser) });
    for (field, text) in [
        (SurveyField::NominalSize, "12x52"),
        (SurveyField::InsideDepth, "51"),
        (SurveyField::RiserSeat, "0"),
        (SurveyField::ClearBore, "2.5"),
    ] {
        let entry = Some(jobs::measured(text, Unit::Inch));
        jobs::change(&mut job, Edit::Survey { vessel: vessel.clone(), field, entry });
    }
    for choice in [DutyChoice::Regime(regime), DutyChoice::Purpose(Some(purpose))] {
        jobs::change(&mut job, Edit::Duty { vessel: vessel.clone(), choice });
    }
    for (id, material, amount) in [("g", "gravel_1_8x1_4", "0.15"), ("c", "carbon_coconut_12x40", "2")] {
        let role = if id == "g" { bedwright_calc::fill::Role::Underbed } else { bedwright_calc::fill::Role::Media };
        let mut layer = LayerPlan::new(Id::new(id), material, role);
        layer.target = TargetKind::Volume;
        layer.amount = Some(jobs::entry(amount, Unit::CubicFoot));
        jobs::add_layer(&mut job, &vessel, layer);
    }
    job
}

fn usual(kind: JobKind) -> Job {
    job(kind, 1, Opening::TopOnly, Regime::Backwashed, Purpose::Dechlorination)
}

/// The rules as the trade states them: common practice, no source.
#[test]
fn parts_are_there_by_kind_of_job_opening_regime_and_purpose() {
    use JobKind::{Changeout, New, Partial, TopUp};
    let has = |job: &Job, part: &str| parts(job).iter().any(|(id, _)| *id == part);
    // part, then in which kinds of job it is for the usual vessel.
    for (part, kinds) in [
        ("pressure_vessel", &[New][..]),
        ("control_valve", &[New]),
        ("bypass", &[New]),
        ("drain_line_flow_control", &[New]),
        ("air_gap_fitting", &[New]),
        ("vacuum_breaker", &[New]),
        ("jacket", &[New]),
        ("sample_tap", &[New]),
        ("pressure_gauge", &[New]),
        ("riser_cap", &[New, Changeout]),
        ("opening_o_ring", &[New, Changeout]),
        ("loading_funnel", &[New, Changeout, Partial, TopUp]),
        ("protective_equipment", &[New, Changeout, Partial, TopUp]),
        ("disinfectant", &[New, Changeout, Partial]),
        ("spent_media_drum", &[Changeout, Partial]),
        ("waste_determination", &[Changeout, Partial]),
        ("temporary_water", &[Changeout, Partial]),
        ("tag_label", &[New, Changeout, Partial, TopUp]),
        ("brine_tank", &[]),
        ("pre_filter", &[]),
        ("plain_head", &[]),
        ("face_piping", &[]),
        ("bottom_o_ring", &[]),
        ("flange_gasket", &[]),
        ("manway_gasket", &[]),
    ] {
        for kind in [New, Changeout, Partial, TopUp] {
            assert_eq!(has(&usual(kind), part), kinds.contains(&kind), "{part} {kind:?}");
        }
    }
    let of = |opening, regime, purpose| job(New, 1, opening, regime, purpose);
    let softener = of(Opening::TopOnly, Regime::Backwashed, Purpose::Softening);
    assert!(has(&softener, "brine_tank") && has(&softener, "first_salt"));
    let upflow = of(Opening::TopOnly, Regime::Upflow, Purpose::Dechlorination);
    assert!(has(&upflow, "pre_filter") && has(&upflow, "plain_head"));
    for part in ["control_valve", "drain_line_flow_control", "air_gap_fitting"] {
        assert!(!has(&upflow, part), "{part}");
    }
    assert!(has(&of(Opening::TopOnly, Regime::AirHead, Purpose::IronManganese), "control_valve"));
    for (opening, there, absent) in [
        (Opening::TopAndBottom, &["bottom_o_ring", "opening_o_ring"][..], &["riser_pipe", "riser_cap"][..]),
        (Opening::SidePorts, &["face_piping"], &["control_valve", "opening_o_ring"]),
        (Opening::Flange, &["face_piping", "flange_gasket"], &["control_valve", "opening_o_ring", "manway_gasket"]),
        (Opening::Manway, &["face_piping", "manway_gasket"], &["control_valve", "opening_o_ring", "flange_gasket"]),
        (Opening::FillPort, &["control_valve", "opening_o_ring"], &["face_piping"]),
    ] {
        let job = of(opening, Regime::Backwashed, Purpose::Dechlorination);
        there.iter().for_each(|part| assert!(has(&job, part), "{opening:?} {part}"));
        absent.iter().for_each(|part| assert!(!has(&job, part), "{opening:?} {part}"));
    }
    let taps = parts(&job(New, 3, Opening::TopOnly, Regime::Backwashed, Purpose::Dechlorination));
    assert!(taps.contains(&("sample_tap", 6)) && taps.contains(&("riser_cap", 1)));
}

/// Common practice, no source: ten vessels of 2 cu ft of carbon and 0.15 cu ft of gravel, bulking 1.2: 25.8 cu ft, four
/// drums of 55 gallons, twenty bags, three half-cubic-foot bags of gravel pooled where ten would be bought alone.
#[test]
fn ten_changeouts_fill_four_drums() {
    let mut job = job(JobKind::Changeout, 10, Opening::TopOnly, Regime::Backwashed, Purpose::Dechlorination);
    let drums = |job: &Job| {
        let line = bill(job).bill.pooled.into_iter().find(|line| line.item.key().contains("spent_media_drum"))?;
        let volume = line.volume.as_ref().unwrap().value.value / 0.028_316_846_592;
        Some((line.quantity, (volume * 10.0).round() / 10.0))
    };
    assert_eq!(drums(&job), Some((4, 25.8)));
    let typed = |text: &str, unit| Some(Entry { text: text.to_owned(), unit, meaning: None });
    let put = |job: &mut Job, field, entry| jobs::change(job, Edit::Kit { field, entry });
    // 21.5 cu ft without any bulking are 160.8 gal: three drums, or nine of 20 gal.
    put(&mut job, KitField::Bulking, typed("1", Unit::One));
    assert_eq!(drums(&job), Some((3, 21.5)));
    put(&mut job, KitField::DrumVolume, typed("20", Unit::UsGallon));
    assert_eq!(drums(&job), Some((9, 21.5)));
    // What can't be read, or can't be, counts no drums and says so.
    put(&mut job, KitField::Bulking, typed("a lot", Unit::One));
    assert_eq!(drums(&job), None);
    assert_eq!(bill(&job).kit.map(|(field, _)| field), Some(KitField::Bulking));
    put(&mut job, KitField::Bulking, typed("0.5", Unit::One));
    assert_eq!(drums(&job), None);
    assert_eq!(bill(&job).bill.vessels[0].problems.len(), 1);
    let packs: Vec<u32> = bill(&job)
        .bill
        .pooled
        .iter()
        .filter(|line| matches!(line.item, Item::Pack { .. }))
        .map(|line| line.quantity)
        .collect();
    assert_eq!(packs, [3, 20]);
}

#[test]
fn every_line_can_be_left_out_with_its_reason_and_taken_in_again() {
    let first = job(JobKind::New, 2, Opening::TopOnly, Regime::Backwashed, Purpose::Softening);
    let lines = bill(&first).bill.pooled;
    assert!(lines.len() > 20);
    for line in &lines {
        let mut job = first.clone();
        let key = price_key(&line.item);
        jobs::change(&mut job, Edit::LeaveOut { key: key.clone(), reason: Some("the customer has one".to_owned()) });
        let without = bill(&job);
        assert!(without.bill.pooled.iter().chain(&without.bill.vessels[0].lines).all(|there| there.item != line.item));
        assert_eq!(without.bill.pooled.len(), lines.len() - 1);
        assert_eq!(without.removed, [(line.clone(), "the customer has one".to_owned())]);
        let manner = Manner::default();
        assert!(pick_rows(&job, &without, manner).iter().all(|row| row.key != line.item.key()));
        let paper = format!("{:?}", bill_of_materials(&job, &without, manner, "2026-11-26").rows);
        assert!(paper.contains("the customer has one"), "{key}");
        jobs::change(&mut job, Edit::LeaveOut { key, reason: None });
        assert_eq!(bill(&job).bill, bill(&first).bill);
    }
}

#[test]
fn every_part_has_a_name_of_its_own() {
    let names: Vec<String> = Fitting::ALL
        .iter()
        .map(|fitting| Manner::default().item(&Item::Part { fitting: *fitting, size: None, cut: None, on_site: false }))
        .collect();
    for (place, name) in names.iter().enumerate() {
        assert!(!names[..place].contains(name), "{name}");
    }
}

proptest! {
    #![proptest_config(cases())]

    #[test]
    fn whatever_is_typed_drums_are_a_number_or_none(bulking in "[0-9.,a-z -]{0,6}", drum in "[0-9.,a-z /-]{0,6}", tags in 1_usize..40) {
        let mut job = job(JobKind::Changeout, tags, Opening::TopOnly, Regime::Backwashed, Purpose::Dechlorination);
        let typed = |text: String, unit| Some(Entry { text, unit, meaning: None });
        jobs::change(&mut job, Edit::Kit { field: KitField::Bulking, entry: typed(bulking, Unit::One) });
        jobs::change(&mut job, Edit::Kit { field: KitField::DrumVolume, entry: typed(drum, Unit::UsGallon) });
        for line in bill(&job).bill.pooled {
            prop_assert!(line.quantity > 0);
            prop_assert!(line.needed.is_none_or(|needed| needed.value.is_finite() && needed.value > 0.0));
        }
    }
}
