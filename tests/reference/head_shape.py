"""head_shape.csv: depth and volume of a head as numbers of the inside diameter, to 50 digits."""

from fluids.geometry import V_vertical_conical, V_vertical_ellipsoidal, V_vertical_spherical, V_vertical_torispherical
from mpmath import mpf, nstr, pi, quad

from vessel import TORISPHERICAL, head

NAME = "head_shape.csv"
COLUMNS = ["head", "depth_per_diameter", "volume_per_diameter_cubed", "source"]
SOURCE = "mpmath 1.4.1 at 50 digits"
CONE_DEPTHS = ["0.25", "0.5", "0.75"]


def shapes():
    """(name of the row, stretches of the head for a diameter of 1)."""
    for kind in ["flat", "ellipsoidal", "hemispherical", *TORISPHERICAL]:
        yield kind, head(kind, 1)
    for depth in CONE_DEPTHS:
        yield f"conical {depth}", head("conical", 1, mpf(depth))


def sizes(pieces):
    depth = pieces[-1].high if pieces else mpf(0)
    return depth, pi * sum((p.swept(p.high) - p.swept(p.low) for p in pieces), mpf(0))


def made(name, pieces):
    depth, volume = sizes(pieces)
    return {"head": name.split()[0], "depth_per_diameter": nstr(depth, 50), "volume_per_diameter_cubed": nstr(volume, 50),
            "source": SOURCE}


def pending():
    """(id, function that makes the row) for every row of the table, in order."""
    for name, pieces in shapes():
        yield name, lambda n=name, p=pieces: made(n, p)


def crosscheck():
    """(what, holds) pairs: quadrature of the radius, and fluids where it has the shape."""
    for name, pieces in shapes():
        depth, volume = sizes(pieces)
        summed = pi * sum((quad(p.radius2, [p.low, p.high], method="gauss-legendre") for p in pieces), mpf(0))
        yield f"{name}: closed form and quadrature", abs(volume - summed) < mpf(10) ** -40
        kind = name.split()[0]
        a = float(depth)
        if kind == "ellipsoidal":
            other = V_vertical_ellipsoidal(1.0, a, a)
        elif kind == "hemispherical":
            other = V_vertical_spherical(1.0, a, a)
        elif kind == "conical":
            other = V_vertical_conical(1.0, a, a)
        elif kind in TORISPHERICAL:
            f, k = TORISPHERICAL[kind]
            other = V_vertical_torispherical(1.0, float(f), float(k), a)
        else:
            continue
        yield f"{name}: fluids and mpmath", abs(volume - other) < mpf(10) ** -14
