"""What blocks a tag, and what unblocks it."""

from __future__ import annotations

from datetime import date

import pytest

from tagger.errors import StoreError
from tagger.i18n import Translator
from tagger.store import CrimpMeasured, Kind, ProofAllowance, ProofTest, Result, Store
from tagger.trade import assess
from tagger.trade.results import PartRating
from tests.store.samples import assessment, spec

RATED = 150.0  # bar, below what the tables rate this assembly at
PASSED = ProofTest(pressure_bar=301, hold_s=60, medium="water", passed=True, tester="Bela")


def _crimp(end: str, measured: float) -> CrimpMeasured:
    band = {"shell": "two-wire", "low_mm": 33.3, "high_mm": 33.6, "source": "invented for a test"}
    return CrimpMeasured.model_validate({"end": end, "measured_mm": measured, **band})


def test_the_last_proof_test_decides(store: Store) -> None:
    [made] = store.register(spec(), assessment(RATED))
    assert store.blocked([made.number]) == {}
    store.record_proof_test(made.number, PASSED.model_copy(update={"passed": False}))
    with pytest.raises(StoreError, match=r"cannot be printed: its proof test of .* failed"):
        store.refuse_blocked([made.number])
    store.record_proof_test(made.number, PASSED.model_copy(update={"note": "crimped again"}))
    store.refuse_blocked([made.number])


@pytest.mark.parametrize("change", [{"pressure_bar": 299.9}, {"hold_s": 29}])
def test_less_than_called_for_cannot_pass(store: Store, change: dict[str, float]) -> None:
    [made] = store.register(spec(), assessment(RATED))
    test = PASSED.model_copy(update=change)
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


def test_measuring_one_end_again_does_not_clear_the_other(store: Store) -> None:
    [made] = store.register(spec(), assessment())
    store.record_crimps(made.number, [_crimp("a", 34.5), _crimp("b", 34.5)])
    store.record_crimps(made.number, [_crimp("b", 33.5)])
    assert str(store.blocked([made.number])[made.number]).endswith("at end A (34.5 mm).")
    store.record_crimps(made.number, [_crimp("a", 33.5)])
    assert store.blocked([made.number]) == {}


def test_an_end_is_measured_once_in_one_act(store: Store) -> None:
    [made] = store.register(spec(), assessment())
    with pytest.raises(StoreError, match="Measured twice: end A"):
        store.record_crimps(made.number, [_crimp("a", 34.5), _crimp("a", 33.5)])
    assert len(store.history(made.number)) == 1


def test_a_withdrawn_lot_blocks_all_its_tags(store: Store) -> None:
    made = store.register(spec(), assessment(), count=3)
    store.withdraw("cover blisters", hose_lot="H-2291")
    assert set(store.blocked([a.number for a in made])) == {a.number for a in made}


def _made(store: Store, bar: float | None = RATED, **parts: PartRating) -> str:
    said = assessment(bar)
    rated = said.working_pressure.model_copy(update={"parts": tuple(parts.values())})
    [made] = store.register(spec(), said.model_copy(update={"working_pressure": rated}))
    return made.number


def _test(**changes: object) -> ProofTest:
    return ProofTest.model_validate({**PASSED.model_dump(exclude={"called_for_bar"}), **changes})


def _old(store: Store, number: str, **changes: object) -> None:
    """A test as it was written into the history before results were kept."""
    then = {"pressure_bar": 6000.0, "hold_s": 60, "medium": "water", "passed": True, "tester": "Bela"}
    called = {"called_for_bar": 300.0, "called_for_s": 30.0, "called_for_most_s": 60.0, "note": ""}
    store.record(number, Kind.PROOF_TESTED, then | called | changes)


def test_what_was_asked_of_a_test_is_kept_with_it(store: Store) -> None:
    event = store.record_proof_test(_made(store), _test(called_for_bar=1, called_for_s=1))
    kept = {name: event.data[name] for name in ("passed", "result", "called_for_bar", "called_for_most_bar")}
    assert kept == {"passed": True, "result": "passed", "called_for_bar": 300, "called_for_most_bar": 330}
    assert (event.data["called_for_s"], event.data["burst_bar"]) == (30, 600)


