//! What must hold for water in every bed, on random ones. `BEDWRIGHT_CASES` asks for more of them.

use bedwright_calc::fill::{Layer, Role, Target, plan};
use bedwright_calc::hydraulics::fluidisation::{
    Grain, dharmarajah_cleasby_voidage, ergun_minimum, ergun_voidage, haider_levenspiel_settling, wen_yu_minimum,
    wen_yu_voidage,
};
use bedwright_calc::hydraulics::packed_bed::{PackedBed, ergun_pressure_loss};
use bedwright_calc::hydraulics::{Bed, DrainCheck, Duty, Lines, Purpose, Site, backwash, lines, service, window};
use bedwright_calc::material::grading::{Grading, GradingBy};
use bedwright_calc::material::{Grains, Kind, Material, Pack};
use bedwright_calc::quantity::{
    Figure, Known, Mark, Problem, Subject, cubic_metres, kilograms_per_cubic_metre, metres, metres_per_second, seconds,
};
use bedwright_calc::vessel::Vessel;
use bedwright_calc::water::Water;
use bedwright_tests::beds::{celsius, litres_per_minute};
use bedwright_tests::fills::bucket;
use proptest::prelude::*;

use super::properties::{cases, vessel};

/// What rounding may leave of an order, relative.
const ROUNDING: f64 = 1e-11;

fn never_less(more: f64, less: f64) -> bool {
    more >= less - ROUNDING * less.abs()
}

/// Grains of one size as anything that is sold: resin to ilmenite.
fn grain() -> impl Strategy<Value = Grain> {
    (0.1..5.0_f64, 1030.0..5000.0_f64, 0.5..=1.0_f64, 0.3..0.65_f64).prop_map(|(size, density, sphericity, voidage)| {
        Grain {
            size: Known::typed(metres(size / 1000.0)),
            particle_density: Known::typed(kilograms_per_cubic_metre(density)),
            sphericity: Known::typed(sphericity),
            voidage: Known::typed(voidage),
        }
    })
}

/// Grains of a mesh with or without effective size and uniformity.
fn grains() -> impl Strategy<Value = Grains> {
    let sizes = (0.15..2.0_f64, 1.1..5.0_f64, 0.02..0.6_f64, 0.05..0.9_f64, any::<bool>());
    (sizes, grain()).prop_map(|((low, width, place, spread, known), grain)| {
        let mm = |x: f64| Known::typed(metres(x / 1000.0));
        let size = low * width.powf(place);
        let most = low * width / size;
        Grains {
            low: mm(low),
            high: mm(low * width),
            effective_size: known.then(|| mm(size)),
            uniformity: known.then(|| Known::typed(most.powf(spread))),
            particle_density: Some(grain.particle_density),
            voidage: Some(grain.voidage),
            sphericity: Some(grain.sphericity),
        }
    })
}

/// A planned bed with what it was planned from.
#[derive(Clone)]
struct Planned {
    vessel: Vessel,
    layers: Vec<Layer>,
    grains: Vec<Grains>,
    bed: Bed,
}

/// Short: a hundred diameters a layer say nothing.
impl std::fmt::Debug for Planned {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let targets: Vec<_> = self.layers.iter().map(|layer| (&layer.material.id, &layer.target)).collect();
        write!(f, "room {:?} area {:?} {targets:?} {:?}", self.bed.room.value, self.bed.area.value, self.grains)
    }
}

fn planned(vessel: Vessel, layers: Vec<Layer>, grains: Vec<Grains>) -> Result<Planned, Problem> {
    let filled = plan(&vessel, &layers, &bucket());
    let bed = Bed::new(&vessel, &layers, &filled, &grains, None)?;
    Ok(Planned { vessel, layers, grains, bed })
}

