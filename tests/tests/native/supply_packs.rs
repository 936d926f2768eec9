//! Packs, cutting and pallets: what must hold for any of them, and the changeout that a warehouse would hold us to.

use std::sync::Arc;

use bedwright_calc::fill::Role;
use bedwright_calc::quantity::{Fault, Length, Term, kilograms, metres};
use bedwright_calc::supply::cutting::{Stock, cut_plan};
use bedwright_calc::supply::packs::{Chosen, Content, Need, Offer, Packing, cheapest_packs};
use bedwright_calc::supply::pallets::{Load, PalletLimits, pallets};
use bedwright_calc::supply::{JobKind, Money};
use bedwright_job::Job;
use bedwright_job::answers::{JobBill, job_answers};
use bedwright_job::edit::{Choice, Edit, apply};
use bedwright_job::entry::{Entry, Unit};
use bedwright_job::field::SurveyField;
use bedwright_job::id::Id;
use bedwright_job::papers::{on_pallets, staged};
use bedwright_job::prices::{PriceKind, PriceRow, amount};
use bedwright_job::sections::plan::{LayerPlan, TargetKind, VesselPlan};
use bedwright_job::sections::supply::SupplyEdit;
use bedwright_job::sections::survey::{DiameterWay, Standing, SurveyEntry, VesselSurvey};
use bedwright_job::words::Manner;
use proptest::prelude::*;

use crate::properties::cases;

/// Half a cubic foot, in billionths of a litre: 28 316 846 592 / 2.
const HALF_CUBIC_FOOT: Content = Content::new(14_158_423_296);

const GRAVEL: &str = "gravel_1_8x1_4";
const CARBON: &str = "carbon_coconut_12x40";

fn entry(text: &str, unit: Unit) -> Entry {
    Entry { text: text.to_owned(), unit, meaning: None }
}

/// Ten identical vessels of 12 × 52: 2 cu ft of carbon on 0.15 cu ft of gravel each.
fn changeout() -> Job {
    let mut job = Job::new(Id::new("changeout"), "2026-11-26");
    let vessel = Id::new("v");
    let survey = VesselSurvey::new(vessel.clone());
    let mut edits = vec![
        Edit::Kind(JobKind::Changeout),
        Edit::InsertVessel { at: 0, vessel: Arc::new(survey), plan: Arc::new(VesselPlan::default()) },
        Edit::Tags { vessel: vessel.clone(), tags: (1..=10).map(|tag| format!("CF-{tag}")).collect() },
        Edit::Choose { vessel: vessel.clone(), choice: Choice::Diameter(DiameterWay::Measured) },
    ];
    for (field, text) in [
        (SurveyField::NominalSize, "12x52"),
        (SurveyField::InsideDiameter, "11.75"),
        (SurveyField::InsideDepth, "51"),
        (SurveyField::NeckHeight, "1"),
        (SurveyField::RiserOutsideDiameter, "1.05"),
        (SurveyField::RiserSeat, "0"),
    ] {
        let entry = SurveyEntry { entry: entry(text, field.usual_unit(false)), standing: Standing::Measured };
        edits.push(Edit::Survey { vessel: vessel.clone(), field, entry: Some(entry) });
    }
    for (at, material, role, amount) in [(0, GRAVEL, Role::Underbed, "0.15"), (1, CARBON, Role::Media, "2")] {
        let mut layer = LayerPlan::new(Id::new(&format!("l-{at}")), material, role);
        layer.target = TargetKind::Volume;
        layer.amount = Some(entry(amount, Unit::CubicFoot));
        edits.push(Edit::InsertLayer { vessel: vessel.clone(), at, layer });
    }
    for edit in edits {
        change(&mut job, edit);
    }
    job
}

fn change(job: &mut Job, edit: Edit) {
    let shown = format!("{edit:?}");
    assert!(apply(job, edit, &Id::new("bench")).is_ok(), "{shown}");
}

fn cost(job: &mut Job, material: &str, pack: &str, text: &str) {
    let mut row = PriceRow::new(&format!("pack:{material}:{material}.{pack}"), PriceKind::Pack);
    row.cost = amount(text, '.').unwrap();
    change(job, Edit::Price { key: row.key.clone(), row: Some(Arc::new(row)) });
}

