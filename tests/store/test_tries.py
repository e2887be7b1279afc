"""Counts that all servers on one database share."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime, timedelta

from sqlalchemy import text

from tagger.store import Allowance, Store

HOURLY = Allowance(3, 3600)
SLOWER = Allowance(3, 86400, longest_s=10)


def test_tries_are_counted_for_every_server_and_forgotten_after_a_day(url: str) -> None:
    moment = datetime(2026, 3, 2, tzinfo=UTC)
    with Store.open(url, now=lambda: moment) as one, Store.open(url, now=lambda: moment) as other:
        waits = [server.try_now({"a": HOURLY}) for server in (one, other, one, other, one)]
        assert waits == [0, 0, 0, 3600, 3600]
        assert other.try_now({"b": HOURLY, "a": HOURLY}) == 3600
        assert [other.try_now({"b": HOURLY}) for _ in range(4)] == [0, 0, 0, 3600], (
            "the refused one counted for none"
        )
        other.give_back("a", "b")
        assert one.try_now({"a": HOURLY, "b": HOURLY}) == 0

        assert [one.try_now({"guess": SLOWER}) for _ in range(4)] == [0, 0, 0, 1]
        for pause in (1, 2, 4, 8, 10, 10):
            assert other.try_now({"guess": SLOWER}) == pause
            moment += timedelta(seconds=pause)
            assert one.try_now({"guess": SLOWER}) == 0, "nobody is shut out"
        moment += timedelta(days=1, seconds=1)
        assert one.try_now({"guess": SLOWER}) == 0
        with one.reading() as session:
            kept = session.scalars(text("SELECT key FROM try")).all()
        assert len(kept) == 1 and "guess" not in kept[0]


def test_of_many_tries_at_once_no_more_get_through_than_are_allowed(url: str) -> None:
    with Store.open(url) as one, Store.open(url) as other, ThreadPoolExecutor(12) as pool:
        waits = list(pool.map(lambda place: (one, other)[place % 2].try_now({"a": HOURLY}), range(24)))
    assert waits.count(0) == 3


def test_who_has_to_wait_writes_nothing(url: str) -> None:
    with Store.open(url) as store, Store.open(url) as writer:
        for _ in range(3):
            store.try_now({"a": HOURLY})
        with writer.writing() as session:  # somebody else writes for a while
            session.execute(text("DELETE FROM try WHERE key = 'none'"))
            assert store.try_now({"a": HOURLY}) > 0
