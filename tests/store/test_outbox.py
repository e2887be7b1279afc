"""Messages: written with what they tell of, taken by one deliverer, back when it dies."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta

import pytest

from tagger.errors import StoreError
from tagger.store import OrderState, Store, Target
from tests.store.samples import spec

HOOK = Target("webhook", "http://hook.example/orders")


def test_each_step_of_an_order_is_told_and_a_refused_one_is_not(store: Store) -> None:
    store.announce = (HOOK,)
    order = store.request_order(spec=spec(), quantity=2, contact={"phone": "1"})
    store.set_order_state(order.reference, OrderState.ACCEPTED, note="Monday")
    with pytest.raises(StoreError):
        store.set_order_state(order.reference, OrderState.DONE)
    told = [(m.target, m.body["state"], m.body["note"]) for m in store.undelivered()]
    assert told == [(HOOK.address, "received", None), (HOOK.address, "accepted", "Monday")]


def test_of_many_deliverers_each_message_goes_to_one(store: Store) -> None:
    store.announce = (HOOK,)
    for _ in range(12):
        store.request_order(spec=spec(), quantity=1, contact={"phone": "1"})
    with ThreadPoolExecutor(6) as pool:
        taken = [message.id for message in pool.map(lambda _: store.claim(), range(20)) if message]
    assert sorted(taken) == sorted(set(taken))
    assert len(taken) == 12


def test_what_failed_comes_back_later_and_what_arrived_does_not(store: Store) -> None:
    store.announce = (HOOK,)
    for _ in range(2):
        store.request_order(spec=spec(), quantity=1, contact={"phone": "1"})
    first, second = store.claim(), store.claim()
    assert first is not None and second is not None
    store.delivered(first.id)
    store.failed(second.id, "away")
    assert store.claim() is None
    start = store.now()
    store.now = lambda: start + timedelta(hours=1)
    again = store.claim()
    assert again is not None
    assert (again.id, again.attempts, again.last_error) == (second.id, 1, "away")
