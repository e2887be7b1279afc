"""A shop that tests first: no tag is printed and no order handed over before the proof test passed."""

from __future__ import annotations

import pytest

from tagger.errors import StoreError
from tagger.store import CrimpMeasured, Kind, OrderState, ProofAllowance, ProofTest, Store
from tests.store.samples import assessment, spec

RATED = 150.0  # bar
PASSED = ProofTest(pressure_bar=301, hold_s=60, medium="water", passed=True, tester="Bela")
CRIMP = CrimpMeasured(
    end="a", measured_mm=33.5, shell="two-wire", low_mm=33.3, high_mm=33.6, source="invented"
)


@pytest.fixture
def careful(store: Store) -> Store:
    store.proof_first = True
    return store


def _number(store: Store) -> str:
    [made] = store.register(spec(), assessment(RATED))
    return made.number


def test_no_tag_is_printed_before_the_proof_test_passed_but_the_traveller_is(careful: Store) -> None:
    number = _number(careful)
    with pytest.raises(StoreError, match="before the proof test has passed"):
        careful.refuse_blocked([number])
    careful.refuse_blocked([number], traveller=True)
    careful.record_proof_test(number, PASSED)
    careful.refuse_blocked([number])


def test_other_shops_print_before_the_test(store: Store) -> None:
    assert store.blocked([_number(store)]) == {}


def test_a_failed_test_blocks_the_traveller_too(careful: Store) -> None:
    number = _number(careful)
    careful.record_proof_test(number, PASSED.model_copy(update={"passed": False}))
    assert "failed" in str(careful.blocked([number], traveller=True)[number])


def test_a_lower_test_counts_where_a_document_asks_for_it_and_liquid_was_used(careful: Store) -> None:
    lower = PASSED.model_copy(update={"pressure_bar": 200, "lower_source": "order 12, drawing note 4"})
    number = _number(careful)
    careful.record_proof_test(number, lower.model_copy(update={"medium": "air"}))
    assert careful.untested([number]) == [number]
    careful.record_proof_test(number, lower)
    assert careful.untested([number]) == []


def test_what_was_loaded_too_high_counts_once_the_manufacturers_allow_it(careful: Store) -> None:
    number = _number(careful)
    careful.record_proof_test(number, PASSED.model_copy(update={"pressure_bar": 400}))
    assert careful.untested([number]) == [number]
    today = careful.now().date()
    careful.allow_proof_test(
        number, ProofAllowance(allowed_by="the hose manufacturer", allowed_on=today, document="letter 7")
    )
    assert careful.untested([number]) == []


def test_an_old_record_that_proves_nothing_does_not_count(careful: Store) -> None:
    number = _number(careful)
    careful.record(
        number,
        Kind.PROOF_TESTED,
        {"pressure_bar": 200.0, "hold_s": 60, "medium": "water", "passed": True, "tester": "Bela",
         "called_for_bar": 300.0, "called_for_s": 30.0},
    )  # fmt: skip
    assert careful.untested([number]) == [number]


def test_an_order_is_not_handed_over_before_all_that_was_built_for_it_passed(careful: Store) -> None:
    order = careful.request_order(spec=spec(), quantity=2, contact={"phone": "01 555 0100"})
    made = careful.register(spec(), assessment(RATED), count=2, order_reference=order.reference)
    careful.set_order_state(order.reference, OrderState.BUILDING)
    careful.record_proof_test(made[0].number, PASSED)
    with pytest.raises(StoreError, match="has not passed") as refused:
        careful.set_order_state(order.reference, OrderState.DONE)
    assert made[0].number[:5] not in str(refused.value), "only the one that is not tested is named"
    careful.record_proof_test(made[1].number, PASSED)
    assert careful.set_order_state(order.reference, OrderState.DONE).state is OrderState.DONE


def test_an_order_for_which_nothing_is_registered_is_not_handed_over(careful: Store) -> None:
    order = careful.request_order(spec=spec(), contact={"phone": "01 555 0100"})
    careful.set_order_state(order.reference, OrderState.BUILDING)
    with pytest.raises(StoreError, match="no hose assembly is registered for it"):
        careful.set_order_state(order.reference, OrderState.DONE)


def test_nothing_is_recorded_as_installed_before_its_proof_test_passed(careful: Store) -> None:
    old = _number(careful)
    careful.record_proof_test(old, PASSED)
    careful.record(old, Kind.FITTED)
    [new] = careful.register(spec(), assessment(RATED), replaces=old)
    with pytest.raises(StoreError, match="lets no hose assembly out before the proof test has passed"):
        careful.record(new.number, Kind.FITTED)
    assert not careful.assembly(new.number).fitted and careful.assembly(old).replaced_by is None
    careful.record_proof_test(new.number, PASSED)
    careful.record_crimps(new.number, [CRIMP])
    with pytest.raises(StoreError, match="proof test has passed"):
        careful.record(new.number, Kind.FITTED)
    careful.record_proof_test(new.number, PASSED)
    careful.record(new.number, Kind.FITTED)
    assert careful.assembly(old).replaced_by == new.number


def test_a_phone_is_told_of_what_is_not_tested_but_not_of_what_went_out_before_the_shop_tested_first(
    store: Store,
) -> None:
    store.shop_papers = frozenset({"job_card"})
    fitted, printed, carded, fresh, crimped = (_number(store) for _ in range(5))
    store.record(fitted, Kind.FITTED)
    store.record(printed, Kind.PRINTED, {"template": "hang_tag"})
    store.record(carded, Kind.PRINTED, {"template": "job_card"})
    store.record_proof_test(crimped, PASSED)
    store.record(crimped, Kind.PRINTED, {"template": "hang_tag"})
    store.record_crimps(crimped, [CRIMP])
    assert store.kept_back_numbers() == [], "this shop does not test first"
    store.proof_first = True
    assert store.kept_back_numbers() == sorted([carded, fresh, crimped])
    assert store.kept_back([fitted, printed, carded]) == [carded]
    store.record_proof_test(carded, PASSED)
    store.record_proof_test(crimped, PASSED)
    assert store.kept_back_numbers() == [fresh]