fn quantities(bill: &JobBill, material: &str) -> Vec<(String, u32)> {
    let key = format!("pack:{material}:{material}.");
    let lines = bill
        .bill
        .pooled
        .iter()
        .filter_map(|line| Some((line.item.key().strip_prefix(&key)?.to_owned(), line.quantity)));
    lines.collect()
}

/// Common practice, no source: 20 bags of carbon; 1.5 cu ft of gravel is three half-cubic-foot bags, against one for
/// every vessel.
#[test]
fn ten_changeouts_take_twenty_bags_and_share_three_of_gravel_instead_of_ten() {
    let (_, bill) = job_answers(&changeout());
    assert_eq!(quantities(&bill, CARBON), [("1_ft3".to_owned(), 20)]);
    assert_eq!(quantities(&bill, GRAVEL), [("half_ft3".to_owned(), 3)]);
    let gravel = bill.bought.iter().find(|bought| bought.material == GRAVEL).unwrap();
    assert_eq!(gravel.packs_each(), Some(10));
    let line = bill.bill.pooled.iter().find(|line| line.item.key().contains(GRAVEL)).unwrap();
    assert_eq!(bill.bill.saved(line), 7);
    let pooled = gravel.pooled.as_ref().unwrap();
    assert_eq!((pooled.left_over.less(Content::new(1_000)), pooled.short_by), (Content::new(0), Content::new(0)));
}

#[test]
fn every_vessel_gets_whole_packs_of_its_own_where_that_is_asked() {
    let mut job = changeout();
    change(&mut job, Edit::Supply(SupplyEdit::PerVessel { material: GRAVEL.to_owned(), yes: true }));
    let (_, bill) = job_answers(&job);
    assert_eq!(quantities(&bill, GRAVEL), [("half_ft3".to_owned(), 10)]);
    change(&mut job, Edit::Supply(SupplyEdit::PerVessel { material: GRAVEL.to_owned(), yes: false }));
    let opened = Some(entry("0.5", Unit::CubicFoot));
    change(&mut job, Edit::Supply(SupplyEdit::Opened { material: GRAVEL.to_owned(), entry: opened }));
    let (_, bill) = job_answers(&job);
    assert_eq!(quantities(&bill, GRAVEL), [("half_ft3".to_owned(), 2)], "half a cubic foot is there already");
}

/// 20 cu ft are 566.337 L, as bags of 1 cu ft (28.317 L) at 38.50 or of 25 L at 33.00. All of one kind: 20 · 38.50 =
/// 770.00, or 23 · 33.00 = 759.00. Mixed: 17 · 25 L + 5 · 28.317 L = 566.584 L for 17 · 33.00 + 5 · 38.50 = 753.50.
#[test]
fn where_costs_are_known_the_cheapest_packs_are_on_the_bill() {
    let material = "resin_cation";
    let mut job = changeout();
    let vessel = Id::new("v");
    let choice = bedwright_job::edit::LayerChoice::Material(material.to_owned());
    change(&mut job, Edit::Layer { vessel, layer: Id::new("l-1"), choice });
    cost(&mut job, material, "1_ft3", "38.50");
    let (_, bill) = job_answers(&job);
    assert_eq!(quantities(&bill, material), [("1_ft3".to_owned(), 20)]);
    cost(&mut job, material, "25_l", "33.00");
    let (_, bill) = job_answers(&job);
    assert_eq!(quantities(&bill, material), [("1_ft3".to_owned(), 5), ("25_l".to_owned(), 17)]);
    let bought = bill.bought.iter().find(|bought| bought.material == material).unwrap();
    let pooled = bought.pooled.as_ref().unwrap();
    assert_eq!(pooled.cost.map(|cost| cost.value().to_string()).as_deref(), Some("753.50"));
    assert_eq!(pooled.chosen, Chosen::LeastCost);
    // A cost that isn't known is no cost of nought: what is left over decides, and it says so.
    cost(&mut job, material, "1_ft3", "");
    let (_, bill) = job_answers(&job);
    let bought = bill.bought.iter().find(|bought| bought.material == material).unwrap();
    assert_eq!(bought.pooled.as_ref().unwrap().chosen, Chosen::LeastLeftOver { unpriced: 1 });
}

