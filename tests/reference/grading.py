"""grading.csv: log-normal grain sizes cut at two sieves, with the effective size and uniformity of what remains.

x = ln(d/mm) has the normal density of mean m and standard deviation s, cut to A = ln(lower) .. B = ln(upper) and scaled up
again. Wanted are m and s for which 10 % of the mass is finer than ES and 60 % finer than UC ES. With u = (x - A)/(B - A)
the density is proportional to exp(k u - q u^2), q > 0. As q falls to 0 it becomes a power of the diameter (exp(k u)), the
widest that 10 % below ES allows: see `greatest_uniformity`.
"""

from functools import lru_cache
from math import exp, log

import numpy
from mpmath import erf, erfc, erfinv, expm1, findroot, inverse, log as mplog, matrix, mp, mpf, sqrt
from mpmath import exp as mpexp
from scipy.optimize import brentq, fsolve
from scipy.stats import truncnorm

import us

NAME = "grading.csv"
SHARES = ["0.005", "0.05", "0.105", "0.5", "0.605", "0.9", "0.995"]
COLUMNS = ["id", "source", "lower_mm", "upper_mm", "effective_size_mm", "uniformity", "greatest_uniformity", "exists",
           "mean_ln_mm", "sd", *[f"finer_{share[2:]}_mm" for share in SHARES], "parameter_tolerance", "relative_tolerance"]
SOURCE = "scipy 1.17.1 then mpmath 1.4.1 at 50 digits"
QUANTILE_TOLERANCE = 1e-10

mp.dps = 50

# name: lower and upper sieve, effective size, uniformity
SETS = {
    "carbon_12x40": (0.425, 1.7, 0.65, 1.7),  # the notes' worked case
    "carbon_12x40_fine": (0.425, 1.7, 0.55, 1.6),
    "carbon_12x40_coarse": (0.425, 1.7, 0.75, 1.7),
    "carbon_12x40_narrow": (0.425, 1.7, 0.65, 1.3),
    "carbon_12x40_very_narrow": (0.425, 1.7, 0.9, 1.08),
    "carbon_8x30": (0.6, 2.36, 0.85, 1.7),
    "carbon_8x30_wide": (0.6, 2.36, 0.8, 2.0),
    "carbon_8x30_coarse": (0.6, 2.36, 1.0, 1.9),
    "carbon_20x50": (0.3, 0.85, 0.4, 1.45),
    "carbon_20x50_coarse": (0.3, 0.85, 0.5, 1.3),
    "sand_filter": (0.3, 1.18, 0.5, 1.55),
    "sand_filter_fine": (0.3, 1.18, 0.45, 1.65),
    "sand_045_118": (0.45, 1.18, 0.55, 1.5),
    "sand_20x30": (0.6, 0.85, 0.65, 1.15),
    "anthracite": (0.6, 2.0, 1.0, 1.4),
    "anthracite_fine": (0.6, 2.0, 0.8, 1.65),
    "garnet_30x60": (0.25, 0.6, 0.3, 1.5),
    "calcite_16x40": (0.425, 1.18, 0.6, 1.35),
    "resin": (0.3, 1.18, 0.5, 1.4),
    "resin_uniform": (0.3, 1.18, 0.58, 1.1),
    "sand_manganese": (0.25, 0.85, 0.325, 1.45),
    "glass_crushed": (0.3, 1.18, 0.6, 1.45),
    "zeolite_14x40": (0.425, 1.4, 0.6, 1.6),
    # The effective size a hair above the lower sieve: most of the grains must be just as fine.
    "steep_12x40": (0.425, 1.7, 0.45, 1.2),
    # And near the upper sieve.
    "coarse_end_12x40": (0.425, 1.7, 1.4, 1.1),
}
# The same sieves and effective size, the uniformity a part of the greatest there is.
PARTS = {"carbon_12x40": ["0.9", "0.99", "0.999"], "sand_filter": ["0.95"], "garnet_30x60": ["0.98"]}
# No log-normal has these.
NONE = {
    "none_12x40_too_wide": (0.425, 1.7, 0.75, 1.9),
    "none_12x40_just_too_wide": (0.425, 1.7, 0.65, None),
    "none_12x40_steep": (0.425, 1.7, 0.43, 1.5),
    "none_8x30_low_es": (0.6, 2.36, 0.62, 1.7),
    "none_20x30": (0.6, 0.85, 0.65, 1.3),
    "none_es_at_lower_sieve": (0.3, 0.85, 0.3, 1.6),
    "none_es_below_lower_sieve": (0.425, 1.7, 0.4, 1.7),
    "none_d60_at_upper_sieve": (0.3, 0.75, 0.5, 1.5),
    "none_d60_above_upper_sieve": (0.425, 1.18, 0.8, 1.6),
    "none_one_size": (0.425, 1.7, 0.65, 1.0),
}
# Inches: sieves, effective size; gravel of 1/16 x 1/8 in and 1/8 x 1/4 in.
US_SETS = {"us_gravel_1_16x1_8": ("1/16", "1/8", "5/64", 1.25), "us_gravel_1_8x1_4": ("1/8", "1/4", "3/16", 1.15)}


