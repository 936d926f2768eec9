//! Whole beds in backwash and in service: every figure of the example fills, for the digests and for counting work.

use bedwright_calc::fill::{Layer, Role, Target, plan};
use bedwright_calc::hydraulics::{
    Backwash, Bed, Duty, Expansion, Lines, Purpose, Site, WindowRow, backwash, service, window,
};
use bedwright_calc::material::Grains;
use bedwright_calc::quantity::{
    Figure, Known, Temperature, VolumeRate, cubic_metres_per_second, kelvins, metres, metres_per_second,
};
use bedwright_calc::vessel::{DiameterBy, Measures, Vessel};
use bedwright_calc::water::Water;

use crate::fills::{bucket, examples, layer, twelve_by_fifty_two};

/// Water of so many degrees Celsius.
#[must_use]
pub fn celsius(value: f64) -> Known<Temperature> {
    Known::typed(kelvins(273.15 + value))
}

/// Litres a minute.
#[must_use]
pub fn litres_per_minute(value: f64) -> Known<VolumeRate> {
    Known::typed(cubic_metres_per_second(value / 60e3))
}

/// Grains of each layer as the catalogue has them.
#[must_use]
pub fn catalogue_grains(layers: &[Layer]) -> Vec<Grains> {
    layers.iter().map(|layer| layer.material.grains()).collect()
}

/// Gravel, sand and anthracite in a vessel of 0.6 m.
///
/// # Panics
/// When it is refused.
#[must_use]
pub fn three_layers() -> (Vessel, [Layer; 3]) {
    let metre = |value: f64| Known::measured(metres(value));
    let measures = Measures {
        nominal_diameter: None,
        diameter_by: DiameterBy::Measured { inside: metre(0.6) },
        inside_depth: metre(1.8),
        clear_bore: metre(0.1),
        ..twelve_by_fifty_two()
    };
    let layers = [
        layer("gravel_1_16x1_8", Role::Underbed, Target::Depth(metre(0.2))),
        layer("sand_filter_045_055", Role::Media, Target::Depth(metre(0.3))),
        layer("anthracite_08_12", Role::Media, Target::Depth(metre(0.5))),
    ];
    (Vessel::new(measures).unwrap(), layers)
}

/// A plan of three layers with its backwash window at 61 temperatures, 0 to 60 °C: what is worked out after a keystroke,
/// and more.
///
/// # Panics
/// When it is refused.
#[must_use]
pub fn planned_window() -> Vec<WindowRow> {
    let (vessel, layers) = three_layers();
    let filled = plan(&vessel, &layers, &bucket());
    let bed = Bed::new(&vessel, &layers, &filled, &catalogue_grains(&layers), None).unwrap();
    window(&bed, &Lines::unknown(), &Known::typed(0.25), &celsius(0.0), &celsius(60.0), 61).unwrap()
}

/// Low and high expansion of three graded layers at one flow and 61 temperatures: the same work that
/// `tests/reference/plan_speed.py` does.
///
/// # Panics
/// When it is refused.
#[must_use]
pub fn planned_expansions() -> Vec<Expansion> {
    let (vessel, layers) = three_layers();
    let layers = layers.map(|layer| Layer { role: Role::Media, ..layer });
    let filled = plan(&vessel, &layers, &bucket());
    let bed = Bed::new(&vessel, &layers, &filled, &catalogue_grains(&layers), None).unwrap();
    let speed = Known::typed(metres_per_second(35.0 / 3600.0));
    (0..=60)
        .map(|degrees| {
            let water = Water::at(&celsius(f64::from(degrees))).unwrap();
            bed.expansion_at(&water, &speed, &Lines::unknown()).unwrap()
        })
        .collect()
}

/// What stands for a figure that there is none of.
const NONE: f64 = -1.0;

fn values_of<Q>(figures: &[Option<Figure<Q>>], si: impl Fn(&Q) -> f64) -> Vec<f64> {
    figures.iter().map(|figure| figure.as_ref().map_or(NONE, |figure| si(&figure.value))).collect()
}

