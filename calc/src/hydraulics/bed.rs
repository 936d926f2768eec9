//! A planned bed as water sees it.

use super::expansion::{DRAG_POWER, LiftedLayer};
use super::fluidisation::{Solid, sinks, solid_density};
use super::packed_bed::{gradient, shape};
use crate::fill::{Layer, LayerFill, Plan, Role};
use crate::material::Grains;
use crate::material::grading::{Grading, GradingBy};
use crate::quantity::problem::within;
use crate::quantity::{
    Area, Basis, Fault, Figure, Formula, Input, Known, Length, Problem, Source, Term, Volume, cubic_metres, metres,
    square_metres,
};
use crate::vessel::Vessel;
use crate::water::{Fluid, Water};

/// One layer of a planned bed.
#[derive(Clone, Debug, PartialEq)]
pub struct BedLayer {
    /// Its place in the plan, from the bottom and from zero.
    pub index: usize,
    /// What it is there for.
    pub role: Role,
    /// Its volume as poured.
    pub volume: Figure<Volume>,
    /// Its depth on the axis.
    pub depth: Figure<Length>,
    /// Its grains.
    pub grains: Grains,
    /// How their sizes are spread.
    pub grading: Grading,
    /// Diameters of its fractions of equal mass, m, finest first.
    pub(crate) sizes: Vec<f64>,
    /// Settled voidage: as given, else from the densities.
    pub voidage: Known<f64>,
    /// Sphericity.
    pub sphericity: Known<f64>,
}

/// Grains with how their sizes are spread: costly to find, and the same in every vessel.
#[derive(Clone, Debug)]
pub(crate) struct Graded {
    grains: Grains,
    grading: Grading,
    sizes: Vec<f64>,
}

impl Graded {
    pub(crate) fn new(grains: &Grains) -> Result<Graded, Problem> {
        let grading = grains.grading()?;
        let sizes = grading.fractions().iter().map(|size| size.value).collect();
        Ok(Graded { grains: grains.clone(), grading, sizes })
    }
}

/// A planned bed.
#[derive(Clone, Debug, PartialEq)]
pub struct Bed {
    /// Its layers, bottom first.
    pub layers: Vec<BedLayer>,
    /// Section of the empty shell.
    pub area: Figure<Area>,
    /// What would fill the room above the media, as an expansion of all media.
    pub room: Figure<f64>,
    /// All media, as poured.
    pub media_volume: Figure<Volume>,
    /// Volume of the underbed and what stands in it, m³.
    pub(crate) fixed: f64,
    /// Volume of all media, m³.
    pub(crate) media: f64,
    /// Free volume below the ceiling, less air, m³.
    pub(crate) ceiling: f64,
    /// Media layers for the inner loop, in the order of the plan.
    pub(crate) lifted: Vec<LiftedLayer>,
}

impl Bed {
    /// A bed from a plan that was worked out.
    ///
    /// `grains` are those of each layer, bottom first; `air` is the depth of air kept under the top, which is no room
    /// for the bed. The flow per area counts the whole section of the shell: a riser takes less than the diameter's own
    /// uncertainty.
    ///
    /// # Errors
    /// The problem of the first layer that was not worked out; [`Term::MediaVolume`] where no layer is media, or less
    /// than a cubic centimetre; [`Term::ParticleDensity`], [`Term::Sphericity`], [`Term::Voidage`] or
    /// [`Term::EffectiveSize`] of a media layer that lacks it or where it is out of range, with the layer.
    ///
    /// # Sources
    /// Arithmetic.
    ///
    /// # Example
    /// See [`super::backwash`].
    pub fn new(
        vessel: &Vessel,
        layers: &[Layer],
        plan: &Plan,
        grains: &[Grains],
        air: Option<&Known<Length>>,
    ) -> Result<Bed, Problem> {
        Bed::of(vessel, layers, plan, grains.iter().map(Graded::new), air)
    }

