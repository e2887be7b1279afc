"""The one dimension of an end that a picture is drawn from: its thread, flange head, plug or tube."""

from __future__ import annotations

from dataclasses import dataclass

from tagger.spec import End
from tagger.trade.tables import Tables


@dataclass(frozen=True)
class Mating:
    """``across_mm``: outside diameter of the male thread, the flange head, the plug or the tube.

    ``thread`` is empty where there is none.
    """

    thread: str
    across_mm: float
    source: str


def mating(end: End, tables: Tables) -> Mating | None:
    """The dimension of this end; None where the tables do not have it."""
    row = tables.threads.get((end.connection, end.size_key))
    if row:
        return Mating(row.thread, row.thread_od_mm, row.source)
    return _threadless(tables).get(f"{end.connection}|{end.size_key}")


def all_of(tables: Tables) -> dict[str, Mating]:
    """Every size of every family, keyed "family|size"."""
    found = {
        f"{family}|{size}": Mating(row.thread, row.thread_od_mm, row.source)
        for (family, size), row in tables.threads.items()
    }
    return _threadless(tables) | found


def _threadless(tables: Tables) -> dict[str, Mating]:
    plain = {
        f"{row.family}|{row.size}": Mating("", row.diameter_max_mm, row.source)
        for rows in tables.plain_ends.values()
        for row in rows
        if row.diameter_max_mm is not None
    }
    return plain | {
        f"{row.family}|{row.size}": Mating("", float(row.value), row.source)
        for row in tables.flanges
        if row.what == "head_mm"
    }
