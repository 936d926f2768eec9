"""A vertical vessel at 50 digits: volume below a height, and the inverse.

All lengths in one unit, volume in its cube: metres or inches, it does not matter.

    V(h) = integral from 0 to h of max(0, A_vessel(z) - A_solids(z)) dz

A_vessel is the circle of the inside wall at height z above the lowest inside
point. A_solids is the largest of the coaxial circles that stand at z: the riser
(outside diameter) from its lower end upward without end, the collector between
its bottom and its top.

Every stretch of wall has an exact antiderivative of its radius squared, so no
quadrature is needed; `volume_by_quadrature` integrates the radius all the same
and is how the antiderivatives are checked.

Heads, with D the inside diameter (equations: docstrings of fluids.geometry 1.3.1,
which follow D. Jones, "Calculating Tank Volume"):
  ellipsoidal 2:1 (depth D/4), hemispherical, flat, cone with the apex down,
  torispherical with dish radius f D and knuckle radius k D:
    sin(alpha) = (1 - 2k) / (2 (f - k)),
    cap depth a1 = f D (1 - cos alpha), knuckle depth a2 = k D cos alpha.
The upper head is the lower head's shape upside down.
"""

from dataclasses import dataclass
from typing import Callable, Optional

from mpmath import asin, cos, findroot, mp, mpf, pi, quad, sqrt

mp.dps = 50

# f and k as listed in the notes of fluids.TANK 1.3.1; both multiply the INSIDE diameter here.
TORISPHERICAL = {
    "asme_fd": (mpf(1), mpf(6) / 100),
    "din_28011": (mpf(1), mpf(10) / 100),
    "din_28013": (mpf(8) / 10, mpf(154) / 1000),
}


@dataclass
class Stretch:
    """A piece of wall between two heights, without the factor pi.

    radius2: radius squared at a height
    swept:   an antiderivative of radius2
    where:   the height at which radius squared has a value (None for a cylinder)
    """

    name: str
    low: mpf
    high: mpf
    radius2: Callable
    swept: Callable
    where: Optional[Callable]


def head(kind, diameter, cone_depth=None):
    """Stretches of a bottom head, lowest inside point at 0, in rising order."""
    d = mpf(diameter)
    r = d / 2
    if kind == "flat":
        return []
    if kind == "ellipsoidal":
        a = d / 4
        return [Stretch(
            "head", mpf(0), a,
            lambda z: r**2 * (1 - ((a - z) / a) ** 2),
            lambda z: r**2 * (z**2 / a - z**3 / (3 * a**2)),
            lambda q: a * (1 - sqrt(1 - q / r**2)),
        )]
    if kind == "hemispherical":
        return [Stretch(
            "head", mpf(0), r,
            lambda z: z * (d - z),
            lambda z: z**2 * (r - z / 3),
            lambda q: r - sqrt(r**2 - q),
        )]
    if kind == "conical":
        a = mpf(cone_depth)
        return [Stretch(
            "head", mpf(0), a,
            lambda z: (r * z / a) ** 2,
            lambda z: r**2 * z**3 / (3 * a**2),
            lambda q: a * sqrt(q) / r,
        )]
    f, k = TORISPHERICAL[kind]
    alpha = asin((1 - 2 * k) / (2 * (f - k)))
    dish, knuckle = f * d, k * d
    a1 = dish * (1 - cos(alpha))
    a = a1 + knuckle * cos(alpha)
    c = r - knuckle

    def turned(y):  # integral of (c + sqrt(knuckle^2 - y^2))^2 over y
        root = sqrt(knuckle**2 - y**2)
        return c**2 * y + c * (y * root + knuckle**2 * asin(y / knuckle)) + knuckle**2 * y - y**3 / 3

    return [
        Stretch(
            "cap", mpf(0), a1,
            lambda z: z * (2 * dish - z),
            lambda z: z**2 * (dish - z / 3),
            lambda q: dish - sqrt(dish**2 - q),
        ),
        Stretch(
            "knuckle", a1, a,
            lambda z: (c + sqrt(knuckle**2 - (a - z) ** 2)) ** 2,
            lambda z: -turned(a - z),
            lambda q: a - sqrt(knuckle**2 - (sqrt(q) - c) ** 2),
        ),
    ]


def upside_down(stretch, crown):
    """The same wall as part of an upper head whose highest inside point is at `crown`."""
    return Stretch(
        stretch.name, crown - stretch.high, crown - stretch.low,
        lambda z: stretch.radius2(crown - z),
        lambda z: -stretch.swept(crown - z),
        lambda q: crown - stretch.where(q),
    )


def cylinder(name, low, high, diameter):
    r2 = (mpf(diameter) / 2) ** 2
    return Stretch(name, low, high, lambda z: r2, lambda z: r2 * z, None)