def greatest_uniformity(lower, upper, effective_size):
    """The uniformity a log-normal cut at these sieves stays below, when 10 % is finer than the effective size.

    That of the density exp(k u) with the same 10 %; None where the effective size is not between the sieves.
    """
    lower, upper, effective_size = mpf(lower), mpf(upper), mpf(effective_size)
    if not lower < effective_size < upper:
        return None
    width = mplog(upper / lower)
    ten = mplog(effective_size / lower) / width

    def finer(k):
        return (expm1(k * ten) / expm1(k) if k else ten) - mpf("0.1")
    # finer(k) falls as k rises and is 0 for k near -ln(0.9)/ten (steep) or ln(0.1)/(1 - ten) (the other way).
    low, high = mplog(mpf("0.9")) / ten - 5, mplog(mpf(10)) / (1 - ten) + 5
    k = findroot(finer, (low, high), solver="anderson", tol=mpf(10) ** -80, maxsteps=500)
    if abs(k) < mpf(10) ** -30:
        sixty = mpf("0.6")
    else:
        sixty = mplog(1 + mpf("0.6") * expm1(k)) / k
    return mpexp(width * (sixty - ten))


POINTS, WEIGHTS = (numpy.asarray(part) for part in numpy.polynomial.legendre.leggauss(400))


def shares(k, q, *where):
    """Mass finer than each u, by quadrature; the density is scaled by its largest value."""
    peak = min(1.0, max(0.0, k / (2 * q))) if q > 0 else (1.0 if k > 0 else 0.0)
    top = k * peak - q * peak * peak

    def mass(low, high):
        at = low + (high - low) * (POINTS + 1) / 2
        return (high - low) / 2 * float(WEIGHTS @ numpy.exp(k * at - q * at * at - top))
    parts = [mass(low, high) for low, high in zip((0.0, *where), (*where, 1.0))]
    return [sum(parts[: place + 1]) / sum(parts) for place in range(len(where))]


def first_guess(lower, upper, effective_size, uniformity):
    """m and s by scipy: for every q the k that puts 10 % below ES, then the q that puts 60 % below UC ES."""
    start, width = log(lower), log(upper / lower)
    ten, sixty = (log(size / lower) / width for size in (effective_size, effective_size * uniformity))

    def tilt(q):
        around = 2 * q * ten
        reach = 60 / min(ten, 1 - ten) + 20 * q**0.5
        return brentq(lambda k: shares(k, q, ten)[0] - 0.1, around - reach, around + reach, xtol=1e-12)

    def excess(ln_q):
        q = exp(ln_q)
        return shares(tilt(q), q, ten, sixty)[1] - 0.6
    q = exp(brentq(excess, log(1e-5), log(2e4), xtol=1e-12))
    return start + width * tilt(q) / (2 * q), width / sqrt(2 * q)


