"""Reads a drawing that the page saved as SVG, and the PNG it made of it, with nothing but Python's own library.

    python3 drawing_file.py DRAWING.svg DRAWING.png

The SVG is parsed as XML (1.0) and must stand alone: known elements only, no reference to anything, no style sheet, a title
and a description. The PNG is decoded by hand (PNG specification, third edition: chunks with their checksums, filters 0 to 4):
it must be opaque, a whole number of times as large, white at its corners, and have ink wherever the SVG has a text.
Prints one line for each text, then "N passed, N failed"; the exit code is 1 when anything failed.
"""

import struct
import sys
import zlib
from xml.etree import ElementTree

SVG = "{http://www.w3.org/2000/svg}"
KNOWN = {"svg", "title", "desc", "rect", "path", "line", "circle", "text"}


def decoded(raw):
    """Width, height, channels, and every row of an eight-bit PNG."""
    assert raw[:8] == b"\x89PNG\r\n\x1a\n", "no PNG"
    at, data, head = 8, b"", None
    while at < len(raw):
        size, kind = struct.unpack(">I4s", raw[at : at + 8])
        body = raw[at + 8 : at + 8 + size]
        (sum_,) = struct.unpack(">I", raw[at + 8 + size : at + 12 + size])
        assert zlib.crc32(kind + body) == sum_, f"{kind} is damaged"
        if kind == b"IHDR":
            head = struct.unpack(">IIBBBBB", body)
        elif kind == b"IDAT":
            data += body
        at += 12 + size
    width, height, depth, colour, _, _, interlaced = head
    channels = {2: 3, 6: 4}[colour]
    assert depth == 8 and interlaced == 0, head
    data, rows, before = zlib.decompress(data), [], bytes(width * channels)
    for y in range(height):
        kind, line = data[y * (width * channels + 1)], bytearray(data[y * (width * channels + 1) + 1 : (y + 1) * (width * channels + 1)])
        if kind == 2:
            line = bytearray((a + b) & 255 for a, b in zip(line, before))
        elif kind:
            for x in range(len(line)):
                left = line[x - channels] if x >= channels else 0
                up, corner = before[x], before[x - channels] if x >= channels else 0
                if kind == 1:
                    guess = left
                elif kind == 3:
                    guess = (left + up) // 2
                else:
                    p = left + up - corner
                    guess = min((abs(p - left), 0, left), (abs(p - up), 1, up), (abs(p - corner), 2, corner))[2]
                line[x] = (line[x] + guess) & 255
        before = bytes(line)
        rows.append(before)
    return width, height, channels, rows


checks = []
root = ElementTree.parse(sys.argv[1]).getroot()
elements = list(root.iter())
names = {element.tag.removeprefix(SVG) for element in elements}
view = [float(part) for part in root.get("viewBox").split()]
checks.append(("it is an SVG of elements we know", root.tag == SVG + "svg" and names <= KNOWN))
checks.append(("it refers to nothing", not any("href" in name or "url(" in value or name in ("style", "class")
                                               for element in elements for name, value in element.attrib.items())))
checks.append(("its size is its view", [float(root.get("width")), float(root.get("height"))] == view[2:] and view[:2] == [0, 0]))
checks.append(("it has a title and a description", all((root.findtext(SVG + name) or "").strip() for name in ("title", "desc"))))
texts = root.findall(SVG + "text")
checks.append(("it has texts", len(texts) > 3))

with open(sys.argv[2], "rb") as file:
    width, height, channels, rows = decoded(file.read())
times = width / view[2]
print(f"size {width} {height} times {times:.3f}")
checks.append(("the PNG is as wide and high as the SVG, two to three times", 1.99 <= times <= 3.01 and abs(height - view[3] * times) <= 1))


def dark(x, y):
    return sum(rows[y][x * channels : x * channels + 3]) < 450


def white(x, y):
    return rows[y][x * channels : x * channels + 3] == b"\xff\xff\xff"


checks.append(("nothing shines through", channels == 3 or all(row[3::4] == b"\xff" * width for row in rows)))
checks.append(("its corners are white", all(white(x, y) for x in (0, width - 1) for y in (0, height - 1))))
ink = sum(dark(x, y) for y in range(0, height, 3) for x in range(0, width, 3)) / (len(range(0, height, 3)) * len(range(0, width, 3)))
print(f"ink {ink:.4f}")
checks.append(("it is neither blank nor black", 0.01 < ink < 0.6))
for text in texts:
    said, size = text.text, float(text.get("font-size"))
    x, y = float(text.get("x")), float(text.get("y"))
    # Half a letter each is less than any font takes.
    wide = 0.3 * size * len(said)
    left = {"start": x, "middle": x - wide / 2, "end": x - wide}[text.get("text-anchor")]
    box = [int(edge * times) for edge in (left, y - 0.75 * size, left + wide, y)]
    there = sum(dark(x, y) for y in range(max(box[1], 0), min(box[3], height)) for x in range(max(box[0], 0), min(box[2], width)))
    area = max((box[2] - box[0]) * (box[3] - box[1]), 1)
    print(f"text {said}")
    checks.append((f"“{said}” is drawn", 0.01 < there / area < 0.95))

failed = [name for name, passed in checks if not passed]
for name in failed:
    print("FAILED", name)
print(f"{len(checks) - len(failed)} passed, {len(failed)} failed")
sys.exit(1 if failed else 0)
