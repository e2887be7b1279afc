"""Widths across flats: a bar for every hexagon that a nut or body of the tables has."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence

from tagger import phrases
from tagger.gauges import rowed
from tagger.gauges.board import DARK, LIGHT, Board
from tagger.gauges.frame import Book, Head
from tagger.gauges.rowed import Row, having
from tagger.gauges.threads import size_text
from tagger.messages import Message, diameter
from tagger.trade.identifying.marks import mark
from tagger.trade.rows import HexRow
from tagger.trade.tables import Tables

ROW, BAR = 9.6, 7.0  # mm
TOLERANCE = 0.3  # mm by which a hexagon may be smaller; as identify reads one


def widths(tables: Tables) -> dict[float, list[HexRow]]:
    """Every width across flats, mm, with what has it, the smallest first."""
    found: dict[float, list[HexRow]] = defaultdict(list)
    for row in tables.hexes:
        found[row.hex_mm].append(row)
    return dict(sorted(found.items()))


def draw(book: Book) -> None:
    """All hexagons."""
    rows = [_row(book, width, having_it) for width, having_it in widths(book.tables).items()]
    head = Head(Message("gauges-title-hexes"), Message("gauges-use-hexes"), "sheet=hexes")
    rowed.draw(book, rows, head, ROW)


def _row(book: Book, width: float, rows: Sequence[HexRow]) -> Row:
    def words() -> tuple[str, list[str]]:
        return book.t.figure(diameter(width)), having(book, [(_named(r), r) for r in rows])

    return Row(width, mark("H", width), words, lambda x, y: _bar(book.board, width, x, y))


def _named(row: HexRow) -> Message:
    size = size_text(row.family, row.size)
    return Message("identify-named", size=size, connection=phrases.connection(row.family))


def _bar(board: Board, width: float, x: float, y: float) -> None:
    board.rectangle(x, y, width - TOLERANCE, BAR, LIGHT)
    board.rectangle(x + width - TOLERANCE, y, TOLERANCE, BAR, DARK)
