"""Customers: whom to call, and erasing a contact without breaking an order or a tag."""

from __future__ import annotations

from tagger.store import Registration, Store
from tagger.store.outbox import Target
from tests.store.samples import assessment, spec

ANNA = {"name": "Anna", "phone": "555 0101", "email": "anna@example.com"}


def _made(store: Store, customer: str | None, **more: str) -> str:
    row = Registration(spec(), assessment(), customer=customer, **more)
    return store.register_many([row])[0].number


def test_the_call_list_knows_whom_to_call_by_the_tags_own_order_then_by_its_customer(store: Store) -> None:
    own, other, nobody = _made(store, "Quarry North"), _made(store, "quarry north"), _made(store, None)
    stranger = _made(store, "Harbour Cranes")
    store.request_order(number=own, contact=ANNA)
    items = store.assemblies([own, other, nobody, stranger])
    found = store.contacts_of(items)
    assert {number: contact.phone for number, contact in found.items()} == {
        own: "555 0101",
        other: "555 0101",
    }


def test_what_was_built_for_an_order_is_reached_by_it(store: Store) -> None:
    order = store.request_order(spec=spec(), contact=ANNA)
    built = _made(store, None, order_reference=order.reference)
    assert store.contacts_of(store.assemblies([built]))[built].name == "Anna"


def test_a_contact_with_a_telephone_comes_before_a_newer_one_without(store: Store) -> None:
    tag = _made(store, "Quarry North")
    store.request_order(number=tag, contact=ANNA)
    store.request_order(number=tag, contact={"email": "stores@example.com"})
    assert store.contacts_of(store.assemblies([tag]))[tag].phone == "555 0101"


def test_a_customer_has_contacts_machines_and_orders(store: Store) -> None:
    tag = _made(store, "Quarry North", machine="Loader 4")
    _made(store, "Quarry North", machine="Crusher")
    _made(store, "Quarry Northwest", machine="Drill")
    orders = [store.request_order(number=tag, contact=ANNA) for _ in range(2)]
    assert store.machines("quarry  north") == ["Crusher", "Loader 4"]
    assert {one.reference for one in store.customer_orders("QUARRY NORTH")} == {o.reference for o in orders}
    assert [known.contact.name for known in store.contacts("Quarry North")] == ["Anna"], "each once"
    assert store.contacts("Quarry Northwest") == []


def test_an_erased_contact_is_gone_everywhere_and_order_and_tag_stay(store: Store) -> None:
    store.announce, store.mail_customers = (Target("webhook", "https://hooks.example.com/"),), True
    tag = _made(store, "Quarry North")
    orders = [store.request_order(number=tag, contact=ANNA, changes="longer", key=f"k{n}") for n in range(2)]
    other = store.request_order(number=tag, contact={"phone": "555 0202"})
    before = store.history(tag)
    assert store.erase_contact(orders[0].reference) == sorted(one.reference for one in orders)
    for order in orders:
        kept = store.order(order.reference)
        assert not any(kept.contact.model_dump().values()) and kept.changes == "longer"
        assert kept.state == order.state
    assert store.order(other.reference).contact.phone == "555 0202"
    assert store.history(tag) == before and store.assembly(tag).customer == "Quarry North"
    told = list(iter(store.claim, None))
    assert told and all(message.channel == "webhook" for message in told), "no mail is sent to who was erased"
    assert not any("anna" in str(message).lower() or "555 0101" in str(message) for message in told)
    assert store.erase_contact(orders[0].reference) == [], "a second time there is nothing to erase"
    again = store.request_order(number=tag, contact=ANNA, changes="longer", key="k0")
    assert again.reference == orders[0].reference and not again.contact.phone, (
        "sent again, nothing comes back"
    )
