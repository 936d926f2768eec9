//! Names of things on the shelf. A row added to a table of `calc` gets its name here; a test says when one lacks.

use bedwright_calc::material::Container;
use bedwright_calc::supply::Fitting;

/// The English name of a material of the catalogue.
pub(super) fn material_english(id: &str) -> Option<&'static str> {
    Some(match id {
        "gravel_1_16x1_8" => "Gravel 1/16 × 1/8 in",
        "gravel_1_8x1_4" => "Gravel 1/8 × 1/4 in",
        "gravel_1_4x1_2" => "Gravel 1/4 × 1/2 in",
        "gravel_1_2x3_4" => "Gravel 1/2 × 3/4 in",
        "gravel_3_4x1" => "Gravel 3/4 × 1 in",
        "gravel_3_4x1_1_2" => "Gravel 3/4 × 1 1/2 in",
        "garnet_coarse_8x16" => "Coarse garnet 8×16",
        "sand_20x30" => "Silica sand 20×30",
        "sand_filter_045_055" => "Filter sand 0.45–0.55 mm",
        "anthracite_08_12" => "Anthracite 0.8–1.2 mm",
        "garnet_30x60" => "Garnet 30×60",
        "ilmenite_fine" => "Ilmenite, fine",
        "carbon_coconut_8x30" => "Coconut carbon 8×30",
        "carbon_coconut_12x40" => "Coconut carbon 12×40",
        "carbon_coconut_20x50" => "Coconut carbon 20×50",
        "carbon_bituminous_8x30" => "Bituminous carbon 8×30",
        "carbon_bituminous_12x40" => "Bituminous carbon 12×40",
        "calcite_16x40" => "Calcite 16×40",
        "magnesia_6x16" => "Magnesia 6×16",
        "resin_cation" => "Softening resin, cation",
        "resin_anion" => "Anion resin",
        "sand_manganese_coated" => "Manganese-coated sand",
        "manganese_dioxide_20x40" => "Manganese dioxide 20×40",
        "manganese_dioxide_8x20" => "Manganese dioxide 8×20",
        "zeolite_14x40" => "Zeolite 14×40",
        "alumina_14x28" => "Activated alumina 14×28",
        "alumina_28x48" => "Activated alumina 28×48",
        "glass_crushed" => "Crushed glass 0.4–0.8 mm",
        _ => return None,
    })
}

/// What a pack is called in English.
pub(super) fn container_english(container: Container, count: u32) -> &'static str {
    match (container, count == 1) {
        (Container::Bag, true) => "bag",
        (Container::Bag, false) => "bags",
        (Container::Sack, true) => "sack",
        (Container::Sack, false) => "sacks",
        (Container::Drum, true) => "drum",
        (Container::Drum, false) => "drums",
        (Container::BulkBag, true) => "bulk bag",
        (Container::BulkBag, false) => "bulk bags",
    }
}

/// What a part is called in English.
pub(super) fn fitting_english(fitting: Fitting) -> &'static str {
    match fitting {
        Fitting::RiserPipe => "Riser pipe",
        Fitting::BottomCollector => "Bottom collector for riser",
        Fitting::UpperCollector => "Upper collector for riser",
        Fitting::RiserCap => "Riser cap for loading",
        Fitting::OpeningORing => "Tank O-ring",
        Fitting::SiliconeGrease => "Silicone grease for O-rings",
        Fitting::TagLabel => "Label for the tag",
        Fitting::PressureVessel => "Vessel",
        Fitting::ControlValve => "Control valve",
        Fitting::PlainHead => "In-and-out head without a valve",
        Fitting::FacePiping => "Face piping with its valves",
        Fitting::LoadingFunnel => "Loading funnel",
        Fitting::BottomORing => "O-ring for the bottom opening",
        Fitting::FlangeGasket => "Flange gasket",
        Fitting::ManwayGasket => "Manway gasket",
        Fitting::Bypass => "Bypass with shut-off valves",
        Fitting::DrainLineFlowControl => "Drain line flow control",
        Fitting::AirGapFitting => "Air-gap fitting for the drain",
        Fitting::BrineTank => "Brine tank with its valve",
        Fitting::FirstSalt => "First fill of salt",
        Fitting::VacuumBreaker => "Vacuum breaker",
        Fitting::Jacket => "Jacket against condensation",
        Fitting::SampleTap => "Sample tap",
        Fitting::PressureGauge => "Pressure gauge",
        Fitting::PreFilter => "Pre-filter",
        Fitting::ProtectiveEquipment => "Protective equipment, by local code",
        Fitting::Disinfectant => "Disinfectant",
        Fitting::TemporaryWater => "Temporary water connection",
        Fitting::SpentMediaDrum => "Drum for spent media",
        Fitting::WasteDetermination => "Waste determination for spent media",
    }
}

#[cfg(test)]
mod tests {
    use bedwright_calc::material::Material;

    use super::material_english;

    #[test]
    fn every_material_has_a_name() {
        for material in Material::all() {
            assert!(material_english(&material.id).is_some(), "{} lacks a name", material.id);
        }
    }
}
