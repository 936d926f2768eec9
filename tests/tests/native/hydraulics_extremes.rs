//! Whole plans of whatever can be typed: an answer or a problem that names the quantity, never a panic and never what is
//! no number. `BEDWRIGHT_CASES` asks for more of them.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::sync::atomic::{AtomicUsize, Ordering};

use bedwright_calc::fill::{Layer, Role, Target, plan};
use bedwright_calc::hydraulics::service::{Rates, backwash_rules};
use bedwright_calc::hydraulics::{
    Arrangement, Backwash, Bed, DrainCheck, Duty, End, FeedQuantity, Lines, PaperPoint, Purpose, Regime, Setting, Site,
    backwash, lines, service, window,
};
use bedwright_calc::material::{Grains, Kind, Material, Pack};
use bedwright_calc::quantity::{
    Amount, Caution, Concentration, Fault, Figure, Input, Known, Mark, Problem, Reason, Remedy, Term, Verdict,
    cubic_metres, cubic_metres_per_second, kelvins, kilograms_per_cubic_metre, metres, metres_per_second, pascals,
    seconds,
};
use bedwright_calc::vessel::{DiameterBy, Measures, Vessel};
use bedwright_tests::beds::{celsius, litres_per_minute};
use bedwright_tests::fills::{self, bucket, cubic_feet, inch, twelve_by_fifty_two};
use proptest::prelude::*;

use super::properties::cases;

/// What nobody means, besides a usual value.
const STRANGE: &[f64] = &[
    0.0,
    -0.0,
    -1.0,
    f64::NAN,
    f64::INFINITY,
    f64::NEG_INFINITY,
    1e308,
    -1e308,
    f64::MAX,
    1e30,
    1e-30,
    1e-308,
    5e-324,
];

/// A usual value in `range`, one well outside of it, or a strange one: rarely, or every plan would be refused at its first
/// entry.
fn value(range: std::ops::Range<f64>) -> impl Strategy<Value = f64> {
    let wild = (-6.0..6.0_f64).prop_map(|power| 10_f64.powf(power));
    prop_oneof![100 => range, 1 => wild, 1 => proptest::sample::select(STRANGE)]
}

fn option(range: std::ops::Range<f64>) -> impl Strategy<Value = Option<f64>> {
    proptest::option::weighted(0.9, value(range))
}

/// A layer's numbers: how much, sieves in mm, effective size over the lower sieve, uniformity, density, voidage, sphericity.
type Numbers = (f64, f64, f64, Option<f64>, Option<f64>, Option<f64>, Option<f64>, Option<f64>);

fn numbers() -> impl Strategy<Value = Numbers> {
    (
        value(0.004..0.02),
        value(0.2..1.5),
        prop_oneof![4 => value(1.0..4.0), 1 => Just(1.0)],
        option(1.0..1.8),
        option(1.0..1.8),
        option(1040.0..4500.0),
        option(0.32..0.6),
        option(0.5..1.0),
    )
}

fn layer() -> impl Strategy<Value = (Layer, Grains)> {
    (proptest::sample::select(Material::all().collect::<Vec<_>>()), numbers(), any::<bool>()).prop_map(
        |(material, (volume, low, width, size, uniformity, density, voidage, sphericity), catalogue)| {
            let mm = |x: f64| Known::typed(metres(x / 1000.0));
            let grains = if catalogue {
                material.grains()
            } else {
                Grains {
                    low: mm(low),
                    high: mm(low * width),
                    effective_size: size.map(|size| mm(low * size)),
                    uniformity: uniformity.map(Known::typed),
                    particle_density: density.map(|x| Known::typed(kilograms_per_cubic_metre(x))),
                    voidage: voidage.map(Known::typed),
                    sphericity: sphericity.map(Known::typed),
                }
            };
            let layer = Layer {
                role: if material.kind == Kind::Gravel { Role::Underbed } else { Role::Media },
                bulk_density: material.usual_bulk_density(),
                pack: Pack::of_material(&material.id).remove(0),
                target: Target::Volume(Known::typed(cubic_metres(volume))),
                minimum: false,
                material,
            };
            (layer, grains)
        },
    )
}

/// Everything that is typed about one vessel's water.
#[derive(Clone, Debug)]
struct Typed {
    diameter: f64,
    upper_collector: Option<f64>,
    air: Option<f64>,
    celsius: (f64, f64),
    available: Option<f64>,
    fitted: Option<f64>,
    flows: (Option<f64>, Option<f64>),
    losses: (Option<f64>, Option<f64>),
    minimum: Option<f64>,
    slot: Option<f64>,
    vessels: u32,
    choices: (usize, usize, usize),
    check: Option<(f64, f64, f64, bool)>,
    point: Option<(usize, f64, f64, f64)>,
}

