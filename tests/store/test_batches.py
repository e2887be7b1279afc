"""Proof tests and crimps of several assemblies in one act."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tagger.errors import StoreError
from tagger.store import CrimpMeasured, Flushing, Kind, ProofTest, Result, Store
from tests.store.samples import assessment, spec

RATED = 150.0  # bar
PASSED = ProofTest(
    pressure_bar=301,
    hold_s=60,
    medium="water",
    passed=True,
    tester="Bela",
    gauge="G-7",
    method="work sheet 3",
)


def _run(store: Store, count: int = 3, bar: float | None = RATED, **changes: object) -> list[str]:
    return [one.number for one in store.register(spec(**changes), assessment(bar), count=count)]


def _crimp(end: str, measured: float) -> CrimpMeasured:
    band = {"shell": "two-wire", "low_mm": 33.3, "high_mm": 33.6, "source": "invented for a test"}
    return CrimpMeasured.model_validate({"end": end, "measured_mm": measured, **band})


def test_one_act_tests_a_whole_run_and_its_reference_finds_it(store: Store) -> None:
    numbers = _run(store)
    other = _run(store, 1)
    made = store.record_proof_batch(numbers, PASSED, by="Bela")
    assert {result.result for _, result in store.proved_of(numbers).values()} == {Result.PASSED}
    found = store.proof_batch(numbers[1])
    assert found == made and found.reference.startswith("B-") and found.numbers == numbers
    assert {test.data["gauge"] for test in found.tests} == {"G-7"}
    store.record_proof_test(other[0], PASSED)
    assert store.proof_batch(other[0]) is None
    assert store.proof_batch(numbers[0]) == made, "a test of another assembly is not of the batch"


def test_two_batches_of_one_moment_stay_apart(store: Store) -> None:
    one, two, now = _run(store), _run(store), store.now()
    store.now = lambda: now
    store.record_proof_batch(one, PASSED)
    store.record_proof_batch(two, PASSED)
    found = store.proof_batch(two[0])
    assert found is not None and found.numbers == two


def test_all_or_none_and_a_problem_of_all_is_told_once(store: Store) -> None:
    numbers = _run(store)
    with pytest.raises(StoreError) as refused:
        store.record_proof_batch(numbers, PASSED.model_copy(update={"pressure_bar": 299}))
    [problem] = refused.value.problems
    assert problem.field == "pressure_bar" and problem.message.id == "store-proof-pressure-low"
    unknown = _run(store, 1, bar=None)
    with pytest.raises(StoreError) as refused:
        store.record_proof_batch([*numbers, *unknown], PASSED)
    [problem] = refused.value.problems
    assert (
        problem.field == "rating_bar" and unknown[0][:5] in problem.why and numbers[0][:5] not in problem.why
    )
    assert store.last(numbers, Kind.PROOF_TESTED) == {}


def test_a_pressure_that_would_hold_one_of_the_batch_is_refused(store: Store) -> None:
    weak, strong = _run(store, 1, bar=100), _run(store, 1)
    with pytest.raises(StoreError, match="above a proof test for") as refused:
        store.record_proof_batch([*weak, *strong], PASSED)
    assert weak[0][:5] in str(refused.value) and strong[0][:5] not in str(refused.value)
    assert store.last([*weak, *strong], Kind.PROOF_TESTED) == {}
    store.record_proof_batch([*weak, *strong], PASSED, confirmed=True)
    assert set(store.held([*weak, *strong])) == set(weak), "it was loaded too high, and is held"
    assert store.proved_of(strong)[strong[0]][1].result is Result.PASSED


def test_a_void_record_refuses_the_batch(store: Store) -> None:
    numbers = _run(store)
    store.void(numbers[2], "registered twice")
    with pytest.raises(StoreError, match="void"):
        store.record_proof_batch(numbers, PASSED)
    assert store.last(numbers, Kind.PROOF_TESTED) == {}


def test_no_test_passes_on_a_gauge_whose_calibration_has_ended(store: Store) -> None:
    [number] = _run(store, 1)
    ended = PASSED.model_copy(update={"gauge_valid_until": store.now().date() - timedelta(days=2)})
    for act in (store.record_proof_test, lambda n, t: store.record_proof_batch([n], t)):
        with pytest.raises(StoreError, match="calibration of the gauge ended"):
            act(number, ended)
        with pytest.raises(StoreError, match="gauge of this calibration date is missing"):
            act(number, ended.model_copy(update={"gauge": ""}))
    store.record_proof_test(number, ended.model_copy(update={"passed": False}))
    assert number in store.blocked([number]), "what leaked is recorded whatever gauge showed it"
    mended = {"gauge_valid_until": store.now().date(), "note": "crimped again"}
    valid = PASSED.model_copy(update=mended)
    assert store.record_proof_test(number, valid).data["gauge_valid_until"] == store.now().date().isoformat()


def test_crimps_of_several_are_kept_each_with_its_own_values_or_none_is(store: Store) -> None:
    numbers = _run(store, 2)
    store.record_crimp_batch({numbers[0]: [_crimp("a", 33.4)], numbers[1]: [_crimp("a", 33.7)]})
    assert set(store.blocked(numbers)) == {numbers[1]}
    with pytest.raises(StoreError):
        store.record_crimp_batch({numbers[1]: [_crimp("a", 33.4)], "00000-000001": [_crimp("a", 33.4)]})
    assert set(store.blocked(numbers)) == {numbers[1]}


def test_a_batch_is_at_least_one_and_at_most_500(store: Store) -> None:
    with pytest.raises(StoreError, match="No hose assembly is selected"):
        store.record_proof_batch([], PASSED)
    made = store.register(spec(), assessment(RATED), count=501)
    with pytest.raises(StoreError, match="more than the 500"):
        store.record_proof_batch([one.number for one in made], PASSED)


def test_all_of_a_batch_are_flushed_or_none_is(store: Store) -> None:
    numbers = _run(store, 2)
    done = Flushing(method="2 min with filtered oil", flushed_by="Bela")
    with pytest.raises(StoreError):
        store.record_flushing([*numbers, "00000-000001"], done)
    assert store.flushed(numbers) == {}
    store.record_flushing(numbers, done, by="Bela")
    assert {event.data["method"] for event in store.flushed(numbers).values()} == {"2 min with filtered oil"}
    store.void(numbers[0], "registered twice")
    with pytest.raises(StoreError, match="void"):
        store.record_flushing(numbers, done)


def test_no_test_is_called_passed_of_a_withdrawn_hose_and_one_that_failed_is_kept(store: Store) -> None:
    good, bad = _run(store, 1), _run(store, 1)
    withdrawal = store.withdraw("burst low", tag=bad[0])
    for act in (
        lambda: store.record_proof_test(bad[0], PASSED),
        lambda: store.record_proof_batch(bad, PASSED),
        lambda: store.record_proof_batch([*good, *bad], PASSED),
    ):
        with pytest.raises(StoreError, match="withdrawn: burst low"):
            act()
    assert store.proved_of([*good, *bad]) == {}
    store.record_proof_test(bad[0], PASSED.model_copy(update={"passed": False}))
    assert store.proved_of(bad)[bad[0]][1].result is Result.FAILED, "it may say why it was withdrawn"
    store.lift(withdrawal.id, "another gauge")
    store.record_proof_test(bad[0], PASSED.model_copy(update={"note": "fitting changed"}))
    assert store.proved_of(bad)[bad[0]][1].result is Result.PASSED
