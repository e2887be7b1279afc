"""What a phone keeps, as plain values: tables that every language shares, and the words of one."""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache, lru_cache
from typing import Any, Final

from api.scan import dims, fill, fit, picture, scripts
from tagger.code import payload
from tagger.connection import tube_hoses
from tagger.i18n.catalogue import source
from tagger.signing import Keys
from tagger.spec import Connection, Fluid, Hose
from tagger.trade import ceilings, servicelife, temperature
from tagger.trade.tables import Tables

ROOMS: Final = ("words", "fit", "scan", "code", "offline", "trade", "fitted")
"""Whose messages a phone without a signal may show."""
_ID: Final = re.compile(rf"""["`]((?:{"|".join((*ROOMS, "identify", "spec"))})-[\w-]*)(["`]|\$)""")


@lru_cache(maxsize=2)  # asked for by the version of the pages and by what a phone keeps
def shared_tables(tables: Tables) -> dict[str, Any]:
    """Everything that is data and not language."""
    layouts = {str(v): {"fields": payload.layout_as_written(v)["fields"]} for v in payload.VERSIONS}
    named = {field["table"] for layout in layouts.values() for field in layout["fields"] if "table" in field}
    sources = _Numbered(tables)
    rules = fit.rules(tables)
    life, shelf = servicelife.cautious(tables)
    rules["bends"] = {key: [mm, sources.place(source)] for key, (mm, source) in rules["bends"].items()}
    rules["turns"] = {
        key: [[low, high, sources.place(source)] for low, high, source in rows]
        for key, rows in rules["turns"].items()
    }
    return {
        "layouts": layouts,
        "points": {
            table: {str(p): n for p, n in payload.names(table).items()}
            for table in sorted(named | {"thread", "named"})
        },
        "tube_hoses": tube_hoses(),
        "sized_by": {c.value: c.sized_by.value for c in Connection},
        "mating": {
            key: [m.thread, m.across_mm, sources.place(m.source)] for key, m in dims.all_of(tables).items()
        },
        "seals": picture.seals(tables),
        "fit": rules,
        "storage": {
            "life": [life.value, sources.place(life.source)],
            "shelf": [shelf.value, sources.place(shelf.source)],
        },
        "cold": {
            key: [celsius, sources.place(source)] for key, (celsius, source) in _coldest(tables).items()
        },
        "hot": {key: [celsius, sources.place(source)] for key, (celsius, source) in _hottest(tables).items()},
        "ceilings": {"hoses": ceilings.of_hoses(tables), "ends": ceilings.of_ends(tables)},
        "needs_source": [str(fluid) for fluid in Fluid if temperature.needs_source(fluid, tables)],
        "sources": sources.texts,
        "keys": [],
    }


def tables_and_keys(tables: Tables, keys: Keys) -> dict[str, Any]:
    """The same with the public keys by which a phone verifies signed tags."""
    return shared_tables(tables) | {"keys": keys.as_published()}


def _hottest(tables: Tables) -> dict[str, tuple[float | None, str]]:
    """The highest temperature by "standard" (oil), and by "standard|fluid" for the fluids a source speaks of.

    None where the hose is not for the fluid.
    """
    found: dict[str, tuple[float | None, str]] = {}
    for name in tables.standards:
        spoken_of = [Fluid(row.fluid) for row in tables.hose_fluids.get(name, ())]
        for fluid in (None, *spoken_of):
            hot = temperature.limit_of(Hose(standard=name, dash=1), fluid, tables)
            found[f"{name}|{fluid}" if fluid else name] = hot
    return found


def _coldest(tables: Tables) -> dict[str, tuple[float, str]]:
    """The lowest temperature by "standard", and by "standard|fluid" where the fluid's is higher."""
    found = {name: (s.min_temperature_c, s.source) for name, s in tables.standards.items()}
    for name, rows in tables.hose_fluids.items():
        for row in rows:
            if row.min_temperature_c is not None and row.min_temperature_c > found[name][0]:
                found[f"{name}|{row.fluid}"] = (row.min_temperature_c, row.source)
    return found


class _Numbered:
    """What the sources are that many rows share, each kept once."""

    def __init__(self, tables: Tables) -> None:
        self.tables = tables
        self.texts: list[str] = []

    def place(self, source: str) -> int:
        text = self.tables.where_from(source)
        if text not in self.texts:
            self.texts.append(text)
        return self.texts.index(text)


@lru_cache(maxsize=16)
def words_of(lang: str, tables: Tables) -> dict[str, Any]:
    """One language, as the phone needs it: what it renders messages from, and the templates."""
    return {
        "lang": lang,
        "catalogues": catalogues(lang, tables),
        "templates": {name: fill.translated(name, lang) for name in fill.TEMPLATES},
    }


def catalogues(lang: str, tables: Tables) -> list[str]:
    """The catalogues that a phone renders from, without comments.

    Of ``words`` all; else the messages that the scripts and the steps of the fit guide ask for.
    """
    steps = {id for row in tables.steps for id in (row.message, row.source)}
    return [kept(source(lang, room), lambda id: id in steps or asked_for(id)) for room in ROOMS]


def kept(text: str, wanted: Callable[[str], bool]) -> str:
    """The wanted messages of a catalogue. A message begins where a line begins with its id."""
    lines = "".join(line for line in text.splitlines(keepends=True) if not line.startswith("#"))
    entries = re.split(r"^(?=[A-Za-z])", lines, flags=re.MULTILINE)
    return "".join(entry for entry in entries if wanted(entry.partition(" ")[0]))


def asked_for(id: str, names: tuple[str, ...] = ()) -> bool:
    """Whether one of the scripts names the message, or begins an id that it completes with a value.

    By default all scripts but those that only identifying needs.
    """
    if id.startswith("words-"):
        return True  # a spec may name any of them
    return any(id == found or (open_ and id.startswith(found)) for found, open_ in _ids_in_scripts(names))


@cache
def _ids_in_scripts(names: tuple[str, ...]) -> frozenset[tuple[str, bool]]:
    of = names or (name for name in scripts.names() if name not in scripts.IDENTIFYING)
    texts = (scripts.small(name) for name in of)
    return frozenset((found, end == "$") for text in texts for found, end in _ID.findall(text))
