"""A hose by its layers, as a page shows it: what was entered, what remains, what is excluded and why."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from tagger.errors import Problem, Speaks, TaggerError
from tagger.messages import Message
from tagger.trade.identifying.by_layers import HoseSeen, Remaining, exclude
from tagger.trade.rows import LAYERS
from tagger.trade.tables import Tables
from tagger.units import with_unit

FIELDS = ("od", "bore", "kind", "layers", "lay_line")


def shown(
    given: Mapping[str, str], unit: str, tables: Tables, t: Speaks
) -> tuple[dict[str, Any], tuple[Problem, ...]]:
    """What a page fills ``layers.html`` with, and what cannot be read; ``unit``: of a length without one."""
    asked = {name: given.get(name, "").strip()[:300] for name in FIELDS}
    values: dict[str, Any] = {"asked": asked, "kinds": LAYERS, "found": None}
    if not any(asked.values()):
        return values, ()
    try:
        lengths = {name: with_unit(asked[name], unit) for name in ("od", "bore")}
        found = exclude(HoseSeen.read(**(asked | lengths)), tables)
    except TaggerError as error:
        return values, error.problems
    values["found"] = {
        "never_rates": t(found.never_rates),
        "notes": [(t(note), note.id.endswith(("line_excluded", "line_size"))) for note in found.notes],
        "count": len(found.remaining),
        "remaining": [(names, [t(words) for words in said]) for said, names in _grouped(found.remaining)],
        "excluded": [(one.standard, t(one.why)) for one in found.excluded],
    }
    return values, ()


def _grouped(remaining: tuple[Remaining, ...]) -> list[tuple[tuple[Message, ...], list[str]]]:
    """Standards of which the same is said, together: the classes of ISO 18752, of which the tables know nothing."""
    found: list[tuple[tuple[Message, ...], list[str]]] = []
    for one in remaining:
        said = one.in_words()
        if found and found[-1][0] == said and len(one.unchecked) == 2:
            found[-1][1].append(one.standard)
        else:
            found.append((said, [one.standard]))
    return found
