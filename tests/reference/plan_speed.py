"""How long outside libraries take over one plan of three layers: a yardstick, it judges nothing.

    python plan_speed.py [count]    times `count` plans (1 unless given), prints seconds per plan

One plan: gravel, sand and anthracite, a hundred fractions each, expansion by Wen and Yu's drag (closed form) and by the
Ergun equation of fluids solved with scipy's brentq, at 61 temperatures from 0 to 60 degrees, water from iapws. In doubles
and without the grading's fit: the sizes are spread evenly in the logarithm between two sieves.
"""

import sys
import time

from fluids.packed_bed import Ergun
from iapws._iapws import _Liquid
from scipy.optimize import brentq

GRAVITY = 9.80665
SPEED = 35 / 3600
# lower and upper sieve in mm, particle density, sphericity, voidage
LAYERS = [(1.5875, 3.175, 2600.0, 0.85, 0.40), (0.45, 1.18, 2650.0, 0.80, 0.42), (0.6, 2.0, 1600.0, 0.60, 0.50)]
FRACTIONS = 100


def voidage_low(d, solid, rho, mu):
    reynolds = rho * SPEED * d / mu
    galileo = d**3 * rho * (solid - rho) * GRAVITY / mu**2
    return ((18 * reynolds + 2.7 * reynolds**1.687) / galileo) ** (1 / 4.7)


def voidage_high(d, psi, solid, rho, mu):
    weight = (solid - rho) * GRAVITY
    return brentq(lambda e: Ergun(psi * d, e, SPEED, rho, mu, 1.0) / (1 - e) - weight, 1e-3, 1 - 1e-9)


def plan():
    """Expansion of each layer, (low, high) for every temperature."""
    found = []
    for celsius in range(61):
        water = _Liquid(celsius + 273.15)
        rho, mu = water["rho"], water["mu"]
        for lower, upper, solid, psi, at_rest in LAYERS:
            sizes = [lower * (upper / lower) ** ((place + 0.5) / FRACTIONS) / 1000 for place in range(FRACTIONS)]
            low = [max(at_rest, voidage_low(d, solid, rho, mu)) for d in sizes]
            high = [max(at_rest, voidage_high(d, psi, solid, rho, mu)) for d in sizes]
            found.append([sum((e - at_rest) / (1 - e) for e in each) / FRACTIONS for each in (low, high)])
    return found


def main():
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 1
    begun = time.perf_counter()
    for _ in range(count):
        plan()
    print(f"fluids, scipy and iapws (Python): {(time.perf_counter() - begun) / count:.3f} s per plan")


if __name__ == "__main__":
    main()