fn typed() -> impl Strategy<Value = Typed> {
    let degrees = || value(-10.0..80.0);
    let usual = prop_oneof![6 => 0.0..60.0_f64, 1 => degrees()];
    let flow = || prop_oneof![20 => value(0.0..60.0), 1 => value(0.0..1e6)];
    let maybe = |chance: f64| (proptest::option::weighted(chance, flow()), proptest::option::weighted(chance, flow()));
    (
        (
            value(0.2..0.5),
            proptest::option::weighted(0.3, value(0.02..0.3)),
            proptest::option::weighted(0.1, value(0.0..0.3)),
        ),
        (usual, value(0.0..15.0)),
        (maybe(0.8), maybe(0.6)),
        (option(0.0..1e5), option(0.0..1e5)),
        proptest::option::weighted(0.5, value(0.0..0.6)),
        proptest::option::weighted(0.4, value(1e-4..1e-3)),
        (0..5_u32, (0..100_usize, 0..4_usize, 0..4_usize)),
        proptest::option::weighted(0.3, (flow(), degrees(), value(0.0..2000.0), any::<bool>())),
        proptest::option::weighted(0.3, (0..3_usize, value(0.0..0.02), degrees(), value(0.0..1.0))),
    )
        .prop_map(
            |(
                (diameter, upper_collector, air),
                (cold, warmer),
                ((available, fitted), flows),
                losses,
                minimum,
                slot,
                (vessels, choices),
                check,
                point,
            )| Typed {
                diameter,
                upper_collector,
                air,
                celsius: (cold, cold + warmer),
                available,
                fitted: fitted.filter(|_| vessels % 2 == 0),
                flows,
                losses,
                minimum,
                slot,
                vessels,
                choices,
                check,
                point,
            },
        )
}

/// Every number of an answer, with what it is; `f64::MAX` stands for washed out in a reason.
#[derive(Default)]
struct Numbered(Vec<(String, f64)>);

impl Numbered {
    fn note(&mut self, what: &str, value: f64) {
        self.0.push((what.to_owned(), value));
    }

    fn figure<Q: Copy + Into<Amount>>(&mut self, what: &str, figure: &Figure<Q>) {
        self.note(what, figure.value.into().si());
        for Input { term, amount, .. } in &figure.inputs {
            self.note(&format!("{what}: input {term:?}"), amount.si());
        }
        for caution in &figure.cautions {
            if let Caution::BeyondFit { value, limit } = caution {
                self.note(what, value.si());
                self.note(what, limit.si());
            }
        }
    }

    fn figures<Q: Copy + Into<Amount>>(&mut self, what: &str, figures: &[Option<Figure<Q>>]) {
        figures.iter().flatten().for_each(|figure| self.figure(what, figure));
    }

    fn end(&mut self, end: &End) {
        for speed in end.wen_yu_minimum.iter().chain(&end.ergun_minimum) {
            self.figure("minimum fluidisation", speed);
        }
        self.figures("lifts from", &end.lifts_from);
        self.figures("stays to", &end.stays_to);
        self.figures("carries from", std::slice::from_ref(&end.carries_from));
    }

    fn setting(&mut self, setting: &Setting) {
        self.note("flow", setting.flow.value.value);
        self.figure("flow per area", &setting.flow_per_area);
        for expansion in [&setting.cold, &setting.warm] {
            for line in [expansion.low, expansion.likely, expansion.high].into_iter().flatten() {
                self.note("expansion", line);
            }
        }
        self.figures("likely", std::slice::from_ref(&setting.likely_cold));
        self.figures("likely", std::slice::from_ref(&setting.likely_warm));
        self.reason(&setting.reason);
    }

    fn reason(&mut self, reason: &Reason) {
        // A reason holds nothing but amounts: what it prints of itself is read for what is no number.
        self.text("reason", &format!("{reason:?}"));
    }

    fn remedy(&mut self, remedy: &Remedy) {
        self.text("remedy", &format!("{remedy:?}"));
    }

    fn text(&mut self, what: &str, said: &str) {
        let strange = said.contains("NaN") || said.contains("inf");
        self.note(&format!("{what} {said}"), if strange { f64::NAN } else { 0.0 });
    }