fn of_expansion(expansion: &Expansion) -> [f64; 3] {
    [expansion.low, expansion.likely, expansion.high].map(|value| value.unwrap_or(NONE))
}

/// Every number of a backwash.
#[must_use]
pub fn of_backwash(answer: &Backwash) -> Vec<f64> {
    let mut values = Vec::new();
    for end in [&answer.cold, &answer.warm] {
        values.extend([end.water.density.value.value, end.water.viscosity.value.value]);
        values.extend(end.wen_yu_minimum.iter().chain(&end.ergun_minimum).map(|speed| speed.value.value));
        values.extend(values_of(&end.lifts_from, |flow| flow.value));
        values.extend(values_of(&end.stays_to, |flow| flow.value));
        values.extend(end.carries_from.as_ref().map(|flow| flow.value.value));
    }
    for setting in &answer.settings {
        values.extend([setting.flow.value.value, setting.flow_per_area.value.value]);
        values.push(f64::from(setting.mark as u8));
        values.extend(of_expansion(&setting.cold));
        values.extend(of_expansion(&setting.warm));
        for likely in [&setting.likely_cold, &setting.likely_warm] {
            values.extend(likely.as_ref().map(|figure| figure.value));
        }
    }
    values.extend([&answer.lines.low, &answer.lines.likely, &answer.lines.high].map(|line| line.value));
    values.extend(answer.two.iter().flat_map(|(cold, warm)| [cold.value, warm.value]));
    values.extend(answer.chosen.map(|at| at as f64));
    values.extend(answer.most_packs.map(f64::from));
    for sensitivity in &answer.sensitivities {
        values.extend([sensitivity.step, sensitivity.less, sensitivity.more]);
        values.extend(sensitivity.over_range.iter().flat_map(|(less, more)| [*less, *more]));
    }
    values.extend(answer.verdicts.iter().map(|verdict| f64::from(verdict.mark as u8)));
    values
}

/// Every number of every example's backwash, service and window.
///
/// # Panics
/// When an example is refused.
#[must_use]
pub fn values() -> Vec<f64> {
    let mut values = Vec::new();
    for (index, (vessel, layers)) in examples().into_iter().enumerate() {
        let filled = plan(&vessel, &layers, &bucket());
        let refused = |why| panic!("example {index} refused: {why:?}");
        let bed = Bed::new(&vessel, &layers, &filled, &catalogue_grains(&layers), None).unwrap_or_else(refused);
        values.extend([bed.area.value.value, bed.room.value, bed.media_volume.value.value]);
        let site = Site {
            temperature_low: celsius(6.0),
            temperature_high: celsius(22.0),
            backwash_available: Some(litres_per_minute(95.0)),
            pressure: None,
        };
        let duty = Duty {
            service_flow: Some(litres_per_minute(10.0)),
            peak_flow: Some(litres_per_minute(30.0)),
            ..Duty::new(Purpose::Sediment)
        };
        let answer = backwash(&vessel, &layers, &bed, &site, &duty, &Lines::unknown())
            .unwrap_or_else(|why| panic!("example {index} refused: {why:?}"));
        values.extend(of_backwash(&answer));
        let served =
            service(&vessel, &bed, &site, &duty).unwrap_or_else(|why| panic!("example {index} refused: {why:?}"));
        for rates in served.usual.iter().chain(&served.peak) {
            values.extend([
                rates.flow_per_area.value.value,
                rates.contact_time.value.value,
                rates.bed_volumes.value.value,
                rates.loss.value.value,
            ]);
            values.extend(rates.layers.iter().map(|loss| loss.value.value));
        }
    }
    for row in planned_window() {
        for flow in row.lifts_from.iter().chain(&row.stays_to).chain([&row.carries_from]) {
            values.push(flow.map_or(NONE, |flow| flow.value));
        }
    }
    values.extend(planned_expansions().iter().flat_map(of_expansion));
    values
}
