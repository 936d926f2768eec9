"""Works a printed calculation sheet out again, from its printed text alone.

    pdftotext -bbox sheet.pdf - | python3 printed_sheet.py
    pdftotext -bbox sheet.pdf - | python3 printed_sheet.py read       only reads every line, for a second size of paper

Every line is read where it stands on the paper: its number, its name, its equation with the values in it, its result. The
equation is evaluated as printed, with the values as printed and their units, so that a wrong statement, a wrong value and a
wrong unit are all found. Both sides must agree as far as half a unit in the last printed place of every value reaches. A
symbol must stand for the same value wherever it stands. What can't be read is an error.

Says of each sheet how many lines of each kind it has and how far rounding reaches at most, then the names of its lines;
exit 1 with what is wrong.
"""

import html
import math
import re
import sys

HEADINGS = ["no.", "figure", "equation,", "result", "from"]
# The title block's first two fields stand side by side.
FOOT = {"owner", "checked"}

# ---- reading the paper -----------------------------------------------------------------------------------------------


class Word:
    def __init__(self, text, left, top, bottom):
        self.text, self.left, self.top, self.bottom = text, left, top, bottom
        self.middle = (top + bottom) / 2


def pages(text):
    for page in re.findall(r"<page[^>]*>(.*?)</page>", text, re.S):
        page = page.replace("\u00a0", " ")
        found = re.findall(
            r'<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">(.*?)</word>', page, re.S
        )
        yield [Word(html.unescape(text), float(x), float(y), float(below)) for x, y, below, text in found]


def lines_of(words):
    """Words on a line, top to bottom, left to right; an index stands a little lower than its symbol."""
    lines = []
    for word in sorted(words, key=lambda word: word.middle):
        if lines and word.middle - lines[-1][0].middle < 4.0:
            lines[-1].append(word)
        else:
            lines.append([word])
    return [sorted(line, key=lambda word: word.left) for line in lines]


def rows(words):
    """Numbered rows of one page: number, then the text of each column."""
    heads = {}
    for line in lines_of(words):
        texts = [word.text for word in line]
        if all(head in texts for head in HEADINGS):
            heads = {head: line[texts.index(head)] for head in HEADINGS}
            break
    if not heads:
        return
    edges = [heads[head].left - 1.5 for head in HEADINGS]
    foot = foot_of(words)
    body = [word for word in words if word.top > heads["no."].bottom and word.bottom < foot]
    column = lambda word: max(i for i, edge in enumerate(edges) if word.left >= edge or i == 0)
    # A row begins with its number; a line that begins with anything else at the left edge is a heading or a remark.
    marks = []
    for line in lines_of([word for word in body if column(word) == 0]):
        first = line[0]
        # A number at the edge without a name beside it is the end of a remark.
        named = any(column(word) == 1 and abs(word.middle - first.middle) < 4.0 for word in body)
        numbered = len(line) == 1 and re.fullmatch(r"\d+", first.text) and named
        marks.append((first.top - 1.5, first.text if numbered else None))
    for (top, number), (end, _) in zip(marks, marks[1:] + [(foot, None)]):
        if number is None:
            continue
        cells = [[] for _ in edges]
        for word in body:
            if top <= word.middle < end:
                cells[column(word)].append(word)
        read = lambda found: " ".join(" ".join(w.text for w in line) for line in lines_of(found))
        # Sizes of fractions stand across the columns.
        across = read([word for cell in cells[2:] for word in cell])
        if re.fullmatch(r"[^=]+ = [\d.; ]+; [\d.; ]+ mm|d [^=]+ = [\d.]+ mm", across):
            cells[2:] = [[word for cell in cells[2:] for word in cell], [], []]
        yield int(number), [read(cell) for cell in cells]


def foot_of(words):
    found = [line[0].top for line in lines_of(words) if FOOT <= {word.text for word in line}]
    return max(found, default=math.inf) - 1.0


# ---- values with units -----------------------------------------------------------------------------------------------

