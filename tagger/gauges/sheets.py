"""Every gauge sheet by its name, as a PDF at true scale."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from tagger.errors import Problem, SpecError
from tagger.gauges import KINDS, flanges, hexes, hoses, pitches, seats, threads
from tagger.gauges.frame import Book
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.settings import ShopSettings
from tagger.spec import Connection
from tagger.trade.tables import Tables

_DRAWN: Final[dict[str, Callable[[Book], None]]] = {
    "pitches": pitches.draw,
    "seats": seats.draw,
    "hexes": hexes.draw,
    "flanges": flanges.draw,
    "hoses": hoses.draw,
}
_WIDE = ("hoses",)
_NOTES: Final = {"threads": 7.0, "pitches": 27.0, "seats": 14.0, "hexes": 14.0, "flanges": 7.0, "hoses": 7.0}
"""The room for where a sheet's figures come from, mm."""


def to_pdf(kind: str, settings: ShopSettings, tables: Tables, *, paper: str = "a4", family: str = "",
           language: str | None = None) -> bytes:  # fmt: skip
    """One sheet in ``language`` (default: the shop's).

    ``kind``: of KINDS; ``paper``: "a4" or "letter"; ``family``: whose threads, by default all families one after the
    other. Raises SpecError where any of them is not known.
    """
    t = Translator(language or settings.language)
    if kind not in KINDS:
        raise SpecError(Problem("sheet", kind, Message("gauges-not-a-sheet", known=KINDS)))
    book = Book(
        paper,
        settings,
        tables,
        t,
        title=t(Message(f"gauges-name-{kind}")),
        notes=_NOTES[kind],
        wide=kind in _WIDE,
    )
    if kind == "threads":
        for one in _families(family, tables):
            threads.draw(book, one)
    else:
        _DRAWN[kind](book)
    return book.to_pdf()


def _families(family: str, tables: Tables) -> tuple[Connection, ...]:
    known = threads.families(tables)
    if not family:
        return known
    if family not in known:
        raise SpecError(
            Problem("family", family, Message("gauges-not-a-family", known=tuple(map(str, known))))
        )
    return (Connection(family),)
