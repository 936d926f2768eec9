//! Whether the water that leaves may feed reverse osmosis.

use super::duty::Duty;
use crate::quantity::{
    Amount, Concentration, Fault, Known, Mark, Problem, Reason, Source, Subject, Term, Verdict, problem::between,
};

/// What is measured of it, and how much it may be: a row of `feed.csv`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FeedRule {
    /// Above this it takes care.
    pub target: Option<Amount>,
    /// Above this it hurts the membrane.
    pub limit: Option<Amount>,
    /// What the rule is for.
    pub section: &'static str,
    /// Where it comes from.
    pub source: Source,
}

include!(concat!(env!("OUT_DIR"), "/feed.rs"));

impl FeedQuantity {
    /// Its rule.
    #[must_use]
    pub fn rule(self) -> Option<&'static FeedRule> {
        FEED_RULES.get(self as usize)
    }

    /// What a verdict or a problem on it is about.
    #[must_use]
    pub const fn term(self) -> Term {
        match self {
            FeedQuantity::FreeChlorine => Term::FreeChlorine,
            FeedQuantity::TotalChlorine => Term::TotalChlorine,
            FeedQuantity::Hardness => Term::Hardness,
            FeedQuantity::Iron => Term::Iron,
            FeedQuantity::SiltDensityIndex => Term::SiltDensityIndex,
        }
    }
}

/// Concentrations, kg/m³, and indices: from none to far beyond any water.
const MOST: f64 = 1000.0;

/// Refuses what no water holds, and free chlorine above all of it.
pub(super) fn sound(duty: &Duty) -> Result<(), Problem> {
    for (quantity, reading) in &duty.feed {
        let amount: fn(f64) -> Amount = match reading.value {
            Amount::Concentration(_) => |x| Concentration::kilograms_per_cubic_metre(x).into(),
            _ => |x| x.into(),
        };
        between(quantity.term(), reading.value.si(), (0.0, MOST), amount)?;
    }
    let read = |wanted: FeedQuantity| {
        duty.feed.iter().find(|(quantity, _)| *quantity == wanted).map(|(_, reading)| reading.value)
    };
    if let (Some(free), Some(total)) = (read(FeedQuantity::FreeChlorine), read(FeedQuantity::TotalChlorine))
        && free.si() > total.si()
    {
        let fault = Fault::NotAbove { value: total, other: Term::FreeChlorine, limit: free };
        return Err(Problem::new(Term::TotalChlorine, fault));
    }
    Ok(())
}

/// Judges each reading: *stop* above the limit, *caution* above the target.
pub(super) fn verdicts(duty: &Duty) -> impl Iterator<Item = Verdict> {
    duty.feed.iter().filter_map(|(quantity, reading)| judged(*quantity, reading))
}

fn judged(quantity: FeedQuantity, reading: &Known<Amount>) -> Option<Verdict> {
    let rule = quantity.rule()?;
    let over = |most: Option<Amount>| most.is_some_and(|most| reading.value.si() > most.si());
    let (mark, limit) = if over(rule.limit) {
        (Mark::Stop, rule.limit)
    } else if over(rule.target) {
        (Mark::Caution, rule.target)
    } else {
        (Mark::Fine, rule.target.or(rule.limit))
    };
    Some(Verdict {
        subject: Subject::Feed { quantity: quantity.term() },
        mark,
        reason: Reason::AtMost { value: reading.value, limit: limit? },
        remedies: Vec::new(),
        basis: reading.basis,
        source: rule.source,
    })
}
