"""bed_depth.csv: the least-squares line of service time by bed depth, by numpy."""

import numpy

import carbonate

NAME = "bed_depth.csv"
COLUMNS = ["id", "source", "depths_m", "times_s", "per_metre_s", "critical_m"]


def readings(index):
    """Three to six invented readings with noise: nothing was measured."""
    count = 3 + index % 4
    slope = 86400 * (2 + 30 * carbonate.halton(index, 3))
    critical = 0.05 + 0.4 * carbonate.halton(index, 5)
    depths = [round(critical + 0.2 + 0.35 * place + 0.1 * carbonate.halton(index * 7 + place, 2), 4) for place in range(count)]
    times = [round(slope * (depth - critical) * (0.9 + 0.2 * carbonate.halton(index * 11 + place, 7)), 1)
             for place, depth in enumerate(depths)]
    return depths, times


def row_of(key, index):
    depths, times = readings(index)
    slope, meets = numpy.polyfit(depths, times, 1)
    return {"id": key, "source": "numpy 2.4.6 polyfit of invented readings", "depths_m": " ".join(map(repr, depths)),
            "times_s": " ".join(map(repr, times)), "per_metre_s": float(slope), "critical_m": float(-meets / slope)}


AGAIN = 1e-9


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for index in range(1, 25):
        key = f"readings_{index}"
        yield key, lambda k=key, i=index: row_of(k, i)


def crosscheck():
    """(what, holds) pairs: a line through two points is the line."""
    slope, meets = numpy.polyfit([1.0, 2.0], [10.0, 25.0], 1)
    yield "bed_depth: two points", abs(slope - 15) < 1e-9 and abs(-meets / slope - 1 / 3) < 1e-9
