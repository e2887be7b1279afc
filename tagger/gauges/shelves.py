"""Gauges of different sizes beside one another, in rows down a page."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from tagger.gauges.frame import Book, Head

_GAP = 4.0  # mm


@dataclass(frozen=True)
class Item:
    """A gauge with its words, in mm. ``draw``: at (x, y), its top left, once its page is open."""

    across: float
    down: float
    draw: Callable[[float, float], None]


def draw(book: Book, items: Sequence[Item], head: Head) -> None:
    """From left to right, and down, as each finds room; on as many pages as that takes."""
    book.new_page(head)
    x, y, tallest = book.left, book.top, 0.0
    for item in items:
        if x + item.across > book.right:
            x, y, tallest = book.left, y + tallest + _GAP, 0.0
        if y + item.down > book.bottom:
            book.new_page(head)
            x, y, tallest = book.left, book.top, 0.0
        item.draw(x, y)
        x, tallest = x + item.across + _GAP, max(tallest, item.down)
