"""Writes the reference tables, or checks that the committed ones can be made again.

    python generate.py              write every csv beside this file, then run the cross-checks
    python generate.py --check 5    make 5 % of the rows again and compare to 1e-12, or to the table's own AGAIN;
                                    write nothing

Ends with "N passed, N failed"; the exit code is 1 when anything failed.
"""

import argparse
import hashlib
import sys

sys.dont_write_bytecode = True  # leave nothing beside the tables

import balances
import bed_depth
import calibration
import carbonate
import contactor
import cutting
import expansion
import fluidised
import grading
import head_shape
import magnesia
import media_loss
import minimum_fluidisation
import packed_bed
import packs
import quote
import sieve
import spent
import student_t
import table
import tape_spread
import terminal_speed
import textbook
import vessel_height
import vessel_volume
import water

TABLES = [vessel_volume, vessel_height, head_shape, sieve, water, packed_bed, minimum_fluidisation, fluidised,
          terminal_speed, grading, expansion, quote, tape_spread, carbonate, contactor, magnesia, bed_depth, student_t, calibration,
          spent, media_loss, packs, cutting, balances]


def in_sample(key, percent):
    """A fixed choice by the row's name: the same rows every time, spread over the table."""
    drawn = int.from_bytes(hashlib.sha256(key.encode()).digest()[:4], "big") / 2**32
    return drawn * 100 < percent


def key_of(module, row):
    """A committed row's name as `pending` gives it."""
    if module is head_shape:
        cone = row["head"] == "conical"
        return f"conical {float(row['depth_per_diameter'])!r}" if cone else row["head"]
    return row[module.COLUMNS[0]]


def compared(module, percent):
    """(what, holds) for the list of rows and for each row of the sample."""
    try:
        columns, rows = table.read(module.NAME)
    except OSError as missing:
        yield f"{module.NAME}: {missing}", False
        return
    waiting = dict(module.pending())
    limit = getattr(module, "AGAIN", 1e-12)  # wider where a root is searched in doubles
    keys = [key_of(module, row) for row in rows]
    yield f"{module.NAME}: columns", columns == module.COLUMNS
    if columns != module.COLUMNS:
        return
    yield f"{module.NAME}: the same rows in the same order", keys == list(waiting)
    for key, row in zip(keys, rows):
        if key in waiting and in_sample(f"{module.NAME} {key}", percent):
            try:
                again = waiting[key]()
            except ArithmeticError as apart:
                yield f"{module.NAME} {key}: {apart}", False
                continue
            found = [f"{column}: {gap}" for column in columns
                     if (gap := table.difference(row[column], table.text_of(again[column]), limit))]
            yield f"{module.NAME} {key}: " + ("; ".join(found) or "unchanged"), not found


def main():
    reader = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    reader.add_argument("--check", type=float, metavar="PERCENT", help="part of the rows to make again, 0 to 100")
    asked = reader.parse_args()
    outcomes = []
    for module in TABLES:
        if asked.check is None:
            rows = [make() for _, make in module.pending()]
            table.write(module.NAME, module.COLUMNS, rows)
            print(f"wrote {module.NAME}: {len(rows)} rows")
            outcomes += module.crosscheck()
        else:
            outcomes += compared(module, asked.check)
    outcomes += textbook.crosscheck()  # typed by hand: there is nothing to make
    for what, holds in outcomes:
        if not holds or "worst" in what:
            print(("" if holds else "FAILED ") + what)
    failed = sum(not holds for _, holds in outcomes)
    print(f"{len(outcomes) - failed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
