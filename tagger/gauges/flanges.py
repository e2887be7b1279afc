"""Flange heads of codes 61 and 62: a disc as wide as the head, within the pattern of its four screws."""

from __future__ import annotations

from dataclasses import dataclass

from tagger import phrases
from tagger.gauges import shelves
from tagger.gauges.board import LIGHT
from tagger.gauges.frame import Book, Head
from tagger.gauges.shelves import Item
from tagger.messages import Message, diameter
from tagger.spec import Connection
from tagger.trade.identifying.marks import mark
from tagger.trade.rows import FlangeRow
from tagger.trade.tables import Tables

_WORDS, _CROSS = 12.0, 3.0  # mm: below a pattern, and half a cross
_LEAST = 46.0  # mm, the room of a pattern's words


@dataclass(frozen=True)
class Flange:
    """One size: its figures by name (``head_mm``, ``bolt_long_mm``, ``bolt_short_mm``)."""

    family: Connection
    size: str
    rows: dict[str, FlangeRow]

    def mm(self, what: str) -> float | None:
        """One of its figures; None where it is not known."""
        return float(self.rows[what].value) if what in self.rows else None


def of_tables(tables: Tables) -> list[Flange]:
    """Every size of both codes, the smallest first."""
    found: dict[tuple[Connection, str], dict[str, FlangeRow]] = {}
    for row in tables.flanges:
        if row.what.endswith("_mm"):
            found.setdefault((row.family, row.size), {})[row.what] = row
    flanges = [Flange(family, size, rows) for (family, size), rows in found.items()]
    return sorted(flanges, key=lambda one: (one.family.value, int(one.size)))


def draw(book: Book) -> None:
    """A page or more for each code."""
    flanges = of_tables(book.tables)
    for family in dict.fromkeys(one.family for one in flanges):
        title = Message("gauges-title-flanges", code=phrases.connection(family))
        head = Head(title, Message("gauges-use-flanges"), f"sheet=flanges&family={family}")
        shelves.draw(book, [_item(book, one) for one in flanges if one.family is family], head)


def _item(book: Book, one: Flange) -> Item:
    across, tall = _room(one)
    across = max(across, _LEAST)
    return Item(across, tall + _WORDS, lambda x, y: _flange(book, one, x, y, across))


def _room(one: Flange) -> tuple[float, float]:
    """How wide and how tall the drawing of a flange is."""
    head = one.mm("head_mm") or 0.0
    return (
        max(head, (one.mm("bolt_long_mm") or 0.0) + 2 * _CROSS),
        max(head, (one.mm("bolt_short_mm") or 0.0) + 2 * _CROSS),
    )


def _flange(book: Book, one: Flange, x: float, y: float, across: float) -> None:
    board, tall = book.board, _room(one)[1]
    middle, height = x + across / 2, y + tall / 2
    head, long, short = (one.mm(what) for what in ("head_mm", "bolt_long_mm", "bolt_short_mm"))
    if head:
        board.disc(middle, height, head, LIGHT)
    if long and short:
        for sideways in (-long / 2, long / 2):
            for up in (-short / 2, short / 2):
                _cross(book, middle + sideways, height + up)
    marks = [mark(letter, figure) for letter, figure in (("R", head), ("B", long)) if figure]
    board.text(middle, y + tall + 3.4, f"-{one.size}   {'  '.join(marks)}", 2.8, bold=True, anchor="middle")
    notes = dict.fromkeys(book.sources.note(row.source, row.confidence) for row in one.rows.values())
    if head and long and short:
        said = Message("gauges-flange", head=diameter(head), long=diameter(long), short=diameter(short))
    else:
        said = Message("gauges-flange-no-head", long=diameter(long or 0.0), short=diameter(short or 0.0))
    board.paragraph(x, y + tall + 4.4, across, _WORDS - 5, f"{book.t(said)} {''.join(notes)}", 2.2)


def _cross(book: Book, x: float, y: float) -> None:
    """Where the middle of a screw is."""
    book.board.line(((x - _CROSS, y), (x + _CROSS, y)))
    book.board.line(((x, y - _CROSS), (x, y + _CROSS)))
