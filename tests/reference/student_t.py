"""student_t.csv: quantiles of Student's t, by scipy; published values beside them."""

from mpmath import betainc, mp, mpf
from scipy import stats

NAME = "student_t.csv"
COLUMNS = ["id", "source", "probability", "freedom", "quantile", "relative_tolerance"]
TOLERANCE = 1e-11
AGAIN = 1e-11
PROBABILITIES = [0.55, 0.7, 0.8, 0.9, 0.95, 0.975, 0.99, 0.995, 0.9995]
FREEDOMS = [1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 30, 43, 60, 120, 365, 1000, 1998]
SCIPY = "scipy.stats.t.ppf"
# M. Abramowitz; I. A. Stegun (1964) Handbook of Mathematical Functions table 26.10: (p, freedom, printed).
PRINTED = [(0.95, 1, "6.314"), (0.975, 1, "12.706"), (0.975, 5, "2.571"), (0.95, 10, "1.812"), (0.995, 10, "3.169"),
           (0.975, 30, "2.042"), (0.95, 120, "1.658"), (0.9995, 4, "8.610")]


def quantile_row(key, probability, freedom):
    return {"id": key, "source": SCIPY, "probability": probability, "freedom": freedom,
            "quantile": float(stats.t.ppf(probability, freedom)), "relative_tolerance": TOLERANCE}


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for freedom in FREEDOMS:
        for probability in PROBABILITIES:
            key = f"p{probability}_{freedom}"
            yield key, lambda k=key, p=probability, f=freedom: quantile_row(k, p, f)


def crosscheck():
    """(what, holds) pairs: the quantiles put back at 30 digits; the printed table."""
    mp.dps = 30
    worst = 0.0
    for freedom in FREEDOMS:
        for probability in PROBABILITIES:
            t = mpf(float(stats.t.ppf(probability, freedom)))
            beyond = betainc(mpf(freedom) / 2, mpf(1) / 2, 0, freedom / (freedom + t * t), regularized=True) / 2
            worst = max(worst, abs(float((beyond - (1 - mpf(probability))) / (1 - mpf(probability)))))
    yield f"student t: put back at 30 digits: worst relative difference {worst:.1e}", worst < 1e-10
    for probability, freedom, wanted in PRINTED:
        found = stats.t.ppf(probability, freedom)
        yield f"student t: {probability} at {freedom}, printed {wanted}, found {found:.4f}", abs(found - float(wanted)) <= 5.1e-4
