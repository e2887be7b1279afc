"""Flats of steel nuts on hoses, size by size: the count that tags carry, and beside it every other source's."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from tagger.messages import Figure, Unit, count
from tagger.papers.connection_facts import Cited, Facts
from tagger.spec import STATED, Basis, Connection, Form, Material
from tagger.trade.known import an_end
from tagger.trade.rows import TighteningRow
from tagger.trade.tables import Tables
from tagger.trade.tightening import advice


@dataclass(frozen=True)
class Count:
    """One source's count: sixths of a turn from ``basis``. ``size`` is empty where it is for any.

    ``shown``: it is what a tag of that end carries.
    """

    size: str
    flats: Figure
    basis: Basis
    cited: Cited
    shown: bool = False


def counts(one: Facts, tables: Tables) -> list[Count]:
    """The counts of a family whose tags carry flats in any size; empty for every other family."""
    if Form.FEMALE_SWIVEL not in tables.families[one.family].forms:
        return []
    rows = [row for row in tables.tightening.get(one.family, ()) if _is_of_a_hose_nut(row)]
    found: list[Count] = []
    for size, key in zip(one.sizes, tables.sizes(one.family), strict=True):
        shown = _on_a_tag(one.family, size.name, key, rows, tables)
        found += [*shown, *(c for c in _of_rows(size.name, key, rows) if not _said(c, shown))]
    if not any(found_one.shown for found_one in found):
        return []
    return [*found, *_of_rows("", "all", rows)]


def _is_of_a_hose_nut(row: TighteningRow) -> bool:
    return (
        row.use == "hose"
        and "nut" in row.part
        and row.material == Material.CARBON_STEEL
        and row.flats_max is not None
        and row.basis in STATED
    )


def _on_a_tag(
    family: Connection, name: str, key: str, rows: list[TighteningRow], tables: Tables
) -> list[Count]:
    end = an_end(family, key, Form.FEMALE_SWIVEL, material=Material.CARBON_STEEL)
    flats = advice("end_a", end, tables)[0].flats
    if flats is None:
        return []
    confidence = next((row.confidence for row in rows if row.source == flats.source), "published")
    cited = Cited(flats.source, confidence)
    return [Count(name, count(flats.min, flats.max), flats.basis, cited, shown=True)]


def _of_rows(name: str, key: str, rows: list[TighteningRow]) -> Iterator[Count]:
    for row in rows:
        if row.size == key and row.flats_max is not None:
            figure = (
                Figure(row.flats_max, Unit.COUNT, at_most=True)
                if row.flats_min is None
                else count(row.flats_min, row.flats_max)
            )
            yield Count(name, figure, Basis(row.basis), Cited(row.source, row.confidence))


def _said(one: Count, shown: list[Count]) -> bool:
    return any((one.flats, one.basis, one.cited) == (said.flats, said.basis, said.cited) for said in shown)