def test_a_pressure_above_the_minimum_burst_pressure_is_a_slip(store: Store) -> None:
    number = _made(store)
    for passed in (True, False):
        with pytest.raises(StoreError, match="above the minimum burst pressure, 600 bar") as refused:
            store.record_proof_test(number, _test(pressure_bar=6000, passed=passed))
        assert refused.value.problems[0].field == "pressure_bar"
    assert store.each([number], Kind.PROOF_TESTED) == []
    assert store.record_proof_test(number, _test(pressure_bar="6000 psi")).data["result"] == "held"


@pytest.mark.parametrize(
    ("bar", "result"), [(300, "passed"), (330, "passed"), (330.1, "held"), (600, "held")]
)
def test_a_test_passes_from_the_proof_pressure_to_a_tenth_above(
    store: Store, bar: float, result: str
) -> None:
    event = store.record_proof_test(_made(store), _test(pressure_bar=bar))
    assert (event.data["result"], event.data["passed"]) == (result, result == "passed")


def test_a_test_that_was_too_high_holds_until_the_manufacturers_allow_it(store: Store) -> None:
    number = _made(store)
    store.record_proof_test(number, _test(pressure_bar=500))
    store.record_proof_test(number, _test())
    assert "the assembly is held. 500 bar" in str(store.blocked([number])[number])
    proved = store.proved(number)
    assert proved is not None and proved[1].result is Result.HELD, "a later test does not release it"
    letter = ProofAllowance(
        allowed_by="both manufacturers", allowed_on=date(2026, 1, 5), document="letter 12"
    )
    event = store.allow_proof_test(number, letter, by="Mara")
    assert event.data | {"test": 0} == {**letter.model_dump(mode="json"), "test": 0}
    assert store.blocked([number]) == {}
    proved = store.proved(number)
    assert proved is not None and proved[1].result is Result.PASSED
    store.record_proof_test(number, _test(pressure_bar=500))
    assert number in store.blocked([number]), "one letter is for one test"


def test_a_test_that_was_too_high_is_never_passed_even_when_it_is_allowed(store: Store) -> None:
    number = _made(store)
    store.record_proof_test(number, _test(pressure_bar=500))
    letter = ProofAllowance(
        allowed_by="both manufacturers", allowed_on=date(2026, 1, 5), document="letter 12"
    )
    store.allow_proof_test(number, letter)
    proved = store.proved(number)
    assert proved is not None and proved[1].result is Result.TESTED
    assert "allowed it in writing" in str(proved[1].why)


def test_what_is_not_held_needs_no_allowance_and_a_letter_has_a_day_that_was(store: Store) -> None:
    number = _made(store)
    letter = ProofAllowance(allowed_by="A", allowed_on=date(2999, 1, 1), document="B")
    with pytest.raises(StoreError, match="not held"):
        store.allow_proof_test(number, letter)
    store.record_proof_test(number, _test(pressure_bar=500))
    with pytest.raises(StoreError, match="is in the future"):
        store.allow_proof_test(number, letter)
    assert number in store.blocked([number])


@pytest.mark.parametrize("change", [{"pressure_bar": 250}, {"hold_s": 10}, {"medium": "nitrogen"}])
def test_a_lower_test_is_recorded_with_who_asks_for_it_and_is_no_proof_test(
    store: Store, change: dict[str, object]
) -> None:
    number = _made(store)
    with pytest.raises(StoreError):
        store.record_proof_test(number, _test(**change))
    store.record_proof_test(number, _test(**change, lower_source="drawing 7, note 3"))
    proved = store.proved(number)
    assert proved is not None and proved[1].result is Result.TESTED
    assert str(proved[1].why).endswith("asked for by: drawing 7, note 3")
    assert store.blocked([number]) == {}


def test_without_a_rating_nothing_passes_until_the_manufacturers_is_given(store: Store) -> None:
    hose = PartRating(part="hose", value_bar=RATED, source="made up", confidence="published")
    end = PartRating(part="end_b", value_bar=None, source="", confidence="none")
    number = _made(store, None, hose=hose, end_b=end)
    with pytest.raises(StoreError, match="rating is not known: end B"):
        store.record_proof_test(number, _test())
    with pytest.raises(StoreError, match="source of the manufacturer's working pressure is missing"):
        store.record_proof_test(number, _test(rating_bar=200))
    event = store.record_proof_test(number, _test(rating_bar=200, rating_source="data sheet 9"))
    assert (event.data["result"], event.data["called_for_bar"]) == ("passed", 300), "never above a known part"
    lower = store.record_proof_test(
        number, _test(pressure_bar=200, rating_bar=100, rating_source="data sheet 9")
    )
    assert (lower.data["result"], lower.data["called_for_bar"]) == ("passed", 200)


