//! Where the vessel is open, and where grains are poured in.

/// How the vessel opens.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Opening {
    /// One threaded opening at the top; the riser stands in it and grains pass beside it.
    TopOnly,
    /// Threaded openings at top and bottom; no riser.
    TopAndBottom,
    /// Water goes in and out at the side; the top opening is free for pouring.
    SidePorts,
    /// A flanged top opening; grains pass beside the riser.
    Flange,
    /// A manway that grains are poured through, away from the riser.
    Manway,
    /// A fill port of its own, away from the riser.
    FillPort,
}

impl Opening {
    /// All of them.
    pub const ALL: &'static [Opening] = &[
        Opening::TopOnly,
        Opening::TopAndBottom,
        Opening::SidePorts,
        Opening::Flange,
        Opening::Manway,
        Opening::FillPort,
    ];

    /// The permanent id.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Opening::TopOnly => "top_only",
            Opening::TopAndBottom => "top_and_bottom",
            Opening::SidePorts => "side_ports",
            Opening::Flange => "flange",
            Opening::Manway => "manway",
            Opening::FillPort => "fill_port",
        }
    }

    /// Whether grains are poured through the gap between riser and bore.
    #[must_use]
    pub const fn pours_beside_riser(self) -> bool {
        matches!(self, Opening::TopOnly | Opening::Flange)
    }

    /// Whether a riser can stand in it.
    #[must_use]
    pub const fn takes_riser(self) -> bool {
        !matches!(self, Opening::TopAndBottom | Opening::SidePorts)
    }

    /// Whether it seals by a thread with an O-ring.
    #[must_use]
    pub const fn threaded(self) -> bool {
        matches!(self, Opening::TopOnly | Opening::TopAndBottom | Opening::FillPort)
    }
}