# kg, m, s, K
UNITS = {
    "": (1.0, (0, 0, 0, 0)),
    "m": (1.0, (0, 1, 0, 0)),
    "mm": (1e-3, (0, 1, 0, 0)),
    "in": (0.0254, (0, 1, 0, 0)),
    "m²": (1.0, (0, 2, 0, 0)),
    "m³": (1.0, (0, 3, 0, 0)),
    "kg": (1.0, (1, 0, 0, 0)),
    "kg/m³": (1.0, (1, -3, 0, 0)),
    "Pa": (1.0, (1, -1, -2, 0)),
    "J": (1.0, (1, 2, -2, 0)),
    "m/s": (1.0, (0, 1, -1, 0)),
    "m/s²": (1.0, (0, 1, -2, 0)),
    "m³/s": (1.0, (0, 3, -1, 0)),
    "K": (1.0, (0, 0, 0, 1)),
    "Pa·s": (1.0, (1, -1, -1, 0)),
    "s": (1.0, (0, 0, 1, 0)),
    "1/s": (1.0, (0, 0, -1, 0)),
    "1/m": (1.0, (0, -1, 0, 0)),
    "1/m²": (1.0, (0, -2, 0, 0)),
}
NONE = (0, 0, 0, 0)
ANY = None
RAISED = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹⁻", "0123456789-")


class Wrong(Exception):
    pass


def plain(symbol):
    """A symbol without the spaces and low lines that are only in how it is set."""
    return re.sub(r"[\s_]", "", symbol)


class Value:
    def __init__(self, text):
        match = re.fullmatch(r"([−-]?)(\d[\d.]*)(?:·10⁻([⁰¹²³⁴⁵⁶⁷⁸⁹]+))?(?: (\S+))?", text)
        if not match:
            raise Wrong(f"“{text}” is no value")
        sign, digits, power, unit = match.groups()
        if (unit or "") not in UNITS:
            raise Wrong(f"“{unit}” is no unit known here")
        factor, self.dimension = UNITS[unit or ""]
        factor *= 10.0 ** -int((power or "0").translate(RAISED))
        self.number = float(digits) * factor * (-1 if sign else 1)
        places = len(digits.partition(".")[2])
        exact = float(digits) == 0 or "." not in digits and len(digits) < 6
        self.half = 0.0 if exact else 0.5 * 10.0**-places * factor
        self.text = text


# ---- equations -------------------------------------------------------------------------------------------------------

FUNCTIONS = {"log", "ln", "max", "min", "asin", "√", "Φ"}
PIECE = r"(?:[^\W⁰¹²³⁴⁵⁶⁷⁸⁹]|,)+"
TOKEN = re.compile(
    r"\s*(?:"
    r"(\d[\d.]*)"
    r"|((?:log|ln|max|min|asin)(?![^\W⁰¹²³⁴⁵⁶⁷⁸⁹]|,)|√|Φ|(?=[^\W\d])" + PIECE + r"(?:\s+" + PIECE + r")*)"
    r"|([⁰¹²³⁴⁵⁶⁷⁸⁹]+)"
    r"|(.))"
)


def tokens(text):
    """Numbers, symbols, signs. Pieces side by side are one symbol whose index was set apart."""
    found = []
    at = 0
    text = text.rstrip()
    while at < len(text):
        match = TOKEN.match(text, at)
        number, symbol, raised, sign = match.groups()
        at = match.end()
        if number:
            found.append(("number", number.rstrip(".")))
        elif symbol:
            found.append(("symbol", plain(symbol)))
        elif raised:
            found.append(("raised", raised.translate(RAISED)))
        elif sign.strip():
            found.append(("sign", sign))
    return found


