"""A customer's page, the file of its data, and whom to call about a withdrawal."""

from __future__ import annotations

import csv
import io

from tagger.code import number as tag_number
from tagger.store import Store
from tests.bench.served import HOSE, Bench, Served

ANNA = {"name": "Anna", "phone": "555 0101"}


def test_a_customer_has_contacts_machines_orders_and_hoses_and_a_contact_can_be_erased(
    bench: Bench, store: Store
) -> None:
    bench.submit(
        "/bench/build", {**HOSE, "customer": "Quarry & North", "machine": "Loader 4", "position": "boom"}
    )
    [made] = store.find().assemblies
    order = store.request_order(number=made.number, contact=ANNA)
    assert "/bench/customer?name=Quarry%20%26%20North" in bench.get(f"/bench/tag/{made.number}").text
    page = bench.get("/bench/customer", params={"name": "quarry & north"}).text
    for words in (
        "Anna",
        'href="tel:5550101"',
        "Loader 4",
        "boom",
        order.reference,
        tag_number.format(made.number),
    ):
        assert words in page
    kept = bench.get("/bench/customer.json", params={"name": "Quarry & North"}).json()
    assert [one["number"] for one in kept["assemblies"]] == [tag_number.format(made.number)]
    assert kept["assemblies"][0]["history"][0]["kind"] == "registered"
    assert kept["contacts"][0]["phone"] == "555 0101" and kept["orders"][0]["reference"] == order.reference
    page = bench.submit(
        "/bench/customer/erase", {"reference": order.reference, "name": "Quarry & North"}
    ).text
    assert "Anna" not in page and "No contact is recorded" in page and order.reference in page
    assert bench.get(f"/bench/orders/{order.reference}").status_code == 200
    assert bench.get("/bench/customer", params={"name": "Nobody"}).status_code == 404


def test_a_builder_neither_exports_nor_erases(served: Served, store: Store) -> None:
    with Bench(served.url, store, "builder") as builder:
        assert builder.get("/bench/customer.json", params={"name": "x"}).status_code == 403
        assert builder.submit("/bench/customer/erase", {"reference": "R-1"}).status_code == 403


def test_the_call_list_of_a_withdrawal_has_the_telephone_number(bench: Bench, store: Store) -> None:
    bench.submit("/bench/build", {**HOSE, "customer": "Quarry North", "hose.lot": "H-9"})
    [made] = store.find().assemblies
    store.request_order(number=made.number, contact=ANNA)
    withdrawal = store.withdraw("cover blisters", hose_lot="H-9")
    page = bench.get(f"/bench/withdrawn/{withdrawal.id}").text
    assert "Whom to call" in page and 'href="tel:5550101"' in page and "Anna" in page
    answer = bench.get(f"/bench/withdrawn/{withdrawal.id}/call.csv").content.decode("utf-8-sig")
    [row] = csv.DictReader(io.StringIO(answer))
    assert (row["Contact"], row["Phone"]) == ("Anna", "555 0101")
