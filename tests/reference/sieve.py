"""sieve.csv: openings of the ASTM E11 sieves, in millimetres, from fluids."""

from fluids.particle_size_distribution import ASTM_E11_sieves

NAME = "sieve.csv"
COLUMNS = ["designation", "opening_mm", "source"]
SOURCE = "fluids 1.3.1 ASTM_E11_sieves (ASTM E11)"

# From ASTM E11 as remembered, to catch a slip of a thousand; the table itself is from fluids.
WELL_KNOWN = {"1/2 in": 12.5, "3/8 in": 9.5, "1/4 in": 6.3, "No. 4": 4.75, "No. 8": 2.36, "No. 18": 1.0, "No. 20": 0.85,
              "No. 40": 0.425, "No. 60": 0.25, "No. 100": 0.15, "No. 200": 0.075}


def sieves():
    """(designation, opening in mm), coarse first.

    fluids keeps the opening in metres in `opening` and in millimetres, as text, in `designation`. Its wire
    diameters are a thousand times too small for openings below 1 mm, `opening_inch` is a thousandth of the
    opening in inches, and `max_opening` is in millimetres though described in metres: none of those is used.
    """
    found = [(sieve.old_designation.rstrip("."), float(sieve.designation)) for sieve in ASTM_E11_sieves.values()]
    return sorted(found, key=lambda pair: -pair[1])


def pending():
    """(id, function that makes the row) for every row of the table, in order."""
    for name, opening in sieves():
        yield name, lambda n=name, o=opening: {"designation": n, "opening_mm": o, "source": SOURCE}


def crosscheck():
    """(what, holds) pairs."""
    for sieve in ASTM_E11_sieves.values():
        yield f"{sieve.old_designation} opening in metres and designation in millimetres agree", (
            abs(sieve.opening * 1000 - float(sieve.designation)) <= 1e-12 * float(sieve.designation))
    table = dict(sieves())
    for name, opening in WELL_KNOWN.items():
        yield f"{name} is {opening} mm", table.get(name) == opening
