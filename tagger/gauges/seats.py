"""Seat angles: for each a notch to hold a nose in, and a point to hold in a funnel."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final

from tagger import phrases
from tagger.gauges.board import LIGHT
from tagger.gauges.frame import Book, Head
from tagger.gauges.rowed import having
from tagger.messages import Message, angle
from tagger.trade.identifying.marks import mark
from tagger.trade.rows import SeatRow
from tagger.trade.tables import Tables

HALF: Final = {"24": 12.0, "60": 30.0, "37": 37.0, "45": 45.0}
"""Half the angle of the cone that a seat's name means: 24 and 60 are whole angles, 37 and 45 are half of theirs."""
SAME: Final = {"30": "60"}  # 30 is half of 60: one cone, named either way
ARM = 26.0  # mm, how deep a notch is and how long a point
_CARD = (58.0, 34.0)  # mm, what is cut out
_ROW = 40.0


def meant(tables: Tables) -> dict[str, list[SeatRow]]:
    """The seats with a cone, each with the forms that have it."""
    found: dict[str, list[SeatRow]] = {seat: [] for seat in HALF}
    for row in tables.seats:
        if (seat := SAME.get(row.seat, row.seat)) in found:
            found[seat].append(row)
    return found


def draw(book: Book) -> None:
    """All angles on one page."""
    book.new_page(Head(Message("gauges-title-seats"), Message("gauges-use-seats"), "sheet=seats"))
    y = book.top
    for seat, rows in meant(book.tables).items():
        _templates(book, seat, y)
        _words(book, seat, rows, y)
        y += _ROW


def _templates(book: Book, seat: str, y: float) -> None:
    """The notch and the point, each on a card of its own with its name."""
    board, half = book.board, math.radians(HALF[seat])
    reach = min(ARM, (_CARD[0] / 2 - 3) / math.tan(half))
    wide = reach * math.tan(half)
    x, middle = book.left, book.left + _CARD[0] / 2
    card = ((x, y), (middle - wide, y), (middle, y + reach), (middle + wide, y), (x + _CARD[0], y))
    board.fill((*card, (x + _CARD[0], y + _CARD[1]), (x, y + _CARD[1])), LIGHT)
    name = book.t("gauges-seat-angles", half=angle(HALF[seat]), whole=angle(2 * HALF[seat]))
    board.text(middle, y + _CARD[1] - 1.2, name, 2.5, bold=True, anchor="middle")
    x += _CARD[0] + 6
    middle = x + _CARD[0] / 2
    top = y + _CARD[1] - reach
    board.fill(((middle, y), (middle + wide, y + reach), (middle - wide, y + reach)), LIGHT)
    board.rectangle(x, y + reach, _CARD[0], top - y, LIGHT)
    board.text(middle, y + _CARD[1] - 1.2, name, 2.5, bold=True, anchor="middle")


def _words(book: Book, seat: str, rows: Sequence[SeatRow], y: float) -> None:
    board, x = book.board, book.left + 2 * _CARD[0] + 11
    board.text(x, y + 3.4, mark("A", float(seat)), 3.6, bold=True)
    for place, name in enumerate(having(book, [(phrases.connection(row.family), row) for row in rows])):
        board.text(x, y + 7.6 + 3.2 * place, name, 2.3)