#[test]
fn every_pack_is_staged_once_and_stands_on_one_pallet() {
    let mut job = changeout();
    change(
        &mut job,
        Edit::Supply(SupplyEdit::Entry {
            field: bedwright_job::field::SupplyField::PalletMass,
            entry: Some(entry("300", Unit::Pound)),
        }),
    );
    let (_, bill) = job_answers(&job);
    let staged = staged(&job, &bill, Manner::default());
    for line in &bill.bill.pooled {
        let key = line.item.key();
        let count: u32 = staged.iter().filter(|staged| staged.key == key).map(|staged| staged.count).sum();
        if line.needed.is_some() {
            assert_eq!(count, line.quantity, "{key}");
        }
    }
    let pallets = on_pallets(&job, &staged).unwrap();
    assert!(pallets.len() > 1);
    let on: u32 = pallets.iter().flat_map(|pallet| &pallet.loads).map(|(_, packs)| *packs).sum();
    assert_eq!(on, 23);
}

fn money(cents: u32) -> Option<Money> {
    amount(&format!("{}.{:02}", cents / 100, cents % 100), '.').unwrap()
}

fn offers() -> impl Strategy<Value = Vec<Offer>> {
    prop::collection::vec((1_u64..400, 1_u32..100_000), 1..6).prop_map(|sizes| {
        sizes
            .into_iter()
            .map(|(size, cents)| Offer { content: Content::new(size * 25), price: money(cents), locked: None })
            .collect()
    })
}

fn pack(need: u64, minimum: bool, offers: &[Offer]) -> Packing {
    cheapest_packs(&Need { content: Content::new(need), minimum, ..Need::default() }, offers).unwrap()
}

fn held(packing: &Packing, offers: &[Offer]) -> Content {
    offers
        .iter()
        .zip(&packing.counts)
        .fold(Content::new(0), |sum, (offer, count)| sum.plus(offer.content.times(*count)))
}

