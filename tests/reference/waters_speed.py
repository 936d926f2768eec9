"""How long PHREEQC takes over the waters of carbonate.csv, before and after calcite; judges nothing."""

import sys
import time

sys.dont_write_bytecode = True  # leave nothing beside the tables

import carbonate


def main():
    waters = list(carbonate.waters())
    carbonate.solved(waters[0][1], False)  # the database is read once
    begun = time.perf_counter()
    for _, found in waters:
        carbonate.solved(found, False)
    seconds = time.perf_counter() - begun
    print(f"PHREEQC: {seconds / len(waters) * 1e6:.0f} us for a water to saturation, {len(waters) / seconds:.0f} a second")


if __name__ == "__main__":
    main()
