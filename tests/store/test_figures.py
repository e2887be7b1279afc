"""Counts, and specs kept once."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

from sqlalchemy import text

from tagger.store import Kind, Store
from tests.store.samples import assessment, spec

DAY = datetime(2026, 3, 2, 23, 30, tzinfo=UTC)


def test_events_are_counted_by_day_in_utc(url: str) -> None:
    moment = DAY
    with Store.open(url, now=lambda: moment) as store:
        [made] = store.register(spec(), assessment())
        for _ in range(3):
            store.record(made.number, Kind.SCANNED)
        moment += timedelta(hours=1)
        store.record(made.number, Kind.SCANNED)
        counted = store.by_day(Kind.SCANNED, date(2026, 3, 1), date(2026, 3, 4))
        assert [n for _, n in counted] == [0, 3, 1, 0]
        assert store.totals(DAY + timedelta(minutes=30)).scans == 1


def test_reprints_are_those_beyond_a_tags_first(store: Store) -> None:
    one, two = store.register(spec(), assessment(), count=2)
    store.record_many([one.number, two.number], Kind.PRINTED)
    store.record(one.number, Kind.PRINTED)
    totals = store.totals(DAY - timedelta(days=3650))
    assert (totals.registered, totals.printed, totals.reprints) == (2, 3, 1)


def test_orders_from_tags_are_told_from_the_rest(store: Store) -> None:
    [made] = store.register(spec(), assessment())
    store.request_order(number=made.number, quantity=1, contact={"phone": "1"})
    store.request_order(spec=spec(), quantity=1, contact={"phone": "1"})
    totals = store.totals(DAY - timedelta(days=3650))
    assert (totals.orders, totals.orders_from_tags) == (2, 1)


def test_the_oldest_still_in_use_come_first(store: Store) -> None:
    def built(year: int) -> str:
        return store.register(spec(), assessment(), built_on=date(year, 1, 1))[0].number

    gone, replaced, old, new = built(2015), built(2016), built(2019), built(2024)
    store.record(gone, Kind.REMOVED)
    [replacement] = store.register(spec(), assessment(), built_on=date(2025, 1, 1), replaces=replaced)
    assert replaced in [a.number for a in store.oldest()]
    store.record(replacement.number, Kind.FITTED)
    assert [a.number for a in store.oldest()] == [old, new, replacement.number]


def test_a_spec_is_kept_once_however_many_share_it(store: Store) -> None:
    store.register(spec(), assessment(), count=50)
    store.register(spec(), assessment(), count=50)
    store.register(spec(length_mm=1300), assessment())
    store.register(spec(), assessment(90))
    with store.reading() as session:
        assert session.scalar(text("SELECT count(*) FROM design")) == 3
    assert {a.assessment.working_pressure.value_bar for a in store.find(limit=200).assemblies} == {
        172.0,
        90.0,
    }
