"""Rows down a page: a gauge at the left, what it means beside it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import Protocol

from tagger.gauges.frame import Book, Head
from tagger.messages import Message


@dataclass(frozen=True)
class Row:
    """A gauge ``width`` mm wide, its mark, and what it means.

    ``words``: the figure in words, and what has it, each with the number of its source. They are asked for once the row's page is open, for their sources are numbered on it. ``draw``: at (x, y), the
    top left of the row.
    """

    width: float
    mark: str
    words: Callable[[], tuple[str, Sequence[str]]]
    draw: Callable[[float, float], None]


def draw(book: Book, rows: Sequence[Row], head: Head, height: float, words_at: float = 0.0) -> None:
    """The rows, each ``height`` mm tall, on as many pages as they take; a row's sources are those of its page.

    ``words_at``: where the words begin, mm from the left; by default behind each gauge.
    """
    book.new_page(head)
    y = book.top
    for row in rows:
        if y + height > book.bottom:
            book.new_page(head)
            y = book.top
        row.draw(book.left, y)
        x = book.left + (words_at or row.width + 3)
        book.board.text(x, y + 3.0, row.mark, 3.2, bold=True)
        figure, having = row.words()
        words = "   ".join((figure, *having))
        book.board.paragraph(x + 17, y, book.right - x - 17, height - 0.6, words, 2.3)
        y += height


class Cited(Protocol):
    """A row of the tables that says where it comes from."""

    @property
    def source(self) -> str: ...

    @property
    def confidence(self) -> str: ...


def having(book: Book, named: Iterable[tuple[Message, Cited]]) -> list[str]:
    """What has a figure, each named once, with the numbers of its sources."""
    notes: dict[str, dict[str, None]] = {}
    for name, row in named:
        notes.setdefault(book.t(name), {})[book.sources.note(row.source, row.confidence)] = None
    return [f"\u2022 {name} {''.join(numbers)}" for name, numbers in notes.items()]