    /// The same from grains that are graded already; each is asked for after the layers below it.
    pub(crate) fn of(
        vessel: &Vessel,
        layers: &[Layer],
        plan: &Plan,
        grains: impl Iterator<Item = Result<Graded, Problem>>,
        air: Option<&Known<Length>>,
    ) -> Result<Bed, Problem> {
        let mut found = Vec::new();
        let mut lifted = Vec::new();
        let (mut fixed, mut media) = (0.0, 0.0);
        for (index, ((layer, answer), grains)) in layers.iter().zip(&plan.layers).zip(grains).enumerate() {
            let fill = answer.as_ref().map_err(|problem| *problem)?;
            let bed_layer = grains
                .and_then(|grains| bed_layer(index, layer, fill, grains))
                .map_err(|problem| problem.of_layer(index))?;
            let volume = fill.volume.value.value;
            if layer.role == Role::Media {
                media += volume;
                lifted.push(lifted_layer(&bed_layer).map_err(|problem| problem.of_layer(index))?);
            } else {
                fixed += volume;
            }
            found.push(bed_layer);
        }
        if media <= 0.0 {
            return Err(Problem::new(Term::MediaVolume, Fault::Missing));
        }
        within(Term::MediaVolume, media, MEDIA_M3, |x| cubic_metres(x).into())?;
        let diameter = vessel.inside_diameter.value.value;
        let area = Figure::new(
            square_metres(std::f64::consts::FRAC_PI_4 * diameter * diameter),
            Formula::CrossSection,
            vec![vessel.inside_diameter.input(Term::InsideDiameter)],
        );
        let mut inputs: Vec<Input> = vessel.inputs();
        let mut ceiling = vessel.ceiling().value;
        if let Some(upper) = &vessel.measures.upper_collector {
            inputs.push(upper.input(Term::UpperCollector));
        }
        if let Some(air) = air {
            inputs.push(air.input(Term::AirHead));
            if !(0.0..ceiling).contains(&air.value.value) {
                return Err(Problem::new(
                    Term::AirHead,
                    Fault::OutOfRange {
                        value: air.value.into(),
                        low: metres(0.0).into(),
                        high: metres(ceiling).into(),
                    },
                ));
            }
            ceiling -= air.value.value;
        }
        let ceiling = vessel.cavity.free_below(ceiling);
        let volumes: Vec<Input> = found.iter().map(|layer| layer.volume.input(Term::LayerVolume)).collect();
        inputs.extend(volumes.iter().copied());
        let media_inputs =
            found.iter().filter(|layer| layer.role == Role::Media).map(|l| l.volume.input(Term::LayerVolume)).collect();
        Ok(Bed {
            room: Figure::new((ceiling - fixed - media) / media, Formula::RoomExpansion, inputs),
            media_volume: Figure::new(cubic_metres(media), Formula::MediaVolume, media_inputs),
            layers: found,
            area,
            fixed,
            media,
            ceiling,
            lifted,
        })
    }

    /// Media layers, bottom first.
    pub fn media_layers(&self) -> impl Iterator<Item = &BedLayer> {
        self.layers.iter().filter(|layer| layer.role == Role::Media)
    }

    /// Height of its surface when it stands out by an expansion; none above the rim, or where grains leave.
    ///
    /// Solids are conserved: by volume, then back to a height, not the depth times the expansion.
    #[must_use]
    pub fn expanded_surface(&self, vessel: &Vessel, expansion: &Figure<f64>) -> Option<Figure<Length>> {
        let volume = self.fixed + self.media * (1.0 + expansion.value);
        let height = vessel.cavity.height_of(volume)?;
        let mut inputs = vec![self.media_volume.input(Term::MediaVolume), expansion.input(Term::Expansion)];
        inputs.extend(vessel.inputs());
        Some(Figure::new(metres(height), Formula::ExpandedSurface, inputs))
    }

    /// The same bed with its media lying as a reading says, by their places in the plan.
    pub(crate) fn lying(&self, voidages: &[(usize, Figure<f64>)]) -> Bed {
        let mut bed = self.clone();
        let media = bed.layers.iter_mut().filter(|layer| layer.role == Role::Media);
        for (layer, lifted) in media.zip(&mut bed.lifted) {
            if let Some((_, voidage)) = voidages.iter().find(|(index, _)| *index == layer.index) {
                layer.voidage = voidage.known();
                lifted.voidage = voidage.value;
            }
        }
        bed
    }

    /// What every expansion of it rests on.
    #[must_use]
    pub fn inputs(&self) -> Vec<Input> {
        let mut inputs = vec![self.area.input(Term::CrossSection)];
        for layer in self.media_layers() {
            inputs.extend(layer.inputs());
        }
        inputs
    }

