"""Order requests: kept once, moved on in order, tied to what was built for them."""

from __future__ import annotations

from datetime import date

import pytest

from tagger.code import number as tag_number
from tagger.errors import StoreError
from tagger.store import Kind, OrderState, Registration, Store
from tests.store.samples import assessment, spec

ANNA = {"name": "Anna", "phone": "555 0101"}


def test_an_order_from_a_tag_takes_its_spec(store: Store) -> None:
    [made] = store.register(spec(), assessment())
    order = store.request_order(number=made.number, quantity=2, needed_by=date(2026, 5, 1), reference="PO 77",
                                contact=ANNA, changes="100 mm longer", key="phone-1")  # fmt: skip
    assert (order.spec, order.quantity, order.state) == (spec(), 2, OrderState.RECEIVED)
    assert store.order(order.reference.lower()) == order
    assert store.history(made.number)[-1].kind is Kind.ORDERED


def test_nothing_is_ordered_from_a_void_record(store: Store) -> None:
    """Its spec is the slip that it was made void for; the shop would build it again."""
    [made] = store.register(spec(), assessment())
    store.void(made.number, "wrong end B")
    for asked in (None, spec()):
        with pytest.raises(StoreError, match="is void: nothing can be ordered from it"):
            store.request_order(number=made.number, spec=asked, contact=ANNA)
    assert store.orders() == []


def test_an_order_sent_twice_is_kept_once(store: Store) -> None:
    [made] = store.register(spec(), assessment())
    sent = {"number": made.number, "quantity": 1, "contact": ANNA, "key": "phone-1"}
    first, again = store.request_order(**sent), store.request_order(**sent)
    assert first == again
    assert len(store.orders()) == 1
    assert [e.kind for e in store.history(made.number)].count(Kind.ORDERED) == 1


def test_an_order_from_another_shops_tag_needs_the_spec(store: Store) -> None:
    foreign = tag_number.make()
    with pytest.raises(StoreError, match="Send the spec too"):
        store.request_order(number=foreign, quantity=1, contact=ANNA)
    assert store.request_order(number=foreign, spec=spec(), quantity=1, contact=ANNA).number == foreign


@pytest.mark.parametrize(
    ("contact", "field"),
    [
        ({"name": "Anna"}, "contact.phone"),
        ({"email": "anna"}, "contact.email"),
        ({"fax": "1"}, "contact.fax"),
    ],
)
def test_a_contact_that_cannot_be_answered_is_refused(
    store: Store, contact: dict[str, str], field: str
) -> None:
    with pytest.raises(StoreError) as refused:
        store.request_order(spec=spec(), quantity=1, contact=contact)
    assert field in [problem.field for problem in refused.value.problems]


def test_states_follow_each_other(store: Store) -> None:
    order = store.request_order(spec=spec(), quantity=1, contact=ANNA)
    with pytest.raises(StoreError, match="“done” is not allowed after “received”"):
        store.set_order_state(order.reference, OrderState.DONE)
    with pytest.raises(StoreError, match="note"):
        store.set_order_state(order.reference, OrderState.ASKED)
    for state in (OrderState.ACCEPTED, OrderState.BUILDING, OrderState.DONE):
        moved = store.set_order_state(order.reference, state, by="bela")
    assert [step.state for step in moved.steps] == ["received", "accepted", "building", "done"]
    assert store.orders("done") == [moved]
    assert store.orders("received") == []


def test_what_was_built_for_an_order_is_known(store: Store) -> None:
    [old] = store.register(spec(), assessment())
    order = store.request_order(number=old.number, quantity=2, contact=ANNA)
    new = store.register(spec(), assessment(), count=2, replaces=old.number, order_reference=order.reference)
    assert store.order(order.reference).built == tuple(a.number for a in new)
    with pytest.raises(StoreError, match="R-NONE is not on record"):
        store.register(spec(), assessment(), order_reference="R-NONE")


def _asking(store: Store, changes: str | None = "100 mm longer") -> str:
    [made] = store.register(spec(), assessment())
    return store.request_order(number=made.number, contact=ANNA, changes=changes).reference


def test_an_order_that_asks_for_a_change_is_not_built_as_it_was(store: Store) -> None:
    reference = _asking(store)
    with pytest.raises(StoreError, match=r"changes_considered: .*100 mm longer"):
        store.register(spec(), assessment(), order_reference=reference)
    with pytest.raises(StoreError, match=r"row 2\.changes_considered"):
        row = Registration(spec(), assessment(), order_reference=reference)
        store.register_many([Registration(spec(), assessment()), row])
    assert store.order(reference).built == ()
    as_asked = _asking(store, changes=None)
    store.register(spec(), assessment(), order_reference=as_asked)


def test_the_change_made_in_a_field_is_kept_in_the_history(store: Store) -> None:
    [made] = store.register(spec(length_mm=1350), assessment(), order_reference=_asking(store))
    data = store.history(made.number)[0].data
    assert (data["order_changes"], data["changed"]) == ("100 mm longer", ["length_mm"])


def test_an_order_that_asks_for_no_change_is_built_as_ordered(store: Store) -> None:
    """Ordered at 1250 mm: built at 800 mm only where somebody says so; what it left open may be filled in."""
    [made] = store.register(spec(), assessment())
    reference = store.request_order(number=made.number, contact={"phone": "1"}).reference
    with pytest.raises(StoreError, match=r"changes_considered: .*asks for no change.*length_mm"):
        store.register(spec(length_mm=800), assessment(), order_reference=reference)
    assert store.count() == 1
    store.register(spec(fluid="mineral_oil"), assessment(), order_reference=reference)
    [other] = store.register(
        spec(length_mm=800), assessment(), order_reference=reference, changes_considered=True
    )
    assert store.history(other.number)[0].data["changed"] == ["length_mm"]


def test_a_change_that_was_considered_is_kept_as_that(store: Store) -> None:
    reference = _asking(store, "paint the ferrules")
    [made] = store.register(spec(), assessment(), order_reference=reference, changes_considered=True)
    data = store.history(made.number)[0].data
    assert (data["order_changes"], data["changes_considered"]) == ("paint the ferrules", True)
    assert "changed" not in data


@pytest.mark.parametrize(
    "hose",
    [
        {"standard": "SAE 100R2", "dash": 12, "edition": "AT", "lot": "H-9"},
        {"standard": "EN 853 2SN", "dash": 12, "part": "TW-2012"},
    ],
)
def test_what_is_read_off_another_reel_is_no_change(store: Store, hose: dict[str, object]) -> None:
    with pytest.raises(StoreError, match="100 mm longer"):
        store.register(spec(hose=hose, note="x"), assessment(), order_reference=_asking(store))
