"""expansion.csv: how much a graded bed grows when water flows up through it.

A hundred fractions of equal mass; the diameter of fraction i is the one (i + 0.5)/100 of the mass is finer than. Each lies
or floats by itself: its voidage is the larger of the voidage at rest and that of the model for its own diameter. Grains are
conserved, so a unit of bed becomes the mean of (1 - e0)/(1 - e). Expansion is what it grows by.
"""

import us
from bed import EXACT, SOLVED, ergun_voidage, wen_yu_voidage
from grading import grading
from media import EXPANDED, Medium, kelvin, metres, metres_per_second
from mpmath import mpf
from water import sr608

NAME = "expansion.csv"
COLUMNS = ["id", "source", "lower_mm", "upper_mm", "effective_size_mm", "uniformity", "particle_density_kg_m3", "sphericity",
           "voidage", "temperature_k", "density_kg_m3", "viscosity_pa_s", "speed_m_s", "expansion_low", "expansion_high",
           "expansion_likely", "tolerance_of_volume"]
SOURCE = f"{EXACT} (grading; low); {SOLVED} (high)"
TOLERANCE = 1e-10
AGAIN = 1e-10  # an expansion near 0 is a small difference, and brentq may stop a few bits apart on another machine
FRACTIONS = 100
CELSIUS = [5, 10, 12, 15, 25]
FAHRENHEIT = [54, 77]
# Upflow asked of each bed: m/h, and US gallons a minute on a square foot.
FLOWS = {
    "carbon_12x40": ([15, 20, 25, 35, 85], [8, 10]),
    "sand_045_118": ([20, 30, 40, 55], [15, 20]),
    "sand_filter": ([20, 30, 40, 55], [12, 15]),
    "anthracite": ([5, 20, 30, 40, 55], [12, 18]),
    "resin_cation": ([5, 8, 12, 16], [4, 5]),
    "calcite_16x40": ([20, 30, 40, 55], [12, 15]),
    "resin_one_size": ([5, 8, 12, 20, 100, 150], [4, 6]),
}
# The notes' worked case, and two of its neighbours: vessel inside diameter in inches, degrees Celsius, gallons a minute.
VESSELS = [("carbon_12x40", "11.75", 12, 7), ("carbon_12x40", "11.75", 12, 8), ("carbon_12x40", "11.75", 5, 7),
           ("carbon_12x40", "11.75", 25, 7), ("carbon_12x40", "11.75", 6, 8), ("resin_one_size", "9.7", 12, 2),
           ("resin_one_size", "9.7", 12, "2.4")]


def diameters(medium):
    """Of the fractions, in metres; one of one size."""
    if medium.lower_mm is None:
        return [medium.diameter]
    made = grading(medium.lower_mm, medium.upper_mm, medium.effective_size_mm, medium.uniformity)
    if not hasattr(made, "fractions"):
        made.fractions = [float(made.diameter((mpf(place) + mpf("0.5")) / FRACTIONS) / 1000) for place in range(FRACTIONS)]
    return made.fractions


def grown(voidages, at_rest):
    """Expansion by the fractions' voidages; None where one of them is carried away."""
    if None in voidages:
        return None
    lifted = [max(mpf(e) - mpf(at_rest), mpf(0)) for e in voidages]
    return float(sum(rise / (1 - mpf(at_rest) - rise) for rise in lifted) / len(lifted))


def expansions(medium, temperature, speed):
    """By Wen and Yu's drag, by Ergun extended, and half way between the two."""
    rho, mu = sr608(temperature)
    solid, sizes = medium.particle_density, diameters(medium)
    low = grown([wen_yu_voidage(d, speed, solid, rho, mu) for d in sizes], medium.voidage)
    high = grown([ergun_voidage(d, medium.sphericity, speed, solid, rho, mu) for d in sizes], medium.voidage)
    return low, high, None if low is None or high is None else (low + high) / 2


