"""Storage and service dates from the build date: guidance with its source, never a permission.

A hose before its date may be unfit, and is withdrawn when it looks it: these dates only say
when a source would have it looked at or replaced. Nothing here reads a clock.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Final

from tagger.messages import Message
from tagger.trade import rows as row
from tagger.trade.tables import Tables
from tagger.trade.tables import tables as our_tables

NOT_A_PERMISSION: Final = Message("trade-guidance-only")

_ASSEMBLY = ("assembly_storage_years_iso", "assembly_storage_years_din", "assembly_life_years_din")
_BULK = ("bulk_hose_years_iso", "bulk_hose_years_din", "bulk_hose_years_tr17165", "bulk_hose_years_j1273")


@dataclass(frozen=True)
class Guidance:
    """One date and what a source says of it. ``earliest`` marks the most cautious of its kind."""

    key: str
    message: Message
    until: date
    source: str
    confidence: str
    earliest: bool


def guidance(
    built_on: date, hose_made_on: date | None = None, tables: Tables | None = None
) -> tuple[Guidance, ...]:
    """What the sources say from these dates on, soonest first.

    ``hose_made_on`` is the date on the bulk hose; without it only the assembly's dates are given.
    """
    tables = tables or our_tables()
    found = _dated(_ASSEMBLY, built_on, tables)
    if hose_made_on is not None:
        found += _dated(_BULK, hose_made_on, tables)
    return tuple(sorted(found, key=lambda g: (g.until, g.key)))


def cautious(tables: Tables) -> tuple[row.Rule, row.Rule]:
    """The shortest total life of an assembly, and the shortest storage before use."""
    iso, din, life = (tables.rule(key) for key in _ASSEMBLY)
    return life, min(iso, din, key=lambda rule: rule.value)


@dataclass(frozen=True)
class ReplaceBy:
    """The day by which the most cautious source would have an assembly replaced; guidance, see above.

    ``stored_years``: the storage that a source allows, where it was longer; else None.
    """

    until: date
    source: str
    stored_years: int | None = None


def replace_by(built_on: date | None, fitted_on: date | None, tables: Tables) -> ReplaceBy | None:
    """The life runs from the build, storage included; a day of fitting never makes it longer.

    Without a build date the storage before the fitting is not known: the longest that is allowed is
    taken off. Fitted before it was built (a slip in one of the two), it runs from the fitting.
    """
    life, shelf = cautious(tables)
    if built_on is None and fitted_on is None:
        return None
    if built_on is None:
        assert fitted_on is not None
        return ReplaceBy(years_after(fitted_on, int(life.value - shelf.value)), life.source)
    start = min(built_on, fitted_on or built_on)
    too_long = fitted_on is not None and fitted_on > years_after(built_on, int(shelf.value))
    return ReplaceBy(years_after(start, int(life.value)), life.source, int(shelf.value) if too_long else None)


def _dated(keys: tuple[str, ...], start: date, tables: Tables) -> list[Guidance]:
    rules = [tables.rule(key) for key in keys]
    least = min(rule.value for rule in rules)
    return [
        Guidance(
            rule.key,
            Message(f"trade-rule-{rule.key}"),
            years_after(start, int(rule.value)),
            rule.source,
            rule.confidence,
            rule.value == least,
        )
        for rule in rules
    ]


def years_after(start: date, years: int) -> date:
    """The same day years later; the last of February where there is none.

    >>> years_after(date(2024, 2, 29), 2)
    datetime.date(2026, 2, 28)
    """
    try:
        return start.replace(year=start.year + years)
    except ValueError:
        return start.replace(year=start.year + years, day=28)
