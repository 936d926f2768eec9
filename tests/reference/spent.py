"""spent.csv: the S-shaped curve through outlet readings by scipy's curve_fit, and when it reaches a share of the inlet."""

import numpy as np
from calibration import cell
from scipy import optimize, stats

NAME = "spent.csv"
COLUMNS = ["id", "source", "places", "shares", "rate", "middle", "share", "single", "confidence", "low", "likely", "high",
           "relative_tolerance"]
AGAIN = 1e-6
SCIPY = "scipy.optimize.curve_fit; limits with scipy.stats.t and scipy.optimize.brentq"
DAVIS = "M. L. Davis: Water and Wastewater Engineering: problem 8-2 p. 8-26; fitted by " + SCIPY
TOLERANCE = 2e-7
# Problem 8-2: 0.25 m3/h, inlet (444.5 + 66.7)/50.0435 meq/L; volume m3 and outlet meq/L.
DAVIS_VOLUME = [2.1, 3.0, 3.5, 4.0, 4.5, 5.0, 5.35, 5.45, 5.5, 5.6, 5.7, 5.8, 5.9, 6.0, 6.4, 7.0, 7.5]
DAVIS_OUTLET = [0.05, 0.46, 1.05, 2.00, 3.20, 4.90, 6.00, 6.40, 6.70, 7.00, 7.40, 7.80, 8.20, 8.50, 9.00, 9.70, 10.0]
DAVIS_HOURS = np.array(DAVIS_VOLUME) / 0.25
DAVIS_SHARES = np.array(DAVIS_OUTLET) / ((444.5 + 66.7) / 50.0435)
SETS = 150


def curve(x, rate, middle):
    return 1.0 / (1.0 + np.exp(np.clip(rate * (middle - x), -700, 700)))


def drawn(number):
    """One invented bed: places, shares, share asked for, single or not, confidence."""
    dice = np.random.default_rng(9100 + number)
    middle, count = dice.uniform(20.0, 400.0), int(dice.integers(6, 40))
    rate = dice.uniform(3.0, 15.0) / middle
    places = np.sort(dice.uniform(0.4, dice.uniform(1.0, 1.5), count)) * middle
    shares = curve(places, rate, middle) + dice.normal(0.0, dice.uniform(0.002, 0.03), count)
    shares = np.where(shares <= 0.0, 0.0, np.minimum(shares, 0.999))
    return places, shares, float(dice.uniform(0.1, 0.6)), bool(dice.integers(0, 2)), float(dice.choice([0.8, 0.9, 0.95]))


def fitted(places, shares, share, single, confidence):
    """Rate, middle, low, likely, high."""
    traces = (shares > 0.0) & (shares < 1.0)  # a reading that shows nothing isn't fitted
    x, y = np.asarray(places)[traces], np.asarray(shares)[traces]
    inside = (y > 0.02) & (y < 0.98)
    slope, level = np.polyfit(x[inside], np.log(y[inside] / (1 - y[inside])), 1)
    (rate, middle), cov = optimize.curve_fit(curve, x, y, p0=(slope, -level / slope), ftol=1e-15, xtol=1e-15, gtol=1e-15,
                                             maxfev=10000)
    s2 = float(np.sum((y - curve(x, rate, middle)) ** 2) / (len(x) - 2))
    t = stats.t.ppf((1 + confidence) / 2, len(x) - 2)
    likely = middle + np.log(share / (1 - share)) / rate

    def outside(place):
        at = curve(place, rate, middle)
        gradient = at * (1 - at) * np.array([place - middle, -rate])
        return abs(at - share) - t * np.sqrt(s2 * float(single) + gradient @ cov @ gradient)

    def end(way):
        step, near = way * 0.05 / rate, likely
        for _ in range(800):
            if outside(near + step) > 0:
                return optimize.brentq(outside, *sorted((near, near + step)), xtol=1e-13)
            near += step
        raise ArithmeticError("the interval has no end")

    return float(rate), float(middle), float(end(-1.0)), float(likely), float(end(1.0))


def row_of(key, source, places, shares, share, single, confidence):
    rate, middle, low, likely, high = fitted(places, shares, share, single, confidence)
    return {"id": key, "source": source, "places": cell(places), "shares": cell(shares), "rate": rate, "middle": middle,
            "share": share, "single": float(single), "confidence": confidence, "low": low, "likely": likely, "high": high,
            "relative_tolerance": TOLERANCE}


def usable():
    """The numbers of the sets whose interval has two ends."""
    found = []
    for number in range(3 * SETS):
        try:
            fitted(*drawn(number))
        except (ArithmeticError, RuntimeError, ValueError, TypeError):
            continue
        found.append(number)
        if len(found) == SETS:
            break
    return found


def pending():
    """(id, function that makes the row) for every row of the table, in order."""
    yield "davis_8_2", lambda: row_of("davis_8_2", DAVIS, DAVIS_HOURS, DAVIS_SHARES, 0.5, True, 0.95)
    for number in usable():
        key = f"bed_{number}"
        yield key, lambda k=key, n=number: row_of(k, SCIPY, *drawn(n))


def crosscheck():
    """(what, holds) pairs: the arithmetic of problem 8-2 as worked by hand beforehand."""
    rate, middle, *_ = fitted(DAVIS_HOURS, DAVIS_SHARES, 0.5, True, 0.95)
    yield f"spent: problem 8-2: rate {rate:.5f}, middle {middle:.4f}", abs(rate - 0.36908) < 5.1e-6 and abs(middle - 20.1735) < 5.1e-5
