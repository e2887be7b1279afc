"""Slips of the record: void before anything came of it; corrected, with both values kept."""

from __future__ import annotations

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DatabaseError

from api.shared.scan_look_up import look_up
from tagger.errors import StoreError
from tagger.store import Filter, Kind, Scope, Store
from tests.store.samples import assessment, spec

PLACE = {"customer": "Quarry", "machine": "Loader 4"}


def _one(store: Store, **more: object) -> str:
    return store.register(spec(), assessment(), **more)[0].number  # type: ignore[arg-type]


def test_a_void_record_says_so_and_is_neither_printed_fitted_nor_on_its_machine(store: Store) -> None:
    number = _one(store, **PLACE)
    store.record(number, Kind.PRINTED)
    item = store.void(number, "wrong customer, wrong length", by="bela")
    assert item.void is not None
    assert (item.void.reason, item.void.by) == ("wrong customer, wrong length", "bela")
    assert store.history(number)[-1].kind is Kind.VOIDED
    with pytest.raises(StoreError, match="record is void"):
        store.refuse_blocked([number])
    with pytest.raises(StoreError, match="do not fit"):
        store.record(number, Kind.FITTED)
    assert store.on_machine("Quarry", "Loader 4") == []
    assert store.oldest() == []
    assert not item.withdrawn and store.withdrawals() == []
    with pytest.raises(StoreError, match="is void"):
        store.void(number, "again")


@pytest.mark.parametrize(
    ("kind", "words"),
    [
        (Kind.SCANNED, "scanned"),
        (Kind.FITTED, "installed"),
        (Kind.PROOF_TESTED, "proof-tested"),
        (Kind.ORDERED, "ordered again"),
        (Kind.INSPECTED, "more has been recorded"),
    ],
)
def test_what_came_of_it_leaves_only_a_withdrawal(store: Store, kind: Kind, words: str) -> None:
    number = _one(store)
    store.record(number, kind, {"passed": True} if kind is Kind.PROOF_TESTED else {})
    with pytest.raises(StoreError, match=f"{words}.*withdraw the tag"):
        store.void(number, "a slip")
    assert store.assembly(number).void is None
    assert store.withdraw("a slip", tag=number).holds


def test_what_was_handed_over_with_its_order_is_not_void(store: Store) -> None:
    order = store.request_order(number=_one(store), contact={"phone": "1"}).reference
    number = _one(store, order_reference=order)
    for state in ("building", "done"):
        store.set_order_state(order, state)
    with pytest.raises(StoreError, match="handed over"):
        store.void(number, "a slip")


def test_a_void_needs_a_reason(store: Store) -> None:
    with pytest.raises(StoreError, match="reason"):
        store.void(_one(store), "  ")


def test_a_void_replacement_replaces_nothing_and_a_void_lot_is_known_as_nothing(store: Store) -> None:
    old = _one(store)
    new = _one(store, replaces=old)
    store.void(new, "a slip")
    assert store.assembly(old).replacement_built is None
    wrong = {"standard": "EN 857 2SC", "dash": 12, "lot": "H-9"}
    [slip] = store.register(spec(hose=wrong), assessment())
    store.void(slip.number, "wrong reel")
    store.register(spec(hose={**wrong, "standard": "SAE 100R2"}), assessment())


def test_a_correction_keeps_both_values_in_the_history(store: Store) -> None:
    number = _one(store, **PLACE)
    before = store.assembly(number)
    changes = {"customer": "Harbour", "machine": None, "note": "arm cylinder"}
    after = store.correct(number, changes, "typed for the wrong yard", by="bela")
    assert (after.customer, after.machine, after.spec.note) == ("Harbour", None, "arm cylinder")
    assert (after.digits, after.assessment, after.spec.hose) == (
        before.digits,
        before.assessment,
        before.spec.hose,
    )
    line = store.history(number)[-1]
    assert (line.kind, line.by, line.data["reason"]) == (Kind.CORRECTED, "bela", "typed for the wrong yard")
    assert line.data["fields"] == {
        "customer": {"old": "Quarry", "new": "Harbour"},
        "machine": {"old": "Loader 4", "new": None},
        "note": {"old": "boom cylinder, rod side", "new": "arm cylinder"},
    }
    assert [a.number for a in store.find(Filter(customer="harbour")).assemblies] == [number]
    assert store.count(Filter(customer="quarry")) == 0


