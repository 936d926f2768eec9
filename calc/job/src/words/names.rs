//! Names of things on the shelf. A row added to a table of `calc` gets its name here; a test says when one lacks.

use bedwright_calc::material::Container;

use super::label::thing::{CountName, MaterialName};

/// The name of a material of the catalogue.
pub(super) fn material(id: &str) -> Option<MaterialName> {
    Some(match id {
        "gravel_1_16x1_8" => MaterialName::GravelSixteenth,
        "gravel_1_8x1_4" => MaterialName::GravelEighth,
        "gravel_1_4x1_2" => MaterialName::GravelQuarter,
        "gravel_1_2x3_4" => MaterialName::GravelHalf,
        "gravel_3_4x1" => MaterialName::GravelThreeQuarters,
        "gravel_3_4x1_1_2" => MaterialName::GravelWide,
        "garnet_coarse_8x16" => MaterialName::GarnetCoarse,
        "sand_20x30" => MaterialName::Sand,
        "sand_filter_045_055" => MaterialName::FilterSand,
        "anthracite_08_12" => MaterialName::Anthracite,
        "garnet_30x60" => MaterialName::Garnet,
        "ilmenite_fine" => MaterialName::Ilmenite,
        "carbon_coconut_8x30" => MaterialName::Coconut8,
        "carbon_coconut_12x40" => MaterialName::Coconut12,
        "carbon_coconut_20x50" => MaterialName::Coconut20,
        "carbon_bituminous_8x30" => MaterialName::Bituminous8,
        "carbon_bituminous_12x40" => MaterialName::Bituminous12,
        "calcite_16x40" => MaterialName::Calcite,
        "magnesia_6x16" => MaterialName::Magnesia,
        "resin_cation" => MaterialName::ResinCation,
        "resin_anion" => MaterialName::ResinAnion,
        "sand_manganese_coated" => MaterialName::SandCoated,
        "manganese_dioxide_20x40" => MaterialName::Manganese20,
        "manganese_dioxide_8x20" => MaterialName::Manganese8,
        "zeolite_14x40" => MaterialName::Zeolite,
        "alumina_14x28" => MaterialName::Alumina14,
        "alumina_28x48" => MaterialName::Alumina28,
        "glass_crushed" => MaterialName::Glass,
        _ => return None,
    })
}

/// What a pack is called, one or many.
pub(super) const fn container(container: Container, one: bool) -> CountName {
    match (container, one) {
        (Container::Bag, true) => CountName::Bag,
        (Container::Bag, false) => CountName::Bags,
        (Container::Sack, true) => CountName::Sack,
        (Container::Sack, false) => CountName::Sacks,
        (Container::Drum, true) => CountName::Drum,
        (Container::Drum, false) => CountName::Drums,
        (Container::BulkBag, true) => CountName::BulkBag,
        (Container::BulkBag, false) => CountName::BulkBags,
    }
}

#[cfg(test)]
mod tests {
    use bedwright_calc::material::Material;

    use super::material;

    #[test]
    fn every_material_has_a_name() {
        for of in Material::all() {
            assert!(material(&of.id).is_some(), "{} lacks a name", of.id);
        }
    }
}
