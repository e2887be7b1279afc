"""The shop's side of a report of fitting, and the photos that only it sees."""

from __future__ import annotations

from datetime import date, timedelta
from io import BytesIO
from zipfile import ZipFile

import httpx
from PIL import Image

from api.rest.shared import EXAMPLE_SPEC
from api.settings import Settings
from tagger.code import number as tag_number
from tagger.spec import AssemblySpec
from tagger.store import FittedState, Store
from tests.bench.served import HOSE, Bench, serving


def test_the_shop_agrees_or_refuses_and_sees_a_number_on_two_machines(
    bench: Bench, store: Store, stranger: httpx.Client
) -> None:
    bench.submit("/bench/build", {**HOSE, "machine": "Loader 4"})
    [made] = store.find().assemblies
    picture = BytesIO()
    Image.new("RGB", (60, 40), "red").save(picture, "JPEG")
    data = {"number": made.number, "fitted_on": "2026-03-04", "machine": "Crusher", "fitted_by": "Anna"}
    answer = stranger.post("/fitted", data=data, files={"photo_fitted": ("a.jpg", picture.getvalue())})
    assert answer.status_code == 303
    assert "to confirm: 1" in bench.get("/bench/orders").text
    page = bench.get("/bench/fitted").text
    for words in (
        tag_number.format(made.number),
        "Crusher",
        "also said to be on another machine: Loader 4",
        "Anna",
    ):
        assert words in page
    (report,) = store.fitted_reports()
    photo = f"/bench/photos/{report.photo}.jpg"
    assert photo in page
    assert bench.get(photo).headers["content-type"] == "image/jpeg"
    assert stranger.get(photo).status_code != 200
    assert bench.get("/bench/photos/99.jpg").status_code == 404
    refused = bench.submit(f"/bench/fitted/{report.id}", {"decision": "refuse", "why": ""})
    assert refused.status_code == 422 and "needs a reason" in refused.text
    bench.submit(f"/bench/fitted/{report.id}", {"decision": "agree"})
    assert store.fitted_reports()[0].state is FittedState.AGREED
    assert store.fitted_on([made.number]) == {made.number: date(2026, 3, 4)}
    assert "Installed on 2026-03-04, machine Crusher" in bench.get(f"/bench/tag/{made.number}").text
    again = bench.submit(f"/bench/fitted/{report.id}", {"decision": "refuse", "why": "late"})
    assert again.status_code == 422 and store.fitted_reports()[0].state is FittedState.AGREED
    with ZipFile(BytesIO(bench.get("/bench/lists/everything.zip").content)) as whole:
        assert f"photos/{report.photo}.jpg" in whole.namelist()
        assert made.number.encode() in whole.read("fitted.jsonl")
    store.withdraw("burst low", tag=made.number)
    page = bench.get("/bench/fitted").text
    assert "is withdrawn (burst low) and is said to be on a machine" in page and "Anna" in page
    bench.submit("/bench/build", {**HOSE, "machine": "Loader 5"})
    [void] = [one.number for one in store.find().assemblies if one.number != made.number]
    store.void(void, "typed twice")
    stranger.post("/fitted", data={"number": void, "fitted_on": "2026-03-04"})
    flagged = bench.get("/bench/fitted").text
    assert "is void (“typed twice”), and it is said to be on a machine" in flagged
    assert 'value="refuse"' in flagged and 'value="agree"' not in flagged
    bench.submit(f"/bench/fitted/{report.id}/erase", {})
    page = bench.get("/bench/fitted").text
    assert "Anna" not in page and photo not in page and "Crusher" in page


def test_an_order_shows_its_photos_to_the_shop(bench: Bench, store: Store, stranger: httpx.Client) -> None:
    bench.submit("/bench/build", {**HOSE, "customer": "Quarry North"})
    [made] = store.find().assemblies
    picture = BytesIO()
    Image.new("RGB", (60, 40), "red").save(picture, "PNG")
    files = {"photo_hose": ("a.png", picture.getvalue()), "photo_routing": ("b.png", picture.getvalue())}
    stranger.post("/order", data={"number": made.number, "phone": "555 0101"}, files=files)
    (order,) = store.orders()
    page = bench.get(f"/bench/orders/{order.reference}").text
    for photo in store.order_photos(order.reference):
        assert f"/bench/photos/{photo.id}.jpg" in page
    assert "Photo of the routing" in page
    kept = bench.get("/bench/customer.json", params={"name": "Quarry North"}).json()
    assert [photo["shows"] for photo in kept["orders"][0]["photos"]] == ["hose", "routing"]


def test_what_was_kept_long_enough_is_told_and_erased_on_the_shop_page(store: Store) -> None:
    today = store.now()
    store.now = lambda: today - timedelta(days=100)
    wanted = AssemblySpec.read(EXAMPLE_SPEC)
    order = store.request_order(spec=wanted, contact={"name": "Anna", "phone": "555 0101"})
    store.set_order_state(order.reference, "declined")
    store.now = lambda: today
    with (
        serving(Settings(keep_contacts_days=90), store) as served,
        Bench(served.url, store, "manager") as bench,
    ):
        assert "90 days; to erase now: 1" in bench.get("/bench/shop").text
        bench.submit("/bench/shop/erase-old", {})
        page = bench.get("/bench/shop").text
        assert "90 days; to erase now: 0" in page and "kept for ever" in page
    assert store.order(order.reference).contact.phone == ""