def phi(low, high):
    """Normal probability between two numbers of standard deviations, without loss in either tail."""
    root = sqrt(mpf(2))
    if low > 0:
        return (erfc(low / root) - erfc(high / root)) / 2
    if high < 0:
        return (erfc(-high / root) - erfc(-low / root)) / 2
    return (erf(high / root) - erf(low / root)) / 2


class Grading:
    """What remains of a log-normal between two sieves."""

    def __init__(self, lower, upper, effective_size, uniformity):
        self.low, self.high = mplog(mpf(lower)), mplog(mpf(upper))
        ten, sixty = mplog(mpf(effective_size)), mplog(mpf(effective_size) * mpf(uniformity))

        def system(mean, ln_sd):
            sd = mpexp(ln_sd)
            whole = phi((self.low - mean) / sd, (self.high - mean) / sd)
            return [phi((self.low - mean) / sd, (x - mean) / sd) / whole - share
                    for x, share in ((ten, mpf("0.1")), (sixty, mpf("0.6")))]
        mean, sd = first_guess(float(lower), float(upper), float(effective_size), float(uniformity))
        with mp.workdps(100):
            found = findroot(lambda *at: system(*at), (mpf(mean), mplog(sd)), tol=mpf(10) ** -90, maxsteps=60)
            self.mean, self.sd = found[0], mpexp(found[1])
        # How far m and s move when the finer shares are wrong by 1e-13: the tolerance of m and s.
        step = mpf(10) ** -20
        base = matrix(system(self.mean, mplog(self.sd)))
        columns = [(matrix(system(self.mean + dm, mplog(self.sd) + ds)) - base) / step for dm, ds in ((step, 0), (0, step))]
        turned = inverse(matrix([[columns[0][0], columns[1][0]], [columns[0][1], columns[1][1]]]))
        moved = max(abs(turned[0, 0]) + abs(turned[0, 1]), self.sd * (abs(turned[1, 0]) + abs(turned[1, 1])))
        self.tolerance = max(1e-12, float(f"{float(moved) * 1e-13:.1e}"))

    def finer(self, diameter):
        """Share of the mass finer than a diameter in mm."""
        at = [(x - self.mean) / self.sd for x in (self.low, mplog(mpf(diameter)), self.high)]
        return phi(at[0], at[1]) / phi(at[0], at[2])

    def diameter(self, share):
        """Diameter in mm that a share of the mass is finer than."""
        share = mpf(share)
        # 100 digits, or the far tail of a steep grading would have lost them all.
        with mp.workdps(100):
            below = (1 + erf((self.low - self.mean) / self.sd / sqrt(mpf(2)))) / 2
            above = (1 + erf((self.high - self.mean) / self.sd / sqrt(mpf(2)))) / 2
            return mpexp(self.mean + self.sd * sqrt(mpf(2)) * erfinv(2 * (below + share * (above - below)) - 1))


@lru_cache(maxsize=None)
def grading(lower, upper, effective_size, uniformity):
    return Grading(lower, upper, effective_size, uniformity)


