"""A figure that came with a spec as a row of the shop's own: asked once, it holds for every later assembly.

A rating becomes a row for the end's family, size, series, form, shape and material, or for the hose's standard,
edition, dash and part number; an approval one for the hose's standard, part number and the fluid.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from tagger.errors import Problem, TradeError
from tagger.messages import Message
from tagger.spec import AssemblySpec, End, GivenRating
from tagger.trade import given
from tagger.trade.assess import assess
from tagger.trade.tables import Tables, merged, shop_row

KEPT_TABLES = ("connection_pressure", "hose_pressure", "hose_fluids")


@dataclass(frozen=True)
class ShopRow:
    """A row of a shop's own: the name of its table, and its cells as text."""

    table: str
    cells: dict[str, str]


def rows_of(spec: AssemblySpec, tables: Tables) -> list[ShopRow]:
    """The rows that keep what manufacturers say in this spec.

    Raises TradeError where there is nothing to keep, where a figure does not count for this assembly, and
    where it cannot be said what else it would hold for.
    """
    found = {part.part: part for part in assess(spec, tables).working_pressure.parts}
    rows, problems = [], []
    for name, rating in given.ratings(spec):
        end = {"end_a": spec.end_a, "end_b": spec.end_b}.get(name)
        if found[name].confidence != "given":
            not_used = Message("trade-keep-not-used")
            problems.append(Problem(f"{name}.rating.value_bar", rating.value_bar, not_used))
        elif end is not None and end.series is None and tables.families[end.connection].series:
            problems.append(Problem(f"{name}.series", None, Message("trade-keep-series")))
        elif end is not None:
            rows.append(ShopRow("connection_pressure", _cells_of_end(end, rating)))
        else:
            rows.append(ShopRow("hose_pressure", _cells_of_hose(spec, rating, tables)))
    if spec.hose.approval is not None:
        if spec.hose.part is None:
            problems.append(Problem("hose.part", None, Message("trade-keep-part")))
        else:
            rows.append(ShopRow("hose_fluids", _cells_of_approval(spec, tables)))
    if not rows and not problems:
        problems.append(Problem("keep", None, Message("trade-keep-nothing")))
    if problems:
        raise TradeError(problems)
    return list({tuple(row.cells.items()): row for row in rows}.values())


def _cells_of_end(end: End, rating: GivenRating) -> dict[str, str]:
    return {
        "family": str(end.connection),
        "size": end.size_key,
        "series": str(end.series or ""),
        "forms": str(end.form),
        "shapes": "elbow" if end.is_elbow else "straight",
        "material": str(end.material),
        "use": "rating",
        "applies_to": "",
        **_common(rating),
    }


def _cells_of_hose(spec: AssemblySpec, rating: GivenRating, tables: Tables) -> dict[str, str]:
    hose, standard = spec.hose, tables.standard_of(spec.hose.standard)
    edition = tables.edition_of(hose, standard.standard) if standard else None
    return {
        "standard": standard.standard if standard else hose.standard,
        "edition": edition.figures if edition else (hose.edition or ""),
        "dash": str(hose.dash),
        "in_standard": "yes",
        "part": hose.part or "",
        **_common(rating),
    }


def _common(rating: GivenRating) -> dict[str, str]:
    hottest = rating.max_temperature_c
    return {
        "max_working_bar": f"{rating.value_bar:g}",
        "printed": "",
        "max_temperature_c": "" if hottest is None else f"{hottest:g}",
        "fluid": str(rating.fluid or ""),
        "source": rating.source,
        "confidence": "shop",
        "note": "",
    }


def _cells_of_approval(spec: AssemblySpec, tables: Tables) -> dict[str, str]:
    approval, standard = spec.hose.approval, tables.standard_of(spec.hose.standard)
    assert approval is not None
    return {
        "standard": standard.standard if standard else spec.hose.standard,
        "part": spec.hose.part or "",
        "fluid": str(approval.fluid),
        "min_temperature_c": "",
        "max_temperature_c": f"{approval.max_temperature_c:g}",
        "source": approval.source,
        "confidence": "shop",
        "note": "",
    }


def tables_with(tables: Tables, rows: Iterable[ShopRow]) -> Tables:
    """The tables as they are once these rows are kept."""
    raw = tables.raw
    for row in rows:
        raw = merged(raw, row.table, [shop_row(row.table, row.cells, f"value of the shop, {row.table}")])
    return tables if raw is tables.raw else Tables.of(raw, tables.bands, tables.published)
