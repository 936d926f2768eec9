"""magnesia.csv: magnesia that waters take up in passing (to saturation with calcite) and in standing (with brucite)."""

from scipy.optimize import brentq

import carbonate
import phreeqc
import water

NAME = "magnesia.csv"
COLUMNS = ["id", "source", "temperature_k", "ph", "alkalinity_mg_l", "calcium_mg_l", "magnesium_mg_l", "sodium_mg_l",
           "sulfate_mg_l", "chloride_mg_l", "passing_mg_l", "passing_ph", "standing_mg_l", "standing_ph"]
AGAIN = 1e-6
COUNT = 40

# As in wateq4f_PWN.dat of the same package; phreeqc.dat has no brucite.
BRUCITE = "PHASES\nBrucite\n Mg(OH)2 + 2 H+ = Mg+2 + 2 H2O\n -log_k 16.84\n -delta_h -27.1 kcal\n"


def waters():
    kept = 0
    for index in range(900, 3000):
        found = carbonate.drawn(index)
        found["sodium_mg_l"] = None
        found["calcium_mg_l"] = round(15 + 150 * carbonate.halton(index, 7) ** 2, 3)
        found["alkalinity_mg_l"] = round(15 + 150 * carbonate.halton(index, 5) ** 2, 3)
        found["ph"] = round(5.6 + 1.6 * carbonate.halton(index, 3), 3)
        if phreeqc.run(block(found) + "END\n", carbonate.HEADINGS, carbonate.VALUES)[0]["si"] < -0.8:
            kept += 1
            yield f"water_{index}", found
        if kept == COUNT:
            return


def block(found):
    density = water.sr608(found["temperature_k"])[0] / 1000
    totals, alkalinity = carbonate.moles(found, density)
    given = [f"pH {found['ph']!r}", f"Alkalinity {alkalinity!r}"]
    return phreeqc.solution(found["temperature_k"] - 273.15, totals, given)


def row_of(key, found):
    density = water.sr608(found["temperature_k"])[0] / 1000

    def taken(phases):
        rows = phreeqc.run(block(found) + phases, carbonate.HEADINGS, carbonate.VALUES)
        before, after = rows[0], rows[-1]
        moles = after["mg"] * after["water"] - before["mg"] * before["water"]
        return moles * phreeqc.MGO * density * 1000, after["ph"]

    # PHREEQC adds magnesia step by step until calcite is saturated: asked for at once, it gives up on some waters.
    def added(moles):
        rows = phreeqc.run(block(found) + f"REACTION 1\n MgO 1\n {moles!r} moles\nEND\n", carbonate.HEADINGS,
                           carbonate.VALUES)
        return rows[-1]

    moles = brentq(lambda moles: added(moles)["si"], 1e-9, 5e-2, xtol=1e-18, rtol=1e-12)
    passing, passing_ph = moles * phreeqc.MGO * density * 1000, added(moles)["ph"]
    standing, standing_ph = taken(BRUCITE + "EQUILIBRIUM_PHASES 1\n Brucite 0 MgO 10\nEND\n")
    return {"id": key, "source": phreeqc.SOURCE, **found, "passing_mg_l": passing, "passing_ph": passing_ph,
            "standing_mg_l": standing, "standing_ph": standing_ph}


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for key, found in waters():
        yield key, lambda k=key, f=found: row_of(k, f)


def crosscheck():
    """(what, holds) pairs: the brucite that is used is the one in the package's other database."""
    text = (phreeqc.DATABASE.parent / "wateq4f_PWN.dat").read_text(encoding="latin-1")
    place = text.index("\nBrucite ")
    stands = text[place:place + 200]
    yield "magnesia: brucite as in wateq4f_PWN.dat", "16.84" in stands and "-27.1 kcal" in stands
