//! Plan, version 1. Frozen.

use std::sync::Arc;

use bedwright_calc::fill::Role;
use litemap::LiteMap;
use serde_json::Value;

use super::fields::{Taken, Written};
use crate::id::Id;
use crate::sections::plan::{FillPlan, LayerPlan, TargetKind, VesselPlan};

const ROLES: [(&str, Role); 2] = [("underbed", Role::Underbed), ("media", Role::Media)];

/// As saved: of every vessel its layers, bottom first.
pub(super) fn write(plan: &FillPlan) -> Value {
    let mut vessels = Written::default();
    for (id, plan) in &plan.vessels {
        let mut fields = Written::default();
        fields.put("layers", Value::Array(plan.layers.iter().map(write_layer).collect()));
        fields.entry("bucket", plan.bucket.as_ref());
        fields.unknown(&plan.unknown);
        vessels.put(id.as_str(), fields.whole());
    }
    let mut body = Written::default();
    body.put("vessels", vessels.whole());
    body.unknown(&plan.unknown);
    body.whole()
}

fn write_layer(layer: &LayerPlan) -> Value {
    let mut fields = Written::default();
    fields.text("id", layer.id.as_str());
    fields.text("material", &layer.material);
    fields.text_unless_empty("pack", &layer.pack);
    fields.text("role", ROLES.iter().find(|(_, role)| *role == layer.role).map_or("media", |(id, _)| id));
    fields.text("target", layer.target.id());
    fields.entry("amount", layer.amount.as_ref());
    fields.flag_unless_no("minimum", layer.minimum);
    fields.entry("bulk_density", layer.bulk_density.as_ref());
    fields.unknown(&layer.unknown);
    fields.whole()
}

/// From what was saved, or the field that is wrong.
pub(super) fn read(body: Value) -> Result<FillPlan, String> {
    let mut body = Taken::of(body);
    let mut vessels = LiteMap::new();
    for (id, plan) in body.map("vessels") {
        let mut plan = Taken::of(plan);
        let mut layers: Vec<LayerPlan> = Vec::new();
        for layer in plan.list("layers") {
            let layer = read_layer(layer)?;
            if layers.iter().any(|there| there.id == layer.id) {
                return Err(format!("layer twice: {}", layer.id));
            }
            layers.push(layer);
        }
        let plan = VesselPlan { layers, bucket: plan.entry("bucket"), unknown: plan.rest()? };
        vessels.insert(Id::new(&id), Arc::new(plan));
    }
    Ok(FillPlan { vessels, unknown: body.rest()? })
}

fn read_layer(layer: Value) -> Result<LayerPlan, String> {
    let mut layer = Taken::of(layer);
    Ok(LayerPlan {
        id: layer.id("id"),
        material: layer.text("material"),
        pack: layer.text_or_empty("pack"),
        role: layer
            .chosen("role", Role::Media, |id| ROLES.iter().find(|(known, _)| *known == id).map(|(_, role)| *role)),
        target: layer.chosen("target", TargetKind::Packs, TargetKind::of),
        amount: layer.entry("amount"),
        minimum: layer.flag_or_no("minimum"),
        bulk_density: layer.entry("bulk_density"),
        unknown: layer.rest()?,
    })
}