@pytest.mark.parametrize("field", ["hose.lot", "end_a.lot", "end_b.lot"])
@pytest.mark.parametrize("held", ["old", "new"])
def test_a_corrected_lot_is_held_by_its_old_and_its_new_value(store: Store, field: str, held: str) -> None:
    number = _one(store)
    old = {"hose.lot": "H-2291", "end_a.lot": "F-118", "end_b.lot": "F-119"}[field]
    store.correct(number, {field: "N-1"}, "read off the wrong label")
    lot = old if held == "old" else "n-1"
    scope = Scope.HOSE_LOT if field == "hose.lot" else Scope.FITTING_LOT
    assert store.affected(scope, lot) == [number]
    assert [a.number for a in store.find(Filter(lot=lot)).assemblies] == [number]
    withdrawal = store.withdraw("blisters", **{str(scope): lot})
    assert store.assembly(number).withdrawals == (withdrawal,)
    assert store.withdrawn_numbers() == [number]
    assert store.history(number)[-1].kind is Kind.WITHDRAWN


def test_a_lot_already_withdrawn_holds_what_is_corrected_to_it(store: Store) -> None:
    number = _one(store)
    store.withdraw("blisters", hose_lot="H-5")
    assert not store.assembly(number).withdrawn
    assert store.correct(number, {"hose.lot": "H-5"}, "read off the wrong label").withdrawn


def test_a_lot_of_another_hose_stops_a_correction_too(store: Store) -> None:
    store.register(spec(hose={"standard": "EN 857 2SC", "dash": 12, "lot": "H-6"}), assessment())
    number = _one(store)
    with pytest.raises(StoreError, match="H-6 is known as EN 857 2SC"):
        store.correct(number, {"hose.lot": "H-6"}, "wrong label")
    store.correct(number, {"hose.lot": "H-6"}, "wrong label", lot_reason="other_manufacturer")
    assert store.assembly(number).spec.hose.lot == "H-6"


def test_nothing_else_can_be_corrected(store: Store) -> None:
    number = _one(store)
    with pytest.raises(StoreError, match=r"length_mm: .*customer"):
        store.correct(number, {"length_mm": "1300"}, "x")
    with pytest.raises(StoreError, match="Nothing differs"):
        store.correct(number, {"note": "boom cylinder, rod side"}, "x")
    with pytest.raises(StoreError, match="reason"):
        store.correct(number, {"note": "y"}, " ")
    assert len(store.history(number)) == 1


@pytest.mark.parametrize(
    "change", ["UPDATE assembly SET digits = '1'", "UPDATE assembly SET replaces = 'x'", "DELETE FROM assembly",
               "DELETE FROM void", "UPDATE former_lot SET value = 'x'"]
)  # fmt: skip
def test_the_database_itself_keeps_all_else_as_it_was(store: Store, change: str) -> None:
    first, second = _one(store), _one(store)
    store.correct(first, {"hose.lot": "N-1"}, "wrong label")
    store.void(second, "a slip")
    with pytest.raises(DatabaseError, match="append-only"), store.writing() as session:
        session.execute(text(change))


def test_a_lot_from_which_the_newest_was_corrected_away_is_still_known(store: Store) -> None:
    _one(store)
    newest = _one(store)
    store.correct(newest, {"hose.lot": "H-77"}, "read off the wrong label")
    assert look_up(store, "H-2291").kind == "hose_lot"
