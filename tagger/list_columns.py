"""The headings that customers write: which of our columns each is, and the unit it names."""

from __future__ import annotations

import csv
import re
import unicodedata
from collections.abc import Iterable, Iterator, Sequence
from functools import cache
from pathlib import Path
from typing import Final

from tagger import lists
from tagger.errors import Problem, SpecError
from tagger.messages import Message

_HEADINGS: Final = Path(__file__).with_name("list_headings.csv")
"""Headings that customers write in four languages, as far as they are plain."""

_UNITS: Final[dict[str, dict[str, str]]] = {
    "_mm": {
        **{name: name for name in ("mm", "cm", "m", "in", "ft")},
        **{"inch": "in", "inches": "in"},
        **{"millimetres": "mm", "millimeters": "mm", "metres": "m", "meters": "m", "feet": "ft"},
        **{"millimeter": "mm", "meter": "m", "zoll": "in", "millimètres": "mm", "mètres": "m", "pouce": "in"},
        **{"pouces": "in", "milímetros": "mm", "metros": "m", "pulgada": "in", "pulgadas": "in", "pulg": "in"},
    },
    "_bar": {name: name for name in ("bar", "psi", "mpa", "kpa")},
    "_c": {**dict.fromkeys(("c", "°c"), "C"), **dict.fromkeys(("f", "°f"), "F")},
}  # fmt: skip
"""By the end of our column's name: the units a heading may name, as ``units.py`` reads them."""

_CUT = re.compile(
    r"\bcut(ting)?\b|\bcoupe[rs]?\b|\bdébit|\bcort(e|ar)\b|zuschn|schnittl|ablängl", re.IGNORECASE
)
_BEFORE_A_UNIT = re.compile(r"\s+(in|en)\s*$", re.IGNORECASE)  # "Länge in mm", "Longueur en mm"
_IN_BRACKETS = re.compile(r"[(\[]\s*([^)\]]+?)\s*[)\]]\s*$")
_LAST_WORD = re.compile(r"[\s,/_-]+([^\s,/_-]+?)\.?\s*$")
_MARK = re.compile(r"""[\s(\[]*(["″”“]|''|’’|′′|['′’])[\s)\]]*$""")
"""Inches or feet as a mark, apart from the name or not: 'Length (")', 'OAL"'."""
_FEET: Final = frozenset("'′’")
_NOT_READ: Final = frozenset(
    [
        "yd",
        "yds",
        "yard",
        "yards",
        "dm",
        "km",
        "thou",
        "mil",
        "ksi",
        "kpsi",
        "pa",
        "hpa",
        "atm",
        "kg",
        "kgf",
        "k",
    ]
)
"""Units that no figure here is read in."""
_WORD = re.compile(r"[^\W\d_]+")
_FRACTION = re.compile(r"\d\s*/\s*\d")
_LONGEST: Final = (
    200  # characters of a heading that is looked at: searching brackets takes time by its square
)
_BARE_FIGURE = re.compile(r"\s*[-+]?(\d+([.,]\d*)?|[.,]\d+|(\d+(\s+|-))?\d+\s*/\s*\d+)\s*")


def guess(heading: Sequence[object]) -> list[str]:
    """For each of their columns ours, where it is plain; "" where it is not. None twice.

    >>> guess(["Length (in)", "Cut length mm", "Qty"])
    ['length_mm', '', 'quantity']
    >>> guess(["Länge (mm)", "Longueur totale en mm", "Cantidad"])
    ['length_mm', '', 'quantity']
    """
    names = _names()
    found: list[str] = []
    for cell in heading:
        text = str(cell or "")
        if len(text) > _LONGEST:
            found.append("")
            continue
        ours = names.get(_bare(text), "") or _with_its_unit(text, names)
        found.append("" if ours in found or (ours == "length_mm" and is_cut_length(text)) else ours)
    return found


def in_ours(table: Iterable[Sequence[object]]) -> list[list[object]]:
    """A list's cells under our headings, each figure with the unit that its own heading names.

    A heading that is none of ours stays as it is, to be told. Raises SpecError for a cut length where no
    overall length is given, and for a unit that is not plain.
    """
    return list(each_in_ours(table))


def each_in_ours(table: Iterable[Sequence[object]]) -> Iterator[list[object]]:
    """The same row by row, our headings first. Raises SpecError before them."""
    left = iter(table)
    theirs = next(left, None)
    if theirs is None:
        return
    matched = guess(theirs)
    _refuse_unclear(theirs, matched)
    yield [ours or heading for heading, ours in zip(theirs, matched, strict=True)]
    units = [unit_of(heading, ours) for heading, ours in zip(theirs, matched, strict=True)]
    named = [(place, unit) for place, unit in enumerate(units) if unit]
    for cells in left:
        row = [*cells]
        for place, unit in named:
            if place < len(row):
                row[place] = with_unit(row[place], unit)
        yield row


