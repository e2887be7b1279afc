"""The field at the top of every page: what it finds is told by kind."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from api.settings import Settings
from tagger import signing
from tagger.code import number as tag_number
from tagger.store import Store
from tests.bench.served import HOSE, Bench, serving


@pytest.fixture
def number(bench: Bench, store: Store) -> str:
    """A tag of a customer's machine, of one reel."""
    where = {"customer": "Écluse Nord", "machine": "Loader 4", "hose.lot": "H-2291"}
    bench.submit("/bench/build", {**HOSE, **where})
    return store.find().assemblies[0].number


def _asked(bench: Bench, text: str) -> tuple[str, str]:
    """The address it leads to, and the page."""
    answer = bench.get("/bench/go", params={"text": text})
    return answer.url.raw_path.decode(), answer.text


def test_a_tag_an_order_a_customer_a_machine_and_a_lot_are_opened(
    bench: Bench, store: Store, number: str
) -> None:
    order = store.request_order(number=number, quantity=1, contact={"phone": "1"}, key="one")
    assert _asked(bench, tag_number.format(number).lower())[0] == f"/bench/tag/{number}"
    assert _asked(bench, order.reference.lower())[0] == f"/bench/orders/{order.reference}"
    assert _asked(bench, "écluse")[0] == "/bench/find?customer=%C3%89cluse+Nord"
    assert _asked(bench, "loader 4")[0] == "/bench/machine?customer=%C3%89cluse+Nord&machine=Loader+4"
    address, page = _asked(bench, "h-2291")
    assert address == "/bench/find?lot=h-2291" and tag_number.format(number) in page


def test_a_tag_that_is_not_ours_or_says_something_else_than_its_record_is_told_before_it_is_built_from(
    bench: Bench, store: Store, number: str
) -> None:
    item = store.assembly(number)
    bench.submit("/bench/build", {**HOSE, "length_mm": "900 mm", "key": "other"})
    [other] = [one for one in store.find().assemblies if one.number != number]
    swapped = f"https://tags.example.com/T/{number}/{other.digits}"
    address, page = _asked(bench, swapped)
    assert address.startswith("/bench/go") and "the tag and our record differ" in page
    assert f'href="/bench/tag/{number}"' in page
    assert _asked(bench, f"https://tags.example.com/T/{number}/{item.digits}")[0] == f"/bench/tag/{number}"
    foreign = f"https://tags.example.com/T/00000000001/{other.digits}"
    address, page = _asked(bench, foreign)
    assert address.startswith("/bench/build") and "is not in our records" in page
    for text, said in ((swapped, "differ"), (foreign, "is not in our records")):
        assert said in bench.get("/bench/scan", params={"text": text}).json()["say"]
        assert said in bench.get("/bench/build", params={"tag": text}).text
    assert "is not in our records" not in bench.get("/bench/build", params={"tag": number}).text


def test_of_several_things_found_each_is_told_by_its_kind(bench: Bench, number: str) -> None:
    bench.submit("/bench/build", {**HOSE, "customer": "Loader Hire", "machine": "Truck", "key": "2"})
    address, page = _asked(bench, "loader")
    assert address.startswith("/bench/go")
    assert "Customer Loader Hire" in page and "Machine Loader 4 (customer: Écluse Nord)" in page


def test_a_mistyped_tag_number_is_called_that(bench: Bench, number: str) -> None:
    other = "8" if number[3] != "8" else "7"
    answer = bench.get("/bench/go", params={"text": number[:3] + other + number[4:]})
    assert answer.status_code == 404
    assert "This is a mistyped tag number." in answer.text
    assert "The check character is wrong" in answer.text


def test_what_is_not_there_is_said(bench: Bench) -> None:
    answer = bench.get("/bench/go", params={"text": "no such thing"})
    assert answer.status_code == 404
    assert "No tag, order, customer, machine, stock number or lot is called this." in answer.text
    assert "mistyped" not in answer.text


def test_a_scanned_tag_is_told_signed_not_signed_or_broken_in_the_field_and_on_its_record(
    store: Store, tmp_path: Path
) -> None:
    signing.renew(tmp_path / "keys.json", date(2026, 1, 2))
    keys = signing.load(tmp_path / "keys.json")
    settings = Settings(signing_key=tmp_path / "keys.json")
    with serving(settings, store) as served, Bench(served.url, store, "builder") as bench:
        bench.submit("/bench/build", HOSE)
        [made] = store.find().assemblies
        links = {
            "signed": f"https://tags.example.com/T/{made.number}/{keys.sign(made.number, made.digits)}",
            "unsigned": f"https://tags.example.com/T/{made.number}/{made.digits}",
            "broken": f"https://tags.example.com/T/{made.number}/{keys.sign('00000000001', made.digits)}",
        }
        words = {
            "signed": "Signed by this shop",
            "unsigned": "Not signed",
            "broken": "The signature does not fit: do not trust the values",
        }
        for state, link in links.items():
            said = bench.get("/bench/scan", params={"text": link}).json()["say"]
            assert f"Signature: {words[state]}." in said
            assert ("not those that were signed" in said) == (state == "broken")
            address, page = _asked(bench, link)
            assert words[state] in page
            assert address.startswith(
                "/bench/go" if state == "broken" else f"/bench/tag/{made.number}?digits="
            )
            begun = bench.get("/bench/build", params={"tag": link}).text
            assert (words["broken"] in begun) == (state == "broken")
        typed = bench.get("/bench/scan", params={"text": made.number}).json()["say"]
        assert "Signature" not in typed and "Signature" not in _asked(bench, made.number)[1]
