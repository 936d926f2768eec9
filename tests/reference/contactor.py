"""contactor.csv: what a bed of calcite gives a water in its contact time, by PHREEQC's own kinetics."""

import carbonate
import phreeqc
import water

NAME = "contactor.csv"
COLUMNS = ["id", "source", "temperature_k", "ph", "alkalinity_mg_l", "calcium_mg_l", "magnesium_mg_l", "sodium_mg_l",
           "sulfate_mg_l", "chloride_mg_l", "grain_mm", "sphericity", "voidage", "contact_time_s", "calcite_mg_l",
           "after_ph"]
AGAIN = 1e-6
COUNT = 30


def beds():
    """Waters that take up calcite, each with a bed of grains of one size."""
    kept = 0
    for index in range(400, 2000):
        found = carbonate.drawn(index)
        found["sodium_mg_l"] = None
        found["ph"] = round(5.5 + 2 * carbonate.halton(index, 3), 3)
        found["alkalinity_mg_l"] = round(1 + 120 * carbonate.halton(index, 5) ** 2, 3)
        found["calcium_mg_l"] = round(120 * carbonate.halton(index, 7) ** 2, 3)
        bed = {"grain_mm": round(0.4 + 1.6 * carbonate.halton(index, 11), 3),
               "sphericity": round(0.65 + 0.35 * carbonate.halton(index, 13), 3),
               "voidage": round(0.38 + 0.12 * carbonate.halton(index, 17), 3),
               "contact_time_s": round(30 * 80 ** carbonate.halton(index, 19))}
        density = water.sr608(found["temperature_k"])[0] / 1000
        totals, alkalinity = carbonate.moles(found, density)
        given = [f"pH {found['ph']!r}", f"Alkalinity {alkalinity!r}"]
        text = phreeqc.solution(found["temperature_k"] - 273.15, totals, given) + "END\n"
        if phreeqc.run(text, carbonate.HEADINGS, carbonate.VALUES)[0]["si"] < -0.5:
            kept += 1
            yield f"bed_{index}", found, bed
        if kept == COUNT:
            return


def row_of(key, found, bed):
    density = water.sr608(found["temperature_k"])[0] / 1000
    totals, alkalinity = carbonate.moles(found, density)
    given = [f"pH {found['ph']!r}", f"Alkalinity {alkalinity!r}"]
    # Square centimetres to a kilogram of water in the gaps, and the time it stays there.
    per_bed = 6 * (1 - bed["voidage"]) / (bed["sphericity"] * bed["grain_mm"] / 1000)
    surface = per_bed / bed["voidage"] / density / 1000 * 1e4
    stay = bed["contact_time_s"] * bed["voidage"]
    text = phreeqc.solution(found["temperature_k"] - 273.15, totals, given)
    text += (f"KINETICS 1\nCalcite\n -m0 10\n -m 10\n -parms {surface / 10!r} 0\n -tol 1e-12\n -steps {stay!r}\n"
             " -cvode true\n -cvode_steps 10000\nINCREMENTAL_REACTIONS false\nEND\n")
    rows = phreeqc.run(text, carbonate.HEADINGS, carbonate.VALUES)
    before, after = rows[0], rows[-1]
    taken = after["ca"] * after["water"] - before["ca"] * before["water"]
    return {"id": key, "source": phreeqc.SOURCE, **found, **bed,
            "calcite_mg_l": taken * phreeqc.CACO3 * density * 1000, "after_ph": after["ph"]}


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for key, found, bed in beds():
        yield key, lambda k=key, f=found, b=bed: row_of(k, f, b)


def crosscheck():
    """(what, holds) pairs: the rate constants at 25 degrees as the notes have them, mmol/cm2/s per unit of activity."""
    for value, noted in [(10 ** (0.198 - 444 / 298.15), 0.05115), (10 ** (2.84 - 2177 / 298.15), 3.454e-5),
                         (10 ** (-5.86 - 317 / 298.15), 1.193e-7)]:
        yield f"contactor: {value:.4g} is {noted}", abs(value / noted - 1) < 5e-4
