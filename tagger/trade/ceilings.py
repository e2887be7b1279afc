"""The highest pressure that the tables allow a hose or an end, for readers that hold no tables.

A phone without a signal holds a tag's digits against it: what a tag claims above it is not shown. For
an end it is the highest over shapes, so a true tag is never called false; without its series an end has
the rating that it may have in any.
"""

from __future__ import annotations

from itertools import product
from typing import Any

from tagger.connection import Sizing
from tagger.spec import Connection, End, Form, Hose, Material, Series
from tagger.trade.rating import end_rating, hose_rating
from tagger.trade.tables import Tables

COLD_C = 0.0  # a temperature at which every condition of a rating holds


def of_hoses(tables: Tables) -> dict[str, float]:
    """The rating of a hose in bar, by "standard|dash", and by "standard|dash|edition" where editions differ."""
    found: dict[str, float] = {}
    for standard in tables.standards:
        editions = [edition.edition for edition in tables.editions.get(standard, ())]
        for dash in range(1, 64):
            plain = _hose(Hose(standard=standard, dash=dash), tables)
            if plain is None:
                continue
            found[f"{standard}|{dash}"] = plain
            for edition in editions:
                bar = _hose(Hose(standard=standard, dash=dash, edition=edition), tables)
                if bar is not None and bar != plain:
                    found[f"{standard}|{dash}|{edition}"] = bar
    return found


def _hose(hose: Hose, tables: Tables) -> float | None:
    return hose_rating(hose, tables)[0].value_bar


def of_ends(tables: Tables) -> dict[str, float]:
    """The rating of an end in bar, by "family|size|form".

    That of a series follows as "...|series" where it differs, that of other materials than steel as "...|material".
    """
    found: dict[str, float] = {}
    for family, known in tables.families.items():
        for size in tables.sizes(family):
            if not _is_rated(family, size, tables):
                continue
            for form, material in product(known.forms, Material):
                named = "" if material is Material.CARBON_STEEL else f"|{material}"
                whole = None
                for series in (None, *(Series(name) for name in tables.series_of(family, size))):
                    ends = _ends(family, size, Form(form), material, series)
                    bar = max((bar for end in ends if (bar := _end(end, tables))), default=None)
                    if series is None:
                        whole = bar
                    if bar is not None and (series is None or bar != whole):
                        found[f"{family}|{size}|{form}{f'|{series}' if series else ''}{named}"] = bar
    return found


def _is_rated(family: Connection, size: str, tables: Tables) -> bool:
    alike = (family, tables.families[family].same_thread)
    return any(tables.end_pressures.get((one, key)) for one in alike if one for key in (size, "all"))


def _ends(family: Connection, size: str, form: Form, material: Material, series: Series | None) -> list[End]:
    sized = {"dash": int(size)} if family.sized_by is Sizing.DASH else {"size": size}
    common: dict[str, Any] = {"connection": family, "form": form, "material": material} | sized
    return [End.model_construct(**common, shape=shape, series=series) for shape in ("straight", "elbow_90")]


def _end(end: End, tables: Tables) -> float | None:
    return end_rating("end", end, tables, COLD_C).value_bar