proptest! {
    #![proptest_config(cases(2_000))]

    #[test]
    fn packs_cover_the_need_or_fall_short_by_a_tenth_of_the_smallest(need in 1_u64..200_000, minimum: bool, offers in offers()) {
        let packing = pack(need, minimum, &offers);
        let (held, wanted) = (held(&packing, &offers), Content::new(need));
        prop_assert_eq!(held.less(wanted), packing.left_over);
        prop_assert_eq!(wanted.less(held), packing.short_by);
        let smallest = offers.iter().map(|offer| offer.content).min().unwrap();
        prop_assert!(packing.short_by.times(10) <= smallest);
        prop_assert!(!minimum || packing.short_by == Content::new(0));
    }

    #[test]
    fn a_larger_need_never_costs_less_and_one_more_offer_never_more(
        need in 1_u64..100_000,
        more in 0_u64..20_000,
        offers in offers(),
    ) {
        let (small, large) = (pack(need, true, &offers), pack(need + more, true, &offers));
        prop_assert!(small.cost <= large.cost);
        let fewer = &offers[..offers.len().max(2) - 1];
        prop_assert!(pack(need, true, &offers).cost <= pack(need, true, fewer).cost);
    }

    #[test]
    fn neither_the_order_of_offers_nor_the_measure_changes_the_cost(need in 1_u64..50_000, offers in offers(), by in 1_u64..7) {
        let packing = pack(need, true, &offers);
        let reversed: Vec<Offer> = offers.iter().rev().copied().collect();
        let other = pack(need, true, &reversed);
        prop_assert_eq!((packing.cost, packing.left_over, packing.packs()), (other.cost, other.left_over, other.packs()));
        let times = u32::try_from(by).unwrap();
        let finer: Vec<Offer> = offers.iter().map(|offer| Offer { content: offer.content.times(times), ..*offer }).collect();
        prop_assert_eq!(pack(need * by, true, &finer).cost, packing.cost);
    }

    #[test]
    fn sharing_never_costs_more_than_each_on_its_own(needs in prop::collection::vec(1_u64..20_000, 1..8), offers in offers()) {
        let together = pack(needs.iter().sum(), true, &offers);
        let mut sum = Money::default();
        for need in needs {
            sum = sum.plus(pack(need, true, &offers).cost.unwrap()).unwrap();
        }
        prop_assert!(together.cost.unwrap() <= sum);
    }

    #[test]
    fn whatever_is_offered_there_is_an_answer_or_a_problem(
        need in any::<u64>(),
        opened in any::<u64>(),
        sizes in prop::collection::vec((any::<u64>(), prop::option::of(any::<u32>()), prop::option::of(any::<u32>())), 0..4),
    ) {
        let offers: Vec<Offer> = sizes
            .into_iter()
            .map(|(content, cents, locked)| Offer { content: Content::new(content), price: cents.and_then(money), locked })
            .collect();
        let need = Need { content: Content::new(need), opened: Content::new(opened), minimum: false };
        if let Err(problem) = cheapest_packs(&need, &offers) {
            let named = [Term::PackVolume, Term::Packs, Term::Price];
            prop_assert!(named.contains(&problem.term), "{:?}", problem);
        }
    }

    #[test]
    fn every_piece_is_cut_once_from_a_length_that_holds_it(
        stock in 1_000_u32..8_000,
        kerf in 0_u32..20,
        shares in prop::collection::vec(0.05..1.0_f64, 0..40),
    ) {
        let mm = |mm: f64| metres(mm / 1000.0);
        let pieces: Vec<Length> = shares.iter().map(|share| mm((share * f64::from(stock)).ceil())).collect();
        let of = Stock { length: mm(f64::from(stock)), kerf: mm(f64::from(kerf)) };
        let plan = cut_plan(&of, &pieces).unwrap();
        let mut seen = vec![0_u32; pieces.len()];
        for length in &plan.lengths {
            let long: f64 = length.pieces.iter().map(|piece| pieces[*piece].value).sum();
            prop_assert!(long + (length.pieces.len() as f64 - 1.0) * of.kerf.value <= of.length.value + 1e-9);
            length.pieces.iter().for_each(|piece| seen[*piece] += 1);
        }
        prop_assert!(seen.iter().all(|times| *times == 1));
        prop_assert!(plan.at_least as usize <= plan.lengths.len());
        if pieces.len() <= 12 {
            prop_assert!(plan.is_least());
        }
    }

    #[test]
    fn every_load_stands_on_one_pallet_within_its_limits(
        loads in prop::collection::vec((0_u32..60, 1.0..60.0_f64), 0..12),
        mass in 60.0..1_500.0_f64,
        most in 1_u32..80,
    ) {
        let loads: Vec<Load> = loads.into_iter().map(|(packs, each)| Load { packs, each: Some(kilograms(each)) }).collect();
        let on = pallets(&PalletLimits { mass: Some(kilograms(mass)), packs: Some(most) }, &loads).unwrap();
        for (place, load) in loads.iter().enumerate() {
            let there: u32 = on.iter().flat_map(|pallet| &pallet.loads).filter(|(at, _)| *at == place).map(|(_, packs)| packs).sum();
            prop_assert_eq!(there, load.packs);
        }
        for pallet in &on {
            prop_assert!(pallet.mass_known.value <= mass + 1e-6);
            prop_assert!(pallet.loads.iter().map(|(_, packs)| packs).sum::<u32>() <= most);
        }
    }
}

#[test]
fn half_a_cubic_foot_is_whole_and_a_need_of_nothing_takes_nothing() {
    let offer = Offer { content: HALF_CUBIC_FOOT, price: money(1_234), locked: None };
    let packing = cheapest_packs(&Need::default(), &[offer]).unwrap();
    assert_eq!((packing.packs(), packing.chosen), (0, Chosen::NothingToBuy));
    let problem = cheapest_packs(&Need { content: HALF_CUBIC_FOOT, ..Need::default() }, &[]).unwrap_err();
    assert_eq!((problem.term, problem.fault), (Term::PackVolume, Fault::Missing));
}
