"""carbonate.csv: waters by PHREEQC: carbon dioxide, saturation index, calcite taken up, and what they are then."""

import phreeqc
import water
from media import kelvin

NAME = "carbonate.csv"
COLUMNS = ["id", "source", "temperature_k", "ph", "alkalinity_mg_l", "calcium_mg_l", "magnesium_mg_l", "sodium_mg_l",
           "sulfate_mg_l", "chloride_mg_l", "carbon_dioxide_mg_l", "saturation_index", "calcite_mg_l", "after_ph",
           "after_alkalinity_mg_l", "after_hardness_mg_l", "own_saturation_index", "own_calcite_mg_l", "own_after_ph"]
AGAIN = 1e-7  # PHREEQC stops its search a few digits earlier than a double ends
COUNT = 300


def halton(index, base):
    """The usual sequence of low discrepancy."""
    value, scale = 0.0, 1.0
    while index:
        scale /= base
        value += scale * (index % base)
        index //= base
    return value


def drawn(index):
    """One water: 2 to 35 degrees, pH 5 to 9, calcium and alkalinity 0 to 300 mg/L as calcium carbonate."""
    found = {
        "temperature_k": kelvin(2 + 33 * halton(index, 2)),
        "ph": 5 + 4 * halton(index, 3),
        "alkalinity_mg_l": 300 * halton(index, 5),
        "calcium_mg_l": 300 * halton(index, 7),
        "magnesium_mg_l": None, "sodium_mg_l": None, "sulfate_mg_l": None, "chloride_mg_l": None,
    }
    # Soft and weak waters are where a neutralising filter stands: half the waters are bent towards nought.
    if index % 2:
        found["alkalinity_mg_l"] = 300 * halton(index, 5) ** 3
        found["calcium_mg_l"] = 300 * halton(index, 7) ** 3
    if index % 3 == 0:
        found["magnesium_mg_l"] = 150 * halton(index, 11)
    if index % 5 == 0:
        found["sulfate_mg_l"] = 200 * halton(index, 13)
    if index % 7 == 0:
        found["chloride_mg_l"] = 150 * halton(index, 17)
    if index % 11 == 0:
        found["sodium_mg_l"] = 80 * halton(index, 19)
    if index % 29 == 0:
        found["calcium_mg_l"] = 0.0
    if index % 31 == 0:
        found["alkalinity_mg_l"] = 0.01  # of none at all PHREEQC leaves the carbonate out
    for name, value in found.items():
        if value is not None and name != "temperature_k":
            found[name] = round(value, 3)
    return found


def moles(found, per_litre):
    """Moles a kilogram of water (or a litre): elements, the alkalinity, and the ion that balances the charges."""
    def of(name, mass):
        return (found[name] or 0.0) / 1000 / mass / per_litre
    totals = {"Ca": of("calcium_mg_l", phreeqc.CACO3), "Mg": of("magnesium_mg_l", phreeqc.CACO3),
              "Na": of("sodium_mg_l", phreeqc.NA), "S(6)": of("sulfate_mg_l", phreeqc.SO4),
              "Cl": of("chloride_mg_l", phreeqc.CL)}
    alkalinity = 2 * of("alkalinity_mg_l", phreeqc.CACO3)
    missing = 2 * totals["Ca"] + 2 * totals["Mg"] + totals["Na"] - 2 * totals["S(6)"] - totals["Cl"] - alkalinity
    totals["Cl" if missing > 0 else "Na"] += abs(missing)
    return totals, alkalinity


HEADINGS = ["ph", "alk", "ca", "mg", "co2", "si", "c", "volume", "water"]
VALUES = ['-LA("H+")', "ALK", 'TOT("Ca")', 'TOT("Mg")', 'MOL("CO2")', 'SI("Calcite")', 'TOT("C")', "SOLN_VOL",
          'TOT("water")']


