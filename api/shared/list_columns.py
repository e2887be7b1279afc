"""The headings that customers write: which of our columns each is, and the unit it names."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from tagger import lists

_ALSO: dict[str, tuple[str, ...]] = {
    "hose.standard": ("hose", "hose type", "standard", "hose standard"),
    "hose.dash": ("dash", "hose size", "hose dash", "size"),
    "hose.part": ("hose part", "hose part number", "part number"),
    "hose.lot": ("hose lot", "reel lot", "reel", "batch"),
    "end_a.connection": ("end a", "fitting a", "connection a", "end 1", "fitting 1"),
    "end_b.connection": ("end b", "fitting b", "connection b", "end 2", "fitting 2"),
    "end_a.dash": ("dash a", "size a"),
    "end_b.dash": ("dash b", "size b"),
    "end_a.form": ("form a", "gender a"),
    "end_b.form": ("form b", "gender b"),
    "end_a.shape": ("shape a",),
    "end_b.shape": ("shape b",),
    "end_a.drop_mm": ("drop a",),
    "end_b.drop_mm": ("drop b",),
    "length_mm": ("length", "overall length", "total length", "oal"),
    "max_temperature_c": ("temperature", "max temperature", "maximum temperature"),
    "clocking_deg": ("clocking", "angle", "orientation"),
    "quantity": ("qty", "count", "pcs", "pieces", "number of"),
    "customer": ("client",),
    "machine": ("equipment", "unit"),
    "position": ("location", "place"),
    "note": ("remark", "remarks", "comment"),
}
"""Headings that customers write, as far as they are plain."""

_UNITS: Final[dict[str, dict[str, str]]] = {
    "_mm": {
        **{name: name for name in ("mm", "cm", "m", "in", "inch", "inches", "ft")},
        **{"millimetres": "mm", "millimeters": "mm", "metres": "m", "meters": "m", "feet": "ft", '"': "in", "″": "in"},
    },
    "_bar": {name: name for name in ("bar", "psi", "mpa", "kpa")},
    "_c": {**dict.fromkeys(("c", "°c"), "C"), **dict.fromkeys(("f", "°f"), "F")},
}  # fmt: skip
"""By the end of our column's name: the units a heading may name, as ``units.py`` reads them."""

_CUT = re.compile(r"\bcut(ting)?\b|\bcoupe\b|\bcorte\b|zuschnitt|schnittl", re.IGNORECASE)
_IN_BRACKETS = re.compile(r"[(\[]\s*([^)\]]+?)\s*[)\]]\s*$")
_LAST_WORD = re.compile(r"[\s,/_-]+([^\s,/_-]+?)\.?\s*$")
_BARE_FIGURE = re.compile(r"\s*[-+]?(\d+([.,]\d*)?|[.,]\d+|(\d+(\s+|-))?\d+\s*/\s*\d+)\s*")


def guess(heading: Sequence[object]) -> list[str]:
    """For each of their columns ours, where it is plain; "" where it is not. None twice.

    >>> guess(["Length (in)", "Cut length mm", "Qty"])
    ['length_mm', '', 'quantity']
    """
    names = {_bare(column): column for column in lists.columns()}
    names |= {_bare(other): column for column, others in _ALSO.items() for other in others}
    found: list[str] = []
    for cell in heading:
        text = str(cell or "")
        ours = names.get(_bare(text), "") or _with_its_unit(text, names)
        found.append("" if ours in found or (ours == "length_mm" and is_cut_length(text)) else ours)
    return found


def is_cut_length(heading: object) -> bool:
    """Whether a heading says the length to which the hose is cut: never the overall length."""
    return _CUT.search(str(heading or "").replace("_", " ")) is not None


def unit_of(heading: object, column: str) -> str:
    """The unit that a heading names for one of our columns; "" where it names none.

    >>> unit_of("Length (in)", "length_mm"), unit_of("OAL mm", "length_mm"), unit_of("Length", "length_mm")
    ('in', 'mm', '')
    """
    text = str(heading or "").strip()
    known = _units_of(column)
    if not known or text == column:
        return ""
    for pattern in (_IN_BRACKETS, _LAST_WORD):
        if (match := pattern.search(text)) and (unit := known.get(match[1].lower())):
            return unit
    return ""


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
            ours = names.get(_bare(re.sub(r"\s+in\s*$", "", heading[: match.start()])), "")
            if ours and match[1].lower() in _units_of(ours):
                return ours
    return ""


def _units_of(column: str) -> dict[str, str]:
    return next((units for end, units in _UNITS.items() if column.endswith(end)), {})


def _bare(text: str) -> str:
    return re.sub(r"[^a-z0-9.]", "", text.lower().replace("_", "").replace(" ", ""))
