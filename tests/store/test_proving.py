"""What blocks a tag, and what unblocks it."""

from __future__ import annotations

import pytest

from tagger.errors import StoreError
from tagger.i18n import Translator
from tagger.store import CrimpMeasured, ProofTest, Store
from tests.store.samples import assessment, spec

PASSED = ProofTest(
    pressure_bar=345, hold_s=60, medium="water", passed=True, tester="Bela", called_for_bar=344
)


def _crimp(end: str, measured: float) -> CrimpMeasured:
    band = {"shell": "two-wire", "low_mm": 33.3, "high_mm": 33.6, "source": "invented for a test"}
    return CrimpMeasured.model_validate({"end": end, "measured_mm": measured, **band})


def test_the_last_proof_test_decides(store: Store) -> None:
    [made] = store.register(spec(), assessment())
    assert store.blocked([made.number]) == {}
    store.record_proof_test(made.number, PASSED.model_copy(update={"passed": False}))
    with pytest.raises(StoreError, match=r"cannot be printed: its proof test of .* failed"):
        store.refuse_blocked([made.number])
    store.record_proof_test(made.number, PASSED)
    store.refuse_blocked([made.number])


@pytest.mark.parametrize("change", [{"pressure_bar": 343.9}, {"hold_s": 29}])
def test_less_than_called_for_cannot_pass(store: Store, change: dict[str, float]) -> None:
    [made] = store.register(spec(), assessment())
    test = PASSED.model_copy(update={"called_for_s": 30.0, **change})
    with pytest.raises(StoreError, match=r"less than the .*(required|proof pressure)"):
        store.record_proof_test(made.number, test)
    assert len(store.history(made.number)) == 1


def test_a_crimp_out_of_its_band_blocks_until_measured_again(store: Store) -> None:
    [made] = store.register(spec(), assessment())
    store.record_crimps(made.number, [_crimp("a", 33.6), _crimp("b", 33.61)])
    why = store.blocked([made.number])[made.number]
    assert str(why).endswith("the crimp diameter is out of tolerance at end B (33.61 mm).")
    assert Translator("de")(why).endswith("Ende B (33,61 mm).")
    store.record_crimps(made.number, [_crimp("b", 33.5)])
    assert store.blocked([made.number]) == {}


def test_a_withdrawn_lot_blocks_all_its_tags(store: Store) -> None:
    made = store.register(spec(), assessment(), count=3)
    store.withdraw("cover blisters", hose_lot="H-2291")
    assert set(store.blocked([a.number for a in made])) == {a.number for a in made}
