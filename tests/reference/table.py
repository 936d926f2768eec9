"""Reading, writing and comparing the csv tables.

Numbers are written as Python's repr of a double: the shortest text (at most
17 significant digits) that reads back as the same double. An empty cell means
"this vessel has none".
"""

import csv
from pathlib import Path

FOLDER = Path(__file__).resolve().parent


def text_of(value):
    """A cell as it stands in the file."""
    if value is None:
        return ""
    if isinstance(value, str):
        return value
    return repr(float(value))


def write(name, columns, rows):
    """Write rows (dictionaries) under the given columns."""
    with open(FOLDER / name, "w", newline="", encoding="ascii") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(columns)
        for row in rows:
            out.writerow([text_of(row[column]) for column in columns])


def read(name):
    """The committed table as (columns, list of dictionaries of text)."""
    with open(FOLDER / name, newline="", encoding="ascii") as file:
        reader = csv.DictReader(file)
        rows = list(reader)
        return list(reader.fieldnames), rows


def difference(committed, made, limit=1e-12):
    """What differs between two cells, or None. Numbers may differ by `limit` of their size."""
    if committed == made:
        return None
    try:
        left, right = float(committed), float(made)
    except ValueError:
        return f"{committed!r} is now {made!r}"
    if abs(left - right) <= limit * max(abs(left), abs(right)):
        return None
    return f"{committed} is now {made}"
