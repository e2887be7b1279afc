"""Reports of fitting and retention by the JSON API."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta

import httpx

from tagger.code import number as tag_number
from tagger.spec import AssemblySpec
from tagger.store import Kind, Role, Store
from tagger.trade import assess
from tests.rest.test_trade import SPEC

DAY = date(2026, 3, 4)


def _made(store: Store) -> str:
    return store.register(SPEC, assess(SPEC), machine="Loader 4")[0].number


def test_reports_are_listed_agreed_to_and_refused_and_two_machines_are_flagged(
    api: httpx.Client, store: Store, device: Callable[[Role], httpx.Client]
) -> None:
    number = _made(store)
    ours = store.report_fitted(number, fitted_on=DAY, machine="Loader 4", fitted_by="Bela")
    copied = store.report_fitted(number, fitted_on=DAY, machine="Crusher", photos={"fitted": b"\xff\xd8jpeg"})
    listed = api.get("/fitted-reports", params={"state": "waiting", "limit": 1})
    [newest] = listed.json()
    assert (newest["id"], newest["number"], newest["photo"]) == (copied.id, tag_number.format(number), True)
    assert newest["elsewhere"] == ["Loader 4"]
    onward = httpx.URL(listed.headers["link"].split(";")[0].strip("<>")).query.decode()
    [older] = api.get(f"/fitted-reports?{onward}").json()
    assert (older["id"], older["elsewhere"], older["fitted_by"]) == (ours.id, ["Crusher"], "Bela")
    assert api.get(f"/fitted-reports/{copied.id}/photo.jpg").content == b"\xff\xd8jpeg"
    assert api.get(f"/fitted-reports/{ours.id}/photo.jpg").status_code == 404

    for _ in range(2):
        agreed = api.post(f"/fitted-reports/{ours.id}/agree", headers={"Idempotency-Key": "a"})
        assert (agreed.status_code, agreed.json()["state"]) == (201, "agreed")
    assert [event.kind for event in store.history(number)].count(Kind.FITTED) == 1
    assert api.post(f"/fitted-reports/{ours.id}/agree").status_code == 422, "decided already"
    assert api.post(f"/fitted-reports/{copied.id}/refuse", json={"reason": " "}).status_code == 422
    refused = api.post(f"/fitted-reports/{copied.id}/refuse", json={"reason": "a copied tag"})
    assert (refused.status_code, refused.json()["why"]) == (201, "a copied tag")
    assert api.get(f"/fitted-reports/{ours.id}").json()["elsewhere"] == []
    for act in ("agree", "erase"):
        assert api.post(f"/fitted-reports/99/{act}").status_code == 404
    assert device(Role.DEVICE).get("/fitted-reports").status_code == 403
    assert device(Role.BUILDER).post(f"/fitted-reports/{ours.id}/erase").status_code == 403
    assert api.post(f"/fitted-reports/{ours.id}/erase").json() == {"erased": True}
    repeated = api.post(f"/fitted-reports/{ours.id}/agree", headers={"Idempotency-Key": "a"})
    assert repeated.json()["fitted_by"] is None, "what was answered before is erased as well"
    exported = store.fitted_reports(number=number)
    assert [one.fitted_by for one in exported] == [None, None]


def test_nothing_is_erased_while_the_shop_has_set_nothing(
    api: httpx.Client, store: Store, device: Callable[[Role], httpx.Client]
) -> None:
    store.now = lambda: datetime.now(UTC) - timedelta(days=4000)
    spec = AssemblySpec.read(SPEC.as_dict())
    order = store.request_order(spec=spec, contact={"phone": "555 0101"})
    store.set_order_state(order.reference, "declined")
    zero = {"contacts": 0, "photos": 0, "reports": 0}
    assert api.get("/retention").json() == {"days": zero, "due": zero}
    assert api.post("/retention").json() == zero
    assert store.order(order.reference).contact.phone == "555 0101"
    assert device(Role.COUNTER).post("/retention").status_code == 403
