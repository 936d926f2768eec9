"""The vessels and heights the tables are made of. Dimensions are invented; SI in metres, US in inches."""

from mpmath import mpf

from vessel import Vessel

HEADS = ["flat", "ellipsoidal", "hemispherical", "asme_fd", "din_28011", "din_28013"]
SHORT = {"flat": "flat", "ellipsoidal": "ell", "hemispherical": "hemi", "asme_fd": "fd",
         "din_28011": "d11", "din_28013": "d13", "conical": "cone"}

# Inside diameter and straight side, metres; taken in turn.
SHELLS = [(0.15, 0.62), (0.2, 0.8), (0.254, 1.2), (0.29845, 1.121), (0.33, 1.0), (0.4, 1.25),
          (0.49, 1.1), (0.6096, 1.4), (0.75, 1.5), (0.9144, 1.4), (1.2, 1.75), (1.6, 1.6)]

# Outside diameter of a riser that suits the shell, neck diameter, neck height.
def fittings(diameter):
    if diameter < 0.35:
        return 0.02667, 0.0635, 0.0254
    if diameter < 0.8:
        return 0.0334, 0.1016, 0.03
    return 0.06033, 0.1524, 0.0381


def _cone(bottom, diameter):
    return {"cone_bottom_depth": diameter / 4 if diameter < 0.5 else diameter * 0.75} if bottom == "conical" else {}


def bare_vessels():
    """Nothing inside and no neck, each head at both ends, then mixed heads."""
    pairs = [(kind, kind) for kind in HEADS] + [("conical", "flat"), ("conical", "ellipsoidal")]
    pairs += [("asme_fd", "hemispherical"), ("din_28013", "asme_fd"), ("hemispherical", "din_28011"),
              ("ellipsoidal", "flat"), ("flat", "din_28013"), ("conical", "din_28011")]
    found = {}
    for number, (bottom, top) in enumerate(pairs):
        # Two well-known shells for the symmetrical heads: 10 in and 63 in inside.
        shells = [(0.254, 1.2), (1.6002, 1.6)] if bottom == top else [SHELLS[(5 * number) % len(SHELLS)]]
        for diameter, side in shells:
            name = f"{SHORT[bottom]}_{SHORT[top]}_{round(diameter * 1000)}"
            found[name] = Vessel(bottom, top, diameter, side, **_cone(bottom, diameter))
    return found


def large(vessel):
    """The 63 in shells, which get the shorter list of heights."""
    return vessel.inside_diameter == 1.6002


def fitted_vessels():
    """Riser, neck, collector; alone and together; some of the awkward ways they can stand."""
    found = {}
    pairs = [(kind, kind) for kind in HEADS] + [("conical", "ellipsoidal")]
    for number, (bottom, top) in enumerate(pairs):
        for kit_number, kit in enumerate(["riser", "neck", "all"]):
            diameter, side = SHELLS[(number * 3 + kit_number * 5) % len(SHELLS)]
            riser, bore, tall = fittings(diameter)
            parts = _cone(bottom, diameter)
            if kit in ("riser", "all"):
                parts |= {"riser_diameter": riser, "riser_bottom": 0.0}
            if kit in ("neck", "all"):
                parts |= {"neck_height": tall, "neck_diameter": bore}
            if kit == "all":
                # A basket round the lower end, standing on the lowest point or just off it.
                foot = 0.0 if number % 2 else 0.004
                parts |= {"riser_bottom": foot, "collector_diameter": round(riser * 2.2, 5),
                          "collector_bottom": foot, "collector_top": foot + 0.075}
            found[f"{SHORT[bottom]}_{SHORT[top]}_{kit}"] = Vessel(bottom, top, diameter, side, **parts)
    neck = {"neck_height": 0.03, "neck_diameter": 0.1016}
    found["mixed_fd_hemi_all"] = Vessel("asme_fd", "hemispherical", 0.49, 1.1, riser_diameter=0.04826, riser_bottom=0.012,
                                        collector_diameter=0.11, collector_bottom=0.012, collector_top=0.14, **neck)
    found["mixed_d13_fd_all"] = Vessel("din_28013", "asme_fd", 0.75, 1.5, riser_diameter=0.05, riser_bottom=0.03,
                                       collector_diameter=0.45, collector_bottom=0.03, collector_top=0.09, **neck)
    found["mixed_hemi_d11_all"] = Vessel("hemispherical", "din_28011", 0.33, 1.0, riser_diameter=0.032, riser_bottom=0.0,
                                         collector_diameter=0.06, collector_bottom=0.0, collector_top=0.2, **neck)
    found["mixed_cone_d13_all"] = Vessel("conical", "din_28013", 0.9144, 1.4, cone_bottom_depth=0.79, riser_diameter=0.063,
                                         riser_bottom=0.1, collector_diameter=0.14, collector_bottom=0.06,
                                         collector_top=0.2, **neck)
    # The collector is narrower than the riser: the riser decides.
    found["narrow_collector"] = Vessel("ellipsoidal", "ellipsoidal", 0.254, 1.2, riser_diameter=0.0334, riser_bottom=0.0,
                                       collector_diameter=0.03, collector_bottom=0.0, collector_top=0.05)
    # Laterals and no riser (side ports).
    found["collector_alone"] = Vessel("din_28011", "din_28011", 1.2, 1.75, collector_diameter=0.7,
                                      collector_bottom=0.15, collector_top=0.28)
    # The collector reaches from the head into the straight side.
    found["tall_collector"] = Vessel("asme_fd", "ellipsoidal", 0.15, 0.62, riser_diameter=0.02667, riser_bottom=0.0,
                                     collector_diameter=0.048, collector_bottom=0.0, collector_top=0.12,
                                     neck_height=0.02, neck_diameter=0.0635)
    # A collector so wide that the wall passes it only in the knuckle.
    found["knuckle_collector"] = Vessel("asme_fd", "asme_fd", 0.6, 1.3, riser_diameter=0.0334, riser_bottom=0.02,
                                        collector_diameter=0.56, collector_bottom=0.04, collector_top=0.2)
    # 10 in, riser from the lowest point: half full by symmetry of the shell.
    found["half_full_riser"] = Vessel("ellipsoidal", "ellipsoidal", 0.254, 1.2, riser_diameter=0.0267, riser_bottom=0.0)
    return found