def test_where_no_rating_is_known_the_hoses_burst_pressure_still_shows_a_slip(store: Store) -> None:
    hose = PartRating(part="hose", value_bar=RATED, source="made up", confidence="published")
    number = _made(store, None, hose=hose)
    with pytest.raises(StoreError, match=r"600 bar .* \(limited by: the hose\)"):
        store.record_proof_test(number, _test(pressure_bar=900))


def test_an_unverified_rating_asks_for_the_manufacturers_first(store: Store) -> None:
    hose = PartRating(part="hose", value_bar=RATED, source="made up", confidence="published")
    end = PartRating(part="end_a", value_bar=200, source="made up", confidence="memory")
    number = _made(store, RATED, hose=hose, end_a=end)
    with pytest.raises(StoreError, match="rating is unverified: end A"):
        store.record_proof_test(number, _test())
    event = store.record_proof_test(number, _test(rating_bar=206, rating_source="data sheet 9"))
    assert event.data["result"] == "passed"


def test_a_test_does_not_pass_by_a_rating_below_the_one_on_the_tag(store: Store) -> None:
    """The certificate would stand beside a tag that says three times the manufacturer's pressure."""
    end = PartRating(part="end_a", value_bar=200, source="made up", confidence="memory")
    number = _made(store, RATED, end_a=end)
    low = {"rating_bar": 50, "rating_source": "invented data sheet"}
    with pytest.raises(StoreError, match=r"50 bar .* is less than the tag says, 150 bar"):
        store.record_proof_test(number, _test(pressure_bar=101, **low))
    assert len(store.history(number)) == 1
    store.record_proof_test(number, _test(pressure_bar=101, passed=False, **low))


def test_a_manufacturers_rating_above_the_tables_is_confirmed_or_refused(store: Store) -> None:
    hose = PartRating(part="hose", value_bar=RATED, source="made up", confidence="published")
    end = PartRating(part="end_a", value_bar=200, source="made up", confidence="memory")
    number = _made(store, RATED, hose=hose, end_a=end)
    high = _test(rating_bar=700, rating_source="data sheet 9")
    with pytest.raises(
        StoreError, match=r"700 bar .* is above every published rating .* end A, 207 bar"
    ) as refused:
        store.record_proof_test(number, high)
    assert refused.value.problems[0].field == "rating_confirmed"
    with pytest.raises(StoreError, match="No such part works above 1000 bar"):
        store.record_proof_test(
            number, high.model_copy(update={"rating_bar": 3000, "rating_confirmed": True})
        )
    assert store.each([number], Kind.PROOF_TESTED) == []
    event = store.record_proof_test(number, high.model_copy(update={"rating_confirmed": True}))
    assert (event.data["result"], event.data["rating_confirmed"]) == ("passed", True)


def test_a_pressure_that_would_hold_the_assembly_is_confirmed_where_that_is_asked(store: Store) -> None:
    number = _made(store)
    for passed in (True, False):
        with pytest.raises(StoreError, match=r"500 bar .* is more than 330 bar"):
            store.record_proof_test(number, _test(pressure_bar=500, passed=passed), confirmed=False)
    assert store.held([number]) == {}
    assert store.record_proof_test(number, _test(), confirmed=False).data["result"] == "passed"
    store.record_proof_test(number, _test(pressure_bar=500), confirmed=True)
    assert number in store.held([number])


def test_a_rating_that_is_known_is_not_replaced_by_one_given_with_the_test(store: Store) -> None:
    with pytest.raises(StoreError, match="rating of every part is known"):
        store.record_proof_test(_made(store), _test(pressure_bar=100, rating_bar=50, rating_source="sheet"))


