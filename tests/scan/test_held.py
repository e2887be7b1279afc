"""The list of withdrawn hoses that a phone keeps for when there is no signal."""

from __future__ import annotations

import time
from datetime import date

import pytest
from fastapi.testclient import TestClient

from api.scan import held
from tagger.store import CrimpMeasured, Kind, ProofAllowance, ProofTest, Store
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


def test_what_is_held_after_a_crimp_or_a_proof_test_is_in_a_list_of_its_own(
    client: TestClient, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(held, "FRESH_S", 0.0)

    def listed() -> set[str]:
        return set(client.get("/scan/held.json").json()["held"])

    loaded, failed, crimped, old, fine = (register(store).number for _ in range(5))
    called = store.assembly(loaded).assessment.test_pressure_bar
    assert called is not None
    passed = ProofTest(
        pressure_bar=called,
        hold_s=60,
        medium="water",
        passed=True,
        tester="Bela",
        rating_bar=called / 2,
        rating_source="invented for a test",
    )
    store.record_proof_test(fine, passed)
    assert listed() == set()
    store.record_proof_test(loaded, passed.model_copy(update={"pressure_bar": called * 1.5}))
    store.record_proof_test(failed, passed.model_copy(update={"passed": False}))
    band = {"shell": "two-wire", "low_mm": 33.3, "high_mm": 33.6, "source": "invented for a test"}
    crimp = CrimpMeasured.model_validate({"end": "b", "measured_mm": 33.61, **band})
    store.record_crimps(crimped, [crimp])
    before = passed.model_dump(mode="json") | {"pressure_bar": 3000.0, "called_for_bar": 300.0}
    store.record(old, Kind.PROOF_TESTED, before)  # written before results were kept
    assert listed() == {held.digest(number) for number in (loaded, failed, crimped, old)}
    letter = ProofAllowance(allowed_by="both", allowed_on=date(2026, 1, 5), document="letter 12")
    store.allow_proof_test(loaded, letter)
    for number in (failed, old):
        store.record_proof_test(number, passed.model_copy(update={"note": "seal renewed"}))
    store.record_crimps(crimped, [crimp.model_copy(update={"measured_mm": 33.5})])
    assert listed() == set()