def row_of(key, lower, upper, effective_size, uniformity, exists=True, part=None, through_pint=False):
    if through_pint:
        lower, upper, effective_size = (us.millimetres(inches) for inches in (lower, upper, effective_size))
    greatest = greatest_uniformity(lower, upper, effective_size)
    if part is not None:
        uniformity = float(greatest * mpf(part))
    reachable = greatest is not None and 1 < uniformity < greatest
    if reachable != exists:
        raise ArithmeticError(f"{key}: greatest uniformity {greatest}")
    row = {"id": key, "source": SOURCE + ("; " + us.SOURCE if through_pint else ""), "lower_mm": lower, "upper_mm": upper,
           "effective_size_mm": effective_size, "uniformity": uniformity, "greatest_uniformity": greatest,
           "exists": "yes" if exists else "none"}
    made = grading(lower, upper, effective_size, uniformity) if exists else None
    row |= {"mean_ln_mm": made and made.mean, "sd": made and made.sd, "parameter_tolerance": made and made.tolerance,
            "relative_tolerance": made and QUANTILE_TOLERANCE}
    return row | {f"finer_{share[2:]}_mm": made and made.diameter(share) for share in SHARES}


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for name, asked in SETS.items():
        yield name, lambda k=name, a=asked: row_of(k, *a)
    for name, parts in PARTS.items():
        for part in parts:
            key = f"{name}_at_{part[2:]}"
            yield key, lambda k=key, a=SETS[name], p=part: row_of(k, *a, part=p)
    for name, asked in NONE.items():
        part = "1.001" if asked[3] is None else None
        yield name, lambda k=name, a=asked, p=part: row_of(k, *a, exists=False, part=p)
    for name, asked in US_SETS.items():
        yield name, lambda k=name, a=asked: row_of(k, *a, through_pint=True)


def crosscheck():
    """(what, holds) pairs: scipy's own cut normal and fsolve; how the greatest uniformity is approached; the printed case."""
    gaps, solved, back = [0.0], [0.0], [0.0]
    for lower, upper, effective_size, uniformity in SETS.values():
        made = grading(lower, upper, effective_size, uniformity)

        def system(at, low=log(lower), high=log(upper), ten=log(effective_size), sixty=log(effective_size * uniformity)):
            mean, sd = at[0], exp(at[1])
            cut = truncnorm((low - mean) / sd, (high - mean) / sd, loc=mean, scale=sd)
            return [cut.cdf(ten) - 0.1, cut.cdf(sixty) - 0.6]
        gaps.append(max(abs(gap) for gap in system((float(made.mean), log(made.sd)))))
        found, more, _, _ = fsolve(system, (float(made.mean) + 0.01, log(made.sd) + 0.02), xtol=1e-13, full_output=True)
        if max(abs(more["fvec"])) < 1e-13:  # elsewhere fsolve went astray, which says nothing
            solved.append(max(abs(found[0] - float(made.mean)), abs(exp(found[1]) - float(made.sd))) / (made.tolerance / 1e-12))
        back += [float(abs(made.finer(made.diameter(share)) - mpf(share))) for share in SHARES]
    yield f"grading: shares by scipy's truncnorm: worst difference {max(gaps):.1e}", max(gaps) < 1e-13
    yield (f"grading: m and s by fsolve ({len(solved) - 1} sets): worst difference {max(solved):.1e}",
           len(solved) > 15 and max(solved) < 1e-10)
    yield f"grading: share of a quantile: worst difference {max(back):.1e}", max(back) < 1e-40
    made = grading(*SETS["carbon_12x40"])
    for wanted, found in (("0.0642", made.mean), ("0.3793", made.sd)):
        yield f"grading: 12x40 printed {wanted}, found {float(found):.7f}", abs(float(found) - float(wanted)) <= 0.00005
    # The curve exp(k u - q u^2) through 10 % at ES has a lower d60 the larger q is, from the power law downward.
    falls = True
    for lower, upper, effective_size, _ in SETS.values():
        width, ten = log(upper / lower), log(effective_size / lower) / log(upper / lower)
        sixty = ten + log(float(greatest_uniformity(lower, upper, effective_size))) / width
        before = 0.6
        for q in (1e-4, 0.1, 1.0, 5.0, 25.0, 125.0):
            reach = 60 / min(ten, 1 - ten) + 20 * q**0.5
            k = brentq(lambda k: shares(k, q, ten)[0] - 0.1, 2 * q * ten - reach, 2 * q * ten + reach, xtol=1e-13)
            now = shares(k, q, ten, sixty)[1]
            falls = falls and now > before
            before = now
    yield "grading: at the power law's d60 the share finer grows with q from 60 %, for every set", falls
