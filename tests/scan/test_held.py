"""The list of withdrawn hoses that a phone keeps for when there is no signal."""

from __future__ import annotations

import time

import pytest
from fastapi.testclient import TestClient

from api.scan import held
from tagger.store import Store
from tests.scan.conftest import register


def _listed(client: TestClient) -> set[str]:
    return set(client.get("/scan/held.json").json()["withdrawn"])


def test_the_list_holds_exactly_the_withdrawn_numbers(
    client: TestClient, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(held, "FRESH_S", 0.0)
    one, other = register(store), register(store)
    assert _listed(client) == set()
    withdrawal = store.withdraw("cracked", tag=one.number)
    assert _listed(client) == {held.digest(one.number)}
    store.lift(withdrawal.id, "retested")
    by_lot = store.withdraw("burst low", hose_lot="H-2291")
    assert _listed(client) == {held.digest(number) for number in store.affected(by_lot.scope, by_lot.value)}
    assert other.number not in client.get("/scan/held.json").text


def test_a_withdrawal_is_in_the_list_within_two_seconds(client: TestClient, store: Store) -> None:
    made = register(store)
    _listed(client)
    store.withdraw("cracked", tag=made.number)
    time.sleep(held.FRESH_S)
    assert held.digest(made.number) in _listed(client)


def test_void_records_are_in_a_list_of_their_own(
    client: TestClient, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(held, "FRESH_S", 0.0)
    slip, _ = register(store), register(store)
    store.void(slip.number, "registered twice")
    assert client.get("/scan/held.json").json()["void"] == [held.digest(slip.number)]
    assert _listed(client) == set()
