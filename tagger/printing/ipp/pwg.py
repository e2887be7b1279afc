"""Pages of printer dots as a PWG Raster stream, for printers that take no PDF.

PWG 5102.4-2012 "PWG Raster Format": a sync word, then for each page a header of 1796 octets in
network byte order and its lines, run-length packed.
"""

from __future__ import annotations

import struct
from collections.abc import Iterable, Iterator
from typing import Literal

import numpy as np
import numpy.typing as npt
from PIL import Image

Rows = npt.NDArray[np.uint8]
Whole = npt.NDArray[np.int64]
Flags = npt.NDArray[np.bool_]
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
    """The octets of each line: a row of the answer."""
    dots = page.convert("1")
    octets = dots.tobytes("raw", "1;I") if kind == "black_1" else dots.convert("L").tobytes()
    return np.frombuffer(octets, dtype=np.uint8).reshape(page.height, -1)


def _packed(rows: Rows) -> Iterator[bytes]:
    """Each different line once, after an octet that says how often it comes again; many lines at a time."""
    changes = np.flatnonzero((rows[1:] != rows[:-1]).any(axis=1)) + 1
    starts, stops = np.append(0, changes), np.append(changes, len(rows))
    parts = -(-(stops - starts) // _MOST_AGAIN)
    first = np.repeat(starts, parts) + _MOST_AGAIN * _counted(parts)
    again = np.minimum(np.repeat(stops, parts) - first, _MOST_AGAIN) - 1
    step = max(1, _AT_ONCE // rows.shape[1])
    for at in range(0, len(first), step):
        yield _lines(rows[first[at : at + step]], again[at : at + step])


_MOST_AGAIN, _MOST_OCTETS = 256, 128  # lines, and octets of one line, that one count stands for
_AT_ONCE = 1 << 18  # octets: what is worked out of each of them takes some fifty


def _counted(parts: Whole) -> Whole:
    """0, 1, 2, ... within each group of so many parts.

    >>> _counted(np.array([1, 3, 2])).tolist()
    [0, 0, 1, 2, 0, 1]
    """
    ends = np.cumsum(parts)
    return np.arange(ends[-1]) - np.repeat(ends - parts, parts)


def _lines(lines: Rows, again: Whole) -> bytes:
    """The lines, each after how often it comes again: pieces of equal octets, and of octets as they are."""
    width, octets = lines.shape[1], lines.reshape(-1)
    begins, equal = _pieces(lines)
    lengths = np.diff(begins, append=octets.size)
    parts = -(-lengths // _MOST_OCTETS)
    if parts.max() > 1:
        within = _MOST_OCTETS * _counted(parts)
        begins, equal = np.repeat(begins, parts) + within, np.repeat(equal, parts)
        lengths = np.minimum(np.repeat(lengths, parts) - within, _MOST_OCTETS)
    new_line = begins % width == 0
    sizes = np.where(equal, 2, 1 + lengths) + new_line
    ends = np.cumsum(sizes)
    counts = ends - sizes + new_line  # where the count of each piece stands
    out = np.empty(ends[-1], dtype=np.uint8)
    out[counts[new_line] - 1] = again
    # One octet alone is a run of one: 257 - 1 would not fit the count.
    out[counts] = np.where(equal | (lengths == 1), lengths - 1, 257 - lengths)
    out[counts[equal] + 1] = octets[begins[equal]]
    as_they_are = np.flatnonzero(np.repeat(~equal, lengths))
    shifts = (counts + 1 - begins)[~equal]
    out[as_they_are + np.repeat(shifts, lengths[~equal])] = octets[as_they_are]
    return out.tobytes()


def _pieces(lines: Rows) -> tuple[Whole, Flags]:
    """Where pieces begin among the octets of all lines, and which of them are equal octets.

    Three and more: two are no shorter as a run. No piece goes from a line to the next.
    """
    height, width = lines.shape
    alike = np.zeros((height, width + 1), dtype=np.bool_)  # to the octet before; false at both ends of a line
    np.equal(lines[:, 1:], lines[:, :-1], out=alike[:, 1:width])
    edges = np.flatnonzero(alike.reshape(-1)[1:] != alike.reshape(-1)[:-1])
    starts, last = edges[::2], edges[1::2]
    long = last - starts >= 2
    starts, last = starts[long], last[long]
    starts, ends = starts - starts // (width + 1), last - last // (width + 1) + 1
    begins, equal = np.zeros((2, lines.size + 1), dtype=np.bool_)
    begins[::width] = True
    begins[starts] = begins[ends] = equal[starts] = True
    places = np.flatnonzero(begins[:-1])
    return places, equal[places]