def test_no_rating_given_with_a_test_lifts_a_limit_of_fluid_or_heat(store: Store) -> None:
    hot = spec(max_temperature_c=200)
    [made] = store.register(hot, assess(hot), reason="letter 3 of the manufacturer")
    with pytest.raises(StoreError, match="No working pressure applies"):
        store.record_proof_test(made.number, _test(rating_bar=150, rating_source="data sheet 9"))


def test_the_proof_pressure_is_that_of_the_lower_rating_of_then_and_today(store: Store) -> None:
    known = spec(hose={"standard": "EN 853 2SN", "dash": 12})
    today = assess(known).working_pressure.value_bar
    assert today is not None
    [made] = store.register(known, assessment(today + 50))
    event = store.record_proof_test(made.number, _test(pressure_bar=2 * today))
    assert (event.data["called_for_bar"], event.data["result"]) == (pytest.approx(2 * today), "passed")


def test_an_old_record_proves_what_it_holds_and_no_more(store: Store) -> None:
    for change, result, words in (
        ({}, Result.HELD, "6000 bar (87020 psi), is above the minimum burst pressure"),
        ({"pressure_bar": 500.0}, Result.HELD, "500 bar"),
        ({"pressure_bar": 301.0}, Result.PASSED, ""),
        ({"pressure_bar": 301.0, "called_for_bar": None}, Result.TESTED, "rating of the assembly was not known"),
        ({"pressure_bar": 301.0, "medium": "air"}, Result.TESTED, "made with gas"),
        ({"pressure_bar": 301.0, "passed": False}, Result.FAILED, ""),
    ):  # fmt: skip
        number = _made(store)
        _old(store, number, **change)
        proved = store.proved(number)
        assert proved is not None and proved[1].result is result, change
        assert words in str(proved[1].why or "")
        assert (number in store.blocked([number])) is (result in (Result.HELD, Result.FAILED))


def test_a_slip_of_an_old_record_is_mended_by_a_new_test(store: Store) -> None:
    number = _made(store)
    _old(store, number)
    store.record_proof_test(number, _test())
    assert store.blocked([number]) == {}


def test_a_crimp_after_a_proof_test_ends_what_it_proved_until_it_is_tested_again(store: Store) -> None:
    number = _made(store)
    store.record_crimps(number, [_crimp("a", 33.5), _crimp("b", 33.5)])
    store.record_proof_test(number, PASSED)
    assert store.proof_states([number]) == {number: "passed"}
    store.record_crimps(number, [_crimp("a", 33.4)])
    proved = store.proved(number)
    assert proved is not None and proved[1].result is Result.OUTDATED and not proved[1].releases
    assert str(proved[1].why).startswith("Not a proof test: a crimp was recorded on")
    assert store.proof_states([number]) == {number: "outdated"}
    store.record_proof_test(number, PASSED)
    assert store.proof_states([number]) == {number: "passed"}


def test_a_pass_after_a_failure_says_what_was_mended(store: Store) -> None:
    """A hose that leaked was tested again until it held once, and nothing told that."""
    number, other = _made(store), _made(store)
    store.record_proof_test(number, _test(passed=False))
    for once_more in (
        lambda: store.record_proof_test(number, _test()),
        lambda: store.record_proof_batch([number, other], _test()),
    ):
        with pytest.raises(StoreError, match=r"note: .*the last proof test failed") as refused:
            once_more()
        assert refused.value.problems[0].field == "note"
    assert store.proof_states([number, other]) == {number: "failed"}
    store.record_proof_test(number, _test(note="O-ring of end A replaced"))
    store.record_proof_test(number, _test())
    assert store.proof_states([number]) == {number: "passed"}


def test_a_crimp_clears_neither_a_failed_test_nor_one_that_was_too_high(store: Store) -> None:
    failed, held = _made(store), _made(store)
    store.record_proof_test(failed, _test(passed=False))
    store.record_proof_test(held, _test(pressure_bar=500))
    for number in (failed, held):
        store.record_crimps(number, [_crimp("a", 33.5)])
    assert store.proof_states([failed, held]) == {failed: "failed", held: "held"}
    assert set(store.blocked([failed, held])) == {failed, held}
    letter = ProofAllowance(allowed_by="A", allowed_on=date(2026, 1, 5), document="B")
    store.allow_proof_test(held, letter)
    assert store.proof_states([held]) == {held: "outdated"}, (
        "the letter is for the load, not for the new crimp"
    )
