"""A crimp card from texts: those of a form, or of a row of a list."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from api.shared.hose_standards import standard_of
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.store import CrimpValue
from tagger.trade.tables import Tables
from tagger.units import read_length_mm, whole_number

FIGURES = ("diameter_mm", "minus_mm", "plus_mm")
LENGTHS = ("skive_outside_mm", "skive_inside_mm", "insertion_depth_mm")
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
        what = Message("bench-not-a-dash", value=shown) if shown else Message("bench-no-dash")
        raise StoreError(Problem("hose_dash", shown, what))
    figures = {name: _length(name, text[name]) for name in FIGURES}
    lengths = {name: _length(name, text[name]) for name in LENGTHS if text[name]}
    words = {name: text[name] for name in ("shell", "source", "hose_part")}
    settings = {name: text[name] or None for name in ("die", "machine_setting")}
    values: dict[str, Any] = {**figures, **lengths, **words, **settings}
    return CrimpValue(standard, dash, **values)


def _length(field: str, text: str) -> float:
    try:
        return round(read_length_mm(text), 3)
    except TaggerError as error:
        raise error.within(field) from None