    fn verdict(&mut self, verdict: &Verdict) {
        self.text("subject", &format!("{:?}", verdict.subject));
        self.reason(&verdict.reason);
        verdict.remedies.iter().for_each(|remedy| self.remedy(remedy));
    }

    fn backwash(&mut self, answer: &Backwash) {
        self.end(&answer.cold);
        self.end(&answer.warm);
        answer.settings.iter().for_each(|setting| self.setting(setting));
        for line in [&answer.lines.low, &answer.lines.likely, &answer.lines.high] {
            self.figure("line", line);
        }
        for (winter, summer) in answer.two.iter() {
            self.note("winter", winter.value);
            self.note("summer", summer.value);
        }
        for sensitivity in &answer.sensitivities {
            self.note("sensitivity", sensitivity.less);
            self.note("sensitivity", sensitivity.more);
            if let Some((less, more)) = sensitivity.over_range {
                self.note("over range", less);
                self.note("over range", more);
            }
        }
        answer.verdicts.iter().for_each(|verdict| self.verdict(verdict));
        assert!(answer.chosen.is_none_or(|at| at < answer.settings.len()));
    }

    fn rates(&mut self, rates: &Rates) {
        self.figure("flow", &rates.flow);
        self.figure("flow per area", &rates.flow_per_area);
        self.figure("contact time", &rates.contact_time);
        self.figures("contact time of a pair", std::slice::from_ref(&rates.contact_time_pair));
        self.figure("bed volumes", &rates.bed_volumes);
        rates.layers.iter().for_each(|loss| self.figure("loss of a layer", loss));
        self.figure("loss", &rates.loss);
    }

    /// The first that is no number.
    fn strange(&self) -> Option<&(String, f64)> {
        self.0.iter().find(|(_, value)| !value.is_finite())
    }
}

/// A fault says what was given, and that may be strange; its limits may not.
fn names_itself(problem: &Problem) -> bool {
    match problem.fault {
        Fault::OutOfRange { low, high, .. } => low.si().is_finite() && high.si().is_finite(),
        Fault::NotBelow { limit, .. } | Fault::NotAbove { limit, .. } => limit.si().is_finite(),
        _ => true,
    }
}

/// What became of all plans: answered, and refused by the bed, the evidence, the backwash, the service and the window.
static COUNTS: [AtomicUsize; 7] = [const { AtomicUsize::new(0) }; 7];
const KINDS: [&str; 7] =
    ["plans", "vessels refused", "beds refused", "evidence refused", "backwashes", "services", "windows"];

fn count(kind: usize) {
    if let Some(counter) = COUNTS.get(kind) {
        counter.fetch_add(1, Ordering::Relaxed);
    }
}

