"""A yardstick for speed: the packs of fifty vessels and six materials in four sizes, by a general solver.

    python packs_speed.py

Prints the cents of all that is pooled, how many packs every vessel takes alone, and the seconds. Judges nothing.
"""

import time

from packs import cover


def main():
    begun = time.perf_counter()
    cents = alone = 0
    for material in range(6):
        by = 10 * material
        contents = [500, 1_000, 1_800, 2_500]
        costs = [1_600 + by, 3_050 + by, 5_200 + 3 * by, 7_450]
        needs = [1_000 * (material + 2) + 37 * vessel for vessel in range(50)]
        cents += cover(sum(needs), contents, costs, False)[1]
        for need in needs:
            alone += sum(cover(need, contents, costs, False)[0])
    print(f"{cents} cents pooled, {alone} packs alone; scipy.optimize.milp takes {time.perf_counter() - begun:.2f} s")


if __name__ == "__main__":
    main()
