"""Flow upward and downward through a bed of grains: the formulas the hydraulic tables are made of.

SI throughout, g = 9.80665 m/s2. Closed forms are worked at 50 digits; the Ergun equation is that of fluids, and what it
is equal to is found by scipy's brentq to the last bits of a double. `ergun_voidage_by_cubic` and `ergun_speed_by_square`
are other ways to the same values, at 50 digits, and are how brentq is checked.
"""

from fluids.drag import v_terminal
from fluids.packed_bed import Ergun
from mpmath import cbrt, findroot, mp, mpf, sqrt
from scipy.optimize import brentq

mp.dps = 50

GRAVITY = 9.80665
EXACT = "mpmath 1.4.1 at 50 digits"
ERGUN = "fluids 1.3.1 Ergun"
SOLVED = "fluids 1.3.1 Ergun solved by scipy 1.17.1 brentq"


def root(function, low, high):
    """Where the function is 0, as near as doubles go."""
    return brentq(function, low, high, xtol=1e-30, rtol=8.9e-16, maxiter=300)


def galileo(d, solid, rho, mu):
    """Ga = d^3 rho (rho_s - rho) g / mu^2, also called Archimedes."""
    return mpf(d) ** 3 * mpf(rho) * (mpf(solid) - mpf(rho)) * mpf(GRAVITY) / mpf(mu) ** 2


def wen_yu_speed(d, solid, rho, mu):
    """Minimum fluidisation: Re = sqrt(33.7^2 + 0.0408 Ga) - 33.7."""
    reynolds = sqrt(mpf("33.7") ** 2 + mpf("0.0408") * galileo(d, solid, rho, mu)) - mpf("33.7")
    return reynolds * mpf(mu) / (mpf(rho) * mpf(d))


def buoyant_weight(voidage, solid, rho):
    """Of the grains in a cubic metre of bed, N/m3."""
    return (1 - voidage) * (solid - rho) * GRAVITY


def ergun_speed(d, sphericity, voidage, solid, rho, mu):
    """Minimum fluidisation: Ergun's pressure gradient equals the buoyant weight."""
    weight = buoyant_weight(voidage, solid, rho)
    return root(lambda v: Ergun(sphericity * d, voidage, v, rho, mu, 1.0) - weight, 1e-9, 10.0)


def ergun_speed_by_square(d, sphericity, voidage, solid, rho, mu):
    """The same from the quadratic in v, at 50 digits."""
    size, e = mpf(sphericity) * mpf(d), mpf(voidage)
    square = mpf("1.75") * mpf(rho) / (size * e**3)
    linear = 150 * mpf(mu) * (1 - e) / (size**2 * e**3)
    weight = (mpf(solid) - mpf(rho)) * mpf(GRAVITY)
    return 2 * weight / (linear + sqrt(linear**2 + 4 * square * weight))


def ergun_voidage(d, sphericity, speed, solid, rho, mu):
    """Voidage at which Ergun's gradient equals the buoyant weight; None where it is not below 1.

    Both sides are divided by 1 - e, which leaves a falling function of e.
    """
    def excess(e):
        return Ergun(sphericity * d, e, speed, rho, mu, 1.0) / (1 - e) - (solid - rho) * GRAVITY
    high = 1 - 1e-9
    return root(excess, 1e-3, high) if excess(high) < 0 else None


def ergun_voidage_by_cubic(d, sphericity, speed, solid, rho, mu):
    """The same from e^3 + 3 Y e - 2 X = 0, at 50 digits; the caller looks whether it is below 1."""
    size, v = mpf(sphericity) * mpf(d), mpf(speed)
    weight = mpf(GRAVITY) * (mpf(solid) - mpf(rho)) * size**2
    x = mpf(mu) * v / (2 * weight) * (150 + mpf("1.75") * mpf(rho) * v * size / mpf(mu))
    y = 150 * mpf(mu) * v / (3 * weight)
    # cbrt(x + r) + cbrt(x - r), with x - r = -y^3 / (x + r) so that nothing cancels.
    first = cbrt(x + sqrt(x**2 + y**3))
    return first - y / first


def wen_yu_voidage(d, speed, solid, rho, mu):
    """e^4.7 Ga = 18 Re + 2.7 Re^1.687; None where it is not below 1."""
    reynolds = mpf(rho) * mpf(speed) * mpf(d) / mpf(mu)
    ratio = (18 * reynolds + mpf("2.7") * reynolds ** mpf("1.687")) / galileo(d, solid, rho, mu)
    return ratio ** (1 / mpf("4.7")) if ratio < 1 else None


def scales(d, solid, rho, mu):
    """d* and the speed that u* = 1 stands for."""
    weight = (mpf(solid) - mpf(rho)) * mpf(GRAVITY)
    return mpf(d) * cbrt(mpf(rho) * weight / mpf(mu) ** 2), cbrt(mpf(mu) * weight / mpf(rho) ** 2)


def settling_nonspherical(d, sphericity, solid, rho, mu):
    """Haider and Levenspiel: u* = 1 / (18/d*^2 + (2.335 - 1.744 psi)/sqrt(d*))."""
    size, unit = scales(d, solid, rho, mu)
    return unit / (18 / size**2 + (mpf("2.335") - mpf("1.744") * mpf(sphericity)) / sqrt(size))


def settling_sphere(d, solid, rho, mu):
    """Haider and Levenspiel's drag coefficient of a sphere, by fluids."""
    return v_terminal(d, solid, rho, mu, Method="Haider_Levenspiel")


def settling_sphere_exactly(d, solid, rho, mu):
    """The same drag coefficient at 50 digits."""
    d, rho, mu = mpf(d), mpf(rho), mpf(mu)

    def excess(v):
        reynolds = rho * v * d / mu
        drag = 24 / reynolds * (1 + mpf("0.1806") * reynolds ** mpf("0.6459")) + mpf("0.4251") / (1 + mpf("6880.95") / reynolds)
        return drag * v * v - 4 * mpf(GRAVITY) * d * (mpf(solid) - rho) / (3 * rho)
    start = mpf(settling_sphere(float(d), solid, float(rho), float(mu)))
    return findroot(excess, (start * mpf("0.9"), start * mpf("1.1")), solver="anderson", tol=mpf(10) ** -60)
