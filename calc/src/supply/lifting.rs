//! What one person may lift: the revised NIOSH equation.

use crate::quantity::problem::{between, positive};
use crate::quantity::{
    Amount, Fault, Figure, Formula, Input, Known, Length, Mass, Problem, Source, Term, kilograms, metres,
};

/// The load constant, kg: what nobody should lift alone even where everything else is ideal.
pub const LOAD_CONSTANT_KG: f64 = 23.0;

/// How well the hands hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Grip {
    /// Handles, or a box that the fingers reach under.
    Good,
    /// The fingers bend to a right angle under it.
    Fair,
    /// A sack that sags in the middle, edges that can't be held.
    Poor,
}

impl Grip {
    /// All of them.
    pub const ALL: &'static [Grip] = &[Grip::Good, Grip::Fair, Grip::Poor];

    /// The permanent id.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Grip::Good => "good",
            Grip::Fair => "fair",
            Grip::Poor => "poor",
        }
    }

    /// The one with this id.
    #[must_use]
    pub fn of(id: &str) -> Option<Grip> {
        Grip::ALL.iter().copied().find(|grip| grip.id() == id)
    }
}

/// How something is lifted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lift {
    /// From between the ankles out to the middle of the hands, level.
    pub reach: Known<Length>,
    /// Height of the hands above the floor where the lift begins.
    pub height: Known<Length>,
    /// How far up or down the hands travel.
    pub travel: Known<Length>,
    /// How far the load lies to the side of straight ahead, degrees.
    pub twist_degrees: Known<f64>,
    /// How well the hands hold.
    pub grip: Grip,
}

/// Reach up to which it doesn't count, and beyond which nothing may be lifted, cm.
const REACH_CM: (f64, f64) = (25.0, 63.0);

/// Heights that may be, cm.
const HEIGHT_CM: (f64, f64) = (0.0, 175.0);

/// Travel up to which it doesn't count, and beyond which nothing may be lifted, cm.
const TRAVEL_CM: (f64, f64) = (25.0, 175.0);

/// Twist that may be, degrees.
const TWIST_DEGREES: (f64, f64) = (0.0, 135.0);

/// Height of the hands that is best, cm.
const KNUCKLE_CM: f64 = 75.0;

/// The mass one healthy person may lift like this without the risk rising.
///
/// ```text
/// RWL = 23 kg · 25/H · (1 − 0.003·|V − 75|) · (0.82 + 4.5/D) · (1 − 0.0032·A) · FM · CM
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | H | `reach` | cm; below 25 counts as 25 |
/// | V | `height` | cm |
/// | D | `travel` | cm; below 25 counts as 25 |
/// | A | `twist_degrees` | degrees |
/// | FM | 1: seldom, at most once in five minutes and not for longer than an hour | |
/// | CM | of `grip`: good 1; fair 1, or 0.95 below 75 cm; poor 0.9 | |
///
/// Never more than 23 kg. Reaching further, twisting more, or holding worse never gives more.
///
/// # Validity
/// Two hands, smooth, standing upright on a floor that doesn't slip; not on a ladder. A planning aid.
///
/// # Errors
/// [`Term::LiftReach`], [`Term::LiftHeight`], [`Term::LiftTravel`], [`Term::LiftTwist`] beyond what the equation covers:
/// there nothing should be lifted by hand.
///
/// # Sources
/// T. R. Waters, V. Putz-Anderson, A. Garg: Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110
/// (1994). AM and the grip's factors from memory of it, checked against the worked values of the tests.
///
/// # Example
/// Ideal: 23 kg. At 40 cm reach from 20 cm up by 100 cm, held fairly: 9.86 kg.
/// ```
/// use bedwright_calc::quantity::{Known, metres};
/// use bedwright_calc::supply::lifting::{Grip, Lift, lift_limit};
/// let lift = |reach, height, travel| Lift {
///     reach: Known::typed(metres(reach)), height: Known::typed(metres(height)), travel: Known::typed(metres(travel)),
///     twist_degrees: Known::typed(0.0), grip: Grip::Fair,
/// };
/// assert_eq!(lift_limit(&lift(0.25, 0.75, 0.25)).unwrap().value.value, 23.0);
/// assert!((lift_limit(&lift(0.4, 0.2, 1.0)).unwrap().value.value - 9.864).abs() < 5e-4);
/// ```
pub fn lift_limit(lift: &Lift) -> Result<Figure<Mass>, Problem> {
    let cm = |value: Length| value.value * 100.0;
    let length = |x: f64| Amount::from(metres(x / 100.0));
    positive(Term::LiftReach, lift.reach.value.value, lift.reach.value.into())?;
    let (reach, height, travel, twist) =
        (cm(lift.reach.value), cm(lift.height.value), cm(lift.travel.value), lift.twist_degrees.value);
    between(Term::LiftReach, reach, (0.0, REACH_CM.1), length)?;
    between(Term::LiftHeight, height, HEIGHT_CM, length)?;
    between(Term::LiftTravel, travel, (0.0, TRAVEL_CM.1), length)?;
    between(Term::LiftTwist, twist, TWIST_DEGREES, Amount::Ratio)?;
    let horizontal = REACH_CM.0 / reach.max(REACH_CM.0);
    let vertical = 1.0 - 0.003 * (height - KNUCKLE_CM).abs();
    let distance = if travel <= TRAVEL_CM.0 { 1.0 } else { 0.82 + 4.5 / travel };
    let asymmetry = 1.0 - 0.0032 * twist;
    let grip = match lift.grip {
        Grip::Good => 1.0,
        Grip::Fair if height < KNUCKLE_CM => 0.95,
        Grip::Fair => 1.0,
        Grip::Poor => 0.9,
    };
    let limit = LOAD_CONSTANT_KG * horizontal * vertical * distance * asymmetry * grip;
    let held = Input {
        term: Term::LiftGrip,
        amount: Amount::Ratio(grip),
        basis: lift.twist_degrees.basis,
        source: Source::NioshLifting,
    };
    let inputs = vec![
        lift.reach.input(Term::LiftReach),
        lift.height.input(Term::LiftHeight),
        lift.travel.input(Term::LiftTravel),
        lift.twist_degrees.input(Term::LiftTwist),
        held,
    ];
    Ok(Figure::new(kilograms(limit), Formula::LiftLimit, inputs))
}

