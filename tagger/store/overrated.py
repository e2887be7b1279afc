"""Registered assemblies whose pressure stands above what the tables of today allow."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from tagger.spec import AssemblySpec, TagContent
from tagger.store.values import Assembly
from tagger.trade import present
from tagger.trade.present import Overrated
from tagger.trade.tables import Tables

if TYPE_CHECKING:
    from tagger.store import Store


def every_overrated(store: Store, tables: Tables) -> Iterator[tuple[Assembly, Overrated]]:
    """Each with how it stands today; the figure that holds is the lower of the two."""
    for item in store.every():
        found = present.overrated(item.content, tables, item.spec)
        if found is not None:
            yield item, found


def as_of_today(items: Sequence[Assembly], tables: Tables) -> list[Assembly]:
    """The records as they may be told today: what is registered too high has the lower pressure of today, with
    what is not known of it and how it was rated. Their digits stay those registered."""
    found: dict[tuple[TagContent, AssemblySpec], Overrated | None] = {}
    for item in items:
        same = (item.content, item.spec)
        if same not in found:
            found[same] = present.overrated(item.content, tables, item.spec)
    return [_lowered(item, found[item.content, item.spec]) for item in items]


def _lowered(item: Assembly, high: Overrated | None) -> Assembly:
    if high is None:
        return item
    return replace(item, content=present.lowered(item.content, high), assessment=high.now)