class Parser:
    """Turns an expression into Python that works on plain numbers, and the same on dimensions."""

    def __init__(self, text, known, functions):
        self.tokens = tokens(text)
        self.at = 0
        self.known = known
        self.functions = functions
        self.text = text

    def peek(self, skip=0):
        return self.tokens[self.at + skip] if self.at + skip < len(self.tokens) else ("end", "")

    def take(self, sign):
        if self.peek() != ("sign", sign):
            raise Wrong(f"“{self.text}”: “{sign}” expected before {self.tokens[self.at:][:4]}")
        self.at += 1

    def whole(self):
        found = self.sum()
        if self.peek()[0] != "end":
            raise Wrong(f"“{self.text}”: what is {self.tokens[self.at:][:4]}?")
        return found

    def sum(self):
        found = self.product()
        while self.peek() in (("sign", "+"), ("sign", "−")):
            sign = self.peek()[1]
            self.at += 1
            found = ("+" if sign == "+" else "-", found, self.product())
        return found

    def product(self):
        found = self.signed()
        while self.peek() in (("sign", "·"), ("sign", "/")):
            sign = self.peek()[1]
            self.at += 1
            found = ("*" if sign == "·" else "/", found, self.signed())
        return found

    def signed(self):
        if self.peek() == ("sign", "−"):
            self.at += 1
            return ("neg", self.signed())
        return self.power()

    def power(self):
        found = self.atom()
        while True:
            kind, text = self.peek()
            if kind == "raised":
                self.at += 1
                found = ("^", found, ("number", float(text)))
            elif (kind, text) == ("sign", "^"):
                self.at += 1
                found = ("^", found, self.signed())
            else:
                return found

    def arguments(self):
        self.take("(")
        found = [self.sum()]
        while self.peek() == ("sign", ";"):
            self.at += 1
            found.append(self.sum())
        self.take(")")
        return found

    def atom(self):
        kind, text = self.peek()
        if kind == "number":
            self.at += 1
            number = ("number", float(text))
            after, unit = self.peek()
            if after == "symbol" and unit in UNITS and unit not in self.known:
                self.at += 1
                # "Pa·s" is two units: the second follows as a factor.
                return ("*", number, ("unit", unit))
            return number
        if (kind, text) == ("sign", "("):
            self.at += 1
            found = self.sum()
            self.take(")")
            return found
        if kind != "symbol":
            raise Wrong(f"“{self.text}”: “{text}” is out of place")
        self.at += 1
        if text.startswith("Σ"):
            return ("each", self.arguments()[0])
        if text in FUNCTIONS or text in self.functions:
            if self.peek() == ("sign", "("):
                return ("call", text, self.arguments())
            return ("call", text, [self.power()])
        if text == "π":
            return ("number", math.pi)
        if text in self.known:
            return ("symbol", text)
        if text in UNITS:
            return ("unit", text)
        raise Wrong(f"“{self.text}”: nothing says what “{text}” is")


def clauses(statement):
    """Parts of a statement, cut at semicolons that stand outside brackets."""
    parts, depth, begun = [], 0, 0
    for at, letter in enumerate(statement):
        depth += (letter == "(") - (letter == ")")
        if letter == ";" and depth == 0:
            parts.append(statement[begun:at].strip())
            begun = at + 1
    parts.append(statement[begun:].strip())
    return parts


def phi(z):
    return 0.5 * math.erfc(-z / math.sqrt(2.0))