/// How many times what one person may lift a load is. Above 1 the risk rises: two people, a lifting aid, or less in a
/// pack.
///
/// # Errors
/// [`Term::PackMass`] that isn't more than zero; [`Term::LiftLimit`] where nothing may be lifted.
///
/// # Sources
/// NIOSH 94-110 (1994): LI = load / RWL.
///
/// # Example
/// A sack of 25 kg where 9.864 kg may be lifted: 2.53.
/// ```
/// use bedwright_calc::quantity::{Known, kilograms};
/// use bedwright_calc::supply::lifting::lifting_index;
/// let index = lifting_index(&Known::typed(kilograms(25.0)), &Known::typed(kilograms(9.864))).unwrap();
/// assert!((index.value - 2.53).abs() < 5e-3);
/// ```
pub fn lifting_index(load: &Known<Mass>, limit: &Known<Mass>) -> Result<Figure<f64>, Problem> {
    positive(Term::PackMass, load.value.value, load.value.into())?;
    positive(Term::LiftLimit, limit.value.value, limit.value.into())?;
    let index = load.value.value / limit.value.value;
    if !index.is_finite() {
        return Err(Problem::new(Term::LiftLimit, Fault::NotPositive { value: limit.value.into() }));
    }
    Ok(Figure::new(index, Formula::LiftingIndex, vec![load.input(Term::PackMass), limit.input(Term::LiftLimit)]))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)] // Tests say so by panicking.

    use super::{Grip, LOAD_CONSTANT_KG, Lift, lift_limit, lifting_index};
    use crate::quantity::{Known, Mass, Problem, Term, kilograms, metres};

    fn lift(reach: f64, height: f64, travel: f64, twist: f64, grip: Grip) -> Lift {
        let length = |cm: f64| Known::typed(metres(cm / 100.0));
        Lift {
            reach: length(reach),
            height: length(height),
            travel: length(travel),
            twist_degrees: Known::typed(twist),
            grip,
        }
    }

    fn limit(lift: &Lift) -> Result<Mass, Problem> {
        lift_limit(lift).map(|figure| figure.value)
    }

    #[test]
    fn the_worked_values_come_out() {
        // Own calculation with the equation as printed in NIOSH 94-110; three decimals.
        for (case, expected) in [
            (lift(25.0, 75.0, 25.0, 0.0, Grip::Good), 23.0),
            (lift(40.0, 20.0, 100.0, 0.0, Grip::Fair), 9.864),
            (lift(40.0, 20.0, 100.0, 45.0, Grip::Fair), 8.443),
        ] {
            assert!((limit(&case).unwrap().value - expected).abs() < 5e-4, "{case:?}");
        }
        let index = lifting_index(&Known::typed(kilograms(25.0)), &Known::typed(kilograms(9.864))).unwrap();
        assert!((index.value - 2.53).abs() < 5e-3);
    }

    #[test]
    fn nothing_gives_more_than_the_load_constant_and_nothing_worse_gives_more() {
        let grips = [Grip::Good, Grip::Fair, Grip::Poor];
        for reach in [1.0, 25.0, 30.0, 63.0] {
            for height in [0.0, 74.9, 75.0, 175.0] {
                for travel in [0.0, 25.0, 26.0, 175.0] {
                    for twist in [0.0, 45.0, 135.0] {
                        let by = |grip| limit(&lift(reach, height, travel, twist, grip)).unwrap().value;
                        let [good, fair, poor] = grips.map(by);
                        assert!((0.0..=LOAD_CONSTANT_KG).contains(&good) && good >= fair && fair >= poor);
                        let further = limit(&lift(63.0, height, travel, twist, Grip::Good)).unwrap().value;
                        assert!(further <= good + 1e-12);
                    }
                }
            }
        }
    }

    #[test]
    fn beyond_the_equation_there_is_no_answer() {
        for (case, term) in [
            (lift(63.1, 75.0, 25.0, 0.0, Grip::Good), Term::LiftReach),
            (lift(0.0, 75.0, 25.0, 0.0, Grip::Good), Term::LiftReach),
            (lift(25.0, 175.1, 25.0, 0.0, Grip::Good), Term::LiftHeight),
            (lift(25.0, -0.1, 25.0, 0.0, Grip::Good), Term::LiftHeight),
            (lift(25.0, 75.0, 175.1, 0.0, Grip::Good), Term::LiftTravel),
            (lift(25.0, 75.0, 25.0, 135.1, Grip::Good), Term::LiftTwist),
            (lift(f64::NAN, 75.0, 25.0, 0.0, Grip::Good), Term::LiftReach),
            (lift(25.0, 75.0, 25.0, f64::NAN, Grip::Good), Term::LiftTwist),
        ] {
            assert_eq!(limit(&case).unwrap_err().term, term, "{case:?}");
        }
        let load = |kg: f64| Known::typed(kilograms(kg));
        assert_eq!(lifting_index(&load(0.0), &load(9.0)).unwrap_err().term, Term::PackMass);
        assert_eq!(lifting_index(&load(25.0), &load(0.0)).unwrap_err().term, Term::LiftLimit);
    }
}