def solved(found, own):
    """Before and after, by PHREEQC. `own`: it turns litres into kilograms of water itself."""
    density = 1.0 if own else water.sr608(found["temperature_k"])[0] / 1000
    totals, alkalinity = moles(found, density)
    given = [f"pH {found['ph']!r}", f"Alkalinity {alkalinity!r}"]
    units = "mol/L" if own else "mol/kgw"
    text = phreeqc.solution(found["temperature_k"] - 273.15, totals, given, units, "1 calculate" if own else None)
    text += "EQUILIBRIUM_PHASES 1\n Calcite 0 10\nEND\n"
    rows = phreeqc.run(text, HEADINGS, VALUES)
    return rows[0], rows[-1], density


def row_of(key, found):
    before, after, density = solved(found, False)
    own_before, own_after, _ = solved(found, True)
    per_litre = 1000 * density
    dry = found["calcium_mg_l"] == 0.0
    return {"id": key, "source": phreeqc.SOURCE, **found,
            "carbon_dioxide_mg_l": before["co2"] * phreeqc.CO2 * per_litre,
            "saturation_index": None if dry else before["si"],
            # Carbon dioxide binds a little water, so that there is less of it after.
            "calcite_mg_l": (after["ca"] * after["water"] - before["ca"] * before["water"]) * phreeqc.CACO3 * per_litre,
            "after_ph": after["ph"],
            "after_alkalinity_mg_l": after["alk"] * after["water"] / 2 * phreeqc.CACO3 * per_litre,
            "after_hardness_mg_l": (after["ca"] + after["mg"]) * after["water"] * phreeqc.CACO3 * per_litre,
            "own_saturation_index": None if dry else own_before["si"],
            "own_calcite_mg_l": (own_after["ca"] * own_after["water"] - own_before["ca"] * own_before["water"])
            / own_before["volume"] * phreeqc.CACO3 * 1000,
            "own_after_ph": own_after["ph"]}


def waters():
    index = 0
    kept = 0
    while kept < COUNT:
        index += 1
        found = drawn(index)
        # Of a whole analysis the charges may not miss by more than a quarter.
        if found["sodium_mg_l"] is not None and found["chloride_mg_l"] is not None:
            found["chloride_mg_l"] = None
        # Hydroxide alone: Kw is at most 10^-13.5 at 35 degrees; twice that keeps clear of the edge.
        least = 2 * 10 ** (found["ph"] - 13.5) - 10 ** -found["ph"]
        if found["alkalinity_mg_l"] / 1000 / phreeqc.CACO3 * 2 < least:
            continue
        kept += 1
        yield f"water_{index}", found


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for key, found in waters():
        yield key, lambda k=key, f=found: row_of(k, f)


# What the notes these tables were made from give: celsius, mg/L of carbon dioxide, calcite dissolved, pH.
NOTED = [(5, 20, "46.7", "8.63"), (15, 20, "46.5", "8.48"), (25, 20, "46.4", "8.33")]


def crosscheck():
    """(what, holds) pairs."""
    for celsius, dioxide, calcite, ph in NOTED:
        density = water.sr608(kelvin(celsius))[0] / 1000
        text = phreeqc.solution(float(celsius), {}, [f"C {dioxide / 1000 / phreeqc.CO2 / density!r}", "pH 5 charge"])
        rows = phreeqc.run(text + "EQUILIBRIUM_PHASES 1\n Calcite 0 10\nEND\n", HEADINGS, VALUES)
        found = rows[-1]["ca"] * phreeqc.CACO3 * density * 1000
        yield (f"carbonate: {dioxide} mg/L of carbon dioxide at {celsius} degrees: {found:.2f} mg/L and pH "
               f"{rows[-1]['ph']:.3f}", abs(found - float(calcite)) <= 0.06 and abs(rows[-1]["ph"] - float(ph)) <= 0.006)
    import periodictable
    for name, value in [("H", phreeqc.H), ("C", phreeqc.C), ("O", phreeqc.O), ("Na", phreeqc.NA), ("Mg", phreeqc.MG),
                        ("S", phreeqc.S), ("Cl", phreeqc.CL), ("Ca", phreeqc.CA)]:
        listed = getattr(periodictable, name).mass
        yield f"carbonate: atomic weight of {name} {value} and periodictable's {listed}", abs(listed / value - 1) < 2e-4
