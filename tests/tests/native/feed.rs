//! Whether water may feed reverse osmosis: common practice and memory, as the rules say of themselves.

use bedwright_calc::hydraulics::{Bed, Duty, FeedQuantity, Purpose, Site, service};
use bedwright_calc::quantity::{
    Amount, Concentration, Fault, Known, Mark, Problem, Reason, Standing, Subject, Term, Verdict,
};
use bedwright_calc::vessel::Vessel;
use bedwright_tests::beds::celsius;
use bedwright_tests::fills::twelve_by_fifty_two;
use bedwright_tests::packings::one_metre;

fn mg(value: f64) -> Amount {
    Concentration::milligrams_per_litre(value).into()
}

fn judged(feed: &[(FeedQuantity, Amount)]) -> Result<Vec<Verdict>, Problem> {
    let vessel = Vessel::new(twelve_by_fifty_two()).unwrap();
    let bed: Bed = one_metre(0.0006, 0.8, 0.42);
    let steady = celsius(12.0);
    let site = Site { temperature_low: steady, temperature_high: steady, backwash_available: None, pressure: None };
    let feed = feed.iter().map(|(of, value)| (*of, Known::measured(*value))).collect();
    let found = service(&vessel, &bed, &site, &Duty { feed, ..Duty::new(Purpose::Dechlorination) })?;
    Ok(found.verdicts.into_iter().filter(|verdict| matches!(verdict.subject, Subject::Feed { .. })).collect())
}

fn mark(of: FeedQuantity, value: Amount) -> Mark {
    let verdicts = judged(&[(of, value)]).unwrap();
    assert_eq!(verdicts.len(), 1);
    assert_eq!(verdicts[0].subject, Subject::Feed { quantity: of.term() });
    assert!(matches!(verdicts[0].reason, Reason::AtMost { .. }));
    assert!(matches!(verdicts[0].source.standing(), Standing::Practice | Standing::Memory));
    verdicts[0].mark
}

#[test]
fn every_reading_is_judged_by_a_rule_of_its_own() {
    use FeedQuantity as Of;
    for (of, value, wanted) in [
        (Of::FreeChlorine, mg(0.0), Mark::Fine),
        (Of::FreeChlorine, mg(0.1), Mark::Fine),
        (Of::FreeChlorine, mg(0.11), Mark::Stop),
        (Of::TotalChlorine, mg(0.1), Mark::Fine),
        (Of::TotalChlorine, mg(2.0), Mark::Stop),
        (Of::Hardness, mg(17.0), Mark::Fine),
        (Of::Hardness, mg(300.0), Mark::Caution),
        (Of::Iron, mg(0.04), Mark::Fine),
        (Of::Iron, mg(0.07), Mark::Caution),
        (Of::Iron, mg(0.3), Mark::Stop),
        (Of::SiltDensityIndex, Amount::Ratio(2.9), Mark::Fine),
        (Of::SiltDensityIndex, Amount::Ratio(4.0), Mark::Caution),
        (Of::SiltDensityIndex, Amount::Ratio(5.1), Mark::Stop),
    ] {
        assert_eq!(mark(of, value), wanted, "{of:?} {value:?}");
    }
    assert_eq!(judged(&[]).unwrap(), []);
}

#[test]
fn free_chlorine_is_never_more_than_all_of_it() {
    let readings = |free: f64, total: f64| {
        judged(&[(FeedQuantity::FreeChlorine, mg(free)), (FeedQuantity::TotalChlorine, mg(total))])
    };
    assert_eq!(readings(0.05, 0.05).unwrap().len(), 2);
    let problem = readings(0.2, 0.1).unwrap_err();
    assert_eq!(problem.term, Term::TotalChlorine);
    assert!(matches!(problem.fault, Fault::NotAbove { other: Term::FreeChlorine, .. }));
}

#[test]
fn what_no_water_holds_is_refused_by_name() {
    for &of in FeedQuantity::ALL {
        for x in [f64::NAN, f64::INFINITY, -1.0, 1e9] {
            let value = if of == FeedQuantity::SiltDensityIndex { Amount::Ratio(x) } else { mg(x) };
            let problem = judged(&[(of, value)]).unwrap_err();
            assert_eq!(problem.term, of.term(), "{x}");
        }
    }
}
