"""packs.csv: which packs cover a need at least cost, from a general solver of integer programmes.

scipy.optimize.milp (HiGHS) with mip_rel_gap=0, one programme for each thing that decides: cost, then what is left over,
then how many packs there are. Costs of what it answers are added up in Python's decimal. The cases are drawn, with a fixed
seed, and invented.
"""

from decimal import Decimal
from random import Random

import numpy
from scipy.optimize import Bounds, LinearConstraint, milp

NAME = "packs.csv"
COLUMNS = ["id", "contents", "prices", "locked", "need", "opened", "minimum", "cost", "left_over", "short_by", "packs",
           "source"]
SOURCE = "scipy 1.17.1 milp and decimal"
AGAIN = 0.0  # whole numbers and exact decimals
COUNT = 500


def case(number):
    """One case: sizes, prices in units of a ten-thousandth or none, what is locked, and what is needed."""
    draw = Random(f"packs {number}")
    sizes = draw.randint(1, 5)
    kind = number % 5
    if kind == 4:
        # No useful common measure: a search instead of steps.
        contents = draw.sample([19_997, 20_011, 25_013, 30_011, 35_023, 40_009, 50_021], min(sizes, 3))
        need = draw.randint(1, 1_200_000)
    elif kind == 3:
        contents = draw.sample(range(101, 1_999), sizes)
        need = draw.randint(1, 30_000)
    else:
        contents = [50 * size for size in draw.sample(range(1, 41), sizes)]
        need = draw.randint(1, 40_000)
        if kind == 0:
            need += -need % 50  # whole packs, as bags make it
    places = draw.choice([1, 1, 100, 10_000])
    prices = [Decimal(draw.randint(1, 90_000 * places // 100)) / places for _ in contents]
    if kind == 2:  # price follows content, with ties
        each = Decimal(draw.randint(1, 900)) / 100
        prices = [each * content if draw.random() < 0.8 else price for content, price in zip(contents, prices)]
    if number % 10 == 1:  # some have no price: what is left over decides
        prices = [None if draw.random() < 0.5 else price for price in prices]
    locked = [None] * len(contents)
    if number % 7 == 0 and len(contents) > 1:
        locked[draw.randrange(len(contents))] = draw.randint(0, 6)
    opened = draw.randint(1, 3_000) if number % 11 == 0 else 0
    return contents, prices, locked, need, opened, number % 3 == 0


def whole(solution):
    """The counts a solver answered, as whole numbers."""
    counts = [round(value) for value in solution]
    if any(abs(value - count) > 1e-5 for value, count in zip(solution, counts)):
        raise ArithmeticError(f"no whole numbers: {solution}")
    return counts


def least(objective, constraints, sign=1):
    """The least (or, with sign -1, the most) of an objective over whole counts."""
    answer = milp(sign * numpy.array(objective, dtype=float), constraints=constraints,
                  integrality=numpy.ones(len(objective)), bounds=Bounds(0, numpy.inf), options={"mip_rel_gap": 0})
    if not answer.success:
        raise ArithmeticError(answer.message)
    counts = whole(answer.x)
    return counts, sum(weight * count for weight, count in zip(objective, counts))


def cover(need, contents, costs, most_content):
    """Counts for the least cost that reach `need`; of those the least (or most) content; of those the fewest."""
    fills = LinearConstraint([contents], need, numpy.inf)
    _, cost = least(costs, [fills])
    # Costs are whole numbers: half of one more is none.
    pays = LinearConstraint([costs], -numpy.inf, cost + 0.5)
    sign = -1 if most_content else 1
    _, content = least(contents, [fills, pays], sign)
    holds = LinearConstraint([contents], content - 0.5, content + 0.5)
    counts, _ = least([1] * len(contents), [fills, pays, holds])
    if sum(c * n for c, n in zip(contents, counts)) < need:
        raise ArithmeticError("the solver's answer doesn't cover the need")
    return counts, sum(c * n for c, n in zip(costs, counts))


def solved(contents, prices, locked, need, opened, minimum):
    """Counts for every size, by the rules of the README."""
    to_buy = need - min(need, opened)
    counts = [count or 0 for count in locked]
    rest = max(0, to_buy - sum(c * n for c, n in zip(contents, counts)))
    free = [at for at, count in enumerate(locked) if count is None]
    if rest:
        if not free:
            return None
        sizes = [contents[at] for at in free]
        known = [prices[at] for at in free]
        if any(price is None for price in known):
            costs = sizes  # without prices what is bought is what counts
        else:
            costs = [int(price * 10_000) for price in known]
        found, cost = cover(rest, sizes, costs, False)
        short = rest - min(sizes) // 10
        if not minimum and 0 < short < rest:
            near, near_cost = cover(short, sizes, costs, False)
            if near_cost < cost:
                found, cost = cover(short, sizes, costs, True)
        for at, count in zip(free, found):
            counts[at] = count
    return counts


def listed(values):
    """Values in one cell; a dash where there is none."""
    return " ".join("-" if value is None else f"{value:f}" if isinstance(value, Decimal) else str(value) for value in values)


def row(number):
    """The row of a case."""
    contents, prices, locked, need, opened, minimum = case(number)
    counts = solved(contents, prices, locked, need, opened, minimum)
    made = {"id": f"case_{number}", "contents": listed(contents), "prices": listed(prices), "locked": listed(locked),
            "need": str(need), "opened": str(opened), "minimum": "yes" if minimum else "no", "source": SOURCE,
            "cost": "", "left_over": "", "short_by": "", "packs": ""}
    if counts is None:
        return made
    bought = sum(c * n for c, n in zip(contents, counts))
    to_buy = need - min(need, opened)
    # Where what is left over decides, two answers may be equal in that and in number, and differ in cost.
    free = [price for price, count in zip(prices, locked) if count is None]
    compared = len(free) < 2 or all(price is not None for price in free)
    if compared and all(price is not None for price, count in zip(prices, counts) if count):
        cost = sum((price * count for price, count in zip(prices, counts) if count), Decimal(0))
        made["cost"] = f"{cost.normalize():f}"
    made["left_over"] = str(max(0, bought - to_buy))
    made["short_by"] = str(max(0, to_buy - bought))
    made["packs"] = str(sum(counts))
    return made


def pending():
    """(id, function that makes the row) for every row of the table, in order."""
    for number in range(COUNT):
        yield f"case_{number}", lambda n=number: row(n)


def crosscheck():
    """(what, holds) pairs: small cases gone through one by one."""
    for number in range(0, COUNT, 10):
        contents, prices, locked, need, opened, minimum = case(number)
        if len(contents) > 2 or any(price is None for price in prices) or any(count is not None for count in locked):
            continue
        to_buy = need - min(need, opened)
        ways = [(a, b) for a in range(to_buy // contents[0] + 2)
                for b in (range(to_buy // contents[1] + 2) if len(contents) == 2 else [0])]
        sizes = contents + [0] * (2 - len(contents))
        money = prices + [Decimal(0)] * (2 - len(contents))

        def worth(way):
            return (sum(p * n for p, n in zip(money, way)), sum(c * n for c, n in zip(sizes, way)), sum(way))

        best = min(worth(way) for way in ways if worth(way)[1] >= to_buy)
        short = to_buy - min(contents) // 10
        near = min((w for w in map(worth, ways) if w[1] >= short), key=lambda w: (w[0], -w[1], w[2]))
        if not minimum and 0 < short and near[0] < best[0]:
            best = near
        made = row(number)
        yield f"packs case_{number} gone through one by one", (
            (Decimal(made["cost"]), int(made["packs"])) == (best[0], best[2])
            and int(made["left_over"]) - int(made["short_by"]) == best[1] - to_buy)