    /// Refuses grains that float in this water, with their layer.
    pub(crate) fn sinks_in(&self, water: &Water) -> Result<(), Problem> {
        for layer in self.media_layers() {
            if let Some(density) = &layer.grains.particle_density {
                sinks(density, water).map_err(|problem| problem.of_layer(layer.index))?;
            }
        }
        Ok(())
    }
}

impl BedLayer {
    /// What its hydraulics rests on.
    #[must_use]
    pub fn inputs(&self) -> Vec<Input> {
        let mut inputs = vec![self.grains.low.input(Term::GrainLow), self.grains.high.input(Term::GrainHigh)];
        inputs.extend(self.grains.effective_size.as_ref().map(|x| x.input(Term::EffectiveSize)));
        inputs.extend(self.grains.uniformity.as_ref().map(|x| x.input(Term::Uniformity)));
        inputs.extend(self.grains.particle_density.as_ref().map(|x| x.input(Term::ParticleDensity)));
        inputs.push(self.sphericity.input(Term::Sphericity));
        inputs.push(self.voidage.input(Term::Voidage));
        inputs
    }

    /// Grains of it that a share by mass is finer than.
    pub(crate) fn solid(&self, share: f64) -> Option<Solid> {
        Some(Solid {
            size: self.grading.size_finer_than(share).value,
            density: self.grains.particle_density.as_ref()?.value.value,
            sphericity: self.sphericity.value,
            voidage: self.voidage.value,
        })
    }

    /// Pressure that water loses in it, Pa, if it lay at this voidage: fraction by fraction.
    pub(crate) fn loss(&self, voidage: f64, fluid: Fluid, v: f64) -> f64 {
        let sum: f64 = self.sizes.iter().map(|size| gradient(self.sphericity.value * size, voidage, fluid, v)).sum();
        self.depth.value.value * sum / self.sizes.len() as f64
    }

    /// Whether the spread of its sizes is a guess.
    #[must_use]
    pub fn guessed_sizes(&self) -> bool {
        matches!(self.grading.by(), GradingBy::MeshOnly | GradingBy::StraightLines)
    }
}

fn bed_layer(index: usize, layer: &Layer, fill: &LayerFill, graded: Graded) -> Result<BedLayer, Problem> {
    let Graded { grains, grading, sizes } = graded;
    if let Some(density) = &grains.particle_density {
        solid_density(density)?;
    }
    let voidage = match (&grains.voidage, &grains.particle_density) {
        (Some(voidage), _) => *voidage,
        // Grains without pores: what isn't grain is water.
        (None, Some(particle)) if !layer.material.is_porous() => {
            let bulk = layer.density();
            Known {
                value: 1.0 - bulk.value.value / particle.value.value,
                basis: bulk.basis.weaker(particle.basis),
                source: Source::Arithmetic,
            }
        }
        _ => return Err(Problem::new(Term::Voidage, Fault::Missing)),
    };
    let sphericity = match (&grains.sphericity, layer.role) {
        (Some(sphericity), _) => *sphericity,
        (None, _) => Known { value: USUAL_SPHERICITY, basis: Basis::Assumed, source: Source::FromMemory },
    };
    shape(&voidage, &sphericity)?;
    Ok(BedLayer {
        index,
        role: layer.role,
        volume: fill.volume.clone(),
        depth: fill.depth_axis.clone(),
        grains,
        grading,
        sizes,
        voidage,
        sphericity,
    })
}

/// A spoonful to a reservoir.
const MEDIA_M3: (f64, f64) = (1e-6, 1e6);

/// Of broken grains nobody knows better of: crushed coal and angular sand 0.73, average sand 0.75.
const USUAL_SPHERICITY: f64 = 0.75;

fn lifted_layer(layer: &BedLayer) -> Result<LiftedLayer, Problem> {
    let density = layer.grains.particle_density.ok_or(Problem::new(Term::ParticleDensity, Fault::Missing))?;
    Ok(LiftedLayer {
        volume: layer.volume.value.value,
        voidage: layer.voidage.value,
        density: density.value.value,
        sphericity: layer.sphericity.value,
        powers: layer.sizes.iter().map(|size| libm::pow(*size, DRAG_POWER)).collect(),
        sizes: layer.sizes.clone(),
    })
}
