"""vessel_height.csv: the height that holds a volume."""

from mpmath import mpf, pi

import cases
from vessel import Vessel
from vessel_volume import COLUMNS, MPMATH, PINT, cubic_metres, metres, row_of

NAME = "vessel_height.csv"
TOLERANCE = 1e-11  # of the height of the rim

# Volumes typed, not taken from a height. SI in m3 and metres.
TYPED = {
    "typed_ell": (Vessel("ellipsoidal", "ellipsoidal", 0.254, 1.4), 0.0075229170),
    "typed_fd": (Vessel("asme_fd", "asme_fd", 0.6096, 1.4), 0.0133592128),
    "typed_d11": (Vessel("din_28011", "din_28011", 1.2192, 1.4), 0.9965717),
    "typed_cone": (Vessel("conical", "flat", 0.9144, 1.4, cone_bottom_depth=0.2286), 0.0101945005),
}
# Gravel, then two bags of one cubic foot on it, in cubic feet in all; 12 in vessel.
TYPED_US = {"bag_gravel": 0.15, "bag_first": 1.15, "bag_second": 2.15}


def wide_enough(vessel, height):
    """The free section beside this height is over 1 % of the shell's: below that a height is not well determined."""
    full = pi * mpf(vessel.inside_diameter) ** 2 / 4
    return all(vessel.section(mpf(height) * (1 + mpf(10) ** -9 * side)) > full / 100 for side in (-1, 0, 1))


def si_row(key, vessel, volume, branch):
    return row_of(key, MPMATH, vessel, branch) | {
        "height_m": vessel.height_holding(volume), "volume_m3": volume, "relative_tolerance": TOLERANCE}


def us_row(key, vessel, cubic_inches, branch):
    inches = vessel.height_holding(cubic_inches)
    # Exact: an mpf is a binary fraction; pint's factor for inches is exact.
    return row_of(key, PINT, vessel, branch, us=True) | {
        "height_m": inches * mpf(254) / 10000, "volume_m3": cubic_metres(mpf(cubic_inches)),
        "relative_tolerance": TOLERANCE}


def chosen(vessel):
    """Well determined heights of the sparse list: every branch, and one side of every joint and edge in turn."""
    found, sides = [], 0
    for number, (height, branch) in enumerate(cases.heights(vessel, sparse=True), 1):
        if height == 0 or not wide_enough(vessel, height):
            continue
        if branch.endswith(("_below", "_above")):
            sides += 1
            if sides % 3 != 1:
                continue
        found.append((number, height, branch))
    return found


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    bare = {name: vessel for name, vessel in cases.bare_vessels().items() if not cases.large(vessel)}
    fitted = {name: vessel for name, vessel in cases.fitted_vessels().items() if not name.endswith(("_riser", "_neck"))}
    for name, vessel in (bare | fitted).items():
        for number, height, branch in chosen(vessel):
            key = f"inverse_{name}_{number:02}"
            yield key, lambda k=key, v=vessel, h=height, b=branch: si_row(k, v, float(v.volume_below(h)), b)
    for name, (vessel, volume) in TYPED.items():
        yield f"inverse_{name}", lambda k=f"inverse_{name}", v=vessel, q=volume: si_row(k, v, q, "typed_volume")
    for name, vessel in cases.us_vessels().items():
        for number, height, branch in chosen(vessel):
            key = f"us_inverse_{name}_{number:02}"
            yield key, lambda k=key, v=vessel, h=height, b=branch: us_row(k, v, float(v.volume_below(h)), b)
    for name, feet in TYPED_US.items():
        yield f"us_inverse_{name}", lambda k=f"us_inverse_{name}", q=feet: us_row(
            k, cases.us_vessels()["12x52_riser"], mpf(q) * 1728, "typed_volume")


def crosscheck():
    """(what, holds) pairs: the volume below the height found is the volume asked for; pint's inch."""
    yield "pint's inch is 0.0254 m and its cubic foot 0.028316846592 m3", (
        metres(1) == 0.0254 and float(cubic_metres(mpf(1728))) == 0.028316846592)
    for name, (vessel, volume) in TYPED.items():
        height = vessel.height_holding(volume)
        yield f"{name}: volume below the height found", abs(vessel.volume_by_quadrature(height) - mpf(volume)) < mpf(10) ** -40
