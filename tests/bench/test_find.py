"""Finding, machines, and the shop's own page."""

from __future__ import annotations

from datetime import date

import pytest

from api.bench.captions import caption
from api.rest.shared import EXAMPLE_SPEC
from tagger.spec import AssemblySpec
from tagger.store import CrimpValue, Kind, OrderState, Role, Store
from tests.bench.served import HOSE, PASSWORD, Bench, Served


def _build(bench: Bench, store: Store, **changes: str) -> str:
    bench.submit("/bench/build", {**HOSE, "customer": "Quarry North", "machine": "Loader 4", **changes})
    return store.find(limit=1).assemblies[0].number


@pytest.mark.parametrize(
    ("question", "hits"),
    [
        ("", 2), ("customer=quarry", 2), ("lot=h-9", 1), ("dash=-8", 1), ("connection=orfs", 1),
        ("pressure_min_bar=3000 psi", 1), ("built_to=2020-01-01", 0), ("printed=yes", 0), ("position=boom", 1),
    ],
)  # fmt: skip
def test_the_address_holds_the_question(bench: Bench, store: Store, question: str, hits: int) -> None:
    _build(bench, store, **{"hose.lot": "H-9", "position": "boom, rod side"})
    _build(bench, store, **{"hose.standard": "4SP", "hose.dash": "8", "end_a.connection": "orfs"})
    page = bench.get(f"/bench/find?{question}").text
    assert f'<strong role="status">{hits} assembl{"y" if hits == 1 else "ies"}</strong>' in page
    assert len(bench.get(f"/bench/find.csv?{question}").text.splitlines()) == hits + 1


def test_a_question_that_cannot_be_read_is_told(bench: Bench) -> None:
    answer = bench.get("/bench/find?dash=big&built_from=monday&pressure_min_bar=lots")
    assert answer.status_code == 422
    for field in ("dash", "built_from", "pressure_min_bar"):
        assert f"<strong>{caption(field)}:</strong>" in answer.text


def test_a_raised_two_is_no_number(bench: Bench) -> None:
    """Python calls it a digit and refuses to read it."""
    assert bench.get("/bench/find", params={"dash": "²"}).status_code == 422
    assert bench.get("/bench/find", params={"dash": "9" * 12}).status_code == 422
    crimp = {"hose_standard": "r2", "hose_dash": "²", "shell": "s", "diameter_mm": "33", "source": "chart"}
    assert bench.submit("/bench/shop/crimps", crimp).status_code == 422
    for field in ("count", "hose.dash"):
        assert bench.submit("/bench/build", {**HOSE, field: "²"}).status_code == 422


def test_a_machine_shows_what_is_on_it_now_and_orders_all(bench: Bench, store: Store) -> None:
    gone = _build(bench, store, position="a")
    store.record(gone, Kind.REMOVED, {})
    old = _build(bench, store, position="b")
    new = _build(bench, store, position="b", replaces=old)
    store.record(new, Kind.FITTED)
    other = _build(bench, store, position="c")
    _build(bench, store, machine="Loader 44")
    page = bench.get("/bench/machine", params={"customer": "Quarry North", "machine": "Loader 4"}).text
    assert [n for n in (gone, old, new, other) if f'value="{n}"' in page] == [new, other]
    form = {"number": [new, other], "company": "Quarry North", "phone": "555 0101", "key": "visit"}
    assert bench.submit("/bench/machine/order", form).status_code == 200
    bench.submit("/bench/machine/order", form)
    orders = store.orders(OrderState.RECEIVED)
    assert sorted(o.number or "" for o in orders) == sorted([new, other])


def test_the_manager_keeps_people_and_devices(bench: Bench, served: Served, store: Store) -> None:
    bench.submit("/bench/shop/people", {"name": "Dora", "role": "builder", "password": PASSWORD})
    with Bench(served.url, store, "Dora") as dora:
        assert dora.get("/bench/shop").status_code == 403
        person = store.person("dora")
        assert person is not None
        bench.submit(f"/bench/shop/people/{person.id}", {"do": "out"})
        assert dora.get("/bench/build").url.path == "/bench/sign-in"
    page = bench.submit("/bench/shop/tokens", {"name": "scanner 2", "role": "builder"}).text
    secret = page.split('<code class="tagno">')[1].split("<")[0]
    token = store.token(secret)
    assert token is not None and token.role is Role.BUILDER
    assert secret not in bench.get("/bench/shop").text, "shown once"


def test_a_crimp_diameter_needs_its_source(bench: Bench, store: Store) -> None:
    crimp = {"hose_standard": "r2", "hose_dash": "-12", "shell": "two-wire", "diameter_mm": "33.4", "minus_mm": "0.1",
             "plus_mm": "0.2", "source": "chart 7"}  # fmt: skip
    assert bench.submit("/bench/shop/crimps", {**crimp, "source": ""}).status_code == 422
    bench.submit("/bench/shop/crimps", crimp)
    assert store.crimps() == [
        CrimpValue("SAE 100R2", 12, "two-wire", 33.4, 0.1, 0.2, "chart 7", by="manager")
    ]


def test_a_new_password_ends_every_session(bench: Bench, store: Store) -> None:
    wrong = bench.submit("/bench/me", {"old": "nope", "password": "another horse 18"})
    assert wrong.status_code == 422
    bench.submit("/bench/me", {"old": PASSWORD, "password": "another horse 18"})
    assert bench.get("/bench/build").url.path == "/bench/sign-in"


def test_the_figures_count_what_happened(bench: Bench, store: Store) -> None:
    number = _build(bench, store, built_on="2019-03-02")
    for _ in range(3):
        bench.submit("/bench/print", {"number": number, "as": "pdf", "again": "1"})
    store.record_many([number] * 5, Kind.SCANNED)
    store.request_order(number=number, quantity=1, contact={"phone": "1"})
    store.request_order(spec=store.assembly(number).spec, quantity=1, contact={"phone": "1"})
    page = bench.get("/bench/figures").text
    for words in ("2 reprints", "1 from a scanned tag", "Scans: 5 from", "all dates passed"):
        assert words in page
    today = store.now().date()
    assert store.by_day(Kind.SCANNED, today, today) == [(today, 5)]
    assert store.by_day(Kind.SCANNED, date(2020, 1, 1), date(2020, 1, 2)) == [
        (date(2020, 1, 1), 0),
        (date(2020, 1, 2), 0),
    ]


def test_every_open_order_is_shown_however_many(bench: Bench, store: Store) -> None:
    spec = AssemblySpec.read(EXAMPLE_SPEC)
    with store.writing():
        made = [store.request_order(spec=spec, contact={"phone": "1"}).reference for _ in range(502)]
        store.set_order_state(made[1], OrderState.DECLINED)
    page = bench.get("/bench/orders").text
    assert [reference in page for reference in made] == [True, False] + [True] * 500
