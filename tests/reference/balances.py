"""balances.csv: how long beds last, what they take in a year and what is lifted, worked again by pint in the units of the trade.

No library has these equations: they are typed a second time here, with units that pint carries along, so that a wrong unit or
a wrong place of a quantity is found. Molar masses are those of chemicals. What goes in is invented.
"""

import numpy as np
import pint
from chemicals.elements import molecular_weight

NAME = "balances.csv"
COLUMNS = ["id", "source", "formula", "inputs", "expected", "relative_tolerance"]
CASES = 8
TOLERANCE = 1e-9
PINT = "pint 0.25.3"
units = pint.UnitRegistry()
Q = units.Quantity
HARDNESS = "grain / gallon"
CONCENTRATION = "kilogram / meter ** 3"


def drawn(case):
    dice = np.random.default_rng(7300 + case)
    return lambda low, high, places=3: round(float(dice.uniform(low, high)), places)


def softener(case):
    """Resin, dose, hardness, iron, factor, reserve and average use; what comes of them."""
    draw = drawn(case)
    resin, dose = Q(draw(0.75, 10, 2), "foot ** 3"), Q(draw(3, 15, 1), "pound / foot ** 3")
    hardness, iron = Q(draw(3, 60, 1), HARDNESS), Q(draw(0, 5, 1), "milligram / liter")
    factor, reserve, use = draw(20, 90, 1), draw(0, 0.4, 2), Q(draw(50, 2000, 0), "gallon / day")
    given = [resin.to("meter ** 3"), dose.to(CONCENTRATION), hardness.to(CONCENTRATION), iron.to(CONCENTRATION), Q(factor, ""),
             Q(reserve, ""), use.to("meter ** 3 / second")]
    counted = hardness + factor * iron
    # 35 Illinois Administrative Code 604.805(c): 0.3 lb of salt for a thousand grains; at most 20 000 grains in a cubic foot.
    capacity = min(dose / Q(0.3, "pound") * Q(1000, "grain"), Q(20000, "grain / foot ** 3"))
    water = capacity * resin * (1 - reserve) / counted
    interval = water / use
    salt = dose * resin
    # M. L. Davis, Water and Wastewater Engineering, table 8-2: brine 5 to 10 %, 2 to 5 and 8 to 40 bed volumes an hour.
    brine = [salt / share / Q(1, "kilogram / liter") for share in (0.10, 0.05)]
    rinse = [resin * (Q(slow, "1 / hour") * Q(minutes, "minute") + Q(fast, "1 / hour") * Q(more, "minute"))
             for slow, minutes, fast, more in ((2, 10, 8, 5), (5, 30, 40, 15))]
    yield "compensated_hardness", given, counted.to(CONCENTRATION)
    yield "resin_capacity", given, capacity.to(CONCENTRATION)
    yield "water_between", given, water.to("meter ** 3")
    yield "regeneration_interval", given, interval.to("second")
    yield "salt_for_one", given, salt.to("kilogram")
    yield "salt_in_year", given, (salt * Q(1, "year") / interval).to("kilogram")
    yield "brine_volume", given, sum(brine).to("meter ** 3")
    yield "rinse_volume", given, sum(rinse).to("meter ** 3")


def holding(case):
    draw = drawn(case + 100)
    volume, capacity, usable = Q(draw(0.75, 20, 2), "foot ** 3"), Q(draw(50, 3000, 0), "gram / meter ** 3"), draw(0.2, 1, 2)
    inlet, average = Q(draw(0.05, 5, 3), "milligram / liter"), Q(draw(50, 2000, 0), "gallon / day")
    outlet = inlet * draw(0, 0.5, 2)
    given = [volume.to("meter ** 3"), capacity.to(CONCENTRATION), Q(usable, ""), inlet.to(CONCENTRATION), outlet.to(CONCENTRATION),
             average.to("meter ** 3 / second")]
    water = volume * capacity * usable / (inlet - outlet)
    yield "water_until_full", given, water.to("meter ** 3")
    yield "holding_life", given, (water / average).to("second")


def carbon(case):
    draw = drawn(case + 200)
    length, speed = Q(draw(2, 9, 2), "centimeter"), Q(draw(20, 40, 1), "meter / hour")
    half = length / speed
    inlet, time = Q(draw(0.5, 4, 2), "milligram / liter"), Q(draw(5, 60, 1), "second")
    left = Q(draw(0.02, 0.3, 2), "milligram / liter")
    yield "half_time", [length.to("meter"), speed.to("meter / second")], half.to("second")
    yield ("chlorine_left", [inlet.to(CONCENTRATION), time, half.to("second")],
           (inlet * np.exp(-np.log(2) * (time / half).to("").magnitude)).to(CONCENTRATION))
    yield ("contact_time_needed", [inlet.to(CONCENTRATION), left.to(CONCENTRATION), half.to("second")],
           (half * (np.log((inlet / left).to("").magnitude) / np.log(2))).to("second"))
    factor, exponent, usable = draw(5, 80, 1), draw(0.2, 0.8, 2), draw(0.2, 1, 2)
    trace, density = Q(draw(0.005, 0.5, 3), "milligram / liter"), Q(draw(25, 34, 1), "pound / foot ** 3")
    # K in (mg/g)(L/mg)^(1/n): the number of milligrams of a gram, at so many milligrams of a litre.
    held = factor * np.exp(exponent * np.log(trace.to("milligram / liter").magnitude))
    share = Q(held, "milligram / gram").to("")
    yield "freundlich_capacity", [Q(factor, ""), Q(exponent, ""), trace.to(CONCENTRATION)], share
    yield ("bed_volumes_until", [share, density.to(CONCENTRATION), Q(usable, ""), trace.to(CONCENTRATION)],
           (share * density * usable / trace).to(""))
    yield ("carbon_use", [share, Q(usable, ""), trace.to(CONCENTRATION)], (trace / (share * usable)).to(CONCENTRATION))


