"""quote.csv: quotes added up with Python's own decimals at 80 digits.

A line is `quantity:price:cost:way:discount:class:standing`, the lines of a quote stand with a semicolon between. `way` is
`list` (the price as it stands), or `markup 0.25` / `margin 0.25` on the cost. `class` is the place of a tax class, or empty.
`standing` is firm, optional or alternate. An empty price or cost is not known. Whatever is empty is not there.

Rounded, to the places of the currency, halves up (away from zero) or to the even digit: a price made from a cost; a line's
amount; its discount; its cost; the discount on the whole for each tax class (and once for what has none); freight; the tax
of each class. Nothing else is rounded, but the margin's share of the price, to four places.
"""

import random
from decimal import ROUND_HALF_EVEN, ROUND_HALF_UP, Context, Decimal, localcontext

NAME = "quote.csv"
COLUMNS = ["id", "places", "halves", "lines", "discount", "taxes", "freight", "nets", "costs", "sum", "off", "freight_charged",
           "bases", "tax_amounts", "net", "total", "cost", "margin", "margin_share", "source"]
AGAIN = 0.0
COUNT = 600
HALVES = {"up": ROUND_HALF_UP, "even": ROUND_HALF_EVEN}


def _text(value):
    return "" if value is None else format(value, "f")


def _joined(values):
    return ";".join(_text(value) for value in values)


def _figure(draw, digits, places):
    """A figure with up to so many digits before and behind the mark; often one that ends on a half."""
    whole = draw.randrange(10 ** draw.randint(1, digits))
    behind = draw.randint(0, places)
    tail = "".join(draw.choice("0123456789") for _ in range(behind))
    if behind and draw.random() < 0.4:
        tail = tail[:-1] + "5"
    return Decimal(f"{whole}.{tail}" if tail else str(whole))


def _asked(number):
    draw = random.Random(f"bedwright quote {number}")
    taxes = [Decimal(draw.choice(["0", "0.05", "0.0825", "0.08875", "0.19", "0.2", "0.077", "0.21125"]))
             for _ in range(draw.randint(0, 3))]
    classes = [""] + [str(place) for place in range(len(taxes))]
    lines = []
    for _ in range(draw.choice([0, 1, 1, 2, 3, 5, 8, 13])):
        quantity = max(_figure(draw, draw.choice([1, 2, 4, 7]), draw.choice([0, 0, 1, 3, 6])), Decimal("0.000001"))
        way = draw.choice(["list", "list", "markup", "margin"])
        cost = _figure(draw, draw.choice([2, 4, 8]), draw.choice([2, 2, 3, 6])) if draw.random() < 0.85 else None
        price = None
        if way == "list":
            price = _figure(draw, draw.choice([2, 4, 9]), draw.choice([2, 2, 3, 6])) if draw.random() < 0.9 else None
        else:
            share = Decimal(draw.randrange(0, 899999 if way == "margin" else 3000000)) / 1000000
            way += f" {share}"
        off = Decimal(draw.choice(["0", "0", "0.05", "0.1", "0.125", "0.33", "0.0625", "1", "0.123456"]))
        standing = draw.choice(["firm", "firm", "firm", "firm", "optional", "alternate"])
        lines.append((quantity, price, cost, way, off, draw.choice(classes), standing))
    freight = None
    if draw.random() < 0.7:
        weight = Decimal(draw.randrange(1, 10 ** draw.randint(1, 6)))
        least = _figure(draw, 3, 2) if draw.random() < 0.5 else None
        freight = (weight, _figure(draw, 2, 5), least, draw.choice(classes))
    discount = Decimal(draw.choice(["0", "0", "0.02", "0.05", "0.075", "0.1", "0.015", "0.333333", "1"]))
    return draw.choice([0, 2, 2, 2, 3]), draw.choice(["up", "even"]), lines, discount, taxes, freight


def _row(number):
    places, halves, lines, discount, taxes, freight = _asked(number)
    unit = Decimal(1).scaleb(-places)
    context = Context(prec=80)
    rule = HALVES[halves]

    def rounded(value, to=unit):
        return value.quantize(to, rounding=rule, context=context)

    with localcontext(context):
        nets, costs, firm = [], [], []
        for quantity, price, cost, way, off, tax, standing in lines:
            kind, _, share = way.partition(" ")
            if kind == "markup":
                price = None if cost is None else rounded(cost * (1 + Decimal(share)))
            elif kind == "margin":
                price = None if cost is None else rounded(cost / (1 - Decimal(share)))
            net = None
            if price is not None:
                gross = rounded(price * quantity)
                net = gross - rounded(gross * off)
            whole_cost = None if cost is None else rounded(cost * quantity)
            nets.append(net)
            costs.append(whole_cost)
            if standing == "firm":
                firm.append((net, whole_cost, tax))
        sums = {str(place): Decimal(0) for place in range(len(taxes))} | {"": Decimal(0)}
        for net, _, tax in firm:
            sums[tax] += net or 0
        offs = {tax: rounded(value * discount) for tax, value in sums.items()}
        sums = {tax: value - offs[tax] for tax, value in sums.items()}
        goods = sum(sums.values())
        charged = None
        if freight:
            weight, rate, least, tax = freight
            charged = rounded(weight * rate)
            if least is not None:
                charged = max(charged, rounded(least))
            sums[tax] += charged
        bases = [sums[str(place)] for place in range(len(taxes))]
        amounts = [rounded(base * rate) for base, rate in zip(bases, taxes)]
        net = goods + (charged or 0)
        cost = sum((cost for _, cost, _ in firm if cost is not None), Decimal(0))
        margin = share = None
        if all(net is not None and cost is not None for net, cost, _ in firm):
            margin = goods - cost
            share = rounded(margin / goods, Decimal("0.0001")) if goods else None
        return {
            "id": f"quote_{number}", "places": str(places), "halves": halves,
            "lines": ";".join(":".join([_text(q), _text(p), _text(c), way, _text(off), tax, standing])
                              for q, p, c, way, off, tax, standing in lines),
            "discount": _text(discount), "taxes": _joined(taxes),
            "freight": ":".join([*(_text(value) for value in freight[:3]), freight[3]]) if freight else "",
            "nets": _joined(nets), "costs": _joined(costs), "sum": _text(goods + sum(offs.values())),
            "off": _text(sum(offs.values())), "freight_charged": _text(charged), "bases": _joined(bases),
            "tax_amounts": _joined(amounts), "net": _text(net), "total": _text(net + sum(amounts)), "cost": _text(cost),
            "margin": _text(margin), "margin_share": _text(share), "source": "Python decimal",
        }


def pending():
    for number in range(COUNT):
        yield f"quote_{number}", lambda number=number: _row(number)


def crosscheck():
    """What is left out of a quote by hand: three lines of arithmetic that need no program."""
    rows = {key: make() for key, make in pending()}
    for key, row in rows.items():
        taxed = [Decimal(amount) for amount in row["tax_amounts"].split(";") if amount]
        yield f"quote {key}: net and taxes are the total", Decimal(row["net"]) + sum(taxed) == Decimal(row["total"])
        parts = Decimal(row["sum"]) - Decimal(row["off"]) + Decimal(row["freight_charged"] or 0)
        yield f"quote {key}: lines less discount with freight are the net", parts == Decimal(row["net"])
