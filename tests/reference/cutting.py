"""cutting.csv: the least number of stock lengths for some pieces, from a general solver of integer programmes.

Every way to cut one stock length that nothing more would come out of is a pattern; scipy.optimize.milp (HiGHS) with
mip_rel_gap=0 chooses the least number of patterns that give every piece. The cases are drawn, with a fixed seed, and
invented. Lengths are whole micrometres.
"""

from collections import Counter
from random import Random

import numpy
from scipy.optimize import Bounds, LinearConstraint, milp

NAME = "cutting.csv"
COLUMNS = ["id", "stock_um", "kerf_um", "pieces_um", "lengths", "source"]
SOURCE = "scipy 1.17.1 milp over all patterns"
AGAIN = 0.0
COUNT = 500


def case(number):
    """Stock, kerf and pieces: up to twelve, mostly all different; every fourth case up to sixty of few lengths."""
    draw = Random(f"cutting {number}")
    stock = draw.choice([2_000_000, 3_000_000, 3_048_000, 5_000_000, 6_000_000, 6_096_000])
    kerf = draw.choice([0, 1_500, 3_000, 3_175])
    if number % 4 == 3:
        kinds = [draw.randint(stock // 5, stock * 9 // 10) for _ in range(draw.randint(2, 4))]
        return stock, kerf, [draw.choice(kinds) for _ in range(draw.randint(13, 60))]
    count = draw.randint(1, 12)
    if number % 4 == 1:  # thirds and halves, where it is close
        part = draw.choice([2, 3, 4])
        near = (stock - (part - 1) * kerf) // part
        return stock, kerf, [near + draw.randint(-stock // 12, stock // 50) for _ in range(count)]
    return stock, kerf, [draw.randint(stock // 8, stock) for _ in range(count)]


def patterns(room, sizes, counts):
    """Every way to fill a room that nothing more fits into, as counts of each size."""
    found = []

    def fill(at, left, taken):
        if at == len(sizes):
            if all(size > left or taken[place] == counts[place] for place, size in enumerate(sizes)):
                found.append(list(taken))
            return
        for count in range(min(counts[at], left // sizes[at]), -1, -1):
            taken.append(count)
            fill(at + 1, left - count * sizes[at], taken)
            taken.pop()

    fill(0, room, [])
    return found


def least(stock, kerf, pieces):
    """The least number of stock lengths: each piece with its cut, the last cut into the air."""
    asked = Counter(piece + kerf for piece in pieces)
    sizes = sorted(asked, reverse=True)
    ways = patterns(stock + kerf, sizes, [asked[size] for size in sizes])
    gives = numpy.array(ways).T
    answer = milp(numpy.ones(len(ways)), constraints=LinearConstraint(gives, [asked[size] for size in sizes], numpy.inf),
                  integrality=numpy.ones(len(ways)), bounds=Bounds(0, numpy.inf), options={"mip_rel_gap": 0})
    if not answer.success:
        raise ArithmeticError(answer.message)
    chosen = [round(value) for value in answer.x]
    if any((gives[at] * chosen).sum() < asked[size] for at, size in enumerate(sizes)):
        raise ArithmeticError("the solver's answer lacks a piece")
    return sum(chosen)


def row(number):
    """The row of a case."""
    stock, kerf, pieces = case(number)
    return {"id": f"case_{number}", "stock_um": str(stock), "kerf_um": str(kerf), "pieces_um": " ".join(map(str, pieces)),
            "lengths": str(least(stock, kerf, pieces)), "source": SOURCE}


def pending():
    """(id, function that makes the row) for every row of the table, in order."""
    for number in range(COUNT):
        yield f"case_{number}", lambda n=number: row(n)


def crosscheck():
    """(what, holds) pairs: never fewer than the pieces' length asks for, never more than one for each piece."""
    for number in range(COUNT):
        stock, kerf, pieces = case(number)
        room = stock + kerf
        volume = -(-sum(piece + kerf for piece in pieces) // room)
        yield f"cutting case_{number} between its bounds", volume <= least(stock, kerf, pieces) <= len(pieces)
