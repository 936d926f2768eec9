"""calibration.csv: where a reading of a given size was taken, by statsmodels' own prediction limits turned round;
an interval without an end is an empty cell."""

import numpy as np
import statsmodels.api as sm
from scipy import optimize

NAME = "calibration.csv"
COLUMNS = ["id", "source", "places", "readings", "size", "single", "confidence", "low", "likely", "high", "tolerance"]
AGAIN = 1e-8
STATSMODELS = "statsmodels OLS get_prediction limits turned round by scipy.optimize.brentq"
GRAYBILL = "F. A. Graybill and H. K. Iyer (1994) Regression Analysis as printed in the vignette of an R package"
ARSENIC = ([float(x) for x in range(8) for _ in range(4)],
           [0.17, 0.25, 0.01, 0.12, 1.25, 0.86, 1.25, 1.1, 2.01, 2.03, 2.14, 1.74, 3.18, 2.99, 3.23, 3.37, 3.91, 3.9, 3.61,
            4.27, 4.88, 5.33, 4.96, 4.98, 6.09, 6.17, 6.07, 5.97, 6.67, 7.02, 7.14, 7.3])
THERMOSTAT = ([96.0, 98.0, 100.0, 102.0, 104.0, 106.0, 108.0, 110.0],
              [95.71, 98.16, 99.52, 102.09, 103.79, 106.18, 108.14, 110.21])
# Data, size, confidence, low, likely, high as printed, half a unit of the last digit printed.
PRINTED = {"arsenic_3": (ARSENIC, 3.0, 0.9, 2.6035, 2.9314, 3.2587, 5.1e-5),
           "thermostat_104": (THERMOSTAT, 104.0, 0.95, 103.4, 103.995, 104.6, 0.051),
           "thermostat_100": (THERMOSTAT, 100.0, 0.9, 99.63, 100.1, 100.59, 0.051)}
SETS = 200


def drawn(number):
    """One invented data set: places, readings, size asked for, single or not, confidence."""
    dice = np.random.default_rng(8200 + number)
    count = int(dice.integers(4, 40))
    places = np.sort(dice.uniform(0.0, 10.0, count))
    slope = dice.uniform(0.5, 4.0) * dice.choice([-1.0, 1.0])
    readings = dice.uniform(-5.0, 5.0) + slope * places + dice.normal(0.0, dice.uniform(0.05, 0.6), count)
    middle = float(np.mean(readings) + dice.uniform(-6.0, 6.0))
    return places, readings, middle, bool(dice.integers(0, 2)), float(dice.choice([0.8, 0.9, 0.95, 0.99]))


def turned_round(places, readings, size, single, confidence):
    """Low, likely and high place: where a limit of the prediction passes the size."""
    fit = sm.OLS(readings, sm.add_constant(places)).fit()
    level, slope = fit.params
    likely = (size - level) / slope

    def limits(place):
        at = fit.get_prediction([[1.0, place]])
        return at.conf_int(obs=single, alpha=1.0 - confidence)[0]

    def passes(limit, way):
        reach = 1.0
        while reach < 1e5:
            ends = limits(likely)[limit] - size, limits(likely + way * reach)[limit] - size
            if (ends[0] > 0) != (ends[1] > 0):
                return optimize.brentq(lambda x: limits(x)[limit] - size, *sorted((likely, likely + way * reach)), xtol=1e-13)
            reach *= 1.5
        raise ArithmeticError("the interval has no end")

    rising = slope > 0
    return passes(1 if rising else 0, -1.0), likely, passes(0 if rising else 1, 1.0)


def cell(numbers):
    return " ".join(repr(float(x)) for x in numbers)


def printed_row(key):
    (places, readings), size, confidence, low, likely, high, half = PRINTED[key]
    return {"id": key, "source": GRAYBILL, "places": cell(places), "readings": cell(readings), "size": size, "single": 1.0,
            "confidence": confidence, "low": low, "likely": likely, "high": high, "tolerance": half}


def drawn_row(key, number):
    places, readings, size, single, confidence = drawn(number)
    try:
        low, likely, high = turned_round(places, readings, size, single, confidence)
    except ArithmeticError:  # the line may as well be level: no finite interval
        low = likely = high = None
    return {"id": key, "source": STATSMODELS, "places": cell(places), "readings": cell(readings), "size": size,
            "single": float(single), "confidence": confidence, "low": low, "likely": likely, "high": high,
            "tolerance": 1e-8 * (1.0 if low is None else max(1.0, abs(high - low)))}


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for key in PRINTED:
        yield key, lambda k=key: printed_row(k)
    for number in range(SETS):
        key = f"set_{number}"
        yield key, lambda k=key, n=number: drawn_row(k, n)


def crosscheck():
    """(what, holds) pairs: the same way gives the printed values."""
    for key, ((places, readings), size, confidence, *wanted, half) in PRINTED.items():
        found = turned_round(np.array(places), np.array(readings), size, True, confidence)
        yield f"calibration: {key}, printed {wanted}, found {found}", all(abs(a - b) <= half for a, b in zip(found, wanted))
