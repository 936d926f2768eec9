//! What a drawing is made of.

/// One mark of a drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Shape {
    /// Where it is.
    pub geometry: Geometry,
    /// What it stands for; decides how it looks.
    pub class: Class,
    /// The layer it belongs to, counted from the bottom at 0; touching it selects that layer.
    pub layer: Option<usize>,
}

/// Where a mark is, in CSS pixels from the upper left corner.
#[derive(Clone, Debug, PartialEq)]
pub enum Geometry {
    /// Any outline, in the notation of SVG paths.
    Path {
        /// The notation.
        d: String,
    },
    /// A straight line.
    Line {
        /// From here,
        x1: f64,
        /// from here,
        y1: f64,
        /// to here,
        x2: f64,
        /// to here.
        y2: f64,
    },
    /// A circle.
    Circle {
        /// Centre.
        cx: f64,
        /// Centre.
        cy: f64,
        /// Radius.
        r: f64,
    },
    /// An upright rectangle.
    Rect {
        /// Left edge.
        x: f64,
        /// Upper edge.
        y: f64,
        /// Width.
        width: f64,
        /// Height.
        height: f64,
        /// Radius of its corners.
        round: f64,
    },
    /// One line of text.
    Text {
        /// Where its anchor is.
        x: f64,
        /// Its base line.
        y: f64,
        /// Which end of it stands at `x`.
        anchor: Anchor,
        /// The text.
        text: String,
        /// Size of the letters.
        size: f64,
    },
}

/// Which end of a text stands at its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// Its beginning.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

impl Anchor {
    /// As SVG says it.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Anchor::Start => "start",
            Anchor::Middle => "middle",
            Anchor::End => "end",
        }
    }
}

