"""vessel_volume.csv: volume below a height."""

from fractions import Fraction

from fluids import TANK
from mpmath import mpf
from pint import UnitRegistry

import cases
from vessel import TORISPHERICAL

NAME = "vessel_volume.csv"
COLUMNS = ["id", "source", "head_bottom", "head_top", "inside_diameter_m", "cone_bottom_depth_m", "straight_side_m",
           "neck_height_m", "neck_diameter_m", "riser_diameter_m", "riser_bottom_m", "collector_diameter_m",
           "collector_bottom_m", "collector_top_m", "height_m", "volume_m3", "relative_tolerance", "branch"]
LENGTHS = ["inside_diameter", "cone_bottom_depth", "straight_side", "neck_height", "neck_diameter", "riser_diameter",
           "riser_bottom", "collector_diameter", "collector_bottom", "collector_top"]
FLUIDS = "fluids 1.3.1 TANK"
MPMATH = "mpmath 1.4.1 at 50 digits"
PINT = "mpmath 1.4.1 at 50 digits in inches then pint 0.25.3"
FLUIDS_TOLERANCE = 1e-13  # fluids works in doubles; its worst row is within 1e-15 of the 50-digit value

units = UnitRegistry(non_int_type=Fraction)


def metres(inches):
    """Inches to metres through pint, exactly, then the nearest double."""
    return None if inches is None else float(units.Quantity(Fraction(inches), "inch").to("metre").magnitude)


def cubic_metres(cubic_inches):
    """Cubic inches to cubic feet to cubic metres through pint's exact factors."""
    in_feet = Fraction(1) * units.Quantity(Fraction(1), "inch**3").to("foot**3").magnitude
    in_metres = units.Quantity(in_feet, "foot**3").to("metre**3").magnitude
    return cubic_inches * in_metres.numerator / in_metres.denominator


def row_of(key, source, vessel, branch, us=False):
    """A row with the vessel's columns filled in; in US rows every length goes through pint."""
    row = {"id": key, "source": source, "head_bottom": vessel.head_bottom, "head_top": vessel.head_top, "branch": branch}
    for name in LENGTHS:
        length = getattr(vessel, name)
        row[name + "_m"] = metres(length) if us else length
    return row


def tolerance(vessel, height, net):
    """1e-13 of the shell's volume below that height, as a part of the free volume: 1e-13 unless solids fill most of it.

    A free volume that is a small rest of two large ones carries their rounding, whoever computes it in doubles.
    """
    if net == 0:
        return 0.0
    share = vessel.shell_volume_below(height) / net
    return 1e-13 if share < 2 else float(f"{float(share) * 1e-13:.1e}")


def tank(vessel):
    """The same bare vessel in fluids. Depths are passed in full: its defaults are not what their names say."""
    arguments = {"D": vessel.inside_diameter, "L": vessel.straight_side, "horizontal": False}
    for side, kind in (("sideA", vessel.head_bottom), ("sideB", vessel.head_top)):
        if kind == "ellipsoidal":
            arguments |= {side: "ellipsoidal", side + "_a": vessel.inside_diameter / 4}
        elif kind == "hemispherical":
            arguments |= {side: "spherical", side + "_a": vessel.inside_diameter / 2}
        elif kind == "conical":
            arguments |= {side: "conical", side + "_a": vessel.cone_bottom_depth}
        elif kind != "flat":
            f, k = TORISPHERICAL[kind]
            arguments |= {side: "torispherical", side + "_f": float(f), side + "_k": float(k)}
    return TANK(**arguments)


def fluids_row(key, vessel, height, branch):
    volume = tank(vessel).V_from_h(height, "full")
    exact = vessel.volume_below(height)
    if abs(volume - exact) > FLUIDS_TOLERANCE * exact:
        raise ArithmeticError(f"{key}: fluids {volume!r} and mpmath {exact} part company")
    return row_of(key, FLUIDS, vessel, branch) | {
        "height_m": height, "volume_m3": volume, "relative_tolerance": FLUIDS_TOLERANCE if exact else 0.0}


def mpmath_row(key, vessel, height, branch, us):
    volume = vessel.volume_below(height)
    row = row_of(key, PINT if us else MPMATH, vessel, branch, us)
    row["height_m"] = metres(height) if us else height
    row["volume_m3"] = cubic_metres(volume) if us else volume
    row["relative_tolerance"] = tolerance(vessel, height, volume)
    return row


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for name, vessel in cases.bare_vessels().items():
        for number, (height, branch) in enumerate(cases.heights(vessel, sparse=cases.large(vessel)), 1):
            key = f"fluids_{name}_{number:02}"
            yield key, lambda k=key, v=vessel, h=height, b=branch: fluids_row(k, v, h, b)
    for name, vessel in cases.bare_vessels().items():
        if cases.large(vessel):
            for number, (height, branch) in enumerate(cases.heights(vessel, sparse=True), 1):
                key = f"exact_{name}_{number:02}"
                yield key, lambda k=key, v=vessel, h=height, b=branch: mpmath_row(k, v, h, b, False)
    for name, vessel in cases.fitted_vessels().items():
        for number, (height, branch) in enumerate(cases.heights(vessel), 1):
            key = f"exact_{name}_{number:02}"
            yield key, lambda k=key, v=vessel, h=height, b=branch: mpmath_row(k, v, h, b, False)
    for name, vessel in cases.us_vessels().items():
        for number, (height, branch) in enumerate(cases.heights(vessel, sparse=True), 1):
            key = f"us_{name}_{number:02}"
            yield key, lambda k=key, v=vessel, h=height, b=branch: mpmath_row(k, v, h, b, True)


def crosscheck():
    """(what, holds) pairs: the antiderivatives against quadrature, fluids against mpmath."""
    for name, vessel in (cases.bare_vessels() | cases.fitted_vessels() | cases.us_vessels()).items():
        for part in ("0.11", "0.43", "0.97"):
            height = vessel.rim() * mpf(part)
            exact, summed = vessel.volume_below(height), vessel.volume_by_quadrature(height)
            yield f"{name}: closed form and quadrature at {part} of the rim", abs(exact - summed) <= mpf(10) ** -40 * exact
    worst = mpf(0)
    for vessel in cases.bare_vessels().values():
        made = tank(vessel)
        for height, _ in cases.heights(vessel):
            exact = vessel.volume_below(height)
            if exact:
                worst = max(worst, abs(made.V_from_h(height, "full") - exact) / exact)
    yield f"fluids TANK and mpmath on bare vessels: worst relative difference {float(worst):.1e}", worst < FLUIDS_TOLERANCE
