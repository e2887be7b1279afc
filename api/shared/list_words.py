"""The words that customers write in a list's cells: which of our values each is.

A word of the trade ("JIC", "female swivel", "20S") is proposed with the value it is taken for, and may be
chosen otherwise; a word that is not known is told once, with the nearest three.
"""

from __future__ import annotations

import csv
import difflib
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Final

from tagger import phrases
from tagger.messages import Message, angle, as_is
from tagger.spec import Connection, Fluid, Form, LengthBasis, Material
from tagger.trade.tables import tables

Choices = Mapping[tuple[str, str], str]
"""By our column and their word the value that somebody chose."""

_VALUES: Final[dict[str, tuple[str, ...]]] = {
    "connection": tuple(map(str, Connection)),
    "form": tuple(map(str, Form)),
    "material": tuple(map(str, Material)),
    "fluid": tuple(map(str, Fluid)),
    "length_basis": tuple(map(str, LengthBasis)),
    "shape": ("straight", "elbow_45", "elbow_90"),
}
_STANDARD: Final = "hose.standard"
OPEN: Final = frozenset((_STANDARD,))
"""Columns where any other text may stand as well: a word of no meaning there is no problem by itself."""
_NEAREST: Final = 3
_METRIC_TUBE = re.compile(r"(\d{1,2})\s*([LS])", re.IGNORECASE)


@dataclass(frozen=True)
class Reading:
    """One word of one column: the value it is taken for ("" for none), and the nearest where it is none."""

    column: str
    theirs: str
    ours: str
    nearest: tuple[str, ...]
    place: int  # of its column, from 0
    row: int  # the first that has it, as the spreadsheet numbers them


def readings(table: Sequence[Sequence[object]], match: Sequence[str], chosen: Choices) -> list[Reading]:
    """Every word that is not one of our values as it stands, once for each column."""
    found: dict[tuple[str, str], Reading] = {}
    for place, column in enumerate(match):
        values = values_of(column)
        for row, cells in enumerate(table[1:], 2) if values else ():
            word = str(cells[place]).strip() if place < len(cells) and cells[place] is not None else ""
            if not word or word in values or (column, word) in found:
                continue
            if _kind(column) == "shape" and word.isdecimal():  # any other angle
                continue
            ours = chosen.get((column, word)) or read(column, word)
            nearest = () if ours else nearest_to(column, word)
            found[column, word] = Reading(column, word, ours, nearest, place, row)
    return list(found.values())


def read(column: str, word: str) -> str:
    """The value that a word is taken for; "" where it is none.

    >>> read("end_a.connection", "JIC"), read("end_b.form", "Female swivel"), read("end_a.connection", "20S")
    ('sae_37_flare', 'female_swivel', 'din24_heavy')
    """
    if column.endswith(".connection") and (tube := _METRIC_TUBE.fullmatch(word.strip())):
        return "din24_heavy" if tube[2].upper() == "S" else "din24_light"
    if column == _STANDARD:
        standard = tables().standard_of(word)
        return standard.standard if standard else ""
    return _words(_kind(column)).get(_bare(word), "")


def size_in(word: object) -> str:
    """The tube size that a word for a connection holds: "20" of "20S"; "" for none."""
    tube = _METRIC_TUBE.fullmatch(str(word).strip())
    return tube[1] if tube else ""


def nearest_to(column: str, word: str) -> tuple[str, ...]:
    """The nearest three of our values, by their spelling or by that of a word for them."""
    words = _standards() if column == _STANDARD else _words(_kind(column))
    ranked = sorted(words, key=lambda known: -difflib.SequenceMatcher(None, _bare(word), known).ratio())
    return tuple(dict.fromkeys(words[known] for known in ranked))[:_NEAREST]


def values_of(column: str) -> tuple[str, ...]:
    """The values that a column may have; empty where it may have any."""
    if column == _STANDARD:
        return tuple(tables().standards)
    return _VALUES.get(_kind(column), ())


def named(column: str, value: str) -> Message:
    """A value as people read it."""
    kinds = {
        "connection": phrases.connection, "form": phrases.form, "material": phrases.material,
        "fluid": phrases.fluid,
    }  # fmt: skip
    if say := kinds.get(_kind(column)):
        return say(value)
    if column == _STANDARD:
        return as_is(value)
    if _kind(column) == "shape":
        degrees = value.removeprefix("elbow_")
        return Message("words-shape-straight") if degrees == value else _elbow(int(degrees))
    return phrases.length_basis(value)


def _elbow(degrees: int) -> Message:
    return Message("words-shape-elbow", angle=angle(degrees))


def _kind(column: str) -> str:
    return column.rpartition(".")[2]


@cache
def _standards() -> dict[str, str]:
    """By each bare spelling of a hose standard its name."""
    return {_bare(spelling): name for spelling, name in tables().spellings.items()}


@cache
def _words(kind: str) -> dict[str, str]:
    """By each word's bare spelling our value: the values themselves, and the words of the trade."""
    found = {_bare(value): value for value in _VALUES.get(kind, ())}
    with Path(__file__).with_name("trade_words.csv").open(encoding="utf-8", newline="") as file:
        found |= {_bare(row["word"]): row["value"] for row in csv.DictReader(file) if row["field"] == kind}
    return found


def _bare(text: str) -> str:
    return re.sub(r"[^a-z0-9]", "", text.lower())