def _refuse_unclear(headings: Sequence[object], matched: Sequence[str]) -> None:
    """Raises SpecError for a cut length where no overall length is given, and for a unit that is not plain."""
    if "length_mm" not in matched:
        cut = [(n, str(theirs)) for n, theirs in enumerate(headings, 1) if is_cut_length(theirs)]
        if cut:
            raise SpecError(
                Problem(f"column {place}", name, Message("lists-cut-length", heading=name))
                for place, name in cut
            )
    unclear = [
        Problem(f"column {place}", str(theirs), Message("lists-unit-not-plain", heading=str(theirs)))
        for place, (theirs, ours) in enumerate(zip(headings, matched, strict=True), 1)
        if ours and unit_not_plain(theirs, ours)
    ]
    if unclear:
        raise SpecError(unclear)


def is_cut_length(heading: object) -> bool:
    """Whether a heading says the length to which the hose is cut: never the overall length."""
    return _CUT.search(str(heading or "").replace("_", " ")) is not None


def unit_of(heading: object, column: str) -> str:
    """The unit that a heading names for one of our columns; "" where it names none.

    >>> unit_of("Length (in)", "length_mm"), unit_of("OAL mm", "length_mm"), unit_of("Length", "length_mm")
    ('in', 'mm', '')
    """
    text = str(heading or "").strip()[-_LONGEST:]
    known = _units_of(column)
    if not known or text == column:
        return ""
    if "in" in known and (mark := _MARK.search(text)):
        return "ft" if mark[1] in _FEET else "in"
    for pattern in (_IN_BRACKETS, _LAST_WORD):
        if (match := pattern.search(text)) and (unit := known.get(match[1].lower())):
            return unit
    return ""


def unit_not_plain(heading: object, column: str) -> bool:
    """Whether a heading names a unit for one of our columns, and not plainly one that is read.

    >>> [unit_not_plain(name, "length_mm") for name in ("Length (dm)", "L (1/16 in)", "L mm or in", "OAL (mm)", "OAL")]
    [True, True, True, False, False]
    """
    known = _units_of(column)
    text = str(heading or "").strip()[-_LONGEST:].lower()
    if not known or text == column:
        return False
    words = _WORD.findall(text)
    if words[-2:-1] in (["in"], ["en"]):  # "Länge in mm"
        del words[-2]
    named = {known.get(word, word) for word in words if word in known or word in _NOT_READ}
    return bool(named) and (named != {unit_of(text, column)} or _FRACTION.search(text) is not None)


def with_unit(cell: object, unit: str) -> object:
    """A figure without a unit of its own, with the heading's.

    >>> with_unit(236, "in"), with_unit("49,25", "in"), with_unit("900 mm", "in"), with_unit(None, "in")
    ('236 in', '49,25 in', '900 mm', None)
    """
    if not unit or isinstance(cell, bool):
        return cell
    if isinstance(cell, int | float) or (isinstance(cell, str) and _BARE_FIGURE.fullmatch(cell)):
        return f"{str(cell).strip()} {unit}"
    return cell


def _with_its_unit(heading: str, names: dict[str, str]) -> str:
    """Our column for a heading that ends in a unit: it is the heading's name without it."""
    for pattern in (_IN_BRACKETS, _LAST_WORD):
        if match := pattern.search(heading):
            ours = names.get(_bare(_BEFORE_A_UNIT.sub("", heading[: match.start()])), "")
            if ours and match[1].lower() in _units_of(ours):
                return ours
    return ""


def _units_of(column: str) -> dict[str, str]:
    return next((units for end, units in _UNITS.items() if column.endswith(end)), {})


@cache
def _names() -> dict[str, str]:
    """Our column by the bare spelling of each heading for it."""
    found = {_bare(column): column for column in lists.columns()}
    with _HEADINGS.open(encoding="utf-8", newline="") as file:
        found |= {_bare(row["heading"]): row["column"] for row in csv.DictReader(file)}
    return found


def _bare(text: str) -> str:
    """Letters, digits and dots alone, without accents."""
    plain = unicodedata.normalize("NFKD", text.replace("ß", "ss"))
    return re.sub(r"[^a-z0-9.]", "", plain.lower())