class Equation:
    """A printed statement, ready to be evaluated."""

    def __init__(self, statement, symbols):
        self.statement = statement
        self.branch = None
        parts = []
        for part in clauses(statement):
            if part.startswith("from "):
                # "from Re ≥ 0.2, below A = 3.01·Re": another equation where the condition isn't met.
                match = re.fullmatch(r"from (.+?) ≥ ([\d.]+), below (.+?) = (.+)", part)
                if not match:
                    raise Wrong(f"“{part}” is no condition")
                self.branch = match.groups()
            else:
                left, equals, right = part.partition(" = ")
                if not equals:
                    raise Wrong(f"“{part}” is no equation")
                parts.append((left, right))
        self.locals, self.functions = {}, {}
        wholes = []
        for place, (left, right) in enumerate(parts):
            name = plain(left)
            argument = re.fullmatch(r"(\w+)\((\w+)\)", name)
            if place and argument:
                self.functions[argument.group(1)] = (argument.group(2), right)
            elif place and tokens(left) == [("symbol", name)] and name not in symbols:
                self.locals[name] = right
            else:
                wholes.append((left, right))
        self.known = set(symbols) | set(self.locals)
        self.hidden = None
        if len(wholes) == 2:
            # The second one says what ε is.
            self.hidden = "ε"
            self.known.add("ε")
        elif len(wholes) != 1:
            raise Wrong(f"“{statement}” has {len(wholes)} equations")
        if any(name.startswith("Σ") for _, name in tokens(statement)):
            self.known.add("d")
        code = {}
        for name, (argument, right) in self.functions.items():
            inside = Parser(right, self.known | {argument}, ()).whole()
            code[name] = (argument, inside)
        self.functions = code
        parse = lambda text: Parser(text, self.known, set(self.functions)).whole()
        self.locals = {name: parse(right) for name, right in self.locals.items()}
        self.wholes = [(parse(left), parse(right)) for left, right in wholes]
        if self.branch:
            number, least, left, right = self.branch
            self.branch = (parse(number), float(least), parse(left), parse(right))

    # -- numbers

    def residual(self, values, table):
        """Left side less right side, and the larger of both."""
        return self.sides(self.wholes[0], Scope(self, values, table), not self.hidden)

    def sides(self, pair, scope, branched):
        left, right = pair
        if branched and self.branch:
            number, least, other, instead = self.branch
            if scope.number(number) < least:
                left, right = other, instead
                # Compared as the equation is: by their logarithms.
                return math.log10(scope.number(left)) - math.log10(scope.number(right)), 1.0
        a, b = scope.number(left), scope.number(right)
        return a - b, max(abs(a), abs(b))

    def hidden_value(self, scope):
        """What ε must be for the second equation to hold."""

        def miss(open_):
            inside = Scope(self, {**scope.values, "ε": open_}, scope.table)
            return self.sides(self.wholes[1], inside, True)[0]

        low, high = 1e-3, 1.0 - 1e-7
        at_low, at_high = miss(low), miss(high)
        if (at_low > 0) == (at_high > 0):
            # Beyond both ends nothing is lifted, or all is gone.
            return low if abs(at_low) < abs(at_high) else high
        for _ in range(200):
            middle = (low * at_high - high * at_low) / (at_high - at_low)
            if not low < middle < high:
                middle = (low + high) / 2
            there = miss(middle)
            if there == 0 or high - low < 1e-12:
                return middle
            if (there > 0) == (at_low > 0):
                low, at_low, at_high = middle, there, at_high / 2
            else:
                high, at_high, at_low = middle, there, at_low / 2
        return (low + high) / 2

    # -- dimensions

    def dimensions(self, values):
        for left, right in self.wholes:
            same(self.dimension(left, values), self.dimension(right, values), self.statement)

    def dimension(self, node, values):
        kind = node[0]
        if kind == "number":
            return ANY if node[1] == 0 else NONE
        if kind == "unit":
            return UNITS[node[1]][1]
        if kind == "symbol":
            name = node[1]
            if name in values:
                return values[name]
            if name in self.locals:
                return self.dimension(self.locals[name], values)
            if name == "ε":
                return NONE
            if name == "d":
                return UNITS["m"][1]
            raise Wrong(f"“{self.statement}”: nothing says what “{name}” is")
        if kind == "neg":
            return self.dimension(node[1], values)
        if kind in "+-":
            return same(self.dimension(node[1], values), self.dimension(node[2], values), self.statement)
        if kind in "*/":
            a, b = self.dimension(node[1], values), self.dimension(node[2], values)
            if a is ANY or b is ANY:
                return ANY
            return tuple(x + y if kind == "*" else x - y for x, y in zip(a, b))
        if kind == "^":
            a = self.dimension(node[1], values)
            if a is ANY or a == NONE:
                return a
            power = Scope(self, {}, []).number(node[2])
            return tuple(x * power for x in a)
        if kind == "each":
            return self.dimension(node[1], values)
        name, arguments = node[1], node[2]
        found = [self.dimension(argument, values) for argument in arguments]
        if name in ("max", "min"):
            total = found[0]
            for each in found[1:]:
                total = same(total, each, self.statement)
            return total
        if name == "√":
            return found[0] if found[0] is ANY else tuple(x / 2 for x in found[0])
        if name in self.functions:
            argument, inside = self.functions[name]
            return self.dimension(inside, {**values, argument: found[0]})
        same(found[0], NONE, self.statement)
        return NONE


def same(a, b, statement):
    if a is ANY:
        return b
    if b is ANY:
        return a
    if any(abs(x - y) > 1e-9 for x, y in zip(a, b)):
        raise Wrong(f"“{statement}”: {a} against {b} (kg, m, s, K)")
    return a


