"""media_loss.csv: volume between two tape readings of one vessel, by the tanks of fluids."""

import numpy as np
from fluids.geometry import TANK

NAME = "media_loss.csv"
COLUMNS = ["id", "source", "head", "inside_diameter_m", "inside_depth_m", "floor_m", "before_m", "after_m", "settling",
           "density_kg_m3", "volume_m3", "mass_kg", "relative_tolerance"]
TOLERANCE = 1e-8
AGAIN = 1e-9
FLUIDS = "fluids.geometry.TANK.V_from_h"
HEADS = {"flat": {}, "ellipsoidal": {"sideA": "ellipsoidal", "sideB": "ellipsoidal", "ratio": 0.25},
         "hemispherical": {"sideA": "spherical", "sideB": "spherical", "ratio": 0.5}}
CASES = 40


def case(number):
    dice = np.random.default_rng(9900 + number)
    head = list(HEADS)[number % 3]
    diameter = round(float(dice.uniform(0.15, 1.2)), 4)
    straight = round(float(dice.uniform(1.0, 3.0)) * diameter, 4)
    depth = straight + 2 * HEADS[head].get("ratio", 0.0) * diameter
    floor = round(0.1 * depth, 4)
    before = round(depth * float(dice.uniform(0.3, 0.5)), 4)
    after = round(before + depth * float(dice.uniform(0.0, 0.3)), 4)
    settling = float(dice.choice([0.0, 0.02, 0.05]))
    return head, diameter, straight, depth, floor, before, after, settling, round(float(dice.uniform(400, 1700)), 1)


def row_of(key, number):
    head, diameter, straight, depth, floor, before, after, settling, density = case(number)
    shape = dict(HEADS[head])
    ratio = shape.pop("ratio", 0.0)
    if ratio:
        shape |= {"sideA_a": ratio * diameter, "sideB_a": ratio * diameter}
    tank = TANK(D=diameter, L=straight, horizontal=False, **shape)
    was, is_now = depth - before, depth - after
    lost = tank.V_from_h(was - settling * (was - floor)) - tank.V_from_h(is_now)
    return {"id": key, "source": FLUIDS, "head": head, "inside_diameter_m": diameter, "inside_depth_m": depth,
            "floor_m": floor, "before_m": before, "after_m": after, "settling": settling, "density_kg_m3": density,
            "volume_m3": float(lost), "mass_kg": float(lost * density), "relative_tolerance": TOLERANCE}


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for number in range(CASES):
        key = f"vessel_{number}"
        yield key, lambda k=key, n=number: row_of(k, n)


def crosscheck():
    """(what, holds) pairs: sand 40 mm lower in a shell 0.60 m across, by hand: 0.01131 m3 and 18.1 kg."""
    volume = np.pi / 4 * 0.36 * 0.040
    yield f"media loss: by hand {volume:.5f} m3", abs(volume - 0.01131) < 5e-6 and abs(volume * 1600 - 18.1) < 0.05
