"""Reads every Code 128 off a printed PDF with a general decoder: one line for each, in the order of the sheets.

    python read_codes.py FILE.pdf

pdftoppm draws the sheets at 300 dots an inch, as an office printer does; zxing-cpp reads them.
"""

import subprocess
import sys
import tempfile
from pathlib import Path

import numpy
import zxingcpp


def sheets(pdf):
    """Every sheet as grey levels."""
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(["pdftoppm", "-gray", "-r", "300", pdf, f"{folder}/sheet"], check=True)
        for path in sorted(Path(folder).glob("sheet*.pgm")):
            header, size, most, pixels = path.read_bytes().split(b"\n", 3)
            assert header == b"P5" and most == b"255", path
            width, height = map(int, size.split())
            yield numpy.frombuffer(pixels, dtype=numpy.uint8).reshape(height, width)


def main():
    for sheet in sheets(sys.argv[1]):
        found = [code for code in zxingcpp.read_barcodes(sheet) if code.format == zxingcpp.BarcodeFormat.Code128]
        for code in sorted(found, key=lambda code: code.position.top_left.y):
            print(code.text)


if __name__ == "__main__":
    main()
