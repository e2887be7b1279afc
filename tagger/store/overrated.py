"""Registered assemblies whose pressure stands above what the tables of today allow."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

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
