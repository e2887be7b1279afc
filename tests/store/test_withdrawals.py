"""What must not be used: by tag, by hose lot, by fitting lot."""

from __future__ import annotations

import pytest

from tagger.errors import StoreError
from tagger.spec import AssemblySpec
from tagger.store import Kind, Scope, Store
from tests.store.samples import assessment, spec


def test_a_withdrawn_lot_marks_every_assembly_made_from_it(store: Store) -> None:
    made = store.register(spec(), assessment(), count=3)
    [other] = store.register(spec(hose={"standard": "SAE 100R2", "dash": 12, "lot": "H-9"}), assessment())
    withdrawal = store.withdraw("cover blisters", hose_lot=" h-2291 ", by="bela")
    for assembly in made:
        read = store.assembly(assembly.number)
        assert read.withdrawn
        assert read.withdrawals == (withdrawal,)
        assert store.history(assembly.number)[-1].kind is Kind.WITHDRAWN
    assert not store.assembly(other.number).withdrawn
    assert store.affected(Scope.HOSE_LOT, "H-2291") == [a.number for a in made]


def test_either_ends_fitting_lot_counts(store: Store) -> None:
    [made] = store.register(spec(), assessment())
    store.withdraw("soft seats", fitting_lot="F-119")
    assert store.assembly(made.number).withdrawn


def test_lifting_is_kept_in_the_record(store: Store) -> None:
    [made] = store.register(spec(), assessment())
    withdrawal = store.withdraw("seat cracked", tag=made.number)
    lifted = store.lift(withdrawal.id, "looked at again: a scratch", by="bela")
    assert not store.assembly(made.number).withdrawn
    assert lifted.lifted_by == "bela"
    assert store.history(made.number)[-1].kind is Kind.WITHDRAWAL_LIFTED
    assert store.withdrawals(holds=False) == [lifted]
    with pytest.raises(StoreError, match="already lifted"):
        store.lift(withdrawal.id, "again")


def test_nothing_is_built_from_a_withdrawn_lot(store: Store) -> None:
    store.withdraw("soft seats", fitting_lot="f-118")
    with pytest.raises(StoreError, match=r"end_a\.lot: Fitting lot .* is withdrawn \(“soft seats"):
        store.register(spec(), assessment())


@pytest.mark.parametrize(
    "typed", ["h 2310", "H2310", "H\N{NON-BREAKING HYPHEN}2310", "Ｈ-2310", "h_2310 ", "LOT: H-2310"]
)
def test_a_withdrawn_lot_is_known_however_it_is_typed(store: Store, typed: str) -> None:
    """A hose was built from withdrawn H-2310 by typing the lot without its hyphen."""
    store.withdraw("cover blistered", hose_lot="H-2310")
    hose = spec().hose.model_copy(update={"lot": typed})
    with pytest.raises(StoreError, match=r"hose\.lot: Hose lot .* is withdrawn \(“cover blistered"):
        store.register(spec().model_copy(update={"hose": hose}), assessment())
    assert [one.value for one in store.withdrawn_lots(typed)] == ["H-2310"]
    other = spec().hose.model_copy(update={"lot": "H-2311"})
    assert store.register(spec().model_copy(update={"hose": other}), assessment())


def test_hoses_built_under_another_spelling_of_a_lot_are_withdrawn_with_it(store: Store) -> None:
    """They were built as H2310; H-2310 was withdrawn afterwards and did not find them."""

    def built(lot: str, fitting: str) -> str:
        data = spec().as_dict()
        data["hose"]["lot"], data["end_a"]["lot"] = lot, fitting
        [made] = store.register(AssemblySpec.read(data), assessment())
        return made.number

    first, second, other = built("h2310", "F 1"), built("Lot no. H 2310", "F-1"), built("H-2311", "F-2")
    assert store.affected(Scope.HOSE_LOT, "H-2310") == [first, second]
    withdrawal = store.withdraw("cover blistered", hose_lot="H-2310")
    assert store.withdrawn_numbers() == sorted([first, second])
    assert store.affected(Scope.HOSE_LOT, "H-2310") == [first, second]
    assert [one.value for one in store.assembly(first).withdrawals] == ["H-2310"]
    assert [event.kind for event in store.history(second)].count(Kind.WITHDRAWN) == 1
    store.correct(other, {"hose.lot": "H.2310"}, "read again from the hose")
    assert store.assembly(other).withdrawn
    store.lift(withdrawal.id, "tested again")
    assert store.withdrawn_numbers() == []
    store.withdraw("cracks", fitting_lot="F1")
    assert store.withdrawn_numbers() == sorted([first, second])
    store.withdraw("again", hose_lot="H-2310")
    assert store.withdrawn_numbers() == sorted([first, second, other])


def test_a_withdrawal_needs_one_thing_and_a_reason(store: Store) -> None:
    with pytest.raises(StoreError, match="exactly one"):
        store.withdraw("x", hose_lot="1", fitting_lot="2")
    with pytest.raises(StoreError, match="reason"):
        store.withdraw("  ", hose_lot="1")
    store.withdraw("x", hose_lot="1")
    with pytest.raises(StoreError, match="already withdrawn"):
        store.withdraw("y", hose_lot="1")