/// Works a plan out as far as it goes; every number that came out, or the problem that ended it.
fn work_out(typed: &Typed, stack: &[(Layer, Grains)]) -> (Numbered, Vec<Problem>) {
    let (mut numbers, mut problems) = (Numbered::default(), Vec::new());
    count(0);
    let metre = |x: f64| Known::typed(metres(x));
    let rate = |x: f64| Known::typed(cubic_metres_per_second(x / 60e3));
    let measures = Measures {
        nominal_diameter: None,
        diameter_by: DiameterBy::Measured { inside: metre(typed.diameter) },
        upper_collector: typed.upper_collector.map(metre),
        ..twelve_by_fifty_two()
    };
    let vessel = match Vessel::new(measures) {
        Ok(vessel) => vessel,
        Err(problem) => {
            count(1);
            return (numbers, vec![problem]);
        }
    };
    let (layers, grains): (Vec<Layer>, Vec<Grains>) = stack.iter().cloned().unzip();
    let filled = plan(&vessel, &layers, &bucket());
    let air = typed.air.map(metre);
    let bed = match Bed::new(&vessel, &layers, &filled, &grains, air.as_ref()) {
        Ok(bed) => bed,
        Err(problem) => {
            count(2);
            return (numbers, vec![problem]);
        }
    };
    numbers.figure("area", &bed.area);
    numbers.figure("room", &bed.room);
    numbers.figure("media volume", &bed.media_volume);
    let kelvin = |celsius: f64| Known::typed(kelvins(273.15 + celsius));
    let site = Site {
        temperature_low: kelvin(typed.celsius.0),
        temperature_high: kelvin(typed.celsius.1),
        backwash_available: typed.available.map(rate),
        pressure: typed.losses.0.map(|x| Known::typed(pascals(x))),
    };
    let purpose = Purpose::ALL[typed.choices.0 % Purpose::ALL.len()];
    let mut duty = Duty {
        regime: [Regime::Backwashed, Regime::Upflow, Regime::NeverBackwashed, Regime::AirHead][typed.choices.1],
        arrangement: [Arrangement::Single, Arrangement::Parallel, Arrangement::TwinAlternating, Arrangement::LeadLag]
            [typed.choices.2],
        vessels: typed.vessels,
        service_flow: typed.flows.0.map(rate),
        peak_flow: typed.flows.1.map(rate),
        flow_control: typed.fitted.map(rate),
        valve_loss: typed.losses.0.map(|x| Known::typed(pascals(x))),
        collector_loss: typed.losses.1.map(|x| Known::typed(pascals(x))),
        upper_slot_width: typed.slot.map(metre),
        label_pressure: typed.losses.1.map(|x| Known::typed(pascals(x))),
        label_temperature: Some(kelvin(typed.celsius.1)),
        feed: FeedQuantity::ALL.iter().filter_map(|of| Some((*of, Known::typed(read(*of, typed.minimum?))))).collect(),
        ..Duty::new(purpose)
    };
    if let Some(minimum) = typed.minimum {
        duty.minimum_expansion = Known::typed(minimum);
    }
    let checks: Vec<DrainCheck> = typed
        .check
        .iter()
        .map(|&(flow, celsius, time, grains)| DrainCheck {
            flow: rate(flow),
            temperature: kelvin(celsius),
            minutes: Known::typed(seconds(time)),
            grains,
        })
        .collect();
    let points: Vec<PaperPoint> = typed
        .point
        .iter()
        .map(|&(layer, speed, celsius, expansion)| PaperPoint {
            layer,
            flow_per_area: Known::typed(metres_per_second(speed)),
            temperature: kelvin(celsius),
            expansion: Known::typed(expansion),
        })
        .collect();
    let found = lines(&bed, &checks, &points).unwrap_or_else(|problem| {
        count(3);
        problems.push(problem);
        Lines::unknown()
    });
    match backwash(&vessel, &layers, &bed, &site, &duty, &found) {
        Ok(answer) => {
            count(4);
            numbers.backwash(&answer);
            if let Some(setting) = answer.chosen.and_then(|at| answer.settings.get(at)) {
                backwash_rules(&duty, &setting.flow_per_area).iter().for_each(|verdict| numbers.verdict(verdict));
            }
        }
        Err(problem) => problems.push(problem),
    }
    match service(&vessel, &bed, &site, &duty) {
        Ok(answer) => {
            count(5);
            for rates in answer.usual.iter().chain(&answer.peak).chain(&answer.while_washing) {
                numbers.rates(rates);
            }
            answer.verdicts.iter().for_each(|verdict| numbers.verdict(verdict));
        }
        Err(problem) => problems.push(problem),
    }
    match window(&bed, &found, &duty.minimum_expansion, &site.temperature_low, &site.temperature_high, 3) {
        Ok(rows) => {
            count(6);
            for row in rows {
                for flow in row.lifts_from.iter().chain(&row.stays_to).chain([&row.carries_from]).flatten() {
                    numbers.note("window", flow.value);
                }
            }
        }
        Err(problem) => problems.push(problem),
    }
    (numbers, problems)
}

/// One case, short: what was typed, and each layer's material, target and grains.
fn case(typed: &Typed, stack: &[(Layer, Grains)]) -> String {
    let layers: Vec<String> = stack
        .iter()
        .map(|(layer, grains)| {
            let bare = |x: Option<f64>| x.map_or("none".to_owned(), |x| format!("{x:e}"));
            let Target::Volume(volume) = &layer.target else { unreachable!() };
            format!(
                "{} {:e} m³, {:e} to {:e} m, size {} uniformity {} density {} voidage {} sphericity {}",
                layer.material.id,
                volume.value.value,
                grains.low.value.value,
                grains.high.value.value,
                bare(grains.effective_size.map(|x| x.value.value)),
                bare(grains.uniformity.map(|x| x.value)),
                bare(grains.particle_density.map(|x| x.value.value)),
                bare(grains.voidage.map(|x| x.value)),
                bare(grains.sphericity.map(|x| x.value)),
            )
        })
        .collect();
    format!("{typed:?}\n    {}", layers.join("\n    "))
}