class Scope:
    """Values while an equation is evaluated."""

    def __init__(self, equation, values, table):
        self.equation, self.values, self.table = equation, values, table
        self.found = {}

    def number(self, node):
        kind = node[0]
        if kind == "number":
            return node[1]
        if kind == "unit":
            return UNITS[node[1]][0]
        if kind == "symbol":
            return self.symbol(node[1])
        if kind == "+":
            return self.number(node[1]) + self.number(node[2])
        if kind == "-":
            return self.number(node[1]) - self.number(node[2])
        if kind == "*":
            return self.number(node[1]) * self.number(node[2])
        if kind == "/":
            return self.number(node[1]) / self.number(node[2])
        if kind == "^":
            return self.number(node[1]) ** self.number(node[2])
        if kind == "neg":
            return -self.number(node[1])
        if kind == "each":
            return math.fsum(
                Scope(self.equation, {**self.values, "d": d}, self.table).number(node[1]) for d in self.table
            )
        return self.call(node[1], [self.number(argument) for argument in node[2]])

    def symbol(self, name):
        if name in self.values:
            return self.values[name]
        if name not in self.found:
            if name in self.equation.locals:
                self.found[name] = self.number(self.equation.locals[name])
            elif name == self.equation.hidden:
                self.found[name] = self.equation.hidden_value(self)
            else:
                raise Wrong(f"“{self.equation.statement}”: nothing says what “{name}” is")
        return self.found[name]

    def call(self, name, arguments):
        if name == "max":
            return max(arguments)
        if name == "min":
            return min(arguments)
        if name in self.equation.functions:
            argument, inside = self.equation.functions[name]
            return Scope(self.equation, {**self.values, argument: arguments[0]}, self.table).number(inside)
        one = arguments[0]
        # What rounding leaves below nought or beyond one stands for these.
        if name == "√":
            return math.sqrt(max(one, 0.0))
        if name == "asin":
            return math.asin(min(1.0, max(-1.0, one)))
        return {"log": math.log10, "ln": math.log, "Φ": phi}[name](one)


# ---- the sheet -------------------------------------------------------------------------------------------------------