def row_of(key, medium, temperature, speed, through_pint):
    rho, mu = sr608(temperature)
    low, high, likely = expansions(medium, temperature, speed)
    return {"id": key, "source": SOURCE + ("; " + us.SOURCE if through_pint else ""), "lower_mm": medium.lower_mm,
            "upper_mm": medium.upper_mm, "effective_size_mm": medium.effective_size_mm, "uniformity": medium.uniformity,
            "particle_density_kg_m3": medium.particle_density, "sphericity": medium.sphericity, "voidage": medium.voidage,
            "temperature_k": temperature, "density_kg_m3": rho, "viscosity_pa_s": mu, "speed_m_s": speed, "expansion_low": low,
            "expansion_high": high, "expansion_likely": likely, "tolerance_of_volume": TOLERANCE}


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for name, medium in EXPANDED.items():
        for celsius in CELSIUS:
            for flow in FLOWS[name][0]:
                key = f"{name}_{celsius}c_{flow}mh"
                yield key, lambda k=key, m=medium, t=kelvin(celsius), v=metres_per_second(flow): row_of(k, m, t, v, False)
    for name, medium in EXPANDED.items():
        for fahrenheit in FAHRENHEIT:
            for flow in FLOWS[name][1]:
                key = f"us_{name}_{fahrenheit}f_{flow}gpm_ft2"
                yield key, lambda k=key, m=medium, t=us.kelvin(fahrenheit), v=us.metres_per_second(flow): row_of(k, m, t, v, True)
    for name, inches, celsius, gpm in VESSELS:
        key = f"us_{name}_{inches}in_{celsius}c_{gpm}gpm"
        yield key, lambda k=key, m=EXPANDED[name], i=inches, t=kelvin(celsius), g=gpm: row_of(
            k, m, t, us.speed_in_vessel(g, i), True)


def crosscheck():
    """(what, holds) pairs: the printed worked case, to the percent it was printed with; and fractions that are enough."""
    carbon = EXPANDED["carbon_12x40"]

    def percent(gpm, celsius, place=2, medium=carbon):
        return 100 * expansions(medium, kelvin(celsius), us.speed_in_vessel(gpm, "11.75"))[place]
    heavy, light = (Medium(0.425, 1.7, 0.65, 1.7, density, 0.75, 0.5) for density in (1500.0, 1300.0))
    printed = [("likely at 7 gpm and 12 degrees", 24, percent(7, 12)),
               ("likely at 8 gpm and 12 degrees", 31, percent(8, 12)),
               ("likely at 7 gpm and 5 degrees", 32, percent(7, 5)),
               ("likely at 7 gpm and 25 degrees", 15, percent(7, 25)),
               ("low at 10.6 gpm and 25 degrees", 20, percent("10.6", 25, 0)),
               ("high at 5.8 gpm and 5 degrees", 35.9, percent("5.8", 5, 1)),
               ("likely at 1300 kg/m3, 7 gpm and 12 degrees", 37, percent(7, 12, 2, light)),
               ("likely at 1500 kg/m3, 7 gpm and 12 degrees", 17, percent(7, 12, 2, heavy))]
    for what, wanted, found in printed:
        yield f"expansion: 12x40 {what}: printed {wanted} %, found {found:.3f} %", abs(found - wanted) < 1.0
    low, high, _ = expansions(carbon, kelvin(6), us.speed_in_vessel(8, "11.75"))
    yield f"expansion: 12x40 8 gpm and 6 degrees: 35.9 % is w = 0.43, found {(0.359 - low) / (high - low):.4f}", (
        abs((0.359 - low) / (high - low) - 0.43) < 0.01)
    # One size must be what its only fraction is, whatever the number of fractions.
    one = EXPANDED["resin_one_size"]
    rho, mu = sr608(kelvin(12))
    e = ergun_voidage(one.diameter, one.sphericity, 0.003, one.particle_density, rho, mu)
    same = (e - one.voidage) / (1 - e)
    yield "expansion: one size by one fraction", abs(expansions(one, kelvin(12), 0.003)[1] - same) < 1e-14