macro_rules! classes {
    ($($(#[$doc:meta])* $variant:ident = $name:literal),* $(,)?) => {
        /// What a mark stands for.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Class {
            $($(#[$doc])* $variant),*
        }

        impl Class {
            /// All of them.
            pub const ALL: &'static [Class] = &[$(Class::$variant),*];

            /// The class of the style sheet.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Class::$variant => $name),* }
            }
        }
    };
}

classes! {
    /// The shell's outline.
    Shell = "section-shell",
    /// The outline of a vessel that isn't known.
    Ghost = "section-ghost",
    /// Its question mark.
    Query = "section-query",
    /// Solid metal: rim, arrowheads, plates.
    Solid = "section-solid",
    /// The axis.
    Axis = "section-axis",
    /// A pipe or a screen, hollow.
    Hollow = "section-hollow",
    /// A slot or another fine edge of a fitting.
    Slot = "section-slot",
    /// The room a layer fills.
    Area = "section-area",
    /// Hatching by lines.
    Hatch = "section-hatch",
    /// Hatching by filled dots.
    Dots = "section-dots",
    /// Hatching by points.
    Stipple = "section-stipple",
    /// A layer's surface under another layer.
    Surface = "section-surface",
    /// The surface of all.
    TopSurface = "section-top",
    /// The surface after a pack.
    PackSurface = "section-pack",
    /// The surface of the bed that the coldest water lifts.
    Expanded = "section-expanded",
    /// The same in the warmest water.
    ExpandedWarm = "section-expanded-warm",
    /// A surface as it was read.
    Loaded = "section-loaded",
    /// Clears the ground under a text.
    Ground = "section-ground",
    /// The frame of a sample of hatching.
    Sample = "section-sample",
    /// A dimension line.
    Dimension = "section-dimension",
    /// A line that carries a height out to its dimension.
    Extension = "section-extension",
    /// A line from a text to what it belongs to.
    Leader = "section-leader",
    /// Clears the ground under a line.
    Halo = "section-halo",
    /// The origin of running dimensions.
    Origin = "section-origin",
    /// The frame of a reading.
    Box = "section-box",
    /// The frame of a reading that was taken.
    ReadBox = "section-read-box",
    /// The circle of a layer's number.
    Badge = "section-badge",
    /// The circle of a layer that has no answer.
    OpenBadge = "section-open-badge",
    /// A layer's number.
    Number = "section-number",
    /// A figure people work with.
    Reading = "section-reading",
    /// A figure that was read.
    ReadFigure = "section-read-figure",
    /// What explains a figure.
    Small = "section-small",
    /// Clears the ground of a chart or under its texts.
    ChartGround = "chart-ground",
    /// What a chart rules out.
    ChartHatch = "chart-hatch",
    /// More than there is.
    ChartCross = "chart-cross",
    /// A line that carries a value across.
    ChartGuide = "chart-guide",
    /// A limit on the likely line.
    ChartLikely = "chart-likely",
    /// The same on the cautious line.
    ChartCautious = "chart-cautious",
    /// Where the finest grains leave.
    ChartFinest = "chart-finest",
    /// The frame of a chart.
    ChartAxis = "chart-axis",
    /// A mark on an axis.
    ChartTick = "chart-tick",
    /// A range on an axis.
    ChartRange = "chart-range",
    /// What there is.
    ChartAvailable = "chart-available",
    /// What is set.
    ChartChosen = "chart-chosen",
    /// The mark of a verdict.
    ChartSign = "chart-sign",
    /// The ring round half a mark.
    ChartRing = "chart-ring",
    /// The frame of a sample of hatching.
    ChartSample = "chart-sample",
    /// What a line is.
    ChartLabel = "chart-label",
    /// How much there is.
    ChartStrong = "chart-strong",
    /// What is set, in words.
    ChartSet = "chart-set",
}

impl Class {
    /// Width of a letter over its size: more than fonts of the system take for digits.
    #[must_use]
    pub const fn letter_width(self) -> f64 {
        match self {
            Class::Reading
            | Class::ReadFigure
            | Class::Number
            | Class::Query
            | Class::ChartStrong
            | Class::ChartSet => 0.7,
            _ => 0.62,
        }
    }
}

/// The room a mark takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extent {
    /// Left edge.
    pub left: f64,
    /// Upper edge.
    pub top: f64,
    /// Right edge.
    pub right: f64,
    /// Lower edge.
    pub bottom: f64,
}

impl Extent {
    /// Whether two overlap.
    #[must_use]
    pub fn meets(&self, other: &Extent) -> bool {
        self.left < other.right && other.left < self.right && self.top < other.bottom && other.top < self.bottom
    }

    /// The same, larger by a margin all round.
    #[must_use]
    pub fn grown(&self, by: f64) -> Extent {
        Extent { left: self.left - by, top: self.top - by, right: self.right + by, bottom: self.bottom + by }
    }
}

/// The width a text may take.
pub(super) fn text_width(text: &str, class: Class, size: f64) -> f64 {
    text.chars().map(|c| if c == ' ' { 0.6 } else { 1.0 }).sum::<f64>() * class.letter_width() * size
}

impl Shape {
    /// The room a text takes, reckoned generously; none for other marks.
    #[must_use]
    pub fn text_extent(&self) -> Option<Extent> {
        let Geometry::Text { x, y, anchor, text, size } = &self.geometry else { return None };
        let width = text_width(text, self.class, *size);
        let left = match anchor {
            Anchor::Start => *x,
            Anchor::Middle => x - width / 2.0,
            Anchor::End => x - width,
        };
        Some(Extent { left, top: y - 0.76 * size, right: left + width, bottom: y + 0.22 * size })
    }
}

/// A coordinate as short as it can be written to a hundredth of a pixel.
pub(super) fn number(value: f64) -> String {
    let text = crate::decimal::to_places(value, 2);
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" || text.is_empty() { "0".to_owned() } else { text.to_owned() }
}

/// Adds a letter of a path's notation and a place to it.
pub(super) fn pen(d: &mut String, letter: char, x: f64, y: f64) {
    d.push(letter);
    d.push_str(&number(x));
    d.push(' ');
    d.push_str(&number(y));
}

/// The middle of the pixel a coordinate falls in: a line of odd width is crisp there.
pub(super) fn crisp(value: f64) -> f64 {
    value.floor() + 0.5
}