/// A vessel with up to one underbed and up to `most` layers of media that fit.
fn bed_of(most: usize) -> impl Strategy<Value = Planned> {
    let media: Vec<Material> = Material::all().filter(|material| material.kind == Kind::Media).collect();
    let layer = (proptest::sample::select(media), 0.05..0.35_f64, grains());
    (vessel(), any::<bool>(), proptest::collection::vec(layer, 1..=most)).prop_filter_map(
        "it does not fit",
        |(vessel, underbed, media)| {
            let capacity = vessel.cavity.capacity().value;
            let gravel = underbed.then(|| {
                let gravel = Material::of("gravel_1_8x1_4").unwrap();
                let grains = gravel.grains();
                (gravel, 0.05, grains)
            });
            let (mut layers, mut sizes) = (Vec::new(), Vec::new());
            for (material, share, grains) in gravel.into_iter().chain(media) {
                layers.push(Layer {
                    role: if material.kind == Kind::Gravel { Role::Underbed } else { Role::Media },
                    bulk_density: material.usual_bulk_density(),
                    pack: Pack::of_material(&material.id).remove(0),
                    target: Target::Volume(Known::typed(cubic_metres(share * capacity))),
                    minimum: true,
                    material,
                });
                sizes.push(grains);
            }
            planned(vessel, layers, sizes).ok()
        },
    )
}

/// From the temperature at which water is densest: colder water is lighter by 0.013 %, so that grains nearly as light as
/// water may lift less in it although it is more viscous.
fn degrees() -> impl Strategy<Value = f64> {
    4.0..60.0_f64
}

fn water(degrees: f64) -> Water {
    Water::at(&celsius(degrees)).unwrap()
}

fn site(low: f64, high: f64, available: f64) -> Site {
    Site {
        temperature_low: celsius(low),
        temperature_high: celsius(high),
        backwash_available: Some(litres_per_minute(available)),
        pressure: None,
    }
}

/// The three lines at a flow per area; what leaves stands infinitely high.
fn stands(bed: &Bed, degrees: f64, speed: f64) -> [f64; 3] {
    let speed = Known::typed(metres_per_second(speed));
    let found = bed.expansion_at(&water(degrees), &speed, &Lines::unknown()).unwrap();
    [found.low, found.likely, found.high].map(|line| line.unwrap_or(f64::INFINITY))
}

/// Whether one bed stands no higher than another, within a share of the volume; both may have left.
fn no_higher(one: f64, other: f64, within: f64) -> bool {
    other == f64::INFINITY || one <= other + within * (1.0 + other)
}

type Sized = fn(&Grain, &Water) -> Result<Figure<bedwright_calc::quantity::Velocity>, Problem>;
type Lifted = fn(&Grain, &Water, &Known<bedwright_calc::quantity::Velocity>) -> Result<Figure<f64>, Problem>;