def oxidants(case):
    draw = drawn(case + 300)
    iron, manganese = Q(draw(0, 10, 2), "milligram / liter"), Q(draw(0.01, 2, 2), "milligram / liter")
    for which, (atoms, taken) in enumerate([({"O": 2}, 4), ({"Cl": 2}, 2), ({"K": 1, "Mn": 1, "O": 4}, 3)]):
        mass = molecular_weight(atoms)
        electrons = iron / molecular_weight({"Fe": 1}) + 2 * manganese / molecular_weight({"Mn": 1})
        yield ("oxidant_demand", [Q(which, ""), iron.to(CONCENTRATION), manganese.to(CONCENTRATION)],
               (electrons * mass / taken).to(CONCENTRATION))


def lifted(case):
    """NIOSH 94-110, the equation in centimetres and kilograms; a fair grip below the knuckles."""
    draw = drawn(case + 400)
    reach, height, travel, twist, load = draw(26, 60, 1), draw(0, 74, 1), draw(30, 170, 1), draw(0, 120, 0), draw(5, 30, 1)
    limit = 23 * (25 / reach) * (1 - 0.003 * abs(height - 75)) * (0.82 + 4.5 / travel) * (1 - 0.0032 * twist) * 0.95
    given = [Q(reach, "centimeter").to("meter"), Q(height, "centimeter").to("meter"), Q(travel, "centimeter").to("meter"), Q(twist, "")]
    yield "lift_limit", given, Q(limit, "kilogram")
    yield "lifting_index", [*given, Q(load, "kilogram")], Q(load / limit, "")


def yearly(case):
    draw = drawn(case + 500)
    mass, life, packs = Q(draw(50, 2000, 0), "pound"), Q(draw(0.3, 9, 1), "year"), draw(1, 40, 0)
    yield "media_in_year", [mass.to("kilogram"), life.to("second")], (mass / (life / Q(1, "year"))).to("kilogram")
    yield "packs_in_year", [Q(packs, ""), life.to("second")], (packs / (life / Q(1, "year"))).to("")
    month, week = Q(draw(1, 30, 1), "kilogram"), Q(draw(2, 20, 0), "day")
    yield "dissolved_in_year", [month], 12 * month
    water = Q(draw(20, 400, 0), "gallon")
    yield ("wash_water_in_year", [water.to("meter ** 3"), week.to("second")],
           (water * (Q(1, "year") / week).to("").magnitude).to("meter ** 3"))
    vessels, flow, time, washes = int(draw(1, 9, 0)), Q(draw(2, 60, 1), "gallon / minute"), Q(draw(5, 20, 0), "minute"), draw(12, 160, 0)
    yield ("wash_water_year", [Q(vessels, ""), flow.to("meter ** 3 / second"), time.to("second"), Q(washes, "")],
           (vessels * flow * time * washes).to("meter ** 3"))


FAMILIES = [softener, holding, carbon, oxidants, lifted, yearly]


def row_of(key, family, case, place):
    formula, given, expected = list(family(case))[place]
    chemistry = family is oxidants
    return {"id": key, "source": PINT + ("; chemicals 1.5.2" if chemistry else ""), "formula": formula,
            "inputs": " ".join(repr(float(value.magnitude)) for value in given), "expected": float(expected.magnitude),
            # Chlorine weighs 35.453 there and 35.45 in the abridged table of 2021.
            "relative_tolerance": 1e-4 if chemistry else TOLERANCE}


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for family in FAMILIES:
        for case in range(CASES):
            for place, (formula, _, _) in enumerate(family(case)):
                key = f"{formula}_{case}" + (f"_{place}" if family is oxidants else "")
                yield key, lambda k=key, f=family, c=case, p=place: row_of(k, f, c, p)


def crosscheck():
    """(what, holds) pairs: a cubic foot at 6 lb takes 20 000 grains, of 20 grains in a gallon 800 gallons with a fifth kept."""
    water = Q(20000, "grain / foot ** 3") * Q(1, "foot ** 3") * 0.8 / Q(20, HARDNESS)
    yield f"balances: {water.to('gallon')}", abs(water.to("gallon").magnitude - 800) < 1e-9
    demand = molecular_weight({"Cl": 2}) / 2 / molecular_weight({"Fe": 1})
    yield f"balances: {demand:.3f} mg of chlorine for a milligram of iron", abs(demand - 0.635) < 1e-3
