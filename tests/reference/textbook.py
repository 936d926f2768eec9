"""Recomputes the two tables that were typed by hand from textbooks: davis.csv and hendricks.csv."""

from math import sqrt

import table
from bed import wen_yu_speed
from water import sr608


def drag(reynolds):
    """As in the book: Stokes below 0.5."""
    return 24 / reynolds if reynolds < 0.5 else 24 / reynolds + 3 / sqrt(reynolds) + 0.34


def typed(name):
    """Rows with numbers as numbers; an empty cell is None."""
    def value(text):
        try:
            return float(text) if text else None
        except ValueError:
            return text
    return [{column: value(text) for column, text in row.items()} for row in table.read(name)[1]]


def expanded_voidage(row):
    """Settling speed from the drag at the estimated speed, then (v/v_s)^(0.2247 R^0.1); sphericity in the first R only."""
    d, viscosity = row["diameter_mm"] / 1000, row["kinematic_viscosity_m2_s"]
    first = drag(row["sphericity"] * d * row["estimated_speed_m_s"] / viscosity)
    settling = sqrt(4 * row["gravity_m_s2"] * (row["density_ratio"] - 1) * d / (3 * first))
    return (row["speed_m_s"] / settling) ** (0.2247 * (settling * d / viscosity) ** 0.1)


def crosscheck():
    """(what, holds) pairs."""
    rows = {row["id"]: row for row in typed("davis.csv")}
    fractions = [row for row in rows.values() if row["quantity"] == "expanded_voidage"]
    found = {row["id"]: expanded_voidage(row) for row in fractions}
    found["davis_11_3_sum"] = sum(row["share"] / (1 - found[row["id"]]) for row in fractions)
    # Rose: h = 1.067 v^2 D / (phi g e^4) sum(C_D f/d)
    rose = rows["davis_11_2_head_loss"]
    speed, psi = rose["speed_m_s"], rose["sphericity"]
    sizes = [(row["share"], row["diameter_mm"] / 1000) for row in fractions]
    found["davis_11_2_drag_sum"] = sum(
        drag(psi * d * speed / rose["kinematic_viscosity_m2_s"]) * share / d for share, d in sizes)
    found["davis_11_2_head_loss"] = (1.067 * speed**2 * rose["depth_m"] / (psi * rose["gravity_m_s2"] * rose["voidage"] ** 4)
                                     * found["davis_11_2_drag_sum"])
    for key, row in rows.items():
        yield (f"{key}: printed {row['printed']}, found {found[key]:.6g}",
               abs(found[key] - row["printed"]) <= row["absolute_tolerance"])
    for row in typed("hendricks.csv"):
        rho, mu = sr608(row["temperature_k"])
        speed = float(wen_yu_speed(row["diameter_mm"] / 1000, row["particle_density_kg_m3"], rho, mu)) * 3600
        yield f"{row['id']}: Wen-Yu {row['wen_yu_m_h']}, found {speed:.4f} m/h", (
            abs(speed - row["wen_yu_m_h"]) <= row["wen_yu_tolerance"] * 1.01)
        near = 0.02 if row["medium"] == "sand" else 0.03
        yield f"{row['id']}: the book's prediction is Wen-Yu within {near}", abs(row["predicted_m_h"] / speed - 1) <= near
