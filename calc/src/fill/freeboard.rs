//! The room above the media, three ways.

use crate::quantity::{Figure, Length};

/// Media surface up to the upper collector, or to the top tangent line without one.
#[derive(Clone, Debug, PartialEq)]
pub struct Freeboard {
    /// As a length; negative when the surface stands above.
    pub length: Figure<Length>,
    /// As a share of the media bed's depth, underbed excluded; none where there is no media.
    pub ratio: Option<Figure<f64>>,
    /// As the tape reading of the surface.
    pub tape: Figure<Length>,
    /// Depth of all media on the axis.
    pub media_depth: Figure<Length>,
}
