"""Reads the QR code off each grey picture with a general decoder: one line for each, in their order.

    python read_qr.py FILE.pgm…
"""

import sys
from pathlib import Path

import numpy
import zxingcpp


def main():
    for path in sys.argv[1:]:
        header, size, most, pixels = Path(path).read_bytes().split(b"\n", 3)
        assert header == b"P5" and most == b"255", path
        width, height = map(int, size.split())
        picture = numpy.frombuffer(pixels, dtype=numpy.uint8).reshape(height, width)
        found = [code for code in zxingcpp.read_barcodes(picture) if code.format == zxingcpp.BarcodeFormat.QRCode]
        print(*[code.text for code in found], sep="\n")


if __name__ == "__main__":
    main()
