"""Registered assemblies whose pressure stands above what the tables of today allow."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from tagger.spec import AssemblySpec
from tagger.store.values import Assembly
from tagger.trade import present
from tagger.trade.present import Overrated
from tagger.trade.tables import Tables

if TYPE_CHECKING:
    from tagger.store import Store

_MOST_ALIKE = 20_000  # specs kept in mind while a whole store is read


def every_overrated(store: Store, tables: Tables) -> Iterator[tuple[Assembly, Overrated]]:
    """Each with how it stands today; the figure that holds is the lower of the two."""
    for item in store.every():
        found = present.overrated(item.content, tables, item.spec)
        if found is not None:
            yield item, found


def as_of_today(items: Iterable[Assembly], tables: Tables) -> list[Assembly]:
    """The records as they may be told today: what is registered too high has the lower pressure of today, with
    what is not known of it and how it was rated. Their digits stay those registered."""
    return list(each_as_of_today(items, tables))


def each_as_of_today(items: Iterable[Assembly], tables: Tables) -> Iterator[Assembly]:
    """The same one by one; what is alike is looked up once."""
    found: dict[tuple[AssemblySpec, float | None, float | None], Overrated | None] = {}
    for item in items:
        alike = (item.spec, item.content.working_pressure_bar, item.content.at_most_bar)
        if alike not in found:
            if len(found) >= _MOST_ALIKE:
                found.clear()
            found[alike] = present.overrated(item.content, tables, item.spec)
        yield _lowered(item, found[alike])


def _lowered(item: Assembly, high: Overrated | None) -> Assembly:
    if high is None:
        return item
    return replace(item, content=present.lowered(item.content, high), assessment=high.now)
