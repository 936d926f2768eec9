"""PHREEQC 3.7.3 through phreeqpython 1.6.2, with the database phreeqc.dat that the package carries."""

from pathlib import Path

import phreeqpython
from phreeqpython import PhreeqPython

DATABASE = Path(phreeqpython.__file__).parent / "database" / "phreeqc.dat"
SOURCE = "PHREEQC 3.7.3 with its phreeqc.dat through phreeqpython 1.6.2"

# Standard atomic weights, abridged (IUPAC 2021), g/mol: typed apart from the code that is checked.
H, C, O, NA, MG, S, CL, CA = 1.008, 12.011, 15.999, 22.990, 24.305, 32.06, 35.45, 40.078
CACO3 = CA + C + 3 * O
CO2 = C + 2 * O
MGO = MG + O
SO4 = S + 4 * O

KNOBS = "KNOBS\n -iterations 400\n -convergence_tolerance 1e-12\n"
_engine = None


def engine():
    global _engine
    if _engine is None:
        _engine = PhreeqPython(database="phreeqc.dat")
    return _engine


def run(text, headings, values):
    """The last row of a user punch over the steps of `text`; `values` are BASIC expressions."""
    selected = "SELECTED_OUTPUT 1\n -reset false\n -high_precision true\nUSER_PUNCH 1\n"
    selected += f" -headings {' '.join(headings)}\n 10 PUNCH {', '.join(values)}\n"
    engine().ip.run_string(KNOBS + selected + text)
    rows = engine().ip.get_selected_output_array()
    return [dict(zip(rows[0], row)) for row in rows[1:]]


def solution(celsius, totals, given, units="mol/kgw", density=None):
    """The text of a SOLUTION block: totals by element, and lines that fix the carbonate."""
    lines = ["SOLUTION 1", f" temp {celsius!r}", f" units {units}"]
    if density:
        lines.append(f" density {density}")
    lines += [f" {line}" for line in given]
    lines += [f" {element} {amount!r}" for element, amount in totals.items() if amount > 0]
    return "\n".join(lines) + "\n"