@dataclass
class Vessel:
    """Names and meaning of the fields: README.md, "Columns"."""

    head_bottom: str
    head_top: str
    inside_diameter: float
    straight_side: float
    cone_bottom_depth: Optional[float] = None
    neck_height: Optional[float] = None
    neck_diameter: Optional[float] = None
    riser_diameter: Optional[float] = None
    riser_bottom: Optional[float] = None
    collector_diameter: Optional[float] = None
    collector_bottom: Optional[float] = None
    collector_top: Optional[float] = None

    def stretches(self):
        """The whole wall in rising order, named as in the column `branch`."""
        d = mpf(self.inside_diameter)
        bottom = head(self.head_bottom, d, self.cone_bottom_depth)
        top = head(self.head_top, d)
        tangent = bottom[-1].high if bottom else mpf(0)
        upper_tangent = tangent + mpf(self.straight_side)
        crown = upper_tangent + (top[-1].high if top else mpf(0))
        wall = []
        for piece in bottom:
            piece.name = "bottom_" + piece.name
            wall.append(piece)
        wall.append(cylinder("straight_side", tangent, upper_tangent, d))
        for piece in reversed(top):
            turned = upside_down(piece, crown)
            turned.name = "top_" + piece.name
            wall.append(turned)
        if self.neck_height:
            wall.append(cylinder("neck", crown, crown + mpf(self.neck_height), self.neck_diameter))
        return wall

    def rim(self):
        """Height of the opening."""
        return self.stretches()[-1].high

    def _solids_edges(self):
        return [mpf(edge) for edge in (self.riser_bottom, self.collector_bottom, self.collector_top) if edge is not None]

    def solids_radius2(self, z):
        """Radius squared of the largest solid circle at z (the upper side counts at an edge)."""
        q = mpf(0)
        if self.riser_diameter is not None and z >= mpf(self.riser_bottom):
            q = (mpf(self.riser_diameter) / 2) ** 2
        if self.collector_diameter is not None and mpf(self.collector_bottom) <= z < mpf(self.collector_top):
            q = max(q, (mpf(self.collector_diameter) / 2) ** 2)
        return q

    def section(self, z):
        """Free cross-section at z."""
        z = mpf(z)
        for piece in self.stretches():
            if z < piece.high or piece.name == self.stretches()[-1].name:
                return pi * max(mpf(0), piece.radius2(z) - self.solids_radius2(z))
        return mpf(0)

    def _runs(self, height):
        """(piece, from, to, solid radius squared) where the wall is wider than the solids, below `height`."""
        height = mpf(height)
        for piece in self.stretches():
            low, high = piece.low, min(piece.high, height)
            if high <= low:
                continue
            edges = [low] + sorted(e for e in self._solids_edges() if low < e < high) + [high]
            for start, end in zip(edges, edges[1:]):
                q = self.solids_radius2(start)
                at_start, at_end = piece.radius2(start) > q, piece.radius2(end) > q
                if at_start and at_end:
                    yield piece, start, end, q
                elif at_end:  # the wall widens upward past the solid
                    yield piece, piece.where(q), end, q
                elif at_start:
                    yield piece, start, piece.where(q), q

    def volume_below(self, height):
        """Free volume below a height, exact to the working precision."""
        return pi * sum((piece.swept(end) - piece.swept(start) - q * (end - start)
                         for piece, start, end, q in self._runs(height)), mpf(0))

    def shell_volume_below(self, height):
        """The same with nothing inside."""
        bare = Vessel(self.head_bottom, self.head_top, self.inside_diameter, self.straight_side,
                      self.cone_bottom_depth, self.neck_height, self.neck_diameter)
        return bare.volume_below(height)

    def volume_by_quadrature(self, height):
        """Free volume below a height from the radius alone (Gauss-Legendre): checks `volume_below`."""
        return pi * sum((quad(lambda z, p=piece, s=q: p.radius2(z) - s, [start, end], method="gauss-legendre")
                         for piece, start, end, q in self._runs(height)), mpf(0))

    def height_holding(self, volume):
        """The height below which the free volume is `volume` (mpmath.findroot, Anderson-Bjorck on [0, rim])."""
        volume = mpf(volume)
        full = self.volume_below(self.rim())
        return findroot(lambda z: (self.volume_below(z) - volume) / full, (mpf(0), self.rim()),
                        solver="anderson", tol=mpf(10) ** -60, maxsteps=400)

    def first_free_height(self):
        """Lowest height with room beside the solids, or None when that is the very bottom."""
        for _, start, _, _ in self._runs(self.rim()):
            return start if start > 0 else None
        return None