proptest! {
    #![proptest_config(cases(10_000))]

    /// A larger or a heavier grain never lifts sooner and never falls slower.
    #[test]
    fn larger_and_heavier_grains_lift_later_and_fall_faster(
        grain in grain(), degrees in degrees(), larger in 1.0..3.0_f64, heavier in 1.0..3.0_f64,
    ) {
        let water = water(degrees);
        let big = Grain { size: Known::typed(grain.size.value * larger), ..grain };
        let heavy = Grain { particle_density: Known::typed(grain.particle_density.value * heavier), ..grain };
        for speed in [wen_yu_minimum as Sized, ergun_minimum, haider_levenspiel_settling] {
            let of = |grain: &Grain| speed(grain, &water).unwrap().value.value;
            let usual = of(&grain);
            prop_assert!(usual.is_finite() && usual > 0.0);
            prop_assert!(never_less(of(&big), usual), "{} < {usual}", of(&big));
            prop_assert!(never_less(of(&heavy), usual), "{} < {usual}", of(&heavy));
        }
    }

    /// Still water is lost no pressure; more speed, more depth, finer grains, less room and colder water never lose less.
    #[test]
    fn pressure_lost_grows_with_speed_and_depth_and_falls_with_size(
        grain in grain(), degrees in degrees(), depth in 0.01..3.0_f64, speed in 0.0..0.05_f64, more in 1.0..4.0_f64,
    ) {
        let bed = PackedBed {
            depth: Known::typed(metres(depth)), grain_size: grain.size, sphericity: grain.sphericity,
            voidage: grain.voidage,
        };
        let water = water(degrees);
        let loss = |bed: &PackedBed, speed: f64| {
            ergun_pressure_loss(bed, &water, &Known::typed(metres_per_second(speed))).unwrap().value.value
        };
        let usual = loss(&bed, speed);
        prop_assert_eq!(loss(&bed, 0.0), 0.0);
        prop_assert!(usual.is_finite() && usual >= 0.0);
        prop_assert!(never_less(loss(&bed, speed * more), usual));
        let deeper = PackedBed { depth: Known::typed(metres(depth * more)), ..bed };
        let coarser = PackedBed { grain_size: Known::typed(grain.size.value * more), ..bed };
        let closer = PackedBed { voidage: Known::typed(grain.voidage.value / more), ..bed };
        prop_assert!(never_less(loss(&deeper, speed), usual));
        prop_assert!(never_less(usual, loss(&coarser, speed)));
        prop_assert!(never_less(loss(&closer, speed), usual));
    }

    /// No model opens a bed below its settled voidage, nor less with more flow, nor more in warmer water. The branches of
    /// the one from memory don't meet at Re₁ = 0.2: A₁ leaps by a factor between 0.93
    /// (sphericity 0.5) and 1.2835 (balls), and since d ln A₁/dε = 3/ε + 2/(1 − ε) is never under 9.899, the voidage by at
    /// most 0.0253.
    #[test]
    fn voidage_never_falls_with_flow_nor_rises_with_warmth(
        grain in grain(), a in degrees(), b in degrees(), speed in 0.0..0.05_f64, more in 1.0..2.0_f64,
    ) {
        let (cold, warm) = (water(a.min(b)), water(a.max(b)));
        let models = [(wen_yu_voidage as Lifted, 1e-10), (ergun_voidage, 1e-10), (dharmarajah_cleasby_voidage, 0.0253)];
        for (open, leap) in models {
            // What is carried away is as open as can be.
            let at = |water: &Water, speed: f64| {
                open(&grain, water, &Known::typed(metres_per_second(speed))).map_or(1.0, |open| open.value)
            };
            let usual = at(&cold, speed);
            prop_assert!(usual >= grain.voidage.value && usual <= 1.0, "{usual}");
            prop_assert!(at(&cold, speed * more) >= usual - leap);
            prop_assert!(at(&warm, speed) <= usual + leap, "{} > {usual}", at(&warm, speed));
        }
    }

    /// A grading stays between its sieves, rises with the share, and meets the effective size and uniformity it was given.
    #[test]
    fn a_grading_stays_in_its_mesh_and_has_the_sizes_it_was_given(grains in grains()) {
        let grading = grains.grading().unwrap();
        let (low, high) = (grains.low.value.value, grains.high.value.value);
        let fractions = grading.fractions();
        for pair in fractions.windows(2) {
            prop_assert!(pair[0] <= pair[1], "{pair:?}");
        }
        for size in &fractions {
            prop_assert!(size.value >= low * (1.0 - 1e-12) && size.value <= high * (1.0 + 1e-12), "{size:?}");
        }
        if let (Some(size), Some(ratio)) = (&grains.effective_size, &grains.uniformity) {
            let d10 = grading.size_finer_than(0.10).value / size.value.value;
            let d60 = grading.size_finer_than(0.60).value / (size.value.value * ratio.value);
            prop_assert!((d10 - 1.0).abs() < 1e-8 && (d60 - 1.0).abs() < 1e-8, "{d10} {d60} {:?}", grading.by());
        }
    }

    /// A log-normal is found where one exists and not where none does: README of the tables, "when it exists". Where the
    /// slope at the greatest uniformity is steeper than a mean within reach has it, straight lines do.
    #[test]
    fn a_log_normal_is_found_where_one_exists(
        low in 0.15..2.0_f64, width in 1.2..5.0_f64, place in 0.03..0.9_f64, share in 0.02..1.6_f64,
    ) {
        let mm = |x: f64| Known::typed(metres(x / 1000.0));
        // (exp(k·u10) − 1)/(exp(k) − 1) = 0.1, by halving.
        let tenth = |k: f64| if k.abs() < 1e-9 { place } else { (k * place).exp_m1() / k.exp_m1() };
        let (mut from, mut to) = (-300.0, 300.0);
        for _ in 0..200 {
            let k = f64::midpoint(from, to);
            if tenth(k) > 0.1 { from = k } else { to = k }
        }
        let u60 = if from.abs() < 1e-9 { 0.6 } else { (0.6 * from.exp_m1()).ln_1p() / from };
        let greatest = width.powf(u60 - place);
        let size = low * width.powf(place);
        let ratio = greatest.powf(share);
        prop_assume!((share - 1.0).abs() > 0.02 && ratio > 1.0 + 1e-3 && size * ratio < 0.999 * low * width);
        let found = Grading::new(&mm(low), &mm(low * width), Some(&mm(size)), Some(&Known::typed(ratio))).unwrap();
        let wanted = if share < 1.0 { GradingBy::LogNormal } else { GradingBy::StraightLines };
        prop_assert_eq!(found.by(), wanted, "greatest {} asked {}", greatest, ratio);
    }
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// A bed never stands lower with more flow, never higher in warmer water, and never below where it settled; and the
    /// lines keep their order.
    #[test]
    fn expansion_rises_with_flow_and_falls_with_warmth(
        planned in bed_of(3), a in degrees(), b in degrees(), speed in 0.0..0.04_f64, more in 1.0..2.0_f64,
    ) {
        let usual = stands(&planned.bed, a.min(b), speed);
        let faster = stands(&planned.bed, a.min(b), speed * more);
        let warmer = stands(&planned.bed, a.max(b), speed);
        prop_assert!(0.0 <= usual[0] && usual[0] <= usual[1] && usual[1] <= usual[2], "{usual:?}");
        for line in 0..3 {
            prop_assert!(no_higher(usual[line], faster[line], 1e-10), "{faster:?} {usual:?}");
            prop_assert!(no_higher(warmer[line], usual[line], 1e-10), "{warmer:?} {usual:?}");
        }
        prop_assert_eq!(stands(&planned.bed, a, 0.0), [0.0; 3]);
    }

    /// Flow, section, contact time and bed volumes hang together; more flow never loses less.
    #[test]
    fn service_hangs_together(planned in bed_of(3), degrees in degrees(), flow in 0.5..200.0_f64, more in 1.0..4.0_f64) {
        let duty = Duty {
            service_flow: Some(litres_per_minute(flow)),
            peak_flow: Some(litres_per_minute(flow * more)),
            ..Duty::new(Purpose::Sediment)
        };
        let answer = service(&planned.vessel, &planned.bed, &site(degrees, degrees, flow), &duty).unwrap();
        let (usual, peak) = (answer.usual.unwrap(), answer.peak.unwrap());
        let product = usual.contact_time.value.value * usual.bed_volumes.value.value;
        prop_assert!((product - 1.0).abs() < 1e-12);
        prop_assert!(never_less(peak.loss.value.value, usual.loss.value.value));
        prop_assert_eq!(usual.layers.len(), planned.layers.len());
        let sum: f64 = usual.layers.iter().map(|layer| layer.value.value).sum();
        prop_assert!((usual.loss.value.value / sum - 1.0).abs() < 1e-12);
        prop_assert!(usual.layers.iter().all(|layer| layer.value.value.is_finite() && layer.value.value > 0.0));
    }

    /// A clean drain lowers the highest line or leaves it, grains raise the lowest or leave it, and the lines keep their
    /// order.
    #[test]
    fn evidence_only_narrows_the_lines(
        planned in bed_of(2), degrees in degrees(), flow in 1.0..100.0_f64, grains in any::<bool>(),
    ) {
        let check = DrainCheck {
            flow: litres_per_minute(flow), temperature: celsius(degrees), minutes: Known::typed(seconds(900.0)), grains,
        };
        let (before, after) = (Lines::unknown(), lines(&planned.bed, &[check], &[]).unwrap());
        prop_assert!(after.low.value <= after.likely.value && after.likely.value <= after.high.value);
        prop_assert!(after.low.value >= before.low.value && after.high.value <= before.high.value);
        prop_assert_eq!(after.used + after.set_aside, 1);
        if grains {
            prop_assert_eq!(after.high.value, before.high.value);
        } else {
            prop_assert_eq!(after.low.value, before.low.value);
        }
    }
}

