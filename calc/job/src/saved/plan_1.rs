//! Plan, version 1. Frozen.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use bedwright_calc::fill::Role;
use serde::{Deserialize, Serialize};

use super::{id_of, optional_entry};
use crate::entry::Entry;
use crate::id::Id;
use crate::sections::Unknown;
use crate::sections::plan::{FillPlan, LayerPlan, TargetKind, VesselPlan};

/// As saved.
#[derive(Serialize, Deserialize)]
pub struct Body {
    vessels: BTreeMap<Id, Plan>,
    #[serde(flatten)]
    unknown: Unknown,
}

#[derive(Serialize, Deserialize)]
struct Plan {
    /// Bottom first.
    layers: Vec<Layer>,
    #[serde(default, skip_serializing_if = "Option::is_none", deserialize_with = "optional_entry")]
    bucket: Option<Entry>,
    #[serde(flatten)]
    unknown: Unknown,
}

#[derive(Serialize, Deserialize)]
struct Layer {
    id: Id,
    material: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pack: String,
    role: String,
    target: String,
    #[serde(default, skip_serializing_if = "Option::is_none", deserialize_with = "optional_entry")]
    amount: Option<Entry>,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    minimum: bool,
    #[serde(default, skip_serializing_if = "Option::is_none", deserialize_with = "optional_entry")]
    bulk_density: Option<Entry>,
    #[serde(flatten)]
    unknown: Unknown,
}

const ROLES: [(&str, Role); 2] = [("underbed", Role::Underbed), ("media", Role::Media)];

impl From<&FillPlan> for Body {
    fn from(plan: &FillPlan) -> Body {
        Body {
            vessels: plan.vessels.iter().map(|(id, plan)| (id.clone(), Plan::from(&**plan))).collect(),
            unknown: plan.unknown.clone(),
        }
    }
}

impl From<&VesselPlan> for Plan {
    fn from(plan: &VesselPlan) -> Plan {
        Plan {
            layers: plan.layers.iter().map(Layer::from).collect(),
            bucket: plan.bucket.clone(),
            unknown: plan.unknown.clone(),
        }
    }
}

impl From<&LayerPlan> for Layer {
    fn from(layer: &LayerPlan) -> Layer {
        Layer {
            id: layer.id.clone(),
            material: layer.material.clone(),
            pack: layer.pack.clone(),
            role: ROLES.iter().find(|(_, role)| *role == layer.role).map_or("media", |(id, _)| id).to_owned(),
            target: layer.target.id().to_owned(),
            amount: layer.amount.clone(),
            minimum: layer.minimum,
            bulk_density: layer.bulk_density.clone(),
            unknown: layer.unknown.clone(),
        }
    }
}

impl TryFrom<Body> for FillPlan {
    type Error = String;

    fn try_from(body: Body) -> Result<FillPlan, String> {
        let mut vessels = BTreeMap::new();
        for (id, saved) in body.vessels {
            let layers = saved.layers.into_iter().map(LayerPlan::try_from).collect::<Result<Vec<_>, _>>()?;
            let mut ids = BTreeSet::new();
            if let Some(twice) = layers.iter().find(|layer| !ids.insert(&layer.id)) {
                return Err(format!("layer twice: {}", twice.id));
            }
            let plan = VesselPlan { layers, bucket: saved.bucket, unknown: saved.unknown };
            vessels.insert(id, Arc::new(plan));
        }
        Ok(FillPlan { vessels, unknown: body.unknown })
    }
}

impl TryFrom<Layer> for LayerPlan {
    type Error = String;

    fn try_from(saved: Layer) -> Result<LayerPlan, String> {
        Ok(LayerPlan {
            id: saved.id,
            material: saved.material,
            pack: saved.pack,
            role: id_of(|id| ROLES.iter().find(|(known, _)| *known == id).map(|(_, role)| *role), &saved.role, "role")?,
            target: id_of(TargetKind::of, &saved.target, "target")?,
            amount: saved.amount,
            minimum: saved.minimum,
            bulk_density: saved.bulk_density,
            unknown: saved.unknown,
        })
    }
}
