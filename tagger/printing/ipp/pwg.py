"""Pages of printer dots as a PWG Raster stream, for printers that take no PDF.

PWG 5102.4-2012 "PWG Raster Format": a sync word, then for each page a header of 1796 octets in
network byte order and its lines, run-length packed.
"""

from __future__ import annotations

import re
import struct
from collections.abc import Iterable, Iterator
from itertools import pairwise
from typing import Literal

import numpy as np
import numpy.typing as npt
from PIL import Image

Rows = npt.NDArray[np.uint8]
Kind = Literal["black_1", "sgray_8"]
"""Names of PWG 5102.4 for one bit a dot (1 is ink) and one octet a dot (0 is ink)."""

SYNC = b"RaS2"
_HEADER = 1796
_COLOUR_SPACE = {"black_1": 3, "sgray_8": 18}


def stream(pages: Iterable[Image.Image], dpi: int, kind: Kind = "black_1") -> Iterator[bytes]:
    """The pieces of a PWG Raster file of 1-bit images (black is 0), each ``dpi`` dots an inch."""
    yield SYNC
    for page in pages:
        yield _header(page.size, dpi, kind)
        yield b"".join(_packed(_rows(page, kind)))


def _header(size: tuple[int, int], dpi: int, kind: Kind) -> bytes:
    """The fields that are not zero, each at its octet (table 1 of the standard)."""
    width, height = size
    bits = 1 if kind == "black_1" else 8
    points = [round(dots * 72 / dpi) for dots in size]
    header = bytearray(_HEADER)
    header[0:9] = b"PwgRaster"
    for at, values in (
        (276, (dpi, dpi)),  # HWResolution
        (340, (1,)),  # NumCopies
        (352, points),  # PageSize
        (372, (width, height)),
        (384, (bits, bits, -(-width * bits // 8))),  # BitsPerColor, BitsPerPixel, BytesPerLine
        (400, (_COLOUR_SPACE[kind],)),
        (420, (1,)),  # NumColors
        (456, (1, 1)),  # CrossFeedTransform, FeedTransform: as drawn
        (464, (0, 0, width, height)),  # ImageBox: the whole page
        (480, (0xFFFFFF,)),  # AlternatePrimary
    ):
        struct.pack_into(f">{len(values)}I", header, at, *values)
    return bytes(header)


def _rows(page: Image.Image, kind: Kind) -> Rows:
    white = np.asarray(page.convert("1"), dtype=np.bool_)
    return np.packbits(~white, axis=1) if kind == "black_1" else white * np.uint8(255)


def _packed(rows: Rows) -> Iterator[bytes]:
    """Each different line once, after an octet that says how often it comes again."""
    height, width = rows.shape
    lines, alike = rows.tobytes(), (rows[:, 1:] == rows[:, :-1]).tobytes()
    changes = (np.flatnonzero((rows[1:] != rows[:-1]).any(axis=1)) + 1).tolist()
    for start, stop in pairwise((0, *changes, height)):
        line, pairs = start * width, start * (width - 1)
        packed = _runs(lines[line : line + width], alike[pairs : pairs + width - 1])
        for at in range(start, stop, 256):
            yield bytes([min(256, stop - at) - 1]) + packed


_ALIKE = re.compile(rb"\x01{2,}")  # three equal octets and more: two are no shorter as a run


def _runs(line: bytes, alike: bytes) -> bytes:
    """Runs of up to 128 equal octets, and stretches of 1 to 128 octets as they are.

    ``alike``: 1 for each octet that the next one equals.
    """
    out, done = bytearray(), 0
    for equal in _ALIKE.finditer(alike):
        start, end = equal.start(), equal.end() + 1
        _as_they_are(line[done:start], out)
        for at in range(start, end, 128):
            out += bytes((min(128, end - at) - 1, line[at]))
        done = end
    _as_they_are(line[done:], out)
    return bytes(out)


def _as_they_are(octets: bytes, out: bytearray) -> None:
    for at in range(0, len(octets), 128):
        piece = octets[at : at + 128]
        # One octet alone is a run of one: 257 - 1 would not fit the count.
        out.append(0 if len(piece) == 1 else 257 - len(piece))
        out.extend(piece)