#[test]
fn no_plan_of_whatever_is_typed_brings_the_water_down() {
    let stack = proptest::collection::vec(layer(), 1..4);
    let mut runner = proptest::test_runner::TestRunner::new(cases(10_000));
    // Kinds of breaches, each with how often and the first case.
    let breaches = RefCell::new(BTreeMap::<String, (usize, String)>::new());
    let outcome = runner.run(&(typed(), stack), |(typed, stack)| {
        let (numbers, problems) = work_out(&typed, &stack);
        let note = |kind: String| {
            let mut breaches = breaches.borrow_mut();
            breaches.entry(kind).or_insert_with(|| (0, case(&typed, &stack))).0 += 1;
        };
        if let Some((what, value)) = numbers.strange() {
            note(format!("{} is {value}", what.chars().take(60).collect::<String>()));
        }
        problems
            .iter()
            .filter(|problem| !names_itself(problem))
            .for_each(|problem| note(format!("{:?}", problem.term)));
        Ok(())
    });
    for (kind, count) in KINDS.iter().zip(&COUNTS) {
        println!("{kind}: {}", count.load(Ordering::Relaxed));
    }
    let said: Vec<String> = breaches
        .into_inner()
        .into_iter()
        .map(|(kind, (count, case))| format!("{kind}, {count} times, first for {case}"))
        .collect();
    assert!(said.is_empty(), "{}", said.join("\n"));
    if let Err(why) = outcome {
        panic!("{}", why.to_string().chars().take(4000).collect::<String>());
    }
    // Most must get far enough to prove something.
    let (plans, answered) = (COUNTS[0].load(Ordering::Relaxed), COUNTS[4].load(Ordering::Relaxed));
    assert!(answered * 4 >= plans, "only {answered} of {plans} plans were answered");
}

/// A reading of the water that leaves.
fn read(of: FeedQuantity, value: f64) -> Amount {
    match of {
        FeedQuantity::SiltDensityIndex => Amount::Ratio(value),
        _ => Concentration::kilograms_per_cubic_metre(value).into(),
    }
}

/// A cubic foot of one material in a 12 × 52 under an upper collector, for cases that random plans meet only now and then.
fn example(material: &str, density: Option<f64>) -> (Vessel, Vec<Layer>, Bed) {
    let vessel = Vessel::new(Measures { upper_collector: Some(inch(1.5)), ..twelve_by_fifty_two() }).unwrap();
    let layers = vec![fills::layer(material, Role::Media, Target::Volume(cubic_feet(1.0)))];
    let filled = plan(&vessel, &layers, &bucket());
    let mut grains = layers[0].material.grains();
    if let Some(density) = density {
        grains.particle_density = Some(Known::typed(kilograms_per_cubic_metre(density)));
    }
    let bed = Bed::new(&vessel, &layers, &filled, &[grains], None).unwrap();
    (vessel, layers, bed)
}

fn mild() -> Site {
    Site { temperature_low: celsius(12.0), temperature_high: celsius(12.0), backwash_available: None, pressure: None }
}

/// Where both models let grains leave, at 109 litres a minute of carbon and more, no line between them keeps the bed, held by slots or not.
#[test]
fn a_bed_that_leaves_on_every_line_is_never_said_to_stand() {
    let (vessel, layers, bed) = example("carbon_coconut_12x40", None);
    let mut left = 0;
    for litres in 60..200 {
        let duty = Duty {
            upper_slot_width: Some(Known::typed(metres(0.2e-3))),
            flow_control: Some(litres_per_minute(f64::from(litres))),
            ..Duty::new(Purpose::Softening)
        };
        let answer = backwash(&vessel, &layers, &bed, &mild(), &duty, &Lines::unknown()).unwrap();
        let setting = &answer.settings[answer.chosen.unwrap()];
        if setting.cold.low.is_none() {
            left += 1;
            assert!(setting.mark >= Mark::Caution, "{setting:?}");
        }
    }
    assert!(left > 5, "only {left} flows carry all away");
}

#[test]
fn grains_that_float_are_refused_in_upward_flow_with_their_layer() {
    let (vessel, _, bed) = example("carbon_coconut_12x40", Some(635.0));
    let duty = Duty {
        regime: Regime::Upflow,
        service_flow: Some(litres_per_minute(10.0)),
        ..Duty::new(Purpose::Dechlorination)
    };
    let problem = service(&vessel, &bed, &mild(), &duty).unwrap_err();
    assert_eq!((problem.term, problem.layer), (Term::ParticleDensity, Some(0)));
}
