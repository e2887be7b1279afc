"""What a manager looks at, counted once for the bench's page and for the JSON API."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta

from tagger.store import Assembly, Kind, Store
from tagger.store.figures import Totals
from tagger.trade.servicelife import Guidance, guidance
from tagger.trade.tables import Tables

COUNTED = (Kind.PRINTED, Kind.SCANNED, Kind.ORDERED)
LEAST_DAYS, MOST_DAYS, DAYS = 7, 730, 30


@dataclass(frozen=True)
class Figures:
    """Counts from ``first`` to ``today``; the oldest hoses with the next date a source names, if any."""

    first: date
    today: date
    totals: Totals
    by_day: dict[Kind, list[tuple[date, int]]]
    oldest: list[tuple[Assembly, Guidance | None]]


def collect(store: Store, tables: Tables, days: int) -> Figures:
    """The last ``days`` days, today (UTC) included."""
    today = datetime.now(UTC).date()
    first = today - timedelta(days=days - 1)
    oldest = [
        (item, next((g for g in guidance(item.built_on, tables=tables) if g.until >= today), None))
        for item in store.oldest(20)
        if item.built_on
    ]
    totals = store.totals(datetime(first.year, first.month, first.day, tzinfo=UTC))
    return Figures(first, today, totals, {k: store.by_day(k, first, today) for k in COUNTED}, oldest)
