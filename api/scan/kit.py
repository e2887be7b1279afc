"""What a phone keeps, as plain values: tables that every language shares, and the words of one."""

from __future__ import annotations

from functools import cache
from typing import Any, Final

from api.scan import catalogue, dims, fill, fit
from api.scan.i18n import messages
from api.scan.visitor import Reader
from tagger.code import payload
from tagger.i18n.catalogue import source
from tagger.spec import Connection
from tagger.trade import servicelife
from tagger.trade.tables import Tables

ROOMS: Final = ("words", "fit", "scan", "code")
"""Whose messages a phone without a signal may show."""


def shared_tables(tables: Tables) -> dict[str, Any]:
    """Everything that is data and not language."""
    layouts = {str(v): {"fields": payload.layout_as_written(v)["fields"]} for v in payload.VERSIONS}
    named = {field["table"] for layout in layouts.values() for field in layout["fields"] if "table" in field}
    sources = _Numbered()
    rules = fit.rules(tables)
    life, shelf = servicelife.cautious(tables)
    rules["bends"] = {key: [mm, sources.place(source)] for key, (mm, source) in rules["bends"].items()}
    return {
        "layouts": layouts,
        "points": {
            table: {str(p): n for p, n in payload.names(table).items()}
            for table in sorted(named | {"thread"})
        },
        "sized_by": {c.value: c.sized_by.value for c in Connection},
        "mating": {
            key: [m.thread, m.across_mm, sources.place(m.source)] for key, m in dims.all_of(tables).items()
        },
        "fit": rules,
        "storage": {
            "life": [life.value, sources.place(life.source)],
            "shelf": [shelf.value, sources.place(shelf.source)],
        },
        "cold": {
            key: [celsius, sources.place(source)] for key, (celsius, source) in _coldest(tables).items()
        },
        "sources": sources.texts,
    }


def _coldest(tables: Tables) -> dict[str, tuple[float, str]]:
    """The lowest temperature by "standard", and by "standard|fluid" where the fluid's is higher."""
    found = {name: (s.min_temperature_c, s.source) for name, s in tables.standards.items()}
    for name, rows in tables.hose_fluids.items():
        for row in rows:
            if row.min_temperature_c is not None and row.min_temperature_c > found[name][0]:
                found[f"{name}|{row.fluid}"] = (row.min_temperature_c, row.source)
    return found


class _Numbered:
    """Texts that many rows share, each kept once."""

    def __init__(self) -> None:
        self.texts: list[str] = []

    def place(self, text: str) -> int:
        if text not in self.texts:
            self.texts.append(text)
        return self.texts.index(text)


def words_of(lang: str, tables: Tables) -> dict[str, Any]:
    """One language, as the phone needs it. English needs no sentences: they are their own keys."""
    used = _used_on_the_phone()
    return {
        "lang": lang,
        "catalogues": catalogues(lang),
        "templates": {name: fill.translated(name, lang) for name in fill.TEMPLATES},
        "messages": {key: text for key, text in messages(lang).items() if key in used},
        "steps": fit.steps_of(Reader(lang, tables)),
    }


def catalogues(lang: str) -> list[str]:
    """The catalogues that a phone renders from, without their comments."""
    texts = (source(lang, room) for room in ROOMS)
    return [
        "".join(line for line in text.splitlines(keepends=True) if not line.startswith("#")) for text in texts
    ]


@cache
def _used_on_the_phone() -> frozenset[str]:
    """The strings that the scripts look up: t("...") in any module."""
    return catalogue.in_scripts()