class Sheet:
    only_read = sys.argv[1:] == ["read"]

    def __init__(self):
        self.defined = {}
        self.tables = {}
        self.names = []
        self.counts = {"given": 0, "equations": 0, "trial": 0, "sizes": 0}
        self.trials = {}
        self.gradings = {}
        self.worst = (0.0, "")

    def define(self, symbol, value):
        if symbol in self.defined and self.defined[symbol].text != value.text:
            raise Wrong(f"{symbol} is {self.defined[symbol].text} and {value.text}")
        self.defined[symbol] = value

    def line(self, number, name, equation, result):
        self.names.append(name)
        equation = equation.strip()
        if not result:
            return self.sizes(equation)
        symbol, equals, text = result.partition(" = ")
        if not equals:
            raise Wrong(f"“{result}” is no result")
        symbol, value = plain(symbol), Value(text.strip())
        if equation.startswith("found by trial"):
            self.counts["trial"] += 1
            self.trials[symbol] = number
            return self.define(symbol, value)
        if " = " not in equation:
            # What went in, with the unit it was typed in.
            self.counts["given"] += 1
            return self.define(symbol, value)
        self.counts["equations"] += 1
        statement, _, listed = equation.partition(" with ")
        values, table = {}, None
        for entry in filter(None, (part.strip() for part in listed.split(";"))):
            each = re.fullmatch(r"d each of (.+)", entry)
            if each:
                table = self.tables.get(plain(each.group(1)))
                if table is None:
                    raise Wrong(f"there are no sizes {each.group(1)}")
                continue
            left, equals, right = entry.partition(" = ")
            if not equals:
                raise Wrong(f"“{entry}” is no value")
            values[plain(left)] = Value(right)
        for name_, one in values.items():
            there = self.defined.get(name_)
            own = name_ in ("g", "p", "px", "py", "d", "nd", "nwhole", "nbuy", "nseen")
            if there is None and not own:
                raise Wrong(f"{name_} stands nowhere before")
            if there is not None and there.text != one.text:
                raise Wrong(f"{name_} is {one.text} here and {there.text} before")
            self.trials.pop(name_, None)
        self.check(statement, values, symbol, value, table)
        if symbol != "p":
            self.define(symbol, value)
        if "Φ" in statement or "(dhigh" in plain(statement):
            layer = next((name_.rpartition(",")[2] for name_ in values if name_.startswith("dhigh,")), None)
            self.gradings.setdefault(layer, (statement, values, symbol))

    def check(self, statement, values, symbol, value, table):
        if self.only_read:
            return
        everything = {**values, symbol: value}
        equation = Equation(statement, set(everything))
        equation.dimensions({name: one.dimension for name, one in everything.items()})
        numbers = {name: one.number for name, one in everything.items()}
        miss, size = equation.residual(numbers, table)
        reach = 1e-12 * size
        for name, one in everything.items():
            if one.half == 0.0:
                continue
            moved = [
                abs(equation.residual({**numbers, name: one.number + step}, table)[0] - miss)
                for step in ((one.half, -one.half) if table is None else (one.half,))
            ]
            reach += max(moved)
        # The sizes of the fractions are rounded too, each for itself.
        if table is not None:
            reach += 3e-6 * size + 3e-6
        if not abs(miss) <= 1.05 * reach:
            raise Wrong(f"“{statement}” misses by {miss:.3g}, rounding reaches {reach:.3g}")
        step = max(abs(value.number) * 1e-6, 1e-300)
        slope = (equation.residual({**numbers, symbol: value.number + step}, table)[0] - miss) / step
        if value.number and slope:
            self.worst = max(self.worst, (abs(reach / slope / value.number), symbol))

    def sizes(self, text):
        match = re.fullmatch(r"(.+?) = ([\d.; ]+) mm", text)
        if not match:
            raise Wrong(f"“{text}” has neither a result nor sizes")
        self.counts["sizes"] += 1
        symbol = plain(match.group(1))
        table = self.tables.setdefault(symbol, [])
        table.extend(float(size) / 1000 for size in match.group(2).split(";"))

    def finish(self):
        """Every size has its share by the printed grading."""
        for symbol, number in self.trials.items():
            raise Wrong(f"line {number}: what {symbol} was found for is not on the sheet")
        for symbol, table in self.tables.items():
            layer = symbol[1:].lstrip(",")
            known = lambda name: self.defined.get(f"{name},{layer}") or self.defined.get(f"{name}{layer}")
            if len(table) == 1:
                one = known("d10") or known("d90")
                if abs(table[0] - one.number) > 1e-6 * one.number:
                    raise Wrong(f"{symbol}: one size, but not {one.text}")
                continue
            low, high = known("dlow").number, known("dhigh").number
            for place, size in enumerate(table):
                share = (place + 0.5) / len(table)
                if known("mean"):
                    mean, dev = known("mean").number, known("dev").number
                    z = lambda x: (math.log(x * 1000) - mean) / dev
                    is_share = (phi(z(size)) - phi(z(low))) / (phi(z(high)) - phi(z(low)))
                elif known("d60"):
                    corners = [(0.0, low), (0.1, known("d10").number), (0.6, known("d60").number), (1.0, high)]
                    (p, a), (q, b) = next(
                        pair for pair in zip(corners, corners[1:]) if pair[0][1] <= size * 1.00001 and size <= pair[1][1] * 1.00001
                    )
                    is_share = p + (q - p) * math.log(size / a) / math.log(b / a)
                else:
                    is_share = math.log(size / low) / math.log(high / low)
                if abs(is_share - share) > 5e-5:
                    raise Wrong(f"{symbol}: fraction {place + 1} has {is_share:.6f} below it, not {share}")


def checked(numbered):
    """What is wrong with a sheet, and what it says of itself."""
    sheet = Sheet()
    wrong = []
    for place, (number, (_, name, equation, result, _)) in enumerate(numbered):
        if number != place + 1:
            wrong.append(f"line {number} stands where line {place + 1} should")
        try:
            sheet.line(number, name, equation, result)
        except (Wrong, ValueError, ZeroDivisionError, OverflowError, KeyError) as trouble:
            wrong.append(f"line {number}, {name}: {trouble}\n      {equation}  |  {result}")
    if not wrong:
        try:
            sheet.finish()
        except Wrong as trouble:
            wrong.append(str(trouble))
    counts = " ".join(f"{name} {count}" for name, count in sheet.counts.items())
    print(f"lines {len(numbered)} {counts}; rounding reaches {sheet.worst[0]:.1e} of {sheet.worst[1]} at most")
    for name in sheet.names:
        print(f"name {name}")
    return wrong


def main():
    # Every sheet numbers its lines from 1.
    sheets = []
    for words in pages(sys.stdin.read()):
        for row in rows(words):
            if row[0] == 1 or not sheets:
                sheets.append([])
            sheets[-1].append(row)
    wrong = [] if sheets else ["no line was found"]
    for place, numbered in enumerate(sheets):
        wrong += [f"sheet {place + 1}: {each}" for each in checked(numbered)]
    for each in wrong:
        print(each, file=sys.stderr)
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