def us_vessels():
    """Whole and vulgar inches."""
    neck = {"neck_height": 1.0, "neck_diameter": 2.5}
    wide = {"neck_height": 1.5, "neck_diameter": 6.0}
    return {
        # 12 in nominal, 51 in from the rim to the lowest inside point.
        "12x52_riser": Vessel("ellipsoidal", "ellipsoidal", 11.75, 44.125, riser_diameter=1.05, riser_bottom=0.0, **neck),
        "8x44_all": Vessel("hemispherical", "hemispherical", 7.84, 34.0, riser_diameter=1.05, riser_bottom=0.25,
                           collector_diameter=2.0, collector_bottom=0.25, collector_top=3.5, **neck),
        "14x65_all": Vessel("din_28013", "din_28013", 13.72, 55.5, riser_diameter=1.315, riser_bottom=0.0,
                            collector_diameter=3.0, collector_bottom=0.0, collector_top=2.75, **neck),
        "21x62_all": Vessel("asme_fd", "ellipsoidal", 20.5, 50.0, riser_diameter=1.9, riser_bottom=0.5,
                            collector_diameter=8.0, collector_bottom=0.5, collector_top=2.5, **wide),
        "30x72_neck": Vessel("din_28011", "asme_fd", 29.25, 60.0, **wide),
        "36x72_cone": Vessel("conical", "flat", 35.25, 48.0, cone_bottom_depth=18.0, riser_diameter=2.375, riser_bottom=1.0),
        "63x86_all": Vessel("asme_fd", "asme_fd", 61.75, 64.0, riser_diameter=3.5, riser_bottom=0.0,
                            collector_diameter=30.0, collector_bottom=5.0, collector_top=8.0, **wide),
    }


def heights(vessel, sparse=False):
    """(height as a double, branch) in rising order: inside every stretch, and at and beside every joint and edge.

    Beside means joint*(1 - 1e-9) and joint*(1 + 1e-9). The rim itself is approached from below only:
    whether the sum of a vessel's parts reaches the rim to the last bit is not a question about volume.
    """
    wall = vessel.stretches()
    rim = wall[-1].high
    found = [(0.0, "lowest_point")]

    def beside(point, name):
        for factor, side in ((mpf(1) - mpf(10) ** -9, "below"), (mpf(1), "at"), (mpf(1) + mpf(10) ** -9, "above")):
            if sparse and side == "at":
                continue
            found.append((float(point * factor), f"{name}_{side}"))

    for place, piece in enumerate(wall):
        for part in ((0.53,) if sparse else (0.07, 0.61)):
            found.append((float(piece.low + (piece.high - piece.low) * part), piece.name))
        if piece.high < rim:
            beside(piece.high, f"joint_{piece.name}_{wall[place + 1].name}")
    for edge, name in ((vessel.riser_bottom, "riser_bottom"), (vessel.collector_bottom, "collector_bottom"),
                       (vessel.collector_top, "collector_top")):
        if edge:
            beside(mpf(edge), name)
    start = vessel.first_free_height()
    if start is not None:
        found.append((float(start * mpf("0.9")), "no_room"))
        found.append((float(start * mpf("1.05")), "first_room"))
    found.append((float(rim * (mpf(1) - mpf(10) ** -9)), "rim_below"))
    if not sparse:
        found.append((float(rim * (mpf(1) - mpf(10) ** -12)), "rim"))
    once = {}
    for height, branch in found:
        once.setdefault(height, branch)
    return sorted(once.items())
