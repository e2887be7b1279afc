"""The server erases by itself what was kept long enough."""

from __future__ import annotations

import time
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from api.workers.retention import Eraser
from tagger.store import Keep, Store
from tests.databases import fresh_sqlite
from tests.store.samples import spec


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    with Store.open(fresh_sqlite(tmp_path)) as opened:
        yield opened


def test_it_erases_after_its_start_and_where_nothing_is_set_there_is_no_thread(store: Store) -> None:
    store.now = lambda: datetime.now(UTC) - timedelta(days=100)
    order = store.request_order(spec=spec(), contact={"phone": "555 0101"})
    store.set_order_state(order.reference, "declined")
    store.now = lambda: datetime.now(UTC)
    idle = Eraser(store, Keep(), first_s=0)
    idle.start()
    idle.stop()
    assert store.order(order.reference).contact.phone == "555 0101"
    eraser = Eraser(store, Keep(contacts=90), first_s=0)
    eraser.start()
    until = time.monotonic() + 60
    while store.order(order.reference).contact.phone and time.monotonic() < until:
        time.sleep(0.02)
    eraser.stop()
    assert store.order(order.reference).contact.phone == ""
