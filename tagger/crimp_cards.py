"""A crimp card from texts: those of a form, or of a row of a list; and cards as rows of a list."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from tagger import shop_lists
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.store import CrimpValue
from tagger.store.crimps import LENGTHS
from tagger.trade.tables import Tables
from tagger.units import read_length_mm, whole_number

FIGURES = ("diameter_mm", "minus_mm", "plus_mm")
COLUMNS = (
    "hose_standard",
    "hose_dash",
    "hose_part",
    "shell",
    *FIGURES,
    "die",
    *LENGTHS,
    "machine_setting",
    "source",
)


def card_of(given: Mapping[str, Any], tables: Tables) -> CrimpValue:
    """Raises StoreError, UnitError or SpecError naming the field that is wrong."""
    text = {name: str(given.get(name) or "").strip() for name in COLUMNS}
    standard, dash = standard_of(tables, text["hose_standard"]), whole_number(text["hose_dash"].lstrip("-"))
    if dash is None:
        shown = text["hose_dash"].lstrip("-")
        what = Message("stock-card-not-a-dash", value=shown) if shown else Message("stock-card-no-dash")
        raise StoreError(Problem("hose_dash", shown, what))
    figures = {name: _length(name, text[name]) for name in FIGURES}
    lengths = {name: _length(name, text[name]) for name in LENGTHS if text[name]}
    words = {name: text[name] for name in ("shell", "source", "hose_part")}
    settings = {name: text[name] or None for name in ("die", "machine_setting")}
    values: dict[str, Any] = {**figures, **lengths, **words, **settings}
    return CrimpValue(standard, dash, **values)


def read_cards(table: shop_lists.Table, tables: Tables) -> dict[int, CrimpValue]:
    """The cards of a list, by row as the spreadsheet numbers it. Raises SpecError with the problems of all rows."""
    return dict(shop_lists.read_numbered(table, COLUMNS, lambda row: card_of(row, tables)))


def row_of(card: CrimpValue) -> list[Any]:
    """A card's cells under COLUMNS: they can be read in again."""
    return [getattr(card, name) for name in COLUMNS]


def standard_of(tables: Tables, name: str) -> str:
    """A hose standard's name as the tables spell it. Raises StoreError for one they do not have."""
    standard = tables.standard_of(name)
    if standard is None:
        raise StoreError(Problem("hose_standard", name, Message("stock-card-standard-unknown", name=name)))
    return standard.standard


def _length(field: str, text: str) -> float:
    try:
        return round(read_length_mm(text), 3)
    except TaggerError as error:
        raise error.within(field) from None
