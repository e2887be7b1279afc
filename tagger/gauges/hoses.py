"""Outside diameters of hose: a strip for each standard, to wrap round a hose.

A strip is as long as hoses are round; where its beginning meets it again stands the hose's outside diameter. It
excludes standards and never names one: many are within a millimetre of one another. It says nothing of pressure.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from tagger.gauges.board import DARK, FAINT
from tagger.gauges.frame import Book, Head
from tagger.messages import Message
from tagger.trade.rows import HoseSizeRow
from tagger.trade.tables import Tables

STRIP, _ROW = 8.0, 11.0  # mm: how tall a strip is, and from strip to strip
_NAME = 3.0  # mm above a strip
_GLUE = 8.0  # mm of a further piece that go under the one before
LEAST_APART = 1.0  # mm, judgement: covers swell and wear, and a strip is read to half a millimetre


@dataclass(frozen=True)
class Band:
    """A dash of a standard: its outside diameters, from the least to the largest that any source prints, in mm.

    ``apart``: how far outside it a hose may lie and still be of that standard.
    """

    dash: int
    low: float
    high: float
    rows: tuple[HoseSizeRow, ...]
    apart: float

    def holds(self, mm: float) -> bool:
        """Whether a hose as thick as that may be of this standard and dash."""
        return self.low - self.apart <= mm <= self.high + self.apart


def strips(tables: Tables) -> dict[str, list[Band]]:
    """The bands of every standard, the smallest first.

    What one source prints excludes nothing by itself: two sources for one standard and dash are up to 2.8 mm apart.
    So each band has room on both sides, as much as sources differ at most for any standard of its dash, and
    ``LEAST_APART`` at least.
    """
    read: dict[str, dict[int, list[HoseSizeRow]]] = {}
    for standard, rows in tables.hose_sizes.items():
        for row in rows:
            if not row.part:
                read.setdefault(standard, {}).setdefault(int(row.dash), []).append(row)
    differ: dict[int, float] = {}
    for dashes in read.values():
        for dash, same in dashes.items():
            low, high = _extremes(same)
            differ[dash] = max(differ.get(dash, LEAST_APART), high - low)
    return {
        standard: [
            Band(dash, *_extremes(same), tuple(same), differ[dash]) for dash, same in sorted(dashes.items())
        ]
        for standard, dashes in read.items()
    }


def _extremes(rows: Sequence[HoseSizeRow]) -> tuple[float, float]:
    found = [row.outside_diameter_mm for row in rows]
    return min(found), max(found)


def draw(book: Book) -> None:
    """Every standard's strip, in as many pieces as it needs."""
    head = Head(
        Message("gauges-title-hoses"),
        Message("gauges-use-hoses"),
        "sheet=hoses",
        Message("gauges-scan-hoses"),
    )
    book.new_page(head)
    y = book.top
    for standard, bands in strips(book.tables).items():
        longest = _longest(bands)
        for piece in range(math.ceil(longest / _piece(book))):
            if y + _ROW > book.bottom:
                book.new_page(head)
                y = book.top
            _strip(book, standard, bands, piece, y)
            y += _ROW


def _piece(book: Book) -> float:
    """How much of a strip is on one piece, mm; the tab to glue comes before it."""
    return book.right - book.left - _GLUE


def _strip(book: Book, standard: str, bands: list[Band], piece: int, y: float) -> None:
    board, start, whole = book.board, piece * _piece(book), _piece(book)
    x0 = book.left + _GLUE
    end = min(whole, _longest(bands) - start)
    notes = dict.fromkeys(
        book.sources.note(row.source, row.confidence) for band in bands for row in band.rows
    )
    name = Message("gauges-strip", standard=standard, piece=piece + 1)
    board.text(x0, y + 2.2, f"{book.t(name)} {''.join(notes)}", 2.2, bold=True)
    top = y + _NAME
    for faint in (True, False):  # the room of one band never hides another band
        for band in bands:
            room = band.apart if faint else 0.0
            left, right = (
                min(max(math.pi * mm - start, 0.0), end) for mm in (band.low - room, band.high + room)
            )
            if right > 0.0 and left < end:
                _band(book, band, x0 + left, x0 + right, top, faint=faint)
    board.outline(x0 - _GLUE, top, end + _GLUE, STRIP)
    board.line(((x0, top), (x0, top + STRIP)), width=0.3)
    for mm in range(math.ceil(start / math.pi), int((start + end) / math.pi) + 1):
        at = x0 + math.pi * mm - start
        board.line(((at, top), (at, top + (2.2 if mm % 5 == 0 else 1.2))))
        if mm % 5 == 0 and mm:
            board.text(at, top + 4.2, str(mm), 1.9, anchor="middle")


def _longest(bands: Sequence[Band]) -> float:
    return math.pi * (bands[-1].high + bands[-1].apart + 1)


def _band(book: Book, band: Band, left: float, right: float, top: float, *, faint: bool) -> None:
    """What any source prints for a dash, a single figure as a line; faint: the room beside it."""
    if faint:
        book.board.rectangle(left, top + 4.6, right - left, STRIP - 4.6, FAINT)
        return
    book.board.rectangle(left, top + 4.6, right - left, STRIP - 4.6, DARK)
    book.board.line(((left, top + 4.6), (left, top + STRIP)))
    book.board.text(right + 0.4, top + STRIP - 0.8, f"-{band.dash}", 2.0, bold=True)