proptest! {
    #![proptest_config(cases(200))]

    /// Every flow of the window rises with the temperature; what lifts by the least expansion is no more than what reaches
    /// the ceiling, where the room is enough for it; a surer line lifts later; and the window's ends are the backwash's.
    #[test]
    fn the_window_rises_with_warmth_and_keeps_its_order(
        planned in bed_of(2), a in degrees(), b in degrees(), minimum in 0.0..0.6_f64,
    ) {
        let (from, to) = (a.min(b), a.max(b));
        let rows = window(
            &planned.bed, &Lines::unknown(), &Known::typed(minimum), &celsius(from), &celsius(to), 7,
        ).unwrap();
        prop_assert_eq!(rows.len(), 7);
        let flows = |row: &bedwright_calc::hydraulics::WindowRow| {
            let mut flows: Vec<Option<f64>> = row.lifts_from.iter().chain(&row.stays_to).map(|x| x.map(|x| x.value)).collect();
            flows.push(row.carries_from.map(|x| x.value));
            flows
        };
        for pair in rows.windows(2) {
            for (colder, warmer) in flows(&pair[0]).into_iter().zip(flows(&pair[1])) {
                prop_assert_eq!(colder.is_some(), warmer.is_some());
                if let (Some(colder), Some(warmer)) = (colder, warmer) {
                    prop_assert!(warmer >= colder * (1.0 - 1e-8), "{warmer} < {colder}");
                }
            }
        }
        for row in &rows {
            for line in 0..3 {
                if let (Some(lifts), Some(stays)) = (row.lifts_from[line], row.stays_to[line]) {
                    let enough = minimum <= planned.bed.room.value;
                    prop_assert!(!enough || lifts.value <= stays.value * (1.0 + 1e-8), "{lifts:?} {stays:?}");
                    prop_assert!(enough || stays.value <= lifts.value * (1.0 + 1e-8), "{lifts:?} {stays:?}");
                }
            }
            for pair in row.lifts_from.windows(2).chain(row.stays_to.windows(2)) {
                if let [Some(low), Some(high)] = pair {
                    prop_assert!(high.value <= low.value * (1.0 + 1e-8), "{low:?} {high:?}");
                }
            }
        }
        let answer = backwash(
            &planned.vessel, &planned.layers, &planned.bed, &site(from, to, 60.0),
            &Duty { minimum_expansion: Known::typed(minimum), ..Duty::new(Purpose::Sediment) }, &Lines::unknown(),
        ).unwrap();
        for (row, end) in [(&rows[0], &answer.cold), (&rows[6], &answer.warm)] {
            for line in 0..3 {
                for (row, end) in [(row.lifts_from[line], &end.lifts_from[line]), (row.stays_to[line], &end.stays_to[line])] {
                    prop_assert_eq!(row.is_some(), end.is_some());
                    if let (Some(row), Some(end)) = (row, end) {
                        prop_assert!((row.value / end.value.value - 1.0).abs() < 1e-8);
                    }
                }
            }
        }
    }

    /// The largest number of packs of the top layer that is said to work does, and one more does not; and where none is
    /// said, the bed as planned doesn't work.
    #[test]
    fn the_most_packs_work_and_one_more_does_not(
        planned in bed_of(2), low in degrees(), warmer in 0.0..15.0_f64, available in 3.0..100.0_f64,
        minimum in 0.0..0.5_f64,
    ) {
        let site = site(low, (low + warmer).min(60.0), available);
        let duty = Duty { minimum_expansion: Known::typed(minimum), ..Duty::new(Purpose::Sediment) };
        let judge = |planned: &Planned| {
            let answer = backwash(&planned.vessel, &planned.layers, &planned.bed, &site, &duty, &Lines::unknown()).unwrap();
            let mark = answer.verdicts.iter().find(|verdict| matches!(verdict.subject, Subject::Backwash { .. })).unwrap().mark;
            (mark <= Mark::SetOnSite, answer.most_packs)
        };
        let with = |packs: u32| {
            let mut layers = planned.layers.clone();
            layers.last_mut().unwrap().target = Target::Packs(Known::typed(f64::from(packs)));
            let again = super::hydraulics_properties::planned(planned.vessel.clone(), layers, planned.grains.clone());
            again.is_ok_and(|planned| judge(&planned).0)
        };
        let (works, most) = judge(&planned);
        let pack = planned.layers.last().unwrap().pack.volume.map(|volume| volume.value.value);
        if let Some(most) = most {
            prop_assert!(with(most), "{most} packs should work");
            prop_assert!(!with(most + 1), "{} packs shouldn't work", most + 1);
        } else {
            prop_assert!(!with(1), "one pack works, and none is said");
        }
        // Whole packs that work are never more than what is said.
        let now = pack.map(|pack| (planned.bed.media_layers().last().unwrap().volume.value.value / pack).round() as u32);
        if let Some(now) = now.filter(|now| *now > 0 && with(*now)) {
            prop_assert!(most.is_some_and(|most| most >= now), "{now} packs work, {most:?} is said ({works})");
        }
    }
}
